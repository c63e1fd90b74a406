#pragma once
// Says on standard error what takes long: nothing for the first second, then a
// line, then one every ten seconds until it is done.
#include <condition_variable>
#include <mutex>
#include <string>
#include <thread>

namespace combdraft::command {

class Progress {
 public:
  /// `what`: "plan.json: tracing hair, 30000 locks".
  explicit Progress(std::string what);

 private:
  std::mutex mutex_;
  std::condition_variable_any wake_;
  std::jthread thread_;
};

}  // namespace combdraft::command

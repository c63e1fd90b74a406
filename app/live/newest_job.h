#pragma once
// One worker thread that does only the newest thing it was asked for: a one-slot mailbox.
// What is asked for meanwhile stops what is under way, whose answer is dropped.
#include <QObject>
#include <condition_variable>
#include <cstdint>
#include <functional>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>

namespace combdraft::live {

class NewestJob : public QObject {
  Q_OBJECT

 public:
  /// Hands the answer over, on the thread that asked.
  using Deliver = std::function<void()>;
  /// Done by the worker; what it needs of a plan it holds as its own. Stopped work ends early
  /// with anything: its answer is dropped.
  using Work = std::function<Deliver(std::stop_token)>;

  explicit NewestJob(QObject* parent = nullptr);
  /// Waits for what is under way to stop.
  ~NewestJob() override;

  /// `noMemory` is handed over where the work runs out of memory.
  void begin(Work work, Deliver noMemory);
  /// Nobody waits any more.
  void cancel();

 private:
  struct Job {
    Work work;
    Deliver noMemory;
    std::uint64_t serial = 0;
  };
  void run(const std::stop_token& stop);

  std::uint64_t newestSerial_ = 0;  // of the asking thread
  // shared
  std::mutex mutex_;
  std::condition_variable_any wake_;
  std::optional<Job> mailbox_;
  std::stop_source now_;  ///< of what is under way
  std::jthread worker_;   // last: stops before the rest goes
};

}  // namespace combdraft::live

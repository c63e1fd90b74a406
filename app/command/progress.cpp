#include "app/command/progress.h"

#include <chrono>

#include "app/command/outcome.h"

namespace combdraft::command {

Progress::Progress(std::string what)
    : thread_([this, what = std::move(what)](const std::stop_token& stop) {
        std::unique_lock lock(mutex_);
        int seconds = 1;
        int next = 1;
        while (!wake_.wait_for(lock, stop, std::chrono::seconds(next),
                               [&] { return stop.stop_requested(); })) {
          if (stop.stop_requested()) return;
          complain(what + (seconds == 1 ? "" : ", " + std::to_string(seconds) + " s"));
          next = seconds == 1 ? 9 : 10;
          seconds += next;
        }
      }) {}

}  // namespace combdraft::command

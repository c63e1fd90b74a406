#include "engine/base/give_way.h"

#include <tbb/task_scheduler_observer.h>

#include <algorithm>
#ifdef __linux__
#include <sys/resource.h>
#endif

namespace combdraft {
namespace {

void lowerOwnPriority() {
#ifdef __linux__
  constexpr int kNice = 10;  // about a tenth of the processor against a thread that wants all of it
  thread_local const int lowered = setpriority(PRIO_PROCESS, 0, std::max(kNice, getpriority(PRIO_PROCESS, 0)));  // 0: this thread alone
  (void)lowered;  // never refused: nothing is raised
#endif
}

// Helpers of the loops that this thread runs: each calling thread has an arena of its own.
struct Helpers : tbb::task_scheduler_observer {
  Helpers() { observe(true); }
  ~Helpers() override { observe(false); }
  void on_scheduler_entry(bool) override { lowerOwnPriority(); }
};

}  // namespace

void giveWay() {
  lowerOwnPriority();
  thread_local const Helpers helpers;
  (void)helpers;
}

}  // namespace combdraft

#include "engine/base/parallel.h"

#include <tbb/blocked_range.h>
#include <tbb/parallel_for.h>
#include <tbb/task_arena.h>

#include <atomic>

namespace combdraft {
namespace {
std::atomic<int> threadLimit{0};
}

int setThreadLimit(int threads) { return threadLimit.exchange(threads); }

void parallelFor(std::size_t count, const std::function<void(std::size_t)>& body) {
  const int limit = threadLimit.load();
  if (limit == 1 || count < 2) {
    for (std::size_t i = 0; i < count; ++i) body(i);
    return;
  }
  const auto run = [&] {
    tbb::parallel_for(tbb::blocked_range<std::size_t>(0, count, 1),
                      [&](const tbb::blocked_range<std::size_t>& range) {
                        for (std::size_t i = range.begin(); i != range.end(); ++i) body(i);
                      });
  };
  if (limit == 0) {
    run();
  } else {
    tbb::task_arena(limit).execute(run);
  }
}

}  // namespace combdraft

// The engine's parallel loops with plain threads, for the thread sanitizer.
//
// oneTBB is built without it, and a suppression for its workers would silence every race
// in a loop's body, since those workers stand in each stack. This file takes the place of
// engine/base/parallel.cpp in tests built with that sanitizer: threads are begun and
// joined, the sanitizer sees both, and between them nothing orders one chunk after another.
#include "engine/base/parallel.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <mutex>
#include <thread>
#include <vector>

namespace combdraft {
namespace {
std::atomic<int> threadLimit{0};
}

int setThreadLimit(int threads) { return threadLimit.exchange(threads); }

void parallelFor(std::size_t count, const std::function<void(std::size_t)>& body) {
  const int limit = threadLimit.load();
  const std::size_t threads = limit > 0 ? static_cast<std::size_t>(limit) : 4;  // more than this machine may have
  std::atomic<std::size_t> next{0};
  std::mutex guard;
  std::exception_ptr thrown;
  const auto work = [&] {
    try {
      for (std::size_t i = next.fetch_add(1, std::memory_order_relaxed); i < count; i = next.fetch_add(1, std::memory_order_relaxed)) body(i);
    } catch (...) {
      const std::lock_guard lock(guard);
      if (!thrown) thrown = std::current_exception();
      next.store(count, std::memory_order_relaxed);
    }
  };
  {
    std::vector<std::jthread> helpers;
    for (std::size_t i = 1; i < std::min(threads, count); ++i) helpers.emplace_back(work);
    work();
  }
  if (thrown) std::rethrow_exception(thrown);
}

}  // namespace combdraft

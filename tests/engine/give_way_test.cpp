// Threads that give way run behind the others; the one that started them does not.
#include <catch2/catch.hpp>
#include <atomic>
#include <thread>

#include "engine/base/give_way.h"
#include "engine/base/parallel.h"

#ifdef __linux__
#include <sys/resource.h>

// On Linux 0 names the calling thread, and each thread has its own value: setpriority(2),
// "C library/kernel differences".
TEST_CASE("a thread that gives way and its helpers are behind the others", "[parallel]") {
  const int before = getpriority(PRIO_PROCESS, 0);
  int own = -100;
  std::atomic<int> forward{0}, bodies{0};
  std::thread([&] {
    combdraft::giveWay();
    combdraft::giveWay();  // twice is once
    own = getpriority(PRIO_PROCESS, 0);
    combdraft::parallelFor(400, [&](std::size_t) {
      ++bodies;
      forward += getpriority(PRIO_PROCESS, 0) < std::max(before, 10);
      std::this_thread::yield();
    });
  }).join();
  CHECK(own == std::max(before, 10));
  CHECK(bodies == 400);
  CHECK(forward == 0);
  CHECK(getpriority(PRIO_PROCESS, 0) == before);
}
#endif

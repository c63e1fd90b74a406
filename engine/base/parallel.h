#pragma once
// Parallel loops over fixed chunks. The chunks do not depend on the number of
// threads and each writes only its own place, so one thread and many give the
// same bits.
#include <cstddef>
#include <functional>

namespace combdraft {

/// How many threads parallel loops may use; 0 = all cores. Returns the old value.
int setThreadLimit(int threads);

/// Calls `body(i)` once for each i in [0, count), in any order.
void parallelFor(std::size_t count, const std::function<void(std::size_t)>& body);

}  // namespace combdraft

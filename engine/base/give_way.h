#pragma once
// Work that people wait for only when they look at it goes behind what they touch.

namespace combdraft {

/// Lets the calling thread, and the threads that help its parallel loops, run behind the
/// program's other threads where processors are short (Linux: a higher nice value, which no
/// thread takes back). Elsewhere it does nothing. For threads of one's own: call it first.
void giveWay();

}  // namespace combdraft

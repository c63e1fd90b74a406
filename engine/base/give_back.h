#pragma once
// What a long use takes of memory, beside what it needs.

namespace combdraft {

/// From now on large pieces of memory go back to the system when they are freed. Without this
/// glibc keeps ever larger ones among small ones, after which they cannot go back. Elsewhere it
/// does nothing.
void giveMemoryBack();

}  // namespace combdraft

#include "engine/base/give_back.h"

#include <cstdlib>
#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace combdraft {

void giveMemoryBack() {
#ifdef __GLIBC__
  constexpr int kLarge_bytes = 1 << 20;  // a fixed limit: by itself it rises to 32 MB
  mallopt(M_MMAP_THRESHOLD, kLarge_bytes);
#endif
}

}  // namespace combdraft

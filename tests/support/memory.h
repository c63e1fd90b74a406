// What a running program takes of the machine's memory.
#pragma once

#include <unistd.h>

#include <cstdio>

namespace combdraft::test {

/// Memory of this process that is in use now (Linux), in MB; 0 where it cannot be read.
inline double residentMemory_MB() {
  long pages = 0, resident = 0;
  if (FILE* file = std::fopen("/proc/self/statm", "r")) {
    if (std::fscanf(file, "%ld %ld", &pages, &resident) != 2) resident = 0;
    std::fclose(file);
  }
  return static_cast<double>(resident) * static_cast<double>(sysconf(_SC_PAGESIZE)) / (1 << 20);
}

}  // namespace combdraft::test

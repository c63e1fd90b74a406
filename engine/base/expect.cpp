#include "engine/base/expect.h"

#include <cstdio>
#include <cstdlib>

namespace combdraft {
namespace {
ExpectHook installedHook = nullptr;
}

ExpectHook setExpectHook(ExpectHook hook) {
  const ExpectHook before = installedHook;
  installedHook = hook;
  return before;
}

void expectationBroken(const char* expression, const char* file, int line,
                       const std::string& operands) {
  std::ostringstream text;
  text << "expectation broken: " << expression << " at " << file << ':' << line << " with "
       << operands;
  // Operands may be somebody's words: with a hook it decides what is said and where.
  if (installedHook)
    installedHook(text.str());
  else
    std::fprintf(stderr, "%s\n", text.str().c_str());
  std::abort();
}

}  // namespace combdraft

#pragma once
// Expectations on our own code: on in every build. A broken one prints its
// operands and aborts (a program may install a hook that saves work first).
#include <sstream>
#include <string>

namespace combdraft {

using ExpectHook = void (*)(const std::string& message);
/// Called before aborting; returns the hook that was set before.
ExpectHook setExpectHook(ExpectHook hook);
[[noreturn]] void expectationBroken(const char* expression, const char* file, int line,
                                    const std::string& operands);

template <class... T>
std::string expectOperands(const T&... operands) {
  std::ostringstream text;
  ((text << operands << ' '), ...);
  return text.str();
}

}  // namespace combdraft

#define COMBDRAFT_EXPECT(condition, ...)                                           \
  (static_cast<bool>(condition)                                                    \
       ? void(0)                                                                   \
       : ::combdraft::expectationBroken(#condition, __FILE__, __LINE__,            \
                                        ::combdraft::expectOperands(__VA_ARGS__)))

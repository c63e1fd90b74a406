// Where tests find the tree they belong to. One source holds the path, so that every
// other test object is the same in every checkout and comes out of the compiler's cache.
#pragma once

#include <string>

namespace combdraft::test {

std::string sourceDir();                                 // the checkout, no slash at its end
inline std::string testsDir() { return sourceDir() + "/tests"; }

}  // namespace combdraft::test

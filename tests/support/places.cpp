#include "tests/support/places.h"

namespace combdraft::test {

std::string sourceDir() { return COMBDRAFT_SOURCE_DIR; }

}  // namespace combdraft::test

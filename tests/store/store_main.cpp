// Entry of the tests of files, autosave and locks: no screen at all.
#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include "tests/support/qt_test_main.h"

int main(int argc, char** argv) { return combdraft::tests::runTests<QCoreApplication>(argc, argv); }

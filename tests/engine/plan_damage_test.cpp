// A damaged file: cut off or with one byte changed, anywhere. It is refused with a
// message, or it opens and then saves and opens again as the same plan.
#include <catch2/catch.hpp>

#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/validate.h"
#include "tests/engine/plan_samples.h"

using namespace combdraft;
using namespace combdraft::plan;

namespace {

enum class Came { Refused, Opened };

/// Fails the test when neither holds.
Came openDamaged(const std::string& text) {
  const auto plan = readPlan(text);
  if (!plan) {
    if (describe(plan.error()).size() < 10) FAIL("no message for\n" << text);
    return Came::Refused;
  }
  const std::string written = writePlan(*plan);
  const auto again = readPlan(written);
  if (!again || !(*again == *plan)) FAIL("does not open again:\n" << written);
  for (const Issue& issue : validate(*plan))
    if (describe(issue).empty()) FAIL("an issue without words");
  return Came::Opened;
}

}  // namespace

TEST_CASE("a plan cut off at any byte is refused", "[plan][damage]") {
  for (const Plan& plan : {Plan::fresh(7), samples::fullPlan()}) {
    const std::string text = writePlan(plan);
    for (std::size_t length = 0; length + 1 < text.size(); ++length)  // the last is a line feed
      if (openDamaged(text.substr(0, length)) != Came::Refused) FAIL("opened when cut at " << length);
  }
}

TEST_CASE("a plan with any byte changed is refused or opens as a whole plan", "[plan][damage]") {
  const std::string text = writePlan(samples::fullPlan());
  int refused = 0, opened = 0;
  constexpr char kFlips[] = {'\x01', '\x10', '\x80'};
  for (std::size_t at = 0; at < text.size(); ++at) {
    std::string damaged = text;
    damaged[at] = static_cast<char>(damaged[at] ^ kFlips[at % std::size(kFlips)]);
    (openDamaged(damaged) == Came::Refused ? refused : opened)++;
  }
  // Both happen: digits and names may change unnoticed, the rest may not.
  CHECK(refused > opened);
  CHECK(opened > 100);
}

// The example plans open, hold what they are there to show, and come back from
// text unchanged.
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

#include "engine/plan/json_writer.h"
#include "engine/plan/plan_file.h"
#include "tests/support/places.h"

using namespace combdraft;
using namespace combdraft::plan;

namespace {

std::vector<std::string> exampleFiles() {
  std::vector<std::string> files;
  for (const auto& entry :
       std::filesystem::directory_iterator(test::sourceDir() + "/examples"))
    if (entry.path().extension() == ".json") files.push_back(entry.path());
  std::sort(files.begin(), files.end());
  return files;
}

Plan load(const std::string& file) {
  auto plan = loadPlan(file);
  if (!plan) FAIL(describe(plan.error()));
  return std::move(plan).value();
}

}  // namespace

TEST_CASE("examples open and are written back byte for byte", "[plan][examples]") {
  REQUIRE(exampleFiles().size() >= 6);
  for (const std::string& file : exampleFiles()) {
    CAPTURE(file);
    const Plan plan = load(file);
    std::ostringstream bytes;
    bytes << std::ifstream(file, std::ios::binary).rdbuf();
    CHECK(writePlan(plan) == bytes.str());
    CHECK_FALSE(plan.info().title.empty());
    CHECK_FALSE(plan.pieces().empty());
  }
}

TEST_CASE("examples differ as heads and hair do", "[plan][examples]") {
  std::set<CurlClass> curls;
  std::set<SkinTone> skins;
  std::set<head::HeadSize> sizes;
  std::set<std::uint64_t> numbers;
  std::size_t fewest = 1000, most = 0, men = 0, twoWhorls = 0, oldLight = 0, deepening = 0,
              shadows = 0, twins = 0, leftOuts = 0, choices = 0, white = 0, laidOut = 0;
  for (const std::string& file : exampleFiles()) {
    const Plan plan = load(file);
    const auto pieces = plan.pieces();
    fewest = std::min(fewest, pieces.size());
    most = std::max(most, pieces.size());
    curls.insert(plan.hair().curl);
    skins.insert(plan.head().skin);
    sizes.insert(plan.head().measures.size);
    numbers.insert(plan.info().number);
    men += plan.head().measures.set == head::HeadSet::Men;
    twoWhorls += plan.head().whorls.size() == 2;
    oldLight += !plan.hair().scattered.empty();
    white += plan.hair().white_frac > 0.3;
    for (const auto& piece : pieces) {
      deepening += piece.second->action == Action::Deepen;
      leftOuts += piece.second->action == Action::LeaveOut;
      twins += !piece.second->twinOf.empty();
      laidOut += piece.second->laidOut.has_value();
    }
    for (const auto& treatment : plan.treatments())
      shadows += treatment.second->kind == Treatment::Kind::RootShadow;
    for (const auto& item : plan.items()) choices += std::holds_alternative<Choice>(*item.second);
  }
  CHECK(fewest == 6);
  CHECK(most >= 60);
  CHECK(curls.size() >= 4);
  CHECK(curls.count(CurlClass::TightCurl) == 1);
  CHECK(skins.size() >= 4);
  CHECK(sizes.size() == 3);  // 5th percentile, mean and 95th percentile heads
  CHECK(numbers.size() == exampleFiles().size());
  CHECK(men >= 1);
  CHECK(twoWhorls >= 1);
  CHECK(oldLight >= 1);
  CHECK(white >= 1);
  CHECK(laidOut >= 40);
  CHECK(deepening >= 1);
  CHECK(leftOuts >= 1);
  CHECK(shadows >= 1);
  CHECK(twins >= 10);
  CHECK(choices > exampleFiles().size());  // at least one plan has a choice B
}

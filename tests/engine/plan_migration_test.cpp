// Every format that was ever written stays readable. tests/format/N holds files as
// the program of format N wrote them; they are never changed.
#include <catch2/catch.hpp>
#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/pattern.h"
#include "engine/plan/plan_file.h"
#include "tests/engine/plan_samples.h"
#include "tests/support/places.h"

using namespace combdraft;
using namespace combdraft::plan;
namespace fs = std::filesystem;

namespace {

fs::path folderOf(int version) { return fs::path(test::testsDir() + "/format") / std::to_string(version); }

std::string textOf(const fs::path& path) {
  std::ostringstream text;
  text << std::ifstream(path).rdbuf();
  REQUIRE_FALSE(text.str().empty());
  return text.str();
}

bool isPattern(const fs::path& path) { return path.string().ends_with(".pattern.json"); }

std::vector<fs::path> samplesOf(int version) {
  std::vector<fs::path> files;
  for (const auto& entry : fs::directory_iterator(folderOf(version))) files.push_back(entry.path());
  std::sort(files.begin(), files.end());
  return files;
}

/// The file as this program writes it.
std::string rewritten(const std::string& text, const fs::path& path) {
  if (isPattern(path)) {
    const auto pattern = readPattern(text);
    if (!pattern) FAIL(path << ": " << describe(pattern.error()));
    return writePattern(*pattern);
  }
  const auto plan = readPlan(text);
  if (!plan) FAIL(path << ": " << describe(plan.error()));
  return writePlan(*plan);
}

/// Every text and number of a file, wherever it stands.
void collect(const nlohmann::json& node, std::multiset<std::string>& values) {
  if (node.is_structured())
    for (const auto& entry : node) collect(entry, values);
  else
    values.insert(node.dump());
}
std::multiset<std::string> valuesIn(const std::string& text) {
  nlohmann::json root = nlohmann::json::parse(text);
  root.erase("version");
  std::multiset<std::string> values;
  collect(root, values);
  return values;
}

/// Fields that came without a new format, since an older program keeps them as found.
Plan withoutLaterFields(Plan plan) {
  plan.put(kHandoutId, ItemPtr{});
  Hair hair = plan.hair();
  hair.porosity = {};
  plan.put(kHairId, hair);
  Formula formula = *plan.find<Formula>("formula-1");
  formula.products.clear();
  formula.additives.clear();
  formula.developers.clear();
  formula.leaflet.workingLife_min = formula.leaflet.longestTime_min = std::nullopt;
  formula.leaflet.directions.clear();
  plan.put("formula-1", formula);
  return plan;
}

constexpr const char* kOld = R"({"format": "combdraft plan", "version": 1, "number": 5, "activeChoice": "a",
  "head": {"whorls": [{"at": [180, 40]}]}, "hair": {}, "choices": [{"id": "a"}], "formulas": [)";

}  // namespace

TEST_CASE("there are samples of every format, and the newest are written as they stand", "[plan][format]") {
  for (int version = 1; version <= kFormatVersion; ++version) {
    CAPTURE(version);
    REQUIRE(fs::is_directory(folderOf(version)));
    CHECK(samplesOf(version).size() >= 6);
    for (const fs::path& path : samplesOf(version)) {
      CAPTURE(path);
      CHECK(nlohmann::json::parse(textOf(path)).at("version") == version);
    }
  }
  for (const fs::path& path : samplesOf(kFormatVersion)) {
    CAPTURE(path);
    CHECK(rewritten(textOf(path), path) == textOf(path));
  }
}

TEST_CASE("a file of an older format means what its successor means, and no value is lost", "[plan][format]") {
  for (int version = 1; version < kFormatVersion; ++version)
    for (const fs::path& path : samplesOf(version)) {
      CAPTURE(path);
      const fs::path next = folderOf(version + 1) / path.filename();
      REQUIRE(fs::exists(next));
      const std::string now = rewritten(textOf(path), path);
      CHECK(now == rewritten(textOf(next), next));
      CHECK(valuesIn(now) == valuesIn(textOf(path)));
      if (isPattern(path)) continue;
      const auto read = readPlanAsRead(textOf(path));
      CHECK(read->migration.from == version);
      CHECK(read->migration.to == kFormatVersion);
    }
  CHECK(*readPlan(textOf(folderOf(1) / "every-field.json")) == withoutLaterFields(samples::fullPlan()));
}

TEST_CASE("format 1: what was read in a leaflet stands together", "[plan][format]") {
  const auto read = readPlanAsRead(std::string(kOld) + R"(
    {"id": "f1", "letter": "A", "origin": "box, side", "date": "2025-01-31", "scalpContact": "yes", "shelf": 3},
    {"id": "f2", "leaflet": {"of": "somebody"}}, {"id": "f3"}]})");
  REQUIRE(read);
  const auto* f1 = read->plan.find<Formula>("f1");
  CHECK(f1->leaflet == Leaflet{"box, side", "2025-01-31", ScalpContact::Yes, {}, {}, {}});
  CHECK(f1->extra == Extra{{"shelf", "3"}});
  // A key of somebody else's that has our name since.
  const auto* f2 = read->plan.find<Formula>("f2");
  CHECK(f2->leaflet == Leaflet{});
  REQUIRE(f2->extra.size() == 1);
  CHECK(f2->extra.begin()->second == R"({"of": "somebody"})");
  CHECK(read->plan.find<Formula>("f3")->leaflet == Leaflet{});
  CHECK(describe(read->migration) == "format 1 to 2: what was read in a leaflet stands together (4 places)");
  CHECK(readPlanAsRead(writePlan(read->plan))->migration.isNone());
}

TEST_CASE("an error names the place in the file as it was written", "[plan][format]") {
  const auto refused = [](const std::string& formula) {
    const auto plan = readPlan(std::string(kOld) + formula + "]}");
    REQUIRE_FALSE(plan);
    return plan.error().where;
  };
  CHECK(refused(R"({"id": "f1", "scalpContact": "maybe"})") == "/formulas/0/scalpContact");
  CHECK(refused(R"({"id": "f1"}, {"id": "f2", "date": "31.1.2025"})") == "/formulas/1/date");
  CHECK(refused(R"({"id": "f1", "letter": 7})") == "/formulas/0/letter");
  // Not the shape of format 1 at all: the reader says so.
  CHECK(refused("7") == "/formulas/0");
}

TEST_CASE("opening leaves an old file alone, saving keeps it beside the new one", "[plan][format]") {
  const fs::path folder = fs::temp_directory_path() / ("combdraft-format-" + std::to_string(::getpid()));
  fs::create_directories(folder);
  const std::string path = (folder / "old.json").string(), old = textOf(folderOf(1) / "every-field.json");
  std::ofstream(path) << old;
  const auto plan = loadPlanAsRead(path);
  REQUIRE(plan);
  CHECK(textOf(path) == old);
  REQUIRE(savePlan(path, plan->plan));
  CHECK(textOf(path + std::string(kPreviousEnding)) == old);
  CHECK(nlohmann::json::parse(textOf(path)).at("version") == kFormatVersion);
  fs::remove_all(folder);
}

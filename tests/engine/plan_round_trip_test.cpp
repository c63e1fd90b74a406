// A plan that uses every field goes through text and back unchanged.
#include <catch2/catch.hpp>

#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/twins.h"
#include "tests/engine/plan_samples.h"

using namespace combdraft;
using namespace combdraft::plan;

namespace {

void checkRoundTrip(const Plan& plan) {
  const std::string text = writePlan(plan);
  const auto back = readPlan(text);
  if (!back) FAIL(describe(back.error()) << "\n" << text);
  CHECK(*back == plan);
  CHECK(writePlan(*back) == text);
}

}  // namespace

// Found by the fuzzer of migrations in its 9,793,551st run: the empty name was not written,
// and what is not written is read as "A".
TEST_CASE("a choice with an empty name in its file is saved and read the same", "[plan]") {
  auto plan = readPlan(R"({"format": "combdraft plan", "version": 2, "number": 7, "activeChoice": "choice-2", "head": {}, "hair": {},
                           "choices": [{"id": "choice-2", "name": ""}]})");
  REQUIRE(plan);
  CHECK(plan->find<Choice>("choice-2")->name == "A");
  auto again = readPlan(writePlan(*plan));
  REQUIRE(again);
  CHECK(*again == *plan);
}

// Found by the same fuzzer: written, it was left out, and could not be read again.
TEST_CASE("an empty active choice is refused as a missing one", "[plan]") {
  const auto plan = readPlan(R"({"format": "combdraft plan", "version": 2, "number": 7, "activeChoice": "", "head": {}, "hair": {},
                                 "choices": [{"id": "choice-2"}]})");
  REQUIRE_FALSE(plan);
  CHECK(describe(plan.error()) == "\"activeChoice\" is missing");
}

TEST_CASE("a fresh plan and a full plan read back the same, byte for byte", "[plan]") {
  checkRoundTrip(Plan::fresh(7));
  checkRoundTrip(samples::fullPlan());
}

TEST_CASE("a hundred random plans read back the same, byte for byte", "[plan]") {
  for (std::uint64_t seed = 1; seed <= 100; ++seed) checkRoundTrip(samples::randomPlan(seed));
}

TEST_CASE("numbers stay as typed", "[plan]") {
  Plan plan = samples::fullPlan();
  Piece piece = *plan.find<Piece>("piece-1");
  piece.thickness_mm = 0.1 + 0.2;
  piece.start_mm = 5e-324;
  piece.blend_mm = -0.0;
  piece.dropOuts = {{1.0 / 3, 123.456789012345678}};
  plan.put("piece-1", piece);
  checkRoundTrip(plan);
  CHECK(writePlan(plan).find("0.30000000000000004") != std::string::npos);
  CHECK(writePlan(plan).find("\"blend_mm\": 0,") != std::string::npos);
}

TEST_CASE("keys of a later version are kept, at every depth", "[plan]") {
  const std::string text = writePlan(samples::fullPlan());
  std::string edited = text;
  const auto insertAfter = [&](const std::string& mark, const std::string& more) {
    const std::size_t at = edited.find(mark);
    if (at == std::string::npos) FAIL("no " << mark << " in\n" << text);
    edited.insert(at + mark.size(), more);
  };
  insertAfter("\"version\": 2,", "\n  \"zz1\": [1.50, {\"b\": 1, \"a\": \"\\u00e9\"}],");
  insertAfter("\"head\": {", "\"zz2\": null,");
  insertAfter("\"hair\": {", "\"zz3\": true,");
  insertAfter("\"backcomb\": {", "\"zz4\": 12345678901234567890123,");
  insertAfter("\"lifts\": {", "\"zz5\": \"x\",");
  insertAfter("\"finish\": {", "\"zz6\": {},");
  insertAfter("\"root\": {", "\"zz7\": [],");
  insertAfter("\"layout\": {", "\"zz8\": -0.5e-3,");
  insertAfter("{\"zone\": \"back\", ", "\"zz9\": 1,");
  insertAfter("{\"zone\": \"top\", ", "\"zz10\": 1,");
  insertAfter("{\"at\": [170, 38], ", "\"zz11\": 1,");
  insertAfter("{\"id\": \"piece-2\", ", "\"zz12\": 1,");
  insertAfter("\"targets\": {", "\"fringe / \\u00e9\": {\"level\": 3, \"aim\": [2.50]},");
  const auto plan = readPlan(edited);
  if (!plan) FAIL(describe(plan.error()) << edited);
  const std::string written = writePlan(*plan);
  for (const char* kept :
       {"\"zz1\": [1.50, {\"b\": 1, \"a\": \"\xC3\xA9\"}]", "\"zz2\": null", "\"zz3\": true",
        "\"zz4\": 12345678901234567890123", "\"zz5\": \"x\"", "\"zz6\": {}", "\"zz7\": []",
        "\"zz8\": -0.5e-3", "\"zz9\": 1", "\"zz10\": 1", "\"zz11\": 1", "\"zz12\": 1",
        "\"fringe / \xC3\xA9\": {\"level\": 3, \"aim\": [2.50]}"}) {
    CAPTURE(kept);
    CHECK(written.find(kept) != std::string::npos);
  }
  CHECK(*readPlan(written) == *plan);
}

TEST_CASE("a choice whose targets are all of a later version keeps them", "[plan]") {
  const auto plan = readPlan(R"({"format": "combdraft plan", "version": 2, "number": 5,
    "activeChoice": "a", "head": {}, "hair": {},
    "choices": [{"id": "a", "targets": {"fringe": {"level": 99}}}]})");
  if (!plan) FAIL(describe(plan.error()));
  CHECK(plan->find<Choice>("a")->targets.empty());
  CHECK(writePlan(*plan).find("\"targets\": {\"fringe\": {\"level\": 99}}") != std::string::npos);
  checkRoundTrip(*plan);
}

TEST_CASE("a twin stores only whose twin it is", "[plan]") {
  const Plan plan = samples::fullPlan();
  REQUIRE(followsSource(plan, *plan.find<Piece>("piece-2")));
  CHECK(writePlan(plan).find("{\"id\": \"piece-2\", \"twinOf\": \"piece-1\", \"order\": 2}") !=
        std::string::npos);
  // One that was changed by itself is written whole, so nothing is lost.
  Plan changed = plan;
  Piece own = *plan.find<Piece>("piece-2");
  own.start_mm = 77;
  changed.put("piece-2", own);
  checkRoundTrip(changed);
}

TEST_CASE("missing fields take the table's defaults", "[plan]") {
  const auto plan = readPlan(R"({"format": "combdraft plan", "version": 2, "number": 5,
    "activeChoice": "a", "head": {}, "hair": {}, "choices": [{"id": "a"}],
    "pieces": [{"id": "p", "choice": "a", "line": [[-20, 60], [20, 60]]}]})");
  if (!plan) FAIL(describe(plan.error()));
  Piece expected;
  expected.choice = "a";
  expected.line = {{-20, 60}, {20, 60}};
  CHECK(*plan->find<Piece>("p") == expected);
  CHECK(plan->hair() == Hair{});
  CHECK(plan->head().part.empty());
  CHECK(plan->head().whorls.size() == 1);
}

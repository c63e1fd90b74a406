// What the check of fields lets pass, the reader takes back from a file; and nothing else.
#include <catch2/catch.hpp>

#include "engine/plan/field_check.h"
#include "engine/plan/field_info.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"

using namespace combdraft;
using namespace combdraft::plan;

namespace {

bool readsBack(const Plan& plan) {
  const auto back = readPlan(writePlan(plan));
  return back.ok() && *back == plan;
}

// Whether both say the same of this item; what they say.
bool bothTake(const ItemId& id, const Item& item) {
  Plan plan = Plan::fresh(1);
  plan.put(id, std::make_shared<const Item>(item));
  const bool passes = checkFields(item).empty();
  CHECK(passes == readsBack(plan));
  return passes;
}

}  // namespace

TEST_CASE("dates that the field check takes are those that the reader takes", "[plan][fields]") {
  const struct {
    const char* text;
    bool isDay;
  } kTable[] = {{"", true},
                {"2026-03-14", true},
                {"2024-02-29", true},
                {"2026/03/14", false},
                {"2026.03.14", false},
                {"2026_03_14", false},
                {"2026-03/14", false},
                {"2026 03 14", false},
                {"14-03-2026", false},
                {"2026-3-14", false},
                {"2026-03-14 ", false},
                {"2026-03-14T10:00", false},
                {"2026-13-01", false},
                {"2026-00-10", false},
                {"2026-04-31", false},
                {"2026-01-00", false},
                {"+026-01-01", false},
                {"2026\xE2\x80\x93" "1-1", false},
                {"20260314", false},
                {"soon", false}};
  for (const auto& row : kTable) {
    CAPTURE(row.text);
    Hair hair;
    hair.conditionDate = row.text;
    CHECK(bothTake(kHairId, hair) == row.isDay);
    Formula formula;
    formula.leaflet.read = row.text;
    CHECK(bothTake("formula-1", formula) == row.isDay);
  }
  Hair hair;
  hair.conditionDate = "2026/03/14";
  const auto problems = checkFields(hair);
  REQUIRE(problems.size() == 1);
  CHECK(problems[0].field == "hair.conditionDate");
  CHECK(problems[0].found == "\"2026/03/14\"");
}

TEST_CASE("texts that the field check takes are those that the reader takes", "[plan][fields]") {
  const struct {
    std::string text;
    bool inLine, inText;
  } kTable[] = {{"plain", true, true},
                {"a\nb", false, true},
                {"a\tb", false, true},
                {"a\rb", false, false},
                {"a\x7F" "b", false, false},
                {std::string("a\0b", 3), false, false},
                {"a\xC2\x85" "b", false, false},          // next line
                {"a\xE2\x80\xA8" "b", false, true},       // line separator
                {"a\xE2\x80\xA9" "b", false, true},       // paragraph separator
                {"a\xEF\xBF\xBE" "b", true, true},        // U+FFFE
                {"\xEF\xBB\xBF" "ab", true, true},        // byte order mark
                {"a\xF0\x9F\x98\x80" "b", true, true},    // a pair in UTF-16
                {std::string(limits::kLineBytes, 'x'), true, true},
                {std::string(limits::kLineBytes + 1, 'x'), false, true},
                {std::string(limits::kTextBytes + 1, 'x'), false, false}};
  for (const auto& row : kTable) {
    CAPTURE(row.text.substr(0, 20));
    PlanInfo line = Plan::fresh(1).info();
    PlanInfo text = line;
    line.title = row.text;
    text.notes = row.text;
    CHECK(bothTake(kPlanId, line) == row.inLine);
    CHECK(bothTake(kPlanId, text) == row.inText);
  }
}

TEST_CASE("assumptions that the field check takes are those that the reader takes", "[plan][fields]") {
  const auto takes = [](const std::string& name, double value) {
    PlanInfo info = Plan::fresh(1).info();
    info.assumptions[name] = value;
    return bothTake(kPlanId, info);
  };
  CHECK(takes("fall.partReach_mm", 44.5));
  CHECK(takes("of.another.program", -3));
  CHECK_FALSE(takes("two words", 1));
  CHECK_FALSE(takes("", 1));
  PlanInfo many = Plan::fresh(1).info();
  for (std::size_t i = 0; i <= limits::kSmallList; ++i) many.assumptions["n" + std::to_string(i)] = 1;
  CHECK_FALSE(bothTake(kPlanId, many));
}

// A copy to hand on: the drawing is there, what belongs to a client or an appointment
// is not.
#include <catch2/catch.hpp>

#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/share.h"
#include "tests/engine/plan_samples.h"

using namespace combdraft;

namespace {

plan::Plan marked() {
  plan::Plan plan = plan::samples::fullPlan();
  plan::PlanInfo info = plan.info();
  info.notes = "Markernotes";
  info.agreedJson = "{\"date\": \"Markeragreed\"}";
  info.visitsJson = "[\"Markervisits\"]";
  info.logJson = "[\"Markerlog\"]";
  info.extra["later"] = "\"Markerextra\"";
  plan.put(plan::kPlanId, info);
  plan::Hair hair = plan.hair();
  hair.extra["later"] = "\"Markerhair\"";
  plan.put(plan::kHairId, hair);
  const plan::Plan before = plan;
  for (const auto& [id, item] : before.items()) {
    if (const auto* piece = std::get_if<plan::Piece>(item.get())) {
      plan::Piece changed = *piece;
      changed.note = "Markerpiece";
      plan.put(id, changed);
    }
    if (const auto* note = std::get_if<plan::Note>(item.get())) {
      plan::Note changed = *note;
      changed.text = "Markernote";
      plan.put(id, changed);
    }
  }
  return plan;
}

}  // namespace

TEST_CASE("a shared copy holds no note nor log nor anything nobody knows", "[plan][share]") {
  const plan::Plan plan = marked();
  const std::string before = plan::writePlan(plan);
  for (const char* word : {"Markernotes", "Markeragreed", "Markervisits", "Markerlog", "Markerextra", "Markerhair", "Markerpiece", "Markernote"}) {
    INFO(word);
    REQUIRE(before.find(word) != std::string::npos);
  }
  const plan::Plan copy = plan::sharedCopy(plan, 4711);
  const std::string after = plan::writePlan(copy);
  CHECK(after.find("Marker") == std::string::npos);
  CHECK(copy.info().number == 4711);
  CHECK(copy.info().title == plan.info().title);
  CHECK(after.find(std::to_string(plan.info().number)) == std::string::npos);
  const auto again = plan::readPlan(after);
  REQUIRE(again.ok());
  CHECK(*again == copy);
  CHECK(plan::writePlan(plan) == before);
}

TEST_CASE("a shared copy has the whole drawing", "[plan][share]") {
  const plan::Plan plan = marked(), copy = plan::sharedCopy(plan, 1);
  CHECK(copy.info().activeChoice == plan.info().activeChoice);
  std::size_t pieces = 0, notes = 0;
  for (const auto& [id, item] : plan.items()) {
    if (std::holds_alternative<plan::Note>(*item)) {
      ++notes;
      CHECK_FALSE(copy.item(id));
      continue;
    }
    REQUIRE(copy.item(id));
    if (const auto* piece = std::get_if<plan::Piece>(item.get())) {
      const auto* same = copy.find<plan::Piece>(id);
      REQUIRE(same);
      CHECK(same->line == piece->line);
      CHECK(same->thickness_mm == piece->thickness_mm);
      CHECK(same->start_mm == piece->start_mm);
      CHECK(same->order == piece->order);
      ++pieces;
    }
  }
  CHECK(pieces > 0);
  CHECK(notes > 0);
  CHECK(copy.items().size() + notes == plan.items().size());
}

TEST_CASE("a shared copy's number fits into a file whatever is drawn", "[plan][share]") {
  const plan::Plan plan = plan::Plan::fresh(9);
  for (const std::uint64_t number : {std::uint64_t{0}, ~std::uint64_t{0}, std::uint64_t{1} << 53})
    CHECK(plan::readPlan(plan::writePlan(plan::sharedCopy(plan, number))).ok());
}

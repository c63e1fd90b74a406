// What was agreed: there and back, what is refused with its place, what is kept.
#include <catch2/catch.hpp>

#include "engine/plan/agreement.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/validate.h"
#include "tests/app/demo_plans.h"

using namespace combdraft;
using namespace combdraft::plan;

namespace {

Plan twoChoices() {
  Plan plan = tests::demoPlan();
  PlanInfo info = plan.info();
  info.notes = "for the desk only";
  info.agreedJson = "{\"date\": \"2020-01-02\"}";
  plan.put(kPlanId, info);
  Choice second;
  second.name = "B";
  plan.put("choice-2", second);
  Piece piece = *plan.find<Piece>("piece-3");
  piece.choice = "choice-2";
  plan.put("piece-30", piece);
  return plan;
}

Agreement full() {
  Agreement a;
  a.date = "2026-11-28";
  a.choice = "choice-1";
  a.choiceName = "soft & \"bright\"";
  a.frozen = frozenChoice(twoChoices(), "choice-1");
  a.view = {"half-up", -12.5, 12, "warm-lamp", "less", "back", Facing::AsInMirror};
  a.span = AgreedSpan{6.4, 5.9, 7.1};
  a.promiseLine = "A picture of the plan, not a promise.";
  a.pictureBase64 = "aGFpcg==";
  a.engineVersion = "0.1.0";
  a.earlier = {"{\"date\": \"2025-01-01\"}", "[1, 2]"};
  a.extra = {{"later", "{\"x\": 1}"}, {"/view/angle", "3"}, {"/span_levels/why", "\"own\""}};
  return a;
}

Error errorOf(const std::string& json) {
  const auto read = readAgreement(json);
  REQUIRE_FALSE(read.ok());
  return read.error();
}

}  // namespace

TEST_CASE("an agreement reads back as it was written, also through a plan file", "[plan][agreement]") {
  const Agreement before = full();
  const auto json = writeAgreement(before);
  REQUIRE(json.ok());
  const auto again = readAgreement(*json);
  REQUIRE(again.ok());
  CHECK(*again == before);
  CHECK(*writeAgreement(*again) == *json);

  Plan plan = twoChoices();
  PlanInfo info = plan.info();
  info.agreedJson = *json;
  plan.put(kPlanId, info);
  const auto read = readPlan(writePlan(plan));
  REQUIRE(read.ok());
  CHECK(read->info().agreedJson == *json);
  CHECK(*read == plan);

  const auto least = readAgreement("{}");
  REQUIRE(least.ok());
  CHECK(*least == Agreement{});
}

TEST_CASE("a frozen choice holds that choice alone and stands on its own as a plan", "[plan][agreement]") {
  const Plan plan = twoChoices();
  const auto frozen = frozenChoice(plan, "choice-1");
  REQUIRE(frozen);
  CHECK(frozen->pieces("choice-1").size() == 8);
  CHECK(frozen->find<Piece>("piece-30") == nullptr);
  CHECK(frozen->find<Choice>("choice-2") == nullptr);
  CHECK(frozen->find<Section>("section-1"));
  CHECK(frozen->find<Formula>("formula-2"));
  CHECK(frozen->head() == plan.head());
  CHECK(frozen->hair() == plan.hair());
  CHECK(frozen->info().number == plan.info().number);
  CHECK(frozen->info().notes.empty());
  CHECK(frozen->info().agreedJson.empty());
  CHECK(frozen->info().activeChoice == "choice-1");
  CHECK(readPlan(writePlan(*frozen)).ok());
  const auto other = frozenChoice(plan, "choice-2");
  REQUIRE(other);
  CHECK(other->pieces().size() == 1);
  CHECK_FALSE(frozenChoice(plan, "choice-9"));
}

TEST_CASE("what is wrong in an agreement is refused with its place and what would be right", "[plan][agreement]") {
  CHECK(errorOf("").code == ErrorCode::FileEmpty);
  CHECK(errorOf("[]").where == "/agreed");
  CHECK(errorOf("{\"date\": ").code == ErrorCode::JsonSyntax);
  CHECK(errorOf("{\"date\": 3}").where == "/agreed/date");
  CHECK(errorOf("{\"date\": \"28 November\"}").where == "/agreed/date");
  CHECK(errorOf("{\"date\": \"2026-13-01\"}").code == ErrorCode::FieldWrongType);
  CHECK(errorOf("{\"view\": {\"weeks\": 27}}").where == "/agreed/view/weeks");
  CHECK(errorOf("{\"view\": {\"weeks\": 27}}").code == ErrorCode::FieldOutOfRange);
  CHECK(errorOf("{\"view\": {\"facing\": \"sideways\"}}").code == ErrorCode::FieldUnknownWord);
  CHECK(errorOf("{\"span_levels\": {\"low\": -1}}").where == "/agreed/span_levels/low");
  CHECK(errorOf("{\"frozen\": {\"format\": \"other\"}}").where == "/agreed/frozen/format");
  CHECK(errorOf("{\"picturePng_base64\": \"" + std::string(kAgreedPictureBytes + 4, 'A') + "\"}").code == ErrorCode::TextTooLong);
  CHECK(errorOf("{\"picturePng_base64\": \"a!==\"}").where == "/agreed/picturePng_base64");
  Agreement large = full();
  large.pictureBase64 = std::string(kAgreedPictureBytes + 4, 'A');
  CHECK_FALSE(writeAgreement(large).ok());  // never written so that it could not be read
}

TEST_CASE("an unknown key of an agreement that spells out another's place is kept", "[plan][agreement]") {
  Agreement odd = full();
  odd.extra = {{"/view/worn", "1"}, {"/own/place", "2"}, {"/", "3"}, {"/view/angle", "4"}};
  const auto text = writeAgreement(odd);
  REQUIRE(text.ok());
  const auto again = readAgreement(*text);
  REQUIRE(again.ok());
  CHECK(again->view == odd.view);
  CHECK(errorOf(R"({"view": {"angle": 1}, "/view/angle": 2})").code == ErrorCode::JsonDuplicateKey);
  for (const char* key : {"/view/worn", "/own/place", "/", "/view/angle"}) CHECK(again->extra.at(key) == odd.extra.at(key));
}

TEST_CASE("agreeing anew keeps what was agreed before, readable or not", "[plan][agreement]") {
  const Agreement first = full();
  const auto firstText = writeAgreement(first);
  REQUIRE(firstText.ok());
  Agreement next;
  next.date = "2026-12-01";
  const Agreement both = withEarlier(next, *firstText);
  REQUIRE(both.earlier.size() == 3);
  Agreement alone = first;
  alone.earlier.clear();
  CHECK(*readAgreement(both.earlier[0]) == alone);
  CHECK(both.earlier[1] == "{\"date\": \"2025-01-01\"}");
  CHECK(both.earlier[2] == "[1, 2]");
  // No more than a few.
  const Agreement third = withEarlier(next, *writeAgreement(both));
  CHECK(third.earlier.size() == kEarlierAgreements);
  CHECK(third.earlier[1] == both.earlier[0]);
  CHECK(withEarlier(next, "{\"date\": 7}").earlier == std::vector<std::string>{"{\"date\": 7}"});
  CHECK(withEarlier(next, "").earlier.empty());
}

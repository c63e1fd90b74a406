// Strength arithmetic and what is refused.
#include <catch2/catch.hpp>
#include <limits>

#include "engine/base/random.h"
#include "engine/work/amounts.h"
#include "engine/work/strength.h"

using namespace combdraft;
using namespace combdraft::work;
using plan::StrengthUnit;

namespace {

plan::Formula formulaOf(std::vector<plan::Developer> developers) {
  plan::Formula formula;
  formula.developers = std::move(developers);
  return formula;
}

}  // namespace

TEST_CASE("strengths that no developer has are refused with what would be right", "[work][strength]") {
  for (const double bad : {0.0, -3.0, 60.0, 30.1, std::numeric_limits<double>::infinity(), std::numeric_limits<double>::quiet_NaN()}) {
    const auto refused = strengthOf(bad, StrengthUnit::Percent, "/developers/0/strength");
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == ErrorCode::FieldOutOfRange);
    CHECK(refused.error().where == "/developers/0/strength");
    CHECK(refused.error().args.at(1) == "above 0 to 30 %");
  }
  CHECK_FALSE(strengthOf(120, StrengthUnit::Volume));
  CHECK(strengthOf(60, StrengthUnit::Volume));
}

TEST_CASE("percent and volumes go there and back", "[work][strength]") {
  for (std::uint64_t i = 0; i < 2000; ++i) {
    const double percent = 0.01 + 29.9 * randomUniform(7, i, 1);
    const Strength typed = *strengthOf(percent, StrengthUnit::Percent);
    CHECK(strengthOf(typed.volumes(), StrengthUnit::Volume)->percent == Approx(percent).epsilon(1e-12));
  }
}

TEST_CASE("a mixture lies between its parts and parts may be scaled", "[work][strength]") {
  for (std::uint64_t i = 0; i < 500; ++i) {
    const Strength weak = *strengthOf(0.5 + 5 * randomUniform(8, i, 1), StrengthUnit::Percent);
    const Strength strong = *strengthOf(6 + 6 * randomUniform(8, i, 2), StrengthUnit::Percent);
    const double a = 0.1 + randomUniform(8, i, 3), b = 0.1 + randomUniform(8, i, 4);
    const std::vector<StrengthPart> parts{{weak, a}, {strong, b}}, tenfold{{strong, 10 * b}, {weak, 10 * a}};
    const double mixture = mixed(parts)->percent;
    CHECK(mixture > weak.percent);
    CHECK(mixture < strong.percent);
    CHECK(mixed(tenfold)->percent == Approx(mixture).epsilon(1e-12));
  }
}

TEST_CASE("parts that are none are refused", "[work][strength]") {
  const Strength some = *strengthOf(6, StrengthUnit::Percent);
  for (const double bad : {0.0, -1.0, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
    const std::vector<StrengthPart> parts{{some, 1}, {some, bad}};
    CHECK_FALSE(mixed(parts));
  }
  CHECK_FALSE(mixed({}));
}

TEST_CASE("a formula's developers count only as they were typed", "[work][strength]") {
  using plan::Developer;
  CHECK(*developerStrength(formulaOf({})) == std::nullopt);
  CHECK(*developerStrength(formulaOf({Developer{"x", {}, StrengthUnit::Percent, 1, {}}})) == std::nullopt);
  // One developer needs no parts; two do.
  CHECK((*developerStrength(formulaOf({Developer{"x", 6, StrengthUnit::Percent, {}, {}}})))->percent == 6);
  CHECK(*developerStrength(formulaOf({Developer{"x", 6, StrengthUnit::Percent, {}, {}}, Developer{"y", 9, StrengthUnit::Percent, 1, {}}})) ==
        std::nullopt);
  const auto both = developerStrength(formulaOf({Developer{"x", 3, StrengthUnit::Percent, 1, {}}, Developer{"y", 9, StrengthUnit::Percent, 3, {}}}));
  CHECK((*both)->percent == Approx(7.5));
  const auto strong = developerStrength(formulaOf({Developer{"x", 60, StrengthUnit::Percent, 1, {}}}));
  REQUIRE_FALSE(strong);
  CHECK(strong.error().where == "/developers/0/strength");
  const auto negative = developerStrength(formulaOf({Developer{"x", 6, StrengthUnit::Percent, -2, {}}}));
  REQUIRE_FALSE(negative);
  CHECK(negative.error().where == "/developers/0/parts");
}

TEST_CASE("grams are split only when all parts are typed", "[work][amounts]") {
  plan::Formula formula;
  formula.products = {{"powder", 1, {}}};
  CHECK_FALSE(splitByParts(formula, 90));  // one thing is no mixture
  formula.developers = {{"developer", 6, StrengthUnit::Percent, {}, {}}};
  CHECK_FALSE(splitByParts(formula, 90));
  formula.developers[0].parts = 2;
  const auto split = splitByParts(formula, 90);
  REQUIRE(split);
  CHECK(split->at(0).grams == Approx(30));
  CHECK(split->at(1).grams == Approx(60));
  formula.additives = {{"drops", {}, {}}};
  CHECK_FALSE(splitByParts(formula, 90));
  formula.additives = {{"drops", 0, {}}};
  CHECK_FALSE(splitByParts(formula, 90));
}

#include "app/desk/new_plan.h"

#include <array>

namespace combdraft::desk {
namespace {

// What the everyday words stand for, as first values to be corrected by a
// measure (own choice; the middle ones are the plan's own first values).
constexpr double kFibre_um[] = {60, 72.1, 85};
constexpr double kDensity_per_cm2[] = {160, 226, 290};
// Lengths of front, top, crown, sides, back, nape, mm stretched.
constexpr std::array<double, plan::kHairZones> kLength_mm[] = {
    {70, 70, 65, 45, 50, 40},
    {230, 250, 250, 220, 220, 150},
    {310, 350, 380, 360, 380, 300},
    {420, 470, 500, 480, 500, 420},
    {560, 620, 660, 640, 660, 580}};
constexpr double kLayering_frac[] = {0.9, 0.3, 0.15, 0.15, 0.15};

template <class Table, class Word>
const auto& pick(const Table& table, Word word) {
  return table[static_cast<std::size_t>(word)];
}

}  // namespace

Result<plan::Plan> newPlan(const NewPlanAnswers& answers, std::uint64_t number) {
  plan::Plan plan = plan::Plan::fresh(number);
  plan::Head head = plan.head();
  plan::Hair hair = plan.hair();

  if (answers.size) head.measures.size = *answers.size;
  head.measures.circumference_mm = answers.circumference_mm;
  const Result<head::FittedHead> fitted = head::fitHead(head.measures);
  if (!fitted) return fitted.error();
  if (answers.part) head.part = cards::partLine(head, *answers.part);
  if (answers.swirl) head.whorls = cards::whorlsAt(head, *answers.swirl);

  if (answers.curl) hair.curl = *answers.curl;
  if (answers.strand) hair.fibre_um = pick(kFibre_um, *answers.strand);
  if (answers.amount) hair.density_per_cm2 = pick(kDensity_per_cm2, *answers.amount);
  if (answers.length) {
    hair.length_mm = pick(kLength_mm, *answers.length);
    hair.layering_frac = pick(kLayering_frac, *answers.length);
  }
  for (plan::RootMiddleEnd& level : hair.level) {
    // An answer at the root goes on to the ends until another one is given.
    if (answers.rootLevel) level = {*answers.rootLevel, *answers.rootLevel, *answers.rootLevel};
    if (answers.middleLevel) level.middle = level.end = *answers.middleLevel;
    if (answers.endLevel) level.end = *answers.endLevel;
  }
  plan.put(plan::kHeadId, head);
  plan.put(plan::kHairId, hair);
  return plan;
}

}  // namespace combdraft::desk

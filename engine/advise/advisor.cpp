#include "engine/advise/advisor.h"

#include <algorithm>
#include <cmath>

#include "engine/advise/remedies.h"
#include "engine/advise/worn_readings.h"
#include "engine/base/assumptions.h"
#include "engine/look/opening_range.h"

namespace combdraft::advise {
namespace {

constexpr double kPixel_mm = 1, kStep_mm = 4;
constexpr hair::Worn kTied{hair::WornWay::TiedBack};
constexpr hair::Worn kRaised{hair::WornWay::LayerRaised};
/// A remedy is offered when it takes at least this share of the finding away [own].
constexpr double kLeastHelp = 0.15;
/// What several pieces must win over the first alone, for the same remedy [own].
constexpr double kWorthMorePieces = 0.1;
/// Sizes under these no longer show [own].
constexpr std::size_t kMostRemedies = 6;  ///< more is no help to choose [own]
constexpr double kGone_cm2 = 0.5, kGone_mm = 3;

/// The size in `advice` of what `finding` is about: the same kind, at the same
/// place or way of opening. Nothing when it is no finding there any more and has
/// no size of its own.
std::optional<double> sizeNow(const Advice& advice, const Finding& finding) {
  const bool light = finding.kind == FindingKind::LightBlock ||
                     (finding.kind == FindingKind::RunAtOpening && finding.detail != "dark");
  const bool isBlock = finding.kind == FindingKind::LightBlock || finding.kind == FindingKind::DarkBlock;
  if (isBlock || finding.kind == FindingKind::RunAtOpening) {
    double worst = 0;
    for (const look::Opening& opening : advice.openings.all) {
      const hair::Worn worn = wornOf(opening);
      // The same block: another piece makes one of its own where the part lands beside that.
      if (worn.way != finding.worn.way || std::abs(worn.partShift_mm - finding.worn.partShift_mm) > kSameBlock_mm) continue;
      worst = std::max(worst, isBlock ? (light ? opening.light : opening.dark).area_cm2
                                      : (light ? opening.lightRun : opening.darkRun).length_mm);
    }
    return worst;
  }
  for (const Finding& other : advice.findings)
    if (other.kind == finding.kind && other.region == finding.region && other.worn == finding.worn)
      return other.size;
  return std::nullopt;
}

/// Largest patches at any opening: what a remedy must not make worse.
struct Worst {
  double light = 0, dark = 0;
  explicit Worst(const look::Openings& openings) {
    if (const auto* o = openings.worstLight()) light = o->light.area_cm2;
    if (const auto* o = openings.worstDark()) dark = o->dark.area_cm2;
  }
};

Effect effectOf(const Finding& finding, const std::optional<double>& now) {
  Effect effect{finding.size, now.value_or(0), finding.unit, Effect::Leaves::Smaller};
  const bool opening = finding.unit == "cm2" || finding.kind == FindingKind::RunAtOpening;
  if (!now || (opening && *now < (finding.unit == "cm2" ? kGone_cm2 : kGone_mm)))
    effect.leaves = Effect::Leaves::Nothing;
  else if (opening && *now <= finding.limit)
    effect.leaves = Effect::Leaves::UnderTheLine;
  if (!now) effect.after = opening ? 0 : finding.limit;
  return effect;
}

/// What is shown now may be another way of wearing, wet, weeks later or the hair
/// as it came in: that is not what was planned, and not judged.
look::LookSettings judgedOf(look::LookSettings shown) {
  shown.worn = {}, shown.subject = look::Subject::Planned, shown.moisture = look::Moisture::Dry;
  shown.toner = look::Toner::After, shown.weeks = 0;
  return shown;
}

/// How much of what is over the line a remedy takes away, 0..1; below 0 it harms.
double helpOf(const Finding& finding, const Effect& effect) {
  if (effect.leaves == Effect::Leaves::Nothing) return 1;
  const bool more = finding.size > finding.limit;  // else less is worse
  const double gone = more ? effect.before - effect.after : effect.after - effect.before;
  const bool opening = finding.unit == "cm2" || finding.unit == "mm";
  if (!opening && sizeText(effect.before, effect.unit) == sizeText(effect.after, effect.unit)) return 0;
  const double whole = opening ? effect.before : std::abs(finding.size - finding.limit);
  return whole > 0 ? gone / whole : 0;
}

}  // namespace

struct Advisor::State {
  explicit State(int count)
      : locks(std::clamp(count, 2000, 200000)), sweep(locks), tied(kTied, locks, kPixel_mm, kStep_mm),
        raised(kRaised, locks, kPixel_mm, kStep_mm), regrowth(std::min(locks, 8000)), stripes(locks) {}

  int locks;
  look::OpeningSweep sweep;
  WornReadings tied, raised;
  look::RegrowthSearch regrowth;
  look::StripeSearch stripes;
  look::OpeningRange openingRange;
  std::shared_ptr<const look::HeadGround> ground;
  std::optional<look::LookEngine> down;  ///< for trials only

  enum class With { Openings, ReadingsOnly };
  Result<Advice> look(const plan::Plan& plan, const look::LookSettings& settings,
                      const look::Readings& worn_down, With with, std::stop_token stop,
                      const std::function<void(const Advice&)>& early = {}) {
    Advice advice;
    advice.down = worn_down;
    if (with == With::Openings) {
      // First what was asked most: it stands long before the other ways of wearing.
      const auto showFirst = [&](const look::Openings& openings) {
        advice.openings = openings;
        advice.findings = findingsOf(plan, {settings.choice, &advice.down, nullptr, nullptr, kRaised, &advice.openings});
        early(advice);
      };
      auto openings = sweep.update(plan, settings, stop, early ? std::function<void(const look::Openings&)>(showFirst) : std::function<void(const look::Openings&)>());
      if (!openings) return openings.error();
      if (early) showFirst(*openings);
      advice.openings = std::move(openings).value();
    }
    auto back = tied.update(plan, settings, ground, stop);
    if (!back) return back.error();
    advice.tiedBack = std::move(back).value();
    auto lifted = raised.update(plan, settings, ground, stop);
    if (!lifted) return lifted.error();
    advice.raised = std::move(lifted).value();
    if (with == With::Openings) {
      advice.findings = findingsOf(plan, seenIn(advice, settings, with));
      if (early) early(advice);
      if (auto failed = lookLonger(plan, settings, advice, stop)) return *failed;
    }
    advice.findings = findingsOf(plan, seenIn(advice, settings, with));
    advice.complete = with == With::Openings;
    return advice;
  }

  static Seen seenIn(const Advice& advice, const look::LookSettings& settings, With with) {
    Seen seen{settings.choice, &advice.down, &advice.tiedBack, &advice.raised, kRaised};
    if (with == With::Openings) seen.openings = &advice.openings;
    if (!advice.regrowth.empty()) seen.regrowth = &advice.regrowth;
    if (!advice.stripes.empty()) seen.stripes = &advice.stripes;
    return seen;
  }

  /// Regrowth and stripes, which take their own close looks.
  std::optional<Error> lookLonger(const plan::Plan& plan, const look::LookSettings& settings, Advice& advice,
                                  std::stop_token stop) {
    auto weeks = regrowth.update(plan, settings, stop);
    if (!weeks) return weeks.error();
    advice.regrowth = std::move(weeks).value();
    look::LookSettings worn = settings;
    worn.worn = {};
    auto ribbons = stripes.update(plan, worn, stop);
    if (!ribbons) return ribbons.error();
    advice.stripes = std::move(ribbons).value();
    return std::nullopt;
  }

  Result<look::Readings> wornDown(const plan::Plan& plan, look::LookSettings settings,
                                  std::stop_token stop) {
    settings.worn = {};
    if (!down) down.emplace(locks, kPixel_mm);
    const auto frame = down->update(plan, settings, {}, stop);
    if (!frame) return frame.error();
    return *frame->readings;
  }

  Result<Advice> lookAnew(const plan::Plan& plan, const look::LookSettings& settings, With with,
                          std::stop_token stop) {
    const auto readings = wornDown(plan, settings, stop);
    if (!readings) return readings.error();
    return look(plan, settings, *readings, with, stop);
  }

  /// Whether a finding is judged by the openings alone.
  static bool isAtOpening(const Finding& finding) {
    return finding.kind == FindingKind::LightBlock || finding.kind == FindingKind::DarkBlock ||
           finding.kind == FindingKind::RunAtOpening;
  }

  Result<std::vector<Remedy>> helpful(const plan::Plan& plan, const look::LookSettings& settings,
                                      const Advice& now, Finding finding, std::stop_token stop) {
    std::vector<std::pair<double, Remedy>> kept;
    std::vector<Remedy> candidates = candidatesFor(plan, finding);
    if (candidates.empty()) return candidates;
    if (!isAtOpening(finding)) {  // compared with the same locks
      auto own = lookAnew(plan, settings, With::ReadingsOnly, stop);
      if (!own) return own.error();
      if (finding.kind != FindingKind::RegrowthEarly && finding.kind != FindingKind::Stripes) {
        const auto size = sizeNow(*own, finding);
        if (!size) return std::vector<Remedy>{};  // so near its line that these locks do not show it
        finding.size = *size;
      }
    }
    const Assumptions lines(plan.info().assumptions);
    const Worst before(now.openings);
    for (Remedy& remedy : candidates) {
      const plan::Plan changed = plan::applied(plan, editOf(plan, remedy));
      Advice then;
      if (isAtOpening(finding)) {
        auto openings = sweep.update(changed, settings, stop);
        if (!openings) return openings.error();
        then.openings = std::move(openings).value();
        const Worst after(then.openings);
        // No block of the other kind in its place.
        if (after.light > std::max(before.light, lines["block.light_cm2"]) ||
            after.dark > std::max(before.dark, lines["block.dark_cm2"]))
          continue;
      } else {
        auto all = lookAnew(changed, settings, With::ReadingsOnly, stop);
        if (!all) return all.error();
        then = std::move(all).value();
        if (finding.kind == FindingKind::RegrowthEarly || finding.kind == FindingKind::Stripes) {
          if (auto failed = lookLonger(changed, settings, then, stop)) return *failed;
          then.findings = findingsOf(changed, seenIn(then, settings, With::ReadingsOnly));
        }
      }
      remedy.effect = effectOf(finding, sizeNow(then, finding));
      const double help = helpOf(finding, *remedy.effect);
      const bool firstAloneWillDo = std::any_of(kept.begin(), kept.end(), [&](const auto& other) {
        return other.second.kind == remedy.kind && other.second.pieces.size() < remedy.pieces.size() &&
               other.first > help - kWorthMorePieces;
      });
      if (help >= kLeastHelp && !firstAloneWillDo) kept.emplace_back(help, std::move(remedy));
    }
    std::stable_sort(kept.begin(), kept.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
    std::vector<Remedy> remedies;
    for (auto& [help, remedy] : kept)
      if (remedies.size() < kMostRemedies) remedies.push_back(std::move(remedy));
    return remedies;
  }
};

Advisor::Advisor(int locks) : state_(std::make_unique<State>(locks)) {}
Advisor::~Advisor() = default;
Advisor::Advisor(Advisor&&) noexcept = default;
Advisor& Advisor::operator=(Advisor&&) noexcept = default;

Result<Advice> Advisor::update(const plan::Plan& plan, const look::LookSettings& shown,
                               const look::Readings& down, Remedies remedies, std::stop_token stop,
                               const std::function<void(const Advice&)>& early) {
  const look::LookSettings judged = judgedOf(shown);
  const look::LookSettings& settings = judged;
  std::optional<look::Readings> own;
  if (!(judged == shown)) {
    auto worn = state_->wornDown(plan, judged, stop);
    if (!worn) return worn.error();
    own = std::move(worn).value();
  }
  auto advice = state_->look(plan, settings, own ? *own : down, State::With::Openings, stop,
                             remedies == Remedies::Try ? early : nullptr);
  if (!advice || remedies == Remedies::Leave) return advice;
  Advice full = std::move(advice).value();
  if (early) early(full);
  for (Finding& finding : full.findings) {
    auto helpful = state_->helpful(plan, settings, full, finding, stop);
    if (!helpful) return helpful.error();
    finding.remedies = std::move(helpful).value();
    finding.remediesTried = true;
    if (early) early(full);
  }
  return full;
}

Result<Advice> Advisor::withRanges(const plan::Plan& plan, const look::LookSettings& shown, Advice advice,
                                   std::stop_token stop) {
  auto ranged = state_->openingRange.apply(plan, judgedOf(shown), std::move(advice.openings), std::move(stop));
  if (!ranged) return ranged.error();
  advice.openings = std::move(ranged).value();
  return advice;
}

Result<Trial> Advisor::tried(const plan::Plan& plan, const look::LookSettings& settings,
                             const Remedy& remedy, std::stop_token stop) {
  Trial trial;
  trial.edit = editOf(plan, remedy);
  auto before = state_->lookAnew(plan, settings, State::With::Openings, stop);
  if (!before) return before.error();
  trial.before = std::move(before).value();
  if (trial.edit.empty()) {
    trial.after = trial.before;
    return trial;
  }
  auto after = state_->lookAnew(plan::applied(plan, trial.edit), settings, State::With::Openings, stop);
  if (!after) return after.error();
  trial.after = std::move(after).value();
  return trial;
}

}  // namespace combdraft::advise

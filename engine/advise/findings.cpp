#include "engine/advise/findings.h"

#include <algorithm>
#include <cmath>

#include "engine/advise/strips.h"
#include "engine/base/assumptions.h"
#include "engine/base/number_text.h"
#include "engine/look/target_check.h"
#include "engine/plan/hair_marks.h"

namespace combdraft::advise {
namespace {

using look::Region;
using look::RegionReading;
using plan::Action;
using plan::Piece;

constexpr std::array kUnderneath{Region::SideLeft,   Region::SideRight, Region::BackUpper,
                                 Region::BackMiddle, Region::BackEnds,  Region::Nape};
constexpr std::array<std::pair<Region, Region>, 6> kAboveBelow{
    std::pair{Region::Crown, Region::BackUpper},     std::pair{Region::BackUpper, Region::BackMiddle},
    std::pair{Region::BackMiddle, Region::BackEnds}, std::pair{Region::BackUpper, Region::Nape},
    std::pair{Region::Top, Region::SideLeft},        std::pair{Region::Top, Region::SideRight}};

const std::optional<look::Reading>& readingOf(const look::Readings& readings, Region region) {
  return readings.regions[static_cast<std::size_t>(region)].whole;
}

constexpr std::size_t kMostBlocks = 2;  // of a kind

class Search {
 public:
  Search(const plan::Plan& plan, const Seen& seen)
      : plan_(plan), seen_(seen), pieces_(plan.pieces(seen.choice)), lines_(plan.info().assumptions) {}

  std::vector<Finding> run() {
    // What was not placed is not judged: hair as it came in is the client's.
    if (pieces_.empty()) return {};
    if (seen_.openings) {
      blocks(FindingKind::LightBlock, &look::Opening::light, "block.light_cm2");
      blocks(FindingKind::DarkBlock, &look::Opening::dark, "block.dark_cm2");
      runs(&look::Opening::light, &look::Opening::lightRun, "block.light_cm2", "light");
      runs(&look::Opening::dark, &look::Opening::darkRun, "block.dark_cm2", "dark");
    }
    if (seen_.down && std::any_of(pieces_.begin(), pieces_.end(), [](const auto& p) {
          return p.second->action == Action::Lighten;
        })) {
      oneTone();
      tooLittleLeftOut();
      faceFrame();
      if (seen_.raised) bareUnderneath(*seen_.raised, seen_.raisedAs);
      if (seen_.raised) hardEdge();
      if (seen_.tiedBack) bareUnderneath(*seen_.tiedBack, {hair::WornWay::TiedBack});
      slowHairLast();
      greyMix();
      if (seen_.regrowth) regrowth();
      if (seen_.stripes) stripes();
    }
    if (seen_.down) targets();
    std::stable_sort(found_.begin(), found_.end(),
                     [](const Finding& a, const Finding& b) { return a.times > b.times; });
    return std::move(found_);
  }

 private:
  using PatchOf = look::Patch look::Opening::*;

  Finding& add(FindingKind kind, double size, double limit, std::string_view unit,
               std::string_view assumption, double times) {
    Finding finding;
    finding.kind = kind;
    finding.size = size, finding.limit = limit, finding.unit = unit;
    finding.assumption = assumption;
    finding.times = std::clamp(times, 1.0, 100.0);
    found_.push_back(std::move(finding));
    return found_.back();
  }
  void place(Finding& finding, const look::Opening& opening, const look::Patch& patch) {
    finding.at = patch.at;
    finding.worn = wornOf(opening);
    finding.pieces = patch.pieces;
  }

  // Of those that the same piece leads, the worst; the largest few.
  void blocks(FindingKind kind, PatchOf patchOf, const char* name) {
    const double limit = lines_[name];
    std::vector<const look::Opening*> over;
    for (const look::Opening& opening : seen_.openings->all)
      if ((opening.*patchOf).area_cm2 > limit) over.push_back(&opening);
    std::stable_sort(over.begin(), over.end(), [&](const auto* a, const auto* b) {
      return (a->*patchOf).area_cm2 > (b->*patchOf).area_cm2;
    });
    std::vector<plan::ItemId> named;
    for (const look::Opening* opening : over) {
      const look::Patch& patch = opening->*patchOf;
      const plan::ItemId lead = patch.pieces.empty() ? plan::ItemId() : patch.pieces.front();
      if (named.size() >= kMostBlocks || std::find(named.begin(), named.end(), lead) != named.end()) continue;
      named.push_back(lead);
      place(add(kind, patch.area_cm2, limit, "cm2", name, patch.area_cm2 / limit), *opening, patch);
    }
  }

  // A long narrow patch is no block and shows as a line all the same.
  void runs(PatchOf patchOf, look::Run look::Opening::*runOf, const char* area, const char* word) {
    const double limit = lines_["block.run_mm"];
    const look::Opening* worst = nullptr;
    for (const look::Opening& opening : seen_.openings->all) {
      const look::Run& run = opening.*runOf;
      if ((opening.*patchOf).area_cm2 > lines_[area] || run.length_mm <= limit) continue;
      if (!worst || run.length_mm > (worst->*runOf).length_mm) worst = &opening;
    }
    if (!worst) return;
    const look::Run& run = worst->*runOf;
    Finding& finding = add(FindingKind::RunAtOpening, run.length_mm, limit, "mm", "block.run_mm",
                           run.length_mm / limit);
    finding.at = run.at;
    finding.worn = wornOf(*worst);
    finding.pieces = run.pieces;
    finding.detail = word;
  }

  void oneTone() {
    double even = 0, all = 0;
    for (const RegionReading& r : seen_.down->regions) {
      if (!r.whole || r.contrast.verdict == look::ContrastVerdict::TooLittleHair) continue;
      all += r.whole->seen_mm2;
      // Mostly light or mostly dark hair is one tone because it was planned so.
      if (r.contrast.verdict == look::ContrastVerdict::OneTone && r.whole->light_share > 0.25 &&
          r.whole->light_share < 0.75)
        even += r.whole->seen_mm2;
    }
    const double limit = lines_["finding.oneTone_share"];
    if (all > 0 && even / all > limit)
      add(FindingKind::OneTone, even / all, limit, "of the hair", "finding.oneTone_share", even / all / limit);
  }

  void tooLittleLeftOut() {
    if (seen_.down->whole.seen_mm2 <= 0) return;
    const double dark = 1 - seen_.down->whole.light_share, limit = lines_["finding.leftOut_share"];
    if (dark < limit)
      add(FindingKind::TooLittleLeftOut, std::max(dark, 0.0), limit, "of the hair",
          "finding.leftOut_share", limit / std::max(dark, 0.01));
  }

  // A piece that lightens within 25 mm of the front hairline is meant for the face.
  void faceFrame() {
    const Strips strips(plan_);
    const double limit = lines_["finding.faceFrame_L"];
    for (const bool right : {false, true}) {
      std::vector<plan::ItemId> frame;
      for (const auto& [id, piece] : pieces_) {
        if (piece->action != Action::Lighten) continue;
        const auto at = std::count_if(piece->line.begin(), piece->line.end(), [&](const plan::ScalpPoint& p) {
          const Vec3 place = strips.shape().pointAt(p);
          const double turn = degrees(std::atan2(place.x(), place.y()));
          return (right ? turn >= 0 : turn <= 0) && std::abs(turn) < 75 &&
                 strips.hairline().above_mm(place) < 25;
        });
        if (at * 2 >= static_cast<long>(piece->line.size()) && at > 0) frame.push_back(id);
      }
      const Region region = right ? Region::FaceFrameRight : Region::FaceFrameLeft;
      const auto& reading = readingOf(*seen_.down, region);
      if (frame.empty() || !reading) continue;
      const double lighter = reading->lightness - seen_.down->whole.lightness;
      if (lighter >= limit) continue;
      Finding& finding = add(FindingKind::FaceFrameWeak, lighter, limit, "L*", "finding.faceFrame_L",
                             1 + (limit - lighter) / 5);
      finding.region = region;
      finding.detail = "only " + numberText(lighter, 1) + " steps (L*) lighter than";
      if (lighter < 0) finding.detail = numberText(-lighter, 1) + " steps (L*) darker than";
      finding.pieces = std::move(frame);
    }
  }

  // Hair that is light worn down and bare once it is lifted or tied.
  void bareUnderneath(const look::Readings& lifted, const hair::Worn& worn) {
    const double limit = lines_["finding.bare_share"];
    const bool tied = worn.way == hair::WornWay::TiedBack;
    std::optional<Region> largest;
    double area = 0, light = 0;
    for (const Region region : kUnderneath) {
      const auto& there = readingOf(lifted, region);
      if (!there || there->light_share >= limit) continue;
      const auto& down = readingOf(*seen_.down, region);
      const double worn_down =
          down && region != Region::Nape ? down->light_share : seen_.down->whole.light_share;
      if (worn_down < std::max(2 * limit, 0.1)) continue;
      if (tied && region == Region::Nape) {
        Finding& nape = add(FindingKind::NapeBare, there->light_share, limit, "of the hair",
                            "finding.bare_share", limit / std::max(there->light_share, 0.01));
        nape.region = region;
        nape.worn = worn;
        continue;
      }
      area += there->seen_mm2, light += there->seen_mm2 * there->light_share;
      if (!largest || there->seen_mm2 > readingOf(lifted, *largest)->seen_mm2) largest = region;
    }
    if (!largest) return;
    const double share = light / area;
    Finding& bare = add(FindingKind::BareUnderneath, share, limit, "of the hair", "finding.bare_share",
                        limit / std::max(share, 0.01));
    bare.region = largest;
    bare.worn = worn;
  }

  void hardEdge() {
    const double limit = lines_["finding.edge_L"];
    double worst = limit;
    std::optional<Region> at;
    for (const auto& [above, below] : kAboveBelow) {
      const auto &a = readingOf(*seen_.raised, above), &b = readingOf(*seen_.raised, below);
      if (!a || !b) continue;
      const double step = std::abs(a->lightness - b->lightness);
      const auto &c = readingOf(*seen_.down, above), &d = readingOf(*seen_.down, below);
      // What stands side by side worn down is no surprise.
      if (step <= worst || (c && d && std::abs(c->lightness - d->lightness) > step / 2)) continue;
      worst = step, at = below;
    }
    if (!at) return;
    Finding& finding = add(FindingKind::HardEdgeUnderneath, worst, limit, "L*", "finding.edge_L", worst / limit);
    finding.region = at;
    finding.worn = seen_.raisedAs;
  }

  // How far the last third of the order has to lift beyond the first third.
  void slowHairLast() {
    const Strips strips(plan_);
    std::vector<double> lifts;
    std::vector<plan::ItemId> ids;
    for (const auto& [id, piece] : pieces_) {
      if (piece->action != Action::Lighten || piece->line.empty()) continue;
      double natural = 10;
      for (const plan::HairZone zone : plan::zonesOf(strips.shape(), *piece))
        natural = std::min(natural, plan_.hair().level[static_cast<std::size_t>(zone)].root);
      lifts.push_back(piece->root.lifts.level - natural);
      ids.push_back(id);
    }
    const std::size_t third = lifts.size() / 3;
    if (third < 2) return;
    double first = 0, last = 0;
    for (std::size_t i = 0; i < third; ++i) {
      first += lifts[i] / static_cast<double>(third);
      last += lifts[lifts.size() - 1 - i] / static_cast<double>(third);
    }
    const double limit = lines_["finding.slow_levels"];
    if (last - first <= limit) return;
    Finding& finding = add(FindingKind::SlowHairLast, last - first, limit, "levels",
                           "finding.slow_levels", (last - first) / limit);
    finding.pieces.assign(ids.end() - static_cast<long>(third), ids.end());
  }

  void regrowth() {
    const double limit = lines_["finding.regrowth_weeks"];
    // Worn down, and only where its whole range is too soon: tied back it always shows sooner.
    const look::Regrowth* first = nullptr;
    for (const look::Regrowth& r : *seen_.regrowth)
      if (r.way == hair::WornWay::Down && r.week && r.latest && *r.latest < limit) first = &r;
    if (!first) return;
    add(FindingKind::RegrowthEarly, *first->week, limit, "weeks", "finding.regrowth_weeks",
        limit / std::max(*first->week, 0.5))
        .worn = {first->way};
  }

  // Looked at as in the salon mirror: what shows only from close by is no stripe.
  void stripes() {
    const double limit = lines_["finding.stripes_contrast"];
    const look::Stripes* worst = nullptr;
    const auto mirror = [](const look::Stripes& s) { return s.at[2]; };
    for (const look::Stripes& s : *seen_.stripes)
      if (s.judged && mirror(s).contrast > limit && (!worst || mirror(s).contrast > mirror(*worst).contrast)) worst = &s;
    if (!worst) return;
    Finding& finding = add(FindingKind::Stripes, mirror(*worst).contrast, limit, "", "finding.stripes_contrast",
                           mirror(*worst).contrast / limit);
    finding.region = worst->region;
    finding.detail = numberText(mirror(*worst).width_mm, 0) + " mm wide, from " +
                     numberText(mirror(*worst).distance_m, 0) + " m away";
  }

  // The rule stands with the readings (docs/engine-notes.md, "Readings").
  void greyMix() {
    const auto pale = [&](double share) -> Finding& {
      return add(FindingKind::GreyMix, share, 0, "of the hair", "", 1.5);
    };
    const RegionReading* worst = nullptr;
    for (const RegionReading& r : seen_.down->regions)
      if (r.whole && r.grey_mix && (!worst || r.whole->seen_mm2 > worst->whole->seen_mm2)) worst = &r;
    if (seen_.down->grey_mix) pale(seen_.down->whole.light_share);
    else if (worst) pale(worst->whole->light_share).region = worst->region;
  }

  void targets() {
    const plan::ItemId& id = seen_.choice.empty() ? plan_.info().activeChoice : seen_.choice;
    const auto* choice = plan_.find<plan::Choice>(id);
    if (!choice) return;
    const double limit = look::targetTolerance_levels(plan_.info().assumptions);
    for (const auto& [word, target] : choice->targets) {
      if (word == "whole") {
        if (seen_.down->whole.seen_mm2 > 0)
          missed(look::checkTarget(target, seen_.down->whole, nullptr, &seen_.down->contrast, limit), {}, limit);
        continue;
      }
      for (const RegionReading& r : seen_.down->regions)
        if (look::regionWord(r.region) == word && r.whole) missed(look::checkTarget(target, r, limit), r.region, limit);
    }
  }
  void missed(const look::TargetCheck& check, std::optional<Region> region, double limit) {
    if (!check.missed()) return;
    double off = 0;
    std::string words;
    const auto say = [&](double levels, const std::string& what) {
      off = std::max(off, std::abs(levels));
      words += (words.empty() ? "" : ", ") + what;
    };
    if (check.level)
      say(*check.level, "it looks " + numberText(std::abs(*check.level), 1) + " levels " +
                            (*check.level > 0 ? "lighter than" : "darker than") + " wanted");
    if (check.brightest)
      say(*check.brightest, "its lightest hair looks " + numberText(std::abs(*check.brightest), 1) + " levels lighter than allowed");
    if (check.darkest)
      say(*check.darkest, "its darkest hair looks " + numberText(std::abs(*check.darkest), 1) + " levels darker than allowed");
    if (check.contrast) say(0, "its contrast is not the one wanted");
    Finding& finding = add(FindingKind::TargetMissed, off, limit, "levels", "finding.target_levels",
                           std::max(1.0, off / limit));
    finding.region = region;
    finding.detail = words;
  }

  const plan::Plan& plan_;
  const Seen& seen_;
  std::vector<std::pair<plan::ItemId, const Piece*>> pieces_;
  Assumptions lines_;
  std::vector<Finding> found_;
};

}  // namespace

std::vector<Finding> findingsOf(const plan::Plan& plan, const Seen& seen) {
  return Search(plan, seen).run();
}

hair::Worn wornOf(const look::Opening& opening) {
  switch (opening.way) {
    case look::OpeningWay::Part: return {hair::WornWay::Down, opening.shift_mm};
    case look::OpeningWay::CrownOpened: return {hair::WornWay::CrownOpened};
    case look::OpeningWay::Blown: return {hair::WornWay::Blown};
    case look::OpeningWay::TiedBack: return {hair::WornWay::TiedBack};
  }
  return {};
}

}  // namespace combdraft::advise

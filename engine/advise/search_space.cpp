#include "engine/advise/search_space.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "engine/advise/rules.h"
#include "engine/advise/strips.h"
#include "engine/base/number_text.h"
#include "engine/plan/edits.h"
#include "engine/plan/hair_zone.h"
#include "engine/plan/plan_words.h"
#include "engine/plan/twins.h"

namespace combdraft::advise {
namespace {

using plan::ItemId;
using plan::Piece;

// How far a search may go [own].
constexpr double kThinnest_mm = 1, kWidest = 2, kGap_mm = 2;
constexpr double kLeastTaken = 0.3;
constexpr double kFartherStart_mm = 100, kOfLength = 0.6;
constexpr double kFartherComb_mm = 60, kFartherPush = 0.3;
constexpr double kBesideOpening_mm = 35;

double between(double low, double here, double high, double turn) {
  return turn < 0 ? here + turn * (here - low) : here + turn * (high - here);
}

double stepped(double value, double step, double asDrawn) {
  if (std::abs(value - asDrawn) < step / 2) return asDrawn;
  return std::round(value / step) * step;
}

}  // namespace

std::vector<ItemId> mayChange(const plan::Plan& plan, const ItemId& choice, const std::vector<ItemId>& wanted) {
  const std::set<ItemId> chosen(wanted.begin(), wanted.end());
  std::vector<ItemId> owners;
  for (const auto& [id, piece] : plan.pieces(choice)) {
    if (piece->action != plan::Action::Lighten || piece->held) continue;
    if (plan::followsSource(plan, *piece)) continue;  // its source speaks for it
    bool may = chosen.empty() || chosen.count(id);
    bool held = false;
    for (const ItemId& twin : plan::twinsOf(plan, id)) {
      const Piece& other = *plan.find<Piece>(twin);
      if (!plan::followsSource(plan, other)) continue;
      may = may || chosen.count(twin);
      held = held || other.held;
    }
    if (may && !held) owners.push_back(id);
  }
  return owners;
}

SearchSpace::SearchSpace(const plan::Plan& plan, const ItemId& choice, const std::vector<ItemId>& wanted)
    : plan_(plan), choice_(choice) {
  const Strips strips(plan);
  const auto all = plan.pieces(choice);
  std::map<ItemId, Strip> lying;
  for (const auto& [id, piece] : all)
    if (auto strip = strips.of(*piece)) lying.emplace(id, std::move(*strip));
  std::vector<Vec3> opening;
  for (const auto& point : plan.head().part) opening.push_back(strips.shape().pointAt(point));
  for (const auto& whorl : plan.head().whorls) opening.push_back(strips.shape().pointAt(whorl.at));

  std::map<std::string, std::size_t> groups;
  for (const ItemId& id : mayChange(plan, choice, wanted)) {
    if (!lying.count(id)) continue;
    const Piece* piece = plan.find<Piece>(id);
    Member member;
    member.id = id;
    for (const ItemId& twin : plan::twinsOf(plan, id))
      if (plan::followsSource(plan, *plan.find<Piece>(twin))) member.twins.push_back(twin);

    const Strip& strip = lying.at(id);
    double room = kGap_mm;  // to the nearest neighbour on either side
    for (double gap = 0; gap <= 12; gap += 2) {
      const bool meets = std::any_of(lying.begin(), lying.end(), [&](const auto& other) {
        return other.first != id && Strips::overlap(strip, other.second, gap);
      });
      if (meets) break;
      room = gap;
    }
    const bool moreLight = mayTakeMoreLight(plan, *piece), moreComb = mayBackcombMore(plan, *piece);
    const double thick = piece->thickness_mm;
    member.thinnest_mm = std::min(thick, std::max(kThinnest_mm, 0.3 * thick));
    member.thickest_mm =
        moreLight ? std::max(thick, std::min(kWidest * thick, thick + std::max(0.0, room - kGap_mm))) : thick;
    member.mostTaken_frac = moreLight ? 1 : piece->taken_frac;
    const Vec3 middle = strip.frame.pointAt(strip.frame.length_mm() / 2);
    const plan::HairZone zone = plan::zoneAt(strips.shape(), middle);
    const double length = plan.hair().length_mm[static_cast<std::size_t>(zone)];
    member.latestStart_mm = std::max(
        piece->start_mm, std::min({piece->start_mm + kFartherStart_mm, kOfLength * length,
                                   piece->stop_mm.value_or(1e9) - 20}));
    const plan::Backcomb& comb = piece->backcomb;
    member.leastComb_mm = moreLight ? 0 : comb.depth_mm;
    member.leastPushed_frac = moreLight ? 0 : comb.pushed_frac;
    member.mostComb_mm =
        moreComb ? std::max(comb.depth_mm, std::min(std::max(comb.depth_mm, piece->start_mm) + kFartherComb_mm, 0.8 * length))
                 : comb.depth_mm;
    member.mostPushed_frac = moreComb ? std::max(comb.pushed_frac, std::min(comb.pushed_frac + kFartherPush, 0.7)) : comb.pushed_frac;

    const bool beside = std::any_of(opening.begin(), opening.end(), [&](const Vec3& at) {
      const auto place = strip.frame.placeOf(at, kBesideOpening_mm);
      return place && std::abs(place->across_mm) < kBesideOpening_mm;
    });
    std::string name(plan::wordOf(zone));
    if (beside) name += ", beside the opening";
    const auto [found, fresh] = groups.emplace(name, groups_.size());
    if (fresh) groups_.push_back({name});
    member.group = found->second;
    pieces_.push_back(std::move(member));
  }
}

std::vector<Bounds> SearchSpace::bounds(const std::vector<Turn>& allowed) const {
  std::vector<Bounds> all(numbers());
  for (const Turn turn : allowed)
    for (std::size_t g = 0; g < groups_.size(); ++g) {
      Bounds& b = all[g * kTurns + static_cast<std::size_t>(turn)];
      for (const Member& m : pieces_) {
        if (m.group != g) continue;
        const Piece& p = *plan_.find<Piece>(m.id);
        switch (turn) {
          case Turn::Thickness:
            b.low = -1;
            if (m.thickest_mm > p.thickness_mm) b.high = 1;
            break;
          case Turn::Share:
            b.low = -1;
            if (m.mostTaken_frac > p.taken_frac) b.high = 1;
            break;
          case Turn::Start:
            if (m.latestStart_mm > p.start_mm) b.high = 1;
            break;
          case Turn::Backcomb:
            if (m.leastComb_mm < p.backcomb.depth_mm) b.low = -1;
            if (m.mostComb_mm > p.backcomb.depth_mm) b.high = 1;
            break;
        }
      }
    }
  return all;
}

std::vector<ItemId> SearchSpace::owners() const {
  std::vector<ItemId> ids;
  for (const Member& m : pieces_) ids.push_back(m.id);
  return ids;
}

void SearchSpace::quieten(const std::vector<ItemId>& makers, Quiet how) {
  quiet_ = how;
  for (Member& m : pieces_)
    for (const ItemId& id : makers)
      if (id == m.id || std::find(m.twins.begin(), m.twins.end(), id) != m.twins.end())
        m.quiet = std::min(1.0, m.quiet + 0.34);
}

Piece SearchSpace::turned(const Piece& piece, const Member& m, const std::vector<double>& numbers) const {
  const auto number = [&](Turn turn) { return numbers[m.group * kTurns + static_cast<std::size_t>(turn)]; };
  Piece now = piece;
  const double thickness = between(m.thinnest_mm, piece.thickness_mm, m.thickest_mm, number(Turn::Thickness));
  const double taken = between(std::min(kLeastTaken, piece.taken_frac), piece.taken_frac, m.mostTaken_frac, number(Turn::Share));
  const double start = between(piece.start_mm, piece.start_mm, m.latestStart_mm, number(Turn::Start));
  const double thinner = quiet_ == Quiet::ByStart ? 0 : m.quiet;
  now.thickness_mm = std::clamp(stepped(thickness + thinner * (std::min(m.thinnest_mm, thickness) - thickness), 0.5, piece.thickness_mm),
                                m.thinnest_mm, m.thickest_mm);
  now.taken_frac = std::clamp(stepped(taken, 0.05, piece.taken_frac), std::min(kLeastTaken, piece.taken_frac), m.mostTaken_frac);
  now.start_mm = std::clamp(stepped(start + m.quiet * (m.latestStart_mm - start) * (quiet_ == Quiet::ByStart ? 1 : 0.5), 5, piece.start_mm),
                            piece.start_mm, m.latestStart_mm);
  const plan::Backcomb& comb = piece.backcomb;
  const double turn = number(Turn::Backcomb);
  now.backcomb.depth_mm = std::clamp(stepped(between(m.leastComb_mm, comb.depth_mm, m.mostComb_mm, turn), 5, comb.depth_mm),
                                     m.leastComb_mm, m.mostComb_mm);
  now.backcomb.pushed_frac = std::clamp(stepped(between(m.leastPushed_frac, comb.pushed_frac, m.mostPushed_frac, turn), 0.05, comb.pushed_frac),
                                        m.leastPushed_frac, m.mostPushed_frac);
  // Hair pushed no farther than the start is not pushed at all.
  if (now.start_mm > piece.start_mm && now.backcomb.depth_mm <= now.start_mm)
    now.backcomb.depth_mm = now.backcomb.pushed_frac = 0;
  if (now.backcomb.depth_mm == 0 || now.backcomb.pushed_frac == 0)
    if (!(now.backcomb == comb)) now.backcomb.depth_mm = now.backcomb.pushed_frac = 0;
  return now;
}

plan::Plan SearchSpace::tried(const std::vector<double>& numbers, const std::vector<ItemId>& gone) const {
  plan::Plan changed = plan_;
  for (const Member& m : pieces_) {
    const bool goes = std::find(gone.begin(), gone.end(), m.id) != gone.end();
    std::vector<ItemId> both = m.twins;
    both.push_back(m.id);
    for (const ItemId& id : both) {
      if (goes) {
        changed.put(id, plan::ItemPtr{});
        continue;
      }
      const Piece& piece = *plan_.find<Piece>(id);
      Piece now = turned(piece, m, numbers);
      if (!(now == piece)) changed.put(id, std::move(now));
    }
  }
  return changed;
}

plan::ChangeSet SearchSpace::edit(const std::vector<double>& numbers, const std::vector<ItemId>& gone) const {
  plan::Plan changed = plan_;
  std::vector<ItemId> going;
  for (const Member& m : pieces_)
    if (std::find(gone.begin(), gone.end(), m.id) != gone.end()) {
      going.push_back(m.id);
      going.insert(going.end(), m.twins.begin(), m.twins.end());
    } else {
      changed = plan::applied(changed, plan::changePieces(changed, {m.id}, [&](Piece& piece) {
        piece = turned(piece, m, numbers);
      }));
    }
  if (!going.empty()) changed = plan::applied(changed, plan::removeItems(changed, going));
  return plan::difference(plan_, changed, plan::EditKind::ChangePieces, owners());
}

std::vector<std::string> SearchSpace::sayings(const plan::ChangeSet& edit) const {
  const plan::Plan after = plan::applied(plan_, edit);
  struct Saying {
    double weight;
    std::string text;
  };
  std::vector<Saying> all;
  for (std::size_t g = 0; g < groups_.size(); ++g) {
    double was[5] = {}, is[5] = {};
    int staying = 0, gone = 0;
    for (const Member& m : pieces_) {
      if (m.group != g) continue;
      const int both = 1 + static_cast<int>(m.twins.size());
      const Piece& old = *plan_.find<Piece>(m.id);
      const Piece* now = after.find<Piece>(m.id);
      if (!now) {
        gone += both;
        continue;
      }
      staying += both;
      const double b[5] = {old.thickness_mm, old.taken_frac * 100, old.start_mm, old.backcomb.depth_mm, old.backcomb.pushed_frac * 100};
      const double a[5] = {now->thickness_mm, now->taken_frac * 100, now->start_mm, now->backcomb.depth_mm, now->backcomb.pushed_frac * 100};
      for (int k = 0; k < 5; ++k) was[k] += both * b[k], is[k] += both * a[k];
    }
    if (gone > 0)
      all.push_back({100.0 + gone, groups_[g].name + ": " + std::to_string(gone) + (gone == 1 ? " piece" : " pieces") + " left out"});
    if (staying == 0) continue;
    for (int k = 0; k < 5; ++k) was[k] /= staying, is[k] /= staying;
    constexpr double kWorth[5] = {1, 5, 5, 10, 5};  // a change of this much is worth the same
    const auto changed = [&](int k) { return std::abs(is[k] - was[k]) >= 0.5 * kWorth[k]; };
    const std::string mean = staying > 1 ? "on average " : "";
    const auto fromTo = [&](const std::string& what, int k, const char* unit) {
      return what + " " + mean + numberText(was[k], k == 0 ? 1 : 0) + " to " + numberText(is[k], k == 0 ? 1 : 0) + unit;
    };
    std::vector<std::string> parts;
    if (changed(0)) parts.push_back(fromTo("thickness", 0, " mm"));
    if (changed(1)) parts.push_back(fromTo("taken share", 1, " %"));
    if (changed(2)) parts.push_back(fromTo("start", 2, " mm off the scalp"));
    if (changed(3) && is[3] < 1) parts.push_back("no backcomb (" + mean + numberText(was[3], 0) + " mm before)");
    else if (changed(3)) parts.push_back(fromTo("backcomb depth", 3, " mm"));
    else if (changed(4)) parts.push_back(fromTo("pushed share", 4, " %"));
    if (parts.empty()) continue;
    std::string text = groups_[g].name + " (" + std::to_string(staying) + (staying == 1 ? " piece): " : " pieces): ");
    for (std::size_t i = 0; i < parts.size(); ++i) text += (i ? ", " : "") + parts[i];
    double most = 0;
    for (int k = 0; k < 5; ++k) most = std::max(most, std::abs(is[k] - was[k]) / kWorth[k]);
    all.push_back({most * std::sqrt(static_cast<double>(staying)), std::move(text)});
  }
  std::stable_sort(all.begin(), all.end(), [](const Saying& a, const Saying& b) { return a.weight > b.weight; });
  std::vector<std::string> texts;
  for (Saying& saying : all) texts.push_back(std::move(saying.text));
  return texts;
}

}  // namespace combdraft::advise

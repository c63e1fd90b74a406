#include "engine/advise/remedies.h"

#include <algorithm>
#include <cmath>

#include "engine/advise/rules.h"
#include "engine/advise/strips.h"

namespace combdraft::advise {
namespace {

using look::Region;
using plan::Action;
using plan::ItemId;
using plan::Piece;

// Amounts that are tried first [own]: hand sizes, not findings of ours.
constexpr double kThinStrip_mm = 2, kLightPiece_mm = 3, kLeftOut_mm = 8;
constexpr double kBelowOpening_mm = 80, kFartherComb_mm = 50, kFartherStart_mm = 30;

class Candidates {
 public:
  Candidates(const plan::Plan& plan, const Finding& finding)
      : plan_(plan), finding_(finding), strips_(plan) {}

  std::vector<Remedy> run() {
    switch (finding_.kind) {
      case FindingKind::LightBlock: lightPatch(); break;
      case FindingKind::DarkBlock: darkPatch(); break;
      case FindingKind::RunAtOpening: finding_.detail == "dark" ? darkPatch() : lightPatch(); break;
      case FindingKind::OneTone:
      case FindingKind::TooLittleLeftOut: moreShadow(); break;
      case FindingKind::Stripes: finer(); break;
      case FindingKind::BareUnderneath:
      case FindingKind::NapeBare: lightUnderneath(); break;
      case FindingKind::HardEdgeUnderneath: softer(lightening(finding_.pieces)); break;
      case FindingKind::RegrowthEarly: softer(nearestStarts()); break;
      case FindingKind::FaceFrameWeak: holdTheFace(); break;
      case FindingKind::TargetMissed: towardTarget(); break;
      case FindingKind::GreyMix: offer(RemedyKind::TakeLess, lightening(finding_.pieces), 0.6); break;
      case FindingKind::SlowHairLast: break;  // the order is the hand's own; nothing of placement helps
    }
    return std::move(found_);
  }

 private:
  const Piece* find(const ItemId& id) const { return plan_.find<Piece>(id); }

  void offer(RemedyKind kind, std::vector<ItemId> ids, double amount,
             std::vector<plan::ScalpPoint> line = {}) {
    if (ids.empty()) return;
    Remedy remedy{kind, std::move(ids), amount, std::move(line), std::nullopt};
    if (!editOf(plan_, remedy).empty()) found_.push_back(std::move(remedy));
  }

  std::vector<ItemId> ofAction(const std::vector<ItemId>& ids, Action action) const {
    std::vector<ItemId> some;
    for (const ItemId& id : ids)
      if (const Piece* piece = find(id); piece && piece->action == action && !piece->held) some.push_back(id);
    return some;
  }
  /// Of `ids`, or of all pieces when there are none, those that lighten and may change.
  std::vector<ItemId> lightening(std::vector<ItemId> ids) const {
    if (ids.empty())
      for (const auto& [id, piece] : plan_.pieces()) ids.push_back(id);
    return ofAction(ids, Action::Lighten);
  }
  double thickest(const std::vector<ItemId>& ids) const {
    double most = 0;
    for (const ItemId& id : ids) most = std::max(most, find(id)->thickness_mm);
    return most;
  }
  double latestStart(const std::vector<ItemId>& ids) const {
    double most = 0;
    for (const ItemId& id : ids) most = std::max(most, find(id)->start_mm);
    return most;
  }
  double deepestComb(const std::vector<ItemId>& ids) const {
    double most = 0;
    for (const ItemId& id : ids) most = std::max(most, find(id)->backcomb.depth_mm);
    return most;
  }
  static double halfMillimetres(double value) { return std::round(value * 2) / 2; }

  void lightPatch() {
    const std::vector<ItemId> light = lightening(finding_.pieces);
    if (light.empty()) return;
    for (const std::size_t count : {std::size_t{1}, std::size_t{3}}) {
      if (count > 1 && light.size() < 2) break;
      const std::vector<ItemId> few(light.begin(), light.begin() + static_cast<long>(std::min(count, light.size())));
      const double thick = thickest(few);
      if (thick > kThinStrip_mm) offer(RemedyKind::Thinner, few, std::max(kThinStrip_mm, halfMillimetres(thick / 3)));
      if (thick > 2 * kThinStrip_mm) offer(RemedyKind::SplitWidth, few, kThinStrip_mm);
      offer(RemedyKind::TakeLess, few, 0.4);
      offer(RemedyKind::StartLower, few, std::max(kBelowOpening_mm, latestStart(few) + kFartherStart_mm));
      offer(RemedyKind::MoreBackcomb, few, std::max(kBelowOpening_mm, deepestComb(few) + kFartherComb_mm));
    }
    const std::vector<ItemId> first{light.front()};
    const auto strip = strips_.of(*find(light.front()));
    if (!strip) return;
    const double length = strip->frame.length_mm();
    if (length > 30) offer(RemedyKind::DropMiddleOfLength, first, std::round(length / 3));
    if (strip->thickness_mm >= 5) offer(RemedyKind::DropMiddleOfWidth, first, halfMillimetres(strip->thickness_mm * 0.5));
    offer(RemedyKind::BreakWithLeftOut, light, kLeftOut_mm, acrossPatch(light));
  }

  /// A line across the first piece where the patch is, long enough for all of them.
  std::vector<plan::ScalpPoint> acrossPatch(const std::vector<ItemId>& ids) const {
    const auto strip = strips_.of(*find(ids.front()));
    if (!strip) return {};
    double along = strip->frame.length_mm() / 2, half = strip->thickness_mm / 2 + 2;
    if (finding_.at)
      if (const auto place = strip->frame.placeOf(strips_.shape().pointAt(*finding_.at), 60))
        along = std::clamp(place->along_mm, 0.2 * strip->frame.length_mm(), 0.8 * strip->frame.length_mm());
    const Vec3 here = strip->frame.pointAt(along);
    for (const ItemId& id : ids)
      if (const auto other = strips_.of(*find(id)))
        if (const auto place = other->frame.placeOf(here, 40))
          half = std::max(half, std::abs(place->across_mm) + other->thickness_mm / 2 + 2);
    return strips_.across(*strip, along, std::min(half, 40.0));
  }

  void darkPatch() {
    const std::vector<ItemId> outs = ofAction(finding_.pieces, Action::LeaveOut);
    const std::vector<ItemId> light = lightening(finding_.pieces);
    // What the added piece is like: the lightest hand nearby, or any.
    std::vector<ItemId> models = light.empty() ? lightening({}) : light;
    if (models.empty()) return;
    if (!outs.empty()) {
      const Piece& out = *find(outs.front());
      if (out.thickness_mm > kLightPiece_mm + 1)
        offer(RemedyKind::AddLightPiece, {models.front(), outs.front()}, kLightPiece_mm, strips_.beside(out, 0));
      offer(RemedyKind::Thinner, {outs.front()}, std::max(1.0, halfMillimetres(out.thickness_mm / 3)));
    }
    if (finding_.at) offer(RemedyKind::AddLightPiece, {models.front()}, kLightPiece_mm, throughPatch(models.front()));
    offer(RemedyKind::MorePieces, {models.front()}, 1);
  }

  /// The line of a piece carried over so that it runs through the patch.
  std::vector<plan::ScalpPoint> throughPatch(const ItemId& model) const {
    const auto strip = strips_.of(*find(model));
    if (!strip) return {};
    const auto place = strip->frame.placeOf(strips_.shape().pointAt(*finding_.at), 120);
    if (!place) return {};
    auto line = strips_.beside(*find(model), std::clamp(place->across_mm, -80.0, 80.0));
    return strips_.isInHair(line) ? line : std::vector<plan::ScalpPoint>{};
  }

  void moreShadow() {
    const std::vector<ItemId> light = lightening(finding_.pieces);
    offer(RemedyKind::TakeLess, light, 0.5);
    std::vector<ItemId> every;
    for (std::size_t i = 1; i < light.size(); i += 2) every.push_back(light[i]);
    offer(RemedyKind::FewerPieces, every, static_cast<double>(every.size()));
    if (const double thick = thickest(light); thick > kThinStrip_mm)
      offer(RemedyKind::Thinner, light, std::max(kThinStrip_mm, halfMillimetres(thick / 2)));
    softer(light);
  }

  void finer() {
    const std::vector<ItemId> light = lightening(finding_.pieces);
    if (const double thick = thickest(light); thick > kThinStrip_mm)
      offer(RemedyKind::Thinner, light, std::max(kThinStrip_mm, halfMillimetres(thick / 2)));
    offer(RemedyKind::TakeLess, light, 0.5);
    softer(light);
  }

  void softer(const std::vector<ItemId>& ids) {
    offer(RemedyKind::StartLower, ids, latestStart(ids) + kFartherStart_mm);
    offer(RemedyKind::MoreBackcomb, ids, std::max(60.0, deepestComb(ids) + kFartherComb_mm));
  }

  /// Pieces that start within 10 mm of the nearest start: they grow out first.
  std::vector<ItemId> nearestStarts() const {
    const double least = leastStart_mm(plan_).value_or(0);
    std::vector<ItemId> near;
    for (const ItemId& id : lightening(finding_.pieces))
      if (find(id)->start_mm < least + 10) near.push_back(id);
    return near;
  }

  // A level line across the back of the head under the region, or along a side.
  void lightUnderneath() {
    const std::vector<ItemId> models = lightening({});
    if (models.empty() || !finding_.region) return;
    const bool side = *finding_.region == Region::SideLeft || *finding_.region == Region::SideRight;
    const double middle = !side ? 180 : *finding_.region == Region::SideRight ? 98 : -98;
    const double half = side ? 18 : 24;
    for (const double above_mm : {12.0, 24.0}) {
      std::vector<plan::ScalpPoint> line;
      for (int i = 0; i <= 8; ++i) {
        const double azimuth = middle - half + 2 * half * i / 8;
        const Vec3 edge = strips_.hairline().pointAt(azimuth);
        line.push_back(strips_.shape().scalpPointAt(
            strips_.shape().pointAlong(edge + Vec3(0, 0, above_mm))));
      }
      if (strips_.isInHair(line)) offer(RemedyKind::AddLightPiece, {models.front()}, kLightPiece_mm, line);
    }
  }

  // Hair from the front end of the part falls over all of the front hairline.
  void holdTheFace() {
    const std::vector<ItemId> models = lightening(finding_.pieces);
    if (models.empty() || !finding_.region) return;
    const double side = *finding_.region == Region::FaceFrameRight ? 1 : -1;
    std::vector<plan::ScalpPoint> line;
    for (const double turn : {4.0, 14.0, 24.0}) {
      const Vec3 edge = strips_.hairline().pointAt(side * turn);
      line.push_back(strips_.shape().scalpPointAt(strips_.shape().pointAlong(edge + Vec3(0, 0, 6))));
    }
    offer(RemedyKind::AddLightPiece, {models.front()}, 2 * kLightPiece_mm, std::move(line));
    offer(RemedyKind::MorePieces, {models.front()}, 1);
  }

  void towardTarget() {
    const std::vector<ItemId> light = lightening(finding_.pieces);
    if (light.empty()) return;
    if (finding_.detail.find("lighter than") != std::string::npos) {
      offer(RemedyKind::TakeLess, light, 0.6);
      softer(light);
      std::vector<ItemId> every;
      for (std::size_t i = 1; i < light.size(); i += 2) every.push_back(light[i]);
      offer(RemedyKind::FewerPieces, every, static_cast<double>(every.size()));
    } else {
      offer(RemedyKind::MorePieces, light, static_cast<double>(light.size()));
    }
  }

  const plan::Plan& plan_;
  const Finding& finding_;
  Strips strips_;
  std::vector<Remedy> found_;
};

}  // namespace

std::vector<Remedy> candidatesFor(const plan::Plan& plan, const Finding& finding) {
  return Candidates(plan, finding).run();
}

}  // namespace combdraft::advise

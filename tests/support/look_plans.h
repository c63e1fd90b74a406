#pragma once
// Plans, pieces and coloured heads for the tests of the look. Everything is
// built here, nothing is read from a file.
#include <algorithm>
#include <cmath>
#include <memory>
#include <numeric>
#include <utility>
#include <vector>

#include "engine/look/head_hair.h"
#include "engine/look/lock_colours.h"
#include "engine/look/region_sums.h"
#include "engine/plan/plan.h"

namespace combdraft::test {

/// The place on a head at an azimuth (0 front, 90 wearer's right, 180 back) and
/// a height over the head centre, mm.
inline plan::ScalpPoint placeAtHeight(const head::HeadShape& shape, double azimuth_deg,
                                      double height_mm) {
  double up = 0, down = 160;  // drop, degrees: height falls with it
  for (int i = 0; i < 60; ++i) {
    const double middle = (up + down) / 2;
    (shape.pointAt({azimuth_deg, middle}).z() > height_mm ? up : down) = middle;
  }
  return {azimuth_deg, up};
}

/// A lightening slice along `line`: level 9, toned level 9, no backcomb.
inline plan::Piece slice(std::vector<plan::ScalpPoint> line, double thickness_mm) {
  plan::Piece piece;
  piece.choice = "choice-1";
  piece.line = std::move(line);
  piece.thickness_mm = thickness_mm;
  piece.root.finish = plan::FinishesAt{9, plan::Tone::Beige};
  return piece;
}

/// Where the way from a place inside the head, along a unit direction, comes out.
inline Vec3 surfaceFrom(const head::HeadShape& shape, const Vec3& inside, const Vec3& direction) {
  double in = 0, out = 260;
  for (int i = 0; i < 60; ++i) {
    const double middle = (in + out) / 2;
    (shape.implicit(inside + middle * direction) < 0 ? in : out) = middle;
  }
  return inside + in * direction;
}

/// A level slice at the back, `width_mm` from end to end in the back view.
inline plan::Piece backSlice(const head::HeadShape& shape, double height_mm, double width_mm,
                             double thickness_mm) {
  std::vector<plan::ScalpPoint> line;
  for (int i = 0; i <= 8; ++i)
    line.push_back(shape.scalpPointAt(surfaceFrom(
        shape, {width_mm * (i / 8.0 - 0.5), -10, height_mm}, -Vec3::UnitY())));
  return slice(line, thickness_mm);
}

/// A slice from front to back at a distance beside the centre line, mm.
inline plan::Piece topSlice(const head::HeadShape& shape, double x_mm, double fromY_mm,
                            double toY_mm, double thickness_mm) {
  std::vector<plan::ScalpPoint> line;
  for (int i = 0; i <= 8; ++i)
    line.push_back(shape.scalpPointAt(surfaceFrom(
        shape, {x_mm, fromY_mm + (toY_mm - fromY_mm) * i / 8, 0}, Vec3::UnitZ())));
  return slice(line, thickness_mm);
}

/// Rings of one piece's kind that take in the whole head of hair: no root is
/// left between them (they overlap; the earlier has the hair).
inline std::vector<plan::Piece> ringsOverAll(const head::HeadShape& shape, const plan::Piece& kind) {
  std::vector<plan::Piece> rings;
  for (double height = 86; height > -96; height -= 10) {
    plan::Piece ring = kind;
    ring.thickness_mm = 24;
    ring.line.clear();
    for (int i = 0; i <= 60; ++i) ring.line.push_back(placeAtHeight(shape, -180 + i * 6.0, height));
    rings.push_back(ring);
  }
  plan::Piece top = kind;  // the vertex itself
  top.thickness_mm = 50;
  top.line = {{0, 22}, {0, 11}, {0, 0.1}, {180, 11}, {180, 22}};
  rings.push_back(top);
  return rings;
}

inline void addPiece(plan::Plan& plan, plan::Piece piece) {
  piece.order = static_cast<int>(plan.pieces().size()) + 1;
  plan.put(plan.freeId("piece"), piece);
}

/// A usual mixture: slices beside the part, round the head and at the front
/// hairline, with backcomb, on both sides but not alike.
inline plan::Plan mixedPlan(std::uint64_t number) {
  plan::Plan plan = plan::Plan::fresh(number);
  const head::HeadShape shape;
  for (const double height : {70.0, 56.0, 42.0, 28.0, 12.0, -4.0, -20.0}) {
    plan::Piece piece = backSlice(shape, height, 90, 5);
    piece.backcomb = {70, 0.4, 28};
    addPiece(plan, piece);
  }
  for (const double x : {10.0, 24.0, 38.0, -14.0, -30.0}) addPiece(plan, topSlice(shape, x, 60, -20, 5));
  for (const double side : {1.0, -1.0})
    for (const double height : {40.0, 26.0, 12.0}) {
      std::vector<plan::ScalpPoint> line;
      for (int i = 0; i <= 6; ++i)
        line.push_back(placeAtHeight(shape, side * (62 + 10.0 * i), height));
      plan::Piece piece = slice(line, side > 0 ? 6 : 4);
      piece.start_mm = 12;
      addPiece(plan, piece);
    }
  for (const double side : {1.0, -1.0}) {  // the front triangle beside the part's end
    plan::Piece piece = slice({placeAtHeight(shape, side * 4, 52), placeAtHeight(shape, side * 16, 50),
                               placeAtHeight(shape, side * 30, 50)}, 8);
    piece.start_mm = 5;
    addPiece(plan, piece);
  }
  return plan;
}

/// A traced head with its locks coloured by a plan.
class ColouredHair {
 public:
  ColouredHair(const plan::Plan& plan, int locks, const look::LookSettings& settings = {},
               double pixel_mm = 1, double step_mm = 4)
      : hair_(look::HeadHair::build(plan, settings.worn, locks, pixel_mm, step_mm, {}).value()) {
    update(plan, settings);
  }
  std::vector<std::uint32_t> update(const plan::Plan& plan, const look::LookSettings& settings = {}) {
    settings_ = settings;
    return colours_.update(plan, settings,
                           {hair_->shape(), hair_->roots(), hair_->grid(), hair_->locks(), hair_->seed()});
  }
  look::Readings readings() const {
    std::vector<std::uint32_t> all(hair_->locks().size());
    std::iota(all.begin(), all.end(), 0u);
    look::RegionSums sums;
    sums.add(hair_->seen(), hair_->locks(), colours_, all, 1);
    return look::readingsFrom(sums, hair_->seen(), hair_->locks(), settings_.light);
  }
  const look::HeadHair& hair() const { return *hair_; }
  const look::LockColours& colours() const { return colours_; }

  /// Share of the hair seen in a view (all five when -1) that is light.
  double lightSeen(int view) const {
    double light = 0, area = 0;
    for (std::uint32_t lock = 0; lock < hair_->seen().locks(); ++lock)
      for (const visibility::SeenEntry& e : hair_->seen().entriesOf(lock)) {
        if (view >= 0 && e.view != view) continue;
        const double weight = view >= 0 ? e.area_mm2 : e.shared_mm2;
        area += weight, light += weight * static_cast<double>(colours_.at(lock, e.bin).light);
      }
    return light / area;
  }
  /// Share of all hairs that a piece has taken.
  double taken() const {
    double count = 0;
    for (std::uint32_t lock = 0; lock < hair_->locks().size(); ++lock)
      if (colours_.pieceOf(lock)) ++count;
    return count / static_cast<double>(hair_->locks().size());
  }

 private:
  std::shared_ptr<const look::HeadHair> hair_;
  look::LockColours colours_;
  look::LookSettings settings_;
};

/// Regions large enough for the claims about accuracy.
constexpr double kLargeRegion_mm2 = 2500;
inline bool isLarge(const look::RegionReading& r) {
  return r.whole && r.whole->seen_mm2 >= kLargeRegion_mm2;
}

constexpr int kBackView = 1;

}  // namespace combdraft::test

#pragma once
// The geometry that remedies and rules need of pieces: their strips on one head.
#include "engine/head/hairline.h"
#include "engine/head/strip_frame.h"
#include "engine/plan/plan.h"

namespace combdraft::advise {

/// A piece's line with a length, on the surface of its head.
struct Strip {
  head::StripFrame frame;
  double thickness_mm;
};

class Strips {
 public:
  /// The head of a plan; the mean one when its measures are refused.
  explicit Strips(const plan::Plan& plan);

  const head::HeadShape& shape() const { return shape_; }
  const head::Hairline& hairline() const { return hairline_; }
  /// Nothing when the line has no length.
  std::optional<Strip> of(const plan::Piece& piece) const;

  /// A line beside a piece's own, `left_mm` to the left of travel seen from
  /// outside; empty when the piece has no length.
  std::vector<plan::ScalpPoint> beside(const plan::Piece& piece, double left_mm) const;
  /// A line straight across a piece, reaching `half_mm` to either side of it.
  std::vector<plan::ScalpPoint> across(const Strip& strip, double along_mm, double half_mm) const;

  /// Whether `inner` lies within `outer`, both as strips (0.6 mm to spare).
  static bool contains(const Strip& outer, const Strip& inner);
  /// Whether the strips share scalp, `gap_mm` apart counting as sharing.
  static bool overlap(const Strip& a, const Strip& b, double gap_mm = 0);
  /// Whether a whole line is inside the hair.
  bool isInHair(const std::vector<plan::ScalpPoint>& line) const;

 private:
  head::HeadShape shape_;
  head::Hairline hairline_;
};

}  // namespace combdraft::advise

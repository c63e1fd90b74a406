#pragma once
// A piece on the scalp as a true strip: its centre line walked on the surface
// and its two edges half the thickness square to it. Millimetres, head frame.
#include <vector>

#include "engine/head/head_shape.h"
#include "engine/head/sheet_view.h"
#include "engine/plan/plan.h"

namespace combdraft::paint {

struct StripSample {
  double along_mm = 0;  ///< from the first point, on the surface
  Vec3 centre, a, b;    ///< centre line and both edges; `b` is the lower edge
  Vec3 normal;          ///< outward, at the centre line
};
using Strip = std::vector<StripSample>;

/// Walks through `points` on the surface, at most `step_mm` apart. Empty when
/// fewer than two distinct points.
std::vector<Vec3> surfaceLine(const head::HeadShape& shape,
                              const std::vector<head::ScalpPoint>& points, double step_mm = 1.5);

/// The strip of a line with a full width. Accuracy: edges within 0.1 mm of the
/// surface offset for widths up to 30 mm (walked in short steps).
Strip makeStrip(const head::HeadShape& shape, const std::vector<head::ScalpPoint>& points,
                double thickness_mm);

/// Part of a strip between two distances along it, ends interpolated; empty
/// when nothing lies between.
Strip stripBetween(const Strip& strip, double from_mm, double to_mm);
double stripLength_mm(const Strip& strip);

enum class Sight { Seen, Hidden };
struct StripRun {
  Sight sight{};
  Strip strip;
};
/// Splits a strip where it passes behind the head in a view.
std::vector<StripRun> splitBySight(const head::SheetView& view, const Strip& strip);

struct LineRun {
  Sight sight{};
  std::vector<Vec3> points;
};
std::vector<LineRun> splitBySight(const head::HeadShape& shape, const head::SheetView& view,
                                  const std::vector<Vec3>& line);

/// Stretches [from, to] of the line where hair is taken: the whole line, or the
/// teeth of a weave; drop-outs cut away. At most 2,000 stretches.
std::vector<plan::Stretch> takenStretches(const plan::Piece& piece, double length_mm);
/// The line without its drop-outs, teeth ignored.
std::vector<plan::Stretch> treatedStretches(const plan::Piece& piece, double length_mm);

}  // namespace combdraft::paint

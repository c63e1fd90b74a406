#include "app/sheet/handles.h"

#include <QLineF>
#include <cmath>

namespace combdraft::sheet {
namespace {

QPointF at(const head::SheetView& view, const Vec3& p) {
  const head::ViewPoint q = view.project(p);
  return {q.u_mm, q.v_mm};
}

QPointF unit(const QPointF& p, const QPointF& fallback) {
  const double size = std::hypot(p.x(), p.y());
  return size < 1e-6 ? fallback : p / size;
}

}  // namespace

std::vector<Handle> handlesOf(const paint::Scene& scene, const paint::PieceShape& piece,
                              head::ViewName name) {
  std::vector<Handle> handles;
  const head::SheetView view = scene.head().view(name);
  std::optional<paint::Strip> seen;
  for (paint::StripRun& run : paint::splitBySight(view, piece.strip))
    if (run.sight == paint::Sight::Seen && (!seen || run.strip.size() > seen->size()))
      seen = std::move(run.strip);
  if (!seen) return handles;
  const paint::StripSample& middle = (*seen)[seen->size() / 2];
  const QPointF base = at(view, middle.centre);
  const QPointF down = unit(at(view, middle.b) - at(view, middle.a), QPointF(0, 1));
  const auto edge = [&](const Vec3& side, const QPointF& outward) {
    Handle handle{HandleKind::Thickness, at(view, side), base, outward, 0, {}, {}};
    handle.centre = middle.centre;
    handle.across = unitOr(side - middle.centre, Vec3::UnitX());
    handles.push_back(handle);
  };
  edge(middle.a, -down);
  edge(middle.b, down);
  if (piece.piece->action != plan::Action::LeaveOut) {
    // Beside the thickness handle, so that a start near the scalp can be taken.
    const paint::StripSample& third = (*seen)[seen->size() / 3];
    const QPointF from = at(view, third.centre);
    const QPointF way = unit(at(view, third.b) - at(view, third.a), QPointF(0, 1));
    handles.push_back({HandleKind::Start, from + way * piece.piece->start_mm, from, way, 0,
                       third.centre, Vec3::UnitX()});
  }
  for (std::size_t i = 0; i < piece.piece->line.size(); ++i) {
    const Vec3 p = scene.head().shape.pointAt(piece.piece->line[i]);
    if (!view.faces(scene.head().shape, p)) continue;
    handles.push_back({HandleKind::Point, at(view, p), at(view, p), QPointF(0, 1), i, p,
                       Vec3::UnitX()});
  }
  return handles;
}

std::vector<Handle> cornersOf(const paint::Scene& scene, const plan::Section& section,
                              head::ViewName name) {
  std::vector<Handle> handles;
  const head::SheetView view = scene.head().view(name);
  for (std::size_t i = 0; i < section.outline.size(); ++i) {
    const Vec3 p = scene.head().shape.pointAt(section.outline[i]);
    if (view.faces(scene.head().shape, p))
      handles.push_back({HandleKind::Corner, at(view, p), at(view, p), QPointF(0, 1), i, p, Vec3::UnitX()});
  }
  if (section.layout && section.layout->run == plan::LayoutRun::Pivoting && section.layout->pivot) {
    const Vec3 p = scene.head().shape.pointAt(*section.layout->pivot);
    if (view.faces(scene.head().shape, p))
      handles.push_back({HandleKind::Corner, at(view, p), at(view, p), QPointF(0, 1), section.outline.size(), p, Vec3::UnitX()});
  }
  return handles;
}

std::optional<Handle> handleAt(const std::vector<Handle>& handles, const QPointF& view_mm,
                               double reach_mm) {
  std::optional<Handle> best;
  double nearest = reach_mm;
  for (const Handle& handle : handles) {
    const double far = QLineF(handle.at_mm, view_mm).length();
    if (far > nearest) continue;
    nearest = far;
    best = handle;
  }
  return best;
}

}  // namespace combdraft::sheet

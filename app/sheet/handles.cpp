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

namespace {

// The two pieces that are placed first, where the view sees both.
std::optional<Handle> spacingHandle(const paint::Scene& scene, const plan::ItemId& id,
                                    const head::SheetView& view) {
  const paint::PieceShape *first = nullptr, *second = nullptr;
  for (const auto& piece : scene.pieces()) {
    if (piece->piece->section != id || !piece->piece->laidOut || piece->piece->laidOut->column != 1 ||
        piece->strip.empty())
      continue;
    const int row = piece->piece->laidOut->row;
    if (!first || row > first->piece->laidOut->row) second = first, first = piece.get();
    else if (!second || row > second->piece->laidOut->row) second = piece.get();
  }
  if (!first || !second) return std::nullopt;
  const Vec3 from = first->strip[first->strip.size() / 3].centre;
  const Vec3 to = second->strip[second->strip.size() / 3].centre;
  if (!view.faces(scene.head().shape, from) || !view.faces(scene.head().shape, to)) return std::nullopt;
  const QPointF a = at(view, from), b = at(view, to);
  return Handle{HandleKind::Spacing, b, a, unit(b - a, QPointF(0, -1)), 0, from,
                unitOr(to - from, Vec3::UnitZ())};
}

}  // namespace

std::vector<Handle> sectionHandles(const paint::Scene& scene, const plan::ItemId& id,
                                   head::ViewName name) {
  std::vector<Handle> handles;
  const auto* section = scene.plan().find<plan::Section>(id);
  if (!section) return handles;
  const head::SheetView view = scene.head().view(name);
  const auto corner = [&](const head::ScalpPoint& point, std::size_t number) {
    const Vec3 p = scene.head().shape.pointAt(point);
    if (view.faces(scene.head().shape, p))
      handles.push_back({HandleKind::Corner, at(view, p), at(view, p), QPointF(0, 1), number, p, Vec3::UnitX()});
  };
  for (std::size_t i = 0; i < section->outline.size(); ++i) corner(section->outline[i], i);
  if (!section->layout) return handles;
  const bool fan = section->layout->run == plan::LayoutRun::Pivoting;
  if (fan && section->layout->pivot) corner(*section->layout->pivot, section->outline.size());
  if (!fan)
    if (const auto handle = spacingHandle(scene, id, view)) handles.push_back(*handle);
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

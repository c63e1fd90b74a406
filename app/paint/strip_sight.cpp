#include "app/paint/strip_sight.h"

namespace combdraft::paint {
namespace {

QPointF at(const head::SheetView& view, const Vec3& p) {
  const head::ViewPoint q = view.project(p);
  return {q.u_mm, q.v_mm};
}

}  // namespace

QPainterPath outlineOf(const head::SheetView& view, const Strip& strip) {
  QPolygonF around;
  around.reserve(static_cast<qsizetype>(2 * strip.size()));
  for (const StripSample& s : strip) around << at(view, s.a);
  for (auto s = strip.rbegin(); s != strip.rend(); ++s) around << at(view, s->b);
  QPainterPath path;
  path.addPolygon(around);
  path.closeSubpath();
  return path;
}

StripSight sightOf(const head::SheetView& view, const Strip& strip) {
  StripSight sight;
  for (const StripRun& run : splitBySight(view, strip)) {
    if (run.sight == Sight::Seen) {
      sight.seen.addPath(outlineOf(view, run.strip));
      continue;
    }
    QPolygonF middle;
    for (const StripSample& s : run.strip) middle << at(view, s.centre);
    sight.hidden.addPolygon(middle);
  }
  return sight;
}

const StripSight& StripSights::in(const head::SheetView& view, const Strip& strip) {
  std::optional<Known>& known = known_[static_cast<std::size_t>(view.name())];
  if (!known || !(known->view == view)) known = Known{view, sightOf(view, strip)};
  return known->sight;
}

}  // namespace combdraft::paint

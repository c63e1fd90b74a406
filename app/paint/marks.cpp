#include "app/paint/marks.h"

#include <QRegion>
#include <cmath>

namespace combdraft::paint {
namespace {

// Places that a view sees at less than this cosine lie on its rim.
constexpr double kLeastFacing = 0.12;
constexpr double kStep_mm = 0.5;  // the outline's own raster
constexpr double kNearCrown_mm = 35;

}  // namespace

QPainterPath marksOutline(const HeadScene& head, head::ViewName view, const std::vector<Point3f>& places,
                          double cell_mm) {
  const head::SheetView projection = head.view(view);
  // Seen from elsewhere cells stand apart or overlap: each is drawn a little larger.
  const int half = static_cast<int>(std::ceil(0.9 * cell_mm / kStep_mm));
  QRegion region;
  for (const Point3f& p : places) {
    const Vec3 place = toVec3(p);
    if (head.shape.normalAt(head.shape.pointAlong(place)).dot(projection.toward()) < kLeastFacing) continue;
    const head::ViewPoint q = projection.project(place);
    region += QRect(static_cast<int>(std::lround(q.u_mm / kStep_mm)) - half,
                    static_cast<int>(std::lround(q.v_mm / kStep_mm)) - half, 2 * half, 2 * half);
  }
  QPainterPath path;
  path.addRegion(region);
  return QTransform::fromScale(kStep_mm, kStep_mm).map(path.simplified());
}

head::ViewName viewFacing(const HeadScene& head, const Vec3& place) {
  if ((place - head.crown).norm() < kNearCrown_mm) return head::ViewName::Crown;
  const Vec3 normal = head.shape.normalAt(head.shape.pointAlong(place));
  head::ViewName best = head::ViewName::Top;
  double most = -2;
  for (const head::ViewName view : head::kAllViews) {
    if (view == head::ViewName::Crown) continue;
    const double facing = normal.dot(head.view(view).toward());
    if (facing > most) most = facing, best = view;
  }
  return best;
}

}  // namespace combdraft::paint

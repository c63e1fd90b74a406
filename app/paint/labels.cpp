#include "app/paint/labels.h"

#include <QList>
#include <QPolygonF>
#include <algorithm>

namespace combdraft::paint {
namespace {

bool cross(const QLineF& one, const QLineF& other) {
  return one.intersects(other, nullptr) == QLineF::BoundedIntersection;
}

bool meets(const QLineF& line, const QRectF& room) {
  if (std::max(line.x1(), line.x2()) < room.left() || std::min(line.x1(), line.x2()) > room.right() ||
      std::max(line.y1(), line.y2()) < room.top() || std::min(line.y1(), line.y2()) > room.bottom())
    return false;
  if (room.contains(line.p1()) || room.contains(line.p2())) return true;
  return cross(line, QLineF(room.topLeft(), room.bottomRight())) ||
         cross(line, QLineF(room.topRight(), room.bottomLeft()));
}

}  // namespace

void LabelRoom::avoid(const QPointF& place) {
  places_.push_back(place);
  order_ = Order::Mixed;
}

void LabelRoom::avoidLines(const QPainterPath& lines) {
  const QList<QPolygonF> polygons = lines.toSubpathPolygons();
  for (const QPolygonF& line : polygons)
    for (qsizetype i = 1; i < line.size(); ++i) lines_.push_back(QLineF(line[i - 1], line[i]));
}

bool LabelRoom::hidesPlace(const QRectF& room) {
  const auto before = [](const QPointF& p, const QPointF& q) { return p.x() < q.x(); };
  if (order_ == Order::Mixed) std::sort(places_.begin(), places_.end(), before);
  order_ = Order::Sorted;
  auto place = std::lower_bound(places_.begin(), places_.end(), room.topLeft(), before);
  for (; place != places_.end() && place->x() <= room.right(); ++place)
    if (room.contains(*place)) return true;
  return false;
}

bool LabelRoom::isFree(const Spot& spot, const QRectF& room, Cover cover) {
  const bool leads = !spot.leader.isNull(), strict = cover == Cover::Nothing || cover == Cover::Places;
  if (!frame_.contains(room)) return false;
  for (const QRectF& other : taken_)
    if (other.intersects(room) || (leads && cover != Cover::Leaders && meets(spot.leader, other))) return false;
  for (const QLineF& other : leaders_) {
    if (cover != Cover::Leaders && meets(other, room)) return false;
    if (strict && leads && cross(other, spot.leader)) return false;
  }
  if (strict)
    for (const QLineF& line : lines_)
      if (meets(line, room) || (leads && cross(line, spot.leader))) return false;
  return cover != Cover::Nothing || !hidesPlace(room);
}

std::optional<LabelRoom::Spot> LabelRoom::take(const std::vector<Spot>& spots, const QSizeF& size,
                                               Cover cover) {
  for (const Spot& spot : spots) {
    const QRectF room(spot.centre - QPointF(size.width() / 2, size.height() / 2), size);
    if (!isFree(spot, room, cover)) continue;
    taken_.push_back(room);
    if (!spot.leader.isNull()) leaders_.push_back(spot.leader);
    return spot;
  }
  return std::nullopt;
}

}  // namespace combdraft::paint

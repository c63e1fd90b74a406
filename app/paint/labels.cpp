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

QRectF boxOf(const QLineF& line) {
  return QRectF(line.p1(), line.p2()).normalized();
}

}  // namespace

void LabelRoom::avoid(const QPointF& place) { places_.add(place, QRectF(place, QSizeF(0, 0))); }

void LabelRoom::avoidLines(const QPainterPath& lines) {
  const QList<QPolygonF> polygons = lines.toSubpathPolygons();
  for (const QPolygonF& polygon : polygons)
    for (qsizetype i = 1; i < polygon.size(); ++i) {
      const QLineF line(polygon[i - 1], polygon[i]);
      lines_.add(line, boxOf(line));
    }
}

bool LabelRoom::isFree(const Spot& spot, const QRectF& room, Cover cover) const {
  const bool leads = !spot.leader.isNull(), strict = cover == Cover::Nothing || cover == Cover::Places;
  if (!frame_.contains(room)) return false;
  const QRectF way = boxOf(spot.leader);
  const auto meetsRoom = [&](const QLineF& line) { return meets(line, room); };
  const auto crossesLeader = [&](const QLineF& line) { return cross(line, spot.leader); };
  if (taken_.any(room, [&](const QRectF& other) { return other.intersects(room); })) return false;
  if (cover != Cover::Leaders) {
    if (leaders_.any(room, meetsRoom)) return false;
    if (leads && taken_.any(way, [&](const QRectF& other) { return meets(spot.leader, other); })) return false;
  }
  if (strict) {
    if (lines_.any(room, meetsRoom)) return false;
    if (leads && (leaders_.any(way, crossesLeader) || lines_.any(way, crossesLeader))) return false;
  }
  return cover != Cover::Nothing || !places_.any(room, [&](const QPointF& place) { return room.contains(place); });
}

std::optional<LabelRoom::Spot> LabelRoom::take(const std::vector<Spot>& spots, const QSizeF& size,
                                               Cover cover) {
  for (const Spot& spot : spots) {
    const QRectF room(spot.centre - QPointF(size.width() / 2, size.height() / 2), size);
    if (!isFree(spot, room, cover)) continue;
    taken_.add(room, room);
    if (!spot.leader.isNull()) leaders_.add(spot.leader, boxOf(spot.leader));
    return spot;
  }
  return std::nullopt;
}

}  // namespace combdraft::paint

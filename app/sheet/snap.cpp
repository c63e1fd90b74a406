#include "app/sheet/snap.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/paint/describe_piece.h"
#include "engine/head/landmarks.h"

namespace combdraft::sheet {
namespace {

constexpr double kAlong_mm = 10;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

}  // namespace

SnapLines::SnapLines(std::shared_ptr<const paint::Scene> scene) : scene_(std::move(scene)) {
  const head::HeadShape& shape = scene_->head().shape;
  const head::Hairline& hairline = scene_->head().hairline;
  const head::Landmarks marks = head::landmarksOf(shape, hairline);
  marks_ = {{marks.apex, Words::tr("the apex")},
            {marks.frontCentre, Words::tr("the middle of the front hairline")},
            {marks.nape, Words::tr("the middle of the nape")},
            {marks.occipital, Words::tr("the occipital bone")},
            {marks.templeRight, Words::tr("the client's right temple")},
            {marks.templeLeft, Words::tr("the client's left temple")}};
  for (const plan::Whorl& whorl : scene_->plan().head().whorls)
    marks_.push_back({shape.pointAt(whorl.at), Words::tr("the swirl")});

  addLine("hairline", Words::tr("the hairline"), hairline.outline(240), true);
  addLine("centre", Words::tr("the centre line"), head::centreLine(shape, hairline), false);
  addLine("ears", Words::tr("the ear-to-ear line"), head::earToEarLine(shape), false);
  addLine("ridge", Words::tr("the parietal ridge"), head::parietalRidge(shape, hairline), false);
  addLine("occipital", Words::tr("the occipital line"), head::occipitalLine(shape, hairline), false);
  const auto& part = scene_->plan().head().part;
  if (part.size() > 1) addLine("part", Words::tr("the part"), paint::surfaceLine(shape, part), false);
  for (const paint::SectionShape& section : scene_->sections()) {
    addLine(section.id, Words::tr("the edge of a section"), section.outline, false);
    for (const head::ScalpPoint& corner : section.section->outline)
      marks_.push_back({shape.pointAt(corner), Words::tr("a section's corner"), section.id});
  }
  for (const auto& piece : scene_->pieces()) {
    std::vector<Vec3> line;
    for (const paint::StripSample& s : piece->strip) line.push_back(s.centre);
    addLine(piece->id, Words::tr("the parting of piece %1").arg(paint::pieceNumber(*piece->piece)),
            std::move(line), false);
  }
}

void SnapLines::addLine(std::string key, QString words, std::vector<Vec3> points, bool closed) {
  if (points.size() < 2) return;
  if (closed) points.push_back(points.front());
  Line line{std::move(key), std::move(words), std::move(points), closed, Vec3::Zero(), 0};
  for (const Vec3& p : line.points) line.middle += p / static_cast<double>(line.points.size());
  for (const Vec3& p : line.points) line.radius_mm = std::max(line.radius_mm, (p - line.middle).norm());
  lines_.push_back(std::move(line));
}

SnapLines::Hit SnapLines::nearest(const Line& line, const Vec3& place) const {
  Hit hit{&line, 0, line.points.front(), 1e9};
  for (std::size_t i = 0; i + 1 < line.points.size(); ++i) {
    const Vec3 &a = line.points[i], side = line.points[i + 1] - a;
    const double length2 = side.squaredNorm();
    const double t = length2 > 0 ? std::clamp((place - a).dot(side) / length2, 0.0, 1.0) : 0;
    const double far = (a + t * side - place).norm();
    if (far >= hit.far_mm) continue;
    hit.stretch = i;
    hit.at = a + t * side;
    hit.far_mm = far;
  }
  return hit;
}

Snap SnapLines::caught(const Vec3& place, double reach_mm,
                       const std::vector<head::ScalpPoint>& own, const std::string& except) const {
  const head::HeadShape& shape = scene_->head().shape;
  const auto result = [&](const Vec3& at, QString words, std::string line) {
    return Snap{shape.scalpPointAt(at), std::move(words), std::move(line)};
  };
  std::vector<Hit> hits;
  for (const Line& line : lines_) {
    if (line.key == except || (place - line.middle).norm() > line.radius_mm + reach_mm) continue;
    const Hit hit = nearest(line, place);
    if (hit.far_mm < reach_mm) hits.push_back(hit);
  }
  std::sort(hits.begin(), hits.end(), [](const Hit& a, const Hit& b) { return a.far_mm < b.far_mm; });
  const std::string on = hits.empty() ? std::string() : hits.front().line->key;

  // The outline's own first corner closes it; then marks.
  if (own.size() > 2 && (shape.pointAt(own.front()) - place).norm() < reach_mm)
    return {own.front(), Words::tr("the first corner: closes the outline"), {}};
  const Mark* mark = nullptr;
  double nearestMark = reach_mm;
  for (const Mark& candidate : marks_)
    if (const double far = (candidate.at - place).norm();
        far < nearestMark && (except.empty() || candidate.section != except))
      nearestMark = far, mark = &candidate;
  if (mark) {
    // A mark on a line is also a place on that line.
    std::string line;
    for (const Hit& hit : hits)
      if (nearest(*hit.line, mark->at).far_mm < 0.5 && line.empty()) line = hit.line->key;
    return result(mark->at, Words::tr("at %1").arg(mark->words), line);
  }
  // Where two lines cross: walk from one to the other and back.
  for (std::size_t i = 0; i < hits.size(); ++i)
    for (std::size_t k = i + 1; k < hits.size(); ++k) {
      Vec3 at = hits[i].at;
      double gap = 1e9;
      for (int turn = 0; turn < 12; ++turn) {
        const Vec3 other = nearest(*hits[k].line, at).at;
        const Vec3 back = nearest(*hits[i].line, other).at;
        gap = (back - other).norm();
        at = back;
      }
      if (gap < 0.3 && (at - place).norm() < reach_mm)
        return result(at, Words::tr("where %1 meets %2").arg(hits[i].line->words, hits[k].line->words), on);
    }
  if (!hits.empty())
    return result(hits.front().at, Words::tr("on %1").arg(hits.front().line->words), on);
  return {shape.scalpPointAt(place), {}, {}};
}

std::vector<head::ScalpPoint> SnapLines::along(const Snap& from, const Snap& to) const {
  std::vector<head::ScalpPoint> between;
  if (from.line.empty() || from.line != to.line) return between;
  const auto line = std::find_if(lines_.begin(), lines_.end(),
                                 [&](const Line& l) { return l.key == from.line; });
  if (line == lines_.end()) return between;
  const head::HeadShape& shape = scene_->head().shape;
  const std::vector<Vec3>& points = line->points;
  std::vector<double> at{0};
  for (std::size_t i = 1; i < points.size(); ++i)
    at.push_back(at.back() + (points[i] - points[i - 1]).norm());
  const auto place = [&](const Snap& snap) {
    const Vec3 p = shape.pointAt(snap.at);
    const Hit hit = nearest(*line, p);
    return at[hit.stretch] + (hit.at - points[hit.stretch]).norm();
  };
  const double start = place(from), end = place(to), round = at.back();
  double way = end - start;
  if (line->closed && std::abs(way) > round / 2) way += way > 0 ? -round : round;
  const int parts = static_cast<int>(std::abs(way) / kAlong_mm);
  for (int i = 1; i < parts; ++i) {
    double mm = start + way * i / parts;
    if (line->closed) mm = mm < 0 ? mm + round : mm >= round ? mm - round : mm;
    const auto after = std::upper_bound(at.begin(), at.end(), mm);
    const std::size_t k = std::min<std::size_t>(
        static_cast<std::size_t>(std::distance(at.begin(), after)), points.size() - 1);
    const double step = at[k] - at[k - 1];
    const Vec3 p = points[k - 1] + (step > 0 ? (mm - at[k - 1]) / step : 0) * (points[k] - points[k - 1]);
    between.push_back(shape.scalpPointAt(p));
  }
  return between;
}

}  // namespace combdraft::sheet

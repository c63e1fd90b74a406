#include "app/handout/piece_places.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>
#include <optional>

#include "app/paint/describe_piece.h"
#include "app/paint/figure.h"
#include "engine/base/number_text.h"
#include "engine/head/surface_distance.h"

namespace combdraft::handout {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

constexpr double kAlike_mm = 1;     // a hand measures no finer
constexpr double kCentre_mm = 1;    // nearer to it a piece has no other side
constexpr double kStraight = 0.87;  // cosine: what turns by more than 30 degrees goes another way
constexpr double kTop_deg = 42;     // as the rows of sections have it

QString whole(double value) { return paint::figure(numberText(std::round(value))); }
QString numberOf(const paint::PieceShape* shape) { return paint::pieceNumber(*shape->piece); }

std::optional<Vec3> middleOf(const head::HeadShape& shape, const paint::Strip& strip) {
  if (strip.size() < 2) return std::nullopt;
  const double half_mm = (strip.front().along_mm + strip.back().along_mm) / 2;
  std::size_t next = 1;
  while (next + 1 < strip.size() && strip[next].along_mm < half_mm) ++next;
  const paint::StripSample &before = strip[next - 1], &after = strip[next];
  const double length_mm = after.along_mm - before.along_mm;
  const double t = length_mm > 0 ? std::clamp((half_mm - before.along_mm) / length_mm, 0.0, 1.0) : 0;
  return shape.project(Vec3(before.centre + t * (after.centre - before.centre)));
}

// The middles of pieces in working order, and how one lies to another.
class Middles {
 public:
  Middles(const head::HeadShape& shape, const std::vector<const paint::PieceShape*>& pieces) : shape_(shape) {
    for (const paint::PieceShape* piece : pieces) at_.push_back(middleOf(shape, piece->strip));
  }
  std::size_t size() const { return at_.size(); }
  bool areKnown(std::size_t a, std::size_t b) const { return a < size() && b < size() && at_[a] && at_[b]; }
  double apart_mm(std::size_t a, std::size_t b) const { return head::surfaceDistance_mm(shape_, *at_[a], *at_[b]); }
  // Whether the next piece lies on the other side at the same place.
  bool hasMirrorNext(std::size_t a) const {
    if (!areKnown(a, a + 1) || std::abs(at_[a]->x()) < kCentre_mm) return false;
    return (Vec3(-at_[a]->x(), at_[a]->y(), at_[a]->z()) - *at_[a + 1]).norm() <= kAlike_mm;
  }
  bool onOneSide(std::size_t a, std::size_t b) const {
    const double one = at_[a]->x(), other = at_[b]->x();
    return std::abs(one) < kCentre_mm || std::abs(other) < kCentre_mm || (one < 0) == (other < 0);
  }
  bool goStraight(std::size_t a, std::size_t b, std::size_t c) const {
    const Vec3 normal = shape_.normalAt(*at_[b]);
    const auto flat = [&](const Vec3& way) { return unitOr(Vec3(way - way.dot(normal) * normal), Vec3::Zero()); };
    return flat(*at_[b] - *at_[a]).dot(flat(*at_[c] - *at_[b])) > kStraight;
  }

 private:
  const head::HeadShape& shape_;
  std::vector<std::optional<Vec3>> at_;
};

// Takes the step to `next` up into the run, or refuses it. `stride`: 2 in pairs.
bool takesStep(const Middles& middles, std::vector<double>& steps_mm, std::size_t next, std::size_t stride) {
  const std::size_t last = next - stride;
  if (!middles.areKnown(last, next)) return false;
  // Two pieces on two sides, or pairs that change sides, have no direction that words would tell.
  if ((steps_mm.empty() || stride == 2) && !middles.onOneSide(last, next)) return false;
  const double step_mm = middles.apart_mm(last, next);
  if (step_mm < kAlike_mm / 2) return false;
  if (!steps_mm.empty() && (std::abs(step_mm - steps_mm.back()) > kAlike_mm || !middles.goStraight(last - stride, last, next))) return false;
  steps_mm.push_back(step_mm);
  return true;
}

// How many pieces from `from` on are pairs; 0 where the first is none.
std::size_t countPairs(const Middles& middles, std::size_t from, std::vector<double>& steps_mm) {
  if (!middles.hasMirrorNext(from)) return 0;
  std::size_t count = 2;
  while (middles.hasMirrorNext(from + count) && takesStep(middles, steps_mm, from + count, 2)) count += 2;
  return count;
}

std::size_t countOnward(const Middles& middles, std::size_t from, std::vector<double>& steps_mm) {
  std::size_t count = 1;
  for (std::size_t next = from + 1; next < middles.size(); ++next, ++count) {
    const std::size_t had = steps_mm.size();
    if (!takesStep(middles, steps_mm, next, 1)) break;
    // A second piece that begins a pair belongs to it, unless all three go on alike.
    if (had > 0 || !middles.hasMirrorNext(next)) continue;
    std::vector<double> further_mm = steps_mm;
    if (takesStep(middles, further_mm, next + 1, 1)) continue;
    steps_mm.clear();
    break;
  }
  return count;
}

// The way of a line at its middle: "horizontal", "diagonal forward".
QString lieOf(const head::HeadShape& shape, const Vec3& middle, const Vec3& along) {
  const Vec3 normal = shape.normalAt(middle);
  const bool onTop = head::scalpPointAlong(middle).drop_deg < kTop_deg;
  const Vec3 upward = onTop ? Vec3(0, 1, 0) : Vec3(0, 0, 1);
  const Vec3 up = unitOr(Vec3(upward - upward.dot(normal) * normal), Vec3(0, 1, 0));
  const Vec3 back = (middle.x() < 0 ? -1.0 : 1.0) * normal.cross(up);  // level round the head, from the face back
  const double rise = along.dot(up), goesBack = along.dot(back);
  const double slope_deg = degrees(std::atan2(std::abs(rise), std::abs(goesBack)));
  if (slope_deg < 22.5) return onTop ? Words::tr("across the head") : Words::tr("horizontal");
  if (slope_deg > 67.5) return onTop ? Words::tr("front to back") : Words::tr("vertical");
  if (onTop || std::abs(middle.x()) < 8) return Words::tr("diagonal");
  return (rise > 0) == (goesBack > 0) ? Words::tr("diagonal forward") : Words::tr("diagonal back");
}

// "back left, horizontal, middle 62 mm below the crown, 40 mm left of centre"
QString placeOf(const paint::HeadScene& head, const paint::PieceShape& shape) {
  const std::optional<Vec3> middle = middleOf(head.shape, shape.strip);
  if (!middle) return Words::tr("no line");
  const QString lie = lieOf(head.shape, *middle, Vec3(shape.strip.back().centre - shape.strip.front().centre));
  const QString at = Words::tr("%1, middle %2").arg(lie, paint::placeMeasures(head, *middle));
  return shape.place.isEmpty() ? at : shape.place + QStringLiteral(", ") + at;
}

// "22" where all steps are alike; "" where each is to be told.
QString everyStep(const std::vector<double>& steps_mm) {
  const auto [least, most] = std::minmax_element(steps_mm.begin(), steps_mm.end());
  return *most - *least <= kAlike_mm ? whole((*most + *least) / 2) : QString();
}
QString eachStep(const std::vector<double>& steps_mm) {
  QStringList steps;
  for (const double step_mm : steps_mm) steps << whole(step_mm);
  return steps.join(QStringLiteral(", "));
}

QString onwardText(const paint::HeadScene& head, const PlaceRun& run) {
  const paint::PieceShape &first = *run.pieces.front(), &last = *run.pieces.back();
  const QString from = placeOf(head, first), to = placeOf(head, last);
  const QString every = everyStep(run.steps_mm);
  if (run.pieces.size() == 2) return Words::tr("%1: %2; %3 mm from it %4: %5").arg(numberOf(&first), from, every, numberOf(&last), to);
  return every.isEmpty() ? Words::tr("%1: %2; then %3 mm from one to the next, to %4: %5").arg(numberOf(&first), from, eachStep(run.steps_mm), numberOf(&last), to)
                         : Words::tr("%1: %2; then every %3 mm, to %4: %5").arg(numberOf(&first), from, every, numberOf(&last), to);
}

QString pairsText(const paint::HeadScene& head, const PlaceRun& run) {
  const paint::PieceShape &first = *run.pieces.front(), &last = *run.pieces[run.pieces.size() - 2];
  QStringList firsts, seconds;
  for (std::size_t i = 0; i < run.pieces.size(); ++i) (i % 2 == 0 ? firsts : seconds) << numberOf(run.pieces[i]);
  const std::optional<Vec3> middle = middleOf(head.shape, first.strip);
  const bool rightFirst = middle && middle->x() > 0;
  const QString sides = Words::tr("%1 right; %2 left").arg((rightFirst ? firsts : seconds).join(QStringLiteral(", ")), (rightFirst ? seconds : firsts).join(QStringLiteral(", ")));
  const QString from = placeOf(head, first);
  if (run.steps_mm.empty()) return Words::tr("%1; %2: %3, the other side the same").arg(sides, numberOf(&first), from);
  const QString every = everyStep(run.steps_mm), to = placeOf(head, last);
  return every.isEmpty() ? Words::tr("%1; %2: %3; then %4 mm from one to the next, to %5: %6; the other side the same")
                               .arg(sides, numberOf(&first), from, eachStep(run.steps_mm), numberOf(&last), to)
                         : Words::tr("%1; %2: %3; then every %4 mm, to %5: %6; the other side the same").arg(sides, numberOf(&first), from, every, numberOf(&last), to);
}

}  // namespace

std::vector<PlaceRun> placeRuns(const paint::HeadScene& head, const std::vector<const paint::PieceShape*>& pieces) {
  const Middles middles(head.shape, pieces);
  std::vector<PlaceRun> runs;
  for (std::size_t from = 0; from < pieces.size(); from += runs.back().pieces.size()) {
    PlaceRun run;
    std::size_t count = countPairs(middles, from, run.steps_mm);
    run.way = PlaceRun::Way::Pairs;
    if (count == 0) {
      count = countOnward(middles, from, run.steps_mm);
      run.way = count == 1 ? PlaceRun::Way::One : PlaceRun::Way::Onward;
    }
    for (std::size_t i = from; i < from + count; ++i) run.pieces.push_back(pieces[i]);
    runs.push_back(std::move(run));
  }
  return runs;
}

QString placeText(const paint::HeadScene& head, const PlaceRun& run) {
  switch (run.way) {
    case PlaceRun::Way::One: return placeOf(head, *run.pieces.front());
    case PlaceRun::Way::Onward: return onwardText(head, run);
    case PlaceRun::Way::Pairs: return pairsText(head, run);
  }
  return {};
}

QString placeSentence(const paint::HeadScene& head, const std::vector<const paint::PieceShape*>& pieces) {
  if (pieces.empty()) return {};
  const std::optional<Vec3> middle = middleOf(head.shape, pieces.front()->strip);
  if (!middle) return {};
  const QString at = paint::placeMeasures(head, *middle);
  if (pieces.size() == 1) return Words::tr("Its middle lies %1.").arg(at);
  const QString first = numberOf(pieces.front()), last = numberOf(pieces.back());
  const std::vector<PlaceRun> runs = placeRuns(head, pieces);
  const PlaceRun& run = runs.front();
  if (runs.size() == 1 && run.way == PlaceRun::Way::Pairs && run.steps_mm.empty())
    return Words::tr("The middle of piece %1 lies %2; piece %3 lies the same on the other side.").arg(first, at, last);
  if (runs.size() == 1 && run.way == PlaceRun::Way::Onward) {
    const QString every = everyStep(run.steps_mm);
    return Words::tr("The middle of piece %1 lies %2; from one to the next it is %3 mm.").arg(first, at, every.isEmpty() ? eachStep(run.steps_mm) : every);
  }
  return Words::tr("The middle of piece %1 lies %2; the record card places the others.").arg(first, at);
}

}  // namespace combdraft::handout

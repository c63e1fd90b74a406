#include "app/paint/diagram_labels.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <iterator>
#include <numbers>

#include "app/paint/describe_piece.h"
#include "app/paint/head_art.h"
#include "app/paint/labels.h"

namespace combdraft::paint {
namespace {

constexpr double kRadius_mm = 1.75;   // of the circle, on paper
constexpr double kLetter_mm = 2.1;    // height of small words, on paper
constexpr double kSeenShare = 0.25;
constexpr double kTurn_deg = 22.5;    // between the directions in which room is sought all around
// In a label, of the circle's radius:
constexpr double kLetterSize = kLetter_mm / kRadius_mm;
constexpr double kLetterWidth = 0.72 * kLetterSize;  // of a bold capital
constexpr double kLetterPad = 0.4;                   // behind the last letter
constexpr double kNearRings = 7.5, kFarRings = 30;   // how far room is sought; far only where a label must stand
constexpr double kTouching = 1.0;                    // farther from its piece a label has a leader

QPointF at(const head::SheetView& view, const Vec3& p) {
  const head::ViewPoint q = view.project(p);
  return {q.u_mm, q.v_mm};
}
QPointF unit(const QPointF& p) {
  const double size = std::hypot(p.x(), p.y());
  return size < 1e-9 ? QPointF(0, -1) : p / size;
}

DrawingItem words(const QString& id, Role role, const QString& text, const QPointF& where,
                  double size_mm, const QColor& colour) {
  DrawingItem item;
  item.id = id;
  item.role = role;
  item.layer = Layer::Labels;
  item.text = TextRun{text, where, size_mm, colour};
  return item;
}

double sizeOf(const QPointF& p) { return std::hypot(p.x(), p.y()); }

// The longest seen run of a strip, when it is long enough to be worth a label.
std::optional<Strip> mainRun(const head::SheetView& view, const QPainterPath& shape, const Strip& strip,
                             double leastShare) {
  std::optional<Strip> best;
  double longest = leastShare * stripLength_mm(strip);
  for (StripRun& run : splitBySight(view, strip)) {
    if (view.name() == head::ViewName::Crown)  // only what the close-up shows
      std::erase_if(run.strip, [&](const StripSample& s) { return !shape.contains(at(view, s.centre)); });
    if (run.sight != Sight::Seen || run.strip.size() < 2) continue;
    const double length = run.strip.back().along_mm - run.strip.front().along_mm;
    if (length < longest) continue;
    longest = length;
    best = std::move(run.strip);
  }
  return best;
}

// Places for a label of one piece, in drawing mm.
class Places {
 public:
  Places(const head::SheetView& view, const Strip& run, double radius, const QSizeF& size)
      : view_(view), run_(run), radius_(radius), size_(size) {
    for (const StripSample& s : run) line_.push_back(at(view, s.centre));
    const QPointF a = at(view, middleOf().a), b = at(view, middleOf().b);
    middle_ = at(view, middleOf().centre);
    side_ = unit(a - b);
    half_ = sizeOf(a - b) / 2;
  }

  // Past the piece's first end, past its last, beside its middle, then farther out.
  std::vector<LabelRoom::Spot> beside(const std::vector<double>& rings) const {
    const std::size_t n = run_.size();
    const QPointF first = at(view_, run_.front().centre), last = at(view_, run_.back().centre);
    const QPointF away = unit(first - at(view_, run_[std::min<std::size_t>(3, n - 1)].centre));
    const QPointF on = unit(last - at(view_, run_[n - std::min<std::size_t>(4, n)].centre));
    std::vector<LabelRoom::Spot> spots;
    for (const double ring : rings) {
      spots.push_back(spot(first, away, ring * radius_));
      spots.push_back(spot(last, on, ring * radius_));
      spots.push_back(spot(middle_, side_, half_ + ring * radius_));
      spots.push_back(spot(middle_, -side_, half_ + ring * radius_));
    }
    return spots;
  }

  // All around the piece's middle, from near to far.
  std::vector<LabelRoom::Spot> around(double farthestRing) const {
    std::vector<LabelRoom::Spot> spots;
    for (double ring = 1.5; ring <= farthestRing; ring += 1.5)
      for (double turn_deg = 0; turn_deg < 360; turn_deg += kTurn_deg) {
        const double turn = turn_deg * std::numbers::pi / 180;
        spots.push_back(spot(middle_, {std::cos(turn), std::sin(turn)}, half_ + ring * radius_));
      }
    return spots;
  }

 private:
  const StripSample& middleOf() const { return run_[run_.size() / 2]; }
  QPointF nearest(const QPointF& to) const {
    const auto far = [&](const QPointF& p) { return QPointF::dotProduct(p - to, p - to); };
    return *std::min_element(line_.begin(), line_.end(), [&](const QPointF& p, const QPointF& q) { return far(p) < far(q); });
  }

  LabelRoom::Spot spot(const QPointF& from, const QPointF& toward, double distance) const {
    // A wide label stands off by its own half width where it lies to the side.
    const QPointF centre = from + toward * distance + QPointF(toward.x() * (size_.width() / 2 - radius_), 0);
    const QPointF target = nearest(centre);
    const QPointF off = target - centre;
    const QPointF gap(std::max(0.0, std::abs(off.x()) - size_.width() / 2),
                      std::max(0.0, std::abs(off.y()) - size_.height() / 2));
    if (sizeOf(gap) <= kTouching * radius_) return {centre, {}};
    return {centre, QLineF(target, centre)};
  }

  const head::SheetView& view_;
  const Strip& run_;
  std::vector<QPointF> line_;  // its middle
  double radius_;
  QSizeF size_;
  QPointF middle_, side_;
  double half_ = 0;
};

// Nearest first. Over the ear or another leader rather than far away.
std::optional<LabelRoom::Spot> spotFor(LabelRoom& room, const Places& places, const QSizeF& size,
                                       double farthestRing) {
  using Cover = LabelRoom::Cover;
  std::vector<LabelRoom::Spot> spots;
  const auto fit = [&](std::initializer_list<Cover> covers) {
    std::optional<LabelRoom::Spot> found;
    for (const Cover cover : covers)
      if (!found) found = room.take(spots, size, cover);
    return found;
  };
  const auto widen = [&](const std::vector<LabelRoom::Spot>& more) { spots.insert(spots.end(), more.begin(), more.end()); };
  widen(places.beside({1.5, 2.6}));
  if (const auto found = fit({Cover::Nothing, Cover::Places})) return found;
  widen(places.beside({4.0, 6.2, 8.4}));
  widen(places.around(kNearRings));
  if (const auto found = fit({Cover::Nothing, Cover::Places, Cover::PlacesAndLines})) return found;
  if (farthestRing <= kNearRings) return std::nullopt;
  widen(places.around(farthestRing));
  // A leader under another label is poor; a piece without a label anywhere is worse.
  return fit({Cover::Nothing, Cover::Places, Cover::PlacesAndLines, Cover::Leaders});
}

// The ear and the line over the head from ear to ear, as they are drawn.
QPainterPath earLines(const Scene& scene, head::ViewName view, const Palette& palette, const Ink& ink) {
  QPainterPath lines;
  if (view == head::ViewName::Crown) return lines;
  for (const DrawingItem& item : headArt(scene.head(), view, plan::SkinTone::Paper, palette, ink, Guides::Shown))
    if (item.id.startsWith(QLatin1String("ear")) || item.id == QLatin1String("helix") ||
        item.id == QLatin1String("antihelix") || item.id == QLatin1String("tragus"))
      lines.addPath(item.path);
  return lines;
}

struct Labelled {
  const PieceShape* shape;
  Strip run;
  int rank;  // 0 before 1
  double farthestRing;
};

// The pieces that this view labels, in the order in which they get their room.
std::vector<Labelled> labelled(const Scene& scene, const head::SheetView& view, const QPainterPath& shape,
                               const DiagramStyle& style) {
  std::vector<Labelled> found;
  for (const auto& piece : scene.pieces()) {
    if (!style.shows(piece->id) || piece->piece->action == plan::Action::LeaveOut) continue;
    const bool best = style.only || piece->mostSeenIn == view.name();
    std::optional<Strip> run = mainRun(view, shape, piece->strip, best ? 0 : kSeenShare);
    if (!run) continue;
    const bool early = piece == scene.pieces().front() || piece == scene.pieces().back() ||
                       piece->piece->order % 5 == 0;
    found.push_back({piece.get(), std::move(*run), (best ? 0 : 2) + (early ? 0 : 1), best ? kFarRings : kNearRings});
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const Labelled& a, const Labelled& b) { return a.rank < b.rank; });
  return found;
}

void addLeader(Items& items, const QString& id, const QLineF& line, const Palette& palette, const Ink& ink) {
  DrawingItem leader;
  leader.id = id;
  leader.role = Role::Leader;
  leader.layer = Layer::Labels;
  leader.path.moveTo(line.p1());
  leader.path.lineTo(line.p2());
  leader.style.stroke = palette.softInk;
  leader.style.width_mm = ink(0.12);
  items.push_back(std::move(leader));
}

void addPieceLabels(Items& items, LabelRoom& room, const Scene& scene, const head::SheetView& view,
                    const QPainterPath& shape, const DiagramStyle& style) {
  const Ink ink(style.scale);
  const double radius = ink(kRadius_mm), size = ink(kLetter_mm);
  const std::vector<Labelled> all = labelled(scene, view, shape, style);
  std::vector<const Labelled*> placed;
  Items labels;  // above every leader
  for (const Labelled& one : all) {
    const plan::Piece& piece = *one.shape->piece;
    const QString id = QString::fromStdString(one.shape->id), letters = formulaLetters(scene.plan(), piece);
    const QSizeF label = numberLabelSize(letters, radius), needs = label + QSizeF(0.1, 0.1) * radius;
    const auto spot = spotFor(room, Places(view, one.run, radius, label), needs, one.farthestRing);
    if (!spot) continue;  // all of it: a number without its letter could get the wrong formula
    if (!spot->leader.isNull()) addLeader(items, id, spot->leader, style.palette, ink);
    addNumberLabel(labels, id, pieceNumber(piece), letters, spot->centre, radius, style.palette);
    labels.back().name = pieceName(piece);
    placed.push_back(&one);
  }
  std::move(labels.begin(), labels.end(), std::back_inserter(items));
  for (const Labelled* one : placed) {
    const plan::Piece& piece = *one->shape->piece;
    if (!(piece.backcomb.depth_mm > 0) || !(piece.backcomb.pushed_frac > 0)) continue;
    const StripSample& mid = one->run[one->run.size() / 2];
    const QPointF low = at(view, mid.b), out = unit(low - at(view, mid.centre));
    const QString text = millimetresFigure(piece.backcomb.depth_mm);
    const std::vector<LabelRoom::Spot> spots{{low + out * 1.1 * size, {}}, {low + out * 1.8 * size, {}}};
    const auto where = room.take(spots,
                                 QSizeF(0.62 * size * static_cast<double>(text.size()), size),
                                 LabelRoom::Cover::Nothing);
    if (where)
      items.push_back(words(QString::fromStdString(one->shape->id), Role::Depth, text, where->centre,
                            size * 0.85, style.palette.softInk));
  }
}

void addSectionNames(Items& items, LabelRoom& room, const Scene& scene, const head::SheetView& view,
                     const DiagramStyle& style) {
  const Ink ink(style.scale);
  for (const SectionShape& section : scene.sections()) {
    if (section.section->label.empty()) continue;
    const QString text = QString::fromStdString(section.section->label);
    const double size = ink(kLetter_mm);
    const QSizeF needs(0.6 * size * static_cast<double>(text.size()), size * 1.2);
    // Just outside the parting, where it is seen.
    std::vector<LabelRoom::Spot> places;
    QPointF middle;
    for (const Vec3& p : section.outline) middle += at(view, p) / static_cast<double>(section.outline.size());
    for (std::size_t i = 0; i < section.outline.size(); i += 4) {
      if (!view.faces(scene.head().shape, section.outline[i])) continue;
      const QPointF p = at(view, section.outline[i]), out = unit(p - middle);
      places.push_back({p + QPointF(out.x() * (needs.width() / 2 + 0.5 * size), out.y() * 1.1 * size), {}});
    }
    if (const auto where = room.take(places, needs, LabelRoom::Cover::Nothing))
      items.push_back(words(QString::fromStdString(section.id), Role::Letter, text, where->centre, size,
                            style.palette.softInk));
  }
}

void addNotes(Items& items, const Scene& scene, const head::SheetView& view, const DiagramStyle& style) {
  const Ink ink(style.scale);
  const Palette& palette = style.palette;
  for (const auto& [id, note] : scene.notes()) {
    const Vec3 p = scene.head().shape.pointAt(note->at);
    if (!view.faces(scene.head().shape, p)) continue;
    const QPointF centre = at(view, p);
    DrawingItem mark;
    mark.id = QString::fromStdString(id);
    mark.role = Role::Note;
    mark.layer = Layer::Labels;
    mark.name = QString::fromStdString(note->text);
    const double half = ink(0.9);
    mark.path.addRect(QRectF(centre - QPointF(half, half), QSizeF(2 * half, 2 * half)));
    mark.style.fill = palette.taken;
    mark.style.stroke = palette.onTaken;
    mark.style.width_mm = ink(0.2);
    items.push_back(std::move(mark));
    items.push_back(words(QString::fromStdString(id), Role::Note,
                          QString::fromStdString(note->text).left(40),
                          centre + QPointF(ink(1.6), 0), ink(kLetter_mm), palette.ink));
    items.back().text->anchor = TextRun::Anchor::Start;
  }
}

}  // namespace

void addCircledNumber(Items& items, const QString& id, const QString& text, const QPointF& centre,
                      double radius_mm, const Palette& palette) {
  DrawingItem circle;
  circle.id = id;
  circle.role = Role::Number;
  circle.layer = Layer::Labels;
  circle.path.addEllipse(centre, radius_mm, radius_mm);
  circle.style.fill = palette.taken;
  circle.style.stroke = palette.onTaken;
  circle.style.width_mm = radius_mm * 0.13;
  circle.text = TextRun{text, centre, radius_mm * (text.size() > 2 ? 0.95 : 1.2), palette.onTaken,
                        TextRun::Anchor::Middle, TextRun::Weight::Bold};
  items.push_back(std::move(circle));
}

QSizeF numberLabelSize(const QString& letters, double radius_mm) {
  if (letters.isEmpty()) return {2 * radius_mm, 2 * radius_mm};
  return {radius_mm * (2 + kLetterWidth * static_cast<double>(letters.size()) + kLetterPad), 2 * radius_mm};
}

void addNumberLabel(Items& items, const QString& id, const QString& number, const QString& letters,
                    const QPointF& centre, double radius_mm, const Palette& palette) {
  const QSizeF size = numberLabelSize(letters, radius_mm);
  const QPointF corner = centre - QPointF(size.width() / 2, size.height() / 2);
  if (!letters.isEmpty()) {
    DrawingItem plate;
    plate.id = id;
    plate.role = Role::Letter;
    plate.layer = Layer::Labels;
    plate.path.addRoundedRect(QRectF(corner, size), radius_mm, radius_mm);
    plate.style.fill = palette.taken;
    plate.style.stroke = palette.onTaken;
    plate.style.width_mm = radius_mm * 0.13;
    const double right = corner.x() + size.width() - kLetterPad * radius_mm, left = corner.x() + 2 * radius_mm;
    plate.text = TextRun{letters, QPointF((left + right) / 2, centre.y()), radius_mm * kLetterSize,
                         palette.onTaken, TextRun::Anchor::Middle, TextRun::Weight::Bold};
    items.push_back(std::move(plate));
  }
  addCircledNumber(items, id, number, corner + QPointF(radius_mm, radius_mm), radius_mm, palette);
}

void addLabels(Items& items, const Scene& scene, const head::SheetView& view, const QPainterPath& shape,
               const DiagramStyle& style) {
  LabelRoom room(shape.boundingRect());
  for (const auto& piece : scene.pieces())
    for (const StripRun& run : splitBySight(view, piece->strip))
      for (std::size_t i = 0; run.sight == Sight::Seen && i < run.strip.size(); i += 2)
        for (const auto edge : {&StripSample::a, &StripSample::centre, &StripSample::b})
          room.avoid(at(view, run.strip[i].*edge));
  room.avoidLines(earLines(scene, view.name(), style.palette, Ink(style.scale)));
  for (const DrawingItem& item : items)
    if (item.role == Role::Whorl) room.avoidLines(item.path);
  addPieceLabels(items, room, scene, view, shape, style);
  addSectionNames(items, room, scene, view, style);
  addNotes(items, scene, view, style);
}

}  // namespace combdraft::paint

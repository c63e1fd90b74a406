#include "app/paint/diagram_labels.h"

#include <QObject>
#include <algorithm>
#include <cmath>
#include <initializer_list>

#include "app/paint/describe_piece.h"
#include "app/paint/labels.h"

namespace combdraft::paint {
namespace {

constexpr double kRadius_mm = 1.75;   // of the circle, on paper
constexpr double kLetter_mm = 2.1;    // height of small words, on paper
constexpr double kSeenShare = 0.25;

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

// The longest seen run of a strip, when it is long enough to be worth a number.
std::optional<Strip> mainRun(const head::SheetView& view, const QPainterPath& shape, const Strip& strip) {
  std::optional<Strip> best;
  double longest = kSeenShare * stripLength_mm(strip);
  for (StripRun& run : splitBySight(view, strip)) {
    if (view.name() == head::ViewName::Crown) {  // only what the close-up shows
      std::erase_if(run.strip, [&](const StripSample& s) { return !shape.contains(at(view, s.centre)); });
      if (run.strip.size() < 2) continue;
    }
    const double length = run.strip.back().along_mm - run.strip.front().along_mm;
    if (run.sight != Sight::Seen || length < longest) continue;
    longest = length;
    best = std::move(run.strip);
  }
  return best;
}

// Places for a piece's number: past its first end, past its last, beside its
// middle, then farther out.
std::vector<QPointF> placesFor(const head::SheetView& view, const Strip& run, double radius,
                               std::initializer_list<double> rings) {
  const QPointF first = at(view, run.front().centre), last = at(view, run.back().centre);
  const std::size_t n = run.size();
  const QPointF away = unit(first - at(view, run[std::min<std::size_t>(3, n - 1)].centre));
  const QPointF on = unit(last - at(view, run[n - std::min<std::size_t>(4, n)].centre));
  const QPointF middle = at(view, run[n / 2].centre);
  const QPointF side = unit(at(view, run[n / 2].a) - at(view, run[n / 2].b));
  const double half = std::hypot((at(view, run[n / 2].a) - at(view, run[n / 2].b)).x(),
                                 (at(view, run[n / 2].a) - at(view, run[n / 2].b)).y()) / 2;
  std::vector<QPointF> places;
  for (const double ring : rings) {
    places.push_back(first + away * ring * radius);
    places.push_back(last + on * ring * radius);
    places.push_back(middle + side * (half + ring * radius));
    places.push_back(middle - side * (half + ring * radius));
  }
  return places;
}

QPointF nearestOnRun(const head::SheetView& view, const Strip& run, const QPointF& to) {
  QPointF best = at(view, run.front().centre);
  for (const StripSample& s : run) {
    const QPointF p = at(view, s.centre);
    if (QLineF(p, to).length() < QLineF(best, to).length()) best = p;
  }
  return best;
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

void addLabels(Items& items, const Scene& scene, const head::SheetView& view, const QPainterPath& shape,
               const DiagramStyle& style) {
  const Ink ink(style.scale);
  const Palette& palette = style.palette;
  const double radius = ink(kRadius_mm);
  LabelRoom room(shape.boundingRect());

  for (const auto& piece : scene.pieces())
    for (const StripRun& run : splitBySight(view, piece->strip))
      for (std::size_t i = 0; run.sight == Sight::Seen && i < run.strip.size(); i += 2)
        for (const auto edge : {&StripSample::a, &StripSample::centre, &StripSample::b})
          room.avoid(at(view, run.strip[i].*edge));

  struct Numbered {
    const PieceShape* shape;
    Strip run;
    int rank;  // 0 before 1
  };
  std::vector<Numbered> numbered;
  for (const auto& piece : scene.pieces()) {
    if (!style.shows(piece->id)) continue;
    std::optional<Strip> run = mainRun(view, shape, piece->strip);
    if (!run || run->size() < 2 || piece->piece->action == plan::Action::LeaveOut) continue;
    const bool first = piece == scene.pieces().front() || piece == scene.pieces().back() ||
                       piece->piece->order % 5 == 0;
    numbered.push_back({piece.get(), std::move(*run), first ? 0 : 1});
  }
  std::stable_sort(numbered.begin(), numbered.end(),
                   [](const Numbered& a, const Numbered& b) { return a.rank < b.rank; });
  for (const Numbered& one : numbered) {
    const plan::Piece& piece = *one.shape->piece;
    const QString id = QString::fromStdString(one.shape->id);
    const QSizeF circle(2.1 * radius, 2.1 * radius);
    auto centre = room.take(placesFor(view, one.run, radius, {1.5, 2.6}), circle);
    if (!centre) centre = room.take(placesFor(view, one.run, radius, {4.0, 6.2, 8.4}), circle);
    if (!centre) continue;
    const QPointF target = nearestOnRun(view, one.run, *centre);
    if (QLineF(target, *centre).length() > 2.2 * radius) {
      DrawingItem leader;
      leader.id = id;
      leader.role = Role::Leader;
      leader.layer = Layer::Labels;
      leader.path.moveTo(target);
      leader.path.lineTo(*centre);
      leader.style.stroke = palette.softInk;
      leader.style.width_mm = ink(0.12);
      items.push_back(std::move(leader));
    }
    addCircledNumber(items, id, pieceNumber(piece), *centre, radius, palette);
    items.back().name = pieceName(piece);

    const double size = ink(kLetter_mm);
    const auto beside = [&](const QString& text, const QPointF& from, double gap) {
      const double width = 0.62 * size * static_cast<double>(text.size()) + 0.3 * size;
      const double x = gap + width / 2, y = gap + size / 2;
      return room.take({from + QPointF(x, 0), from - QPointF(x, 0), from + QPointF(0, y),
                        from - QPointF(0, y)},
                       QSizeF(width, size * 1.1), LabelRoom::Cover::Never);
    };
    const QString letters = formulaLetters(scene.plan(), piece);
    if (!letters.isEmpty())
      if (const auto where = beside(letters, *centre, 1.1 * radius))
        items.push_back(words(id, Role::Letter, letters, *where, size, palette.ink));
    if (piece.backcomb.depth_mm > 0 && piece.backcomb.pushed_frac > 0) {
      const StripSample& mid = one.run[one.run.size() / 2];
      const QPointF low = at(view, mid.b);
      const QPointF out = unit(low - at(view, mid.centre));
      const QString text = millimetresFigure(piece.backcomb.depth_mm);
      const auto where = room.take({low + out * 1.1 * size, low + out * 1.8 * size},
                             QSizeF(0.62 * size * static_cast<double>(text.size()), size),
                             LabelRoom::Cover::Never);
      if (where)
        items.push_back(words(id, Role::Depth, text, *where, size * 0.85, palette.softInk));
    }
  }
  for (const SectionShape& section : scene.sections()) {
    if (section.section->label.empty()) continue;
    const QString text = QString::fromStdString(section.section->label);
    const double size = ink(kLetter_mm);
    const QSizeF needs(0.6 * size * static_cast<double>(text.size()), size * 1.2);
    // Just outside the parting, where it is seen.
    std::vector<QPointF> places;
    QPointF middle;
    for (const Vec3& p : section.outline) middle += at(view, p) / static_cast<double>(section.outline.size());
    for (std::size_t i = 0; i < section.outline.size(); i += 4) {
      if (!view.faces(scene.head().shape, section.outline[i])) continue;
      const QPointF p = at(view, section.outline[i]), out = unit(p - middle);
      places.push_back(p + QPointF(out.x() * (needs.width() / 2 + 0.5 * size), out.y() * 1.1 * size));
    }
    if (const auto where = room.take(places, needs, LabelRoom::Cover::Never))
      items.push_back(words(QString::fromStdString(section.id), Role::Letter, text, *where, size,
                            palette.softInk));
  }
  for (const auto& [id, item] : scene.plan().items()) {
    const auto* note = std::get_if<plan::Note>(item.get());
    if (!note) continue;
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

}  // namespace combdraft::paint

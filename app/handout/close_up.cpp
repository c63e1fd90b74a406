#include "app/handout/close_up.h"

#include <QCoreApplication>
#include <algorithm>
#include <map>

#include "app/handout/figure_parts.h"
#include "app/handout/figures.h"
#include "app/handout/letters.h"
#include "app/paint/describe_piece.h"
#include "app/paint/diagram.h"

namespace combdraft::handout {
namespace {

constexpr double kAround_mm = 12;  // room round what is shown, for numbers
// Lines that give bearings are drawn where this much of one is in the frame, on paper or as
// a share of its longer side: less cannot be told from a stray stroke.
constexpr double kLeastLine_mm = 25, kLeastLine_share = 0.25;
constexpr double kNoteGap_mm = 1.6;  // from a note's mark to its words, as labels are set
constexpr double kFragment_mm = 1;  // on paper; less of a piece is a speck

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString hairlineName() { return Words::tr("Hairline"); }

struct Square {
  head::SheetView view;
  QRectF frame;
};

// Looks at the middle of a section's outline, or of free pieces.
Square squareOn(const paint::Scene& scene, const CloseUpOf& of) {
  std::vector<Vec3> places;
  if (of.section) {
    places = of.section->outline;
  } else {
    for (const plan::ItemId& id : of.pieces)
      if (const paint::PieceShape* piece = scene.find(id))
        for (const paint::StripSample& s : piece->strip) places.insert(places.end(), {s.a, s.b});
  }
  Vec3 sum = Vec3::Zero();
  for (const Vec3& p : places) sum += p;
  const head::HeadShape& shape = scene.head().shape;
  Square square{head::SheetView::facing(shape, shape.pointAlong(unitOr(sum, Vec3::UnitZ()))), {}};
  QPolygonF around;
  for (const Vec3& p : places) {
    const head::ViewPoint q = square.view.project(p);
    around << QPointF(q.u_mm, q.v_mm);
  }
  square.frame = around.boundingRect().adjusted(-kAround_mm, -kAround_mm, kAround_mm, kAround_mm);
  return square;
}

QPainterPath lineIn(const head::SheetView& view, const std::vector<Vec3>& line) {
  QPainterPath path;
  for (std::size_t i = 0; i < line.size(); ++i) {
    const head::ViewPoint q = view.project(line[i]);
    i == 0 ? path.moveTo(q.u_mm, q.v_mm) : path.lineTo(q.u_mm, q.v_mm);
  }
  return path;
}

// From a point on that is out of sight, so that no run is cut where the outline begins.
std::vector<Vec3> hairlineFor(const head::HeadShape& shape, const head::SheetView& view, const head::Hairline& hairline) {
  std::vector<Vec3> line = hairline.outline(720);
  const auto hidden = std::find_if(line.begin(), line.end(), [&](const Vec3& p) { return !view.faces(shape, p); });
  if (hidden != line.end()) std::rotate(line.begin(), hidden, line.end());
  if (!line.empty()) line.push_back(line.front());
  return line;
}

// Stretches of lines that are long enough in the frame, each on to the frame's edge.
QPainterPath longStretches(const QPainterPath& lines, const QRectF& frame, double least_mm) {
  QPainterPath kept;
  const QList<QPolygonF> polygons = lines.toSubpathPolygons();
  for (const QPolygonF& line : polygons)
    for (qsizetype i = 0; i < line.size(); ++i) {
      if (!frame.contains(line[i])) continue;
      const qsizetype from = std::max<qsizetype>(0, i - 1);
      double length_mm = 0;
      for (; i + 1 < line.size() && frame.contains(line[i + 1]); ++i) length_mm += QLineF(line[i], line[i + 1]).length();
      const qsizetype to = std::min(i + 1, line.size() - 1);
      if (length_mm < least_mm) continue;
      kept.moveTo(line[from]);
      for (qsizetype k = from + 1; k <= to; ++k) kept.lineTo(line[k]);
    }
  return kept;
}

// Whether an item of a piece is smaller than a speck inside the frame.
bool isSpeck(const paint::DrawingItem& item, const QRectF& frame, const paint::Ink& ink) {
  QRectF seen = item.path.boundingRect().adjusted(-0.01, -0.01, 0.01, 0.01).intersected(frame);
  if (!item.clip.isEmpty()) seen = seen.intersected(item.clip.boundingRect());
  return std::max(seen.width(), seen.height()) < ink(kFragment_mm);
}

// Leaves what a close-up is of, and of the rest what gives bearings. Other sections have
// close-ups of their own; the name of this one stands above it.
void dropStrays(paint::Items& items, const paint::Scene& scene, const CloseUpOf& of, const QRectF& frame, const paint::Ink& ink) {
  using paint::Role;
  std::set<QString> sections, notesInside;
  for (const paint::SectionShape& section : scene.sections()) sections.insert(QString::fromStdString(section.id));
  const QString own = of.section ? QString::fromStdString(of.section->id) : QString();
  for (const paint::DrawingItem& item : items)
    if (item.role == Role::Note && !item.path.isEmpty() && frame.contains(item.path.boundingRect())) notesInside.insert(item.id);
  const double least_mm = std::min(ink(kLeastLine_mm), kLeastLine_share * std::max(frame.width(), frame.height()));
  for (paint::DrawingItem& item : items)
    if (item.role == Role::Part || item.role == Role::Hairline || (item.role == Role::Section && item.id != own))
      item.path = longStretches(item.path, frame, least_mm);
  std::erase_if(items, [&](const paint::DrawingItem& item) {
    switch (item.role) {
      case Role::Part:
      case Role::Hairline: return item.path.isEmpty();
      case Role::Section: return item.path.isEmpty() || (of.section && item.id != own);
      case Role::Letter: return sections.contains(item.id);
      case Role::Whorl: return !frame.contains(item.path.boundingRect());
      case Role::Note: return !notesInside.contains(item.id);
      case Role::Piece:
      case Role::Teeth:
      case Role::Hatch:
      case Role::LeftOut:
      case Role::Deepen:
      case Role::Paint:
      case Role::Backcomb: return isSpeck(item, frame, ink);
      default: return false;
    }
  });
}

// A note's words stay in the frame: they go to its other side where that has more room.
void keepNotesInside(paint::Items& items, const QRectF& frame, const paint::Ink& ink) {
  for (paint::DrawingItem& item : items) {
    if (item.role != paint::Role::Note || !item.text) continue;
    paint::TextRun& text = *item.text;
    const double gap = ink(kNoteGap_mm), right = frame.right() - text.at.x(), left = text.at.x() - 2 * gap - frame.left();
    const double needs = widthOf(text.words, text.size_mm);
    if (needs > right && left > right) {
      text.anchor = paint::TextRun::Anchor::End;
      text.at.rx() -= 2 * gap;
    }
    text.words = cutTo(text.words, text.size_mm, std::max(left, right));
  }
}

// Whether each piece of one set follows a piece of the other, or is followed.
bool isOtherSide(const paint::Scene& scene, const std::set<plan::ItemId>& one, const std::set<plan::ItemId>& other) {
  return one.size() == other.size() && std::all_of(other.begin(), other.end(), [&](const plan::ItemId& id) {
           const plan::Piece& piece = *scene.find(id)->piece;
           return one.contains(piece.twinOf) ||
                  std::any_of(one.begin(), one.end(), [&](const plan::ItemId& source) { return scene.find(source)->piece->twinOf == id; });
         });
}

}  // namespace

std::vector<CloseUpOf> closeUpsOf(const paint::Scene& scene) {
  std::vector<CloseUpOf> all;
  std::set<plan::ItemId> inSections;
  for (const paint::SectionShape& section : scene.sections()) {
    CloseUpOf of;
    of.section = &section;
    for (const auto& piece : scene.pieces())
      if (piece->piece->section == section.id) of.pieces.insert(piece->id), inSections.insert(piece->id);
    if (!section.section->twinOf.empty() || section.outline.size() < 3) continue;
    for (const paint::SectionShape& other : scene.sections()) of.mirrored |= other.section->twinOf == section.id;
    const QString label = QString::fromStdString(section.section->label);
    Vec3 sum = Vec3::Zero();
    for (const Vec3& p : section.outline) sum += p;
    const QString place = paint::placeWords(scene.head(), scene.head().shape.pointAlong(unitOr(sum, Vec3::UnitZ())));
    of.name = label.isEmpty() ? Words::tr("Section %1").arg(place) : label.left(1).toUpper() + label.mid(1);
    all.push_back(std::move(of));
  }
  std::map<head::ViewName, std::set<plan::ItemId>> free;
  for (const auto& piece : scene.pieces())
    if (!inSections.contains(piece->id) && piece->strip.size() > 1) free[bestView(scene, {piece->id})].insert(piece->id);
  using head::ViewName;
  std::set<plan::ItemId>&left = free[ViewName::Left], &right = free[ViewName::Right];
  const bool mirrored = !left.empty() && isOtherSide(scene, left, right);
  if (mirrored) right.clear();
  if (!free[ViewName::Top].empty()) free[ViewName::Top].merge(free[ViewName::Crown]);  // a page for two
  for (const ViewName view : {ViewName::Back, ViewName::Left, ViewName::Right, ViewName::Top, ViewName::Crown, ViewName::Front})
    if (!free[view].empty()) all.push_back({nullptr, free[view], viewName(view, Person::Model), mirrored && view == ViewName::Left});
  return all;
}

double closeUpScale(const paint::Scene& scene, const CloseUpOf& of, const QSizeF& room_mm) {
  const QRectF frame = squareOn(scene, of).frame;
  for (const double scale : {1.0, 0.5})
    if (frame.width() * scale <= room_mm.width() && frame.height() * scale <= room_mm.height()) return scale;
  return 0.25;
}

paint::Figure closeUp(const paint::Scene& scene, const CloseUpOf& of, double scale) {
  const Square square = squareOn(scene, of);
  paint::Figure figure;
  figure.id = (of.section ? QString::fromStdString(of.section->id) : QStringLiteral("free")) + QStringLiteral("-close-up");
  figure.title = of.name;
  const paint::Palette palette = paperPalette();
  const paint::Ink ink(scale);
  if (of.section) {
    paint::DrawingItem ground = stroke(lineIn(square.view, of.section->outline), QColor(), 0);
    ground.path.closeSubpath();
    ground.id = QStringLiteral("section-ground");
    ground.layer = paint::Layer::Art;
    ground.style.fill = palette.scalp;
    figure.items.push_back(std::move(ground));
  }
  paint::DrawingItem hairline = stroke({}, palette.ink, ink(0.25));
  hairline.id = QStringLiteral("hairline");
  hairline.role = paint::Role::Hairline;
  hairline.name = hairlineName();
  hairline.layer = paint::Layer::Art;
  for (const paint::LineRun& run : paint::splitBySight(scene.head().shape, square.view, hairlineFor(scene.head().shape, square.view, scene.head().hairline)))
    if (run.sight == paint::Sight::Seen) hairline.path.addPath(lineIn(square.view, run.points));
  figure.items.push_back(std::move(hairline));
  append(figure.items,
         paint::closeUpItems(scene, square.view, square.frame, {palette, scale, paint::DiagramStyle::Labels::Shown, &of.pieces, {}}));
  dropStrays(figure.items, scene, of, square.frame, ink);
  keepNotesInside(figure.items, square.frame, ink);
  crop(figure, square.frame);
  return figure;
}

}  // namespace combdraft::handout

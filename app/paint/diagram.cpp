#include "app/paint/diagram.h"

#include <algorithm>
#include <cmath>

#include "app/paint/describe_piece.h"
#include "app/paint/diagram_labels.h"
#include "app/paint/hatch.h"

namespace combdraft::paint {
namespace {

using head::SheetView;

constexpr double kTeethReadable_mm = 1.0;  // paper; narrower teeth become a zigzag

QPointF at(const SheetView& view, const Vec3& p) {
  const head::ViewPoint q = view.project(p);
  return {q.u_mm, q.v_mm};
}

QPolygonF edge(const SheetView& view, const Strip& strip, Vec3 StripSample::*side) {
  QPolygonF line;
  for (const StripSample& s : strip) line << at(view, s.*side);
  return line;
}

QPainterPath lineOf(const QPolygonF& points) {
  QPainterPath path;
  path.addPolygon(points);
  return path;
}

// Points along a strip `pitch` apart, between edges a and b in turn.
QPainterPath zigzag(const SheetView& view, const Strip& strip, double pitch_mm) {
  QPainterPath path;
  const double from = strip.front().along_mm, to = strip.back().along_mm;
  const int steps = std::max(2, static_cast<int>((to - from) / pitch_mm));
  for (int i = 0; i <= steps; ++i) {
    const double along = from + (to - from) * i / steps;
    const Strip here = stripBetween(strip, along - 0.05, along + 0.05);
    if (here.empty()) continue;
    const StripSample& s = here.front();
    const QPointF p = at(view, i % 2 == 0 ? s.a : s.b);
    path.elementCount() == 0 ? path.moveTo(p) : path.lineTo(p);
  }
  return path;
}

// Half-round bumps along the lower edge.
QPainterPath scallops(const SheetView& view, const Strip& strip, double pitch_mm) {
  const QPolygonF line = edge(view, strip, &StripSample::b);
  const QPolygonF inside = edge(view, strip, &StripSample::centre);
  QPainterPath path;
  double length = 0;
  for (int i = 1; i < line.size(); ++i) length += QLineF(line[i - 1], line[i]).length();
  const int bumps = std::max(1, static_cast<int>(length / pitch_mm));
  const double each = length / bumps;
  path.moveTo(line.front());
  double walked = 0, next = each;
  QPointF last = line.front();
  for (int i = 1; i < line.size(); ++i) {
    const QLineF step(line[i - 1], line[i]);
    while (walked + step.length() >= next - 1e-9 && step.length() > 0) {
      const QPointF p = step.pointAt(std::min(1.0, (next - walked) / step.length()));
      QPointF out = line[i] - inside[i];
      const double size = std::hypot(out.x(), out.y());
      out = size < 1e-6 ? QPointF(0, 1) : out / size;
      path.quadTo((last + p) / 2 + out * each * 0.9, p);
      last = p;
      next += each;
    }
    walked += step.length();
  }
  return path;
}

class PiecePainter {
 public:
  PiecePainter(const PieceShape& shape, const SheetView& view,
               const DiagramStyle& style, const QString& letters)
      : shape_(shape), piece_(*shape.piece), view_(view), palette_(style.palette), ink_(style.scale), letters_(letters),
        name_(describePiece(*shape.piece, shape.place)) {}

  Items items() {
    for (const StripRun& run : splitBySight(view_, shape_.strip))
      run.sight == Sight::Seen ? addSeen(run.strip) : addHidden(run.strip);
    return std::move(items_);
  }

 private:
  DrawingItem& add(Role role, const QPainterPath& path) {
    DrawingItem item;
    item.id = QString::fromStdString(shape_.id);
    item.role = role;
    item.layer = Layer::Diagram;
    item.name = name_;
    item.path = path;
    items_.push_back(std::move(item));
    return items_.back();
  }

  DrawingItem& addLine(Role role, const QPainterPath& path, double width_mm) {
    DrawingItem& item = add(role, path);
    item.style.stroke = palette_.ink;
    item.style.width_mm = ink_(width_mm);
    return item;
  }

  // A line that must be seen on the fill of a piece.
  DrawingItem& addLineOnFill(Role role, const QPainterPath& path, double width_mm) {
    DrawingItem& item = addLine(role, path, width_mm);
    if (piece_.action != plan::Action::Deepen) item.style.stroke = palette_.onTaken;
    return item;
  }

  void addHidden(const Strip& strip) {
    DrawingItem& item =
        addLine(Role::Hidden, lineOf(edge(view_, strip, &StripSample::centre)), 0.2);
    item.style.stroke = palette_.softInk;
    item.style.dash_mm = {ink_(0.9), ink_(0.8)};
    item.style.cap = Qt::FlatCap;
  }

  void addSeen(const Strip& strip) {
    const double from = strip.front().along_mm, to = strip.back().along_mm;
    const double length = stripLength_mm(shape_.strip);
    if (piece_.action == plan::Action::LeaveOut) {
      DrawingItem& flat = add(Role::LeftOut, outlineOf(view_, strip));
      flat.style.fill = palette_.leftOut;
      return;
    }
    for (const plan::Stretch& s : treatedStretches(piece_, length)) {
      const Strip part = stripBetween(strip, std::max(from, s.from_mm), std::min(to, s.to_mm));
      if (part.size() > 1) addTreated(part);
    }
    for (const plan::Stretch& hole : piece_.dropOuts) addDropOut(strip, hole);
  }

  bool isWoven() const {
    return piece_.taking == plan::Taking::Weave && piece_.tooth_mm > 0 && piece_.gap_mm > 0;
  }

  QColor fill() const {
    return piece_.action == plan::Action::Deepen ? palette_.deepen : palette_.taken;
  }

  void addTreated(const Strip& part) {
    const QPainterPath outline = outlineOf(view_, part);
    const bool deepen = piece_.action == plan::Action::Deepen;
    if (isWoven() && std::min(piece_.tooth_mm, piece_.gap_mm) * ink_.scale() < kTeethReadable_mm) {
      DrawingItem& ground = add(Role::Piece, outline);
      ground.style.fill = fill();
      addHatch(outline);
      addLineOnFill(Role::Teeth, zigzag(view_, part, ink_(0.8)), 0.25);
    } else if (isWoven()) {
      DrawingItem& ground = addLine(Role::Piece, outline, 0.12);
      ground.style.stroke = palette_.softInk;
      QPainterPath teeth, hatched;
      for (const plan::Stretch& tooth :
           takenStretches(piece_, stripLength_mm(shape_.strip))) {
        const Strip one = stripBetween(part, std::max(part.front().along_mm, tooth.from_mm),
                                       std::min(part.back().along_mm, tooth.to_mm));
        if (one.size() < 2) continue;
        const QPainterPath shape = outlineOf(view_, one);
        teeth.addPath(shape);
        const QPointF along = at(view_, one.back().centre) - at(view_, one.front().centre);
        // Teeth seen nearly end-on are too narrow to be hatched.
        if (std::hypot(along.x(), along.y()) > ink_(0.8)) hatched.addPath(shape);
      }
      DrawingItem& taken = addLineOnFill(Role::Teeth, teeth, 0.2);
      taken.style.fill = fill();
      if (!hatched.isEmpty()) addHatch(hatched);
    } else if (piece_.taking == plan::Taking::Paint) {
      DrawingItem& ground = add(Role::Paint, outline);
      ground.style.fill = fill();
      addHatch(outline);
      addBrush(part);
    } else {
      DrawingItem& ground = addLineOnFill(deepen ? Role::Deepen : Role::Piece, outline, 0.28);
      ground.style.fill = fill();
      addHatch(outline);
    }
    if (piece_.backcomb.depth_mm > 0 && piece_.backcomb.pushed_frac > 0)
      addLine(Role::Backcomb, scallops(view_, part, ink_(1.5)), 0.25);
  }

  // Brush on the surface: both edges, open ends with three strokes running out.
  void addBrush(const Strip& part) {
    const QPolygonF a = edge(view_, part, &StripSample::a), b = edge(view_, part, &StripSample::b);
    QPainterPath path = lineOf(a);
    path.addPath(lineOf(b));
    const auto strokes = [&](qsizetype end, qsizetype inner) {
      QPointF out = (a[end] + b[end]) / 2 - (a[inner] + b[inner]) / 2;
      const double size = std::hypot(out.x(), out.y());
      if (size < 1e-9) return;
      out *= ink_(0.9) / size;
      for (const double t : {0.2, 0.5, 0.8}) {
        const QPointF p = a[end] + (b[end] - a[end]) * t;
        path.moveTo(p - out);
        path.lineTo(p + out);
      }
    };
    strokes(0, 1);
    strokes(a.size() - 1, a.size() - 2);
    addLine(Role::Paint, path, 0.25);
  }

  void addHatch(const QPainterPath& area) {
    if (letters_.isEmpty()) return;
    DrawingItem& hatch =
        addLineOnFill(Role::Hatch, hatchLines(letters_.left(1), area, ink_(1.1)), 0.14);
    hatch.style.cap = Qt::FlatCap;
    if (piece_.action == plan::Action::Deepen) hatch.style.stroke = palette_.taken;
  }

  void addDropOut(const Strip& strip, const plan::Stretch& hole) {
    QPainterPath path;
    const auto tick = [&](double along, double inward) {
      if (along < strip.front().along_mm || along > strip.back().along_mm) return;
      for (const double shift : {0.0, inward}) {  // two end ticks
        const Strip here = stripBetween(strip, along + shift - 0.05, along + shift + 0.05);
        if (here.empty()) continue;
        const QPointF a = at(view_, here.front().a), b = at(view_, here.front().b);
        QPointF out = a - b;
        const double size = std::hypot(out.x(), out.y());
        out = size < 1e-9 ? QPointF(0, 0) : out * (ink_(0.7) / size);
        path.moveTo(a + out);
        path.lineTo(b - out);
      }
    };
    tick(hole.from_mm, ink_(0.6));
    tick(hole.to_mm, -ink_(0.6));
    if (!path.isEmpty()) addLine(Role::DropOut, path, 0.28);
  }

  const PieceShape& shape_;
  const plan::Piece& piece_;
  const SheetView view_;
  const Palette palette_;
  const Ink ink_;
  const QString letters_, name_;
  Items items_;
};

DrawingItem parting(const QString& id, Role role, const QString& name, const SheetView& view,
                    const LineRun& run, const Palette& palette, const Ink& ink, double width_mm) {
  DrawingItem item;
  item.id = id;
  item.role = run.sight == Sight::Seen ? role : Role::Hidden;
  item.layer = Layer::Diagram;
  item.name = name;
  for (std::size_t i = 0; i < run.points.size(); ++i)
    i == 0 ? item.path.moveTo(at(view, run.points[i])) : item.path.lineTo(at(view, run.points[i]));
  item.style.stroke = run.sight == Sight::Seen ? palette.ink : palette.softInk;
  item.style.width_mm = ink(run.sight == Sight::Seen ? width_mm : 0.2);
  if (run.sight == Sight::Hidden) {
    item.style.dash_mm = {ink(0.9), ink(0.8)};
    item.style.cap = Qt::FlatCap;
  }
  return item;
}

void addHeadLines(Items& items, const Scene& scene, const SheetView& view, const Palette& palette,
                  const Ink& ink) {
  const head::HeadShape& shape = scene.head().shape;
  for (const LineRun& run :
       splitBySight(shape, view, surfaceLine(shape, scene.plan().head().part)))
    items.push_back(parting(QStringLiteral("part"), Role::Part, QObject::tr("Usual part"), view,
                            run, palette, ink, 0.4));
  for (const plan::Whorl& whorl : scene.plan().head().whorls) {
    const Vec3 centre = shape.pointAt(whorl.at);
    if (!view.faces(shape, centre)) continue;
    const Vec3 normal = shape.normalAt(centre), up = unitOr(Vec3::UnitZ().cross(normal), Vec3::UnitX());
    const Vec3 across = normal.cross(up);
    DrawingItem item;
    item.id = QStringLiteral("whorl");
    item.role = Role::Whorl;
    item.layer = Layer::Diagram;
    item.name = QObject::tr("Swirl");
    // Seen from outside, clockwise runs against the right-handed turn about the normal.
    const double turn = whorl.turn == plan::Turn::Clockwise ? -1 : 1;
    for (int i = 0; i <= 40; ++i) {
      const double angle = turn * i * 0.22, r = ink(0.25 + 0.05 * i);
      const QPointF p =
          at(view, shape.project(centre + r * (std::cos(angle) * up + std::sin(angle) * across)));
      i == 0 ? item.path.moveTo(p) : item.path.lineTo(p);
    }
    item.style.stroke = palette.softInk;
    item.style.width_mm = ink(0.28);
    items.push_back(std::move(item));
  }
}

}  // namespace

Items pieceItems(const Scene& scene, const PieceShape& piece, head::ViewName view,
                 const DiagramStyle& style) {
  return PiecePainter(piece, scene.head().view(view), style, formulaLetters(scene.plan(), *piece.piece)).items();
}

namespace {

Items linesAndPieces(const Scene& scene, const SheetView& view, const DiagramStyle& style) {
  const Ink ink(style.scale);
  Items items;
  addHeadLines(items, scene, view, style.palette, ink);
  for (const SectionShape& section : scene.sections())
    for (const LineRun& run : splitBySight(scene.head().shape, view, section.outline))
      items.push_back(parting(QString::fromStdString(section.id), Role::Section,
                              QString::fromStdString(section.section->label), view, run,
                              style.palette, ink, 0.4));
  // Earlier pieces have the hair: they lie over later ones.
  KeptPieces drawn;
  for (auto piece = scene.pieces().rbegin(); piece != scene.pieces().rend(); ++piece) {
    if (!style.shows((*piece)->id)) continue;
    const QString letters = formulaLetters(scene.plan(), *(*piece)->piece);
    Items own;
    if (auto known = style.kept ? style.kept->find(*piece) : KeptPieces::iterator{};
        style.kept && known != style.kept->end() && known->second.first == letters)
      own = std::move(known->second.second);
    else
      own = PiecePainter(**piece, view, style, letters).items();
    items.insert(items.end(), own.begin(), own.end());
    if (style.kept) drawn[*piece] = {letters, std::move(own)};
  }
  if (style.kept) *style.kept = std::move(drawn);
  return items;
}

}  // namespace

Items closeUpItems(const Scene& scene, const SheetView& view, const QRectF& frame,
                   const DiagramStyle& style) {
  Items items = linesAndPieces(scene, view, style);
  std::erase_if(items, [](const DrawingItem& item) { return item.role == Role::Hidden; });
  QPainterPath shape;
  shape.addRect(frame);
  clipItems(items, shape);
  if (style.labels == DiagramStyle::Labels::Shown) addLabels(items, scene, view, shape, style);
  return items;
}

Items diagramItems(const Scene& scene, head::ViewName name, const DiagramStyle& style) {
  Items items = linesAndPieces(scene, scene.head().view(name), style);
  // What lies behind the head is dashed where hair is seen, never across the face.
  const QPainterPath& scalp = scene.head().lines(name).scalp;
  for (DrawingItem& item : items)
    if (item.role == Role::Hidden) item.clip = scalp;
  std::stable_partition(items.begin(), items.end(),
                        [](const DrawingItem& item) { return item.role == Role::Hidden; });
  clipToView(items, name);
  if (style.labels == DiagramStyle::Labels::Shown) {
    QPainterPath shape = viewClip(name);
    if (style.labelFrame && name != head::ViewName::Crown) {
      shape.clear();
      shape.addRect(*style.labelFrame);
    }
    addLabels(items, scene, scene.head().view(name), shape, style);
  }
  return items;
}

}  // namespace combdraft::paint

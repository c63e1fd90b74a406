#include "app/sheet/line_tool.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/controls/units.h"
#include "app/paint/describe_piece.h"
#include "app/words/engine_words.h"
#include "engine/head/scalp_outline.h"
#include "engine/head/surface_distance.h"
#include "engine/plan/edits.h"
#include "engine/plan/field_info.h"

namespace combdraft::sheet {
namespace {

constexpr double kNear_mm = 2, kDrawStep_mm = 8;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

QString length(double mm) { return controls::lengthText(mm, controls::Units::current().length()); }

std::vector<Vec3> onSurface(const head::HeadShape& shape, const std::vector<head::ScalpPoint>& points) {
  std::vector<Vec3> out;
  for (const head::ScalpPoint& point : points) out.push_back(shape.pointAt(point));
  return out;
}

head::ScalpPoint tidy(const head::ScalpPoint& point) {
  return {std::round(point.bearing_deg * 1000) / 1000, std::round(point.drop_deg * 1000) / 1000};
}

}  // namespace

plan::ItemId sectionAt(const paint::Scene& scene, const Vec3& place) {
  plan::ItemId found;
  double smallest = 1e9;
  for (const paint::SectionShape& section : scene.sections()) {
    const head::ScalpOutline outline(scene.head().shape,
                                     onSurface(scene.head().shape, section.section->outline));
    if (!outline.contains(place) || outline.radius_mm() >= smallest) continue;
    smallest = outline.radius_mm();
    found = section.id;
  }
  return found;
}

bool addTyped(QString& typed, const QString& text) {
  static const QString kTaken = QStringLiteral("0123456789.,/+ \"");
  if (text.size() != 1 || typed.size() >= 12 || !kTaken.contains(text)) return false;
  if (typed.isEmpty() && !text.at(0).isDigit()) return false;
  typed += text;
  return true;
}

LineTool::LineTool(ToolContext context, DrawnLine kind, const NewPiece& newPiece)
    : SheetTool(std::move(context)), kind_(kind), new_(newPiece) {}

std::size_t LineTool::most() const {
  return kind_ == DrawnLine::Section ? plan::limits::kOutlinePoints : plan::limits::kLinePoints;
}

std::optional<double> LineTool::typedLength() const {
  const auto value = controls::lengthFrom(typed_.trimmed(), controls::Units::current().length());
  if (!value) return std::nullopt;
  const plan::FieldInfo& info = plan::fieldInfo("piece.thickness_mm");
  const bool fits = isStrip() ? *value >= info.low && *value <= info.high : *value > 0 && *value <= 400;
  return fits ? value : std::nullopt;
}

double LineTool::thickness_mm() const {
  return isStrip() ? typedLength().value_or(new_.thickness_mm) : 0;
}

Snap LineTool::atTypedLength(const Snap& snap) const {
  const auto typed = isStrip() || points_.empty() ? std::nullopt : typedLength();
  if (!typed) return snap;
  const head::HeadShape& shape = scene()->head().shape;
  const Vec3 from = shape.pointAt(points_.back()), to = shape.pointAt(snap.at);
  const head::SurfacePath way = head::shortestPath(shape, from, to);
  if (way.length_mm < 0.5) return snap;
  const Vec3 heading = way.points[1] - way.points[0];
  return {shape.scalpPointAt(head::surfaceOffset(shape, from, heading, *typed)), {}, {}};
}

bool LineTool::addPoint(const Snap& snap, double near_mm) {
  const paint::HeadScene& head = scene()->head();
  if (points_.size() >= most()) return refuse(Words::tr("No more than %1 points fit.").arg(most()));
  // What is caught on the hairline may lie a hair outside it by rounding.
  const double above_mm = head.hairline.above_mm(head.shape.pointAt(snap.at));
  if (above_mm < (snap.isCaught() ? -1.0 : 0.0)) {
    // A typed length may end outside.
    return refuse(Words::tr("That lies outside the hair: set it inside the hairline."), snap.at);
  }
  const Vec3 at = head.shape.pointAt(snap.at);
  if (!points_.empty() && (head.shape.pointAt(points_.back()) - at).norm() < near_mm) return false;
  std::size_t added = 0;
  if (!points_.empty())
    for (const head::ScalpPoint& between : context_.snaps().along(last_, snap))
      if (points_.size() + 1 < most()) points_.push_back(tidy(between)), ++added;
  points_.push_back(tidy(snap.at));
  steps_.push_back(added + 1);
  last_ = snap;
  trouble_.clear();
  troubleAt_.reset();
  return true;
}

void LineTool::press(const ToolHand& hand) {
  if (kind_ == DrawnLine::Section && points_.size() > 2 && hand.snap.at == points_.front()) {
    finish();
    return;
  }
  const Snap snap = atTypedLength(hand.snap);
  if (addPoint(snap, kNear_mm) && !isStrip()) typed_.clear();
}

void LineTool::drag(const ToolHand& hand) {
  if (points_.empty()) return;
  const head::HeadShape& shape = scene()->head().shape;
  if ((shape.pointAt(points_.back()) - shape.pointAt(hand.free)).norm() < kDrawStep_mm) return;
  addPoint({hand.free, {}, {}}, kDrawStep_mm / 2);
}

bool LineTool::erase() {
  if (points_.empty()) return false;
  trouble_.clear();
  troubleAt_.reset();
  if (!typed_.isEmpty()) {
    typed_.chop(1);
    return true;
  }
  points_.resize(points_.size() - std::min(points_.size(), steps_.back()));
  steps_.pop_back();
  last_ = points_.empty() ? Snap{} : Snap{points_.back(), {}, {}};
  return true;
}

bool LineTool::isWorthKeeping() const {
  return kind_ == DrawnLine::Section ? points_.size() > 2 : isStrip() && points_.size() > 1;
}

bool LineTool::drop() {
  const bool wasDrawing = !points_.empty();
  points_.clear();
  steps_.clear();
  typed_.clear();
  trouble_.clear();
  troubleAt_.reset();
  last_ = {};
  return wasDrawing;
}

bool LineTool::type(const QString& text) {
  if (points_.empty() || !addTyped(typed_, text)) return false;
  trouble_.clear();
  return true;
}

std::vector<head::ScalpPoint> LineTool::corners() const {
  return kind_ == DrawnLine::Section ? points_ : std::vector<head::ScalpPoint>{};
}

bool LineTool::refuse(const QString& why, const std::optional<head::ScalpPoint>& where) {
  trouble_ = why;
  troubleAt_ = where;
  return false;
}

QString LineTool::words() const {
  if (!trouble_.isEmpty()) return trouble_;
  if (!typed_.isEmpty() && !typedLength())
    return isStrip() ? Words::tr("“%1” is no thickness: allowed is %2.")
                           .arg(typed_, words::inWords(plan::rangeText(
                                            plan::fieldInfo("piece.thickness_mm"))))
                     : Words::tr("“%1” is no length.").arg(typed_);
  if (!typed_.isEmpty() && !isStrip())
    return Words::tr("The next stretch is %1 long: click or press Space to set it.").arg(length(*typedLength()));
  if (points_.empty()) {
    switch (kind_) {
      case DrawnLine::Piece: return Words::tr("Click points along the parting, or draw with the button down.");
      case DrawnLine::LeftOut: return Words::tr("Click points along the hair to leave out, or draw with the button down.");
      case DrawnLine::Section: return Words::tr("Click the corners of the section; it catches on lines (Ctrl: free). By keyboard: arrows and Space.");
      case DrawnLine::Parting: return Words::tr("Draw the parting across a section, from edge to edge: it splits the section.");
      case DrawnLine::Part: return Words::tr("Draw how the hair is parted, from the front to the back.");
    }
  }
  switch (kind_) {
    case DrawnLine::Piece:
      return Words::tr("%1 thick; type a number to change it. Enter ends the piece, Escape drops it.").arg(length(thickness_mm()));
    case DrawnLine::LeftOut:
      return Words::tr("%1 left out; type a number to change it. Enter ends, Escape drops it.").arg(length(thickness_mm()));
    case DrawnLine::Section:
      return Words::tr("Next corner; a typed number sets its distance. The first corner or Enter closes, a right click or Backspace takes one back.");
    case DrawnLine::Parting: return Words::tr("Enter or a double click splits the section here. Backspace or a right click takes a point back.");
    case DrawnLine::Part: return Words::tr("Enter or a double click sets the part. Backspace or a right click takes a point back.");
  }
  return {};
}

ToolSketch LineTool::sketch(const std::optional<Snap>& hover) const {
  ToolSketch sketch;
  sketch.corners = points_;
  sketch.line = points_;
  sketch.trouble = troubleAt_;
  sketch.thickness_mm = thickness_mm();
  if (points_.empty()) return sketch;
  if (hover) {
    const Snap next = atTypedLength(*hover);
    for (const head::ScalpPoint& between : context_.snaps().along(last_, next)) sketch.line.push_back(between);
    sketch.line.push_back(next.at);
    if (!isStrip()) {
      const head::HeadShape& shape = scene()->head().shape;
      sketch.tag = length(head::surfaceDistance_mm(shape, shape.pointAt(points_.back()), shape.pointAt(next.at)));
    }
  }
  sketch.closed = kind_ == DrawnLine::Section && sketch.line.size() > 2;
  return sketch;
}

bool LineTool::finish() {
  if (points_.empty()) return false;
  if (isStrip() && !typed_.isEmpty() && !typedLength()) return false;
  switch (kind_) {
    case DrawnLine::Piece:
    case DrawnLine::LeftOut: return addPiece();
    case DrawnLine::Section: return addSection();
    case DrawnLine::Parting: return split();
    case DrawnLine::Part: return setPart();
  }
  return false;
}

bool LineTool::addPiece() {
  if (points_.size() < 2) return refuse(Words::tr("A piece needs two points at least: click where it ends."));
  plan::Piece piece;
  piece.line = points_;
  piece.thickness_mm = thickness_mm();
  piece.start_mm = new_.start_mm;
  const bool leftOut = kind_ == DrawnLine::LeftOut;
  if (leftOut) piece.action = plan::Action::LeaveOut;
  const head::HeadShape& shape = scene()->head().shape;
  piece.section = sectionAt(*scene(), shape.pointAt(points_[points_.size() / 2]));
  const plan::Plan& before = context_.document.document();
  const plan::ChangeSet edit = plan::addPiece(before, piece);
  const plan::ItemId id = edit.args.front();
  const plan::Plan next = plan::applied(before, edit);
  new_.thickness_mm = piece.thickness_mm;
  return keep(next,
                         (leftOut ? Words::tr("Draw left-out %1") : Words::tr("Draw piece %1"))
                             .arg(paint::pieceNumber(*next.find<plan::Piece>(id))),
                         document::Selection::one(id));
}

bool LineTool::addSection() {
  if (points_.size() < 3) return refuse(Words::tr("A section needs three corners at least."));
  const head::HeadShape& shape = scene()->head().shape;
  const head::ScalpOutline outline(shape, onSurface(shape, points_));
  if (const auto crossing = outline.crossing())
    return refuse(Words::tr("The outline crosses itself at the red mark. Backspace takes corners back."),
                  shape.scalpPointAt(*crossing));
  // A line there and back holds no hair.
  double area_mm2 = 0;
  {
    const Vec3 normal = shape.normalAt(outline.middle()), u = normal.unitOrthogonal(), v = normal.cross(u);
    const std::vector<Vec3>& line = outline.line();
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
      const Vec3 a = line[i] - outline.middle(), b = line[i + 1] - outline.middle();
      area_mm2 += (a.dot(u) * b.dot(v) - a.dot(v) * b.dot(u)) / 2;
    }
  }
  if (std::abs(area_mm2) < 60 || outline.radius_mm() < 6) return refuse(Words::tr("This outline holds too little hair for a piece: set a corner farther off."), points_.front());
  plan::Section section;
  section.outline = points_;
  section.label = paint::placeWords(scene()->head(), outline.middle()).toStdString();
  const plan::Plan& before = context_.document.document();
  const plan::ChangeSet edit = plan::addSection(before, section);
  const plan::ItemId id = edit.args.front();
  const QString name = Words::tr("Draw section %1").arg(QString::fromStdString(section.label));
  return keep(plan::applied(before, edit), name, document::Selection::one(id));
}

bool LineTool::split() {
  if (points_.size() < 2) return refuse(Words::tr("A parting needs two points at least."));
  const head::HeadShape& shape = scene()->head().shape;
  plan::ItemId id = sectionAt(*scene(), shape.pointAt(points_[points_.size() / 2]));
  if (points_.size() == 2)
    id = sectionAt(*scene(), shape.pointAlong(shape.pointAt(points_[0]) + shape.pointAt(points_[1])));
  if (id.empty())
    return refuse(Words::tr("There is no section under this parting: a parting splits a section from edge to edge."),
                  points_[points_.size() / 2]);
  const plan::Plan& before = context_.document.document();
  const plan::ChangeSet edit = plan::splitSection(before, id, points_);
  if (edit.empty())
    return refuse(Words::tr("This parting does not cross the section from edge to edge: draw it on to both edges."),
                  points_.back());
  return keep(plan::applied(before, edit), Words::tr("Split a section"), document::Selection(edit.args));
}

bool LineTool::setPart() {
  if (points_.size() < 2) return refuse(Words::tr("A part needs two points at least."));
  const head::HeadShape& shape = scene()->head().shape;
  std::vector<head::ScalpPoint> line = points_;
  if (shape.pointAt(line.front()).y() < shape.pointAt(line.back()).y()) std::reverse(line.begin(), line.end());
  const plan::Plan& before = context_.document.document();
  const plan::ChangeSet edit = plan::setPart(before, line);
  return keep(plan::applied(before, edit), Words::tr("Draw the part"), context_.document.selection());
}

// What was drawn is in hand until it is in the plan: a refused edit loses nothing.
bool LineTool::keep(const plan::Plan& next, const QString& name, const document::Selection& after) {
  const std::vector<head::ScalpPoint> drawn = points_;
  const std::vector<std::size_t> steps = steps_;
  const QString typed = typed_;
  drop();  // the sheet is drawn anew by the edit
  if (context_.document.edit(next, name, after) != document::DocumentController::Outcome::Refused) return true;
  points_ = drawn;
  steps_ = steps;
  typed_ = typed;
  if (!points_.empty()) last_ = {points_.back(), {}, {}};
  return false;
}

}  // namespace combdraft::sheet

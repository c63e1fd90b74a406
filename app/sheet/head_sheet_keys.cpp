// What the keyboard does on the head sheet: walking, nudging, and the tools by key.
#include <QKeyEvent>
#include <algorithm>
#include <cmath>

#include "app/sheet/head_sheet.h"
#include "engine/head/surface_distance.h"
#include "engine/plan/edits.h"

namespace combdraft::sheet {

using document::Selection;
using document::Tool;

void HeadSheet::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    pressProblem_.clear();
    if (dropWhatIsUnderWay()) return;
    document_.isTentative() ? document_.dropTentative() : document_.select(Selection());
    return;
  }
  if (toolKey(*event)) return;
  const Qt::KeyboardModifiers keys = event->modifiers();
  const double step = keys & Qt::ShiftModifier ? 10 : keys & Qt::AltModifier ? 0.1 : 1;
  const double side = event->key() == Qt::Key_Left ? -1 : event->key() == Qt::Key_Right ? 1 : 0;
  const double down = event->key() == Qt::Key_Up ? -1 : event->key() == Qt::Key_Down ? 1 : 0;
  if (side != 0 && keys & Qt::ControlModifier)
    return view_.setDivider(std::clamp(view_.divider_frac() + 0.05 * side, 0.0, 1.0));
  if (side != 0 || down != 0) {
    if (!event->isAutoRepeat()) nudging_ = document::Gesture::begin();
    if (view_.tool() == Tool::Select) return nudge(side * step, down * step);
    return moveToolPoint(side * step, down * step);
  }
  if (event->key() >= Qt::Key_1 && event->key() <= Qt::Key_6 && !(keys & Qt::ControlModifier))
    return setLarge(head::kAllViews[static_cast<std::size_t>(event->key() - Qt::Key_1)]);
  switch (event->key()) {
    case Qt::Key_0: return setLarge(std::nullopt);
    case Qt::Key_Plus:
    case Qt::Key_Equal: return zoomAt(rect().center(), 1.2);
    case Qt::Key_Minus: return zoomAt(rect().center(), 1 / 1.2);
    case Qt::Key_Delete:
    case Qt::Key_Backspace: return removeSelected();
    default: QWidget::keyPressEvent(event);
  }
}

void HeadSheet::keyReleaseEvent(QKeyEvent* event) {
  if (!event->isAutoRepeat()) nudging_.reset();
  QWidget::keyReleaseEvent(event);
}

bool HeadSheet::toolKey(QKeyEvent& event) {
  if (!tool_) return false;
  pressProblem_.clear();
  const auto done = [this](bool taken) {
    if (taken) update();
    return taken;
  };
  switch (event.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
      tool_->finish();
      return done(true);
    case Qt::Key_Space:
      // A space goes into a fraction that is being typed ("1 1/8").
      if (tool_->hasTyped() && tool_->type(QStringLiteral(" "))) return done(true);
      if (const auto hand = toolHandHere(event.modifiers())) {
        tool_->press(*hand);
        tool_->release(*hand);
      }
      return done(true);
    case Qt::Key_Backspace:  // never takes a thing off the plan while a tool is in hand
      tool_->erase();
      return done(true);
    case Qt::Key_Delete: {
      const auto hand = toolHandHere(event.modifiers());
      return done(hand && tool_->remove(*hand));
    }
    default: return done(!event.text().isEmpty() && tool_->type(event.text()));
  }
}

bool HeadSheet::dropGesture() {
  if (!gesture_) return false;
  gesture_->drop();
  gesture_.reset();
  hold_ = Hold::Nothing;
  update();
  return true;
}

bool HeadSheet::dropWhatIsUnderWay() {
  bool dropped = dropGesture();
  if (hold_ != Hold::Nothing) dropped = true;
  hold_ = Hold::Nothing;
  if (tool_ && tool_->drop()) dropped = true;
  update();
  return dropped;
}

void HeadSheet::nudge(double right_mm, double down_mm) {
  std::vector<plan::ItemId> ids;
  const plan::ItemId& lead = document_.selection().lead();
  for (const plan::ItemId& id : document_.selection().ids())
    id == lead ? (void)ids.insert(ids.begin(), id) : ids.push_back(id);
  if (ids.empty()) return;
  const head::HeadShape& shape = scene_->head().shape;
  Vec3 from = Vec3::Zero();
  if (const paint::PieceShape* piece = scene_->find(ids.front()))
    from = piece->strip.empty() ? from : piece->strip[piece->strip.size() / 2].centre;
  for (const paint::SectionShape& section : scene_->sections())
    if (section.id == ids.front())
      for (const Vec3& p : section.outline) from += p;
  if (const auto* note = document_.plan().find<plan::Note>(ids.front())) from = shape.pointAt(note->at);
  if (from.norm() < 1) return;
  from = shape.pointAlong(from);
  const Vec3 normal = shape.normalAt(from);
  // Along the drawing's own directions: in the large view, or where the piece
  // faces the viewer most.
  head::SheetView view = scene_->head().view(view_.largeView().value_or(head::ViewName::Back));
  if (!view_.largeView() || normal.dot(view.toward()) < 0.1)
    for (const head::ViewName name : head::kAllViews) {
      const head::SheetView other = scene_->head().view(name);
      if (normal.dot(other.toward()) > normal.dot(view.toward()) + 1e-9) view = other;
    }
  const Vec3 way = view.right() * right_mm + view.down() * down_mm;
  const Vec3 to = head::surfaceOffset(shape, from, way, std::hypot(right_mm, down_mm));
  const plan::Plan& plan = document_.document();
  const plan::Plan next = plan::applied(
      plan, plan::movePieces(plan, ids, shape.scalpPointAt(from), shape.scalpPointAt(to)));
  document_.edit(next, namedEdit(plan, ids, tr("Move %1"), tr("Move %1 items")),
                 nudging_.value_or(document::Gesture::none()));
}

void HeadSheet::moveToolPoint(double right_mm, double down_mm) {
  const head::HeadShape& shape = scene_->head().shape;
  const Vec3 from = view_.hoverPoint() ? shape.pointAt(*view_.hoverPoint()) : scene_->head().crown;
  const head::SheetView view =
      scene_->head().view(view_.largeView().value_or(head::ViewName::Back));
  const Vec3 way = view.right() * right_mm + view.down() * down_mm;
  const Vec3 to = head::surfaceOffset(shape, from, way, std::hypot(right_mm, down_mm));
  const head::ScalpPoint point = shape.scalpPointAt(to);
  if (!scene_->head().hairline.contains(point)) return;
  const ViewPlace* place = placeOf(view_.largeView().value_or(head::ViewName::Back));
  if (tool_ && place) snap_ = snapAt(*place, point, Qt::NoModifier, {});
  view_.setHover(point);
}

void HeadSheet::removeSelected() {
  const std::vector<plan::ItemId> ids = document_.selection().ids();
  if (ids.empty()) return;
  const plan::Plan& plan = document_.document();
  document_.edit(plan::applied(plan, plan::removeItems(plan, ids)),
                 namedEdit(plan, ids, tr("Remove %1"), tr("Remove %1 items")), Selection());
}

}  // namespace combdraft::sheet

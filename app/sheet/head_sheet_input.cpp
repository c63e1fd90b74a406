// What the hand, the keyboard and the touch screen do on the head sheet.
#include <QApplication>
#include <QGestureEvent>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QPinchGesture>
#include <QToolTip>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "app/paint/describe_piece.h"
#include "app/paint/diagram.h"
#include "app/sheet/head_sheet.h"
#include "engine/head/surface_distance.h"
#include "engine/plan/edits.h"

namespace combdraft::sheet {

using document::Selection;
using document::Tool;

// ---- pointer --------------------------------------------------------------

void HeadSheet::hover(const QPointF& widget, Qt::KeyboardModifiers keys) {
  now_ = widget;
  const ViewPlace* place = placeUnder(widget);
  snap_.reset();
  if (!place) {
    view_.setHover(std::nullopt);
    unsetCursor();
    return;
  }
  const plan::ItemId item = itemUnder(*place, widget);
  auto free = scalpUnder(*place, widget);
  if (tool_ && !free) free = edgeNear(*place, widget);
  if (tool_ && free) snap_ = snapAt(*place, *free, keys, {});
  view_.setHover(free, item);
  if (tool_) update();
  Qt::CursorShape cursor = Qt::ArrowCursor;
  if (isOnTitle(*place, widget)) cursor = Qt::OpenHandCursor;
  else if (handleUnder(*place, widget)) cursor = Qt::SizeAllCursor;
  else if (isOnDivider(widget)) cursor = Qt::SplitHCursor;
  else if (view_.tool() != Tool::Select) cursor = Qt::CrossCursor;
  else if (!item.empty()) cursor = Qt::PointingHandCursor;
  setCursor(cursor);
}

void HeadSheet::mousePressEvent(QMouseEvent* event) {
  // A second button while one holds something changes nothing.
  if (hold_ != Hold::Nothing) return;
  const QPointF at = event->position();
  const ViewPlace* place = placeUnder(at);
  press_ = now_ = at;
  pressedKeys_ = event->modifiers();
  pressedItem_.clear();
  pressedHandle_.reset();
  nudging_.reset();
  if (!place) return;
  pressView_ = place->view;
  if (event->button() == Qt::MiddleButton) {
    hold_ = Hold::Pan;
    return;
  }
  pressProblem_.clear();
  if (event->button() == Qt::RightButton && tool_) {
    tool_->erase();  // takes back the last point
    update();
    return;
  }
  if (event->button() != Qt::LeftButton) return;
  if (isOnTitle(*place, at)) {
    hold_ = Hold::Title;
    return;
  }
  pressedHandle_ = handleUnder(*place, at);
  if (!pressedHandle_ && isOnDivider(at)) {
    hold_ = Hold::Divider;
    return;
  }
  if (tool_) {
    if (const auto hand = toolHand(*place, at, event->modifiers())) {
      tool_->press(*hand);
      hold_ = Hold::Tool;
      dragged_ = false;
    } else {
      pressProblem_ = tr("That is beside the hair: click inside the hairline.");
    }
  } else if (pressedHandle_) {
    const plan::ItemId& lead = document_.selection().lead();
    switch (pressedHandle_->kind) {
      case HandleKind::Corner: gesture_ = pullCorner(document_, scene_, lead, pressedHandle_->point); break;
      case HandleKind::Spacing: gesture_ = pullSpacing(document_, scene_, lead, *pressedHandle_); break;
      default: gesture_ = pullHandle(document_, scene_, lead, *pressedHandle_, place->view);
    }
    hold_ = Hold::Gesture;
  } else {
    pressedItem_ = itemUnder(*place, at);
    hold_ = pressedItem_.empty() ? Hold::Band : Hold::Gesture;
  }
  update();
}

void HeadSheet::mouseMoveEvent(QMouseEvent* event) {
  const QPointF at = event->position();
  const QPointF step = at - now_;
  now_ = at;
  const ViewPlace* place = placeOf(pressView_);
  // The release went to a dialog or another window: the hand holds nothing any more.
  if (hold_ != Hold::Nothing && event->buttons() == Qt::NoButton) dropWhatIsUnderWay();
  if (hold_ == Hold::Nothing || !place) {
    hover(at, event->modifiers());
    return;
  }
  switch (hold_) {
    case Hold::Divider: {
      const double middle = dividerX(*place);
      const QRectF frame = paint::frameOf(place->view);
      const double width = std::min(frame.width() * place->scale, place->rect.width());
      view_.setDivider(std::clamp(view_.divider_frac() + (at.x() - middle) / width, 0.0, 1.0));
      break;
    }
    case Hold::Pan: panBy(step); break;
    case Hold::Title:
      if (QLineF(press_, at).length() < QApplication::startDragDistance()) break;
      hold_ = Hold::Nothing;
      Q_EMIT viewDraggedOut(pressView_);
      return;
    case Hold::Tool:
      if (const auto hand = toolHand(*place, at, event->modifiers())) {
        dragged_ = dragged_ || QLineF(press_, at).length() >= QApplication::startDragDistance();
        if (dragged_) tool_->drag(*hand);
        view_.setHover(hand->free);
      }
      break;
    case Hold::Gesture: {
      if (!gesture_) {
        if (QLineF(press_, at).length() < QApplication::startDragDistance()) break;
        // A piece that is not selected yet is selected by dragging it.
        if (!document_.selection().contains(pressedItem_))
          document_.select(Selection::one(pressedItem_));
        std::vector<plan::ItemId> ids{pressedItem_};
        for (const plan::ItemId& id : document_.selection().ids())
          if (id != pressedItem_) ids.push_back(id);
        gesture_ = movePieces(document_, scene_, ids,
                              handAt(*place, press_, pressedKeys_));
      }
      gesture_->move(handAt(*place, at, event->modifiers()));
      view_.setHover(scalpUnder(*place, at), pressedItem_);
      break;
    }
    case Hold::Band:
    case Hold::Nothing: break;
  }
  update();
}

void HeadSheet::mouseReleaseEvent(QMouseEvent* event) {
  const Qt::MouseButton holding = hold_ == Hold::Pan ? Qt::MiddleButton : Qt::LeftButton;
  if (hold_ == Hold::Nothing || event->button() != holding) return;
  const Hold held = std::exchange(hold_, Hold::Nothing);
  const bool moved = QLineF(press_, event->position()).length() >= QApplication::startDragDistance();
  if (held == Hold::Tool) {
    const ViewPlace* place = placeOf(pressView_);
    if (const auto hand = place ? toolHand(*place, event->position(), event->modifiers()) : std::nullopt)
      tool_->release(*hand);
    else
      tool_->release({{}, {}, {}, event->modifiers(), 0});
  } else if (held == Hold::Gesture && gesture_) {
    const std::unique_ptr<Gesture> done = std::move(gesture_);
    if (document_.isTentative()) done->release();
  } else if (held == Hold::Gesture) {
    select(pressedItem_, pressedKeys_);
  } else if (held == Hold::Band) {
    now_ = event->position();
    if (moved) selectBand();
    else if (!pressedItem_.empty()) select(pressedItem_, pressedKeys_);
    else if (!(pressedKeys_ & (Qt::ControlModifier | Qt::ShiftModifier)))
      document_.select(Selection());
  }
  hover(event->position(), event->modifiers());
  update();
}

void HeadSheet::mouseDoubleClickEvent(QMouseEvent* event) {
  const ViewPlace* place = placeUnder(event->position());
  if (!place || event->button() != Qt::LeftButton) return;
  if (tool_) {
    // The second press of a double click sets no point of its own.
    tool_->finish();
    update();
    return;
  }
  if (isOnDivider(event->position())) return view_.setDivider(0.5);
  setLarge(place->large ? std::nullopt : std::optional(place->view));
}

void HeadSheet::leaveEvent(QEvent*) {
  if (hold_ != Hold::Nothing) return;
  snap_.reset();
  view_.setHover(std::nullopt);
}

void HeadSheet::wheelEvent(QWheelEvent* event) {
  const bool zooms = event->pixelDelta().isNull() || event->modifiers() & Qt::ControlModifier;
  if (zooms) {
    // In proportion to the turn: a notch is 120 units.
    zoomAt(event->position(), std::pow(1.2, event->angleDelta().y() / 120.0));
  } else {
    panBy(QPointF(event->pixelDelta()));
  }
  event->accept();
}

// ---- selection ------------------------------------------------------------

void HeadSheet::select(const plan::ItemId& id, Qt::KeyboardModifiers keys) {
  const bool adds = keys & (Qt::ControlModifier | Qt::ShiftModifier);
  document_.select(adds ? document_.selection().toggled(id) : Selection::one(id));
}

void HeadSheet::selectBand() {
  const ViewPlace* place = placeOf(pressView_);
  if (!place) return;
  const QRectF band(place->toView(press_), place->toView(now_));
  std::vector<plan::ItemId> ids;
  if (pressedKeys_ & (Qt::ControlModifier | Qt::ShiftModifier))
    ids = document_.selection().ids();
  const head::SheetView view = scene_->head().view(place->view);
  for (const auto& piece : scene_->pieces())
    if (piece->in(view).seen.intersects(band.normalized()))
      ids.push_back(piece->id);
  // Sections that lie wholly inside the frame, as far as they are seen.
  for (const paint::SectionShape& section : scene_->sections()) {
    const auto within = [&](const Vec3& p) {
      const head::ViewPoint at = view.project(p);
      return view.faces(scene_->head().shape, p) && band.normalized().contains(QPointF(at.u_mm, at.v_mm));
    };
    if (std::all_of(section.outline.begin(), section.outline.end(), within)) ids.push_back(section.id);
  }
  document_.select(Selection(std::move(ids)));
}

bool HeadSheet::walk(int step) {
  const std::vector<plan::ItemId> ids = items();
  if (ids.empty()) return false;
  int at = step > 0 ? -1 : static_cast<int>(ids.size());
  for (std::size_t i = 0; i < ids.size(); ++i)
    if (ids[i] == document_.selection().lead()) at = static_cast<int>(i);
  at += step;
  if (at < 0 || at >= static_cast<int>(ids.size())) return false;
  document_.select(Selection::one(ids[static_cast<std::size_t>(at)]));
  return true;
}

bool HeadSheet::focusNextPrevChild(bool next) {
  // Tab walks the items and leaves after the last.
  if (hasFocus() && view_.tool() == Tool::Select && walk(next ? 1 : -1)) return true;
  return QWidget::focusNextPrevChild(next);
}

void HeadSheet::focusInEvent(QFocusEvent* event) {
  if (document_.selection().isEmpty() &&
      (event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason))
    walk(event->reason() == Qt::TabFocusReason ? 1 : -1);
  QWidget::focusInEvent(event);
}

void HeadSheet::focusOutEvent(QFocusEvent* event) {
  nudging_.reset();
  QWidget::focusOutEvent(event);
}

// ---- arrangement ----------------------------------------------------------

void HeadSheet::setLarge(std::optional<head::ViewName> view) {
  view_.setLargeView(view);
}

void HeadSheet::zoomAt(const QPointF& widget, double factor) {
  const ViewPlace* place = view_.largeView() ? placeOf(*view_.largeView()) : nullptr;
  if (!place || !place->rect.contains(widget)) return;
  const QPointF under = place->toView(widget);
  const double zoom = std::clamp(view_.zoom() * factor, 0.5, 8.0);
  // What is under the hand stays there.
  const QRectF room = place->rect;
  view_.setZoom(zoom);
  relayout();
  const ViewPlace* after = placeOf(*view_.largeView());
  if (after && room == after->rect) panBy(widget - after->toWidget(under));
}

void HeadSheet::panBy(const QPointF& pixels) {
  const ViewPlace* place = view_.largeView() ? placeOf(*view_.largeView()) : nullptr;
  if (!place) return;
  const QRectF frame = paint::frameOf(place->view);
  pan_mm_ += pixels / place->scale;
  // The head never leaves the sheet.
  pan_mm_.setX(std::clamp(pan_mm_.x(), -frame.width() / 2, frame.width() / 2));
  pan_mm_.setY(std::clamp(pan_mm_.y(), -frame.height() / 2, frame.height() / 2));
  relayout();
}

void HeadSheet::pinch(QPinchGesture& gesture) {
  if (gesture.state() == Qt::GestureStarted) {
    pinchZoom_ = view_.zoom();
    dropWhatIsUnderWay();
  }
  const QPointF centre = mapFromGlobal(gesture.centerPoint());
  zoomAt(centre, pinchZoom_ * gesture.totalScaleFactor() / view_.zoom());
  panBy(gesture.centerPoint() - gesture.lastCenterPoint());
}

bool HeadSheet::native(QNativeGestureEvent& event) {
  switch (event.gestureType()) {
    case Qt::ZoomNativeGesture: zoomAt(event.position(), 1 + event.value()); return true;
    case Qt::PanNativeGesture: panBy(event.delta()); return true;
    case Qt::SmartZoomNativeGesture:
      zoomAt(event.position(), view_.zoom() > 1.5 ? 1 / view_.zoom() : 2 / view_.zoom());
      return true;
    default: return false;
  }
}

bool HeadSheet::eventFilter(QObject* watched, QEvent* event) {
  if (watched == textEdit_ && event->type() == QEvent::KeyPress &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
    closeText(TextEnd::Drop);
    setFocus();
    return true;
  }
  // Text that is left without Enter is kept: nothing typed is lost.
  if (watched == textEdit_ && event->type() == QEvent::FocusOut) closeText(TextEnd::Keep);
  return QWidget::eventFilter(watched, event);
}

bool HeadSheet::event(QEvent* event) {
  switch (event->type()) {
    case QEvent::Gesture:
      if (auto* gesture = static_cast<QGestureEvent*>(event)->gesture(Qt::PinchGesture)) {
        pinch(*static_cast<QPinchGesture*>(gesture));
        return true;
      }
      break;
    case QEvent::NativeGesture:
      if (native(*static_cast<QNativeGestureEvent*>(event))) return true;
      break;
    case QEvent::ToolTip: {
      const auto* help = static_cast<QHelpEvent*>(event);
      const QString words = describe(view_.hoverItem());
      words.isEmpty() ? QToolTip::hideText() : QToolTip::showText(help->globalPos(), words, this);
      return true;
    }
    case QEvent::FontChange:
    case QEvent::ScreenChangeInternal: relayout(); break;
    case QEvent::ShortcutOverride: {
      // While a number is typed the digits belong to it.
      auto* key = static_cast<QKeyEvent*>(event);
      if (tool_ && tool_->isTyping() && !(key->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) &&
          ((key->text().size() == 1 && key->text().at(0).isDigit()) || key->key() == Qt::Key_Backspace)) {
        event->accept();
        return true;
      }
      // Delete may mean what lies under the tool; else it comes back to the selection.
      if (tool_ && key->key() == Qt::Key_Delete) {
        event->accept();
        return true;
      }
      break;
    }
    default: break;
  }
  return QWidget::event(event);
}

}  // namespace combdraft::sheet

#pragma once
// The head sheet: six linked views of one head with diagram and look, worked
// on by hand, keyboard and touch.
//
// Keys: Tab walks the items, arrows nudge 1 mm (Shift 10, Alt 0.1), Escape
// drops what is under way or the selection, Delete removes, 1 to 6 choose the
// large view, 0 shows all, + and - zoom, Ctrl+Left and Ctrl+Right pull the
// divider. With a tool arrows move the point, Space presses there, Enter ends,
// Ctrl keeps the point from catching on lines.
#include <QWidget>
#include <array>
#include <memory>
#include <optional>
#include <vector>

#include "app/document/document_controller.h"
#include "app/document/view_state.h"
#include "app/live/look_result.h"
#include "app/paint/scene.h"
#include "app/sheet/gesture.h"
#include "app/sheet/sheet_tool.h"
#include "app/sheet/view_layers.h"
#include "app/sheet/view_layout.h"

class QLineEdit;
class QNativeGestureEvent;
class QPinchGesture;

namespace combdraft::sheet {

class HeadSheet : public QWidget {
  Q_OBJECT

 public:
  /// Both must outlive the sheet.
  HeadSheet(document::DocumentController& document, document::ViewState& view,
            QWidget* parent = nullptr);
  ~HeadSheet() override;

  /// Shows a look; null takes it away. Pictures of views that the look does not
  /// hold stay as they were.
  void setLook(std::shared_ptr<const live::LookResult> look);

  /// What a piece drawn from now on begins with.
  void setNewPiece(double thickness_mm, double start_mm) { newPiece_ = {thickness_mm, start_mm}; }

  /// Ends a drag without its change; false where none is under way.
  bool dropGesture();

  /// One request per view that shows a look now, at the screen's resolution;
  /// none when only the diagram shows.
  std::vector<look::PictureRequest> wantedPictures() const;

  // ---- for tests, accessibility and the desk
  const paint::Scene& scene() const { return *scene_; }
  /// Items as Tab walks them: pieces in working order, sections, notes.
  std::vector<plan::ItemId> items() const;
  /// "Piece 7, back left, 8 mm, ...", "Section back left, 12 pieces".
  QString describe(const plan::ItemId& id) const;
  /// Where an item stands on the sheet; empty when no view shows it.
  QRectF placeOnSheet(const plan::ItemId& id) const;
  const std::vector<ViewPlace>& places() const { return places_; }
  const ViewPlace* placeOf(head::ViewName view) const;
  /// Where the middle of a piece stands on the sheet, in the large view or the
  /// first view that sees it.
  std::optional<QPointF> middleOf(const plan::ItemId& id) const;
  const ViewLayers& layers(head::ViewName view) const;
  bool isSelected(const plan::ItemId& id) const { return document_.selection().contains(id); }
  void selectOnly(const plan::ItemId& id) { document_.select(document::Selection::one(id)); }
  /// What the line below the sheet says.
  QString placeWords() const;
  QString hint() const;

  QSize sizeHint() const override { return {900, 640}; }
  QSize minimumSizeHint() const override { return {260, 240}; }

 Q_SIGNALS:
  void wantedPicturesChanged();
  /// A view is dragged out by its title.
  void viewDraggedOut(combdraft::head::ViewName view);

 protected:
  bool event(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;
  bool focusNextPrevChild(bool next) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void keyReleaseEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  static constexpr double kTitleLines = 1.25, kFootLines = 2.5;  ///< heights, in text lines
  enum class Hold { Nothing, Gesture, Band, Divider, Pan, Tool, Title };

  // scene and layout
  void documentChanged();
  const SnapLines& snapLines() const;
  void viewChanged(document::ViewState::Aspects aspects);
  void relayout();
  void refreshLayers();
  const ViewPlace* placeUnder(const QPointF& widget) const;
  /// What a view shows: while something is drawn, the large one its diagram.
  document::Layer layerOf(const ViewPlace& place) const;
  double dividerX(const ViewPlace& place) const;
  bool isOnDivider(const QPointF& widget) const;
  bool isOnTitle(const ViewPlace& place, const QPointF& widget) const;

  // what is under the hand
  std::optional<head::ScalpPoint> scalpUnder(const ViewPlace& place, const QPointF& widget) const;
  plan::ItemId itemUnder(const ViewPlace& place, const QPointF& widget) const;
  std::optional<Handle> handleUnder(const ViewPlace& place, const QPointF& widget) const;
  std::vector<Handle> shownHandles(const ViewPlace& place) const;
  void hover(const QPointF& widget, Qt::KeyboardModifiers keys);
  Snap snapAt(const ViewPlace& place, const head::ScalpPoint& free, Qt::KeyboardModifiers keys,
              const plan::ItemId& except) const;
  /// The nearest place on the hair's edge, for a hand just beside it.
  std::optional<head::ScalpPoint> edgeNear(const ViewPlace& place, const QPointF& widget) const;
  std::optional<ToolHand> toolHand(const ViewPlace& place, const QPointF& widget,
                                   Qt::KeyboardModifiers keys) const;
  std::optional<ToolHand> toolHandHere(Qt::KeyboardModifiers keys) const;
  HandAt handAt(const ViewPlace& place, const QPointF& widget, Qt::KeyboardModifiers keys) const;
  void askText(const head::ScalpPoint& at, const QString& text,
               std::function<void(const QString&)> done);
  enum class TextEnd { Keep, Drop };
  void closeText(TextEnd end);

  // acts
  void selectBand();
  void select(const plan::ItemId& id, Qt::KeyboardModifiers keys);
  bool walk(int step);
  void nudge(double right_mm, double down_mm);
  void moveToolPoint(double right_mm, double down_mm);
  void removeSelected();
  void setLarge(std::optional<head::ViewName> view);
  void zoomAt(const QPointF& widget, double factor);
  void panBy(const QPointF& pixels);
  void pinch(QPinchGesture& gesture);
  bool native(QNativeGestureEvent& event);
  bool dropWhatIsUnderWay();
  bool toolKey(QKeyEvent& event);
  void announceSelection();

  // overlay (head_sheet_paint.cpp)
  /// What the tool has drawn so far, walked on the surface once for all views.
  struct DrawnSketch {
    ToolSketch sketch;
    paint::Strip strip;               ///< of a line with a thickness
    std::vector<Vec3> line, closing;  ///< of one without
  };
  std::optional<DrawnSketch> drawnSketch() const;
  void paintView(QPainter& painter, const ViewPlace& place, const DrawnSketch* sketch) const;
  void paintComb(QPainter& painter, const QPointF& foot) const;
  void paintOverlay(QPainter& painter, const ViewPlace& place, const DrawnSketch* sketch) const;
  void paintHandles(QPainter& painter, const ViewPlace& place) const;
  void paintSketch(QPainter& painter, const ViewPlace& place, const DrawnSketch& drawn) const;
  void paintCaught(QPainter& painter, const ViewPlace& place) const;
  void paintFoot(QPainter& painter) const;
  QPainterPath toWidget(const ViewPlace& place, const QPainterPath& path_mm) const;

  document::DocumentController& document_;
  document::ViewState& view_;
  std::shared_ptr<const paint::Scene> scene_;
  std::array<std::shared_ptr<const look::Picture>, 6> pictures_;
  std::array<ViewLayers, 6> layers_;
  std::vector<ViewPlace> places_;
  std::vector<look::PictureRequest> lastWanted_;
  QPointF pan_mm_;
  std::optional<head::ViewName> shownLarge_;

  Hold hold_ = Hold::Nothing;
  bool dragged_ = false;  ///< Hold::Tool: moved far enough to mean it
  std::unique_ptr<Gesture> gesture_;
  std::optional<Handle> pressedHandle_;
  plan::ItemId pressedItem_;
  Qt::KeyboardModifiers pressedKeys_;
  QPointF press_, now_;
  head::ViewName pressView_ = head::ViewName::Back;
  double pinchZoom_ = 1;
  std::optional<document::Gesture> nudging_;
  NewPiece newPiece_;
  std::unique_ptr<SheetTool> tool_;         ///< null while selecting
  std::optional<Snap> snap_;                ///< where the tool would set a point
  QString pressProblem_;                    ///< why the last press set none
  document::Tool toolKind_ = document::Tool::Select;
  mutable std::unique_ptr<SnapLines> snapLines_;  ///< of the document; made when first asked
  QLineEdit* textEdit_ = nullptr;
  std::function<void(const QString&)> textDone_;
};

}  // namespace combdraft::sheet

#pragma once
// Two pictures of a head under the hand: one head with a divider between two
// looks, or two heads side by side. The divider is a tail comb: its tail runs up
// between the pictures, its back and teeth are what a hand takes. One finger
// pulls it (or moves an enlarged picture), two fingers enlarge and move; mouse,
// touchpad and keys do the same. The line that it is no promise stands whole
// under every picture, or once under both where one is too narrow for it.
//
// Keys: Left and Right pull the divider, + - 0 enlarge, Shift and arrows move.
#include <QPixmap>
#include <QTimer>
#include <QWidget>
#include <array>
#include <optional>

#include "app/chair/pane.h"

namespace combdraft::chair {

enum class Heads { One, Two };
/// Who is spoken to: "your left side", or "client's left".
enum class SpokenTo { Client, Class };

class PairPicture : public QWidget {
  Q_OBJECT

 public:
  explicit PairPicture(SpokenTo whom, QWidget* parent = nullptr);

  void setPane(int side, Pane pane);
  const Pane& pane(int side) const { return panes_[static_cast<std::size_t>(side)]; }
  /// Facing changes the front only: the other views are as somebody sees them.
  void setView(head::ViewName view, Facing facing);
  head::ViewName view() const { return view_; }
  Facing facing() const { return view_ == head::ViewName::Front ? facing_ : Facing::AsOthersSee; }
  void setHeads(Heads heads);
  Heads heads() const { return heads_; }
  /// Under every picture; "" = none (a diagram).
  void setLine(const QString& line);
  const QString& line() const { return line_; }

  double divider_frac() const { return divider_frac_; }
  void setDivider(double divider_frac);
  double zoom() const { return zoom_; }
  QPointF moved() const { return moved_; }
  void resetZoom();
  /// What to ask the engine for, so that it is sharp here.
  look::PictureRequest wanted() const;
  /// "Front, as in the mirror".
  QString viewWords() const;
  /// Where a side is drawn.
  QRectF paneRect(int side) const;
  /// The lines of words under a side as they are laid out; for tests.
  QRectF lineRect(int side) const;
  /// Back and teeth of the comb; a finger takes it from 36 px on either side of its back.
  QRectF combRect() const;

  QSize minimumSizeHint() const override { return {300, 280}; }
  QSize sizeHint() const override { return {760, 560}; }

 Q_SIGNALS:
  /// `wanted` is another than before.
  void wantedChanged();

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;

 private:
  struct Drawn {
    QPixmap pixmap;
    double pixelsPerMm = 0;  ///< device pixels
  };
  enum class Hand { None, Divider, Move };

  bool touch(class QTouchEvent& event);
  void pressHand(const QPointF& at);
  void moveHand(const QPointF& at);
  void letGoHand() { hand_ = Hand::None; }
  void pinch(const QPointF& a, const QPointF& b);
  void zoomAt(const QPointF& at, double factor);
  void moveBy(const QPointF& by);
  void keepInPlace();
  void changed();
  void describe();
  double dividerX() const;
  QRectF headRect(int side) const;   ///< the pane without its words
  double fitScale() const;           ///< pixels for a mm at zoom 1
  void draw(QPainter& painter, int side);
  void drawWords(QPainter& painter, int side);
  void drawDivider(QPainter& painter);
  void drawFocus(QPainter& painter);
  int titleHeight() const;
  int lineHeight() const;
  int lineNeeds(int width_px) const;
  bool isLineShared() const;
  double teethWay() const;

  const SpokenTo whom_;
  std::array<Pane, 2> panes_;
  std::array<Drawn, 2> drawn_;
  head::ViewName view_ = head::ViewName::Front;
  Facing facing_ = Facing::AsInMirror;
  Heads heads_ = Heads::Two;
  QString line_;
  double divider_frac_ = 0.5, zoom_ = 1;
  QPointF moved_;
  Hand hand_ = Hand::None;
  QPointF last_;
  double dividerBefore_ = 0.5;
  bool pinching_ = false;
  QPointF pinchCentre_;
  double pinchDistance_ = 1;
  bool showsFocus_ = false;  ///< a frame is for those who came by key
  QTimer settle_;  ///< until a moving picture is drawn sharp
  std::optional<look::PictureRequest> told_;
};

}  // namespace combdraft::chair

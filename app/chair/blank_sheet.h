#pragma once
// A blank head to draw on with finger, pen or mouse, several fingers at once.
// What is drawn stays, view by view, until it is wiped or the class ends.
#include <QImage>
#include <QPainterPath>
#include <QWidget>
#include <map>
#include <memory>
#include <vector>

#include "app/paint/scene.h"

namespace combdraft::chair {

class BlankSheet : public QWidget {
  Q_OBJECT

 public:
  explicit BlankSheet(QWidget* parent = nullptr);

  void show(std::shared_ptr<const paint::Scene> scene, head::ViewName view);
  head::ViewName view() const { return view_; }
  /// Strokes of the view that is shown, each a line in mm of the view.
  const std::vector<QPolygonF>& strokes() const;
  void takeBack();
  /// The view that is shown is blank again.
  void wipe();
  /// All views.
  void forget();

 Q_SIGNALS:
  void drawn();

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void tabletEvent(QTabletEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QTransform toScreen() const;
  void begin(int finger, const QPointF& at);
  void go(int finger, const QPointF& at);
  void finish(int finger);

  std::shared_ptr<const paint::Scene> scene_;
  head::ViewName view_ = head::ViewName::Back;
  std::map<head::ViewName, std::vector<QPolygonF>> strokes_;
  std::map<int, QPolygonF> underWay_;  ///< by finger; -1 mouse, -2 pen
  QImage art_;                         ///< the bare head, null = to be drawn
};

}  // namespace combdraft::chair

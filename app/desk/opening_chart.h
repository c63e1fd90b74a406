#pragma once
// How large a block shows where the hair opens: light and dark, over the place
// of the part, and for the crown opened, blown and tied back. The part can be
// dragged along it; arrow keys move it.
#include <QWidget>

#include "app/document/view_state.h"
#include "engine/base/assumptions.h"
#include "engine/look/openings.h"

namespace combdraft::desk {

class OpeningChart : public QWidget {
  Q_OBJECT

 public:
  explicit OpeningChart(document::ViewState& view, QWidget* parent = nullptr);

  /// Nothing = not known yet. `lightLine`, `darkLine`: where a block begins, cm2.
  void set(std::optional<look::Openings> openings, double lightLine_cm2, double darkLine_cm2);
  /// What is drawn faintly behind, to compare with; nothing = none.
  void setBefore(std::optional<look::Openings> before);
  /// "Largest light block 30 cm², with the part 15 mm to the client's right; ..."
  QString words() const;

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QRectF plot() const;
  QRectF others() const;
  double xOf(double shift_mm) const;
  double yOf(double area_cm2) const;
  void partTo(double shift_mm);
  QPolygonF curve(const look::Openings& openings, look::Patch look::Opening::*patch) const;

  document::ViewState& view_;
  std::optional<look::Openings> openings_, before_;
  double lightLine_ = 4, darkLine_ = 6, highest_ = 10;
};

}  // namespace combdraft::desk

#pragma once
// Controls for fingers: rows of picture buttons that wrap, sliders that go where
// they are touched. Targets of 48 px and more; arrows, Space and Tab do the same.
#include <QButtonGroup>
#include <QSlider>
#include <QToolButton>
#include <QWidget>
#include <vector>

class QLabel;

namespace combdraft::chair {

inline constexpr int kTarget_px = 48;

/// One of several, each a picture with its word under it (or a word alone).
struct Picture {
  QString text;
  QString icon;  ///< of resources/icons; "" = a word alone
};

/// A button for fingers that takes no less room when it is chosen.
class TouchButton : public QToolButton {
  Q_OBJECT

 public:
  TouchButton(const QString& text, const QString& icon, QWidget* parent);
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return sizeHint(); }
};

/// A row that goes on in the next line where there is no room; or a column.
class PictureRow : public QWidget {
  Q_OBJECT

 public:
  PictureRow(const QString& name, const std::vector<Picture>& pictures, Qt::Orientation way = Qt::Horizontal,
             QWidget* parent = nullptr);
  int current() const { return group_->checkedId(); }
  void setCurrent(int index);
  QAbstractButton* button(int index) const { return group_->button(index); }
  int count() const { return static_cast<int>(group_->buttons().size()); }
  /// All in one line: what a row asks for, and does without.
  QSize sizeHint() const override;

 Q_SIGNALS:
  /// By hand or key, not by setCurrent.
  void chosen(int index);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QButtonGroup* group_;
  const Qt::Orientation way_;
};

/// A chip that is one word in a group of words.
TouchButton* makeChip(const QString& text, const QString& accessibleName, QWidget* parent);

/// A slider that jumps to where it is touched and follows the finger.
class TouchSlider : public QSlider {
  Q_OBJECT

 public:
  TouchSlider(const QString& name, int low, int high, int page, QWidget* parent = nullptr);

 protected:
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;

 private:
  void goTo(const QPointF& at);
};

/// A control with its title above it.
QWidget* titled(const QString& title, QWidget* control, QLabel** label = nullptr, QWidget* parent = nullptr);

}  // namespace combdraft::chair

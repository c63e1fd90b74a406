#pragma once
// A button that acts only when it is held: by finger, mouse, or a held key. A
// short press says how long it has to be held.
#include <QAbstractButton>
#include <QElapsedTimer>
#include <QTimer>

namespace combdraft::chair {

class HoldButton : public QAbstractButton {
  Q_OBJECT

 public:
  explicit HoldButton(const QString& text, QWidget* parent = nullptr);

  static constexpr int kHold_ms = 1500;
  /// How far the hold is, 0..1.
  double held_frac() const;
  /// As if a key were pressed or let go, for a key that is held elsewhere.
  void beginHold();
  void endHold();
  bool isHolding() const { return timer_.isActive(); }
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return sizeHint(); }

 Q_SIGNALS:
  /// It was held long enough.
  void held();
  /// It was let go too early.
  void letGo();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void keyReleaseEvent(QKeyEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  QTimer timer_, paint_;
  QElapsedTimer since_;
};

}  // namespace combdraft::chair

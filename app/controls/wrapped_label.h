#pragma once
// A label whose words wrap, for cards and pages that are laid out in columns. It shows them as
// they are typed, never as markup.
#include <QLabel>
#include <map>

namespace combdraft::controls {

/// Remembers its heights: layouts within layouts ask one label for the same width hundreds of
/// times, and each time QLabel sets the text anew.
class WrappedLabel : public QLabel {
  Q_OBJECT
 public:
  explicit WrappedLabel(QWidget* parent = nullptr) : WrappedLabel(QString(), parent) {}
  explicit WrappedLabel(const QString& text, QWidget* parent = nullptr);

  int heightForWidth(int width_px) const override;

 protected:
  bool event(QEvent* event) override;

 private:
  mutable QString measured_;              // the text that the heights are of
  mutable std::map<int, int> heights_px_;  // by width
};

}  // namespace combdraft::controls

#pragma once
// A small histogram: how many places of the hair are how much lighter or darker
// than the hair around them. Bars left of the middle line are darker.
#include <QWidget>
#include <vector>

namespace combdraft::cards {

class HistogramDrawing : public QWidget {
  Q_OBJECT

 public:
  explicit HistogramDrawing(QWidget* parent = nullptr);
  /// `counts` in steps of `step` from `from` on, L*. No counts hide it.
  void set(double from, double step, const std::vector<int>& counts);
  /// What it shows, in a sentence; "" when it is empty.
  QString text() const { return accessibleDescription(); }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  double from_ = 0, step_ = 1;
  std::vector<int> counts_;
};

/// The step in which a share of all counts is reached, and where it lies.
double quantileOf(double from, double step, const std::vector<int>& counts, double share);

}  // namespace combdraft::cards

#include "app/cards/histogram_drawing.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <numeric>

#include "app/controls/number_input.h"
#include "app/controls/theme.h"

namespace combdraft::cards {
namespace {

constexpr int kBars_lines = 3;  // height of the bars, in lines of text

}  // namespace

double quantileOf(double from, double step, const std::vector<int>& counts, double share) {
  const double wanted = share * std::accumulate(counts.begin(), counts.end(), 0.0);
  double sum = 0;
  for (std::size_t i = 0; i < counts.size(); ++i) {
    const double with = sum + counts[i];
    if (with >= wanted && counts[i] > 0)  // evenly spread within its step
      return from + step * (static_cast<double>(i) + (wanted - sum) / counts[i]);
    sum = with;
  }
  return from + step * static_cast<double>(counts.size());
}

HistogramDrawing::HistogramDrawing(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setFixedHeight((kBars_lines + 1) * fontMetrics().height() + 4);
  setAccessibleName(tr("How neighbouring hair differs"));
  hide();
}

void HistogramDrawing::set(double from, double step, const std::vector<int>& counts) {
  from_ = from;
  step_ = step;
  counts_ = counts;
  const bool known = std::any_of(counts.begin(), counts.end(), [](int n) { return n > 0; });
  setVisible(known);
  if (!known) {
    counts_.clear();
    return setAccessibleDescription({});
  }
  const auto shown = [&](double share) { return controls::shownNumber(quantileOf(from, step, counts, share), 0); };
  setAccessibleDescription(tr("Half of the hair lies between %1 and %2 L* of the hair around it, nine tenths between %3 and %4")
                               .arg(shown(0.25), shown(0.75), shown(0.05), shown(0.95)));
  setToolTip(tr("How much lighter or darker each place is than the hair around it. Two humps are two levels, one is one tone.") +
             u'\n' + accessibleDescription());
  update();
}

void HistogramDrawing::paintEvent(QPaintEvent*) {
  if (counts_.empty()) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const controls::Theme& t = controls::currentTheme();
  const double line = fontMetrics().height(), bottom = kBars_lines * line;
  // The same reach to either side, so that the middle is "like its surround".
  const double to = from_ + step_ * static_cast<double>(counts_.size());
  const double reach = std::max({std::abs(from_), std::abs(to), step_});
  const auto x = [&](double value) { return width() * (value + reach) / (2 * reach); };
  const double most = *std::max_element(counts_.begin(), counts_.end());
  painter.setPen(Qt::NoPen);
  painter.setBrush(t.softInk);
  for (std::size_t i = 0; i < counts_.size(); ++i) {
    if (counts_[i] == 0) continue;
    const double left = x(from_ + step_ * static_cast<double>(i)), right = x(from_ + step_ * static_cast<double>(i + 1));
    const double height = std::max(1.0, (bottom - 2) * counts_[i] / most);
    painter.drawRect(QRectF(left, bottom - height, std::max(1.0, right - left - 0.7), height));
  }
  painter.setPen(QPen(t.edge, 1));
  painter.drawLine(QPointF(0, bottom), QPointF(width(), bottom));
  painter.setPen(QPen(t.ink, 1, Qt::DashLine));
  painter.drawLine(QPointF(width() / 2.0, 0), QPointF(width() / 2.0, bottom));
  painter.setPen(t.softInk);
  const QRectF words(0, bottom + 2, width(), line + 2);
  const QString reachText = controls::shownNumber(reach, 0);
  painter.drawText(words, Qt::AlignLeft, tr("%1 darker").arg(reachText));
  painter.drawText(words, Qt::AlignHCenter, tr("as around"));
  painter.drawText(words, Qt::AlignRight, tr("%1 lighter").arg(reachText));
}

}  // namespace combdraft::cards

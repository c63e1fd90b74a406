#include "app/controls/flow_layout.h"

#include <QStyle>
#include <QWidget>
#include <algorithm>
#include <iterator>

namespace combdraft::controls {

FlowLayout::FlowLayout(QWidget* parent, int spacingX, int spacingY)
    : QLayout(parent), spacingX_(spacingX), spacingY_(spacingY) {}

FlowLayout::~FlowLayout() {
  for (QLayoutItem* item : items_) delete item;
}

QLayoutItem* FlowLayout::itemAt(int index) const {
  return index >= 0 && index < count() ? items_[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* FlowLayout::takeAt(int index) {
  QLayoutItem* item = itemAt(index);
  if (item) items_.erase(items_.begin() + index);
  return item;
}

int FlowLayout::heightForWidth(int width) const { return flow(QRect(0, 0, width, 0), Apply::No); }

void FlowLayout::setGeometry(const QRect& rect) {
  QLayout::setGeometry(rect);
  flow(rect, Apply::Yes);
}

QSize FlowLayout::minimumSize() const {
  QSize size;
  for (const QLayoutItem* item : items_)
    if (!item->isEmpty()) size = size.expandedTo(item->minimumSize());
  const QMargins m = contentsMargins();
  return size + QSize(m.left() + m.right(), m.top() + m.bottom());
}

int FlowLayout::flow(const QRect& rect, Apply apply) const {
  const QRect inside = rect.marginsRemoved(contentsMargins());
  const Qt::LayoutDirection direction =
      parentWidget() ? parentWidget()->layoutDirection() : Qt::LeftToRight;
  std::vector<QLayoutItem*> shown;  // what is hidden takes no place
  std::copy_if(items_.begin(), items_.end(), std::back_inserter(shown),
               [](const QLayoutItem* item) { return !item->isEmpty(); });
  int y = inside.y();
  std::size_t first = 0;
  while (first < shown.size()) {
    int width = 0, height = 0;
    std::size_t last = first;
    while (last < shown.size()) {
      const QSize hint = shown[last]->sizeHint();
      const int with = width + (last == first ? 0 : spacingX_) + hint.width();
      if (last > first && with > inside.width()) break;
      width = with;
      height = std::max(height, hint.height());
      ++last;
    }
    if (apply == Apply::Yes) {
      int x = inside.x();
      for (std::size_t i = first; i < last; ++i) {
        const QSize hint = shown[i]->sizeHint();
        const QRect place(x, y + (height - hint.height()) / 2, hint.width(), hint.height());
        shown[i]->setGeometry(QStyle::visualRect(direction, inside, place));
        x += hint.width() + spacingX_;
      }
    }
    y += height + spacingY_;
    first = last;
  }
  const int bottom = shown.empty() ? y : y - spacingY_;
  return bottom - rect.y() + contentsMargins().bottom();
}

}  // namespace combdraft::controls

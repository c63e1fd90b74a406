#include "app/controls/wrapped_label.h"

#include <QEvent>

namespace combdraft::controls {

WrappedLabel::WrappedLabel(const QString& text, QWidget* parent) : QLabel(text, parent) {
  setTextFormat(Qt::PlainText);  // names, notes and errors are no markup
  setWordWrap(true);
}

int WrappedLabel::heightForWidth(int width_px) const {
  if (measured_ != text()) {
    heights_px_.clear();
    measured_ = text();
  }
  const auto [known, isNew] = heights_px_.try_emplace(width_px, 0);
  if (isNew) known->second = QLabel::heightForWidth(width_px);
  return known->second;
}

bool WrappedLabel::event(QEvent* event) {
  switch (event->type()) {
    case QEvent::Polish:
    case QEvent::FontChange:
    case QEvent::StyleChange:
    case QEvent::ContentsRectChange:
    case QEvent::LayoutDirectionChange:
    case QEvent::ScreenChangeInternal: heights_px_.clear(); break;
    default: break;
  }
  return QLabel::event(event);
}

}  // namespace combdraft::controls

#include "app/controls/segments.h"

#include <QHBoxLayout>
#include <QKeyEvent>

#include "app/controls/icon.h"

namespace combdraft::controls {

Segments::Segments(const QString& name, const std::vector<Segment>& segments, QWidget* parent)
    : QWidget(parent), group_(new QButtonGroup(this)) {
  setAccessibleName(name);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(0);
  for (std::size_t i = 0; i < segments.size(); ++i) {
    auto* button = new QPushButton(segments[i].text, this);
    button->setCheckable(true);
    button->setMinimumHeight(30);
    button->setProperty("segment", i == 0                    ? QStringLiteral("first")
                                   : i + 1 == segments.size() ? QStringLiteral("last")
                                                              : QStringLiteral("middle"));
    button->setAccessibleName(name + QStringLiteral(": ") + segments[i].text);
    button->setToolTip(segments[i].tip.isEmpty() ? name : segments[i].tip);
    if (!segments[i].icon.isEmpty()) button->setIcon(icon(segments[i].icon));
    button->installEventFilter(this);
    group_->addButton(button, static_cast<int>(i));
    row->addWidget(button, 1);
  }
  mixed_ = new QLabel(tr("mixed"), this);
  mixed_->setProperty("soft", true);
  mixed_->hide();
  mixed_->setContentsMargins(6, 0, 0, 0);
  row->addWidget(mixed_);
  group_->setExclusive(true);
  connect(group_, &QButtonGroup::idClicked, this, &Segments::chosen);
}

void Segments::setMixed() {
  setCurrent(-1);
  setAccessibleDescription(mixed_->text());
  mixed_->show();
}

void Segments::setCurrent(int index) {
  mixed_->hide();
  setAccessibleDescription({});
  if (QAbstractButton* button = group_->button(index)) {
    button->setChecked(true);
  } else if (QAbstractButton* down = group_->checkedButton()) {
    group_->setExclusive(false);
    down->setChecked(false);
    group_->setExclusive(true);
  }
}

bool Segments::eventFilter(QObject* watched, QEvent* event) {
  // Left and right walk along the row and choose, as in a radio group.
  if (event->type() == QEvent::KeyPress) {
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_Left || key->key() == Qt::Key_Right) {
      const int count = static_cast<int>(group_->buttons().size());
      const int from = group_->id(qobject_cast<QAbstractButton*>(watched));
      const bool back = (key->key() == Qt::Key_Left) != (layoutDirection() == Qt::RightToLeft);
      const int to = std::clamp(from + (back ? -1 : 1), 0, count - 1);
      if (to != from) {
        group_->button(to)->setFocus(Qt::TabFocusReason);
        group_->button(to)->click();
      }
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

}  // namespace combdraft::controls

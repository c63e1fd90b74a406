#include "app/controls/segments.h"

#include <QKeyEvent>
#include <QStyle>
#include <algorithm>

#include "app/controls/icon.h"

namespace combdraft::controls {
namespace {

constexpr int kMayLose_px = 8;  // of the room beside its words, before a word would touch the edge
constexpr int kBetweenLines_px = 2;

void setPart(QAbstractButton* button, const QString& part) {
  if (button->property("segment").toString() == part) return;
  button->setProperty("segment", part);
  if (!button->testAttribute(Qt::WA_WState_Polished)) return;
  button->style()->unpolish(button);  // the style looks at properties once
  button->style()->polish(button);
}

}  // namespace

Segments::Segments(const QString& name, const std::vector<Segment>& segments, QWidget* parent)
    : QWidget(parent), group_(new QButtonGroup(this)) {
  setAccessibleName(name);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kBetweenLines_px);
  for (std::size_t i = 0; i < segments.size(); ++i) {
    auto* button = new QPushButton(segments[i].text, this);
    button->setCheckable(true);
    button->setMinimumHeight(30);
    button->setAccessibleName(name + QStringLiteral(": ") + segments[i].text);
    button->setToolTip(segments[i].tip.isEmpty() ? name : segments[i].tip);
    if (!segments[i].icon.isEmpty()) button->setIcon(icon(segments[i].icon));
    button->installEventFilter(this);
    group_->addButton(button, static_cast<int>(i));
  }
  mixed_ = new QLabel(tr("mixed"), this);
  mixed_->setProperty("soft", true);
  mixed_->hide();
  mixed_->setContentsMargins(6, 0, 0, 0);
  arrange(1);
  group_->setExclusive(true);
  connect(group_, &QButtonGroup::idClicked, this, &Segments::chosen);
}

void Segments::setLines(Lines lines) {
  mode_ = lines;
  fit();
}

void Segments::arrange(int lines) {
  auto* column = static_cast<QVBoxLayout*>(layout());
  for (QHBoxLayout* line : lines_) {
    while (line->count() > 0) delete line->takeAt(0);
    column->removeItem(line);
    delete line;
  }
  lines_.clear();
  const int each = perLine(lines);
  for (int i = 0; i < count(); ++i) {
    const bool begins = i % each == 0, ends = i % each == each - 1 || i == count() - 1;
    if (begins) {
      lines_.push_back(new QHBoxLayout);
      lines_.back()->setSpacing(0);
      column->addLayout(lines_.back());
    }
    setPart(group_->button(i), begins ? QStringLiteral("first") : ends ? QStringLiteral("last") : QStringLiteral("middle"));
    lines_.back()->addWidget(group_->button(i), 1);
  }
  if (!lines_.empty()) lines_.back()->addWidget(mixed_);
}

bool Segments::fits(int lines) const {
  const int each = perLine(lines);
  for (int begin = 0; begin < count(); begin += each) {
    const int end = std::min(begin + each, count());
    int widest = 0, needed = 0;
    for (int i = begin; i < end; ++i) widest = std::max(widest, group_->button(i)->sizeHint().width());
    // A row that is too narrow takes from its widest first.
    for (int i = begin; i < end; ++i) needed += std::min(group_->button(i)->sizeHint().width(), widest - kMayLose_px);
    if (needed > width()) return false;
  }
  return true;
}

void Segments::fit() {
  if (mode_ == Lines::One || count() == 0 || !testAttribute(Qt::WA_Resized)) return;  // no width of its own yet
  int lines = 1;
  while (lines < count() && !fits(lines)) ++lines;
  if (perLine(lines) != perLine(static_cast<int>(lines_.size()))) arrange(lines);
}

bool Segments::event(QEvent* event) {
  const bool done = QWidget::event(event);
  if (event->type() == QEvent::LayoutRequest) fit();  // the font is another
  return done;
}

void Segments::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fit();
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
      const int from = group_->id(qobject_cast<QAbstractButton*>(watched));
      const bool back = (key->key() == Qt::Key_Left) != (layoutDirection() == Qt::RightToLeft);
      const int to = std::clamp(from + (back ? -1 : 1), 0, count() - 1);
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

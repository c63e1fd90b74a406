#include "app/chair/touch_controls.h"

#include <QBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QStyle>
#include <algorithm>

#include "app/controls/flow_layout.h"
#include "app/controls/icon.h"

namespace combdraft::chair {
namespace {

constexpr int kIcon_px = 34, kHandle_px = 30, kGap_px = 4;
constexpr int kSide_px = 12, kTop_px = 8;  // edge and padding of the style sheet

}  // namespace

TouchButton::TouchButton(const QString& text, const QString& iconName, QWidget* parent) : QToolButton(parent) {
  setText(text);
  setCheckable(true);
  setProperty("touch", true);
  setFocusPolicy(Qt::StrongFocus);
  if (iconName.isEmpty()) {
    setToolButtonStyle(Qt::ToolButtonTextOnly);
  } else {
    setIcon(controls::icon(iconName));
    setIconSize({kIcon_px, kIcon_px});
    setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
  }
}

QSize TouchButton::sizeHint() const {
  QFont chosen = font();
  chosen.setWeight(QFont::DemiBold);  // as the style sheet writes it when it is chosen
  const QFontMetrics metrics(chosen);
  const int high = metrics.height() + 2 * kTop_px + (icon().isNull() ? 0 : kIcon_px + 2);
  return {std::max(kTarget_px, metrics.horizontalAdvance(text()) + 2 * kSide_px), std::max(kTarget_px, high)};
}

PictureRow::PictureRow(const QString& name, const std::vector<Picture>& pictures, Qt::Orientation way, QWidget* parent)
    : QWidget(parent), group_(new QButtonGroup(this)), way_(way) {
  setAccessibleName(name);
  QLayout* row = nullptr;
  if (way == Qt::Horizontal) row = new controls::FlowLayout(this, kGap_px, kGap_px);
  else row = new QVBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kGap_px);
  for (std::size_t i = 0; i < pictures.size(); ++i) {
    auto* button = new TouchButton(pictures[i].text, pictures[i].icon, this);
    button->setAccessibleName(name + QStringLiteral(": ") + pictures[i].text);
    button->setSizePolicy(QSizePolicy::MinimumExpanding, QSizePolicy::Fixed);
    button->installEventFilter(this);
    group_->addButton(button, static_cast<int>(i));
    row->addWidget(button);
  }
  group_->setExclusive(true);
  connect(group_, &QButtonGroup::idClicked, this, &PictureRow::chosen);
}

QSize PictureRow::sizeHint() const {
  if (way_ == Qt::Vertical) return QWidget::sizeHint();
  int across = -kGap_px;
  for (const QAbstractButton* button : group_->buttons()) across += button->sizeHint().width() + kGap_px;
  return {across, heightForWidth(across)};
}

void PictureRow::setCurrent(int index) {
  if (QAbstractButton* button = group_->button(index)) return button->setChecked(true);
  group_->setExclusive(false);
  if (QAbstractButton* button = group_->checkedButton()) button->setChecked(false);
  group_->setExclusive(true);
}

bool PictureRow::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
  const int key = static_cast<QKeyEvent*>(event)->key();
  const bool mirrored = layoutDirection() == Qt::RightToLeft;
  int step = 0;
  if (key == Qt::Key_Up || key == (mirrored ? Qt::Key_Right : Qt::Key_Left)) step = -1;
  if (key == Qt::Key_Down || key == (mirrored ? Qt::Key_Left : Qt::Key_Right)) step = 1;
  if (step == 0) return QWidget::eventFilter(watched, event);
  const int to = std::clamp(group_->id(qobject_cast<QAbstractButton*>(watched)) + step, 0, count() - 1);
  group_->button(to)->setFocus(Qt::TabFocusReason);
  if (to != current()) group_->button(to)->click();
  return true;
}

TouchButton* makeChip(const QString& text, const QString& accessibleName, QWidget* parent) {
  auto* chip = new TouchButton(text, {}, parent);
  chip->setAccessibleName(accessibleName);
  chip->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  return chip;
}

TouchSlider::TouchSlider(const QString& name, int low, int high, int page, QWidget* parent)
    : QSlider(Qt::Horizontal, parent) {
  setRange(low, high);
  setSingleStep(1);
  setPageStep(page);
  setAccessibleName(name);
  setProperty("touch", true);
  setMinimumSize(140, kTarget_px);
  setFocusPolicy(Qt::StrongFocus);
}

void TouchSlider::goTo(const QPointF& at) {
  const int room = std::max(1, width() - kHandle_px);
  const int x = static_cast<int>(at.x()) - kHandle_px / 2;
  setValue(QStyle::sliderValueFromPosition(minimum(), maximum(), std::clamp(x, 0, room), room,
                                           layoutDirection() == Qt::RightToLeft));
}

void TouchSlider::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) goTo(event->position());
}

void TouchSlider::mouseMoveEvent(QMouseEvent* event) {
  if (event->buttons() & Qt::LeftButton) goTo(event->position());
}

QWidget* titled(const QString& title, QWidget* control, QLabel** label, QWidget* parent) {
  auto* box = new QWidget(parent);
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  auto* words = new QLabel(title, box);
  words->setProperty("soft", true);
  words->setBuddy(control);
  column->addWidget(words);
  column->addWidget(control);
  if (label) *label = words;
  return box;
}

}  // namespace combdraft::chair

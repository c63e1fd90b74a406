// The class view's widgets and how they stand.
#include <QGridLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QResizeEvent>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/chair/blank_sheet.h"
#include "app/chair/class_view.h"
#include "app/chair/touch_controls.h"
#include "app/controls/flow_layout.h"
#include "app/controls/wrapped_label.h"

namespace combdraft::chair {
namespace {

constexpr int kMargin_px = 14, kGap_px = 10, kWords_px = 330;
constexpr double kLarger = 1.25, kTitle = 1.9;  // read from the back of a room

QPushButton* largeButton(const QString& text, QWidget* parent) {
  auto* button = new QPushButton(text, parent);
  button->setMinimumHeight(kTarget_px);
  button->setMinimumWidth(kTarget_px);
  button->setAutoDefault(false);
  return button;
}

QLabel* words(QWidget* parent) {
  auto* label = new controls::WrappedLabel(parent);
  return label;
}

}  // namespace

void ClassView::build() {
  grid_ = new QGridLayout(this);
  grid_->setContentsMargins(kMargin_px, kMargin_px, kMargin_px, kMargin_px);
  grid_->setHorizontalSpacing(kMargin_px);
  grid_->setVerticalSpacing(kGap_px);
  middle_ = new QStackedWidget(this);
  picture_ = new PairPicture(SpokenTo::Class, middle_);
  sheet_ = new BlankSheet(middle_);
  middle_->addWidget(picture_);
  middle_->addWidget(sheet_);
  views_ = new PictureRow(tr("Seen from"),
                          {{tr("Follow"), {}}, {tr("Front"), {}}, {tr("Left"), {}}, {tr("Right"), {}}, {tr("Back"), {}}, {tr("Top"), {}}, {tr("Crown"), {}}},
                          Qt::Horizontal, this);
  bar_ = buildBar();
  scroll_ = new QScrollArea(this);
  scroll_->setWidgetResizable(true);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll_->setAccessibleName(tr("What is placed, and why"));
  scroll_->setWidget(buildWords());
  connectControls();
  arrange();
}

QWidget* ClassView::buildBar() {
  auto* bar = new QWidget(this);
  auto* flow = new controls::FlowLayout(bar, kGap_px, kGap_px);
  flow->setContentsMargins(0, 0, 0, 0);
  back_ = largeButton(tr("Take it back"), bar);
  next_ = largeButton(tr("Place the next"), bar);
  next_->setProperty("primary", true);
  blank_ = largeButton(tr("Blank sheet"), bar);
  takeBack_ = largeButton(tr("Take the last line back"), bar);
  wipe_ = largeButton(tr("Wipe the sheet"), bar);
  studentButton_ = largeButton(tr("Student’s plan…"), bar);
  leave_ = largeButton(tr("Leave"), bar);
  leave_->setAccessibleName(tr("Leave the class view"));
  for (QPushButton* button : {back_, next_, blank_, takeBack_, wipe_, studentButton_, leave_}) flow->addWidget(button);
  return bar;
}

QWidget* ClassView::buildWords() {
  auto* box = new QWidget(scroll_);
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 6, 0);
  column->setSpacing(kGap_px);
  title_ = words(box);
  what_ = words(box);
  reasonTitle_ = words(box);
  reasonTitle_->setProperty("soft", true);
  reason_ = words(box);
  notice_ = words(box);
  for (QLabel* label : {title_, what_, reasonTitle_, reason_, notice_}) column->addWidget(label);
  column->addStretch(1);
  return box;
}

void ClassView::connectControls() {
  connect(next_, &QPushButton::clicked, this, [this] {
    if (isDrawing()) middle_->setCurrentWidget(picture_);
    goTo(step_ + 1);
  });
  connect(back_, &QPushButton::clicked, this, [this] {
    if (isDrawing()) middle_->setCurrentWidget(picture_);
    goTo(step_ == 0 ? 0 : step_ - 1);
  });
  connect(blank_, &QPushButton::clicked, this, [this] { isDrawing() ? closeSheet() : openSheet(); });
  connect(takeBack_, &QPushButton::clicked, sheet_, &BlankSheet::takeBack);
  connect(wipe_, &QPushButton::clicked, sheet_, &BlankSheet::wipe);
  connect(sheet_, &BlankSheet::drawn, this, [this] {
    takeBack_->setEnabled(!sheet_->strokes().empty());
    wipe_->setEnabled(!sheet_->strokes().empty());
  });
  connect(studentButton_, &QPushButton::clicked, this, [this] {
    if (student_) return closeStudent();
    Q_EMIT studentWanted();
  });
  connect(leave_, &QPushButton::clicked, this, &ClassView::leaveWanted);
  for (QPushButton* button : bar_->findChildren<QPushButton*>()) button->installEventFilter(this);
  connect(picture_, &PairPicture::wantedChanged, this, &ClassView::wantLooks);
  connect(views_, &PictureRow::chosen, this, [this](int index) {
    using head::ViewName;
    static constexpr std::array kViews{ViewName::Front, ViewName::Left, ViewName::Right, ViewName::Back, ViewName::Top, ViewName::Crown};
    if (index == 0) chosenView_.reset();
    else chosenView_ = kViews[static_cast<std::size_t>(index - 1)];
    fill();
  });
}

void ClassView::arrange() {
  const bool tall = height() > width();
  for (QWidget* one : {static_cast<QWidget*>(middle_), static_cast<QWidget*>(views_), bar_, static_cast<QWidget*>(scroll_)}) grid_->removeWidget(one);
  grid_->addWidget(views_, 0, 0);
  grid_->addWidget(middle_, 1, 0);
  if (tall) {
    grid_->addWidget(scroll_, 2, 0);
    grid_->addWidget(bar_, 3, 0);
  } else {
    grid_->addWidget(scroll_, 0, 1, 2, 1);
    grid_->addWidget(bar_, 2, 0, 1, 2);
  }
  const int text = fontMetrics().height();
  scroll_->setFixedWidth(tall ? QWIDGETSIZE_MAX : std::max({kWords_px, 16 * text, width() * 27 / 100}));
  scroll_->setMinimumWidth(tall ? 0 : scroll_->maximumWidth());
  scroll_->setMinimumHeight(tall ? std::max(200, height() * 22 / 100) : 0);
  scroll_->setMaximumHeight(tall ? std::max(200, height() * 22 / 100) : QWIDGETSIZE_MAX);
  grid_->setColumnStretch(0, 1);
  grid_->setRowStretch(1, 1);
}

void ClassView::fitFont() {
  QFont larger = window()->font();
  const double base = larger.pointSizeF();
  larger.setPointSizeF(base * kLarger);
  setFont(larger);
  for (QWidget* one : findChildren<QWidget*>()) one->setFont(larger);  // under a style sheet they do not take it over
  QFont strong = larger;
  strong.setPointSizeF(base * kTitle);
  strong.setWeight(QFont::DemiBold);
  title_->setFont(strong);
  strong.setPointSizeF(base * 1.5);
  strong.setWeight(QFont::Normal);
  reason_->setFont(strong);
}

// On a button too the arrows turn the pages, as those of a remote control do.
bool ClassView::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress) {
    auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_Left || key->key() == Qt::Key_Right) {
      keyPressEvent(key);
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

void ClassView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

void ClassView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::StyleChange && begun_) fitFont();
}

}  // namespace combdraft::chair

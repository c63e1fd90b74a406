// The chair view's widgets and how they stand in a wide and in a tall window.
#include <QGridLayout>
#include <QPushButton>
#include <QResizeEvent>
#include <QScrollArea>
#include <QScroller>
#include <QVBoxLayout>
#include <algorithm>

#include "app/chair/chair_view.h"
#include "app/chair/hold_button.h"
#include "app/chair/touch_controls.h"
#include "app/controls/flow_layout.h"
#include "app/controls/wrapped_label.h"

namespace combdraft::chair {
namespace {

constexpr int kMargin_px = 14, kGap_px = 10, kPanel_px = 344, kBeside_px = 1000, kLeastPanel_px = 160;
constexpr int kFarthestPart_mm = 60, kLatestWeek = 26;
constexpr double kLarger = 1.05, kStrong = 1.55;

QLabel* words(const QString& text, QWidget* parent) {
  auto* label = new controls::WrappedLabel(text, parent);
  return label;
}

}  // namespace

void ChairView::build() {
  grid_ = new QGridLayout(this);
  grid_->setContentsMargins(kMargin_px, kGap_px, kMargin_px, kMargin_px);
  grid_->setHorizontalSpacing(kMargin_px);
  grid_->setVerticalSpacing(kGap_px);
  top_ = buildTop();
  middle_ = new QWidget(this);
  auto* row = new QHBoxLayout(middle_);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kGap_px);
  views_ = new PictureRow(tr("Seen from"),
                          {{tr("Front"), QStringLiteral("seen-front")},
                           {tr("Left"), QStringLiteral("seen-left")},
                           {tr("Right"), QStringLiteral("seen-right")},
                           {tr("Back"), QStringLiteral("seen-back")},
                           {tr("Above"), QStringLiteral("seen-above")}},
                          Qt::Vertical, middle_);
  row->addWidget(views_, 0, Qt::AlignTop);
  picture_ = new PairPicture(SpokenTo::Client, middle_);
  picture_->setLine(promiseLine());
  row->addWidget(picture_, 1);
  controls_ = buildControls();
  side_ = new QWidget(this);
  auto* column = new QVBoxLayout(side_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kGap_px);
  panelScroll_ = new QScrollArea(side_);
  panelScroll_->setWidgetResizable(true);
  panelScroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  panelScroll_->setAccessibleName(tr("Readings and choice"));
  panelScroll_->setFocusPolicy(Qt::NoFocus);
  panelScroll_->setWidget(buildPanel());
  QScroller::grabGesture(panelScroll_->viewport(), QScroller::TouchGesture);
  column->addWidget(panelScroll_, 1);
  buildFoot(column);  // always in sight
  connectControls();
  arrange();
}

QWidget* ChairView::buildTop() {
  auto* top = new QWidget(this);
  auto* row = new QHBoxLayout(top);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kMargin_px);
  heads_ = new PictureRow(tr("Pictures"), {{tr("One head"), {}}, {tr("Two heads"), {}}}, Qt::Horizontal, top);
  facings_ = new PictureRow(tr("The front"), {{tr("As in the mirror"), {}}, {tr("As others see you"), {}}}, Qt::Horizontal, top);
  leave_ = new HoldButton(tr("Hold to leave"), top);
  row->addWidget(heads_);
  row->addWidget(facings_);
  row->addStretch(1);
  row->addWidget(leave_, 0, Qt::AlignTop);
  return top;
}

QWidget* ChairView::buildControls() {
  auto* box = new QWidget(this);
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kGap_px);
  worn_ = new PictureRow(tr("How you wear it"),
                         {{tr("Down"), QStringLiteral("worn-down")},
                          {tr("Part moved"), QStringLiteral("worn-part")},
                          {tr("Half up"), QStringLiteral("worn-half-up")},
                          {tr("Tied back"), QStringLiteral("worn-tied-back")},
                          {tr("Crown opened"), QStringLiteral("worn-crown-opened")}},
                         Qt::Horizontal, box);
  part_ = new TouchSlider(tr("Part moved to your left or right"), -kFarthestPart_mm, kFarthestPart_mm, 10, box);
  weeks_ = new TouchSlider(tr("Weeks later"), 0, kLatestWeek, 4, box);
  lights_ = new PictureRow(tr("Light"),
                           {{tr("Daylight"), QStringLiteral("light-day")},
                            {tr("Overcast"), QStringLiteral("light-overcast")},
                            {tr("Warm lamp"), QStringLiteral("light-lamp")},
                            {tr("Office light"), QStringLiteral("light-office")}},
                           Qt::Horizontal, box);
  // How it is worn beside its slider, and the light beside the weeks.
  for (const auto& [row, slider, label] : {std::tuple(worn_, part_, &partText_), std::tuple(lights_, weeks_, &weeksText_)}) {
    auto* line = new QHBoxLayout;
    line->setSpacing(kMargin_px);
    line->addWidget(row);
    line->addWidget(titled({}, slider, label, box), 1);
    (*label)->setWordWrap(true);
    column->addLayout(line);
  }
  return box;
}

QWidget* ChairView::buildPanel() {
  auto* panel = new QWidget(panelScroll_);
  auto* column = new QVBoxLayout(panel);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kGap_px);

  chipsLayout_ = new QBoxLayout(QBoxLayout::TopToBottom);
  chipsLayout_->setSpacing(kGap_px);
  for (const std::size_t s : {0u, 1u}) {
    Side& side = sides_[s];
    side.chipBox = new QWidget(panel);
    auto* flow = new controls::FlowLayout(side.chipBox, 6, 6);
    flow->setContentsMargins(0, 0, 0, 0);
    side.box = titled(s == 0 ? tr("Left picture") : tr("Right picture"), side.chipBox, nullptr, panel);
    chipsLayout_->addWidget(side.box, 1);
  }
  column->addLayout(chipsLayout_);

  lifts_ = new PictureRow(tr("If it lightens less or more"),
                          {{tr("If less"), QStringLiteral("lift-less")},
                           {tr("As planned"), QStringLiteral("lift-planned")},
                           {tr("If more"), QStringLiteral("lift-more")}},
                          Qt::Horizontal, panel);
  column->addWidget(titled(tr("If it lightens less or more"), lifts_, nullptr, panel));

  readingsLayout_ = new QBoxLayout(QBoxLayout::TopToBottom);
  readingsLayout_->setSpacing(kGap_px);
  for (ReadingBox& box : readings_) {
    box.frame = new QFrame(panel);
    box.frame->setObjectName(QStringLiteral("tile"));
    auto* lines = new QVBoxLayout(box.frame);
    lines->setContentsMargins(12, 6, 12, 7);
    lines->setSpacing(1);
    box.title = words({}, box.frame);
    box.title->setProperty("soft", true);
    box.value = words({}, box.frame);
    box.sentence = words({}, box.frame);
    for (QLabel* label : {box.title, box.value, box.sentence}) lines->addWidget(label);
    lines->addStretch(1);
    readingsLayout_->addWidget(box.frame, 1);
  }
  column->addLayout(readingsLayout_);

  dark_ = words({}, panel);
  cost_ = words({}, panel);
  cost_->hide();
  column->addWidget(dark_);
  column->addWidget(cost_);
  column->addStretch(1);

  return panel;
}

void ChairView::buildFoot(QVBoxLayout* column) {
  auto* pair = new QHBoxLayout;
  pair->setSpacing(8);
  for (Side& side : sides_) {
    side.thisOne = new QPushButton(side_);
    side.thisOne->setProperty("primary", true);
    side.thisOne->setMinimumHeight(kTarget_px + 4);
    side.thisOne->setAutoDefault(false);
    pair->addWidget(side.thisOne);
  }
  notice_ = words({}, side_);
  notice_->setObjectName(QStringLiteral("notice"));
  column->addWidget(notice_);
  column->addLayout(pair);
}

void ChairView::connectControls() {
  connect(leave_, &HoldButton::held, this, &ChairView::leaveWanted);
  connect(leave_, &HoldButton::letGo, this, &ChairView::showHowToLeave);
  connect(picture_, &PairPicture::wantedChanged, this, &ChairView::wantLooks);
  connect(heads_, &PictureRow::chosen, this, [this](int index) { picture_->setHeads(static_cast<Heads>(index)); });
  connect(facings_, &PictureRow::chosen, this, [this](int index) {
    facing_ = index == 0 ? Facing::AsInMirror : Facing::AsOthersSee;
    fillControls();
  });
  connect(views_, &PictureRow::chosen, this, [this](int index) {
    static constexpr std::array kSeen{head::ViewName::Front, head::ViewName::Left, head::ViewName::Right, head::ViewName::Back, head::ViewName::Top};
    view_ = kSeen[static_cast<std::size_t>(index)];
    fillControls();
    wantLooks();
  });
  connect(worn_, &PictureRow::chosen, this, [this](int index) {
    using hair::WornWay;
    static constexpr std::array kWorn{WornWay::Down, WornWay::Down, WornWay::HalfUp, WornWay::TiedBack, WornWay::CrownOpened};
    const double shift = index == 1 ? lastShift_mm_ : 0;
    change([&](look::LookSettings& s) { s.worn.way = kWorn[static_cast<std::size_t>(index)], s.worn.partShift_mm = shift; });
  });
  connect(lights_, &PictureRow::chosen, this, [this](int index) {
    using colour::Light;
    static constexpr std::array kLight{Light::Daylight, Light::Overcast, Light::WarmLamp, Light::Office};
    change([&](look::LookSettings& s) { s.light = kLight[static_cast<std::size_t>(index)]; });
  });
  connect(lifts_, &PictureRow::chosen, this, [this](int index) {
    change([&](look::LookSettings& s) { s.lift = static_cast<look::Lift>(index); });
  });
  connect(part_, &QSlider::valueChanged, this, [this](int mm) {
    change([&](look::LookSettings& s) { s.worn.partShift_mm = mm; });
  });
  connect(weeks_, &QSlider::valueChanged, this, [this](int weeks) {
    change([&](look::LookSettings& s) { s.weeks = weeks; });
  });
  for (const int side : {0, 1}) connect(thisOne(side), &QPushButton::clicked, this, [this, side] { agree(side); });
}

// Below the pictures the panel takes what they leave at their least height; what has no
// room then scrolls in it.
int ChairView::panelRoom() const {
  const int inside = width() - 2 * kMargin_px;
  int taken = middle_->minimumSizeHint().height() + kMargin_px + 4 * kGap_px;  // of the grid: edges, between four rows
  for (const QWidget* one : {top_, controls_}) taken += one->heightForWidth(inside);
  const QPushButton& last = *sides_[1].thisOne;
  taken += 2 * kGap_px + notice_->heightForWidth(inside) + last.sizeHint().expandedTo(last.minimumSize()).height();
  return std::max(kLeastPanel_px, height() - taken);
}

// Wide: the panel stands beside the pictures. Tall: below them, its parts side by side.
void ChairView::arrange() {
  const bool tall = height() > width() || width() < kBeside_px;
  if (isTall_ != tall) {  // only then: placing asks for another round of layout
    isTall_ = tall;
    for (QWidget* one : {top_, middle_, controls_, side_}) grid_->removeWidget(one);
    grid_->addWidget(top_, 0, 0, 1, tall ? 1 : 2);
    grid_->addWidget(middle_, 1, 0);
    grid_->addWidget(controls_, 2, 0);
    if (tall) grid_->addWidget(side_, 3, 0);
    else grid_->addWidget(side_, 1, 1, 2, 1);
    const auto way = tall ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom;
    for (QBoxLayout* layout : {chipsLayout_, readingsLayout_}) layout->setDirection(way);
    grid_->setRowStretch(1, 1);
    grid_->setColumnStretch(0, 1);
  }
  const int beside = std::max(kPanel_px, 21 * fontMetrics().height());
  side_->setMinimumWidth(tall ? 0 : beside);
  side_->setMaximumWidth(tall ? QWIDGETSIZE_MAX : beside);
  const int wanted = panelScroll_->widget()->heightForWidth(std::max(100, width() - 2 * kMargin_px));
  const int needs = wanted > 0 ? wanted : panelScroll_->widget()->sizeHint().height();
  panelScroll_->setMinimumHeight(tall ? std::min({needs + 2, height() * 2 / 5, panelRoom()}) : 0);
  panelScroll_->setMaximumHeight(tall ? std::max(needs + 2, 100) : QWIDGETSIZE_MAX);
}

// Set on each: fonts do not reach the children of a widget under a style sheet.
void ChairView::fitFont() {
  QFont larger = window()->font();
  larger.setPointSizeF(larger.pointSizeF() * kLarger);
  setFont(larger);
  for (QWidget* one : findChildren<QWidget*>()) one->setFont(larger);
  QFont strong = larger;
  strong.setPointSizeF(larger.pointSizeF() * kStrong / kLarger);
  strong.setWeight(QFont::DemiBold);
  for (ReadingBox& box : readings_) box.value->setFont(strong);
}

void ChairView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

void ChairView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::StyleChange && begun_) fitFont();
}

bool ChairView::event(QEvent* event) {
  if (event->type() == QEvent::LayoutRequest && isVisible()) arrange();
  if (event->type() == QEvent::ContextMenu) {  // nothing behind a long press
    event->accept();
    return true;
  }
  return QWidget::event(event);
}

}  // namespace combdraft::chair

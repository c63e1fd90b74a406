// The widgets of the appointment's log, and what each of them calls.
#include <QHBoxLayout>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/appointment/log_view.h"
#include "app/controls/wrapped_label.h"
#include "app/paint/work_words.h"

namespace combdraft::appointment {
using namespace paint;  // its words
namespace {

using work::Tap;

constexpr int kTick_ms = 1000, kButton_px = 44, kTallest_px = 112, kPigmentLetters = 60;
constexpr double kLetters = 1.45;  // times the text size: readable at arm's length

QFont largeFont(const QWidget* widget, double times) {
  QFont font = widget->font();
  font.setPointSizeF(font.pointSizeF() * times);
  return font;
}

}  // namespace

LogView::LogView(document::DocumentController& controller, Clock clock, QWidget* parent)
    : QWidget(parent), controller_(controller), clock_(std::move(clock)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(8);
  safety_ = new controls::WrappedLabel(safetyLine(), this);
  safety_->setProperty("caution", true);
  safety_->setFont(largeFont(this, 1.15));
  column->addWidget(safety_);
  trouble_ = new controls::WrappedLabel(this);
  trouble_->setProperty("caution", true);
  trouble_->hide();
  column->addWidget(trouble_);
  doubt_ = new controls::WrappedLabel(this);
  doubt_->setProperty("caution", true);
  doubt_->setFont(largeFont(this, 1.15));
  doubt_->hide();
  column->addWidget(doubt_);
  unwritten_ = new controls::WrappedLabel(tr("The last tap is on this screen only; the disk may be full. If the program or the battery stops, it is lost. It is tried again: "
                                             "write times on paper until this line goes, or save the plan elsewhere."), this);
  unwritten_->setProperty("caution", true);
  unwritten_->setFont(largeFont(this, 1.15));
  unwritten_->hide();
  column->addWidget(unwritten_);
  state_ = new controls::WrappedLabel(this);
  state_->setFont(largeFont(this, 1.15));
  state_->hide();
  column->addWidget(state_);
  offer_ = new controls::WrappedLabel(this);
  offer_->setFont(largeFont(this, 1.15));
  offer_->hide();
  column->addWidget(offer_);
  auto* middle = new QHBoxLayout;
  middle->setSpacing(14);
  column->addLayout(middle, 1);
  pieces_ = new QListWidget(this);
  pieces_->setAccessibleName(tr("Pieces in their order"));
  pieces_->setFont(largeFont(this, kLetters));
  pieces_->setSelectionMode(QAbstractItemView::SingleSelection);
  pieces_->setWordWrap(true);
  pieces_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);  // long rows wrap
  pieces_->setResizeMode(QListView::Adjust);
  connect(pieces_, &QListWidget::currentRowChanged, this, &LogView::fillTakeBackOf);
  middle->addWidget(pieces_, 3);
  middle->addWidget(buildButtons(), 2);
  middle->addWidget(buildSide(), 3);

  setAwake(new ScreenAwake(ScreenAwake::sessionBus(), this));
  timer_.setInterval(kTick_ms);
  connect(&timer_, &QTimer::timeout, this, &LogView::tick);
  connect(&controller_, &document::DocumentController::changed, this, [this](const document::DocumentChange& change) {
    if (change.kind == document::DocumentChange::Kind::Replaced) forgetPlan();
    if (!isVisible() || change.kind == document::DocumentChange::Kind::Tentative) return;
    fill();
    if (change.kind == document::DocumentChange::Kind::Replaced) chooseNext();
  });
}

QWidget* LogView::buildButtons() {
  auto* box = new QWidget(this);
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(8);
  scope_ = new controls::Segments(tr("A tap counts for"), {{tr("This piece"), {}, {}}, {tr("Its foil"), tr("All pieces in the same foil"), {}},
                                                            {tr("Its section"), tr("All pieces of the section that the tap fits"), {}}}, box);
  scope_->setCurrent(0);
  connect(scope_, &controls::Segments::chosen, this, [this](int i) { scope_->setCurrent(i); });
  column->addWidget(scope_);
  const auto big = [&](const QString& text, const QString& tip) {
    auto* made = new QPushButton(text, box);
    made->setMinimumHeight(kButton_px);
    made->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
    made->setMaximumHeight(kTallest_px);
    made->setFont(largeFont(this, kLetters));
    made->setToolTip(tip);
    made->setAccessibleName(text);
    column->addWidget(made);
    return made;
  };
  const auto tapButton = [&](Tap which, const QString& text, const QString& tip) {
    auto* made = big(text, tip);
    buttons_[static_cast<std::size_t>(which)] = made;
    connect(made, &QPushButton::clicked, this, [this, which] { tap(which); });
  };
  tapButton(Tap::Placed, tr("Placed"), tr("The chosen piece is in; the next one is chosen"));
  bowl_ = new QComboBox(box);
  bowl_->setAccessibleName(tr("Which formula was mixed"));
  bowl_->setMinimumHeight(40);
  column->addWidget(bowl_);
  tapButton(Tap::BowlMixed, tr("Bowl mixed"), tr("A new bowl of this formula, from now"));
  auto* looked = new QHBoxLayout;
  controls::NumberFieldSpec spec;
  spec.label = tr("Level");
  spec.low = 1;
  spec.high = 12;
  spec.step = 0.5;
  spec.mayBeEmpty = true;
  spec.emptyText = tr("not judged");
  spec.tip = tr("The level that you see now; arrow keys change it by half a level");
  level_ = new controls::NumberField(spec, box);
  connect(level_, &controls::NumberField::edited, this, [this](std::optional<double> value) { level_->setValue(value); });
  looked->addWidget(level_, 1);
  pigment_ = new QComboBox(box);
  pigment_->setAccessibleName(tr("Remaining pigment seen"));
  pigment_->setEditable(true);
  pigment_->setInsertPolicy(QComboBox::NoInsert);
  pigment_->lineEdit()->setMaxLength(kPigmentLetters);
  pigment_->lineEdit()->setPlaceholderText(tr("pigment seen"));
  pigment_->addItems({tr("red"), tr("red orange"), tr("orange"), tr("gold orange"), tr("gold"), tr("deep yellow"), tr("yellow"), tr("pale yellow")});
  pigment_->setCurrentIndex(-1);
  looked->addWidget(pigment_, 1);
  column->addLayout(looked);
  tapButton(Tap::Looked, tr("Looked"), tr("Opened, wiped and looked: with the level and pigment above, if judged"));
  tapButton(Tap::TakenOut, tr("Taken out"), tr("Product or foil is off this hair"));
  tapButton(Tap::Rinsed, tr("Rinsed"), tr("This hair is rinsed"));
  takeBack_ = big(tr("Take back the last tap"), tr("It counts no more; it stays in the log, marked"));
  connect(takeBack_, &QPushButton::clicked, this, &LogView::takeBackLast);
  takeBackOf_ = new QPushButton(tr("Take back this piece's last tap"), box);
  takeBackOf_->setToolTip(tr("Of the chosen piece, whatever was tapped since: for a rinse tapped by mistake, whose time then counts on"));
  takeBackOf_->setMinimumHeight(32);
  column->addWidget(takeBackOf_);
  connect(takeBackOf_, &QPushButton::clicked, this, &LogView::takeBackOfPiece);
  beginAnew_ = big(tr("Begin a new log"), tr("For another visit with this plan: the taps until now stay in the log and count no more"));
  connect(beginAnew_, &QPushButton::clicked, this, &LogView::beginNewLog);
  beginAnew_->hide();
  who_ = new QLineEdit(box);
  who_->setPlaceholderText(tr("who taps: initials"));
  who_->setAccessibleName(tr("Who taps"));
  who_->setMaxLength(12);
  who_->setMinimumHeight(32);
  column->addWidget(who_);
  return box;
}

QWidget* LogView::buildSide() {
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  auto* side = new QWidget(scroll);
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(0, 0, 6, 0);
  column->setSpacing(5);
  const auto part = [&](const QString& title, double times) {
    auto* heading = new QLabel(title, side);
    QFont font = largeFont(this, times);
    font.setWeight(QFont::DemiBold);
    heading->setFont(font);
    column->addWidget(heading);
    auto* text = new controls::WrappedLabel(side);
    text->setFont(largeFont(this, times));
    text->setAccessibleName(title);
    column->addWidget(text);
    return text;
  };
  first_ = part(tr("Look at these first"), kLetters);
  column->addWidget(new controls::WrappedLabel(looksLighter(), side));
  bowls_ = part(tr("Bowls"), 1.2);
  last_ = part(tr("Last taps"), 1.0);
  odd_ = part(tr("Odd in the log"), 1.0);
  awakeText_ = new controls::WrappedLabel(tr("This screen may go dark by itself: the computer could not be asked to keep it on. Set it to stay on, and plug it in, before you mix."), side);
  awakeText_->setProperty("soft", true);
  awakeText_->hide();
  column->addWidget(awakeText_);
  column->addStretch(1);
  scroll->setWidget(side);
  return scroll;
}

}  // namespace combdraft::appointment

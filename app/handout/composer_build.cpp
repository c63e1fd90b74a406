// What the composer is laid out from: the row of buttons, the parts, the texts.
#include <QComboBox>
#include <QLabel>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/controls/wrapped_label.h"
#include "app/handout/composer_page.h"

namespace combdraft::handout {
namespace {

using plan::HandoutPart;

constexpr qsizetype kText_bytes = 20000;  // what a plan file keeps of a text
constexpr int kLeft_px = 330;
constexpr double kLeast_dpi = 20, kMost_dpi = 1200;

QLabel* softLabel(const QString& text, QWidget* parent) {
  auto* label = new controls::WrappedLabel(text, parent);
  label->setTextFormat(Qt::PlainText);
  label->setProperty("soft", true);
  return label;
}

QPushButton* button(const QString& text, const QString& tip, QWidget* parent) {
  auto* made = new QPushButton(text, parent);
  made->setToolTip(tip);
  made->setAccessibleName(text);
  made->setMinimumHeight(32);
  return made;
}

}  // namespace

QWidget* ComposerPage::buildTop() {
  auto* top = new QWidget(this);
  auto* rows = new QVBoxLayout(top);
  rows->setContentsMargins(0, 0, 0, 0);
  auto* first = new QHBoxLayout;
  auto* title = new QLabel(tr("On paper"), top);
  QFont font = title->font();
  font.setPointSizeF(font.pointSizeF() * 1.7);
  font.setWeight(QFont::DemiBold);
  title->setFont(font);
  first->addWidget(title);
  first->addStretch(1);
  save_ = button(tr("Save as…"), tr("PDF with real text; SVG or PNG give a file for each page"), top);
  print_ = button(tr("Print…"), tr("Choose a printer; print at 100 % so that scales are true"), top);
  preview_ = button(tr("Print preview…"), tr("The same pages as a print, in a window of their own"), top);
  auto* done = button(tr("Back"), tr("Back to where you were (Escape)"), top);
  done->setObjectName(QStringLiteral("done"));
  connect(done, &QPushButton::clicked, this, &ComposerPage::done);
  controls::NumberFieldSpec fineness;
  fineness.label = tr("PNG, dots an inch");
  fineness.low = kLeast_dpi;
  fineness.high = kMost_dpi;
  fineness.decimals = 0;
  fineness.step = 10;
  fineness.tip = tr("How finely pages are drawn when they are saved as PNG");
  resolution_ = new controls::NumberField(fineness, top);
  resolution_->setValue(FileWish().dpi);
  first->addWidget(save_);
  first->addWidget(resolution_);
  for (QPushButton* one : {print_, preview_, done}) first->addWidget(one);
  rows->addLayout(first);
  auto* second = new QHBoxLayout;
  second->setSpacing(18);
  kind_ = new controls::Segments(tr("What is printed"),
                                 {{tr("Handout"), tr("The lesson: what a class works from"), {}},
                                  {tr("Record card"), tr("Everything that is needed to do it again"), {}},
                                  {tr("Client's page"), tr("The picture, what the plan shows, how to look after it"), {}},
                                  {tr("Work list"), tr("Bowls, steps and foils in order, for beside the chair"), {}}},
                                 top);
  paper_ = new controls::Segments(tr("Paper"), {{tr("A4"), tr("210 by 297 mm"), {}}, {tr("Letter"), tr("8.5 by 11 inches"), {}}}, top);
  turn_ = new controls::Segments(tr("How the paper lies"), {{tr("Upright"), tr("Taller than wide"), {}}, {tr("Across"), tr("Wider than tall"), {}}}, top);
  kind_->setCurrent(0);
  second->addWidget(kind_);
  second->addWidget(paper_);
  second->addWidget(turn_);
  second->addStretch(1);
  state_ = softLabel({}, top);
  state_->setWordWrap(false);
  second->addWidget(state_);
  bar_ = new QProgressBar(top);
  bar_->setRange(0, 100);
  bar_->setFixedWidth(140);
  bar_->setTextVisible(false);
  bar_->setAccessibleName(tr("How far the pages are"));
  stop_ = button(tr("Stop"), tr("Give it up; nothing half-written is left"), top);
  second->addWidget(bar_);
  second->addWidget(stop_);
  count_ = softLabel({}, top);
  count_->setWordWrap(false);
  second->addWidget(count_);
  rows->addLayout(second);
  bar_->hide();
  stop_->hide();
  return top;
}

QWidget* ComposerPage::buildLeft() {
  left_ = new QStackedWidget(this);
  left_->setFixedWidth(kLeft_px);
  auto* handout = new QWidget(left_);
  auto* column = new QVBoxLayout(handout);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(softLabel(tr("Parts in their order on paper. Tick what is printed; drag a part, or move it with Alt and the arrow keys."), handout));
  parts_ = new QListWidget(handout);
  parts_->setAccessibleName(tr("Parts of the handout"));
  parts_->setDragDropMode(QAbstractItemView::InternalMove);
  parts_->setDefaultDropAction(Qt::MoveAction);
  parts_->installEventFilter(this);
  parts_->setMinimumHeight(fontMetrics().height() * 9);
  // A ticked box stays readable on the row that is chosen.
  parts_->setStyleSheet(QStringLiteral("QListWidget::item:selected { background: palette(alternate-base); color: palette(text); border: 1px solid palette(highlight); }"));
  column->addWidget(parts_, 5);
  auto* move = new QHBoxLayout;
  up_ = button(tr("Up"), tr("Earlier on paper (Alt and Up)"), handout);
  down_ = button(tr("Down"), tr("Later on paper (Alt and Down)"), handout);
  move->addWidget(up_);
  move->addWidget(down_);
  move->addStretch(1);
  column->addLayout(move);
  auto* texts = new QScrollArea(handout);
  texts->setWidgetResizable(true);
  texts->setFrameShape(QFrame::NoFrame);
  texts->setFocusPolicy(Qt::NoFocus);
  texts->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  texts->setAccessibleName(tr("Texts of the part"));
  texts->setWidget(buildTexts());
  column->addWidget(texts, 5);
  left_->addWidget(handout);

  auto* card = new QWidget(left_);
  auto* cardColumn = new QVBoxLayout(card);
  cardColumn->setContentsMargins(0, 0, 0, 0);
  cardColumn->addWidget(softLabel(tr("The card repeats everything in the plan: drawings, hair, sections, pieces in order, formulas, changed assumptions. "
                                     "Names are written in by hand; the plan holds none."), card));
  cardColumn->addStretch(1);
  left_->addWidget(card);

  auto* client = new QWidget(left_);
  auto* clientColumn = new QVBoxLayout(client);
  clientColumn->setContentsMargins(0, 0, 0, 0);
  clientColumn->addWidget(softLabel(tr("What you type here is printed on this page but not kept; a PDF that you save does hold it. It is gone when another plan is opened or the window closes."), client));
  const std::array<QString, 3> labels{tr("Looking after it, a line each"), tr("Next visit"), tr("Whom to call")};
  for (std::size_t i = 0; i < labels.size(); ++i) {
    clientBoxes_[i] = new controls::TextBox(labels[i], tr("Left empty: a line to write on"), i == 0 ? 7 : 2, kText_bytes, client);
    clientColumn->addWidget(clientBoxes_[i]);
  }
  clientColumn->addStretch(1);
  left_->addWidget(client);

  auto* work = new QWidget(left_);
  auto* workColumn = new QVBoxLayout(work);
  workColumn->setContentsMargins(0, 0, 0, 0);
  workColumn->addWidget(softLabel(tr("The list is printed as it is set on the appointment's page: order, hands, foil widths, own factors. "
                                     "Minutes on the hair are not in it: what is seen is written in by hand."), work));
  workColumn->addStretch(1);
  left_->addWidget(work);
  return left_;
}

QWidget* ComposerPage::buildTexts() {
  texts_ = new QStackedWidget(this);
  texts_->addWidget(softLabel(tr("This part is made from the plan alone."), texts_));
  const std::pair<HandoutPart, QString> boxes[] = {{HandoutPart::Title, tr("Aim: what the class will be able to do")},
                                                   {HandoutPart::Kit, tr("Kit, a line each")},
                                                   {HandoutPart::Checks, tr("Check points, a line each")},
                                                   {HandoutPart::Faults, tr("Faults, a line each: what is seen, a colon, what to do")},
                                                   {HandoutPart::SelfCheck, tr("How did it go, a line each")}};
  for (const auto& [part, label] : boxes) {
    auto* page = new QWidget(texts_);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    auto* box = new controls::TextBox(label, part == HandoutPart::Title ? tr("Left empty: lines to write on") : tr("Left empty: made from the plan"),
                                      part == HandoutPart::Title ? 5 : 9, kText_bytes, page);
    column->addWidget(box);
    column->addStretch(1);
    boxes_.emplace_back(part, box);
    texts_->addWidget(page);
  }
  auto* steps = new QWidget(texts_);
  auto* column = new QVBoxLayout(steps);
  column->setContentsMargins(0, 0, 0, 0);
  auto* label = new QLabel(tr("Step"), steps);
  step_ = new QComboBox(steps);
  step_->setAccessibleName(tr("Step"));
  step_->setMinimumHeight(30);
  step_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  label->setBuddy(step_);
  column->addWidget(label);
  column->addWidget(step_);
  stepState_ = softLabel({}, steps);
  column->addWidget(stepState_);
  const std::array<QString, 3> labels{tr("What"), tr("How"), tr("Why")};
  for (std::size_t i = 0; i < labels.size(); ++i) {
    stepBoxes_[i] = new controls::TextBox(labels[i], tr("Left empty: made from the plan"), 3, kText_bytes, steps);
    column->addWidget(stepBoxes_[i]);
  }
  column->addStretch(1);
  texts_->addWidget(steps);
  return texts_;
}

}  // namespace combdraft::handout

#include "app/desk/left_plans_box.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include "app/controls/drop_widgets.h"
#include "app/controls/flow_layout.h"
#include "app/controls/wrapped_label.h"
#include "app/desk/error_text.h"
#include "app/desk/plan_drawing.h"
#include "app/paint/work_words.h"
#include "app/sheet/screen_palette.h"
#include "app/store/plan_store.h"
#include "app/words/date_words.h"
#include "engine/work/log_text.h"

namespace combdraft::desk {
namespace {

constexpr int kLowest_px = 32;       // buttons
constexpr int kDrawing_lines = 7;    // height of a drawing in lines of text

QLabel* wrapped(const QString& text, QWidget* parent) {
  auto* label = new controls::WrappedLabel(text, parent);
  label->setTextFormat(Qt::PlainText);
  return label;
}

QLabel* heading(const QString& text, double size, QWidget* parent) {
  auto* label = wrapped(text, parent);
  QFont font = label->font();
  font.setPointSizeF(font.pointSizeF() * size);
  font.setWeight(QFont::DemiBold);
  label->setFont(font);
  return label;
}

}  // namespace

QString leftTitle(const store::LeftPlan& left) {
  if (!left.title.isEmpty()) return left.title;
  if (!left.originalPath.isEmpty()) return store::nameOfFile(left.originalPath);
  return LeftPlansBox::tr("Untitled plan");
}

QString leftBelongs(const store::LeftPlan& left) {
  const QString file = QFileInfo(left.originalPath).fileName();
  switch (left.file) {
    case store::FileSince::NeverSaved: return LeftPlansBox::tr("No saved file is known for it.");
    case store::FileSince::AsKnown: return LeftPlansBox::tr("Its file %1 has not changed since.").arg(file);
    case store::FileSince::Changed: return LeftPlansBox::tr("Its file %1 was changed after that.").arg(file);
    case store::FileSince::Gone: return LeftPlansBox::tr("Its file %1 is not there any more.").arg(file);
  }
  return {};
}

bool opensSafely(const store::LeftPlan& left) {
  return left.attempts >= store::kSafeFromAttempts || left.endedWhileDrawn;
}

LeftPlansBox::LeftPlansBox(QWidget* parent) : QFrame(parent) {
  setObjectName(QStringLiteral("card"));
  setAccessibleName(tr("Unsaved work"));
  column_ = new QVBoxLayout(this);
  column_->setContentsMargins(14, 10, 14, 12);
  column_->setSpacing(10);
  hide();
}

void LeftPlansBox::fill(const std::vector<store::LeftPlan>& left) {
  controls::dropContents(*column_);
  rows_.clear();
  plans_.clear();
  left_ = left;
  setVisible(!left.empty());
  if (left.empty()) return;
  column_->addWidget(heading(tr("Unsaved work"), 1.15, this));
  for (const store::LeftPlan& plan : left) addRow(plan);
  nextDrawing_ = 0;
  ++round_;
  QTimer::singleShot(0, this, [this, round = round_] {
    if (round == round_) drawNext();
  });
}

void LeftPlansBox::addRow(const store::LeftPlan& left) {
  // Reading it may be what ended the program before: then it is left alone here.
  std::optional<plan::Plan> plan;
  QString trouble;
  if (left.endedWhileDrawn) {
    trouble = tr("There is no picture: the program ended while it read or drew this plan.");
  } else {
    const store::DrawingMark mark(left);
    if (auto read = store::peekLeftPlan(left))
      plan = std::move(read).value();
    else
      trouble = tr("This copy is damaged and cannot be opened. It is kept as it is. (%1)").arg(errorText(read.error()));
  }
  const bool isReadable = plan || left.endedWhileDrawn;
  if (plan)
    if (const auto on = work::onHair(*plan)) trouble = paint::onHairText(*on);
  if (left.attempts > 0)
    trouble += (trouble.isEmpty() ? QString() : QStringLiteral(" ")) +
               (left.attempts == 1 ? tr("It was opened once, and the program ended soon after.")
                                   : tr("It was opened %1 times, and the program ended soon after each time.").arg(left.attempts));

  Row row;
  row.box = new QFrame(this);
  row.box->setAccessibleName(leftTitle(left));
  auto* line = new QHBoxLayout(row.box);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(14);
  row.drawing = new QLabel(row.box);
  const int height = fontMetrics().height() * kDrawing_lines;
  row.drawing->setFixedSize(height * 3, height);
  row.drawing->setAlignment(Qt::AlignCenter);
  row.drawing->setAccessibleName(tr("Drawing of %1: from behind, from the client's left, from above").arg(leftTitle(left)));
  line->addWidget(row.drawing, 0, Qt::AlignTop);
  if (!plan) row.drawing->setText(tr("No picture"));
  auto* words = new QVBoxLayout;
  words->setSpacing(4);
  words->addWidget(heading(leftTitle(left), 1.1, row.box));
  row.words = wrapped(tr("Changed %1. %2").arg(words::momentText(left.when), leftBelongs(left)), row.box);
  row.words->setToolTip(left.originalPath);
  words->addWidget(row.words);
  if (!trouble.isEmpty()) {
    row.trouble = wrapped(QStringLiteral("\u26A0 ") + trouble, row.box);
    row.trouble->setProperty("caution", true);
    row.trouble->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    words->addWidget(row.trouble);
  }
  words->addStretch(1);
  addButtons(row, left, isReadable, words);
  line->addLayout(words, 1);
  column_->addWidget(row.box);
  rows_.push_back(row);
  plans_.push_back(std::move(plan));
}

void LeftPlansBox::addButtons(Row& row, const store::LeftPlan& left, bool isReadable, QVBoxLayout* into) {
  auto* holder = new QWidget(row.box);
  auto* buttons = new controls::FlowLayout(holder, 8);
  buttons->setContentsMargins(0, 2, 0, 0);
  const auto add = [&](const QString& text, const QString& tip, void (LeftPlansBox::*wanted)(const store::LeftPlan&)) {
    auto* button = new QPushButton(text, row.box);
    button->setMinimumHeight(kLowest_px);
    button->setAccessibleName(QStringLiteral("%1: %2").arg(leftTitle(left), text));
    button->setToolTip(tip);
    // The list may be filled anew by the answer: not while the button still works.
    connect(button, &QPushButton::clicked, this, [this, left, wanted] { Q_EMIT (this->*wanted)(left); }, Qt::QueuedConnection);
    buttons->addWidget(button);
    return button;
  };
  if (!isReadable || left.endedWhileDrawn)  // whether that one can be read is not known
    row.copy = add(tr("Save a copy of the file…"), tr("A copy of the file as it is, for somebody who can look into it"), &LeftPlansBox::copyWanted);
  if (isReadable && opensSafely(left))
    row.openSafely = add(tr("Open without the look"), tr("Shows the diagram; the look is worked out when you ask for it"), &LeftPlansBox::openSafelyWanted);
  if (isReadable) row.open = add(tr("Open recovered"), tr("Opens it as it was, not yet saved in its file"), &LeftPlansBox::openWanted);
  if (isReadable && !left.endedWhileDrawn && (left.file == store::FileSince::AsKnown || left.file == store::FileSince::Changed))
    row.compare = add(tr("Compare with the saved one"), tr("Both pictures side by side and what differs"), &LeftPlansBox::compareWanted);
  row.keep = add(tr("Keep for later"), tr("It stays and is offered again"), &LeftPlansBox::keepWanted);
  // What cannot be read is never taken away.
  if (isReadable) row.discard = add(tr("Discard"), tr("Takes it off this list; you can put it back until this window is closed"), &LeftPlansBox::discardWanted);
  if (QPushButton* first = row.openSafely ? row.openSafely : row.open) first->setProperty("primary", true);
  into->addWidget(holder);
}

void LeftPlansBox::drawNext() {
  if (areDrawingsDone()) return;
  const std::size_t at = nextDrawing_++;
  if (plans_[at]) {
    const store::DrawingMark mark(left_[at]);
    rows_[at].drawing->setPixmap(QPixmap::fromImage(
        planDrawing(*plans_[at], rows_[at].drawing->size(), devicePixelRatioF(), sheet::screenPalette())));
  }
  QTimer::singleShot(0, this, [this, round = round_] {
    if (round == round_) drawNext();
  });
}

}  // namespace combdraft::desk

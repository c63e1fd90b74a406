#include "app/desk/left_compare_page.h"

#include <QFileInfo>
#include <QFrame>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>

#include "app/controls/wrapped_label.h"
#include "app/desk/error_text.h"
#include "app/desk/left_plans_box.h"
#include "app/desk/page_parts.h"
#include "app/desk/plan_changes.h"
#include "app/desk/plan_drawing.h"
#include "app/sheet/screen_palette.h"
#include "app/store/plan_store.h"
#include "app/words/date_words.h"

namespace combdraft::desk {
namespace {

constexpr int kLowest_px = 32;     // buttons
constexpr int kDrawing_lines = 10;  // height of a drawing in lines of text

}  // namespace

LeftComparePage::LeftComparePage(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("page"));
  QVBoxLayout* column = pageColumn(this, tr("Compare: unsaved work beside the file"), [this] { Q_EMIT done(); });
  column->addWidget(new controls::WrappedLabel(tr("Nothing is decided yet. Your unsaved work waits until you open or discard it."), this));
  auto* both = new QHBoxLayout;
  both->setSpacing(14);
  const int height = fontMetrics().height() * kDrawing_lines;
  for (Side& side : sides_) {
    auto* box = new QFrame(this);
    box->setObjectName(QStringLiteral("card"));
    auto* inside = new QVBoxLayout(box);
    inside->setContentsMargins(12, 8, 12, 10);
    side.title = new controls::WrappedLabel(box);
    side.title->setTextFormat(Qt::PlainText);
    QFont font = side.title->font();
    font.setWeight(QFont::DemiBold);
    side.title->setFont(font);
    side.picture = new controls::WrappedLabel(box);
    side.picture->setMinimumHeight(height);
    side.picture->setAlignment(Qt::AlignCenter);
    side.picture->setTextFormat(Qt::PlainText);
    inside->addWidget(side.title);
    inside->addWidget(side.picture, 1);
    both->addWidget(box, 1);
  }
  column->addLayout(both);
  auto* what = new QLabel(tr("What differs in the recovered plan"), this);
  what->setProperty("soft", true);
  column->addWidget(what);
  changes_ = new QListWidget(this);
  changes_->setAccessibleName(what->text());
  changes_->setWordWrap(true);
  column->addWidget(changes_, 1);
  auto* buttons = new QHBoxLayout;
  openRecovered_ = new QPushButton(tr("Open recovered"), this);
  openRecovered_->setProperty("primary", true);
  openSaved_ = new QPushButton(tr("Open the saved one"), this);
  openSaved_->setToolTip(tr("The recovered plan stays and is offered again"));
  for (QPushButton* button : {openRecovered_, openSaved_}) {
    button->setMinimumHeight(kLowest_px);
    button->setAccessibleName(button->text());
    buttons->addWidget(button);
  }
  buttons->addStretch(1);
  column->addLayout(buttons);
  connect(openRecovered_, &QPushButton::clicked, this, [this] { Q_EMIT recoveredWanted(left_); });
  connect(openSaved_, &QPushButton::clicked, this, [this] { Q_EMIT savedWanted(left_.originalPath); });
}

void LeftComparePage::showSide(Side& side, const QString& title, const Result<plan::Plan>& plan) {
  side.title->setText(title);
  side.picture->setAccessibleName(tr("Drawing: %1").arg(title));
  if (!plan) return side.picture->setText(errorText(plan.error()));
  const int height = fontMetrics().height() * kDrawing_lines;
  side.picture->setPixmap(QPixmap::fromImage(planDrawing(*plan, {height * 3, height}, devicePixelRatioF(), sheet::screenPalette())));
}

void LeftComparePage::show(const store::LeftPlan& left) {
  left_ = left;
  const store::DrawingMark mark(left);
  const Result<plan::Plan> recovered = store::peekLeftPlan(left);
  const Result<store::OpenedPlan> opened = store::openPlan(left.originalPath);
  const Result<plan::Plan> saved = opened ? Result<plan::Plan>(opened->plan) : Result<plan::Plan>(opened.error());
  const QFileInfo file(left.originalPath);
  showSide(sides_[0], tr("Unsaved work, %1, changed %2").arg(leftTitle(left), words::momentText(left.when)), recovered);
  showSide(sides_[1], file.exists() ? tr("In the file %1, saved %2").arg(file.fileName(), words::momentText(file.lastModified()))
                                    : tr("In the file %1").arg(file.fileName()), saved);
  changes_->clear();
  if (recovered && saved) {
    const QStringList lines = planChanges(*saved, *recovered);
    changes_->addItems(lines.isEmpty() ? QStringList(tr("Nothing that is drawn or typed differs.")) : lines);
  }
  openRecovered_->setEnabled(recovered.ok());
  openSaved_->setEnabled(saved.ok());
}

void LeftComparePage::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    Q_EMIT done();
    return;
  }
  QWidget::keyPressEvent(event);
}

}  // namespace combdraft::desk

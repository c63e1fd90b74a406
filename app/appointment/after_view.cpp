#include "app/appointment/after_view.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QScrollArea>
#include <QShowEvent>
#include <QVBoxLayout>
#include <algorithm>

#include "app/appointment/side_parts.h"
#include "app/paint/figure.h"
#include "app/paint/hair_words.h"
#include "app/paint/work_words.h"
#include "app/words/engine_words.h"
#include "engine/base/number_text.h"
#include "engine/plan/plan_words.h"
#include "engine/work/log_text.h"

namespace combdraft::appointment {
namespace {

using plan::HairZone;

QString level(double value) { return paint::figure(numberText(value, 1)); }

}  // namespace

AfterView::AfterView(document::DocumentController& controller, QWidget* parent) : QWidget(parent), controller_(controller) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(18);
  row->addWidget(buildLeft(), 3);
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setFocusPolicy(Qt::NoFocus);
  corrections_ = new CorrectionsBox(controller_, scroll);
  scroll->setWidget(corrections_);
  row->addWidget(scroll, 2);
  connect(corrections_, &CorrectionsBox::made, this, [this](const QString& text) { said_->setText(text); });
  connect(&controller_, &document::DocumentController::changed, this, [this](const document::DocumentChange& change) {
    if (change.kind == document::DocumentChange::Kind::Replaced) {
      said_->clear();
      for (FinishField* field : findChildren<FinishField*>()) field->clear();
      for (controls::NumberField* field : {corrections_->shadowLength(), corrections_->shadowBlend(), corrections_->shadowCover()}) {
        field->abandonTyping();
        field->setValue(std::nullopt);
      }
    }
    if (isVisible() && change.kind != document::DocumentChange::Kind::Tentative) fill();
  });
}

QWidget* AfterView::buildLeft() {
  const auto [scroll, column] = newScrolledColumn(this);
  QWidget* const left = column->parentWidget();
  addHeading(column, tr("What came, by zone"));
  state_ = addText(column);
  table_ = newTable(tr("Levels that came, by zone"), {tr("zone"), tr("level that came"), tr("from, to"), tr("pieces"), tr("planned"), tr("colour left")}, left);
  column->addWidget(table_);

  finishes_ = new QWidget(left);
  auto* rows = new QVBoxLayout(finishes_);
  rows->setContentsMargins(0, 6, 0, 0);
  rows->setSpacing(4);
  addHeading(rows, tr("A finish that you type"));
  addSoftText(rows, tr("Level and tone that your toner is to leave. A zone's own finish comes before the one for all."));
  all_ = new FinishField(tr("All zones with a level"), finishes_);
  rows->addWidget(all_);
  connect(all_, &FinishField::edited, this, &AfterView::enable);
  for (std::size_t i = 0; i < plan::kHairZones; ++i) {
    zones_[i] = new FinishField(paint::zoneName(static_cast<HairZone>(i)), finishes_);
    rows->addWidget(zones_[i]);
    connect(zones_[i], &FinishField::edited, this, &AfterView::enable);
  }
  column->addWidget(finishes_);
  auto* buttons = new QHBoxLayout;
  column->addLayout(buttons);
  try_ = new QPushButton(tr("Try the finish"), left);
  try_->setMinimumHeight(34);
  try_->setToolTip(tr("Puts the levels that came and this finish into the plan; one undo takes it back"));
  buttons->addWidget(try_);
  see_ = new QPushButton(tr("See it on the heads"), left);
  see_->setMinimumHeight(34);
  see_->setToolTip(tr("Back to the sheet, where the look follows the plan; undo shows it as before"));
  buttons->addWidget(see_);
  buttons->addStretch(1);
  connect(try_, &QPushButton::clicked, this, &AfterView::tryTyped);
  connect(see_, &QPushButton::clicked, this, &AfterView::lookWanted);
  said_ = addText(column);
  addCaution(column, tr("A level is judged on rinsed, dry hair in daylight, a strand first. The maker's directions for the toner come before what is typed here."));
  addCaution(column, paint::colourCaution());
  column->addStretch(1);
  return scroll;
}

void AfterView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  fill();
}

void AfterView::fill() {
  const plan::Plan& plan = controller_.document();
  const Result<work::AppointmentLog> log = work::readLog(plan.info().logJson);
  levels_ = log ? work::levelsByZone(plan, *log) : std::vector<work::ZoneLevel>();
  if (!log)
    state_->setText(tr("The appointment log in this plan cannot be read and is kept as it is. %1").arg(words::inWords(log.error())));
  else if (levels_.empty())
    state_->setText(tr("No level was tapped after a rinse yet. With product on, hair looks lighter than it is: in the log tap Rinsed, look at clean, dry hair, type the level and tap Looked."));
  else
    state_->setText(tr("As last tapped in the log. Once a finish was tried, “planned” is what came; undo shows what was planned."));
  table_->setVisible(!levels_.empty());
  finishes_->setVisible(!levels_.empty());
  table_->setRowCount(static_cast<int>(levels_.size()));
  for (int row = 0; row < table_->rowCount(); ++row) {
    const work::ZoneLevel& zone = levels_[static_cast<std::size_t>(row)];
    const QString cells[] = {paint::zoneName(zone.zone), level(zone.level), tr("%1 to %2").arg(level(zone.low), level(zone.high)),
                             QString::number(zone.pieces), level(zone.planned), paint::pigmentName(zone.level)};
    for (int i = 0; i < 6; ++i) table_->setItem(row, i, new QTableWidgetItem(cells[i]));
  }
  table_->setFixedHeight(table_->horizontalHeader()->sizeHint().height() + table_->rowCount() * table_->verticalHeader()->defaultSectionSize() + 6);
  for (std::size_t i = 0; i < plan::kHairZones; ++i)
    zones_[i]->setVisible(std::any_of(levels_.begin(), levels_.end(), [i](const work::ZoneLevel& z) { return z.zone == static_cast<HairZone>(i); }));
  corrections_->fill();
  enable();
}

void AfterView::enable() {
  bool typed = false;
  for (const work::ZoneLevel& zone : levels_) typed = typed || finish(zone.zone)->value();
  try_->setEnabled(!levels_.empty() && (typed || all_->value()));
}

void AfterView::tryTyped() {
  const plan::Plan& plan = controller_.document();
  const Result<work::AppointmentLog> log = work::readLog(plan.info().logJson);
  if (!log) return fill();
  all_->setProblem({});
  if (all_->isHalf()) return all_->setProblem(tr("Give both, a level and a tone, or neither."));
  // The finish for all is asked only where no own one is typed: it must not be refused for a zone that it does not reach.
  std::vector<work::ZoneFinish> finishes;
  for (const work::ZoneLevel& zone : levels_) {
    FinishField* own = finish(zone.zone);
    own->setProblem({});
    if (own->isHalf()) return own->setProblem(tr("Give both, a level and a tone, or neither."));
    if (const auto wished = own->value() ? own->value() : all_->value()) finishes.push_back({zone.zone, *wished});
  }
  if (finishes.empty()) return;
  const Result<plan::ChangeSet> edit = work::toned(plan, *log, finishes);
  if (!edit) {
    const Error& error = edit.error();
    for (const work::ZoneLevel& zone : levels_) {
      if (plan::wordOf(zone.zone) != error.where) continue;
      FinishField* at = finish(zone.zone);
      return at->setProblem(tr("Toning does not lighten. Typed: level %1; right would be at most the level of the lowest piece here, %2.")
                                .arg(QString::fromStdString(error.args.empty() ? "" : error.args[0]), level(zone.low)));
    }
    return all_->setProblem(words::inWords(error));
  }
  switch (controller_.edit(plan::applied(plan, *edit), tr("Try the finish"))) {
    case document::DocumentController::Outcome::Made:
      return said_->setText(tr("The finish is in the plan, with the levels that came. Look at it on the heads; undo takes it back."));
    case document::DocumentController::Outcome::Unchanged: return said_->setText(tr("The plan shows this finish already."));
    case document::DocumentController::Outcome::Refused: return said_->setText(tr("Nothing was changed."));
  }
}

}  // namespace combdraft::appointment

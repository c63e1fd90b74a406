#include "app/appointment/outcome_view.h"

#include <QDate>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QShowEvent>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "app/appointment/finish_field.h"
#include "app/appointment/side_parts.h"
#include "app/paint/work_words.h"
#include "app/paint/figure.h"
#include "app/words/engine_words.h"
#include "engine/base/number_text.h"
#include "engine/plan/edits.h"
#include "engine/work/amounts.h"
#include "engine/work/log_text.h"
#include "engine/work/speeds.h"

namespace combdraft::appointment {
using namespace paint;  // its words
namespace {

using work::Factor;

constexpr double kMostMixed_g = 5000;

QString level(double value) { return paint::figure(numberText(value, 1)); }

QString notTyped() { return OutcomeView::tr("not typed"); }

controls::NumberFieldSpec typed(const QString& label, const QString& unit, double high, const QString& tip) {
  controls::NumberFieldSpec spec;
  spec.label = label;
  spec.unit = unit;
  spec.low = 0;
  spec.high = high;
  spec.emptyText = notTyped();
  spec.tip = tip;
  return spec;
}

// After a finish was tried the plan holds the levels that came; that they agree says nothing then.
bool isTakenOver(const plan::LiftsTo& lifts, double got) { return lifts.low == got && lifts.high == got; }

std::vector<plan::ItemId> backcombedIn(const plan::Plan& plan) {
  std::vector<plan::ItemId> pieces;
  for (const auto& [id, piece] : plan.pieces(plan.info().activeChoice))
    if (work::isWorked(*piece) && work::isBackcombed(*piece)) pieces.push_back(id);
  return pieces;
}

}  // namespace

OutcomeView::OutcomeView(document::DocumentController& controller, live::HairCountService& counts, QWidget* parent)
    : QWidget(parent), controller_(controller), counts_(counts) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(18);
  auto* left = new QVBoxLayout;
  row->addLayout(left, 3);
  state_ = addText(left);
  table_ = newTable(tr("Planned and got, piece by piece"), {tr("piece"), tr("planned level"), tr("level that came"), tr("typed span")}, this);
  left->addWidget(table_, 1);
  left->addStretch(0);
  row->addWidget(buildSide(), 2);
  connect(table_, &QTableWidget::currentCellChanged, this, [this](int at) {
    const QTableWidgetItem* cell = at < 0 ? nullptr : table_->item(at, 0);
    if (!cell) return;
    const std::string piece = cell->data(Qt::UserRole).toString().toStdString();
    if (controller_.document().find<plan::Piece>(piece)) controller_.select(document::Selection::one(piece));
  });
  connect(&controller_, &document::DocumentController::changed, this, [this](const document::DocumentChange& change) {
    if (change.kind == document::DocumentChange::Kind::Replaced) {
      for (controls::NumberField* field : {mixed_, left_, pushed_}) {
        field->abandonTyping();
        field->setValue(std::nullopt);
      }
      consent_->setChecked(false);
      said_->clear();
    }
    if (isVisible() && change.kind != document::DocumentChange::Kind::Tentative) fill();
  });
  connect(&counts_, &live::HairCountService::answered, this, [this] {
    if (!isVisible()) return;
    weighHair();
    fillHead();
  });
}

QWidget* OutcomeView::buildSide() {
  const auto [scroll, column] = newScrolledColumn(this);
  QWidget* const side = column->parentWidget();
  addHeading(column, tr("What was used on this head"));
  mixed_ = addTyped(column, typed(tr("Mixed in all"), tr("g"), kMostMixed_g, tr("All bowls together, weighed")), side);
  left_ = addTyped(column, typed(tr("Left in the bowls"), tr("g"), kMostMixed_g, tr("What was not put on, weighed")), side);
  controls::NumberFieldSpec share = typed(tr("Pushed back in fact"), tr("%"), 1, tr("How much of the taken hair the comb pushed back"));
  share.shownPerValue = 100;
  share.decimals = 0;
  pushed_ = addTyped(column, share, side);
  for (controls::NumberField* field : {mixed_, left_, pushed_}) connect(field, &controls::NumberField::edited, this, &OutcomeView::fillHead);
  addHeading(column, tr("What this head gives"));
  head_ = addText(column);
  consent_ = new QCheckBox(tr("Take these over into my own factors"), side);
  consent_->setMinimumHeight(30);
  consent_->setToolTip(tr("Nothing is taken over without this tick; it is asked for each head"));
  column->addWidget(consent_);
  take_ = new QPushButton(tr("Take them over"), side);
  take_->setMinimumHeight(34);
  take_->setToolTip(tr("This head counts from now on, on this computer only"));
  column->addWidget(take_, 0, Qt::AlignLeft);
  said_ = addText(column);
  addHeading(column, tr("My own factors"));
  learned_ = addText(column);
  usePushed_ = new QPushButton(side);
  usePushed_->setMinimumHeight(34);
  usePushed_->setToolTip(tr("The backcombed pieces of this choice are then planned with the share that your own comb pushes back; one undo takes it back"));
  column->addWidget(usePushed_, 0, Qt::AlignLeft);
  takeAway_ = new QPushButton(tr("Take the last head away again"), side);
  takeAway_->setMinimumHeight(34);
  takeAway_->setToolTip(tr("The factors are then as before that head was taken over"));
  column->addWidget(takeAway_, 0, Qt::AlignLeft);
  addCaution(column, tr("How long product stays on the hair and how far hair lifts are never learned from heads: that is seen, strand by strand."));
  column->addStretch(1);
  connect(consent_, &QCheckBox::toggled, this, &OutcomeView::fillHead);
  connect(usePushed_, &QPushButton::clicked, this, &OutcomeView::usePushed);
  connect(take_, &QPushButton::clicked, this, &OutcomeView::takeOver);
  connect(takeAway_, &QPushButton::clicked, this, &OutcomeView::takeLastAway);
  return scroll;
}

void OutcomeView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  fill();
}

void OutcomeView::setFactors(const work::OwnFactors& factors) {
  factors_ = factors;
  QStringList lines;
  for (int i = 0; i < work::kFactors; ++i)
    if (const auto one = work::learned(factors_, static_cast<Factor>(i))) lines << factorText(static_cast<Factor>(i), *one);
  learned_->setText(lines.isEmpty() ? tr("None yet: the work list goes by the assumptions.") : lines.join(u'\n'));
  takeAway_->setEnabled(!factors_.heads.empty());
  showPushing();
  fillHead();
}

void OutcomeView::showPushing() {
  const auto pushed = work::learned(factors_, Factor::PushedShare);
  usePushed_->setVisible(pushed && hasBackcombed_);
  if (pushed) usePushed_->setText(tr("Plan the backcombed pieces with %1 % pushed back").arg(paint::figure(numberText(100 * pushed->value, 0))));
}

void OutcomeView::usePushed() {
  const auto pushed = work::learned(factors_, Factor::PushedShare);
  if (!pushed) return;
  const plan::Plan& plan = controller_.document();
  // Whole per cent, as the card shows it.
  const double share_frac = std::round(100 * pushed->value) / 100;
  const auto edit = plan::changePieces(plan, backcombedIn(plan), [&](plan::Piece& piece) { piece.backcomb.pushed_frac = share_frac; });
  switch (controller_.edit(plan::applied(plan, edit), tr("Plan with your own pushed share"))) {
    case document::DocumentController::Outcome::Made: return said_->setText(tr("The backcombed pieces are planned with it. Look at them on the heads; undo takes it back."));
    case document::DocumentController::Outcome::Unchanged: return said_->setText(tr("They are planned with it already."));
    case document::DocumentController::Outcome::Refused: return said_->setText(tr("Nothing was changed."));
  }
}

void OutcomeView::fill() {
  const plan::Plan& plan = controller_.document();
  const Result<work::AppointmentLog> log = work::readLog(plan.info().logJson);
  speed_.reset();
  hasBackcombed_ = !backcombedIn(plan).empty();
  fillTable();
  if (log) speed_ = work::speedFrom(plan, *log);
  counts_.request(plan);
  weighHair();
  pushed_->setEnabled(hasBackcombed_);
  showPushing();
  fillHead();
}

// Hair under product, of the pieces that were placed.
void OutcomeView::weighHair() {
  const plan::Plan& plan = controller_.document();
  hair_g_ = 0;
  uncounted_.clear();
  const Result<work::AppointmentLog> log = work::readLog(plan.info().logJson);
  if (!log) return;
  const auto state = work::stateAt(*log, 1e18);
  const auto isPlaced = [&](const plan::ItemId& id) {
    const auto now = state.find(id);
    return now != state.end() && now->second.placed_s;
  };
  const auto pieces = plan.pieces();
  if (std::none_of(pieces.begin(), pieces.end(), [&](const auto& one) { return work::isWorked(*one.second) && isPlaced(one.first); })) return;
  const Result<work::HairCount>* hair = counts_.answerFor(plan);
  if (!hair) {
    uncounted_ = tr("Product: the hair of the placed pieces is being counted.");
  } else if (!hair->ok()) {
    uncounted_ = tr("Product: the hair of the placed pieces could not be counted: %1").arg(words::inWords(hair->error()));
  } else {
    for (const work::PieceAmount& piece : hair->value().pieces)
      if (isPlaced(piece.piece)) hair_g_ += piece.covered_g();
  }
}

void OutcomeView::fillTable() {
  const plan::Plan& plan = controller_.document();
  const Result<work::AppointmentLog> log = work::readLog(plan.info().logJson);
  const auto outcomes = log ? work::plannedAgainstGot(plan, *log) : std::vector<work::PieceOutcome>();
  if (!log)
    state_->setText(tr("The appointment log in this plan cannot be read and is kept as it is. %1").arg(words::inWords(log.error())));
  else if (outcomes.empty())
    state_->setText(tr("No level was tapped after a rinse yet. With product on, hair looks lighter than it is: in the log tap Rinsed, look at clean, dry hair, type the level and tap Looked."));
  else
    state_->setText(tr("Levels as last tapped in the log, beside what each piece was to lift to."));
  const QSignalBlocker quiet(table_);
  table_->setVisible(!outcomes.empty());
  table_->setRowCount(static_cast<int>(outcomes.size()));
  for (int row = 0; row < table_->rowCount(); ++row) {
    const work::PieceOutcome& one = outcomes[static_cast<std::size_t>(row)];
    const plan::LiftsTo& lifts = one.planned;
    const bool taken = isTakenOver(lifts, one.got);
    const QString span = taken ? tr("taken over by a finish; undo shows the plan")
                               : (one.inSpan ? tr("inside %1 to %2") : tr("outside %1 to %2")).arg(level(lifts.low), level(lifts.high));
    const QString cells[] = {pieceName(plan, one.piece), taken ? QString() : level(lifts.level), level(one.got), span};
    for (int i = 0; i < 4; ++i) {
      auto* cell = new QTableWidgetItem(cells[i]);
      cell->setData(Qt::UserRole, QString::fromStdString(one.piece));
      table_->setItem(row, i, cell);
    }
  }
}

work::MeasuredHead OutcomeView::measured() const {
  work::MeasuredHead head;
  head.date = QDate::currentDate().toString(Qt::ISODate).toStdString();
  const auto put = [&](Factor which, double value) { head.got[static_cast<std::size_t>(which)] = value; };
  if (speed_) put(Factor::Speed, *speed_);
  if (mixed_->value() && left_->value())
    if (const auto used = work::usedProduct(*mixed_->value(), *left_->value(), hair_g_)) {
      put(Factor::ProductPerHair, used->perHair);
      put(Factor::Waste, used->waste_share);
    }
  if (pushed_->value() && hasBackcombed_) put(Factor::PushedShare, *pushed_->value());
  return head;
}

void OutcomeView::fillHead() {
  const work::MeasuredHead head = measured();
  QStringList lines;
  bool any = false;
  for (int i = 0; i < work::kFactors; ++i)
    if (const auto& got = head.got[static_cast<std::size_t>(i)]) {
      lines << factorText(static_cast<Factor>(i), {*got, 1});
      any = true;
    }
  if (!speed_) lines << tr("Speed: the log has fewer than three steps from one placed tap to the next by the same person.");
  if (!uncounted_.isEmpty())
    lines << uncounted_;
  else if (hair_g_ <= 0)
    lines << tr("Product: no piece was tapped as placed, so that no hair under product is counted.");
  else
    lines << tr("Hair under product, of the pieces that were placed: %1 g by the head's model.").arg(paint::figure(numberText(hair_g_, 1)));
  if (mixed_->value() && left_->value() && hair_g_ > 0)
    if (const auto used = work::usedProduct(*mixed_->value(), *left_->value(), hair_g_); !used)
      lines << tr("Product: %1 g; right would be %2.").arg(QString::fromStdString(used.error().args[0]), QString::fromStdString(used.error().args[1]));
  head_->setText(lines.join(u'\n'));
  const bool isWaiting = !uncounted_.isEmpty() && counts_.isCounting();  // the head would be taken over without its product
  take_->setEnabled(any && consent_->isChecked() && !isWaiting);
}

void OutcomeView::takeOver() {
  if (!consent_->isChecked()) return;
  const work::MeasuredHead head = measured();
  if (!factors_.heads.empty() && factors_.heads.back() == head) return said_->setText(tr("This head stands in your factors already."));
  const Result<work::OwnFactors> next = work::withHead(factors_, head);
  if (!next)
    return said_->setText(tr("Not taken over: %1 was found; right would be %2. Look at what was typed and tapped.")
                              .arg(QString::fromStdString(next.error().args[0]), QString::fromStdString(next.error().args[1])));
  consent_->setChecked(false);  // it is asked for each head
  setFactors(*next);
  said_->setText(tr("Taken over. The work list can go by your own factors now."));
  Q_EMIT factorsChanged(factors_);
}

void OutcomeView::sayNotKept(const QString& why) { said_->setText(tr("Not kept. %1").arg(why)); }

void OutcomeView::takeLastAway() {
  if (factors_.heads.empty()) return;
  const QString date = QString::fromStdString(factors_.heads.back().date);
  setFactors(work::withoutLastHead(factors_));
  said_->setText(tr("The head of %1 counts no more.").arg(date));
  Q_EMIT factorsChanged(factors_);
}

}  // namespace combdraft::appointment

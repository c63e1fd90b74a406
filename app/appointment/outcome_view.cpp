#include "app/appointment/outcome_view.h"

#include <QDate>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QScrollArea>
#include <QShowEvent>
#include <QVBoxLayout>

#include "app/appointment/finish_field.h"
#include "app/paint/work_words.h"
#include "app/paint/figure.h"
#include "app/words/engine_words.h"
#include "engine/base/number_text.h"
#include "engine/work/amounts.h"
#include "engine/work/log_text.h"
#include "engine/work/speeds.h"

namespace combdraft::appointment {
using namespace paint;  // its words
namespace {

using work::Factor;

constexpr double kMostMixed_g = 5000;
constexpr int kLocks = 20'000;

QString level(double value) { return paint::figure(numberText(value, 1)); }

QLabel* addLabel(QVBoxLayout* column, QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setWordWrap(true);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  column->addWidget(label);
  return label;
}

void addHeading(QVBoxLayout* column, const QString& text, QWidget* parent) {
  auto* heading = new QLabel(text, parent);
  QFont font = heading->font();
  font.setWeight(QFont::DemiBold);
  heading->setFont(font);
  heading->setWordWrap(true);
  column->addWidget(heading);
}

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

/// Of backcombed pieces; nothing when there are none.
std::optional<double> plannedPushed(const plan::Plan& plan) {
  double sum = 0;
  int count = 0;
  for (const auto& [id, piece] : plan.pieces(plan.info().activeChoice))
    if (work::isWorked(*piece) && work::isBackcombed(*piece)) sum += piece->backcomb.pushed_frac, ++count;
  if (count == 0 || sum <= 0) return std::nullopt;
  return sum / count;
}

}  // namespace

OutcomeView::OutcomeView(document::DocumentController& controller, QWidget* parent) : QWidget(parent), controller_(controller) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(18);
  auto* left = new QVBoxLayout;
  row->addLayout(left, 3);
  state_ = addLabel(left, this);
  table_ = new QTableWidget(0, 4, this);
  table_->setAccessibleName(tr("Planned and got, piece by piece"));
  table_->setHorizontalHeaderLabels({tr("piece"), tr("planned level"), tr("level that came"), tr("typed span")});
  table_->verticalHeader()->hide();
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setTabKeyNavigation(false);
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
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
}

QWidget* OutcomeView::buildSide() {
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setFocusPolicy(Qt::NoFocus);
  auto* side = new QWidget(scroll);
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(0, 0, 6, 0);
  column->setSpacing(6);
  addHeading(column, tr("What was used on this head"), side);
  mixed_ = addTyped(column, typed(tr("Mixed in all"), tr("g"), kMostMixed_g, tr("All bowls together, weighed")), side);
  left_ = addTyped(column, typed(tr("Left in the bowls"), tr("g"), kMostMixed_g, tr("What was not put on, weighed")), side);
  controls::NumberFieldSpec share = typed(tr("Pushed back in fact"), tr("%"), 1, tr("How much of the taken hair the comb pushed back"));
  share.shownPerValue = 100;
  share.decimals = 0;
  pushed_ = addTyped(column, share, side);
  for (controls::NumberField* field : {mixed_, left_, pushed_}) connect(field, &controls::NumberField::edited, this, &OutcomeView::fillHead);
  addHeading(column, tr("What this head gives"), side);
  head_ = addLabel(column, side);
  consent_ = new QCheckBox(tr("Take these over into my own factors"), side);
  consent_->setMinimumHeight(30);
  consent_->setToolTip(tr("Nothing is taken over without this tick; it is asked for each head"));
  column->addWidget(consent_);
  take_ = new QPushButton(tr("Take them over"), side);
  take_->setMinimumHeight(34);
  take_->setToolTip(tr("This head counts from now on, on this computer only"));
  column->addWidget(take_, 0, Qt::AlignLeft);
  said_ = addLabel(column, side);
  addHeading(column, tr("My own factors"), side);
  learned_ = addLabel(column, side);
  takeAway_ = new QPushButton(tr("Take the last head away again"), side);
  takeAway_->setMinimumHeight(34);
  takeAway_->setToolTip(tr("The factors are then as before that head was taken over"));
  column->addWidget(takeAway_, 0, Qt::AlignLeft);
  auto* caution = new QLabel(tr("How long product stays on the hair and how far hair lifts are never learned from heads: that is seen, strand by strand."), side);
  caution->setWordWrap(true);
  caution->setProperty("caution", true);
  column->addWidget(caution);
  column->addStretch(1);
  connect(consent_, &QCheckBox::toggled, this, &OutcomeView::fillHead);
  connect(take_, &QPushButton::clicked, this, &OutcomeView::takeOver);
  connect(takeAway_, &QPushButton::clicked, this, &OutcomeView::takeLastAway);
  scroll->setWidget(side);
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
  fillHead();
}

void OutcomeView::fill() {
  const plan::Plan& plan = controller_.document();
  const Result<work::AppointmentLog> log = work::readLog(plan.info().logJson);
  speed_.reset();
  hair_g_ = 0;
  planned_pushed_frac_ = plannedPushed(plan);
  fillTable();
  if (log) {
    speed_ = work::speedFrom(plan, *log);
    const auto state = work::stateAt(*log, 1e18);
    if (const auto amounts = work::amountsOf(plan, {{}, {}, kLocks}))
      for (const work::PieceAmount& piece : amounts->pieces)
        if (const auto now = state.find(piece.piece); now != state.end() && now->second.placed_s) hair_g_ += piece.covered_g();
  }
  pushed_->setEnabled(planned_pushed_frac_.has_value());
  fillHead();
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
    const plan::LiftsTo& lifts = plan.find<plan::Piece>(one.piece)->root.lifts;
    const bool taken = isTakenOver(lifts, one.got);
    const QString span = taken ? tr("taken over by a finish; undo shows the plan")
                               : (one.inSpan ? tr("inside %1 to %2") : tr("outside %1 to %2")).arg(level(lifts.low), level(lifts.high));
    const QString cells[] = {pieceName(plan, one.piece), taken ? QString() : level(one.planned), level(one.got), span};
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
  if (pushed_->value() && planned_pushed_frac_) put(Factor::PushedShare, *pushed_->value() / *planned_pushed_frac_);
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
  if (hair_g_ <= 0)
    lines << tr("Product: no piece was tapped as placed, so that no hair under product is counted.");
  else
    lines << tr("Hair under product, of the pieces that were placed: %1 g by the head's model.").arg(paint::figure(numberText(hair_g_, 1)));
  if (mixed_->value() && left_->value() && hair_g_ > 0)
    if (const auto used = work::usedProduct(*mixed_->value(), *left_->value(), hair_g_); !used)
      lines << tr("Product: %1 g; right would be %2.").arg(QString::fromStdString(used.error().args[0]), QString::fromStdString(used.error().args[1]));
  head_->setText(lines.join(u'\n'));
  take_->setEnabled(any && consent_->isChecked());
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

void OutcomeView::takeLastAway() {
  if (factors_.heads.empty()) return;
  const QString date = QString::fromStdString(factors_.heads.back().date);
  setFactors(work::withoutLastHead(factors_));
  said_->setText(tr("The head of %1 counts no more.").arg(date));
  Q_EMIT factorsChanged(factors_);
}

}  // namespace combdraft::appointment

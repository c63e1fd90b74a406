#include "app/appointment/next_visit_view.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QShowEvent>
#include <QVBoxLayout>

#include "app/appointment/finish_field.h"
#include "app/appointment/side_parts.h"
#include "app/controls/units.h"
#include "app/paint/figure.h"
#include "app/paint/hair_words.h"
#include "app/paint/work_words.h"
#include "app/store/plan_store.h"
#include "app/words/engine_words.h"
#include "engine/base/assumptions.h"
#include "engine/base/number_text.h"
#include "engine/plan/field_info.h"
#include "engine/work/amounts.h"
#include "engine/work/next_visit.h"

namespace combdraft::appointment {
using namespace paint;  // its words
namespace {

constexpr double kLongest_weeks = 104, kLongest_mm = 1000;
constexpr int kVisits = 3, kWordLines = 5;

QString percent(double frac) { return NextVisitView::tr("%1 %").arg(paint::figure(numberText(100 * frac, 0))); }

}  // namespace

Result<plan::Plan> nextVisitPlan(const plan::Plan& today, double weeks, const QString& title, OldLight oldLight) {
  const Result<plan::ChangeSet> grown = work::grownOut(today, {}, weeks);
  if (!grown) return grown.error();
  plan::Plan next = plan::applied(today, *grown);
  plan::PlanInfo info = next.info();
  info.title = title.toStdString();
  info.logJson.clear();
  info.agreedJson.clear();
  next.put(plan::kPlanId, info);
  plan::Hair hair = next.hair();
  hair.condition = {};
  hair.porosity = {};
  hair.conditionDate.clear();
  next.put(plan::kHairId, hair);
  if (oldLight == OldLight::AsTyped) return next;
  std::vector<plan::ItemId> placed;  // what was not placed has no old light of its own
  for (const work::RepeatPiece& one : work::piecesToRepeat(today, {}, weeks, 0))
    if (one.wasPlaced) placed.push_back(one.piece);
  return plan::applied(next, work::stoppedAtOldLight(today, next, placed, weeks));
}

NextVisitView::NextVisitView(document::DocumentController& controller, live::HairCountService& counts, QWidget* parent)
    : QWidget(parent), controller_(controller), counts_(counts) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(18);
  auto* left = new QVBoxLayout;
  left->setSpacing(6);
  row->addLayout(left, 3);
  buildPieces(left);
  const auto [scroll, column] = newScrolledColumn(this);
  QWidget* const side = column->parentWidget();
  addHeading(column, tr("Hair that is still left out, over three visits like this one"));
  shares_ = addSoftText(column);
  leftOut_ = newTable(tr("Hair that is still left out"), {tr("zone"), tr("this visit"), tr("three,\nsame pieces"), tr("two,\nanywhere"), tr("three,\nanywhere")}, side);
  column->addWidget(leftOut_);
  buildWords(column);
  column->addStretch(1);
  row->addWidget(scroll, 3);
  connect(&controller_, &document::DocumentController::changed, this, [this](const document::DocumentChange& change) {
    if (change.kind == document::DocumentChange::Kind::Replaced)
      for (controls::NumberField* field : {weeks_, showFrom_}) {
        field->abandonTyping();
        field->setValue(std::nullopt);
      }
    if (isVisible() && change.kind != document::DocumentChange::Kind::Tentative) fill();
  });
  connect(&counts_, &live::HairCountService::answered, this, [this] {
    if (isVisible()) fillLeftOut();
  });
  fillWords();
}

void NextVisitView::buildPieces(QVBoxLayout* column) {
  addHeading(column, tr("What shows by then"));
  auto* fields = new QHBoxLayout;
  fields->setSpacing(18);
  column->addLayout(fields);
  controls::NumberFieldSpec spec;
  spec.label = tr("Weeks until then");
  spec.unit = tr("weeks");
  spec.low = 0;
  spec.high = kLongest_weeks;
  spec.emptyText = tr("not typed");
  spec.tip = tr("As you and the client agreed; typed by you");
  weeks_ = addTyped(fields, spec, this);
  spec.label = tr("Show from");
  spec.unit = QStringLiteral("mm");
  spec.high = kLongest_mm;
  spec.tip = tr("A piece whose light begins farther off the scalp than this is repeated");
  showFrom_ = addTyped(fields, spec, this);
  for (controls::NumberField* field : {weeks_, showFrom_}) connect(field, &controls::NumberField::edited, this, &NextVisitView::fillPieces);
  state_ = addText(column);
  pieces_ = newTable(tr("Pieces to repeat and to leave"), {tr("piece"), tr("light begins at, by then"), tr("next time")}, this);
  column->addWidget(pieces_, 1);
  stopThere_ = new QCheckBox(tr("Stop pieces where their old light begins"), this);
  stopThere_->setChecked(true);
  stopThere_->setMinimumHeight(30);
  stopThere_->setToolTip(tr("In the next plan a repeated piece ends at its grown-out start, in the place of a stop that it has, so that what is light already gets no product"));
  column->addWidget(stopThere_);
  auto* row = new QHBoxLayout;
  column->addLayout(row);
  begin_ = new QPushButton(tr("Begin the next visit's plan"), this);
  begin_->setMinimumHeight(34);
  begin_->setToolTip(tr("A new plan that is not saved yet: hair grown out with today's light in it; today's plan stays as it is"));
  row->addWidget(begin_);
  row->addStretch(1);
  connect(begin_, &QPushButton::clicked, this, &NextVisitView::beginNext);
  trouble_ = addCaution(column, {});
  trouble_->hide();
  addCaution(column, tr("Test and look again before each visit: hair that was lightened is other hair than before. Product that runs over it can break it: "
                     "find the old line on each strand, it is seldom where growth alone would put it, and go by the maker's directions for hair that is light already."));
  column->addStretch(0);
}

void NextVisitView::buildWords(QVBoxLayout* column) {
  column->addSpacing(8);
  addHeading(column, tr("Two weeks later"));
  which_ = addSoftText(column);
  words_ = new controls::TextBox(tr("The client's words, what to change"), tr("nothing written yet"), kWordLines,
                                 static_cast<qsizetype>(plan::limits::kTextBytes), this);
  column->addWidget(words_);
  openClient_ = new QPushButton(tr("Open the consultation card"), this);
  openClient_->setMinimumHeight(34);
  openClient_->setToolTip(tr("Where a client is begun and a visit with this plan is added"));
  column->addWidget(openClient_, 0, Qt::AlignLeft);
  connect(openClient_, &QPushButton::clicked, this, &NextVisitView::consultationWanted);
  connect(words_, &controls::TextBox::edited, this, [this](const QString& text, bool) {
    const auto at = visitNow();
    if (!keeper_ || !at) return;
    keeper_->edit([&](store::ClientFile& file) { file.visits[*at].words = text.toStdString(); });
  });
}

void NextVisitView::setKeeper(std::shared_ptr<store::ClientKeeper> keeper) {
  if (keeper_) disconnect(keeper_.get(), nullptr, this, nullptr);
  keeper_ = std::move(keeper);
  if (keeper_) connect(keeper_.get(), &store::ClientKeeper::changed, this, &NextVisitView::fillWords);
  fillWords();
}

void NextVisitView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  fill();
}

void NextVisitView::fill() {
  counts_.request(controller_.document());
  fillPieces();
  fillLeftOut();
  fillWords();
}

void NextVisitView::fillPieces() {
  const plan::Plan& plan = controller_.document();
  trouble_->hide();
  const bool typed = weeks_->value() && showFrom_->value();
  const auto pieces = work::piecesToRepeat(plan, plan.info().activeChoice, weeks_->value().value_or(0), showFrom_->value().value_or(0));
  begin_->setEnabled(weeks_->value() && !pieces.empty());
  pieces_->setVisible(typed && !pieces.empty());
  const QString growth = paint::figure(numberText(Assumptions(plan.info().assumptions)["growth.mm_per_week"], 2));
  if (pieces.empty()) return state_->setText(tr("No piece is lightened in this choice, so that nothing grows out."));
  if (!typed) return state_->setText(tr("Type the weeks and from where on a grown-out start is to be repeated. Growth goes by the assumptions: %1 mm a week.").arg(growth));
  int repeat = 0, notPlaced = 0;
  pieces_->setRowCount(static_cast<int>(pieces.size()));
  for (int row = 0; row < pieces_->rowCount(); ++row) {
    const work::RepeatPiece& one = pieces[static_cast<std::size_t>(row)];
    repeat += one.repeat && one.wasPlaced;
    notPlaced += !one.wasPlaced;
    setRow(pieces_, row, {pieceName(plan, one.piece), one.wasPlaced ? controls::lengthText(one.start_mm, controls::Units::current().length()) : QStringLiteral("-"), !one.wasPlaced ? tr("not placed this time") : one.repeat ? tr("repeat") : tr("leave")});
  }
  QString text = tr("%1 to repeat, %2 to leave. Growth goes by the assumptions: %3 mm a week.").arg(repeat).arg(static_cast<int>(pieces.size()) - repeat - notPlaced).arg(growth);
  if (notPlaced > 0) text += u' ' + tr("%1 pieces were not tapped as placed: they made nothing light and stay in the next plan.").arg(notPlaced);
  state_->setText(text);
}

void NextVisitView::fillLeftOut() {
  const Result<work::HairCount>* hair = counts_.answerFor(controller_.document());
  leftOut_->setVisible(hair && hair->ok());
  if (!head::fitHead(controller_.document().head().measures))
    return shares_->setText(tr("The head's measures do not fit together; look at the head card."));
  if (!hair) return shares_->setText(tr("The hair of the pieces is being counted; the shares of each zone follow."));
  if (!hair->ok()) return shares_->setText(tr("The hair could not be counted: %1").arg(words::inWords(hair->error())));
  shares_->setText(tr("Counted are this placement's pieces; hair that was light before is not in it. If exactly the same hair were taken again, the rest would stay left out. No hand finds every hair again, so part of it goes at each visit; pieces that fall anywhere use it up fastest, and contrast goes with it."));
  leftOut_->setRowCount(static_cast<int>(plan::kHairZones));
  for (std::size_t i = 0; i < plan::kHairZones; ++i) {
    const double light = hair->value().zones[i].share_frac();
    setRow(leftOut_, static_cast<int>(i),
           {paint::zoneName(static_cast<plan::HairZone>(i)), percent(work::leftOutAfter(light, 1).samePieces_frac),
            percent(work::leftOutAfter(light, kVisits).samePieces_frac), percent(work::leftOutAfter(light, kVisits - 1).anywhere_frac),
            percent(work::leftOutAfter(light, kVisits).anywhere_frac)});
  }
  leftOut_->setFixedHeight(leftOut_->horizontalHeader()->sizeHint().height() + leftOut_->rowCount() * leftOut_->verticalHeader()->defaultSectionSize() + 6);
}

// The visit that was written down with this plan: by number, and by title where several have it.
std::optional<std::size_t> NextVisitView::visitNow() const {
  if (!keeper_) return std::nullopt;
  const std::string title = store::shownTitle(controller_.document(), controller_.file().path).toStdString();
  const auto& visits = keeper_->file().visits;
  std::optional<std::size_t> found;
  for (std::size_t i = 0; i < visits.size(); ++i) {
    if (visits[i].number != controller_.document().info().number) continue;
    if (!found || visits[i].title == title || visits[*found].title != title) found = i;
  }
  return found;
}

void NextVisitView::fillWords() {
  const auto at = visitNow();
  words_->setVisible(at.has_value());
  openClient_->setVisible(!at);
  if (!at) {
    words_->setText({});
    return which_->setText(tr("What the client says is kept with the client, not in the plan. No visit with this plan is written down yet: "
                              "begin on the consultation card, under Visits."));
  }
  const store::Visit& visit = keeper_->file().visits[*at];
  which_->setText(keeper_->mayEdit() ? tr("Kept with the client, as the words of the visit on %1.").arg(visit.date.empty() ? tr("no day") : QString::fromStdString(visit.date))
                                     : keeper_->trouble());
  words_->setEnabled(keeper_->mayEdit());
  words_->setText(QString::fromStdString(visit.words));
}

void NextVisitView::beginNext() {
  const plan::Plan& plan = controller_.document();
  if (!weeks_->value()) return;
  QString base = store::shownTitle(plan, controller_.file().path);
  while (tr("%1, next visit").arg(base).toUtf8().size() > static_cast<qsizetype>(plan::limits::kLineBytes)) base.chop(1);
  const QString title = tr("%1, next visit").arg(base);
  const Result<plan::Plan> next = nextVisitPlan(plan, *weeks_->value(), title, stopThere_->isChecked() ? OldLight::StopThere : OldLight::AsTyped);
  trouble_->setVisible(!next);
  if (!next) return trouble_->setText(words::inWords(next.error()));
  std::vector<std::string> leave;
  if (showFrom_->value())
    for (const work::RepeatPiece& one : work::piecesToRepeat(plan, plan.info().activeChoice, *weeks_->value(), *showFrom_->value()))
      if (!one.repeat && one.wasPlaced) leave.push_back(one.piece);
  Q_EMIT nextPlanWanted(*next, leave);
}

}  // namespace combdraft::appointment

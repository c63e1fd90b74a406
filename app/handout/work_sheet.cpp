#include "app/handout/work_sheet.h"

#include <QCoreApplication>
#include <map>

#include "app/paint/amount_words.h"
#include "app/paint/check_words.h"
#include "app/paint/figure.h"
#include "app/paint/work_words.h"
#include "app/words/engine_words.h"
#include "engine/base/number_text.h"

namespace combdraft::handout {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString whole(double value) { return paint::figure(numberText(value, 0)); }

/// With the user's own factors in its assumptions.
plan::Plan planFor(const Request& request) {
  plan::Plan plan = request.plan;
  plan::PlanInfo info = plan.info();
  info.assumptions = work::withFactors(request.work.factors, info.assumptions);
  plan.put(plan::kPlanId, info);
  return plan;
}

void addHead(Column& column, const Request& request) {
  const QString title = QString::fromStdString(request.plan.info().title);
  column.text(Words::tr("Work list"), type::kSmall, Weight::Bold, Column::Tone::Soft);
  column.text(title.isEmpty() ? Words::tr("Untitled plan") : title, type::kTitle - 1.4, Weight::Bold);
  Column date(column.width_mm() * 0.3), by(column.width_mm() * 0.4);
  date.writingLine(Words::tr("Date"));
  by.writingLine(Words::tr("By"));
  column.row({{0, &date}, {column.width_mm() * 0.35, &by}});
  column.gap(3);
}

void addBowls(Column& column, const plan::Plan& plan, const work::WorkList& list) {
  std::vector<std::vector<Column::Cell>> rows;
  for (std::size_t i = 0; i < list.timeline.bowls.size(); ++i) {
    const work::Bowl& bowl = list.timeline.bowls[i];
    QStringList pieces;
    for (const plan::ItemId& id : bowl.pieces) pieces << paint::pieceName(plan, id);
    rows.push_back({{paint::bowlName(plan, bowl), Weight::Bold}, {paint::minutes(bowl.mixFrom_min), Weight::Plain},
                    {paint::gramsText(list.bowls[i]), Weight::Plain}, {pieces.join(QStringLiteral(", ")), Weight::Plain}});
  }
  column.heading(Words::tr("Bowl by bowl"));
  column.text(paint::mixedText(list.amounts) + u' ' + paint::thinWeavesText(), type::kSmall, Weight::Plain, Column::Tone::Soft);
  column.stay();
  column.table({Words::tr("Bowl"), Words::tr("At, min"), Words::tr("Grams"), Words::tr("Pieces")}, {0.2, 0.1, 0.32, 0.38}, rows);
}

void addSteps(Column& column, const plan::Plan& plan, const work::WorkList& list) {
  std::vector<std::vector<Column::Cell>> rows;
  paint::PlaceBook places;
  places.take(plan, list.order);
  const std::vector<work::StepLine> lines = work::linesOf(list.timeline);
  for (const work::StepLine& line : lines) {
    const work::Step& step = list.timeline.steps[line.front()];
    const auto* piece = plan.find<plan::Piece>(step.piece);
    const QString foil = piece && step.kind == work::StepKind::Place ? QString::fromStdString(piece->foil) : QString();
    QString what = paint::stepText(plan, list.timeline, line, places);
    if (step.kind == work::StepKind::Mix) what = Words::tr("%1, %2").arg(what, paint::gramsText(list.bowls[*step.bowl]));
    const Weight weight = step.kind == work::StepKind::Mix ? Weight::Bold : Weight::Plain;
    rows.push_back({{step.kind == work::StepKind::CombOut ? QString() : paint::minutes(step.from_min), Weight::Plain},
                    {QString::number(step.pair + 1), Weight::Plain}, {what, weight}, {foil, Weight::Plain}, {QString(), Weight::Plain}});
  }
  column.heading(Words::tr("Step by step"));
  column.table({Words::tr("From, min"), Words::tr("Hands"), Words::tr("What"), Words::tr("Foil"), Words::tr("Level seen")}, {0.11, 0.08, 0.5, 0.13, 0.18}, rows);
}

void addFoils(Column& column, const work::Amounts& amounts) {
  column.heading(Words::tr("Foils and hair"));
  std::map<double, int> widths;
  int unsized = 0;
  for (const work::FoilNeed& foil : amounts.foils) foil.width_mm ? ++widths[*foil.width_mm] : ++unsized;
  for (const auto& [width, count] : widths) column.bullet(Words::tr("%1 foils of %2 mm").arg(count).arg(width));
  if (unsized > 0)
    column.bullet(widths.empty() ? Words::tr("%1 foils").arg(unsized) : Words::tr("%1 foils that no width of yours is wide enough for").arg(unsized));
  if (!amounts.films.empty()) column.bullet(Words::tr("%1 films").arg(amounts.films.size()));
  if (amounts.openAir > 0) column.bullet(Words::tr("%1 pieces in open air").arg(amounts.openAir));
  column.bullet(Words::tr("%1 g of hair taken").arg(whole(amounts.hair_g)));
}

}  // namespace

void addWorkSheet(Column& column, const Request& request) {
  addHead(column, request);
  const plan::Plan plan = planFor(request);
  work::WorkSettings settings = request.work.settings;
  settings.choice = request.choice;
  settings.perHair_heads = work::weighedHeads(request.work.factors, request.plan);
  const Result<work::WorkList> list = work::workListOf(plan, settings);
  if (!list) return column.text(Words::tr("The head's measures do not fit together, so that there is no work list: %1").arg(words::inWords(list.error())));
  if (list->order.empty()) return column.text(Words::tr("No piece is lightened or deepened in this choice yet."));
  const work::Timeline& line = list->timeline;
  column.text(Words::tr("%1 pieces; the last is in after %2 min, work in all %3 min and %4 min in reserve, by the assumptions or, where ticked, your own factors. "
                  "How long the product stays on the hair is not in it: that is seen, not planned.")
                  .arg(list->order.size())
                  .arg(paint::minutes(line.lastIn_min), paint::minutes(line.total_min), paint::minutes(line.reserve_min)));
  column.text(paint::firstCome(), type::kBody, Weight::Bold);
  column.text(paint::glovesAndAir() + u' ' + paint::estimatesOnly(), type::kSmall, Weight::Plain, Column::Tone::Soft);
  if (const QStringList checks = paint::checksBeforeWork(plan, request.choice); !checks.isEmpty()) {
    column.heading(Words::tr("Check before work"));
    for (const QString& check : checks) column.bullet(check);
  }
  addBowls(column, plan, *list);
  addSteps(column, plan, *list);
  addFoils(column, list->amounts);
  column.heading(Words::tr("Order, bowls and times"));
  if (list->notes.empty()) column.text(paint::nothingFound());
  for (const work::WorkNote& note : list->notes) column.bullet(paint::noteText(plan, note));
}

}  // namespace combdraft::handout

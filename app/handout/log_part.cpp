#include "app/handout/log_part.h"

#include <QCoreApplication>
#include <QDateTime>
#include <algorithm>
#include <optional>

#include "app/paint/figure.h"
#include "app/paint/work_words.h"
#include "app/words/date_words.h"
#include "app/words/engine_words.h"
#include "engine/base/number_text.h"
#include "engine/work/log_text.h"
#include "engine/work/outcome.h"

namespace combdraft::handout {
namespace {

using Cells = std::vector<Column::Cell>;
constexpr std::size_t kMostProblems = 5;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString level(double value) { return paint::figure(numberText(value)); }
Column::Cell plain(const QString& text) { return {text, Weight::Plain}; }
QDateTime clockOf(const work::LogEvent& event) { return QDateTime::fromMSecsSinceEpoch(event.utc_ms).toLocalTime(); }

// All pieces by name, however many one tap was for: it is to be done again.
QString whatOf(const plan::Plan& plan, const work::LogEvent& event) {
  if (event.tap == work::Tap::BowlMixed) return Words::tr("%1: %2").arg(paint::tapName(event.tap), paint::formulaName(plan, event.formula));
  QStringList names;
  for (const plan::ItemId& id : event.pieces) names << paint::pieceName(plan, id);
  return Words::tr("%1: %2").arg(paint::tapName(event.tap), names.join(QStringLiteral(", ")));
}

void addTaps(Column& column, const plan::Plan& plan, const work::AppointmentLog& visit) {
  std::vector<Cells> rows;
  std::optional<double> first_s;
  double latest_s = 0;
  for (const work::LogEvent& event : visit.events) {
    if (event.takenBack) continue;
    latest_s = std::max(latest_s, event.at_s);  // a file changed by hand may fall
    if (!first_s) first_s = latest_s;
    rows.push_back({plain(clockOf(event).toString(QStringLiteral("HH:mm"))), plain(paint::minutes((latest_s - *first_s) / 60)),
                    plain(whatOf(plan, event)), plain(event.level ? level(*event.level) : QString()),
                    plain(QString::fromStdString(event.pigment)), plain(QString::fromStdString(event.who))});
  }
  if (!rows.empty())
    column.table({Words::tr("Time"), Words::tr("Min"), Words::tr("What"), Words::tr("Level seen"), Words::tr("Pigment left"), Words::tr("By")},
                 {0.08, 0.08, 0.42, 0.11, 0.18, 0.13}, rows);
  const auto back = std::count_if(visit.events.begin(), visit.events.end(), [](const work::LogEvent& event) { return event.takenBack; });
  if (back == 1) column.text(Words::tr("1 tap was taken back and is not listed."), type::kSmall, Weight::Plain, Column::Tone::Soft);
  if (back > 1) column.text(Words::tr("%1 taps were taken back and are not listed.").arg(back), type::kSmall, Weight::Plain, Column::Tone::Soft);
}

void addProblems(Column& column, const plan::Plan& plan, const work::AppointmentLog& visit) {
  const std::vector<work::LogProblem> problems = work::problemsOf(plan, visit);
  for (std::size_t i = 0; i < std::min(problems.size(), kMostProblems); ++i) column.bullet(paint::problemText(plan, problems[i]));
  if (problems.size() > kMostProblems) column.bullet(Words::tr("and %1 more").arg(problems.size() - kMostProblems));
}

void addOutcomes(Column& column, const plan::Plan& plan, const work::AppointmentLog& visit) {
  std::vector<Cells> rows;
  const std::vector<work::PieceOutcome> outcomes = work::plannedAgainstGot(plan, visit);
  for (const work::PieceOutcome& one : outcomes) {
    const QString span = (one.inSpan ? Words::tr("inside %1 to %2") : Words::tr("outside %1 to %2")).arg(level(one.planned.low), level(one.planned.high));
    rows.push_back({{paint::pieceName(plan, one.piece), Weight::Bold}, plain(level(one.planned.level)), plain(level(one.got)), plain(span)});
  }
  if (rows.empty()) return;
  column.subheading(Words::tr("Planned and got"));
  column.text(Words::tr("Levels as last seen after the rinse, beside what each piece was to lift to."), type::kSmall, Weight::Plain, Column::Tone::Soft);
  column.stay();
  column.table({Words::tr("Piece"), Words::tr("Planned level"), Words::tr("Level that came"), Words::tr("Typed span")}, {0.4, 0.18, 0.2, 0.22}, rows);
}

}  // namespace

void addLog(Column& column, const plan::Plan& plan) {
  const Result<work::AppointmentLog> read = work::readLog(plan.info().logJson);
  if (!read) {
    Error error = read.error();
    error.where = "/log" + error.where;
    column.heading(Words::tr("The appointment, tap by tap"));
    column.text(Words::tr("The appointment log stands in the plan and cannot be read: %1").arg(words::inWords(error)));
    return;
  }
  std::vector<work::AppointmentLog> visits = work::visitsOf(*read);
  std::erase_if(visits, [](const work::AppointmentLog& visit) { return visit.events.empty(); });
  if (visits.empty()) return;
  column.heading(Words::tr("The appointment, tap by tap"));
  column.text(Words::tr("As it was tapped, by this computer's clock; minutes count from the first tap of the visit. How long product was on the hair "
                        "is what happened on this hair, not how long it may stay."),
              type::kSmall, Weight::Plain, Column::Tone::Soft);
  column.stay();
  for (const work::AppointmentLog& visit : visits) {
    column.subheading(Words::tr("Visit of %1").arg(words::dateText(clockOf(visit.events.front()).date())));
    addTaps(column, plan, visit);
    addProblems(column, plan, visit);
    addOutcomes(column, plan, visit);
  }
}

}  // namespace combdraft::handout

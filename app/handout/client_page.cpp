#include "app/handout/client_page.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "app/handout/agreed_part.h"
#include "app/handout/figures.h"
#include "app/handout/parts.h"
#include "app/paint/check_words.h"
#include "app/paint/dark_words.h"
#include "app/paint/figure.h"
#include "app/paint/level_span.h"
#include "engine/base/number_text.h"

namespace combdraft::handout {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString number(double value) { return paint::figure(numberText(std::round(value * 10) / 10)); }

// The same span as the client's screen: every piece at the low, the planned and the high
// end of its typed lift; told in halves.
QString lightWords(const Looks& looks) {
  const look::Reading& planned = looks.down->readings->whole;
  const QString picture = Words::tr("In the picture about level %1.").arg(number(std::round(2 * planned.level) / 2));
  if (!looks.less || !looks.more) return picture + u' ' + Words::tr("A range was not worked out; a test strand says more.");
  const auto [low, high] = std::minmax({planned.level, looks.less->whole.level, looks.more->whole.level});
  const paint::LevelEnds ends = paint::outwards(low, high);
  return picture + u' ' +
         Words::tr("If it lightens less or more than planned: %1 to %2 in the drawing. Your hair can come out beyond that; a test strand says more.")
             .arg(number(ends.low), number(ends.high));
}

QString verdictWords(const look::Contrast& contrast) {
  switch (contrast.verdict) {
    case look::ContrastVerdict::TwoClearLevels: return Words::tr("Light and dark hair stay clearly apart.");
    case look::ContrastVerdict::Soft: return Words::tr("Light and dark hair can be told apart and run softly into each other.");
    case look::ContrastVerdict::OneTone: return Words::tr("Light and dark hair blend into one tone.");
    case look::ContrastVerdict::TooLittleHair: return Words::tr("Too little hair is seen to say.");
  }
  return {};
}

// The window judges at the distance set there: the same word only from as far away.
QString differenceWords(const Looks& looks) {
  using look::ContrastVerdict;
  const look::Contrast& contrast = looks.down->readings->contrast;
  if (contrast.verdict == ContrastVerdict::TooLittleHair) return verdictWords(contrast);
  const QString metres = paint::figure(numberText(std::round(contrast.distance_m * 100) / 100));
  QString words = verdictWords(contrast) + u' ' + Words::tr("That is as planned, and seen from %1 m away.").arg(metres);
  const auto blends = [](const auto& end) { return end && end->contrast.verdict == ContrastVerdict::OneTone; };
  if (contrast.verdict != ContrastVerdict::OneTone && (blends(looks.less) || blends(looks.more)))
    words += u' ' + Words::tr("If it lightens less or more, they may blend into one tone.");
  return words;
}

QString weeksWords(const std::vector<look::Regrowth>& regrowth) {
  for (const look::Regrowth& one : regrowth) {
    if (one.way != hair::WornWay::Down) continue;
    const auto weeks = [](double week) { return paint::figure(numberText(std::round(week))); };
    if (!one.week && !one.earliest)
      return Words::tr("No week is given. This is not a sign that new growth will not show; ask at the next visit.");
    if (!one.week) return Words::tr("Worn down, new growth may begin to show from %1 weeks on.").arg(weeks(*one.earliest));
    const QString latest = one.latest ? weeks(*one.latest) : Words::tr("more than %1").arg(weeks(look::Regrowth::kWeeks));
    return Words::tr("Worn down, new growth begins to show after about %1 weeks; that may be from %2 to %3.")
        .arg(weeks(*one.week), weeks(one.earliest.value_or(*one.week)), latest);
  }
  return Words::tr("Not worked out.");
}

// Whose choice it was, when, and who planned it. The date is written by hand: a page that is
// printed again is the same page.
void addOrigin(Column& column, const Request& request) {
  const auto* choice = request.plan.find<plan::Choice>(request.choice.empty() ? request.plan.info().activeChoice : request.choice);
  const double third = column.width_mm() / 3, gap_mm = 5;
  Column name(third - gap_mm), date(third - gap_mm), by(third);
  Chunk room;  // down to the line beside it
  room.height_mm = 2.9;
  name.add(std::move(room));
  name.writingLine(Words::tr("Choice"), 1, choice ? QString::fromStdString(choice->name) : QString());
  date.writingLine(Words::tr("Date"));
  by.writingLine(Words::tr("Planned by"));
  column.row({{0, &name}, {third, &date}, {2 * third, &by}});
}

}  // namespace

void addClientPage(Column& column, const Request& request, const paint::Scene& scene, const Looks& looks, const Room& room) {
  const bool wide = column.width_mm() > 200;
  column.text(Words::tr("What we planned"), type::kTitle, Weight::Bold);
  const QString title = QString::fromStdString(request.plan.info().title);
  if (!title.isEmpty()) column.text(title, type::kSub, Weight::Plain, Column::Tone::Soft);
  addOrigin(column, request);
  column.gap(4);
  const bool empty = scene.pieces().empty();
  if (!looks.down) {
    column.text(Words::tr("The picture has not been worked out."));
  } else if (wide) {
    addLookRow(column, scene, {head::ViewName::Front, head::ViewName::Left, head::ViewName::Back}, looks.down.get(), 92, Person::Client);
  } else {
    addLookRow(column, scene, {head::ViewName::Front, head::ViewName::Back}, looks.down.get(), std::min(98.0, room.body.height() * 0.4), Person::Client);
  }
  column.text(empty ? Words::tr("Nothing is planned yet: this is the hair as it is today.") : Words::tr("As planned, worn down, in daylight. A mirror shows it the other way round."),
              type::kSmall, Weight::Plain, Column::Tone::Soft);
  if (!empty && looks.down && looks.down->readings) {
    column.subheading(Words::tr("What the plan shows"));
    std::vector<std::vector<Column::Cell>> rows;
    const look::Readings& readings = *looks.down->readings;
    const QString asNew = paint::liftsAsNewText(request.plan, request.choice);
    rows.push_back({{Words::tr("How light"), Weight::Bold}, {lightWords(looks) + (asNew.isEmpty() ? QString() : u' ' + asNew), Weight::Plain}});
    rows.push_back({{Words::tr("How much difference"), Weight::Bold}, {differenceWords(looks), Weight::Plain}});
    rows.push_back({{Words::tr("What stays dark"), Weight::Bold}, {paint::whatStaysDark(&readings), Weight::Plain}});
    rows.push_back({{Words::tr("Until new growth shows"), Weight::Bold}, {weeksWords(looks.regrowth), Weight::Plain}});
    column.table({}, {0.25, 0.75}, rows, type::kBody + 0.25);
  }
  addAgreed(column, request.plan);
  column.subheading(Words::tr("Looking after it"));
  if (request.client.aftercare.trimmed().isEmpty())
    column.writingLine({}, 3);
  else
    for (const QString& line : request.client.aftercare.split(u'\n'))
      if (!line.trimmed().isEmpty()) column.bullet(line.trimmed());
  column.gap(3);
  column.writingLine(Words::tr("Next visit"), 1, request.client.nextVisit);
  column.writingLine(Words::tr("Questions, or anything that worries you: call"), 1, request.client.call);
  column.gap(4);
  Column inside(column.width_mm() - 6);
  inside.text(Words::tr("Pain, burning or swelling at the scalp or skin, also later at home: get medical help, show this page, say that hair lightener or hair colour was used, and call us. "
                        "Swelling of the face or trouble breathing: the emergency number."),
              type::kBody, Weight::Bold);
  column.box(inside, 3);
}

}  // namespace combdraft::handout

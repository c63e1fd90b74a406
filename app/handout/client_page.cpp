#include "app/handout/client_page.h"

#include <QCoreApplication>
#include <cmath>

#include "app/handout/agreed_part.h"
#include "app/handout/figures.h"
#include "app/handout/parts.h"
#include "app/paint/figure.h"
#include "app/paint/level_span.h"
#include "app/paint/reading_words.h"
#include "engine/base/number_text.h"
#include "engine/colour/levels.h"

namespace combdraft::handout {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString number(double value) { return paint::figure(numberText(std::round(value * 10) / 10)); }

QString lightWords(const look::Reading& reading) {
  if (!reading.rangeKnown) return Words::tr("All the hair that is seen looks like %1.").arg(paint::levelText(reading).toLower());
  const colour::LevelScale scale;
  const paint::LevelEnds ends = paint::outwards(scale.levelOfLightness(reading.low), scale.levelOfLightness(reading.high));
  return Words::tr("All the hair that is seen looks like level %1; by the program's own assumptions it may come out from %2 to %3.")
      .arg(number(reading.level), number(ends.low), number(ends.high));
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
QString differenceWords(const look::Contrast& contrast) {
  if (contrast.verdict == look::ContrastVerdict::TooLittleHair) return verdictWords(contrast);
  const QString metres = paint::figure(numberText(std::round(contrast.distance_m * 100) / 100));
  return verdictWords(contrast) + u' ' + Words::tr("That is as seen from %1 m away.").arg(metres);
}

QString weeksWords(const std::vector<look::Regrowth>& regrowth) {
  for (const look::Regrowth& one : regrowth) {
    if (one.way != hair::WornWay::Down) continue;
    const auto weeks = [](double week) { return paint::figure(numberText(std::round(week))); };
    if (!one.week) return Words::tr("Not told: in the drawing its edge stays below what is counted as showing, as far as it looks ahead (%1 weeks).").arg(weeks(look::Regrowth::kWeeks));
    const QString latest = one.latest ? weeks(*one.latest) : weeks(look::Regrowth::kWeeks);
    return Words::tr("Worn down, new growth begins to show after about %1 weeks; that may be from %2 to %3.")
        .arg(weeks(*one.week), weeks(one.earliest.value_or(*one.week)), latest);
  }
  return Words::tr("Not worked out.");
}

}  // namespace

void addClientPage(Column& column, const Request& request, const paint::Scene& scene, const Looks& looks, const Room& room) {
  const bool wide = column.width_mm() > 200;
  column.text(Words::tr("What we planned"), type::kTitle, Weight::Bold);
  const QString title = QString::fromStdString(request.plan.info().title);
  if (!title.isEmpty()) column.text(title, type::kSub, Weight::Plain, Column::Tone::Soft);
  column.gap(4);
  const bool empty = scene.pieces().empty();
  if (!looks.down) {
    column.text(Words::tr("The picture has not been worked out."));
  } else if (wide) {
    addLookRow(column, scene, {head::ViewName::Front, head::ViewName::Left, head::ViewName::Back}, looks.down.get(), 92, Person::Client);
  } else {
    addLookRow(column, scene, {head::ViewName::Front, head::ViewName::Back}, looks.down.get(), std::min(112.0, room.body.height() * 0.45), Person::Client);
  }
  column.text(empty ? Words::tr("Nothing is planned yet: this is the hair as it is today.") : Words::tr("As planned, worn down, in daylight. A mirror shows it the other way round."),
              type::kSmall, Weight::Plain, Column::Tone::Soft);
  if (!empty && looks.down && looks.down->readings) {
    column.subheading(Words::tr("What to expect"));
    std::vector<std::vector<Column::Cell>> rows;
    const look::Readings& readings = *looks.down->readings;
    rows.push_back({{Words::tr("How light"), Weight::Bold}, {lightWords(readings.whole), Weight::Plain}});
    rows.push_back({{Words::tr("How much difference"), Weight::Bold}, {differenceWords(readings.contrast), Weight::Plain}});
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
  inside.text(Words::tr("Pain, burning or swelling at the scalp or the skin, also later at home: follow the maker's first aid and get medical help."),
              type::kSmall);
  column.box(inside, 3);
}

}  // namespace combdraft::handout

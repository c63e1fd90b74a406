#include "app/handout/record_card.h"

#include <QCoreApplication>
#include <cmath>

#include "app/handout/agreed_part.h"
#include "app/handout/log_part.h"
#include "app/handout/figures.h"
#include "app/handout/parts.h"
#include "app/handout/piece_rows.h"
#include "app/handout/piece_words.h"
#include "app/handout/written_part.h"
#include "app/paint/assumption_words.h"
#include "app/paint/describe_piece.h"
#include "app/paint/figure.h"
#include "app/paint/reading_words.h"
#include "engine/base/number_text.h"

namespace combdraft::handout {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString number(double value) { return paint::figure(numberText(std::round(value * 10) / 10)); }
QString percent(double frac) { return Words::tr("%1 %").arg(number(100 * frac)); }

// A rule's own figures as they were typed.
QString typed_mm(const plan::Ramp& ends) {
  const QString from = number(ends.from), to = number(ends.to);
  return from == to ? Words::tr("%1 mm").arg(from) : Words::tr("%1 to %2 mm").arg(from, to);
}
QString typed_mm(double value_mm) { return typed_mm(plan::Ramp{value_mm, value_mm}); }

void addPieces(Column& column, const paint::Scene& scene) {
  const auto cell = [](const QString& text) { return Column::Cell{text, Weight::Plain}; };
  std::vector<std::vector<Column::Cell>> rows;
  bool shared = false;
  for (const PieceRow& row : pieceRows(scene)) {
    const bool several = row.pieces.size() > 1;
    shared = shared || several;
    const QString numbers = several ? row.numbers + u'\n' + Words::tr("%1 pieces").arg(row.pieces.size()) : row.numbers;
    rows.push_back({{numbers, Weight::Bold}, cell(row.where), cell(row.takenAs), cell(row.thick), cell(row.start), cell(row.backcomb),
                    cell(row.colour), cell(row.keptIn)});
  }
  column.heading(Words::tr("Pieces in order"));
  if (rows.empty()) return column.text(Words::tr("There are no pieces in this choice yet."));
  QString note = Words::tr("Distances are mm, whole ones from 10 mm on and for the steps of a section's rule; start, stop and backcomb "
                           "depth are measured along the stretched hair.") + u' ' +
                 Words::tr("Ways from piece to piece are measured along the scalp, from the middle of one line to the middle of the next.");
  if (shared) note += u' ' + Words::tr("A row of several pieces holds for each of them.");
  column.text(note, type::kSmall, Weight::Plain, Column::Tone::Soft);
  column.stay();
  column.table({Words::tr("No."), Words::tr("Where"), Words::tr("Taken as"), Words::tr("Thick, mm"), Words::tr("Start, mm off the scalp"),
                Words::tr("Backcomb: depth mm, pushed %, blend mm"), Words::tr("Formula and wanted colour"), Words::tr("Kept in")},
               {0.09, 0.3, 0.13, 0.06, 0.09, 0.11, 0.15, 0.07}, rows, 2.6);
}

void addSections(Column& column, const Request& request, const paint::Scene& scene) {
  std::vector<std::vector<Column::Cell>> rows;
  for (const paint::SectionShape& shape : scene.sections()) {
    const plan::Section& section = *shape.section;
    QStringList rule;
    if (section.layout) {
      const plan::Layout& l = *section.layout;
      rule << paint::runWords(l.run) << Words::tr("thickness %1").arg(typed_mm(l.thickness_mm))
           << Words::tr("left out %1").arg(typed_mm(l.leftOut_mm)) << Words::tr("start %1").arg(typed_mm(l.start_mm));
      if (l.backcomb_mm.from > 0 || l.backcomb_mm.to > 0)
        rule << Words::tr("backcomb depth %1, pushed back %2 to %3").arg(typed_mm(l.backcomb_mm), percent(l.pushed_frac.from), percent(l.pushed_frac.to));
      rule << Words::tr("foil %1").arg(typed_mm(l.foil_mm));
      if (l.columns == plan::Columns::Staggered) rule << Words::tr("staggered");
      if (l.zigzag_mm > 0) rule << Words::tr("zigzag %1").arg(typed_mm(l.zigzag_mm));
      if (l.lastThickness_mm) rule << Words::tr("last piece %1 thick").arg(typed_mm(*l.lastThickness_mm));
    } else {
      rule << Words::tr("drawn by hand");
    }
    if (!section.twinOf.empty()) rule << Words::tr("follows the other side");
    rows.push_back({{paint::describeSection(scene.head(), request.plan, shape.id, section), Weight::Bold}, {rule.join(QStringLiteral(", ")), Weight::Plain}});
  }
  if (rows.empty()) return;
  column.heading(Words::tr("Sections and their rules"));
  column.table({}, {0.36, 0.64}, rows);
}

void addTreatments(Column& column, const Request& request) {
  std::vector<std::vector<Column::Cell>> rows;
  for (const auto& [id, t] : request.plan.treatments(request.choice)) {
    QStringList parts;
    if (t->kind == plan::Treatment::Kind::RootShadow) parts << Words::tr("to %1 mm, blended over %2 mm").arg(number(t->to_mm), number(t->blend_mm));
    parts << (t->zone ? zoneName(*t->zone) : Words::tr("whole head")) << Words::tr("level %1 %2").arg(number(t->colour.level), toneName(t->colour.tone))
          << Words::tr("how much of the colour shows: %1").arg(percent(t->strength_frac));
    if (const auto* formula = request.plan.find<plan::Formula>(t->formula)) parts << Words::tr("formula %1").arg(QString::fromStdString(formula->letter));
    rows.push_back({{t->kind == plan::Treatment::Kind::RootShadow ? Words::tr("Root shadow") : Words::tr("Glaze"), Weight::Bold}, {parts.join(QStringLiteral(", ")), Weight::Plain}});
  }
  if (rows.empty()) return;
  column.heading(Words::tr("Over all of it"));
  column.table({}, {0.2, 0.8}, rows);
}

void addHair(Column& column, const plan::Hair& hair) {
  std::vector<std::vector<Column::Cell>> rows;
  const auto condition = [](plan::Condition c) {
    return c == plan::Condition::Good ? Words::tr("good") : c == plan::Condition::Fair ? Words::tr("fair") : c == plan::Condition::Poor ? Words::tr("poor") : Words::tr("not checked");
  };
  const auto porosity = [](plan::Porosity p) {
    return p == plan::Porosity::Resistant ? Words::tr("resistant") : p == plan::Porosity::Usual ? Words::tr("usual") : p == plan::Porosity::Porous ? Words::tr("porous") : Words::tr("not checked");
  };
  for (std::size_t i = 0; i < plan::kHairZones; ++i)
    rows.push_back({{zoneName(static_cast<plan::HairZone>(i)), Weight::Bold}, {number(hair.length_mm[i]), Weight::Plain},
                    {Words::tr("%1, %2, %3").arg(number(hair.level[i].root), number(hair.level[i].middle), number(hair.level[i].end)), Weight::Plain},
                    {condition(hair.condition[i]), Weight::Plain}, {porosity(hair.porosity[i]), Weight::Plain}});
  column.gap(3);
  column.table({Words::tr("Zone"), Words::tr("Length, mm"), Words::tr("Level: root, middle, ends"), Words::tr("Condition"), Words::tr("Porosity")}, {0.18, 0.18, 0.28, 0.18, 0.18}, rows);
  for (const plan::Band& band : hair.bands)
    column.text(Words::tr("Old colour band: %1, from %2 to %3 mm, level %4.")
                    .arg(band.zone ? zoneName(*band.zone) : Words::tr("whole head"), number(band.from_mm), number(band.to_mm), number(band.level)));
  for (const plan::ScatteredLight& light : hair.scattered)
    column.text(Words::tr("Already light: %1 of the hair, %2, from %3 to %4 mm, level %5.")
                    .arg(percent(light.share_frac), light.zone ? zoneName(*light.zone) : Words::tr("whole head"), number(light.from_mm), number(light.to_mm), number(light.level)));
}

}  // namespace

void addRecordCard(Column& column, const Request& request, const paint::Scene& scene, const Looks& looks, const Room& room) {
  const QString title = QString::fromStdString(request.plan.info().title);
  column.text(Words::tr("Record card"), type::kSmall, Weight::Bold, Column::Tone::Soft);
  column.text(title.isEmpty() ? Words::tr("Untitled plan") : title, type::kTitle - 1.4, Weight::Bold);
  Column client(column.width_mm() * 0.4), date(column.width_mm() * 0.25), by(column.width_mm() * 0.27);
  client.writingLine(Words::tr("Client"));
  date.writingLine(Words::tr("Date"));
  by.writingLine(Words::tr("By"));
  column.row({{0, &client}, {column.width_mm() * 0.43, &date}, {column.width_mm() * 0.72, &by}});
  column.text(Words::tr("Plan number %1. The plan holds no name; the client's folder does.").arg(request.plan.info().number), type::kSmall, Weight::Plain,
              Column::Tone::Soft);
  column.gap(4);
  const bool wide = column.width_mm() > 200;
  addViews(column, {head::ViewName::Front, head::ViewName::Back, head::ViewName::Left, head::ViewName::Right, head::ViewName::Top, head::ViewName::Crown},
           wide ? 6 : 3, wide ? 58 : 66, Person::Client, [&](head::ViewName view, double scale) { return viewFigure(scene, view, scale); });
  addKey(column, scene);
  addBeforeLines(column);
  if (looks.down && !scene.pieces().empty()) {
    column.subheading(Words::tr("As planned, worn down, in daylight"));
    addLookRow(column, scene, {head::ViewName::Front, head::ViewName::Left, head::ViewName::Back}, looks.down.get(), std::min(84.0, room.body.height() / 3), Person::Client);
    if (looks.down->readings) {
      column.text(Words::tr("All hair that is seen: %1. %2").arg(paint::levelText(looks.down->readings->whole), paint::contrastSentence(looks.down->readings->contrast)));
    }
  }
  addAgreed(column, request.plan);
  column.heading(Words::tr("Head and hair"));
  addModelFacts(column, request);
  addHair(column, request.plan.hair());
  addSections(column, request, scene);
  addPieces(column, scene);
  const std::size_t untilLog = column.chunks().size();
  addLog(column, request.plan);
  if (column.chunks().size() == untilLog) addBowlTable(column, request.plan);
  column.heading(Words::tr("Formulas"));
  addFormulas(column, request);
  addTreatments(column, request);
  column.heading(Words::tr("Assumptions that were changed"));
  const auto changed = paint::changedAssumptions(request.plan.info().assumptions);
  if (changed.empty()) column.text(Words::tr("None: every value is the program's own."));
  for (const paint::ChangedAssumption& one : changed) column.bullet(paint::changedText(one));
  if (!request.plan.info().notes.empty()) {
    column.heading(Words::tr("Notes"));
    column.text(QString::fromStdString(request.plan.info().notes));
  }
  addAfterLines(column);
}

}  // namespace combdraft::handout

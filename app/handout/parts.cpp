#include "app/handout/parts.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "app/handout/close_up.h"
#include "app/handout/figures.h"
#include "app/handout/piece_words.h"
#include "app/handout/step_part.h"
#include "app/paint/describe_piece.h"
#include "app/paint/diagram.h"
#include "app/paint/figure.h"
#include "app/paint/key.h"
#include "app/paint/reading_words.h"
#include "app/words/date_words.h"
#include "engine/base/number_text.h"

namespace combdraft::handout {
namespace {

using head::ViewName;
using plan::HandoutPart;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString number(double value) { return paint::figure(numberText(std::round(value * 10) / 10)); }

QStringList linesIn(const std::string& typed, const QString& made) {
  const QString text = typed.empty() ? made : QString::fromStdString(typed);
  QStringList lines;
  for (const QString& line : text.split(u'\n'))
    if (!line.trimmed().isEmpty()) lines << line.trimmed();
  return lines;
}

const std::vector<ViewName> kViews{ViewName::Front, ViewName::Back, ViewName::Left, ViewName::Right, ViewName::Top, ViewName::Crown};

bool isWide(const Column& column) { return column.width_mm() > 200; }

QString spanOver(const std::array<double, plan::kHairZones>& values, const QString& unit) {
  const auto [low, high] = std::minmax_element(values.begin(), values.end());
  const QString text = *high - *low < 0.05 ? number(*low) : Words::tr("%1 to %2").arg(number(*low), number(*high));
  return unit.isEmpty() ? text : text + u' ' + unit;
}

std::array<double, plan::kHairZones> levels(const plan::Hair& hair, double plan::RootMiddleEnd::*part) {
  std::array<double, plan::kHairZones> values{};
  for (std::size_t i = 0; i < values.size(); ++i) values[i] = hair.level[i].*part;
  return values;
}

// Seen before anything is mixed, and by whom: the lines stand before the first step.
void addSeenBefore(Column& column) {
  const double half = column.width_mm() / 2, gap_mm = 4;
  const auto pair = [&](const QString& left, const QString& right) {
    Column first(half - gap_mm), second(half);
    first.writingLine(left);
    second.writingLine(right);
    column.row({{0, &first}, {half, &second}});
  };
  pair(Words::tr("Skin test, on, seen:"), Words::tr("Test strand, on, seen:"));
  pair(Words::tr("Elasticity:"), Words::tr("Scalp:"));
  column.writingLine(Words::tr("Looked at by:"));
}

void addTitle(Column& column, const Request& request, const paint::Scene& scene) {
  const QString title = QString::fromStdString(request.plan.info().title);
  column.text(title.isEmpty() ? Words::tr("Untitled plan") : title, type::kTitle, Weight::Bold);
  const auto* choice = request.plan.find<plan::Choice>(request.choice.empty() ? request.plan.info().activeChoice : request.choice);
  int worked = 0;
  for (const auto& [id, piece] : request.plan.pieces(request.choice)) worked += piece->action != plan::Action::LeaveOut;
  const QString choiceName = choice ? QString::fromStdString(choice->name) : QString();
  const QString pieces = worked == 0   ? Words::tr("no pieces yet")
                         : worked == 1 ? Words::tr("one piece")
                                       : Words::tr("%1 pieces").arg(worked);
  column.text(choiceName.isEmpty() ? pieces : Words::tr("Choice %1, %2").arg(choiceName, pieces), type::kSub, Weight::Plain, Column::Tone::Soft);
  column.gap(3);
  Column name(column.width_mm() * 0.62), date(column.width_mm() * 0.33);
  name.writingLine(Words::tr("Name"));
  date.writingLine(Words::tr("Date"));
  column.row({{0, &name}, {column.width_mm() * 0.67, &date}});
  column.subheading(Words::tr("Aim"));
  if (request.handout.aim.empty())
    column.writingLine({}, 2);
  else
    column.text(QString::fromStdString(request.handout.aim), type::kBody + 0.35);
  column.subheading(Words::tr("The model"));
  addModelFacts(column, request);
  column.gap(5);
  Column inside(column.width_mm() - 7);
  inside.text(Words::tr("Before you begin"), type::kSub, Weight::Bold);
  inside.text(Words::tr("Ask the age, past reactions and what the hair has been through: henna, metallic or box colour, lightening; look at the scalp; check which tests "
                  "are due. In doubt do not go on; refer to a doctor. Wear gloves, "
                  "see to fresh air, and work to the maker's directions. Added heat only as the leaflet says."));
  inside.text(Words::tr("Before mixing, the maker's directions are read and at hand."));
  inside.text(Words::tr("Pain, burning or swelling: rinse the product off at once with plenty of lukewarm water, unless the maker's first aid says otherwise, and get medical help. "
                        "In the eye: rinse with water at once, then medical help. Trouble breathing or a swelling face: the emergency number."), type::kBody,
              Weight::Bold);
  addSeenBefore(inside);
  column.box(inside, 3.5);
  if (!scene.pieces().empty() && !isWide(column)) {  // a page that lies has no room for them
    column.gap(5);
    addViews(column, {ViewName::Front, ViewName::Back, ViewName::Left}, 3, 72, Person::Model,
             [&](ViewName view, double scale) { return viewFigure(scene, view, scale); });
  }
}

void addKit(Column& column, const Request& request) {
  const std::size_t from = column.chunks().size();
  column.heading(partTitle(HandoutPart::Kit));
  for (const QString& line : linesIn(request.handout.kit, madeKit(request))) column.tickBox(line);
  column.gap(4);
  addFormulas(column, request);
  column.keepTogether(from);
}

void addViewsPart(Column& column, const paint::Scene& scene, const Room& room) {
  column.nextPage();
  column.heading(partTitle(HandoutPart::Views));
  if (scene.pieces().empty()) column.text(Words::tr("There are no pieces in this choice yet: the head is bare."));
  const paint::Figure key = paint::keyFigure(scene, {}, column.width_mm());
  const double left = room.body.height() - key.frame.height() - 26;
  const int columns = isWide(column) ? 3 : 2;
  addViews(column, kViews, columns, left * columns / 6 - 4, Person::Model,
           [&](ViewName view, double scale) { return viewFigure(scene, view, scale); });
  addKey(column, scene);
}

void addCloseUps(Column& column, const paint::Scene& scene, const Room& room) {
  column.nextPage();
  column.heading(partTitle(HandoutPart::CloseUps));
  const std::vector<CloseUpOf> all = closeUpsOf(scene);
  if (all.empty()) return column.text(Words::tr("There are no pieces in this choice yet."));
  column.text(Words::tr("Each place is seen squarely. The scale holds in its middle; toward the rim the head curves away and the drawing "
                  "gets shorter. Print at 100 %: the line below is then as long as it says. Measure it."));
  column.gap(2);
  column.figure(scaleFigure(column.width_mm() > 120 ? 100 : 50), 1, -2);
  const QSizeF roomFor(column.width_mm(), room.body.height() - 34);
  for (std::size_t i = 0; i < all.size(); ++i) {
    const double scale = closeUpScale(scene, all[i], roomFor);
    if (i > 0) column.gap(6);
    const QString size = scale == 1     ? Words::tr("as large as on the head (1:1)")
                         : scale == 0.5 ? Words::tr("half as large as on the head (1:2)")
                                        : Words::tr("a quarter as large as on the head (1:4)");
    column.subheading(Words::tr("%1, %2").arg(all[i].name, size));
    if (all[i].mirrored) {
      column.text(Words::tr("The same on the other side, mirrored."), type::kSmall, Weight::Plain, Column::Tone::Soft);
      column.stay();
    }
    paint::Figure figure = closeUp(scene, all[i], scale);
    const double width = figure.frame.width() * scale;
    column.figure(std::move(figure), scale, (column.width_mm() - width) / 2);
  }
}

void addList(Column& column, HandoutPart part, const QStringList& lines) {
  const std::size_t from = column.chunks().size();
  column.heading(partTitle(part));
  for (const QString& line : lines) column.tickBox(line);
  column.keepTogether(from);
}

void addFaults(Column& column, const Request& request) {
  column.heading(partTitle(HandoutPart::Faults));
  std::vector<std::vector<Column::Cell>> rows;
  const QStringList urgent = urgentFaults();
  for (const QString& line : linesIn(request.handout.faults, madeFaults(request))) {
    const qsizetype colon = line.indexOf(QStringLiteral(": "));
    if (colon < 0)
      rows.push_back({{line, Weight::Bold}, {{}, Weight::Plain}});
    else
      rows.push_back({{line.left(colon), Weight::Bold}, {line.mid(colon + 2), urgent.contains(line) ? Weight::Bold : Weight::Plain}});
  }
  column.table({Words::tr("What you see"), Words::tr("What to do")}, {0.34, 0.66}, rows, type::kBody);
}

void addSelfCheck(Column& column, const Request& request) {
  const std::size_t from = column.chunks().size();
  column.heading(partTitle(HandoutPart::SelfCheck));
  std::vector<std::vector<Column::Cell>> rows;
  for (const QString& line : linesIn(request.handout.selfCheck, madeSelfCheck(request)))
    rows.push_back({{line, Weight::Plain}, {QStringLiteral("□"), Weight::Plain}, {QStringLiteral("□"), Weight::Plain}, {QStringLiteral("□"), Weight::Plain}});
  column.table({{}, Words::tr("yes"), Words::tr("partly"), Words::tr("not yet")}, {0.64, 0.12, 0.12, 0.12}, rows, type::kBody);
  column.gap(3);
  column.writingLine(Words::tr("What I would do differently"), 3);
  column.writingLine(Words::tr("Looked at by"));
  column.keepTogether(from);
}

void addBlank(Column& column, const paint::Scene& scene, const Room& room) {
  column.nextPage();
  column.heading(partTitle(HandoutPart::BlankSheets));
  column.writingLine(Words::tr("Name, date, what is tried"));
  column.gap(3);
  const int columns = isWide(column) ? 3 : 2;
  addViews(column, kViews, columns, (room.body.height() - 52) * columns / 6, Person::Model,
           [&](ViewName view, double scale) { return blankFigure(scene, view, scale); });
}

void addPredict(Column& column, const paint::Scene& scene, const Looks& looks, const Room& room) {
  column.nextPage();
  column.heading(partHeading(HandoutPart::PredictThenOpen));
  column.text(Words::tr("The pieces are placed as drawn. Before you turn the page: shade on the bare heads how light you expect the hair to be, "
                  "and write down what you expect."));
  column.gap(3);
  const double row_mm = (room.body.height() - (isWide(column) ? 74 : 78)) / (isWide(column) ? 1 : 2) - 4;
  if (isWide(column)) {
    int drawn = 0;  // placed left, bare right
    addViews(column, {ViewName::Back, ViewName::Top, ViewName::Back, ViewName::Top}, 4, row_mm, Person::Model,
             [&](ViewName v, double s) { return drawn++ < 2 ? viewFigure(scene, v, s) : blankFigure(scene, v, s); });
  } else {
    addViews(column, {ViewName::Back, ViewName::Top}, 2, row_mm, Person::Model, [&](ViewName v, double s) { return viewFigure(scene, v, s); });
    addViews(column, {ViewName::Back, ViewName::Top}, 2, row_mm, Person::Model, [&](ViewName v, double s) { return blankFigure(scene, v, s); });
  }
  column.writingLine(Words::tr("How light will it look, as a level, worn down?"));
  column.writingLine(Words::tr("What will be seen when the crown is opened?"));
  column.writingLine(Words::tr("Where will it look lightest, where darkest, and why?"), 2);

  column.nextPage();
  column.heading(Words::tr("Now open it"));
  if (!looks.down || scene.pieces().empty()) {
    column.text(scene.pieces().empty() ? Words::tr("There are no pieces in this choice yet, so there is nothing to open.")
                                       : Words::tr("The look has not been worked out."));
    return;
  }
  const double look_mm = (room.body.height() - 62) / 2 - 8;
  addLookRow(column, scene, {ViewName::Front, ViewName::Back}, looks.down.get(), look_mm, Person::Model);
  column.gap(3);
  addLookRow(column, scene, {ViewName::Top, ViewName::Crown}, looks.opened.get(), look_mm, Person::Model);
  column.text(Words::tr("Above: worn down, in daylight. Below: the crown opened by hand."), type::kSmall, Weight::Plain, Column::Tone::Soft);
  if (looks.down->readings) {
    const look::Readings& readings = *looks.down->readings;
    column.gap(2);
    column.text(Words::tr("Worn down, all hair that is seen: %1. %2").arg(paint::levelText(readings.whole), paint::contrastSentence(readings.contrast)));
  }
  column.writingLine(Words::tr("What was different from what I expected?"), 2);
}

}  // namespace

void addModelFacts(Column& column, const Request& request) {
  const plan::Hair& hair = request.plan.hair();
  const plan::Head& head = request.plan.head();
  std::vector<std::pair<QString, QString>> facts;
  facts.emplace_back(Words::tr("Level at the root"), spanOver(levels(hair, &plan::RootMiddleEnd::root), {}));
  facts.emplace_back(Words::tr("Level, middle and ends"), Words::tr("%1 and %2").arg(spanOver(levels(hair, &plan::RootMiddleEnd::middle), {}),
                                                                      spanOver(levels(hair, &plan::RootMiddleEnd::end), {})));
  facts.emplace_back(Words::tr("Length"), spanOver(hair.length_mm, Words::tr("mm")));
  facts.emplace_back(Words::tr("Falls"), curlName(hair.curl));
  facts.emplace_back(Words::tr("How much hair"), Words::tr("%1 on a cm²").arg(number(std::round(hair.density_per_cm2))));
  facts.emplace_back(Words::tr("How thick a hair"), Words::tr("%1 µm").arg(number(hair.fibre_um)));
  if (hair.white_frac > 0) facts.emplace_back(Words::tr("White hair"), Words::tr("%1 %").arg(number(100 * hair.white_frac)));
  facts.emplace_back(Words::tr("Swirls at the crown"), QString::number(head.whorls.size()));
  facts.emplace_back(Words::tr("Usual part"), head.part.empty() ? Words::tr("none, combed back") : Words::tr("as drawn"));
  if (!hair.bands.empty()) facts.emplace_back(Words::tr("Old colour bands"), QString::number(hair.bands.size()));
  if (!hair.scattered.empty()) facts.emplace_back(Words::tr("Already light, scattered"), Words::tr("yes: test a strand of it"));
  if (!hair.conditionDate.empty()) facts.emplace_back(Words::tr("Condition checked on"), words::dateText(hair.conditionDate));
  std::vector<std::vector<Column::Cell>> rows;
  for (std::size_t i = 0; i < facts.size(); i += 2) {
    std::vector<Column::Cell> row{{facts[i].first, Weight::Plain}, {facts[i].second, Weight::Bold}};
    if (i + 1 < facts.size())
      row.insert(row.end(), {{facts[i + 1].first, Weight::Plain}, {facts[i + 1].second, Weight::Bold}});
    rows.push_back(std::move(row));
  }
  column.table({}, {0.23, 0.27, 0.23, 0.27}, rows, type::kBody);
}

void addViews(Column& column, const std::vector<ViewName>& views, int columns, double height_mm, Person person,
              const std::function<paint::Figure(ViewName, double)>& draw) {
  constexpr double kGap_mm = 4;
  const double width = (column.width_mm() - kGap_mm * (columns - 1)) / columns;
  const double caption = type::kBody * type::kLine + 0.5;
  for (std::size_t from = 0; from < views.size(); from += static_cast<std::size_t>(columns)) {
    std::vector<Column> cells;
    const std::size_t to = std::min(views.size(), from + static_cast<std::size_t>(columns));
    cells.reserve(to - from);
    for (std::size_t i = from; i < to; ++i) {
      const QRectF frame = cropOf(views[i]);
      const double scale = std::min(width / frame.width(), (height_mm - caption) / frame.height());
      Column cell(width);
      cell.figure(textFigure(viewName(views[i], person), type::kBody, Weight::Bold, Inks{}.ink, width, paint::TextRun::Anchor::Middle), 1);
      paint::Figure figure = draw(views[i], scale);
      figure.title = viewName(views[i], person);
      const double wide = figure.frame.width() * scale;
      cell.figure(std::move(figure), scale, (width - wide) / 2);
      cells.push_back(std::move(cell));
    }
    std::vector<std::pair<double, const Column*>> row;
    for (std::size_t i = 0; i < cells.size(); ++i) row.emplace_back(static_cast<double>(i) * (width + kGap_mm), &cells[i]);
    column.gap(4);
    column.row(row);
  }
}

void addKey(Column& column, const paint::Scene& scene) {
  paint::Palette palette;
  palette.ink = Inks{}.ink;
  paint::Figure key = paint::keyFigure(scene, palette, column.width_mm());
  if (key.frame.height() <= 0) return;
  column.gap(2);
  column.text(Words::tr("Key"), type::kBody, Weight::Bold);
  column.stay();
  column.figure(std::move(key), 1);
}

void addLookRow(Column& column, const paint::Scene& scene, const std::vector<ViewName>& views, const look::LookFrame* look,
                double height_mm, Person person) {
  std::vector<Column> cells;
  constexpr double kGap_mm = 4;
  const double width = (column.width_mm() - kGap_mm * (static_cast<double>(views.size()) - 1)) / static_cast<double>(views.size());
  for (const ViewName view : views) {
    const QRectF frame = paint::frameOf(view);
    const double scale = std::min(width / frame.width(), (height_mm - 6) / frame.height());
    Column cell(width);
    cell.figure(textFigure(viewName(view, person), type::kBody, Weight::Bold, Inks{}.ink, width, paint::TextRun::Anchor::Middle), 1);
    paint::Figure figure = lookFigure(scene, view, look, scale);
    figure.title = viewName(view, person);
    cell.figure(std::move(figure), scale, (width - frame.width() * scale) / 2);
    cells.push_back(std::move(cell));
  }
  std::vector<std::pair<double, const Column*>> row;
  for (std::size_t i = 0; i < cells.size(); ++i) row.emplace_back(static_cast<double>(i) * (width + kGap_mm), &cells[i]);
  column.row(row);
}

void addPart(Column& column, HandoutPart part, const Request& request, const paint::Scene& scene, const Looks& looks,
             const Room& room, std::stop_token stop) {
  switch (part) {
    case HandoutPart::Title: return addTitle(column, request, scene);
    case HandoutPart::Kit: return addKit(column, request);
    case HandoutPart::Views: return addViewsPart(column, scene, room);
    case HandoutPart::Steps: return addSteps(column, request, scene, stop);
    case HandoutPart::CloseUps: return addCloseUps(column, scene, room);
    case HandoutPart::Checks: return addList(column, part, linesIn(request.handout.checks, madeChecks(request)));
    case HandoutPart::Timing: return addTiming(column, request, scene);
    case HandoutPart::Faults: return addFaults(column, request);
    case HandoutPart::SelfCheck: return addSelfCheck(column, request);
    case HandoutPart::BlankSheets: return addBlank(column, scene, room);
    case HandoutPart::PredictThenOpen: return addPredict(column, scene, looks, room);
  }
}

}  // namespace combdraft::handout

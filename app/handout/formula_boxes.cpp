// Boxes for formulas: typed values where there are any, lines where there are none.
// Nothing is filled in that nobody typed.
#include <QCoreApplication>
#include <algorithm>

#include "app/handout/parts.h"
#include "app/paint/diagram.h"
#include "app/paint/figure.h"
#include "app/paint/hatch.h"
#include "app/words/date_words.h"
#include "engine/base/number_text.h"

namespace combdraft::handout {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString number(double value) { return paint::figure(numberText(value)); }

paint::Figure hatchFigure(const QString& letter) {
  paint::Figure figure;
  figure.id = QStringLiteral("hatch-") + letter;
  figure.frame = QRectF(0, 0, 14, 5);
  paint::DrawingItem box;
  box.id = figure.id;
  box.role = paint::Role::Key;
  box.path.addRect(figure.frame.adjusted(0.1, 0.1, -0.1, -0.1));
  box.style.fill = QColor(Qt::white);
  box.style.stroke = Inks{}.ink;
  box.style.width_mm = 0.25;
  paint::DrawingItem hatch = box;
  hatch.role = paint::Role::Hatch;
  hatch.path = paint::hatchLines(letter, box.path, 1.1);
  hatch.style.fill = QColor();
  hatch.style.width_mm = 0.14;
  figure.items = {std::move(box), std::move(hatch)};
  return figure;
}

void addFormula(Column& box, const plan::Formula& formula) {
  const QString letter = QString::fromStdString(formula.letter), kind = QString::fromStdString(formula.kind);
  Column head(box.width_mm() - 18), hatch(16);
  head.text(kind.isEmpty() ? Words::tr("Formula %1").arg(letter) : Words::tr("Formula %1: %2").arg(letter, kind), type::kSub, Weight::Bold);
  hatch.figure(hatchFigure(letter), 1);
  box.row({{0, &hatch}, {17, &head}});
  if (!formula.text.empty()) box.text(QString::fromStdString(formula.text));
  addFormulaLines(box, formula);
}

}  // namespace

void addFormulas(Column& column, const Request& request) {
  std::vector<std::pair<std::string, const plan::Formula*>> formulas;
  for (const auto& [id, item] : request.plan.items())
    if (const auto* formula = std::get_if<plan::Formula>(item.get())) formulas.emplace_back(formula->letter, formula);
  std::stable_sort(formulas.begin(), formulas.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  const plan::Formula none;
  if (formulas.empty()) formulas.emplace_back("", &none);  // a class still writes its mixture down
  column.text(Words::tr("Figures come from the maker's directions and are written in by whoever read them."), type::kSmall, Weight::Plain,
              Column::Tone::Soft);
  column.stay();
  const double width = (column.width_mm() - 5) / 2;
  for (std::size_t i = 0; i < formulas.size(); i += 2) {
    std::vector<Column> boxes;
    for (std::size_t j = i; j < std::min(i + 2, formulas.size()); ++j) {
      Column inside(width - 6);
      addFormula(inside, *formulas[j].second);
      boxes.emplace_back(width);
      boxes.back().box(inside, 3);
    }
    std::vector<std::pair<double, const Column*>> row;
    for (std::size_t j = 0; j < boxes.size(); ++j) row.emplace_back(static_cast<double>(j) * (width + 5), &boxes[j]);
    column.gap(3);
    column.row(row);
  }
}

void addFormulaLines(Column& box, const plan::Formula& formula) {
  const plan::Leaflet& leaflet = formula.leaflet;
  const auto partsText = [](const std::string& name, const std::optional<double>& parts) {
    const QString what = QString::fromStdString(name);
    return parts ? Words::tr("%1, %2 parts").arg(what, number(*parts)) : what;
  };
  QStringList products, developers, additives;
  for (const plan::MixPart& product : formula.products) products << partsText(product.name, product.parts);
  for (const plan::MixPart& additive : formula.additives) additives << partsText(additive.name, additive.parts);
  for (const plan::Developer& developer : formula.developers) {
    QString name = QString::fromStdString(developer.name);
    if (developer.strength)
      name += u' ' + (developer.unit == plan::StrengthUnit::Percent ? Words::tr("%1 %").arg(number(*developer.strength))
                                                                    : Words::tr("%1 vol").arg(number(*developer.strength)));
    developers << partsText(name.trimmed().toStdString(), developer.parts);
  }
  box.writingLine(Words::tr("Products, parts by weight"), formula.text.empty() ? 2 : 1, products.join(u'\n'));
  box.writingLine(Words::tr("Developer, strength, parts"), 1, developers.join(u'\n'));
  if (!additives.isEmpty()) box.writingLine(Words::tr("Also"), 1, additives.join(u'\n'));
  const auto minutes = [](const std::optional<double>& value) { return value ? Words::tr("%1 min").arg(number(*value)) : QString(); };
  box.writingLine(Words::tr("A bowl may be used for"), 1, minutes(leaflet.workingLife_min));
  box.writingLine(Words::tr("Longest time on the hair"), 1, minutes(leaflet.longestTime_min));
  if (!leaflet.directions.empty()) box.writingLine(Words::tr("Directions"), 1, QString::fromStdString(leaflet.directions));
  const QString origin = QString::fromStdString(leaflet.origin), read = words::dateText(leaflet.read);
  box.writingLine(Words::tr("Read in, on"), 1, origin.isEmpty() || read.isEmpty() ? origin + read : Words::tr("%1, on %2").arg(origin, read));
  const QString contact = leaflet.scalpContact == plan::ScalpContact::Yes  ? Words::tr("Leaflet: scalp contact yes.")
                          : leaflet.scalpContact == plan::ScalpContact::No ? Words::tr("Leaflet: scalp contact no.")
                                                                           : Words::tr("Leaflet: scalp contact not stated; check it.");
  box.gap(1.5);
  box.text(contact, type::kSmall, Weight::Plain, Column::Tone::Soft);
}

}  // namespace combdraft::handout

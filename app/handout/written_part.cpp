#include "app/handout/written_part.h"

#include <QCoreApplication>
#include <algorithm>

namespace combdraft::handout {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

constexpr double kToWrite_mm = 8;      // high enough for a pen
constexpr std::size_t kBowlRows = 2;   // of each formula: one for a second bowl
constexpr std::size_t kEmptyRows = 3;  // where no formula is in the plan

void addPair(Column& column, const QString& left, const QString& right) {
  constexpr double kBetween_mm = 4;
  const double half_mm = column.width_mm() / 2;
  Column first(half_mm - kBetween_mm), second(half_mm);
  first.writingLine(left);
  second.writingLine(right);
  column.row({{0, &first}, {half_mm, &second}});
}

}  // namespace

void addBeforeLines(Column& column) {
  const std::size_t from = column.chunks().size();
  column.heading(Words::tr("Before"));
  addPair(column, Words::tr("Skin test, on, seen:"), Words::tr("Test strand, on, seen:"));
  addPair(column, Words::tr("Elasticity:"), Words::tr("Scalp:"));
  column.keepTogether(from);
}

void addBowlTable(Column& column, const plan::Plan& plan) {
  QStringList letters;
  for (const auto& [id, item] : plan.items())
    if (const auto* formula = std::get_if<plan::Formula>(item.get())) letters << QString::fromStdString(formula->letter);
  std::sort(letters.begin(), letters.end());
  std::vector<std::vector<Column::Cell>> rows;
  const auto addRows = [&](const QString& letter, std::size_t count) {
    for (std::size_t i = 0; i < count; ++i) {
      std::vector<Column::Cell> row(7);
      row.front() = {letter, Weight::Bold};
      rows.push_back(std::move(row));
    }
  };
  for (const QString& letter : letters) addRows(letter, kBowlRows);
  if (letters.isEmpty()) addRows({}, kEmptyRows);
  column.heading(Words::tr("What happened"));
  column.text(Words::tr("Nothing was tapped in the appointment log; to be written in, a row for each bowl."), type::kSmall, Weight::Plain, Column::Tone::Soft);
  column.stay();
  column.table({Words::tr("Bowl"), Words::tr("Grams"), Words::tr("Mixed at"), Words::tr("First in at"), Words::tr("Looked at, level seen"), Words::tr("Rinsed at"), Words::tr("By")},
               {0.09, 0.11, 0.12, 0.12, 0.32, 0.12, 0.12}, rows, type::kSmall, kToWrite_mm);
}

void addAfterLines(Column& column) {
  const std::size_t from = column.chunks().size();
  column.heading(Words::tr("After"));
  column.writingLine(Words::tr("Level seen before rinsing, by section"), 2);
  column.writingLine(Words::tr("After toner, dry, in daylight"), 2);
  addPair(column, Words::tr("Hair:"), Words::tr("Scalp:"));
  column.writingLine(Words::tr("What the client said:"));
  column.writingLine(Words::tr("Next time differently"), 2);
  column.keepTogether(from);
}

}  // namespace combdraft::handout

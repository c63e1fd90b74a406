#pragma once
// What goes into a bowl, row by row: products, developers, additives with their
// parts by weight, and what a developer's strength is in the other units. Nothing
// is filled in and nothing proposed.
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>
#include <functional>
#include <vector>

#include "app/controls/number_field.h"
#include "engine/plan/plan.h"

class QVBoxLayout;

namespace combdraft::cards {

class MixRows : public QWidget {
  Q_OBJECT

 public:
  explicit MixRows(QWidget* parent = nullptr);
  /// Shows a formula's mixture (no signal); typing under way stays.
  void setFormula(const plan::Formula& formula);
  /// Drops names that were typed and not taken: another formula is shown.
  void abandonNames();

 Q_SIGNALS:
  void edited(const QString& what, const std::function<void(combdraft::plan::Formula&)>& change);

 private:
  enum class Kind { Product, Developer, Additive };
  struct Row {
    QWidget* box = nullptr;
    QLineEdit* name = nullptr;
    controls::NumberField *strength = nullptr, *parts = nullptr;  ///< strength: developers only
    QComboBox* unit = nullptr;
    QLabel* says = nullptr;
  };
  struct Group {
    Kind kind{};
    QVBoxLayout* rows = nullptr;
    QPushButton* add = nullptr;
    std::vector<Row> all;
  };
  void buildGroup(Group& group, QVBoxLayout* column);
  Row buildRow(Kind kind, std::size_t index);
  void fit(Group& group, std::size_t count);
  void fillParts(Group& group, const std::vector<plan::MixPart>& parts);
  void fillDevelopers(Group& group, const std::vector<plan::Developer>& developers);
  template <class Change>
  void change(Kind kind, std::size_t index, const QString& what, Change change);

  Group products_, developers_, additives_;
  QLabel* mixture_;
};

/// "6 % is 19.77 volumes exactly (label: 20 volumes), 1.764 mol/l." Cautions and
/// refusals of a typed strength in a sentence of their own; "" for none.
QString strengthText(double typed, plan::StrengthUnit unit);
QString strengthCaution(double typed, plan::StrengthUnit unit);

}  // namespace combdraft::cards

#pragma once
// A list of stretches of hair that are typed one by one: a zone, from where to
// where, a level, and what else belongs to it. Old colour bands and hair that is
// already light are two of them.
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <QWidget>
#include <optional>
#include <vector>

#include "app/controls/number_field.h"
#include "engine/plan/plan.h"

namespace combdraft::cards {

struct HairStretch {
  std::optional<plan::HairZone> zone;
  std::vector<double> values;  ///< one for each column
};

class StretchList : public QWidget {
  Q_OBJECT

 public:
  struct Column {
    controls::NumberFieldSpec spec;  ///< its label stands over the boxes
    const char* field;               ///< row of plan::fieldTable()
  };
  /// `one` names an entry ("band"), `emptyText` stands where there is none.
  StretchList(const QString& one, const QString& addText, const QString& emptyText, std::vector<Column> columns,
              QWidget* parent = nullptr);

  void setRows(const std::vector<HairStretch>& rows);
  std::size_t size() const { return rows_.size(); }
  controls::NumberField* box(std::size_t row, std::size_t column) { return rows_[row].boxes[column]; }
  QComboBox* zone(std::size_t row) { return rows_[row].zone; }
  QPushButton* removeButton(std::size_t row) { return rows_[row].remove; }
  QPushButton* addButton() { return add_; }

 Q_SIGNALS:
  void addWanted();
  void removeWanted(std::size_t row);
  void zoneChosen(std::size_t row, std::optional<combdraft::plan::HairZone> zone);
  void edited(std::size_t row, std::size_t column, double value, bool stepping);

 private:
  struct Row {
    QWidget* box = nullptr;
    QComboBox* zone = nullptr;
    QPushButton* remove = nullptr;
    std::vector<controls::NumberField*> boxes;
  };
  Row newRow(std::size_t index);

  const QString one_;
  const std::vector<Column> columns_;
  QVBoxLayout* list_;
  QLabel* empty_;
  QPushButton* add_;
  std::vector<Row> rows_;
};

}  // namespace combdraft::cards

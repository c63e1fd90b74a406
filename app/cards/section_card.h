#pragma once
// The selected section: its name and the rule that lays it out. Every value of
// the rule may be changed later; the run flows anew.
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <functional>
#include <vector>

#include "app/controls/number_field.h"
#include "app/controls/segments.h"
#include "app/controls/text_field.h"
#include "app/document/document_controller.h"

class QGridLayout;
class QVBoxLayout;

namespace combdraft::cards {

class SectionCard : public QWidget {
  Q_OBJECT

 public:
  explicit SectionCard(document::DocumentController& controller, QWidget* parent = nullptr);

 private:
  using Get = std::function<std::optional<double>(const plan::Layout&)>;
  using Set = std::function<void(plan::Layout&, const std::optional<double>&)>;
  struct Number {
    controls::NumberField* field;
    const char* name;  ///< row of plan::fieldTable()
    Get get;
  };
  void buildRule(QVBoxLayout* column);
  void addRamps(QVBoxLayout* column);
  controls::NumberField* addNumber(const char* name, const QString& label, const QString& unit, double shownPerValue,
                                   controls::NumberFieldSpec::Face face, Get get, Set set, const QString& emptyText = {});
  void change(const QString& what, const std::function<void(plan::Section&)>& change,
              document::Gesture gesture = document::Gesture::none());
  std::vector<plan::ItemId> sections() const;
  plan::ItemId shownId() const;
  void fill();

  document::DocumentController& controller_;
  QWidget *empty_, *work_, *rule_;
  controls::TextField* name_;
  QLabel *state_, *trouble_, *twin_, *refused_, *fanHint_;
  QPushButton *layOut_, *follow_, *dropRule_;
  QComboBox *run_, *taking_;
  controls::Segments* columns_;
  std::vector<Number> numbers_;
  const controls::NumberField* stepped_ = nullptr;
  document::Gesture stepping_ = document::Gesture::begin();
};

}  // namespace combdraft::cards

#include "app/cards/stretch_list.h"

#include <QGridLayout>

#include "app/cards/card_parts.h"
#include "app/cards/provenance.h"
#include "app/cards/zone_words.h"
#include "app/controls/drop_widgets.h"
#include "app/controls/units.h"
#include "app/controls/wrapped_label.h"
#include "engine/plan/field_info.h"

namespace combdraft::cards {

StretchList::StretchList(const QString& one, const QString& addText, const QString& emptyText,
                         std::vector<Column> columns, QWidget* parent)
    : QWidget(parent), one_(one), columns_(std::move(columns)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  empty_ = addSoftText(column, emptyText);
  list_ = new QVBoxLayout;
  list_->setSpacing(8);
  column->addLayout(list_);
  add_ = new QPushButton(addText, this);
  column->addWidget(add_, 0, Qt::AlignLeft);
  connect(add_, &QPushButton::clicked, this, &StretchList::addWanted);
}

StretchList::Row StretchList::newRow(std::size_t index) {
  Row row;
  row.box = new QWidget(this);
  auto* grid = new QGridLayout(row.box);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(4);
  grid->setVerticalSpacing(2);
  const QString name = tr("%1 %2").arg(one_).arg(index + 1);
  const int last = static_cast<int>(columns_.size()) - 1;
  auto* top = new QHBoxLayout;
  top->setSpacing(6);
  row.zone = newZoneChoice(row.box, tr("%1: where").arg(name));
  row.remove = new QPushButton(tr("Remove"), row.box);
  row.remove->setAccessibleName(tr("Remove %1").arg(name));
  top->addWidget(row.zone, 1);
  top->addWidget(row.remove);
  grid->addLayout(top, 0, 0, 1, last + 1);
  connect(row.zone, &QComboBox::activated, this, [this, index](int at) { Q_EMIT zoneChosen(index, zoneAtRow(at)); });
  connect(row.remove, &QPushButton::clicked, this, [this, index] { Q_EMIT removeWanted(index); });
  auto* problem = new controls::WrappedLabel(row.box);
  problem->setProperty("caution", true);
  problem->hide();
  for (int i = 0; i <= last; ++i) {
    const Column& made = columns_[static_cast<std::size_t>(i)];
    auto* head = new controls::WrappedLabel(row.box);
    head->setProperty("soft", true);
    const auto showHead = [head, label = made.spec.label, isLength = made.spec.unit == QLatin1String("mm")] {
      head->setText(isLength ? label + QStringLiteral(", ") + controls::unitWord(controls::Units::current().length()) : label);
    };
    showHead();
    connect(&controls::Units::current(), &controls::Units::changed, head, showHead);
    controls::NumberFieldSpec spec = made.spec;
    spec.label = tr("%1: %2").arg(name, made.spec.label);
    spec.face = controls::NumberFieldSpec::Face::BoxOnly;
    auto* box = new controls::NumberField(spec, row.box);
    head->setBuddy(box->edit());
    grid->addWidget(head, 1, i);
    grid->addWidget(box, 2, i);
    grid->setColumnStretch(i, 1);
    connect(box, &controls::NumberField::edited, this,
            [this, index, i](const std::optional<double>& value, bool stepping) {
              if (value) Q_EMIT edited(index, static_cast<std::size_t>(i), *value, stepping);
            });
    connect(box, &controls::NumberField::problemChanged, problem,
            [problem](const QString& text) { showLines(problem, text.isEmpty() ? QStringList() : QStringList{text}); });
    row.boxes.push_back(box);
  }
  grid->addWidget(problem, 3, 0, 1, last + 1);
  return row;
}

void StretchList::setRows(const std::vector<HairStretch>& rows) {
  // Another number of entries: what was typed and refused may be another's.
  if (rows.size() != rows_.size()) abandonTyping(this);
  while (rows_.size() > rows.size()) {
    controls::dropWidget(rows_.back().box);  // its own button may have asked for this
    rows_.pop_back();
  }
  while (rows_.size() < rows.size()) {
    rows_.push_back(newRow(rows_.size()));
    list_->addWidget(rows_.back().box);
  }
  for (std::size_t i = 0; i < rows.size(); ++i) {
    rows_[i].zone->setCurrentIndex(rowOfZone(rows[i].zone));
    for (std::size_t c = 0; c < columns_.size(); ++c) {
      rows_[i].boxes[c]->setValue(rows[i].values[c]);
      rows_[i].boxes[c]->setProvenance(provenance(columns_[c].field, rows[i].values[c]));
    }
  }
  empty_->setVisible(rows.empty());
  add_->setEnabled(rows.size() < plan::limits::kSmallList);
}

}  // namespace combdraft::cards

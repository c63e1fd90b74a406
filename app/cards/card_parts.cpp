#include "app/cards/card_parts.h"

#include "engine/plan/field_info.h"

namespace combdraft::cards {
namespace {

QLabel* addLabel(QVBoxLayout* column, const QString& text, double size) {
  auto* label = new QLabel(text, column->parentWidget());
  QFont f = label->font();
  f.setPointSizeF(f.pointSizeF() * size);
  f.setWeight(QFont::DemiBold);
  label->setFont(f);
  label->setWordWrap(true);
  column->addWidget(label);
  return label;
}

}  // namespace

QLabel* addTitle(QVBoxLayout* column, const QString& text) { return addLabel(column, text, 1.25); }

QLabel* addHeading(QVBoxLayout* column, const QString& text) {
  column->addSpacing(8);
  return addLabel(column, text, 1.0);
}

QComboBox* addChoice(QVBoxLayout* column, const QString& label, const QStringList& words) {
  auto* row = new QHBoxLayout;
  auto* text = new QLabel(label, column->parentWidget());
  auto* combo = new QComboBox(column->parentWidget());
  combo->addItems(words);
  combo->setPlaceholderText(QObject::tr("mixed"));
  combo->setAccessibleName(label);
  combo->setMinimumHeight(30);
  text->setBuddy(combo);
  row->addWidget(text, 1);
  row->addWidget(combo);
  column->addLayout(row);
  return combo;
}

controls::NumberFieldSpec specOf(const char* field, const QString& label, const QString& unit,
                                 double shownPerValue, int decimals) {
  const plan::FieldInfo& info = plan::fieldInfo(field);
  controls::NumberFieldSpec spec;
  spec.label = label;
  spec.unit = unit;
  spec.low = info.low;
  spec.high = info.high;
  spec.decimals = decimals;
  spec.step = unit.isEmpty() && decimals > 0 ? 0.5 : 1;
  spec.shownPerValue = shownPerValue;
  spec.tip = QString::fromUtf8(info.what.data(), static_cast<qsizetype>(info.what.size()));
  return spec;
}

}  // namespace combdraft::cards

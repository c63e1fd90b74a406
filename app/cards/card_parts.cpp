#include "app/cards/card_parts.h"

#include "app/controls/text_field.h"
#include "app/controls/wrapped_label.h"
#include "app/words/engine_words.h"
#include "engine/plan/field_info.h"

namespace combdraft::cards {
namespace {

QLabel* addLabel(QVBoxLayout* column, const QString& text, double size) {
  auto* label = new controls::WrappedLabel(text, column->parentWidget());
  QFont f = label->font();
  f.setPointSizeF(f.pointSizeF() * size);
  f.setWeight(QFont::DemiBold);
  label->setFont(f);
  column->addWidget(label);
  return label;
}

constexpr int kComboLetters = 9;  // that are always in view

}  // namespace

QLabel* addTitle(QVBoxLayout* column, const QString& text) { return addLabel(column, text, 1.25); }

QLabel* addHeading(QVBoxLayout* column, const QString& text) {
  column->addSpacing(8);
  return addLabel(column, text, 1.0);
}

QLabel* addSoftText(QVBoxLayout* column, const QString& text) {
  auto* label = new controls::WrappedLabel(text, column->parentWidget());
  label->setProperty("soft", true);
  column->addWidget(label);
  return label;
}

QLabel* addCaution(QVBoxLayout* column) {
  auto* label = new controls::WrappedLabel(column->parentWidget());
  label->setProperty("caution", true);
  label->hide();
  column->addWidget(label);
  return label;
}

void showLines(QLabel* caution, const QStringList& lines) {
  caution->setVisible(!lines.isEmpty());
  caution->setText(lines.isEmpty() ? QString()
                                   : QStringLiteral("\u26A0 ") + lines.join(QStringLiteral("\n\u26A0 ")));
}

QComboBox* newCombo(QWidget* parent, const QString& name, const QStringList& words) {
  auto* combo = new QComboBox(parent);
  combo->addItems(words);
  combo->setPlaceholderText(QObject::tr("mixed"));
  combo->setAccessibleName(name);
  combo->setMinimumHeight(30);
  combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  combo->setMinimumContentsLength(kComboLetters);
  // The wheel scrolls the card, it does not change the hair.
  combo->setFocusPolicy(Qt::StrongFocus);
  return combo;
}

QComboBox* addChoice(QVBoxLayout* column, const QString& label, const QStringList& words) {
  auto* row = new QHBoxLayout;
  auto* text = new controls::WrappedLabel(label, column->parentWidget());
  QComboBox* combo = newCombo(column->parentWidget(), label, words);
  text->setBuddy(combo);
  row->addWidget(text, 1);
  row->addWidget(combo, 1);
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
  spec.tip = words::inWords(info.what);
  return spec;
}

void abandonTyping(QWidget* card) {
  for (auto* field : card->findChildren<controls::NumberField*>()) field->abandonTyping();
  for (auto* field : card->findChildren<controls::TextField*>()) field->abandonTyping();
}

}  // namespace combdraft::cards

#include "app/appointment/finish_field.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "app/controls/wrapped_label.h"
#include "app/paint/hair_words.h"
#include "engine/plan/field_info.h"

namespace combdraft::appointment {

FinishField::FinishField(const QString& about, QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  auto* row = new QHBoxLayout;
  row->setSpacing(8);
  column->addLayout(row);
  const plan::FieldInfo& info = plan::fieldInfo("finish.level");
  controls::NumberFieldSpec spec;
  spec.label = tr("%1: finishes at level").arg(about);
  spec.low = info.low;
  spec.high = info.high;
  spec.step = 0.5;
  spec.mayBeEmpty = true;
  spec.emptyText = tr("not typed");
  spec.tip = tr("The level that your toner is to leave; never lighter than the hair");
  level_ = addTyped(row, spec, this);
  tone_ = new QComboBox(this);
  tone_->addItem(tr("no tone"));
  tone_->addItems(paint::toneNames());
  tone_->setAccessibleName(tr("%1: tone").arg(about));
  tone_->setToolTip(tr("The tone that your toner is to leave"));
  tone_->setMinimumHeight(30);
  tone_->setFocusPolicy(Qt::StrongFocus);  // the wheel scrolls the page
  row->addWidget(tone_);
  problem_ = new controls::WrappedLabel(this);
  problem_->setProperty("caution", true);
  problem_->hide();
  column->addWidget(problem_);
  const auto tell = [this] {
    setProblem({});
    Q_EMIT edited();
  };
  connect(level_, &controls::NumberField::edited, this, tell);
  connect(tone_, &QComboBox::activated, this, tell);
}

std::optional<plan::FinishesAt> FinishField::value() const {
  if (!level_->value() || tone_->currentIndex() <= 0) return std::nullopt;
  return plan::FinishesAt{*level_->value(), static_cast<plan::Tone>(tone_->currentIndex() - 1)};
}

bool FinishField::isHalf() const { return level_->value().has_value() != (tone_->currentIndex() > 0); }

void FinishField::clear() {
  level_->abandonTyping();
  level_->setValue(std::nullopt);
  tone_->setCurrentIndex(0);
  setProblem({});
}

void FinishField::setProblem(const QString& text) {
  problem_->setText(text);
  problem_->setVisible(!text.isEmpty());
}

controls::NumberField* addTyped(QBoxLayout* into, controls::NumberFieldSpec spec, QWidget* parent) {
  spec.mayBeEmpty = true;
  auto* field = new controls::NumberField(std::move(spec), parent);
  into->addWidget(field);
  return field;
}

}  // namespace combdraft::appointment

#include "app/controls/number_field.h"

#include <QFontMetrics>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QStyle>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "app/controls/number_input.h"

namespace combdraft::controls {

NumberField::NumberField(NumberFieldSpec spec, QWidget* parent)
    : QWidget(parent), spec_(std::move(spec)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  auto* row = new QHBoxLayout;
  row->setSpacing(6);
  column->addLayout(row);

  edit_ = new QLineEdit(this);
  const bool boxOnly = spec_.face == NumberFieldSpec::Face::BoxOnly;
  if (!boxOnly) {
    auto* label = new QLabel(spec_.label, this);
    label->setBuddy(edit_);
    label->setWordWrap(true);
    row->addWidget(label, 1);
  }
  const int digit = QFontMetrics(edit_->font()).horizontalAdvance(QLatin1Char('0'));
  if (boxOnly)
    edit_->setMinimumWidth(digit * 5 + 18);
  else
    edit_->setFixedWidth(digit * 9 + 18);
  edit_->setMinimumHeight(28);
  edit_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  row->addWidget(edit_);
  if (!boxOnly) {
    auto* unit = new QLabel(spec_.unit, this);
    unit->setProperty("soft", true);
    unit->setFixedWidth(digit * 4);
    row->addWidget(unit);
  }

  problem_ = new QLabel(this);
  problem_->setProperty("caution", true);
  problem_->setWordWrap(true);
  problem_->hide();
  column->addWidget(problem_);

  edit_->setAccessibleName(spec_.unit.isEmpty() ? spec_.label
                                                : spec_.label + QStringLiteral(", ") + spec_.unit);
  edit_->setAccessibleDescription(rangeText());
  const QString tip =
      spec_.tip.isEmpty() ? rangeText() : tr("%1 (%2)").arg(spec_.tip, rangeText());
  edit_->setToolTip(tip);
  setFocusProxy(edit_);
  edit_->installEventFilter(this);
  connect(edit_, &QLineEdit::editingFinished, this, &NumberField::commit);
  refill();
}

QString NumberField::rangeText() const {
  const QString range = tr("%1 to %2")
                            .arg(shownNumber(spec_.low * spec_.shownPerValue, spec_.decimals),
                                 shownNumber(spec_.high * spec_.shownPerValue, spec_.decimals));
  return spec_.unit.isEmpty() ? range : range + u' ' + spec_.unit;
}

void NumberField::setValue(const std::optional<double>& value) {
  const bool typing = edit_->hasFocus() && edit_->isModified();
  value_ = value;
  mixed_ = false;
  if (!typing) refill();
}

void NumberField::setMixed() {
  value_.reset();
  mixed_ = true;
  refill();
}

void NumberField::refill() {
  edit_->setPlaceholderText(mixed_ ? tr("mixed") : spec_.emptyText);
  edit_->setText(value_ ? shownNumber(*value_ * spec_.shownPerValue, spec_.decimals) : QString());
  edit_->setModified(false);
  show({});
}

void NumberField::show(const QString& problem) {
  const bool wrong = !problem.isEmpty();
  problem_->setText(wrong ? QStringLiteral("\u26A0 ") + problem : QString());
  problem_->setVisible(wrong);
  if (edit_->property("wrong").toBool() != wrong) {
    edit_->setProperty("wrong", wrong);
    edit_->style()->unpolish(edit_);
    edit_->style()->polish(edit_);
  }
}

void NumberField::commit() {
  if (!edit_->isModified()) return;
  const QString typed = edit_->text().trimmed();
  if (typed.isEmpty()) {
    if (spec_.mayBeEmpty && (value_ || mixed_)) {
      value_.reset();
      mixed_ = false;
      refill();
      Q_EMIT edited(std::nullopt, false);
    } else {
      refill();
    }
    return;
  }
  const std::optional<double> shown = evaluate(typed);
  if (!shown) {
    show(tr("“%1” is not a number. Allowed: %2.").arg(typed, rangeText()));
    return;
  }
  const double value = *shown / spec_.shownPerValue;
  if (value < spec_.low - 1e-9 || value > spec_.high + 1e-9) {
    show(tr("%1 is outside %2.").arg(shownNumber(*shown, 3), rangeText()));
    return;
  }
  const bool isNew = mixed_ || !value_ || *value_ != value;
  value_ = value;
  mixed_ = false;
  refill();
  if (isNew) Q_EMIT edited(value, false);
}

void NumberField::stepBy(double steps) {
  commit();
  if (mixed_ || edit_->isModified()) return;
  const double from = value_.value_or(spec_.low);
  const double unit = spec_.step / spec_.shownPerValue;
  // Rounded to the smallest step, so that going there and back is exact.
  const double grain = unit / 10;
  const double to =
      std::clamp(std::round((from + steps * unit) / grain) * grain, spec_.low, spec_.high);
  const double rounded = std::round(to * 1e6) / 1e6;
  if (value_ && rounded == *value_) return;
  value_ = rounded;
  refill();
  Q_EMIT edited(rounded, true);
}

bool NumberField::eventFilter(QObject* watched, QEvent* event) {
  if (watched == edit_ && event->type() == QEvent::KeyPress) {
    const auto* key = static_cast<QKeyEvent*>(event);
    const double size = key->modifiers() & Qt::ShiftModifier ? 10
                        : key->modifiers() & Qt::AltModifier ? 0.1
                                                             : 1;
    if (key->key() == Qt::Key_Up || key->key() == Qt::Key_Down) {
      stepBy(key->key() == Qt::Key_Up ? size : -size);
      return true;
    }
    if (key->key() == Qt::Key_Escape && edit_->isModified()) {
      refill();
      return true;
    }
  }
  if (watched == edit_ && event->type() == QEvent::FocusIn)
    QMetaObject::invokeMethod(edit_, &QLineEdit::selectAll, Qt::QueuedConnection);
  return QWidget::eventFilter(watched, event);
}

}  // namespace combdraft::controls

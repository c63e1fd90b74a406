#include "app/controls/number_field.h"

#include <QFontMetrics>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QStyle>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "app/controls/number_input.h"
#include "app/controls/units.h"
#include "app/controls/wrapped_label.h"

namespace combdraft::controls {
namespace {

// A value typed finer than the field's grain is shown as typed, to this many.
constexpr int kMostDecimals = 3;

}  // namespace

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
    auto* label = new WrappedLabel(spec_.label, this);
    label->setBuddy(edit_);
    row->addWidget(label, 1);
  }
  const int digit = QFontMetrics(edit_->font()).horizontalAdvance(QLatin1Char('0'));
  if (boxOnly)
    edit_->setMinimumWidth(digit * 4 + 18);
  else
    edit_->setFixedWidth(digit * 9 + 18);
  edit_->setMinimumHeight(28);
  edit_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  row->addWidget(edit_);
  if (!boxOnly) {
    unit_ = new QLabel(this);
    unit_->setProperty("soft", true);
    unit_->setMinimumWidth(digit * 4);
    row->addWidget(unit_);
  }

  problem_ = new WrappedLabel(this);
  problem_->setProperty("caution", true);
  problem_->hide();
  column->addWidget(problem_);

  setFocusProxy(edit_);
  edit_->installEventFilter(this);
  connect(edit_, &QLineEdit::editingFinished, this, &NumberField::commit);
  if (isLength())
    connect(&Units::current(), &Units::changed, this, &NumberField::followUnit);
  describe();
  refill();
}

bool NumberField::isLength() const { return spec_.unit == QLatin1String("mm"); }

QString NumberField::shownText(double value) const {
  return isLength() ? lengthNumber(value, Units::current().length(), std::max(spec_.decimals, kMostDecimals))
                    : shownNumber(value * spec_.shownPerValue, std::max(spec_.decimals, kMostDecimals));
}

QString NumberField::rangeText() const {
  if (isLength()) {
    const LengthUnit unit = Units::current().length();
    return tr("%1 to %2").arg(lengthNumber(spec_.low, unit, spec_.decimals, Rounding::Up),
                              lengthNumber(spec_.high, unit, spec_.decimals, Rounding::Down)) +
           u' ' + unitWord(unit);
  }
  const QString range = tr("%1 to %2").arg(shownText(spec_.low), shownText(spec_.high));
  return spec_.unit.isEmpty() ? range : range + u' ' + spec_.unit;
}

void NumberField::followUnit() {
  if (!edit_->isModified()) return refill();
  // What waits here was meant in the unit before.
  if (evaluate(edit_->text())) {
    edit_->setText(edit_->text() + u' ' + unitWord(shownUnit_));
    edit_->setModified(true);
  }
  describe();
}

void NumberField::describe() {
  shownUnit_ = Units::current().length();
  const QString unit = isLength() ? unitWord(Units::current().length()) : spec_.unit;
  if (unit_) unit_->setText(unit), unit_->setWordWrap(unit.contains(u' '));
  edit_->setAccessibleName(unit.isEmpty() ? spec_.label : spec_.label + QStringLiteral(", ") + unit);
  QString tip = spec_.tip.isEmpty() ? rangeText() : tr("%1 (%2)").arg(spec_.tip, rangeText());
  QString description = rangeText();
  const QStringList more{value_ && isLength() && edit_->text().startsWith(QChar(0x2248))
                             ? tr("Exactly %1.").arg(lengthText(*value_, LengthUnit::Millimetres, 3))
                             : QString(),
                         provenance_};
  for (const QString& text : more) {
    if (text.isEmpty()) continue;
    tip += u'\n' + text;
    description += QStringLiteral(". ") + text;
  }
  edit_->setToolTip(tip);
  edit_->setAccessibleDescription(description);
}

void NumberField::setProvenance(const QString& text) {
  if (text == provenance_) return;
  provenance_ = text;
  describe();
}

void NumberField::setEmptyText(const QString& text) {
  spec_.emptyText = text;
  if (!mixed_) edit_->setPlaceholderText(text);
}

void NumberField::setValue(const std::optional<double>& value) {
  value_ = value;
  mixed_ = false;
  if (!edit_->isModified()) refill();
}

void NumberField::setMixed() {
  value_.reset();
  mixed_ = true;
  if (!edit_->isModified()) refill();
}

void NumberField::abandonTyping() {
  if (edit_->isModified()) refill();
}

void NumberField::refill() {
  edit_->setPlaceholderText(mixed_ ? tr("mixed") : spec_.emptyText);
  edit_->setText(value_ ? shownText(*value_) : QString());
  edit_->setModified(false);
  describe();
  showProblem({});
}

void NumberField::showProblem(const QString& problem) {
  const bool wrong = !problem.isEmpty();
  if (problem != problemText_) {
    problemText_ = problem;
    Q_EMIT problemChanged(problem);
  }
  problem_->setText(wrong ? QStringLiteral("\u26A0 ") + problem : QString());
  problem_->setVisible(wrong && spec_.face == NumberFieldSpec::Face::WithLabel);
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
    if (spec_.mayBeEmpty && (value_ || mixed_))
      accept(std::nullopt, false);
    else
      refill();
    return;
  }
  const LengthUnit unit = Units::current().length();
  const std::optional<double> shown = isLength() ? lengthFrom(typed, unit) : evaluate(typed);
  if (!shown) {
    showProblem(tr("“%1” is not a number. Allowed: %2.").arg(typed, rangeText()));
    return;
  }
  const double value = isLength() ? *shown : *shown / spec_.shownPerValue;
  if (value < spec_.low - 1e-9 || value > spec_.high + 1e-9) {
    showProblem(tr("%1 is outside %2.").arg(isLength() ? lengthText(value, unit, 3) : shownNumber(*shown, 3), rangeText()));
    return;
  }
  accept(std::clamp(value, spec_.low, spec_.high), false);
}

void NumberField::accept(const std::optional<double>& value, bool stepping) {
  if (const QString wrong = check_ ? check_(value) : QString(); !wrong.isEmpty())
    return showProblem(wrong);
  const bool isNew = mixed_ || value_ != value;
  value_ = value;
  mixed_ = false;
  refill();
  if (isNew) Q_EMIT edited(value, stepping);
}

void NumberField::stepBy(double steps) {
  commit();
  if (mixed_ || edit_->isModified()) return;
  const LengthUnit unit = Units::current().length();
  const double from = value_.value_or(spec_.low);
  const double step = isLength() ? lengthStep_mm(unit, spec_.step) : spec_.step / spec_.shownPerValue;
  // Rounded to the smallest step, so that going there and back is exact.
  const double grain = isLength() && unit == LengthUnit::Inches ? step / 4 : step / 10;
  const double to =
      std::clamp(std::round((from + steps * step) / grain) * grain, spec_.low, spec_.high);
  const double rounded = std::round(to * 1e6) / 1e6;
  if (value_ && rounded == *value_) return;
  accept(rounded, true);
}

bool NumberField::eventFilter(QObject* watched, QEvent* event) {
  if (watched == edit_ && event->type() == QEvent::KeyPress) {
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool inches = isLength() && Units::current().length() == LengthUnit::Inches;
    const double size = key->modifiers() & Qt::ShiftModifier ? (inches ? 8 : 10)
                        : key->modifiers() & Qt::AltModifier ? (inches ? 0.25 : 0.1)
                                                             : 1;
    const bool walking = key->modifiers() & Qt::ControlModifier;
    if (!walking && (key->key() == Qt::Key_Up || key->key() == Qt::Key_Down)) {
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

#include "app/cards/assumptions_card.h"

#include <QHBoxLayout>
#include <QScrollArea>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "app/cards/card_parts.h"
#include "app/controls/wrapped_label.h"
#include "app/paint/assumption_words.h"
#include "app/words/engine_words.h"
#include "engine/plan/edits.h"

namespace combdraft::cards {
namespace {

constexpr int kSteps = 20;  // about so many arrow keys lead through a range

// 1, 2 or 5 times a power of ten.
double stepFor(double range) {
  const double raw = range / kSteps, ten = std::pow(10, std::floor(std::log10(raw)));
  return ten * (raw >= 5 * ten ? 5 : raw >= 2 * ten ? 2 : 1);
}

controls::NumberFieldSpec specOf(const Assumption& assumption) {
  const paint::AssumptionUnit unit = paint::assumptionUnit(assumption);
  controls::NumberFieldSpec spec;
  spec.label = paint::assumptionName(assumption.name);
  spec.unit = unit.text;
  spec.low = assumption.low;
  spec.high = assumption.high;
  spec.decimals = 2;
  spec.shownPerValue = unit.shownPerValue;
  spec.step = stepFor((assumption.high - assumption.low) * unit.shownPerValue);
  spec.tip = words::inWords(assumption.what);
  return spec;
}

}  // namespace

AssumptionsCard::AssumptionsCard(document::DocumentController& controller, QWidget* parent)
    : QWidget(parent), controller_(controller) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 12);
  column->setSpacing(5);
  addTitle(column, tr("Assumptions"));
  addSoftText(column, tr("What the look rests on where nobody measured this head. Point at a name to read what it is. "
                         "A change belongs to this plan and is named on everything that is printed."));
  auto* row = new QHBoxLayout;
  summary_ = new controls::WrappedLabel(this);
  row->addWidget(summary_, 1);
  resetAll_ = new QPushButton(tr("Reset all"), this);
  resetAll_->setToolTip(tr("All assumptions go back to their defaults"));
  row->addWidget(resetAll_);
  column->addLayout(row);
  connect(resetAll_, &QPushButton::clicked, this, &AssumptionsCard::resetAll);
  connect(&controller_, &document::DocumentController::changed, this, [this](const document::DocumentChange& change) {
    if (change.kind == document::DocumentChange::Kind::Replaced) abandonTyping(this);
    if (change.kind == document::DocumentChange::Kind::Replaced || change.ids.contains(plan::kPlanId)) fill();
  });
  connect(&controls::Units::current(), &controls::Units::changed, this, &AssumptionsCard::fill);
  fill();
}

void AssumptionsCard::showEvent(QShowEvent* event) {
  buildRows();
  QWidget::showEvent(event);
}

void AssumptionsCard::buildRows() {
  if (!rows_.empty()) return;
  auto* column = static_cast<QVBoxLayout*>(layout());
  for (const paint::AssumptionGroup group : paint::kAssumptionGroups) {
    const auto isIn = [group](const Assumption& a) { return paint::groupOf(a) == group; };
    if (std::none_of(assumptionTable().begin(), assumptionTable().end(), isIn)) continue;
    addHeading(column, paint::groupTitle(group));
    if (group == paint::AssumptionGroup::Line)
      addSoftText(column, tr("These move no lightness and no colour, only what is called one tone, a block or worth a look."));
    for (const Assumption& assumption : assumptionTable())
      if (isIn(assumption)) addRow(column, assumption);
  }
  column->addStretch(1);
  fill();
}

void AssumptionsCard::addRow(QVBoxLayout* column, const Assumption& assumption) {
  auto* field = new controls::NumberField(specOf(assumption), this);
  column->addWidget(field);
  auto* row = new QHBoxLayout;
  auto* note = new controls::WrappedLabel(this);
  note->setProperty("soft", true);
  row->addWidget(note, 1);
  auto* reset = new QPushButton(tr("Reset"), this);
  reset->setAccessibleName(tr("Reset: %1").arg(field->spec().label));
  reset->setToolTip(tr("Back to our default, %1").arg(paint::assumptionValue(assumption, assumption.value)));
  reset->setMinimumHeight(28);
  row->addWidget(reset);
  column->addLayout(row);
  column->addSpacing(4);
  rows_.push_back({&assumption, field, note, reset});
  connect(field, &controls::NumberField::edited, this,
          [this, &assumption](const std::optional<double>& value, bool stepping) { change(assumption, value, stepping); });
  connect(reset, &QPushButton::clicked, this, [this, &assumption, field] {
    field->abandonTyping();
    field->setFocus();  // the button goes away
    change(assumption, std::nullopt, false);
  });
}

void AssumptionsCard::fill() {
  const auto& overrides = controller_.plan().info().assumptions;
  const Assumptions inForce(overrides);
  const auto length = [](const Assumption& a, double value) {
    if (a.unit != "mm") return paint::assumptionValue(a, value);
    return controls::lengthText(value, controls::Units::current().length(), 2);
  };
  const std::size_t changed = paint::changedAssumptions(overrides).size();
  for (const Row& row : rows_) {
    const Assumption& a = *row.assumption;
    const double value = inForce[a.name];
    const bool differs = value != a.value;
    row.field->setValue(value);
    const QString origin = paint::assumptionOrigin(a);
    const QString standard = differs ? tr("\u25C6 changed; default %1, %2").arg(length(a, a.value), origin)
                                     : tr("default %1, %2").arg(length(a, a.value), origin);
    row.note->setText(standard + QStringLiteral("; ") + row.field->rangeText());
    QFont font = row.note->font();
    font.setBold(differs);
    row.note->setFont(font);
    row.field->setProvenance(standard);
    row.reset->setVisible(differs);
  }
  summary_->setText(changed == 0   ? tr("All as we set them.")
                    : changed == 1 ? tr("\u25C6 One differs from its default.")
                                   : tr("\u25C6 %1 differ from their defaults.").arg(changed));
  resetAll_->setEnabled(changed > 0);
}

void AssumptionsCard::change(const Assumption& assumption, const std::optional<double>& value, bool stepping) {
  if (!stepping || stepped_ != &assumption) stepping_ = document::Gesture::begin();
  stepped_ = stepping ? &assumption : nullptr;
  const plan::Plan& before = controller_.document();
  const std::string key(assumption.name);
  const auto edit = plan::changePlan(before, [&](plan::PlanInfo& info) {
    if (value && *value != assumption.value)
      info.assumptions[key] = *value;
    else
      info.assumptions.erase(key);
  });
  const QString name = paint::assumptionName(assumption.name);
  controller_.edit(plan::applied(before, edit),
                   value ? tr("Change assumption: %1").arg(name) : tr("Reset assumption: %1").arg(name),
                   stepping ? stepping_ : document::Gesture::none());
}

void AssumptionsCard::resetAll() {
  abandonTyping(this);
  const plan::Plan& before = controller_.document();
  const auto edit = plan::changePlan(before, [](plan::PlanInfo& info) {
    for (const Assumption& assumption : assumptionTable()) info.assumptions.erase(std::string(assumption.name));
  });
  controller_.edit(plan::applied(before, edit), tr("Reset all assumptions"));
}

void AssumptionsCard::showAssumption(const std::string& key) {
  buildRows();
  const auto row = std::find_if(rows_.begin(), rows_.end(), [&](const Row& r) { return r.assumption->name == key; });
  if (row == rows_.end()) return;
  row->field->setFocus();
  for (QWidget* above = parentWidget(); above; above = above->parentWidget())
    if (auto* scroll = qobject_cast<QScrollArea*>(above)) {
      const auto reveal = [scroll, note = row->note, field = row->field] {
        scroll->ensureWidgetVisible(note);
        scroll->ensureWidgetVisible(field);
      };
      reveal();
      return QTimer::singleShot(0, scroll, reveal);  // again once new rows have their places
    }
}

}  // namespace combdraft::cards

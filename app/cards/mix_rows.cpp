#include "app/cards/mix_rows.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QStyle>
#include <QVBoxLayout>

#include "app/cards/card_parts.h"
#include "app/controls/drop_widgets.h"
#include "app/paint/figure.h"
#include "app/words/engine_words.h"
#include "app/words/typed_text.h"
#include "engine/base/number_text.h"
#include "engine/plan/field_info.h"
#include "engine/work/strength.h"

namespace combdraft::cards {
namespace {

QString number(double value, int decimals) { return paint::figure(numberText(value, decimals)); }

struct Words {
  Q_DECLARE_TR_FUNCTIONS(MixRows)
};

QString euCaution() {
  return Words::tr("Outside the EU limit of 12 % (40 volumes). Your maker or your place may set less; below the limit is no sign that it suits this hair.");
}

}  // namespace

QString strengthText(double typed, plan::StrengthUnit unit) {
  const auto strength = work::strengthOf(typed, unit);
  if (!strength) return {};
  const auto label = work::nominalLabel(*strength);
  const QString moles = number(strength->molPerLitre(), 3);
  if (unit == plan::StrengthUnit::Percent)
    return label ? Words::tr("%1 % is %2 volumes exactly (label: %3 volumes), %4 mol/l.")
                       .arg(number(typed, 2), number(strength->volumes(), 2), QString::number(label->volumes), moles)
                 : Words::tr("%1 % is %2 volumes exactly, %3 mol/l.").arg(number(typed, 2), number(strength->volumes(), 2), moles);
  return label ? Words::tr("%1 volumes are %2 % exactly (label: %3 %), %4 mol/l.")
                     .arg(number(typed, 1), number(strength->percent, 2), number(label->percent, 1), moles)
               : Words::tr("%1 volumes are %2 % exactly, %3 mol/l.").arg(number(typed, 1), number(strength->percent, 2), moles);
}

QString strengthCaution(double typed, plan::StrengthUnit unit) {
  const auto strength = work::strengthOf(typed, unit);
  if (!strength)
    return Words::tr("No developer has this strength: found %1, allowed is %2. Look at the label again.")
        .arg(words::inWords(strength.error().args[0]), words::inWords(strength.error().args[1]));
  return strength->isOverEuLimit() ? euCaution() : QString();
}

MixRows::MixRows(QWidget* parent) : QWidget(parent) {
  products_.kind = Kind::Product;
  developers_.kind = Kind::Developer;
  additives_.kind = Kind::Additive;
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  buildGroup(products_, column);
  buildGroup(developers_, column);
  mixture_ = addSoftText(column, {});
  mixture_->setObjectName(QStringLiteral("mixture"));
  buildGroup(additives_, column);
}

void MixRows::buildGroup(Group& group, QVBoxLayout* column) {
  const Kind kind = group.kind;
  addHeading(column, kind == Kind::Product     ? tr("Products, parts by weight")
                     : kind == Kind::Developer ? tr("Developer, strength, parts by weight")
                                               : tr("Additives, parts by weight"));
  group.rows = new QVBoxLayout;
  group.rows->setSpacing(3);
  column->addLayout(group.rows);
  group.add = new QPushButton(kind == Kind::Product ? tr("Add product") : kind == Kind::Developer ? tr("Add developer") : tr("Add additive"), this);
  group.add->setToolTip(tr("One more row, empty until you type what the leaflet says"));
  column->addWidget(group.add, 0, Qt::AlignLeft);
  connect(group.add, &QPushButton::clicked, this, [this, kind] {
    const auto add = [kind](plan::Formula& formula) {
      if (kind == Kind::Product) formula.products.emplace_back();
      if (kind == Kind::Developer) formula.developers.emplace_back();
      if (kind == Kind::Additive) formula.additives.emplace_back();
    };
    Q_EMIT edited(kind == Kind::Product ? tr("products") : kind == Kind::Developer ? tr("developers") : tr("additives"), add);
    const Group& filled = kind == Kind::Product ? products_ : kind == Kind::Developer ? developers_ : additives_;
    if (!filled.all.empty()) filled.all.back().name->setFocus();
  });
}

// Calls `change(part or developer)` on the row's entry, where it still is.
template <class Change>
void MixRows::change(Kind kind, std::size_t index, const QString& what, Change change) {
  Q_EMIT edited(what, [kind, index, change](plan::Formula& formula) {
    const auto at = [&](auto& list) {
      if (index < list.size()) change(list[index]);
    };
    if (kind == Kind::Product) at(formula.products);
    if (kind == Kind::Developer) at(formula.developers);
    if (kind == Kind::Additive) at(formula.additives);
  });
}

MixRows::Row MixRows::buildRow(Kind kind, std::size_t index) {
  const QString called = (kind == Kind::Product ? tr("product %1") : kind == Kind::Developer ? tr("developer %1") : tr("additive %1")).arg(index + 1);
  Row row;
  row.box = new QWidget(this);
  auto* lines = new QVBoxLayout(row.box);
  lines->setContentsMargins(0, 0, 0, 0);
  lines->setSpacing(2);
  auto* line = new QHBoxLayout;
  line->setSpacing(4);
  lines->addLayout(line);
  row.name = new QLineEdit(row.box);
  row.name->setPlaceholderText(tr("what it is"));
  row.name->setAccessibleName(tr("Name of %1").arg(called));
  row.name->setMaxLength(60);
  row.name->setMinimumHeight(28);
  line->addWidget(row.name, 1);
  // A developer has four more boxes: they go below its name, where all of a figure is seen.
  auto* boxes = line;
  if (kind == Kind::Developer) {
    boxes = new QHBoxLayout;
    boxes->setSpacing(4);
    lines->addLayout(boxes);
  }
  connect(row.name, &QLineEdit::editingFinished, this, [this, kind, index, called, name = row.name] {
    if (!name->isModified()) return;
    name->setModified(false);
    change(kind, index, tr("name of %1").arg(called), [text = words::oneLine(name->text()).simplified().toStdString()](auto& entry) { entry.name = text; });
  });
  const auto box = [&](const char* field, const QString& label, const QString& tip) {
    controls::NumberFieldSpec spec = specOf(field, label, {}, 1, 3);
    spec.mayBeEmpty = true;
    spec.emptyText = tr("type it");
    spec.tip = tip;
    spec.face = controls::NumberFieldSpec::Face::BoxOnly;
    auto* made = new controls::NumberField(spec, row.box);
    made->setMaximumWidth(fontMetrics().averageCharWidth() * 12);
    boxes->addWidget(made);
    return made;
  };
  if (kind == Kind::Developer) {
    row.strength = box("developer.strength", tr("Strength of %1").arg(called), tr("Hydrogen peroxide, as its label says"));
    connect(row.strength, &controls::NumberField::edited, this, [this, index, called](std::optional<double> value) {
      Q_EMIT edited(tr("strength of %1").arg(called), [index, value](plan::Formula& f) {
        if (index < f.developers.size()) f.developers[index].strength = value;
      });
    });
    row.unit = newCombo(row.box, tr("Unit of %1").arg(called), {tr("%"), tr("vol")});
    row.unit->setMaximumWidth(fontMetrics().averageCharWidth() * 11);
    boxes->addWidget(row.unit);
    connect(row.unit, &QComboBox::activated, this, [this, index, called](int unit) {
      Q_EMIT edited(tr("unit of %1").arg(called), [index, unit](plan::Formula& f) {
        if (index < f.developers.size()) f.developers[index].unit = unit == 0 ? plan::StrengthUnit::Percent : plan::StrengthUnit::Volume;
      });
    });
  }
  row.parts = box(kind == Kind::Developer ? "developer.parts" : "mixPart.parts", tr("Parts of %1").arg(called),
                  tr("Parts by weight, as the leaflet says; a bowl is split into grams when all are typed"));
  connect(row.parts, &controls::NumberField::edited, this, [this, kind, index, called](std::optional<double> value) {
    change(kind, index, tr("parts of %1").arg(called), [value](auto& entry) { entry.parts = value; });
  });
  boxes->addWidget(new QLabel(tr("parts"), row.box));
  if (kind == Kind::Developer) boxes->addStretch(1);
  auto* remove = new QPushButton(QStringLiteral("−"), row.box);
  remove->setAccessibleName(tr("Remove %1").arg(called));
  remove->setToolTip(tr("Take %1 out of the mixture").arg(called));
  remove->setMaximumWidth(32);
  remove->setMinimumHeight(28);
  line->addWidget(remove);
  connect(remove, &QPushButton::clicked, this, [this, kind, index, called] {
    Q_EMIT edited(called, [kind, index](plan::Formula& formula) {
      const auto erase = [&](auto& list) {
        if (index < list.size()) list.erase(list.begin() + static_cast<std::ptrdiff_t>(index));
      };
      if (kind == Kind::Product) erase(formula.products);
      if (kind == Kind::Developer) erase(formula.developers);
      if (kind == Kind::Additive) erase(formula.additives);
    });
  });
  if (kind == Kind::Developer) {
    row.says = addSoftText(lines, {});
    row.says->setObjectName(QStringLiteral("strength"));
  }
  return row;
}

void MixRows::fit(Group& group, std::size_t count) {
  while (group.all.size() > count) {
    controls::dropWidget(group.all.back().box);
    group.all.pop_back();
  }
  while (group.all.size() < count) {
    group.all.push_back(buildRow(group.kind, group.all.size()));
    group.rows->addWidget(group.all.back().box);
  }
  group.add->setEnabled(count < plan::limits::kMixParts);
}

void MixRows::fillParts(Group& group, const std::vector<plan::MixPart>& parts) {
  fit(group, parts.size());
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const Row& row = group.all[i];
    if (!row.name->isModified()) row.name->setText(QString::fromStdString(parts[i].name));
    row.parts->setValue(parts[i].parts);
  }
}

void MixRows::fillDevelopers(Group& group, const std::vector<plan::Developer>& developers) {
  fit(group, developers.size());
  for (std::size_t i = 0; i < developers.size(); ++i) {
    const plan::Developer& developer = developers[i];
    const Row& row = group.all[i];
    if (!row.name->isModified()) row.name->setText(QString::fromStdString(developer.name));
    row.strength->setValue(developer.strength);
    row.unit->setCurrentIndex(developer.unit == plan::StrengthUnit::Percent ? 0 : 1);
    row.parts->setValue(developer.parts);
    const QString caution = developer.strength ? strengthCaution(*developer.strength, developer.unit) : QString();
    QStringList lines;
    if (!caution.isEmpty()) lines << QStringLiteral("⚠ ") + caution;
    if (developer.strength) lines << strengthText(*developer.strength, developer.unit);
    lines.removeAll(QString());
    row.says->setText(lines.join(u'\n'));
    row.says->setVisible(!lines.isEmpty());
    row.says->setProperty("caution", !caution.isEmpty());
    row.says->setProperty("soft", caution.isEmpty());
    row.says->style()->unpolish(row.says);  // the style looks at properties once
    row.says->style()->polish(row.says);
  }
}

void MixRows::abandonNames() {
  for (Group* group : {&products_, &developers_, &additives_})
    for (const Row& row : group->all) row.name->setModified(false);
}

void MixRows::setFormula(const plan::Formula& formula) {
  fillParts(products_, formula.products);
  fillDevelopers(developers_, formula.developers);
  fillParts(additives_, formula.additives);
  QString mixture;
  if (formula.developers.size() > 1) {
    const auto strength = work::developerStrength(formula);
    mixture = !strength    ? QString()
              : !*strength ? tr("Type strength and parts of each developer to see what they come to.")
                           : tr("Mixed by these parts: %1 %, %2 volumes exactly.").arg(number((*strength)->percent, 2), number((*strength)->volumes(), 1));
  }
  mixture_->setText(mixture);
  mixture_->setVisible(!mixture.isEmpty());
}

}  // namespace combdraft::cards

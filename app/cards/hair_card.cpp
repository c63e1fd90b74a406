#include "app/cards/hair_card.h"

#include <QCoreApplication>
#include <QDate>
#include <QGridLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "app/cards/card_parts.h"

namespace combdraft::cards {
namespace {

using Typed = std::optional<double>;

struct HairNumber {
  const char *field, *label, *unit;
  double shownPerValue;
  int decimals;
  Typed (*get)(const plan::Hair&);
  void (*set)(plan::Hair&, const Typed&);
  const char* emptyText;
};

constexpr HairNumber kNumbers[] = {
    {"hair.density_per_cm2", QT_TRANSLATE_NOOP("HairCard", "Hairs on a square centimetre"), "", 1, 0,
     [](const plan::Hair& h) -> Typed { return h.density_per_cm2; },
     [](plan::Hair& h, const Typed& v) { h.density_per_cm2 = *v; }, nullptr},
    {"hair.fibre_um", QT_TRANSLATE_NOOP("HairCard", "Thickness of one hair"), "µm", 1, 1,
     [](const plan::Hair& h) -> Typed { return h.fibre_um; },
     [](plan::Hair& h, const Typed& v) { h.fibre_um = *v; }, nullptr},
    {"hair.layering_frac", QT_TRANSLATE_NOOP("HairCard", "Layering"), "%", 100, 0,
     [](const plan::Hair& h) -> Typed { return h.layering_frac; },
     [](plan::Hair& h, const Typed& v) { h.layering_frac = *v; }, nullptr},
    {"hair.cutLine_mm", QT_TRANSLATE_NOOP("HairCard", "Planned hem, below the head's middle"), "mm", 1, 0,
     [](const plan::Hair& h) -> Typed { return h.cutLine_mm; },
     [](plan::Hair& h, const Typed& v) { h.cutLine_mm = v; }, QT_TRANSLATE_NOOP("HairCard", "as grown")},
    {"hair.toneWarmth", QT_TRANSLATE_NOOP("HairCard", "Natural tone, ash −1 to red-gold +1"), "", 1, 1,
     [](const plan::Hair& h) -> Typed { return h.toneWarmth; },
     [](plan::Hair& h, const Typed& v) { h.toneWarmth = *v; }, nullptr},
    {"hair.white_frac", QT_TRANSLATE_NOOP("HairCard", "White hair"), "%", 100, 0,
     [](const plan::Hair& h) -> Typed { return h.white_frac; },
     [](plan::Hair& h, const Typed& v) { h.white_frac = *v; }, nullptr}};

constexpr const char* kZoneNames[] = {
    QT_TRANSLATE_NOOP("HairCard", "Front"), QT_TRANSLATE_NOOP("HairCard", "Top"),
    QT_TRANSLATE_NOOP("HairCard", "Crown"), QT_TRANSLATE_NOOP("HairCard", "Sides"),
    QT_TRANSLATE_NOOP("HairCard", "Back"),  QT_TRANSLATE_NOOP("HairCard", "Nape")};

double& levelPart(plan::RootMiddleEnd& level, std::size_t part) {
  return part == 0 ? level.root : part == 1 ? level.middle : level.end;
}

}  // namespace

HairCard::HairCard(document::DocumentController& controller, QWidget* parent)
    : QWidget(parent), controller_(controller) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 12);
  column->setSpacing(5);
  addTitle(column, tr("Hair"));
  curl_ = addChoice(column, tr("How it falls"),
                    {tr("straight"), tr("loose wave"), tr("wave"), tr("loose curl"), tr("curl"),
                     tr("tight curl"), tr("coil"), tr("tight coil")});
  connect(curl_, &QComboBox::activated, this, [this](int i) {
    change(tr("how the hair falls"), [i](plan::Hair& h) { h.curl = static_cast<plan::CurlClass>(i); });
  });
  for (const HairNumber& row : kNumbers) {
    controls::NumberFieldSpec spec =
        specOf(row.field, tr(row.label), QString::fromUtf8(row.unit), row.shownPerValue, row.decimals);
    spec.mayBeEmpty = row.emptyText != nullptr;
    if (row.emptyText) spec.emptyText = tr(row.emptyText);
    if (spec.high <= 1 && row.shownPerValue == 1) spec.step = 0.1;
    auto* field = new controls::NumberField(spec, this);
    connect(field, &controls::NumberField::edited, this, [this, &row](const Typed& value) {
      change(tr(row.label), [&](plan::Hair& h) { row.set(h, value); });
    });
    numbers_.push_back(field);
    column->addWidget(field);
  }

  addHeading(column, tr("Length and level, zone by zone"));
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(4);
  grid->setVerticalSpacing(4);
  const QString heads[] = {tr("mm"), tr("root"), tr("middle"), tr("ends")};
  for (std::size_t part = 0; part < 4; ++part) {
    auto* head = new QLabel(heads[part], this);
    head->setProperty("soft", true);
    grid->addWidget(head, 0, static_cast<int>(part) + 1, Qt::AlignRight);
  }
  for (std::size_t zone = 0; zone < plan::kHairZones; ++zone) {
    const QString name = tr(kZoneNames[zone]);
    grid->addWidget(new QLabel(name, this), static_cast<int>(zone) + 1, 0);
    for (std::size_t part = 0; part < 4; ++part) {
      controls::NumberFieldSpec spec =
          part == 0 ? specOf("hair.length_mm", tr("%1, length in mm").arg(name), {}, 1, 0)
                    : specOf("hair.level", tr("%1, level at the %2").arg(name, heads[part]), {});
      spec.step = part == 0 ? 10 : 0.5;
      spec.face = controls::NumberFieldSpec::Face::BoxOnly;
      auto* field = new controls::NumberField(spec, this);
      connect(field, &controls::NumberField::edited, this, [this, zone, part, name](const Typed& value) {
        change(part == 0 ? tr("length, %1").arg(name) : tr("level, %1").arg(name), [&](plan::Hair& h) {
          if (part == 0)
            h.length_mm[zone] = *value;
          else
            levelPart(h.level[zone], part - 1) = *value;
        });
      });
      zones_[zone][part] = field;
      grid->addWidget(field, static_cast<int>(zone) + 1, static_cast<int>(part) + 1);
    }
  }
  column->addLayout(grid);

  addHeading(column, tr("Condition, as found"));
  const QStringList words{tr("not checked"), tr("good"), tr("fair"), tr("poor")};
  for (std::size_t zone = 0; zone < plan::kHairZones; ++zone) {
    condition_[zone] = addChoice(column, tr(kZoneNames[zone]), words);
    connect(condition_[zone], &QComboBox::activated, this, [this, zone](int i) {
      change(tr("condition"), [&](plan::Hair& h) {
        h.condition[zone] = static_cast<plan::Condition>(i);
        if (h.conditionDate.empty())
          h.conditionDate = QDate::currentDate().toString(Qt::ISODate).toStdString();
      });
    });
  }
  auto* row = new QHBoxLayout;
  auto* label = new QLabel(tr("Checked on"), this);
  checked_ = new QLineEdit(this);
  checked_->setPlaceholderText(tr("YYYY-MM-DD"));
  checked_->setAccessibleName(label->text());
  checked_->setMinimumHeight(28);
  label->setBuddy(checked_);
  row->addWidget(label, 1);
  row->addWidget(checked_, 1);
  column->addLayout(row);
  connect(checked_, &QLineEdit::editingFinished, this, [this] {
    if (!checked_->isModified()) return;
    const QString typed = checked_->text().trimmed();
    if (!typed.isEmpty() && !QDate::fromString(typed, Qt::ISODate).isValid()) {
      checked_->setToolTip(tr("“%1” is not a date. Right would be: 2026-03-14").arg(typed));
      checked_->setText(QString::fromStdString(controller_.plan().hair().conditionDate));
      return;
    }
    checked_->setModified(false);
    change(tr("date of the check"), [&](plan::Hair& h) { h.conditionDate = typed.toStdString(); });
  });
  column->addStretch(1);
  connect(&controller_, &document::DocumentController::changed, this, &HairCard::fill);
  fill();
}

void HairCard::change(const QString& what, const std::function<void(plan::Hair&)>& change) {
  plan::Plan next = controller_.document();
  plan::Hair hair = next.hair();
  change(hair);
  next.put(plan::kHairId, hair);
  controller_.edit(next, tr("Change %1").arg(what.left(1).toLower() + what.mid(1)));
}

void HairCard::fill() {
  const plan::Hair& hair = controller_.plan().hair();
  curl_->setCurrentIndex(static_cast<int>(hair.curl));
  for (std::size_t i = 0; i < numbers_.size(); ++i) numbers_[i]->setValue(kNumbers[i].get(hair));
  for (std::size_t zone = 0; zone < plan::kHairZones; ++zone) {
    zones_[zone][0]->setValue(hair.length_mm[zone]);
    zones_[zone][1]->setValue(hair.level[zone].root);
    zones_[zone][2]->setValue(hair.level[zone].middle);
    zones_[zone][3]->setValue(hair.level[zone].end);
    condition_[zone]->setCurrentIndex(static_cast<int>(hair.condition[zone]));
  }
  if (!(checked_->hasFocus() && checked_->isModified()))
    checked_->setText(QString::fromStdString(hair.conditionDate));
}

}  // namespace combdraft::cards

#include "app/cards/hair_card.h"

#include <QDate>
#include <QGridLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "app/cards/card_parts.h"
#include "app/cards/hair_numbers.h"
#include "app/cards/issue_lines.h"
#include "app/cards/provenance.h"
#include "app/cards/zone_words.h"
#include "engine/plan/edits.h"

namespace combdraft::cards {
namespace {

using Typed = std::optional<double>;

// What a new entry begins with: a place to type over, nothing known (own choice).
constexpr double kNewFrom_mm = 50, kNewTo_mm = 150, kNewShare_frac = 0.1;

StretchList::Column column(const char* field, const QString& label, const QString& unit, double shownPerValue = 1) {
  StretchList::Column made{specOf(field, label, unit, shownPerValue, unit == QLatin1String("mm") ? 0 : 1), field};
  if (unit == QLatin1String("mm")) made.spec.step = 10;
  return made;
}

bool zonesDiffer(const plan::Hair& hair) {
  return std::any_of(hair.level.begin(), hair.level.end(),
                     [&](const plan::RootMiddleEnd& level) { return !(level == hair.level.front()); });
}

}  // namespace

HairCard::HairCard(document::DocumentController& controller, QWidget* parent)
    : QWidget(parent), controller_(controller) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 12);
  column->setSpacing(5);
  addTitle(column, tr("Hair"));
  caution_ = addCaution(column);
  curl_ = addChoice(column, tr("How it falls"),
                    {tr("straight"), tr("loose wave"), tr("wave"), tr("loose curl"), tr("curl"),
                     tr("tight curl"), tr("coil"), tr("tight coil")});
  connect(curl_, &QComboBox::activated, this, [this](int i) {
    change(tr("how the hair falls"), [i](plan::Hair& h) { h.curl = static_cast<plan::CurlClass>(i); });
  });
  buildNumbers(column);
  buildTable(column);
  buildStretches(column);
  buildCondition(column);
  column->addStretch(1);
  connect(&controller_, &document::DocumentController::changed, this,
          [this](const document::DocumentChange& change) {
            if (change.kind == document::DocumentChange::Kind::Replaced) {
              abandonTyping(this);
              setRows(zonesDiffer(controller_.plan().hair()) ? ZoneTable::Rows::ZoneByZone : ZoneTable::Rows::Together);
            }
            fill();
          });
  setRows(zonesDiffer(controller_.plan().hair()) ? ZoneTable::Rows::ZoneByZone : ZoneTable::Rows::Together);
  fill();
}

void HairCard::buildNumbers(QVBoxLayout* column) {
  for (const HairNumber& row : hairNumbers()) {
    const QString label = tr(row.label), what = tr(row.change);
    controls::NumberFieldSpec spec = specOf(row.field, label, QString::fromUtf8(row.unit), row.shownPerValue, row.decimals);
    spec.mayBeEmpty = row.emptyText != nullptr;
    if (row.emptyText) spec.emptyText = tr(row.emptyText);
    if (spec.high <= 1 && row.shownPerValue == 1) spec.step = 0.1;
    auto* field = new controls::NumberField(spec, this);
    connect(field, &controls::NumberField::edited, this, [this, &row, what](const Typed& value, bool stepping) {
      changeNumber(what, stepping, [&](plan::Hair& h) { row.set(h, value); });
    });
    numbers_.push_back(field);
    column->addWidget(field);
  }
}

void HairCard::buildTable(QVBoxLayout* column) {
  addHeading(column, tr("Length and level"));
  rows_ = new controls::Segments(tr("Length and level"),
                                 {{tr("All zones the same"), tr("One row: what is typed goes to the whole head"), {}},
                                  {tr("Zone by zone"), tr("A row for each zone of the head"), {}}},
                                 this);
  column->addWidget(rows_);
  table_ = new ZoneTable(this);
  column->addWidget(table_);
  connect(rows_, &controls::Segments::chosen, this, [this](int i) { setRows(static_cast<ZoneTable::Rows>(i)); });
  connect(table_, &ZoneTable::edited, this,
          [this](const std::optional<plan::HairZone>& zone, ZonePart part, double value, bool stepping) {
            const QString where = zone ? zoneName(*zone).toLower() : tr("all zones");
            const QString words[] = {tr("length"), tr("level at the root"), tr("level in the middle"), tr("level at the ends")};
            changeNumber(tr("%1, %2").arg(words[static_cast<int>(part)], where), stepping, [&](plan::Hair& h) {
              for (std::size_t i = 0; i < plan::kHairZones; ++i)
                if (!zone || static_cast<std::size_t>(*zone) == i) setZoneValue(h, i, part, value);
            });
          });
}

void HairCard::setRows(ZoneTable::Rows rows) {
  rows_->setCurrent(static_cast<int>(rows));
  table_->setRows(rows);
}

void HairCard::buildStretches(QVBoxLayout* column_) {
  addHeading(column_, tr("Old colour bands"));
  bands_ = new StretchList(tr("band"), tr("Add band"), tr("None. A band is a stretch where all hair has another level, from earlier colour."),
                           {column("band.from_mm", tr("from"), QStringLiteral("mm")),
                            column("band.to_mm", tr("to"), QStringLiteral("mm")), column("band.level", tr("level"), {})},
                           this);
  bands_->setObjectName(QStringLiteral("bands"));
  column_->addWidget(bands_);
  connect(bands_, &StretchList::addWanted, this, [this] {
    edit(tr("Add colour band"), [](plan::Hair& h) {
      h.bands.push_back({std::nullopt, kNewFrom_mm, kNewTo_mm, h.level.front().middle, {}});
    }, document::Gesture::none());
    bands_->zone(bands_->size() - 1)->setFocus();
  });
  connect(bands_, &StretchList::removeWanted, this, [this](std::size_t row) {
    edit(tr("Remove colour band %1").arg(row + 1),
         [row](plan::Hair& h) { h.bands.erase(h.bands.begin() + static_cast<std::ptrdiff_t>(row)); }, document::Gesture::none());
  });
  connect(bands_, &StretchList::zoneChosen, this, [this](std::size_t row, const std::optional<plan::HairZone>& zone) {
    change(tr("zone of colour band %1").arg(row + 1), [&](plan::Hair& h) { h.bands[row].zone = zone; });
  });
  connect(bands_, &StretchList::edited, this, [this](std::size_t row, std::size_t at, double value, bool stepping) {
    changeNumber(tr("colour band %1").arg(row + 1), stepping, [&](plan::Hair& h) {
      plan::Band& band = h.bands[row];
      (at == 0 ? band.from_mm : at == 1 ? band.to_mm : band.level) = value;
    });
  });

  addHeading(column_, tr("Already light, scattered"));
  scattered_ = new StretchList(tr("light hair"), tr("Add light hair"),
                               tr("None. Here stands which share of the hairs is already light, as after earlier highlights."),
                               {column("scattered.share_frac", tr("share, %"), QStringLiteral("%"), 100),
                                column("scattered.from_mm", tr("from"), QStringLiteral("mm")),
                                column("scattered.to_mm", tr("to"), QStringLiteral("mm")),
                                column("scattered.level", tr("level"), {})},
                               this);
  scattered_->setObjectName(QStringLiteral("scattered"));
  column_->addWidget(scattered_);
  connect(scattered_, &StretchList::addWanted, this, [this] {
    edit(tr("Add light hair"), [](plan::Hair& h) {
      plan::ScatteredLight light;
      light.share_frac = kNewShare_frac;
      light.from_mm = kNewFrom_mm;
      h.scattered.push_back(light);
    }, document::Gesture::none());
    scattered_->zone(scattered_->size() - 1)->setFocus();
  });
  connect(scattered_, &StretchList::removeWanted, this, [this](std::size_t row) {
    edit(tr("Remove light hair %1").arg(row + 1),
         [row](plan::Hair& h) { h.scattered.erase(h.scattered.begin() + static_cast<std::ptrdiff_t>(row)); }, document::Gesture::none());
  });
  connect(scattered_, &StretchList::zoneChosen, this, [this](std::size_t row, const std::optional<plan::HairZone>& zone) {
    change(tr("zone of light hair %1").arg(row + 1), [&](plan::Hair& h) { h.scattered[row].zone = zone; });
  });
  connect(scattered_, &StretchList::edited, this, [this](std::size_t row, std::size_t at, double value, bool stepping) {
    changeNumber(tr("light hair %1").arg(row + 1), stepping, [&](plan::Hair& h) {
      plan::ScatteredLight& light = h.scattered[row];
      (at == 0 ? light.share_frac : at == 1 ? light.from_mm : at == 2 ? light.to_mm : light.level) = value;
    });
  });
}

void HairCard::buildCondition(QVBoxLayout* column) {
  addHeading(column, tr("Condition, as found"));
  const QStringList words{tr("not checked"), tr("good"), tr("fair"), tr("poor")};
  for (std::size_t row = 0; row < condition_.size(); ++row) {
    const std::optional<plan::HairZone> zone = zoneAtRow(static_cast<int>(row));
    condition_[row] = addChoice(column, zone ? zoneName(*zone) : tr("All zones"), words);
    condition_[row]->setToolTip(tr("Porosity, elasticity, breakage as found by hand; recorded by you"));
    connect(condition_[row], &QComboBox::activated, this, [this, zone](int i) {
      const QString where = zone ? zoneName(*zone).toLower() : tr("all zones");
      change(tr("condition, %1").arg(where), [&](plan::Hair& h) {
        for (std::size_t at = 0; at < plan::kHairZones; ++at)
          if (!zone || static_cast<std::size_t>(*zone) == at) h.condition[at] = static_cast<plan::Condition>(i);
        // Recorded today unless a day is typed.
        if (h.conditionDate.empty() && i != 0)
          h.conditionDate = QDate::currentDate().toString(Qt::ISODate).toStdString();
      });
    });
  }
  checked_ = new controls::TextField({tr("Checked on"), tr("YYYY-MM-DD"), tr("The day the condition was looked at"), 10}, this);
  checked_->setCheck(controls::dateProblem);
  column->addWidget(checked_);
  connect(checked_, &controls::TextField::edited, this, [this](const QString& text) {
    change(tr("date of the check"), [&](plan::Hair& h) { h.conditionDate = text.toStdString(); });
  });
}

QComboBox* HairCard::condition(const std::optional<plan::HairZone>& zone) {
  return condition_[static_cast<std::size_t>(rowOfZone(zone))];
}

void HairCard::edit(const QString& name, const std::function<void(plan::Hair&)>& change, document::Gesture gesture) {
  const plan::Plan& before = controller_.document();
  controller_.edit(plan::applied(before, plan::changeHair(before, change)), name, gesture);
}

void HairCard::change(const QString& what, const std::function<void(plan::Hair&)>& change) {
  changeNumber(what, false, change);
}

void HairCard::changeNumber(const QString& what, bool stepping, const std::function<void(plan::Hair&)>& change) {
  if (!stepping || what != steppedWhat_) stepping_ = document::Gesture::begin();
  steppedWhat_ = stepping ? what : QString();
  edit(tr("Change %1").arg(what), change, stepping ? stepping_ : document::Gesture::none());
}

void HairCard::fill() {
  const plan::Hair& hair = controller_.plan().hair();
  curl_->setCurrentIndex(static_cast<int>(hair.curl));
  for (std::size_t i = 0; i < numbers_.size(); ++i) {
    const HairNumber& row = hairNumbers()[i];
    numbers_[i]->setValue(row.get(hair));
    numbers_[i]->setProvenance(provenance(row.field, row.get(hair)));
  }
  table_->setHair(hair);
  std::vector<HairStretch> bands, scattered;
  for (const plan::Band& b : hair.bands) bands.push_back({b.zone, {b.from_mm, b.to_mm, b.level}});
  for (const plan::ScatteredLight& s : hair.scattered)
    scattered.push_back({s.zone, {s.share_frac, s.from_mm, s.to_mm, s.level}});
  bands_->setRows(bands);
  scattered_->setRows(scattered);
  fillCondition(hair);
  showLines(caution_, hairIssues(controller_.plan()));
}

void HairCard::fillCondition(const plan::Hair& hair) {
  const bool same = std::all_of(hair.condition.begin(), hair.condition.end(),
                                [&](plan::Condition c) { return c == hair.condition.front(); });
  condition_[0]->setCurrentIndex(same ? static_cast<int>(hair.condition.front()) : -1);
  for (std::size_t zone = 0; zone < plan::kHairZones; ++zone)
    condition_[zone + 1]->setCurrentIndex(static_cast<int>(hair.condition[zone]));
  checked_->setText(QString::fromStdString(hair.conditionDate));
}

}  // namespace combdraft::cards

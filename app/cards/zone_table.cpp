#include "app/cards/zone_table.h"

#include <QKeyEvent>
#include <QVBoxLayout>

#include "app/cards/card_parts.h"
#include "app/cards/provenance.h"
#include "app/cards/zone_words.h"
#include "app/controls/units.h"
#include "app/controls/wrapped_label.h"

namespace combdraft::cards {

double zoneValue(const plan::Hair& hair, std::size_t zone, ZonePart part) {
  switch (part) {
    case ZonePart::Length: return hair.length_mm[zone];
    case ZonePart::Root: return hair.level[zone].root;
    case ZonePart::Middle: return hair.level[zone].middle;
    case ZonePart::End: return hair.level[zone].end;
  }
  return 0;
}

void setZoneValue(plan::Hair& hair, std::size_t zone, ZonePart part, double value) {
  switch (part) {
    case ZonePart::Length: hair.length_mm[zone] = value; break;
    case ZonePart::Root: hair.level[zone].root = value; break;
    case ZonePart::Middle: hair.level[zone].middle = value; break;
    case ZonePart::End: hair.level[zone].end = value; break;
  }
}

ZoneTable::ZoneTable(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(4);
  grid->setVerticalSpacing(4);
  column->addLayout(grid);
  const QString heads[] = {QString(), tr("root"), tr("middle"), tr("ends")};
  for (std::size_t part = 0; part < kZoneParts; ++part) {
    auto* head = new controls::WrappedLabel(heads[part], this);
    head->setProperty("soft", true);
    grid->addWidget(head, 0, static_cast<int>(part) + 1);
    grid->setColumnStretch(static_cast<int>(part) + 1, 1);
    head->setAlignment(Qt::AlignRight | Qt::AlignBottom);
    if (part == 0) lengthHead_ = head;
  }
  for (std::size_t row = 0; row < boxes_.size(); ++row) {
    const QString name = row == 0 ? tr("All zones") : zoneName(static_cast<plan::HairZone>(row - 1));
    names_[row] = new controls::WrappedLabel(name, this);
    grid->addWidget(names_[row], static_cast<int>(row) + 1, 0);
    for (std::size_t part = 0; part < kZoneParts; ++part) addBox(grid, row, part, name);
  }
  problem_ = addCaution(column);
  connect(&controls::Units::current(), &controls::Units::changed, this, &ZoneTable::showHeads);
  showHeads();
}

void ZoneTable::addBox(QGridLayout* grid, std::size_t row, std::size_t part, const QString& name) {
  const QString labels[] = {tr("%1, length").arg(name), tr("%1, level at the root").arg(name),
                            tr("%1, level in the middle").arg(name), tr("%1, level at the ends").arg(name)};
  controls::NumberFieldSpec spec = part == 0 ? specOf("hair.length_mm", labels[part], QStringLiteral("mm"), 1, 0)
                                             : specOf("hair.level", labels[part], {});
  spec.step = part == 0 ? 10 : 0.5;
  spec.face = controls::NumberFieldSpec::Face::BoxOnly;
  auto* box = new controls::NumberField(spec, this);
  box->edit()->setProperty("row", static_cast<int>(row));
  box->edit()->setProperty("part", static_cast<int>(part));
  box->edit()->installEventFilter(this);
  connect(box, &controls::NumberField::edited, this, [this, row, part](const std::optional<double>& value, bool stepping) {
    if (value) Q_EMIT edited(zoneAtRow(static_cast<int>(row)), static_cast<ZonePart>(part), *value, stepping);
  });
  // A box has no room for the reason: it stands below the table.
  connect(box, &controls::NumberField::problemChanged, this, [this, label = labels[part]](const QString& problem) {
    showLines(problem_, problem.isEmpty() ? QStringList() : QStringList{label + QStringLiteral(": ") + problem});
  });
  boxes_[row][part] = box;
  grid->addWidget(box, static_cast<int>(row) + 1, static_cast<int>(part) + 1);
}

void ZoneTable::showHeads() {
  lengthHead_->setText(tr("length, %1").arg(controls::unitWord(controls::Units::current().length())));
}

void ZoneTable::setRows(Rows rows) {
  for (std::size_t row = 1; row < boxes_.size(); ++row) {
    names_[row]->setVisible(rows == Rows::ZoneByZone);
    for (controls::NumberField* box : boxes_[row]) box->setVisible(rows == Rows::ZoneByZone);
  }
}

void ZoneTable::setHair(const plan::Hair& hair) {
  for (std::size_t p = 0; p < kZoneParts; ++p) {
    const auto part = static_cast<ZonePart>(p);
    const char* field = part == ZonePart::Length ? "hair.length_mm" : "hair.level";
    bool same = true;
    for (std::size_t zone = 0; zone < plan::kHairZones; ++zone) {
      const double value = zoneValue(hair, zone, part);
      same = same && value == zoneValue(hair, 0, part);
      boxes_[zone + 1][p]->setValue(value);
      // Lengths have no row of their own in the table of defaults: six of them.
      const bool usual = part == ZonePart::Length && value == plan::Hair().length_mm[zone];
      boxes_[zone + 1][p]->setProvenance(usual ? tr("Our default: own assumption.") : provenance(field, value));
    }
    if (same)
      boxes_[0][p]->setValue(zoneValue(hair, 0, part));
    else
      boxes_[0][p]->setMixed();
    boxes_[0][p]->setProvenance(same ? provenance(field, zoneValue(hair, 0, part)) : tr("The zones differ here."));
  }
}

void ZoneTable::walk(std::size_t row, std::size_t part, int down, int right) {
  const int toRow = static_cast<int>(row) + down, toPart = static_cast<int>(part) + right;
  if (toRow < 0 || toRow >= static_cast<int>(boxes_.size()) || toPart < 0 || toPart >= static_cast<int>(kZoneParts)) return;
  controls::NumberField* to = boxes_[static_cast<std::size_t>(toRow)][static_cast<std::size_t>(toPart)];
  if (!to->isHidden()) to->edit()->setFocus(Qt::TabFocusReason);
}

bool ZoneTable::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
  const auto* key = static_cast<QKeyEvent*>(event);
  const auto row = static_cast<std::size_t>(watched->property("row").toInt());
  const auto part = static_cast<std::size_t>(watched->property("part").toInt());
  if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
    // The box takes its value first; a refused one keeps the hand.
    QMetaObject::invokeMethod(this, [this, row, part] {
      if (boxes_[row][part]->problem().isEmpty()) walk(row, part, 1, 0);
    }, Qt::QueuedConnection);
    return false;
  }
  if (key->modifiers() & Qt::ControlModifier) {
    const int ahead = layoutDirection() == Qt::RightToLeft ? -1 : 1;
    switch (key->key()) {
      case Qt::Key_Up: walk(row, part, -1, 0); return true;
      case Qt::Key_Down: walk(row, part, 1, 0); return true;
      case Qt::Key_Left: walk(row, part, 0, -ahead); return true;
      case Qt::Key_Right: walk(row, part, 0, ahead); return true;
      default: break;
    }
  }
  return QWidget::eventFilter(watched, event);
}

}  // namespace combdraft::cards

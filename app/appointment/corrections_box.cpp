#include "app/appointment/corrections_box.h"

#include <QLabel>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "app/controls/wrapped_label.h"
#include "app/paint/figure.h"
#include "app/paint/hair_words.h"
#include "app/paint/work_words.h"
#include "engine/base/number_text.h"
#include "engine/plan/field_info.h"
#include "engine/work/toning.h"
#include "engine/work/work_order.h"

namespace combdraft::appointment {
using namespace paint;  // its words
namespace {

using Outcome = document::DocumentController::Outcome;

constexpr int kListLines = 7;

QString notTyped() { return CorrectionsBox::tr("not typed"); }

controls::NumberFieldSpec specOf(const char* field, const QString& label, const QString& unit, double shownPerValue, const QString& tip) {
  const plan::FieldInfo& info = plan::fieldInfo(field);
  controls::NumberFieldSpec spec;
  spec.label = label;
  spec.unit = unit;
  spec.low = info.low;
  spec.high = info.high;
  spec.shownPerValue = shownPerValue;
  spec.emptyText = notTyped();
  spec.tip = tip;
  return spec;
}

QString levelNow(const plan::Piece& piece) {
  const double level = piece.root.finish ? piece.root.finish->level : piece.root.lifts.level;
  return paint::figure(numberText(level, 1));
}

QPushButton* button(QBoxLayout* row, const QString& text, const QString& tip, QWidget* parent) {
  auto* made = new QPushButton(text, parent);
  made->setMinimumHeight(34);
  made->setToolTip(tip);
  row->addWidget(made);
  return made;
}

}  // namespace

CorrectionsBox::CorrectionsBox(document::DocumentController& controller, QWidget* parent) : QWidget(parent), controller_(controller) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 6, 0);
  column->setSpacing(6);
  auto* heading = new controls::WrappedLabel(tr("Too striped, too light, too cool: put depth back"), this);
  QFont font = heading->font();
  font.setWeight(QFont::DemiBold);
  heading->setFont(font);
  column->addWidget(heading);
  for (const QString& text : {tr("Lightening again is not proposed here: look at the hair, ask the maker's directions; in doubt do not go on."), colourCaution()}) {
    auto* caution = new controls::WrappedLabel(text, this);
    caution->setProperty("caution", true);
    column->addWidget(caution);
  }
  buildPieces(column);
  buildShadow(column);
  column->addStretch(1);
  enable();
}

void CorrectionsBox::buildPieces(QVBoxLayout* column) {
  pieces_ = new QListWidget(this);
  pieces_->setAccessibleName(tr("Pieces to correct"));
  pieces_->setSelectionMode(QAbstractItemView::ExtendedSelection);
  pieces_->setFixedHeight((pieces_->fontMetrics().height() + 12) * kListLines);
  column->addWidget(pieces_);
  connect(pieces_, &QListWidget::itemSelectionChanged, this, &CorrectionsBox::enable);
  deepenTo_ = new FinishField(tr("Chosen pieces"), this);
  column->addWidget(deepenTo_);
  connect(deepenTo_, &FinishField::edited, this, &CorrectionsBox::enable);
  auto* row = new QHBoxLayout;
  column->addLayout(row);
  deepen_ = button(row, tr("Deepen the chosen pieces"), tr("To the level and tone above; one undo takes it back"), this);
  leaveOut_ = button(row, tr("Leave them out next time"), tr("The placement keeps their place dark from now on; one undo takes it back"), this);
  row->addStretch(1);
  connect(deepen_, &QPushButton::clicked, this, &CorrectionsBox::deepenChosen);
  connect(leaveOut_, &QPushButton::clicked, this, &CorrectionsBox::leaveOutChosen);
}

void CorrectionsBox::buildShadow(QVBoxLayout* column) {
  auto* heading = new QLabel(tr("Root shadow"), this);
  QFont font = heading->font();
  font.setWeight(QFont::DemiBold);
  heading->setFont(font);
  column->addSpacing(8);
  column->addWidget(heading);
  zone_ = new QComboBox(this);
  zone_->setAccessibleName(tr("Where the root shadow goes"));
  zone_->setMinimumHeight(30);
  zone_->setFocusPolicy(Qt::StrongFocus);
  zone_->addItem(tr("Whole head"));
  for (std::size_t i = 0; i < plan::kHairZones; ++i) zone_->addItem(paint::zoneName(static_cast<plan::HairZone>(i)));
  column->addWidget(zone_);
  shadow_ = new FinishField(tr("Root shadow"), this);
  column->addWidget(shadow_);
  length_ = addTyped(column, specOf("treatment.to_mm", tr("Reaches off the scalp"), QStringLiteral("mm"), 1, tr("How far down the hair it goes")), this);
  blend_ = addTyped(column, specOf("treatment.blend_mm", tr("Blends out over"), QStringLiteral("mm"), 1, tr("The length in which it fades")), this);
  cover_ = addTyped(column, specOf("treatment.strength_frac", tr("How much of the colour shows"), tr("%"), 100,
                                   tr("100 is the typed colour, 0 nothing; as a test strand showed")), this);
  auto* row = new QHBoxLayout;
  column->addLayout(row);
  addShadow_ = button(row, tr("Add the root shadow"), tr("Into the plan, with what is typed above; one undo takes it back"), this);
  row->addStretch(1);
  connect(shadow_, &FinishField::edited, this, &CorrectionsBox::enable);
  for (controls::NumberField* field : {length_, blend_, cover_}) connect(field, &controls::NumberField::edited, this, &CorrectionsBox::enable);
  connect(addShadow_, &QPushButton::clicked, this, &CorrectionsBox::addRootShadow);
}

void CorrectionsBox::fill() {
  const plan::Plan& plan = controller_.document();
  const std::vector<plan::ItemId> before = chosen();
  {
    const QSignalBlocker quiet(pieces_);
    pieces_->clear();
    for (const plan::ItemId& id : work::workOrder(plan, {}, work::OrderUse::AsPlanned)) {
      const plan::Piece& piece = *plan.find<plan::Piece>(id);
      const QString text = piece.action == plan::Action::Deepen ? tr("%1: deepened to level %2") : tr("%1: light, level %2");
      auto* item = new QListWidgetItem(text.arg(pieceName(plan, id), levelNow(piece)), pieces_);
      item->setData(Qt::UserRole, QString::fromStdString(id));
      item->setSelected(std::find(before.begin(), before.end(), id) != before.end());
    }
  }
  enable();
}

std::vector<plan::ItemId> CorrectionsBox::chosen() const {
  std::vector<plan::ItemId> ids;
  for (const QListWidgetItem* item : pieces_->selectedItems()) ids.push_back(item->data(Qt::UserRole).toString().toStdString());
  return ids;
}

void CorrectionsBox::enable() {
  const bool any = !pieces_->selectedItems().isEmpty();
  deepen_->setEnabled(any && deepenTo_->value());
  leaveOut_->setEnabled(any);
  addShadow_->setEnabled(shadow_->value() && length_->value() && blend_->value() && cover_->value());
}

void CorrectionsBox::deepenChosen() {
  const plan::Plan& plan = controller_.document();
  const auto finish = deepenTo_->value();
  const std::vector<plan::ItemId> ids = chosen();
  if (!finish || ids.empty()) return;
  const Result<plan::ChangeSet> edit = work::deepened(plan, ids, *finish);
  if (!edit) {
    const auto& args = edit.error().args;
    return deepenTo_->setProblem(tr("Deepening does not lighten: %1. Typed: %2; right would be %3.")
                                     .arg(pieceName(plan, edit.error().where), QString::fromStdString(args.empty() ? "" : args[0]),
                                          QString::fromStdString(args.size() < 2 ? "" : args[1])));
  }
  deepenTo_->setProblem({});
  if (controller_.edit(plan::applied(plan, *edit), tr("Deepen %1 pieces").arg(ids.size())) == Outcome::Made)
    Q_EMIT made(tr("Deepened: %1 pieces, to level %2. Look at it on the heads; undo takes it back.").arg(ids.size()).arg(finish->level));
}

void CorrectionsBox::leaveOutChosen() {
  const plan::Plan& plan = controller_.document();
  const std::vector<plan::ItemId> ids = chosen();
  if (ids.empty()) return;
  if (controller_.edit(plan::applied(plan, work::leftOut(plan, ids)), tr("Leave out %1 pieces").arg(ids.size())) == Outcome::Made)
    Q_EMIT made(tr("Left out from now on: %1 pieces. The hair of today stays as it is; undo takes it back.").arg(ids.size()));
}

void CorrectionsBox::addRootShadow() {
  if (!shadow_->value() || !length_->value() || !blend_->value() || !cover_->value()) return;
  const plan::Plan& plan = controller_.document();
  plan::Treatment shadow;
  if (zone_->currentIndex() > 0) shadow.zone = static_cast<plan::HairZone>(zone_->currentIndex() - 1);
  shadow.colour = *shadow_->value();
  shadow.to_mm = *length_->value();
  shadow.blend_mm = *blend_->value();
  shadow.strength_frac = *cover_->value();
  if (controller_.edit(plan::applied(plan, work::rootShadow(plan, shadow)), tr("Add a root shadow: %1").arg(zone_->currentText())) == Outcome::Made)
    Q_EMIT made(tr("A root shadow is in the plan: %1. Look at it on the heads; undo takes it back.").arg(zone_->currentText()));
}

}  // namespace combdraft::appointment

#include "app/cards/section_card.h"

#include <QGridLayout>
#include <algorithm>
#include <QVBoxLayout>

#include "app/cards/card_parts.h"
#include "app/cards/provenance.h"
#include "app/controls/units.h"
#include "app/controls/wrapped_label.h"
#include "app/paint/describe_piece.h"
#include "engine/plan/edits.h"
#include "engine/plan/lay_out.h"
#include "engine/plan/twins.h"

namespace combdraft::cards {
namespace {

using Face = controls::NumberFieldSpec::Face;
using Typed = std::optional<double>;

struct RampRow {
  const char* label;
  const char *from, *to;  ///< rows of plan::fieldTable()
  const char* unit;
  double shownPerValue;
  plan::Ramp plan::Layout::*ramp;
};
constexpr RampRow kRamps[] = {
    {QT_TRANSLATE_NOOP("combdraft::cards::SectionCard", "Thickness"), "layout.thicknessFrom_mm", "layout.thicknessTo_mm", "mm", 1, &plan::Layout::thickness_mm},
    {QT_TRANSLATE_NOOP("combdraft::cards::SectionCard", "Left out between"), "layout.leftOutFrom_mm", "layout.leftOutTo_mm", "mm", 1, &plan::Layout::leftOut_mm},
    {QT_TRANSLATE_NOOP("combdraft::cards::SectionCard", "Starts at, off the scalp"), "layout.startFrom_mm", "layout.startTo_mm", "mm", 1, &plan::Layout::start_mm},
    {QT_TRANSLATE_NOOP("combdraft::cards::SectionCard", "Backcomb depth"), "layout.backcombFrom_mm", "layout.backcombTo_mm", "mm", 1, &plan::Layout::backcomb_mm},
    {QT_TRANSLATE_NOOP("combdraft::cards::SectionCard", "How much is pushed back"), "layout.pushedFrom_frac", "layout.pushedTo_frac", "%", 100, &plan::Layout::pushed_frac},
    {QT_TRANSLATE_NOOP("combdraft::cards::SectionCard", "Taken within the teeth"), "layout.takenFrom_frac", "layout.takenTo_frac", "%", 100, &plan::Layout::taken_frac},
};

}  // namespace

SectionCard::SectionCard(document::DocumentController& controller, QWidget* parent)
    : QWidget(parent), controller_(controller) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 12);
  column->setSpacing(5);
  addTitle(column, tr("Section"));
  empty_ = new QWidget(this);
  auto* hint = new QVBoxLayout(empty_);
  hint->setContentsMargins(0, 0, 0, 0);
  addSoftText(hint, tr("No section is selected. Draw one with the section tool, or click the edge of one on the sheet."));
  column->addWidget(empty_);

  work_ = new QWidget(this);
  auto* work = new QVBoxLayout(work_);
  work->setContentsMargins(0, 0, 0, 0);
  work->setSpacing(5);
  name_ = new controls::TextField({tr("Name"), tr("no name yet"), tr("What the section is called on the sheet and in lists"), 60}, work_);
  work->addWidget(name_);
  connect(name_, &controls::TextField::edited, this, [this](const QString& text) {
    change(tr("Name of a section"), [&](plan::Section& s) { s.label = text.toStdString(); });
  });
  state_ = addSoftText(work, {});
  twin_ = addSoftText(work, tr("It follows the other side: a change here changes both."));
  trouble_ = addCaution(work);
  layOut_ = new QPushButton(tr("Lay out: equal pieces, no backcomb"), work_);
  layOut_->setMinimumHeight(30);
  work->addWidget(layOut_);
  connect(layOut_, &QPushButton::clicked, this,
          [this] { change(tr("Lay out a section"), [](plan::Section& s) { if (!s.layout) s.layout = plan::Layout{}; }); });
  rule_ = new QWidget(work_);
  auto* rule = new QVBoxLayout(rule_);
  rule->setContentsMargins(0, 0, 0, 0);
  rule->setSpacing(5);
  buildRule(rule);
  work->addWidget(rule_);
  column->addWidget(work_);
  column->addStretch(1);

  connect(&controller_, &document::DocumentController::changed, this,
          [this](const document::DocumentChange& change) {
            if (change.kind == document::DocumentChange::Kind::Replaced) abandonTyping(this);
            fill();
          });
  connect(&controller_, &document::DocumentController::selectionChanged, this, [this] {
    abandonTyping(this);
    fill();
  });
  connect(&controls::Units::current(), &controls::Units::changed, this, &SectionCard::fill);
  fill();
}

void SectionCard::buildRule(QVBoxLayout* column) {
  addHeading(column, tr("How its pieces run"));
  run_ = addChoice(column, tr("Rows"), {tr("horizontal"), tr("vertical"), tr("diagonal forward"), tr("diagonal back"), tr("pivoting")});
  connect(run_, &QComboBox::activated, this, [this](int i) {
    change(tr("Rows of a section"), [i](plan::Section& s) {
      if (!s.layout) return;
      s.layout->run = static_cast<plan::LayoutRun>(i);
      // Fans turn about the highest corner until the handle on the sheet is moved.
      if (s.layout->run != plan::LayoutRun::Pivoting || s.layout->pivot) return;
      s.layout->pivot = *std::min_element(s.outline.begin(), s.outline.end(), [](const auto& a, const auto& b) {
        return a.drop_deg < b.drop_deg;
      });
    });
  });
  fanHint_ = addSoftText(column, tr("They turn about the last round handle on the sheet; drag it (select tool)."));
  addSoftText(column, tr("From the first piece, farthest from where the hair falls open, to the last:"));
  addRamps(column);
  refused_ = addCaution(column);  // below what was typed: nothing moves under the hand
  taking_ = addChoice(column, tr("Taken as"), {tr("slice"), tr("weave"), tr("paint")});
  connect(taking_, &QComboBox::activated, this, [this](int i) {
    change(tr("How pieces are taken"), [i](plan::Section& s) { if (s.layout) s.layout->taking = static_cast<plan::Taking>(i); });
  });
  const auto plain = [&](const char* name, const QString& label, Typed (*get)(const plan::Layout&),
                         void (*set)(plan::Layout&, const Typed&), const QString& emptyText = {}) {
    column->addWidget(addNumber(name, label, QStringLiteral("mm"), 1, Face::WithLabel, get, set, emptyText));
  };
  plain("layout.tooth_mm", tr("Teeth of a weave"), [](const plan::Layout& l) -> Typed { return l.tooth_mm; },
        [](plan::Layout& l, const Typed& v) { l.tooth_mm = *v; });
  plain("layout.gap_mm", tr("Gaps between teeth"), [](const plan::Layout& l) -> Typed { return l.gap_mm; },
        [](plan::Layout& l, const Typed& v) { l.gap_mm = *v; });
  addHeading(column, tr("Foils"));
  plain("layout.foil_mm", tr("Foil width; a longer row becomes columns"), [](const plan::Layout& l) -> Typed { return l.foil_mm; },
        [](plan::Layout& l, const Typed& v) { l.foil_mm = *v; });
  columns_ = new controls::Segments(tr("Columns"), {{tr("In line"), {}, {}}, {tr("Staggered"), tr("Every other row begins half a foil later"), {}}}, this);
  column->addWidget(columns_);
  connect(columns_, &controls::Segments::chosen, this, [this](int i) {
    change(tr("Columns of a section"), [i](plan::Section& s) { if (s.layout) s.layout->columns = static_cast<plan::Columns>(i); });
  });
  addHeading(column, tr("Where the hair falls open"));
  plain("layout.lastThickness_mm", tr("Last piece, beside where it opens"), [](const plan::Layout& l) { return l.lastThickness_mm; },
        [](plan::Layout& l, const Typed& v) { l.lastThickness_mm = v; }, tr("like the others"));
  plain("layout.dropMiddle_mm", tr("Middle left dark, across the centre line"), [](const plan::Layout& l) -> Typed { return l.dropMiddle_mm; },
        [](plan::Layout& l, const Typed& v) { l.dropMiddle_mm = *v; });
  plain("layout.zigzag_mm", tr("Zigzag parting swings"), [](const plan::Layout& l) -> Typed { return l.zigzag_mm; },
        [](plan::Layout& l, const Typed& v) { l.zigzag_mm = *v; });
  follow_ = new QPushButton(tr("All pieces follow this rule again"), this);
  follow_->setToolTip(tr("What was edited by hand on its pieces goes back to the rule; emptied places are filled"));
  dropRule_ = new QPushButton(tr("Take the rule away, keep the pieces"), this);
  for (QPushButton* button : {follow_, dropRule_}) {
    button->setMinimumHeight(30);
    column->addWidget(button);
  }
  connect(follow_, &QPushButton::clicked, this, [this] {
    const plan::Plan& before = controller_.document();
    controller_.edit(plan::applied(before, plan::takeBack(before, sections())), tr("Follow the section"));
  });
  connect(dropRule_, &QPushButton::clicked, this, [this] {
    const plan::Plan& before = controller_.document();
    controller_.edit(plan::applied(before, plan::dropRule(before, sections())), tr("Take a section's rule away"));
  });
}

void SectionCard::addRamps(QVBoxLayout* column) {
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(6);
  grid->setVerticalSpacing(4);
  grid->setColumnStretch(0, 1);
  const QString ends[] = {tr("first"), tr("last")};
  for (int end = 0; end < 2; ++end) {
    auto* head = new QLabel(ends[end], this);
    head->setProperty("soft", true);
    grid->addWidget(head, 0, 1 + end);
  }
  int line = 1;
  for (const RampRow& row : kRamps) {
    auto* label = new controls::WrappedLabel(tr(row.label), this);
    grid->addWidget(label, line, 0);
    const auto ramp = row.ramp;
    grid->addWidget(addNumber(row.from, tr("%1, first piece").arg(tr(row.label)), QLatin1String(row.unit), row.shownPerValue, Face::BoxOnly,
                              [ramp](const plan::Layout& l) -> Typed { return (l.*ramp).from; },
                              [ramp](plan::Layout& l, const Typed& v) {
                                // Flat ramps stay flat until their end is typed.
                                if ((l.*ramp).to == (l.*ramp).from) (l.*ramp).to = *v;
                                (l.*ramp).from = *v;
                              }),
                    line, 1);
    grid->addWidget(addNumber(row.to, tr("%1, last piece").arg(tr(row.label)), QLatin1String(row.unit), row.shownPerValue, Face::BoxOnly,
                              [ramp](const plan::Layout& l) -> Typed { return (l.*ramp).to; },
                              [ramp](plan::Layout& l, const Typed& v) { (l.*ramp).to = *v; }),
                    line, 2);
    ++line;
  }
  column->addLayout(grid);
}

controls::NumberField* SectionCard::addNumber(const char* name, const QString& label, const QString& unit,
                                              double shownPerValue, Face face, Get get, Set set,
                                              const QString& emptyText) {
  controls::NumberFieldSpec spec = specOf(name, label, unit, shownPerValue, shownPerValue == 1 ? 1 : 0);
  spec.face = face;
  spec.mayBeEmpty = !emptyText.isEmpty();
  spec.emptyText = emptyText;
  auto* field = new controls::NumberField(spec, this);
  if (face == Face::BoxOnly) field->setFixedWidth(fontMetrics().averageCharWidth() * 10 + 12);
  connect(field, &controls::NumberField::problemChanged, this, [this](const QString& problem) {
    showLines(refused_, problem.isEmpty() ? QStringList() : QStringList{problem});
  });
  connect(field, &controls::NumberField::edited, this, [this, field, set, label](const Typed& value, bool stepping) {
    if (!stepping || stepped_ != field) stepping_ = document::Gesture::begin();
    stepped_ = stepping ? field : nullptr;
    change(label, [&](plan::Section& s) { if (s.layout) set(*s.layout, value); }, stepping ? stepping_ : document::Gesture::none());
  });
  numbers_.push_back({field, name, std::move(get)});
  return field;
}

std::vector<plan::ItemId> SectionCard::sections() const {
  // The selected sections, or that of the selected piece.
  std::vector<plan::ItemId> ids;
  for (const plan::ItemId& id : controller_.selection().ids())
    if (controller_.plan().find<plan::Section>(id)) ids.push_back(id);
  if (!ids.empty()) return ids;
  const auto* piece = controller_.plan().find<plan::Piece>(controller_.selection().lead());
  if (piece && controller_.plan().find<plan::Section>(piece->section)) ids.push_back(piece->section);
  return ids;
}

plan::ItemId SectionCard::shownId() const {
  const plan::ItemId& lead = controller_.selection().lead();
  if (controller_.plan().find<plan::Section>(lead)) return lead;
  const auto ids = sections();
  return ids.empty() ? plan::ItemId() : ids.front();
}

void SectionCard::change(const QString& what, const std::function<void(plan::Section&)>& change,
                         document::Gesture gesture) {
  const plan::Plan& before = controller_.document();
  controller_.edit(plan::applied(before, plan::changeSections(before, sections(), change)), what, gesture);
}

void SectionCard::fill() {
  const auto* section = controller_.plan().find<plan::Section>(shownId());
  empty_->setVisible(!section);
  work_->setVisible(section != nullptr);
  if (!section) return;
  const plan::Plan& plan = controller_.plan();
  name_->setText(QString::fromStdString(section->label));
  twin_->setVisible(!section->twinOf.empty() || [&] {
    for (const plan::ItemId& id : sections())
      if (!plan::twinsOf(plan, id).empty()) return true;
    return false;
  }());
  layOut_->setVisible(!section->layout);
  rule_->setVisible(section->layout.has_value());
  QStringList troubles;
  if (!section->layout) {
    state_->setText(tr("Not laid out: what is drawn in it stands by itself."));
    showLines(trouble_, troubles);
    return;
  }
  const plan::Layout& layout = *section->layout;
  const plan::Run run = plan::runIn(plan, shownId());
  const QString room = controls::lengthText(run.room_mm, controls::Units::current().length(), 0);
  switch (run.trouble) {
    case plan::RunTrouble::None:
      state_->setText(tr("%1 in %2 of room").arg(run.rows == 1 ? tr("1 row") : tr("%1 rows").arg(run.rows), room));
      break;
    case plan::RunTrouble::OutlineCrosses:
      troubles << tr("The outline crosses itself. Its pieces stay as they were until a corner is moved.");
      break;
    case plan::RunTrouble::NoRoom:
      troubles << tr("There is no room for half a piece: %1 of room. Its pieces stay as they were until it is larger or they are thinner.").arg(room);
      break;
    case plan::RunTrouble::TooMany:
      troubles << tr("That would be more pieces than a section may have. Its pieces stay as they were: make them thicker, or leave more out.");
      break;
  }
  if (run.trouble != plan::RunTrouble::None) state_->clear();
  showLines(trouble_, troubles);
  run_->setCurrentIndex(static_cast<int>(layout.run));
  fanHint_->setVisible(layout.run == plan::LayoutRun::Pivoting);
  taking_->setCurrentIndex(static_cast<int>(layout.taking));
  columns_->setCurrent(static_cast<int>(layout.columns));
  for (const Number& number : numbers_) {
    number.field->setValue(number.get(layout));
    number.field->setProvenance(provenance(number.name, number.get(layout)));
  }
  int byHand = 0;
  for (const auto& [id, piece] : plan.pieces(section->choice))
    byHand += piece->laidOut && plan.find<plan::Section>(piece->section) == section && !piece->laidOut->own.empty();
  follow_->setEnabled(byHand > 0 || !layout.empty.empty());
}

}  // namespace combdraft::cards

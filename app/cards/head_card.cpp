#include "app/cards/head_card.h"

#include <QCoreApplication>
#include <QVBoxLayout>
#include <cmath>

#include "app/cards/card_parts.h"
#include "app/cards/head_edits.h"
#include "app/controls/number_input.h"

namespace combdraft::cards {
namespace {

using Typed = std::optional<double>;

struct HeadNumber {
  const char *field, *label, *change;
  Typed (*get)(const plan::Head&);
  void (*set)(plan::Head&, const Typed&);
  bool follows;  ///< empty = follows from the others
};

constexpr HeadNumber kNumbers[] = {
    {"head.circumference_mm", QT_TRANSLATE_NOOP("HeadCard", "Round the head"), QT_TRANSLATE_NOOP("HeadCard", "head measure"),
     [](const plan::Head& h) -> Typed { return h.measures.circumference_mm; },
     [](plan::Head& h, const Typed& v) { h.measures.circumference_mm = v; }, true},
    {"head.length_mm", QT_TRANSLATE_NOOP("HeadCard", "Forehead to back"), QT_TRANSLATE_NOOP("HeadCard", "head length"),
     [](const plan::Head& h) -> Typed { return h.measures.length_mm; },
     [](plan::Head& h, const Typed& v) { h.measures.length_mm = v; }, true},
    {"head.breadth_mm", QT_TRANSLATE_NOOP("HeadCard", "Breadth"), QT_TRANSLATE_NOOP("HeadCard", "head breadth"),
     [](const plan::Head& h) -> Typed { return h.measures.breadth_mm; },
     [](plan::Head& h, const Typed& v) { h.measures.breadth_mm = v; }, true},
    {"head.earToEar_mm", QT_TRANSLATE_NOOP("HeadCard", "Ear to ear over the top"), QT_TRANSLATE_NOOP("HeadCard", "ear to ear"),
     [](const plan::Head& h) -> Typed { return h.measures.earToEar_mm; },
     [](plan::Head& h, const Typed& v) { h.measures.earToEar_mm = v; }, true},
    {"head.hairlineFront_mm", QT_TRANSLATE_NOOP("HeadCard", "Front hairline moved up"), QT_TRANSLATE_NOOP("HeadCard", "front hairline"),
     [](const plan::Head& h) -> Typed { return h.hairline.front_mm; },
     [](plan::Head& h, const Typed& v) { h.hairline.front_mm = *v; }, false},
    {"head.hairlineTemples_mm", QT_TRANSLATE_NOOP("HeadCard", "Temples moved up"), QT_TRANSLATE_NOOP("HeadCard", "temples"),
     [](const plan::Head& h) -> Typed { return h.hairline.temples_mm; },
     [](plan::Head& h, const Typed& v) { h.hairline.temples_mm = *v; }, false},
    {"head.hairlineSides_mm", QT_TRANSLATE_NOOP("HeadCard", "Over the ears moved up"), QT_TRANSLATE_NOOP("HeadCard", "hairline at the sides"),
     [](const plan::Head& h) -> Typed { return h.hairline.sides_mm; },
     [](plan::Head& h, const Typed& v) { h.hairline.sides_mm = *v; }, false},
    {"head.hairlineNape_mm", QT_TRANSLATE_NOOP("HeadCard", "Nape moved up"), QT_TRANSLATE_NOOP("HeadCard", "nape hairline"),
     [](const plan::Head& h) -> Typed { return h.hairline.nape_mm; },
     [](plan::Head& h, const Typed& v) { h.hairline.nape_mm = *v; }, false}};
constexpr std::size_t kMeasures = 4;

}  // namespace

HeadCard::HeadCard(document::DocumentController& controller, QWidget* parent)
    : QWidget(parent), controller_(controller) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 12);
  column->setSpacing(5);
  addTitle(column, tr("Head"));
  size_ = new controls::Segments(tr("Head size"), {{tr("Small"), {}, {}}, {tr("Medium"), {}, {}}, {tr("Large"), {}, {}}}, this);
  column->addWidget(size_);
  connect(size_, &controls::Segments::chosen, this, [this](int i) {
    change(tr("head size"), [i](plan::Head& h) { h.measures.size = static_cast<head::HeadSize>(i); });
  });
  set_ = new controls::Segments(tr("Survey the size comes from"),
                                {{tr("Women's sizes"), tr("Small, medium and large as in a survey of women"), {}},
                                 {tr("Men's sizes"), tr("Small, medium and large as in a survey of men"), {}}},
                                this);
  column->addWidget(set_);
  connect(set_, &controls::Segments::chosen, this, [this](int i) {
    change(tr("sizes"), [i](plan::Head& h) { h.measures.set = static_cast<head::HeadSet>(i); });
  });

  addHeading(column, tr("Measures"));
  const auto addNumber = [&](const HeadNumber& row) {
    controls::NumberFieldSpec spec = specOf(row.field, tr(row.label), QStringLiteral("mm"), 1, row.follows ? 0 : 1);
    spec.mayBeEmpty = row.follows;
    if (row.follows) spec.emptyText = tr("follows");
    auto* field = new controls::NumberField(spec, this);
    connect(field, &controls::NumberField::edited, this, [this, &row](const Typed& value) {
      change(tr(row.change), [&](plan::Head& h) { row.set(h, value); });
    });
    numbers_.push_back(field);
    column->addWidget(field);
  };
  for (std::size_t i = 0; i < kMeasures; ++i) addNumber(kNumbers[i]);
  notes_ = new QLabel(this);
  notes_->setProperty("caution", true);
  notes_->setWordWrap(true);
  column->addWidget(notes_);

  addHeading(column, tr("Usual part"));
  part_ = new controls::Segments(tr("Usual part"),
                                 {{tr("None"), tr("Combed back, no part"), {}}, {tr("Left"), tr("On the client's left"), {}},
                                  {tr("Middle"), {}, {}}, {tr("Right"), tr("On the client's right"), {}}}, this);
  column->addWidget(part_);
  connect(part_, &controls::Segments::chosen, this, [this](int i) {
    change(tr("usual part"), [i](plan::Head& h) { h.part = partLine(h, static_cast<PartPlace>(i)); });
  });
  addHeading(column, tr("Swirls at the crown"));
  whorls_ = new controls::Segments(tr("Swirls at the crown"),
                                   {{tr("Left"), tr("On the client's left"), {}}, {tr("Middle"), {}, {}},
                                    {tr("Right"), tr("On the client's right"), {}}, {tr("Two"), {}, {}}}, this);
  column->addWidget(whorls_);
  connect(whorls_, &controls::Segments::chosen, this, [this](int i) {
    change(tr("swirls"), [i](plan::Head& h) { h.whorls = whorlsAt(h, static_cast<WhorlPlace>(i)); });
  });

  addHeading(column, tr("Hairline"));
  for (std::size_t i = kMeasures; i < std::size(kNumbers); ++i) addNumber(kNumbers[i]);
  addHeading(column, tr("Skin"));
  skin_ = addChoice(column, tr("Scalp and face"), {tr("paper"), tr("light"), tr("medium"), tr("tan"), tr("deep")});
  skin_->setToolTip(tr("Scalp that shows changes how bright hair looks"));
  connect(skin_, &QComboBox::activated, this, [this](int i) {
    change(tr("skin"), [i](plan::Head& h) { h.skin = static_cast<plan::SkinTone>(i); });
  });
  column->addStretch(1);
  connect(&controller_, &document::DocumentController::changed, this, &HeadCard::fill);
  fill();
}

void HeadCard::change(const QString& what, const std::function<void(plan::Head&)>& change) {
  plan::Plan next = controller_.document();
  plan::Head head = next.head();
  change(head);
  next.put(plan::kHeadId, head);
  const Result<head::FittedHead> fitted = head::fitHead(head.measures);
  if (!fitted) {
    notes_->setText(QStringLiteral("\u26A0 ") + QString::fromStdString(describe(fitted.error())));
    notes_->show();
    return;
  }
  controller_.edit(next, tr("Change %1").arg(what));
}

void HeadCard::fill() {
  const plan::Head& head = controller_.plan().head();
  size_->setCurrent(static_cast<int>(head.measures.size));
  set_->setCurrent(static_cast<int>(head.measures.set));
  for (std::size_t i = 0; i < numbers_.size(); ++i) numbers_[i]->setValue(kNumbers[i].get(head));
  part_->setCurrent(static_cast<int>(partPlace(head)));
  whorls_->setCurrent(static_cast<int>(whorlPlace(head)));
  skin_->setCurrentIndex(static_cast<int>(head.skin));
  QStringList notes;
  if (const Result<head::FittedHead> fitted = head::fitHead(head.measures)) {
    for (const head::MeasureNote& note : fitted->notes)
      notes << tr("%1: %2 mm is outside what nine of ten heads have (%3 to %4). Check the tape.")
                   .arg(QString::fromStdString(note.name), controls::shownNumber(note.value_mm, 0),
                        controls::shownNumber(note.low_mm, 0), controls::shownNumber(note.high_mm, 0));
    if (fitted->contradictory)
      notes << tr("These measures do not fit one head: check the tape round the head, its length and its breadth.");
  }
  notes_->setVisible(!notes.isEmpty());
  notes_->setText(QStringLiteral("\u26A0 ") + notes.join(QStringLiteral("\n\u26A0 ")));
}

}  // namespace combdraft::cards

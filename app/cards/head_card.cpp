#include "app/cards/head_card.h"

#include <QVBoxLayout>

#include "app/cards/card_parts.h"
#include "app/cards/head_edits.h"
#include "app/cards/provenance.h"
#include "app/controls/units.h"
#include "app/words/engine_words.h"
#include "engine/plan/edits.h"

namespace combdraft::cards {
namespace {

using Typed = std::optional<double>;

QString shown(double value_mm) { return controls::lengthNumber(value_mm, controls::Units::current().length(), 0); }

}  // namespace

HeadCard::HeadCard(document::DocumentController& controller, QWidget* parent)
    : QWidget(parent), controller_(controller) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 12);
  column->setSpacing(5);
  addTitle(column, tr("Head"));
  buildMeasures(column);
  buildPart(column);
  buildWhorls(column);
  addHeading(column, tr("Hairline"));
  for (const HeadNumber& row : hairlineMoves()) addNumber(column, row);
  addHeading(column, tr("Skin"));
  skin_ = addChoice(column, tr("Scalp and face"), {tr("paper"), tr("light"), tr("medium"), tr("tan"), tr("deep")});
  skin_->setToolTip(tr("Scalp that shows changes how bright hair looks"));
  connect(skin_, &QComboBox::activated, this, [this](int i) {
    change(tr("skin"), [i](plan::Head& h) { h.skin = static_cast<plan::SkinTone>(i); });
  });
  column->addStretch(1);
  connect(&controller_, &document::DocumentController::changed, this,
          [this](const document::DocumentChange& change) {
            if (change.kind == document::DocumentChange::Kind::Replaced) abandonTyping(this);
            fill();
          });
  connect(&controls::Units::current(), &controls::Units::changed, this, &HeadCard::fill);
  fill();
}

void HeadCard::buildMeasures(QVBoxLayout* column) {
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
  addSoftText(column, tr("Type what you measured; the others follow."));
  for (const HeadNumber& row : headMeasures()) addNumber(column, row);
  notes_ = addCaution(column);
}

void HeadCard::addNumber(QVBoxLayout* column, const HeadNumber& row) {
  controls::NumberFieldSpec spec = specOf(row.field, tr(row.label), QStringLiteral("mm"), 1, row.followed_mm ? 0 : 1);
  spec.mayBeEmpty = row.followed_mm != nullptr;
  auto* field = new controls::NumberField(spec, this);
  if (row.followed_mm)
    field->setCheck([this, &row](const Typed& value) {
      plan::Head next = controller_.document().head();
      row.set(next, value);
      const Result<head::FittedHead> fitted = head::fitHead(next.measures);
      return fitted ? QString() : words::inWords(fitted.error());
    });
  connect(field, &controls::NumberField::edited, this, [this, &row](const Typed& value, bool stepping) {
    if (!stepping || stepped_ != &row) stepping_ = document::Gesture::begin();
    stepped_ = stepping ? &row : nullptr;
    change(tr(row.change), [&](plan::Head& h) { row.set(h, value); },
           stepping ? stepping_ : document::Gesture::none());
  });
  numbers_.emplace_back(&row, field);
  column->addWidget(field);
}

void HeadCard::buildPart(QVBoxLayout* column) {
  addHeading(column, tr("Usual part"));
  part_ = new controls::Segments(tr("Usual part"),
                                 {{tr("None"), tr("Combed back, no part"), {}}, {tr("Left"), tr("On the client's left"), {}},
                                  {tr("Middle"), {}, {}}, {tr("Right"), tr("On the client's right"), {}}}, this);
  column->addWidget(part_);
  connect(part_, &controls::Segments::chosen, this, [this](int i) {
    change(tr("usual part"), [i](plan::Head& h) { h.part = partLine(h, static_cast<PartPlace>(i)); });
  });
  resetPart_ = new QPushButton(tr("Draw the part anew there"), this);
  resetPart_->setToolTip(tr("Takes back what was moved or drawn on the sheet"));
  column->addWidget(resetPart_, 0, Qt::AlignLeft);
  connect(resetPart_, &QPushButton::clicked, this, [this] {
    const plan::Plan& before = controller_.document();
    controller_.edit(plan::applied(before, plan::setPart(before, partLine(before.head(), partPlace(before.head())))),
                     tr("Draw the part anew"));
  });
}

void HeadCard::buildWhorls(QVBoxLayout* column) {
  addHeading(column, tr("Swirls at the crown"));
  whorls_ = new controls::Segments(tr("Swirls at the crown"),
                                   {{tr("Left"), tr("On the client's left"), {}}, {tr("Middle"), {}, {}},
                                    {tr("Right"), tr("On the client's right"), {}}, {tr("Two"), {}, {}}}, this);
  column->addWidget(whorls_);
  connect(whorls_, &controls::Segments::chosen, this, [this](int i) {
    change(tr("swirls"), [i](plan::Head& h) { h.whorls = whorlsAt(h, static_cast<WhorlPlace>(i)); });
  });
  const QString names[] = {tr("It turns"), tr("The second turns")};
  for (std::size_t i = 0; i < turns_.size(); ++i) {
    turnNames_[i] = addSoftText(column, names[i]);
    turns_[i] = new controls::Segments(names[i],
                                       {{tr("Clockwise"), tr("Looking down at it"), {}},
                                        {tr("Counterclockwise"), tr("Looking down at it"), {}}},
                                       this);
    column->addWidget(turns_[i]);
    connect(turns_[i], &controls::Segments::chosen, this, [this, i](int turn) {
      change(tr("how a swirl turns"), [i, turn](plan::Head& h) {
        if (i < h.whorls.size()) h.whorls[i].turn = static_cast<plan::Turn>(turn);
      });
    });
  }
}

void HeadCard::change(const QString& what, const std::function<void(plan::Head&)>& change, document::Gesture gesture) {
  const plan::Plan& before = controller_.document();
  const plan::Plan next = plan::applied(before, plan::changeHead(before, change));
  const Result<head::FittedHead> fitted = head::fitHead(next.head().measures);
  if (!fitted) {  // another size, and the typed measures do not go with it
    fill();
    return showLines(notes_, {words::inWords(fitted.error())});
  }
  controller_.edit(next, tr("Change %1").arg(what), gesture);
}

void HeadCard::fill() {
  const plan::Head& head = controller_.plan().head();
  size_->setCurrent(static_cast<int>(head.measures.size));
  set_->setCurrent(static_cast<int>(head.measures.set));
  for (const auto& [row, field] : numbers_) {
    field->setValue(row->get(head));
    field->setProvenance(provenance(row->field, row->get(head)));
  }
  fillMeasures(head);
  const PartPlace place = partPlace(head);
  part_->setCurrent(static_cast<int>(place));
  resetPart_->setVisible(place != PartPlace::None);
  resetPart_->setEnabled(head.part != partLine(head, place));
  whorls_->setCurrent(static_cast<int>(whorlPlace(head)));
  for (std::size_t i = 0; i < turns_.size(); ++i) {
    const bool there = i < head.whorls.size();
    turns_[i]->setVisible(there);
    turnNames_[i]->setVisible(there);
    if (there) turns_[i]->setCurrent(static_cast<int>(head.whorls[i].turn));
  }
  turnNames_[0]->setText(head.whorls.size() > 1 ? tr("The first turns") : tr("It turns"));
  skin_->setCurrentIndex(static_cast<int>(head.skin));
}

void HeadCard::fillMeasures(const plan::Head& head) {
  QStringList notes;
  if (const Result<head::FittedHead> fitted = head::fitHead(head.measures)) {
    for (const auto& [row, field] : numbers_)
      if (row->followed_mm) field->setEmptyText(tr("about %1").arg(shown(row->followed_mm(*fitted)).remove(QStringLiteral("\u2248 "))));
    const QString unit = controls::unitWord(controls::Units::current().length());
    for (const head::MeasureNote& note : fitted->notes)
      notes << tr("%1: %2 %5 is outside what nine of ten heads have (%3 to %4). Check the tape.")
                   .arg(words::inWords(note.name), shown(note.value_mm), shown(note.low_mm), shown(note.high_mm), unit);
    if (fitted->contradictory)
      notes << tr("These measures do not fit one head: check the tape round the head, its length and its breadth.");
  }
  showLines(notes_, notes);
}

}  // namespace combdraft::cards

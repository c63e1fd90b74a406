#include "app/desk/card_column.h"

#include <QScrollArea>
#include <QStackedWidget>
#include <QUndoView>
#include <QVBoxLayout>

#include "app/cards/assumptions_card.h"
#include "app/cards/choices_card.h"
#include "app/cards/consultation_card.h"
#include "app/cards/formula_card.h"
#include "app/cards/hair_card.h"
#include "app/cards/head_card.h"
#include "app/cards/piece_card.h"
#include "app/cards/reading_card.h"
#include "app/cards/section_card.h"
#include "app/desk/finding_detail.h"
#include "app/desk/findings_card.h"
#include "app/desk/suggestion_card.h"

namespace combdraft::desk {

CardColumn::CardColumn(document::DocumentController& controller, document::ViewState& view,
                       live::SuggestionService& suggestions, QWidget* parent)
    : QFrame(parent) {
  setAccessibleName(tr("Cards"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(8, 8, 12, 8);
  column->setSpacing(8);
  tabs_ = new controls::Segments(
      tr("Card"),
      {{tr("Piece"), tr("The selected pieces"), {}}, {tr("Section"), tr("The selected section and the rule that lays it out"), {}}, {tr("Head"), tr("Measures, part, swirls"), {}},
       {tr("Hair"), tr("How much, how long, which level"), {}}, {tr("Formula"), tr("Mixtures as typed from their leaflets"), {}}, {tr("Changes"), tr("What was changed; choose a line to go back to it"), {}}},
      this);
  tabs_->setLines(controls::Segments::Lines::AsNeeded);
  column->addWidget(tabs_);
  stack_ = new QStackedWidget(this);
  column->addWidget(stack_, 1);
  piece_ = new cards::PieceCard(controller, this);
  stack_->addWidget(scrolled(piece_, tr("Piece card")));
  stack_->addWidget(scrolled(new cards::SectionCard(controller, this), tr("Section card")));
  stack_->addWidget(scrolled(new cards::HeadCard(controller, this), tr("Head card")));
  stack_->addWidget(scrolled(new cards::HairCard(controller, this), tr("Hair card")));
  stack_->addWidget(scrolled(new cards::FormulaCard(controller, this), tr("Formula card")));
  auto* done = new QUndoView(&controller.undoStack(), this);
  done->setEmptyLabel(tr("As it was opened"));
  done->setAccessibleName(tr("What was changed"));
  stack_->addWidget(done);
  choices_ = new cards::ChoicesCard(controller, this);
  stack_->addWidget(scrolled(choices_, tr("Choices card")));
  assumptions_ = new cards::AssumptionsCard(controller, this);
  stack_->addWidget(scrolled(assumptions_, tr("Assumptions card")));
  reading_ = new cards::ReadingCard(this);
  stack_->addWidget(scrolled(reading_, tr("Reading card")));
  connect(reading_, &cards::ReadingCard::assumptionWanted, this, [this](const std::string& key) {
    turnTo(Card::Assumptions);
    assumptions_->showAssumption(key);
  });
  connect(reading_, &cards::ReadingCard::aimWanted, this, [this](int reading) {
    turnTo(Card::Choices);
    choices_->targets()->turnTo(reading);
  });
  findings_ = new FindingsCard(controller, view, this);
  connect(findings_->detail(), &FindingDetail::assumptionWanted, this, [this](const QString& name) {
    turnTo(Card::Assumptions);
    assumptions_->showAssumption(name.toStdString());
  });
  stack_->addWidget(findings_);
  suggestion_ = new SuggestionCard(controller, view, suggestions, this);
  connect(suggestion_, &SuggestionCard::aimsWanted, this, [this] {
    turnTo(Card::Choices);
    choices_->targets()->turnTo(0);
  });
  stack_->addWidget(scrolled(suggestion_, tr("Suggestion card")));
  consultation_ = new cards::ConsultationCard(controller, this);
  stack_->addWidget(scrolled(consultation_, tr("Consultation card")));
  connect(tabs_, &controls::Segments::chosen, stack_, &QStackedWidget::setCurrentIndex);
  fitWidth();
  turnTo(Card::Piece);
}

void CardColumn::fitWidth() {
  // Wide enough for a strand and its numbers, whatever the font.
  const int width = fontMetrics().averageCharWidth() * 43 + 24;
  setMinimumWidth(width);
  setMaximumWidth(2 * width);
}

void CardColumn::changeEvent(QEvent* event) {
  QFrame::changeEvent(event);
  if (event->type() == QEvent::FontChange) fitWidth();
}

QWidget* CardColumn::scrolled(QWidget* card, const QString& name) {
  auto* scroll = new QScrollArea(this);
  scroll->setAccessibleName(name);
  scroll->setWidgetResizable(true);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setObjectName(QStringLiteral("card"));
  scroll->setWidget(card);
  return scroll;
}

void CardColumn::turnTo(Card card) {
  tabs_->setCurrent(card > Card::Done ? -1 : static_cast<int>(card));
  stack_->setCurrentIndex(static_cast<int>(card));
}

FindingsList* CardColumn::findings() { return findings_->list(); }

CardColumn::Card CardColumn::current() const { return static_cast<Card>(stack_->currentIndex()); }

}  // namespace combdraft::desk

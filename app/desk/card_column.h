#pragma once
// The cards at the side: piece, section, head, hair, and what was done.
#include <QFrame>

#include "app/controls/segments.h"
#include "app/document/document_controller.h"
#include "app/document/view_state.h"

class QStackedWidget;
class QUndoView;

namespace combdraft::cards {
class AssumptionsCard;
class ChoicesCard;
class ConsultationCard;
class PieceCard;
class ReadingCard;
}

namespace combdraft::live {
class SuggestionService;
}

namespace combdraft::desk {

class FindingsCard;
class FindingsList;
class SuggestionCard;

class CardColumn : public QFrame {
  Q_OBJECT

 public:
  /// The last six stand behind no tab: they are opened from tools and look.
  enum class Card { Piece, Section, Head, Hair, Formula, Done, Choices, Assumptions, Reading, Findings, Suggestion, Consultation };
  static constexpr int kCards = 12;

  CardColumn(document::DocumentController& controller, document::ViewState& view,
             live::SuggestionService& suggestions, QWidget* parent = nullptr);
  void turnTo(Card card);
  Card current() const;
  FindingsList* findings();
  FindingsCard* findingsCard() { return findings_; }
  SuggestionCard* suggestionCard() { return suggestion_; }
  cards::PieceCard* pieceCard() { return piece_; }
  cards::ChoicesCard* choicesCard() { return choices_; }
  cards::ConsultationCard* consultationCard() { return consultation_; }
  cards::AssumptionsCard* assumptionsCard() { return assumptions_; }
  cards::ReadingCard* readingCard() { return reading_; }

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void fitWidth();
  QWidget* scrolled(QWidget* card, const QString& name);

  controls::Segments* tabs_;
  QStackedWidget* stack_;
  cards::PieceCard* piece_;
  cards::ChoicesCard* choices_;
  cards::ConsultationCard* consultation_;
  cards::AssumptionsCard* assumptions_;
  cards::ReadingCard* reading_;
  FindingsCard* findings_;
  SuggestionCard* suggestion_;
};

}  // namespace combdraft::desk

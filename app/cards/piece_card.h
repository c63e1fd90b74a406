#pragma once
// The card of the selected pieces: the strand with its handles, and every value
// of a piece. With several pieces shared values are shown and others marked as
// mixed; what is typed goes to all of them.
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QWidget>

#include "app/cards/piece_edits.h"
#include "app/cards/strand_drawing.h"
#include "app/controls/number_field.h"
#include "app/controls/segments.h"
#include "app/document/document_controller.h"

class QVBoxLayout;

namespace combdraft::cards {

struct PieceNumber;

class PieceCard : public QWidget {
  Q_OBJECT

 public:
  explicit PieceCard(document::DocumentController& controller, QWidget* parent = nullptr);

  StrandDrawing* strand() { return strand_; }
  /// The field of a number by its place in pieceNumbers(), for tests.
  controls::NumberField* number(std::size_t index) { return numbers_[index]; }
  controls::Segments* action() { return action_; }
  QString title() const { return title_->text(); }
  QString cautionText() const { return caution_->isHidden() ? QString() : caution_->text(); }

 private:
  void build();
  QVBoxLayout* section(const QString& title, QWidget** box = nullptr);
  void addNumbers(QVBoxLayout* column, int group);
  void fill();
  void change(const QString& what, const PieceChange& change,
              document::Gesture gesture = document::Gesture::none());
  std::vector<plan::ItemId> selected() const;
  void connectStrand();
  void showCautions(const std::vector<const plan::Piece*>& pieces);

  document::DocumentController& controller_;
  QLabel *title_, *nothing_, *caution_;
  QWidget *body_, *strandBox_, *endZone_, *weaveBox_, *paintBox_, *finishBox_;
  StrandDrawing* strand_;
  controls::Segments *action_, *taking_, *keptIn_, *under_;
  QComboBox *rootTone_, *endTone_;
  QLineEdit *label_, *foil_, *dropOuts_;
  QLabel* dropOutProblem_;
  std::vector<controls::NumberField*> numbers_;
  document::Gesture stepping_ = document::Gesture::begin();
};

/// Hair zone at the middle of a piece's line.
plan::HairZone zoneOf(const plan::Plan& plan, const plan::Piece& piece);
/// Length of the hair in that zone, mm: the strand that a card draws.
double strandLength_mm(const plan::Plan& plan, const plan::Piece& piece);

/// Cautions that stand where the risk is; one sentence each, look, check, test
/// or refer. Empty = none of them applies.
QStringList pieceCautions(const plan::Plan& plan, const std::vector<const plan::Piece*>& pieces);

}  // namespace combdraft::cards

#pragma once
// The card of the selected pieces: the strand with its handles, and every value
// of a piece. With several pieces shared values are shown and others marked as
// mixed; what is typed goes to all of them.
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QWidget>

#include "app/cards/piece_edits.h"
#include "app/cards/strand_drawing.h"
#include "app/controls/number_field.h"
#include "app/controls/segments.h"
#include "app/controls/text_box.h"
#include "app/controls/text_field.h"
#include "app/document/document_controller.h"

class QVBoxLayout;

namespace combdraft::cards {

class PieceCard : public QWidget {
  Q_OBJECT

 public:
  explicit PieceCard(document::DocumentController& controller, QWidget* parent = nullptr);

  StrandDrawing* strand() { return strand_; }
  /// The field of a number by its place in pieceNumbers(), for tests.
  controls::NumberField* number(std::size_t index) { return numbers_[index]; }
  controls::Segments* action() { return action_; }
  QCheckBox* held() { return held_; }
  QString title() const { return title_->text(); }
  QString cautionText() const { return caution_->isHidden() ? QString() : caution_->text(); }

 private:
  // piece_card_build.cpp
  void build();
  void buildStrip();
  void buildColour();
  void buildWork();
  QVBoxLayout* section(const QString& title, QWidget** box = nullptr);
  void addNumbers(QVBoxLayout* column, int group);
  QComboBox* addTone(QVBoxLayout* column, const QString& label, const QString& what,
                     plan::ZoneColour plan::Piece::*zone);
  QComboBox* addFormula(QVBoxLayout* column, const QString& label, const QString& what,
                        plan::ZoneColour plan::Piece::*zone);
  void connectStrand();

  // piece_card.cpp
  void fill();
  using Pieces = std::vector<const plan::Piece*>;
  void fillChoices(const Pieces& pieces);
  void fillNumbers(const Pieces& pieces);
  void fillColour(const Pieces& pieces);
  void fillWork(const Pieces& pieces);
  void showWhatApplies(const Pieces& pieces);
  void change(const QString& what, const PieceChange& change,
              document::Gesture gesture = document::Gesture::none());
  std::vector<plan::ItemId> selected() const;

  document::DocumentController& controller_;
  QLabel *title_, *nothing_, *caution_, *standIn_;
  QWidget *body_, *strandBox_, *endZone_, *finishBox_;
  StrandDrawing* strand_;
  controls::Segments *action_, *taking_, *keptIn_, *under_;
  QComboBox *rootTone_, *endTone_, *rootFormula_, *endFormula_;
  controls::TextField *label_, *foil_, *dropOuts_;
  QLabel* sharers_;
  QPushButton* shareFoil_;
  QCheckBox* held_;
  controls::TextBox* note_;
  std::vector<controls::NumberField*> numbers_;
  document::Gesture stepping_ = document::Gesture::begin(), writing_ = document::Gesture::begin();
};

/// Hair zone at the middle of a piece's line.
plan::HairZone zoneOf(const plan::Plan& plan, const plan::Piece& piece);
/// Length of the hair in that zone, mm: the strand that a card draws.
double strandLength_mm(const plan::Plan& plan, const plan::Piece& piece);

}  // namespace combdraft::cards

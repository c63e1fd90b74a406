#pragma once
// "Suggest a placement": what is wanted, what may change, the search and what it
// found. A proposal is tried on the plan as a whole, with the look following, and
// kept as one edit or dropped. The program proposes; it never decides.
#include <QWidget>
#include <optional>

#include "app/document/document_controller.h"
#include "app/document/view_state.h"
#include "app/live/suggestion_service.h"

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;

namespace combdraft::controls {
class Segments;
}

namespace combdraft::desk {

class ProposalView;

class SuggestionCard : public QWidget {
  Q_OBJECT

 public:
  SuggestionCard(document::DocumentController& controller, document::ViewState& view,
                 live::SuggestionService& service, QWidget* parent = nullptr);

  /// Puts the keyboard where the next step is.
  void begin();
  bool isTrying() const { return tried_.has_value(); }
  /// The proposals are of another state of the plan.
  bool isOfPlanBefore() const { return searched_ && !(controller_.document() == *searched_); }

  QComboBox* which() { return which_; }
  QPushButton* aimsButton() { return aims_; }
  QPushButton* startButton() { return start_; }
  QPushButton* cancelButton() { return cancel_; }
  QPushButton* tryButton() { return try_; }
  QPushButton* keepButton() { return keep_; }
  QPushButton* dropButton() { return drop_; }
  QProgressBar* progress() { return progress_; }
  controls::Segments* proposals() { return proposals_; }
  ProposalView* proposal() { return proposal_; }
  QString aimsText() const;
  QString stateText() const;
  QString cautionText() const;  ///< about the plan before; "" when there is none

 Q_SIGNALS:
  void aimsWanted();

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  void start();
  void take(const std::vector<advise::Proposal>& found);
  void ended(live::SuggestionService::End end, const live::SuggestionState& state, const QString& why);
  void choose(int proposal);
  void tryChosen();
  void keep();
  void drop();
  void forget();
  void documentChanged(const document::DocumentChange& change);
  void fill();         ///< what is wanted and what may change
  void fillFound();    ///< the proposals and what can be done with them
  void refresh();      ///< both
  void showChosen();
  void bringUp();      ///< scrolls to where the next step is
  QString whyNoStart(std::size_t mayChange) const;
  std::vector<plan::ItemId> wanted() const;
  look::LookSettings settings() const;

  document::DocumentController& controller_;
  document::ViewState& view_;
  live::SuggestionService& service_;
  QLabel *aimsText_, *mayChange_, *state_, *stale_, *trying_;
  QPushButton *aims_, *start_, *cancel_, *try_, *keep_, *drop_;
  QComboBox* which_;
  QProgressBar* progress_;
  controls::Segments* proposals_;
  QWidget *searchPart_, *foundPart_;
  ProposalView* proposal_;

  std::vector<advise::Proposal> found_;
  std::size_t chosen_ = 0;
  std::optional<plan::Plan> searched_;  ///< what the proposals are of
  std::optional<plan::Plan> tried_;     ///< shown as a try just now
  std::optional<plan::Plan> kept_;      ///< what the document became by keeping
  advise::Aims aimsOfSearch_;
  QString news_;          ///< how the last search ended, or what was kept
  bool listening_ = false;  ///< the search under way is of this document
};

}  // namespace combdraft::desk

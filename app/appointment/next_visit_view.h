#pragma once
// The visit after this one: which pieces show by then, what repeating does to the hair
// that is left out, a new plan that begins with today's result grown out, and what the
// client says two weeks later. Weeks and distances are typed; nothing is preset.
#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <memory>

#include "app/controls/number_field.h"
#include "app/controls/text_box.h"
#include "app/document/document_controller.h"
#include "app/live/hair_count_service.h"
#include "app/store/client_keeper.h"
#include "engine/base/result.h"

class QVBoxLayout;

namespace combdraft::appointment {

/// A plan for the visit in `weeks`: the hair grown out with today's light in it, no
/// log and no agreement yet, condition and porosity to be checked anew. Number and so
/// client and single hairs stay. Errors as work::grownOut.
enum class OldLight { AsTyped, StopThere };  ///< StopThere: work::stoppedAtOldLight
Result<plan::Plan> nextVisitPlan(const plan::Plan& today, double weeks, const QString& title, OldLight oldLight);

class NextVisitView : public QWidget {
  Q_OBJECT

 public:
  /// `counts` outlives the view.
  NextVisitView(document::DocumentController& controller, live::HairCountService& counts, QWidget* parent = nullptr);

  /// Shares of hair follow when it is counted.
  void fill();
  /// The client of the plan that is open; null = none.
  void setKeeper(std::shared_ptr<store::ClientKeeper> keeper);
  controls::NumberField* weeks() { return weeks_; }
  controls::NumberField* showFrom() { return showFrom_; }
  QTableWidget* pieces() { return pieces_; }
  QTableWidget* leftOut() { return leftOut_; }
  QPushButton* begin() { return begin_; }
  QCheckBox* stopThere() { return stopThere_; }
  controls::TextBox* words() { return words_; }
  QPushButton* openClient() { return openClient_; }
  QString stateText() const { return state_->text(); }
  QString sharesText() const { return shares_->text(); }

 Q_SIGNALS:
  /// `leave` = pieces that need no repeat by what was typed.
  void nextPlanWanted(const combdraft::plan::Plan& next, const std::vector<std::string>& leave);
  void consultationWanted();

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  void buildPieces(QVBoxLayout* column);
  void buildWords(QVBoxLayout* column);
  void fillPieces();
  void fillLeftOut();
  void fillWords();
  std::optional<std::size_t> visitNow() const;
  void beginNext();

  document::DocumentController& controller_;
  live::HairCountService& counts_;
  std::shared_ptr<store::ClientKeeper> keeper_;
  controls::NumberField *weeks_, *showFrom_;
  QLabel *state_, *trouble_, *shares_, *which_;
  QTableWidget *pieces_, *leftOut_;
  QCheckBox* stopThere_;
  QPushButton *begin_, *openClient_;
  controls::TextBox* words_;
};

}  // namespace combdraft::appointment

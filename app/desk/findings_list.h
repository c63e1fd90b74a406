#pragma once
// What needs a look, worst kind first: what is wrong in the plan, what to check
// before work, what the look shows, what is only worth a look. Choosing a line
// selects the pieces it is about.
#include <QWidget>
#include <vector>

#include "app/document/document_controller.h"
#include "app/live/look_result.h"
#include "app/live/newest_job.h"
#include "engine/plan/validate.h"

class QLabel;
class QListWidget;
class QTimer;

namespace combdraft::desk {

class FindingsList : public QWidget {
  Q_OBJECT

 public:
  explicit FindingsList(document::DocumentController& controller, QWidget* parent = nullptr);

  const std::vector<plan::Issue>& issues() const { return issues_; }
  /// What the look shows; its lines stay until the next.
  void setAdvice(std::shared_ptr<const live::AdviceResult> advice);
  /// Tells again which finding is chosen.
  void chooseAgain();
  /// "Needs a look: 3", "Wrong: 1, needs a look: 3"; where nothing is listed,
  /// what was looked at.
  QString countText() const;
  QListWidget* list() { return list_; }

 Q_SIGNALS:
  void countChanged();
  /// A line was chosen that is about the head or the hair as a whole.
  void itemWanted(const std::string& id);
  /// A finding of the advice was chosen, or a line that is none.
  void findingChosen(std::optional<std::size_t> finding);
  /// The same, after the list was filled anew.
  void findingToldAgain(std::optional<std::size_t> finding);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  /// How things lie in the plan as it is now: looked for still, found out, or not to be found out.
  enum class Placement { Sought, Known, NoMemory };

  void fitHeight();
  void check();
  void checkLater();
  void placed(std::vector<plan::Issue> issues, Placement state);
  void put();
  void fill();
  void choose(int row);
  std::size_t findings() const { return advice_ ? advice_->advice.findings.size() : 0; }

  /// What a line stands for: one of the two.
  struct Line {
    std::optional<std::size_t> issue, finding;
  };
  document::DocumentController& controller_;
  std::vector<plan::Issue> issues_, placement_;
  std::shared_ptr<const live::AdviceResult> advice_;
  std::vector<Line> lines_;
  Placement state_ = Placement::Sought;
  QTimer* later_ = nullptr;
  QLabel *title_, *empty_;
  QListWidget* list_;
  live::NewestJob placementCheck_;  // last: ends before the rest goes
};

}  // namespace combdraft::desk

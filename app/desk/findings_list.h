#pragma once
// "Needs a look": what the plan's own check found, errors first. Choosing a
// line selects the pieces it is about.
#include <QWidget>
#include <vector>

#include "app/document/document_controller.h"
#include "engine/plan/validate.h"

class QLabel;
class QListWidget;
class QTimer;

namespace combdraft::desk {

/// "Pieces 3 and 4: starts at or near the scalp; …"
QString findingText(const plan::Plan& plan, const plan::Issue& issue);

class FindingsList : public QWidget {
  Q_OBJECT

 public:
  explicit FindingsList(document::DocumentController& controller, QWidget* parent = nullptr);

  const std::vector<plan::Issue>& issues() const { return issues_; }
  /// "Needs a look: 3", "Wrong: 1, needs a look: 3", "No finding from the drawing".
  QString countText() const;
  QListWidget* list() { return list_; }

 Q_SIGNALS:
  void countChanged();
  /// A line was chosen that is about the head or the hair as a whole.
  void itemWanted(const std::string& id);

 private:
  void check();
  void checkLater();
  void put();
  void fill();
  void choose(int row);

  document::DocumentController& controller_;
  std::vector<plan::Issue> issues_, placement_;
  QTimer* later_ = nullptr;
  QLabel *title_, *empty_;
  QListWidget* list_;
};

}  // namespace combdraft::desk

#pragma once
// The first page: begin something, go on with something, or look at an example.
#include <QWidget>
#include <vector>

#include "app/store/pattern_store.h"
#include "app/store/left_plans.h"
#include "app/store/settings.h"

class QListWidget;
class QLabel;
class QVBoxLayout;

namespace combdraft::desk {

class LeftPlansBox;

class StartPage : public QWidget {
  Q_OBJECT

 public:
  explicit StartPage(QWidget* parent = nullptr);

  void fill(const std::vector<store::LeftPlan>& left, const std::vector<store::RecentPlan>& recent,
            const QStringList& examples, const std::vector<store::StoredPattern>& patterns);
  LeftPlansBox& leftPlans() { return *left_; }
  QListWidget* recentList() { return recent_; }
  QListWidget* exampleList() { return examples_; }
  QListWidget* patternList() { return patterns_; }

 Q_SIGNALS:
  void newWanted();
  void openWanted();
  void planWanted(const QString& path);
  void exampleWanted(const QString& path);
  void patternWanted(const combdraft::store::StoredPattern& pattern);
  void patternsWanted();
  void recentRemoved(const QString& path);

 private:
  QListWidget* list(const QString& title, const QString& empty, QLabel** emptyLabel,
                    QVBoxLayout* into);

  LeftPlansBox* left_;
  QListWidget *recent_, *examples_, *patterns_;
  QLabel *noRecent_, *noExamples_, *noPatterns_;
  std::vector<store::StoredPattern> known_;  ///< in the order of the list
};

}  // namespace combdraft::desk

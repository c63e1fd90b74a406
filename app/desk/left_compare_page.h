#pragma once
// A recovered plan beside what its file holds: both drawings, and what differs
// in plain words.
#include <QWidget>

#include "app/store/left_plans.h"

class QLabel;
class QListWidget;
class QPushButton;

namespace combdraft::desk {

class LeftComparePage : public QWidget {
  Q_OBJECT

 public:
  explicit LeftComparePage(QWidget* parent = nullptr);

  /// Reads both. What cannot be read is said in its place.
  void show(const store::LeftPlan& left);
  QListWidget* changes() { return changes_; }
  QLabel* picture(int side) { return sides_[side].picture; }
  QPushButton* openRecovered() { return openRecovered_; }
  QPushButton* openSaved() { return openSaved_; }

 Q_SIGNALS:
  void done();
  void recoveredWanted(const combdraft::store::LeftPlan& left);
  void savedWanted(const QString& path);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  struct Side {
    QLabel *title = nullptr, *picture = nullptr;
  };
  void showSide(Side& side, const QString& title, const Result<plan::Plan>& plan);

  Side sides_[2];  ///< recovered, saved
  QListWidget* changes_;
  QPushButton *openRecovered_, *openSaved_;
  store::LeftPlan left_;
};

}  // namespace combdraft::desk

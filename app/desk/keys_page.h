#pragma once
// All commands with their keys: press other keys to change them.
#include <QWidget>

#include "app/desk/action_registry.h"

class QKeySequenceEdit;
class QLabel;
class QLineEdit;
class QPushButton;
class QTreeWidget;
class QTreeWidgetItem;

namespace combdraft::desk {

class KeysPage : public QWidget {
  Q_OBJECT

 public:
  explicit KeysPage(ActionRegistry& actions, QWidget* parent = nullptr);

  void fill();
  void choose(const QString& id);
  /// Gives the chosen command these keys, or says why not.
  void give(const QKeySequence& keys);
  QString note() const;
  QTreeWidget* list() { return list_; }
  QLineEdit* filter() { return filter_; }
  QKeySequenceEdit* catcher() { return catcher_; }
  QPushButton* takeOver() { return takeOver_; }

 Q_SIGNALS:
  /// The keys of commands changed by the user's hand.
  void changed();
  void done();

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QString chosen() const;
  void showChosen();
  void fillRow(QTreeWidgetItem& row) const;
  void refreshRows();
  void say(const QString& words);
  void resetOne();
  void resetAll();

  ActionRegistry& actions_;
  QLineEdit* filter_;
  QTreeWidget* list_;
  QLabel *empty_, *which_, *note_;
  QKeySequenceEdit* catcher_;
  QPushButton *takeOver_, *none_, *reset_, *resetAll_;
  QKeySequence wanted_;  ///< waits for `takeOver_`
};

}  // namespace combdraft::desk

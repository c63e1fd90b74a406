#pragma once
// Finds any command by the words of its name and tip, shows its key and runs
// it: a small panel over the window that never blocks it.
#include <QFrame>
#include <QPointer>
#include <vector>

#include "app/desk/action_registry.h"

class QLabel;
class QLineEdit;
class QListWidget;

namespace combdraft::desk {

/// Ids of the commands that hold every word of `words`, best first; all of them
/// in their own order when there is no word. Words match from the start of a
/// word or inside it, in either case, with or without accents.
std::vector<QString> findCommands(const ActionRegistry& actions, const QString& words);

class CommandSearch : public QFrame {
  Q_OBJECT

 public:
  CommandSearch(ActionRegistry& actions, QWidget* over);

  /// Shows the panel, empty, with the focus in its field.
  void open();
  void close();
  QLineEdit* field() { return field_; }
  QListWidget* list() { return list_; }
  /// What is said below the list: nothing found, or why a command is off.
  QString note() const;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fill();
  void place();
  void runCurrent();
  void say(const QString& words);

  ActionRegistry& actions_;
  QLineEdit* field_;
  QListWidget* list_;
  QLabel* note_;
  QPointer<QWidget> before_;  ///< had the focus
};

}  // namespace combdraft::desk

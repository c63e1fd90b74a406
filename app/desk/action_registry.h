#pragma once
// Every command of the window, once: id, text, tip, shortcut, icon and when it
// can be used. Menus, tool row and tests follow this list.
#include <QAction>
#include <QKeySequence>
#include <QObject>
#include <functional>
#include <map>
#include <vector>

namespace combdraft::desk {

struct ActionSpec {
  QString id;          ///< stable: "edit.undo"
  QString text;        ///< "&Undo"
  QString tip;         ///< one sentence that teaches
  QKeySequence shortcut;
  QString icon;        ///< name in resources/icons; "" = none
  std::function<void()> run;
  std::function<bool()> isEnabled = {};  ///< empty = always
  std::function<bool()> isChecked = {};  ///< empty = not a switch
  QString shortText = {};   ///< under the icon in the row of tools; "" = the text
};

class ActionRegistry : public QObject {
  Q_OBJECT

 public:
  explicit ActionRegistry(QObject* parent = nullptr) : QObject(parent) {}

  /// Adds an action; its id must be new.
  QAction* add(ActionSpec spec);
  /// The action of an id; a broken expectation when there is none.
  QAction* action(const QString& id) const;
  const std::vector<ActionSpec>& specs() const { return specs_; }
  /// Asks every isEnabled and isChecked again.
  void refresh();

 private:
  std::vector<ActionSpec> specs_;
  std::map<QString, QAction*> actions_;
};

}  // namespace combdraft::desk

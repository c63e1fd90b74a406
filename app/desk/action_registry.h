#pragma once
// Every command of the window, once: id, text, tip, shortcut, icon and when it
// can be used. Menus, tool row, command search, the page of keys and tests
// follow this list.
#include <QAction>
#include <QKeySequence>
#include <QObject>
#include <concepts>
#include <functional>
#include <map>
#include <vector>

namespace combdraft::desk {

/// When a command can be used, and why not when it cannot.
struct Condition {
  Condition() = default;
  template <std::invocable Test>
    requires(!std::same_as<Test, Condition>)
  Condition(Test test, QString first = {}) : holds(std::move(test)), whyNot(std::move(first)) {}
  explicit operator bool() const { return static_cast<bool>(holds); }
  bool operator()() const { return holds(); }

  std::function<bool()> holds;  ///< empty = always
  QString whyNot;              ///< "Select a piece first"; "" = not known
};

struct ActionSpec {
  QString id;          ///< stable: "edit.undo"
  QString text;        ///< "&Undo"
  QString tip;         ///< one sentence that teaches
  QKeySequence shortcut;  ///< as delivered; the user may give another
  QString icon;        ///< name in resources/icons; "" = none
  std::function<void()> run;
  Condition isEnabled = {};
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
  const ActionSpec* find(const QString& id) const;  ///< null when there is none
  const std::vector<ActionSpec>& specs() const { return specs_; }
  /// Why a command is off now, as a short sentence; "" when it is on
  /// or nothing is known.
  QString whyNot(const QString& id) const;
  /// Gives a command another key; an empty sequence leaves it without one.
  void setShortcut(const QString& id, const QKeySequence& keys);
  /// Holds commands back, whatever their own condition says: `whyHeld` gives
  /// the reason for an id, or "". Asked by `refresh`.
  void setHold(std::function<QString(const QString& id)> whyHeld) { whyHeld_ = std::move(whyHeld); }
  /// Asks every isEnabled and isChecked again.
  void refresh();

 Q_SIGNALS:
  void shortcutsChanged();

 private:
  void setTip(const ActionSpec& spec);
  QString held(const QString& id) const { return whyHeld_ ? whyHeld_(id) : QString(); }

  std::vector<ActionSpec> specs_;
  std::map<QString, QAction*> actions_;
  std::function<QString(const QString& id)> whyHeld_;
  std::map<QString, QString> toldHold_;  ///< the reason that stands in the tip
};

/// The words of a command without mnemonics and dots: "Save as".
QString plainText(const QString& text);

}  // namespace combdraft::desk

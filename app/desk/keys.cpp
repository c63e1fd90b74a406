#include "app/desk/keys.h"

#include <QCoreApplication>

namespace combdraft::desk {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(keys)
};

bool clash(const QKeySequence& a, const QKeySequence& b) {
  return !a.isEmpty() && !b.isEmpty() &&
         (a.matches(b) != QKeySequence::NoMatch || b.matches(a) != QKeySequence::NoMatch);
}

}  // namespace

QString keyTrouble(const QKeySequence& keys) {
  if (keys.isEmpty()) return {};
  const QKeyCombination first = keys[0];
  const Qt::KeyboardModifiers held = first.keyboardModifiers();
  const bool withCtrl = held & (Qt::ControlModifier | Qt::MetaModifier);
  switch (first.key()) {
    case Qt::Key_Escape: return Words::tr("Escape always drops what is under way. Choose another key.");
    case Qt::Key_Tab:
    case Qt::Key_Backtab: return Words::tr("Tab walks from one thing to the next. Choose another key.");
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
    case Qt::Key_Backspace:
      if (!withCtrl) return Words::tr("This key is needed while drawing and in fields. Hold Ctrl with it, or choose another.");
      break;
    case Qt::Key_Left:
    case Qt::Key_Right:
    case Qt::Key_Up:
    case Qt::Key_Down:
      if (!withCtrl) return Words::tr("The arrow keys move pieces. Hold Ctrl with them, or choose another key.");
      break;
    default: break;
  }
  // A letter alone may take up a tool: fields where text is typed keep it.
  const bool letter = first.key() >= Qt::Key_A && first.key() <= Qt::Key_Z;
  const bool prints = first.key() < Qt::Key_Escape && !letter;
  if (prints && !(held & (Qt::ControlModifier | Qt::MetaModifier | Qt::AltModifier)))
    return Words::tr("A figure or sign alone is for typing. Hold Ctrl or Alt with it.");
  if (held == Qt::AltModifier && first.key() >= Qt::Key_A && first.key() <= Qt::Key_Z)
    return Words::tr("Alt with a letter opens a menu. Hold Ctrl with it, or choose another key.");
  return {};
}

const ActionSpec* keyHolder(const ActionRegistry& actions, const QKeySequence& keys, const QString& except) {
  for (const ActionSpec& spec : actions.specs())
    if (spec.id != except && clash(actions.action(spec.id)->shortcut(), keys)) return &spec;
  return nullptr;
}

std::map<QString, QKeySequence> changedKeys(const ActionRegistry& actions) {
  std::map<QString, QKeySequence> changed;
  for (const ActionSpec& spec : actions.specs())
    if (actions.action(spec.id)->shortcut() != spec.shortcut) changed[spec.id] = actions.action(spec.id)->shortcut();
  return changed;
}

QStringList applyKeys(ActionRegistry& actions, const store::StoredKeys& stored) {
  QStringList ignored;
  for (const QString& entry : stored.refused) ignored << Words::tr("“%1” is no key.").arg(entry);
  std::vector<QString> given;
  for (const ActionSpec& spec : actions.specs()) {
    const auto found = stored.keys.find(spec.id);
    QKeySequence keys = spec.shortcut;
    if (found != stored.keys.end()) {
      if (const QString trouble = keyTrouble(found->second); trouble.isEmpty()) {
        keys = found->second;
        given.push_back(spec.id);
      } else {
        ignored << plainText(spec.text) + QStringLiteral(": ") + trouble;
      }
    }
    actions.setShortcut(spec.id, keys);
  }
  for (const auto& [id, keys] : stored.keys)
    if (!actions.find(id)) ignored << Words::tr("No command is called “%1”.").arg(id);
  // Two commands with one key would both be dead: the one that was given it
  // goes back to its own.
  for (const QString& id : given) {
    const QKeySequence keys = actions.action(id)->shortcut();
    const ActionSpec* holder = keyHolder(actions, keys, id);
    if (!holder) continue;
    ignored << Words::tr("%1 belongs to “%2” and cannot be “%3” too.")
                   .arg(keys.toString(QKeySequence::NativeText), plainText(holder->text), plainText(actions.find(id)->text));
    const QKeySequence own = actions.find(id)->shortcut;
    actions.setShortcut(id, keyHolder(actions, own, id) ? QKeySequence() : own);
  }
  return ignored;
}

}  // namespace combdraft::desk

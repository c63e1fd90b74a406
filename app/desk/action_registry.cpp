#include "app/desk/action_registry.h"

#include <algorithm>

#include "app/controls/icon.h"
#include "app/controls/plain_words.h"
#include "engine/base/expect.h"

namespace combdraft::desk {

QString plainText(const QString& text) {
  return controls::wordsOfButton(text).remove(QStringLiteral("…"));
}

QAction* ActionRegistry::add(ActionSpec spec) {
  COMBDRAFT_EXPECT(!actions_.contains(spec.id), spec.id.toStdString());
  auto* action = new QAction(spec.text, this);
  action->setObjectName(spec.id);
  action->setShortcut(spec.shortcut);
  action->setStatusTip(spec.tip);
  if (!spec.icon.isEmpty()) action->setIcon(controls::icon(spec.icon));
  action->setIconText(plainText(spec.shortText.isEmpty() ? spec.text : spec.shortText));
  action->setCheckable(static_cast<bool>(spec.isChecked));
  connect(action, &QAction::triggered, this, [run = spec.run, this] {
    run();
    refresh();
  });
  actions_.emplace(spec.id, action);
  specs_.push_back(std::move(spec));
  setTip(specs_.back());
  return action;
}

QAction* ActionRegistry::action(const QString& id) const {
  const auto found = actions_.find(id);
  COMBDRAFT_EXPECT(found != actions_.end(), id.toStdString());
  return found->second;
}

const ActionSpec* ActionRegistry::find(const QString& id) const {
  const auto found = std::find_if(specs_.begin(), specs_.end(),
                                  [&](const ActionSpec& spec) { return spec.id == id; });
  return found == specs_.end() ? nullptr : &*found;
}

QString ActionRegistry::whyNot(const QString& id) const {
  const ActionSpec* spec = find(id);
  if (const QString why = held(id); spec && !why.isEmpty()) return why;
  return spec && !action(id)->isEnabled() ? spec->isEnabled.whyNot : QString();
}

void ActionRegistry::setShortcut(const QString& id, const QKeySequence& keys) {
  if (action(id)->shortcut() == keys) return;
  action(id)->setShortcut(keys);
  setTip(*find(id));
  Q_EMIT shortcutsChanged();
}

void ActionRegistry::setTip(const ActionSpec& spec) {
  QAction* action = actions_.at(spec.id);
  const QString keys = action->shortcut().toString(QKeySequence::NativeText);
  QString tip = keys.isEmpty() ? spec.tip : QStringLiteral("%1 (%2)").arg(spec.tip, keys);
  if (const QString first = whyNot(spec.id); !first.isEmpty()) tip += u'\n' + first;
  action->setToolTip(tip);
}

void ActionRegistry::refresh() {
  for (const ActionSpec& spec : specs_) {
    QAction* action = actions_.at(spec.id);
    if (spec.isChecked) action->setChecked(spec.isChecked());
    const bool enabled = held(spec.id).isEmpty() && (!spec.isEnabled || spec.isEnabled());
    const QString why = enabled ? QString() : held(spec.id);
    QString& told = toldHold_[spec.id];
    if (enabled == action->isEnabled() && why == told) continue;
    told = why;
    action->setEnabled(enabled);
    setTip(spec);
  }
}

}  // namespace combdraft::desk

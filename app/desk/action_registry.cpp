#include "app/desk/action_registry.h"

#include "app/controls/icon.h"
#include "engine/base/expect.h"

namespace combdraft::desk {

QAction* ActionRegistry::add(ActionSpec spec) {
  COMBDRAFT_EXPECT(!actions_.contains(spec.id), spec.id.toStdString());
  auto* action = new QAction(spec.text, this);
  action->setObjectName(spec.id);
  action->setShortcut(spec.shortcut);
  const QString keys = spec.shortcut.toString(QKeySequence::NativeText);
  action->setToolTip(keys.isEmpty() ? spec.tip : QStringLiteral("%1 (%2)").arg(spec.tip, keys));
  action->setStatusTip(spec.tip);
  if (!spec.icon.isEmpty()) action->setIcon(controls::icon(spec.icon));
  QString under = spec.shortText.isEmpty() ? spec.text : spec.shortText;
  action->setIconText(under.remove(u'&').remove(QStringLiteral("…")));
  action->setCheckable(static_cast<bool>(spec.isChecked));
  connect(action, &QAction::triggered, this, [run = spec.run, this] {
    run();
    refresh();
  });
  actions_.emplace(spec.id, action);
  specs_.push_back(std::move(spec));
  return action;
}

QAction* ActionRegistry::action(const QString& id) const {
  const auto found = actions_.find(id);
  COMBDRAFT_EXPECT(found != actions_.end(), id.toStdString());
  return found->second;
}

void ActionRegistry::refresh() {
  for (const ActionSpec& spec : specs_) {
    QAction* action = actions_.at(spec.id);
    if (spec.isEnabled) action->setEnabled(spec.isEnabled());
    if (spec.isChecked) action->setChecked(spec.isChecked());
  }
}

}  // namespace combdraft::desk

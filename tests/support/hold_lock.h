#pragma once
// Another process that has a plan open: the role "hold-lock" with the plan's path.
#include <QThread>

#include "app/store/plan_lock.h"
#include "tests/support/child_role.h"

namespace combdraft::tests {

inline int holdLock(const QStringList& arguments) {
  store::PlanLock lock;
  if (lock.take(arguments.at(0)) != store::PlanLock::Standing::Held) return 1;
  tellReady();
  for (;;) QThread::sleep(1);
}

inline const ChildRole holding("hold-lock", holdLock);

}  // namespace combdraft::tests

#pragma once
// Topics of messages that more than one part of the window says or takes back.
#include <QString>

#include "app/store/plan_lock.h"

namespace combdraft::desk {

inline const QString kQuestion = QStringLiteral("question");
inline const QString kInUse = QStringLiteral("in-use");
inline const QString kOnDisk = QStringLiteral("on-disk");
inline const QString kFormat = QStringLiteral("format");
inline const QString kLeft = QStringLiteral("left");

/// Who has a plan open: "process 4711 (combdraft) on the computer salon".
QString holderText(const store::PlanHolder& holder);

}  // namespace combdraft::desk

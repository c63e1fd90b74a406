#pragma once
// Delete means gone: everything the program keeps about a client, and what it keeps
// of the plans of that client beside the plan files themselves.
#include <QString>
#include <QStringList>
#include <set>
#include <vector>

#include "app/store/client_keeper.h"

namespace combdraft::store {

/// The plans of a client: the client's own number and those of the visits.
std::set<std::uint64_t> planNumbersOf(const ClientFile& file);

/// The random number a plan file or a snapshot is of, found even when the file is
/// damaged: the first `"number":` in it. 0 = none.
std::uint64_t planNumberIn(const QString& path);

struct Gone {
  int leftPlans = 0, previous = 0, plans = 0;
  QStringList notRemoved;  ///< paths that are still there
};

/// Removes snapshots, left plans and discarded ones of these plans below
/// `recoveryRoot`. Those that a running program holds stay and are named.
void removeSnapshots(const QString& recoveryRoot, const std::set<std::uint64_t>& numbers, Gone& gone);

enum class PlanFiles { Stay, GoToo };
/// For each path that is a plan of these numbers: what stands beside it from earlier
/// saves and saves that were cut short; with GoToo the plan itself.
void removeBeside(const QStringList& paths, const std::set<std::uint64_t>& numbers, PlanFiles files, Gone& gone);

}  // namespace combdraft::store

#pragma once
// What was still open when a picture was agreed on, for the colourist alone: it never
// stands on the client's screen, and nothing of the client's answers goes into the plan.
//
// Nothing was written down for it at that moment. The plan's own check is made again on
// the placement as it was agreed, which the plan keeps; tests are those written down by
// now, without those made after that day.
#include <QDate>
#include <QString>
#include <QStringList>
#include <optional>

#include "app/store/client_file.h"
#include "engine/plan/agreement.h"

namespace combdraft::cards {

/// How much of the frozen choice the plan's own check lists; nothing where none was kept.
/// How pieces lie is looked at too: some hundredths of a second.
std::optional<std::size_t> openFindings(const plan::Agreement& agreement);

/// Tests that were due, undated or missing on a day: "Skin test: overdue since ...".
QStringList openTests(const store::ClientFile& file, const store::ClientPolicy& policy, const QDate& day);

/// "Agreed on 28.11.2026: choice A. Open then: 2 findings of the plan's check; Skin test: ...".
/// `file` is null without a client, or without consent: then no test is written down.
QString agreedLine(const plan::Agreement& agreement, std::optional<std::size_t> findings, const store::ClientFile* file,
                   const store::ClientPolicy& policy);

}  // namespace combdraft::cards

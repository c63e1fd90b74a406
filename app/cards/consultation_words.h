#pragma once
// What the consultation asks the colourist to check, to test and to refer. It never
// advises a strength, a time or a ratio, judges no skin and promises nothing.
#include <QString>
#include <optional>
#include <vector>

#include "app/store/client_file.h"

namespace combdraft::cards {

enum class Asks { Check, Test, Refer };
struct AskLine {
  Asks asks = Asks::Check;
  QString text;
};

/// What stands open for a client on a day: what must be referred first, then tests,
/// then questions.
std::vector<AskLine> asksOf(const store::ClientFile& file, const store::ClientPolicy& policy, const QDate& today);
/// What is asked first where henna, metallic or box colour was said or is not known, and no
/// metal test was made: with or without consent to keep the answers.
std::optional<AskLine> metalLine(const store::ClientFile& file);
/// "Refer: …", "Test: …", "Check: …"
QString askText(const AskLine& line);

/// The questions that come before anything is mixed, written down or not.
QString firstQuestions();

/// "Visits: 2; Minutes: 150; Price: 140": what was typed for a choice, for the client's
/// screen; "" where nothing was.
QString offerText(const store::Offer& offer);

QString testName(store::TestKind kind);
/// "overdue since 2026-01-31", "due today", "next due 2026-07-31", or that nobody
/// decided; of a test not made yet, that it is not.
QString dueText(const store::ClientTest& test, const store::ClientPolicy& policy, const QDate& today);

}  // namespace combdraft::cards

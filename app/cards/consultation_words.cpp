#include "app/cards/consultation_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "app/words/date_words.h"

namespace combdraft::cards {
namespace {

using store::Answer;
using store::ClientFile;
using store::ClientTest;
using store::TestKind;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(consultation)
};

// The one that counts: of each kind the last that was made.
const ClientTest* lastOf(const ClientFile& file, TestKind kind) {
  const ClientTest* last = nullptr;
  for (const ClientTest& test : file.tests)
    if (test.kind == kind && !test.date.empty() && (!last || test.date > last->date)) last = &test;
  return last;
}

bool has(const ClientFile& file, TestKind kind) {
  return std::any_of(file.tests.begin(), file.tests.end(), [kind](const ClientTest& test) { return test.kind == kind; });
}

// Of these every one counts: what showed once may show again.
bool isOfSkin(TestKind kind) { return kind == TestKind::Skin || kind == TestKind::Other; }

// What was written of a test is read by the colourist, not by this program.
AskLine readResult(const ClientTest& test) {
  const QString made = words::dateText(test.date);
  if (test.result.empty()) return {Asks::Test, Words::tr("%1 of %2: no result is written down.").arg(testName(test.kind), made)};
  const QString said = Words::tr("%1 of %2, as you wrote it down: “%3”.").arg(testName(test.kind), made, QString::fromStdString(test.result).simplified());
  return {Asks::Check, said + u' ' + (isOfSkin(test.kind) ? Words::tr("If anything showed, or in doubt: do not go on; refer to a doctor.")
                                             : Words::tr("If it was not as it should be, or in doubt: do not go on; see the maker's directions."))};
}

void askTests(const ClientFile& file, const store::ClientPolicy& policy, const QDate& today, std::vector<AskLine>& lines) {
  for (const auto& kind : plan::words<TestKind>()) {
    const ClientTest* last = lastOf(file, kind.value);
    const QDate due = last ? store::dueOn(*last, policy) : QDate();
    if (due.isValid() && due <= today)
      lines.push_back({Asks::Test, Words::tr("%1: %2.").arg(testName(kind.value), dueText(*last, policy, today))});
    for (const ClientTest& test : file.tests)
      if (test.kind == kind.value && !test.date.empty() && (isOfSkin(test.kind) || test.date == last->date)) lines.push_back(readResult(test));
    for (const ClientTest& test : file.tests)
      if (test.kind == kind.value && test.date.empty())
        lines.push_back({Asks::Test, Words::tr("%1: %2.").arg(testName(kind.value), dueText(test, policy, today))});
  }
  if (auto line = metalLine(file)) lines.push_back(std::move(*line));
  if (!has(file, TestKind::Strand))
    lines.push_back({Asks::Test, Words::tr("No test strand is written down: it shows how far this hair lightens.")});
  if (!has(file, TestKind::Skin))
    lines.push_back({Asks::Test, Words::tr("No skin test is written down: label, local rules and insurer say when one is due.")});
}

}  // namespace

std::optional<AskLine> metalLine(const ClientFile& file) {
  const store::HairHistory& h = file.history;
  const bool said = h.henna == Answer::Yes || h.metallic == Answer::Yes || h.boxColour == Answer::Yes;
  const bool unknown = h.henna == Answer::Unknown || h.metallic == Answer::Unknown || h.boxColour == Answer::Unknown;
  if (!(said || unknown) || lastOf(file, TestKind::Metal)) return std::nullopt;
  const QString why = said ? Words::tr("Henna, metallic or box colour was said: no metal test that was made is written down.")
                           : Words::tr("Whether henna, metallic or box colour is on the hair is not known: no metal test that was made is written down.");
  return AskLine{Asks::Test, why + u' ' + Words::tr("Lightener or developer on metal can get hot and break the hair: before that test, or in doubt, put neither on.")};
}

std::vector<AskLine> asksOf(const ClientFile& file, const store::ClientPolicy& policy, const QDate& today) {
  std::vector<AskLine> lines;
  const store::Health& health = file.health;
  if (health.ageReached == Answer::No)
    lines.push_back({Asks::Refer, Words::tr("Not of the age that label, local rules or insurer ask for: they come first, for tests too.")});
  if (health.reacted == Answer::Yes)
    lines.push_back({Asks::Refer, Words::tr("Has reacted before: do not go on, to a doctor first; label and insurer say what may follow.")});
  if (health.scalp == store::ScalpFound::Something)
    lines.push_back({Asks::Refer, Words::tr("Something was found on the scalp: do not go on, to a doctor first. What it is, is not for the colourist to say.")});
  if (health.reacted == Answer::Unknown)
    lines.push_back({Asks::Refer, Words::tr("Does not know of past reactions: ask again; in doubt do not go on, to a doctor first. Label and insurer say what may follow.")});
  if (health.scalp == store::ScalpFound::Unsure)
    lines.push_back({Asks::Refer, Words::tr("It is not sure what is on the scalp: look again; in doubt do not go on, to a doctor first.")});
  askTests(file, policy, today, lines);
  if (health.ageReached == Answer::NotAsked)
    lines.push_back({Asks::Check, Words::tr("The age was not asked; label, local rules and insurer set the lowest one.")});
  if (health.ageReached == Answer::Unknown)
    lines.push_back({Asks::Check, Words::tr("The age is not known: ask again; label, local rules and insurer set the lowest one, for tests too.")});
  if (health.reacted == Answer::NotAsked)
    lines.push_back({Asks::Check, Words::tr("Past reactions were not asked: to colour, to lightener, to a temporary black tattoo; also whether breath was short from powder or colour.")});
  if (health.scalp == store::ScalpFound::NotLooked)
    lines.push_back({Asks::Check, Words::tr("The scalp was not looked at: on broken, sore or irritated skin nothing is put; refer to a doctor.")});
  const store::HairHistory& h = file.history;
  const auto anyIs = [&h](Answer answer) { return h.dye == answer || h.henna == answer || h.metallic == answer || h.boxColour == answer; };
  if (anyIs(Answer::NotAsked))
    lines.push_back({Asks::Check, Words::tr("Not all of the hair's history was asked: dye, henna, metallic colour, box colour.")});
  if (anyIs(Answer::Unknown))
    lines.push_back({Asks::Check, Words::tr("Not all of the hair's history is known: ask again, and look at the ends and at old bands.")});
  return lines;
}

QString askText(const AskLine& line) {
  switch (line.asks) {
    case Asks::Check: return Words::tr("Check: %1").arg(line.text);
    case Asks::Test: return Words::tr("Test: %1").arg(line.text);
    case Asks::Refer: return Words::tr("Refer: %1").arg(line.text);
  }
  return {};
}

QString firstQuestions() {
  return Words::tr("Ask first, whether or not it is written down: the age that label, rules and insurer ask for; past reactions, also to a "
             "temporary black tattoo; the scalp's condition; what the hair has been through (henna, metallic or box colour, lightening); which tests are due. In doubt do not go on; refer to a doctor.");
}

QString offerText(const store::Offer& offer) {
  QStringList parts;
  if (!offer.visits.empty()) parts << Words::tr("Visits: %1").arg(QString::fromStdString(offer.visits));
  if (!offer.minutes.empty()) parts << Words::tr("Minutes: %1").arg(QString::fromStdString(offer.minutes));
  if (!offer.price.empty()) parts << Words::tr("Price: %1").arg(QString::fromStdString(offer.price));
  return parts.join(QStringLiteral("; "));
}

QString testName(TestKind kind) {
  switch (kind) {
    case TestKind::Skin: return Words::tr("Skin test");
    case TestKind::Strand: return Words::tr("Test strand");
    case TestKind::Elasticity: return Words::tr("Elasticity");
    case TestKind::Porosity: return Words::tr("Porosity");
    case TestKind::Metal: return Words::tr("Metal test");
    case TestKind::Other: return Words::tr("Another test");
  }
  return {};
}

QString dueText(const ClientTest& test, const store::ClientPolicy& policy, const QDate& today) {
  const QDate due = store::dueOn(test, policy);
  if (!due.isValid()) return test.date.empty() ? Words::tr("not made yet") : Words::tr("no due date typed, and no policy of yours");
  if (due == today) return Words::tr("due today");
  return (due < today ? Words::tr("overdue since %1") : test.date.empty() ? Words::tr("not made yet, due %1") : Words::tr("next due %1")).arg(words::dateText(due));
}

}  // namespace combdraft::cards

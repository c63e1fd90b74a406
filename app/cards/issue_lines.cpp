#include "app/cards/issue_lines.h"

#include <QCoreApplication>
#include <algorithm>
#include <set>

namespace combdraft::cards {
namespace {

using plan::IssueCode;

QString tr(const char* text) { return QCoreApplication::translate("IssueLines", text); }

// Sentences look, check, test, refer. %1 = the finding's first argument.
const char* sentence(const plan::Issue& issue) {
  const std::string first = issue.args.empty() ? std::string() : issue.args.front();
  switch (issue.code) {
    case IssueCode::StartNearScalp:
      return first == "no"
                 ? QT_TRANSLATE_NOOP("IssueLines", "Starts at or near the scalp, and the leaflet does not allow scalp contact: check the leaflet.")
                 : QT_TRANSLATE_NOOP("IssueLines", "Starts at or near the scalp, and scalp contact is not stated: check the leaflet.");
    case IssueCode::BackcombCondition:
      return first == "poor"
                 ? QT_TRANSLATE_NOOP("IssueLines", "Backcombing hair in poor condition: check elasticity first.")
                 : QT_TRANSLATE_NOOP("IssueLines", "Backcombing, and the condition here is not recorded: check elasticity first.");
    case IssueCode::LightOverLight:
      return QT_TRANSLATE_NOOP("IssueLines", "Lightener over hair that is already light: check its strength, test a strand.");
    case IssueCode::LightOverPoor:
      return QT_TRANSLATE_NOOP("IssueLines", "Lightener over hair in poor condition: check its strength, test a strand.");
    case IssueCode::BackcombBeforeStart:
      return QT_TRANSLATE_NOOP("IssueLines", "The backcomb depth lies nearer the scalp than the start.");
    case IssueCode::HandoverBeforeStart:
      return QT_TRANSLATE_NOOP("IssueLines", "The end formula takes over before the start.");
    case IssueCode::StopBeforeStart:
      return QT_TRANSLATE_NOOP("IssueLines", "Lightener stops before it starts.");
    case IssueCode::HairShorterThanStart:
      return QT_TRANSLATE_NOOP("IssueLines", "The hair here is at most %1 mm long and ends before the start.");
    case IssueCode::HairShorterThanBackcomb:
      return QT_TRANSLATE_NOOP("IssueLines", "The hair here is at most %1 mm long and ends before the backcomb depth.");
    case IssueCode::DropOutBeyondLine:
      return QT_TRANSLATE_NOOP("IssueLines", "A drop-out lies beyond the end of the piece, %1 mm along it.");
    case IssueCode::GapWithoutTeeth:
      return QT_TRANSLATE_NOOP("IssueLines", "Gaps are given, but no teeth.");
    case IssueCode::WeaveWithoutTeeth:
      return QT_TRANSLATE_NOOP("IssueLines", "Woven, but teeth and gaps are not given: the taken share stands for them.");
    case IssueCode::SpanBackwards:
      return QT_TRANSLATE_NOOP("IssueLines", "The level it lifts to does not lie between its least and its most.");
    case IssueCode::StretchBackwards:
      return first == "bands"
                 ? QT_TRANSLATE_NOOP("IssueLines", "Old colour band %2 ends before it begins.")
                 : QT_TRANSLATE_NOOP("IssueLines", "Already light hair, entry %2, ends before it begins.");
    default: return nullptr;
  }
}

QStringList linesOf(const plan::Plan& plan, const std::set<plan::ItemId>& about) {
  QStringList lines;
  for (const plan::Issue& issue : plan::validate(plan)) {
    if (issue.severity == plan::Severity::Error || !sentence(issue)) continue;
    const bool here = std::any_of(issue.items.begin(), issue.items.end(),
                                  [&](const plan::ItemId& id) { return about.count(id) > 0; });
    const QString line = issueLine(issue);
    if (here && !lines.contains(line)) lines << line;
  }
  return lines;
}

// Without the pieces that are not asked about: a card asks at every step of a drag.
plan::Plan onlyPieces(plan::Plan plan, const std::set<plan::ItemId>& ids) {
  std::vector<plan::ItemId> others;
  for (const auto& [id, item] : plan.items())
    if (std::holds_alternative<plan::Piece>(*item) && ids.count(id) == 0) others.push_back(id);
  for (const plan::ItemId& id : others) plan.put(id, plan::ItemPtr());
  return plan;
}

}  // namespace

QString issueLine(const plan::Issue& issue) {
  const char* words = sentence(issue);
  if (!words) return QString::fromStdString(describe(issue));
  QString line = tr(words);
  for (std::size_t i = 0; i < issue.args.size(); ++i)
    line.replace(QStringLiteral("%%1").arg(i + 1), QString::fromStdString(issue.args[i]));
  return line;
}

QStringList pieceIssues(const plan::Plan& plan, const std::vector<plan::ItemId>& ids) {
  const std::set<plan::ItemId> about(ids.begin(), ids.end());
  return linesOf(onlyPieces(plan, about), about);
}

QStringList hairIssues(const plan::Plan& plan) { return linesOf(onlyPieces(plan, {}), {plan::kHairId}); }

}  // namespace combdraft::cards

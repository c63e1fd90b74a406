#include "app/cards/issue_lines.h"

#include <algorithm>
#include <set>

#include "app/words/engine_words.h"

namespace combdraft::cards {
namespace {

QStringList linesOf(const plan::Plan& plan, const std::set<plan::ItemId>& about) {
  QStringList lines;
  for (const plan::Issue& issue : plan::validate(plan)) {
    if (issue.severity == plan::Severity::Error) continue;
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
  QString line = words::inWords(plan::sentenceOf(issue));
  if (line.isEmpty()) return line;
  line[0] = line[0].toUpper();
  return line.endsWith(u'.') ? line : line + u'.';
}

QStringList pieceIssues(const plan::Plan& plan, const std::vector<plan::ItemId>& ids) {
  const std::set<plan::ItemId> about(ids.begin(), ids.end());
  return linesOf(onlyPieces(plan, about), about);
}

QStringList hairIssues(const plan::Plan& plan) { return linesOf(onlyPieces(plan, {}), {plan::kHairId}); }

}  // namespace combdraft::cards

#include "app/cards/formula_words.h"

#include <QCoreApplication>
#include <algorithm>

namespace combdraft::cards {

std::vector<std::pair<plan::ItemId, const plan::Formula*>> formulasOf(const plan::Plan& plan) {
  std::vector<std::pair<plan::ItemId, const plan::Formula*>> found;
  for (const auto& [id, item] : plan.items())
    if (const auto* formula = std::get_if<plan::Formula>(item.get())) found.emplace_back(id, formula);
  std::sort(found.begin(), found.end(), [](const auto& a, const auto& b) {
    return a.second->letter != b.second->letter ? a.second->letter < b.second->letter
                                                : plan::idLess(a.first, b.first);
  });
  return found;
}

QString formulaName(const plan::ItemId& id, const plan::Formula& formula) {
  const QString letter = QString::fromStdString(formula.letter), kind = QString::fromStdString(formula.kind);
  if (letter.isEmpty() && kind.isEmpty()) return QString::fromStdString(id).replace(u'-', u' ');
  if (kind.isEmpty()) return letter;
  return letter.isEmpty() ? kind : letter + QStringLiteral(", ") + kind;
}

std::string freeLetter(const plan::Plan& plan) {
  const auto formulas = formulasOf(plan);
  for (char letter = 'A'; letter <= 'Z'; ++letter)
    if (std::none_of(formulas.begin(), formulas.end(),
                     [&](const auto& f) { return f.second->letter == std::string(1, letter); }))
      return std::string(1, letter);
  return {};
}

FormulaUse usesOf(const plan::Plan& plan, const plan::ItemId& formula) {
  FormulaUse use;
  std::vector<std::pair<plan::ItemId, const plan::Piece*>> pieces;
  for (const auto& [id, item] : plan.items()) {
    if (const auto* piece = std::get_if<plan::Piece>(item.get())) pieces.emplace_back(id, piece);
    if (const auto* treatment = std::get_if<plan::Treatment>(item.get()))
      if (treatment->formula == formula) use.treatments.push_back(id);
  }
  std::sort(pieces.begin(), pieces.end(), [](const auto& a, const auto& b) {
    return a.second->order != b.second->order ? a.second->order < b.second->order
                                              : plan::idLess(a.first, b.first);
  });
  for (const auto& [id, piece] : pieces) {
    if (piece->root.formula == formula) use.roots.push_back(id);
    if (piece->handover_mm && piece->end.formula == formula) use.ends.push_back(id);
  }
  return use;
}

}  // namespace combdraft::cards

#include "app/handout/steps.h"

#include <QCoreApplication>
#include <algorithm>
#include <set>

#include "app/handout/piece_words.h"
#include "app/paint/describe_piece.h"

namespace combdraft::handout {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

bool hasWords(const plan::HandoutStep& step) { return !step.what.empty() || !step.how.empty() || !step.why.empty(); }

struct Group {
  plan::ItemId about;
  const plan::Section* section = nullptr;
  std::vector<const paint::PieceShape*> pieces;
};

// Worked the same way: everything but the line and the number.
bool isAlike(const plan::Piece& a, const plan::Piece& b) {
  return a.action == b.action && a.taking == b.taking && a.keptIn == b.keptIn && a.backcomb == b.backcomb &&
         a.thickness_mm == b.thickness_mm && a.taken_frac == b.taken_frac && a.tooth_mm == b.tooth_mm && a.gap_mm == b.gap_mm &&
         a.start_mm == b.start_mm && a.root == b.root && a.end == b.end && a.under == b.under && a.stop_mm == b.stop_mm &&
         a.handover_mm == b.handover_mm && a.dropOuts.empty() == b.dropOuts.empty();
}

// Its other side, or one more of the same in the same place.
bool belongsTo(const Group& group, const paint::PieceShape& shape) {
  const paint::PieceShape& before = *group.pieces.back();
  const plan::Piece &a = *before.piece, &b = *shape.piece;
  for (const paint::PieceShape* one : group.pieces)
    if (b.twinOf == one->id || one->piece->twinOf == shape.id) return true;
  return isAlike(a, b) && (before.place == shape.place || (!a.label.empty() && a.label == b.label));
}

std::vector<Group> groupsOf(const paint::Scene& scene, const std::set<plan::ItemId>& withWords) {
  std::vector<Group> groups;
  std::map<plan::ItemId, std::size_t> ofSection;
  for (const auto& shape : scene.pieces()) {
    const plan::Piece& piece = *shape->piece;
    if (withWords.contains(shape->id)) {  // what was written about begins a step
      groups.push_back({shape->id, nullptr, {shape.get()}});
      continue;
    }
    if (const auto* section = scene.plan().find<plan::Section>(piece.section)) {
      const auto [it, isNew] = ofSection.try_emplace(piece.section, groups.size());
      const plan::Section* before = groups.empty() ? nullptr : groups.back().section;
      const bool otherSide = before && !withWords.contains(piece.section) &&
                             (section->twinOf == groups.back().about || before->twinOf == piece.section);
      if (isNew && otherSide)
        it->second = groups.size() - 1;
      else if (isNew)
        groups.push_back({piece.section, section, {}});
      groups[it->second].pieces.push_back(shape.get());
      continue;
    }
    Group* last = groups.empty() || groups.back().section ? nullptr : &groups.back();
    if (last && belongsTo(*last, *shape))
      last->pieces.push_back(shape.get());
    else
      groups.push_back({shape->id, nullptr, {shape.get()}});
  }
  return groups;
}

QString nameOf(const Group& group) {
  if (group.section) {
    const QString label = QString::fromStdString(group.section->label);
    if (!label.isEmpty()) return label.left(1).toUpper() + label.mid(1);
    return Words::tr("Section %1").arg(group.pieces[group.pieces.size() / 2]->place);
  }
  const plan::Piece& first = *group.pieces.front()->piece;
  const QString label = QString::fromStdString(first.label);
  const QString name = group.pieces.size() == 1 ? paint::pieceName(first)
                                                : Words::tr("Pieces %1").arg(numbersOf(group.pieces));
  return label.isEmpty() ? name : Words::tr("%1, %2").arg(name, label);
}

}  // namespace

std::vector<Step> stepsOf(const paint::Scene& scene, const std::vector<plan::HandoutStep>& typed) {
  std::set<plan::ItemId> written;
  for (const plan::HandoutStep& step : typed)
    if (hasWords(step)) written.insert(step.about);
  std::vector<Step> steps;
  std::set<plan::ItemId> shown;
  const auto takeWords = [&](Step& step) {
    for (const plan::HandoutStep& words : typed)
      if (words.about == step.about)
        step.typed = {QString::fromStdString(words.what), QString::fromStdString(words.how), QString::fromStdString(words.why)};
    shown.insert(step.about);
  };
  for (const Group& group : groupsOf(scene, written)) {
    Step step;
    step.about = group.about;
    for (const paint::PieceShape* piece : group.pieces) step.pieces.push_back(piece->id);
    step.name = nameOf(group);
    step.made = {whatOf(scene, group.section, group.pieces), howOf(scene.plan(), group.pieces),
                 whyOf(group.section, group.pieces)};
    takeWords(step);
    steps.push_back(std::move(step));
  }
  for (const plan::HandoutStep& words : typed) {
    if (!hasWords(words) || shown.contains(words.about)) continue;
    Step step;
    step.about = words.about;
    step.standing = Step::Standing::Gone;
    step.name = Words::tr("No longer in the plan: %1").arg(QString::fromStdString(words.about));
    takeWords(step);
    steps.push_back(std::move(step));
  }
  return steps;
}

std::vector<plan::HandoutStep> withWords(std::vector<plan::HandoutStep> typed, const plan::ItemId& about, const StepWords& words) {
  const auto it = std::find_if(typed.begin(), typed.end(), [&](const plan::HandoutStep& step) { return step.about == about; });
  plan::HandoutStep step = it == typed.end() ? plan::HandoutStep{} : *it;
  step.about = about;
  step.what = words.what.toStdString();
  step.how = words.how.toStdString();
  step.why = words.why.toStdString();
  const bool stays = hasWords(step) || !step.extra.empty();
  if (it == typed.end()) {
    if (stays) typed.push_back(std::move(step));
  } else if (stays) {
    *it = std::move(step);
  } else {
    typed.erase(it);
  }
  return typed;
}

}  // namespace combdraft::handout

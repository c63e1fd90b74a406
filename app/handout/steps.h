#pragma once
// The numbered steps of a lesson, made from the plan's working order: pieces of one
// section are one step, and so are pieces that are drawn free, lie in the same place
// and are worked the same way, one after the other. Twins go with their
// source when nothing comes between. What the educator typed for a piece or a section
// stays with it: it begins a step of its own, and when it is gone from the plan the
// step is marked and kept.
#include <QString>
#include <vector>

#include "app/paint/scene.h"

namespace combdraft::handout {

struct StepWords {
  QString what, how, why;
  bool operator==(const StepWords&) const = default;
};

struct Step {
  plan::ItemId about;                ///< the section, or the first piece
  std::vector<plan::ItemId> pieces;  ///< in working order, left-outs among them; empty when gone
  QString name;                      ///< "Section back left", "Piece 7", "Pieces 7 to 12"
  StepWords made;                    ///< from the plan
  StepWords typed;                   ///< "" = what is made holds
  enum class Standing { InPlan, Gone } standing = Standing::InPlan;

  QString what() const { return typed.what.isEmpty() ? made.what : typed.what; }
  QString how() const { return typed.how.isEmpty() ? made.how : typed.how; }
  QString why() const { return typed.why.isEmpty() ? made.why : typed.why; }
};

/// Steps in working order, those whose piece or section is gone last.
std::vector<Step> stepsOf(const paint::Scene& scene, const std::vector<plan::HandoutStep>& typed);

/// `typed` with the texts of one step; an entry without any text goes.
std::vector<plan::HandoutStep> withWords(std::vector<plan::HandoutStep> typed, const plan::ItemId& about, const StepWords& words);

}  // namespace combdraft::handout

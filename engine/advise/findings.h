#pragma once
// From what was seen to what needs a look. Pure: no tracing, no picture.
#include "engine/advise/finding.h"
#include "engine/look/openings.h"
#include "engine/look/regrowth.h"
#include "engine/look/stripes.h"

namespace combdraft::advise {

/// What was seen of a plan. What is null was not looked at and gives no finding.
struct Seen {
  plan::ItemId choice;  ///< "" = the active one
  const look::Readings* down = nullptr;
  const look::Readings* tiedBack = nullptr;
  const look::Readings* raised = nullptr;
  hair::Worn raisedAs{hair::WornWay::LayerRaised};
  const look::Openings* openings = nullptr;
  const std::vector<look::Regrowth>* regrowth = nullptr;
  const std::vector<look::Stripes>* stripes = nullptr;
};

/// Worst first, without remedies (remedies.h). Lines are drawn by the
/// assumptions block.* and finding.* of the plan.
std::vector<Finding> findingsOf(const plan::Plan& plan, const Seen& seen);

/// The way of wearing that an opening is.
hair::Worn wornOf(const look::Opening& opening);

}  // namespace combdraft::advise

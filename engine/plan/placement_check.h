#pragma once
// What needs a look in how pieces and sections lie on the head: pieces that want
// the same hair, sections whose rule cannot be met. Dearer than validate()
// (about 10 ms a laid-out section), so not asked at every step of a drag.
#include <stop_token>

#include "engine/plan/validate.h"

namespace combdraft::plan {

/// Notes only. Overlap is measured between the middle lines, straight in space:
/// within 0.3 mm for strips up to 40 mm (tested on equal strips). Left-outs may
/// lie over pieces: they keep their hair. Work is bounded, whatever a file holds: a
/// choice that is crowded beyond any head is said not to be checked whole. Stopped, it
/// returns what it has found so far.
std::vector<Issue> checkPlacement(const Plan& plan, const std::stop_token& stop = {});

}  // namespace combdraft::plan

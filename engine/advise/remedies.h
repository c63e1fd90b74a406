#pragma once
// Which remedies might help a finding: candidates that obey the rules. The
// advisor tries them and keeps what really helps.
#include "engine/advise/finding.h"

namespace combdraft::advise {

/// Candidates for one finding, gentlest first; each has an edit that changes
/// something and breaks no rule.
std::vector<Remedy> candidatesFor(const plan::Plan& plan, const Finding& finding);

}  // namespace combdraft::advise

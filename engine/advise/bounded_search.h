#pragma once
// The lowest value of a function of a few numbers, each between bounds, without
// its derivatives: BOBYQA of NLopt.
#include <functional>
#include <stop_token>
#include <vector>

namespace combdraft::advise {

struct Bounds {
  double low = 0, high = 0;
};

/// The best point met within `evaluations` calls, never worse than `start`.
/// Numbers whose bounds meet stay. Ends early when stopped.
std::vector<double> lowest(const std::function<double(const std::vector<double>&)>& f,
                           std::vector<double> start, const std::vector<Bounds>& bounds,
                           int evaluations, std::stop_token stop);

}  // namespace combdraft::advise

#include "engine/advise/bounded_search.h"

#include <nlopt.h>

#include <algorithm>
#include <memory>

#include "engine/base/expect.h"

namespace combdraft::advise {
namespace {

struct Search {
  const std::function<double(const std::vector<double>&)>& f;
  std::vector<std::size_t> free;  ///< numbers that may move
  std::vector<double> point;      ///< all numbers
  std::vector<double> best;
  double lowest;
  std::stop_token stop;
  nlopt_opt engine = nullptr;

  double at(const double* x) {
    for (std::size_t k = 0; k < free.size(); ++k) point[free[k]] = x[k];
    const double value = f(point);
    if (value < lowest) lowest = value, best = point;
    if (engine && stop.stop_requested()) nlopt_force_stop(engine);
    return value;
  }
};

double evaluate(unsigned, const double* x, double*, void* data) {
  return static_cast<Search*>(data)->at(x);
}

}  // namespace

std::vector<double> lowest(const std::function<double(const std::vector<double>&)>& f,
                           std::vector<double> start, const std::vector<Bounds>& bounds,
                           int evaluations, std::stop_token stop) {
  COMBDRAFT_EXPECT(start.size() == bounds.size(), start.size());
  Search search{f, {}, start, start, 0, stop};
  std::vector<double> low, high, x, step;
  for (std::size_t i = 0; i < start.size(); ++i) {
    search.point[i] = search.best[i] = std::clamp(start[i], bounds[i].low, bounds[i].high);
    if (bounds[i].high - bounds[i].low < 1e-9) continue;
    search.free.push_back(i);
    low.push_back(bounds[i].low), high.push_back(bounds[i].high);
    x.push_back(search.point[i]);
    step.push_back((bounds[i].high - bounds[i].low) / 4);
  }
  search.lowest = f(search.point);
  // BOBYQA needs at least two numbers.
  if (search.free.size() < 2 || stop.stop_requested()) {
    if (search.free.size() == 1 && !stop.stop_requested())
      for (int k = 0; k <= std::min(evaluations, 24); ++k) {
        const double here = low[0] + (high[0] - low[0]) * k / std::min(evaluations, 24);
        search.at(&here);
      }
    return search.best;
  }
  const std::unique_ptr<nlopt_opt_s, decltype(&nlopt_destroy)> engine(
      nlopt_create(NLOPT_LN_BOBYQA, static_cast<unsigned>(search.free.size())), &nlopt_destroy);
  COMBDRAFT_EXPECT(engine != nullptr, search.free.size());
  search.engine = engine.get();
  nlopt_set_min_objective(engine.get(), &evaluate, &search);
  nlopt_set_lower_bounds(engine.get(), low.data());
  nlopt_set_upper_bounds(engine.get(), high.data());
  nlopt_set_initial_step(engine.get(), step.data());
  nlopt_set_maxeval(engine.get(), evaluations);
  nlopt_set_xtol_rel(engine.get(), 1e-3);
  nlopt_set_ftol_rel(engine.get(), 1e-4);
  double value = 0;
  // However it ends (limit, stop, rounding), the best point met is kept.
  nlopt_optimize(engine.get(), x.data(), &value);
  return search.best;
}

}  // namespace combdraft::advise

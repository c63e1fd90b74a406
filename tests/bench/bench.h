#pragma once
// Small things that the benchmarks share: wall and processor time, quantiles,
// the plan they work on, and one line of output per figure.
#include <sys/resource.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

#include "engine/base/number_text.h"
#include "engine/look/look.h"
#include "engine/plan/plan_file.h"

namespace combdraft::bench {

struct Times {
  double wall_ms = 0, cpu_ms = 0;  ///< cpu: all threads, user and system
};

inline double cpuNow_ms() {
  rusage use{};
  getrusage(RUSAGE_SELF, &use);
  const auto ms = [](const timeval& t) {
    return static_cast<double>(t.tv_sec) * 1e3 + static_cast<double>(t.tv_usec) / 1e3;
  };
  return ms(use.ru_utime) + ms(use.ru_stime);
}

/// Largest resident size of this process so far, MB.
inline double peakMemory_mb() {
  rusage use{};
  getrusage(RUSAGE_SELF, &use);
  return static_cast<double>(use.ru_maxrss) / 1024;
}

template <class Work>
Times timed(Work work) {
  const double cpu = cpuNow_ms();
  const auto start = std::chrono::steady_clock::now();
  work();
  const std::chrono::duration<double, std::milli> wall = std::chrono::steady_clock::now() - start;
  return {wall.count(), cpuNow_ms() - cpu};
}

/// `values` sorted; q in 0..1.
inline double quantile(std::vector<double> values, double q) {
  std::sort(values.begin(), values.end());
  return values.empty() ? 0 : values[static_cast<std::size_t>(q * static_cast<double>(values.size() - 1) + 0.5)];
}

/// One figure: what, how many locks, value, unit, note; fields part by tabs.
inline void figure(const std::string& what, int locks, double value, int decimals,
                   const std::string& unit, const std::string& note = {}) {
  std::printf("%s\t%d\t%s\t%s\t%s\n", what.c_str(), locks, numberText(value, decimals).c_str(),
              unit.c_str(), note.c_str());
  std::fflush(stdout);
}

[[noreturn]] inline void giveUp(const std::string& message) {
  std::fprintf(stderr, "%s\n", message.c_str());
  std::exit(3);
}

inline plan::Plan planFrom(const std::string& path) {
  const auto loaded = plan::loadPlan(path);
  if (!loaded) giveUp(describe(loaded.error()));
  return *loaded;
}

/// Argument `k` as a number, or `otherwise` when it is not given.
inline double argument(int argc, char** argv, int k, double otherwise) {
  if (k >= argc) return otherwise;
  const auto value = parseNumber(argv[k]);
  if (!value) giveUp(std::string(argv[k]) + ": a number is needed here");
  return *value;
}

/// The look, which must come out.
inline look::LookFrame lookAt(look::LookEngine& engine, const plan::Plan& plan,
                              const look::LookSettings& settings,
                              const std::vector<look::PictureRequest>& pictures = {}) {
  auto frame = engine.update(plan, settings, pictures, {});
  if (!frame) giveUp(describe(frame.error()));
  return std::move(frame).value();
}

/// The piece whose edit is measured: the middle one in placing order.
inline plan::ItemId middlePiece(const plan::Plan& plan) {
  const auto pieces = plan.pieces();
  if (pieces.empty()) giveUp("the plan has no piece");
  return pieces[pieces.size() / 2].first;
}

inline plan::Plan withThickness(const plan::Plan& plan, const plan::ItemId& id, double more_mm) {
  plan::Plan changed = plan;
  plan::Piece piece = *plan.find<plan::Piece>(id);
  piece.thickness_mm += more_mm;
  changed.put(id, piece);
  return changed;
}

inline plan::Plan withStart(const plan::Plan& plan, const plan::ItemId& id, double later_mm) {
  plan::Plan changed = plan;
  plan::Piece piece = *plan.find<plan::Piece>(id);
  piece.start_mm += later_mm;
  changed.put(id, piece);
  return changed;
}

}  // namespace combdraft::bench

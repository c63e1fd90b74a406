#pragma once
// Locks: the traced fall of every root. A lock's line is its carrier, points
// `step_mm` apart along it; waves and coils are laid around the carrier when it
// is drawn, so a tightly curled head needs no more memory than a straight one.
#include <cstdint>
#include <stop_token>
#include <vector>

#include "engine/base/assumptions.h"
#include "engine/hair/body_grid.h"
#include "engine/hair/curl.h"
#include "engine/hair/flow_field.h"
#include "engine/hair/roots.h"

namespace combdraft::hair {

struct LockWave {
  float phase_rad = 0, roll_rad = 0;  ///< shared by neighbours: hair waves in strands
  float size = 1;                     ///< factor on the curl radius
};

struct Locks {
  std::vector<Point3f> points;       ///< all carriers, one after another
  std::vector<std::uint32_t> first;  ///< N + 1 offsets into `points`
  std::vector<float> length_mm;      ///< carrier length of each lock after any cut
  std::vector<LockWave> wave;
  double step_mm = 4;
  double stretch = 1;                ///< stretched hair per carrier length, >= 1
  CurlShape curl{};
  double hairsPerLock = 0, fibre_mm = 0.0721, spacing_mm = 1.4;

  std::size_t size() const { return length_mm.size(); }
  /// Stretched arc length at carrier point k of lock i, mm.
  double arc_mm(std::size_t i, std::uint32_t k) const {
    const double along = k * step_mm;
    return stretch * (along < length_mm[i] ? along : static_cast<double>(length_mm[i]));
  }
};

/// Most points a carrier may have, as a length: hair up to 1.2 m.
constexpr double kLongestHair_mm = 1200;

struct FallInput {
  const head::HeadShape& shape;
  const BodyGrid& body;
  const FlowField& field;
  const Roots& roots;
  const plan::Hair& hair;
  std::uint64_t seed;
  const Assumptions& assumptions;
  double step_mm = 4;
  /// What is looked at: hair is followed this far along its carrier, or until
  /// it leaves the head; hair rooted lower than this is left out (one point, no
  /// length). None of it moves what is traced.
  double reach_mm = kLongestHair_mm, lowestRoot_mm = -1e9;
  enum class Until { TheEnd, ItHangs } until = Until::TheEnd;
};

/// Traces all locks. Every lock is a function of its own root number and of the
/// input only. An empty result means `stop` was requested.
Locks traceLocks(const FallInput& input, std::stop_token stop = {});

/// Stretched length of a lock before any cut, mm.
double grownLength_mm(const FallInput& input, std::size_t lock);

}  // namespace combdraft::hair

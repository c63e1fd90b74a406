#pragma once
// Which hair is seen in each pixel of a view: layers composited front to back,
// kept as eight equal-weight samples at stratified quantiles of what the pixel
// accumulates. Depends on hair shape only, never on colour.
#include <cstdint>
#include <stop_token>
#include <vector>

#include "engine/hair/locks.h"
#include "engine/visibility/body_depth.h"

namespace combdraft::visibility {

constexpr int kSamples = 8;
/// Length of an arc bin along the stretched hair, mm.
constexpr double kBin_mm = 10;
constexpr int kLongestBins = 256;
constexpr std::uint8_t kShadeOfOne = 96;

/// A lock and an arc bin in 32 bits: 24 for the lock, 8 for the bin.
struct LockBin {
  std::uint32_t bits = kNone;
  static constexpr std::uint32_t kNone = 0xFFFFFFFFu;
  static LockBin of(std::uint32_t lock, std::uint32_t bin) { return {(lock << 8) | bin}; }
  bool none() const { return bits == kNone; }
  std::uint32_t lock() const { return bits >> 8; }
  std::uint32_t bin() const { return bits & 0xFFu; }
};

struct ViewSamples {
  RasterSpec spec;
  int width = 0, height = 0;
  std::vector<LockBin> sample;        ///< kSamples a pixel; all none where no hair is seen
  std::vector<float> depth_mm;        ///< view depth of each sample
  std::vector<std::uint8_t> shade;    ///< pictures only: kShadeOfOne = 1, for the eye
  std::vector<std::uint8_t> bareSkin; ///< pictures only: 1 where the body, not its scalp, stands behind
  std::vector<float> hairCover;       ///< share of the pixel that is hair, 0..1
  std::vector<float> scalpCover;      ///< share that is scalp showing through, 0..1

  std::size_t pixels() const { return hairCover.size(); }
};

enum class Shading { None, ForTheEye };

/// Rasterises all locks. Bands of rows are independent, so one thread and many
/// give the same bits; no more than a band's fragments are ever held. Empty
/// when `stop` was requested.
ViewSamples rasterise(const hair::Locks& locks, const RasterSpec& spec, const BodyDepth& body,
                      Shading shading, std::uint64_t seed, std::stop_token stop = {});

}  // namespace combdraft::visibility

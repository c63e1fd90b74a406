#include "engine/placement/members.h"

#include <algorithm>
#include <cmath>

#include "engine/base/random.h"

namespace combdraft::placement {
namespace {
enum Stream : std::uint32_t { kTaken = 100, kPushed = 101, kWhite = 102, kScattered = 103, kStart = 104 };
}

LockNumbers lockNumbers(std::uint64_t seed, std::uint32_t lock) {
  return {randomUniform(seed, lock, kTaken), randomUniform(seed, lock, kPushed),
          randomUniform(seed, lock, kWhite), randomUniform(seed, lock, kScattered),
          randomNormal(seed, lock, kStart)};
}

std::vector<Member> membersOf(const plan::Piece& piece, const head::HeadShape& shape,
                              const hair::Roots& roots, const hair::RootGrid& grid,
                              std::uint64_t seed) {
  std::vector<Member> members;
  if (piece.line.size() < 2 || piece.thickness_mm <= 0 || piece.taken_frac <= 0) return members;
  std::vector<Vec3> line;
  for (const plan::ScalpPoint& p : piece.line) {
    const Vec3 at = shape.pointAt(p);
    if (line.empty() || (at - line.back()).norm() > 1e-6) line.push_back(at);
  }
  if (line.size() < 2) return members;
  const head::StripFrame strip(shape, line);
  const double half = piece.thickness_mm / 2;
  const double pitch = piece.tooth_mm + piece.gap_mm;
  const bool toothed = piece.taking == plan::Taking::Weave && piece.tooth_mm > 0 && piece.gap_mm > 0;
  const bool fine = toothed && std::min(piece.tooth_mm, piece.gap_mm) < kFinestTooth_mm;

  // Paint meets the face that lies outside: hair rooted further up the fall lies
  // on top, so the strip's upper edge is its outer face. One answer for the
  // whole strip; a strip that runs straight up and down has no upper edge.
  double upper = 0;
  constexpr int kLooks = 9;
  for (int i = 0; i < kLooks; ++i)
    upper += strip.leftAt(strip.length_mm() * i / (kLooks - 1)).z() / kLooks;
  const double outward = upper > 0.15 ? 1 : upper < -0.15 ? -1 : 0;

  grid.near(strip.centre(), strip.radius_mm() + half, [&](std::uint32_t lock) {
    const Vec3& root = roots.roots[lock].at;
    const auto place = strip.placeOf(root, half + 2);
    if (!place || !place->onStrip || std::abs(place->across_mm) > half) return;
    for (const plan::Stretch& out : piece.dropOuts)
      if (place->along_mm >= out.from_mm && place->along_mm < out.to_mm) return;
    double share = 1;
    if (toothed) {
      if (fine)
        share = piece.tooth_mm / pitch;
      else if (std::fmod(place->along_mm, pitch) >= piece.tooth_mm)
        return;
    }
    if (lockNumbers(seed, lock).taken >= piece.taken_frac) return;
    const double up = outward * place->across_mm;
    members.push_back({lock, static_cast<float>(share),
                       static_cast<float>(std::clamp(0.5 - up / piece.thickness_mm, 0.0, 1.0))});
  });
  std::sort(members.begin(), members.end(),
            [](const Member& a, const Member& b) { return a.lock < b.lock; });
  return members;
}

}  // namespace combdraft::placement

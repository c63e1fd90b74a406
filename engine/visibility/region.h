#pragma once
// Regions of the look: the visible hair divided by where it is seen, not by
// where it is rooted. One table of bearings and heights, here in code and in
// docs/words.md.
#include <string_view>

#include "engine/head/head_shape.h"

namespace combdraft::visibility {

enum class Region {
  FaceFrameLeft, FaceFrameRight, FrontTop, Top, Crown, SideLeft, SideRight,
  BackUpper, BackMiddle, BackEnds, Nape
};
inline constexpr int kRegions = 11;
std::string_view regionWord(Region region);

/// Region of a place in space where hair is seen; heights scale with c/90,
/// depths with b/94.9.
Region regionAt(const head::HeadShape& shape, const Vec3& place);

}  // namespace combdraft::visibility

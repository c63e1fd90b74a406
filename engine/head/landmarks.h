#pragma once
// Named places and lines of one head, all on its surface, mm, head frame.
//
// Heights, depths and widths are those of the line art, scaled by c/90, b/94.9
// and a/73.9. Sources: crown whorl [Park2014], 10-20 shares [Jasper1958],
// hairline centre [ANSUR1]; the rest is our own drawing.
#include <vector>

#include "engine/head/hairline.h"

namespace combdraft::head {

/// Turn of the hair at a whorl, seen from outside.
enum class WhorlTurn { Clockwise, CounterClockwise };

struct Landmarks {
  Vec3 apex;          ///< highest point, the vertex
  Vec3 crown;         ///< the default whorl
  Vec3 frontCentre;   ///< hairline on the centre line in front (trichion)
  Vec3 nape;          ///< hairline on the centre line behind
  Vec3 occipital;     ///< occipital line on the centre line
  Vec3 templeRight, templeLeft;  ///< hairline at its front corner, bearing +-50
  Vec3 earRight, earLeft;        ///< ear hole level with the front of the ear (tragion)
  Vec3 nasion, inion;            ///< root of the nose, knob of the back of the skull
};

Landmarks landmarksOf(const HeadShape& shape, const Hairline& hairline);

/// The default whorl: 62.5 mm behind the vertex on the centre line of a mean
/// women's head [Park2014], in proportion on others, and 6 mm toward the
/// wearer's left (sources conflict on the side: own choice, movable).
Vec3 defaultWhorl(const HeadShape& shape);
/// Published as clockwise on 84 to 94 % of heads [Schmidt2008] [Klar2003].
inline constexpr WhorlTurn kDefaultWhorlTurn = WhorlTurn::Clockwise;

/// The point on the centre line `distance_mm` behind (+) or before (-) the
/// vertex, along the surface.
Vec3 centreLinePoint(const HeadShape& shape, double behindVertex_mm);

/// Lines on the surface, points about 3 mm apart, open.
std::vector<Vec3> centreLine(const HeadShape& shape, const Hairline& hairline);  ///< front hairline to nape
std::vector<Vec3> earToEarLine(const HeadShape& shape);  ///< right ear, over the top, left ear
std::vector<Vec3> parietalRidge(const HeadShape& shape, const Hairline& hairline);  ///< closed round the head where it has hair, from the right temple round the back to the left
std::vector<Vec3> occipitalLine(const HeadShape& shape, const Hairline& hairline);  ///< behind the ears, right to left

}  // namespace combdraft::head

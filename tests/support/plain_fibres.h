#pragma once
// Straight upright fibres without a head: scenes small enough to be summed by
// hand, for the tests of the raster.
#include "engine/visibility/raster.h"

namespace combdraft::test {

struct Fibre {
  double x_mm, depth_mm;  ///< place in the back view: to its right, toward the viewer
};

/// Each fibre is a lock of `hairs` hairs, drawn as one line over z = -60 .. 60.
inline hair::Locks plainLocks(const std::vector<Fibre>& fibres, double hairs, double fibre_mm) {
  hair::Locks locks;
  locks.hairsPerLock = hairs;
  locks.fibre_mm = fibre_mm;
  locks.spacing_mm = 0;  // no spread: the line is where it was put
  locks.curl = {0, 100, 0, 0, 1, 1, 10};
  locks.step_mm = 120;
  locks.first.push_back(0);
  for (const Fibre& f : fibres) {
    locks.points.push_back(toPoint3f({f.x_mm, -f.depth_mm, 60}));
    locks.points.push_back(toPoint3f({f.x_mm, -f.depth_mm, -60}));
    locks.first.push_back(static_cast<std::uint32_t>(locks.points.size()));
    locks.length_mm.push_back(120);
    locks.wave.push_back({});
  }
  return locks;
}

inline visibility::RasterSpec plainSpec(double width_mm, double height_mm, double pixel_mm) {
  return {head::SheetView(head::ViewName::Back), {-width_mm / 2, -height_mm / 2, width_mm, height_mm}, pixel_mm};
}

inline visibility::BodyDepth noBody(const visibility::RasterSpec& spec) {
  visibility::BodyDepth body;
  body.pixel_mm = spec.pixel_mm;
  body.width = spec.width(), body.height = spec.height();
  const auto pixels = static_cast<std::size_t>(body.width) * static_cast<std::size_t>(body.height);
  body.depth_mm.assign(pixels, visibility::BodyDepth::kNone);
  body.isScalp.assign(pixels, 0);
  return body;
}

}  // namespace combdraft::test

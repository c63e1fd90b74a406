#pragma once
// Stripes: how strongly light and dark ribbons alternate across the fall of the
// hair, and from how far away they are seen (docs/engine-notes.md, "Stripes").
// Takes seconds for a new head or way of wearing: meant for the background.
#include <array>
#include <memory>
#include <span>
#include <stop_token>
#include <vector>

#include "engine/look/look.h"

namespace combdraft::look {

/// Close, talking, salon mirror (the reflection is twice as far as the glass), room.
inline constexpr std::array<double, 4> kStripeDistances_m{0.6, 1, 2, 3};

/// The strongest stripes at a distance.
struct SeenStripe {
  double distance_m = 0;
  double width_mm = 0;    ///< of one light or one dark ribbon; 0: none
  double contrast = 0;    ///< as the eye weighs it there, 0..1
  bool seen = false;      ///< above the assumption `stripes.seen`
};
struct Stripes {
  Region region{};
  bool judged = false;    ///< false: too little of the region is seen
  std::array<SeenStripe, kStripeDistances_m.size()> at;  ///< by kStripeDistances_m
};

/// Close-up of some hair: light and cover per pixel, and which way the hair runs.
/// Its locks are dealt into two halves by chance. A ribbon shows in both at the
/// same place; the grain of single locks, which another set of roots would put
/// elsewhere, does not.
struct HairPatch {
  int width = 0, height = 0;
  double pixel_mm = 0.25;
  struct Half {
    std::vector<float> light;  ///< cover * Y, row after row
    std::vector<float> cover;  ///< share of the pixel that is hair of this half
  };
  std::array<Half, 2> halves;
  struct Place {
    int x, y;                ///< pixel
    float along_rad;         ///< the fall in the drawing: from +x toward +y (down)
  };
  std::vector<Place> places; ///< where stripes are measured
};

/// Michelson contrast of ribbons of `width_mm` across the fall that both halves
/// share, rms over the places of a patch: exact for sine gratings, 4/pi for
/// sharp ones. 0 where no place has enough hair around it.
double ribbonContrast(const HairPatch& patch, double width_mm);
/// The contrast that is left to an eye at a distance: weighted by relative
/// contrast sensitivity (1 at its peak), 0 below the eye's acuity.
double visibleContrast(double contrast, double width_mm, double distance_m);
/// The strongest stripes of one patch at every distance. Ribbons narrower than
/// `least_mm` are not looked for.
std::array<SeenStripe, kStripeDistances_m.size()> stripesOf(const HairPatch& patch, double least_mm,
                                                            double leastSeen);

/// Looks for stripes in every region. What was traced and rastered is kept, so
/// that after an edit of pieces only colours are worked out. One thread at a time.
class StripeSearch {
 public:
  explicit StripeSearch(int locks = 30000);
  ~StripeSearch();
  StripeSearch(StripeSearch&&) noexcept;
  StripeSearch& operator=(StripeSearch&&) noexcept;

  /// kRegions results in order. Errors: Cancelled, OutOfRange (measures).
  Result<std::vector<Stripes>> update(const plan::Plan& plan, const LookSettings& settings,
                                      std::stop_token stop);

 private:
  struct State;
  std::unique_ptr<State> state_;
};

}  // namespace combdraft::look

#pragma once
// Where the hair opens: at the part wherever it lands, at the whorl spread by
// a hand or by wind, and tied back. What block of light or dark shows there,
// how large it is on the hair's surface and which pieces make it
// (docs/engine-notes.md, "Openings").
#include <functional>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "engine/base/vec.h"
#include "engine/look/look.h"

namespace combdraft::look {

enum class OpeningWay { Part, CrownOpened, Blown, TiedBack };
/// "part", "crown-opened", "blown", "tied-back".
std::string_view openingWord(OpeningWay way);

/// A connected patch, light or dark, that stands out from the hair around it.
struct Patch {
  double area_cm2 = 0;    ///< on the hair's surface; 0 = there is none
  double run_mm = 0;      ///< how far it follows the opening line without a break
  double lightness = 0;   ///< L* of the patch as seen from the distance ...
  double surround = 0;    ///< ... and of the hair within 15 mm around it
  plan::ScalpPoint at;    ///< the scalp under its middle
  /// The pieces that make it, most first. Of a dark patch: left-outs it shows,
  /// then the light pieces that border it.
  std::vector<plan::ItemId> pieces;
  std::vector<Point3f> places;  ///< its cells on the hair's surface, mm, for drawing
  double cell_mm = 0;           ///< width of a cell
};

/// A patch, ribbons included, that follows the opening line without a break.
struct Run {
  double length_mm = 0;  ///< 0 = there is none
  plan::ScalpPoint at;
  std::vector<plan::ItemId> pieces;  ///< as of a patch
};

/// One way the hair opens.
struct Opening {
  OpeningWay way{};
  double shift_mm = 0;   ///< Part: how far it lands from its usual place, + client's right
  Patch light, dark;     ///< the largest of each
  Run lightRun, darkRun; ///< the longest of each
  double run_mm = 0;     ///< the longer of the two
};

/// What most of the hair at the opening is when nothing has moved. It cannot be
/// a block: dark patches lie on light hair, light ones on dark.
enum class Ground { Light, Dark, Neither };

/// From what to what the largest patch may be (OpeningRange).
struct PatchRange {
  OpeningWay way{};
  double shift_mm = 0;  ///< of the opening that shows it
  double low_cm2 = 0, high_cm2 = 0;
  std::vector<std::string> movesMost;  ///< at most two assumptions, most first
};

struct Openings {
  std::vector<Opening> all;    ///< part positions ascending, then the others
  std::vector<double> offHair_mm;  ///< positions where the part would leave the hair
  double distance_m = 1;
  /// L* of the plan's darkest and lightest planned colour.
  double darkest = 0, lightest = 0;
  Ground atRest = Ground::Neither;
  std::optional<PatchRange> lightRange, darkRange;  ///< of worstLight, worstDark; nothing = not worked out (yet)

  /// The opening with the largest light (dark) patch, or null when none shows any.
  const Opening* worstLight() const;
  const Opening* worstDark() const;
};

/// Sweeps the openings of one head after another. What was traced is kept, so
/// that after an edit of pieces only colours are worked out. One thread at a time.
class OpeningSweep {
 public:
  /// `locks`: 2,000 to 200,000.
  explicit OpeningSweep(int locks);
  ~OpeningSweep();
  OpeningSweep(OpeningSweep&&) noexcept;
  OpeningSweep& operator=(OpeningSweep&&) noexcept;

  /// All openings of a plan; of `settings` the way of wearing is not used.
  /// Part positions every 5 mm over +-40 mm, then every 1 mm around the worst
  /// light and the worst dark. Seconds for a new head, then some tens of ms.
  /// Errors: Cancelled (what was traced is kept), OutOfRange (measures).
  /// `first`, when given, is shown the result of the 5 mm steps before the finer.
  Result<Openings> update(const plan::Plan& plan, const LookSettings& settings, std::stop_token stop,
                          const std::function<void(const Openings&)>& first = {});
  /// Whether `update` has everything traced that it will need first.
  bool isTraced(const plan::Plan& plan) const;

 private:
  struct State;
  std::unique_ptr<State> state_;
};

}  // namespace combdraft::look

#pragma once
// The look of a plan: pictures of the hair in the sheet views and readings per
// region, from one engine object that keeps what an edit does not touch.
//
//   LookEngine engine(30000);
//   auto frame = engine.update(plan, settings, {{ViewName::Front, 0.5}}, {});
//
// A LookEngine is used by one thread at a time; its results are immutable and
// may be shared freely.
#include <cstdint>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "engine/base/result.h"
#include "engine/colour/light.h"
#include "engine/hair/worn.h"
#include "engine/head/sheet_view.h"
#include "engine/plan/plan.h"
#include "engine/visibility/region.h"

namespace combdraft::look {

enum class Lift { Less, AsPlanned, More };   ///< low end of the span, planned, high end
enum class Toner { Before, After };
enum class Subject { Today, Planned };       ///< the hair as it came in, or with the plan done
enum class Moisture { Dry, Wet };

struct LookSettings {
  hair::Worn worn;
  colour::Light light = colour::Light::Daylight;
  Lift lift = Lift::AsPlanned;
  Toner toner = Toner::After;
  Subject subject = Subject::Planned;
  Moisture moisture = Moisture::Dry;
  double weeks = 0;            ///< growth since the appointment, 0..26
  double distance_m = 1.0;     ///< for contrast
  plan::ItemId choice;         ///< "" = the plan's active choice
  bool operator==(const LookSettings&) const = default;
};

/// A drawn look: 8-bit sRGB with straight alpha, 4 bytes a pixel (R, G, B, A),
/// rows from the top. Alpha is how much of the pixel is hair; the rest,
/// scalp included, is for the line art underneath. Seen from above, lengths below the
/// head run out: they are in the readings, not in the picture.
struct Picture {
  head::ViewName view{};
  head::SheetView projection = head::SheetView(head::ViewName::Front);
  head::ViewFrame frame{};  ///< what the picture covers, mm in view coordinates
  double pixel_mm = 1;
  int width = 0, height = 0;
  std::vector<std::uint8_t> rgba;
  /// 0..255 a pixel: how far the body shows between hair, for skin laid under the line art,
  /// whose jaw and neck are not those of the body to the millimetre. Null: none.
  std::shared_ptr<const std::vector<std::uint8_t>> skin;
};

struct PictureRequest {
  head::ViewName view{};
  double pixel_mm = 0.5;  ///< 0.1 to 2; brought into that range
};

using visibility::Region;
using visibility::kRegions;
using visibility::regionWord;

enum class ContrastVerdict { TwoClearLevels, Soft, OneTone, TooLittleHair };
std::string_view verdictWord(ContrastVerdict verdict);

/// Values counted in steps of one width, from `from` on.
struct Histogram {
  double from = 0, step = 1;
  std::vector<int> counts;  ///< empty: nothing counted
};

struct Contrast {
  ContrastVerdict verdict = ContrastVerdict::TooLittleHair;
  double spread = 0;      ///< rms of the local picture, L*
  double delta = 0;       ///< between the two fitted levels, L*
  /// Cells of the fitted lighter and darker level, shares of all; both 0 where
  /// no two levels were fitted.
  double light_share = 0, dark_share = 0;
  double distance_m = 1;
  /// Lightness of each place against its surround, L*: what the verdict rests on.
  Histogram local;
};

/// Mean colour of some seen hair; linear light, never a mean of L*.
struct Reading {
  double seen_mm2 = 0;         ///< hair surface seen, mm2 on the drawing
  double skin_share = 0;       ///< scalp showing through, share of hair + scalp
  double lightness = 0, a = 0, b = 0;  ///< CIELAB under the chosen light
  double level = 0;            ///< level-equivalent on the natural scale
  double light_share = 0;      ///< share of the seen hair that is lightened
  double sampling_error = 0;   ///< one standard deviation, L*
  double low = 0, high = 0;    ///< range of L*; equals lightness when not yet known
  bool rangeKnown = false;
  std::vector<std::string> movesMost;  ///< the assumptions that move it most, at most two
};

struct RegionReading {
  Region region{};
  std::optional<Reading> whole;               ///< nothing: less than 400 mm2 seen
  std::array<std::optional<Reading>, 3> rootMiddleEnd;
  std::string warmth;                         ///< plain word
  Contrast contrast;
  bool grey_mix = false;                      ///< pale pieces over brown that read grey
};

struct Readings {
  Reading whole;
  Contrast contrast;                          ///< of all seen hair
  bool grey_mix = false;                      ///< as a region's, of all seen hair
  std::vector<RegionReading> regions;         ///< kRegions of them, in order
  int locks = 0;
  double hairs = 0;                           ///< total hairs the locks stand for
  std::vector<std::string> movesMost;         ///< assumption names that move the range most
};

struct LookFrame {
  std::vector<std::shared_ptr<const Picture>> pictures;  ///< as requested, same order
  std::shared_ptr<const Readings> readings;
  bool shapeRecomputed = false;   ///< hair was traced again, not only coloured
  int locksRecoloured = 0;
};

class LookEngine {
 public:
  /// `locks`: 2,000 to 200,000. `measuringPixel_mm`: 1 for readings; a coarser
  /// engine (2 mm, 8,000 locks) gives the first look.
  explicit LookEngine(int locks, double measuringPixel_mm = 1.0);
  ~LookEngine();
  LookEngine(LookEngine&&) noexcept;
  LookEngine& operator=(LookEngine&&) noexcept;

  /// Brings everything up to date with the plan, recomputing only what changed.
  /// Errors: Cancelled when `stop` is requested during a slow step (the engine
  /// stays usable), OutOfRange for measures no head has.
  Result<LookFrame> update(const plan::Plan& plan, const LookSettings& settings,
                           const std::vector<PictureRequest>& pictures, std::stop_token stop);

  /// Range of every reading, once; see LookRange (look_range.h), which keeps
  /// what it traced and is what a window should use. Takes seconds.
  static Result<Readings> withRange(const plan::Plan& plan, const LookSettings& settings,
                                    Readings readings, std::stop_token stop);

 private:
  struct State;
  std::unique_ptr<State> state_;
};

}  // namespace combdraft::look

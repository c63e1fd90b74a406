#pragma once
// The plan: an immutable map of items. Copying a plan shares its items, so
// snapshots for the worker, autosave, undo and export cost nothing. All values
// are as typed. Lengths along a hair are stretched lengths in mm.
//
// Ids are short texts ("piece-7"); fixed ids hold the single items:
// kPlanId, kHeadId, kHairId, kHandoutId. Unknown fields of a file ride along in `extra`.
#include <array>
#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <variant>
#include <vector>

#include "engine/head/hairline.h"
#include "engine/head/measures.h"
#include "engine/head/scalp_point.h"
#include "engine/head/section_rows.h"

namespace combdraft::plan {

using ItemId = std::string;
using head::ScalpPoint;
/// Unknown fields of a JSON object: key -> its JSON text. Those of a nested
/// object without an Extra of its own stand under their JSON pointer from here
/// ("/backcomb/later").
using Extra = std::map<std::string, std::string>;

inline const ItemId kPlanId = "plan";
inline const ItemId kHeadId = "head";
inline const ItemId kHairId = "hair";
inline const ItemId kHandoutId = "handout";  ///< there once a handout was set up

// ---- plan -----------------------------------------------------------------

/// Things about the plan as a whole. Holds no personal data: `number` is random.
struct PlanInfo {
  std::string title;
  std::uint64_t number = 1;     ///< random; also seeds the roots of this head
  ItemId activeChoice;
  std::string notes;
  std::map<std::string, double> assumptions;  ///< overrides by name (base/assumptions.h)
  std::string agreedJson, visitsJson, logJson;  ///< kept as found; "" = none yet
  Extra extra;
  bool operator==(const PlanInfo&) const = default;
};

// ---- head -----------------------------------------------------------------

enum class Turn { Clockwise, Counterclockwise };
struct Whorl {
  ScalpPoint at;
  Turn turn = Turn::Clockwise;
  Extra extra{};
  bool operator==(const Whorl&) const = default;
};

enum class SkinTone { Paper, Light, Medium, Tan, Deep };

struct Head {
  head::HeadMeasures measures;
  head::HairlineMoves hairline;
  std::vector<ScalpPoint> part;  ///< usual part, front to back; empty = combed back, none
  std::vector<Whorl> whorls;     ///< one or two
  SkinTone skin = SkinTone::Paper;
  Extra extra;
  bool operator==(const Head&) const = default;
};

// ---- hair -----------------------------------------------------------------

enum class HairZone { Front, Top, Crown, Sides, Back, Nape };
inline constexpr std::size_t kHairZones = 6;

enum class CurlClass { Straight, LooseWave, Wave, LooseCurl, Curl, TightCurl, Coil, TightCoil };
enum class Condition { NotChecked, Good, Fair, Poor };
/// How readily hair takes up what is put on it, as found. Resistant hair is slow.
enum class Porosity { NotChecked, Resistant, Usual, Porous };

struct RootMiddleEnd {
  double root = 5, middle = 5, end = 5;
  bool operator==(const RootMiddleEnd&) const = default;
};
/// An old colour band on all hair of a zone, from..to mm off the scalp.
struct Band {
  std::optional<HairZone> zone;  ///< nothing = whole head
  double from_mm = 0, to_mm = 0, level = 5;
  Extra extra{};
  bool operator==(const Band&) const = default;
};
/// Hair that is already light, scattered through a zone.
struct ScatteredLight {
  std::optional<HairZone> zone;
  double share_frac = 0, from_mm = 0, to_mm = 1000, level = 8;
  Extra extra{};
  bool operator==(const ScatteredLight&) const = default;
};

struct Hair {
  double density_per_cm2 = 226;      ///< [Loussouarn2005]; 100 to 350
  double fibre_um = 72.1;            ///< equivalent diameter; 40 to 120
  CurlClass curl = CurlClass::Straight;
  std::array<double, kHairZones> length_mm{310, 350, 380, 360, 380, 300};
  double layering_frac = 0.15;       ///< 0 one length at the hem .. 1 all one length from the scalp
  std::optional<double> cutLine_mm;  ///< planned hem: height below the head centre, mm; nothing = as grown
  std::array<RootMiddleEnd, kHairZones> level{};
  double toneWarmth = 0;             ///< natural tone: -1 ash .. +1 red-gold
  double white_frac = 0;             ///< share of white hairs
  std::vector<Band> bands;
  std::vector<ScatteredLight> scattered;
  std::array<Condition, kHairZones> condition{};
  std::array<Porosity, kHairZones> porosity{};
  std::string conditionDate;         ///< ISO date of the checks, "" = not checked
  Extra extra;
  bool operator==(const Hair&) const = default;
};

// ---- colour on hair -------------------------------------------------------

enum class Tone { Natural, Ash, Pearl, Beige, Gold, Copper, Red };

/// Bare level after lightening, before toner, with its span.
struct LiftsTo {
  double level = 9, low = 8, high = 10;
  Extra extra{};
  bool operator==(const LiftsTo&) const = default;
};
/// Level and tone after toner (or of the deepening colour).
struct FinishesAt {
  double level = 9;
  Tone tone = Tone::Natural;
  Extra extra{};
  bool operator==(const FinishesAt&) const = default;
};
struct ZoneColour {
  LiftsTo lifts;
  std::optional<FinishesAt> finish;  ///< nothing = stays bare
  ItemId formula;                    ///< "" = none named
  Extra extra{};
  bool operator==(const ZoneColour&) const = default;
};

/// Whether a product may lie on the scalp, as its leaflet says.
enum class ScalpContact { NotStated, Yes, No };

/// What was read in the maker's directions, and where. Typed, never filled in.
struct Leaflet {
  std::string origin;  ///< which leaflet, label or page
  std::string read;    ///< ISO date of the reading, "" = not typed
  ScalpContact scalpContact = ScalpContact::NotStated;
  std::optional<double> workingLife_min;  ///< how long a mixed bowl may be used
  std::optional<double> longestTime_min;  ///< how long it may stay on the hair
  std::string directions;                 ///< what else it says, in its words
  Extra extra{};
  bool operator==(const Leaflet&) const = default;
};

/// One thing that goes into a bowl, and how many parts of it by weight.
struct MixPart {
  std::string name;
  std::optional<double> parts;
  Extra extra{};
  bool operator==(const MixPart&) const = default;
};
enum class StrengthUnit { Percent, Volume };
/// Hydrogen peroxide of a strength: percent as on labels (mass in volume), or volumes of oxygen.
struct Developer {
  std::string name;
  std::optional<double> strength;
  StrengthUnit unit = StrengthUnit::Percent;
  std::optional<double> parts;
  Extra extra{};
  bool operator==(const Developer&) const = default;
};

/// A mixture, as typed from its leaflet. The program never fills these in.
struct Formula {
  std::string letter;  ///< A, B, C ... the hatch on the sheet
  std::string kind;    ///< lightener, toner, glaze, deepening colour
  std::string text;    ///< what else is to be said of it, free text
  std::vector<MixPart> products, additives;
  std::vector<Developer> developers;  ///< several are mixed by their parts
  Leaflet leaflet;
  Extra extra;
  bool operator==(const Formula&) const = default;
};

// ---- placement ------------------------------------------------------------

enum class Action { Lighten, Deepen, LeaveOut };
enum class Taking { Slice, Weave, Paint };
enum class KeptIn { Foil, Film, OpenAir };
enum class Side { Painted, Bare };

struct Stretch {
  double from_mm = 0, to_mm = 0;
  bool operator==(const Stretch&) const = default;
};
struct Backcomb {
  double depth_mm = 0;      ///< where pushed hairs end, from the scalp; 0 = none
  double pushed_frac = 0;   ///< share of the taken hairs that is pushed
  double blend_mm = 28;     ///< blend length at the pushed start
  Extra extra{};
  bool operator==(const Backcomb&) const = default;
};

/// What a section's rule says of a piece, and what the piece may keep as its own.
enum class RunField { Line, Thickness, Taking, Start, Backcomb, DropOuts };
/// A laid-out piece's place in its section's run.
struct LaidOut {
  int row = 1;     ///< counted from the opening (or the pivot's last row), so that it stays
  int column = 1;  ///< along the row, in its travel
  std::vector<RunField> own;  ///< edited by hand: the rule leaves these alone; sorted
  Extra extra{};
  bool operator==(const LaidOut&) const = default;
};

struct Piece {
  ItemId choice;                 ///< which of A, B, C
  ItemId section;                ///< "" = drawn free
  std::string label, note;
  Action action = Action::Lighten;
  Taking taking = Taking::Slice;
  std::vector<ScalpPoint> line;  ///< centre line in placing order, 2 to 64 points
  double thickness_mm = 5;       ///< full width square to the line, hair at rest
  double taken_frac = 1;         ///< of the hair inside the teeth
  double tooth_mm = 0, gap_mm = 0;  ///< along the line from the first point; 0 = no teeth
  std::vector<Stretch> dropOuts;    ///< stretches of the line left dark
  double start_mm = 20;          ///< half-light point of unpushed hair; 0 = from the scalp
  double blend_mm = 12;
  Backcomb backcomb;
  double outer_frac = 0.5;       ///< Paint: share of the thickness the brush reaches from above
  Side under = Side::Bare;       ///< Paint: the face turned to the head
  std::optional<double> handover_mm;  ///< where the root formula hands over to the end formula
  std::optional<double> stop_mm;      ///< where lightener stops; nothing = through the ends
  ZoneColour root, end;          ///< `end` is used beyond the handover only
  KeptIn keptIn = KeptIn::Foil;
  std::string foil;              ///< pieces with the same name share a foil; "" = own
  int order = 0;                 ///< 1, 2, 3 ...; earlier has the hair
  ItemId twinOf;                 ///< mirror of that piece; "" = stands on its own
  bool held = false;             ///< a search may not change it
  std::optional<LaidOut> laidOut;  ///< made by its section's rule; nothing = drawn by hand
  Extra extra;
  bool operator==(const Piece&) const = default;
};

using LayoutRun = head::RowRun;
enum class Columns { InLine, Staggered };
/// A place of the run that stays empty.
struct RunSlot {
  int row = 1, column = 1;
  Extra extra{};
  bool operator==(const RunSlot&) const = default;
};
/// A value of the first piece of a run and of its last; between them in equal steps.
struct Ramp {
  double from = 0, to = 0;
  bool operator==(const Ramp&) const = default;
};
/// Rule of a laid-out section (lay_out.h). The first piece is the one farthest
/// from the opening.
struct Layout {
  LayoutRun run = LayoutRun::Horizontal;
  std::optional<ScalpPoint> pivot;  ///< Pivoting; nothing = the corner nearest the crown
  Ramp thickness_mm{5, 5}, leftOut_mm{10, 10};
  Ramp start_mm{20, 20};
  Ramp backcomb_mm{0, 0}, pushed_frac{0, 0};  ///< depth and pushed share
  Taking taking = Taking::Slice;
  Ramp taken_frac{1, 1};
  double tooth_mm = 0, gap_mm = 0;
  double foil_mm = 120;               ///< a longer row becomes columns
  Columns columns = Columns::InLine;
  double zigzag_mm = 0;               ///< full swing of the parting; 0 = straight
  std::optional<double> lastThickness_mm;  ///< a piece of its own thickness beside the opening
  double dropMiddle_mm = 0;           ///< left dark where a piece crosses the centre line
  std::vector<RunSlot> empty;         ///< places whose piece was taken away
  Extra extra;
  bool operator==(const Layout&) const = default;
};
/// A piece that a rule has no place for at the moment; it comes back with its place.
struct RetiredPiece : Piece {
  ItemId id;
  bool operator==(const RetiredPiece&) const = default;
};
struct Section {
  ItemId choice;
  std::string label;
  std::vector<ScalpPoint> outline;  ///< closed, 3 to 128 points
  std::optional<Layout> layout;
  std::vector<RetiredPiece> retired;
  ItemId twinOf;
  int order = 0;
  Extra extra;
  bool operator==(const Section&) const = default;
};

/// Root shadow or glaze over light and left-out hair alike.
struct Treatment {
  ItemId choice;
  enum class Kind { RootShadow, Glaze } kind = Kind::Glaze;
  std::optional<HairZone> zone;  ///< nothing = whole head
  double to_mm = 40;             ///< RootShadow: how far from the scalp
  double blend_mm = 25;
  FinishesAt colour{6, Tone::Natural};
  double strength_frac = 0.6;    ///< 0 nothing .. 1 the typed colour
  ItemId formula;
  Extra extra;
  bool operator==(const Treatment&) const = default;
};

struct Note {
  ItemId choice;
  ScalpPoint at;
  std::string text;
  Extra extra;
  bool operator==(const Note&) const = default;
};

enum class ContrastAim { TwoClearLevels, Soft, OneTone };
/// What is wanted of the look in one region. Levels; nothing = no aim.
struct Target {
  std::optional<double> level;
  std::optional<ContrastAim> contrast;
  std::optional<double> brightest, darkest;  ///< lightest and darkest hair allowed there
  Extra extra{};
  bool operator==(const Target&) const = default;
};
struct Choice {
  std::string name = "A";
  std::map<std::string, Target> targets;  ///< by word of targetRegions() (plan_words.h)
  Extra otherTargets;                     ///< of regions that are not known
  Extra extra;
  bool operator==(const Choice&) const = default;
};

// ---- the printed lesson ---------------------------------------------------

enum class PaperSize { A4, Letter };
enum class PageTurn { Portrait, Landscape };
enum class HandoutPart {
  Title, Kit, Views, Steps, CloseUps, Checks, Timing, Faults, SelfCheck, BlankSheets, PredictThenOpen
};
struct HandoutUse {
  HandoutPart part = HandoutPart::Title;
  bool hidden = false;
  Extra extra{};
  bool operator==(const HandoutUse&) const = default;
};
/// Texts of the step that is about a piece or a section. A step whose item is gone
/// stays, and is marked.
struct HandoutStep {
  ItemId about;
  std::string what, how, why;  ///< "" = made from the plan
  Extra extra{};
  bool operator==(const HandoutStep&) const = default;
};
/// What the educator set up of the printed lesson.
struct Handout {
  std::string aim, kit, checks, faults, selfCheck;
  PaperSize paper = PaperSize::A4;
  PageTurn turn = PageTurn::Portrait;
  std::vector<HandoutUse> parts;   ///< as on paper; one that is missing follows in usual order
  std::vector<HandoutStep> steps;  ///< those with texts of their own, one per item
  Extra extra;
  bool operator==(const Handout&) const = default;
};

// ---- the map --------------------------------------------------------------

using Item =
    std::variant<PlanInfo, Head, Hair, Formula, Section, Piece, Treatment, Note, Choice, Handout>;
using ItemPtr = std::shared_ptr<const Item>;

/// Order of ids that a person expects: "piece-2" before "piece-10".
bool idLess(const ItemId& a, const ItemId& b);
/// The largest plan number, 2^53 - 1, so that every JSON reader keeps it exactly.
inline constexpr std::uint64_t kLargestPlanNumber = (std::uint64_t{1} << 53) - 1;

class Plan {
 public:
  /// A new plan: mean head, straight level-5 hair, one empty choice "A". Only
  /// the low 53 bits of `number` are used; 0 becomes 1.
  static Plan fresh(std::uint64_t number);

  const PlanInfo& info() const { return get<PlanInfo>(kPlanId); }
  const Head& head() const { return get<Head>(kHeadId); }
  const Hair& hair() const { return get<Hair>(kHairId); }

  /// The item, or null when there is none of that id or it is of another kind.
  template <class T>
  const T* find(const ItemId& id) const {
    const auto it = items_.find(id);
    return it == items_.end() ? nullptr : std::get_if<T>(it->second.get());
  }
  ItemPtr item(const ItemId& id) const {
    const auto it = items_.find(id);
    return it == items_.end() ? nullptr : it->second;
  }
  const std::map<ItemId, ItemPtr>& items() const { return items_; }

  /// Pieces of a choice ("" = the active one), sorted by order, then id.
  std::vector<std::pair<ItemId, const Piece*>> pieces(const ItemId& choice = {}) const;
  std::vector<std::pair<ItemId, const Section*>> sections(const ItemId& choice = {}) const;
  std::vector<std::pair<ItemId, const Treatment*>> treatments(const ItemId& choice = {}) const;
  /// An id of the form `stem-N` that no item and no retired piece has, and that no record names.
  ItemId freeId(const std::string& stem) const;

  /// Replaces, adds (null before) or removes (null item) one item. Used by
  /// ChangeSet and the reader only.
  void put(const ItemId& id, ItemPtr item);
  template <class T>
  void put(const ItemId& id, T value) {
    put(id, std::make_shared<const Item>(std::move(value)));
  }

  /// Equal content (not revision).
  bool operator==(const Plan& other) const;

 private:
  template <class T>
  const T& get(const ItemId& id) const {
    const T* found = find<T>(id);
    COMBDRAFT_EXPECT(found, id);
    return *found;
  }
  std::map<ItemId, ItemPtr> items_;
};

/// Ids of the form `stem-N` that stand in the log, the agreed picture and the visits: a new item
/// must not take over what was written down about one that went.
std::set<ItemId> recordedIds(const PlanInfo& info);

}  // namespace combdraft::plan

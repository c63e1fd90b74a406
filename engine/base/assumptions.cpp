#include "engine/base/assumptions.h"

#include <algorithm>
#include <array>

#include "engine/base/expect.h"

namespace combdraft {
namespace {

using P = Provenance;

// Colour numbers stand beside the model they belong to (docs/colour.md); those
// that a reading's range is taken over are listed here too.
constexpr std::array kTable{
    // ---- how hair falls (own unless a key says otherwise) -----------------
    Assumption{"fall.partSide_mm", 0, -8, 8, "mm", P::OwnAssumption,
               "How far the part lands from where it was planned.", Moves::Fall},
    Assumption{"fall.partReach_mm", 50, 35, 70, "mm", P::OwnAssumption,
               "How far from the part hair still turns away from it.", Moves::Fall},
    Assumption{"fall.partWeight", 1.3, 1.0, 1.7, "", P::OwnAssumption,
               "How strongly hair turns away from the part.", Moves::Fall},
    Assumption{"fall.whorlReach_mm", 36, 28, 44, "mm", P::OwnAssumption,
               "How wide the whorl turns the hair.", Moves::Fall},
    Assumption{"fall.whorlWeight", 1.1, 0.6, 1.5, "", P::OwnAssumption,
               "How strongly the whorl turns the hair.", Moves::Fall},
    Assumption{"fall.combBack", 0.40, 0.2, 0.8, "", P::OwnAssumption,
               "How far front and top hair is combed back.", Moves::Fall},
    Assumption{"fall.faceAway", 3.0, 2.0, 4.0, "", P::OwnAssumption,
               "How strongly hair is kept out of the face.", Moves::Fall},
    Assumption{"fall.frizz_rad", 0.10, 0.05, 0.15, "rad", P::OwnAssumption,
               "How far neighbouring locks wander from one direction.", Moves::Fall},
    Assumption{"fall.lean", 0.13, 0.05, 0.20, "", P::OwnAssumption,
               "How far hanging hair leans in toward the neck.", Moves::Fall},
    Assumption{"fall.rise", 0.080, 0.05, 0.13, "mm/mm", P::OwnAssumption,
               "How fast hair gains height over the scalp, per length along the fall.", Moves::Fall},
    Assumption{"fall.bodyHeight_mm", 19, 14, 24, "mm", P::OwnAssumption,
               "Height at which the body of the hair settles.", Moves::Fall},
    Assumption{"fall.interleave_mm", 1.6, 0.5, 4.0, "mm", P::OwnAssumption,
               "How far locks of neighbouring layers change places.", Moves::Fall},
    Assumption{"fall.waveScale", 1.0, 0.6, 1.5, "", P::OwnAssumption,
               "Size of waves and curls against the curl class's middle.", Moves::Fall},
    Assumption{"fall.tail_mm", 15, 11, 20, "mm", P::OwnAssumption,
               "Radius of the tail when tied back.", Moves::Fall},
    Assumption{"fall.blown", 2.0, 1.5, 3.0, "", P::OwnAssumption,
               "How many times as strongly the whorl turns hair in wind.", Moves::Fall},
    Assumption{"fall.crownOpened", 2.5, 1.8, 3.5, "", P::OwnAssumption,
               "How many times as strongly hair is spread when the hand opens the crown.", Moves::Fall},
    // ---- where lightener starts ------------------------------------------
    Assumption{"start.scatter_mm", 6, 3, 10, "mm", P::OwnAssumption,
               "How far the start varies from lock to lock.", Moves::Colour},
    Assumption{"start.pushedScatter_mm", 22, 12, 32, "mm", P::OwnAssumption,
               "How far the start of backcombed hair varies from lock to lock.", Moves::Colour},
    // ---- colour -----------------------------------------------------------
    Assumption{"growth.mm_per_week", 2.58, 1.84, 3.0, "mm", P::Published,
               "Growth: 11.2 mm a month [Loussouarn2005], range 8 to 13.", Moves::Colour},
    Assumption{"colour.naturalShift", 0, -2, 2, "L*", P::OwnAssumption,
               "How far the natural level scale as a whole is off; only its order is certain.", Moves::Colour},
    Assumption{"colour.lightenedShift", 0, -4, 4, "L*", P::OwnAssumption,
               "The same for the scale of lightened, bare hair.", Moves::Colour},
    Assumption{"colour.span", 0, -1, 1, "of the typed span", P::OwnAssumption,
               "Where in its typed span each lift lands.", Moves::Colour},
    // ---- what needs a look -------------------------------------------------
    Assumption{"block.light_cm2", 4, 1, 20, "cm2", P::OwnAssumption,
               "A light patch at the opening larger than this is a block.", Moves::Judgement},
    Assumption{"block.dark_cm2", 6, 1, 20, "cm2", P::OwnAssumption,
               "A dark patch at the opening larger than this is a block.", Moves::Judgement},
    Assumption{"block.run_mm", 15, 5, 60, "mm", P::OwnAssumption,
               "A patch that follows the opening line for longer than this is an unbroken run.", Moves::Judgement},
    Assumption{"block.difference", 0.4, 0.2, 0.8, "of the planned difference", P::OwnAssumption,
               "How far a patch must differ from its surround to be seen as a block.", Moves::Judgement},
    Assumption{"block.least_L", 5, 2, 15, "L*", P::OwnAssumption,
               "The same in lightness, at least.", Moves::Judgement},
    Assumption{"block.narrowest_mm", 10, 4, 25, "mm", P::OwnAssumption,
               "What is narrower than this is a ribbon, not a block.", Moves::Judgement},
    Assumption{"block.reach_mm", 60, 20, 100, "mm", P::OwnAssumption,
               "How far beside the opening a patch still counts as being at it.", Moves::Judgement},
    // ---- two levels or one -------------------------------------------------
    Assumption{"contrast.least_cells", 100, 50, 400, "places", P::OwnAssumption,
               "Fewer 5 mm places than this are too little hair to judge contrast by.", Moves::Judgement},
    Assumption{"contrast.clear", 0.28, 0.2, 0.4, "of the planned difference", P::OwnAssumption,
               "How far apart two clear levels are, at least, after mixing and blurring.", Moves::Judgement},
    Assumption{"contrast.clear_L", 4, 3, 8, "L*", P::OwnAssumption,
               "The same in lightness, at least.", Moves::Judgement},
    Assumption{"contrast.soft", 0.16, 0.08, 0.25, "of the planned difference", P::OwnAssumption,
               "How far apart two levels are, at least, to be soft and not one tone.", Moves::Judgement},
    Assumption{"contrast.soft_L", 3, 1.5, 5, "L*", P::OwnAssumption,
               "The same in lightness, at least.", Moves::Judgement},
    Assumption{"contrast.even", 0.03, 0.02, 0.06, "of the planned difference", P::OwnAssumption,
               "A spread below this is one tone whatever its shape.", Moves::Judgement},
    Assumption{"contrast.even_L", 0.5, 0.3, 1, "L*", P::OwnAssumption,
               "The same in lightness, at least.", Moves::Judgement},
    Assumption{"contrast.widths", 2, 1.5, 3, "widths", P::OwnAssumption,
               "How many of their common widths two clear levels stand apart.", Moves::Judgement},
    Assumption{"contrast.middle", 0.25, 0.15, 0.4, "of the places", P::OwnAssumption,
               "Between two clear levels lies less than this in the middle third.", Moves::Judgement},
    Assumption{"contrast.share", 0.05, 0.02, 0.12, "of the places", P::OwnAssumption,
               "The smaller of two clear levels has at least this share; half of it for soft.", Moves::Judgement},
    Assumption{"finding.oneTone_share", 0.5, 0.2, 0.9, "of the hair", P::OwnAssumption,
               "How much of the seen hair may look like one tone where light and dark were planned.", Moves::Judgement},
    Assumption{"finding.bare_share", 0.05, 0.01, 0.2, "of the hair", P::OwnAssumption,
               "Hair underneath or at the nape with less light in it than this looks bare.", Moves::Judgement},
    Assumption{"finding.edge_L", 14, 6, 30, "L*", P::OwnAssumption,
               "A step between neighbouring regions that looks like a hard edge with a layer raised.", Moves::Judgement},
    Assumption{"finding.faceFrame_L", 2, 0, 10, "L*", P::OwnAssumption,
               "How much lighter than the whole look a planned face frame is to look, at least.", Moves::Judgement},
    Assumption{"finding.leftOut_share", 0.15, 0.05, 0.4, "of the hair", P::OwnAssumption,
               "How much of the seen hair is to stay dark, at least.", Moves::Judgement},
    Assumption{"finding.target_levels", 0.5, 0.25, 1.5, "levels", P::OwnAssumption,
               "How far from its target a level may look.", Moves::Judgement},
    Assumption{"finding.regrowth_weeks", 8, 3, 20, "weeks", P::OwnAssumption,
               "Regrowth that shows sooner than this is early.", Moves::Judgement},
    Assumption{"finding.stripes_contrast", 0.2, 0.05, 0.6, "", P::OwnAssumption,
               "Stripes that look stronger than this in the salon mirror need a look.", Moves::Judgement},
    Assumption{"finding.slow_levels", 1, 0.5, 3, "levels", P::OwnAssumption,
               "How much farther the last third of the order may have to lift than the first.", Moves::Judgement},
    // ---- the user's own speed ----------------------------------------------
    Assumption{"work.slice_min", 1, 0.4, 4, "min", P::OwnAssumption,
               "Placing a slice.", Moves::Judgement},
    Assumption{"work.weave_min", 1.4, 0.5, 5, "min", P::OwnAssumption,
               "Placing a woven piece.", Moves::Judgement},
    Assumption{"work.paint_min", 1.1, 0.4, 4, "min", P::OwnAssumption,
               "Painting a piece.", Moves::Judgement},
    Assumption{"work.backcomb_min", 0.7, 0.2, 3, "min", P::OwnAssumption,
               "Backcombing a piece, on top of placing it.", Moves::Judgement},
    Assumption{"work.combOut_min", 1.2, 0.2, 6, "min", P::OwnAssumption,
               "Opening the cushion of a backcombed piece after the rinse.", Moves::Judgement},
    Assumption{"work.mix_min", 2, 0.5, 10, "min", P::OwnAssumption,
               "Weighing and mixing a bowl.", Moves::Judgement},
    Assumption{"work.look_min", 0.2, 0.05, 2, "min", P::OwnAssumption,
               "Looking at one piece: opening, wiping, closing.", Moves::Judgement},
    Assumption{"work.reserve_share", 0.15, 0, 0.5, "of the time", P::CommonPractice,
               "Time kept in reserve.", Moves::Judgement},
    Assumption{"work.hairline_mm", 15, 5, 40, "mm", P::OwnAssumption,
               "Pieces this near to the front hairline count as fine hair and come last by rule.", Moves::Judgement},
    // ---- the user's own amounts --------------------------------------------
    Assumption{"amount.product_per_hair", 3, 1, 12, "g for 1 g of hair", P::OwnAssumption,
               "Mixed product for the hair that it goes on.", Moves::Judgement},
    Assumption{"amount.waste_share", 0.12, 0, 0.5, "of the product", P::OwnAssumption,
               "What stays in the bowl and on the brush, on top of what is used.", Moves::Judgement},
    Assumption{"amount.fibre_g_cm3", 1.32, 1.3, 1.33, "g/cm3", P::OwnAssumption,
               "Density of hair; from memory of a handbook.", Moves::Judgement},
    // ---- stripes and time --------------------------------------------------
    Assumption{"stripes.seen", 0.05, 0.02, 0.15, "", P::OwnAssumption,
               "Stripes whose contrast, as the eye weighs it, is above this are seen.", Moves::Judgement},
    Assumption{"regrowth.near_mm", 25, 15, 40, "mm", P::OwnAssumption,
               "How fast hair counts less the farther from the opening it lies; a third is left at this distance.", Moves::Judgement},
    Assumption{"regrowth.tolerance_L", 5, 3, 10, "L*", P::OwnAssumption,
               "Regrowth shows once the hair near the opening looks this much different from the first day.", Moves::Judgement},
};

const Assumption& find(std::string_view name) {
  const auto it = std::find_if(kTable.begin(), kTable.end(),
                               [&](const Assumption& a) { return a.name == name; });
  COMBDRAFT_EXPECT(it != kTable.end(), std::string(name));
  return *it;
}

}  // namespace

std::string_view provenanceWord(Provenance p) {
  switch (p) {
    case P::Published: return "published";
    case P::CommonPractice: return "common practice, no source";
    case P::OwnAssumption: return "own assumption";
    case P::Typed: return "typed";
  }
  return "";
}

std::span<const Assumption> assumptionTable() { return kTable; }

Assumptions::Assumptions(const std::map<std::string, double>& overrides) {
  for (const auto& [name, value] : overrides)
    for (const Assumption& known : kTable)
      if (known.name == name) overrides_[name] = value;
}

double Assumptions::operator[](std::string_view name) const {
  const auto it = overrides_.find(name);
  return it != overrides_.end() ? it->second : find(name).value;
}

Assumptions Assumptions::with(std::string_view name, double value) const {
  find(name);
  Assumptions changed = *this;
  changed.overrides_[std::string(name)] = value;
  return changed;
}

}  // namespace combdraft

#pragma once
// How much a placement takes: hairs, grams of hair, grams of product, foils.
// Estimates from the head's model and the user's own factors (assumptions
// amount.*); the scale is the truth. docs/engine-notes.md, "Work".
#include <array>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "engine/base/assumptions.h"
#include "engine/base/result.h"
#include "engine/plan/plan.h"

namespace combdraft::work {

/// Grams of one mm of hair of that fibre: its area times the assumed density.
/// 72.1 um at 1.32 g/cm3: 5.39 mg for a metre.
double gramsPerMm(double fibre_um, const Assumptions& assumptions);

struct PieceAmount {
  plan::ItemId piece;
  double line_mm = 0;   ///< along the parting, on the surface
  double hairs = 0;     ///< taken, after what earlier pieces and left-outs have
  double hair_g = 0;    ///< of them, from the scalp to their ends
  /// Hair under product: from the start (pushed hair: from the backcomb depth)
  /// to the stop; up to the handover by the root's formula, beyond by the end's.
  double root_g = 0, end_g = 0;
  double covered_g() const { return root_g + end_g; }
};

/// A packet: pieces that share it lie on each other in it.
struct FoilNeed {
  std::string name;                  ///< "" = a piece's own
  std::vector<plan::ItemId> pieces;  ///< in working order
  double needed_mm = 0;              ///< the longest line in it
  std::optional<double> width_mm;    ///< the narrowest of the user's sizes that is wide enough
};

/// How much product 1 g of hair may take, g, and what says so. A weave of few hairs takes more than
/// its hair alone tells; nothing here reckons with that.
struct ProductRange {
  enum class From {
    Assumption,  ///< the program's own value stands: the ends of its range (amount.product_per_hair)
    Heads,       ///< weighed on the user's own heads: the least and the most of them
    Typed,       ///< a value typed for this plan: both ends are it, its span is not known
  } from = From::Assumption;
  double low = 0, high = 0;
  int heads = 0;             ///< behind Heads
};
struct GramsSpan {
  double about = 0, low = 0, high = 0;
};

struct FormulaAmount {
  plan::ItemId formula;     ///< "" = pieces that name none
  double hair_g = 0;        ///< under this product
  double product_g = 0;     ///< for it, by the user's own factor
  double waste_g = 0;       ///< on top
  double mixed_g() const { return product_g + waste_g; }
  double mixedLow_g = 0, mixedHigh_g = 0;  ///< by the ends of Amounts::product, with the same share of waste
};

/// Of one hair zone: all its hairs, and those that a lightened piece has.
struct ZoneHairs {
  double hairs = 0, lightened = 0;
  double share_frac() const { return hairs > 0 ? lightened / hairs : 0; }
};

struct Amounts {
  std::vector<PieceAmount> pieces;  ///< worked ones, in the plan's order
  std::vector<FoilNeed> foils, films;
  int openAir = 0;                  ///< pieces in neither
  double hairs = 0, hair_g = 0;
  std::vector<FormulaAmount> formulas;  ///< by id
  ProductRange product;
  std::array<ZoneHairs, plan::kHairZones> zones;
  const PieceAmount* of(const plan::ItemId& piece) const;
  /// Of all formulas together.
  GramsSpan mixed_g() const;
};

struct AmountSettings {
  plan::ItemId choice;           ///< "" = the active one
  std::vector<double> foils_mm;  ///< the user's own widths; empty = none typed
  int locks = 40'000;            ///< hair is counted on so many locks, 2,000 to 200,000
  /// Product for 1 g of hair as weighed on each of the user's own heads, where the plan's value comes of
  /// them (weighedHeads); counts only where the plan has a value.
  std::vector<double> perHair_heads{};
};
/// Where pieces overlap hair is counted once: left-outs have it first, then the
/// earlier piece. 0.2 s. Errors: as fitHead; OutOfRange for a foil that is not wider than 0.
Result<Amounts> amountsOf(const plan::Plan& plan, const AmountSettings& settings);

/// The part of it that takes the time: what pieces have of the hair.
struct HairCount {
  std::vector<PieceAmount> pieces;  ///< worked ones, in the plan's order
  std::array<ZoneHairs, plan::kHairZones> zones;
};
/// Of a choice ("" = the active one), on so many locks. Errors: as fitHead; Cancelled, at the next
/// piece after `stop`.
Result<HairCount> countHair(const plan::Plan& plan, const plan::ItemId& choice, int locks, std::stop_token stop = {});
/// Whether hair counted for one plan is the other's too: the same head, density, lengths and fibre, and
/// the same hair taken by the same pieces in the same order. Formulas, levels, foils, labels and the
/// program's other assumptions may differ. At once.
bool countAlike(const plan::Plan& a, const plan::Plan& b, const plan::ItemId& choice = {});
/// The rest, at once, from hair that was counted for this plan or for one that counts alike. From an
/// empty count come no pieces, no foils and 0 g. Errors as above.
Result<Amounts> amountsOf(const plan::Plan& plan, const AmountSettings& settings, const HairCount& hair);

struct PartGrams {
  std::string name;
  double grams = 0;
};
/// A bowl's grams split by the formula's parts by weight. Nothing unless parts
/// above 0 are typed for everything that goes in, and more than one thing does.
std::optional<std::vector<PartGrams>> splitByParts(const plan::Formula& formula, double total_g);

}  // namespace combdraft::work

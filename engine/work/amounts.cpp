#include "engine/work/amounts.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "engine/base/number_text.h"
#include "engine/placement/members.h"
#include "engine/work/speeds.h"

namespace combdraft::work {
namespace {

// A lock's length as the fall has it on average: layers and unevenness take their
// mean share (engine/hair/trace.cpp, grownLength_mm: 0.035 |z|, and 0.45 u^2 of
// the layering; their means are 0.0279 and 0.15).
double meanLength_mm(const plan::Hair& hair, plan::HairZone zone) {
  const double kept = std::max(0.2, 1 - 0.0279 - 0.15 * hair.layering_frac);
  return hair.length_mm[static_cast<std::size_t>(zone)] * kept;
}

constexpr std::string_view kPerHair = "amount.product_per_hair";

double between(double from, double to) { return std::max(0.0, to - from); }

class Counter {
 public:
  Counter(const plan::Plan& plan, const head::HeadShape& shape, const hair::Roots& roots)
      : plan_(plan), shape_(shape), roots_(roots), grid_(roots), left_(roots.roots.size(), 1.0f),
        gramsPerMm_(work::gramsPerMm(plan.hair().fibre_um, Assumptions(plan.info().assumptions))) {
    for (const hair::Root& root : roots.roots) zones_[static_cast<std::size_t>(root.zone)].hairs += roots.hairsPerLock;
  }

  const std::array<ZoneHairs, plan::kHairZones>& zones() const { return zones_; }

  PieceAmount take(const plan::ItemId& id, const plan::Piece& piece) {
    PieceAmount amount;
    amount.piece = id;
    amount.line_mm = lengthOf(piece);
    const double end = piece.stop_mm.value_or(1e9), handover = piece.handover_mm.value_or(1e9);
    for (const placement::Member& member : placement::membersOf(piece, shape_, roots_, grid_, plan_.info().number)) {
      float& left = left_[member.lock];
      const double share = std::min(member.share, left);
      left -= static_cast<float>(share);
      const double hairs = share * roots_.hairsPerLock;
      const plan::HairZone zone = roots_.roots[member.lock].zone;
      const double length = meanLength_mm(plan_.hair(), zone);
      if (piece.action == plan::Action::Lighten) zones_[static_cast<std::size_t>(zone)].lightened += hairs;
      amount.hairs += hairs;
      amount.hair_g += hairs * length * gramsPerMm_;
      const double pushed = isBackcombed(piece) ? piece.backcomb.pushed_frac : 0;
      const double to = std::min(length, end);
      const auto cover = [&](double part, double start) {
        amount.root_g += part * hairs * gramsPerMm_ * between(start, std::min(to, handover));
        amount.end_g += part * hairs * gramsPerMm_ * between(std::max(start, handover), to);
      };
      cover(1 - pushed, piece.start_mm);
      cover(pushed, std::max(piece.start_mm, piece.backcomb.depth_mm));
    }
    return amount;
  }

 private:
  double lengthOf(const plan::Piece& piece) const {
    std::vector<Vec3> line;
    for (const plan::ScalpPoint& p : piece.line)
      if (const Vec3 at = shape_.pointAt(p); line.empty() || (at - line.back()).norm() > 1e-6) line.push_back(at);
    return line.size() < 2 ? 0 : head::StripFrame(shape_, line).length_mm();
  }

  const plan::Plan& plan_;
  const head::HeadShape& shape_;
  const hair::Roots& roots_;
  hair::RootGrid grid_;
  std::vector<float> left_;  // of each lock, what nobody took
  double gramsPerMm_;
  std::array<ZoneHairs, plan::kHairZones> zones_{};
};

void addPacket(std::vector<FoilNeed>& packets, const plan::ItemId& id, const plan::Piece& piece, double line_mm) {
  auto shared = packets.end();
  if (!piece.foil.empty())
    shared = std::find_if(packets.begin(), packets.end(), [&](const FoilNeed& f) { return f.name == piece.foil; });
  if (shared == packets.end()) shared = packets.insert(packets.end(), FoilNeed{piece.foil, {}, 0, {}});
  shared->pieces.push_back(id);
  shared->needed_mm = std::max(shared->needed_mm, line_mm);
}

void chooseWidths(std::vector<FoilNeed>& foils, std::vector<double> widths) {
  std::sort(widths.begin(), widths.end());
  for (FoilNeed& foil : foils)
    if (const auto fits = std::lower_bound(widths.begin(), widths.end(), foil.needed_mm); fits != widths.end())
      foil.width_mm = *fits;
}

std::optional<Error> wrongWidth(const AmountSettings& settings) {
  for (const double width : settings.foils_mm)
    if (!(width > 0) || !std::isfinite(width))
      return Error{ErrorCode::OutOfRange, "foils", {numberText(width), "widths above 0 mm"}, {}};
  return std::nullopt;
}

ProductRange rangeOf(const plan::Plan& plan, const std::vector<double>& heads) {
  const std::map<std::string, double>& typed = plan.info().assumptions;
  const double value = Assumptions(typed)[kPerHair];
  ProductRange range{ProductRange::From::Typed, value, value, 0};
  if (!typed.count(std::string(kPerHair))) {
    range.from = ProductRange::From::Assumption;
    for (const Assumption& known : assumptionTable())
      if (known.name == kPerHair) range.low = known.low, range.high = known.high;
  } else if (!heads.empty()) {
    const auto [least, most] = std::minmax_element(heads.begin(), heads.end());
    range = {ProductRange::From::Heads, *least, *most, static_cast<int>(heads.size())};
  }
  return range;
}

// What neither takes hair nor covers it is as in every piece. The number alone says nothing: pieces
// are compared in the order that numbers give.
plan::Piece hairOf(plan::Piece piece) {
  const plan::Piece any;
  piece.section = any.section;
  piece.label = any.label;
  piece.note = any.note;
  piece.blend_mm = any.blend_mm;
  piece.backcomb.blend_mm = any.backcomb.blend_mm;
  piece.root = any.root;
  piece.end = any.end;
  piece.keptIn = any.keptIn;
  piece.foil = any.foil;
  piece.order = any.order;
  piece.twinOf = any.twinOf;
  piece.held = any.held;
  piece.laidOut = any.laidOut;
  piece.extra = any.extra;
  return piece;
}

bool sameHair(const plan::Hair& a, const plan::Hair& b) {
  return a.density_per_cm2 == b.density_per_cm2 && a.fibre_um == b.fibre_um && a.length_mm == b.length_mm &&
         a.layering_frac == b.layering_frac;
}

std::vector<FormulaAmount> byFormula(const plan::Plan& plan, const std::vector<PieceAmount>& pieces, const ProductRange& range) {
  const Assumptions own(plan.info().assumptions);
  std::map<plan::ItemId, FormulaAmount> sums;
  for (const PieceAmount& amount : pieces) {
    const plan::Piece& piece = *plan.find<plan::Piece>(amount.piece);
    sums[piece.root.formula].hair_g += amount.root_g;
    if (piece.handover_mm) sums[piece.end.formula].hair_g += amount.end_g;
  }
  std::vector<FormulaAmount> formulas;
  for (auto& [id, sum] : sums) {
    sum.formula = id;
    const double waste = own["amount.waste_share"];
    sum.product_g = sum.hair_g * own[kPerHair];
    sum.waste_g = sum.product_g * waste;
    sum.mixedLow_g = sum.hair_g * range.low * (1 + waste);
    sum.mixedHigh_g = sum.hair_g * range.high * (1 + waste);
    formulas.push_back(sum);
  }
  return formulas;
}

}  // namespace

double gramsPerMm(double fibre_um, const Assumptions& assumptions) {
  const double radius_cm = fibre_um / 2 * 1e-4;
  return 3.141592653589793 * radius_cm * radius_cm * assumptions["amount.fibre_g_cm3"] / 10;
}

const PieceAmount* Amounts::of(const plan::ItemId& piece) const {
  const auto it = std::find_if(pieces.begin(), pieces.end(), [&](const PieceAmount& a) { return a.piece == piece; });
  return it == pieces.end() ? nullptr : &*it;
}

GramsSpan Amounts::mixed_g() const {
  GramsSpan all;
  for (const FormulaAmount& formula : formulas) {
    all.about += formula.mixed_g();
    all.low += formula.mixedLow_g;
    all.high += formula.mixedHigh_g;
  }
  return all;
}

Result<HairCount> countHair(const plan::Plan& plan, const plan::ItemId& choice, int locks, std::stop_token stop) {
  const auto fitted = head::fitHead(plan.head().measures);
  if (!fitted) return fitted.error();
  const head::HeadShape shape(fitted->axes);
  const hair::Roots roots = hair::spreadRoots(shape, head::Hairline(shape, plan.head().hairline), plan.hair().density_per_cm2,
                                              std::clamp(locks, 2'000, 200'000), plan.info().number);
  Counter counter(plan, shape, roots);
  const auto pieces = plan.pieces(choice);
  HairCount hair;
  for (const bool worked : {false, true}) {  // left-outs have their hair first
    for (const auto& [id, piece] : pieces) {
      if (isWorked(*piece) != worked) continue;
      if (stop.stop_requested()) return Error{ErrorCode::Cancelled, {}, {}, {}};
      const PieceAmount amount = counter.take(id, *piece);
      if (worked) hair.pieces.push_back(amount);
    }
  }
  hair.zones = counter.zones();
  return hair;
}

bool countAlike(const plan::Plan& a, const plan::Plan& b, const plan::ItemId& choice) {
  constexpr std::string_view kFibre = "amount.fibre_g_cm3";
  if (a.info().number != b.info().number || !(a.head().measures == b.head().measures) ||
      !(a.head().hairline == b.head().hairline) || !sameHair(a.hair(), b.hair()) ||
      Assumptions(a.info().assumptions)[kFibre] != Assumptions(b.info().assumptions)[kFibre])
    return false;
  const auto ours = a.pieces(choice), theirs = b.pieces(choice);
  return std::equal(ours.begin(), ours.end(), theirs.begin(), theirs.end(), [](const auto& x, const auto& y) {
    return x.first == y.first && (x.second == y.second || hairOf(*x.second) == hairOf(*y.second));
  });
}

Result<Amounts> amountsOf(const plan::Plan& plan, const AmountSettings& settings) {
  if (const auto wrong = wrongWidth(settings)) return *wrong;
  const Result<HairCount> hair = countHair(plan, settings.choice, settings.locks);
  if (!hair) return hair.error();
  return amountsOf(plan, settings, hair.value());
}

Result<Amounts> amountsOf(const plan::Plan& plan, const AmountSettings& settings, const HairCount& hair) {
  if (const auto wrong = wrongWidth(settings)) return *wrong;
  if (const auto fitted = head::fitHead(plan.head().measures); !fitted) return fitted.error();
  Amounts amounts;
  for (const PieceAmount& amount : hair.pieces) {
    const plan::Piece& piece = *plan.find<plan::Piece>(amount.piece);
    amounts.hairs += amount.hairs;
    amounts.hair_g += amount.hair_g;
    switch (piece.keptIn) {
      case plan::KeptIn::Foil: addPacket(amounts.foils, amount.piece, piece, amount.line_mm); break;
      case plan::KeptIn::Film: addPacket(amounts.films, amount.piece, piece, amount.line_mm); break;
      case plan::KeptIn::OpenAir: ++amounts.openAir; break;
    }
    amounts.pieces.push_back(amount);
  }
  amounts.zones = hair.zones;
  chooseWidths(amounts.foils, settings.foils_mm);
  amounts.product = rangeOf(plan, settings.perHair_heads);
  amounts.formulas = byFormula(plan, amounts.pieces, amounts.product);
  return amounts;
}

std::optional<std::vector<PartGrams>> splitByParts(const plan::Formula& formula, double total_g) {
  std::vector<PartGrams> split;
  double all = 0;
  bool whole = true;
  const auto add = [&](const std::string& name, const std::optional<double>& parts) {
    whole = whole && parts && *parts > 0 && std::isfinite(*parts);
    split.push_back({name, parts.value_or(0)});
    all += parts.value_or(0);
  };
  for (const plan::MixPart& product : formula.products) add(product.name, product.parts);
  for (const plan::Developer& developer : formula.developers) add(developer.name, developer.parts);
  for (const plan::MixPart& additive : formula.additives) add(additive.name, additive.parts);
  if (!whole || split.size() < 2 || !(total_g >= 0)) return std::nullopt;
  for (PartGrams& part : split) part.grams = total_g * part.grams / all;
  return split;
}

}  // namespace combdraft::work

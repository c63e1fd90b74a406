#include "engine/look/opening_blocks.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "engine/colour/xyz.h"
#include "engine/look/blur.h"

namespace combdraft::look {
namespace {

using visibility::kSamples;

// Where between the darkest (0) and the lightest (1) planned colour the line
// between light and dark is drawn: each is tried, the largest patch that stands
// out counts.
constexpr std::array<double, 3> kLightFrom{0.40, 0.52, 0.66};
constexpr float kLeastCover = 0.5f;   // cells with more scalp than hair are neither
constexpr float kLeastLeftDark = 0.5f;  // of a dark patch: hair that stays dark along its whole length
constexpr double kGround = 0.55;  // own: what more of the hair at rest is, is the ground
constexpr double kSmallest_cm2 = 0.25;  // smaller is a speck
constexpr double kSurround_mm = 15, kAtLine_mm = 12, kRunBin_mm = 2;

enum class Kind { Light, Dark };

/// A connected set of cells.
using Cells = std::vector<std::uint32_t>;

struct Grid {
  int width, height;
  template <class Visit>
  void neighbours(std::uint32_t cell, Visit visit) const {
    const int x = static_cast<int>(cell) % width, y = static_cast<int>(cell) / width;
    if (x > 0) visit(cell - 1);
    if (x + 1 < width) visit(cell + 1);
    if (y > 0) visit(cell - static_cast<std::uint32_t>(width));
    if (y + 1 < height) visit(cell + static_cast<std::uint32_t>(width));
  }
};

std::vector<Cells> connected(const Grid& grid, const std::vector<std::uint8_t>& mask) {
  std::vector<Cells> found;
  std::vector<std::uint8_t> done(mask.size(), 0);
  for (std::uint32_t start = 0; start < mask.size(); ++start) {
    if (!mask[start] || done[start]) continue;
    Cells cells{start};
    done[start] = 1;
    for (std::size_t k = 0; k < cells.size(); ++k)
      grid.neighbours(cells[k], [&](std::uint32_t next) {
        if (mask[next] && !done[next]) done[next] = 1, cells.push_back(next);
      });
    found.push_back(std::move(cells));
  }
  return found;
}

/// Cells within `reach` (in cells) of where `mask` is `value`, by two passes of
/// the 3-4 chamfer distance.
std::vector<std::uint8_t> within(const Grid& grid, const std::vector<std::uint8_t>& mask, bool value, double reach) {
  constexpr int kFar = 1 << 20;
  const int w = grid.width, h = grid.height;
  std::vector<int> d(mask.size());
  for (std::size_t i = 0; i < mask.size(); ++i) d[i] = (mask[i] != 0) == value ? 0 : kFar;
  const auto at = [&](int x, int y) { return static_cast<std::size_t>(y) * w + x; };
  const auto pass = [&](int x, int y, int dx, int dy, int cost) {
    const int ox = x + dx, oy = y + dy;
    if (ox >= 0 && oy >= 0 && ox < w && oy < h) d[at(x, y)] = std::min(d[at(x, y)], d[at(ox, oy)] + cost);
  };
  for (int y = 0; y < h; ++y)
    for (int x = 0; x < w; ++x) pass(x, y, -1, 0, 3), pass(x, y, 0, -1, 3), pass(x, y, -1, -1, 4), pass(x, y, 1, -1, 4);
  for (int y = h - 1; y >= 0; --y)
    for (int x = w - 1; x >= 0; --x) pass(x, y, 1, 0, 3), pass(x, y, 0, 1, 3), pass(x, y, 1, 1, 4), pass(x, y, -1, 1, 4);
  std::vector<std::uint8_t> near(mask.size());
  for (std::size_t i = 0; i < mask.size(); ++i) near[i] = d[i] <= 3 * reach;
  return near;
}

/// What of a mask is at least `narrowest_mm` wide: a ribbon is no block.
std::vector<std::uint8_t> wideParts(const Grid& grid, const std::vector<std::uint8_t>& mask, double narrowest_mm) {
  const double reach = narrowest_mm / 2 / OpeningView::kCell_mm;
  std::vector<std::uint8_t> core = within(grid, mask, false, reach);
  for (auto& c : core) c = !c;
  std::vector<std::uint8_t> wide = within(grid, core, true, reach);
  for (std::size_t i = 0; i < wide.size(); ++i) wide[i] = wide[i] && mask[i];
  return wide;
}

class Finder {
 public:
  Finder(const OpeningView& view, const LockColours& colours, const PlannedColours& planned, double distance_m,
         const head::HeadShape& shape, const Assumptions& assumptions)
      : view_(view), colours_(colours), planned_(planned), shape_(shape), grid_{view.width(), view.height()},
        narrowest_(assumptions["block.narrowest_mm"]),
        // Ribbons are blurred together, so that a fine mixture is one colour.
        seen_(view.blurred(std::max(eyeBlur_mm(distance_m), narrowest_))), reach_(static_cast<float>(assumptions["block.reach_mm"])),
        least_(std::max(assumptions["block.least_L"], assumptions["block.difference"] * planned.difference())) {
    if (view.way() == OpeningWay::TiedBack) reach_ = 1e9f;  // all the hair is drawn open
  }

  /// What most of the hair at the opening is, if anything.
  Ground ground() const {
    double light = 0, all = 0;
    for (std::uint32_t i = 0; i < view_.cells(); ++i) {
      if (view_.cover()[i] < kLeastCover || !isNear(i)) continue;
      all += view_.area_mm2()[i];
      if (seen_[i] >= planned_.darkest + 0.5 * planned_.difference()) light += view_.area_mm2()[i];
    }
    return light > kGround * all ? Ground::Light : all - light > kGround * all ? Ground::Dark : Ground::Neither;
  }

  /// The largest patch of a kind, and its longest run.
  Patch largest(Kind kind, Run& longest) const {
    Patch best;
    for (const double from : kLightFrom) {
      const std::vector<std::uint8_t> mask = maskOf(kind, from);
      for (const Cells& cells : connected(grid_, mask)) {
        if (areaOf(cells) < kSmallest_cm2) continue;
        const double run = runOf(cells);
        if (run <= longest.length_mm) continue;
        if (const auto out = standsOut(kind, cells, mask)) {
          Patch whole = patchOf(kind, cells, 0, *out);
          longest = {run, whole.at, std::move(whole.pieces)};
        }
      }
      for (const Cells& cells : connected(grid_, wideParts(grid_, mask, narrowest_))) {
        const double area = areaOf(cells);
        if (area < kSmallest_cm2 || area <= best.area_cm2) continue;
        if (const auto out = standsOut(kind, cells, mask)) best = patchOf(kind, cells, area, *out);
      }
    }
    return best;
  }

 private:
  struct StandsOut {
    double lightness, surround;
    Cells ring;
  };

  bool isNear(std::uint32_t cell) const { return view_.fromLine_mm()[cell] <= reach_; }

  /// All cells of a kind, also beyond the reach: a patch ends where its colour does.
  std::vector<std::uint8_t> maskOf(Kind kind, double from) const {
    std::vector<std::uint8_t> mask(view_.cells(), 0);
    const double line = kind == Kind::Light ? planned_.darkest + from * planned_.difference()
                                            : planned_.lightest - from * planned_.difference();
    for (std::size_t i = 0; i < mask.size(); ++i) {
      if (view_.cover()[i] < kLeastCover) continue;
      mask[i] = kind == Kind::Light ? seen_[i] >= line : seen_[i] <= line && view_.leftDark()[i] >= kLeastLeftDark;
    }
    return mask;
  }

  /// Of the part that is at the opening.
  double areaOf(const Cells& cells) const {
    double mm2 = 0;
    for (const std::uint32_t c : cells)
      if (isNear(c)) mm2 += view_.area_mm2()[c];
    return mm2 / 100;
  }

  double runOf(const Cells& cells) const {
    if (view_.way() == OpeningWay::TiedBack) return 0;  // nothing opens along a line
    std::vector<std::uint8_t> touched;
    for (const std::uint32_t c : cells) {
      if (view_.fromLine_mm()[c] > kAtLine_mm) continue;
      const auto bin = static_cast<std::size_t>(view_.alongLine_mm()[c] / kRunBin_mm);
      if (bin >= touched.size()) touched.resize(bin + 1, 0);
      touched[bin] = 1;
    }
    int longest = 0, now = 0;
    for (const std::uint8_t t : touched) longest = std::max(longest, now = t ? now + 1 : 0);
    return longest * kRunBin_mm;
  }

  std::optional<StandsOut> standsOut(Kind kind, const Cells& cells, const std::vector<std::uint8_t>& mask) const {
    std::vector<std::uint8_t> taken = mask;  // other patches of the kind are not its surround
    Cells ring, front = cells;
    for (int step = 0; step < static_cast<int>(kSurround_mm / OpeningView::kCell_mm); ++step) {
      Cells next;
      for (const std::uint32_t c : front)
        grid_.neighbours(c, [&](std::uint32_t n) {
          if (!taken[n] && view_.cover()[n] > 0) taken[n] = 1, next.push_back(n);
        });
      ring.insert(ring.end(), next.begin(), next.end());
      front = std::move(next);
    }
    const auto meanOf = [&](const Cells& of) {
      double light = 0, weight = 0;
      for (const std::uint32_t c : of) {
        const double w = view_.cover()[c] * view_.area_mm2()[c];
        light += w * view_.luminance()[c], weight += w;
      }
      return weight > 0 ? colour::lightnessFromY(light / weight) : -1;
    };
    StandsOut out{meanOf(cells), meanOf(ring), {}};
    if (out.surround < 0) return std::nullopt;  // nothing around it: the whole is one colour
    const double difference = kind == Kind::Light ? out.lightness - out.surround : out.surround - out.lightness;
    if (difference < least_) return std::nullopt;
    out.ring = std::move(ring);
    return out;
  }

  Patch patchOf(Kind kind, const Cells& cells, double area, const StandsOut& out) const {
    Patch patch;
    patch.area_cm2 = area;
    patch.run_mm = runOf(cells);
    patch.lightness = out.lightness, patch.surround = out.surround;
    patch.cell_mm = OpeningView::kCell_mm;
    Vec3 middle = Vec3::Zero();
    for (const std::uint32_t c : cells) {
      if (!isNear(c)) continue;
      patch.places.push_back(view_.place()[c]);
      middle += toVec3(view_.place()[c]);
    }
    if (!patch.places.empty()) patch.at = shape_.scalpPointAt(middle / static_cast<double>(patch.places.size()));
    const auto isLight = [&](const plan::Piece& piece) { return piece.action == plan::Action::Lighten; };
    addPieces(patch, cells, [&](const plan::Piece& p, const BinColour& c) {
      return kind == Kind::Light ? isLight(p) && c.light > 0.5f : !isLight(p);
    });
    if (kind == Kind::Dark) addPieces(patch, out.ring, [&](const plan::Piece& p, const BinColour& c) { return isLight(p) && c.light > 0.5f; });
    return patch;
  }

  /// Pieces whose hair makes at least a twentieth of what is shown, most first.
  template <class Wanted>
  void addPieces(Patch& patch, const Cells& cells, Wanted wanted) const {
    std::map<plan::ItemId, double> shown;
    double all = 0;
    for (const std::uint32_t c : cells)
      for (int k = 0; k < kSamples; ++k) {
        const visibility::LockBin who = view_.samples(c)[k];
        if (who.none()) continue;
        const plan::Piece* piece = colours_.pieceOf(who.lock());
        if (piece && wanted(*piece, colours_.at(who.lock(), who.bin())))
          shown[colours_.pieceIdOf(who.lock())] += view_.area_mm2()[c], all += view_.area_mm2()[c];
      }
    std::vector<std::pair<double, plan::ItemId>> most;
    for (const auto& [id, area] : shown)
      if (area >= 0.05 * all) most.emplace_back(area, id);
    std::sort(most.begin(), most.end(), [](const auto& a, const auto& b) {
      return a.first != b.first ? a.first > b.first : plan::idLess(a.second, b.second);
    });
    for (auto& [area, id] : most) patch.pieces.push_back(std::move(id));
  }

  const OpeningView& view_;
  const LockColours& colours_;
  const PlannedColours& planned_;
  const head::HeadShape& shape_;
  Grid grid_;
  double narrowest_;
  std::vector<float> seen_;
  float reach_;
  double least_;
};

}  // namespace

PlannedColours plannedColours(const LockColours& colours, const hair::Roots& roots, const hair::Locks& locks) {
  struct Mean {
    double y = 0, weight = 0;
  };
  std::map<plan::ItemId, Mean> pieces;
  std::array<Mean, plan::kHairZones> left{};
  Mean wasLight;
  for (std::uint32_t lock = 0; lock < locks.size(); ++lock) {
    const plan::Piece* piece = colours.pieceOf(lock);
    const int bins = std::min(colours.bins(), static_cast<int>(locks.length_mm[lock] * locks.stretch / visibility::kBin_mm));
    Mean* own = piece && piece->action != plan::Action::LeaveOut ? &pieces[colours.pieceIdOf(lock)] : nullptr;
    Mean& zone = left[static_cast<std::size_t>(roots.roots[lock].zone)];
    const bool deepens = piece && piece->action == plan::Action::Deepen;
    for (int bin = 0; bin < bins; ++bin) {
      const BinColour& c = colours.of(lock)[bin];
      Mean* into = nullptr;
      if (deepens) into = own;
      else if (own && c.light > 0.9f) into = own;
      else if (!own && c.light > 0.9f) into = &wasLight;
      else if (!own && c.light < 0.1f) into = &zone;
      if (into) into->y += static_cast<double>(c.y), into->weight += 1;
    }
  }
  PlannedColours planned{1e9, -1e9};
  const auto take = [&](const Mean& mean) {
    if (mean.weight < 1) return;
    const double L = colour::lightnessFromY(mean.y / mean.weight);
    planned.darkest = std::min(planned.darkest, L), planned.lightest = std::max(planned.lightest, L);
  };
  for (const auto& [id, mean] : pieces) take(mean);
  for (const Mean& mean : left) take(mean);
  take(wasLight);
  if (planned.lightest < planned.darkest) planned = {0, 0};  // no hair at all
  return planned;
}

Ground groundOf(const OpeningView& view, const LockColours& colours, const PlannedColours& planned,
                double distance_m, const head::HeadShape& shape, const Assumptions& assumptions) {
  return Finder(view, colours, planned, distance_m, shape, assumptions).ground();
}

Opening blocksOf(const OpeningView& view, const LockColours& colours, const PlannedColours& planned, Ground ground,
                 double distance_m, const head::HeadShape& shape, const Assumptions& assumptions) {
  Opening opening;
  opening.way = view.way(), opening.shift_mm = view.shift_mm();
  if (planned.difference() < assumptions["block.least_L"]) return opening;
  const Finder finder(view, colours, planned, distance_m, shape, assumptions);
  if (ground != Ground::Light) opening.light = finder.largest(Kind::Light, opening.lightRun);
  if (ground != Ground::Dark) opening.dark = finder.largest(Kind::Dark, opening.darkRun);
  opening.run_mm = std::max(opening.lightRun.length_mm, opening.darkRun.length_mm);
  return opening;
}

}  // namespace combdraft::look

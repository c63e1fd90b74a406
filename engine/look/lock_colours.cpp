#include "engine/look/lock_colours.h"

#include <algorithm>
#include <cmath>

#include "engine/base/content_hash.h"
#include "engine/base/parallel.h"
#include "engine/visibility/raster.h"

namespace combdraft::look {
namespace {

using colour::Xyz;
using visibility::kBin_mm;
using visibility::kLongestBins;

/// Everything a lock's colour depends on apart from the pieces.
std::uint64_t paletteKeyOf(const plan::Plan& plan, const LookSettings& s,
                           const std::vector<plan::Treatment>& treatments) {
  const plan::Hair& hair = plan.hair();
  ContentHash h;
  for (const auto& level : hair.level) h.add(level.root).add(level.middle).add(level.end);
  h.add(hair.toneWarmth).add(hair.white_frac);
  for (const plan::Band& b : hair.bands)
    h.add(b.zone ? static_cast<int>(*b.zone) : -1).add(b.from_mm).add(b.to_mm).add(b.level);
  for (const plan::ScatteredLight& b : hair.scattered)
    h.add(b.zone ? static_cast<int>(*b.zone) : -1).add(b.share_frac).add(b.from_mm).add(b.to_mm).add(b.level);
  for (const plan::Treatment& t : treatments)
    h.add(static_cast<int>(t.kind)).add(t.zone ? static_cast<int>(*t.zone) : -1).add(t.to_mm)
        .add(t.blend_mm).add(t.colour.level).add(static_cast<int>(t.colour.tone)).add(t.strength_frac);
  h.add(static_cast<int>(s.light)).add(static_cast<int>(s.lift)).add(static_cast<int>(s.toner));
  h.add(static_cast<int>(s.subject)).add(static_cast<int>(s.moisture)).add(s.weeks);
  for (const auto& [name, value] : plan.info().assumptions) h.add(name).add(value);
  return h.key();
}

/// The placement part of two pieces is the same.
bool samePlacement(plan::Piece a, plan::Piece b) {
  a.label = b.label, a.note = b.note, a.foil = b.foil, a.held = b.held, a.section = b.section;
  a.extra = b.extra, a.keptIn = b.keptIn, a.order = b.order, a.twinOf = b.twinOf;
  return a == b;
}

double liftedLevel(const plan::LiftsTo& lifts, Lift lift, double span) {
  const double where = lift == Lift::Less ? -1 : lift == Lift::More ? 1 : std::clamp(span, -1.0, 1.0);
  return where < 0 ? lifts.level + where * (lifts.level - lifts.low)
                   : lifts.level + where * (lifts.high - lifts.level);
}

double levelAlong(const plan::RootMiddleEnd& level, double frac) {
  if (frac < 0.15) return level.root;
  if (frac < 0.5) return level.root + (frac - 0.15) / 0.35 * (level.middle - level.root);
  if (frac < 0.9) return level.middle + (frac - 0.5) / 0.4 * (level.end - level.middle);
  return level.end;
}

}  // namespace

/// Colours of the two zones of a piece, looked up once per update.
struct LockColours::ZonePaint {
  const Swatch* root = nullptr;
  const Swatch* end = nullptr;
};

struct LockColours::Work {
  const plan::Plan& plan;
  const LookSettings& settings;
  const ColouredHead& head;
  const Assumptions& assumptions;
  double growth_mm;
  std::map<const PieceState*, ZonePaint> paints;
  std::vector<const Swatch*> scattered;
};

LockColours::LockColours() = default;
LockColours::~LockColours() = default;

void LockColours::reset() {
  paletteKey_ = 0;
  pieces_.clear();
  owners_.clear();
  colours_.clear();
}

const plan::Piece* LockColours::pieceOf(std::uint32_t lock) const {
  const PieceState* state = owners_[lock].state;
  return state ? &state->piece : nullptr;
}

std::vector<std::uint32_t> LockColours::update(const plan::Plan& plan,
                                               const LookSettings& settings,
                                               const ColouredHead& head,
                                               const std::function<void(const std::vector<std::uint32_t>&)>& before) {
  const Assumptions assumptions(plan.info().assumptions);
  const plan::Hair& hair = plan.hair();
  const bool planned = settings.subject == Subject::Planned;
  const std::size_t n = head.locks.size();

  std::vector<plan::Treatment> treatments;
  if (planned && settings.toner == Toner::After)
    for (const auto& [id, t] : plan.treatments(settings.choice)) treatments.push_back(*t);
  // A root shadow is laid over a glaze, never under it.
  std::stable_partition(treatments.begin(), treatments.end(), [](const plan::Treatment& t) {
    return t.kind == plan::Treatment::Kind::Glaze;
  });
  const std::uint64_t key = paletteKeyOf(plan, settings, treatments);
  bool all = key != paletteKey_ || colours_.empty();
  if (all) {
    palette_ = std::make_unique<Palette>(hair, treatments, levelScaleOf(assumptions), settings.light, settings.moisture);
    paletteKey_ = key;
  }
  if (owners_.size() != n) {
    float longest = 0;
    for (std::size_t i = 0; i < n; ++i) longest = std::max(longest, head.locks.length_mm[i]);
    bins_ = std::clamp(static_cast<int>(longest * head.locks.stretch / kBin_mm) + 1, 1, kLongestBins);
    owners_.assign(n, {});
    colours_.assign(n * static_cast<std::size_t>(bins_), {});
    pieces_.clear();
    all = true;
  }

  // Pieces that came, went or changed, and every lock they touch.
  std::vector<std::uint8_t> touched(n, 0);
  const auto touch = [&](const PieceState& state) {
    for (const placement::Member& m : state.members) touched[m.lock] = 1;
  };
  for (auto& [id, state] : pieces_) state->wanted = false;
  std::vector<PieceState*> inOrder;
  if (planned) {
    auto listed = plan.pieces(settings.choice);
    // A left-out keeps its hair against every piece; then the earlier has it.
    std::stable_partition(listed.begin(), listed.end(), [](const auto& entry) {
      return entry.second->action == plan::Action::LeaveOut;
    });
    int precedence = 0;
    for (const auto& [id, listedPiece] : listed) {
      const plan::Piece& piece = *listedPiece;
      std::unique_ptr<PieceState>& state = pieces_[id];
      const bool fresh = !state;
      if (fresh) state = std::make_unique<PieceState>(), state->id = id;
      if (fresh || !samePlacement(state->piece, piece)) {
        if (!fresh) touch(*state);
        state->members = placement::membersOf(piece, head.shape, head.roots, head.grid, head.seed);
        touch(*state);
      } else if (state->precedence != precedence) {
        touch(*state);
      }
      state->piece = piece;
      state->precedence = precedence++;
      state->wanted = true;
      inOrder.push_back(state.get());
    }
  }
  for (auto it = pieces_.begin(); it != pieces_.end();) {
    if (it->second->wanted) {
      ++it;
      continue;
    }
    touch(*it->second);
    for (const placement::Member& m : it->second->members) owners_[m.lock] = {};
    it = pieces_.erase(it);
  }

  std::vector<std::uint32_t> changed;
  for (std::uint32_t i = 0; i < n; ++i)
    if (touched[i] || all) {
      if (touched[i]) owners_[i] = {};
      changed.push_back(i);
    }
  for (const PieceState* state : inOrder)
    for (const placement::Member& m : state->members)
      if (touched[m.lock] && !owners_[m.lock].state) owners_[m.lock] = {state, m.share, m.depth};

  Work work{plan, settings, head, assumptions,
            planned ? settings.weeks * assumptions["growth.mm_per_week"] : 0, {}, {}};
  const double span = assumptions["colour.span"];
  for (const PieceState* state : inOrder) {
    const auto swatchOf = [&](const plan::ZoneColour& zone) -> const Swatch* {
      switch (state->piece.action) {
        case plan::Action::LeaveOut: return nullptr;
        case plan::Action::Deepen:
          return &palette_->deepened(zone.finish ? *zone.finish : plan::FinishesAt{zone.lifts.level, plan::Tone::Natural});
        case plan::Action::Lighten: {
          const double bare = liftedLevel(zone.lifts, settings.lift, span);
          return zone.finish && settings.toner == Toner::After ? &palette_->finished(bare, *zone.finish)
                                                               : &palette_->lightened(bare);
        }
      }
      return nullptr;
    };
    work.paints[state] = {swatchOf(state->piece.root),
                          swatchOf(state->piece.handover_mm ? state->piece.end : state->piece.root)};
  }
  for (const plan::ScatteredLight& s : hair.scattered)
    work.scattered.push_back(&palette_->finished(s.level, {s.level, plan::Tone::Natural}));

  if (before) before(changed);
  parallelFor((changed.size() + 511) / 512, [&](std::size_t chunk) {
    for (std::size_t k = chunk * 512; k < std::min(changed.size(), chunk * 512 + 512); ++k)
      colourLock(changed[k], work);
  });
  return changed;
}

void LockColours::colourLock(std::uint32_t lock, const Work& work) {
  const plan::Hair& hair = work.plan.hair();
  const hair::Root& root = work.head.roots.roots[lock];
  const placement::LockNumbers own = placement::lockNumbers(work.head.seed, lock);
  const double length = work.head.locks.length_mm[lock] * work.head.locks.stretch;
  const plan::RootMiddleEnd& level = hair.level[static_cast<std::size_t>(root.zone)];
  const bool isWhite = own.white < hair.white_frac;
  const std::vector<plan::Treatment>& treatments = palette_->treatments();

  // Already light hair, scattered: the first kind whose share covers this lock.
  const plan::ScatteredLight* wasLight = nullptr;
  const Swatch* wasLightSwatch = nullptr;
  double shareBefore = 0;
  for (std::size_t k = 0; k < hair.scattered.size(); ++k) {
    const plan::ScatteredLight& s = hair.scattered[k];
    if (s.zone && *s.zone != root.zone) continue;
    if (own.scattered >= shareBefore && own.scattered < shareBefore + s.share_frac && !wasLight) {
      wasLight = &s;
      wasLightSwatch = work.scattered[k];
    }
    shareBefore += s.share_frac;
  }

  const Owner& owner = owners_[lock];
  const plan::Piece* piece = owner.state ? &owner.state->piece : nullptr;
  ZonePaint paint;
  placement::LockStart start;
  double taken = 0;
  if (piece) {
    paint = work.paints.at(owner.state);
    if (paint.root) {
      start = placement::lockStart(*piece, own.startNormal, own.pushed < piece->backcomb.pushed_frac,
                                   work.assumptions);
      taken = owner.share;
      if (piece->taking == plan::Taking::Paint && piece->under == plan::Side::Bare)
        taken *= std::clamp((piece->outer_frac - owner.depth) / 0.1 + 0.5, 0.0, 1.0);
    }
  }

  BinColour* out = colours_.data() + static_cast<std::size_t>(lock) * static_cast<std::size_t>(bins_);
  for (int bin = 0; bin < bins_; ++bin) {
    const double from = bin * kBin_mm - work.growth_mm, to = from + kBin_mm;
    const double middle = (from + to) / 2;
    double levelHere = middle < 0 ? level.root
                                  : levelAlong(level, middle / std::max(length, 1.0));
    for (const plan::Band& band : hair.bands)
      if ((!band.zone || *band.zone == root.zone) && middle >= band.from_mm && middle < band.to_mm)
        levelHere = band.level;
    const double old = wasLight ? std::clamp((std::min(to, wasLight->to_mm) - std::max(from, wasLight->from_mm)) / kBin_mm, 0.0, 1.0) : 0;

    double light = 0, toEnd = 0;
    if (taken > 0) {
      light = taken * placement::meanLight(start, from, to);
      if (piece->stop_mm) light *= 1 - smoothstep(*piece->stop_mm - 8, *piece->stop_mm + 8, middle);
      if (piece->handover_mm)
        toEnd = smoothstep(*piece->handover_mm - 10, *piece->handover_mm + 10, middle);
    }

    // The same mixture under no treatment and under each, then along each one's reach.
    const auto mixed = [&](std::size_t t) {
      Xyz base = isWhite ? palette_->white()[t] : palette_->natural(levelHere, t);
      if (old > 0) base = (1 - old) * base + old * (*wasLightSwatch)[t];
      if (light <= 0) return base;
      Xyz treated = (1 - toEnd) * (*paint.root)[t] + toEnd * (*paint.end)[t];
      // Lightener never darkens hair that is lighter already.
      if (piece->action == plan::Action::Lighten && treated.y < base.y) treated = base;
      return Xyz{base.x + light * (treated.x - base.x), base.y + light * (treated.y - base.y),
                 base.z + light * (treated.z - base.z)};
    };
    Xyz colour = mixed(0);
    for (std::size_t k = 0; k < treatments.size(); ++k) {
      const plan::Treatment& t = treatments[k];
      if (t.zone && *t.zone != root.zone) continue;
      double reach = middle >= 0 ? 1 : 0;
      if (t.kind == plan::Treatment::Kind::RootShadow)
        reach *= 1 - smoothstep(t.to_mm - t.blend_mm / 2, t.to_mm + t.blend_mm / 2 + 1e-6, middle);
      if (reach <= 0) continue;
      const Xyz under = mixed(k + 1);
      colour = (1 - reach) * colour + reach * under;
    }
    const double lightShare =
        piece && piece->action == plan::Action::Lighten ? std::max(light, old) : old * (1 - light);
    out[bin] = {static_cast<float>(colour.x), static_cast<float>(colour.y),
                static_cast<float>(colour.z), static_cast<float>(lightShare)};
  }
}

}  // namespace combdraft::look

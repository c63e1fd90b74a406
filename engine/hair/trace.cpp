// The fall of one lock: along the flow on the head, off it where the surface
// turns level, then hanging; or to the tie and down the tail. Own model; what
// each constant does is in docs/engine-notes.md, "Fall".
#include <algorithm>
#include <cmath>

#include "engine/base/coherent_noise.h"
#include "engine/base/parallel.h"
#include "engine/base/random.h"
#include "engine/hair/layering.h"
#include "engine/hair/locks.h"

namespace combdraft::hair {
namespace {

// Random streams of a lock (each normal uses two).
enum Stream : std::uint32_t {
  kSide = 10, kWander = 11, kLeave = 13, kClear = 15, kInterleave = 17, kLength = 19, kLayer = 21,
  kLoose = 22, kLooseSize = 23, kTailR = 24, kTailA = 25, kWaveSize = 26, kPhase = 27, kLoft = 29,
  kHem = 31, kZoneX = 33, kZoneY = 35, kZoneZ = 37
};

struct BasePoint {
  Vec3 at, outward;
};

struct Shared {
  const FallInput& in;
  CurlShape curl;
  double rise, bodyHeight, interleave, frizz, lean, tailRadius;
};

double normal(const Shared& s, std::size_t i, std::uint32_t stream) {
  return randomNormal(s.in.seed, i, stream);
}
double uniform(const Shared& s, std::size_t i, std::uint32_t stream) {
  return randomUniform(s.in.seed, i, stream);
}

/// The line of one lock as if nothing lay underneath it.
class BaseLine {
 public:
  BaseLine(const Shared& s, std::size_t i)
      : s_(s), i_(i), root_(s.in.roots.roots[i]), tie_(s.in.field.tieOf(root_.at)) {
    const double partSide = s.in.field.partSide(root_.at);
    side_ = uniform(s, i, kSide) < 0.5 * (1 + partSide) ? 1 : -1;
    // Hair leaves the head where the surface turns level; cropped hair follows it on.
    leave_ = 0.02 + 0.05 * std::clamp(normal(s, i, kLeave), -2.0, 2.0) -
             1.1 * std::exp(-grownLength_mm(s.in, i) / 38);
    clear_ = 2.0 + 0.5 * std::abs(normal(s, i, kClear));
    const double strand = s.curl.clump_mm;
    wander_ = s.frizz * coherentNoise(root_.at / (1.6 * strand), s.in.seed ^ 0x51) * 1.6 +
              0.05 * std::clamp(normal(s, i, kWander), -2.5, 2.5) +
              0.5 * s.curl.loft_frac * coherentNoise(root_.at / strand, s.in.seed ^ 0x52);
    at_ = root_.at;
    outward_ = root_.normal;
    dir_ = flow(at_, outward_);
  }

  BasePoint point() const { return {at_, outward_}; }
  bool gathered() const { return tie_.has_value(); }
  bool inTail() const { return phase_ == Phase::Tail; }
  bool hangs() const { return phase_ == Phase::Hanging; }
  /// The hand holds it here: what is beyond is not drawn.
  bool endsHere() const {
    return (inTail() && tie_->held) || (hangs() && s_.in.until == FallInput::Until::ItHangs);
  }

  /// Goes `ds` along the line, in parts short enough for the field's bends.
  void advance(double ds) {
    constexpr double kPart_mm = 3;
    const int parts = std::max(1, static_cast<int>(std::ceil(ds / kPart_mm - 1e-9)));
    for (int i = 0; i < parts; ++i) switch (phase_) {
        case Phase::OnHead: onHead(ds / parts); break;
        case Phase::Hanging: hang(ds / parts); break;
        case Phase::Tail: tail(ds / parts); break;
      }
  }

 private:
  enum class Phase { OnHead, Hanging, Tail };

  Vec3 flow(const Vec3& p, const Vec3& n) const {
    const Vec3 d = s_.in.field.direction(p, n, side_, tie_);
    const double wander = tie_ ? wander_ * 0.4 : wander_;
    return d * std::cos(wander) + n.cross(d) * std::sin(wander);
  }

  void onHead(double ds) {
    if (tie_ && (at_ - tie_->at).norm() < std::max(tie_->held ? 4.0 : 9.0, ds)) {
      phase_ = Phase::Tail;
      enterTail();
      tail(ds);
      return;
    }
    if (!tie_ && outward_.z() < leave_) {
      startHanging();
      hang(ds);
      return;
    }
    // Direction settles over a length, never per step.
    const double follow = 1 - std::pow(0.45, ds / 4);
    dir_ = unitOr(dir_ * (1 - follow) + flow(at_, outward_) * follow, dir_);
    at_ = s_.in.shape.project(at_ + dir_ * ds);
    outward_ = s_.in.shape.normalAt(at_);
    dir_ = unitOr(dir_ - dir_.dot(outward_) * outward_, outward_.unitOrthogonal());
  }

  void startHanging() {
    phase_ = Phase::Hanging;
    overShoulder_ = at_.y() + 20 + 30 * coherentNoise(root_.at / (2 * s_.curl.clump_mm), s_.in.seed ^ 0x53) > 0 ? 1 : -1;
  }

  void hang(double ds) {
    const Vec3 in(-at_.x(), -15 - at_.y(), 0);
    const double behind = smoothstep(20, -60, at_.y());
    const double lean =
        s_.lean * (0.54 + 0.46 * behind) * smoothstep(-190, -120, at_.z());
    // Near the shoulder hair parts to its front or its back, strand by strand.
    const double out = std::abs(at_.x());
    const double over = (0.30 * smoothstep(38, 75, out) + 0.35 * smoothstep(70, 95, out)) *
                        smoothstep(-105, -155, at_.z()) *
                        smoothstep(-235, -190, at_.z());
    Vec3 fall = lean * unitOr(in, Vec3::Zero()) + Vec3(0, over * overShoulder_, -1);
    hung_ += ds;
    const double clear = clear_ * smoothstep(0, 25, hung_);
    BodyGrid::Sample body = s_.in.body.at(at_);
    // Close to the body hair slides along it; on the shoulder to its front or
    // back, hardly outward.
    const double close = smoothstep(clear + 6, clear, body.distance_mm);
    const double sideways = at_.z() < -150 ? 1 - 0.85 * close : 1;
    fall -= close * std::min(0.0, fall.dot(body.outward)) * body.outward;
    fall.x() *= sideways;
    if (at_.z() < -150) fall.y() += 0.25 * close * overShoulder_;
    fall = unitOr(fall, -Vec3::UnitZ());
    const double follow = 1 - std::pow(0.6, ds / 4);
    dir_ = unitOr(dir_ * (1 - follow) + fall * follow, fall);
    const Vec3 before = at_;
    at_ += dir_ * ds;
    body = s_.in.body.at(at_);
    if (body.distance_mm < clear) {
      Vec3 push = body.outward;
      push.x() *= sideways;
      push = unitOr(push, body.outward);
      at_ += push * ((clear - body.distance_mm) / std::max(0.35, push.dot(body.outward)));
      const double bent = 1 - std::pow(0.5, ds / 4);
      dir_ = unitOr(dir_ * (1 - bent) + bent * unitOr(at_ - before, dir_), dir_);
      body = s_.in.body.at(at_);
    }
    // Layers build up level, away from the head's axis: the body under jaw and
    // ear is too uneven to tell. On the shoulder they build up off it.
    const head::HeadAxes& axes = s_.in.shape.axes();
    Vec3 level(at_.x() / (axes.a_mm * axes.a_mm), (at_.y() + 8) / (axes.b_mm * axes.b_mm), 0);
    level = unitOr(level, outward_);
    if (at_.z() < -140 && std::abs(at_.x()) > 50 && body.distance_mm < 25) level.z() += std::max(0.0, body.outward.z()) * 0.8;
    const double turn = 1 - std::pow(0.8, ds / 4);
    outward_ = unitOr(outward_ * (1 - turn) + level.normalized() * turn, outward_);
  }

  void enterTail() {
    const double r = std::sqrt(uniform(s_, i_, kTailR)), a = 2 * kPi * uniform(s_, i_, kTailA);
    offset_ = Vec2(r * std::cos(a), r * std::sin(a));
    from_ = at_;
    tailAt_ = tie_->at + tie_->outward * 2;
    tailDir_ = tie_->outward;
  }

  void tail(double ds) {
    const double bend = std::exp(-along_ / 14);
    tailDir_ = unitOr(tie_->outward * bend - Vec3::UnitZ() * (1 - bend), -Vec3::UnitZ());
    tailAt_ += tailDir_ * ds;
    const BodyGrid::Sample body = s_.in.body.at(tailAt_);
    const double radius = s_.tailRadius * (0.45 + 0.55 * smoothstep(0, 70, along_));
    if (body.distance_mm < radius + 2)
      tailAt_ += Vec3(0, -1, 0) * (radius + 2 - body.distance_mm);
    along_ += ds;
    const Vec3 e1 = Vec3::UnitX(), e2 = tailDir_.cross(e1);
    const Vec3 there = tailAt_ + radius * (offset_.x() * e1 + offset_.y() * e2);
    const double joined = smoothstep(0, 22, along_);
    const Vec3 before = at_;
    at_ = (from_ + tailDir_ * along_) * (1 - joined) + there * joined;
    dir_ = unitOr(at_ - before, tailDir_);
    outward_ = unitOr(offset_.x() * e1 + offset_.y() * e2, tie_->outward);
  }

  const Shared& s_;
  std::size_t i_;
  const Root& root_;
  std::optional<FlowField::Tie> tie_;
  double overShoulder_ = 1, side_ = 1, leave_ = 0, clear_ = 2, wander_ = 0, hung_ = 0, along_ = 0;
  Phase phase_ = Phase::OnHead;
  Vec3 at_, outward_, dir_, from_, tailAt_, tailDir_;
  Vec2 offset_;
};

/// Height over the base line after `s` mm of carrier.
double heightAt(const Shared& s, const PassingHair& passing, std::size_t i, const BaseLine& line,
                double along, double lofted) {
  const double start = 1.2 * (1 - std::exp(-along / 6));
  if (line.inTail()) return 0;
  const double mixed = s.interleave * std::clamp(normal(s, i, kInterleave), -2.5, 2.5) *
                       smoothstep(0, 60, along);
  if (line.gathered()) {
    // Combed flat: only a shallow layer, in the same order.
    return std::max(0.3, start + std::min(0.05 * along, 8.0) + 0.35 * mixed);
  }
  const double raw = passing.beneath(line.point().at, along) * s.rise;
  const double settled = s.bodyHeight * (1 - std::exp(-raw / s.bodyHeight));
  double loose = 0;
  if (uniform(s, i, kLoose) < 0.03)
    loose = 7 * uniform(s, i, kLooseSize) * smoothstep(10, 90, along);
  return std::max(0.3, start + settled * (1 - s.curl.loft_frac) + lofted + mixed + loose);
}

}  // namespace

double grownLength_mm(const FallInput& in, std::size_t i) {
  const Root& root = in.roots.roots[i];
  // Zones meet over about a centimetre, not on a line.
  const Vec3 near = root.at + 7.0 * Vec3(randomNormal(in.seed, i, kZoneX),
                                         randomNormal(in.seed, i, kZoneY),
                                         randomNormal(in.seed, i, kZoneZ));
  const double zone =
      in.hair.length_mm[static_cast<std::size_t>(zoneAt(in.shape, in.shape.project(near)))];
  const double uneven = 0.035 * std::abs(randomNormal(in.seed, i, kLength));
  const double u = randomUniform(in.seed, i, kLayer);
  const double layered = in.hair.layering_frac * 0.45 * u * u;
  return std::min(zone * std::max(0.2, 1 - uneven - layered), kLongestHair_mm);
}

Locks traceLocks(const FallInput& in, std::stop_token stop) {
  Locks locks;
  locks.curl = curlShape(in.hair.curl, in.assumptions["fall.waveScale"]);
  locks.stretch = 1 / locks.curl.shrinkage();
  locks.step_mm = in.step_mm;
  locks.hairsPerLock = in.roots.hairsPerLock;
  locks.fibre_mm = in.hair.fibre_um / 1000;
  locks.spacing_mm = in.roots.spacing_mm();

  const double defaultDensity = 2.26;  // hairs per mm2 that fall.rise is stated for
  const double fibre = locks.fibre_mm * locks.fibre_mm / (0.0721 * 0.0721);
  const double hairs = in.roots.totalHairs();
  Shared s{in,
           locks.curl,
           in.assumptions["fall.rise"] / defaultDensity * fibre * locks.curl.volume,
           in.assumptions["fall.bodyHeight_mm"] * (0.55 + 0.45 * locks.curl.volume),
           in.assumptions["fall.interleave_mm"] * locks.curl.interleave,
           in.assumptions["fall.frizz_rad"],
           in.assumptions["fall.lean"],
           in.assumptions["fall.tail_mm"] * std::sqrt(hairs / 124000 * fibre)};

  const std::size_t n = in.roots.roots.size();
  const double step = in.step_mm;

  // First the traffic: a fixed sample of locks walks the bare surface.
  PassingHair passing;
  {
    const std::size_t sample = std::min(n, std::clamp<std::size_t>(n / 5, 2500, 6000));
    constexpr double kStride_mm = 6;
    std::vector<std::vector<std::pair<Vec3, double>>> walks(sample);
    parallelFor((sample + 63) / 64, [&](std::size_t chunk) {
      if (stop.stop_requested()) return;
      for (std::size_t k = chunk * 64; k < std::min(sample, chunk * 64 + 64); ++k) {
        const double length = std::min(grownLength_mm(in, k) / locks.stretch, in.reach_mm);
        BaseLine line(s, k);
        for (double along = 0; along < length && !line.inTail() && !line.endsHere(); along += kStride_mm) {
          walks[k].emplace_back(line.point().at, along);
          line.advance(kStride_mm);
        }
      }
    });
    const double each = hairs / static_cast<double>(sample);
    for (const auto& walk : walks)
      for (const auto& [at, along] : walk) passing.add(at, along, kStride_mm, each);
    passing.finish();
  }

  constexpr std::size_t kChunk = 256;
  const std::size_t chunks = (n + kChunk - 1) / kChunk;
  std::vector<std::vector<Point3f>> chunkPoints(chunks);
  std::vector<std::uint32_t> counts(n);
  locks.length_mm.resize(n);
  locks.wave.resize(n);
  const double cut = in.hair.cutLine_mm ? -*in.hair.cutLine_mm : -1e9;

  parallelFor(chunks, [&](std::size_t chunk) {
    if (stop.stop_requested()) return;
    std::vector<Point3f>& out = chunkPoints[chunk];
    for (std::size_t i = chunk * kChunk; i < std::min(n, (chunk + 1) * kChunk); ++i) {
      const Root& root = in.roots.roots[i];
      const double grown = grownLength_mm(in, i) / locks.stretch;
      const double length = root.at.z() < in.lowestRoot_mm ? 0 : std::min(grown, in.reach_mm);
      const Vec3 strand = root.at / locks.curl.clump_mm;
      locks.wave[i].phase_rad = static_cast<float>(
          6 * coherentNoise(strand * 0.45, in.seed ^ 0x61) +
          (locks.curl.radius_mm < 2 ? 2.5 : 0.35) * normal(s, i, kPhase));  // straight hair has no common wave
      locks.wave[i].roll_rad =
          static_cast<float>(kPi * coherentNoise(strand * 0.45, in.seed ^ 0x62));
      locks.wave[i].size = static_cast<float>(0.7 + 0.6 * uniform(s, i, kWaveSize));

      // Short hair stands off the scalp; so does tightly curled hair.
      const double shortLoft = 0.55 * std::exp(-grown / 28);
      const double hem = cut + 2.5 * std::abs(normal(s, i, kHem)) +
                         in.hair.layering_frac * 60 * std::pow(uniform(s, i, kLayer), 2);
      BaseLine line(s, i);
      double along = 0, lofted = 0, risen = 0;
      const std::size_t firstPoint = out.size();
      Vec3 at = root.at;
      out.push_back(toPoint3f(at));
      while (along < length - 1e-9) {
        const double ds = std::min(step, length - along);
        const double far = along + ds / 2;
        const double lofts = std::min(
            0.95, (s.curl.loft_frac * (0.8 + 0.4 * uniform(s, i, kLoft)) *
                       std::exp(-far / (60 + 2500 * s.curl.loft_frac * s.curl.loft_frac)) +
                   shortLoft * std::exp(-far / 30)) *
                      (line.gathered() ? 0.1 : 1.0));
        const double height = (at - line.point().at).norm();
        const double forward = std::sqrt(1 - lofts * lofts);
        lofted += ds * lofts;
        along += ds;
        line.advance(ds * forward / (1 + height / 85));
        if (line.endsHere()) break;
        const BasePoint base = line.point();
        // A layer is climbed onto, never jumped.
        constexpr double kSteepest = 0.22, kEase_mm = 10;
        const double wanted = heightAt(s, passing, i, line, along, lofted);
        const double free = lofts * ds + 0.3;
        const double eased = (wanted - risen) * (1 - std::exp(-ds / kEase_mm));
        risen += std::clamp(eased, -kSteepest * ds, kSteepest * ds) +
                 std::clamp(wanted - risen - eased, 0.0, free) * (line.gathered() ? 1 : s.curl.loft_frac);
        Vec3 next = base.at + base.outward * risen;
        // Keep the carrier's own length: heights change slowly.
        const Vec3 move = next - at;
        const double moved = move.norm();
        if (moved > 1e-9) next = at + move * (ds / std::max(moved, ds * 0.5));
        if (next.z() < hem) {
          const double t = std::clamp((at.z() - hem) / std::max(at.z() - next.z(), 1e-9), 0.0, 1.0);
          along -= ds * (1 - t);
          next = at + (next - at) * t;
          if (ds * t > 1e-3 || out.size() == firstPoint + 1) out.push_back(toPoint3f(next));
          break;
        }
        at = next;
        out.push_back(toPoint3f(at));
      }
      counts[i] = static_cast<std::uint32_t>(out.size() - firstPoint);
      locks.length_mm[i] = static_cast<float>(along);
    }
  });
  if (stop.stop_requested()) return {};

  locks.first.resize(n + 1, 0);
  for (std::size_t i = 0; i < n; ++i) locks.first[i + 1] = locks.first[i] + counts[i];
  locks.points.reserve(locks.first[n]);
  for (auto& points : chunkPoints) {
    locks.points.insert(locks.points.end(), points.begin(), points.end());
    std::vector<Point3f>().swap(points);
  }
  return locks;
}

}  // namespace combdraft::hair

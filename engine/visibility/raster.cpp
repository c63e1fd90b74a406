#include "engine/visibility/raster.h"

#include <algorithm>
#include <cmath>

#include "engine/base/expect.h"
#include "engine/base/parallel.h"
#include "engine/base/random.h"

namespace combdraft::visibility {
namespace {

constexpr double kStopWhenLeft = 0.02;   // 98 % covered
constexpr double kBehindBody_mm = 1.6;   // the body's lattice is that good
constexpr std::uint32_t kOffsetStream = 60, kTiltStream = 80, kQuantileStream = 200;

struct Fragment {
  float depth, tau;
  std::uint32_t lockBin;
  std::uint16_t pixel;
  std::uint8_t shade, spare;
};
static_assert(sizeof(Fragment) == 16);

/// Where carrier points lie in the raster: pixels right, pixels down, mm toward the viewer.
struct ToRaster {
  const RasterSpec& spec;
  Vec3 origin, u, v;  ///< u, v in pixels per mm

  explicit ToRaster(const RasterSpec& s)
      : spec(s),
        origin(s.view.place({s.frame.left_mm, s.frame.top_mm, 0})),
        u(s.view.right() / s.pixel_mm),
        v(s.view.down() / s.pixel_mm) {}
  Vec3 vector(const Vec3& d) const { return {d.dot(u), d.dot(v), d.dot(spec.view.toward())}; }
  Vec3 point(const Vec3& p) const { return vector(p - origin); }
};

/// Expands one lock's carrier into the lines that are drawn for it.
class LockLines {
 public:
  LockLines(const hair::Locks& locks, const RasterSpec& spec, std::uint64_t seed)
      : locks_(locks), raster_(spec), seed_(seed) {
    lines_ = std::clamp(
        static_cast<int>(std::lround(locks.spacing_mm / (1.2 * std::max(spec.pixel_mm, 0.3)))), 1,
        kMostLines);
    const double finest = std::max(0.5, locks.curl.turn_mm / 12);
    parts_ = locks.curl.radius_mm < 2
                 ? 1
                 : std::max(1, static_cast<int>(std::ceil(locks.step_mm / finest)));
  }
  int lines() const { return lines_; }
  double reach_mm() const { return locks_.curl.radius_mm * 1.5 + locks_.spacing_mm; }
  const ToRaster& raster() const { return raster_; }

  /// Calls draw(from, to, place, tangent, stretchedArcAtMiddle), `from` and `to` in raster
  /// coordinates, for each short straight piece whose carrier reaches rows [top, bottom)
  /// and is not `hidden`. `placed`: the lock's carrier points in the raster.
  template <class Hidden, class Draw>
  void expand(std::size_t i, const Point3f* placed, float top, float bottom, Hidden hidden,
              Draw draw) const {
    const std::uint32_t first = locks_.first[i], count = locks_.first[i + 1] - first;
    if (count < 2) return;
    const auto margin = static_cast<float>(reach_mm() / raster_.spec.pixel_mm + 1);
    const hair::LockWave& wave = locks_.wave[i];
    const auto point = [&](std::uint32_t k) { return toVec3(locks_.points[first + k]); };
    const double turn = 2 * kPi / locks_.curl.turn_mm;
    double offset1[kMostLines], offset2[kMostLines];
    bool ready = false;
    Vec3 reference;
    Vec3 before[kMostLines];
    std::uint32_t next = 0;  // the carrier segment that `before` leads to
    for (std::uint32_t k = 0; k + 1 < count; ++k) {
      const Point3f &q0 = placed[k], &q1 = placed[k + 1];
      if (std::max(q0.y, q1.y) + margin < top || std::min(q0.y, q1.y) - margin >= bottom) continue;
      if (hidden(q0, q1)) continue;
      if (!ready) {
        ready = true;
        // Square to the first direction and to the fall: never along the hair.
        reference = unitOr((point(1) - point(0)).cross(Vec3::UnitZ()), Vec3::UnitX());
        for (int line = 0; line < lines_; ++line) {
          const auto stream = kOffsetStream + 2 * static_cast<std::uint32_t>(line);
          const double r = 0.62 * locks_.spacing_mm * std::sqrt(randomUniform(seed_, i, stream));
          const double a = 2 * kPi * randomUniform(seed_, i, stream + 1);
          offset1[line] = r * std::cos(a);
          offset2[line] = r * std::sin(a);
        }
      }
      const Vec3 p0 = point(k), p1 = point(k + 1);
      const Vec3 along = unitOr(p1 - p0, -Vec3::UnitZ());
      const Vec3 e1 = unitOr(reference - reference.dot(along) * along, along.unitOrthogonal());
      const Vec3 e2 = along.cross(e1);
      // The glint follows the lock's run over some millimetres, not each short piece.
      const Vec3 run = unitOr(point(std::min(k + 3, count - 1)) - point(k > 2 ? k - 2 : 0), along);
      const Vec3 from3 = toVec3(q0), step3 = toVec3(q1) - from3;
      const Vec3 r1 = raster_.vector(e1), r2 = raster_.vector(e2);
      const double from = k * locks_.step_mm;
      const double to = std::min((k + 1) * locks_.step_mm, static_cast<double>(locks_.length_mm[i]));
      const double onHead =
          locks_.curl.coil_frac < 0.5 ? 1 - 0.5 * smoothstep(-30, 30, p0.z()) : 1;
      for (int part = next == k && k > 0 ? 1 : 0; part <= parts_; ++part) {
        const double t = static_cast<double>(part) / parts_;
        const double s = from + t * (to - from);
        const double grown = locks_.curl.coil_frac < 0.5 ? smoothstep(20, 140, s * locks_.stretch)
                                                         : smoothstep(0, 30, s * locks_.stretch);
        const double radius = locks_.curl.radius_mm * wave.size * grown * onHead;
        Vec3 centre = from3 + t * step3;
        if (radius > 0.05) {
          const double phase = turn * s + wave.phase_rad;
          const double c = std::cos(phase), w = locks_.curl.coil_frac * std::sin(phase);
          const double cr = std::cos(wave.roll_rad), sr = std::sin(wave.roll_rad);
          centre += radius * ((c * cr - w * sr) * r1 + (c * sr + w * cr) * r2);
        }
        const double spread = 1 - 0.45 * smoothstep(0, 120, s);
        const double middle = (from + (t - 0.5 / parts_) * (to - from)) * locks_.stretch;
        for (int line = 0; line < lines_; ++line) {
          const Vec3 here = centre + (spread * offset1[line]) * r1 + (spread * offset2[line]) * r2;
          if (part > 0) draw(before[line], here, p0, run, std::max(middle, 0.0));
          before[line] = here;
        }
      }
      next = k + 1;
    }
  }

 private:
  static constexpr int kMostLines = 6;
  const hair::Locks& locks_;
  ToRaster raster_;
  std::uint64_t seed_;
  int lines_, parts_;
};

/// How deep into the hair anything can still be seen, on a coarse lattice:
/// nothing farther from the viewer than `cutoff` need be drawn. Counts optical
/// depth along the carriers; generous enough that a pixel's own chance gaps and
/// the next tiles' stay open (kEnough against the 4 at which drawing stops).
class Depths {
 public:
  Depths(const hair::Locks& locks, const std::vector<Point3f>& placed, const RasterSpec& spec,
         const BodyDepth& body, double reach_mm)
      : tile_(std::max(1.0, std::round(kTile_mm / spec.pixel_mm))),
        columns_(static_cast<int>(spec.width() / tile_) + 1),
        rows_(static_cast<int>(spec.height() / tile_) + 1),
        reach_(static_cast<float>(reach_mm)) {
    const std::size_t tiles = static_cast<std::size_t>(columns_) * rows_;
    // Fixed chunks, added up in order: the same bits for any number of threads.
    constexpr std::size_t kChunks = 2;
    std::vector<std::vector<float>> sums(kChunks, std::vector<float>(tiles * kBins, 0.0f));
    const double area = tile_ * tile_ * spec.pixel_mm * spec.pixel_mm;
    const double perLength = locks.hairsPerLock * locks.fibre_mm * spec.pixel_mm / area;
    const std::size_t n = locks.size(), each = (n + kChunks - 1) / kChunks;
    parallelFor(kChunks, [&](std::size_t chunk) {
      for (std::size_t i = chunk * each; i < std::min(n, (chunk + 1) * each); ++i)
        for (std::uint32_t k = locks.first[i]; k + 1 < locks.first[i + 1]; ++k) {
          const Point3f &a = placed[k], &b = placed[k + 1];
          const int tile = tileAt((a.x + b.x) / 2, (a.y + b.y) / 2);
          if (tile < 0) continue;
          const int bin = static_cast<int>((kNearest_mm - (a.z + b.z) / 2) / kBin_mm_);
          if (bin < 0 || bin >= kBins) continue;
          const double length = std::hypot(b.x - a.x, b.y - a.y);
          sums[chunk][static_cast<std::size_t>(tile) * kBins + static_cast<std::size_t>(bin)] +=
              static_cast<float>(perLength * length);
        }
    });
    std::vector<float> own(tiles, -1e9f);
    for (std::size_t t = 0; t < tiles; ++t) {
      float sum = 0;
      for (std::size_t b = 0; b < kBins; ++b) {
        for (std::size_t c = 0; c < kChunks; ++c) sum += sums[c][t * kBins + b];
        if (sum >= kEnough) {
          own[t] = static_cast<float>(kNearest_mm - (static_cast<double>(b) + 1) * kBin_mm_) - kMargin_mm;
          break;
        }
      }
      // What lies behind the body everywhere in the tile is hidden too.
      float solid = 1e9f;
      const int x0 = static_cast<int>(static_cast<int>(t) % columns_ * tile_), y0 = static_cast<int>(static_cast<int>(t) / columns_ * tile_);
      for (int j = 0; j <= 2; ++j)
        for (int i = 0; i <= 2; ++i)
          solid = std::min(solid, body.at((x0 + i * tile_ / 2) * spec.pixel_mm, (y0 + j * tile_ / 2) * spec.pixel_mm));
      if (solid > BodyDepth::kNone) own[t] = std::max(own[t], solid - kMargin_mm);
    }
    cutoff_.assign(tiles, -1e9f);
    for (int y = 0; y < rows_; ++y)
      for (int x = 0; x < columns_; ++x) {
        float deepest = 1e9f;
        for (int j = std::max(0, y - 1); j <= std::min(rows_ - 1, y + 1); ++j)
          for (int i = std::max(0, x - 1); i <= std::min(columns_ - 1, x + 1); ++i)
            deepest = std::min(deepest, own[static_cast<std::size_t>(j) * columns_ + i]);
        cutoff_[static_cast<std::size_t>(y) * columns_ + x] = deepest;
      }
  }

  bool hides(const Point3f& a, const Point3f& b) const {
    const int ta = tileAt(a.x, a.y), tb = tileAt(b.x, b.y);
    if (ta < 0 || tb < 0) return false;
    return std::max(a.z, b.z) + reach_ <
           std::min(cutoff_[static_cast<std::size_t>(ta)], cutoff_[static_cast<std::size_t>(tb)]);
  }

 private:
  static constexpr double kTile_mm = 2.5, kBin_mm_ = 4, kNearest_mm = 250;
  static constexpr int kBins = 120;
  static constexpr float kEnough = 9, kMargin_mm = 3;

  int tileAt(float x, float y) const {
    const int i = static_cast<int>(std::floor(x / tile_)), j = static_cast<int>(std::floor(y / tile_));
    return i < 0 || j < 0 || i >= columns_ || j >= rows_ ? -1 : j * columns_ + i;
  }
  double tile_;
  int columns_, rows_;
  float reach_;
  std::vector<float> cutoff_;
};

/// For the eye only: how a hair at `place`, running along `tangent`, catches the light.
/// The mass of hair is round: what turns away from the light is darker. `tilt`: how far
/// this lock's own glint is off its neighbours', so that hair glitters strand by strand
/// and not as one sheet.
std::uint8_t shadeOf(const Vec3& place, const Vec3& tangent, const Vec3& toward, double tilt) {
  const Vec3 light = unitOr(toward + Vec3(0.25, 0.2, 0.95), Vec3::UnitZ());
  const Vec3 half = unitOr(light + toward, toward);
  const Vec3 out(place.x(), place.y(), std::max(0.0, place.z()));
  const Vec3 normal = unitOr(out - out.dot(tangent) * tangent, toward);
  const double tl = tangent.dot(light), th = tangent.dot(half) + tilt;
  const double diffuse = std::sqrt(std::max(0.0, 1 - tl * tl));
  const double turned = smoothstep(-0.15, 0.95, normal.dot(unitOr(toward + 0.35 * Vec3::UnitZ(), toward)));
  const double flat = std::max(0.0, 1 - th * th), f2 = flat * flat, f4 = f2 * f2, f8 = f4 * f4;
  const double glint = f8 * f8;              // the 16th power
  const double sharp = glint * glint * f8 * f8;  // the 48th
  const double shade = (0.5 + 0.5 * turned) * (0.30 + 0.34 * diffuse) + turned * (0.55 * glint + 0.9 * sharp);
  return static_cast<std::uint8_t>(std::clamp(kShadeOfOne * shade, 0.0, 255.0));
}

}  // namespace

ViewSamples rasterise(const hair::Locks& locks, const RasterSpec& spec, const BodyDepth& body,
                      Shading shading, std::uint64_t seed, std::stop_token stop) {
  ViewSamples out{spec, spec.width(), spec.height(), {}, {}, {}, {}, {}, {}};
  const int width = out.width, height = out.height;
  COMBDRAFT_EXPECT(width > 0 && width <= 8000 && height > 0, width, height);  // 16-bit band pixels
  const auto pixels = static_cast<std::size_t>(width) * height;
  out.sample.assign(pixels * kSamples, LockBin{});
  out.depth_mm.assign(pixels * kSamples, 0);
  if (shading == Shading::ForTheEye) {
    out.shade.assign(pixels * kSamples, kShadeOfOne);
    out.bareSkin.assign(pixels, 0);
  }
  out.hairCover.assign(pixels, 0);
  out.scalpCover.assign(pixels, 0);

  const LockLines lines(locks, spec, seed);
  // Which locks reach which band of rows.
  const int bandRows = std::clamp(65536 / width / 2, 4, 24);
  const int bands = (height + bandRows - 1) / bandRows;
  const ToRaster& raster = lines.raster();
  std::vector<Point3f> placed(locks.points.size());
  std::vector<std::pair<float, float>> reach(locks.size());
  const double margin = lines.reach_mm() / spec.pixel_mm + 1;
  parallelFor((locks.size() + 1023) / 1024, [&](std::size_t chunk) {
    for (std::size_t i = chunk * 1024; i < std::min(locks.size(), chunk * 1024 + 1024); ++i) {
      double lo = 1e9, hi = -1e9, left = 1e9, right = -1e9;
      for (std::uint32_t k = locks.first[i]; k < locks.first[i + 1]; ++k) {
        const Vec3 p = raster.point(toVec3(locks.points[k]));
        placed[k] = toPoint3f(p);
        lo = std::min(lo, p.y()), hi = std::max(hi, p.y());
        left = std::min(left, p.x()), right = std::max(right, p.x());
      }
      if (right < -margin || left > width + margin) lo = 1e9, hi = -1e9;
      reach[i] = {static_cast<float>(lo - margin), static_cast<float>(hi + margin)};
    }
  });
  const Depths depths(locks, placed, spec, body, lines.reach_mm());
  std::vector<std::uint32_t> bandFirst(static_cast<std::size_t>(bands) + 1, 0), bandLocks;
  const auto bandsOf = [&](std::size_t i) {
    const int lo = std::max(0, static_cast<int>(std::floor(reach[i].first / static_cast<float>(bandRows))));
    const int hi = std::min(bands - 1, static_cast<int>(std::floor(reach[i].second / static_cast<float>(bandRows))));
    return std::pair{lo, hi};
  };
  for (std::size_t i = 0; i < locks.size(); ++i)
    if (reach[i].first <= reach[i].second)
      for (auto [b, hi] = bandsOf(i); b <= hi; ++b) ++bandFirst[static_cast<std::size_t>(b) + 1];
  for (std::size_t b = 1; b < bandFirst.size(); ++b) bandFirst[b] += bandFirst[b - 1];
  bandLocks.resize(bandFirst.back());
  {
    std::vector<std::uint32_t> next(bandFirst.begin(), bandFirst.end() - 1);
    for (std::size_t i = 0; i < locks.size(); ++i)
      if (reach[i].first <= reach[i].second)
        for (auto [b, hi] = bandsOf(i); b <= hi; ++b)
          bandLocks[next[static_cast<std::size_t>(b)]++] = static_cast<std::uint32_t>(i);
  }

  const double tauScale = locks.hairsPerLock / lines.lines() * locks.fibre_mm /
                          (spec.pixel_mm * spec.pixel_mm) * spec.pixel_mm;

  parallelFor(static_cast<std::size_t>(bands), [&](std::size_t band) {
    if (stop.stop_requested()) return;
    const int top = static_cast<int>(band) * bandRows, bottom = std::min(height, top + bandRows);
    const int bandPixels = (bottom - top) * width;
    thread_local std::vector<Fragment> fragments, sorted;  // kept for the next band
    fragments.clear();
    std::vector<std::uint32_t> count(static_cast<std::size_t>(bandPixels) + 1, 0);
    std::vector<float> hidden(static_cast<std::size_t>(bandPixels));
    for (int y = top; y < bottom; ++y)
      for (int x = 0; x < width; ++x)
        hidden[static_cast<std::size_t>(y - top) * width + x] =
            body.at((x + 0.5) * spec.pixel_mm, (y + 0.5) * spec.pixel_mm) -
            static_cast<float>(kBehindBody_mm);

    for (std::uint32_t at = bandFirst[band]; at < bandFirst[band + 1]; ++at) {
      const std::uint32_t lock = bandLocks[at];
      const double tilt = 0.5 * (randomUniform(seed, lock, kTiltStream) - 0.5);
      lines.expand(lock, placed.data() + locks.first[lock], static_cast<float>(top), static_cast<float>(bottom),
                   [&](const Point3f& a, const Point3f& b) { return depths.hides(a, b); },
                   [&](const Vec3& a, const Vec3& b, const Vec3& place, const Vec3& tangent, double arc) {
        if ((a.y() < top && b.y() < top) || (a.y() >= bottom && b.y() >= bottom)) return;
        if ((a.x() < 0 && b.x() < 0) || (a.x() >= width && b.x() >= width)) return;
        const double dx = b.x() - a.x(), dy = b.y() - a.y();
        const double length = std::sqrt(dx * dx + dy * dy);  // projected, in pixels
        if (length < 1e-9) return;
        // Clip to the band's rows and the raster's columns.
        double t0 = 0, t1 = 1;
        const auto clip = [&](double p, double d, double lo, double hi) {
          if (std::abs(d) < 1e-12) {
            if (p < lo || p >= hi) t1 = -1;
            return;
          }
          double ta = (lo - p) / d, tb = (hi - p) / d;
          if (ta > tb) std::swap(ta, tb);
          t0 = std::max(t0, ta), t1 = std::min(t1, tb);
        };
        clip(a.y(), dy, top, bottom);
        clip(a.x(), dx, 0, width);
        if (t1 <= t0) return;
        const auto bin = static_cast<std::uint32_t>(std::min(arc / kBin_mm, 255.0));
        const std::uint32_t bits = LockBin::of(lock, bin).bits;
        const std::uint8_t shade =
            shading == Shading::ForTheEye ? shadeOf(place, tangent, spec.view.toward(), tilt) : kShadeOfOne;
        // Walk the pixels; each gets the exact length inside it.
        double t = t0;
        int x = std::clamp(static_cast<int>(std::floor(a.x() + dx * (t0 + 1e-9))), 0, width - 1);
        int y = std::clamp(static_cast<int>(std::floor(a.y() + dy * (t0 + 1e-9))), top, bottom - 1);
        const int stepX = dx > 0 ? 1 : -1, stepY = dy > 0 ? 1 : -1;
        const double perX = std::abs(dx) > 1e-12 ? 1 / std::abs(dx) : 1e30;
        const double perY = std::abs(dy) > 1e-12 ? 1 / std::abs(dy) : 1e30;
        double nextX = std::abs(dx) > 1e-12 ? ((dx > 0 ? x + 1 : x) - a.x()) / dx : 1e30;
        double nextY = std::abs(dy) > 1e-12 ? ((dy > 0 ? y + 1 : y) - a.y()) / dy : 1e30;
        while (t < t1) {
          const double end = std::min({nextX, nextY, t1});
          const double inside = (end - t) * length;
          if (inside > 1e-6) {
            const auto pixel = static_cast<std::size_t>(y - top) * width + x;
            const auto depth = static_cast<float>(a.z() + (b.z() - a.z()) * (t + end) / 2);
            if (depth > hidden[pixel]) {
              fragments.push_back({depth, static_cast<float>(tauScale * inside), bits,
                                   static_cast<std::uint16_t>(pixel), shade, 0});
              ++count[pixel + 1];
            }
          }
          t = end;
          if (nextX <= nextY) {
            x += stepX, nextX += perX;
            if (x < 0 || x >= width) break;
          } else {
            y += stepY, nextY += perY;
            if (y < top || y >= bottom) break;
          }
        }
      });
    }

    for (std::size_t k = 1; k < count.size(); ++k) count[k] += count[k - 1];
    sorted.resize(fragments.size());
    {
      std::vector<std::uint32_t> next(count.begin(), count.end() - 1);
      for (const Fragment& f : fragments) sorted[next[f.pixel]++] = f;
    }
    std::vector<double> reached;
    for (int p = 0; p < bandPixels; ++p) {
      Fragment* const begin = sorted.data() + count[static_cast<std::size_t>(p)];
      Fragment* const end = sorted.data() + count[static_cast<std::size_t>(p) + 1];
      const std::size_t pixel = static_cast<std::size_t>(top) * width + p;
      const int px = static_cast<int>(pixel % static_cast<std::size_t>(width));
      const int py = static_cast<int>(pixel / static_cast<std::size_t>(width));
      const auto scalp = [&] {
        const int bx = std::min(body.width - 1, static_cast<int>((px + 0.5) * spec.pixel_mm / body.pixel_mm));
        const int by = std::min(body.height - 1, static_cast<int>((py + 0.5) * spec.pixel_mm / body.pixel_mm));
        return body.isScalp[static_cast<std::size_t>(by) * body.width + bx] != 0;
      }();
      if (!out.bareSkin.empty()) out.bareSkin[pixel] = !scalp && hidden[static_cast<std::size_t>(p)] != BodyDepth::kNone;
      double through = 1;
      if (begin != end) {
        std::sort(begin, end, [](const Fragment& a, const Fragment& b) {
          if (a.depth != b.depth) return a.depth > b.depth;
          if (a.lockBin != b.lockBin) return a.lockBin < b.lockBin;
          return a.tau < b.tau;
        });
        reached.clear();
        const Fragment* last = begin;
        for (; last != end && through > kStopWhenLeft; ++last) {
          through *= std::exp(-static_cast<double>(last->tau));
          reached.push_back(1 - through);
        }
        const double cover = 1 - through;
        out.hairCover[pixel] = static_cast<float>(cover);
        std::size_t k = 0;
        for (int q = 0; q < kSamples; ++q) {
          const double u = randomUniform(seed, pixel, kQuantileStream + static_cast<std::uint32_t>(q));
          const double target = (q + u) / kSamples * cover;
          while (k + 1 < reached.size() && reached[k] < target) ++k;
          const std::size_t slot = pixel * kSamples + static_cast<std::size_t>(q);
          out.sample[slot] = LockBin{begin[k].lockBin};
          out.depth_mm[slot] = begin[k].depth;
          if (shading == Shading::ForTheEye) {
            const double behind = begin->depth - begin[k].depth;
            out.shade[slot] = static_cast<std::uint8_t>(begin[k].shade * (0.45 + 0.55 * std::exp(-behind / 11)));
          }
        }
      }
      if (scalp) out.scalpCover[pixel] = static_cast<float>(through);
    }
  });
  if (stop.stop_requested()) return {spec, 0, 0, {}, {}, {}, {}, {}, {}};
  return out;
}

}  // namespace combdraft::visibility

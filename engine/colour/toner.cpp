#include "engine/colour/toner.h"

#include <algorithm>
#include <cmath>

#include "engine/base/vec.h"
#include "engine/colour/fibre.h"
#include "engine/colour/light.h"

namespace combdraft::colour {
namespace {

// [own] Bands of the dyes. Dyes in water peak near: yellow 425 nm, reds 504 to
// 507, violets 545 to 590, blue 630; a band's width is chosen for broad overlap.
struct Band {
  double peak_nm, width_nm;
};
constexpr std::array<Band, kDyes> kBands{{{435, 45}, {507, 38}, {555, 42}, {615, 45}}};

std::array<Spectrum, kDyes> buildDyes() {
  std::array<Spectrum, kDyes> dyes;
  for (std::size_t d = 0; d < kDyes; ++d)
    for (std::size_t i = 0; i < kSamples; ++i) {
      const double t = (wavelength_nm(i) - kBands[d].peak_nm) / kBands[d].width_nm;
      dyes[d][i] = std::exp(-t * t / 2);
    }
  return dyes;
}
const std::array<Spectrum, kDyes>& dyes() {
  static const auto kDyeSpectra = buildDyes();
  return kDyeSpectra;
}

Vec3 asVec(const Lab& lab) { return {lab.L, lab.a, lab.b}; }

/// CIELAB of dyed hair, and how it moves with each amount (columns).
struct Trial {
  Vec3 lab;
  Eigen::Matrix3d slope;
};
Trial tryAmounts(const Spectrum& sigma, const DyeBox& box, const Vec3& amounts,
                 const Xyz& white) {
  const Spectrum& p = dyes()[static_cast<std::size_t>(box[0])];
  const Spectrum& q = dyes()[static_cast<std::size_t>(box[1])];
  const Spectrum& r = dyes()[static_cast<std::size_t>(box[2])];
  Spectrum reflectance;
  std::array<Spectrum, 3> change;
  for (std::size_t i = 0; i < kSamples; ++i) {
    const double root =
        std::sqrt(sigma[i] + amounts[0] * p[i] + amounts[1] * q[i] + amounts[2] * r[i]);
    const double inner = (1 - kSurfaceShare_frac) * std::exp(-kDepth * root);
    reflectance[i] = kSurfaceShare_frac + inner;
    const double perSigma = -kDepth * inner / (2 * root);
    change[0][i] = perSigma * p[i];
    change[1][i] = perSigma * q[i];
    change[2][i] = perSigma * r[i];
  }
  const Xyz xyz = xyzOf(reflectance, Light::Daylight);
  // Hair never gets down to CIELAB's linear foot: Y is above the surface share.
  const double fx = std::cbrt(xyz.x / white.x), fy = std::cbrt(xyz.y / white.y),
               fz = std::cbrt(xyz.z / white.z);
  Trial trial;
  trial.lab = asVec(labFrom(xyz, white));
  for (std::size_t d = 0; d < box.size(); ++d) {
    const Xyz by = xyzOf(change[d], Light::Daylight);
    const double gx = by.x / white.x / (3 * fx * fx), gy = by.y / white.y / (3 * fy * fy),
                 gz = by.z / white.z / (3 * fz * fz);
    trial.slope.col(static_cast<Eigen::Index>(d)) =
        Vec3(116 * gy, 500 * (gx - gy), 200 * (gy - gz));
  }
  return trial;
}

}  // namespace

Spectrum withDyes(const Spectrum& sigma, const DyeAmounts& amounts) {
  Spectrum sum = sigma;
  for (std::size_t d = 0; d < kDyes; ++d)
    for (std::size_t i = 0; i < kSamples; ++i) sum[i] += amounts[d] * dyes()[d][i];
  return sum;
}

// Damped Gauss-Newton on the squared CIELAB distance, kept at amounts >= 0: an
// amount at 0 that wants to fall is left out of the step. Few steps suffice,
// because the colour moves smoothly with three amounts.
DyeAmounts dyesToward(const Spectrum& sigma, const Lab& aim, const DyeBox& box) {
  const Xyz white = whitePoint(Light::Daylight);
  const Vec3 target = asVec(aim);
  Vec3 amounts = Vec3::Zero();
  Trial now = tryAmounts(sigma, box, amounts, white);
  double damping = 1e-3;
  for (int step = 0; step < 60 && damping < 1e9; ++step) {
    const Vec3 residual = now.lab - target;
    const Vec3 gradient = now.slope.transpose() * residual;
    Eigen::Matrix3d normal = now.slope.transpose() * now.slope;
    for (int d = 0; d < 3; ++d) normal(d, d) *= 1 + damping;
    Vec3 right = -gradient;
    for (int d = 0; d < 3; ++d)
      if (amounts[d] <= 0 && gradient[d] > 0) {
        normal.row(d).setZero();
        normal.col(d).setZero();
        normal(d, d) = 1;
        right[d] = 0;
      }
    const Vec3 move = normal.ldlt().solve(right);
    const Vec3 next = (amounts + move).cwiseMax(0.0);
    const Trial trial = tryAmounts(sigma, box, next, white);
    if ((trial.lab - target).squaredNorm() < residual.squaredNorm()) {
      const bool settled = (next - amounts).norm() <= 1e-10 * (1e-3 + amounts.norm());
      amounts = next;
      now = trial;
      damping = std::max(damping / 10, 1e-12);
      if (settled) break;
    } else {
      damping *= 10;
    }
  }
  DyeAmounts all{};
  for (std::size_t d = 0; d < box.size(); ++d)
    all[static_cast<std::size_t>(box[d])] = amounts[static_cast<Eigen::Index>(d)];
  return all;
}

}  // namespace combdraft::colour

#include <cmath>

#include "engine/base/vec.h"
#include "engine/colour/xyz.h"

// Names follow the paper: C chroma, h hue, a prime marks the stretched a axis,
// bars are means, T weights hue, S_ scale, R_T turns the blue region [Sharma2005].
namespace combdraft::colour {
namespace {

double pow7(double v) { return std::pow(v, 7); }
double chromaRatio(double C) {
  constexpr double k25to7 = 6103515625.0;
  return std::sqrt(pow7(C) / (pow7(C) + k25to7));
}
double cosDeg(double angle_deg) { return std::cos(radians(angle_deg)); }

}  // namespace

double ciede2000(const Lab& p, const Lab& q) {
  const double G = 0.5 * (1 - chromaRatio((chroma(p) + chroma(q)) / 2));
  const Lab p1{p.L, (1 + G) * p.a, p.b};
  const Lab q1{q.L, (1 + G) * q.a, q.b};
  const double C1 = chroma(p1), C2 = chroma(q1);
  const double h1 = hue_deg(p1), h2 = hue_deg(q1);
  const bool grey = C1 * C2 == 0;

  double dh = grey ? 0 : h2 - h1;
  if (dh > 180) dh -= 360;
  if (dh < -180) dh += 360;
  const double dL = q.L - p.L;
  const double dC = C2 - C1;
  const double dH = 2 * std::sqrt(C1 * C2) * std::sin(radians(dh / 2));

  const double L = (p.L + q.L) / 2;
  const double C = (C1 + C2) / 2;
  double h = h1 + h2;
  if (!grey) {
    if (std::abs(h1 - h2) > 180) h += h < 360 ? 360 : -360;
    h /= 2;
  }
  const double T = 1 - 0.17 * cosDeg(h - 30) + 0.24 * cosDeg(2 * h) + 0.32 * cosDeg(3 * h + 6) -
                   0.20 * cosDeg(4 * h - 63);
  const double turn_deg = 30 * std::exp(-std::pow((h - 275) / 25, 2));
  const double RT = -std::sin(radians(2 * turn_deg)) * 2 * chromaRatio(C);
  const double SL = 1 + 0.015 * (L - 50) * (L - 50) / std::sqrt(20 + (L - 50) * (L - 50));
  const double SC = 1 + 0.045 * C;
  const double SH = 1 + 0.015 * C * T;
  const double l = dL / SL, c = dC / SC, t = dH / SH;
  return std::sqrt(l * l + c * c + t * t + RT * c * t);
}

}  // namespace combdraft::colour

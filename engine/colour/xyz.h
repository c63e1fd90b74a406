#pragma once
// Tristimulus values, CIELAB and the CIEDE2000 colour difference [CIE015].
namespace combdraft::colour {

/// Tristimulus values, 2 degree observer. Y = 1 for the perfect diffuser under
/// the light in question. Mixing strands means averaging these, never CIELAB.
struct Xyz {
  double x = 0, y = 0, z = 0;
  bool operator==(const Xyz&) const = default;
};
constexpr Xyz operator+(const Xyz& p, const Xyz& q) {
  return {p.x + q.x, p.y + q.y, p.z + q.z};
}
constexpr Xyz operator*(double k, const Xyz& p) { return {k * p.x, k * p.y, k * p.z}; }

/// CIELAB: L 0..100, a toward red, b toward yellow.
struct Lab {
  double L = 0, a = 0, b = 0;
  bool operator==(const Lab&) const = default;
};
double chroma(const Lab& lab);
/// Hue angle in [0, 360); 0 for a grey.
double hue_deg(const Lab& lab);

/// CIELAB of `xyz` seen against `white` (all components above 0). The two
/// functions are exact inverses within rounding (1e-10 for colours of hair).
Lab labFrom(const Xyz& xyz, const Xyz& white);
Xyz xyzFrom(const Lab& lab, const Xyz& white);

/// L* of a luminance factor Y (1 = perfect diffuser), and back.
double lightnessFromY(double Y);
double yFromLightness(double L);

/// CIEDE2000 with kL = kC = kH = 1 [Sharma2005]. About 2 is just seen by a
/// trained eye, above 5 is two colours to anyone.
double ciede2000(const Lab& p, const Lab& q);

}  // namespace combdraft::colour

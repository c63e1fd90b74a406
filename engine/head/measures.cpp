#include "engine/head/measures.h"

#include <algorithm>
#include <cmath>

#include "engine/base/number_text.h"

namespace combdraft::head {
namespace {

// One measure of a survey, mm: mean, standard deviation, 5th and 95th percentile.
struct Spread {
  double mean, sd, p5, p95;
  double of(HeadSize size) const {
    return size == HeadSize::Small ? p5 : size == HeadSize::Large ? p95 : mean;
  }
};

// Length, breadth, circumference [ANSUR2], 1986 women and 4082 men, means to
// 0.1 mm; ear-to-ear arc [ANSUR1]. Correlations [ANSUR2].
struct Survey {
  Spread length, breadth, circumference, earToEar;
  double lengthBreadth, lengthCircumference, breadthCircumference;  // correlations
  double heightCircumference;  // of the head's height over the ear hole
  double c_mm;  // head centre to vertex for the mean arc, engine's own fit
};
constexpr Survey kWomen{{189.8, 7.449, 178, 202}, {147.8, 5.192, 140, 156},
                        {561.1, 19.361, 532, 597}, {336.4, 12.9, 315.6, 358.1},
                        0.2203, 0.7573, 0.4942, 0.3748, 90.0};
constexpr Survey kMen{{199.5, 7.025, 188, 211},    {154.3, 5.532, 146, 163},
                      {574.4, 16.049, 548, 601},   {353.3, 12.9, 332.0, 374.7},
                      0.1758, 0.8232, 0.5538, 0.3870, 97.0};

// What no head has, children and rare heads included. Own limits, far outside
// both surveys' smallest and largest.
struct Limit {
  double low, high;
};
constexpr Limit kLength{130, 250}, kBreadth{100, 200}, kCircumference{400, 700},
    kEarToEar{220, 460};
constexpr double kBroadest_frac = 1.1;  // breadth over length, own limit
constexpr double kLeastExponent = 2.0, kMostExponent = 3.2, kUsualExponent = 2.4;

std::optional<Error> outside(const std::string& name, const std::optional<double>& value_mm,
                             const Limit& limit) {
  if (!value_mm || (*value_mm >= limit.low && *value_mm <= limit.high)) return std::nullopt;
  const std::string found =
      std::isfinite(*value_mm) ? numberText(*value_mm) + " mm" : std::string("no number");
  return Error{ErrorCode::OutOfRange, name,
               {found, numberText(limit.low) + " to " + numberText(limit.high) + " mm"},
               ""};
}

/// Slope of y on x where both are known by their spreads.
double slope(const Spread& y, const Spread& x, double correlation) {
  return correlation * y.sd / x.sd;
}

/// y from two known measures: least squares on both (standard two-variable form).
double fromTwo(const Spread& y, double y0, const Spread& u, double du, double ryu, const Spread& v,
               double dv, double ryv, double ruv) {
  const double rest = 1 - ruv * ruv;
  const double zu = du / u.sd, zv = dv / v.sd;
  return y0 + y.sd * ((ryu - ryv * ruv) / rest * zu + (ryv - ryu * ruv) / rest * zv);
}

double perimeter(const HeadAxes& axes, double p) {
  HeadAxes with = axes;
  with.p = p;
  return HeadShape(with).circumference_mm();
}

}  // namespace

Result<FittedHead> fitHead(const HeadMeasures& m) {
  for (const auto& problem :
       {outside("circumference", m.circumference_mm, kCircumference),
        outside("length", m.length_mm, kLength), outside("breadth", m.breadth_mm, kBreadth),
        outside("ear-to-ear", m.earToEar_mm, kEarToEar)})
    if (problem) return *problem;

  const Survey& s = m.set == HeadSet::Women ? kWomen : kMen;
  // A typed circumference takes the place of the size.
  const HeadSize size = m.circumference_mm ? HeadSize::Medium : m.size;
  const double length0 = s.length.of(size), breadth0 = s.breadth.of(size),
               around0 = s.circumference.of(size);
  const auto &L = m.length_mm, &B = m.breadth_mm, &C = m.circumference_mm;

  FittedHead fit{};
  fit.length_mm = L.value_or(
      B && C ? fromTwo(s.length, length0, s.breadth, *B - breadth0, s.lengthBreadth,
                       s.circumference, *C - around0, s.lengthCircumference,
                       s.breadthCircumference)
      : C ? length0 + slope(s.length, s.circumference, s.lengthCircumference) * (*C - around0)
      : B ? length0 + slope(s.length, s.breadth, s.lengthBreadth) * (*B - breadth0)
          : length0);
  fit.breadth_mm = B.value_or(
      L && C ? fromTwo(s.breadth, breadth0, s.length, *L - length0, s.lengthBreadth,
                       s.circumference, *C - around0, s.breadthCircumference,
                       s.lengthCircumference)
      : C ? breadth0 + slope(s.breadth, s.circumference, s.breadthCircumference) * (*C - around0)
      : L ? breadth0 + slope(s.breadth, s.length, s.lengthBreadth) * (*L - length0)
          : breadth0);
  fit.circumference_mm = C.value_or(
      L && B ? fromTwo(s.circumference, around0, s.length, *L - length0, s.lengthCircumference,
                       s.breadth, *B - breadth0, s.breadthCircumference, s.lengthBreadth)
      : L ? around0 + slope(s.circumference, s.length, s.lengthCircumference) * (*L - length0)
      : B ? around0 + slope(s.circumference, s.breadth, s.breadthCircumference) * (*B - breadth0)
          : around0);
  // No survey gives the arc's correlation; the head's height stands in for it.
  fit.earToEar_mm = m.earToEar_mm.value_or(
      s.earToEar.of(size) + slope(s.earToEar, s.circumference, s.heightCircumference) *
                                (fit.circumference_mm - around0));
  if (fit.breadth_mm > kBroadest_frac * fit.length_mm)
    return Error{ErrorCode::MeasuresContradict, "breadth",
                 {"breadth " + numberText(fit.breadth_mm, 0) + " mm for a length of " +
                  numberText(fit.length_mm, 0) + " mm; at most " +
                  numberText(kBroadest_frac * fit.length_mm, 0) + " mm would fit"},
                 ""};

  fit.axes.a_mm = fit.breadth_mm / 2;
  fit.axes.b_mm = fit.length_mm / 2;
  fit.axes.c_mm = s.c_mm * fit.earToEar_mm / s.earToEar.mean;
  fit.axes.p = kUsualExponent;
  if (C && (L || B)) {
    const bool tooSmall = *C < perimeter(fit.axes, kLeastExponent);
    const bool tooLarge = *C > perimeter(fit.axes, kMostExponent);
    fit.contradictory = tooSmall || tooLarge;
    if (fit.contradictory) {
      fit.axes.p = tooSmall ? kLeastExponent : kMostExponent;
    } else if (L && B) {
      double low = kLeastExponent, high = kMostExponent;
      for (int i = 0; i < 40; ++i) {
        const double middle = (low + high) / 2;
        (perimeter(fit.axes, middle) < *C ? low : high) = middle;
      }
      fit.axes.p = (low + high) / 2;
    }
  }

  const auto note = [&](const char* name, double value_mm, const Spread& spread) {
    if (value_mm < spread.p5 || value_mm > spread.p95)
      fit.notes.push_back({name, value_mm, spread.p5, spread.p95});
  };
  note("circumference", fit.circumference_mm, s.circumference);
  note("length", fit.length_mm, s.length);
  note("breadth", fit.breadth_mm, s.breadth);
  note("ear-to-ear", fit.earToEar_mm, s.earToEar);
  return fit;
}

}  // namespace combdraft::head

// Must come out (i): with the part moved there is one part line, and no false
// second one at the front. Common practice, no source.
#include <catch2/catch.hpp>

#include "engine/base/number_text.h"
#include "tests/support/look_plans.h"

using namespace combdraft;
using namespace combdraft::test;

namespace {

/// Sideways lie (mm per mm toward the wearer's right) of hair rooted in a band
/// behind the front hairline, by the root's x: bins of 6 mm from -48 to 48.
constexpr int kBins = 16;
constexpr double kBin_mm = 6, kFrom_mm = -48;
struct Lie {
  double sum[kBins] = {}, count[kBins] = {};
  double at(int k) const { return sum[k] / count[k]; }
};

Lie lieAlongFront(const look::HeadHair& head, double nearest_mm, double farthest_mm) {
  Lie lie;
  const hair::Locks& locks = head.locks();
  for (std::size_t i = 0; i < locks.size(); ++i) {
    const Vec3& root = head.roots().roots[i].at;
    if (root.y() < 20) continue;
    const double behind = head.hairline().above_mm(root);
    const int k = static_cast<int>(std::floor((root.x() - kFrom_mm) / kBin_mm));
    if (behind < nearest_mm || behind >= farthest_mm || k < 0 || k >= kBins) continue;
    const std::uint32_t first = locks.first[i];
    if (locks.first[i + 1] - first < 6) continue;
    const Vec3 along = toVec3(locks.points[first + 4]) - toVec3(locks.points[first + 1]);
    lie.sum[k] += along.x() / along.norm();
    ++lie.count[k];
  }
  return lie;
}

/// Where the mean lie turns from left to right: the middles of the parts.
std::vector<double> partings(const Lie& lie) {
  std::vector<double> at;
  for (int k = 0; k + 1 < kBins; ++k)
    if (lie.at(k) < 0 && lie.at(k + 1) >= 0)
      at.push_back(kFrom_mm + kBin_mm * (k + 0.5 + lie.at(k) / (lie.at(k) - lie.at(k + 1))));
  return at;
}

/// Mean share of scalp showing, seen from above, at a distance beside the part
/// line, over y from 20 to 66 mm.
double scalpBeside(const look::HeadHair& head, double x_mm) {
  const visibility::ViewSamples& top = head.seen().view(4);
  double sum = 0;
  int count = 0;
  for (double y = 20; y <= 66; y += top.spec.pixel_mm)
    for (double x = x_mm - 4; x <= x_mm + 4; x += top.spec.pixel_mm) {
      const head::ViewPoint q = top.spec.view.project({x, y, 0});
      const int u = static_cast<int>((q.u_mm - top.spec.frame.left_mm) / top.spec.pixel_mm);
      const int v = static_cast<int>((q.v_mm - top.spec.frame.top_mm) / top.spec.pixel_mm);
      sum += static_cast<double>(top.scalpCover[static_cast<std::size_t>(v) * static_cast<std::size_t>(top.width) + static_cast<std::size_t>(u)]);
      ++count;
    }
  return sum / count;
}

}  // namespace

TEST_CASE("with the part moved there is one part line and no second one at the front (common practice, no source)",
          "[look][must-come-out]") {
  for (const double shift : {0.0, 30.0, -30.0}) {
    look::LookSettings settings;
    settings.worn.partShift_mm = shift;
    const ColouredHair head(plan::Plan::fresh(51), 12000, settings, 1);
    CAPTURE(shift);
    for (const auto& [nearest, farthest] : {std::pair{0.0, 8.0}, std::pair{8.0, 20.0}}) {
      const Lie lie = lieAlongFront(head.hair(), nearest, farthest);
      std::string row;
      for (int k = 0; k < kBins; ++k) {
        REQUIRE(lie.count[k] >= 5);
        row += " " + numberText(lie.at(k), 2);
      }
      INFO(nearest << " to " << farthest << " mm behind the hairline, lie by x:" << row);
      const std::vector<double> at = partings(lie);
      REQUIRE(at.size() == 1);
      CHECK(std::abs(at[0] - shift) < 8);
    }
    // Scalp shows along the part and nowhere else that a part might be.
    const double shown = scalpBeside(head.hair(), shift);
    WARN("part at " << shift << ": scalp shown there " << shown << ", at -30, 0, 30: "
         << scalpBeside(head.hair(), -30) << ", " << scalpBeside(head.hair(), 0) << ", " << scalpBeside(head.hair(), 30));
    for (const double elsewhere : {-30.0, 0.0, 30.0})
      if (elsewhere != shift) CHECK(scalpBeside(head.hair(), elsewhere) < 0.35 * shown);
    CHECK(shown > 0.02);
  }
}

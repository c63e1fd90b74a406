#include "engine/plan/placement_check.h"

#include <algorithm>
#include <cmath>

#include "engine/base/number_text.h"
#include "engine/head/measures.h"
#include "engine/head/scalp_outline.h"
#include "engine/head/surface_distance.h"
#include "engine/plan/field_info.h"
#include "engine/plan/lay_out.h"

namespace combdraft::plan {
namespace {

constexpr double kStep_mm = 3, kLeast_mm = 0.5;
/// Comparisons of a point and a line's side: a crowded head of 2,000 pieces needs a
/// tenth of them, as many on one spot thousands of times more.
constexpr long kMostComparisons = 40'000'000;
/// A section that holds no piece takes the work of some.
constexpr std::size_t kLeastSectionWork = 10;

struct Line {
  ItemId id;
  const Piece* piece;
  std::vector<Vec3> points;
  Vec3 middle = Vec3::Zero();
  double radius_mm = 0;
};

// How near `line` comes to a point beside it; a point beyond its ends is beside nothing.
double beside_mm(const Vec3& p, const std::vector<Vec3>& line) {
  double best = 1e9;
  bool atEnd = false;
  for (std::size_t i = 0; i + 1 < line.size(); ++i) {
    const Vec3 side = line[i + 1] - line[i];
    const double t = std::clamp((p - line[i]).dot(side) / std::max(side.squaredNorm(), 1e-12), 0.0, 1.0);
    const double far = (line[i] + t * side - p).norm();
    if (far >= best) continue;
    best = far;
    atEnd = (i == 0 && t == 0) || (i + 2 == line.size() && t == 1);
  }
  return atEnd ? 1e9 : best;
}

long comparisons(const Line& a, const Line& b) {
  return 2 * static_cast<long>(a.points.size()) * static_cast<long>(b.points.size());
}

bool areFar(const Line& a, const Line& b) {
  const double half = (a.piece->thickness_mm + b.piece->thickness_mm) / 2;
  return (a.middle - b.middle).norm() > a.radius_mm + b.radius_mm + half;
}

// How far two strips run into each other, mm; 0 = they do not.
double overlap_mm(const Line& a, const Line& b) {
  const double half = (a.piece->thickness_mm + b.piece->thickness_mm) / 2;
  double deepest = 0;
  for (std::size_t i = 1; i + 1 < a.points.size(); ++i)
    deepest = std::max(deepest, half - beside_mm(a.points[i], b.points));
  for (std::size_t i = 1; i + 1 < b.points.size(); ++i)
    deepest = std::max(deepest, half - beside_mm(b.points[i], a.points));
  return deepest < kLeast_mm ? 0 : std::min({deepest, a.piece->thickness_mm, b.piece->thickness_mm});
}

}  // namespace

std::vector<Issue> checkPlacement(const Plan& plan, const std::stop_token& stop) {
  std::vector<Issue> issues;
  const auto fitted = head::fitHead(plan.head().measures);
  if (!fitted) return issues;
  const head::HeadShape shape(fitted->axes);
  for (const auto& [choiceId, item] : plan.items()) {
    if (!std::holds_alternative<Choice>(*item)) continue;
    bool isWhole = true;
    std::size_t laidOut = 0;  // pieces: more than a plan may have cannot be meant
    for (const auto& [id, section] : plan.sections(choiceId)) {
      if (stop.stop_requested()) return issues;
      if (section->outline.size() < 3) continue;
      std::vector<Vec3> corners;
      for (const ScalpPoint& point : section->outline) corners.push_back(shape.pointAt(point));
      if (head::ScalpOutline(shape, corners).crossing()) {
        issues.push_back({IssueCode::OutlineCrosses, Severity::Note, {id}, {}});
        continue;
      }
      if (!section->layout || !section->twinOf.empty()) continue;
      if (laidOut > limits::kPieces) {
        isWhole = false;
        break;
      }
      const Run run = runIn(plan, id);
      laidOut += run.trouble == RunTrouble::TooMany ? limits::kRunPieces : std::max(run.pieces.size(), kLeastSectionWork);
      if (run.trouble == RunTrouble::NoRoom)
        issues.push_back({IssueCode::SectionWithoutRoom, Severity::Note, {id}, {numberText(run.room_mm, 1)}});
      if (run.trouble == RunTrouble::TooMany)
        issues.push_back({IssueCode::TooManyInSection, Severity::Note, {id}, {}});
    }
    std::vector<Line> lines;
    long compared = 0;
    for (const auto& [id, piece] : plan.pieces(choiceId)) {
      if (piece->action == Action::LeaveOut) continue;
      std::vector<Vec3> given;
      for (const ScalpPoint& point : piece->line) given.push_back(shape.pointAt(point));
      Line line{id, piece, head::resampledOnSurface(shape, given, kStep_mm), Vec3::Zero(), 0};
      if (line.points.size() < 3) continue;
      for (const Vec3& p : line.points) line.middle += p / static_cast<double>(line.points.size());
      for (const Vec3& p : line.points) line.radius_mm = std::max(line.radius_mm, (p - line.middle).norm());
      lines.push_back(std::move(line));
    }
    for (std::size_t i = 0; i < lines.size(); ++i) {
      if (stop.stop_requested()) return issues;
      Issue issue{IssueCode::PiecesOverlap, Severity::Note, {lines[i].id}, {}};
      double deepest = 0;
      for (std::size_t k = i + 1; k < lines.size(); ++k) {
        if (areFar(lines[i], lines[k])) continue;
        compared += comparisons(lines[i], lines[k]);
        if (compared > kMostComparisons) {
          isWhole = false;
          break;
        }
        const double deep = overlap_mm(lines[i], lines[k]);
        if (deep <= 0) continue;
        issue.items.push_back(lines[k].id);
        deepest = std::max(deepest, deep);
      }
      if (issue.items.size() < 2) continue;
      issue.args = {numberText(deepest, 1)};
      issues.push_back(std::move(issue));
    }
    if (!isWhole) issues.push_back({IssueCode::TooCrowdedToCheck, Severity::Note, {choiceId}, {}});
  }
  return issues;
}

}  // namespace combdraft::plan

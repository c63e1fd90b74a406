#include "engine/plan/lay_out.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "engine/head/surface_distance.h"
#include "engine/plan/edit_steps.h"
#include "engine/plan/field_info.h"
#include "engine/plan/twins.h"

namespace combdraft::plan {
namespace {

constexpr double kShortest_mm = 6;      // a shorter stretch of a row is no piece
constexpr double kPoint_mm = 8;         // between the points of a laid-out line
constexpr double kZigzagPeriod_mm = 12; // own choice: one swing to and fro
constexpr int kMostRows = 200;

// Ends exactly as typed, steps between to a `grid`.
double at(const Ramp& ramp, int i, int count, double grid = 0.1) {
  if (count < 2 || i == 0) return ramp.from;
  if (i == count - 1) return ramp.to;
  return std::round((ramp.from + (ramp.to - ramp.from) * i / (count - 1)) / grid) * grid;
}

struct Spacing {
  std::vector<double> thickness_mm, leftOut_mm;  // first piece first
  double used_mm() const {
    double sum = 0;
    for (std::size_t i = 0; i < thickness_mm.size(); ++i) sum += thickness_mm[i] + leftOut_mm[i];
    return sum;
  }
};

Spacing spacingOf(const Layout& layout, int rows, const std::map<int, double>& own) {
  Spacing spacing;
  for (int i = 0; i < rows; ++i) {
    double thick = at(layout.thickness_mm, i, rows);
    if (i == rows - 1 && rows > 1 && layout.lastThickness_mm) thick = *layout.lastThickness_mm;
    if (const auto found = own.find(rows - i); found != own.end()) thick = found->second;
    spacing.thickness_mm.push_back(thick);
    spacing.leftOut_mm.push_back(at(layout.leftOut_mm, i, rows));
  }
  return spacing;
}

// As many rows as fit, the rest of the room spread over the left-outs. Empty:
// not even half a piece.
Spacing fitted(const Layout& layout, double room_mm, const std::map<int, double>& own) {
  Spacing best;
  for (int rows = 1; rows <= kMostRows; ++rows) {
    Spacing next = spacingOf(layout, rows, own);
    if (next.used_mm() > room_mm + 1e-6) break;
    best = std::move(next);
  }
  if (best.thickness_mm.empty()) {
    best = spacingOf(layout, 1, own);
    if (best.thickness_mm.front() / 2 > room_mm) return {};
    best.leftOut_mm.front() = std::max(0.0, room_mm - best.thickness_mm.front());
    return best;
  }
  const double rest = room_mm - best.used_mm();
  for (double& gap : best.leftOut_mm) gap += rest / static_cast<double>(best.leftOut_mm.size());
  return best;
}

ScalpPoint rounded(const ScalpPoint& point) {
  return {std::round(point.bearing_deg * 1000) / 1000, std::round(point.drop_deg * 1000) / 1000};
}

// A close line by the distance along it.
class Along {
 public:
  Along(const head::HeadShape& shape, const std::vector<Vec3>& line) : shape_(shape), line_(line) {
    along_.push_back(0);
    for (std::size_t i = 1; i < line.size(); ++i)
      along_.push_back(along_.back() + head::lineLength_mm(shape, {line[i - 1], line[i]}));
  }
  double length_mm() const { return along_.back(); }
  Vec3 point(double mm) const {
    const std::size_t i = stretch(mm);
    const double step = along_[i + 1] - along_[i];
    const double t = step > 0 ? (mm - along_[i]) / step : 0;
    return shape_.project(line_[i] + t * (line_[i + 1] - line_[i]));
  }
  Vec3 left(double mm) const {
    const std::size_t i = stretch(mm);
    return head::leftOf(shape_, point(mm), line_[i + 1] - line_[i]);
  }
  /// Where the line crosses the centre line.
  std::vector<double> crossings_mm() const {
    std::vector<double> found;
    for (std::size_t i = 0; i + 1 < line_.size(); ++i) {
      const double a = line_[i].x(), b = line_[i + 1].x();
      if ((a < 0) == (b < 0)) continue;
      found.push_back(along_[i] + (along_[i + 1] - along_[i]) * a / (a - b));
    }
    return found;
  }

 private:
  std::size_t stretch(double mm) const {
    const auto after = std::upper_bound(along_.begin(), along_.end(), mm);
    const std::ptrdiff_t i = std::distance(along_.begin(), after) - 1;
    return static_cast<std::size_t>(
        std::clamp<std::ptrdiff_t>(i, 0, static_cast<std::ptrdiff_t>(along_.size()) - 2));
  }
  const head::HeadShape& shape_;
  const std::vector<Vec3>& line_;
  std::vector<double> along_;
};

std::vector<double> columnEdges(const Layout& layout, double length_mm, int row) {
  const int count = std::max(1, static_cast<int>(std::ceil(length_mm / layout.foil_mm - 1e-6)));
  const double width = length_mm / count;
  std::vector<double> edges{0};
  const bool shifted = layout.columns == Columns::Staggered && count > 1 && row % 2 == 0;
  if (shifted) edges.push_back(width / 2);
  while (edges.back() + width < length_mm - 1e-6) edges.push_back(edges.back() + width);
  edges.push_back(length_mm);
  return edges;
}

std::vector<ScalpPoint> pieceLine(const head::HeadShape& shape, const Along& row, double from_mm,
                                  double to_mm, double zigzag_mm) {
  const double spacing = zigzag_mm > 0 ? kZigzagPeriod_mm / 2 : kPoint_mm;
  const int parts = std::clamp(static_cast<int>(std::ceil((to_mm - from_mm) / spacing)), 1,
                               static_cast<int>(limits::kLinePoints) - 1);
  std::vector<ScalpPoint> line;
  for (int i = 0; i <= parts; ++i) {
    const double mm = from_mm + (to_mm - from_mm) * i / parts;
    Vec3 p = row.point(mm);
    if (zigzag_mm > 0)
      p = head::surfaceOffset(shape, p, row.left(mm), (i % 2 ? 0.5 : -0.5) * zigzag_mm);
    line.push_back(rounded(shape.scalpPointAt(p)));
  }
  return line;
}

// On the straight row; `longer`: how much longer the piece's own line is (zigzag).
std::vector<Stretch> droppedMiddle(const Along& row, double from_mm, double to_mm, double drop_mm,
                                   double longer) {
  std::vector<Stretch> dropped;
  if (drop_mm <= 0) return dropped;
  const auto tenths = [longer](double mm) { return std::round(mm * longer * 10) / 10; };
  for (const double at : row.crossings_mm()) {
    const Stretch stretch{tenths(std::max(at - drop_mm / 2, from_mm) - from_mm),
                          tenths(std::min(at + drop_mm / 2, to_mm) - from_mm)};
    if (stretch.to_mm - stretch.from_mm > 1 && dropped.size() < limits::kSmallList)
      dropped.push_back(stretch);
  }
  return dropped;
}

bool owns(const Piece& piece, RunField field) {
  const auto& own = piece.laidOut->own;
  return std::find(own.begin(), own.end(), field) != own.end();
}

}  // namespace

Run runOf(const head::HeadShape& shape, const Section& section,
          const std::map<int, double>& ownThickness_mm) {
  Run run;
  if (!section.layout || section.outline.size() < 3) return run;
  const Layout& layout = *section.layout;
  std::vector<Vec3> corners;
  for (const ScalpPoint& point : section.outline) corners.push_back(shape.pointAt(point));
  if (head::ScalpOutline(shape, corners).crossing()) {
    run.trouble = RunTrouble::OutlineCrosses;
    return run;
  }
  std::optional<Vec3> pivot;
  if (layout.pivot) pivot = shape.pointAt(*layout.pivot);
  const head::SectionRows rows(shape, corners, layout.run, pivot);
  run.room_mm = rows.depth_mm();
  const Spacing spacing = fitted(layout, run.room_mm, ownThickness_mm);
  if (spacing.thickness_mm.empty()) {
    run.trouble = RunTrouble::NoRoom;
    return run;
  }
  const int count = static_cast<int>(spacing.thickness_mm.size());
  // Vertical rows are counted from the centre, which is their opening; of a fan
  // the lower side is placed first.
  bool fromFarEnd = layout.run == LayoutRun::Vertical;
  if (layout.run == LayoutRun::Pivoting) {
    const auto height = [&](double share) {
      const auto ray = rows.rowAt(share * rows.depth_mm(), 0.5);
      return ray.empty() ? 0.0 : ray.back().back().z();
    };
    fromFarEnd = height(0.1) > height(0.9);
  }
  double passed_mm = 0;
  for (int i = 0; i < count; ++i) {
    const std::size_t k = static_cast<std::size_t>(i);
    const double thick = spacing.thickness_mm[k], gap = spacing.leftOut_mm[k];
    double from = std::min(passed_mm + thick / 2, run.room_mm / (count == 1 ? 2 : 1));
    if (count == 1 && thick + layout.leftOut_mm.from <= run.room_mm) from = thick / 2;
    passed_mm += thick + gap;
    if (fromFarEnd) from = run.room_mm - from;
    const int row = count - i;
    int column = 0;
    const double clear = std::min(0.6, thick / (thick + gap));
    for (const std::vector<Vec3>& stretch : rows.rowAt(from, clear)) {
      const Along line(shape, stretch);
      if (line.length_mm() < kShortest_mm) continue;
      const std::vector<double> edges = columnEdges(layout, line.length_mm(), row);
      for (std::size_t c = 0; c + 1 < edges.size(); ++c) {
        RunPiece piece;
        piece.row = row;
        piece.column = ++column;
        piece.line = pieceLine(shape, line, edges[c], edges[c + 1], layout.zigzag_mm);
        piece.thickness_mm = thick;
        piece.start_mm = at(layout.start_mm, i, count);
        piece.backcomb_mm = at(layout.backcomb_mm, i, count);
        piece.pushed_frac = at(layout.pushed_frac, i, count, 0.01);
        piece.taken_frac = at(layout.taken_frac, i, count, 0.01);
        double longer = 1;
        if (layout.zigzag_mm > 0) {
          std::vector<Vec3> drawn;
          for (const ScalpPoint& point : piece.line) drawn.push_back(shape.pointAt(point));
          longer = head::lineLength_mm(shape, drawn) / (edges[c + 1] - edges[c]);
        }
        piece.dropOuts = droppedMiddle(line, edges[c], edges[c + 1], layout.dropMiddle_mm, longer);
        run.pieces.push_back(std::move(piece));
        if (run.pieces.size() > limits::kRunPieces) {
          run.pieces.clear();
          run.trouble = RunTrouble::TooMany;
          return run;
        }
      }
    }
  }
  run.rows = count;
  if (run.pieces.empty()) run.trouble = RunTrouble::NoRoom;
  return run;
}

Run runIn(const Plan& plan, const ItemId& sectionId) {
  const Section* section = plan.find<Section>(sectionId);
  if (!section) return {};
  std::map<int, double> own;
  for (const auto& [id, piece] : plan.pieces(section->choice)) {
    if (piece->section != sectionId || !piece->laidOut || !owns(*piece, RunField::Thickness)) continue;
    double& thick = own[piece->laidOut->row];
    thick = std::max(thick, piece->thickness_mm);
  }
  return runOf(headOf(plan).shape, *section, own);
}

std::vector<RunField> governedDifferences(const Piece& a, const Piece& b) {
  std::vector<RunField> differ;
  const auto note = [&](RunField field, bool same) {
    if (!same) differ.push_back(field);
  };
  note(RunField::Line, a.line == b.line);
  note(RunField::Thickness, a.thickness_mm == b.thickness_mm);
  note(RunField::Taking, a.taking == b.taking && a.taken_frac == b.taken_frac &&
                             a.tooth_mm == b.tooth_mm && a.gap_mm == b.gap_mm);
  note(RunField::Start, a.start_mm == b.start_mm);
  note(RunField::Backcomb, a.backcomb.depth_mm == b.backcomb.depth_mm &&
                               a.backcomb.pushed_frac == b.backcomb.pushed_frac);
  note(RunField::DropOuts, a.dropOuts == b.dropOuts);
  return differ;
}

namespace {

using Slot = std::pair<int, int>;

void follow(Piece& piece, const RunPiece& rule, const Layout& layout) {
  if (!owns(piece, RunField::Line)) piece.line = rule.line;
  if (!owns(piece, RunField::Thickness)) piece.thickness_mm = rule.thickness_mm;
  if (!owns(piece, RunField::Taking)) {
    piece.taking = layout.taking;
    piece.taken_frac = rule.taken_frac;
    piece.tooth_mm = layout.tooth_mm;
    piece.gap_mm = layout.gap_mm;
  }
  if (!owns(piece, RunField::Start)) piece.start_mm = rule.start_mm;
  if (!owns(piece, RunField::Backcomb)) {
    piece.backcomb.depth_mm = rule.backcomb_mm;
    piece.backcomb.pushed_frac = rule.pushed_frac;
  }
  if (!owns(piece, RunField::DropOuts)) piece.dropOuts = rule.dropOuts;
}

// A new piece is treated like its nearest neighbour in the section.
Piece modelFor(const Plan& plan, const ItemId& sectionId, const Section& section, int row) {
  const Piece* nearest = nullptr;
  int far = 0;
  for (const auto& [id, piece] : plan.pieces(section.choice)) {
    if (piece->section != sectionId || piece->action == Action::LeaveOut) continue;
    const int away = piece->laidOut ? std::abs(piece->laidOut->row - row) : 100000;
    if (!nearest || away < far) nearest = piece, far = away;
  }
  Piece model = nearest ? *nearest : Piece{};
  model.choice = section.choice;
  model.section = sectionId;
  model.label.clear();
  model.note.clear();
  model.foil.clear();
  model.twinOf.clear();
  model.extra.clear();
  model.order = 0;
  model.held = false;
  return model;
}

void setOrder(Plan& plan, const std::vector<ItemId>& sequence) {
  for (std::size_t i = 0; i < sequence.size(); ++i) {
    const Piece& now = *plan.find<Piece>(sequence[i]);
    if (now.order == static_cast<int>(i) + 1) continue;
    Piece piece = now;
    piece.order = static_cast<int>(i) + 1;
    plan.put(sequence[i], std::move(piece));
  }
}

// Puts a run into the working order: where its old pieces stood, in placing
// order; when they had been numbered otherwise they keep their numbers and new
// ones follow the last of them.
void placeInOrder(std::vector<ItemId>& sequence, const std::vector<ItemId>& placing,
                  const std::set<ItemId>& isNew, const std::vector<ItemId>& after) {
  if (placing.empty()) return;
  const std::set<ItemId> run(placing.begin(), placing.end());
  std::vector<ItemId> oldOrder, oldPlacing;
  for (const ItemId& id : sequence)
    if (run.count(id) && !isNew.count(id)) oldOrder.push_back(id);
  for (const ItemId& id : placing)
    if (!isNew.count(id)) oldPlacing.push_back(id);
  const bool inOrder = oldOrder == oldPlacing;
  // New ones stand at the end until they are placed.
  const auto isPlaced = [&](const ItemId& id) { return run.count(id) && (inOrder || isNew.count(id)); };
  std::size_t here = sequence.size();
  if (!oldOrder.empty()) {
    const ItemId& mark = inOrder ? oldOrder.front() : oldOrder.back();
    here = static_cast<std::size_t>(std::find(sequence.begin(), sequence.end(), mark) -
                                    sequence.begin()) + (inOrder ? 0 : 1);
  } else if (!after.empty()) {
    for (std::size_t i = 0; i < sequence.size(); ++i)
      if (std::find(after.begin(), after.end(), sequence[i]) != after.end()) here = i + 1;
  }
  std::vector<ItemId> next;
  const auto insert = [&] {
    for (const ItemId& id : placing)
      if (inOrder || isNew.count(id)) next.push_back(id);
  };
  for (std::size_t i = 0; i < sequence.size(); ++i) {
    if (i == here) insert();
    if (!isPlaced(sequence[i])) next.push_back(sequence[i]);
  }
  if (here >= sequence.size()) insert();
  sequence = std::move(next);
}

}  // namespace

Plan reflowed(Plan plan, const ItemId& sectionId) {
  const Section* found = plan.find<Section>(sectionId);
  if (!found || !found->layout || followsSource(plan, *found)) return plan;
  Section section = *found;
  const Layout layout = *section.layout;

  std::map<Slot, ItemId> standing;
  for (const auto& [id, piece] : plan.pieces(section.choice)) {
    if (piece->section != sectionId || !piece->laidOut || followsSource(plan, *piece)) continue;
    standing.emplace(Slot{piece->laidOut->row, piece->laidOut->column}, id);
  }
  const Run run = runIn(plan, sectionId);
  if (run.trouble != RunTrouble::None) return plan;

  ItemId twinSection;
  for (const ItemId& id : twinsOf(plan, sectionId))
    if (const Section* twin = plan.find<Section>(id); twin && followsSource(plan, *twin))
      twinSection = id;
  std::set<Slot> empty;
  for (const RunSlot& slot : layout.empty) empty.emplace(slot.row, slot.column);
  std::map<Slot, RetiredPiece> retired;
  for (RetiredPiece& piece : section.retired)
    if (piece.laidOut) retired.emplace(Slot{piece.laidOut->row, piece.laidOut->column}, std::move(piece));

  std::vector<ItemId> placing, twinPlacing;
  std::set<ItemId> isNew;
  std::set<Slot> used;
  for (const RunPiece& rule : run.pieces) {
    const Slot slot{rule.row, rule.column};
    if (empty.count(slot)) continue;
    used.insert(slot);
    ItemId id;
    Piece piece;
    if (const auto here = standing.find(slot); here != standing.end()) {
      id = here->second;
      piece = *plan.find<Piece>(id);
    } else if (const auto old = retired.find(slot); old != retired.end()) {
      id = plan.item(old->second.id) ? plan.freeId("piece") : old->second.id;
      piece = static_cast<const Piece&>(old->second);
      piece.choice = section.choice;
      piece.section = sectionId;
      for (ZoneColour* zone : {&piece.root, &piece.end})
        if (!plan.find<Formula>(zone->formula)) zone->formula.clear();
      retired.erase(old);
      isNew.insert(id);
    } else {
      id = plan.freeId("piece");
      piece = modelFor(plan, sectionId, section, rule.row);
      piece.laidOut = LaidOut{rule.row, rule.column, {}, {}};
      isNew.insert(id);
    }
    follow(piece, rule, layout);
    if (const Piece* now = plan.find<Piece>(id); !now || !(*now == piece)) plan.put(id, piece);
    placing.push_back(id);
    if (twinSection.empty()) continue;
    for (const ItemId& twin : twinsOf(plan, id)) twinPlacing.push_back(twin);
    if (isNew.count(id)) {
      const ItemId twin = plan.freeId("piece");
      plan.put(twin, mirroredPiece(plan, id, piece));
      isNew.insert(twin);
      twinPlacing.push_back(twin);
    }
  }
  bool counts = !isNew.empty();
  for (const auto& [slot, id] : standing) {
    if (used.count(slot)) continue;
    counts = true;
    RetiredPiece old;
    static_cast<Piece&>(old) = *plan.find<Piece>(id);
    old.id = id;
    for (const ItemId& twin : twinsOf(plan, id)) plan.put(twin, ItemPtr{});
    plan.put(id, ItemPtr{});
    retired.insert_or_assign(slot, std::move(old));
  }
  section.retired.clear();
  for (auto& [slot, piece] : retired)
    if (section.retired.size() < limits::kRunPieces) section.retired.push_back(std::move(piece));
  if (!(section == *plan.find<Section>(sectionId))) plan.put(sectionId, section);
  if (!counts) return plan;
  std::vector<ItemId> sequence;
  for (const auto& [id, piece] : plan.pieces(section.choice))
    if (!isNew.count(id)) sequence.push_back(id);
  placeInOrder(sequence, placing, isNew, {});
  placeInOrder(sequence, twinPlacing, isNew, placing);
  setOrder(plan, sequence);
  return plan;
}

}  // namespace combdraft::plan

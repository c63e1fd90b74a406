#include "engine/plan/edits.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "engine/head/part_line.h"
#include "engine/head/surface_distance.h"
#include "engine/plan/edit_steps.h"
#include "engine/plan/field_info.h"
#include "engine/plan/twins.h"

namespace combdraft::plan {

ChangeSet addPiece(const Plan& plan, Piece piece) {
  Plan after = plan;
  if (piece.choice.empty()) piece.choice = plan.info().activeChoice;
  if (piece.order == 0) {
    const auto pieces = plan.pieces(piece.choice);
    piece.order = pieces.empty() ? 1 : pieces.back().second->order + 1;
  }
  const ItemId id = plan.freeId("piece");
  after.put(id, std::move(piece));
  return finished(plan, std::move(after), EditKind::AddPieces, {id});
}

ChangeSet changePieces(const Plan& plan, const std::vector<ItemId>& ids,
                       const std::function<void(Piece&)>& change) {
  return finished(plan, changeEach<Piece>(plan, ids, change), EditKind::ChangePieces, ids);
}

ChangeSet changeSections(const Plan& plan, const std::vector<ItemId>& ids,
                         const std::function<void(Section&)>& change) {
  return finished(plan, changeEach<Section>(plan, ids, change), EditKind::ChangeSections, ids);
}

ChangeSet movePieces(const Plan& plan, const std::vector<ItemId>& ids, const ScalpPoint& from,
                     const ScalpPoint& to) {
  const HeadNow head = headOf(plan);
  const Eigen::Quaterniond whole =
      Eigen::Quaterniond::FromTwoVectors(head::directionOf(from), head::directionOf(to));
  const auto turned = [&](const ScalpPoint& point, double share) {
    const Eigen::Quaterniond part = Eigen::Quaterniond::Identity().slerp(share, whole);
    const Vec3 direction = part * head::directionOf(point);
    const ScalpPoint moved = head::scalpPointAlong(direction);
    // A thousandth of a degree is 0.002 mm; the file stays readable.
    return ScalpPoint{std::round(moved.bearing_deg * 1000) / 1000,
                      std::round(moved.drop_deg * 1000) / 1000};
  };
  std::vector<std::pair<ScalpPoint, double>> bounds;  // a point, and how low it may go
  const auto bind = [&](const std::vector<ScalpPoint>& points) {
    for (const ScalpPoint& point : points)
      bounds.emplace_back(
          point, std::min(0.0, head.hairline.above_mm(head.shape.pointAt(point)) - 1e-9));
  };
  // Of a pair the first named makes the step: where both are, the one on the side of the hand.
  const auto sideOf = [&](const std::vector<ScalpPoint>& points) {
    return points.empty() ? 0.0 : head.shape.pointAt(points[points.size() / 2]).x();
  };
  const auto lineOf = [&](const ItemId& id) {
    const Piece* piece = plan.find<Piece>(id);
    const Section* section = plan.find<Section>(id);
    return piece ? piece->line : section ? section->outline : std::vector<ScalpPoint>{};
  };
  const double hand = ids.empty() ? 0 : sideOf(lineOf(ids.front()));
  const auto handSideFirst = [&](std::vector<ItemId>& of) {
    std::stable_partition(of.begin(), of.end(), [&](const ItemId& id) { return hand * sideOf(lineOf(id)) >= 0; });
  };
  std::vector<ItemId> sections;
  for (const ItemId& id : ids)
    if (const Section* section = plan.find<Section>(id)) {
      bind(section->outline);
      sections.push_back(id);
    }
  const auto moves = [&](const ItemId& section) {
    return std::find(sections.begin(), sections.end(), section) != sections.end();
  };
  // What its section's rule moves by itself.
  const auto flows = [&](const Piece& piece) {
    return piece.laidOut && moves(piece.section) &&
           std::find(piece.laidOut->own.begin(), piece.laidOut->own.end(), RunField::Line) ==
               piece.laidOut->own.end();
  };
  // A section takes its pieces along; laid-out ones go with its rule.
  std::vector<ItemId> pieces;
  for (const auto& [id, item] : plan.items()) {
    const Piece* piece = std::get_if<Piece>(item.get());
    if (piece && moves(piece->section) && !flows(*piece) &&
        std::find(ids.begin(), ids.end(), id) == ids.end())
      pieces.push_back(id);
  }
  for (const ItemId& id : ids)
    if (const Piece* piece = plan.find<Piece>(id);
        piece && !flows(*piece))
      pieces.push_back(id);
  handSideFirst(sections);
  handSideFirst(pieces);
  for (const ItemId& id : pieces) bind(plan.find<Piece>(id)->line);
  for (const ItemId& id : ids)
    if (const Note* note = plan.find<Note>(id)) bind({note->at});
  const auto fits = [&](double share) {
    return std::all_of(bounds.begin(), bounds.end(), [&](const auto& bound) {
      return head.hairline.above_mm(head.shape.pointAt(turned(bound.first, share))) >=
             bound.second;
    });
  };
  double share = 1;
  if (!fits(1)) {
    double low = 0, high = 1;
    for (int i = 0; i < 24; ++i) {
      const double middle = (low + high) / 2;
      (fits(middle) ? low : high) = middle;
    }
    share = low;
  }
  if (share == 0) return {EditKind::MovePieces, ids, {}};
  Plan after = changeEach<Section>(plan, sections, [&](Section& section) {
    for (ScalpPoint& point : section.outline) point = turned(point, share);
    if (section.layout && section.layout->pivot)
      section.layout->pivot = turned(*section.layout->pivot, share);
  });
  after = changeEach<Piece>(after, pieces, [&](Piece& piece) {
    for (ScalpPoint& point : piece.line) point = turned(point, share);
  });
  for (const ItemId& id : ids)
    if (const Note* note = plan.find<Note>(id)) {
      Note moved = *note;
      moved.at = turned(note->at, share);
      after.put(id, std::move(moved));
    }
  return finished(plan, std::move(after), EditKind::MovePieces, ids);
}

ScalpPoint stepped(const head::HeadShape& shape, const ScalpPoint& from, double right_mm,
                   double down_mm) {
  const double bearing = radians(from.bearing_deg), drop = radians(from.drop_deg);
  const Vec3 right(std::cos(bearing), -std::sin(bearing), 0);
  const Vec3 down(std::cos(drop) * std::sin(bearing), std::cos(drop) * std::cos(bearing),
                  -std::sin(drop));
  const Vec3 at = shape.pointAt(from);
  const Vec3 normal = shape.normalAt(at);
  const Vec3 along = right * right_mm + down * down_mm;
  const double length = std::hypot(right_mm, down_mm);
  if (length == 0) return from;
  const Vec3 tangent = along - normal * along.dot(normal);
  return shape.scalpPointAt(head::surfaceOffset(shape, at, tangent, length));
}

ChangeSet renumber(const Plan& plan, const ItemId& choice, const std::vector<ItemId>& ids) {
  const auto pieces = plan.pieces(choice);
  std::set<ItemId> known, placed;
  for (const auto& entry : pieces) known.insert(entry.first);
  const std::set<ItemId> listed(ids.begin(), ids.end());
  std::vector<ItemId> order;
  const auto place = [&](const ItemId& id) {
    if (!known.count(id) || !placed.insert(id).second) return;
    order.push_back(id);
    for (const ItemId& twin : twinsOf(plan, id))
      if (!listed.count(twin) && known.count(twin) && placed.insert(twin).second)
        order.push_back(twin);
  };
  for (const ItemId& id : ids) place(id);
  for (const auto& entry : pieces) {
    // A twin waits for its source, which comes later in the old order.
    const Piece& piece = *entry.second;
    if (followsSource(plan, piece) && known.count(piece.twinOf) && !placed.count(piece.twinOf) &&
        !listed.count(entry.first))
      continue;
    place(entry.first);
  }
  for (const auto& entry : pieces) place(entry.first);
  Plan after = plan;
  for (std::size_t i = 0; i < order.size(); ++i) {
    Piece piece = *plan.find<Piece>(order[i]);
    piece.order = static_cast<int>(i) + 1;
    after.put(order[i], std::move(piece));
  }
  return finished(plan, std::move(after), EditKind::Renumber, ids);
}

ChangeSet removeItems(const Plan& plan, const std::vector<ItemId>& ids) {
  std::set<ItemId> going;
  std::size_t choices = 0;
  for (const auto& [id, item] : plan.items()) choices += std::holds_alternative<Choice>(*item);
  for (const ItemId& id : ids) {
    if (id == kPlanId || id == kHeadId || id == kHairId || id == kHandoutId || !plan.item(id)) continue;
    if (plan.find<Choice>(id) && !going.count(id)) {
      if (choices == 1) continue;
      --choices;
    }
    going.insert(id);
  }
  const auto gone = [&](const ItemId& id) { return going.count(id) > 0; };
  Plan after = plan;
  // The place of a laid-out piece that is taken away stays empty.
  for (const ItemId& id : ids) {
    const Piece* piece = plan.find<Piece>(id);
    if (!piece || !piece->laidOut || followsSource(plan, *piece) || gone(piece->section)) continue;
    const Section* now = after.find<Section>(piece->section);
    if (!now || !now->layout || now->layout->empty.size() >= limits::kRunPieces) continue;
    Section section = *now;
    section.layout->empty.push_back({piece->laidOut->row, piece->laidOut->column, {}});
    after.put(piece->section, std::move(section));
  }
  const auto sweep = [&](const ItemId& id, auto item) {
    using T = decltype(item);
    if constexpr (requires { item.choice; })
      if (plan.find<Choice>(item.choice) && gone(item.choice)) going.insert(id);
    if (gone(id)) return after.put(id, ItemPtr{});
    const T old = item;
    if constexpr (std::is_same_v<T, Piece>) {
      if (item.laidOut && gone(item.section)) return after.put(id, ItemPtr{});
      if (gone(item.section)) item.section.clear();
      for (ZoneColour* zone : {&item.root, &item.end})
        if (gone(zone->formula)) zone->formula.clear();
    }
    if constexpr (std::is_same_v<T, Treatment>)
      if (gone(item.formula)) item.formula.clear();
    if constexpr (std::is_same_v<T, PlanInfo>)
      if (gone(item.activeChoice))
        for (const auto& [other, entry] : plan.items())
          if (std::holds_alternative<Choice>(*entry) && !gone(other)) {
            item.activeChoice = other;
            break;
          }
    if (!(item == old)) after.put(id, std::move(item));
  };
  for (const auto& [id, item] : plan.items())
    std::visit([&, &itemId = id](const auto& value) { sweep(itemId, value); }, *item);
  return finished(plan, std::move(after), EditKind::Remove, ids);
}

ChangeSet changeHead(const Plan& plan, const std::function<void(Head&)>& change) {
  Head head = plan.head();
  change(head);
  Plan after = plan;
  after.put(kHeadId, std::move(head));
  return finished(plan, std::move(after), EditKind::ChangeHead);
}

ChangeSet changeHair(const Plan& plan, const std::function<void(Hair&)>& change) {
  Hair hair = plan.hair();
  change(hair);
  Plan after = plan;
  after.put(kHairId, std::move(hair));
  return finished(plan, std::move(after), EditKind::ChangeHair);
}

ChangeSet changePlan(const Plan& plan, const std::function<void(PlanInfo&)>& change) {
  PlanInfo info = plan.info();
  change(info);
  Plan after = plan;
  after.put(kPlanId, std::move(info));
  return finished(plan, std::move(after), EditKind::ChangePlan);
}

ChangeSet setPart(const Plan& plan, std::vector<ScalpPoint> line) {
  Head head = plan.head();
  head.part = std::move(line);
  Plan after = plan;
  after.put(kHeadId, std::move(head));
  return finished(plan, std::move(after), EditKind::ChangePart);
}

ChangeSet shiftPart(const Plan& plan, double shift_mm) {
  const HeadNow now = headOf(plan);
  return setPart(plan, head::partMoved(now.shape, now.hairline, plan.head().part, shift_mm).line);
}

ChangeSet setItem(const Plan& plan, const ItemId& id, Item item) {
  Plan after = plan;
  after.put(id, std::make_shared<const Item>(std::move(item)));
  return finished(plan, std::move(after), EditKind::ChangeItem, {id});
}

}  // namespace combdraft::plan

#include "engine/work/work_list.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "engine/base/number_text.h"
#include "engine/work/outcome.h"
#include "engine/work/speeds.h"

namespace combdraft::work {
namespace {

std::vector<std::pair<plan::ItemId, const plan::Formula*>> formulasIn(const plan::Plan& plan, const std::vector<Job>& jobs) {
  std::set<plan::ItemId> used;
  for (const Job& job : jobs)
    for (const Portion& portion : job.portions) used.insert(portion.formula);
  std::vector<std::pair<plan::ItemId, const plan::Formula*>> found;
  for (const plan::ItemId& id : used)
    if (const auto* formula = plan.find<plan::Formula>(id)) found.emplace_back(id, formula);
  return found;
}

std::vector<FormulaLimits> limitsOf(const plan::Plan& plan, const std::vector<Job>& jobs) {
  std::vector<FormulaLimits> limits;
  for (const auto& [id, formula] : formulasIn(plan, jobs))
    limits.push_back({id, formula->leaflet.workingLife_min, formula->leaflet.longestTime_min});
  return limits;
}

HandSettings handsOf(const plan::Plan& plan, const WorkSettings& settings) {
  const Assumptions own(plan.info().assumptions);
  return {settings.pairs, own["work.mix_min"], own["work.look_min"], own["work.reserve_share"], settings.top, settings.lookEvery_min};
}

void noteFormula(std::vector<WorkNote>& notes, const plan::ItemId& id, const plan::Formula& formula) {
  const auto note = [&](WorkNoteKind kind, double found, double limit, std::string text) {
    notes.push_back({kind, id, {}, found, limit, std::move(text)});
  };
  if (const auto strength = developerStrength(formula); !strength)
    note(WorkNoteKind::StrengthRefused, 0, 0, "found " + strength.error().args[0] + ", allowed is " + strength.error().args[1]);
  for (const plan::Developer& developer : formula.developers) {
    if (!developer.strength) continue;
    const auto own = strengthOf(*developer.strength, developer.unit);
    if (own && own->isOverEuLimit()) note(WorkNoteKind::OverEuLimit, own->percent, kEuLimit_percent, {});
  }
  const auto& life = formula.leaflet.workingLife_min;
  const auto& longest = formula.leaflet.longestTime_min;
  if (life && !(*life > 0)) note(WorkNoteKind::LifeNotAboveZero, *life, 0, {});
  if (longest && !(*longest > 0)) note(WorkNoteKind::LongestNotAboveZero, *longest, 0, {});
  if (!splitByParts(formula, 1)) note(WorkNoteKind::PartsNotTyped, 0, 0, {});
}

// Pieces that come later than they would by pace.
void noteOrder(std::vector<WorkNote>& notes, const plan::Plan& plan, const std::vector<plan::ItemId>& order) {
  const PiecePlaces places(plan);
  std::vector<Pace> paces;
  for (const plan::ItemId& id : order) paces.push_back(places.of(*plan.find<plan::Piece>(id)).pace);
  WorkNote slow{WorkNoteKind::SlowAfterOthers, {}, {}, 0, 0, {}}, fast{WorkNoteKind::HairlineBeforeOthers, {}, {}, 0, 0, {}};
  for (std::size_t i = 0; i < order.size(); ++i) {
    const auto after = paces.begin() + static_cast<std::ptrdiff_t>(i);
    if (paces[i] == Pace::Slow && std::any_of(paces.begin(), after, [](Pace p) { return p != Pace::Slow; })) slow.pieces.push_back(order[i]);
    if (paces[i] == Pace::Hairline && std::any_of(after, paces.end(), [](Pace p) { return p != Pace::Hairline; })) fast.pieces.push_back(order[i]);
  }
  if (!slow.pieces.empty()) notes.push_back(std::move(slow));
  if (!fast.pieces.empty()) notes.push_back(std::move(fast));
}

// Nobody typed when to look: the list itself looks when the last piece is in, which may be long
// after the first. Only the longest wait is told, by no limit of ours; what has a longest time
// is held against that already.
void noteFirstLook(std::vector<WorkNote>& notes, const plan::Plan& plan, const WorkSettings& settings, const WorkList& list) {
  if (settings.lookEvery_min) return;
  const auto& steps = list.timeline.steps;
  const auto look = std::find_if(steps.begin(), steps.end(), [](const Step& s) { return s.kind == StepKind::Look; });
  if (look == steps.end()) return;
  const auto hasLimit = [&](const plan::ItemId& id) {
    const auto* formula = plan.find<plan::Formula>(id);
    return formula && formula->leaflet.longestTime_min.value_or(0) > 0;
  };
  const auto waits = std::find_if(steps.begin(), steps.end(), [&](const Step& s) {  // the first waits longest
    return s.kind == StepKind::Place && !hasLimit(list.timeline.bowls[*s.bowl].formula);
  });
  if (waits == steps.end()) return;
  notes.push_back({WorkNoteKind::FirstLookLate, list.timeline.bowls[*waits->bowl].formula, {waits->piece}, look->from_min - waits->from_min, 0, {}});
}

// Sixty pieces that are each too long for a bowl are one thing to be told, not sixty.
void joinInto(std::vector<WorkNote>& notes, WorkNote note) {
  const auto same = std::find_if(notes.begin(), notes.end(), [&](const WorkNote& n) {
    return n.kind == note.kind && n.formula == note.formula && n.limit == note.limit;
  });
  if (same == notes.end()) return notes.push_back(std::move(note));
  same->found = std::max(same->found, note.found);
  for (plan::ItemId& piece : note.pieces)
    if (std::find(same->pieces.begin(), same->pieces.end(), piece) == same->pieces.end()) same->pieces.push_back(std::move(piece));
}

void noteTimeline(std::vector<WorkNote>& notes, const plan::Plan& plan, const Timeline& timeline) {
  for (const TimelineNote& note : timeline.notes) {
    const WorkNoteKind kind = note.kind == NoteKind::LifeNotTyped          ? WorkNoteKind::LifeNotTyped
                              : note.kind == NoteKind::PieceLongerThanLife ? WorkNoteKind::PieceLongerThanLife
                                                                           : WorkNoteKind::LimitBeforeLastIn;
    const auto* formula = plan.find<plan::Formula>(note.formula);
    if (kind == WorkNoteKind::LifeNotTyped && (!formula || formula->leaflet.workingLife_min)) continue;  // told of the formula
    joinInto(notes, {kind, note.formula, note.piece.empty() ? std::vector<plan::ItemId>{} : std::vector<plan::ItemId>{note.piece},
                     note.found_min, note.limit_min, {}});
  }
}

// By what the user typed alone: who mixes how little is no figure of ours.
void noteTinyBowls(std::vector<WorkNote>& notes, const WorkSettings& settings, const WorkList& list) {
  if (!settings.smallestBowl_g || list.amounts.pieces.empty()) return;  // of hair that is not counted nothing is known
  for (std::size_t i = 0; i < list.bowls.size(); ++i) {
    const Bowl& bowl = list.timeline.bowls[i];
    const double grams = list.bowls[i].mixed_g;
    if (!(grams < *settings.smallestBowl_g)) continue;
    auto same = std::find_if(notes.begin(), notes.end(),
                             [&](const WorkNote& n) { return n.kind == WorkNoteKind::BowlTiny && n.formula == bowl.formula; });
    if (same == notes.end()) {
      notes.push_back({WorkNoteKind::BowlTiny, bowl.formula, {}, grams, *settings.smallestBowl_g, {}});
      same = std::prev(notes.end());
    }
    same->found = std::min(same->found, grams);
    same->text += (same->text.empty() ? "" : ", ") + std::to_string(bowl.number);
    same->pieces.insert(same->pieces.end(), bowl.pieces.begin(), bowl.pieces.end());
  }
}

std::vector<WorkNote> notesOf(const plan::Plan& plan, const WorkSettings& settings, const WorkList& list, const std::vector<Job>& jobs) {
  std::vector<WorkNote> notes;
  WorkNote unnamed{WorkNoteKind::FormulaNotNamed, {}, {}, 0, 0, {}};
  for (const Job& job : jobs)
    if (std::any_of(job.portions.begin(), job.portions.end(), [&](const Portion& p) { return !plan.find<plan::Formula>(p.formula); }))
      unnamed.pieces.push_back(job.piece);
  if (!unnamed.pieces.empty()) notes.push_back(std::move(unnamed));
  for (const auto& [id, formula] : formulasIn(plan, jobs)) noteFormula(notes, id, *formula);
  noteTimeline(notes, plan, list.timeline);
  noteTinyBowls(notes, settings, list);
  noteFirstLook(notes, plan, settings, list);
  noteOrder(notes, plan, list.order);
  if (!settings.foils_mm.empty())
    for (const FoilNeed& foil : list.amounts.foils)
      if (!foil.width_mm)
        notes.push_back({WorkNoteKind::FoilTooNarrow, {}, foil.pieces, foil.needed_mm,
                         *std::max_element(settings.foils_mm.begin(), settings.foils_mm.end()), {}});
  return notes;
}

// Pieces that a saving is tried on: a section's, or those in no section, which lie all over the
// head, zone by zone.
struct Group {
  plan::ItemId section;
  std::optional<plan::HairZone> zone;
  std::vector<plan::ItemId> pieces;
};
std::vector<Group> groupsOf(const plan::Plan& plan, const std::vector<plan::ItemId>& order) {
  const PiecePlaces places(plan);
  std::vector<Group> groups;
  for (const plan::ItemId& id : order) {
    const plan::Piece& piece = *plan.find<plan::Piece>(id);
    Group own;
    if (plan.find<plan::Section>(piece.section))
      own.section = piece.section;
    else
      own.zone = places.of(piece).zone;
    auto group = std::find_if(groups.begin(), groups.end(), [&](const Group& g) { return g.section == own.section && g.zone == own.zone; });
    if (group == groups.end()) group = groups.insert(group, own);
    group->pieces.push_back(id);
  }
  return groups;
}

std::string countOf(const std::vector<plan::ItemId>& pieces) {
  return pieces.size() == 1 ? pieces.front() : std::to_string(pieces.size()) + " pieces";
}

}  // namespace

std::vector<Job> jobsOf(const plan::Plan& plan, const std::vector<plan::ItemId>& order, const Amounts& amounts) {
  const Assumptions own(plan.info().assumptions);
  const PiecePlaces places(plan);
  std::vector<Job> jobs;
  for (const plan::ItemId& id : order) {
    const plan::Piece& piece = *plan.find<plan::Piece>(id);
    const PieceMinutes minutes = minutesOf(piece, own);
    const PieceAmount* amount = amounts.of(id);
    const double root_g = amount ? amount->root_g * own["amount.product_per_hair"] : 0;
    const double end_g = amount ? amount->end_g * own["amount.product_per_hair"] : 0;
    Job job{id, piece.section, minutes.backcomb, minutes.combOut, {}, places.of(piece).top};
    if (piece.handover_mm && piece.end.formula != piece.root.formula)
      job.portions = {{piece.root.formula, minutes.place / 2, root_g}, {piece.end.formula, minutes.place / 2, end_g}};  // half each [own]
    else
      job.portions = {{piece.root.formula, minutes.place, root_g + end_g}};
    jobs.push_back(std::move(job));
  }
  return jobs;
}

std::vector<double> weighedHeads(const OwnFactors& factors, const plan::Plan& typed) {
  constexpr std::string_view kPerHair = "amount.product_per_hair";
  std::vector<double> heads;
  if (typed.info().assumptions.count(std::string(kPerHair))) return heads;
  for (const Assumption& known : assumptionTable()) {
    if (known.name != kPerHair) continue;
    for (const MeasuredHead& head : factors.heads)
      if (const auto& got = head.got[static_cast<std::size_t>(Factor::ProductPerHair)]) heads.push_back(std::clamp(*got, known.low, known.high));
  }
  return heads;
}

namespace {

std::optional<Error> wrongIn(const WorkSettings& settings) {
  if (settings.pairs != 1 && settings.pairs != 2)
    return Error{ErrorCode::OutOfRange, "hands", {std::to_string(settings.pairs), "1 or 2 pairs of hands"}, {}};
  if (settings.lookEvery_min && !(*settings.lookEvery_min > 0))
    return Error{ErrorCode::OutOfRange, "look-every", {numberText(*settings.lookEvery_min), "minutes above 0"}, {}};
  if (settings.smallestBowl_g && !(*settings.smallestBowl_g > 0))
    return Error{ErrorCode::OutOfRange, "smallest-bowl", {numberText(*settings.smallestBowl_g), "grams above 0"}, {}};
  return std::nullopt;
}

AmountSettings amountsIn(const WorkSettings& settings) {
  return {settings.choice, settings.foils_mm, settings.locks, settings.perHair_heads};
}

WorkList listFrom(const plan::Plan& plan, const WorkSettings& settings, Amounts amounts) {
  WorkList list;
  list.amounts = std::move(amounts);
  list.order = workOrder(plan, settings.choice, settings.order);
  const std::vector<Job> jobs = jobsOf(plan, list.order, list.amounts);
  list.timeline = planTimeline(jobs, limitsOf(plan, jobs), handsOf(plan, settings));
  const double waste = Assumptions(plan.info().assumptions)["amount.waste_share"];
  for (const Bowl& bowl : list.timeline.bowls) {
    BowlGrams grams{bowl.product_g * (1 + waste), std::nullopt};
    if (const auto* formula = plan.find<plan::Formula>(bowl.formula)) grams.split = splitByParts(*formula, grams.mixed_g);
    list.bowls.push_back(std::move(grams));
  }
  list.notes = notesOf(plan, settings, list, jobs);
  return list;
}

}  // namespace

Result<WorkList> workListOf(const plan::Plan& plan, const WorkSettings& settings) {
  if (const auto wrong = wrongIn(settings)) return *wrong;
  Result<Amounts> amounts = amountsOf(plan, amountsIn(settings));
  if (!amounts) return amounts.error();
  return listFrom(plan, settings, std::move(amounts).value());
}

Result<WorkList> workListOf(const plan::Plan& plan, const WorkSettings& settings, const HairCount& hair) {
  if (const auto wrong = wrongIn(settings)) return *wrong;
  Result<Amounts> amounts = amountsOf(plan, amountsIn(settings), hair);
  if (!amounts) return amounts.error();
  return listFrom(plan, settings, std::move(amounts).value());
}

std::vector<Saving> savingsOf(const plan::Plan& plan, const WorkSettings& settings, const WorkList& list) {
  constexpr double kLeast_min = 0.5;
  const auto total = [&](const plan::Plan& tried, const WorkSettings& with, const std::set<plan::ItemId>& without) {
    std::vector<plan::ItemId> order;
    for (const plan::ItemId& id : list.order)
      if (!without.count(id)) order.push_back(id);
    const std::vector<Job> jobs = jobsOf(tried, order, list.amounts);
    return planTimeline(jobs, limitsOf(tried, jobs), handsOf(tried, with)).total_min;
  };
  const std::vector<Group> groups = groupsOf(plan, list.order);
  std::vector<Saving> savings;
  const auto offer = [&](Saving::Kind kind, const Group& group, std::vector<plan::ItemId> pieces, double minutes) {
    if (const double saved = list.timeline.total_min - minutes; saved >= kLeast_min)
      savings.push_back({kind, group.section, std::move(pieces), saved, group.zone});
  };
  const auto changed = [&](const std::vector<plan::ItemId>& pieces, auto touches, auto change) {
    std::pair<plan::Plan, std::vector<plan::ItemId>> result{plan, {}};
    for (const plan::ItemId& id : pieces) {
      plan::Piece piece = *plan.find<plan::Piece>(id);
      if (!touches(piece)) continue;
      change(piece);
      result.first.put(id, piece);
      result.second.push_back(id);
    }
    return result;
  };
  for (const Group& group : groups) {
    const std::vector<plan::ItemId>& pieces = group.pieces;
    const auto bare = changed(pieces, isBackcombed, [](plan::Piece& p) { p.backcomb = {}; });
    offer(Saving::Kind::WithoutBackcomb, group, bare.second, total(bare.first, settings, {}));
    const auto sliced = changed(pieces, [](const plan::Piece& p) { return p.taking == plan::Taking::Weave; },
                                [](plan::Piece& p) { p.taking = plan::Taking::Slice; });
    offer(Saving::Kind::SliceForWeave, group, sliced.second, total(sliced.first, settings, {}));
    if (groups.size() > 1)  // all of it would be no appointment
      offer(Saving::Kind::LeaveOut, group, pieces, total(plan, settings, {pieces.begin(), pieces.end()}));
  }
  if (settings.pairs == 1) {
    WorkSettings two = settings;
    two.pairs = 2;
    offer(Saving::Kind::SecondPair, {}, {}, total(plan, two, {}));
  }
  std::stable_sort(savings.begin(), savings.end(), [](const Saving& a, const Saving& b) { return a.saved_min > b.saved_min; });
  return savings;
}

std::string codeName(WorkNoteKind kind) {
  switch (kind) {
    case WorkNoteKind::FormulaNotNamed: return "formula-not-named";
    case WorkNoteKind::SlowAfterOthers: return "slow-after-others";
    case WorkNoteKind::HairlineBeforeOthers: return "hairline-before-others";
    case WorkNoteKind::FoilTooNarrow: return "foil-too-narrow";
    case WorkNoteKind::StrengthRefused: return "strength-refused";
    case WorkNoteKind::OverEuLimit: return "over-eu-limit";
    case WorkNoteKind::LifeNotAboveZero: return "life-not-above-zero";
    case WorkNoteKind::LongestNotAboveZero: return "longest-not-above-zero";
    case WorkNoteKind::PartsNotTyped: return "parts-not-typed";
    case WorkNoteKind::LifeNotTyped: return "life-not-typed";
    case WorkNoteKind::BowlTiny: return "bowl-tiny";
    case WorkNoteKind::PieceLongerThanLife: return "piece-longer-than-life";
    case WorkNoteKind::LimitBeforeLastIn: return "limit-before-last-in";
    case WorkNoteKind::FirstLookLate: return "first-look-late";
  }
  return {};
}

std::string sentenceOf(const WorkNote& note) {
  const auto minutes = [](double value) { return numberText(value, 1) + " min"; };
  switch (note.kind) {
    case WorkNoteKind::FormulaNotNamed:
      return countOf(note.pieces) + ": no formula is named; nothing is known of its bowl";
    case WorkNoteKind::SlowAfterOthers:
      return countOf(note.pieces) + ": resistant hair is placed after hair that takes faster; common practice places it first";
    case WorkNoteKind::HairlineBeforeOthers:
      return countOf(note.pieces) + ": fine hair at the hairline is placed before slower hair; common practice places it last";
    case WorkNoteKind::FoilTooNarrow:
      return countOf(note.pieces) + ": " + numberText(note.found, 0) + " mm wide, and the widest foil is " + numberText(note.limit, 0) + " mm";
    case WorkNoteKind::StrengthRefused: return "developer: " + note.text + "; look at the label again";
    case WorkNoteKind::OverEuLimit:
      return "developer of " + numberText(note.found, 2) +
             " %: outside the EU limit; your maker or place may set less; below it is no sign that it suits this hair";
    case WorkNoteKind::LifeNotAboveZero: return "working life of " + numberText(note.found) + " min: type it from the leaflet, above 0";
    case WorkNoteKind::LongestNotAboveZero: return "longest time of " + numberText(note.found) + " min: type it from the leaflet, above 0";
    case WorkNoteKind::PartsNotTyped: return "parts are not all typed: bowls show their total only; type them from the leaflet";
    case WorkNoteKind::LifeNotTyped: return "working life not typed: no bowl is planned anew; type it from the leaflet";
    case WorkNoteKind::BowlTiny:
      return (note.text.find(',') == std::string::npos ? "bowl " + note.text + ": about " : "bowls " + note.text + ": the smallest about ") +
             numberText(note.found, 1) + " g; you mix " + numberText(note.limit) + " g at least, so more is left over";
    case WorkNoteKind::PieceLongerThanLife:
      return countOf(note.pieces) + ": mixing and placing take " + (note.pieces.size() > 1 ? "up to " : "") + minutes(note.found) + ", a bowl may be used for " + minutes(note.limit) +
             "; no order avoids it, only a smaller piece or a quicker hand";
    case WorkNoteKind::LimitBeforeLastIn:
      return countOf(note.pieces) + ": on the hair for " + minutes(note.found) + " when the last piece is in; the maker's longest time is " +
             minutes(note.limit);
    case WorkNoteKind::FirstLookLate:
      return countOf(note.pieces) + ": on the hair for " + minutes(note.found) +
             " before the list looks for the first time; neither the maker's longest time nor rounds of looking are typed";
  }
  return {};
}

}  // namespace combdraft::work

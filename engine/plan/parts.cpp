#include "engine/plan/parts.h"

#include <algorithm>
#include <set>

#include "engine/plan/field_info.h"
#include "engine/plan/head_fit.h"
#include "engine/plan/lay_out.h"
#include "engine/plan/twins.h"

namespace combdraft::plan {
namespace {

template <class T>
std::vector<std::pair<ItemId, const T*>> allOf(const Plan& plan) {
  std::vector<std::pair<ItemId, const T*>> found;
  for (const auto& [id, item] : plan.items())
    if (const T* value = std::get_if<T>(item.get())) found.emplace_back(id, value);
  std::sort(found.begin(), found.end(), [](const auto& a, const auto& b) {
    if constexpr (requires { a.second->order; })
      if (a.second->order != b.second->order) return a.second->order < b.second->order;
    return idLess(a.first, b.first);
  });
  return found;
}

// ---- pairs ----------------------------------------------------------------

std::set<ItemId> followingTwins(const Plan& plan) {
  std::set<ItemId> twins;
  for (const auto& [id, item] : allOf<Section>(plan))
    if (followsSource(plan, *item)) twins.insert(id);
  for (const auto& [id, item] : allOf<Piece>(plan))
    if (followsSource(plan, *item)) twins.insert(id);
  return twins;
}

Section mirrorOf(const Plan&, const ItemId& source, const Section& section) {
  return mirroredSection(source, section);
}
Piece mirrorOf(const Plan& plan, const ItemId& source, const Piece& piece) {
  return mirroredPiece(plan, source, piece);
}

// Makes these twins from their sources again; those without one are left alone.
template <class T>
void mirrorAgain(Plan& plan, const std::set<ItemId>& twins) {
  for (const ItemId& id : twins) {
    const T* twin = plan.find<T>(id);
    if (!twin || twin->twinOf.empty()) continue;
    T whole = mirrorOf(plan, twin->twinOf, *plan.find<T>(twin->twinOf));
    whole.order = twin->order;
    whole.extra = twin->extra;
    plan.put(id, std::move(whole));
  }
}

// ---- names in the new plan ------------------------------------------------

/// Hands out ids that no item, retired piece or earlier call has.
class FreeIds {
 public:
  explicit FreeIds(const Plan& plan) {
    for (const auto& [id, item] : plan.items()) {
      taken_.insert(id);
      if (const Section* section = std::get_if<Section>(item.get()))
        for (const RetiredPiece& piece : section->retired) taken_.insert(piece.id);
    }
    taken_.merge(recordedIds(plan.info()));
  }
  ItemId next(const std::string& stem) {
    int& number = last_[stem];
    ItemId id;
    do id = stem + "-" + std::to_string(++number);
    while (!taken_.insert(id).second);
    return id;
  }

 private:
  std::set<ItemId> taken_;
  std::map<std::string, int> last_;
};

class Adding {
 public:
  Adding(const Plan& plan, const Plan& parts)
      : before_(plan), parts_(parts), after_(plan), ids_(plan), choice_(plan.info().activeChoice) {}

  Plan run() {
    addFormulas();
    for (const auto& entry : allOf<Section>(parts_)) names_[entry.first] = ids_.next("section");
    for (const auto& entry : allOf<Piece>(parts_)) names_[entry.first] = ids_.next("piece");
    nameFoils();
    addAll<Section>();
    addAll<Piece>();
    for (const auto& [id, note] : allOf<Note>(parts_)) {
      Note copy = *note;
      copy.choice = choice_;
      after_.put(names_[id] = ids_.next("note"), std::move(copy));
    }
    return after_;
  }

  const ItemId& nameOf(const ItemId& id) const { return names_.at(id); }

 private:
  void addFormulas() {
    std::set<std::string> letters;
    for (const auto& [id, formula] : allOf<Formula>(before_)) letters.insert(formula->letter);
    for (const auto& [id, formula] : allOf<Formula>(parts_)) {
      const Formula* same = before_.find<Formula>(id);
      if (same && *same == *formula) names_.emplace(id, id);
      for (const auto& [known, other] : allOf<Formula>(before_))
        if (*other == *formula) names_.emplace(id, known);
      if (names_.count(id)) continue;
      Formula copy = *formula;
      for (char letter = 'A'; letters.count(copy.letter) && letter <= 'Z'; ++letter)
        if (!letters.count({letter})) copy.letter = letter;
      letters.insert(copy.letter);
      after_.put(names_[id] = ids_.next("formula"), std::move(copy));
    }
  }

  // A foil of the same name would be the same foil.
  void nameFoils() {
    std::set<std::string> taken;
    for (const auto& [id, piece] : before_.pieces(choice_)) taken.insert(piece->foil);
    for (const auto& [id, piece] : allOf<Piece>(parts_)) {
      if (piece->foil.empty() || foils_.count(piece->foil)) continue;
      std::string name = piece->foil;
      for (int n = 2; taken.count(name); ++n) name = piece->foil + "-" + std::to_string(n);
      taken.insert(name);
      foils_[piece->foil] = name;
    }
  }

  template <class T>
  void addAll() {
    int order = 0;
    for (const auto& [id, item] : allOf<T>(before_))
      if (item->choice == choice_) order = std::max(order, item->order);
    const auto all = allOf<T>(parts_);
    std::map<ItemId, int> orders;
    for (const auto& entry : all) orders[entry.first] = ++order;
    // Sources first: a twin is made from its source as it stands here.
    for (const auto& [id, item] : all)
      if (!followsSource(parts_, *item)) put(id, renamed(*item, nameOf(id)), orders[id]);
    for (const auto& [id, item] : all) {
      if (!followsSource(parts_, *item)) continue;
      const ItemId& source = nameOf(item->twinOf);
      T twin = mirrorOf(after_, source, *after_.find<T>(source));
      twin.extra = item->extra;
      put(id, std::move(twin), orders[id]);
    }
  }

  template <class T>
  void put(const ItemId& id, T item, int order) {
    item.order = order;
    after_.put(nameOf(id), std::move(item));
  }

  Section renamed(Section section, const ItemId& own) {
    section.choice = choice_;
    if (!section.twinOf.empty()) section.twinOf = nameOf(section.twinOf);
    for (RetiredPiece& piece : section.retired) {
      static_cast<Piece&>(piece) = renamed(static_cast<const Piece&>(piece));
      piece.section = own;
      piece.id = ids_.next("piece");
    }
    return section;
  }
  Piece renamed(Piece piece, const ItemId& = {}) const {
    piece.choice = choice_;
    if (!piece.twinOf.empty()) piece.twinOf = nameOf(piece.twinOf);
    if (!piece.section.empty()) piece.section = nameOf(piece.section);
    if (const auto foil = foils_.find(piece.foil); foil != foils_.end()) piece.foil = foil->second;
    for (ZoneColour* zone : {&piece.root, &piece.end})
      if (!zone->formula.empty()) zone->formula = nameOf(zone->formula);
    return piece;
  }

  const Plan& before_;
  const Plan& parts_;
  Plan after_;
  FreeIds ids_;
  const ItemId choice_;
  std::map<ItemId, ItemId> names_;
  std::map<std::string, std::string> foils_;
};

std::optional<Error> overLimits(const Plan& plan) {
  std::size_t points = 0;
  for (const auto& entry : allOf<Piece>(plan)) points += entry.second->line.size();
  for (const auto& entry : allOf<Section>(plan)) {
    points += entry.second->outline.size();
    for (const RetiredPiece& piece : entry.second->retired) points += piece.line.size();
  }
  const struct {
    std::size_t count, most;
    const char* what;
  } kinds[] = {{allOf<Piece>(plan).size(), limits::kPieces, "pieces"},
               {allOf<Section>(plan).size(), limits::kSections, "sections"},
               {allOf<Note>(plan).size(), limits::kNotes, "notes"},
               {allOf<Formula>(plan).size(), limits::kFormulas, "formulas"},
               {points, limits::kPoints, "points"}};
  for (const auto& kind : kinds)
    if (kind.count > kind.most)
      return Error{ErrorCode::TooManyItems, "",
                   {std::to_string(kind.count) + " " + kind.what, std::to_string(kind.most)}, {}};
  return std::nullopt;
}

}  // namespace

Plan noParts() {
  Plan plan = Plan::fresh(1);
  PlanInfo info = plan.info();
  plan.put(info.activeChoice, ItemPtr{});
  info.activeChoice.clear();
  plan.put(kPlanId, std::move(info));
  return plan;
}

void tidyParts(Plan& plan) {
  const auto tidyPiece = [&](Piece& piece) {
    piece.choice.clear();
    if (!plan.find<Section>(piece.section)) {
      piece.section.clear();
      piece.laidOut.reset();
    }
    for (ZoneColour* zone : {&piece.root, &piece.end})
      if (!plan.find<Formula>(zone->formula)) zone->formula.clear();
  };
  const auto tidyTwin = [](ItemId& twinOf, const auto* source) {
    if (!source || !source->twinOf.empty()) twinOf.clear();
  };
  Plan tidy = plan;
  for (const auto& [id, found] : allOf<Section>(plan)) {
    Section section = *found;
    section.choice.clear();
    for (RetiredPiece& piece : section.retired) {
      piece.section = id;
      tidyPiece(piece);
      piece.section.clear();
      piece.twinOf.clear();
    }
    tidyTwin(section.twinOf, plan.find<Section>(section.twinOf));
    tidy.put(id, std::move(section));
  }
  for (const auto& [id, found] : allOf<Piece>(plan)) {
    Piece piece = *found;
    tidyPiece(piece);
    tidyTwin(piece.twinOf, plan.find<Piece>(piece.twinOf));
    tidy.put(id, std::move(piece));
  }
  for (const auto& [id, found] : allOf<Note>(plan)) {
    Note note = *found;
    note.choice.clear();
    tidy.put(id, std::move(note));
  }
  plan = std::move(tidy);
}

Parts partsOf(const Plan& plan, const std::vector<ItemId>& ids) {
  const std::set<ItemId> wanted(ids.begin(), ids.end());
  Parts parts{{}, {}, {}, noParts()};
  Plan& out = parts.plan;
  Head head = out.head();
  head.measures = plan.head().measures;
  head.hairline = plan.head().hairline;
  out.put(kHeadId, std::move(head));

  std::set<ItemId> formulas;
  const auto use = [&](const Piece& piece) {
    formulas.insert(piece.root.formula);
    formulas.insert(piece.end.formula);
  };
  for (const auto& [id, section] : allOf<Section>(plan)) {
    if (!wanted.count(id)) continue;
    out.put(id, plan.item(id));
    for (const RetiredPiece& piece : section->retired) use(piece);
  }
  const auto isIn = [&](const ItemId& id, const Piece& piece) {
    return wanted.count(id) || (!piece.section.empty() && wanted.count(piece.section));
  };
  for (const auto& [id, piece] : allOf<Piece>(plan)) {
    if (!isIn(id, *piece)) continue;
    out.put(id, plan.item(id));
    use(*piece);
  }
  for (const ItemId& id : formulas)
    if (plan.find<Formula>(id)) out.put(id, plan.item(id));
  for (const auto& [id, note] : allOf<Note>(plan))
    if (wanted.count(id)) out.put(id, plan.item(id));

  tidyParts(out);
  // A pair stays one, also when a section of one of the two stayed behind.
  const std::set<ItemId> pairs = followingTwins(plan);
  mirrorAgain<Section>(out, pairs);
  mirrorAgain<Piece>(out, pairs);
  return parts;
}

void changePoints(Plan& parts, const std::function<void(ScalpPoint&)>& change) {
  Plan changed = parts;
  const auto changePiece = [&](Piece& piece) {
    for (ScalpPoint& point : piece.line) change(point);
  };
  for (const auto& [id, found] : allOf<Section>(parts)) {
    Section section = *found;
    for (ScalpPoint& point : section.outline) change(point);
    if (section.layout && section.layout->pivot) change(*section.layout->pivot);
    for (RetiredPiece& piece : section.retired) changePiece(piece);
    changed.put(id, std::move(section));
  }
  for (const auto& [id, found] : allOf<Piece>(parts)) {
    Piece piece = *found;
    changePiece(piece);
    changed.put(id, std::move(piece));
  }
  for (const auto& [id, found] : allOf<Note>(parts)) {
    Note note = *found;
    change(note.at);
    changed.put(id, std::move(note));
  }
  parts = std::move(changed);
}

Result<ChangeSet> addParts(const Plan& plan, Parts parts, EditKind kind, Runs runs) {
  const HeadFit fit(parts.plan.head(), plan.head());
  if (!fit.isSameHead()) {
    const std::set<ItemId> pairs = followingTwins(parts.plan);
    changePoints(parts.plan, [&](ScalpPoint& point) { point = fit(point); });
    mirrorAgain<Section>(parts.plan, pairs);
    mirrorAgain<Piece>(parts.plan, pairs);
  }
  Adding adding(plan, parts.plan);
  Plan after = adding.run();

  if (!fit.isSameHead() || runs == Runs::FlowAnew) {
    for (const auto& entry : allOf<Section>(parts.plan))
      after = reflowed(std::move(after), adding.nameOf(entry.first));
    std::set<ItemId> pairs;
    for (const ItemId& id : followingTwins(parts.plan)) pairs.insert(adding.nameOf(id));
    mirrorAgain<Piece>(after, pairs);
  }
  if (auto error = overLimits(after)) return *error;

  std::vector<std::string> made;
  for (const auto& entry : allOf<Section>(parts.plan)) made.push_back(adding.nameOf(entry.first));
  for (const auto& entry : allOf<Piece>(parts.plan))
    if (entry.second->section.empty()) made.push_back(adding.nameOf(entry.first));
  for (const auto& entry : allOf<Note>(parts.plan)) made.push_back(adding.nameOf(entry.first));
  return difference(plan, after, kind, std::move(made));
}

}  // namespace combdraft::plan

#include "engine/plan/validate.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "engine/base/assumptions.h"
#include "engine/base/number_text.h"
#include "engine/head/surface_distance.h"
#include "engine/plan/field_check.h"
#include "engine/plan/field_info.h"
#include "engine/plan/hair_marks.h"
#include "engine/plan/plan_words.h"
#include "engine/plan/twins.h"

namespace combdraft::plan {
namespace {

// Where "near the scalp" begins [own]: with the scatter of the start from lock
// to lock (6 mm) a start under this may touch the skin.
constexpr double kNearScalp_mm = 10;
constexpr double kShortestLine_mm = 0.5;

class Validator {
 public:
  explicit Validator(const Plan& plan) : plan_(plan) {}

  std::vector<Issue> run() {
    checkValues();
    checkHead();
    checkHair();
    checkPlan();
    for (const auto& [id, item] : plan_.items()) {
      if (const auto* section = std::get_if<Section>(item.get())) checkSection(id, *section);
      if (const auto* treatment = std::get_if<Treatment>(item.get()))
        checkTreatment(id, *treatment);
      if (const auto* note = std::get_if<Note>(item.get())) checkChoice(id, note->choice);
      if (const auto* choice = std::get_if<Choice>(item.get())) checkTargets(id, *choice);
    }
    for (const auto& [id, piece] : everyPiece()) checkPiece(id, *piece);
    checkOrders();
    std::stable_sort(issues_.begin(), issues_.end(), [](const Issue& a, const Issue& b) {
      return a.severity < b.severity;
    });
    return std::move(issues_);
  }

 private:
  // Items with the same trouble share one issue.
  void add(IssueCode code, Severity severity, const ItemId& id,
           std::vector<std::string> args = {}) {
    for (Issue& issue : issues_)
      if (issue.code == code && issue.args == args) {
        if (issue.items.empty() || issue.items.back() != id) issue.items.push_back(id);
        return;
      }
    issues_.push_back({code, severity, {id}, std::move(args)});
  }
  void error(IssueCode code, const ItemId& id, std::vector<std::string> args = {}) {
    add(code, Severity::Error, id, std::move(args));
  }
  void caution(IssueCode code, const ItemId& id, std::vector<std::string> args = {}) {
    add(code, Severity::Caution, id, std::move(args));
  }
  void note(IssueCode code, const ItemId& id, std::vector<std::string> args = {}) {
    add(code, Severity::Note, id, std::move(args));
  }

  std::vector<std::pair<ItemId, const Piece*>> everyPiece() const {
    std::vector<std::pair<ItemId, const Piece*>> found;
    for (const auto& [id, item] : plan_.items())
      if (const auto* piece = std::get_if<Piece>(item.get())) found.emplace_back(id, piece);
    std::sort(found.begin(), found.end(), [](const auto& a, const auto& b) {
      return a.second->order != b.second->order ? a.second->order < b.second->order
                                                : idLess(a.first, b.first);
    });
    return found;
  }

  void checkValues() {
    for (const auto& [id, item] : plan_.items())
      for (const FieldProblem& problem : checkFields(*item))
        error(IssueCode::ValueOutOfRange, id, {problem.field, problem.found, problem.allowed});
  }

  void checkHead() {
    const auto fitted = head::fitHead(plan_.head().measures);
    if (!fitted) {
      error(IssueCode::MeasuresRefused, kHeadId,
            {fitted.error().where, describe(fitted.error())});
    } else {
      shape_ = head::HeadShape(fitted->axes);
      if (fitted->contradictory) note(IssueCode::MeasuresContradict, kHeadId);
      for (const head::MeasureNote& unusual : fitted->notes)
        note(IssueCode::MeasureUnusual, kHeadId,
             {unusual.name, numberText(unusual.value_mm, 0) + " mm",
              numberText(unusual.low_mm) + " to " + numberText(unusual.high_mm) + " mm"});
    }
    hairline_ = head::Hairline(shape_, plan_.head().hairline);
    checkPoints(kHeadId, plan_.head().part);
    for (const Whorl& whorl : plan_.head().whorls) checkPoints(kHeadId, {whorl.at});
  }

  void checkHair() {
    const Hair& hair = plan_.hair();
    for (std::size_t i = 0; i < hair.bands.size(); ++i)
      if (!(hair.bands[i].from_mm < hair.bands[i].to_mm))
        note(IssueCode::StretchBackwards, kHairId, {"bands", std::to_string(i + 1)});
    for (std::size_t i = 0; i < hair.scattered.size(); ++i)
      if (!(hair.scattered[i].from_mm < hair.scattered[i].to_mm))
        note(IssueCode::StretchBackwards, kHairId, {"scattered", std::to_string(i + 1)});
  }

  void checkPlan() {
    const auto isChoice = [](const auto& entry) {
      return std::holds_alternative<Choice>(*entry.second);
    };
    if (std::none_of(plan_.items().begin(), plan_.items().end(), isChoice))
      error(IssueCode::ChoiceMissing, kPlanId);
    else if (!plan_.find<Choice>(plan_.info().activeChoice))
      error(IssueCode::ActiveChoiceUnknown, kPlanId, {plan_.info().activeChoice});
    for (const auto& [name, value] : plan_.info().assumptions) {
      const auto table = assumptionTable();
      const auto known = std::find_if(table.begin(), table.end(), [&n = name](const Assumption& a) {
        return a.name == n;
      });
      if (known == table.end())
        note(IssueCode::AssumptionUnknown, kPlanId, {name});
      else if (!(value >= known->low && value <= known->high))
        error(IssueCode::AssumptionOutOfRange, kPlanId,
              {name, numberText(value),
               numberText(known->low) + " to " + numberText(known->high)});
    }
  }

  void checkTargets(const ItemId& id, const Choice& choice) {
    for (const auto& [region, target] : choice.targets) {
      const double darkest = target.darkest.value_or(0), brightest = target.brightest.value_or(99);
      const double level = target.level.value_or(darkest);
      if (!(darkest <= level && level <= brightest))
        note(IssueCode::TargetContradicts, id, {region});
    }
    for (const auto& [region, json] : choice.otherTargets) note(IssueCode::TargetUnknown, id, {region});
  }

  void checkPoints(const ItemId& id, const std::vector<ScalpPoint>& points) {
    double worst = 0;
    for (const ScalpPoint& point : points)
      worst = std::min(worst, hairline_.above_mm(shape_.pointAt(point)));
    if (worst < -limits::kOffHair_mm)
      error(IssueCode::PointOffHair, id, {numberText(-worst, 0)});
  }

  void checkChoice(const ItemId& id, const ItemId& choice) {
    if (!plan_.find<Choice>(choice)) error(IssueCode::ChoiceUnknown, id, {choice});
  }

  template <class T>
  void checkTwin(const ItemId& id, const T& item) {
    if (item.twinOf.empty()) return;
    const T* source = plan_.find<T>(item.twinOf);
    if (!source)
      error(IssueCode::TwinUnknown, id, {item.twinOf});
    else if (!source->twinOf.empty())
      error(IssueCode::TwinOfTwin, id, {item.twinOf});
    else if (!followsSource(plan_, item))
      note(IssueCode::TwinDiffers, id);
  }

  void checkSection(const ItemId& id, const Section& section) {
    checkChoice(id, section.choice);
    checkPoints(id, section.outline);
    checkTwin(id, section);
  }

  void checkFormula(const ItemId& id, const ItemId& formula) {
    if (!formula.empty() && !plan_.find<Formula>(formula))
      error(IssueCode::FormulaUnknown, id, {formula});
  }

  // What the leaflet says about the scalp, when it does not allow it.
  std::optional<std::string> scalpDoubt(const ItemId& formula) const {
    const Formula* known = plan_.find<Formula>(formula);
    const auto contact = known ? known->leaflet.scalpContact : ScalpContact::NotStated;
    if (contact == ScalpContact::Yes) return std::nullopt;
    return std::string(wordOf(contact));
  }

  void checkTreatment(const ItemId& id, const Treatment& treatment) {
    checkChoice(id, treatment.choice);
    checkFormula(id, treatment.formula);
    if (treatment.strength_frac <= 0) return;
    if (const auto doubt = scalpDoubt(treatment.formula))
      caution(IssueCode::TreatmentNearScalp, id, {*doubt, treatment.formula});
  }

  void checkPiece(const ItemId& id, const Piece& piece) {
    checkChoice(id, piece.choice);
    checkPoints(id, piece.line);
    checkTwin(id, piece);
    if (!piece.section.empty()) {
      const Section* section = plan_.find<Section>(piece.section);
      if (!section)
        error(IssueCode::SectionUnknown, id, {piece.section});
      else if (section->choice != piece.choice)
        error(IssueCode::SectionOfOtherChoice, id, {piece.section});
    }
    checkFormula(id, piece.root.formula);
    checkFormula(id, piece.end.formula);
    checkLine(id, piece);
    if (piece.action == Action::LeaveOut) return;
    checkTaking(id, piece);
    checkAlongStrand(id, piece);
    checkCare(id, piece);
  }

  void checkLine(const ItemId& id, const Piece& piece) {
    std::vector<Vec3> given;
    for (const ScalpPoint& point : piece.line) given.push_back(shape_.pointAt(point));
    const auto close = head::resampledOnSurface(shape_, given);
    const double length_mm = close.size() < 2 ? 0 : head::lineLength_mm(shape_, close);
    if (length_mm < kShortestLine_mm) return error(IssueCode::LineWithoutLength, id);
    for (const Stretch& dropOut : piece.dropOuts)
      if (dropOut.from_mm >= length_mm)
        note(IssueCode::DropOutBeyondLine, id, {numberText(length_mm, 0)});
  }

  void checkTaking(const ItemId& id, const Piece& piece) {
    if (piece.gap_mm > 0 && piece.tooth_mm == 0) note(IssueCode::GapWithoutTeeth, id);
    if (piece.taking == Taking::Weave && (piece.tooth_mm == 0 || piece.gap_mm == 0))
      note(IssueCode::WeaveWithoutTeeth, id);
  }

  void checkAlongStrand(const ItemId& id, const Piece& piece) {
    const Backcomb& comb = piece.backcomb;
    const bool combed = comb.depth_mm > 0 && comb.pushed_frac > 0;
    if (combed && comb.depth_mm < piece.start_mm) note(IssueCode::BackcombBeforeStart, id);
    if (piece.handover_mm && *piece.handover_mm < piece.start_mm)
      note(IssueCode::HandoverBeforeStart, id);
    if (piece.stop_mm && *piece.stop_mm <= piece.start_mm) note(IssueCode::StopBeforeStart, id);
    double longest_mm = 0;
    for (const HairZone zone : zonesOf(shape_, piece))
      longest_mm = std::max(longest_mm, plan_.hair().length_mm[static_cast<std::size_t>(zone)]);
    if (longest_mm <= piece.start_mm)
      note(IssueCode::HairShorterThanStart, id, {numberText(longest_mm)});
    else if (combed && longest_mm <= comb.depth_mm)
      note(IssueCode::HairShorterThanBackcomb, id, {numberText(longest_mm)});
    const auto backwards = [](const LiftsTo& l) { return !(l.low <= l.level && l.level <= l.high); };
    if (piece.action == Action::Lighten &&
        (backwards(piece.root.lifts) || (piece.handover_mm && backwards(piece.end.lifts))))
      note(IssueCode::SpanBackwards, id);
  }

  // Cautions: the page on hair and skin in docs/words.md says what each is for.
  void checkCare(const ItemId& id, const Piece& piece) {
    if (piece.start_mm <= kNearScalp_mm)
      if (const auto doubt = scalpDoubt(piece.root.formula))
        caution(IssueCode::StartNearScalp, id, {*doubt, piece.root.formula});
    const std::set<HairZone> zones = zonesOf(shape_, piece);
    if (piece.backcomb.depth_mm > 0 && piece.backcomb.pushed_frac > 0)
      for (const Condition doubtful : {Condition::Poor, Condition::NotChecked})
        if (anyIn(plan_.hair(), zones, doubtful))
          caution(IssueCode::BackcombCondition, id, {std::string(wordOf(doubtful))});
    if (piece.action != Action::Lighten) return;
    if (anyIn(plan_.hair(), zones, Condition::Poor)) caution(IssueCode::LightOverPoor, id);
    if (meetsLightHair(plan_.hair(), zones, piece)) caution(IssueCode::LightOverLight, id);
  }

  void checkOrders() {
    std::map<std::pair<ItemId, int>, std::vector<ItemId>> users;
    for (const auto& [id, piece] : everyPiece())
      users[{piece->choice, piece->order}].push_back(id);
    for (const auto& [place, ids] : users)
      if (ids.size() > 1)
        for (const ItemId& id : ids)
          note(IssueCode::OrderTwice, id, {std::to_string(place.second), place.first});
  }

  const Plan& plan_;
  head::HeadShape shape_;
  head::Hairline hairline_{shape_};
  std::vector<Issue> issues_;
};

}  // namespace

std::vector<Issue> validate(const Plan& plan) { return Validator(plan).run(); }

bool hasErrors(const std::vector<Issue>& issues) {
  return std::any_of(issues.begin(), issues.end(),
                     [](const Issue& issue) { return issue.severity == Severity::Error; });
}

}  // namespace combdraft::plan

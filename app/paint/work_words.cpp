#include "app/paint/work_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <algorithm>
#include <cmath>

#include "app/paint/figure.h"
#include "app/words/date_words.h"
#include "app/words/engine_words.h"
#include "engine/base/number_text.h"
#include "engine/plan/plan_words.h"

namespace combdraft::paint {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Appointment)
};

QString plain(const std::string& text) { return QString::fromStdString(text); }
QString number(double value, int decimals = 1) { return paint::figure(numberText(value, decimals)); }
QString typed(double value) { return paint::figure(numberText(value)); }

QString piecesName(const plan::Plan& plan, const std::vector<plan::ItemId>& pieces) {
  constexpr std::size_t kNamed = 3;
  if (pieces.size() > kNamed) return Words::tr("%1 pieces").arg(pieces.size());
  QStringList names;
  for (const plan::ItemId& id : pieces) names << pieceName(plan, id);
  return names.join(QStringLiteral(", "));
}

QString placeText(const plan::Plan& plan, const work::Timeline& timeline, const work::StepLine& line, const PlaceBook& places) {
  const work::Step &first = timeline.steps[line.front()], &last = timeline.steps[line.back()];
  const work::Bowl& bowl = timeline.bowls[*first.bowl];
  const QString name = placedName(plan, first.piece, places), from = bowlName(plan, bowl), age = minutes(first.productAge_min);
  if (line.size() > 1)
    return Words::tr("place %1, from %2 up to the handover, then from %3; product %4 and %5 min old")
        .arg(name, from, bowlName(plan, timeline.bowls[*last.bowl]), age, minutes(last.productAge_min));
  const auto* piece = plan.find<plan::Piece>(first.piece);
  if (!piece || !piece->handover_mm || piece->root.formula == piece->end.formula)
    return Words::tr("place %1, from %2; product %3 min old").arg(name, from, age);
  // A bowl was mixed between its two formulas.
  return (bowl.formula == piece->root.formula ? Words::tr("place %1 up to the handover, from %2; product %3 min old")
                                              : Words::tr("place %1 beyond the handover, from %2; product %3 min old"))
      .arg(name, from, age);
}

}  // namespace

QString pieceName(const plan::Plan& plan, const plan::ItemId& id) {
  const auto* piece = plan.find<plan::Piece>(id);
  if (!piece || piece->order == 0) return plain(id).replace(u'-', u' ');
  // Several pieces often have one label.
  return piece->label.empty() ? Words::tr("piece %1").arg(piece->order) : Words::tr("%1 %2").arg(piece->order).arg(plain(piece->label));
}

QString placedName(const plan::Plan& plan, const plan::ItemId& id, const PlaceBook& places) {
  const QString name = pieceName(plan, id), place = places.of(id);
  const auto* piece = plan.find<plan::Piece>(id);
  if (place.isEmpty() || (piece && !piece->label.empty() && plain(piece->label).startsWith(place))) return name;
  return Words::tr("%1, %2").arg(name, place);
}

QString formulaName(const plan::Plan& plan, const plan::ItemId& id) {
  const auto* formula = plan.find<plan::Formula>(id);
  if (!formula) return Words::tr("no formula named");
  const QString letter = plain(formula->letter), kind = plain(formula->kind);
  if (letter.isEmpty() && kind.isEmpty()) return plain(id).replace(u'-', u' ');
  if (kind.isEmpty() || letter.isEmpty()) return letter + kind;
  return Words::tr("%1, %2").arg(letter, kind);
}

QString sectionName(const plan::Plan& plan, const work::Saving& saving) {
  if (const auto* section = plan.find<plan::Section>(saving.section))
    return section->label.empty() ? plain(saving.section).replace(u'-', u' ') : plain(section->label);
  const QString pieces = saving.pieces.size() == 1 ? pieceName(plan, saving.pieces.front()) : Words::tr("%1 pieces").arg(saving.pieces.size());
  return saving.zone ? Words::tr("%1, %2").arg(pieces, words::inWords(plan::wordOf(*saving.zone))) : pieces;
}

QString bowlName(const plan::Plan& plan, const work::Bowl& bowl) {
  return Words::tr("%1: bowl %2").arg(formulaName(plan, bowl.formula)).arg(bowl.number);
}

QString minutes(double value) { return number(value, 1); }

QString clockText(double seconds) {
  const auto whole = static_cast<long long>(std::max(0.0, std::floor(seconds)));
  const QString ending = QStringLiteral("%1:%2").arg(whole / 60 % 60, whole >= 3600 ? 2 : 1, 10, QLatin1Char('0')).arg(whole % 60, 2, 10, QLatin1Char('0'));
  return whole >= 3600 ? QString::number(whole / 3600) + u':' + ending : ending;
}

QString noteText(const plan::Plan& plan, const work::WorkNote& note) {
  using Kind = work::WorkNoteKind;
  const QString pieces = piecesName(plan, note.pieces), formula = formulaName(plan, note.formula);
  switch (note.kind) {
    case Kind::FormulaNotNamed:
      return Words::tr("%1: no formula is named, so nothing is known of its bowl. Choose one on the piece card.").arg(pieces);
    case Kind::SlowAfterOthers:
      return Words::tr("%1: resistant hair comes after hair that takes faster. Common practice places it first.").arg(pieces);
    case Kind::HairlineBeforeOthers:
      return Words::tr("%1: fine hair at the hairline comes before slower hair. Common practice places it last.").arg(pieces);
    case Kind::FoilTooNarrow:
      return Words::tr("%1: %2 mm along the parting; your widest foil is %3 mm.").arg(pieces, number(note.found, 0), number(note.limit, 0));
    case Kind::StrengthRefused: return Words::tr("%1, developer: %2. Look at the label again.").arg(formula, words::inWords(note.text));
    case Kind::OverEuLimit:
      return Words::tr("%1, developer of %2 %: outside the EU limit; your maker or place may set less; below it is no sign that it suits this hair.")
          .arg(formula, number(note.found, 2));
    case Kind::LifeNotAboveZero: return Words::tr("%1: a working life of %2 min. Type it from the leaflet, above 0.").arg(formula, typed(note.found));
    case Kind::LongestNotAboveZero: return Words::tr("%1: a longest time of %2 min. Type it from the leaflet, above 0.").arg(formula, typed(note.found));
    case Kind::PartsNotTyped: return Words::tr("%1: bowls show their total only. Type the parts from the leaflet to have grams of each.").arg(formula);
    case Kind::LifeNotTyped: return Words::tr("%1: no bowl is planned anew. Type from the leaflet how long a bowl may be used.").arg(formula);
    case Kind::BowlTiny:
      return (note.text.find(',') == std::string::npos
                  ? Words::tr("%1, bowl %2: about %3 g. You mix %4 g at least, so more is left over.")
                  : Words::tr("%1, bowls %2: the smallest about %3 g. You mix %4 g at least, so more is left over."))
          .arg(formula, plain(note.text), number(note.found), typed(note.limit));
    case Kind::PieceLongerThanLife:
      if (note.pieces.size() > 1)
        return Words::tr("%1: mixing and placing take up to %2 min, a bowl of %3 may be used for %4 min. No order avoids it: only smaller pieces or a quicker hand.")
            .arg(pieces, minutes(note.found), formula, minutes(note.limit));
      return Words::tr("%1: mixing and placing take %2 min, a bowl of %3 may be used for %4 min. No order avoids it: only a smaller piece or a quicker hand.")
          .arg(pieces, minutes(note.found), formula, minutes(note.limit));
    case Kind::LimitBeforeLastIn:
      return Words::tr("%1: on the hair for %2 min when the last piece is in; the maker's longest time for %3 is %4 min.")
          .arg(pieces, minutes(note.found), formula, minutes(note.limit));
    case Kind::FirstLookLate:
      return Words::tr("%1: on the hair for %2 min before the list looks for the first time. Neither the maker's longest time nor rounds of looking (Look every) are typed.")
          .arg(pieces, minutes(note.found));
  }
  return {};
}

QString savingText(const plan::Plan& plan, const work::Saving& saving) {
  const QString section = sectionName(plan, saving), saved = minutes(saving.saved_min);
  switch (saving.kind) {
    case work::Saving::Kind::SecondPair: return Words::tr("%1 min: a second pair of hands").arg(saved);
    case work::Saving::Kind::WithoutBackcomb: return Words::tr("%1 min: %2, without backcombing").arg(saved, section);
    case work::Saving::Kind::SliceForWeave: return Words::tr("%1 min: %2, sliced, not woven").arg(saved, section);
    case work::Saving::Kind::LeaveOut: return Words::tr("%1 min: %2, left out").arg(saved, section);
  }
  return {};
}

QString stepText(const plan::Plan& plan, const work::Timeline& timeline, const work::StepLine& line, const PlaceBook& places) {
  const work::Step& step = timeline.steps[line.front()];
  switch (step.kind) {
    case work::StepKind::Mix: return Words::tr("mix %1").arg(bowlName(plan, timeline.bowls[*step.bowl]));
    case work::StepKind::Backcomb: return Words::tr("backcomb %1").arg(placedName(plan, step.piece, places));
    case work::StepKind::Place: return placeText(plan, timeline, line, places);
    case work::StepKind::Look: return Words::tr("look at the pieces that are in");
    case work::StepKind::CombOut: return Words::tr("after the rinse: open the backcombed pieces");
  }
  return {};
}

QString gramsText(const work::BowlGrams& grams) {
  const QString total = number(grams.mixed_g, 0);
  if (!grams.split) return Words::tr("about %1 g in all").arg(total);
  QStringList parts;
  for (const work::PartGrams& part : *grams.split)
    parts << Words::tr("%1 %2 g").arg(part.name.empty() ? Words::tr("unnamed") : plain(part.name), number(part.grams, 1));
  return Words::tr("about %1 g: %2").arg(total, parts.join(QStringLiteral(", ")));
}

QString tapName(work::Tap tap) {
  switch (tap) {
    case work::Tap::Placed: return Words::tr("placed");
    case work::Tap::BowlMixed: return Words::tr("bowl mixed");
    case work::Tap::Looked: return Words::tr("looked");
    case work::Tap::TakenOut: return Words::tr("taken out");
    case work::Tap::Rinsed: return Words::tr("rinsed");
    case work::Tap::Begun: return Words::tr("a new log begun");
  }
  return {};
}

QString tapText(const plan::Plan& plan, const work::LogEvent& event) {
  QString text = event.tap == work::Tap::Begun       ? tapName(event.tap)
                 : event.tap == work::Tap::BowlMixed ? Words::tr("%1: %2").arg(tapName(event.tap), formulaName(plan, event.formula))
                                                   : Words::tr("%1: %2").arg(tapName(event.tap), piecesName(plan, event.pieces));
  if (event.level) text = Words::tr("%1, level %2").arg(text, typed(*event.level));
  if (!event.pigment.empty()) text = Words::tr("%1, %2").arg(text, plain(event.pigment));
  if (!event.who.empty()) text = Words::tr("%1 (%2)").arg(text, plain(event.who));
  return event.takenBack ? Words::tr("%1, taken back").arg(text) : text;
}

QString problemText(const plan::Plan& plan, const work::LogProblem& problem) {
  const QString piece = pieceName(plan, problem.piece);
  switch (problem.kind) {
    case work::LogProblemKind::ClockSetBack:
      return Words::tr("Tap %1: the clock of this computer was set back by %2 min. Times on the hair were not shortened; look at a clock.")
          .arg(problem.event).arg(minutes(problem.seconds / 60));
    case work::LogProblemKind::TimeUnknown:
      return Words::tr("Tap %1: the computer was started anew or the plan went to another one, and the clock stands %2 min before the last tap. Times on the hair "
                       "may be too short by that and more; look at a clock and at the hair.")
          .arg(problem.event).arg(minutes(problem.seconds / 60));
    case work::LogProblemKind::ClockJumped:
      return Words::tr("Tap %1: the clock of this computer was changed by %2 min. Times on the hair are still counted right.")
          .arg(problem.event).arg(minutes(problem.seconds / 60));
    case work::LogProblemKind::TimeOutOfOrder: return Words::tr("Tap %1 has a time before the tap above it: the file was changed by hand.").arg(problem.event);
    case work::LogProblemKind::OutBeforePlaced: return Words::tr("Tap %1: %2 was taken out or rinsed, and no tap says when it was placed.").arg(problem.event).arg(piece);
    case work::LogProblemKind::PlacedTwice: return Words::tr("Tap %1: %2 was placed already; its time runs from the first tap.").arg(problem.event).arg(piece);
    case work::LogProblemKind::BowlNotMixed: return Words::tr("Tap %1: %2 was placed, and no bowl of its formula was tapped. Look which bowl it came from.").arg(problem.event).arg(piece);
    case work::LogProblemKind::PieceUnknown: return Words::tr("Tap %1 names %2, which the plan does not hold any more.").arg(problem.event).arg(piece);
  }
  return {};
}

QString reasonText(work::LookReason reason) {
  switch (reason) {
    case work::LookReason::LimitReached: return Words::tr("longest time typed from the leaflet reached: product off now, as the leaflet says");
    case work::LookReason::NotRinsed: return Words::tr("taken out, not rinsed: product may still be on it");
    case work::LookReason::LevelReached: return Words::tr("seen at its planned level: wipe a strand clean and look now");
    case work::LookReason::FineHair: return Words::tr("fine hair at the hairline: look");
    case work::LookReason::LongestOn: return Words::tr("look");
  }
  return {};
}

QString timerText(const work::PieceTimer& timer) {
  if (timer.say == work::Say::LimitReached && timer.stage == work::Stage::TakenOut) return Words::tr("longest time typed from the leaflet reached: not rinsed yet");
  return timer.say == work::Say::LimitReached ? Words::tr("longest time typed from the leaflet reached: product off now, as the leaflet says")
                                              : Words::tr("look; the typed limit, not a target, is in %1").arg(clockText(std::ceil(timer.limit_s - timer.onHair_s)));
}

QString factorText(work::Factor which, const work::LearnedFactor& learned) {
  const QString heads = learned.heads == 1 ? Words::tr("1 head") : Words::tr("%1 heads").arg(learned.heads), value = number(learned.value, 2);
  switch (which) {
    case work::Factor::Speed: return Words::tr("Placing took %1 times the minutes of the assumptions (%2).").arg(value, heads);
    case work::Factor::ProductPerHair: return Words::tr("Product: %1 g for 1 g of hair under it (%2).").arg(value, heads);
    case work::Factor::Waste: return Words::tr("Left in the bowl: %1 of what was used (%2).").arg(value, heads);
    case work::Factor::PushedShare: return Words::tr("The comb pushed back %1 % of the taken hair (%2).").arg(number(100 * learned.value, 0), heads);
  }
  return {};
}

QString safetyLine() {
  return Words::tr("Pain, burning, swelling: rinse the product off at once with plenty of lukewarm water, unless the maker's first aid says otherwise, "
             "and get medical help. In the eye: rinse with water at once, then medical help. Trouble breathing or a swelling face: the emergency "
             "number.");
}

QString looksLighter() { return Words::tr("Open, wipe, look: product on the hair makes it look lighter than it is."); }

QString onHairText(const work::OnHair& on) {
  const QString first = words::momentText(QDateTime::fromMSecsSinceEpoch(on.first_utc_ms).toLocalTime());
  return on.pieces == 1 ? Words::tr("1 piece was not tapped as rinsed; it went on %1. If this appointment still goes on, look at the hair now.").arg(first)
                        : Words::tr("%1 pieces were not tapped as rinsed; the first went on %2. If this appointment still goes on, look at the hair now.")
                              .arg(QString::number(on.pieces), first);
}

QString colourCaution() {
  return Words::tr("Toner, deepening colour and root shadow are colour: before each, ask about past reactions, look at the scalp just rinsed, "
             "and check which tests its label asks for and the lowest age. The maker's directions and local rules come first. "
             "Sore or broken skin, or in doubt: do not put it on; refer to a doctor.");
}

QString firstCome() {
  return Words::tr("The maker's directions come first, then local rules, your licence and your insurer. Added heat only as the leaflet says.");
}

}  // namespace combdraft::paint

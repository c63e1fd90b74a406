// Texts of a handout that the plan gives where the educator typed none. Each line is
// one entry; a line "fault: what to do" of the faults becomes a row.
#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "app/handout/parts.h"
#include "app/handout/piece_words.h"
#include "engine/advise/effort.h"

namespace combdraft::handout {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

struct Traits {
  int worked = 0;
  bool weave = false, paint = false, comb = false, deepen = false, leftOut = false, film = false, foil = false, twins = false,
       fromScalp = false;
};
Traits traitsOf(const Request& request) {
  Traits traits;
  for (const auto& [id, piece] : request.plan.pieces(request.choice)) {
    if (piece->action == plan::Action::LeaveOut) {
      traits.leftOut = true;
      continue;
    }
    ++traits.worked;
    traits.deepen |= piece->action == plan::Action::Deepen;
    traits.weave |= piece->taking == plan::Taking::Weave;
    traits.paint |= piece->taking == plan::Taking::Paint;
    traits.comb |= piece->backcomb.depth_mm > 0 && piece->backcomb.pushed_frac > 0;
    traits.film |= piece->keptIn == plan::KeptIn::Film;
    traits.foil |= piece->keptIn == plan::KeptIn::Foil;
    traits.twins |= !piece->twinOf.empty();
    traits.fromScalp |= piece->start_mm <= 0;
  }
  for (const auto& [id, section] : request.plan.sections(request.choice)) {
    traits.twins |= !section->twinOf.empty();
    traits.leftOut |= section->layout && section->layout->leftOut_mm.from + section->layout->leftOut_mm.to > 0;
  }
  return traits;
}

}  // namespace

QString madeKit(const Request& request) {
  const Traits traits = traitsOf(request);
  const advise::Effort effort = advise::effortOf(request.plan, request.choice);
  std::map<double, int> widths;  // of foils that a rule names
  for (const auto& [id, section] : request.plan.sections(request.choice))
    if (section->layout) widths[std::round(section->layout->foil_mm)] += 1;
  QStringList lines;
  lines << Words::tr("Tail comb, sectioning clips, gloves, apron, timer, scales");
  if (traits.foil && effort.foils > 0) {
    QStringList sizes;
    for (const auto& [width, count] : widths) sizes << span_mm(width, width);
    lines << (sizes.isEmpty() ? Words::tr("%1 foils and some to spare").arg(effort.foils)
                              : Words::tr("%1 foils, for pieces up to %2 wide, and some to spare").arg(effort.foils).arg(sizes.join(QStringLiteral(", "))));
  }
  if (traits.film) lines << Words::tr("Film");
  if (traits.comb) lines << Words::tr("Comb for backcombing; a wet-hair brush to open it");
  lines << (traits.paint ? Words::tr("A brush for painting and a board") : Words::tr("Brush and bowl"));
  return lines.join(u'\n');
}

QString madeChecks(const Request& request) {
  const Traits traits = traitsOf(request);
  QStringList lines;
  // Otherwise there are lines for it before the first step (parts.cpp).
  if (const auto parts = partsOf(request.handout);
      std::any_of(parts.begin(), parts.end(), [](const plan::HandoutUse& use) { return use.part == plan::HandoutPart::Title && use.hidden; }))
    lines << Words::tr("Before mixing: the maker's directions are read and at hand; skin test, test strand and elasticity are checked and written down.");
  lines << Words::tr("Partings: clean, and where the drawing has them. Measure the first piece of each section against the scale.");
  if (traits.twins) lines << Words::tr("Both sides: the same number of pieces at the same height.");
  if (traits.leftOut) lines << Words::tr("Left-out hair: clipped away, dry, and as wide as it is drawn.");
  if (traits.comb) lines << Words::tr("Backcombing: the parting lies free, and the pushed hairs end where the step says.");
  if (!traits.fromScalp) lines << Words::tr("Start: no product nearer to the scalp than the step says.");
  if (traits.paint) lines << Words::tr("Brush work: the surface is covered evenly; look at the under side.");
  lines << Words::tr("Look at the first pieces while you place, as often as the directions and the hair ask; when the last one is in, at all of them. Open, wipe, look; product on the hair makes it look lighter than it is.");
  lines << Words::tr("Before rinsing: each piece has been looked at, and what was seen is written down.");
  lines << Words::tr("Dry, in daylight: part moved, crown opened, tied back. Look for a block, a hole or a stripe.");
  return lines.join(u'\n');
}

QStringList urgentFaults() {
  return {Words::tr("Pain, burning or swelling: Rinse the product off at once with plenty of lukewarm water, unless the maker's first aid says otherwise, and get medical help. In the eye: rinse with water at once, then medical help. Trouble breathing or a swelling face: the emergency number."),
          Words::tr("Hair stretches and does not spring back, or breaks: Rinse the product off and stop lightening; the maker's directions and whoever teaches say what follows.")};
}

QString madeFaults(const Request& request) {
  const Traits traits = traitsOf(request);
  QStringList lines = urgentFaults();
  lines << Words::tr("A stripe shows: The piece was too thick or too sharply parted. Next time take it thinner, or woven. Whether today asks for more: look at the hair and the scalp, and ask whoever teaches.");
  lines << Words::tr("A solid light patch where the hair opens: Too little was left out beside the opening. Next time leave out more.");
  lines << Words::tr("A dark hole at the crown: The last piece lies too far from the opening. Next time begin there and count backward.");
  if (traits.twins) lines << Words::tr("The sides differ: Partings drifted. Compare the number and the height of the pieces before anything is mixed.");
  if (traits.comb) lines << Words::tr("The root looks hard in spite of backcombing: Too little was pushed back, or product was taken into the cushion. Next time, where elasticity was checked and allows it, push back more; stop where the step says.");
  if (traits.foil) lines << Words::tr("Spots near the root: Product was too near to the fold or the foil slipped. Keep the distance that the step says.");
  if (traits.weave) lines << Words::tr("The weave reads as a line: The teeth stand too close. Keep the gaps as wide as drawn.");
  lines << Words::tr("One tone instead of two: Too little dark hair was left. Next time leave out more.");
  lines << Words::tr("It is less light than wanted: Do not lighten it again today. Write down what is seen; a strand test before another visit shows how this hair lightens.");
  return lines.join(u'\n');
}

QString madeSelfCheck(const Request& request) {
  const Traits traits = traitsOf(request);
  QStringList lines;
  lines << Words::tr("My partings were clean and stood where the drawing has them.");
  lines << Words::tr("My pieces had the thickness that is drawn.");
  if (traits.leftOut) lines << Words::tr("I left out what is drawn as left out.");
  if (traits.comb) lines << Words::tr("My backcombing was even, and I opened it without breakage.");
  lines << Words::tr("My start was even, and nothing bled toward the root.");
  if (traits.twins) lines << Words::tr("Both sides matched.");
  lines << Words::tr("I looked at the pieces in time and wrote down what I saw.");
  lines << Words::tr("With the crown opened and the part moved there is no block and no hole.");
  lines << Words::tr("I can say why each section is placed as it is.");
  return lines.join(u'\n');
}

}  // namespace combdraft::handout

#include "app/handout/piece_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <functional>
#include <set>

#include "app/handout/piece_measures.h"
#include "app/handout/piece_places.h"
#include "app/paint/describe_piece.h"
#include "app/paint/figure.h"
#include "engine/base/number_text.h"

namespace combdraft::handout {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString number(double value) { return paint::figure(numberText(std::round(value * 10) / 10)); }

// The least and the greatest figure of the pieces that are worked; none where no piece has a value.
struct Figures {
  QString from, to;
  double most = -1e9;
  bool areKnown() const { return !from.isEmpty(); }
};

Figures figuresOf(const Pieces& pieces, const std::function<std::optional<double>(const plan::Piece&)>& value,
                  const std::function<QString(const plan::Piece&)>& figure) {
  Figures figures;
  double least = 1e9;
  for (const paint::PieceShape* shape : pieces) {
    const plan::Piece& piece = *shape->piece;
    const std::optional<double> one = piece.action == plan::Action::LeaveOut ? std::nullopt : value(piece);
    if (one && *one < least) least = *one, figures.from = figure(piece);
    if (one && *one > figures.most) figures.most = *one, figures.to = figure(piece);
  }
  return figures;
}

QString words(const Figures& figures) {
  return figures.from == figures.to ? Words::tr("%1 mm").arg(figures.from) : Words::tr("%1 to %2 mm").arg(figures.from, figures.to);
}

const plan::Piece* firstWorked(const Pieces& pieces) {
  for (const paint::PieceShape* shape : pieces)
    if (shape->piece->action != plan::Action::LeaveOut) return shape->piece;
  return nullptr;
}

Pieces worked(const Pieces& pieces) {
  Pieces kept;
  for (const paint::PieceShape* shape : pieces)
    if (shape->piece->action != plan::Action::LeaveOut) kept.push_back(shape);
  return kept;
}

bool isCombed(const plan::Piece& piece) { return piece.backcomb.depth_mm > 0 && piece.backcomb.pushed_frac > 0; }

int countOf(const Pieces& pieces, const std::function<bool(const plan::Piece&)>& holds) {
  return static_cast<int>(std::count_if(pieces.begin(), pieces.end(),
                                        [&](const paint::PieceShape* shape) { return holds(*shape->piece); }));
}

QString placesOf(const Pieces& pieces) {
  QStringList places;
  for (const paint::PieceShape* shape : pieces)
    if (!shape->place.isEmpty() && !places.contains(shape->place)) places << shape->place;
  return places.size() > 3 ? QString() : places.join(QStringLiteral(", "));
}

QString takenWords(const plan::Piece& piece, int count) {
  const bool one = count == 1;
  if (piece.action == plan::Action::Deepen)
    return one ? Words::tr("Take one piece to deepen") : Words::tr("Take %1 pieces to deepen").arg(count);
  switch (piece.taking) {
    case plan::Taking::Slice: return one ? Words::tr("Take one slice") : Words::tr("Take %1 slices").arg(count);
    case plan::Taking::Weave: return one ? Words::tr("Take one weave") : Words::tr("Take %1 weaves").arg(count);
    case plan::Taking::Paint: return one ? Words::tr("Take one piece to paint") : Words::tr("Take %1 pieces to paint").arg(count);
  }
  return {};
}

}  // namespace

QString span_mm(double from, double to) {
  return words(Figures{measureFigure(from), measureFigure(to), to});
}

QString numbersOf(const Pieces& pieces) {
  std::set<int> orders;
  for (const paint::PieceShape* shape : pieces)
    if (shape->piece->order > 0) orders.insert(shape->piece->order);
  QStringList runs;
  for (auto it = orders.begin(); it != orders.end();) {
    const int first = *it;
    int last = first;
    for (++it; it != orders.end() && *it == last + 1; ++it) last = *it;
    runs << (first == last ? QString::number(first) : last == first + 1 ? Words::tr("%1 and %2").arg(first).arg(last) : Words::tr("%1 to %2").arg(first).arg(last));
  }
  return runs.join(QStringLiteral(", "));
}

QString curlName(plan::CurlClass curl) {
  static constexpr const char* kNames[] = {
      QT_TRANSLATE_NOOP("Handout", "straight"), QT_TRANSLATE_NOOP("Handout", "loose wave"), QT_TRANSLATE_NOOP("Handout", "wave"),
      QT_TRANSLATE_NOOP("Handout", "loose curl"), QT_TRANSLATE_NOOP("Handout", "curl"), QT_TRANSLATE_NOOP("Handout", "tight curl"),
      QT_TRANSLATE_NOOP("Handout", "coil"), QT_TRANSLATE_NOOP("Handout", "tight coil")};
  return Words::tr(kNames[static_cast<std::size_t>(curl)]);
}

QString takingName(const plan::Piece& piece) {
  if (piece.action == plan::Action::LeaveOut) return Words::tr("left out");
  const QString how = piece.taking == plan::Taking::Slice   ? Words::tr("slice")
                      : piece.taking == plan::Taking::Weave ? Words::tr("weave")
                                                            : Words::tr("painted");
  return piece.action == plan::Action::Deepen ? Words::tr("%1, deepened").arg(how) : how;
}

QString keptInName(plan::KeptIn keptIn) {
  switch (keptIn) {
    case plan::KeptIn::Foil: return Words::tr("foil");
    case plan::KeptIn::Film: return Words::tr("film");
    case plan::KeptIn::OpenAir: return Words::tr("open air");
  }
  return {};
}

QString colourWords(const plan::Piece& piece, const plan::ZoneColour& zone) {
  QStringList parts;
  if (piece.action == plan::Action::Lighten && zone.lifts == plan::LiftsTo{})  // what a new piece comes with
    parts << Words::tr("lifts to %1 (%2 to %3), a new piece's stand-in").arg(number(zone.lifts.level), number(zone.lifts.low), number(zone.lifts.high));
  else if (piece.action == plan::Action::Lighten)
    parts << (zone.lifts.low < zone.lifts.high
                  ? Words::tr("lifts to %1 (%2 to %3)").arg(number(zone.lifts.level), number(zone.lifts.low), number(zone.lifts.high))
                  : Words::tr("lifts to %1").arg(number(zone.lifts.level)));
  if (zone.finish) parts << Words::tr("finishes at %1 %2").arg(number(zone.finish->level), toneName(zone.finish->tone));
  return parts.join(QStringLiteral(", "));
}

QString whatOf(const paint::Scene& scene, const plan::Section* section, const Pieces& pieces) {
  const int leftOut = countOf(pieces, [](const plan::Piece& p) { return p.action == plan::Action::LeaveOut; });
  const plan::Piece* first = firstWorked(pieces);
  QStringList said;
  if (first) {
    const int count = static_cast<int>(pieces.size()) - leftOut;
    const QString thick = words(figuresOf(pieces, [](const plan::Piece& p) { return std::optional(p.thickness_mm); },
                                          [&](const plan::Piece& p) { return thickFigure(scene.plan(), p); }));
    QString sentence = takenWords(*first, count);
    if (section && section->layout)
      sentence = Words::tr("%1 in %2, %3 thick").arg(sentence, paint::runWords(section->layout->run), thick);
    else if (const QString places = placesOf(pieces); !places.isEmpty())
      sentence = Words::tr("%1 (%2), %3 thick").arg(sentence, places, thick);
    else
      sentence = Words::tr("%1, %2 thick").arg(sentence, thick);
    said << sentence + u'.';
    if (const QString place = placeSentence(scene.head(), worked(pieces)); !place.isEmpty()) said << place;
    if (section && section->layout && count > 1 && section->layout->leftOut_mm.from + section->layout->leftOut_mm.to > 0)
      said << Words::tr("Leave out %1 between them.").arg(span_mm(section->layout->leftOut_mm.from, section->layout->leftOut_mm.to));
    if (first->taking == plan::Taking::Weave && first->tooth_mm > 0)
      said << Words::tr("Weave teeth of %1 with gaps of %2.").arg(span_mm(first->tooth_mm, first->tooth_mm), span_mm(first->gap_mm, first->gap_mm));
    else if (first->taken_frac < 1)
      said << Words::tr("Take %1 % of the hair.").arg(takenFigure(scene.plan(), *first));
    if (countOf(pieces, [](const plan::Piece& p) { return !p.dropOuts.empty(); }) > 0)
      said << Words::tr("Between the ticks hair stays out: that stretch is not taken.");
  }
  const QString places = first ? QString() : placesOf(pieces);
  if (leftOut > 0 && places.isEmpty())
    said << (leftOut == 1 ? Words::tr("Clip one piece away: it is left out.") : Words::tr("Clip %1 pieces away: they are left out.").arg(leftOut));
  else if (leftOut > 0)
    said << (leftOut == 1 ? Words::tr("Clip one piece away (%1): it is left out.").arg(places)
                          : Words::tr("Clip %1 pieces away (%2): they are left out.").arg(leftOut).arg(places));
  return said.join(u' ');
}

QString howOf(const plan::Plan& plan, const Pieces& pieces) {
  const plan::Piece* first = firstWorked(pieces);
  if (!first) return {};
  QStringList said;
  const int combed = countOf(pieces, isCombed);
  if (combed > 0) {
    const QString depth = words(figuresOf(pieces, [](const plan::Piece& p) { return isCombed(p) ? std::optional(p.backcomb.depth_mm) : std::nullopt; },
                                          [&](const plan::Piece& p) { return depthFigure(plan, p); }));
    const Figures share = figuresOf(pieces, [](const plan::Piece& p) { return isCombed(p) ? std::optional(p.backcomb.pushed_frac) : std::nullopt; },
                                    [&](const plan::Piece& p) { return pushedFigure(plan, p); });
    const QString pushed = share.from == share.to ? Words::tr("%1 %").arg(share.from) : Words::tr("%1 to %2 %").arg(share.from, share.to);
    said << Words::tr("Backcomb: push back %1 of the hair, backcomb depth %2.").arg(pushed, depth);
  }
  const Figures start = figuresOf(pieces, [](const plan::Piece& p) { return std::optional(p.start_mm); },
                                  [&](const plan::Piece& p) { return startFigure(plan, p); });
  said << (start.most <= 0 ? Words::tr("Start at the scalp, if the leaflet allows contact with it.") : Words::tr("Start %1 off the scalp.").arg(words(start)));
  if (first->taking == plan::Taking::Paint)
    said << (first->under == plan::Side::Painted ? Words::tr("Paint the under side too.") : Words::tr("Leave the under side bare."));
  if (const Figures stop = figuresOf(pieces, [](const plan::Piece& p) { return p.stop_mm; }, [](const plan::Piece& p) { return measureFigure(*p.stop_mm); });
      stop.areKnown())
    said << Words::tr("Stop %1 off the scalp.").arg(words(stop));
  std::set<plan::KeptIn> kept;
  std::set<std::string> shared;
  for (const paint::PieceShape* shape : pieces)
    if (shape->piece->action != plan::Action::LeaveOut) {
      kept.insert(shape->piece->keptIn);
      if (!shape->piece->foil.empty()) shared.insert(shape->piece->foil);
    }
  QStringList in;
  for (const plan::KeptIn one : kept) in << keptInName(one);
  said << (shared.empty() ? Words::tr("Keep in: %1.").arg(in.join(QStringLiteral(", ")))
                          : Words::tr("Keep in: %1; pieces that share one are listed on the record card.").arg(in.join(QStringLiteral(", "))));
  const QString letters = paint::formulaLetters(plan, *first);
  const bool twoFormulas = letters.contains(u'/');
  if (!letters.isEmpty()) said << Words::tr("Formula %1.").arg(letters.section(u'/', 0, 0));
  const QString colour = colourWords(*first, first->root);
  const bool same = countOf(pieces, [&](const plan::Piece& p) {
                      return p.action == plan::Action::LeaveOut || (p.root == first->root && p.action == first->action);
                    }) == static_cast<int>(pieces.size());
  if (same && !colour.isEmpty()) said << Words::tr("Wanted: %1.").arg(colour);
  if (first->handover_mm) {
    QStringList beyond;
    if (twoFormulas) beyond << Words::tr("formula %1").arg(letters.section(u'/', 1, 1));
    if (colourWords(*first, first->end) != colour) beyond << colourWords(*first, first->end);
    if (!beyond.isEmpty()) said << Words::tr("From %1 on: %2.").arg(span_mm(*first->handover_mm, *first->handover_mm), beyond.join(QStringLiteral(", ")));
  }
  return said.join(u' ');
}

QString whyOf(const plan::Section* section, const Pieces& pieces) {
  const plan::Piece* first = firstWorked(pieces);
  if (!first) return Words::tr("Dark hair beside the light is what light stands out against.");
  QStringList said;
  if (first->action == plan::Action::Deepen) said << Words::tr("Depth beside the light is what light stands out against.");
  if (countOf(pieces, isCombed) > 0)
    said << Words::tr("Pushed hairs begin lower, each at its own height, so that the root stays soft.");
  else if (first->action == plan::Action::Lighten && first->start_mm <= 0)
    said << Words::tr("Light from the scalp is the brightest; its regrowth is seen soonest.");
  if (first->taking == plan::Taking::Weave) said << Words::tr("Dark hair between the teeth keeps the light from reading as a stripe.");
  if (first->taking == plan::Taking::Paint && first->under == plan::Side::Bare)
    said << Words::tr("The bare under side keeps depth beneath the light.");
  if (section && section->layout) {
    const plan::Layout& rule = *section->layout;
    if (rule.lastThickness_mm)
      said << Words::tr("The thin last piece lies beside the opening, so that no solid patch shows where the hair opens.");
    else if (std::abs(rule.thickness_mm.to - rule.thickness_mm.from) > 0.5)
      said << (rule.thickness_mm.to > rule.thickness_mm.from ? Words::tr("The pieces grow toward the top, where most light is seen.")
                                                             : Words::tr("The pieces get thinner toward the top, where the hair opens."));
    if (rule.columns == plan::Columns::Staggered) said << Words::tr("Staggered pieces, so that their ends do not line up when the hair opens.");
  }
  if (countOf(pieces, [](const plan::Piece& p) { return !p.dropOuts.empty(); }) > 0)
    said << Words::tr("The stretch that stays out breaks the row, so that no band runs through.");
  if (said.isEmpty()) said << Words::tr("Light that starts off the scalp leaves the root dark, so that new growth shows later.");
  return said.join(u' ');
}

}  // namespace combdraft::handout

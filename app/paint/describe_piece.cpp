#include "app/paint/describe_piece.h"

#include <QCoreApplication>
#include <cmath>

#include "app/paint/figure.h"
#include "app/paint/strip.h"
#include "app/words/engine_words.h"
#include "engine/base/number_text.h"

namespace combdraft::paint {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Piece)
};

constexpr double kCentre_mm = 12;  // nearer to the centre line no side is named

}  // namespace

QString millimetresFigure(double value_mm) {
  return figure(numberText(std::round(value_mm * 10) / 10));
}

QString millimetres(double value_mm) { return Words::tr("%1 mm").arg(millimetresFigure(value_mm)); }

QString pieceNumber(const plan::Piece& piece) {
  return piece.order > 0 ? QString::number(piece.order) : QStringLiteral("–");
}

QString pieceName(const plan::Piece& piece) {
  return piece.action == plan::Action::LeaveOut
             ? Words::tr("Left-out %1").arg(pieceNumber(piece))
             : Words::tr("Piece %1").arg(pieceNumber(piece));
}

QString placeWords(const HeadScene& scene, const plan::Piece& piece) {
  const std::vector<Vec3> line = surfaceLine(scene.shape, piece.line, 6);
  return line.empty() ? QString() : placeWords(scene, line[line.size() / 2]);
}

QString describePiece(const plan::Piece& piece, const QString& place) {
  QStringList parts{pieceName(piece)};
  const QString label = QString::fromStdString(piece.label);
  if (!label.isEmpty() && !place.startsWith(label)) parts << label;
  if (!place.isEmpty()) parts << place;
  parts << millimetres(piece.thickness_mm);
  if (piece.action != plan::Action::LeaveOut)
    parts << (piece.start_mm > 0 ? Words::tr("starts %1 off the scalp").arg(millimetres(piece.start_mm))
                                 : Words::tr("starts at the scalp"));
  return parts.join(QStringLiteral(", "));
}

QString runWords(plan::LayoutRun run) {
  switch (run) {
    case plan::LayoutRun::Horizontal: return Words::tr("horizontal rows");
    case plan::LayoutRun::Vertical: return Words::tr("vertical rows");
    case plan::LayoutRun::DiagonalForward: return Words::tr("diagonal forward rows");
    case plan::LayoutRun::DiagonalBack: return Words::tr("diagonal back rows");
    case plan::LayoutRun::Pivoting: return Words::tr("pivoting rows");
  }
  return {};
}

QString describeSection(const HeadScene& scene, const plan::Plan& plan, const plan::ItemId& id,
                        const plan::Section& section) {
  QString name = QString::fromStdString(section.label);
  if (name.isEmpty() && !section.outline.empty()) {
    Vec3 sum = Vec3::Zero();
    for (const head::ScalpPoint& p : section.outline) sum += scene.shape.pointAt(p);
    name = placeWords(scene, scene.shape.pointAlong(unitOr(sum, Vec3::UnitZ())));
  }
  int pieces = 0;
  for (const auto& entry : plan.pieces(section.choice)) pieces += entry.second->section == id;
  QStringList parts{Words::tr("Section %1").arg(name)};
  parts << (pieces == 0 ? Words::tr("empty") : pieces == 1 ? Words::tr("1 piece") : Words::tr("%1 pieces").arg(pieces));
  if (section.layout) parts << runWords(section.layout->run);
  if (!section.twinOf.empty()) parts << Words::tr("follows the other side");
  return parts.join(QStringLiteral(", "));
}

QString placeWords(const HeadScene& scene, const Vec3& p) {
  const QString side = p.x() < 0 ? Words::tr("left") : Words::tr("right");
  const auto sided = [&](const QString& place) {
    // The way on the surface is longer than the straight one.
    const bool central = std::abs(p.x()) < kCentre_mm && std::abs(scene.places().fromCentre_mm(p)) < kCentre_mm;
    return central ? place : place + QLatin1Char(' ') + side;
  };
  switch (scene.places().placeAt(p)) {
    case head::Place::OffHair: return Words::tr("below the hairline");
    case head::Place::Front: return sided(Words::tr("front"));
    case head::Place::Temple: return sided(Words::tr("temple"));
    case head::Place::Top: return sided(Words::tr("top"));
    case head::Place::Crown: return Words::tr("crown");
    case head::Place::Side: return side + QLatin1Char(' ') + Words::tr("side");
    case head::Place::Back: return sided(Words::tr("back"));
    case head::Place::Nape: return sided(Words::tr("nape"));
  }
  return {};
}

QString describePlace(const HeadScene& scene, const Vec3& p) {
  return words::inWords(head::describe(scene.places().at(p)));
}

QString placeMeasures(const HeadScene& scene, const Vec3& p) {
  const head::PlaceName name = scene.places().at(p);
  // The engine says: place, from its reference, from the centre line, from the hairline.
  const QStringList said = QString::fromStdString(head::describe(name)).split(QStringLiteral(", "));
  const QStringList measures = said.mid(1, name.reference == head::PlaceReference::EarPoint ? 3 : 2);
  QStringList parts;
  for (const QString& measure : measures) parts << words::inWords(measure.toStdString());
  return parts.join(QStringLiteral(", "));
}

QString formulaLetters(const plan::Plan& plan, const plan::Piece& piece) {
  const auto letter = [&](const plan::ItemId& id) {
    const auto* formula = plan.find<plan::Formula>(id);
    return formula ? QString::fromStdString(formula->letter) : QString();
  };
  if (piece.action == plan::Action::LeaveOut) return {};
  const QString root = letter(piece.root.formula);
  const QString end = piece.handover_mm ? letter(piece.end.formula) : QString();
  if (root.isEmpty() || end.isEmpty() || root == end) return root + (root == end ? QString() : end);
  return root + QLatin1Char('/') + end;
}

}  // namespace combdraft::paint

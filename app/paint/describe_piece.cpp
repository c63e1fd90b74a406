#include "app/paint/describe_piece.h"

#include <QCoreApplication>
#include <cmath>

#include "app/paint/strip.h"
#include "engine/base/number_text.h"

namespace combdraft::paint {
namespace {

QString say(const char* text) { return QCoreApplication::translate("Piece", text); }

}  // namespace

QString millimetres(double value_mm) {
  std::string text = numberText(std::round(value_mm * 10) / 10);
  return say("%1 mm").arg(QString::fromStdString(text));
}

QString pieceNumber(const plan::Piece& piece) {
  return piece.order > 0 ? QString::number(piece.order) : QStringLiteral("–");
}

QString pieceName(const plan::Piece& piece) {
  return piece.action == plan::Action::LeaveOut
             ? say("Left-out %1").arg(pieceNumber(piece))
             : say("Piece %1").arg(pieceNumber(piece));
}

QString describePiece(const HeadScene& scene, const plan::Piece& piece) {
  const std::vector<Vec3> line = surfaceLine(scene.shape, piece.line, 6);
  QStringList parts{pieceName(piece)};
  if (!piece.label.empty()) parts << QString::fromStdString(piece.label);
  if (!line.empty()) parts << placeWords(scene, line[line.size() / 2]);
  parts << millimetres(piece.thickness_mm);
  if (piece.action != plan::Action::LeaveOut)
    parts << (piece.start_mm > 0 ? say("starts %1 off the scalp").arg(millimetres(piece.start_mm))
                                 : say("starts at the scalp"));
  return parts.join(QStringLiteral(", "));
}

QString placeWords(const HeadScene& scene, const Vec3& p) {
  const double size = scene.shape.axes().c_mm / 90.0;
  const double azimuth = std::abs(degrees(std::atan2(p.x(), p.y())));
  const bool nearCentre = std::abs(p.x()) < 12;
  QString where;
  if ((p - scene.crown).norm() < 28 * size) return say("crown");
  if (p.z() > 62 * size) where = say("top");
  else if (p.z() < -45 * size && azimuth > 110) where = say("nape");
  else if (azimuth > 130) where = say("back");
  else if (azimuth > 50) return p.x() < 0 ? say("left side") : say("right side");
  else where = say("front");
  if (nearCentre) return where;
  return (p.x() < 0 ? say("%1 left") : say("%1 right")).arg(where);
}

QString describePlace(const HeadScene& scene, const Vec3& p) {
  const double down = (scene.crown - p).z();
  const double across = p.x();
  QStringList parts{placeWords(scene, p)};
  const auto whole = [](double v) { return millimetres(std::round(std::abs(v))); };
  parts << (down >= 0 ? say("%1 below the crown") : say("%1 above the crown")).arg(whole(down));
  parts << (std::abs(across) < 0.5 ? say("on the centre line")
            : across < 0           ? say("%1 left of centre").arg(whole(across))
                                   : say("%1 right of centre").arg(whole(across)));
  double nearest = 1e9;
  for (const Vec3& q : scene.hairline.outline(180)) nearest = std::min(nearest, (q - p).norm());
  parts << say("%1 from the hairline").arg(whole(nearest));
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

#include "app/sheet/piece_tool.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/paint/describe_piece.h"
#include "engine/base/number_text.h"
#include "engine/plan/edits.h"
#include "engine/plan/field_info.h"

namespace combdraft::sheet {
namespace {

constexpr double kNear_mm = 2, kDrawStep_mm = 8;

QString say(const char* text) { return QCoreApplication::translate("Sheet", text); }

std::optional<double> typedNumber(QString text) {
  text.replace(QLatin1Char(','), QLatin1Char('.'));
  const auto value = parseNumber(text.toStdString());
  const plan::FieldInfo& info = plan::fieldInfo("piece.thickness_mm");
  if (!value || *value < info.low || *value > info.high) return std::nullopt;
  return value;
}

}  // namespace

void PieceTool::addPoint(const paint::HeadScene& head, const head::ScalpPoint& point) {
  if (points_.size() >= plan::limits::kLinePoints || !head.hairline.contains(point)) return;
  if (!points_.empty() &&
      (head.shape.pointAt(points_.back()) - head.shape.pointAt(point)).norm() < kNear_mm)
    return;
  points_.push_back(point);
}

void PieceTool::drawTo(const paint::HeadScene& head, const head::ScalpPoint& point) {
  if (!points_.empty() &&
      (head.shape.pointAt(points_.back()) - head.shape.pointAt(point)).norm() < kDrawStep_mm)
    return;
  addPoint(head, point);
}

void PieceTool::removeLastPoint() {
  if (!points_.empty()) points_.pop_back();
}

void PieceTool::drop() {
  points_.clear();
  typed_.clear();
}

bool PieceTool::type(const QString& text) {
  if (text.size() != 1 || typed_.size() >= 5) return false;
  const QChar c = text.at(0);
  const bool mark = c == QLatin1Char('.') || c == QLatin1Char(',');
  if (!(c >= QLatin1Char('0') && c <= QLatin1Char('9')) && !mark) return false;
  if (mark && (typed_.contains(QLatin1Char('.')) || typed_.contains(QLatin1Char(','))))
    return false;
  typed_ += c;
  return true;
}

void PieceTool::eraseTyped() { typed_.chop(1); }

double PieceTool::thickness_mm() const { return typedNumber(typed_).value_or(last_mm_); }

QString PieceTool::words() const {
  if (points_.empty())
    return say("Click points along the parting, or draw with the button down.");
  QString text = say("%1 thick; type a number to change it. Enter ends the piece, Escape drops it.")
                     .arg(paint::millimetres(thickness_mm()));
  if (!typed_.isEmpty() && !typedNumber(typed_))
    text = say("“%1” is no thickness: allowed is %2.")
               .arg(typed_, QString::fromStdString(
                                plan::rangeText(plan::fieldInfo("piece.thickness_mm"))));
  return text;
}

std::optional<plan::ItemId> PieceTool::finish(document::DocumentController& document) {
  if (points_.size() < 2 || (!typed_.isEmpty() && !typedNumber(typed_))) return std::nullopt;
  plan::Piece piece;
  piece.line = points_;
  piece.thickness_mm = thickness_mm();
  piece.start_mm = start_mm_;
  const plan::ChangeSet edit = plan::addPiece(document.document(), piece);
  if (edit.args.empty()) return std::nullopt;
  const plan::ItemId id = edit.args.front();
  const plan::Plan next = plan::applied(document.document(), edit);
  const auto* added = next.find<plan::Piece>(id);
  last_mm_ = piece.thickness_mm;
  drop();
  document.edit(next, say("Draw piece %1").arg(added ? paint::pieceNumber(*added) : QString()),
                document::Selection::one(id));
  return id;
}

}  // namespace combdraft::sheet

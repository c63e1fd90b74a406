#pragma once
// Tools that draw a line point by point or with the button down: piece,
// left-out, section (closed), parting (splits a section) and the usual part.
#include "app/sheet/sheet_tool.h"

namespace combdraft::sheet {

enum class DrawnLine { Piece, LeftOut, Section, Parting, Part };

class LineTool : public SheetTool {
 public:
  LineTool(ToolContext context, DrawnLine kind, const NewPiece& newPiece);

  void press(const ToolHand& hand) override;
  void drag(const ToolHand& hand) override;
  bool finish() override;
  bool type(const QString& text) override;
  bool isTyping() const override { return !points_.empty(); }
  bool hasTyped() const override { return !typed_.isEmpty(); }
  bool erase() override;
  bool drop() override;
  bool isWorthKeeping() const override;
  QString words() const override;
  ToolSketch sketch(const std::optional<Snap>& hover) const override;
  std::vector<head::ScalpPoint> corners() const override;

  const std::vector<head::ScalpPoint>& points() const { return points_; }
  double thickness_mm() const;

 private:
  bool isStrip() const { return kind_ == DrawnLine::Piece || kind_ == DrawnLine::LeftOut; }
  std::size_t most() const;
  bool addPoint(const Snap& snap, double near_mm);
  Snap atTypedLength(const Snap& snap) const;
  std::optional<double> typedLength() const;
  bool refuse(const QString& why, const std::optional<head::ScalpPoint>& where = {});
  bool addPiece();
  bool addSection();
  bool split();
  bool setPart();
  bool keep(const plan::Plan& next, const QString& name, const document::Selection& after);

  DrawnLine kind_;
  NewPiece new_;
  std::vector<head::ScalpPoint> points_;
  std::vector<std::size_t> steps_;  ///< how many points each press added
  Snap last_;
  QString typed_, trouble_;
  std::optional<head::ScalpPoint> troubleAt_;
};

}  // namespace combdraft::sheet

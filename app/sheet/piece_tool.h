#pragma once
// Drawing a new piece: click its points or draw along the parting, type its
// thickness, Enter ends, Escape drops. Holds what is drawn so far.
#include <QString>
#include <optional>
#include <vector>

#include "app/document/document_controller.h"
#include "app/paint/scene.h"

namespace combdraft::sheet {

class PieceTool {
 public:
  /// Adds a point; one outside the hair or nearer than 2 mm to the last is
  /// left out. At most 64 points, as many as a piece may have.
  void addPoint(const paint::HeadScene& head, const head::ScalpPoint& point);
  /// While drawing with the button down: points about 8 mm apart.
  void drawTo(const paint::HeadScene& head, const head::ScalpPoint& point);
  void removeLastPoint();
  void drop();

  /// A digit or decimal mark of the thickness; true when it was taken.
  bool type(const QString& text);
  void eraseTyped();

  /// What a new piece begins with.
  void setNewPiece(double thickness_mm, double start_mm) { last_mm_ = thickness_mm, start_mm_ = start_mm; }

  bool isDrawing() const { return !points_.empty(); }
  const std::vector<head::ScalpPoint>& points() const { return points_; }
  double thickness_mm() const;
  const QString& typed() const { return typed_; }
  /// What to do now.
  QString words() const;

  /// Adds the piece to the document and selects it; nothing when fewer than
  /// two points are there (the drawing goes on).
  std::optional<plan::ItemId> finish(document::DocumentController& document);

 private:
  std::vector<head::ScalpPoint> points_;
  QString typed_;
  double last_mm_ = 5;  ///< thickness of the piece drawn before
  double start_mm_ = 20;
};

}  // namespace combdraft::sheet

#pragma once
// One strand of a piece, from root to ends, with handles on it: where lightener
// starts, how long it blends, how far backcombing pushes hairs, where the root
// formula hands over to the end formula, where lightener stops. Below it the
// share of light hair along the strand: the engine's own curve.
//
// Distances are stretched lengths in mm. The scale is wider near the root,
// where the work is; its marks say so.
#include <QWidget>
#include <optional>

#include "engine/plan/plan.h"

namespace combdraft::cards {

enum class StrandHandle { Start, Blend, BackcombDepth, Handover, Stop };
inline constexpr std::array<StrandHandle, 5> kStrandHandles{
    StrandHandle::BackcombDepth, StrandHandle::Start, StrandHandle::Blend, StrandHandle::Handover,
    StrandHandle::Stop};

/// Where a handle stands on a strand of that length, mm from the scalp.
double handlePlace_mm(const plan::Piece& piece, StrandHandle handle, double length_mm);
/// The piece with a handle moved there. Handover and stop moved to the very
/// ends are taken off. Everything stays inside the ranges of the plan file.
plan::Piece withHandleAt(plan::Piece piece, StrandHandle handle, double place_mm, double length_mm);
/// "start", "backcomb depth", ... and the value: "starts at 20 mm off the scalp".
QString handleText(const plan::Piece& piece, StrandHandle handle);

/// What the drawing is made from.
struct Strand {
  plan::Piece piece;
  double length_mm = 300;
  plan::Hair hair;
  plan::HairZone zone = plan::HairZone::Back;
  std::map<std::string, double> assumptions;
  bool operator==(const Strand&) const = default;
};

class StrandDrawing : public QWidget {
  Q_OBJECT

 public:
  explicit StrandDrawing(QWidget* parent = nullptr);

  void setStrand(const std::optional<Strand>& strand);
  double length_mm() const { return strand_ ? strand_->length_mm : 0; }
  StrandHandle activeHandle() const { return active_; }
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;
  /// Widget position of a handle, for tests and for reading out.
  QPointF handlePosition(StrandHandle handle) const;

 Q_SIGNALS:
  /// The hand moves a handle: preview this.
  void moving(combdraft::cards::StrandHandle handle, double place_mm);
  void released(combdraft::cards::StrandHandle handle);
  void dropped();
  /// One key step, complete in itself.
  void stepped(combdraft::cards::StrandHandle handle, double place_mm);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  bool event(QEvent* event) override;

 private:
  struct Frame {
    double left, right, bandTop, bandBottom, chartTop, chartBottom;
  };
  Frame frame() const;
  double xOf(double mm) const;
  double mmOf(double x) const;
  std::optional<StrandHandle> handleAt(const QPointF& position) const;
  bool isUsed(StrandHandle handle) const;
  void activate(StrandHandle handle);
  void paintStrand(QPainter& painter, const Frame& frame) const;
  void paintCurve(QPainter& painter, const Frame& frame) const;
  void paintHandles(QPainter& painter, const Frame& frame) const;
  void describe();

  std::optional<Strand> strand_;
  std::vector<double> xs_mm_, light_;
  std::vector<QColor> colours_;
  StrandHandle active_ = StrandHandle::Start;
  bool dragging_ = false;
  double grab_mm_ = 0;
};

}  // namespace combdraft::cards

#include "app/sheet/gesture.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "app/paint/describe_piece.h"
#include "engine/plan/edits.h"
#include "engine/plan/field_info.h"
#include "engine/plan/lay_out.h"

namespace combdraft::sheet {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

double limited(double value, const char* field) {
  const plan::FieldInfo& info = plan::fieldInfo(field);
  return std::clamp(value, info.low, info.high);
}

// Whole millimetres under the hand; tenths with Alt.
double stepped(double value, double step, Qt::KeyboardModifiers keys) {
  const double grid = keys.testFlag(Qt::AltModifier) ? 0.1 : step;
  return std::round(value / grid) * grid;
}

class MovePieces : public Gesture {
 public:
  MovePieces(document::DocumentController& document, std::shared_ptr<const paint::Scene> scene,
             std::vector<plan::ItemId> ids, const HandAt& from)
      : document_(document), scene_(std::move(scene)), ids_(std::move(ids)),
        from_(pointUnder(from)) {}

  void move(const HandAt& hand) override {
    const plan::Plan& plan = document_.document();
    document_.setTentative(
        plan::applied(plan, plan::movePieces(plan, ids_, from_, pointUnder(hand))));
  }
  void release() override {
    document_.commitTentative(
        namedEdit(document_.document(), ids_, Words::tr("Move %1"), Words::tr("Move %1 items")));
  }
  void drop() override { document_.dropTentative(); }
  QString words() const override { return Words::tr("Moving along the head. Escape drops it."); }

 private:
  head::ScalpPoint pointUnder(const HandAt& hand) const {
    const head::HeadShape& shape = scene_->head().shape;
    return shape.scalpPointAt(scene_->head().view(hand.view).castBackClamped(
        shape, hand.view_mm.x(), hand.view_mm.y()));
  }

  document::DocumentController& document_;
  std::shared_ptr<const paint::Scene> scene_;
  std::vector<plan::ItemId> ids_;
  head::ScalpPoint from_;
};

class PullHandle : public Gesture {
 public:
  PullHandle(document::DocumentController& document, std::shared_ptr<const paint::Scene> scene,
             plan::ItemId id, const Handle& handle, head::ViewName view)
      : document_(document), scene_(std::move(scene)), id_(std::move(id)), handle_(handle),
        view_(view) {}

  void move(const HandAt& hand) override {
    const plan::Plan& plan = document_.document();
    document_.setTentative(plan::applied(
        plan, plan::changePieces(plan, {id_}, [&](plan::Piece& piece) { pull(piece, hand); })));
  }
  void release() override {
    QString pattern = Words::tr("Move a point of %1");
    if (handle_.kind == HandleKind::Thickness) pattern = Words::tr("Thickness of %1");
    if (handle_.kind == HandleKind::Start) pattern = Words::tr("Start of %1");
    document_.commitTentative(namedEdit(document_.document(), {id_}, pattern, pattern));
  }
  void drop() override { document_.dropTentative(); }
  QString words() const override {
    const auto* piece = document_.plan().find<plan::Piece>(id_);
    if (!piece) return {};
    switch (handle_.kind) {
      case HandleKind::Thickness:
        return Words::tr("%1 thick").arg(paint::millimetres(piece->thickness_mm));
      case HandleKind::Start:
        return piece->start_mm > 0
                   ? Words::tr("Starts %1 off the scalp").arg(paint::millimetres(piece->start_mm))
                   : Words::tr("Starts at the scalp");
      case HandleKind::Point:
      case HandleKind::Corner:
      case HandleKind::Spacing: return Words::tr("Moving one end or bend. Escape drops it.");
    }
    return {};
  }

 private:
  void pull(plan::Piece& piece, const HandAt& hand) const {
    const head::HeadShape& shape = scene_->head().shape;
    const auto under = [&] {
      return scene_->head().view(view_).castBackClamped(shape, hand.view_mm.x(),
                                                        hand.view_mm.y());
    };
    if (handle_.kind == HandleKind::Start) {
      const double along = QPointF::dotProduct(hand.view_mm - handle_.base_mm, handle_.outward);
      piece.start_mm = limited(stepped(along, 1, hand.keys), "piece.start_mm");
    } else if (handle_.kind == HandleKind::Thickness) {
      const Vec3 off = under() - handle_.centre;
      piece.thickness_mm =
          limited(stepped(2 * off.dot(handle_.across), 0.5, hand.keys), "piece.thickness_mm");
    } else if (handle_.point < piece.line.size()) {
      const head::ScalpPoint to = shape.scalpPointAt(under());
      if (scene_->head().hairline.contains(to)) piece.line[handle_.point] = to;
    }
  }

  document::DocumentController& document_;
  std::shared_ptr<const paint::Scene> scene_;
  plan::ItemId id_;
  Handle handle_;
  head::ViewName view_;
};

class PullCorner : public Gesture {
 public:
  PullCorner(document::DocumentController& document, std::shared_ptr<const paint::Scene> scene,
             plan::ItemId id, std::size_t corner)
      : document_(document), scene_(std::move(scene)), id_(std::move(id)), corner_(corner) {}

  void move(const HandAt& hand) override {
    const head::HeadShape& shape = scene_->head().shape;
    head::ScalpPoint to = shape.scalpPointAt(scene_->head().view(hand.view).castBackClamped(
        shape, hand.view_mm.x(), hand.view_mm.y()));
    if (hand.caught) to = *hand.caught;
    if (!hand.caught && !scene_->head().hairline.contains(to)) return;
    to = {std::round(to.bearing_deg * 1000) / 1000, std::round(to.drop_deg * 1000) / 1000};
    const plan::Plan& plan = document_.document();
    document_.setTentative(plan::applied(
        plan, plan::changeSections(plan, {id_}, [&](plan::Section& section) {
          if (corner_ < section.outline.size()) section.outline[corner_] = to;
          else if (section.layout) section.layout->pivot = to;
        })));
    trouble_ = plan::RunTrouble::None;
    trouble_ = plan::runIn(document_.plan(), id_).trouble;
  }
  void release() override {
    document_.commitTentative(
        namedEdit(document_.document(), {id_}, Words::tr("Shape of %1"), Words::tr("Shape of %1")));
  }
  void drop() override { document_.dropTentative(); }
  QString words() const override {
    switch (trouble_) {
      case plan::RunTrouble::OutlineCrosses:
        return Words::tr("The outline crosses itself: pieces stay as they were until it does not.");
      case plan::RunTrouble::NoRoom:
        return Words::tr("No room for half a piece: pieces stay as they were until there is.");
      case plan::RunTrouble::TooMany:
        return Words::tr("More pieces than a section may have: pieces stay as they were.");
      case plan::RunTrouble::None: break;
    }
    return Words::tr("Moving a corner; it catches on lines, with Ctrl it is free. Escape drops it.");
  }

 private:
  document::DocumentController& document_;
  std::shared_ptr<const paint::Scene> scene_;
  plan::ItemId id_;
  std::size_t corner_;
  plan::RunTrouble trouble_ = plan::RunTrouble::None;
};

class PullSpacing : public Gesture {
 public:
  PullSpacing(document::DocumentController& document, std::shared_ptr<const paint::Scene> scene,
              plan::ItemId id, const Handle& handle)
      : document_(document), scene_(std::move(scene)), id_(std::move(id)), handle_(handle) {}

  void move(const HandAt& hand) override {
    // Along the way between the first two pieces, foreshortening taken out.
    const head::SheetView view = scene_->head().view(hand.view);
    const double seen = std::hypot(handle_.across.dot(view.right()), handle_.across.dot(view.down()));
    const double pulled = QPointF::dotProduct(hand.view_mm - handle_.at_mm, handle_.outward) / std::max(seen, 0.3);
    const double by = stepped(pulled, 1, hand.keys);
    const plan::Plan& plan = document_.document();
    document_.setTentative(plan::applied(
        plan, plan::changeSections(plan, {id_}, [&](plan::Section& section) {
          if (!section.layout) return;
          plan::Ramp& leftOut = section.layout->leftOut_mm;
          leftOut.from = limited(leftOut.from + by, "layout.leftOutFrom_mm");
          leftOut.to = limited(leftOut.to + by, "layout.leftOutTo_mm");
        })));
  }
  void release() override {
    document_.commitTentative(
        namedEdit(document_.document(), {id_}, Words::tr("Left-outs of %1"), Words::tr("Left-outs of %1")));
  }
  void drop() override { document_.dropTentative(); }
  QString words() const override {
    const auto* section = document_.plan().find<plan::Section>(id_);
    if (!section || !section->layout) return {};
    const plan::Ramp& leftOut = section->layout->leftOut_mm;
    return leftOut.from == leftOut.to
               ? Words::tr("%1 left out between pieces").arg(paint::millimetres(leftOut.from))
               : Words::tr("%1 to %2 left out between pieces")
                     .arg(paint::millimetres(leftOut.from), paint::millimetres(leftOut.to));
  }

 private:
  document::DocumentController& document_;
  std::shared_ptr<const paint::Scene> scene_;
  plan::ItemId id_;
  Handle handle_;
};

}  // namespace

std::unique_ptr<Gesture> pullSpacing(document::DocumentController& document,
                                     std::shared_ptr<const paint::Scene> scene,
                                     const plan::ItemId& id, const Handle& handle) {
  return std::make_unique<PullSpacing>(document, std::move(scene), id, handle);
}

QString itemName(const plan::Plan& plan, const plan::ItemId& id) {
  if (const auto* piece = plan.find<plan::Piece>(id)) return Words::tr("piece %1").arg(paint::pieceNumber(*piece));
  if (const auto* section = plan.find<plan::Section>(id))
    return Words::tr("section %1").arg(QString::fromStdString(section->label));
  if (plan.find<plan::Note>(id)) return Words::tr("note");
  return QString::fromStdString(id);
}

std::unique_ptr<Gesture> pullCorner(document::DocumentController& document,
                                    std::shared_ptr<const paint::Scene> scene,
                                    const plan::ItemId& id, std::size_t corner) {
  return std::make_unique<PullCorner>(document, std::move(scene), id, corner);
}

QString namedEdit(const plan::Plan& plan, const std::vector<plan::ItemId>& ids,
                  const QString& onePattern, const QString& manyPattern) {
  if (ids.size() != 1) return manyPattern.arg(ids.size());
  return onePattern.arg(itemName(plan, ids.front())).trimmed();
}

std::unique_ptr<Gesture> movePieces(document::DocumentController& document,
                                    std::shared_ptr<const paint::Scene> scene,
                                    std::vector<plan::ItemId> ids, const HandAt& from) {
  return std::make_unique<MovePieces>(document, std::move(scene), std::move(ids), from);
}

std::unique_ptr<Gesture> pullHandle(document::DocumentController& document,
                                    std::shared_ptr<const paint::Scene> scene,
                                    const plan::ItemId& id, const Handle& handle,
                                    head::ViewName view) {
  return std::make_unique<PullHandle>(document, std::move(scene), id, handle, view);
}

}  // namespace combdraft::sheet

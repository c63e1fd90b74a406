#pragma once
// One press-to-release movement of the hand on the sheet. A gesture that edits
// previews through the tentative plan and pushes one undo entry on release.
#include <QPointF>
#include <Qt>
#include <memory>

#include "app/document/document_controller.h"
#include "app/paint/scene.h"
#include "app/sheet/handles.h"
#include "app/sheet/view_layout.h"

namespace combdraft::sheet {

/// Where the hand is.
struct HandAt {
  head::ViewName view{};
  QPointF view_mm;
  Qt::KeyboardModifiers keys;
  std::optional<head::ScalpPoint> caught{};  ///< where a corner catches
};

class Gesture {
 public:
  virtual ~Gesture() = default;
  virtual void move(const HandAt& hand) = 0;
  virtual void release() = 0;
  /// Escape: as if nothing had happened.
  virtual void drop() = 0;
  /// What the hand is doing, for the line below the sheet.
  virtual QString words() const = 0;
};

/// Moves pieces along the head.
std::unique_ptr<Gesture> movePieces(document::DocumentController& document,
                                    std::shared_ptr<const paint::Scene> scene,
                                    std::vector<plan::ItemId> ids, const HandAt& from);
/// Pulls a handle of one piece.
std::unique_ptr<Gesture> pullHandle(document::DocumentController& document,
                                    std::shared_ptr<const paint::Scene> scene,
                                    const plan::ItemId& id, const Handle& handle,
                                    head::ViewName view);

/// Pulls a corner of a section; a laid-out section flows with it.
std::unique_ptr<Gesture> pullCorner(document::DocumentController& document,
                                    std::shared_ptr<const paint::Scene> scene,
                                    const plan::ItemId& id, std::size_t corner);

/// Pulls the left-outs of a laid-out section wider or narrower, both ends of
/// their ramp alike; the run flows with it.
std::unique_ptr<Gesture> pullSpacing(document::DocumentController& document,
                                     std::shared_ptr<const paint::Scene> scene,
                                     const plan::ItemId& id, const Handle& handle);

/// "piece 7", "section back left", "note".
QString itemName(const plan::Plan& plan, const plan::ItemId& id);
/// "Move piece 7", "Move 3 items".
QString namedEdit(const plan::Plan& plan, const std::vector<plan::ItemId>& ids,
                  const QString& onePattern, const QString& manyPattern);

}  // namespace combdraft::sheet

#pragma once
// The one undo command: items before, items after, selection before and after.
// Holds values only, never pointers into the document or to widgets.
#include <QUndoCommand>
#include <vector>

#include "app/document/document_controller.h"

namespace combdraft::document {

/// One item of an edit. Null before = added, null after = removed.
struct ItemChange {
  plan::ItemId id;
  plan::ItemPtr before, after;
};

class ApplyChangeSet : public QUndoCommand {
 public:
  ApplyChangeSet(DocumentController& controller, std::vector<ItemChange> changes,
                 Selection before, Selection after, Gesture gesture, const QString& name);
  void undo() override;
  void redo() override;
  int id() const override { return 1; }
  bool mergeWith(const QUndoCommand* other) override;

 private:
  DocumentController& controller_;
  std::vector<ItemChange> changes_;
  Selection before_, after_;
  Gesture gesture_;
};

/// The difference of two plans, in id order.
std::vector<ItemChange> difference(const plan::Plan& before, const plan::Plan& after);

}  // namespace combdraft::document

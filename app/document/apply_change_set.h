#pragma once
// The one undo command: a ChangeSet, and the selection before and after. Holds
// values only, never pointers into the document or to widgets.
#include <QUndoCommand>

#include "app/document/document_controller.h"
#include "engine/plan/change_set.h"

namespace combdraft::document {

class ApplyChangeSet : public QUndoCommand {
 public:
  ApplyChangeSet(DocumentController& controller, plan::ChangeSet edit, Selection before, Selection after,
                 Gesture gesture, const QString& name);
  void undo() override;
  void redo() override;
  int id() const override { return 1; }
  bool mergeWith(const QUndoCommand* other) override;

 private:
  DocumentController& controller_;
  plan::ChangeSet edit_;
  Selection before_, after_;
  Gesture gesture_;
};

}  // namespace combdraft::document

#include "app/document/apply_change_set.h"

namespace combdraft::document {

ApplyChangeSet::ApplyChangeSet(DocumentController& controller, plan::ChangeSet edit, Selection before,
                               Selection after, Gesture gesture, const QString& name)
    : QUndoCommand(name),
      controller_(controller),
      edit_(std::move(edit)),
      before_(std::move(before)),
      after_(std::move(after)),
      gesture_(gesture) {}

void ApplyChangeSet::undo() { controller_.apply(plan::inverse(edit_), before_); }

void ApplyChangeSet::redo() { controller_.apply(edit_, after_); }

bool ApplyChangeSet::mergeWith(const QUndoCommand* other) {
  const auto* next = dynamic_cast<const ApplyChangeSet*>(other);
  if (!next || gesture_.serial() == 0 || next->gesture_.serial() != gesture_.serial()) return false;
  edit_ = plan::merged(edit_, next->edit_);
  after_ = next->after_;
  setText(next->text());
  setObsolete(edit_.empty());
  return true;
}

}  // namespace combdraft::document

// What a plan keeps outside undo: agreed, visits, log.
#include <catch2/catch.hpp>

#include <QSignalSpy>

#include "app/document/document_controller.h"

using namespace combdraft;
using document::DocumentController;

namespace {

const std::string kAgreed = "{\"date\": \"2026-11-28\"}";

plan::Plan titled(const plan::Plan& plan, const char* title) {
  plan::Plan next = plan;
  plan::PlanInfo info = next.info();
  info.title = title;
  next.put(plan::kPlanId, info);
  return next;
}

}  // namespace

TEST_CASE("what is kept outside undo stays through undo and redo and edits made from older plans", "[store][record]") {
  DocumentController controller(plan::Plan::fresh(7));
  using Record = DocumentController::Record;
  const plan::Plan old = controller.document();
  controller.edit(titled(old, "named"), QStringLiteral("Name it"));
  controller.markSaved({});
  QSignalSpy changed(&controller, &DocumentController::changed);
  const std::uint64_t revision = controller.revision();

  CHECK(controller.record(Record::Agreed, kAgreed) == DocumentController::Outcome::Made);
  CHECK(controller.record(Record::Agreed, kAgreed) == DocumentController::Outcome::Unchanged);
  CHECK(controller.isModified());
  CHECK(changed.count() == 1);  // autosave hears of it
  CHECK(controller.revision() > revision);
  CHECK(controller.undoStack().count() == 1);  // no entry of its own

  controller.undoStack().undo();  // takes the title back, not what was agreed
  CHECK(controller.document().info().title.empty());
  CHECK(controller.document().info().agreedJson == kAgreed);
  controller.undoStack().redo();
  CHECK(controller.document().info().title == "named");
  CHECK(controller.document().info().agreedJson == kAgreed);
  CHECK(controller.edit(old, QStringLiteral("From before")) == DocumentController::Outcome::Made);
  CHECK(controller.document().info().agreedJson == kAgreed);

  controller.markSaved({});
  CHECK_FALSE(controller.isModified());
  CHECK(controller.record(Record::Log, "[1]") == DocumentController::Outcome::Made);
  CHECK(controller.document().info().logJson == "[1]");
  CHECK(controller.document().info().agreedJson == kAgreed);
}

TEST_CASE("a plan that may only be read keeps what was agreed as it was", "[store][record]") {
  DocumentController controller(plan::Plan::fresh(7));
  controller.setAccess(DocumentController::Access::ReadOnly);
  QSignalSpy refused(&controller, &DocumentController::editRefused);
  CHECK(controller.record(DocumentController::Record::Agreed, kAgreed) == DocumentController::Outcome::Refused);
  CHECK(refused.count() == 1);
  CHECK(controller.document().info().agreedJson.empty());
  CHECK_FALSE(controller.isModified());
}

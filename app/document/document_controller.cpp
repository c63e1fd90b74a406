#include "app/document/document_controller.h"

#include <tuple>

#include "app/document/apply_change_set.h"

namespace combdraft::document {
namespace {

std::string& recordOf(plan::PlanInfo& info, DocumentController::Record which) {
  switch (which) {
    case DocumentController::Record::Agreed: return info.agreedJson;
    case DocumentController::Record::Visits: return info.visitsJson;
    case DocumentController::Record::Log: break;
  }
  return info.logJson;
}

// `next` with what stands outside undo as it is in `now`.
plan::Plan withRecords(plan::Plan next, const plan::PlanInfo& now) {
  const auto records = [](const plan::PlanInfo& info) { return std::tie(info.agreedJson, info.visitsJson, info.logJson); };
  if (records(next.info()) == records(now)) return next;
  plan::PlanInfo info = next.info();
  info.agreedJson = now.agreedJson;
  info.visitsJson = now.visitsJson;
  info.logJson = now.logJson;
  next.put(plan::kPlanId, std::move(info));
  return next;
}

// Entries of the history are differences of these, so that they fit whatever is
// recorded between them.
plan::Plan withoutRecords(plan::Plan plan) { return withRecords(std::move(plan), {}); }

}  // namespace

Gesture Gesture::begin() {
  static std::uint64_t last = 0;  // window's thread only
  return Gesture(++last);
}

DocumentController::DocumentController(plan::Plan plan, QObject* parent)
    : QObject(parent), document_(std::move(plan)) {
  connect(&undo_, &QUndoStack::cleanChanged, this, [this] { Q_EMIT fileChanged(); });
}

DocumentController::~DocumentController() {
  disconnect(&undo_, nullptr, this, nullptr);  // the stack's end is no news
}

DocumentController::Outcome DocumentController::edit(const plan::Plan& next, const QString& name, Gesture gesture) {
  return edit(next, name, selection_.within(next), gesture);
}

DocumentController::Outcome DocumentController::edit(const plan::Plan& next, const QString& name,
                                                     const Selection& after, Gesture gesture) {
  plan::ChangeSet edit = plan::difference(withoutRecords(document_), withoutRecords(next), plan::EditKind::ChangeItem);
  if (edit.empty()) {
    dropTentative();
    select(after);
    return Outcome::Unchanged;
  }
  if (access_ == Access::ReadOnly) return refuse({Refusal::Why::ReadOnly});
  if (const auto room = roomMissing(next)) return refuse({Refusal::Why::NoRoom, *room});
  if (const auto value = wrongValue(edit)) return refuse({Refusal::Why::WrongValue, {}, *value});
  if (const auto item = itemOffHead(edit, next)) return refuse({Refusal::Why::OffHead, {}, {}, *item});
  undo_.push(
      new ApplyChangeSet(*this, std::move(edit), selection_, after.within(next), gesture, name));
  return Outcome::Made;
}

DocumentController::Outcome DocumentController::refuse(const Refusal& refusal) {
  // Fields and sheet show again what stands.
  if (tentative_)
    dropTentative();
  else
    announce(DocumentChange::Kind::Tentative, {});
  Q_EMIT editRefused(refusal);
  return Outcome::Refused;
}

void DocumentController::setAccess(Access access) {
  if (access == access_) return;
  access_ = access;
  dropTentative();
  Q_EMIT accessChanged();
}

void DocumentController::markDiffering(FileIdentity file) {
  file_ = std::move(file);
  forcedModified_ = true;
  Q_EMIT fileChanged();
}

DocumentController::Outcome DocumentController::record(Record which, const std::string& json) {
  plan::PlanInfo info = document_.info();
  if (recordOf(info, which) == json) return Outcome::Unchanged;
  if (access_ == Access::ReadOnly) return refuse({Refusal::Why::ReadOnly});
  recordOf(info, which) = json;
  plan::Plan next = document_;
  next.put(plan::kPlanId, std::move(info));
  if (const auto room = roomMissing(next)) return refuse({Refusal::Why::NoRoom, *room});
  dropTentative();
  document_ = std::move(next);
  forcedModified_ = true;
  announce(DocumentChange::Kind::Edited, {plan::kPlanId});
  Q_EMIT fileChanged();
  return Outcome::Made;
}

void DocumentController::setTentative(const plan::Plan& next) {
  if (access_ == Access::ReadOnly) return (void)refuse({Refusal::Why::ReadOnly});
  std::set<plan::ItemId> ids = changedIds(plan(), next);
  tentative_ = next;
  if (!ids.empty()) announce(DocumentChange::Kind::Tentative, std::move(ids));
}

void DocumentController::commitTentative(const QString& name) {
  if (!tentative_) return;
  const plan::Plan next = *tentative_;
  edit(next, name);
}

void DocumentController::dropTentative() {
  if (!tentative_) return;
  std::set<plan::ItemId> ids = changedIds(*tentative_, document_);
  tentative_.reset();
  if (!ids.empty()) announce(DocumentChange::Kind::Tentative, std::move(ids));
}

void DocumentController::select(const Selection& selection) {
  const Selection kept = selection.within(plan());
  if (kept == selection_) return;
  selection_ = kept;
  Q_EMIT selectionChanged();
}

void DocumentController::replace(plan::Plan plan, FileIdentity file) {
  load(std::move(plan), std::move(file), Standing::AsInFile);
}

void DocumentController::replaceModified(plan::Plan plan, FileIdentity file) {
  load(std::move(plan), std::move(file), Standing::Modified);
}

void DocumentController::load(plan::Plan plan, FileIdentity file, Standing standing) {
  tentative_.reset();
  document_ = std::move(plan);
  file_ = std::move(file);
  forcedModified_ = standing == Standing::Modified;
  const bool hadSelection = !selection_.isEmpty();
  selection_ = {};
  undo_.clear();
  if (access_ != Access::Full) {
    access_ = Access::Full;
    Q_EMIT accessChanged();
  }
  announce(DocumentChange::Kind::Replaced, {});
  if (hadSelection) Q_EMIT selectionChanged();
  Q_EMIT fileChanged();
}

void DocumentController::markSaved(FileIdentity file) {
  file_ = std::move(file);
  forcedModified_ = false;
  undo_.setClean();
  Q_EMIT fileChanged();
}

void DocumentController::apply(const plan::ChangeSet& edit, const Selection& selection) {
  std::set<plan::ItemId> ids;
  if (tentative_) ids = changedIds(*tentative_, document_);
  tentative_.reset();
  const plan::ItemPtr now = document_.item(plan::kPlanId);  // keeps the info alive
  document_ = withRecords(plan::applied(withoutRecords(std::move(document_)), edit), std::get<plan::PlanInfo>(*now));
  for (const plan::ItemChange& change : edit.changes) ids.insert(change.id);
  const bool selectionMoves = !(selection == selection_);
  selection_ = selection;
  announce(DocumentChange::Kind::Edited, std::move(ids));
  if (selectionMoves) Q_EMIT selectionChanged();
}

void DocumentController::announce(DocumentChange::Kind kind, std::set<plan::ItemId> ids) {
  ++revision_;
  Q_EMIT changed({kind, revision_, std::move(ids)});
}

std::set<plan::ItemId> changedIds(const plan::Plan& before, const plan::Plan& after) {
  std::set<plan::ItemId> ids;
  for (const plan::ItemChange& change :
       plan::difference(before, after, plan::EditKind::ChangeItem).changes)
    ids.insert(change.id);
  return ids;
}

}  // namespace combdraft::document

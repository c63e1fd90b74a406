#pragma once
// The one writer of the document: the current plan, its undo history, the
// selection, and which file it belongs to.
//
// An edit is a new plan value made by a pure function; the controller keeps the
// difference as one undo entry. A drag previews through a tentative plan:
//
//   controller.setTentative(moved);            // as often as the hand moves
//   controller.commitTentative(tr("Move piece 7"));  // on release: one entry
//   controller.dropTentative();                // Escape: as if nothing happened
//
// Everything here runs on the window's thread.
#include <QObject>
#include <QString>
#include <QUndoStack>
#include <cstdint>
#include <optional>
#include <set>

#include "app/document/plan_room.h"
#include "app/document/selection.h"
#include "engine/plan/change_set.h"

namespace combdraft::document {

/// Which file the document was read from or written to last.
struct FileIdentity {
  QString path;                ///< absolute; "" = never saved
  std::uint64_t contentKey = 0;  ///< of the bytes on disk as this program knows them; 0 = none
  bool operator==(const FileIdentity&) const = default;
};

/// What one signal says.
struct DocumentChange {
  enum class Kind {
    Replaced,   ///< another document was opened: everything changed
    Edited,     ///< an edit, an undo or a redo
    Tentative,  ///< the preview under the hand changed, came or went
  };
  Kind kind = Kind::Edited;
  std::uint64_t revision = 0;
  std::set<plan::ItemId> ids;  ///< items that came, went or changed; empty for Replaced
};

/// Why an edit was not made.
struct Refusal {
  enum class Why {
    ReadOnly,  ///< the document may only be read
    NoRoom,    ///< the plan would not fit into a file any more
    WrongValue,  ///< a value that could not be read back from a file
    OffHead,     ///< a head on which what is drawn lies off the hair, not to be read back either
  };
  Why why = Why::ReadOnly;
  NoRoom room{};              ///< with NoRoom
  plan::FieldProblem value{};  ///< with WrongValue
  plan::ItemId item{};         ///< with OffHead
};

/// Joins edits that belong to one gesture (held arrow key, typing in one
/// field) into one undo entry. `none` never joins.
class Gesture {
 public:
  static Gesture none() { return Gesture(0); }
  /// A new one, different from all before.
  static Gesture begin();
  std::uint64_t serial() const { return serial_; }

 private:
  explicit Gesture(std::uint64_t serial) : serial_(serial) {}
  std::uint64_t serial_;
};

class DocumentController : public QObject {
  Q_OBJECT

 public:
  /// Starts with `plan`, unsaved and unmodified.
  explicit DocumentController(plan::Plan plan, QObject* parent = nullptr);
  ~DocumentController() override;

  /// What is shown: the tentative plan during a drag, else the document.
  const plan::Plan& plan() const { return tentative_ ? *tentative_ : document_; }
  /// The document itself, without a drag under way.
  const plan::Plan& document() const { return document_; }
  /// Rises with every change of `plan()`; never the same for two contents.
  std::uint64_t revision() const { return revision_; }

  /// Makes `next` the document with one undo entry named `name` ("Move piece
  /// 7"). An equal plan changes nothing and leaves no entry. A drag under way
  /// is dropped first. Refused, with `editRefused`, while the document may only
  /// be read, when the plan would outgrow its file, and when a value it brings in
  /// could not be read back from one.
  enum class Outcome { Made, Unchanged, Refused };
  Outcome edit(const plan::Plan& next, const QString& name, Gesture gesture = Gesture::none());
  /// The same, and selects `after`; undo brings the old selection back.
  Outcome edit(const plan::Plan& next, const QString& name, const Selection& after,
               Gesture gesture = Gesture::none());

  /// What the plan keeps outside undo: neither an edit nor undo and redo change it.
  enum class Record { Agreed, Visits, Log };
  /// Sets one of them (JSON text, "" = none). No undo entry; the document counts
  /// as modified until it is saved, and autosave sees it. A drag under way is
  /// dropped first. Refused as an edit is.
  Outcome record(Record which, const std::string& json);

  void setTentative(const plan::Plan& next);
  void commitTentative(const QString& name);
  void dropTentative();
  bool isTentative() const { return tentative_.has_value(); }

  const Selection& selection() const { return selection_; }
  void select(const Selection& selection);

  QUndoStack& undoStack() { return undo_; }
  const QUndoStack& undoStack() const { return undo_; }

  /// Another document: clears history and selection.
  void replace(plan::Plan plan, FileIdentity file);
  /// Another document that is not in its file yet (new from recovery): modified.
  void replaceModified(plan::Plan plan, FileIdentity file);
  enum class Access { Full, ReadOnly };
  /// Whether edits are made. Another document begins with Full.
  Access access() const { return access_; }
  void setAccess(Access access);
  /// The document stays; its file holds something else or is gone, so that the
  /// document counts as modified.
  void markDiffering(FileIdentity file);
  /// The document as it is now stands in `file`.
  void markSaved(FileIdentity file);
  const FileIdentity& file() const { return file_; }
  bool isModified() const { return forcedModified_ || !undo_.isClean(); }

 Q_SIGNALS:
  void changed(const combdraft::document::DocumentChange& change);
  void selectionChanged();
  /// File or modified state changed (window title, save action).
  void fileChanged();
  void accessChanged();
  /// An edit was not made; the document is as it was.
  void editRefused(const combdraft::document::Refusal& refusal);

 private:
  friend class ApplyChangeSet;
  void apply(const plan::ChangeSet& edit, const Selection& selection);
  void announce(DocumentChange::Kind kind, std::set<plan::ItemId> ids);
  enum class Standing { AsInFile, Modified };
  void load(plan::Plan plan, FileIdentity file, Standing standing);
  Outcome refuse(const Refusal& refusal);

  plan::Plan document_;
  std::optional<plan::Plan> tentative_;
  Selection selection_;
  QUndoStack undo_;
  FileIdentity file_;
  std::uint64_t revision_ = 1;
  bool forcedModified_ = false;
  Access access_ = Access::Full;
};

/// Ids whose item differs between two plans (by value).
std::set<plan::ItemId> changedIds(const plan::Plan& before, const plan::Plan& after);

}  // namespace combdraft::document

// The window's part that copies, pastes, duplicates and selects more of the same.
#include <QClipboard>
#include <QDrag>
#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <set>

#include "app/desk/clip_mime.h"
#include "app/desk/error_text.h"
#include "app/desk/main_window.h"
#include "app/desk/message_bar.h"
#include "app/desk/select_by.h"
#include "app/desk/thing_names.h"
#include "app/paint/export_page.h"
#include "app/paint/sheet_page.h"
#include "app/sheet/head_sheet.h"
#include "engine/plan/clip.h"
#include "engine/plan/edits.h"

namespace combdraft::desk {
namespace {

const QString kTopic = QStringLiteral("clipboard");

}  // namespace

Condition MainWindow::whileSelected() const {
  const Condition working = whileWorking();
  return {[this, working] {
            return working() && !placedThings(controller_.document(), controller_.selection().ids()).empty();
          },
          tr("Select a piece, a section or a note first")};
}

void MainWindow::declareClipActions() {
  const Condition working = whileWorking(), selected = whileSelected();
  actions_.add({QStringLiteral("edit.copy"), tr("&Copy"),
                tr("Selected sections with their pieces, pieces and notes; other programs get a picture of the large view"),
                QKeySequence::Copy, {}, [this] { copySelected(); }, selected, {}});
  actions_.add({QStringLiteral("edit.cut"), tr("Cu&t"), tr("Copy what is selected and take it off the plan"),
                QKeySequence::Cut, {}, [this] { cutSelected(); }, selected, {}});
  actions_.add({QStringLiteral("edit.paste"), tr("&Paste"),
                tr("Put in what was copied, in this plan, another one or another window"), QKeySequence::Paste, {},
                [this] { pasteClip(); }, working, {}});
  actions_.add({QStringLiteral("piece.duplicate"), tr("&Duplicate"),
                tr("A copy a little lower; sections of one side come to the same place on the other"),
                QKeySequence(Qt::CTRL | Qt::Key_D), {}, [this] { duplicateSelected(); }, selected, {}});
  actions_.add({QStringLiteral("file.picture"), tr("Save as p&icture…"),
                tr("All six views with the key as PDF page, SVG drawing or PNG picture; drag a view out by its title for one"),
                QKeySequence(Qt::CTRL | Qt::Key_E), {}, [this] { savePicture(); }, working, {}});
  const auto select = [&](const char* id, const QString& text, const QString& tip, int key,
                          document::Selection (*more)(const plan::Plan&, const document::Selection&)) {
    actions_.add({QLatin1String(id), text, tip, QKeySequence(Qt::CTRL | Qt::SHIFT | key), {},
                  [this, more] { controller_.select(more(controller_.document(), controller_.selection())); }, selected,
                  {}});
  };
  select("edit.sameKind", tr("Select same ki&nd"), tr("All that do the same and are taken the same way"), Qt::Key_K, sameKind);
  select("edit.sameSection", tr("Select same s&ection"), tr("All pieces of the same section"), Qt::Key_E, sameSection);
  select("edit.sameSide", tr("Select all on this s&ide"), tr("All pieces on this side of the centre line"), Qt::Key_I, sameSide);
}

void MainWindow::copySelected() {
  const std::vector<plan::ItemId> ids = placedThings(controller_.document(), controller_.selection().ids());
  const std::string clip = plan::copied(controller_.document(), ids);
  if (clip.empty()) return;
  QGuiApplication::clipboard()->setMimeData(clipMime(clip, picturePage(view_.largeView())).release());
  messages_->say({Message::Kind::News, tr("Copied: %1.").arg(thingsName(controller_.document(), ids)), {}, kTopic});
}

paint::Page MainWindow::picturePage(const std::optional<head::ViewName>& view) const {
  paint::PageRequest request;
  request.views = view ? std::vector<head::ViewName>{*view}
                       : std::vector<head::ViewName>(std::begin(head::kAllViews), std::end(head::kAllViews));
  const look::LookFrame* frame = shownLook_ ? &shownLook_->frame : nullptr;
  switch (view_.layer()) {
    case document::Layer::Diagram: request.layer = paint::PageLayer::Diagram; break;
    case document::Layer::Look: request.layer = paint::PageLayer::Look; break;
    case document::Layer::Both: request.layer = paint::PageLayer::Both; break;
  }
  if (!frame) request.layer = paint::PageLayer::Diagram;
  const paint::Scene scene(controller_.plan(), {}, &sheet_->scene());  // as the sheet shows it, what is tried too
  return paint::sheetPage(scene, frame, request);
}

void MainWindow::dragOut(head::ViewName view) {
  auto* drag = new QDrag(this);
  drag->setMimeData(pictureMime(picturePage(view)).release());
  drag->exec(Qt::CopyAction);
}

void MainWindow::savePicture() {
  auto* dialog = new QFileDialog(this, tr("Save the sheet as a picture"), settings_.lastFolder(),
                                 tr("PDF page (*.pdf);;Drawing (*.svg);;Picture (*.png)"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setDefaultSuffix(QStringLiteral("pdf"));
  connect(dialog, &QFileDialog::filterSelected, dialog, [dialog](const QString& filter) {
    dialog->setDefaultSuffix(filter.section(u'.', 1).chopped(1));
  });
  connect(dialog, &QFileDialog::fileSelected, this, [this](const QString& path) {
    const Result<void> written = paint::writePage(picturePage(std::nullopt), path, {});
    if (!written) return tellError(errorText(written.error()));
    messages_->say({Message::Kind::News, tr("All six views stand in %1.").arg(QFileInfo(path).fileName()), {}, kTopic});
  });
  dialog->open();
}

void MainWindow::cutSelected() {
  const plan::Plan& plan = controller_.document();
  std::vector<plan::ItemId> ids = placedThings(plan, controller_.selection().ids());
  if (ids.empty()) return;
  copySelected();
  const QString name = thingsName(plan, ids);
  // What was drawn by hand into a section is in the clip and goes with it.
  const std::set<plan::ItemId> cut(ids.begin(), ids.end());
  for (const auto& [id, item] : plan.items())
    if (const auto* piece = std::get_if<plan::Piece>(item.get()); piece && !piece->section.empty() && cut.count(piece->section))
      ids.push_back(id);
  controller_.edit(plan::applied(plan, plan::removeItems(plan, ids)), tr("Cut %1").arg(name), document::Selection());
}

void MainWindow::pasteClip() {
  const QMimeData* mime = QGuiApplication::clipboard()->mimeData();
  const std::optional<std::string> text = mime ? clipText(*mime) : std::nullopt;
  if (!text)
    return messages_->say({Message::Kind::News,
                           tr("Nothing to paste: the clipboard holds no sections, pieces or notes of a plan."), {}, kTopic});
  const Result<plan::ChangeSet> edit = plan::pasted(controller_.document(), *text);
  if (!edit)
    return messages_->say({Message::Kind::Caution,
                           tr("What is on the clipboard cannot be pasted. %1").arg(errorText(edit.error())),
                           {}, kTopic});
  const plan::Plan after = plan::applied(controller_.document(), *edit);
  bringIn(*edit, tr("Paste %1").arg(thingsName(after, edit->args)));
}

void MainWindow::duplicateSelected() {
  const plan::Plan& plan = controller_.document();
  const Result<plan::ChangeSet> edit = plan::duplicated(plan, placedThings(plan, controller_.selection().ids()));
  if (!edit)
    return messages_->say({Message::Kind::Caution, errorText(edit.error()), {}, kTopic});
  bringIn(*edit, tr("Duplicate %1").arg(thingsName(plan::applied(plan, *edit), edit->args)));
}

document::DocumentController::Outcome MainWindow::bringIn(const plan::ChangeSet& edit, const QString& name) {
  if (edit.empty()) return document::DocumentController::Outcome::Unchanged;
  const plan::Plan next = plan::applied(controller_.document(), edit);
  // Selected is what came: sections, their pieces, and the rest.
  std::vector<plan::ItemId> came;
  for (const plan::ItemChange& change : edit.changes)
    if (!change.before && change.after) came.push_back(change.id);
  came = placedThings(next, came);
  if (!edit.args.empty()) {  // the last of what stands for the rest leads
    std::erase(came, edit.args.back());
    came.push_back(edit.args.back());
  }
  return controller_.edit(next, name, document::Selection(came));
}

}  // namespace combdraft::desk

// What the composer gives out: files with the question about those that stand there, print
// and its preview, and what is said of them.
#include <QFileDialog>
#include <QFileInfo>
#include <QPrintDialog>
#include <QPrinter>
#include <utility>

#include "app/handout/composer_page.h"
#include "app/handout/pages_view.h"
#include "app/handout/print_preview.h"

namespace combdraft::handout {
namespace {

std::shared_ptr<QPrinter> printerFor(const Request& request) {
  auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
  printer->setFullPage(true);
  printer->setPageLayout(layoutOf(request.handout.paper, request.handout.turn));
  printer->setCreator(QStringLiteral("Combdraft"));
  return printer;
}

}  // namespace

void ComposerPage::saveAs() {
  auto* dialog = new QFileDialog(this, tr("Save the pages"), folder_, tr("PDF (*.pdf);;Drawings, a file for each page (*.svg);;Pictures, a file for each page (*.png)"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  // The dialog knows one name; asked is once it is known how many pages take which names.
  dialog->setOption(QFileDialog::DontConfirmOverwrite);
  dialog->setDefaultSuffix(QStringLiteral("pdf"));
  dialog->selectFile(suggestedName());
  connect(dialog, &QFileDialog::filterSelected, dialog, [dialog](const QString& filter) { dialog->setDefaultSuffix(filter.section(u'.', 1).chopped(1)); });
  connect(dialog, &QFileDialog::fileSelected, this, [this](const QString& path) {
    folder_ = QFileInfo(path).absolutePath();
    Q_EMIT folderChosen(folder_);
    saveTo(path);
  });
  dialog->open();
}

void ComposerPage::saveTo(const QString& fileName) {
  const QString title = QString::fromStdString(controller_.document().info().title);
  if (maker_.isWriting()) return sayBusy();
  FileWish wish{fileName, title.isEmpty() ? tr("Untitled plan") : title};
  if (const std::optional<double> dpi = resolution_->value()) wish.dpi = *dpi;
  const Save save{requestNow(), wish};
  pending_ = save;
  if (std::exchange(isAsked_, false)) Q_EMIT askedNoMore();  // about another place
  if (paint::formatOf(fileName) == paint::PictureFormat::Pdf) {  // one name, however many pages
    const FilesThere there = filesThere(fileName, 1);
    if (!there.isEmpty()) return askAbout(there, 1);
  }
  maker_.write(save.request, save.wish, PageMaker::IfThere::Ask);
}

void ComposerPage::askAbout(const FilesThere& there, int pages) {
  if (!pending_) return sayUnanswered();
  const auto name = [](const QString& path) { return QFileInfo(path).fileName(); };
  const auto span = [&](const QStringList& files) { return tr("%1 to %2", "first and last file").arg(name(files.front()), name(files.back())); };
  QStringList says;
  if (there.replaced.size() == 1)
    says << tr("%1 stands there already and would be replaced.").arg(name(there.replaced.front()));
  else if (!there.replaced.isEmpty())
    says << tr("Of the names of these %1 pages %2 stand there already and would be replaced: %3.")
                .arg(QString::number(pages), QString::number(there.replaced.size()), span(there.replaced));
  if (there.older.size() == 1)
    says << tr("%1 has a name like those of an older set and would stay beside the new pages.").arg(name(there.older.front()));
  else if (!there.older.isEmpty())
    says << tr("%1 files have names like those of an older set, %2; they would stay beside the new pages.").arg(QString::number(there.older.size()), span(there.older));
  const bool isReplaced = !there.replaced.isEmpty();
  SaveQuestion question{says.join(u' '), {}};
  if (there.older.isEmpty()) {
    question.answers.push_back({tr("Replace"), [this] { saveOver({}); }});
  } else {
    question.answers.push_back({isReplaced ? tr("Replace, and keep the other files") : tr("Save, and keep the other files"), [this] { saveOver({}); }});
    question.answers.push_back({isReplaced ? tr("Replace, and put the other files into the trash") : tr("Save, and put the other files into the trash"),
                                [this, older = there.older] { saveOver(older); }});
  }
  question.answers.push_back({tr("Do not save"), [this] {
                                isAsked_ = false;
                                pending_.reset();
                              }});
  isAsked_ = true;
  Q_EMIT asked(question);
}

void ComposerPage::saveOver(const QStringList& remove) {
  if (!pending_ || !isAsked_) return;
  isAsked_ = false;
  pending_->wish.remove = remove;
  if (!maker_.write(pending_->request, pending_->wish, PageMaker::IfThere::Replace)) sayBusy();
  pending_.reset();
}

void ComposerPage::sayBusy() { Q_EMIT news(tr("Not begun: other pages are being written. Wait until they stand, or stop them first.")); }

void ComposerPage::sayUnanswered() {
  Q_EMIT news(tr("The pages were not saved: files of their names stand there already, and the plan or its client was left before you said what is to become of them."));
}

void ComposerPage::sayWritten(const QStringList& files) {
  if (files.isEmpty()) return Q_EMIT news(tr("The pages went to the printer."));
  const QString first = QFileInfo(files.front()).fileName();
  Q_EMIT news(files.size() == 1 ? tr("The pages stand in %1.").arg(first)
                                : tr("%1 pages stand in %2 to %3.").arg(QString::number(files.size()), first, QFileInfo(files.back()).fileName()));
}

void ComposerPage::sayFailed(const Error& error, bool wasWriting) {
  if (error.code != ErrorCode::Cancelled) {
    if (wasWriting) previewed_.reset();
    return Q_EMIT trouble(error);
  }
  if (!wasWriting) return;
  if (std::exchange(previewed_, std::nullopt)) return sayNoPreview();
  if (error.args.size() == 2)
    return Q_EMIT news(tr("Stopped after %1 of %2 pages. The printer has these and may print them: take them back there.")
                           .arg(QString::fromStdString(error.args[0]), QString::fromStdString(error.args[1])));
  Q_EMIT news(tr("Given up. No file was changed and nothing was printed."));
}

PrintPreview* ComposerPage::printPreview() { return previewWindow_; }

void ComposerPage::print() { printOut(requestNow()); }

void ComposerPage::printOut(const Request& request) {
  const std::shared_ptr<QPrinter> printer = printerFor(request);
  printer->setDocName(suggestedName().chopped(4));
  auto* dialog = new QPrintDialog(printer.get(), this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  if (pages_->count() > 0) dialog->setMinMax(1, pages_->count());
  connect(dialog, &QDialog::accepted, this, [this, printer, request] {
    if (!maker_.print(request, printer)) sayBusy();
  });
  connect(dialog, &QObject::destroyed, this, [printer] {});  // the dialog needs it as long as it is open
  dialog->open();
}

void ComposerPage::previewPrint() {
  const Request request = requestNow();
  if (!maker_.makeForPaper(request)) return sayBusy();
  previewed_ = request;
}

void ComposerPage::dropPreview() {
  if (previewed_) maker_.cancel();  // one thing at a time: no file is given up with it
}

void ComposerPage::sayNoPreview() { Q_EMIT news(tr("The print preview was not opened: its pages were left or stopped before they were made.")); }

void ComposerPage::showPreview(const Pages& pages) {
  if (!previewed_) return;
  const Request request = *std::exchange(previewed_, std::nullopt);
  // What is in front now may be for other eyes.
  if (!follows_ || !isVisible()) return sayNoPreview();
  if (previewWindow_) previewWindow_->close();
  auto* window = new PrintPreview(pages, layoutOf(request.handout.paper, request.handout.turn), this);
  connect(window, &PrintPreview::printWanted, this, [this, request] { printOut(request); });
  previewWindow_ = window;
  window->show();
}

}  // namespace combdraft::handout

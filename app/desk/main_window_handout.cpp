// The window's part that prints: the composer's page, its commands and what it says.
#include <QStackedWidget>

#include "app/desk/error_text.h"
#include "app/desk/main_window.h"
#include "app/desk/message_bar.h"
#include "app/handout/composer_page.h"

namespace combdraft::desk {
namespace {

const QString kTopic = QStringLiteral("handout");
const QString kAsked = QStringLiteral("handout-asked");  // news about other pages leave the question there

const QString kUnderWay = QStringLiteral("handout-under-way");

}  // namespace

Condition MainWindow::whilePlanShown() const {
  return {[this] {
            const auto page = static_cast<Page>(pages_->currentIndex());
            return page == Page::Work || page == Page::Handout || page == Page::Appointment;
          },
          tr("Open or begin a plan first")};
}

void MainWindow::declareHandoutActions() {
  const Condition shown = whilePlanShown();
  const auto show = [this](handout::DocumentKind kind) {
    turnTo(Page::Handout);
    composer_->showDocument(kind);
  };
  actions_.add({QStringLiteral("handout.show"), tr("Hando&ut…"), tr("The printed lesson: choose its parts, type its texts, see its pages"),
                QKeySequence(Qt::CTRL | Qt::Key_H), {}, [show] { show(handout::DocumentKind::Handout); }, shown, {}, tr("Handout")});
  actions_.add({QStringLiteral("handout.recordCard"), tr("&Record card…"), tr("Everything that is needed to do it again, as pages"),
                QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_R), {}, [show] { show(handout::DocumentKind::RecordCard); }, shown, {}, tr("Record card")});
  actions_.add({QStringLiteral("handout.clientPage"), tr("Client's page…"), tr("One page for the client: the picture, what the plan shows, how to look after it"),
                {}, {}, [show] { show(handout::DocumentKind::ClientPage); }, shown, {}, tr("Client's page")});
  const Condition onPage{[this] { return pages_->currentIndex() == static_cast<int>(Page::Handout); }, tr("Open Handout, Record card or Client's page first")};
  actions_.add({QStringLiteral("handout.save"), tr("Save &the pages as…"), tr("Write the pages as PDF, or as SVG or PNG with a file for each"),
                {}, {}, [this] { composer_->saveAs(); }, onPage});
  const Condition printable{[this] {
                              const auto page = static_cast<Page>(pages_->currentIndex());
                              return page == Page::Handout || page == Page::Appointment;
                            },
                            tr("Open Handout, Record card, Client's page or Work list first")};
  actions_.add({QStringLiteral("handout.print"), tr("Print th&e pages…"), tr("Choose a printer for the pages that are shown; at an appointment, for its work list"),
                QKeySequence::Print, {},
                [this] {
                  if (pages_->currentIndex() == static_cast<int>(Page::Appointment)) showWorkListOnPaper();
                  composer_->print();
                },
                printable});
  actions_.add({QStringLiteral("handout.preview"), tr("Print pre&view…"), tr("See the same pages as a print, in a window of their own"),
                {}, {}, [this] { composer_->previewPrint(); }, onPage});
}

void MainWindow::connectHandout() {
  using handout::ComposerPage;
  connect(composer_, &ComposerPage::done, this, [this] { turnBack(); });
  connect(composer_, &ComposerPage::news, this, [this](const QString& text) { messages_->say({Message::Kind::News, text, {}, kTopic}); });
  connect(composer_, &ComposerPage::trouble, this, [this](const Error& error) {
    messages_->say({Message::Kind::Caution, tr("Not all went well with the pages: %1").arg(errorText(error)), {}, kTopic});
  });
  connect(composer_, &ComposerPage::folderChosen, this, [this](const QString& folder) { settings_.setLastFolder(folder); });
  connect(composer_, &ComposerPage::asked, this, [this](const handout::SaveQuestion& question) {
    Message message{Message::Kind::Caution, question.text, {}, kAsked};
    for (const handout::SaveQuestion::Answer& answer : question.answers) message.choices.push_back({answer.text, answer.give});
    messages_->say(std::move(message));
  });
  connect(composer_, &ComposerPage::askedNoMore, this, [this] { messages_->clear(kAsked); });
  connect(&composer_->maker(), &handout::PageMaker::ended, this, [this] { messages_->clear(kUnderWay); });
}

// Pages that are not whole would be lost with the window, and a printer would have half of them.
void MainWindow::askAboutPagesUnderWay() {
  const auto stop = [this] {
    if (!composer_->isPuttingOut()) {
      close();
      return;
    }
    // Queued, so that what came of them is said before.
    connect(&composer_->maker(), &handout::PageMaker::ended, this, &QWidget::close,
            static_cast<Qt::ConnectionType>(Qt::QueuedConnection | Qt::SingleShotConnection));
    composer_->maker().cancel();
  };
  // Last what changes nothing: Escape takes it.
  messages_->say({Message::Kind::Caution, tr("Pages are still being written."), {{tr("Stop and close"), stop}, {tr("Wait"), {}}}, kUnderWay});
}

}  // namespace combdraft::desk

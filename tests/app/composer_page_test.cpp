// The composer: parts by mouse and keyboard, texts with undo, pages on a thread of its
// own, files that are whole or not there.
#include <QComboBox>
#include <QFile>
#include <QListWidget>
#include <QPainter>
#include <QPdfWriter>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <catch2/catch.hpp>

#include "app/handout/composer_page.h"
#include "app/handout/handout_edits.h"
#include "app/handout/pages_view.h"
#include "app/handout/print_preview.h"
#include "tests/app/demo_plans.h"
#include "tests/app/desk_fixture.h"

namespace combdraft::handout {
namespace {

using document::DocumentController;
using plan::HandoutPart;

// Looks of nothing, at once.
Result<Looks> noLooks(const Request&, double, std::stop_token, const Progress&) {
  Looks looks;
  looks.down = looks.opened = std::make_shared<const look::LookFrame>();
  return looks;
}

struct Composer {
  DocumentController controller{tests::demoPlan()};
  ComposerPage page;
  QTemporaryDir dir;

  explicit Composer(PageMaker::Look look = noLooks) : page(controller, std::move(look)) {
    page.resize(1180, 760);
    page.show();
    page.enter(dir.path());
    REQUIRE(QTest::qWaitForWindowExposed(&page));
    settle();
  }
  void settle() {
    REQUIRE(QTest::qWaitFor([this] { return page.maker().isIdle() && page.pagesView().count() > 0; }, 20000));
  }
  plan::Handout handout() const { return handoutOf(controller.document()); }
  int row(HandoutPart part) {
    for (int i = 0; i < page.partList()->count(); ++i)
      if (page.partList()->item(i)->text() == partTitle(part)) return i;
    return -1;
  }
};

// What a reader of the screen is told of the pages that are in sight or about to go.
QString wordsShown(ComposerPage& page) {
  QStringList words;
  for (const PageView* view : page.pagesView().findChildren<PageView*>()) words << view->accessibleDescription();
  return words.join(u' ');
}

void putFile(const QString& path, const char* bytes) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write(bytes);
}

QByteArray bytesOf(const QString& path) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

TEST_CASE("the composer lists every part and shows its pages", "[handout][composer]") {
  Composer composer;
  CHECK(composer.page.partList()->count() == static_cast<int>(std::size(kHandoutParts)));
  CHECK(composer.page.pagesView().count() > 5);
  CHECK_FALSE(composer.controller.document().find<plan::Handout>(plan::kHandoutId));  // looking changes nothing
  CHECK_FALSE(composer.controller.isModified());
}

TEST_CASE("unticking a part takes its pages away and undo brings them back", "[handout][composer]") {
  Composer composer;
  const int before = composer.page.pagesView().count();
  composer.page.partList()->item(composer.row(HandoutPart::PredictThenOpen))->setCheckState(Qt::Unchecked);
  composer.settle();
  CHECK(composer.page.pagesView().count() == before - 2);
  CHECK(composer.controller.undoStack().undoText().contains(partTitle(HandoutPart::PredictThenOpen)));
  composer.controller.undoStack().undo();
  composer.settle();
  CHECK(composer.page.pagesView().count() == before);
  CHECK(composer.page.partList()->item(composer.row(HandoutPart::PredictThenOpen))->checkState() == Qt::Checked);
}

TEST_CASE("choosing a part shows where it begins", "[handout][composer]") {
  Composer composer;
  QScrollBar* bar = composer.page.pagesView().verticalScrollBar();
  composer.page.partList()->setCurrentRow(composer.row(HandoutPart::BlankSheets));
  CHECK(bar->value() > bar->maximum() / 2);
  composer.page.partList()->setCurrentRow(composer.row(HandoutPart::Title));
  CHECK(bar->value() <= 14);
}

TEST_CASE("parts move by Alt and arrow, by button, and stay where they are at the ends", "[handout][composer]") {
  Composer composer;
  QListWidget* list = composer.page.partList();
  list->setCurrentRow(2);
  const QString third = list->item(2)->text();
  QTest::keyClick(list, Qt::Key_Up, Qt::AltModifier);
  CHECK(list->item(1)->text() == third);
  CHECK(list->currentItem()->text() == third);
  QTest::mouseClick(composer.page.downButton(), Qt::LeftButton);
  CHECK(list->item(2)->text() == third);
  list->setCurrentRow(0);
  const plan::Handout before = composer.handout();
  QTest::mouseClick(composer.page.upButton(), Qt::LeftButton);
  CHECK(composer.handout() == before);
}

TEST_CASE("a part that is dragged keeps its tick", "[handout][composer]") {
  Composer composer;
  QListWidget* list = composer.page.partList();
  list->item(3)->setCheckState(Qt::Unchecked);
  const QString dragged = list->item(3)->text();
  list->model()->moveRow({}, 3, {}, 0);
  composer.settle();
  CHECK(list->item(0)->text() == dragged);
  CHECK(list->item(0)->checkState() == Qt::Unchecked);
  CHECK(partTitle(partsOf(composer.handout()).front().part) == dragged);
  CHECK(partsOf(composer.handout()).front().hidden);
}

TEST_CASE("typing an aim is one undo entry and stands on the first page", "[handout][composer]") {
  Composer composer;
  QPlainTextEdit* aim = composer.page.textBox(HandoutPart::Title)->edit();
  composer.page.partList()->setCurrentRow(composer.row(HandoutPart::Title));
  aim->setFocus();
  QTest::keyClicks(aim, QStringLiteral("Place it softly"));
  CHECK(composer.handout().aim == "Place it softly");
  CHECK(composer.controller.undoStack().count() == 1);
  composer.settle();
  CHECK(composer.page.pagesView().findChild<PageView*>());
  CHECK(composer.page.pagesView().widget()->findChildren<QWidget*>().first()->accessibleDescription().contains(QStringLiteral("Place it softly")));
  composer.controller.undoStack().undo();
  CHECK(composer.handout().aim.empty());
  CHECK(aim->toPlainText().isEmpty());
}

TEST_CASE("texts of a step are kept under its piece and marked when the piece goes", "[handout][composer]") {
  Composer composer;
  QComboBox* steps = composer.page.stepChoice();
  REQUIRE(steps->count() > 1);
  const std::vector<Step> made = stepsOf(paint::Scene(composer.controller.document(), {}, nullptr), {});
  const std::size_t last = made.size() - 1;
  steps->setCurrentIndex(static_cast<int>(last));
  Q_EMIT steps->activated(static_cast<int>(last));
  composer.page.stepBox(2)->edit()->setPlainText(QStringLiteral("So that depth stays"));
  REQUIRE(composer.handout().steps.size() == 1);
  CHECK(composer.handout().steps.front().about == made[last].about);
  CHECK(composer.handout().steps.front().why == "So that depth stays");
  CHECK(composer.page.stepBox(0)->edit()->placeholderText() == made[last].made.what);

  plan::Plan without = composer.controller.document();
  for (const plan::ItemId& id : made[last].pieces) without.put(id, plan::ItemPtr());
  if (without.find<plan::Section>(made[last].about)) without.put(made[last].about, plan::ItemPtr());
  composer.controller.edit(without, QStringLiteral("Remove"));
  CHECK(steps->itemText(steps->count() - 1).contains(QStringLiteral("No longer in the plan")));
  CHECK(composer.handout().steps.size() == 1);
}

TEST_CASE("paper and turn are the plan's and show at once", "[handout][composer]") {
  Composer composer;
  Q_EMIT composer.page.paper()->chosen(1);
  Q_EMIT composer.page.turn()->chosen(1);
  composer.settle();
  CHECK(composer.handout().paper == plan::PaperSize::Letter);
  CHECK(composer.handout().turn == plan::PageTurn::Landscape);
  CHECK(composer.page.pagesView().pages()->front().size_mm == QSizeF(279.4, 215.9));
}

TEST_CASE("what is typed for a client is on the page and never in the plan", "[handout][composer]") {
  Composer composer;
  composer.page.showDocument(DocumentKind::ClientPage);
  composer.page.clientBox(2)->edit()->setPlainText(QStringLiteral("Zuleika at the desk"));
  composer.settle();
  CHECK(composer.page.pagesView().widget()->findChildren<QWidget*>().first()->accessibleDescription().contains(QStringLiteral("Zuleika")));
  CHECK_FALSE(composer.controller.isModified());
  composer.page.forgetClient();
  CHECK(composer.page.clientBox(2)->edit()->toPlainText().isEmpty());
}

TEST_CASE("another plan or the same one read anew takes a client's words out of sight at once", "[handout][composer]") {
  for (const bool isReadAnew : {true, false}) {
    INFO(isReadAnew);
    Composer composer;
    composer.page.showDocument(DocumentKind::ClientPage);
    composer.page.clientBox(2)->edit()->setPlainText(QStringLiteral("Zuleika at the desk"));
    composer.settle();
    REQUIRE(wordsShown(composer.page).contains(QStringLiteral("Zuleika")));
    const plan::Plan next = isReadAnew ? composer.controller.document() : tests::sixtyPlan();
    composer.controller.replace(next, {});
    CHECK(composer.page.pagesView().count() == 0);
    CHECK(composer.page.pagesView().pages() == nullptr);
    CHECK_FALSE(wordsShown(composer.page).contains(QStringLiteral("Zuleika")));
    CHECK(composer.page.clientBox(2)->edit()->toPlainText().isEmpty());
    composer.settle();
    CHECK_FALSE(wordsShown(composer.page).isEmpty());
    CHECK_FALSE(wordsShown(composer.page).contains(QStringLiteral("Zuleika")));
  }
}

TEST_CASE("pages under way do not come once they are forgotten and their looks are made anew", "[handout][composer]") {
  std::atomic<bool> waits = true;
  std::atomic<int> looks = 0;
  PageMaker maker([&](const Request& request, double pixel, std::stop_token stop, const Progress& progress) {
    ++looks;
    while (waits) std::this_thread::sleep_for(std::chrono::milliseconds(2));
    return noLooks(request, pixel, std::move(stop), progress);
  });
  QSignalSpy ready(&maker, &PageMaker::ready);
  Request request = requestFor(DocumentKind::ClientPage, tests::demoPlan());
  request.client.call = QStringLiteral("Zuleika at the desk");
  maker.request(request);
  while (looks == 0) std::this_thread::sleep_for(std::chrono::milliseconds(2));  // without events: what is made waits
  maker.forget();
  waits = false;
  REQUIRE(QTest::qWaitFor([&] { return maker.isIdle(); }, 20000));
  CHECK(ready.isEmpty());
  maker.request(request);
  REQUIRE(QTest::qWaitFor([&] { return maker.isIdle() && !ready.isEmpty(); }, 20000));
  CHECK(looks == 2);
}

TEST_CASE("a PDF is written whole, off the window's thread", "[handout][composer]") {
  std::thread::id worker;
  Composer composer([&worker](const Request& request, double pixel, std::stop_token stop, const Progress& progress) {
    worker = std::this_thread::get_id();
    return noLooks(request, pixel, stop, progress);
  });
  QSignalSpy written(&composer.page.maker(), &PageMaker::written);
  const QString path = composer.dir.filePath(QStringLiteral("class.pdf"));
  composer.page.saveTo(path);
  REQUIRE(written.wait(20000));
  CHECK(worker != std::this_thread::get_id());
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadOnly));
  CHECK(file.readAll().startsWith("%PDF-"));
}

TEST_CASE("SVG and PNG become a file for each page", "[handout][composer]") {
  Composer composer;
  for (const char* ending : {"svg", "png"}) {
    QSignalSpy written(&composer.page.maker(), &PageMaker::written);
    composer.page.saveTo(composer.dir.filePath(QStringLiteral("page.") + QLatin1String(ending)));
    REQUIRE(written.wait(60000));
    const QStringList files = written.first().first().toStringList();
    CHECK(files.size() == composer.page.pagesView().count());
    for (const QString& file : files) CHECK(QFile::exists(file));
    CHECK(files.front().endsWith(QStringLiteral("page-01.") + QLatin1String(ending)));
  }
}

TEST_CASE("stopping leaves the file that was there", "[handout][composer]") {
  std::atomic<bool> waits = true;
  Composer composer([&waits](const Request& request, double pixel, std::stop_token stop, const Progress& progress) -> Result<Looks> {
    if (pixel > kPrintPixel_mm) return noLooks(request, pixel, stop, progress);
    while (waits && !stop.stop_requested()) std::this_thread::sleep_for(std::chrono::milliseconds(2));
    return Error{ErrorCode::Cancelled, "", {}, {}};
  });
  const QString path = composer.dir.filePath(QStringLiteral("class.pdf"));
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write("older");
  file.close();
  QSignalSpy news(&composer.page, &ComposerPage::news);
  composer.page.saveTo(path);
  REQUIRE(QTest::qWaitFor([&] { return composer.page.stopButton()->isVisible(); }, 5000));
  QTest::mouseClick(composer.page.stopButton(), Qt::LeftButton);
  REQUIRE((!news.isEmpty() || news.wait(5000)));
  CHECK(news.first().first().toString().contains(QStringLiteral("No file was changed")));
  REQUIRE(file.open(QIODevice::ReadOnly));
  CHECK(file.readAll() == "older");
  CHECK_FALSE(composer.page.maker().isWriting());
}

TEST_CASE("files that stand there are asked about before anything is written", "[handout][composer]") {
  Composer composer;
  std::vector<SaveQuestion> questions;
  QObject::connect(&composer.page, &ComposerPage::asked, &composer.page, [&](const SaveQuestion& question) { questions.push_back(question); });
  QSignalSpy written(&composer.page.maker(), &PageMaker::written);
  const int pages = composer.page.pagesView().count();
  REQUIRE(pages > 1);
  const QString name = composer.dir.filePath(QStringLiteral("card.svg"));
  const QStringList files = fileNames(name, pages), more = fileNames(name, pages + 2);
  for (const QString& file : more) putFile(file, "older");

  composer.page.saveTo(name);
  REQUIRE(QTest::qWaitFor([&] { return questions.size() == 1; }, 60000));
  CHECK_FALSE(composer.page.maker().isWriting());
  CHECK(questions[0].text.contains(QFileInfo(more[0]).fileName()));
  CHECK(questions[0].text.contains(QFileInfo(more.back()).fileName()));
  REQUIRE(questions[0].answers.size() == 3);
  questions[0].answers.back().give();
  CHECK_FALSE(composer.page.maker().isWriting());
  for (const QString& file : more) CHECK(bytesOf(file) == "older");
  questions[0].answers.front().give();  // answered already
  CHECK_FALSE(composer.page.maker().isWriting());

  composer.page.saveTo(name);
  REQUIRE(QTest::qWaitFor([&] { return questions.size() == 2; }, 60000));
  questions[1].answers[1].give();  // keeps the older
  REQUIRE(written.wait(60000));
  for (const QString& file : files) CHECK(bytesOf(file).contains("<svg"));
  CHECK(bytesOf(more.back()) == "older");

  composer.page.saveTo(name);
  REQUIRE(QTest::qWaitFor([&] { return questions.size() == 3; }, 60000));
  questions[2].answers[0].give();  // removes them
  REQUIRE(written.wait(60000));
  CHECK(QFile::exists(files.back()));
  CHECK_FALSE(QFile::exists(more.back()));
}

TEST_CASE("a question about files is void when the plan is left and is not lost in silence", "[handout][composer]") {
  Composer composer;
  std::vector<SaveQuestion> questions;
  QObject::connect(&composer.page, &ComposerPage::asked, &composer.page, [&](const SaveQuestion& question) { questions.push_back(question); });
  QSignalSpy gone(&composer.page, &ComposerPage::askedNoMore), news(&composer.page, &ComposerPage::news);
  const QString name = composer.dir.filePath(QStringLiteral("class.pdf"));
  putFile(name, "older");
  composer.page.saveTo(name);
  REQUIRE(QTest::qWaitFor([&] { return questions.size() == 1; }, 20000));
  composer.controller.replace(tests::sixtyPlan(), {});
  CHECK(gone.size() == 1);
  REQUIRE(news.size() == 1);
  CHECK(news.first().first().toString().contains(QStringLiteral("not saved")));
  questions[0].answers.front().give();
  CHECK_FALSE(composer.page.maker().isWriting());
  CHECK(bytesOf(name) == "older");
}

TEST_CASE("a print takes the chosen pages only", "[handout][composer][print]") {
  Composer composer;
  const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
  const QString name = composer.dir.filePath(QStringLiteral("printed.pdf"));
  printer->setOutputFormat(QPrinter::PdfFormat);
  printer->setOutputFileName(name);
  printer->setFullPage(true);
  printer->setPageLayout(layoutOf(plan::PaperSize::A4, plan::PageTurn::Portrait));
  printer->setFromTo(2, 3);
  REQUIRE(composer.page.pagesView().count() > 3);
  QSignalSpy written(&composer.page.maker(), &PageMaker::written);
  REQUIRE(composer.page.maker().print(requestFor(DocumentKind::Handout, composer.controller.document()), printer));
  REQUIRE(written.wait(60000));
  CHECK(written.first().first().toStringList() == QStringList{name});
  CHECK(bytesOf(name).count("/Type /Page\n") == 2);
}

TEST_CASE("stopping a print to a file leaves the file that was there", "[handout][composer][print]") {
  Composer composer([](const Request& request, double pixel, std::stop_token stop, const Progress& progress) -> Result<Looks> {
    if (pixel > kPrintPixel_mm) return noLooks(request, pixel, std::move(stop), progress);
    while (!stop.stop_requested()) std::this_thread::sleep_for(std::chrono::milliseconds(2));
    return Error{ErrorCode::Cancelled, "", {}, {}};
  });
  const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
  const QString name = composer.dir.filePath(QStringLiteral("printed.pdf"));
  putFile(name, "older");
  printer->setOutputFormat(QPrinter::PdfFormat);
  printer->setOutputFileName(name);
  QSignalSpy failed(&composer.page.maker(), &PageMaker::failed), news(&composer.page, &ComposerPage::news);
  REQUIRE(composer.page.maker().print(requestFor(DocumentKind::Handout, composer.controller.document()), printer));
  REQUIRE(QTest::qWaitFor([&] { return composer.page.stopButton()->isVisible(); }, 5000));
  QTest::mouseClick(composer.page.stopButton(), Qt::LeftButton);
  REQUIRE((!failed.isEmpty() || failed.wait(20000)));
  CHECK(failed.first().first().value<Error>().code == ErrorCode::Cancelled);
  REQUIRE(news.size() == 1);
  CHECK(news.first().first().toString().contains(QStringLiteral("nothing was printed")));
  CHECK(bytesOf(name) == "older");
}

TEST_CASE("the preview shows the pages that a print takes, with looks of print", "[handout][composer][print]") {
  std::atomic<double> finest_mm = 100;
  Composer composer([&finest_mm](const Request& request, double pixel_mm, std::stop_token stop, const Progress& progress) {
    if (pixel_mm < finest_mm) finest_mm = pixel_mm;
    return noLooks(request, pixel_mm, std::move(stop), progress);
  });
  REQUIRE(finest_mm > kPrintPixel_mm);
  composer.page.previewPrint();
  REQUIRE(QTest::qWaitFor([&] { return composer.page.printPreview() != nullptr; }, 60000));
  CHECK(finest_mm <= kPrintPixel_mm);
  PrintPreview* preview = composer.page.printPreview();
  CHECK(preview->isVisible());
  CHECK_FALSE(preview->isModal());
  CHECK(preview->pages() != composer.page.pagesView().pages());
  CHECK(preview->sheets()->pageCount() == static_cast<int>(preview->pages()->size()));
  CHECK(preview->sheets()->pageCount() > 1);
  composer.page.forgetClient();
  CHECK_FALSE(composer.page.printPreview());
}

TEST_CASE("a place that cannot be written to is said with its name", "[handout][composer]") {
  Composer composer;
  QSignalSpy trouble(&composer.page, &ComposerPage::trouble);
  composer.page.saveTo(composer.dir.filePath(QStringLiteral("nowhere/class.pdf")));
  REQUIRE(trouble.wait(20000));
  const auto error = trouble.first().first().value<Error>();
  CHECK(error.code == ErrorCode::FileUnwritable);
  CHECK(error.file.find("class.pdf") != std::string::npos);
}

TEST_CASE("a newer edit is what is shown last", "[handout][composer]") {
  Composer composer;
  QPlainTextEdit* aim = composer.page.textBox(HandoutPart::Title)->edit();
  for (int i = 0; i < 20; ++i) aim->setPlainText(QStringLiteral("aim %1").arg(i));
  composer.settle();
  CHECK(composer.page.pagesView().widget()->findChildren<QWidget*>().first()->accessibleDescription().contains(QStringLiteral("aim 19")));
}

TEST_CASE("everything on the composer has a name and a role", "[handout][composer]") {
  Composer composer;
  for (const QWidget* widget : composer.page.findChildren<QWidget*>())
    if (widget->focusPolicy() != Qt::NoFocus && widget->isEnabled() && widget->isVisible()) {
      INFO(widget->metaObject()->className());
      CHECK(!(widget->accessibleName().isEmpty() && (!widget->focusProxy() || widget->focusProxy()->accessibleName().isEmpty()) &&
              !(qobject_cast<const QAbstractButton*>(widget) && !qobject_cast<const QAbstractButton*>(widget)->text().isEmpty())));
    }
}

TEST_CASE("the pages painted for a printer are as many and as large as those shown", "[handout][composer]") {
  Composer composer;
  QTemporaryDir dir;
  QPrinter printer(QPrinter::HighResolution);
  printer.setOutputFormat(QPrinter::PdfFormat);
  printer.setOutputFileName(dir.filePath(QStringLiteral("printed.pdf")));
  printer.setFullPage(true);
  printer.setPageLayout(layoutOf(plan::PaperSize::A4, plan::PageTurn::Portrait));
  REQUIRE(paintPages(printer, *composer.page.pagesView().pages(), printer.resolution(), {}, {}));
  QFile file(dir.filePath(QStringLiteral("printed.pdf")));
  REQUIRE(file.open(QIODevice::ReadOnly));
  CHECK(file.readAll().count("/Type /Page\n") == composer.page.pagesView().count());
}

TEST_CASE("the window turns to its pages and back, and undo works on both", "[handout][composer][window]") {
  tests::Desk desk;
  desk.window->openPath(desk.file("lesson"));
  desk.window->actions().action(QStringLiteral("handout.recordCard"))->trigger();
  CHECK(desk.window->composerPage().isVisible());
  CHECK(desk.window->composerPage().kind()->current() == 1);
  CHECK(desk.window->actions().action(QStringLiteral("handout.print"))->isEnabled());
  CHECK(desk.window->windowTitle().contains(QStringLiteral("lesson")));
  Q_EMIT desk.window->composerPage().paper()->chosen(1);
  CHECK(desk.window->controller().isModified());
  CHECK(desk.window->actions().action(QStringLiteral("edit.undo"))->isEnabled());
  desk.window->actions().action(QStringLiteral("edit.undo"))->trigger();
  CHECK_FALSE(desk.window->controller().isModified());
  QTest::keyClick(&desk.window->composerPage(), Qt::Key_Escape);
  CHECK_FALSE(desk.window->composerPage().isVisible());
  CHECK_FALSE(desk.window->actions().action(QStringLiteral("handout.print"))->isEnabled());
}

TEST_CASE("opening another plan leaves no words of the client before on paper", "[handout][composer][window]") {
  tests::Desk desk;
  const QString other = desk.file("other");
  desk.window->openPath(desk.file("lesson"));
  ComposerPage& page = desk.window->composerPage();
  page.clientBox(1)->edit()->setPlainText(QStringLiteral("Zuleika in nine weeks"));
  desk.window->actions().action(QStringLiteral("handout.clientPage"))->trigger();
  REQUIRE(QTest::qWaitFor([&] { return wordsShown(page).contains(QStringLiteral("Zuleika")); }, 60000));
  desk.window->openPath(other);
  CHECK(page.clientBox(1)->edit()->toPlainText().isEmpty());
  CHECK_FALSE(wordsShown(page).contains(QStringLiteral("Zuleika")));
}

TEST_CASE("the window asks about a file that stands there and does not save when told so", "[handout][composer][window]") {
  tests::Desk desk;
  desk.window->openPath(desk.file("lesson"));
  desk.window->actions().action(QStringLiteral("handout.show"))->trigger();
  ComposerPage& page = desk.window->composerPage();
  page.showDocument(DocumentKind::WorkList);  // no hair to draw
  const QString name = desk.dir.filePath(QStringLiteral("work.pdf"));
  putFile(name, "older");
  page.saveTo(name);
  REQUIRE(QTest::qWaitFor([&] { return desk.window->messages().text().contains(QStringLiteral("work.pdf")); }, 20000));
  desk.press("Do not save");
  CHECK_FALSE(page.maker().isWriting());
  CHECK(bytesOf(name) == "older");
  page.saveTo(name);
  REQUIRE(QTest::qWaitFor([&] { return desk.window->messages().text().contains(QStringLiteral("would be replaced")); }, 20000));
  desk.press("Replace");
  REQUIRE(QTest::qWaitFor([&] { return bytesOf(name).startsWith("%PDF-"); }, 20000));
}

}  // namespace
}  // namespace combdraft::handout

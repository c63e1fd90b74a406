// What the composer gives out: pages on a thread of its own while somebody types, files that
// are whole or not there, questions before anything is lost, print and its preview.
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QRegularExpression>
#include <catch2/catch.hpp>

#include "app/handout/print_preview.h"
#include "tests/app/composer_fixture.h"
#include "tests/app/desk_fixture.h"
#include "tests/app/own_trash.h"

namespace combdraft::handout {
namespace {

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
  const QByteArray bytes = bytesOf(path);
  CHECK(bytes.startsWith("%PDF-"));
  CHECK(bytes.trimmed().endsWith("%%EOF"));
  CHECK(bytes.count("/Type /Page\n") == composer.page.pagesView().count());
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
  QObject::connect(&composer.page, &ComposerPage::asked, &composer.page, [](const SaveQuestion& question) { question.answers.front().give(); });
  composer.page.saveTo(path);
  REQUIRE(composer.page.isPuttingOut());
  REQUIRE(QTest::qWaitFor([&] { return composer.page.stopButton()->isVisible(); }, 5000));
  QTest::mouseClick(composer.page.stopButton(), Qt::LeftButton);
  REQUIRE((!news.isEmpty() || news.wait(5000)));
  CHECK(news.first().first().toString().contains(QStringLiteral("No file was changed")));
  REQUIRE(file.open(QIODevice::ReadOnly));
  CHECK(file.readAll() == "older");
  CHECK_FALSE(composer.page.maker().isWriting());
}

TEST_CASE("files that stand there are asked about before anything is written", "[handout][composer]") {
  const tests::OwnTrash trash;
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
  questions[1].answers[0].give();  // keeps the older
  REQUIRE(written.wait(60000));
  for (const QString& file : files) CHECK(bytesOf(file).contains("<svg"));
  CHECK(bytesOf(more.back()) == "older");

  composer.page.saveTo(name);
  REQUIRE(QTest::qWaitFor([&] { return questions.size() == 3; }, 60000));
  questions[2].answers[1].give();  // removes them
  REQUIRE(written.wait(60000));
  CHECK(QFile::exists(files.back()));
  CHECK_FALSE(QFile::exists(more.back()));
#ifdef Q_OS_LINUX
  CHECK(trash.names().contains(QFileInfo(more.back()).fileName()));
#endif
}

TEST_CASE("a PDF that stands there is asked about before its pages are made", "[handout][composer]") {
  Composer composer;
  std::vector<SaveQuestion> questions;
  QObject::connect(&composer.page, &ComposerPage::asked, &composer.page, [&](const SaveQuestion& question) { questions.push_back(question); });
  const QString name = composer.dir.filePath(QStringLiteral("class.pdf"));
  putFile(name, "older");
  composer.page.saveTo(name);
  REQUIRE(questions.size() == 1);
  CHECK(questions[0].text.contains(QStringLiteral("class.pdf")));
  CHECK(questions[0].answers.size() == 2);
  CHECK_FALSE(composer.page.maker().isWriting());
  QSignalSpy written(&composer.page.maker(), &PageMaker::written);
  questions[0].answers[0].give();
  REQUIRE(written.wait(60000));
  CHECK(bytesOf(name).startsWith("%PDF-"));
}

TEST_CASE("PNG pages are as fine as the number beside Save says", "[handout][composer]") {
  Composer composer;
  composer.page.showDocument(DocumentKind::WorkList);
  composer.settle();
  controls::NumberField* field = composer.page.resolution();
  CHECK(field->value() == 200.0);
  const QSizeF size_mm = composer.page.pagesView().pages()->front().size_mm;
  const auto widthOf = [&](const char* name) {
    QSignalSpy written(&composer.page.maker(), &PageMaker::written);
    composer.page.saveTo(composer.dir.filePath(QLatin1String(name)));
    REQUIRE(written.wait(60000));
    return QImage(written.first().first().toStringList().front()).width();
  };
  CHECK(widthOf("usual.png") == Approx(size_mm.width() / 25.4 * 200).margin(1.5));
  field->edit()->setFocus();
  field->edit()->selectAll();
  QTest::keyClicks(field->edit(), QStringLiteral("50"));
  QTest::keyClick(field->edit(), Qt::Key_Return);
  CHECK(field->value() == 50.0);
  CHECK(widthOf("coarse.png") == Approx(size_mm.width() / 25.4 * 50).margin(1.5));
  field->edit()->selectAll();
  QTest::keyClicks(field->edit(), QStringLiteral("5000"));
  QTest::keyClick(field->edit(), Qt::Key_Return);
  CHECK_FALSE(field->problem().isEmpty());
  CHECK(field->value() == 50.0);
}

TEST_CASE("what is typed while hair is drawn is in sight before the hair is", "[handout][composer]") {
  std::atomic<bool> waits = true;
  std::atomic<int> looks = 0;
  PageMaker maker(slowLooks(waits, looks, 100));
  std::vector<std::pair<Pages, bool>> shown;
  QObject::connect(&maker, &PageMaker::ready, &maker, [&](const Pages& pages, bool looksFollow) { shown.emplace_back(pages, looksFollow); });
  Request request = requestFor(DocumentKind::Handout, tests::demoPlan());
  REQUIRE(looksNeeded(request).any());
  maker.request(request);
  REQUIRE(QTest::qWaitFor([&] { return looks == 1 && shown.size() == 1; }, 20000));
  request.handout.aim = "Softly";
  maker.request(request);
  REQUIRE(QTest::qWaitFor([&] { return shown.size() == 2; }, 20000));
  CHECK(standsOn(shown[1].first, QStringLiteral("Softly")));
  CHECK(shown[1].second);  // the hair is still to come
  CHECK_FALSE(maker.isIdle());
  waits = false;
  REQUIRE(QTest::qWaitFor([&] { return maker.isIdle(); }, 20000));
  CHECK(looks == 1);
  CHECK_FALSE(shown.back().second);
  for (std::size_t i = 1; i < shown.size(); ++i) CHECK(standsOn(shown[i].first, QStringLiteral("Softly")));  // older words never come back
}

TEST_CASE("what is typed while pages are written is in sight before they are", "[handout][composer]") {
  std::atomic<bool> waits = true;
  std::atomic<int> begun = 0;
  Composer composer(slowLooks(waits, begun, kPrintPixel_mm));
  QSignalSpy written(&composer.page.maker(), &PageMaker::written);
  composer.page.saveTo(composer.dir.filePath(QStringLiteral("class.pdf")));
  REQUIRE(QTest::qWaitFor([&] { return begun == 1; }, 20000));
  composer.page.textBox(HandoutPart::Title)->edit()->setPlainText(QStringLiteral("Softly"));
  CHECK(QTest::qWaitFor([&] { return wordsShown(composer.page).contains(QStringLiteral("Softly")); }, 20000));
  CHECK(composer.page.isPuttingOut());
  waits = false;
  REQUIRE(QTest::qWaitFor([&] { return !written.isEmpty(); }, 60000));
  composer.settle();
  CHECK(wordsShown(composer.page).contains(QStringLiteral("Softly")));
}

TEST_CASE("a preview that is asked for does not open once its page is left or out of sight", "[handout][composer][print]") {
  for (const bool isLeft : {true, false}) {
    INFO(isLeft);
    std::atomic<bool> waits = true;
    std::atomic<int> begun = 0;
    Composer composer(slowLooks(waits, begun, kPrintPixel_mm));
    QSignalSpy news(&composer.page, &ComposerPage::news);
    composer.page.previewPrint();
    REQUIRE(QTest::qWaitFor([&] { return begun == 1; }, 20000));
    CHECK(composer.page.maker().isWriting());
    CHECK_FALSE(composer.page.isPuttingOut());  // nothing is lost with it
    if (isLeft)
      composer.page.leave();
    else
      composer.page.hide();
    waits = false;
    REQUIRE(QTest::qWaitFor([&] { return !composer.page.maker().isWriting() && !news.isEmpty(); }, 60000));
    CHECK(says(news, "preview was not opened"));
    CHECK_FALSE(composer.page.printPreview());
    CHECK_FALSE(isDialogShown());
  }
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
  const QByteArray bytes = file.readAll();
  CHECK(bytes.count("/Type /Page\n") == composer.page.pagesView().count());
  static const QRegularExpression box(QStringLiteral(R"(/MediaBox \[0 0 ([\d.]+) ([\d.]+)\])"));
  const Pages shown = composer.page.pagesView().pages();
  std::size_t at = 0;
  for (auto found = box.globalMatch(QString::fromLatin1(bytes)); found.hasNext(); ++at) {
    const QRegularExpressionMatch match = found.next();
    REQUIRE(at < shown->size());
    CHECK(match.captured(1).toDouble() == Approx((*shown)[at].size_mm.width() / 25.4 * 72).margin(1));
    CHECK(match.captured(2).toDouble() == Approx((*shown)[at].size_mm.height() / 25.4 * 72).margin(1));
  }
  CHECK(at == shown->size());
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

TEST_CASE("no preview of another window or of before opens over the client's screen", "[handout][composer][window]") {
  tests::Desk desk;
  desk.window->openPath(desk.file("lesson"));
  REQUIRE(desk.isFresh());
  desk.window->actions().action(QStringLiteral("handout.show"))->trigger();
  ComposerPage& page = desk.window->composerPage();
  page.showDocument(DocumentKind::WorkList);  // no hair to draw
  page.previewPrint();
  REQUIRE(page.maker().isWriting());
  QTest::keyClick(&page, Qt::Key_Escape);
  desk.window->actions().action(QStringLiteral("show.client"))->trigger();
  REQUIRE_FALSE(page.isVisible());
  REQUIRE(QTest::qWaitFor([&] { return page.maker().isIdle(); }, 20000));
  QCoreApplication::processEvents();
  CHECK_FALSE(page.printPreview());
  CHECK_FALSE(isDialogShown());
}

TEST_CASE("a window does not close over pages that are being written unless told so", "[handout][composer][window]") {
  for (const bool isStopped : {false, true}) {
    INFO(isStopped);
    tests::Desk desk;
    desk.window->openPath(desk.file("lesson"));
    desk.window->actions().action(QStringLiteral("handout.show"))->trigger();
    ComposerPage& page = desk.window->composerPage();
    page.showDocument(DocumentKind::WorkList);  // no hair to draw
    const QString name = desk.dir.filePath(QStringLiteral("work.pdf"));
    QSignalSpy written(&page.maker(), &PageMaker::written);
    page.saveTo(name);
    CHECK_FALSE(desk.window->close());
    CHECK(desk.window->isVisible());
    CHECK(desk.window->messages().text().contains(QStringLiteral("still being written")));
    desk.press(isStopped ? "Stop and close" : "Wait");
    if (isStopped) {
      CHECK(QTest::qWaitFor([&] { return !desk.window->isVisible(); }, 20000));
      if (QFile::exists(name)) CHECK(bytesOf(name).trimmed().endsWith("%%EOF"));  // it was whole before
    } else {
      REQUIRE(QTest::qWaitFor([&] { return !written.isEmpty(); }, 20000));
      CHECK(desk.window->isVisible());
      CHECK(bytesOf(name).trimmed().endsWith("%%EOF"));
      CHECK(desk.window->close());
    }
  }
}

TEST_CASE("the question about pages under way goes when they stand", "[handout][composer][window]") {
  tests::Desk desk;
  desk.window->openPath(desk.file("lesson"));
  desk.window->actions().action(QStringLiteral("handout.show"))->trigger();
  ComposerPage& page = desk.window->composerPage();
  page.showDocument(DocumentKind::WorkList);
  page.saveTo(desk.dir.filePath(QStringLiteral("work.pdf")));
  CHECK_FALSE(desk.window->close());
  REQUIRE(desk.window->messages().text().contains(QStringLiteral("still being written")));
  REQUIRE(QTest::qWaitFor([&] { return !page.maker().isWriting(); }, 20000));
  CHECK_FALSE(desk.window->messages().text().contains(QStringLiteral("still being written")));
  CHECK(desk.window->isVisible());
}

}  // namespace
}  // namespace combdraft::handout

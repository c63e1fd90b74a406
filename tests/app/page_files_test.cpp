// Pages to files and to a printer: what stands there, giving up between pages, half a set,
// ranges and copies.
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QPrinter>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

#include "app/handout/page_files.h"
#include "app/handout/page_print.h"
#include "tests/app/own_trash.h"

namespace combdraft::handout {
namespace {

std::vector<paint::Page> blank(int count) {
  paint::Page page;
  page.size_mm = {210, 297};
  page.ground = QColor(Qt::white);
  page.title = QStringLiteral("Blank");
  return std::vector<paint::Page>(static_cast<std::size_t>(count), page);
}

struct Folder {
  QTemporaryDir dir;

  QString path(const char* name) const { return dir.filePath(QLatin1String(name)); }
  void put(const char* name, const char* bytes = "older") const {
    QFile file(path(name));
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
  }
  QByteArray read(const char* name) const {
    QFile file(path(name));
    REQUIRE(file.open(QIODevice::ReadOnly));
    return file.readAll();
  }
  /// All that is in it, hidden files too.
  QStringList names() const { return QDir(dir.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot, QDir::Name); }
};

QStringList named(const QStringList& paths) {
  QStringList names;
  for (const QString& path : paths) names << QFileInfo(path).fileName();
  return names;
}

QStringList list(std::initializer_list<const char*> names) {
  QStringList all;
  for (const char* name : names) all << QLatin1String(name);
  return all;
}

void pdfTo(QPrinter& printer, const QString& name) {
  printer.setOutputFormat(QPrinter::PdfFormat);
  printer.setOutputFileName(name);
  printer.setFullPage(true);
  printer.setPageLayout(layoutOf(plan::PaperSize::A4, plan::PageTurn::Portrait));
}

// Asks to stop once the first page is made.
Progress stopsIn(std::stop_source& stop, int& told) {
  return [&stop, &told](double) {
    ++told;
    stop.request_stop();
  };
}

TEST_CASE("files that pages would replace are named and a free name has none", "[handout][files]") {
  const Folder folder;
  CHECK(filesThere(folder.path("class.svg"), 3).isEmpty());
  folder.put("class-02.svg");
  folder.put("class.pdf");
  folder.put("class-01.png");
  CHECK(named(filesThere(folder.path("class.svg"), 3).replaced) == list({"class-02.svg"}));
  CHECK(filesThere(folder.path("class.svg"), 3).older.isEmpty());
  CHECK(named(filesThere(folder.path("class.pdf"), 3).replaced) == list({"class.pdf"}));
  CHECK(filesThere(folder.path("class.pdf"), 3).older.isEmpty());
}

TEST_CASE("pages of an older longer set are named and a number that stands alone is not", "[handout][files]") {
  const Folder folder;
  REQUIRE(writePages(blank(5), {folder.path("class.svg"), {}}, {}, {}).ok());
  folder.put("class-09.svg");     // after a gap
  folder.put("class-2024.svg");
  folder.put("other-04.svg");
  CHECK(named(filesThere(folder.path("class.svg"), 3).replaced) == list({"class-01.svg", "class-02.svg", "class-03.svg"}));
  CHECK(named(filesThere(folder.path("class.svg"), 3).older) == list({"class-04.svg", "class-05.svg"}));
  // One page takes the name as it is, so that the whole older set would stay beside it.
  CHECK(filesThere(folder.path("class.svg"), 1).older.size() == 5);
  // A hundred pages are numbered with three digits.
  CHECK(filesThere(folder.path("class.svg"), 100).replaced.isEmpty());
  CHECK(filesThere(folder.path("class.svg"), 100).older.size() == 5);
}

TEST_CASE("older pages stay unless they are to be removed and then are in the trash", "[handout][files]") {
  const tests::OwnTrash trash;
  const Folder folder;
  REQUIRE(writePages(blank(5), {folder.path("class.svg"), {}}, {}, {}).ok());
  REQUIRE(writePages(blank(3), {folder.path("class.svg"), {}}, {}, {}).ok());
  CHECK(folder.names().size() == 5);
  FileWish wish{folder.path("class.svg"), {}};
  wish.remove = filesThere(wish.fileName, 3).older;
  REQUIRE(writePages(blank(3), wish, {}, {}).ok());
  CHECK(folder.names() == list({"class-01.svg", "class-02.svg", "class-03.svg"}));
#ifdef Q_OS_LINUX
  CHECK(trash.names() == list({"class-04.svg", "class-05.svg"}));
#endif
}

#ifdef Q_OS_LINUX
TEST_CASE("older pages stay where there is no trash", "[handout][files]") {
  const tests::OwnTrash trash;
  trash.makeImpossible();
  const Folder folder;
  folder.put("class-03.svg");
  FileWish wish{folder.path("class.svg"), {}};
  wish.remove = QStringList{folder.path("class-03.svg")};
  const Result<void> written = writePages(blank(2), wish, {}, {});
  REQUIRE_FALSE(written.ok());
  CHECK(describe(written.error()).find("all new pages stand, of the older ones stay class-03.svg") != std::string::npos);
  CHECK(folder.read("class-03.svg") == "older");
  CHECK(folder.read("class-02.svg").contains("<svg"));
}
#endif

TEST_CASE("a picture in a PDF keeps its fine lines", "[handout][files]") {
  QImage hair(64, 64, QImage::Format_RGB32);
  for (int y = 0; y < hair.height(); ++y)
    for (int x = 0; x < hair.width(); ++x) hair.setPixel(x, y, qRgb((x * 37 + y * 11) % 256, (x * 5 + y * 91) % 256, (x * y) % 256));
  std::vector<paint::Page> pages = blank(1);
  paint::PlacedFigure placed;
  placed.figure.frame = QRectF(0, 0, 50, 50);
  paint::DrawingItem item;
  item.image = hair;
  item.imageRect = placed.figure.frame;
  placed.figure.items.push_back(item);
  pages.front().figures.push_back(placed);
  const Result<QByteArray> pdf = pdfBytes(pages, {}, {}, {});
  REQUIRE(pdf.ok());
  CHECK(pdf->contains("/Subtype /Image"));
  CHECK_FALSE(pdf->contains("/DCTDecode"));
}

TEST_CASE("a set of which one page cannot be put in place says which are new and which are not", "[handout][files]") {
  const Folder folder;
  for (const char* name : {"class-01.svg", "class-03.svg"}) folder.put(name);
  // Once all are written whole, something stands in the place of the second.
  const auto comesBetween = [&](double done) {
    if (done == 1) QDir().mkpath(folder.path("class-02.svg/full"));
  };
  const Result<void> written = writePages(blank(3), {folder.path("class.svg"), {}}, {}, comesBetween);
  REQUIRE_FALSE(written.ok());
  CHECK(written.error().code == ErrorCode::FileUnwritable);
  CHECK(written.error().file == folder.path("class-02.svg").toStdString());
  const std::string said = describe(written.error());
  INFO(said);
  CHECK(said.find("new are class-01.svg, as before are class-02.svg to class-03.svg") != std::string::npos);
  CHECK(said.find("write all pages again") != std::string::npos);
  CHECK(folder.read("class-01.svg").contains("<svg"));
  CHECK(folder.read("class-03.svg") == "older");
  CHECK(folder.names() == list({"class-01.svg", "class-02.svg", "class-03.svg"}));  // no half-written one
}

TEST_CASE("an older page that cannot be removed is named and the new pages stand", "[handout][files]") {
  const tests::OwnTrash trash;
  const Folder folder;
  REQUIRE(QDir().mkpath(folder.path("class-03.svg/full")));
  FileWish wish{folder.path("class.svg"), {}};
  wish.remove = QStringList{folder.path("class-03.svg")};
  const Result<void> written = writePages(blank(2), wish, {}, {});
  REQUIRE_FALSE(written.ok());
  CHECK(describe(written.error()).find("all new pages stand, of the older ones stay class-03.svg") != std::string::npos);
  CHECK(folder.read("class-02.svg").contains("<svg"));
}

TEST_CASE("pages given up after the first leave what was there and nothing else", "[handout][files]") {
  for (const char* ending : {"pdf", "svg", "png"}) {
    INFO(ending);
    const Folder folder;
    const QString name = folder.path("class.") + QLatin1String(ending);
    const QString first = fileNames(name, 3).front();
    folder.put(QFileInfo(first).fileName().toLatin1().constData());
    const QStringList before = folder.names();
    std::stop_source stop;
    int told = 0;
    const Result<void> written = writePages(blank(3), {name, {}, 40}, stop.get_token(), stopsIn(stop, told));
    REQUIRE_FALSE(written.ok());
    CHECK(written.error().code == ErrorCode::Cancelled);
    CHECK(told == 1);  // it stopped between the first and the second
    CHECK(folder.names() == before);
    CHECK(folder.read(QFileInfo(first).fileName().toLatin1().constData()) == "older");
  }
}

TEST_CASE("a print takes the range, the order and the copies that were chosen", "[handout][print]") {
  using Pages = std::vector<std::size_t>;
  PrintRun run;
  CHECK(pagesInRun(run, 3) == Pages{0, 1, 2});
  run.ranges.addRange(2, 3);
  run.ranges.addPage(5);
  CHECK(pagesInRun(run, 6) == Pages{1, 2, 4});
  CHECK(pagesInRun(run, 4) == Pages{1, 2});
  CHECK(pagesInRun(run, 1).empty());
  run.order = PrintRun::Order::LastPageFirst;
  CHECK(pagesInRun(run, 6) == Pages{4, 2, 1});
  run.copies = 2;
  CHECK(pagesInRun(run, 6) == Pages{4, 2, 1, 4, 2, 1});
  run.by = PrintRun::Copies::PageByPage;
  CHECK(pagesInRun(run, 6) == Pages{4, 4, 2, 2, 1, 1});
}

TEST_CASE("pages outside the chosen range do not come out of the printer", "[handout][print]") {
  const Folder folder;
  const auto printed = [&](const char* name, QPrinter& printer) {
    pdfTo(printer, folder.path(name));
    const Result<QStringList> files = printPages(printer, blank(5), {}, {});
    REQUIRE(files.ok());
    CHECK(*files == QStringList{folder.path(name)});
    CHECK(folder.read(name).trimmed().endsWith("%%EOF"));
    return folder.read(name).count("/Type /Page\n");
  };
  QPrinter all(QPrinter::HighResolution), two(QPrinter::HighResolution), some(QPrinter::HighResolution), copies(QPrinter::HighResolution);
  CHECK(printed("all.pdf", all) == 5);
  two.setFromTo(2, 3);
  CHECK(printed("two.pdf", two) == 2);
  some.setPageRanges(QPageRanges::fromString(QStringLiteral("1,4-9")));
  CHECK(printed("some.pdf", some) == 3);
  copies.setFromTo(1, 2);
  copies.setCopyCount(3);
  pdfTo(copies, folder.path("copies.pdf"));
  CHECK(printed("copies.pdf", copies) == (copies.supportsMultipleCopies() ? 2 : 6));
  CHECK(folder.names().size() == 4);
}

TEST_CASE("a range without a page is said and prints nothing", "[handout][print]") {
  const Folder folder;
  QPrinter printer(QPrinter::HighResolution);
  pdfTo(printer, folder.path("none.pdf"));
  printer.setFromTo(7, 9);
  const Result<QStringList> printed = printPages(printer, blank(5), {}, {});
  REQUIRE_FALSE(printed.ok());
  CHECK(describe(printed.error()).find("found 7-9, allowed is pages 1 to 5") != std::string::npos);
  CHECK(folder.names().isEmpty());
}

TEST_CASE("a print to a file that is given up after the first page leaves the file that was there", "[handout][print]") {
  const Folder folder;
  folder.put("class.pdf");
  QPrinter printer(QPrinter::HighResolution);
  pdfTo(printer, folder.path("class.pdf"));
  std::stop_source stop;
  int told = 0;
  const Result<QStringList> printed = printPages(printer, blank(3), stop.get_token(), stopsIn(stop, told));
  REQUIRE_FALSE(printed.ok());
  CHECK(printed.error().code == ErrorCode::Cancelled);
  CHECK(printed.error().args.empty());  // nothing went anywhere
  CHECK(told == 1);
  CHECK(folder.names() == list({"class.pdf"}));
  CHECK(folder.read("class.pdf") == "older");
}

TEST_CASE("a print to a place that is not there says the file", "[handout][print]") {
  const Folder folder;
  QPrinter printer(QPrinter::HighResolution);
  pdfTo(printer, folder.path("nowhere/class.pdf"));
  const Result<QStringList> printed = printPages(printer, blank(1), {}, {});
  REQUIRE_FALSE(printed.ok());
  CHECK(printed.error().code == ErrorCode::FileUnwritable);
  CHECK(printed.error().file == folder.path("nowhere/class.pdf").toStdString());
}

}  // namespace
}  // namespace combdraft::handout

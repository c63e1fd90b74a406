#include "app/handout/page_files.h"

#include <QBuffer>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QStandardPaths>
#include <memory>

#include "app/handout/paper.h"
#include "app/paint/painter_backend.h"
#include "app/paint/svg_writer.h"

namespace combdraft::handout {
namespace {

constexpr int kPdf_dpi = 1200;  // of the paper's coordinates: 0.02 mm
constexpr int kFewDigits = 2, kManyDigits = 3;  // of a page's number: to 99, beyond
constexpr int kMostOfFewDigits = 99;

Error cancelled() { return {ErrorCode::Cancelled, "", {}, {}}; }

QPageSize pageSize(const QSizeF& size_mm) {
  return QPageSize(size_mm, QPageSize::Millimeter, QString(), QPageSize::ExactMatch);
}

Error unwritable(const QString& name, const QString& why) {
  return {ErrorCode::FileUnwritable, "", {why.toStdString(), "a folder that you may write to, with room on its disk"}, name.toStdString()};
}

// The first `done` of the files are new, the others are as they were.
Error halfWay(const QStringList& names, qsizetype done, const QString& why) {
  if (done == 0) return unwritable(names.front(), why);
  return {ErrorCode::FileUnwritable, "",
          {why.toStdString() + "; new are " + firstToLast(names.first(done)) + ", as before are " + firstToLast(names.sliced(done)),
           "a folder that lets go of these files; then write all pages again"},
          names[done].toStdString()};
}

int digitsFor(int pages) { return pages > kMostOfFewDigits ? kManyDigits : kFewDigits; }

QString numbered(const QString& fileName, int number, int digits) {
  const QString ending = QFileInfo(fileName).suffix();
  return QStringLiteral("%1-%2.%3").arg(fileName.chopped(ending.size() + 1), QStringLiteral("%1").arg(number, digits, 10, QLatin1Char('0')), ending);
}

bool isFileThere(const QString& name) {
  const QFileInfo info(name);
  return info.exists() && !info.isDir();
}

// Where no trash can be made, files would be moved into the current folder.
bool isTrashThere() {
#if defined(Q_OS_UNIX) && !defined(Q_OS_MACOS)
  const QString place = QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + QStringLiteral("/Trash");
  if (QFileInfo(place).isDir()) return true;
  return QDir().mkpath(place) && QFile::setPermissions(place, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
#else
  return true;
#endif
}

// Never for good: that they are of an older set is told by their names alone.
Result<void> removeOlder(const QStringList& names) {
  if (names.isEmpty()) return {};
  const bool isTrash = isTrashThere();
  QStringList stay;
  QString why;
  for (const QString& name : names) {
    if (!QFileInfo::exists(name)) continue;
    QFile file(name);
    if (isFileThere(name) && isTrash && file.moveToTrash()) continue;
    stay << name;
    why = !isFileThere(name) ? QStringLiteral("a folder") : isTrash ? file.errorString() : QStringLiteral("no trash to put it into");
  }
  if (stay.isEmpty()) return {};
  return Error{ErrorCode::FileUnwritable, "",
               {why.toStdString() + "; all new pages stand, of the older ones stay " + firstToLast(stay), "to remove the older ones by hand"},
               stay.front().toStdString()};
}

}  // namespace

QPageLayout layoutOf(plan::PaperSize paper, plan::PageTurn turn) {
  return QPageLayout(QPageSize(paper == plan::PaperSize::A4 ? QPageSize::A4 : QPageSize::Letter),
                     turn == plan::PageTurn::Portrait ? QPageLayout::Portrait : QPageLayout::Landscape, QMarginsF(0, 0, 0, 0));
}

void paintOnPaper(QPainter& painter, const paint::Page& page, double dpi) {
  painter.save();
  painter.scale(dpi / 25.4, dpi / 25.4);
  paint::paintPage(painter, page);
  painter.restore();
}

bool paintPages(QPagedPaintDevice& device, const std::vector<paint::Page>& pages, double dpi, std::stop_token stop,
                const Progress& progress) {
  QPainter painter(&device);
  if (!painter.isActive()) return false;
  painter.setRenderHint(QPainter::LosslessImageRendering);  // hair is fine lines
  for (std::size_t i = 0; i < pages.size(); ++i) {
    if (stop.stop_requested()) return false;
    if (i > 0 && !device.newPage()) return false;
    paintOnPaper(painter, pages[i], dpi);
    if (progress) progress(static_cast<double>(i + 1) / static_cast<double>(pages.size()));
  }
  return painter.end();
}

Result<QByteArray> pdfBytes(const std::vector<paint::Page>& pages, const QString& title, std::stop_token stop, const Progress& progress) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  {
    QPdfWriter writer(&buffer);
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Combdraft"));
    writer.setResolution(kPdf_dpi);
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    writer.setPageSize(pageSize(pages.front().size_mm));
    if (!paintPages(writer, pages, kPdf_dpi, stop, progress)) return cancelled();
  }
  return bytes;
}

QStringList fileNames(const QString& fileName, int pages) {
  if (pages <= 1 || paint::formatOf(fileName) == paint::PictureFormat::Pdf) return {fileName};
  QStringList names;
  for (int i = 1; i <= pages; ++i) names << numbered(fileName, i, digitsFor(pages));
  return names;
}

FilesThere filesThere(const QString& fileName, int pages) {
  FilesThere there;
  const auto format = paint::formatOf(fileName);
  if (!format) return there;
  const QStringList names = fileNames(fileName, pages);
  for (const QString& name : names)
    if (isFileThere(name)) there.replaced << name;
  if (*format == paint::PictureFormat::Pdf) return there;
  // Without a gap, as a set is written: a number that stands alone is somebody else's.
  for (const int digits : {kFewDigits, kManyDigits}) {
    const int first = pages > 1 && digits == digitsFor(pages) ? pages + 1 : 1;
    for (int i = first; digits == kManyDigits || i <= kMostOfFewDigits; ++i) {
      const QString name = numbered(fileName, i, digits);
      if (!isFileThere(name)) break;
      there.older << name;
    }
  }
  return there;
}

std::string firstToLast(const QStringList& files) {
  if (files.isEmpty()) return {};
  const std::string first = QFileInfo(files.front()).fileName().toStdString();
  return files.size() == 1 ? first : first + " to " + QFileInfo(files.back()).fileName().toStdString();
}

Result<void> writePages(const std::vector<paint::Page>& pages, const FileWish& wish, std::stop_token stop, const Progress& progress) {
  const auto format = paint::formatOf(wish.fileName);
  if (!format)
    return Error{ErrorCode::UnknownName, "ending", {wish.fileName.toStdString(), ".pdf, .svg or .png"}, wish.fileName.toStdString()};
  const QStringList names = fileNames(wish.fileName, static_cast<int>(pages.size()));
  std::vector<std::unique_ptr<QSaveFile>> files;  // none is in place before all are whole
  for (qsizetype i = 0; i < names.size(); ++i) {
    if (stop.stop_requested()) return cancelled();
    if (QFileInfo(names[i]).isDir()) return Error{ErrorCode::FileIsDirectory, "", {"a folder", "a file name"}, names[i].toStdString()};
    auto file = std::make_unique<QSaveFile>(names[i]);
    if (!file->open(QIODevice::WriteOnly)) return unwritable(names[i], file->errorString());
    const paint::Page& page = pages[static_cast<std::size_t>(i)];
    Result<QByteArray> bytes = *format == paint::PictureFormat::Pdf   ? pdfBytes(pages, wish.title, stop, progress)
                               : *format == paint::PictureFormat::Png ? paint::pngBytes(page, {std::nullopt, wish.dpi})
                                                                      : Result<QByteArray>(paint::svgText(page));
    if (!bytes) return bytes.error();
    if (file->write(*bytes) != bytes->size() || !file->flush()) return unwritable(names[i], file->errorString());
    files.push_back(std::move(file));
    if (progress && *format != paint::PictureFormat::Pdf) progress(static_cast<double>(i + 1) / static_cast<double>(names.size()));
  }
  if (stop.stop_requested()) return cancelled();
  for (std::size_t i = 0; i < files.size(); ++i)
    if (!files[i]->commit()) return halfWay(names, static_cast<qsizetype>(i), files[i]->errorString());
  return removeOlder(wish.remove);
}

}  // namespace combdraft::handout

#include "app/handout/page_files.h"

#include <QBuffer>
#include <QFileInfo>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <memory>

#include "app/handout/paper.h"
#include "app/paint/painter_backend.h"
#include "app/paint/svg_writer.h"

namespace combdraft::handout {
namespace {

constexpr int kPdf_dpi = 1200;  // of the paper's coordinates: 0.02 mm

Error cancelled() { return {ErrorCode::Cancelled, "", {}, {}}; }

QPageSize pageSize(const QSizeF& size_mm) {
  return QPageSize(size_mm, QPageSize::Millimeter, QString(), QPageSize::ExactMatch);
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

Error unwritable(const QString& name, const QString& why) {
  return {ErrorCode::FileUnwritable, "", {why.toStdString(), "a folder that you may write to, with room on its disk"}, name.toStdString()};
}

}  // namespace

QPageLayout layoutOf(plan::PaperSize paper, plan::PageTurn turn) {
  return QPageLayout(QPageSize(paper == plan::PaperSize::A4 ? QPageSize::A4 : QPageSize::Letter),
                     turn == plan::PageTurn::Portrait ? QPageLayout::Portrait : QPageLayout::Landscape, QMarginsF(0, 0, 0, 0));
}

bool paintPages(QPagedPaintDevice& device, const std::vector<paint::Page>& pages, double dpi, std::stop_token stop,
                const Progress& progress) {
  QPainter painter(&device);
  if (!painter.isActive()) return false;
  for (std::size_t i = 0; i < pages.size(); ++i) {
    if (stop.stop_requested()) return false;
    if (i > 0 && !device.newPage()) return false;
    painter.save();
    painter.scale(dpi / 25.4, dpi / 25.4);
    paint::paintPage(painter, pages[i]);
    painter.restore();
    if (progress) progress(static_cast<double>(i + 1) / static_cast<double>(pages.size()));
  }
  return painter.end();
}

QStringList fileNames(const QString& fileName, int pages) {
  if (pages <= 1 || paint::formatOf(fileName) == paint::PictureFormat::Pdf) return {fileName};
  const QFileInfo info(fileName);
  const QString stem = fileName.left(fileName.size() - info.suffix().size() - 1);
  const int digits = pages > 99 ? 3 : 2;
  QStringList names;
  for (int i = 1; i <= pages; ++i) names << QStringLiteral("%1-%2.%3").arg(stem).arg(i, digits, 10, QLatin1Char('0')).arg(info.suffix());
  return names;
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
    if (!files[i]->commit()) return unwritable(names[static_cast<qsizetype>(i)], files[i]->errorString());
  return {};
}

}  // namespace combdraft::handout

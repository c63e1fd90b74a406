#include "app/handout/page_print.h"

#include <QPainter>
#include <QPrinter>
#include <QSaveFile>
#include <algorithm>

#include "app/handout/page_files.h"

namespace combdraft::handout {
namespace {

Error cancelled() { return {ErrorCode::Cancelled, "", {}, {}}; }

Error unwritable(const QString& name, const QString& why) {
  return {ErrorCode::FileUnwritable, "", {why.toStdString(), "a folder that you may write to, with room on its disk"}, name.toStdString()};
}

Error refused(const QPrinter& printer) {
  return {ErrorCode::FileUnwritable, "", {"the printer took no more", "a printer that is on and has paper"}, printer.printerName().toStdString()};
}

Result<void> paintRun(QPrinter& printer, const std::vector<paint::Page>& pages, const std::vector<std::size_t>& run, std::stop_token stop,
                      const Progress& progress) {
  if (stop.stop_requested()) return cancelled();  // a printer that has begun sends a page
  QPainter painter(&printer);
  if (!painter.isActive()) return refused(printer);
  painter.setRenderHint(QPainter::LosslessImageRendering);
  for (std::size_t i = 0; i < run.size(); ++i) {
    if (stop.stop_requested()) {
      if (printer.abort()) return cancelled();
      return Error{ErrorCode::Cancelled, "", {std::to_string(i), std::to_string(run.size())}, {}};
    }
    if (i > 0 && !printer.newPage()) return refused(printer);
    paintOnPaper(painter, pages[run[i]], printer.resolution());
    if (progress) progress(static_cast<double>(i + 1) / static_cast<double>(run.size()));
  }
  if (!painter.end()) return refused(printer);
  return {};
}

// Printing to a file empties it first and says nothing of a full disk, so the pages are
// painted in memory and take the file's place when they are whole.
Result<void> printToFile(const QPrinter& printer, const std::vector<paint::Page>& pages, const std::vector<std::size_t>& run, std::stop_token stop,
                         const Progress& progress) {
  std::vector<paint::Page> chosen;
  chosen.reserve(run.size());
  for (const std::size_t page : run) chosen.push_back(pages[page]);
  const Result<QByteArray> bytes = pdfBytes(chosen, printer.docName(), stop, progress);
  if (!bytes) return bytes.error();
  if (stop.stop_requested()) return cancelled();
  QSaveFile file(printer.outputFileName());
  if (!file.open(QIODevice::WriteOnly) || file.write(*bytes) != bytes->size() || !file.commit())
    return unwritable(printer.outputFileName(), file.errorString());
  return {};
}

}  // namespace

PrintRun printRunOf(const QPrinter& printer) {
  PrintRun run;
  run.ranges = printer.pageRanges();
  if (run.ranges.isEmpty() && printer.fromPage() > 0) run.ranges.addRange(printer.fromPage(), std::max(printer.fromPage(), printer.toPage()));
  if (!printer.supportsMultipleCopies()) run.copies = std::max(1, printer.copyCount());
  if (!printer.collateCopies()) run.by = PrintRun::Copies::PageByPage;
  if (printer.pageOrder() == QPrinter::LastPageFirst) run.order = PrintRun::Order::LastPageFirst;
  return run;
}

std::vector<std::size_t> pagesInRun(const PrintRun& run, std::size_t pages) {
  std::vector<std::size_t> once;
  for (std::size_t i = 0; i < pages; ++i)
    if (run.ranges.isEmpty() || run.ranges.contains(static_cast<int>(i) + 1)) once.push_back(i);
  if (run.order == PrintRun::Order::LastPageFirst) std::reverse(once.begin(), once.end());
  std::vector<std::size_t> all;
  if (run.by == PrintRun::Copies::SetBySet) {
    for (int copy = 0; copy < run.copies; ++copy) all.insert(all.end(), once.begin(), once.end());
  } else {
    for (const std::size_t page : once) all.insert(all.end(), static_cast<std::size_t>(run.copies), page);
  }
  return all;
}

Result<QStringList> printPages(QPrinter& printer, const std::vector<paint::Page>& pages, std::stop_token stop, const Progress& progress) {
  const PrintRun chosen = printRunOf(printer);
  const std::vector<std::size_t> run = pagesInRun(chosen, pages.size());
  if (run.empty())
    return Error{ErrorCode::OutOfRange, "", {chosen.ranges.toString().toStdString(), "pages 1 to " + std::to_string(pages.size())}, {}};
  const bool isToFile = printer.outputFormat() == QPrinter::PdfFormat && !printer.outputFileName().isEmpty();
  const Result<void> printed = isToFile ? printToFile(printer, pages, run, stop, progress) : paintRun(printer, pages, run, stop, progress);
  if (!printed) return printed.error();
  return isToFile ? QStringList{printer.outputFileName()} : QStringList();
}

}  // namespace combdraft::handout

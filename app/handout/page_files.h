#pragma once
// Pages to a file, files or a printer: all by the one painter.
#include <QPagedPaintDevice>
#include <QPageLayout>
#include <stop_token>

#include "app/handout/document.h"
#include "app/paint/export_page.h"

namespace combdraft::handout {

struct FileWish {
  QString fileName;     ///< .pdf: one file; .svg and .png: one for each page, numbered when there are several
  QString title;        ///< of the document
  double dpi = 200;     ///< PNG
};

/// Names of the files that `pages` pages become: "class.pdf"; "class-01.png", "class-02.png".
QStringList fileNames(const QString& fileName, int pages);

/// Atomic for each file, and no file is put in place before all were written whole.
/// Errors: UnknownName (ending), FileIsDirectory, FileUnwritable, OutOfRange, Cancelled.
Result<void> writePages(const std::vector<paint::Page>& pages, const FileWish& wish, std::stop_token stop, const Progress& progress);

/// As they are on paper; resolution of `device` as it is set. False when cancelled or
/// when the device gives up.
bool paintPages(QPagedPaintDevice& device, const std::vector<paint::Page>& pages, double dpi, std::stop_token stop,
                const Progress& progress);
QPageLayout layoutOf(plan::PaperSize paper, plan::PageTurn turn);

}  // namespace combdraft::handout

#pragma once
// Pages to a file or files, all by the one painter; what stands where they go.
#include <QPageLayout>
#include <QPagedPaintDevice>
#include <QStringList>
#include <stop_token>

#include "app/handout/document.h"
#include "app/paint/export_page.h"

class QPainter;

namespace combdraft::handout {

struct FileWish {
  QString fileName;       ///< .pdf: one file; .svg and .png: one for each page, numbered when there are several
  QString title;          ///< of the document
  double dpi = 200;       ///< PNG
  QStringList remove{};   ///< files of an older set: put into the trash once the new pages stand
};

/// Names of the files that `pages` pages become: "class.pdf"; "class-01.png", "class-02.png".
QStringList fileNames(const QString& fileName, int pages);

/// Files that stand where pages are to be written.
struct FilesThere {
  QStringList replaced;  ///< their names are those of the pages
  QStringList older;     ///< named like pages of an older set that the new ones leave standing:
                         ///< numbered on from the last one, or with another number of digits
  bool isEmpty() const { return replaced.isEmpty() && older.isEmpty(); }
};
FilesThere filesThere(const QString& fileName, int pages);

/// "class-02.svg", or "class-02.svg to class-09.svg": without their folder, in English.
std::string firstToLast(const QStringList& files);

/// Atomic for each file, and no file is put in place before all were written whole. Files that
/// stand there are replaced. When one cannot be put in place, the error names those that were
/// replaced before it and those that were not; when one of `remove` cannot be put into the
/// trash it stays, and the error names those that stay.
/// Errors: UnknownName (ending), FileIsDirectory, FileUnwritable, OutOfRange, Cancelled.
Result<void> writePages(const std::vector<paint::Page>& pages, const FileWish& wish, std::stop_token stop, const Progress& progress);

/// The whole PDF, pages in their own size. Error: Cancelled.
Result<QByteArray> pdfBytes(const std::vector<paint::Page>& pages, const QString& title, std::stop_token stop, const Progress& progress);

/// As they are on paper; resolution of `device` as it is set. False when cancelled or
/// when the device gives up.
bool paintPages(QPagedPaintDevice& device, const std::vector<paint::Page>& pages, double dpi, std::stop_token stop,
                const Progress& progress);
/// One of them, in its size on paper.
void paintOnPaper(QPainter& painter, const paint::Page& page, double dpi);
QPageLayout layoutOf(plan::PaperSize paper, plan::PageTurn turn);

}  // namespace combdraft::handout

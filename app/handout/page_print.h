#pragma once
// Pages to a printer: those of the wished range, in the wished order, as many copies as
// the printer leaves to the program.
#include <QPageRanges>
#include <QStringList>
#include <stop_token>
#include <vector>

#include "app/handout/document.h"

class QPrinter;

namespace combdraft::handout {

/// What was chosen about a print run, as far as the program has to see to it.
struct PrintRun {
  enum class Copies { SetBySet, PageByPage };
  enum class Order { FirstPageFirst, LastPageFirst };
  QPageRanges ranges{};  ///< of 1 on; empty = all pages
  int copies = 1;
  Copies by = Copies::SetBySet;
  Order order = Order::FirstPageFirst;
};
PrintRun printRunOf(const QPrinter& printer);

/// Which of `pages` pages go to paper one after the other, counted from 0.
std::vector<std::size_t> pagesInRun(const PrintRun& run, std::size_t pages);

/// Prints by the printer's own range, order and copies. The files that came of it: none
/// for a printer of paper, the PDF when it prints to a file. A file is replaced only when
/// the new one is whole. Errors: OutOfRange (no such page), FileUnwritable, Cancelled; that
/// one with how many pages of how many had gone out as `args` where the printer could not
/// take them back.
Result<QStringList> printPages(QPrinter& printer, const std::vector<paint::Page>& pages, std::stop_token stop,
                               const Progress& progress);

}  // namespace combdraft::handout

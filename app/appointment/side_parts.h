#pragma once
// What the pages of an appointment are laid out from: a column that scrolls, headings,
// texts that can be copied, tables to read.
#include <QLabel>
#include <QScrollArea>
#include <QTableWidget>
#include <QVBoxLayout>

namespace combdraft::appointment {

/// How the keyboard gets to what is below the edge of a column that scrolls: its fields
/// take the focus and come into view, or (words alone) the column itself takes it.
enum class Reached { ByItsFields, ByItself };

struct ScrolledColumn {
  QScrollArea* scroll = nullptr;  ///< to be laid out by who asked for it
  QVBoxLayout* column = nullptr;  ///< end it with a stretch
};
ScrolledColumn newScrolledColumn(QWidget* parent, Reached reached = Reached::ByItsFields);

// Each stands at the end of `column`, whose layout must be in its widget already.
QLabel* addHeading(QVBoxLayout* column, const QString& text);
/// Wraps, and can be marked and copied.
QLabel* addText(QVBoxLayout* column, const QString& text = {});
/// Second text; wraps.
QLabel* addSoftText(QVBoxLayout* column, const QString& text = {});
QLabel* addCaution(QVBoxLayout* column, const QString& text);
/// A heading and, returned, a text that a screen reader calls by it.
QLabel* addPart(QVBoxLayout* column, const QString& title);

/// To be read, one row at a time; Tab leaves it.
QTableWidget* newTable(const QString& name, const QStringList& head, QWidget* parent);
void setRow(QTableWidget* table, int row, const QStringList& cells);

}  // namespace combdraft::appointment

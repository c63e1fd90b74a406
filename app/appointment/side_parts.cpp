#include "app/appointment/side_parts.h"
#include "app/controls/wrapped_label.h"

#include <QHeaderView>

namespace combdraft::appointment {
namespace {

constexpr int kSpacing_px = 6;  // also what is left free beside the scroll bar

QLabel* addWrapped(QVBoxLayout* column, const QString& text) {
  auto* label = new controls::WrappedLabel(text, column->parentWidget());
  column->addWidget(label);
  return label;
}

}  // namespace

ScrolledColumn newScrolledColumn(QWidget* parent, Reached reached) {
  auto* scroll = new QScrollArea(parent);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  if (reached == Reached::ByItsFields) scroll->setFocusPolicy(Qt::NoFocus);
  auto* inside = new QWidget(scroll);
  auto* column = new QVBoxLayout(inside);
  column->setContentsMargins(0, 0, kSpacing_px, 0);
  column->setSpacing(kSpacing_px);
  scroll->setWidget(inside);
  return {scroll, column};
}

QLabel* addHeading(QVBoxLayout* column, const QString& text) {
  QLabel* heading = addWrapped(column, text);
  QFont font = heading->font();
  font.setWeight(QFont::DemiBold);
  heading->setFont(font);
  return heading;
}

QLabel* addText(QVBoxLayout* column, const QString& text) {
  QLabel* label = addWrapped(column, text);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  return label;
}

QLabel* addSoftText(QVBoxLayout* column, const QString& text) {
  QLabel* label = addWrapped(column, text);
  label->setProperty("soft", true);
  return label;
}

QLabel* addCaution(QVBoxLayout* column, const QString& text) {
  QLabel* label = addWrapped(column, text);
  label->setProperty("caution", true);
  return label;
}

QLabel* addPart(QVBoxLayout* column, const QString& title) {
  addHeading(column, title);
  QLabel* text = addText(column);
  text->setAccessibleName(title);
  return text;
}

QTableWidget* newTable(const QString& name, const QStringList& head, QWidget* parent) {
  auto* table = new QTableWidget(0, static_cast<int>(head.size()), parent);
  table->setAccessibleName(name);
  table->setHorizontalHeaderLabels(head);
  table->verticalHeader()->hide();
  table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table->setSelectionBehavior(QAbstractItemView::SelectRows);
  table->setSelectionMode(QAbstractItemView::SingleSelection);
  table->setTabKeyNavigation(false);
  table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  return table;
}

void setRow(QTableWidget* table, int row, const QStringList& cells) {
  for (int i = 0; i < cells.size(); ++i) table->setItem(row, i, new QTableWidgetItem(cells[i]));
}

}  // namespace combdraft::appointment

#pragma once
// All that a widget and what is in it says: labels, buttons, fields, lists, tables, commands.
#include <QAbstractButton>
#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QTableWidget>
#include <QWidget>

namespace combdraft::tests {

inline QString everyWordOf(const QWidget& widget) {
  QStringList words;
  for (const auto* label : widget.findChildren<QLabel*>()) words << label->text();
  for (const auto* button : widget.findChildren<QAbstractButton*>()) words << button->text();
  for (const auto* edit : widget.findChildren<QLineEdit*>()) words << edit->placeholderText() << edit->text();
  for (const auto* edit : widget.findChildren<QPlainTextEdit*>()) words << edit->placeholderText() << edit->toPlainText();
  for (const auto* combo : widget.findChildren<QComboBox*>())
    for (int i = 0; i < combo->count(); ++i) words << combo->itemText(i);
  for (const auto* list : widget.findChildren<QListWidget*>())
    for (int i = 0; i < list->count(); ++i) words << list->item(i)->text();
  for (const auto* table : widget.findChildren<QTableWidget*>())
    for (int row = 0; row < table->rowCount(); ++row)
      for (int column = 0; column < table->columnCount(); ++column)
        if (const QTableWidgetItem* item = table->item(row, column)) words << item->text();
  for (const auto* action : widget.findChildren<QAction*>()) words << action->text() << action->toolTip() << action->statusTip();
  for (const auto* any : widget.findChildren<QWidget*>()) words << any->toolTip() << any->accessibleName() << any->accessibleDescription();
  return words.join(u'\n');
}

}  // namespace combdraft::tests

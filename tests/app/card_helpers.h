#pragma once
// Hands for the tests of cards: type into fields, find them, press buttons.
#include <catch2/catch.hpp>

#include <QPushButton>
#include <QTest>

#include "app/controls/number_field.h"
#include "app/controls/text_field.h"

namespace combdraft::tests {

inline void typeInto(QLineEdit* edit, const QString& text) {
  edit->setFocus();
  edit->selectAll();
  if (text.isEmpty())
    QTest::keyClick(edit, Qt::Key_Delete);
  else
    for (const QChar c : text) {  // also what keys of a test cannot type
      edit->insert(QString(c));
      edit->setModified(true);
    }
  QTest::keyClick(edit, Qt::Key_Return);
}

/// The field whose accessible name begins with `label`.
template <class Field>
Field* fieldNamed(QWidget& card, const QString& label) {
  for (Field* field : card.findChildren<Field*>())
    if (field->edit()->accessibleName().startsWith(label)) return field;
  FAIL("no field " << label.toStdString());
  return nullptr;
}
inline controls::NumberField* numberNamed(QWidget& card, const QString& label) {
  return fieldNamed<controls::NumberField>(card, label);
}
inline controls::TextField* textNamed(QWidget& card, const QString& label) {
  return fieldNamed<controls::TextField>(card, label);
}

inline QPushButton* buttonNamed(QWidget& card, const QString& text) {
  for (auto* button : card.findChildren<QPushButton*>())
    if (button->text() == text || button->accessibleName() == text) return button;
  FAIL("no button " << text.toStdString());
  return nullptr;
}

}  // namespace combdraft::tests

#pragma once
// Small pieces that all cards are laid out from.
#include <QComboBox>
#include <QLabel>
#include <QVBoxLayout>

#include "app/controls/number_field.h"

namespace combdraft::cards {

/// The card's own title, large.
QLabel* addTitle(QVBoxLayout* column, const QString& text);
/// A heading inside a card.
QLabel* addHeading(QVBoxLayout* column, const QString& text);
/// A label and a choice in one row.
QComboBox* addChoice(QVBoxLayout* column, const QString& label, const QStringList& words);
/// A number field whose range comes from a row of plan::fieldTable().
controls::NumberFieldSpec specOf(const char* field, const QString& label, const QString& unit,
                                 double shownPerValue = 1, int decimals = 1);

}  // namespace combdraft::cards

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
/// Second text that wraps.
QLabel* addSoftText(QVBoxLayout* column, const QString& text);
/// A caution's place; hidden until showLines().
QLabel* addCaution(QVBoxLayout* column);
/// Shows each line with the sign of a caution; hides for none.
void showLines(QLabel* caution, const QStringList& lines);

/// A choice that takes the room it gets; long words are cut, never the card.
QComboBox* newCombo(QWidget* parent, const QString& name, const QStringList& words);
/// A label and a choice in one row.
QComboBox* addChoice(QVBoxLayout* column, const QString& label, const QStringList& words);
/// A number field whose range comes from a row of plan::fieldTable().
controls::NumberFieldSpec specOf(const char* field, const QString& label, const QString& unit,
                                 double shownPerValue = 1, int decimals = 1);

/// Drops what was typed and not taken anywhere in a card: it now shows
/// something else.
void abandonTyping(QWidget* card);

}  // namespace combdraft::cards

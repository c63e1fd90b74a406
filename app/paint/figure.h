#pragma once
// Numbers in the words of a drawing: as the reader's language writes them.
#include <QLocale>
#include <QString>
#include <string>

namespace combdraft::paint {

/// A number of engine/base/number_text with the decimal sign of the default locale.
inline QString figure(const std::string& number) {
  return QString::fromStdString(number).replace(u'.', QLocale().decimalPoint());
}

}  // namespace combdraft::paint

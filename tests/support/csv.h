#pragma once
// Reads the small published tables in tests/published/data: lines that start
// with # are the source note, the first other line names the columns.
#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

#include "engine/base/number_text.h"
#include "tests/support/places.h"

namespace combdraft::test {

struct CsvRow {
  std::map<std::string, std::string> cells;
  const std::string& text(const std::string& column) const { return cells.at(column); }
  double number(const std::string& column) const {
    const auto value = parseNumber(cells.at(column));
    if (!value) throw std::runtime_error("no number in column " + column);
    return *value;
  }
};

/// Rows of a table named as in the data folder. Throws when it is missing or empty.
inline std::vector<CsvRow> publishedTable(const std::string& name) {
  std::ifstream file(test::testsDir() + "/published/data/" + name);
  if (!file) throw std::runtime_error("no table " + name);
  std::vector<std::string> columns;
  std::vector<CsvRow> rows;
  for (std::string line; std::getline(file, line);) {
    if (line.empty() || line[0] == '#') continue;
    std::vector<std::string> cells;
    std::istringstream stream(line);
    for (std::string cell; std::getline(stream, cell, ',');) cells.push_back(cell);
    if (columns.empty()) {
      columns = cells;
      continue;
    }
    CsvRow row;
    for (std::size_t i = 0; i < columns.size() && i < cells.size(); ++i)
      row.cells[columns[i]] = cells[i];
    rows.push_back(row);
  }
  if (rows.empty()) throw std::runtime_error("empty table " + name);
  return rows;
}

}  // namespace combdraft::test

#pragma once
// A published table as rows of text: "#" lines are the source, the next line
// names the columns. Only for the tests' own files (no quoted fields).
#include <catch2/catch.hpp>
#include <fstream>
#include <map>
#include <string>
#include <vector>

#include "engine/base/number_text.h"
#include "tests/support/places.h"

namespace combdraft::test {

class Table {
 public:
  explicit Table(const std::string& name) {
    std::ifstream in(test::testsDir() + "/published/data/" + name);
    std::string line;
    while (std::getline(in, line)) {
      if (line.empty() || line[0] == '#') continue;
      std::vector<std::string> cells(1);
      for (const char c : line) {
        if (c == ',') cells.emplace_back();
        else if (c != '\r') cells.back() += c;
      }
      if (columns_.empty()) {
        for (std::size_t i = 0; i < cells.size(); ++i) columns_[cells[i]] = i;
      } else {
        REQUIRE(cells.size() == columns_.size());
        rows_.push_back(cells);
      }
    }
    INFO(name);
    REQUIRE(!rows_.empty());
  }
  std::size_t size() const { return rows_.size(); }
  const std::string& text(std::size_t row, const std::string& column) const {
    return rows_.at(row).at(columns_.at(column));
  }
  double number(std::size_t row, const std::string& column) const {
    const auto value = parseNumber(text(row, column));
    INFO("row " << row << " column " << column);
    REQUIRE(value);
    return *value;
  }
  /// The number in `column` of the one row where `key1` and `key2` stand.
  double find(const std::string& column1, const std::string& key1, const std::string& column2,
              const std::string& key2, const std::string& column) const {
    for (std::size_t i = 0; i < size(); ++i)
      if (text(i, column1) == key1 && text(i, column2) == key2) return number(i, column);
    FAIL("no row " << key1 << ' ' << key2);
    return 0;
  }

 private:
  std::map<std::string, std::size_t> columns_;
  std::vector<std::vector<std::string>> rows_;
};

}  // namespace combdraft::test

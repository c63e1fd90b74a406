// What the reader refuses, where it says so, and that it never falls over.
#include <catch2/catch.hpp>

#include "engine/base/number_text.h"
#include "engine/plan/field_info.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/utf8.h"
#include "tests/engine/plan_samples.h"

using namespace combdraft;
using namespace combdraft::plan;

namespace {

const std::string& fullText() {
  static const std::string text = writePlan(samples::fullPlan());
  return text;
}

// The full plan with one piece of text replaced.
std::string with(const std::string& from, const std::string& to) {
  std::string text = fullText();
  const std::size_t at = text.find(from);
  if (at == std::string::npos) FAIL("no " << from);
  return text.replace(at, from.size(), to);
}

Error refused(const std::string& text) {
  const auto plan = readPlan(text);
  if (plan) FAIL("read: " << text.substr(0, 200));
  CHECK_FALSE(describe(plan.error()).empty());
  return plan.error();
}

void checkRefused(const std::string& text, ErrorCode code, const std::string& where) {
  const Error error = refused(text);
  INFO(describe(error));
  CHECK(codeName(error.code) == codeName(code));
  CHECK(error.where == where);
}

// A small plan around one piece's fields.
std::string pieceText(const std::string& fields) {
  return R"({"format": "combdraft plan", "version": 2, "number": 5, "activeChoice": "a",
    "head": {}, "hair": {}, "choices": [{"id": "a"}],
    "pieces": [{"id": "p", "choice": "a", "line": [[-20, 60], [20, 60]])" +
         fields + "}]}";
}

}  // namespace

TEST_CASE("text that is no JSON is refused with line and column", "[plan][reader]") {
  checkRefused("", ErrorCode::FileEmpty, "");
  checkRefused(" \n", ErrorCode::FileEmpty, "");
  checkRefused("{", ErrorCode::JsonSyntax, "line 1, column 2");
  checkRefused("{\n \"a\": 1,\n}", ErrorCode::JsonSyntax, "line 3, column 1");
  checkRefused("{\"a\": 01}", ErrorCode::JsonSyntax, "line 1, column 8");
  checkRefused("{} x", ErrorCode::JsonSyntax, "line 1, column 4");
  checkRefused("{\"a\": 'b'}", ErrorCode::JsonSyntax, "line 1, column 7");
  checkRefused("{\"a\": 1 /* note */}", ErrorCode::JsonSyntax, "line 1, column 9");
  checkRefused("\"\xC3\xA9\" x", ErrorCode::JsonSyntax, "line 1, column 5");
  checkRefused("{\"a\": \"\xFF\"}", ErrorCode::JsonNotUtf8, "line 1, column 8");
  checkRefused(std::string("{\"a\": 1}\n\xED\xA0\x80"), ErrorCode::JsonNotUtf8,
               "line 2, column 1");
  checkRefused(std::string("{\"a\": \0}", 8), ErrorCode::JsonSyntax, "line 1, column 7");
  CHECK(describe(refused("{\n \"a\": 1,\n}")).find("line 3, column 1: this is not valid JSON") == 0);
}

TEST_CASE("numbers that are not finite are refused", "[plan][reader]") {
  checkRefused(pieceText(", \"start_mm\": NaN"), ErrorCode::JsonNotFinite, "line 3, column 86");
  checkRefused("{\"a\": Infinity}", ErrorCode::JsonNotFinite, "line 1, column 7");
  checkRefused("{\"a\": -Infinity}", ErrorCode::JsonNotFinite, "line 1, column 7");
  checkRefused("{\"a\": 1e999}", ErrorCode::JsonNotFinite, "line 1, column 7");
  checkRefused("{\"a\": -1e999}", ErrorCode::JsonNotFinite, "line 1, column 7");
}

TEST_CASE("keys that stand twice are refused, at every depth", "[plan][reader]") {
  checkRefused("{\"a\": 1, \"a\": 1}", ErrorCode::JsonDuplicateKey, "/a");
  checkRefused("{\"b\": [0, {\"x/y\": 1, \"x\\/y\": 1}]}", ErrorCode::JsonDuplicateKey,
               "/b/1/x~1y");
  checkRefused(pieceText(", \"start_mm\": 1, \"start_mm\": 1"), ErrorCode::JsonDuplicateKey,
               "/pieces/0/start_mm");
}

TEST_CASE("a file that is no plan or of another version says so", "[plan][reader]") {
  checkRefused("[]", ErrorCode::NotAPlan, "");
  checkRefused("3", ErrorCode::NotAPlan, "");
  checkRefused("{}", ErrorCode::NotAPlan, "");
  checkRefused("{\"format\": \"other\"}", ErrorCode::NotAPlan, "/format");
  checkRefused("{\"format\": \"combdraft plan\"}", ErrorCode::FieldMissing, "");
  checkRefused(with("\"version\": 2", "\"version\": \"1\""), ErrorCode::FieldWrongType, "/version");
  checkRefused(with("\"version\": 2", "\"version\": 0"), ErrorCode::VersionUnknown, "/version");
  checkRefused(with("\"version\": 2", "\"version\": 0.5"), ErrorCode::VersionUnknown, "/version");
  checkRefused(with("\"version\": 2", "\"version\": 3"), ErrorCode::VersionTooNew, "/version");
  // A newer file may hold anything else; the version is what is said.
  const Error newer =
      refused(R"({"format": "combdraft plan", "version": 7, "head": "something new"})");
  CHECK(describe(newer).find("format 7") != std::string::npos);
}

TEST_CASE("every number is held to its range, both ends included", "[plan][reader]") {
  for (const FieldInfo& field : fieldTable()) {
    const std::string name(field.name);
    if (name.compare(0, 6, "piece.") != 0 || name == "piece.dropOuts") continue;
    const std::string key = name.substr(6);
    CAPTURE(key);
    const auto text = [&](double value) {
      return pieceText(", \"" + key + "\": " + numberText(value));
    };
    CHECK(readPlan(text(field.low)).ok());
    CHECK(readPlan(text(field.high)).ok());
    const double less = std::nextafter(field.low, -1e9), more = std::nextafter(field.high, 1e9);
    checkRefused(text(less), ErrorCode::FieldOutOfRange, "/pieces/0/" + key);
    checkRefused(text(more), ErrorCode::FieldOutOfRange, "/pieces/0/" + key);
    for (const char* wrong : {"null", "\"5\"", "true", "[5]", "{}"})
      checkRefused(pieceText(", \"" + key + "\": " + wrong), ErrorCode::FieldWrongType,
                   "/pieces/0/" + key);
  }
  CHECK(describe(refused(pieceText(", \"thickness_mm\": -2"))) ==
        "/pieces/0/thickness_mm: found -2, allowed is 0.2 to 40 mm");
}

TEST_CASE("each kind of bad value is refused at its place", "[plan][reader]") {
  using E = ErrorCode;
  const auto check = [](const std::string& from, const std::string& to, E code,
                        const std::string& where) { checkRefused(with(from, to), code, where); };
  check("\"taking\": \"weave\"", "\"taking\": \"chunk\"", E::FieldUnknownWord,
        "/pieces/0/taking");
  check("\"taking\": \"weave\"", "\"taking\": 3", E::FieldWrongType, "/pieces/0/taking");
  check("\"own\": [\"line\"", "\"own\": [\"lines\"", E::FieldUnknownWord,
        "/pieces/0/laidOut/own/0");
  check("\"row\": 3", "\"row\": 0", E::FieldOutOfRange, "/pieces/0/laidOut/row");
  check("\"pivot\": [60, 45]", "\"pivot\": [60]", E::FieldWrongType, "/sections/0/layout/pivot");
  check("\"thicknessFrom_mm\": 4", "\"thicknessFrom_mm\": -4", E::FieldOutOfRange,
        "/sections/0/layout/thicknessFrom_mm");
  check("\"held\": true", "\"held\": 1", E::FieldWrongType, "/pieces/0/held");
  check("\"order\": 1,\n      \"action\"", "\"order\": 1.5,\n      \"action\"",
        E::FieldOutOfRange, "/pieces/0/order");
  check("[45, 60]", "[45]", E::FieldWrongType, "/pieces/0/line/0");
  check("[45, 60]", "[45, \"60\"]", E::FieldWrongType, "/pieces/0/line/0/1");
  check("[45, 60]", "[451, 60]", E::FieldOutOfRange, "/pieces/0/line/0/0");
  check("[45, 60]", "[0, 110]", E::PointOffHead, "/pieces/0/line/0");
  check("[45, 60]", "[180, 175]", E::PointOffHead, "/pieces/0/line/0");
  check("[[45, 60], [60, 61.5], [75, 63]]", "[[45, 60]]", E::FieldOutOfRange, "/pieces/0/line");
  check("[10, 20], [30, 35.5]", "[20, 10]", E::FieldOutOfRange, "/pieces/0/dropOuts/0");
  check("\"lifts\": {\"level\": 9", "\"lifts\": {\"level\": 99", E::FieldOutOfRange,
        "/pieces/0/root/lifts/level");
  check("\"back\": 140", "\"back\": -140", E::FieldOutOfRange, "/hair/length_mm/back");
  check("\"back\": 140", "\"beard\": 140", E::FieldUnknownWord, "/hair/length_mm");
  check("[4, 4.5, 6]", "[4, 4.5]", E::FieldWrongType, "/hair/level/top");
  check("[4, 4.5, 6]", "[4, 44, 6]", E::FieldOutOfRange, "/hair/level/top/1");
  check("\"2024-02-29\"", "\"29 Feb\"", E::FieldWrongType, "/hair/conditionDate");
  check("\"2024-02-29\"", "\"2024-13-01\"", E::FieldWrongType, "/hair/conditionDate");
  check("\"breadth_mm\": 155", "\"breadth_mm\": 300", E::FieldOutOfRange, "/head/breadth_mm");
  check("\"length_mm\": 200", "\"length_mm\": 135", E::MeasuresContradict, "/head/breadth_mm");
  check("\"First line\\nsecond\\tline\"", "\"bell \\u0007\"", E::FieldWrongType, "/notes");
  check("\"label\": \"first\"", "\"label\": \"two\\nlines\"", E::FieldWrongType,
        "/pieces/0/label");
  check("\"label\": \"first\"", "\"label\": \"two\\u2028lines\"", E::FieldWrongType,
        "/pieces/0/label");
  check("\"number\": 123456789", "\"number\": 0", E::FieldOutOfRange, "/number");
  check("\"number\": 123456789", "\"number\": 1.5", E::FieldOutOfRange, "/number");
  check("\"number\": 123456789", "\"number\": 9007199254740993", E::FieldOutOfRange, "/number");
  check("\"id\": \"choice-2\"", "\"id\": \"choice-1\"", E::IdDuplicate, "/choices/1/id");
  check("\"id\": \"formula-1\"", "\"id\": \"head\"", E::IdDuplicate, "/formulas/0/id");
  check("\"id\": \"formula-1\"", "\"id\": \"\"", E::FieldWrongType, "/formulas/0/id");
  check("\"id\": \"formula-1\"", "\"id\": \"two words\"", E::FieldWrongType, "/formulas/0/id");
  check("\"id\": \"formula-1\",", "", E::FieldMissing, "/formulas/0");
  check("\"twinOf\": \"piece-1\", \"order\": 2", "\"twinOf\": \"gone\"", E::IdUnknown,
        "/pieces/1/twinOf");
  check("\"twinOf\": \"piece-1\", \"order\": 2", "\"twinOf\": \"piece-2\"", E::ReferenceCycle,
        "/pieces/1/twinOf");
  check("\"twinOf\": \"piece-1\", \"order\": 2", "\"twinOf\": \"piece-1\", \"start_mm\": 5",
        E::FieldMissing, "/pieces/1");
  check("\"fall.partReach_mm\": 44.5", "\"fall.partReach_mm\": \"44.5\"", E::FieldWrongType,
        "/assumptions/fall.partReach_mm");
  check("\"head\": {", "\"head\": 4, \"x\": {", E::FieldWrongType, "/head");
  check("\"pieces\": [", "\"pieces\": {}, \"x\": [", E::FieldWrongType, "/pieces");
  check("\"level\": 8.5, \"contrast\"", "\"level\": 12.5, \"contrast\"", E::FieldOutOfRange,
        "/choices/1/targets/top/level");
  check("\"contrast\": \"soft\"", "\"contrast\": \"stripy\"", E::FieldUnknownWord,
        "/choices/1/targets/top/contrast");
  check("\"brightest\": 10", "\"brightest\": \"10\"", E::FieldWrongType,
        "/choices/1/targets/top/brightest");
  check("\"darkest\": 6", "\"darkest\": 0.5", E::FieldOutOfRange, "/choices/1/targets/top/darkest");
  check("\"whole\": {\"level\": 7}", "\"whole\": 7", E::FieldWrongType, "/choices/1/targets/whole");
  check("\"targets\": {", "\"targets\": [], \"x\": {", E::FieldWrongType, "/choices/1/targets");
  check("\"choices\": [", "\"choices\": [], \"x\": [", E::FieldOutOfRange, "/choices");
  check("\"choices\": [", "\"x\": [", E::FieldMissing, "");
}

TEST_CASE("a piece laid aside has a name of its own", "[plan][reader]") {
  const auto retired = [](const std::string& id) { return with("\"id\": \"piece-9\",", id); };
  checkRefused(retired(""), ErrorCode::FieldMissing, "/sections/0/retired/0");
  checkRefused(retired("\"id\": \"\","), ErrorCode::FieldWrongType, "/sections/0/retired/0/id");
  checkRefused(retired("\"id\": \"handout\","), ErrorCode::IdDuplicate, "/sections/0/retired/0/id");
  CHECK(readPlan(retired("\"id\": \"aside\",")).ok());
}

TEST_CASE("unknown keys stay where they were found, also those that look like a place", "[plan][reader]") {
  for (const char* key : {"/end/lifts/level", "/end/formula", "/end/finish", "/backcomb/depth_mm", "/", "//", "/end/~", "/end/a~b", "/end/~1"}) {
    INFO(key);
    const std::string unknown = std::string("\"") + key + "\": 5";
    const auto first = readPlan(pieceText(", " + unknown + ", \"end\": {\"lifts\": {" + unknown + "}, \"finish\": {" + unknown + "}, " + unknown +
                                          "}, \"backcomb\": {\"depth_mm\": 20, " + unknown + "}"));
    REQUIRE(first.ok());
    const auto* piece = first->find<Piece>("p");
    CHECK(piece->end.formula.empty());
    for (const Extra* extra : {&piece->extra, &piece->end.extra, &piece->end.lifts.extra, &piece->end.finish->extra, &piece->backcomb.extra})
      CHECK(*extra == Extra{{key, "5"}});
    const std::string text = writePlan(*first);
    const auto again = readPlan(text);
    REQUIRE(again.ok());
    CHECK(*again == *first);
    std::size_t count = 0;
    for (std::size_t at = text.find(unknown); at != std::string::npos; at = text.find(unknown, at + 1)) ++count;
    CHECK(count == 5);
  }
  // Of an aim for a region that nobody knows, and of the choice that holds it.
  const auto aims = readPlan(R"({"format": "combdraft plan", "version": 2, "number": 5, "activeChoice": "a", "head": {}, "hair": {},
    "choices": [{"id": "a", "targets": {"fringe": {"level": 8}, "top": {"level": 8, "later": 1}}, "/targets/crown": 5}]})");
  REQUIRE(aims.ok());
  CHECK(aims->find<Choice>("a")->otherTargets.size() == 1);
  CHECK(aims->find<Choice>("a")->targets.size() == 1);
  CHECK(*readPlan(writePlan(*aims)) == *aims);
}

TEST_CASE("what a message repeats of a file is short and holds no control characters", "[plan][reader]") {
  const std::string huge(100'000, 'k');
  const std::string said = describe(refused("{\"" + huge + "\": 1, \"" + huge + "\": 1}"));
  CHECK(said.size() < 2'000);
  for (const char* control : {"\\u001b[2J", "\\u0085", "\\u007f"}) {
    const std::string text = describe(refused(std::string("{\"") + control + "\": 1, \"" + control + "\": 1}"));
    INFO(text);
    CHECK(std::none_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; }));
    CHECK(text.find("\xc2\x85") == std::string::npos);
    CHECK(text.find('?') != std::string::npos);
  }
  // No letter is cut in two.
  const std::string letters = shownText("x" + [] {
    std::string many;
    for (int i = 0; i < 1'000; ++i) many += "\xc3\xa4";
    return many;
  }());
  CHECK_FALSE(firstBadUtf8(letters));
}

TEST_CASE("counts and sizes are bounded", "[plan][reader]") {
  const auto repeated = [](const std::string& entry, std::size_t count) {
    std::string list;
    for (std::size_t i = 0; i < count; ++i) {
      if (i) list += ",";
      list += entry;
    }
    return list;
  };
  checkRefused(repeated("[", 65) + repeated("]", 65), ErrorCode::JsonSyntax, "line 1, column 2");
  checkRefused(std::string(100'000, '['), ErrorCode::JsonTooDeep,
               [] {
                 std::string pointer;
                 for (int i = 0; i < 64; ++i) pointer += "/0";
                 return pointer;
               }());
  // A million pieces: stopped by the number of values, long before the end.
  checkRefused("{\"pieces\": [" + repeated("{}", 1'000'000) + "]}", ErrorCode::TooManyItems,
               "/pieces/499998");
  const std::string open = R"({"format": "combdraft plan", "version": 2, "number": 5,
    "activeChoice": "a", "head": {}, "hair": {}, "choices": [{"id": "a"}], "pieces": [)";
  checkRefused(open + repeated("{}", 2001) + "]}", ErrorCode::TooManyItems, "/pieces");
  std::string long300;
  for (int i = 0; i < 320; ++i)
    long300 += std::string(i ? "," : "") + "{\"id\": \"p" + std::to_string(i) +
               "\", \"line\": [" + repeated("[0,40],[9,40]", 32) + "]}";
  checkRefused(open + long300 + "]}", ErrorCode::TooManyItems, "/pieces/312/line");
  checkRefused(pieceText(", \"note\": \"" + std::string(20'001, 'x') + "\""),
               ErrorCode::TextTooLong, "/pieces/0/note");
  CHECK(readPlan(pieceText(", \"note\": \"" + std::string(20'000, 'x') + "\"")).ok());
  checkRefused(pieceText(", \"section\": \"" + std::string(65, 'x') + "\""),
               ErrorCode::FieldWrongType, "/pieces/0/section");
  checkRefused(std::string(limits::kFileBytes + 1, ' '), ErrorCode::FileTooLarge, "");
  checkRefused(pieceText("").substr(0, 40) + std::string(17 << 20, ' '),
               ErrorCode::FileTooLarge, "");
}

TEST_CASE("a plan cut at any byte is refused, never half read", "[plan][reader]") {
  const std::string& text = fullText();
  const std::size_t end = text.find_last_of('}');
  for (std::size_t length = 0; length <= end; ++length) {
    const auto plan = readPlan(std::string_view(text).substr(0, length));
    REQUIRE_FALSE(plan.ok());
    const ErrorCode code = plan.error().code;
    const bool expected = code == ErrorCode::JsonSyntax || code == ErrorCode::FileEmpty ||
                          code == ErrorCode::JsonNotUtf8;  // cut inside a character
    REQUIRE(expected);
  }
}

TEST_CASE("a changed byte is refused or read as what it says", "[plan][reader]") {
  Plan plain = samples::fullPlan();
  Head head = plain.head();
  head.measures = {};  // typed measures are fitted anew at each read, which takes a while
  plain.put(kHeadId, head);
  const std::string text = writePlan(plain);
  std::size_t read = 0, refusals = 0;
  constexpr char kBytes[] = {'\0', '"', '{', ']', ',', '9', '-', 'e', '\xFF', '\n', '1'};
  for (std::size_t at = 0; at < text.size(); ++at) {
    std::string changed = text;
    changed[at] = kBytes[at % std::size(kBytes)];
    const auto plan = readPlan(changed);
    if (!plan) {
      ++refusals;
      REQUIRE_FALSE(describe(plan.error()).empty());
      REQUIRE_FALSE(firstBadUtf8(describe(plan.error())));
      continue;
    }
    ++read;
    const auto again = readPlan(writePlan(*plan));
    REQUIRE(again.ok());
    REQUIRE(*again == *plan);
  }
  CHECK(read > 0);
  CHECK(refusals > read);
}

TEST_CASE("UTF-8 is checked as its standard says", "[plan][utf8]") {
  // Boundaries from RFC 3629 section 4 (syntax of UTF-8 byte sequences).
  for (const char* good : {"", "a", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF",
                           "\xEE\x80\x80", "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF"})
    CHECK_FALSE(firstBadUtf8(good).has_value());
  for (const char* bad : {"\x80", "\xBF", "\xC0\x80", "\xC1\xBF", "\xC2", "\xE0\x9F\xBF",
                          "\xED\xA0\x80", "\xED\xBF\xBF", "\xF0\x8F\xBF\xBF", "\xF4\x90\x80\x80",
                          "\xF5\x80\x80\x80", "\xE2\x82", "\xFE", "\xFF"})
    CHECK(firstBadUtf8(bad) == 0u);
  CHECK(firstBadUtf8("ab\xE2\x82" "c") == 2u);
}

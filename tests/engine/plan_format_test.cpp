// Documentation and schema say what the reader does.
#include <catch2/catch.hpp>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "engine/base/number_text.h"
#include "engine/plan/field_info.h"
#include "engine/plan/json_reader.h"
#include "engine/plan/json_writer.h"
#include "engine/plan/plan_words.h"
#include "engine/plan/validate.h"
#include "tests/engine/plan_samples.h"
#include "tests/support/places.h"

using namespace combdraft;
using namespace combdraft::plan;

namespace {

std::string fileText(const std::string& path) {
  std::ostringstream text;
  text << std::ifstream(test::sourceDir() + "/" + path).rdbuf();
  REQUIRE_FALSE(text.str().empty());
  return text.str();
}

nlohmann::json schema() { return nlohmann::json::parse(fileText("resources/plan.schema.json")); }

// The schema of a field: most stand under their own name, a few inside a list.
nlohmann::json schemaOf(const nlohmann::json& whole, const std::string& name) {
  const nlohmann::json& kinds = whole.at("$defs");
  if (name == "point.bearing_deg") return kinds.at("point").at("prefixItems").at(0);
  if (name == "point.drop_deg") return kinds.at("point").at("prefixItems").at(1);
  const std::size_t dot = name.find('.');
  nlohmann::json field =
      kinds.at(name.substr(0, dot)).at("properties").at(name.substr(dot + 1));
  if (name == "hair.length_mm") return field.at("properties").at("back");
  if (name == "hair.level") return field.at("properties").at("back").at("items");
  if (name == "piece.dropOuts") return field.at("items").at("items");
  return field;
}

// Every enum of the schema, by the key it stands under.
void collectWords(const nlohmann::json& node, const std::string& key,
                  std::map<std::string, std::vector<std::string>>& found) {
  if (node.is_object()) {
    if (node.contains("enum")) found[key] = node.at("enum").get<std::vector<std::string>>();
    for (const auto& [name, value] : node.items())
      collectWords(value, name == "properties" || name == "items" ? key : name, found);
  }
}

template <class E>
std::vector<std::string> wordList() {
  std::vector<std::string> list;
  for (const auto& entry : words<E>()) list.emplace_back(entry.word);
  return list;
}

}  // namespace

TEST_CASE("the worked example of the documentation opens", "[plan][docs]") {
  const std::string doc = fileText("docs/file-format.md");
  const std::size_t begin = doc.find("```json\n") + 8, end = doc.find("\n```", begin);
  REQUIRE(begin != std::string::npos);
  REQUIRE(end != std::string::npos);
  const auto plan = readPlan(doc.substr(begin, end - begin));
  if (!plan) FAIL(describe(plan.error()));
  CHECK(validate(*plan).empty());
  REQUIRE(plan->pieces().size() == 2);
  CHECK(plan->pieces()[1].second->line[1] == ScalpPoint{-165, 70});
  CHECK(plan->pieces()[1].second->backcomb.depth_mm == 70);
  CHECK(plan->hair().level[static_cast<std::size_t>(HairZone::Nape)].root == 4);
}

TEST_CASE("the documentation lists every number and every word", "[plan][docs]") {
  const std::string doc = fileText("docs/file-format.md");
  for (const FieldInfo& field : fieldTable()) {
    const std::string row = "| `" + std::string(field.name) + "` | " + rangeText(field) + " | " +
                            (field.standard ? numberText(*field.standard) : "not typed") + " | " +
                            std::string(field.what) + " |";
    CAPTURE(row);
    CHECK(doc.find(row) != std::string::npos);
  }
  for (const std::string& list :
       {allWords<head::HeadSet>(), allWords<head::HeadSize>(), allWords<Turn>(),
        allWords<SkinTone>(), allWords<HairZone>(), allWords<CurlClass>(), allWords<Condition>(),
        allWords<Tone>(), allWords<ScalpContact>(), allWords<Action>(),
        allWords<Taking>(), allWords<KeptIn>(), allWords<Side>(), allWords<LayoutRun>(),
        allWords<Columns>(), allWords<RunField>(), allWords<Treatment::Kind>(),
        allWords<ContrastAim>(), allWords<Porosity>(), allWords<StrengthUnit>(),
        allWords<PaperSize>(), allWords<PageTurn>(), allWords<HandoutPart>()}) {
    CAPTURE(list);
    CHECK(doc.find("| " + list + " |") != std::string::npos);
  }
}

TEST_CASE("the schema has the ranges and defaults of the field table", "[plan][schema]") {
  const nlohmann::json whole = schema();
  CHECK(whole.at("$id") == "urn:combdraft:plan:2");
  for (const FieldInfo& field : fieldTable()) {
    CAPTURE(std::string(field.name));
    const nlohmann::json own = schemaOf(whole, std::string(field.name));
    CHECK(own.at("minimum").get<double>() == field.low);
    CHECK(own.at("maximum").get<double>() == field.high);
    CHECK(own.contains("default") == field.standard.has_value());
    if (field.standard) CHECK(own.at("default").get<double>() == *field.standard);
  }
}

TEST_CASE("the schema has the words of the word tables", "[plan][schema]") {
  std::map<std::string, std::vector<std::string>> found;
  collectWords(schema(), "", found);
  CHECK(found.at("set") == wordList<head::HeadSet>());
  CHECK(found.at("size") == wordList<head::HeadSize>());
  CHECK(found.at("turn") == wordList<Turn>());
  CHECK(found.at("skin") == wordList<SkinTone>());
  CHECK(found.at("zoneName") == wordList<HairZone>());
  CHECK(found.at("curl") == wordList<CurlClass>());
  CHECK(found.at("tone") == wordList<Tone>());
  CHECK(found.at("scalpContact") == wordList<ScalpContact>());
  CHECK(found.at("action") == wordList<Action>());
  CHECK(found.at("taking") == wordList<Taking>());
  CHECK(found.at("keptIn") == wordList<KeptIn>());
  CHECK(found.at("under") == wordList<Side>());
  CHECK(found.at("run") == wordList<LayoutRun>());
  CHECK(found.at("columns") == wordList<Columns>());
  CHECK(found.at("own") == wordList<RunField>());
  CHECK(found.at("kind") == wordList<Treatment::Kind>());
  CHECK(found.at("contrast") == wordList<ContrastAim>());
  CHECK(found.at("porosity") == wordList<Porosity>());
  CHECK(found.at("unit") == wordList<StrengthUnit>());
  CHECK(found.at("paper") == wordList<PaperSize>());
  CHECK(found.at("pageTurn") == wordList<PageTurn>());
  CHECK(found.at("part") == wordList<HandoutPart>());
}

TEST_CASE("every key that is written stands in the schema, and the other way", "[plan][schema]") {
  const nlohmann::json whole = schema();
  const nlohmann::json file = nlohmann::json::parse(writePlan(samples::fullPlan()));
  const auto properties = [&](const char* kind) {
    return whole.at("$defs").at(kind).at("properties");
  };
  const auto same = [](const nlohmann::json& object, const nlohmann::json& known) {
    for (const auto& entry : known.items()) {
      CAPTURE(entry.key(), object);
      // A piece that stands on its own has no twinOf, a choice may be an id.
      if (entry.key() != "twinOf") CHECK(object.contains(entry.key()));
    }
    for (const auto& entry : object.items()) {
      CAPTURE(entry.key());
      CHECK(known.contains(entry.key()));
    }
  };
  nlohmann::json top = file;
  top.erase("later");  // the sample's unknown key
  same(top, whole.at("properties"));
  same(file.at("head"), properties("head"));
  same(file.at("hair"), properties("hair"));
  same(file.at("formulas").at(0), properties("formula"));
  same(file.at("formulas").at(0).at("leaflet"), properties("leaflet"));
  same(file.at("formulas").at(0).at("additives").at(0), properties("mixPart"));
  same(file.at("formulas").at(0).at("developers").at(0), properties("developer"));
  same(file.at("handout"), properties("handout"));
  same(file.at("handout").at("steps").at(0), properties("handoutStep"));
  same(file.at("choices").at(1), properties("choice"));
  nlohmann::json target = file.at("choices").at(1).at("targets").at("top");
  target.erase("later");
  same(target, properties("target"));
  nlohmann::json regions;
  for (const std::string_view region : targetRegions()) regions[std::string(region)] = 1;
  same(regions, properties("choice").at("targets").at("properties"));
  same(file.at("sections").at(0), properties("section"));
  same(file.at("sections").at(0).at("layout"), properties("layout"));
  same(file.at("sections").at(0).at("layout").at("empty").at(0), properties("runSlot"));
  same(file.at("pieces").at(0), properties("piece"));
  same(file.at("pieces").at(0).at("laidOut"), properties("laidOut"));
  same(file.at("pieces").at(0).at("backcomb"), properties("backcomb"));
  same(file.at("pieces").at(0).at("root"), properties("zone"));
  same(file.at("treatments").at(0), properties("treatment"));
  same(file.at("placedNotes").at(0), properties("note"));
}

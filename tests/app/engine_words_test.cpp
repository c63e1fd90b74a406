// The engine's sentences in German: recognised by their phrase, with what stands in them;
// what is the user's or of others stays.
#include <QApplication>
#include <QTranslator>
#include <catch2/catch.hpp>

#include "app/desk/language.h"
#include "app/words/engine_phrases.h"
#include "app/words/engine_words.h"
#include "engine/work/strength.h"

namespace combdraft::words {
namespace {

struct German {
  German() { desk::speak(*qApp, store::Language::German); }
  ~German() {
    for (QTranslator* one : qApp->findChildren<QTranslator*>()) {
      QApplication::removeTranslator(one);
      delete one;
    }
    QLocale::setDefault(QLocale::c());
  }
};

std::string told(std::string_view english) { return inWords(english).toStdString(); }

TEST_CASE("without another language the engine's sentence is said as it is", "[language][words]") {
  CHECK(told("found 2.5, allowed is 0 to 1.5") == "found 2.5, allowed is 0 to 1.5");
}

TEST_CASE("a sentence of the engine is said in German with what stands in it", "[language][words]") {
  const German german;
  CHECK(told("the whole look") == "der ganze Look");
  CHECK(told("found 2.5, allowed is 0 to 1.5") == "gefunden: 2,5, erlaubt: 0 bis 1,5");
  CHECK(told("A light block of about 4.2 cm² shows with the crown opened") ==
        "Ein heller Block von etwa 4,2 cm² zeigt sich mit geöffneter Wirbelpartie");
  CHECK(told("found no list, needs a list of taps") == "gefunden: keine Liste, nötig: eine Liste von Einträgen");
}

TEST_CASE("words of users and of the system stay in a German sentence", "[language][words]") {
  const German german;
  CHECK(told("the id \"no to yes\" is used twice") == "die Kennung „no to yes“ wird zweimal verwendet");
  CHECK(told("the file could not be read: Permission denied to write") == "die Datei ließ sich nicht lesen: Permission denied to write");
  CHECK(told("moved from here to there") == "moved from here to there");  // no half of it
  const QString title = inWords(Error{ErrorCode::FileMissing, "", {}, "no to yes.json"});
  CHECK(title.startsWith(QStringLiteral("no to yes.json: ")));
  CHECK_FALSE(title.contains(QStringLiteral("such")));
}

TEST_CASE("a refusal of a developer is said in German", "[language][words]") {
  const German german;
  const auto refused = work::strengthOf(-1, plan::StrengthUnit::Percent);
  REQUIRE_FALSE(refused.ok());
  const QString said = inWords(refused.error());
  INFO(said.toStdString());
  CHECK(said.contains(QStringLiteral("erlaubt: über 0 bis ")));
}

TEST_CASE("every phrase of the engine is in the German translation", "[language][words]") {
  const German german;
  int translated = 0, all = 0;
  for (const char* phrase : enginePhrases()) {
    ++all;
    translated += QCoreApplication::translate("Engine", phrase) != QString::fromUtf8(phrase);
  }
  CHECK(all > 300);
  CHECK(all - translated < 25);  // "neutral", "%1 mm", "published, [Key]" are the same
}

TEST_CASE("a long sentence that nobody knows is given back", "[language][words]") {
  const German german;
  // Cut anew for each way through, its parts would be read more often than a day has seconds.
  std::string text = "The limit of nothing that anyone knows";
  for (int i = 0; i < 12; ++i) text += ", with " + std::to_string(i) + " mm and 3 % or 4 to 6 mm of it";
  CHECK(told(text).find("The limit of nothing that anyone knows") == 0);
}

}  // namespace
}  // namespace combdraft::words

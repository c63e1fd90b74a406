// The consultation card: what it asks, what it keeps and where, what it never says.
#include <catch2/catch.hpp>

#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "app/cards/agreed_line.h"
#include "app/cards/consultation_card.h"
#include "app/cards/consultation_client.h"
#include "app/cards/consultation_questions.h"
#include "app/cards/consultation_visits.h"
#include "app/cards/consultation_wishes.h"
#include "app/cards/consultation_words.h"
#include "app/cards/photo_strip.h"
#include "app/cards/test_list.h"
#include "app/controls/text_box.h"
#include "app/words/date_words.h"
#include "engine/base/number_text.h"
#include "engine/plan/json_writer.h"
#include "tests/app/card_helpers.h"
#include "tests/app/demo_plans.h"
#include "tests/app/every_word.h"
#include "tests/support/full_client.h"

using namespace combdraft;
using cards::ConsultationCard;
using store::ClientFile;
using tests::buttonNamed;
using tests::everyWordOf;
using tests::fieldNamed;
using tests::fullClient;
using tests::textNamed;
using tests::typeInto;

namespace {

struct Consultation {
  QTemporaryDir dir;
  document::DocumentController controller{tests::demoPlan()};
  std::shared_ptr<store::ClientKeeper> keeper =
      store::ClientKeeper::of(dir.filePath(QStringLiteral("clients")), controller.document().info().number);
  ConsultationCard card{controller};

  Consultation() {
    card.resize(360, 900);
    card.setKeeper(keeper);
  }
  const ClientFile& file() const { return keeper->file(); }
  void agree() {
    card.turnTo(ConsultationCard::Page::Questions);
    typeInto(textNamed(card, QStringLiteral("Kept for"))->edit(), QStringLiteral("planning the colour"));
    buttonNamed(card, QStringLiteral("The client agrees"))->click();
  }
  QPlainTextEdit* box(const char* name) { return fieldNamed<controls::TextBox>(card, QLatin1String(name))->edit(); }
};

QStringList textsOf(const ClientFile& file, const store::ClientPolicy& policy, const QDate& today) {
  QStringList texts;
  for (const cards::AskLine& line : cards::asksOf(file, policy, today)) texts << cards::askText(line);
  return texts;
}

bool hasText(const QStringList& texts, const QString& part) { return texts.filter(part).size() == 1; }
bool hasText(const QStringList& texts, const char* part) { return hasText(texts, QString::fromUtf8(part)); }

}  // namespace

TEST_CASE("without a plan the consultation can be read and not typed into", "[cards][client]") {
  document::DocumentController controller(plan::Plan::fresh(3));
  ConsultationCard card(controller);
  CHECK_FALSE(textNamed(card, QStringLiteral("Budget"))->isEnabled());
  CHECK(card.cautions().contains(QStringLiteral("tests are due")));
}

TEST_CASE("what is typed goes to the client's file and never into the plan", "[cards][client]") {
  Consultation c;
  const std::string before = plan::writePlan(c.controller.document());
  c.box("Wanted")->setPlainText(QStringLiteral("Markerwanted, lighter at the face"));
  typeInto(textNamed(c.card, QStringLiteral("Budget"))->edit(), QStringLiteral("Markerbudget"));
  typeInto(textNamed(c.card, QStringLiteral("First name"))->edit(), QStringLiteral("Markername"));
  typeInto(textNamed(c.card, QStringLiteral("Choice A: price"))->edit(), QStringLiteral("Marker 140"));
  typeInto(textNamed(c.card, QStringLiteral("Choice A: minutes"))->edit(), QStringLiteral("150"));
  CHECK(c.file().wishes.wanted == "Markerwanted, lighter at the face");
  CHECK(c.file().wishes.budget == "Markerbudget");
  CHECK(c.file().name == "Markername");
  REQUIRE(c.file().offers.size() == 1);
  CHECK(c.file().offers[0].price == "Marker 140");
  CHECK(c.file().offers[0].minutes == "150");
  CHECK(c.file().offers[0].choice == c.controller.document().info().activeChoice);
  CHECK(plan::writePlan(c.controller.document()) == before);
  CHECK(c.controller.undoStack().count() == 0);
  REQUIRE(c.keeper->writeNow().ok());
  QFile file(c.keeper->folder() + QStringLiteral("/client.json"));
  REQUIRE(file.open(QIODevice::ReadOnly));
  CHECK(file.readAll().contains("Markerwanted"));
}

TEST_CASE("health questions and photos are asked only once the client agreed", "[cards][client]") {
  Consultation c;
  c.card.show();
  cards::PhotoStrip* photos = c.card.wishes()->photos();
  CHECK_FALSE(photos->addButton()->isVisibleTo(&c.card));
  c.card.turnTo(ConsultationCard::Page::Questions);
  QPushButton* reacted = buttonNamed(c.card, QStringLiteral("Has reacted before, also to a temporary black tattoo: Yes"));
  CHECK_FALSE(reacted->isVisibleTo(&c.card));
  buttonNamed(c.card, QStringLiteral("The client agrees"))->click();  // no purpose
  CHECK_FALSE(store::hasConsent(c.file()));
  c.agree();
  REQUIRE(store::hasConsent(c.file()));
  CHECK(c.file().consent->purpose == "planning the colour");
  CHECK(c.file().consent->date == QDate::currentDate().toString(Qt::ISODate).toStdString());
  CHECK(reacted->isVisibleTo(&c.card));
  reacted->click();
  CHECK(c.file().health.reacted == store::Answer::Yes);
  c.card.turnTo(ConsultationCard::Page::Wishes);
  CHECK(photos->addButton()->isVisibleTo(&c.card));

  // Taken back: asked once more, then the answers go.
  c.card.turnTo(ConsultationCard::Page::Questions);
  buttonNamed(c.card, QStringLiteral("Consent was taken back"))->click();
  CHECK(c.file().health.reacted == store::Answer::Yes);
  buttonNamed(c.card, QStringLiteral("Take them away"))->click();
  CHECK_FALSE(store::hasConsent(c.file()));
  CHECK(c.file().health == store::Health{});
  CHECK_FALSE(reacted->isVisibleTo(&c.card));
}

TEST_CASE("a photo that cannot be deleted is said where consent is taken back", "[cards][client]") {
  Consultation c;
  c.agree();
  REQUIRE(c.keeper->writeNow().ok());
  // A folder of that name is no file to remove, whoever runs the tests.
  const QString stuck = c.keeper->folder() + QStringLiteral("/photo-1.jpg");
  REQUIRE(QDir().mkpath(stuck + QStringLiteral("/inside")));
  c.keeper->edit([](ClientFile& f) {
    f.health.reacted = store::Answer::Yes;
    f.photos = {{"photo-1.jpg", store::PhotoOf::Wanted, "", "2026-01-01", {}}};
  });
  const auto takeBack = [&c] {
    buttonNamed(c.card, QStringLiteral("Consent was taken back"))->click();
    buttonNamed(c.card, QStringLiteral("Take them away"))->click();
  };
  takeBack();
  CHECK(c.file().health == store::Health{});
  CHECK(store::hasConsent(c.file()));
  CHECK(everyWordOf(c.card).contains(QStringLiteral("1 photo could not be deleted; close what shows it and try again.")));
  REQUIRE(QDir(stuck).removeRecursively());
  takeBack();
  CHECK_FALSE(store::hasConsent(c.file()));
  CHECK(c.file().photos.empty());
  CHECK_FALSE(everyWordOf(c.card).contains(QStringLiteral("could not be deleted")));
}

TEST_CASE("the consultation says what a plan holds and what taking consent back leaves", "[cards][client]") {
  Consultation c;
  c.agree();
  const QString all = everyWordOf(c.card);
  CHECK(all.contains(QStringLiteral("The plan has no field for a name, a contact or a health answer.")));
  CHECK(all.contains(QStringLiteral("write no name and no health answer into it")));
  CHECK_FALSE(all.contains(QStringLiteral("nothing about the client")));
  CHECK(all.contains(QStringLiteral("backups are not reached")));
  CHECK(all.contains(QStringLiteral("look whether health words stand in the notes")));
}

TEST_CASE("what was not asked is to be checked and what speaks against it referred first", "[cards][client]") {
  const QDate today(2026, 6, 1);
  ClientFile file;
  QStringList texts = textsOf(file, {}, today);
  CHECK(hasText(texts, "Check: The age was not asked"));
  CHECK(hasText(texts, "Check: Past reactions were not asked"));
  CHECK(hasText(texts, "Check: The scalp was not looked at"));
  CHECK(hasText(texts, "Test: No skin test"));
  CHECK(hasText(texts, "Test: No test strand"));
  CHECK(texts.filter(QStringLiteral("metal test")).isEmpty());
  file.health = {store::Answer::No, store::Answer::Yes, "", store::ScalpFound::Something, "", "", {}};
  file.history.henna = store::Answer::Yes;
  texts = textsOf(file, {}, today);
  CHECK(texts[0].startsWith(QStringLiteral("Refer: Not of the age")));
  CHECK(texts[1].startsWith(QStringLiteral("Refer: Has reacted before")));
  CHECK(texts[2].startsWith(QStringLiteral("Refer: Something was found on the scalp")));
  CHECK(hasText(texts, "no metal test that was made is written down"));
  // All asked and found without anything: only what the tests ask stays.
  file.health = {store::Answer::Yes, store::Answer::No, "", store::ScalpFound::Nothing, "", "", {}};
  file.history = {store::Answer::No, store::Answer::No, store::Answer::No, store::Answer::No, "", "", {}};
  file.tests = {{store::TestKind::Skin, "2026-05-01", "nothing seen", "", {}}, {store::TestKind::Strand, "2026-05-01", "", "", {}}};
  texts = textsOf(file, {}, today);
  REQUIRE(texts.size() == 2);  // what was seen is read again, and never judged here
  CHECK(hasText(texts, "as you wrote it down: “nothing seen”. If anything showed, or in doubt: do not go on; refer to a doctor."));
  CHECK(hasText(texts, "no result is written down"));
  file.tests[1].result = "broke";
  CHECK(hasText(textsOf(file, {}, today), "“broke”. If it was not as it should be, or in doubt: do not go on; see the maker's directions."));
}

TEST_CASE("what the client does not know is asked again or tested or referred as a yes would be", "[cards][client]") {
  const QDate today(2026, 6, 1);
  ClientFile file;
  file.health = {store::Answer::Unknown, store::Answer::Unknown, "", store::ScalpFound::Unsure, "", "", {}};
  file.history = {store::Answer::No, store::Answer::Unknown, store::Answer::No, store::Answer::No, "", "", {}};
  const QStringList texts = textsOf(file, {}, today);
  CHECK(hasText(texts, "Refer: Does not know of past reactions"));
  CHECK(hasText(texts, "Refer: It is not sure what is on the scalp"));
  CHECK(hasText(texts, "Check: The age is not known"));
  CHECK(hasText(texts, "no metal test that was made is written down"));
  CHECK(hasText(texts, "Check: Not all of the hair's history is known: ask again"));
  CHECK(texts.filter(QStringLiteral("not asked")).isEmpty());  // it was

  // Metal under lightener is said with or without consent to keep what was answered.
  Consultation open;
  open.keeper->edit([](ClientFile& f) { f.history.metallic = store::Answer::Yes; });
  CHECK(tests::everyWordOf(open.card).contains(QStringLiteral("Lightener or developer on metal can get hot and break the hair")));
  // Only a test that was made takes it away.
  file.history.metallic = store::Answer::Yes;
  file.tests = {{store::TestKind::Metal, "", "", "", {}}};
  CHECK(hasText(textsOf(file, {}, today), "no metal test that was made"));
  file.tests[0].date = "2026-05-01";
  CHECK(textsOf(file, {}, today).filter(QStringLiteral("no metal test that was made")).isEmpty());

  Consultation c;
  c.agree();
  buttonNamed(c.card, QStringLiteral("Has reacted before, also to a temporary black tattoo: Doesn't know"))->click();
  CHECK(c.file().health.reacted == store::Answer::Unknown);
  buttonNamed(c.card, QStringLiteral("Henna: Doesn't know"))->click();
  CHECK(c.file().history.henna == store::Answer::Unknown);
  buttonNamed(c.card, QStringLiteral("Scalp: Unsure"))->click();
  CHECK(c.file().health.scalp == store::ScalpFound::Unsure);
  CHECK(c.card.cautions().contains(QStringLiteral("Does not know of past reactions")));
}

TEST_CASE("what a choice comes to at the user's own rates is typed in by her alone", "[cards][client][price]") {
  Consultation c;
  c.card.show();
  cards::ConsultationWishes* wishes = c.card.wishes();
  CHECK(wishes->estimateText(0).isEmpty());
  store::Rates rates;
  rates.perHour = 60;
  rates.currency = QStringLiteral("crowns");
  c.card.setRates(rates);
  REQUIRE(QTest::qWaitFor([&] { return wishes->estimateText(0).contains(QStringLiteral("crowns")); }, 8000));
  const auto worked = paint::workedOut(c.controller.document(), "choice-1");
  REQUIRE(worked);
  CHECK(worked->work_min > 0);
  // 60 for an hour is one for each minute.
  const QString sum = QString::fromStdString(numberText(worked->work_min, 2)) + QStringLiteral(" crowns");
  CHECK(wishes->estimateText(0).contains(QStringLiteral("By your own rates and the plan's assumptions, one pair of hands: ") + sum));
  CHECK(c.file().offers.empty());  // nothing is filled in by itself
  wishes->typeIn(0)->click();
  REQUIRE(c.file().offers.size() == 1);
  CHECK(c.file().offers[0].price == sum.toStdString());
  CHECK(c.file().offers[0].minutes.empty());
  CHECK(textNamed(c.card, QStringLiteral("Choice A: price"))->text() == sum);
  CHECK_FALSE(wishes->typeIn(0)->isEnabled());  // it stands there
  c.card.setRates({});
  CHECK(wishes->estimateText(0).isEmpty());
  CHECK(c.file().offers[0].price == sum.toStdString());
}

TEST_CASE("a choice without work has no estimate", "[cards][client][price]") {
  Consultation c;
  c.controller.replace(plan::Plan::fresh(4), {});
  c.card.show();
  store::Rates rates;
  rates.perGram = 2;
  c.card.setRates(rates);
  REQUIRE(QTest::qWaitFor([&] { return c.card.wishes()->estimateText(0).isEmpty(); }, 8000));
  CHECK_FALSE(paint::workedOut(c.controller.document(), c.controller.document().info().activeChoice));
}

TEST_CASE("what was open when a picture was agreed on stands on the colourist's side", "[cards][client][agreement]") {
  Consultation c;
  c.card.show();
  CHECK(c.card.agreedText().isEmpty());
  c.keeper->edit([](ClientFile& f) {
    f.consent = store::Consent{"planning", "2026-01-01", {}};
    f.tests = {{store::TestKind::Skin, "2024-01-01", "", "", {}},
               {store::TestKind::Strand, "", "", "", {}},
               {store::TestKind::Skin, "2026-07-01", "", "", {}}};  // after that day: it was not there then
  });
  store::ClientPolicy policy;
  policy.test_months[static_cast<std::size_t>(store::TestKind::Skin)] = 6;
  c.card.setPolicy(policy);
  plan::Agreement agreement;
  agreement.date = "2026-06-01";
  agreement.choice = "choice-1";
  agreement.choiceName = "A";
  agreement.frozen = plan::frozenChoice(c.controller.document(), "choice-1");
  const auto found = cards::openFindings(agreement);
  REQUIRE(found);
  CHECK(*found > 0);  // piece 8 starts at the scalp
  const auto json = plan::writeAgreement(agreement);
  REQUIRE(json.ok());
  c.controller.record(document::DocumentController::Record::Agreed, *json);
  const QString said = c.card.agreedText();
  INFO(said.toStdString());
  CHECK(said.startsWith(QStringLiteral("Agreed on %1: choice A.").arg(words::dateText(QDate(2026, 6, 1)))));
  CHECK(said.contains(QStringLiteral("Open then: %1 finding").arg(*found)));
  CHECK(said.contains(QStringLiteral("Skin test: overdue since ") + words::dateText(QDate(2024, 7, 1))));
  CHECK(said.contains(QStringLiteral("Test strand: not dated")));
  CHECK_FALSE(QString::fromStdString(c.controller.document().info().agreedJson).contains(QStringLiteral("2024-01-01")));  // no test goes into the plan
  c.keeper->takeConsentBack();
  CHECK(c.card.agreedText().contains(QStringLiteral("without consent")));
  CHECK_FALSE(c.card.agreedText().contains(QStringLiteral("Skin test")));
}

TEST_CASE("a test is overdue by the typed date or by the user's own policy alone", "[cards][client]") {
  const QDate today(2026, 6, 1);
  ClientFile file = fullClient(5);
  file.tests = {{store::TestKind::Skin, "2024-01-01", "", "", {}}, {store::TestKind::Strand, "2026-05-01", "", "", {}}};
  CHECK(textsOf(file, {}, today).filter(QStringLiteral("Skin test:")).isEmpty());  // nobody said how long it counts
  store::ClientPolicy policy;
  policy.test_months[static_cast<std::size_t>(store::TestKind::Skin)] = 6;
  CHECK(hasText(textsOf(file, policy, today), QStringLiteral("Test: Skin test: overdue since %1.").arg(words::dateText(QDate(2024, 7, 1)))));
  // The last one made counts.
  file.tests.push_back({store::TestKind::Skin, "2026-05-20", "", "", {}});
  CHECK(textsOf(file, policy, today).filter(QStringLiteral("Skin test:")).isEmpty());
  CHECK(cards::dueText(file.tests[2], policy, today) == QStringLiteral("next due ") + words::dateText(QDate(2026, 11, 20)));
  file.tests[2].due = "2026-06-01";
  CHECK(hasText(textsOf(file, policy, today), "Test: Skin test: due today."));
  file.tests[2] = {store::TestKind::Skin, "", "", "2026-06-20", {}};
  CHECK(hasText(textsOf(file, {}, today), QStringLiteral("Test: Skin test: not made yet, due %1.").arg(words::dateText(QDate(2026, 6, 20)))));
}

TEST_CASE("no word of the consultation promises, advises or tells how a test is made", "[cards][client]") {
  Consultation c;
  c.keeper->edit([&](ClientFile& f) { f = fullClient(f.number); });
  QString all = everyWordOf(c.card) + cards::firstQuestions();
  for (const store::ClientFile& file : {ClientFile{}, fullClient(1)})
    all += textsOf(file, {}, QDate(2026, 6, 1)).join(u'\n');
  static const QRegularExpression kPromise(QStringLiteral("\\b(ready|done|safe|safely|guarantee[ds]?|promise[sd]?|okay|fine to|may proceed|go ahead)\\b"),
                                           QRegularExpression::CaseInsensitiveOption);
  CHECK(kPromise.match(all).captured().toStdString() == std::string());
  static const QRegularExpression kRecipe(QStringLiteral("\\b(ammonia|peroxide|drops?|ml|minutes? in|volume)\\b|\\d+ ?%"),
                                          QRegularExpression::CaseInsensitiveOption);
  CHECK(kRecipe.match(all).captured().toStdString() == std::string());
}

TEST_CASE("tests are added, typed and removed", "[cards][client]") {
  Consultation c;
  c.agree();
  auto* kinds = c.card.questions()->tests()->findChild<QComboBox*>();
  REQUIRE(kinds);
  kinds->setCurrentIndex(static_cast<int>(store::TestKind::Strand));
  buttonNamed(c.card, QStringLiteral("Add test"))->click();
  REQUIRE(c.file().tests.size() == 1);
  CHECK(c.file().tests[0] == store::ClientTest{store::TestKind::Strand, "", "", "", {}});  // nothing filled in
  typeInto(textNamed(c.card, QStringLiteral("Tested on"))->edit(), QStringLiteral("2026-02-30"));
  CHECK(c.file().tests[0].date.empty());
  typeInto(textNamed(c.card, QStringLiteral("Tested on"))->edit(), QStringLiteral("2026-02-20"));
  c.box("What came of it")->setPlainText(QStringLiteral("level 8, springs back"));
  typeInto(textNamed(c.card, QStringLiteral("Due again on"))->edit(), QStringLiteral("2026-03-01"));
  CHECK(c.file().tests[0] == store::ClientTest{store::TestKind::Strand, "2026-02-20", "level 8, springs back", "2026-03-01", {}});
  CHECK(c.card.cautions().contains(QStringLiteral("Test strand: overdue since ") + words::dateText(QDate(2026, 3, 1))));
  buttonNamed(c.card, QStringLiteral("Add test"))->click();
  CHECK(c.file().tests.size() == 2);
  buttonNamed(*c.card.questions()->tests(), QStringLiteral("Remove this test"))->click();
  CHECK(c.file().tests.size() == 2);
  buttonNamed(*c.card.questions()->tests(), QStringLiteral("Remove it for good"))->click();
  CHECK(c.file().tests.size() == 1);
  CHECK(c.file().tests[0].date == "2026-02-20");
}

TEST_CASE("a visit keeps the day and the plan", "[cards][client]") {
  Consultation c;
  c.card.turnTo(ConsultationCard::Page::Visits);
  buttonNamed(c.card, QStringLiteral("Add a visit with this plan"))->click();
  REQUIRE(c.file().visits.size() == 1);
  const store::Visit& visit = c.file().visits[0];
  CHECK(visit.number == c.controller.document().info().number);
  CHECK(visit.title == c.controller.document().info().title);
  CHECK(visit.date == QDate::currentDate().toString(Qt::ISODate).toStdString());
  typeInto(textNamed(c.card, QStringLiteral("Day"))->edit(), QStringLiteral("2026-01-20"));
  CHECK(c.file().visits[0].date == "2026-01-20");
  CHECK(c.card.visits()->list()->count() == 1);
}

TEST_CASE("another client's name is shown only when it is asked for", "[cards][client]") {
  Consultation c;
  plan::Disk disk;
  ClientFile other = fullClient(888);
  REQUIRE(store::ClientFolder(c.keeper->root(), 888).write(other, disk).ok());
  c.card.turnTo(ConsultationCard::Page::Client);
  CHECK_FALSE(everyWordOf(c.card).contains(QStringLiteral("Markername")));
  CHECK(c.card.client()->others()->count() == 0);
  c.card.client()->look()->click();
  REQUIRE(c.card.client()->others()->count() == 1);
  CHECK(c.card.client()->others()->item(0)->text().startsWith(QStringLiteral("Markername")));
  quint64 chosen = 0;
  QObject::connect(&c.card, &ConsultationCard::clientChosen, &c.card, [&](quint64 number) { chosen = number; });
  c.card.client()->others()->setCurrentRow(0);
  buttonNamed(c.card, QStringLiteral("It is this client"))->click();
  CHECK(chosen == 888);
  // Any change takes the list away again.
  typeInto(textNamed(c.card, QStringLiteral("First name"))->edit(), QStringLiteral("B"));
  CHECK(c.card.client()->others()->count() == 0);
}

TEST_CASE("photos stand beside the plan, are chosen by keyboard and removed for good", "[cards][client][photo]") {
  Consultation c;
  c.agree();
  QImage image(120, 60, QImage::Format_RGB32);
  image.fill(Qt::darkYellow);
  const QString path = c.dir.filePath(QStringLiteral("wanted.png"));
  REQUIRE(image.save(path));
  c.keeper->addPhotos({path}, store::PhotoOf::Wanted);
  REQUIRE(QTest::qWaitFor([&] { return c.file().photos.size() == 1; }, 5000));
  c.keeper->addPhotos({path}, store::PhotoOf::NotWanted);
  REQUIRE(QTest::qWaitFor([&] { return c.file().photos.size() == 2; }, 5000));
  c.card.turnTo(ConsultationCard::Page::Wishes);
  cards::PhotoStrip* photos = c.card.wishes()->photos();
  REQUIRE(photos->small().size() == 2);
  CHECK(QTest::qWaitFor([&] { return !photos->large()->isEmpty(); }, 5000));
  CHECK(photos->shown() == c.file().photos[1].file);  // the one that came last
  CHECK(photos->small()[0]->accessibleName() == QStringLiteral("Photo 1 of 2, wanted"));
  photos->small()[0]->setFocus();
  QTest::keyClick(photos->small()[0], Qt::Key_Space);
  CHECK(photos->shown() == c.file().photos[0].file);
  typeInto(textNamed(*photos, QStringLiteral("Words"))->edit(), QStringLiteral("the ends"));
  CHECK(c.file().photos[0].words == "the ends");
  CHECK(photos->small()[0]->accessibleName().endsWith(QStringLiteral("the ends")));
  buttonNamed(*photos, QStringLiteral("Remove this photo"))->click();
  buttonNamed(*photos, QStringLiteral("Remove it for good"))->click();
  REQUIRE(c.file().photos.size() == 1);
  CHECK(QDir(c.keeper->folder()).entryList({QStringLiteral("photo-*")}).size() == 1);
  CHECK(photos->small().size() == 1);
}

TEST_CASE("everything of the consultation has a name for screen readers", "[cards][client]") {
  Consultation c;
  c.keeper->edit([&](ClientFile& f) { f = fullClient(f.number); });
  for (const auto* edit : c.card.findChildren<QLineEdit*>()) CHECK_FALSE(edit->accessibleName().isEmpty());
  for (const auto* edit : c.card.findChildren<QPlainTextEdit*>()) CHECK_FALSE(edit->accessibleName().isEmpty());
  for (const auto* list : c.card.findChildren<QListWidget*>()) CHECK_FALSE(list->accessibleName().isEmpty());
  for (const auto* button : c.card.findChildren<QAbstractButton*>())
    CHECK_FALSE((button->accessibleName().isEmpty() && button->text().isEmpty()));
}

TEST_CASE("an empty consultation shows no example figure", "[cards][client]") {
  Consultation c;
  c.agree();
  buttonNamed(c.card, QStringLiteral("Add test"))->click();
  for (const auto* edit : c.card.findChildren<QLineEdit*>()) {
    INFO(edit->accessibleName().toStdString());
    CHECK_FALSE(edit->placeholderText().contains(QRegularExpression(QStringLiteral("\\d"))));
  }
  for (const auto* edit : c.card.findChildren<QPlainTextEdit*>())
    CHECK_FALSE(edit->placeholderText().contains(QRegularExpression(QStringLiteral("\\d"))));
}

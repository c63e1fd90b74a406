// No screen, print or file of an appointment says that something is ready, done or safe,
// or promises; and no name or health answer of a client stands outside the client's folder.
#include <catch2/catch.hpp>

#include <QDirIterator>
#include <QRegularExpression>

#include "app/appointment/appointment_page.h"
#include "app/cards/consultation_card.h"
#include "app/desk/card_column.h"
#include "app/handout/document.h"
#include "app/store/client_keeper.h"
#include "engine/plan/json_writer.h"
#include "engine/work/log_text.h"
#include "tests/app/desk_fixture.h"
#include "tests/app/every_word.h"

using namespace combdraft;
using namespace combdraft::tests;
using appointment::AppointmentPage;

namespace {

// "not a promise" says that it is none; "not done", "what is done with hair" would be plain words,
// yet the word is kept out of every screen.
QString promiseIn(QString words) {
  words.remove(QStringLiteral("not a promise")).remove(QStringLiteral("no guarantee")).remove(QStringLiteral("no promise"));
  static const QRegularExpression kPromise(
      QStringLiteral("\\b(ready|done|finished|safe|safely|safety first|harmless|risk.free|guarantee[ds]?|promise[sd]?|okay|fine to|may proceed|go ahead)\\b"),
      QRegularExpression::CaseInsensitiveOption);
  const QRegularExpressionMatch match = kPromise.match(words);
  return match.hasMatch() ? words.mid(std::max<qsizetype>(0, match.capturedStart() - 60), 140) : QString();
}

QString wordsOn(const std::vector<paint::Page>& pages) {
  QStringList words;
  for (const paint::Page& page : pages)
    for (const paint::PlacedFigure& placed : page.figures)
      for (const paint::DrawingItem& item : placed.figure.items)
        if (item.text) words << item.text->words;
  return words.join(u' ');
}

// An appointment with a piece placed, looked at and rinsed.
void play(Desk& desk) {
  auto& page = desk.window->appointmentPage();
  desk.window->actions().action(QStringLiteral("appointment.log"))->trigger();
  page.log().pieces()->setCurrentRow(0);
  for (const work::Tap tap : {work::Tap::Placed, work::Tap::Looked, work::Tap::TakenOut, work::Tap::Rinsed}) {
    page.log().pieces()->setCurrentRow(0);
    page.log().button(tap)->click();
  }
}

}  // namespace

TEST_CASE("no screen of the window says that something is ready or safe or promises", "[desk][words]") {
  Desk desk;
  desk.window->openPath(desk.file("Soft root"));
  REQUIRE(desk.isFresh());
  CHECK(promiseIn(QStringLiteral("the hair is ready")) != QString());  // the search finds what it should
  CHECK(promiseIn(everyWordOf(*desk.window)).toStdString() == "");
  play(desk);
  auto& page = desk.window->appointmentPage();
  for (const auto view : {AppointmentPage::View::WorkList, AppointmentPage::View::Log, AppointmentPage::View::After, AppointmentPage::View::Outcome, AppointmentPage::View::NextVisit}) {
    page.turnTo(view);
    QTest::qWait(300);
    CHECK(promiseIn(everyWordOf(page)).toStdString() == "");
  }
  CHECK(everyWordOf(page).contains(QStringLiteral("Pain, burning, swelling")));
}

TEST_CASE("no printed page says that something is ready or safe or promises", "[handout][words]") {
  Desk desk;
  desk.window->openPath(desk.file("Soft root"));
  play(desk);
  for (const auto kind : {handout::DocumentKind::Handout, handout::DocumentKind::RecordCard, handout::DocumentKind::ClientPage, handout::DocumentKind::WorkList}) {
    const auto pages = handout::makePages(handout::requestFor(kind, desk.window->controller().document()), {}, {}, {});
    REQUIRE(pages.ok());
    const QString words = wordsOn(*pages);
    CHECK(words.size() > 200);
    CHECK(promiseIn(words).toStdString() == "");
  }
}

TEST_CASE("a client's name and health answers stand in the client's folder alone after an appointment", "[client][words]") {
  Desk desk;
  const QString path = desk.file("Soft root");
  desk.window->openPath(path);
  const auto keeper = desk.window->cards().consultationCard()->keeper();
  REQUIRE(keeper);
  keeper->edit([](store::ClientFile& file) {
    file.name = "Markername";
    file.consent = store::Consent{"Markerpurpose", "2026-11-28", {}};
    file.health.reactions = "Markerreaction";
    file.notes = "Markernote";
  });
  REQUIRE(keeper->writeNow().ok());
  play(desk);
  desk.window->actions().action(QStringLiteral("file.save"))->trigger();
  const auto pages = handout::makePages(handout::requestFor(handout::DocumentKind::RecordCard, desk.window->controller().document()), {}, {}, {});
  REQUIRE(pages.ok());
  CHECK_FALSE(wordsOn(*pages).contains(QStringLiteral("Marker")));
  CHECK_FALSE(QString::fromStdString(plan::writePlan(desk.window->controller().document())).contains(QStringLiteral("Marker")));
  int files = 0, withMarker = 0;
  for (QDirIterator it(desk.dir.path(), QDir::Files | QDir::Hidden, QDirIterator::Subdirectories); it.hasNext();) {
    QFile file(it.next());
    REQUIRE(file.open(QIODevice::ReadOnly));
    ++files;
    if (!file.readAll().contains("Marker")) continue;
    ++withMarker;
    INFO(file.fileName().toStdString());
    CHECK(file.fileName().startsWith(keeper->folder()));
  }
  CHECK(files >= 3);
  CHECK(withMarker >= 1);
}

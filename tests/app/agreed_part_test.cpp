// The agreement on paper: record card and client's page say what it holds.
#include <QBuffer>
#include <QtEndian>
#include <catch2/catch.hpp>

#include "app/handout/agreed_part.h"
#include "app/handout/client_page.h"
#include "app/handout/parts.h"
#include "tests/app/demo_plans.h"

using namespace combdraft;

namespace {

std::string pngOf(const QImage& image) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  REQUIRE(image.save(&buffer, "png"));
  return bytes.toBase64().toStdString();
}

QImage plainPicture() {
  QImage image(40, 80, QImage::Format_RGB32);
  image.fill(QColor(120, 80, 60));
  return image;
}

// All words and the pictures of a column.
struct Said {
  QString words;
  std::vector<QImage> pictures;
};
Said saidOf(const handout::Column& column) {
  Said said;
  for (const handout::Chunk& chunk : column.chunks())
    for (const paint::PlacedFigure& placed : chunk.figures)
      for (const paint::DrawingItem& item : placed.figure.items) {
        if (item.text) said.words += item.text->words + u' ';
        if (!item.image.isNull()) said.pictures.push_back(item.image);
      }
  return said;
}

plan::Plan planWith(const std::string& agreedJson) {
  plan::Plan plan = plan::Plan::fresh(5);
  plan::PlanInfo info = plan.info();
  info.agreedJson = agreedJson;
  plan.put(plan::kPlanId, info);
  return plan;
}

plan::Agreement agreement() {
  plan::Agreement made;
  made.date = "2026-11-28";
  made.choiceName = "Quiet crown";
  made.view.worn = "tied-back";
  made.view.weeks = 12;
  made.view.facing = plan::Facing::AsInMirror;
  made.span = plan::AgreedSpan{6.2, 5.9, 6.6};
  made.promiseLine = "A picture of the plan, not a promise.";
  made.pictureBase64 = pngOf(plainPicture());
  return made;
}

}  // namespace

TEST_CASE("what was agreed stands on paper with its picture and span", "[handout][agreement]") {
  const auto json = plan::writeAgreement(agreement());
  REQUIRE(json.ok());
  handout::Column column(180);
  handout::addAgreed(column, planWith(*json));
  const Said said = saidOf(column);
  REQUIRE(said.pictures.size() == 1);
  CHECK(said.pictures[0].size() == QSize(40, 80));
  CHECK(said.pictures[0].pixelColor(3, 3) == QColor(120, 80, 60));
  INFO(said.words.toStdString());
  for (const char* words : {"Agreed on", "Quiet crown", "as in the mirror", "tied back", "after 12 weeks", "about level 6,", "5.9", "6.6", "not a limit", "not a promise"})
    CHECK(said.words.contains(QLatin1String(words)));
}

TEST_CASE("nothing agreed takes no room and what cannot be read is said", "[handout][agreement]") {
  handout::Column none(180);
  handout::addAgreed(none, planWith(""));
  CHECK(none.isEmpty());
  handout::Column broken(180);
  handout::addAgreed(broken, planWith(R"({"date":7})"));
  const QString words = saidOf(broken).words;
  CHECK(words.contains(QStringLiteral("cannot be read")));
  CHECK(words.contains(QStringLiteral("date")));
}

TEST_CASE("an agreed picture of any shape leaves its words their room", "[handout][agreement]") {
  plan::Agreement made = agreement();
  for (const QSize size : {QSize(2000, 4), QSize(4, 2000), QSize(300, 300)}) {
    QImage picture(size, QImage::Format_RGB32);
    picture.fill(Qt::darkGray);
    made.pictureBase64 = pngOf(picture);
    const auto json = plan::writeAgreement(made);
    REQUIRE(json.ok());
    handout::Column column(180);
    handout::addAgreed(column, planWith(*json));
    INFO(size.width() << " x " << size.height());
    CHECK(saidOf(column).pictures.size() == 1);
    CHECK(saidOf(column).words.contains(QString::fromStdString(made.promiseLine)));
  }
}

TEST_CASE("an agreed picture that claims a huge size is not decoded", "[handout][agreement]") {
  plan::Agreement made = agreement();
  QByteArray bytes = QByteArray::fromBase64(QByteArray::fromStdString(made.pictureBase64));
  CHECK_FALSE(handout::agreedPicture(made).isNull());
  qToBigEndian<quint32>(30000, bytes.data() + 16);  // the width in the first chunk (ISO/IEC 15948, 11.2.2)
  made.pictureBase64 = bytes.toBase64().toStdString();
  CHECK(handout::agreedPicture(made).isNull());
  made.pictureBase64 = "no picture at all";
  CHECK(handout::agreedPicture(made).isNull());
  made.pictureBase64 = pngOf(QImage(2400, 4, QImage::Format_Mono));
  CHECK(handout::agreedPicture(made).isNull());
  const auto json = plan::writeAgreement(made);
  REQUIRE(json.ok());
  handout::Column column(180);
  handout::addAgreed(column, planWith(*json));
  CHECK(saidOf(column).words.contains(QStringLiteral("No picture was kept")));
  CHECK(saidOf(column).pictures.empty());
}

TEST_CASE("the client's page gives the range of lightening less and more and no other", "[handout][agreement]") {
  const auto at = [](double level) {
    look::Readings readings;
    readings.whole.level = level;
    readings.whole.light_share = 0.4;
    return std::make_shared<const look::Readings>(readings);
  };
  const handout::Request request = handout::requestFor(handout::DocumentKind::ClientPage, tests::demoPlan());
  const paint::Scene scene(request.plan, {}, nullptr);
  const handout::Room room = handout::roomOn(plan::PaperSize::A4, plan::PageTurn::Portrait);
  look::LookFrame frame;
  frame.readings = at(7.1);
  handout::Looks looks;
  looks.down = std::make_shared<const look::LookFrame>(frame);
  looks.regrowth = {look::Regrowth{}};
  const auto wordsOf = [&] {
    handout::Column column(room.body.width());
    handout::addClientPage(column, request, scene, looks, room);
    return saidOf(column).words.simplified();
  };
  const QString alone = wordsOf();
  INFO(alone.toStdString());
  CHECK(alone.contains(QLatin1String("In the picture about level 7.")));
  CHECK(alone.contains(QLatin1String("A range was not worked out")));
  CHECK(alone.contains(QLatin1String("What the plan shows")));
  CHECK(alone.contains(QLatin1String("60 % of the hair that is seen is not lightened")));
  CHECK(alone.contains(QLatin1String("not a sign that new growth will not show")));
  for (const char* label : {"Choice", "Date", "Planned by", "the emergency number"}) CHECK(alone.contains(QLatin1String(label)));
  looks.less = at(6.2), looks.more = at(7.9);
  const QString whole = wordsOf();
  INFO(whole.toStdString());
  CHECK(whole.contains(QLatin1String("6 to 8 in the drawing")));
  CHECK_FALSE(whole.contains(QLatin1String("not worked out")));
}

TEST_CASE("what cannot wait comes first among the faults and no second treatment is advised", "[handout]") {
  const handout::Request request = handout::requestFor(handout::DocumentKind::Handout, tests::demoPlan());
  const QStringList lines = handout::madeFaults(request).split(u'\n');
  REQUIRE(lines.size() > 4);
  CHECK(lines[0].startsWith(QLatin1String("Pain, burning or swelling: ")));
  CHECK(lines[1].startsWith(QLatin1String("Hair stretches")));
  for (const QString& urgent : handout::urgentFaults()) CHECK(lines.count(urgent) == 1);
  for (const char* advised : {"soften it", "depth back", "Add depth", "Push more"})
    CHECK_FALSE(lines.join(u' ').contains(QLatin1String(advised)));
  // What is seen before mixing has its lines on the first page; without that page it is a check point.
  CHECK_FALSE(handout::madeChecks(request).contains(QLatin1String("Before mixing")));
  handout::Request untitled = request;
  untitled.handout.parts = {{plan::HandoutPart::Title, true}};
  CHECK(handout::madeChecks(untitled).contains(QLatin1String("Before mixing")));
}

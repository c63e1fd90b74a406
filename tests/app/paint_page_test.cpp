// Pages: SVG keeps groups, clips and text; PNG and PDF come out whole.
#include <QBuffer>
#include <QDir>
#include <QFile>
#include <QImage>
#include <QSvgRenderer>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <catch2/catch.hpp>
#include <set>

#include "app/paint/export_page.h"
#include "app/paint/key.h"
#include "app/paint/look_layer.h"
#include "app/paint/painter_backend.h"
#include "app/paint/sheet_page.h"
#include "app/paint/svg_writer.h"
#include "tests/app/demo_plans.h"

namespace combdraft::paint {
namespace {

// A look made of nothing but one colour over the back of the head.
look::LookFrame plainLook(head::ViewName view) {
  auto picture = std::make_shared<look::Picture>();
  picture->view = view;
  picture->frame = head::SheetView(view).frame();
  picture->pixel_mm = 10;
  picture->width = 26, picture->height = 35;
  for (int i = 0; i < 26 * 35; ++i)
    for (const int c : {200, 40, 20, i % 26 < 13 ? 255 : 0})
      picture->rgba.push_back(static_cast<std::uint8_t>(c));
  look::LookFrame frame;
  frame.pictures = {picture};
  return frame;
}

Page demoPage(PageLayer layer, std::vector<head::ViewName> views, const look::LookFrame* look) {
  return sheetPage(Scene(tests::demoPlan(), {}, nullptr), look,
                   {std::move(views), layer, Ground::Paper, QStringLiteral("Choice A")});
}

const std::vector<head::ViewName> kAll(head::kAllViews.begin(), head::kAllViews.end());

TEST_CASE("SVG is well formed, with named groups, unique ids and text as text", "[paint][svg]") {
  const QByteArray svg = svgText(demoPage(PageLayer::Diagram, kAll, nullptr));
  QXmlStreamReader xml(svg);
  std::set<QString> ids, classes;
  QStringList texts;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) continue;
    const QString id = xml.attributes().value(QLatin1String("id")).toString();
    if (!id.isEmpty()) CHECK(ids.insert(id).second);
    classes.insert(xml.attributes().value(QLatin1String("class")).toString());
    if (xml.name() == QLatin1String("text"))
      texts << xml.readElementText(QXmlStreamReader::IncludeChildElements);
  }
  INFO(xml.errorString().toStdString());
  CHECK_FALSE(xml.hasError());
  for (const char* group : {"back-diagram", "back-diagram-art", "back-diagram-diagram",
                            "back-diagram-labels", "top-diagram", "crown-diagram", "key"})
    CHECK(ids.count(QLatin1String(group)) == 1);
  CHECK(classes.count(QStringLiteral("piece-7")) == 1);
  CHECK(texts.contains(QStringLiteral("Soft root, bold ends")));
  CHECK(texts.contains(QStringLiteral("Client's left")));
  CHECK(texts.contains(QStringLiteral("left out")));
}

TEST_CASE("the same page gives the same SVG", "[paint][svg]") {
  CHECK(svgText(demoPage(PageLayer::Diagram, kAll, nullptr)) ==
        svgText(demoPage(PageLayer::Diagram, kAll, nullptr)));
}

TEST_CASE("titles with markup in them stay text", "[paint][svg]") {
  plan::Plan plan = tests::demoPlan();
  plan::PlanInfo info = plan.info();
  info.title = "a <b> & \"c\"";
  plan.put(plan::kPlanId, info);
  const QByteArray svg = svgText(sheetPage(Scene(plan, {}, nullptr), nullptr,
                                           {{head::ViewName::Back}, PageLayer::Diagram, Ground::Paper, {}}));
  CHECK(svg.contains("a &lt;b&gt; &amp;"));
  CHECK_FALSE(svg.contains("<b>"));
}

TEST_CASE("painter and SVG draw the same picture", "[paint][svg]") {
  // Qt's SVG reader ignores clip paths, so what has one is taken off on both sides; the
  // letters are drawn by the same engine.
  Page page = demoPage(PageLayer::Diagram, {head::ViewName::Left}, nullptr);
  for (PlacedFigure& placed : page.figures)
    std::erase_if(placed.figure.items, [](const DrawingItem& item) {
      return !item.clip.isEmpty() || item.text.has_value();
    });
  const QSize size(600, static_cast<int>(600 * page.size_mm.height() / page.size_mm.width()));
  QImage ours(size, QImage::Format_RGB32), theirs(size, QImage::Format_RGB32);
  ours.fill(Qt::white);
  theirs.fill(Qt::white);
  {
    QPainter painter(&ours);
    painter.scale(size.width() / page.size_mm.width(), size.height() / page.size_mm.height());
    paintPage(painter, page);
  }
  QSvgRenderer renderer(svgText(page));
  REQUIRE(renderer.isValid());
  {
    QPainter painter(&theirs);
    renderer.render(&painter);
  }
  double difference = 0;
  int inked = 0;
  for (int y = 0; y < size.height(); ++y)
    for (int x = 0; x < size.width(); ++x) {
      difference += std::abs(qGray(ours.pixel(x, y)) - qGray(theirs.pixel(x, y)));
      inked += qGray(ours.pixel(x, y)) < 128;
    }
  CHECK(inked > 2000);  // something was drawn at all
  CHECK(difference / (size.width() * size.height()) < 0.5);  // of 255
}

TEST_CASE("a look carries its picture and the line that it is no promise", "[paint]") {
  const look::LookFrame look = plainLook(head::ViewName::Back);
  const Page page = demoPage(PageLayer::Look, {head::ViewName::Back}, &look);
  const QByteArray svg = svgText(page);
  CHECK(svg.contains("data:image/png;base64,"));
  CHECK(svg.contains("A picture of the plan, not a promise"));
  QImage image(static_cast<int>(page.size_mm.width() * 4),
               static_cast<int>(page.size_mm.height() * 4), QImage::Format_RGB32);
  QPainter painter(&image);
  painter.scale(4, 4);
  paintPage(painter, page);
  painter.end();
  const PlacedFigure* figure = nullptr;
  for (const PlacedFigure& placed : page.figures)
    if (placed.figure.id == QLatin1String("back-look")) figure = &placed;
  REQUIRE(figure);
  const auto at = [&](double u, double v) {
    const QPointF p = figure->corner_mm + (QPointF(u, v) - figure->figure.frame.topLeft()) * figure->scale;
    return image.pixelColor((p * 4).toPoint());
  };
  CHECK(at(-40, 0) == QColor(200, 40, 20));  // hair hides the art
  CHECK(at(40, 0) != QColor(200, 40, 20));   // alpha 0: the art shows
}

TEST_CASE("the key names what is drawn and nothing else", "[paint]") {
  const auto words = [](const plan::Plan& plan) {
    QStringList all;
    for (const KeyEntry& entry : keyEntries(Scene(plan, {}, nullptr), {})) all << entry.words;
    return all.join(QLatin1Char('\n'));
  };
  const QString demo = words(tests::demoPlan());
  for (const char* word : {"left out", "drop-out", "backcomb", "painted", "formula A: lightener",
                           "formula B: deepening colour", "swirl"})
    CHECK(demo.contains(QLatin1String(word)));
  const QString sixty = words(tests::sixtyPlan());
  for (const char* word : {"left out", "drop-out", "backcomb", "painted", "slice"})
    CHECK_FALSE(sixty.contains(QLatin1String(word)));
}

TEST_CASE("pages are written by their ending, and errors name the file", "[paint]") {
  QTemporaryDir folder;
  const Page page = demoPage(PageLayer::Diagram, {head::ViewName::Top}, nullptr);
  const auto path = [&](const char* name) { return folder.filePath(QLatin1String(name)); };
  REQUIRE(writePage(page, path("a.png"), {640, 200}).ok());
  CHECK(QImage(path("a.png")).width() == 640);
  REQUIRE(writePage(page, path("a.pdf"), {}).ok());
  QFile pdf(path("a.pdf"));
  REQUIRE(pdf.open(QIODevice::ReadOnly));
  CHECK(pdf.readAll().startsWith("%PDF-"));
  REQUIRE(writePage(page, path("a.SVG"), {}).ok());

  const Result<void> ending = writePage(page, path("a.gif"), {});
  REQUIRE_FALSE(ending.ok());
  CHECK(ending.error().code == ErrorCode::UnknownName);
  CHECK_FALSE(QFile::exists(path("a.gif")));
  const Result<void> missing = writePage(page, path("no/such/a.svg"), {});
  REQUIRE_FALSE(missing.ok());
  CHECK(missing.error().code == ErrorCode::FileUnwritable);
  QDir(folder.path()).mkdir(QStringLiteral("b.svg"));
  const Result<void> directory = writePage(page, path("b.svg"), {});
  REQUIRE_FALSE(directory.ok());
  CHECK(directory.error().code == ErrorCode::FileIsDirectory);
  CHECK_FALSE(writePage(page, path("c.png"), {std::nullopt, 100000}).ok());
}

}  // namespace
}  // namespace combdraft::paint

// Another language: words and decimal sign follow it, files do not, and a head is never
// mirrored where the layout is.
#include <QAbstractButton>
#include <QApplication>
#include <QTest>
#include <QTranslator>
#include <catch2/catch.hpp>

#include "app/controls/number_input.h"
#include "app/desk/language.h"
#include "app/desk/main_window.h"
#include "app/paint/describe_piece.h"
#include "app/sheet/head_sheet.h"
#include "engine/plan/json_writer.h"
#include "tests/app/demo_plans.h"

namespace combdraft::desk {
namespace {

// The window's language for one test; the next begins without any.
struct Speaking {
  explicit Speaking(store::Language language) { speak(*qApp, language); }
  ~Speaking() {
    for (QTranslator* one : qApp->findChildren<QTranslator*>()) {
      QApplication::removeTranslator(one);
      delete one;
    }
    QLocale::setDefault(QLocale::c());
    QApplication::setLayoutDirection(Qt::LeftToRight);
  }
};

TEST_CASE("the system's first known language is spoken, else English", "[language]") {
  using store::Language;
  const auto spoken = [](Language choice, const QStringList& system) { return localeFor(choice, system).name(); };
  CHECK(spoken(Language::System, {QStringLiteral("de-AT"), QStringLiteral("en")}) == QStringLiteral("de_AT"));
  CHECK(spoken(Language::System, {QStringLiteral("fr-FR"), QStringLiteral("de")}) == QStringLiteral("de_DE"));
  CHECK(spoken(Language::System, {QStringLiteral("fr")}) == QStringLiteral("en_US"));
  CHECK(spoken(Language::German, {QStringLiteral("en-GB")}) == QStringLiteral("de_DE"));
  CHECK(spoken(Language::English, {QStringLiteral("de-DE"), QStringLiteral("en-GB")}) == QStringLiteral("en_GB"));
}

TEST_CASE("German has its words and its comma, and takes either mark", "[language]") {
  CHECK(MainWindow::tr("&Undo") == QStringLiteral("&Undo"));
  CHECK(controls::shownNumber(2.5, 1) == QStringLiteral("2.5"));
  const Speaking german(store::Language::German);
  CHECK(MainWindow::tr("&Undo") == QStringLiteral("&Rückgängig"));
  CHECK(QCoreApplication::translate("combdraft::cards::SectionCard", "Thickness") == QStringLiteral("Dicke"));
  CHECK(controls::shownNumber(2.5, 1) == QStringLiteral("2,5"));
  CHECK(paint::millimetres(2.5) == QStringLiteral("2,5 mm"));
  CHECK(controls::evaluate(QStringLiteral("2,5")) == 2.5);
  CHECK(controls::evaluate(QStringLiteral("2.5")) == 2.5);
}

TEST_CASE("a plan file is the same in every language", "[language]") {
  const std::string english = plan::writePlan(tests::demoPlan());
  const Speaking german(store::Language::German);
  CHECK(plan::writePlan(tests::demoPlan()) == english);
}

TEST_CASE("right to left mirrors a layout and never the head", "[language][sheet]") {
  const auto drawn = [](Qt::LayoutDirection direction) {
    QApplication::setLayoutDirection(direction);
    document::DocumentController document{tests::demoPlan()};
    document::ViewState view;
    view.setLayer(document::Layer::Diagram);
    sheet::HeadSheet sheet{document, view};
    sheet.resize(900, 700);
    sheet.show();
    REQUIRE(QTest::qWaitForWindowExposed(&sheet));
    REQUIRE(sheet.layoutDirection() == direction);
    return sheet.grab(QRect(0, 40, 480, 600)).toImage();  // the large view without its title and the hint
  };
  const QImage left = drawn(Qt::LeftToRight), right = drawn(Qt::RightToLeft);
  QApplication::setLayoutDirection(Qt::LeftToRight);
  CHECK(left == right);
  CHECK(left != left.mirrored(true, false));  // it could be told
}

}  // namespace
}  // namespace combdraft::desk

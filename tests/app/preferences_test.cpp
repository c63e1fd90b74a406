// Preferences and the theme, and that the pages of settings can be reached.
#include <catch2/catch.hpp>

#include <QAbstractButton>
#include <QApplication>
#include <QImage>
#include <QLineEdit>
#include <QPalette>
#include <QPixmap>
#include <QSettings>

#include "app/controls/number_field.h"
#include "app/controls/segments.h"
#include "app/desk/preferences_page.h"
#include "app/paint/head_art.h"
#include "app/paint/ink.h"
#include "app/sheet/head_sheet.h"
#include "tests/app/desk_actions.h"

using namespace combdraft;
using tests::actionOf;
using tests::Desk;

namespace {

// What grab() sees of a widget at a place.
QColor pixelAt(QWidget& widget, const QPoint& at) { return widget.grab().toImage().pixelColor(at); }

}  // namespace

TEST_CASE("preferences hold at once, are kept, and a new piece begins with them", "[habits][preferences]") {
  Desk desk;
  desk.window->openPath(desk.file("prefs"));
  actionOf(desk, "edit.preferences")->trigger();
  desk::PreferencesPage& page = desk.window->preferencesPage();
  REQUIRE(page.isVisible());
  page.unit()->button(2)->click();
  page.theme()->button(1)->click();
  CHECK(controls::currentTheme().name == controls::ThemeName::Dark);
  page.textSize()->button(3)->click();
  CHECK(qApp->font().pointSizeF() == 13);
  page.thickness()->edit()->selectAll();
  CHECK(controls::Units::current().length() == controls::LengthUnit::Inches);
  QTest::keyClicks(page.thickness()->edit(), QStringLiteral("7.5 mm"));  // the fields are in inches now
  QTest::keyClick(page.thickness()->edit(), Qt::Key_Return);
  page.start()->edit()->selectAll();
  QTest::keyClicks(page.start()->edit(), QStringLiteral("9999"));  // no hair is that long
  QTest::keyClick(page.start()->edit(), Qt::Key_Return);
  QTest::keyClick(&page, Qt::Key_Escape);
  CHECK(desk.window->headSheet().isVisible());

  actionOf(desk, "piece.add")->trigger();
  const auto* piece = desk.window->controller().document().find<plan::Piece>(desk.window->controller().selection().lead());
  REQUIRE(piece);
  CHECK(piece->thickness_mm == 7.5);
  CHECK(piece->start_mm == 20);

  const store::Preferences kept = store::Settings(desk.dir.filePath(QStringLiteral("settings.ini"))).preferences();
  CHECK(kept == store::Preferences{store::LengthUnit::Inch, store::ThemeChoice::Dark, 130, 7.5, 20});
  controls::Units::current().setLength(controls::LengthUnit::Millimetres);
  controls::applyTheme(*qApp, controls::ThemeName::Light);
}

TEST_CASE("preferences that are damaged count as not there", "[habits][preferences]") {
  QTemporaryDir dir;
  const QString ini = dir.filePath(QStringLiteral("settings.ini"));
  {
    QSettings settings(ini, QSettings::IniFormat);
    settings.setValue(QStringLiteral("preferences/unit"), QStringLiteral("furlong"));
    settings.setValue(QStringLiteral("preferences/theme"), 7);
    settings.setValue(QStringLiteral("preferences/textSize"), QStringLiteral("-3"));
    settings.setValue(QStringLiteral("preferences/newThickness_mm"), QStringLiteral("nan"));
    settings.setValue(QStringLiteral("preferences/newStart_mm"), QStringLiteral("1e9"));
    settings.setValue(QStringLiteral("window/layer"), QStringLiteral("many"));
    settings.setValue(QStringLiteral("window/largeView"), 99);
  }
  CHECK(store::Settings(ini).preferences() == store::Preferences{});
  CHECK(store::Settings(ini).windowState().layer == -1);
  CHECK(store::Settings(ini).windowState().largeView == -1);
}

TEST_CASE("a palette darker than its text is dark", "[habits][theme]") {
  CHECK(controls::themeOf(QPalette(Qt::white, Qt::black)) == controls::ThemeName::Dark);
  CHECK(controls::themeOf(QPalette(Qt::black, Qt::white)) == controls::ThemeName::Light);
}

TEST_CASE("a dark window has a dark head sheet, and looks stand on mid grey there", "[habits][theme]") {
  Desk desk;
  desk.window->openPath(desk.file("dark"));
  sheet::HeadSheet& sheet = desk.window->headSheet();
  const sheet::ViewPlace* back = sheet.placeOf(head::ViewName::Back);
  REQUIRE(back);
  // A place beside the neck, low in the view: no line, no hair.
  const QRectF frame = paint::frameOf(head::ViewName::Back);
  const QPoint left = back->toWidget(frame.bottomLeft() + QPointF(3, -3)).toPoint();
  const QPoint right = back->toWidget(frame.bottomRight() + QPointF(-3, -3)).toPoint();
  const paint::Palette light, dark = paint::darkPalette();
  CHECK(pixelAt(sheet, left) == light.ground);
  CHECK(pixelAt(sheet, right) == light.ground);
  actionOf(desk, "view.dark")->trigger();
  CHECK(pixelAt(sheet, left) == dark.ground);
  CHECK(pixelAt(sheet, right) == light.midGrey);  // the look's side: no bright slab
  CHECK(pixelAt(sheet, {7, 7}) == dark.ground);
  CHECK_FALSE(actionOf(desk, "view.surround")->isEnabled());  // it always has it, and says so
  CHECK(actionOf(desk, "view.surround")->isChecked());
  CHECK_FALSE(desk.window->actions().whyNot(QStringLiteral("view.surround")).isEmpty());
  actionOf(desk, "view.dark")->trigger();
  CHECK(pixelAt(sheet, right) == light.ground);  // a light one as the user had it
  actionOf(desk, "view.surround")->trigger();
  CHECK(pixelAt(sheet, right) == light.midGrey);
  CHECK(pixelAt(sheet, left) == light.ground);
}

TEST_CASE("pages of settings can be walked by Tab and are large enough to touch", "[habits][access]") {
  Desk desk;
  for (const char* id : {"edit.preferences", "edit.keys"}) {
    actionOf(desk, id)->trigger();
    QWidget* first = desk.window->nextInFocusChain();
    int stops = 0;
    for (QWidget* w = first;;) {
      if (w->isVisible() && w->isEnabled() && (w->focusPolicy() & Qt::TabFocus) && !w->focusProxy()) {
        ++stops;
        INFO(id << " " << w->metaObject()->className() << " " << w->objectName().toStdString());
        const auto* button = qobject_cast<QAbstractButton*>(w);
        CHECK_FALSE((w->accessibleName().isEmpty() && (!button || button->text().isEmpty())));
        CHECK(w->height() >= 28);
        CHECK(w->width() >= 28);
      }
      w = w->nextInFocusChain();
      if (w == first) break;
    }
    CHECK(stops > 5);
  }
}

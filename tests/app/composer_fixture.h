#pragma once
// A composer with looks of nothing, and what its tests ask of pages and files.
#include <catch2/catch.hpp>

#include <QApplication>
#include <QDialog>
#include <QFile>
#include <QListWidget>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <atomic>
#include <chrono>
#include <thread>

#include "app/controls/theme.h"
#include "app/handout/composer_page.h"
#include "app/handout/handout_edits.h"
#include "app/handout/pages_view.h"
#include "tests/app/demo_plans.h"

namespace combdraft::handout {

using document::DocumentController;
using plan::HandoutPart;

// Looks of nothing, at once.
inline Result<Looks> noLooks(const Request&, double, std::stop_token, const Progress&) {
  Looks looks;
  looks.down = looks.opened = std::make_shared<const look::LookFrame>();
  return looks;
}

struct Composer {
  DocumentController controller{tests::demoPlan()};
  ComposerPage page;
  QTemporaryDir dir;

  explicit Composer(PageMaker::Look look = noLooks) : page(controller, std::move(look)) {
    controls::applyTheme(*qApp, controls::ThemeName::Light);  // with its letters, as in the program
    page.resize(1180, 760);
    page.show();
    page.enter(dir.path());
    REQUIRE(QTest::qWaitForWindowExposed(&page));
    settle();
  }
  void settle() {
    REQUIRE(QTest::qWaitFor([this] { return page.maker().isIdle() && page.pagesView().count() > 0; }, 20000));
    QCoreApplication::processEvents();  // the pages are laid out with the next turn
  }
  plan::Handout handout() const { return handoutOf(controller.document()); }
  int row(HandoutPart part) {
    for (int i = 0; i < page.partList()->count(); ++i)
      if (page.partList()->item(i)->text() == partTitle(part)) return i;
    return -1;
  }
};

// Looks that take until they are let go, where they are at least as fine as `upTo_mm`.
inline PageMaker::Look slowLooks(const std::atomic<bool>& waits, std::atomic<int>& begun, double upTo_mm) {
  return [&waits, &begun, upTo_mm](const Request& request, double pixel_mm, std::stop_token stop, const Progress& progress) -> Result<Looks> {
    if (pixel_mm > upTo_mm) return noLooks(request, pixel_mm, std::move(stop), progress);
    ++begun;
    while (waits && !stop.stop_requested()) std::this_thread::sleep_for(std::chrono::milliseconds(2));
    if (stop.stop_requested()) return Error{ErrorCode::Cancelled, "", {}, {}};
    return noLooks(request, pixel_mm, std::move(stop), progress);
  };
}

inline bool isDialogShown() {
  for (const QWidget* widget : QApplication::topLevelWidgets())
    if (qobject_cast<const QDialog*>(widget) && widget->isVisible()) return true;
  return false;
}

inline bool says(const QSignalSpy& news, const char* words) {
  for (const QList<QVariant>& one : news)
    if (one.first().toString().contains(QLatin1String(words))) return true;
  return false;
}

inline bool standsOn(const Pages& pages, const QString& words) {
  for (const paint::Page& page : *pages)
    for (const paint::PlacedFigure& placed : page.figures)
      for (const paint::DrawingItem& item : placed.figure.items)
        if (item.text && item.text->words.contains(words)) return true;
  return false;
}

// What a reader of the screen is told of the pages that are in sight or about to go.
inline QString wordsShown(ComposerPage& page) {
  QStringList words;
  for (const PageView* view : page.pagesView().findChildren<PageView*>()) words << view->accessibleDescription();
  return words.join(u' ');
}

inline void putFile(const QString& path, const char* bytes) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write(bytes);
}

inline QByteArray bytesOf(const QString& path) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

}  // namespace combdraft::handout

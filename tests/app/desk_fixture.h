#pragma once
// A whole window with a stand-in for the engine, in folders of its own.
#include <catch2/catch.hpp>

#include <QApplication>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <memory>

#include "app/controls/theme.h"
#include "app/desk/main_window.h"
#include "app/desk/message_bar.h"
#include "app/store/plan_store.h"
#include "tests/support/titled_plan.h"

namespace combdraft::tests {

inline live::LookService::Passes instantPasses() {
  const auto pass = [](const plan::Plan&, const look::LookSettings&,
                       const std::vector<look::PictureRequest>&, std::stop_token) -> Result<look::LookFrame> {
    look::LookFrame frame;
    look::Readings readings;
    readings.whole.level = 6.2;
    readings.whole.lightness = 33;
    readings.whole.a = 8, readings.whole.b = 20;  // brown
    readings.whole.light_share = 0.25;
    for (int i = 0; i < look::kRegions; ++i) {
      look::RegionReading region;
      region.region = static_cast<look::Region>(i);
      region.whole = readings.whole;
      readings.regions.push_back(region);
    }
    frame.readings = std::make_shared<const look::Readings>(readings);
    return frame;
  };
  return {pass, pass};
}

struct Desk {
  std::function<live::LookService::Passes()> passes_;
  QTemporaryDir dir;
  std::shared_ptr<store::SessionFile> session;  ///< before `open`; null = nothing is remembered
  store::RecoveryPace pace;
  std::unique_ptr<desk::MainWindow> window;

  explicit Desk(std::function<live::LookService::Passes()> passes = instantPasses) : passes_(std::move(passes)) {
    controls::applyTheme(*qApp, controls::ThemeName::Light);
    open();
  }
  void open() {
    window = std::make_unique<desk::MainWindow>(places(), passes_);
    window->resize(1180, 820);
    window->show();
    REQUIRE(QTest::qWaitForWindowExposed(window.get()));
  }
  desk::DeskPlaces places() const {
    return {dir.filePath(QStringLiteral("settings.ini")), dir.filePath(QStringLiteral("recovery")), patterns(),
            dir.filePath(QStringLiteral("faults")), session, pace, dir.filePath(QStringLiteral("clients"))};
  }
  QString patterns() const { return dir.filePath(QStringLiteral("patterns")); }
  QString file(const char* title, double white_frac = 0.1) {
    plan::Plan plan = titled(title, white_frac);
    plan::Piece piece;
    piece.choice = plan.info().activeChoice;
    piece.line = {{150, 80}, {180, 80}, {210, 80}};
    piece.order = 1;
    plan.put("piece-1", piece);
    const QString path = dir.filePath(QStringLiteral("%1.json").arg(QLatin1String(title)));
    REQUIRE(store::savePlan(plan, path).ok());
    return path;
  }
  void edit(double white_frac = 0.77) {
    plan::Plan next = window->controller().document();
    plan::Hair hair = next.hair();
    hair.white_frac = white_frac;
    next.put(plan::kHairId, hair);
    window->controller().edit(next, QStringLiteral("Change white hair"));
  }
  void press(const char* text) {
    for (QPushButton* button : window->messages().buttons())
      if (button->text() == QString::fromUtf8(text)) return button->click();
    FAIL("no button " << text);
  }
  bool isFresh() {
    return QTest::qWaitFor(
        [this] { return window->lookService().freshness() == live::LookService::Freshness::Fresh; }, 5000);
  }
};

}  // namespace combdraft::tests

// The window's part for the look: what the bar above the sheet sets (each is a
// command too), and the readings below it.
#include <QMenu>
#include <QMenuBar>

#include "app/cards/assumptions_card.h"
#include "app/cards/reading_card.h"
#include "app/desk/card_column.h"
#include "app/desk/main_window.h"
#include "app/desk/readings_strip.h"
#include "app/desk/worn_bar.h"
#include "app/paint/assumption_words.h"

namespace combdraft::desk {
namespace {

// Below, readings are folded unless the user wants them; more for larger text.
constexpr int kLowWindow_px = 760, kLowWindow_lines = 40;

}  // namespace

void MainWindow::declareLookActions() {
  const Condition working = whileWorking();
  // A command that sets one part of the look and is checked while it holds.
  const auto choice = [this, working](const QString& id, const QString& text, const QString& tip, const QKeySequence& key,
                                      auto set, auto holds) {
    actions_.add({id, text, tip, key, {},
                  [this, set] {
                    look::LookSettings settings = view_.lookSettings();
                    set(settings);
                    view_.setLookSettings(settings);
                  },
                  working, [this, holds] { return holds(view_.lookSettings()); }});
  };
  QMenu* menu = menuBar()->addMenu(tr("&Look"));
  menu->setToolTipsVisible(true);
  const auto list = [this](QMenu* into, const QString& id) { into->addAction(actions_.action(id)); };
  const auto submenu = [menu](const QString& title) {
    QMenu* made = menu->addMenu(title);
    made->setToolTipsVisible(true);
    return made;
  };

  QMenu* worn = submenu(tr("How it's &worn"));
  for (std::size_t i = 0; i < hair::kWornWays.size(); ++i) {
    const hair::WornWay way = hair::kWornWays[i];
    const QString id = QStringLiteral("look.worn.") + QString::fromUtf8(hair::wornWord(way).data());
    choice(id, wornName(way), wornTip(way), QKeySequence(Qt::SHIFT | static_cast<Qt::Key>(Qt::Key_F1 + i)),
           [way](look::LookSettings& s) { s.worn.way = way; }, [way](const look::LookSettings& s) { return s.worn.way == way; });
    list(worn, id);
  }
  QMenu* distance = submenu(tr("Seen &from"));
  for (std::size_t i = 0; i < std::size(kDistances); ++i) {
    const double metres = kDistances[i].metres;
    const QString id = QStringLiteral("look.distance.%1").arg(i + 1);
    choice(id, distanceName(kDistances[i]), tr("Judge contrast as it is seen from this far"), {},
           [metres](look::LookSettings& s) { s.distance_m = metres; },
           [metres](const look::LookSettings& s) { return s.distance_m == metres; });
    list(distance, id);
  }
  QMenu* light = submenu(tr("L&ight"));
  for (const colour::Light one : colour::kAllLights) {
    const QString id = QStringLiteral("look.light.") + QString::fromUtf8(colour::lightWord(one).data());
    choice(id, lightName(one), tr("Look at the hair in this light"), {}, [one](look::LookSettings& s) { s.light = one; },
           [one](const look::LookSettings& s) { return s.light == one; });
    list(light, id);
  }
  QMenu* lift = submenu(tr("If it &lifts"));
  const std::pair<const char*, QString> lifts[] = {{"less", tr("Less")}, {"planned", tr("As planned")}, {"more", tr("More")}};
  for (int i = 0; i < 3; ++i) {
    const auto one = static_cast<look::Lift>(i);
    const QString id = QStringLiteral("look.lift.") + QLatin1String(lifts[i].first);
    choice(id, lifts[i].second, tr("The look if the hair lightens this far within its span; test a strand to know it"), {},
           [one](look::LookSettings& s) { s.lift = one; }, [one](const look::LookSettings& s) { return s.lift == one; });
    list(lift, id);
  }
  menu->addSeparator();
  choice(QStringLiteral("look.wet"), tr("We&t hair"), tr("Hair wet or dry: wet hair looks darker than it dries"),
         QKeySequence(Qt::SHIFT | Qt::Key_F7),
         [](look::LookSettings& s) {
           s.moisture = s.moisture == look::Moisture::Wet ? look::Moisture::Dry : look::Moisture::Wet;
         },
         [](const look::LookSettings& s) { return s.moisture == look::Moisture::Wet; });
  choice(QStringLiteral("look.beforeToner"), tr("&Before toner"), tr("The hair bare, before its toner, or after it"),
         QKeySequence(Qt::SHIFT | Qt::Key_F8),
         [](look::LookSettings& s) { s.toner = s.toner == look::Toner::Before ? look::Toner::After : look::Toner::Before; },
         [](const look::LookSettings& s) { return s.toner == look::Toner::Before; });
  choice(QStringLiteral("look.today"), tr("Hair as it is to&day"), tr("The hair as it came in, or as planned"),
         QKeySequence(Qt::SHIFT | Qt::Key_F9),
         [](look::LookSettings& s) {
           s.subject = s.subject == look::Subject::Today ? look::Subject::Planned : look::Subject::Today;
         },
         [](const look::LookSettings& s) { return s.subject == look::Subject::Today; });
  for (const char* id : {"look.wet", "look.beforeToner", "look.today"}) list(menu, QLatin1String(id));
}

void MainWindow::declareReadingActions() {
  const Condition working = whileWorking();
  using Card = CardColumn::Card;
  actions_.add({QStringLiteral("view.assumptions"), tr("&Assumptions"),
                tr("What the look rests on where nobody measured: every number, its range, where it comes from"),
                QKeySequence(Qt::ALT | Qt::Key_7), {}, [this] { cards_->turnTo(Card::Assumptions); }, working,
                [this] { return cards_->current() == Card::Assumptions; }});
  actions_.add({QStringLiteral("view.reading"), tr("How a r&eading came about"),
                tr("Colour, range, contrast and what moves it most, for the whole head or one region"),
                QKeySequence(Qt::ALT | Qt::Key_8), {},
                [this] {
                  cards_->turnTo(Card::Reading);
                  cards_->readingCard()->turnTo(cards_->readingCard()->reading());
                },
                working, [this] { return cards_->current() == Card::Reading; }});
  actions_.add({QStringLiteral("view.foldReadings"), tr("Fold &the readings"),
                tr("One line of readings leaves more room for the sheet; low and tall windows each remember"),
                QKeySequence(Qt::SHIFT | Qt::Key_F11), {}, [this] { foldReadings(); }, working,
                [this] { return readings_->detail() == Detail::OneLine; }});
}

void MainWindow::connectReadings() {
  using document::DocumentChange;
  connect(&looks_, &live::LookService::freshnessChanged, this, [this] {
    using Freshness = live::LookService::Freshness;
    const Freshness now = looks_.freshness();
    readings_->setFreshness(now);
    cards_->readingCard()->setAge(now == Freshness::Lagging || now == Freshness::Failed
                                      ? cards::ReadingCard::Age::OfThePlanBefore
                                      : cards::ReadingCard::Age::OfThisPlan);
  });
  connect(&controller_, &document::DocumentController::changed, this, [this](const DocumentChange& change) {
    if (change.kind == DocumentChange::Kind::Tentative) return;
    readings_->setAssumptionsChanged(
        static_cast<int>(paint::changedAssumptions(controller_.document().info().assumptions).size()));
  });
  connect(readings_, &ReadingsStrip::readingWanted, this, [this](int index) {
    cards_->turnTo(CardColumn::Card::Reading);
    cards_->readingCard()->turnTo(index);
    actions_.refresh();
  });
  connect(readings_, &ReadingsStrip::assumptionsWanted, actions_.action(QStringLiteral("view.assumptions")), &QAction::trigger);
  connect(readings_, &ReadingsStrip::foldWanted, actions_.action(QStringLiteral("view.foldReadings")), &QAction::trigger);
}

store::Settings::WindowHeight MainWindow::heightNow() const {
  const int least = std::max(kLowWindow_px, kLowWindow_lines * fontMetrics().height());
  return height() < least ? store::Settings::WindowHeight::Low : store::Settings::WindowHeight::Tall;
}

void MainWindow::fitReadings() {
  if (fittedHeight_ == heightNow()) return;
  fittedHeight_ = heightNow();
  readings_->setDetail(settings_.hasFoldedReadings(*fittedHeight_) ? Detail::OneLine : Detail::All);
  actions_.refresh();
}

void MainWindow::foldReadings() {
  settings_.setFoldedReadings(heightNow(), readings_->detail() == Detail::All);
  fittedHeight_.reset();
  fitReadings();
}

}  // namespace combdraft::desk

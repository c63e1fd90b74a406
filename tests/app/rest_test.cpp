// A window that nobody touches does nothing: no layout that asks for itself again, no
// picture that is painted over and over.
#include <QApplication>
#include <QEvent>
#include <map>

#include "app/desk/card_column.h"
#include "app/desk/message_bar.h"
#include "tests/app/desk_actions.h"

using namespace combdraft;
using tests::actionOf;
using tests::Desk;

namespace {

/// What the windows were asked to lay out and to paint since it was made.
class Unrest : public QObject {
 public:
  Unrest() { qApp->installEventFilter(this); }
  std::map<QString, int> of;

 protected:
  bool eventFilter(QObject* object, QEvent* event) override {
    const QString what = event->type() == QEvent::LayoutRequest ? QStringLiteral("layout of ") : event->type() == QEvent::Paint ? QStringLiteral("paint of ") : QString();
    if (!what.isEmpty()) ++of[what + QLatin1String(object->metaObject()->className()) + u' ' + object->objectName()];
    return false;
  }
};

}  // namespace

TEST_CASE("a window at rest lays nothing out and paints nothing", "[rest]") {
  Desk desk;
  desk.window->openPath(desk.file("rest"));
  REQUIRE(desk.isFresh());
  for (const bool isTold : {false, true}) {
    if (isTold) desk.window->close();
    for (const int wider : {0, 6}) {
      for (int i = 0; i < wider; ++i) actionOf(desk, "view.cardsWider")->trigger();
      for (int card = 0; card <= static_cast<int>(desk::CardColumn::Card::Findings); ++card) {
        desk.window->cards().turnTo(static_cast<desk::CardColumn::Card>(card));
        for (const QSize size : {QSize(760, 620), QSize(820, 1180), QSize(1180, 820), QSize(1366, 768), QSize(1920, 1080)}) {
          desk.window->resize(size);
          INFO("card " << card << " wider " << wider << " told " << isTold << " " << size.width() << " x " << size.height());
          std::map<QString, int> of;
          const bool rests = QTest::qWaitFor([&of] {
            Unrest unrest;
            QTest::qWait(150);
            of = unrest.of;
            return of.empty();
          }, 5000);
          for (const auto& [what, count] : of) UNSCOPED_INFO(what.toStdString() << ": " << count);
          CHECK(rests);
        }
      }
    }
    desk.edit();
  }
}

// A window that is used at random for a long time:
//
//   soak SECONDS [SEED [PLAN]]     60 1 an example
//
// With COMBDRAFT_SOAK_TRACE set it names each gesture on standard error.
//
// Draws, drags, types, presses keys and triggers commands. At the end it undoes and
// redoes everything and compares. It fails on a warning of Qt's, on a plan that does
// not come back, on memory that grows without end, and on a moment in which the
// window's thread worked or waited (for a lock, a thread, the disk) for too long on one
// turn of its loop: for more than kStall_ms in runs of kLong_s and longer, for more than
// kHeld_ms in short ones, which a busy machine must not break. What may take longer is
// listed below. Time in which the thread could have run and the machine gave it no
// processor is not the window's and is reported apart; nor is what the host of a virtual
// machine took from it. Where the system does not tell that time (/proc/thread-self/schedstat
// and /proc/stat of Linux do), waiting is not measured.
#include <time.h>
#include <unistd.h>

#include <QApplication>
#include <QAbstractButton>
#include <QDialog>
#include <QDir>
#include <QFile>
#include <QMouseEvent>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <deque>
#include <functional>
#include <map>
#include <optional>
#include <vector>

#include "app/chair/hold_button.h"
#include "app/controls/theme.h"
#include "app/desk/main_window.h"
#include "app/desk/message_bar.h"
#include "app/sheet/head_sheet.h"
#include "app/store/plan_store.h"
#include "engine/base/random.h"
#include "tests/support/memory.h"

using namespace combdraft;

namespace {

constexpr double kStall_ms = 100;
constexpr double kHeld_ms = 1000;
constexpr int kLong_s = 600, kRest_ms = 5;
constexpr int kWithClient = 300;  // gestures after which the client's screen is left, if it is shown
/// Commands that leave the plan or the program, or that open a dialog of the system's.
const QStringList kLeftOut{QStringLiteral("file.quit"),  QStringLiteral("file.open"),      QStringLiteral("file.new"),
                           QStringLiteral("file.start"), QStringLiteral("window.close"),   QStringLiteral("window.new"),
                           QStringLiteral("file.saveAs"), QStringLiteral("file.picture"),  QStringLiteral("file.openAsCopy"),
                           QStringLiteral("handout.save"), QStringLiteral("handout.print"), QStringLiteral("handout.preview")};
/// What may take longer, and why.
const QStringList kMayStall{
    QStringLiteral("file.save"),     // the disk is asked whether it has the bytes
    QStringLiteral("pattern.save"), QStringLiteral("click on Save"),  // the same
    QStringLiteral("click on Use on this head"),  // every section of a pattern is laid out at once
    QStringLiteral("view.dark"),     // every widget is styled anew; so with the next ones
    QStringLiteral("click on Dark"), QStringLiteral("click on Light"), QStringLiteral("click on As the system"),
    QStringLiteral("click on 90 %"), QStringLiteral("click on 100 %"), QStringLiteral("click on 115 %"),
    QStringLiteral("click on 130 %"), QStringLiteral("click on 150 %"),
};

/// What became of the window's thread's time since its start.
struct ThreadTime {
  double worked_ms = 0;
  std::optional<double> queued_ms;  // could have run, had there been a processor
  std::vector<double> stolen_ms{};  // by the machine's host, of each processor
};

/// Of each processor since the start; nothing where it is not told.
std::vector<double> stolenOf_ms() {
  static std::FILE* told = std::fopen("/proc/stat", "r");
  std::vector<double> stolen;
  if (!told) return stolen;
  std::rewind(told);
  std::fflush(told);
  char line[512];
  while (std::fgets(line, sizeof line, told) && std::strncmp(line, "cpu", 3) == 0) {
    unsigned long long ticks = 0;  // the eighth number; the first line is the sum
    if (line[3] != ' ' && std::sscanf(line, "%*s %*u %*u %*u %*u %*u %*u %*u %llu", &ticks) == 1)
      stolen.push_back(1e3 * static_cast<double>(ticks) / static_cast<double>(sysconf(_SC_CLK_TCK)));
  }
  return stolen;
}

/// At most this much of it was the thread's.
double mostStolen_ms(const std::vector<double>& before, const std::vector<double>& now) {
  double most = 0;
  for (std::size_t i = 0; i < std::min(before.size(), now.size()); ++i) most = std::max(most, now[i] - before[i]);
  return most;
}

ThreadTime threadTime() {
  timespec t{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &t);
  ThreadTime now{1e3 * static_cast<double>(t.tv_sec) + 1e-6 * static_cast<double>(t.tv_nsec), {}, stolenOf_ms()};
  static std::FILE* told = std::fopen("/proc/thread-self/schedstat", "r");  // this thread's for good
  unsigned long long ran_ns = 0, queued_ns = 0;
  if (!told) return now;
  std::rewind(told);
  std::fflush(told);
  if (std::fscanf(told, "%llu %llu", &ran_ns, &queued_ns) == 2) now.queued_ms = 1e-6 * static_cast<double>(queued_ns);
  return now;
}

std::size_t pieceCount(const plan::Plan& plan) {
  const auto& items = plan.items();
  return static_cast<std::size_t>(std::count_if(items.begin(), items.end(), [](const auto& item) { return std::holds_alternative<plan::Piece>(*item.second); }));
}

int warnings = 0;
void onMessage(QtMsgType type, const QMessageLogContext&, const QString& text) {
  if (type == QtDebugMsg || type == QtInfoMsg) return;
  // The offscreen platform cannot do what a screen can; that is no warning of ours.
  if (text.contains(QLatin1String("This plugin does not support")) || text.contains(QLatin1String("XDG_RUNTIME_DIR"))) return;
  if (++warnings <= 20) std::fprintf(stderr, "WARNING: %s\n", qPrintable(text));
}

class Soak {
 public:
  Soak(desk::MainWindow& window, std::uint64_t seed, int seconds)
      : window_(window), seed_(seed), most_ms_(seconds < kLong_s ? kHeld_ms : kStall_ms), start_(window.controller().document()) {
    QObject::connect(&beat_, &QTimer::timeout, [this] { beat(); });
    QObject::connect(&gesture_, &QTimer::timeout, [this] { gesture(); });
    QObject::connect(&minute_, &QTimer::timeout, [this] { report(); });
    QTimer::singleShot(seconds * 1000, [this] { end(); });
    // A gesture may open a left plan or begin the next visit's: undo goes back to that one.
    QObject::connect(&window_.controller(), &document::DocumentController::changed, [this](const document::DocumentChange& change) {
      if (change.kind == document::DocumentChange::Kind::Replaced) start_ = window_.controller().document();
    });
    beat_.setTimerType(Qt::PreciseTimer);
    beat_.start(kRest_ms);
    gesture_.start(25);
    minute_.start(60000);
    wall_.start();
    since_.start();
    before_ = threadTime();
  }
  int failures() const { return failures_; }

 private:
  double chance() { return randomUniform(seed_, ++drawn_, 0); }
  template <class List>
  const auto& oneOf(const List& list) {
    return list[static_cast<typename List::size_type>(chance() * static_cast<double>(list.size()))];
  }

  void beat() {
    // An open menu has a loop of its own, in which no gesture comes.
    if (QWidget* popup = QApplication::activePopupWidget()) popup->close();
    const ThreadTime now = threadTime();
    const double wall_ms = static_cast<double>(wall_.nsecsElapsed()) / 1e6;
    wall_.restart();
    double own_ms = now.worked_ms - before_.worked_ms;
    if (now.queued_ms && before_.queued_ms) {  // what is left of the turn was waited; the loop rests 5 ms itself
      const double waited_ms = wall_ms - own_ms - (*now.queued_ms - *before_.queued_ms) - mostStolen_ms(before_.stolen_ms, now.stolen_ms) - kRest_ms;
      if (waited_ms > 0) own_ms += waited_ms;
      if (waited_ms > worstWait_.first) worstWait_ = {waited_ms, last_};
    }
    before_ = now;
    if (ending_) return;
    worstWall_ms_ = std::max(worstWall_ms_, wall_ms);
    double& worst = worstOf_[last_];
    worst = std::max(worst, own_ms);
    if (own_ms > kStall_ms) ++stalls_;
    if (own_ms <= most_ms_ || kMayStall.contains(last_)) return;
    ++held_[last_];
    std::printf("%5.0f s: %s took %.0f ms (%.0f by the wall), with %zu pieces in all choices, %s\n", static_cast<double>(since_.elapsed()) / 1000, qPrintable(last_), own_ms, wall_ms,
                pieceCount(window_.controller().plan()), qPrintable(state()));
  }

  /// The window's size and what is switched on in it.
  QString state() {
    QStringList on{QStringLiteral("%1 x %2").arg(window_.width()).arg(window_.height())};
    for (const auto& spec : window_.actions().specs())
      if (window_.actions().action(spec.id)->isChecked()) on << spec.id;
    if (window_.messages().isShowing()) on << u'"' + window_.messages().text().left(40) + u'"';
    return on.join(QStringLiteral(", "));
  }

  void gesture() {
    beat();  // what the gesture before left to do is its own
    if (!turns_.empty()) {
      const auto turn = std::move(turns_.front());
      turns_.pop_front();
      return turn();
    }
    ++gestures_;
    if (isTraced_) std::fprintf(stderr, "%d %s\n", gestures_, qPrintable(last_));
    leaveTheClient();
    for (QDialog* dialog : window_.findChildren<QDialog*>()) dialog->close();
    const double what = chance();
    if (what < 0.35) return drag();
    if (what < 0.65) return key();
    if (what < 0.9) return command();
    if (what < 0.95) return click();
    resize();
  }

  /// A hand gives the loop a turn between press, moves and release; so does this one.
  void drag() {
    QWidget* sheet = &window_.headSheet();
    const Qt::KeyboardModifiers with = chance() < 0.2 ? Qt::ShiftModifier : Qt::NoModifier;
    QPoint at(static_cast<int>(chance() * sheet->width()), static_cast<int>(chance() * sheet->height()));
    const auto later = [&](const char* name, auto act) {
      turns_.emplace_back([this, name, act] {
        last_ = QLatin1String(name);
        act();
      });
    };
    later("press", [=] { QTest::mousePress(sheet, Qt::LeftButton, with, at); });
    for (int i = 0; i < 4; ++i) {
      at += QPoint(static_cast<int>(60 * chance() - 30), static_cast<int>(60 * chance() - 30));
      later("move", [=] {
        QMouseEvent move(QEvent::MouseMove, at, sheet->mapToGlobal(at), Qt::NoButton, Qt::LeftButton, with);
        QApplication::sendEvent(sheet, &move);
      });
    }
    later("release", [=] { QTest::mouseRelease(sheet, Qt::LeftButton, with, at); });
    if (chance() < 0.1) later("double click", [=] { QTest::mouseDClick(sheet, Qt::LeftButton, with, at); });
  }

  void key() {
    static const QList<int> keys{Qt::Key_Left, Qt::Key_Right, Qt::Key_Up,  Qt::Key_Down,   Qt::Key_Tab,       Qt::Key_Space, Qt::Key_Return,
                                 Qt::Key_Escape, Qt::Key_Delete, Qt::Key_1, Qt::Key_5,     Qt::Key_Period,    Qt::Key_Minus, Qt::Key_A,
                                 Qt::Key_Backspace, Qt::Key_Home, Qt::Key_End, Qt::Key_PageDown};
    QWidget* focus = QApplication::focusWidget() ? QApplication::focusWidget() : &window_.headSheet();
    const int key = oneOf(keys);
    last_ = QStringLiteral("key in %1").arg(QLatin1String(focus->metaObject()->className()));
    QTest::keyClick(focus, static_cast<Qt::Key>(key), chance() < 0.15 ? Qt::ShiftModifier : Qt::NoModifier);
  }

  void command() {
    const auto& specs = window_.actions().specs();
    const QString id = oneOf(specs).id;
    if (kLeftOut.contains(id)) return;
    last_ = id;
    window_.actions().action(id)->trigger();
    // Pages are looked at for a moment only; questions are answered.
    if (chance() < 0.5 && window_.actions().action(QStringLiteral("file.back"))->isEnabled())
      window_.actions().action(QStringLiteral("file.back"))->trigger();
  }

  void click() {
    QList<QWidget*> buttons;
    for (auto* button : window_.findChildren<QAbstractButton*>())
      if (button->isVisible() && button->isEnabled() && !button->text().contains(QLatin1String("elsewhere")) &&
          !button->text().contains(QLatin1String("Open")) && !button->text().contains(QLatin1String("Save as")))
        buttons << button;
    if (buttons.isEmpty()) return;
    QWidget* button = oneOf(buttons);
    last_ = QStringLiteral("click on %1").arg(static_cast<QAbstractButton*>(button)->text());
    QTest::mouseClick(button, Qt::LeftButton);
  }

  void resize() {
    static const QList<QSize> sizes{{1180, 820}, {820, 1180}, {1366, 768}, {1920, 1080}, {760, 620}};
    last_ = QStringLiteral("resize");
    window_.resize(oneOf(sizes));
  }

  /// Undo takes back what was drawn and typed; what a client agreed to and what was tapped at
  /// the appointment stays.
  static plan::Plan drawn(plan::Plan plan) {
    plan::PlanInfo info = plan.info();
    info.agreedJson.clear();
    info.logJson.clear();
    plan.put(plan::kPlanId, info);
    return plan;
  }

  /// The client's screen is left by holding a button, which no random click does.
  void leaveTheClient() {
    if (++withClient_ < kWithClient) return;
    withClient_ = 0;
    for (auto* button : window_.findChildren<chair::HoldButton*>())
      if (button->isVisible()) button->beginHold();  // a random key may end it: then the next time
  }

  // Every minute: a run of less than twelve is not judged by its memory.
  void report() {
    const long now = static_cast<long>(test::residentMemory_MB());
    memory_.push_back(now);
    if (gestures_ == toldGestures_) fail(QStringLiteral("no gesture for a minute"));
    toldGestures_ = gestures_;
    std::printf("%5.0f s: %d gestures, %d undo steps, %ld MB, worst turn %.0f ms by the wall\n",
                static_cast<double>(since_.elapsed()) / 1000, gestures_, window_.controller().undoStack().count(), now, worstWall_ms_);
    std::fflush(stdout);
  }

  void fail(const QString& why) {
    ++failures_;
    std::printf("FAIL: %s\n", qPrintable(why));
  }

  void end() {
    ending_ = true;
    gesture_.stop();
    minute_.stop();  // undoing everything takes its time
    report();
    auto& controller = window_.controller();
    controller.dropTentative();
    const plan::Plan last = controller.document();
    QUndoStack& undo = controller.undoStack();
    const bool reachesStart = undo.count() > 0 && undo.index() > 0;
    if (!reachesStart) std::printf("undo: nothing to take back at the end, so it was not looked at\n");
    const int steps = undo.index();
    while (undo.canUndo()) undo.undo();
    if (reachesStart && !(drawn(controller.document()) == drawn(start_))) fail(QStringLiteral("undoing everything is not the start"));
    for (int i = 0; i < steps; ++i) undo.redo();
    if (!(controller.document() == last)) fail(QStringLiteral("redoing everything is not the end"));
    std::printf("slowest turns of the loop, the window's own work:\n");
    std::multimap<double, QString, std::greater<>> worst;
    for (const auto& [what, ms] : worstOf_) worst.emplace(ms, what);
    int shown = 0;
    for (const auto& [ms, what] : worst)
      if (++shown <= 12) std::printf("  %6.1f ms  %s\n", ms, qPrintable(what));
    std::printf("longest wait of the window: %.0f ms, %s; the machine's host took %.0f ms of a processor\n", worstWait_.first, qPrintable(worstWait_.second),
                mostStolen_ms(stolenBefore_ms_, stolenOf_ms()));
    std::printf("%d of %d gestures took more than %.0f ms of the window's own work\n", stalls_, gestures_, kStall_ms);
    for (const auto& [what, count] : held_) fail(QStringLiteral("%1 held the window up for more than %2 ms, %3 times").arg(what).arg(most_ms_).arg(count));
    if (warnings) fail(QStringLiteral("%1 warnings").arg(warnings));
    // The first minutes fill what is kept on purpose; after that nothing may go on growing.
    if (memory_.size() >= 12) {
      const long early = memory_[memory_.size() / 3], late = memory_.back();
      if (late > early + early / 4 + 100) fail(QStringLiteral("memory grew from %1 to %2 MB").arg(early).arg(late));
    }
    window_.recovery().close();
    QApplication::exit(failures_ ? 1 : 0);
  }

  desk::MainWindow& window_;
  std::uint64_t seed_, drawn_ = 0;
  const double most_ms_;
  plan::Plan start_;
  QTimer beat_, gesture_, minute_;
  QElapsedTimer wall_, since_;
  ThreadTime before_;
  const std::vector<double> stolenBefore_ms_ = stolenOf_ms();
  double worstWall_ms_ = 0;
  std::pair<double, QString> worstWait_;
  QString last_ = QStringLiteral("start");
  std::deque<std::function<void()>> turns_;  // what is left of a drag
  std::map<QString, double> worstOf_;
  std::map<QString, int> held_;
  std::vector<long> memory_;
  int withClient_ = 0, toldGestures_ = 0, gestures_ = 0, stalls_ = 0, failures_ = 0;
  bool ending_ = false;
  const bool isTraced_ = qEnvironmentVariableIsSet("COMBDRAFT_SOAK_TRACE");
};

}  // namespace

int main(int argc, char** argv) {
  qInstallMessageHandler(onMessage);
  QStandardPaths::setTestModeEnabled(true);
  QApplication app(argc, argv);
  QApplication::setApplicationName(QStringLiteral("combdraft-soak"));
  controls::applyTheme(app, controls::ThemeName::Light);
  const int seconds = argc > 1 ? std::atoi(argv[1]) : 60;
  const std::uint64_t seed = argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 1;
  const QString plan = argc > 3 ? QString::fromLocal8Bit(argv[3]) : store::examplePlans().value(0);
  QTemporaryDir folder;
  const QString copy = folder.filePath(QStringLiteral("plan.json"));
  if (seconds <= 0 || !QFile::copy(plan, copy)) {
    std::fputs("soak SECONDS [SEED [PLAN]]\n", stderr);
    return 2;
  }
  desk::MainWindow window({folder.filePath(QStringLiteral("settings.ini")), folder.filePath(QStringLiteral("recovery")),
                           folder.filePath(QStringLiteral("patterns")), folder.filePath(QStringLiteral("faults")), nullptr, {}});
  window.resize(1180, 820);
  window.show();
  if (!QTest::qWaitForWindowExposed(&window)) return 3;
  window.openPath(copy);
  std::printf("%s, seed %llu, %d s\n", qPrintable(QFileInfo(plan).fileName()), static_cast<unsigned long long>(seed), seconds);
  const Soak soak(window, seed, seconds);
  return QApplication::exec();
}

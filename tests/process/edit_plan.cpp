// A hand that never rests, for tests that end programs at bad moments: the real
// document, autosave, recovery and saving, without a window.
//
//   edit_plan edit FOLDER SEED FIRST   recovers or opens, then edits and saves until
//                                      it is killed; its first edit is number FIRST
//   edit_plan newest FOLDER            the newest edit that can still be opened
//
// FOLDER holds plan.json and the recovery folder. Each edit writes its number into
// the plan's notes and says it on standard output once it is made. Now and then it taps
// in the appointment log, and says so once the tap is on the disk:
//   E number time_ms    S number time_ms (saved)    R number (recovered)    T tap time_ms
//   F reason (autosave failed)    W (autosaved)     X reason (opening or saving failed)
// `newest` says "N number", "T tap" and "U place: reason" for each plan that does not open.
#include <time.h>
#include <unistd.h>

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QTimer>
#include <cstdio>
#include <cstdlib>
#include <string>

#include "app/store/left_plans.h"
#include "app/store/plan_store.h"
#include "app/store/recovery.h"
#include "app/store/snapshot_folder.h"
#include "engine/base/random.h"
#include "engine/plan/plan_file.h"
#include "engine/work/log_text.h"

using namespace combdraft;

namespace {

long now_ms() {
  timespec t{};
  clock_gettime(CLOCK_MONOTONIC, &t);
  return t.tv_sec * 1000 + t.tv_nsec / 1'000'000;
}

/// One write per line: a line is there whole or not at all.
void say(const std::string& line) {
  const std::string whole = line + '\n';
  if (::write(STDOUT_FILENO, whole.data(), whole.size()) < 0) std::_Exit(1);
}

long numberIn(const plan::Plan& plan) {
  long number = 0;
  std::sscanf(plan.info().notes.c_str(), "edit %ld", &number);
  return number;
}

long tapIn(const plan::Plan& plan) {
  const auto log = work::readLog(plan.info().logJson);
  long number = 0;
  if (!log) return number;
  for (const work::LogEvent& event : log->events) number = std::max(number, static_cast<long>(event.number));
  return number;
}

class Hand {
 public:
  Hand(const QString& folder, std::uint64_t seed, long first)
      : file_(folder + QStringLiteral("/plan.json")), root_(folder + QStringLiteral("/recovery")), seed_(seed),
        number_(first), controller_(plan::Plan::fresh(7)), recovery_(controller_, root_) {
    QObject::connect(&recovery_, &store::Recovery::failed, [](const QString& why) { say("F " + why.toStdString()); });
    QObject::connect(&recovery_, &store::Recovery::written, [] { say("W"); });
    begin();
    QObject::connect(&next_, &QTimer::timeout, [this] { edit(); });
    next_.start(0);
  }

 private:
  void begin() {
    const std::vector<store::LeftPlan> left = store::findLeftPlans(root_);
    if (!left.empty()) {
      auto read = store::readLeftPlan(left.front());
      if (!read) return say("X " + describe(read.error()));
      const long number = numberIn(read->plan);
      controller_.replaceModified(std::move(read->plan), std::move(read->file));
      if (recovery_.writeNow() == store::Recovery::Written::Yes) store::removeLeftPlan(left.front());
      return say("R " + std::to_string(number));
    }
    if (!QFileInfo::exists(file_)) return;
    auto opened = store::openPlan(file_);
    if (!opened) return say("X " + describe(opened.error()));
    controller_.replace(std::move(opened->plan), std::move(opened->file));
  }

  double chance() { return randomUniform(seed_, ++drawn_, 0); }

  void edit() {
    plan::Plan next = controller_.document();
    plan::PlanInfo info = next.info();
    info.notes = "edit " + std::to_string(number_);
    next.put(plan::kPlanId, std::move(info));
    // Plans of all sizes: some hundred pieces come and go.
    const plan::ItemId id = "piece-" + std::to_string(1 + static_cast<int>(chance() * 300));
    if (next.find<plan::Piece>(id) && chance() < 0.3) {
      next.put(id, plan::ItemPtr());
    } else {
      plan::Piece piece;
      piece.choice = next.info().activeChoice;
      piece.line = {{170, 50 + 20 * chance()}, {150, 50 + 20 * chance()}};
      piece.thickness_mm = 1 + 10 * chance();
      next.put(id, std::move(piece));
    }
    controller_.edit(next, QStringLiteral("Edit"));
    say("E " + std::to_string(number_) + ' ' + std::to_string(now_ms()));
    if (chance() < 0.008) save();
    if (chance() < 0.05) tap();
    ++number_;
    next_.start(static_cast<int>(2 + 30 * chance()));
  }

  // As the window does it: recorded, and written down before the next one can come.
  void tap() {
    constexpr std::size_t kKept = 200;  // the number goes on; a long log would only slow the test
    const auto read = work::readLog(controller_.document().info().logJson);
    if (!read) return say("X the log does not open: " + describe(read.error()));
    work::AppointmentLog log = *read;
    if (log.events.size() > kKept) log.events.erase(log.events.begin(), log.events.begin() + kKept / 2);
    work::LogEvent event;
    event.tap = work::Tap::Placed;
    event.pieces = {"piece-1"};
    const work::AppointmentLog next = work::appended(std::move(log), std::move(event), {now_ms(), now_ms(), "hand"});
    controller_.record(document::DocumentController::Record::Log, work::writeLog(next));
    if (recovery_.writeNow() == store::Recovery::Written::Yes) say("T " + std::to_string(next.events.back().number) + ' ' + std::to_string(now_ms()));
  }

  void save() {
    auto saved = store::savePlan(controller_.document(), file_);
    if (!saved) return say("X " + describe(saved.error()));
    controller_.markSaved(std::move(saved).value());
    recovery_.close();
    say("S " + std::to_string(number_) + ' ' + std::to_string(now_ms()));
  }

  QString file_, root_;
  std::uint64_t seed_, drawn_ = 0;
  long number_;
  document::DocumentController controller_;
  store::Recovery recovery_;
  QTimer next_;
};

int newest(const QString& folder) {
  long number = 0, tap = 0;
  const auto take = [&](const std::string& place, const auto& plan) {
    if (plan)
      number = std::max(number, numberIn(*plan)), tap = std::max(tap, tapIn(*plan));
    else
      say("U " + place + ": " + describe(plan.error()));
  };
  // Each file by itself: beside a whole one a damaged one would not be seen.
  for (const store::LeftPlan& left : store::findLeftPlans(folder + QStringLiteral("/recovery")))
    for (const QString& name : {store::kSnapshotLast, store::kSnapshotQuick, store::kSnapshotDocument})
      if (const QString path = left.folder + u'/' + name; QFileInfo::exists(path)) take(path.toStdString(), plan::loadPlan(path.toStdString()));
  const QString file = folder + QStringLiteral("/plan.json");
  for (const QString& path : {file, file + QStringLiteral(".previous")})
    if (QFileInfo::exists(path)) take(path.toStdString(), plan::loadPlan(path.toStdString()));
  say("N " + std::to_string(number));
  say("T " + std::to_string(tap));
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  QCoreApplication app(argc, argv);
  const QStringList arguments = QCoreApplication::arguments();
  if (arguments.size() == 3 && arguments[1] == QLatin1String("newest")) return newest(arguments[2]);
  if (arguments.size() != 5 || arguments[1] != QLatin1String("edit")) return 2;
  const Hand hand(arguments[2], arguments[3].toULongLong(), arguments[4].toLong());
  return QCoreApplication::exec();
}

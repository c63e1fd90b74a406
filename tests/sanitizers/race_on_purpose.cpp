// Races on purpose: what the thread sanitizer must still see, although it is told what Qt
// hands over and the engine's loops run on plain threads.
//
//   race_on_purpose closure     shared with a closure after it was handed over
//   race_on_purpose loop        shared by the chunks of a parallel loop
#include <QCoreApplication>
#include <QObject>
#include <QThread>
#include <atomic>
#include <string_view>

#include "engine/base/parallel.h"

namespace {

int raceWithAClosure() {
  QThread other;
  QObject there;
  there.moveToThread(&other);
  other.start();
  int shared = 0;
  std::atomic<bool> done{false};  // relaxed: it orders nothing
  QMetaObject::invokeMethod(
      &there,
      [&] {
        ++shared;
        done.store(true, std::memory_order_relaxed);
      },
      Qt::QueuedConnection);
  ++shared;
  while (!done.load(std::memory_order_relaxed)) QThread::msleep(1);
  other.quit();
  other.wait();
  return shared;
}

int raceInALoop() {
  int shared = 0;
  combdraft::parallelFor(16, [&](std::size_t) {
    ++shared;
    QThread::msleep(20);  // long enough that no thread does them all
  });
  return shared;
}

}  // namespace

int main(int argc, char** argv) {
  const QCoreApplication app(argc, argv);
  const std::string_view which = argc > 1 ? argv[1] : "";
  return which == "closure" ? raceWithAClosure() : raceInALoop();
}

#include "app/live/newest_job.h"

#include <new>
#include <utility>

#include "engine/base/give_way.h"

namespace combdraft::live {

NewestJob::NewestJob(QObject* parent) : QObject(parent) {
  worker_ = std::jthread([this](const std::stop_token& stop) { run(stop); });
}

NewestJob::~NewestJob() {
  worker_.request_stop();
  {
    const std::lock_guard lock(mutex_);
    now_.request_stop();
  }
  if (worker_.joinable()) worker_.join();
}

void NewestJob::begin(Work work, Deliver noMemory) {
  {
    const std::lock_guard lock(mutex_);
    now_.request_stop();
    mailbox_ = Job{std::move(work), std::move(noMemory), ++newestSerial_};
  }
  wake_.notify_one();
}

void NewestJob::cancel() {
  ++newestSerial_;
  const std::lock_guard lock(mutex_);
  now_.request_stop();
  mailbox_.reset();
}

void NewestJob::run(const std::stop_token& stop) {
  giveWay();
  while (true) {
    Job job;
    std::stop_token stopNow;
    {
      std::unique_lock lock(mutex_);
      if (!wake_.wait(lock, stop, [this] { return mailbox_.has_value(); })) return;
      job = std::move(*mailbox_);
      mailbox_.reset();
      now_ = std::stop_source();
      stopNow = now_.get_token();
    }
    if (stop.stop_requested()) return;
    Deliver deliver;
    try {
      deliver = job.work(stopNow);
    } catch (const std::bad_alloc&) {
      deliver = std::move(job.noMemory);  // the plan itself is safe on the window's thread
    }
    QMetaObject::invokeMethod(
        this,
        [this, serial = job.serial, deliver = std::move(deliver)] {
          if (serial == newestSerial_ && deliver) deliver();
        },
        Qt::QueuedConnection);
  }
}

}  // namespace combdraft::live

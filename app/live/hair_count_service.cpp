#include "app/live/hair_count_service.h"

#include <new>
#include <utility>

#include "engine/base/give_way.h"

namespace combdraft::live {

HairCountService::Count HairCountService::engineCount() {
  return [](const plan::Plan& plan, std::stop_token stop) { return work::countHair(plan, {}, kCountedLocks, std::move(stop)); };
}

HairCountService::HairCountService(Count count, QObject* parent) : QObject(parent), count_(std::move(count)) {
  worker_ = std::jthread([this](const std::stop_token& stop) { run(stop); });
}

HairCountService::~HairCountService() {
  worker_.request_stop();
  {
    const std::lock_guard lock(mutex_);
    now_.request_stop();
  }
  wake_.notify_all();
  if (worker_.joinable()) worker_.join();
}

void HairCountService::request(const plan::Plan& plan) {
  if (const auto* known = answerFor(plan); known && known->ok()) return cancel();  // older ones are wanted no more
  if (asked_ && work::countAlike(*asked_, plan)) return;
  asked_ = plan;
  {
    const std::lock_guard lock(mutex_);
    now_.request_stop();
    mailbox_ = Job{plan, ++newestSerial_};
  }
  wake_.notify_one();
}

void HairCountService::cancel() {
  if (!asked_) return;
  asked_.reset();
  ++newestSerial_;
  const std::lock_guard lock(mutex_);
  now_.request_stop();
  mailbox_.reset();
}

const Result<work::HairCount>* HairCountService::answerFor(const plan::Plan& plan) const {
  return answered_ && work::countAlike(*answered_, plan) ? answer_.get() : nullptr;
}

void HairCountService::run(const std::stop_token& stop) {
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
    Result<work::HairCount> hair = Error{ErrorCode::OutOfMemory, {}, {}, {}};
    try {
      hair = count_(job.plan, stopNow);
    } catch (const std::bad_alloc&) {
      // The plan itself is safe in the window's own thread: say so and go on.
    }
    auto answer = std::make_shared<const Result<work::HairCount>>(std::move(hair));
    QMetaObject::invokeMethod(
        this, [this, job = std::move(job), answer = std::move(answer)] { take(job, answer); }, Qt::QueuedConnection);
  }
}

void HairCountService::take(const Job& job, Answer answer) {
  if (job.serial != newestSerial_ || !asked_) return;  // of an older plan, or nobody waits
  answered_ = std::move(asked_);
  asked_.reset();
  answer_ = std::move(answer);
  Q_EMIT answered();
}

}  // namespace combdraft::live

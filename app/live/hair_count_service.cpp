#include "app/live/hair_count_service.h"

#include <utility>

namespace combdraft::live {

HairCountService::Count HairCountService::engineCount() {
  return [](const plan::Plan& plan, std::stop_token stop) { return work::countHair(plan, {}, kCountedLocks, std::move(stop)); };
}

HairCountService::HairCountService(Count count, QObject* parent) : QObject(parent), count_(std::move(count)) {}

void HairCountService::request(const plan::Plan& plan) {
  if (const auto* known = answerFor(plan); known && known->ok()) return cancel();  // older ones are wanted no more
  if (asked_ && work::countAlike(*asked_, plan)) return;
  asked_ = plan;
  job_.begin(
      [this, plan](std::stop_token stop) -> NewestJob::Deliver {
        return [this, answer = std::make_shared<const Answer>(count_(plan, std::move(stop)))] { take(answer); };
      },
      [this] { take(std::make_shared<const Answer>(Error{ErrorCode::OutOfMemory, {}, {}, {}})); });
}

void HairCountService::take(std::shared_ptr<const Answer> answer) {
  answered_ = std::exchange(asked_, std::nullopt);
  answer_ = std::move(answer);
  Q_EMIT answered();
}

void HairCountService::cancel() {
  if (!asked_) return;
  asked_.reset();
  job_.cancel();
}

const Result<work::HairCount>* HairCountService::answerFor(const plan::Plan& plan) const {
  return answered_ && work::countAlike(*answered_, plan) ? answer_.get() : nullptr;
}

}  // namespace combdraft::live

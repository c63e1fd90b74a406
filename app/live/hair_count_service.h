#pragma once
// Counts what pieces have of the hair without ever blocking the hand. The last answer is
// kept, and serves every plan that counts alike.
#include <QObject>
#include <functional>
#include <memory>
#include <optional>
#include <stop_token>

#include "app/live/newest_job.h"
#include "engine/plan/plan.h"
#include "engine/work/amounts.h"

namespace combdraft::live {

/// Locks of hair that the pages of an appointment count on.
inline constexpr int kCountedLocks = 20'000;

class HairCountService : public QObject {
  Q_OBJECT

 public:
  /// Of the plan's active choice; called by the worker only.
  using Count = std::function<Result<work::HairCount>(const plan::Plan&, std::stop_token)>;
  /// work::countHair on kCountedLocks.
  static Count engineCount();

  explicit HairCountService(Count count = engineCount(), QObject* parent = nullptr);

  /// Asks for this plan's hair; the newest request wins. Nothing is begun where its answer stands
  /// or is on its way. What could not be counted is tried again.
  void request(const plan::Plan& plan);
  /// Nobody waits any more: what is under way ends and its answer is dropped. The answer that stands is kept.
  void cancel();
  /// The answer where it is this plan's or of one that counts alike; null = not counted. Valid until
  /// the next request or answer.
  const Result<work::HairCount>* answerFor(const plan::Plan& plan) const;
  /// An answer is on its way.
  bool isCounting() const { return asked_.has_value(); }

 Q_SIGNALS:
  /// The answer to the newest request stands.
  void answered();

 private:
  using Answer = Result<work::HairCount>;
  void take(std::shared_ptr<const Answer> answer);

  const Count count_;
  std::optional<plan::Plan> asked_;     ///< whose answer is on its way
  std::optional<plan::Plan> answered_;  ///< whose answer stands
  std::shared_ptr<const Answer> answer_;
  NewestJob job_;  // last: ends before the rest goes
};

}  // namespace combdraft::live

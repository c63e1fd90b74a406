#pragma once
// Counts what pieces have of the hair without ever blocking the hand, as LookService
// works out looks: one worker thread, a one-slot mailbox that holds only the newest
// request. What is asked for meanwhile stops what is under way, whose answer is dropped.
// The last answer is kept, and serves every plan that counts alike.
#include <QObject>
#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>

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
  ~HairCountService() override;

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
  struct Job {
    plan::Plan plan;
    std::uint64_t serial = 0;
  };
  using Answer = std::shared_ptr<const Result<work::HairCount>>;

  void run(const std::stop_token& stop);
  void take(const Job& job, Answer answer);

  const Count count_;
  // window's thread
  std::optional<plan::Plan> asked_;     ///< whose answer is on its way
  std::optional<plan::Plan> answered_;  ///< whose answer stands
  Answer answer_;
  std::uint64_t newestSerial_ = 0;
  // shared
  std::mutex mutex_;
  std::condition_variable_any wake_;
  std::optional<Job> mailbox_;
  std::stop_source now_;  ///< of what is under way
  std::jthread worker_;   // last: stops before the rest goes
};

}  // namespace combdraft::live

#pragma once
// Keeps the look up to date without ever blocking the hand: one worker thread,
// a one-slot mailbox that holds only the newest request, and two passes.
//
// The quick pass (few locks) always completes and is shown, so a steady drag
// gets a steady stream of looks. The full pass follows; a newer request that
// changes the hair itself cancels it. When only colours changed the full engine
// answers in milliseconds and the quick pass is left out.
#include <QObject>
#include <QTimer>
#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>

#include "app/live/look_result.h"
#include "engine/base/result.h"

namespace combdraft::live {

/// Locks of hair that each pass looks at.
inline constexpr int kQuickLocks = 8000, kFullLocks = 30000;

/// One thing to compute. Values and shared snapshots only.
struct LookJob {
  plan::Plan plan;
  std::uint64_t revision = 0;
  look::LookSettings settings;
  std::vector<look::PictureRequest> pictures;
  std::uint64_t serial = 0;  ///< given by the service
};

/// Whether `next` needs hair traced or pictures measured anew after `last`.
bool needsNewHair(const LookJob& last, const LookJob& next);

class LookService : public QObject {
  Q_OBJECT

 public:
  using PassFunction = std::function<Result<look::LookFrame>(
      const plan::Plan&, const look::LookSettings&, const std::vector<look::PictureRequest>&,
      std::stop_token)>;
  using RangeFunction = std::function<Result<look::Readings>(
      const plan::Plan&, const look::LookSettings&, look::Readings, std::stop_token)>;
  /// The last argument shows what stands already, before remedies were tried.
  using AdviceFunction = std::function<Result<advise::Advice>(
      const plan::Plan&, const look::LookSettings&, const look::Readings&, std::stop_token,
      const std::function<void(const advise::Advice&)>&)>;
  using AdviceRangeFunction = std::function<Result<advise::Advice>(
      const plan::Plan&, const look::LookSettings&, advise::Advice, std::stop_token)>;
  struct Passes {
    PassFunction quick, full;  ///< each called by the worker only
    AdviceFunction advise = {};  ///< once the hand rests; may be missing
    RangeFunction range = {};  ///< when the plan has been still for a while; may be missing
    AdviceRangeFunction adviceRange = {};  ///< after that; may be missing
  };
  /// The engine with 8,000 locks at 2 mm, and with 30,000 at 1 mm.
  static Passes enginePasses();

  explicit LookService(Passes passes = enginePasses(), QObject* parent = nullptr);
  ~LookService() override;

  /// Asks for a look. Requests of one event-loop turn become one; the last wins.
  void request(const plan::Plan& plan, std::uint64_t revision, const look::LookSettings& settings,
               const std::vector<look::PictureRequest>& pictures);
  /// Looks asked for before now are of another document: never show them.
  void forget();

  enum class Freshness {
    Fresh,     ///< what is shown belongs to the newest request, all locks
    Refining,  ///< belongs to the newest request, few locks
    Lagging,   ///< older than the newest request
    Failed,    ///< the newest request could not be worked out; an older look stands
  };
  Freshness freshness() const { return freshness_; }
  bool isLagging() const { return freshness_ == Freshness::Lagging; }
  /// How many requests went to the worker since the start.
  int requestsPosted() const { return requestsPosted_; }

 Q_SIGNALS:
  void lookReady(std::shared_ptr<const combdraft::live::LookResult> result);
  void freshnessChanged();
  /// Openings and findings; comes again when remedies have been tried.
  void adviceReady(std::shared_ptr<const combdraft::live::AdviceResult> result);
  /// The plan cannot be computed (a measure no head has). The last look stays.
  void failed(const combdraft::Error& error);

 private:
  void post();
  void work(const std::stop_token& stop);
  /// Nothing when a newer request waits or there is no advice.
  std::optional<advise::Advice> advise(const LookJob& job, const look::Readings& readings, const std::stop_token& stop);
  void showAdvice(const LookJob& job, const advise::Advice& advice);
  void publish(std::uint64_t serial, std::shared_ptr<const LookResult> result);
  void setFreshness(Freshness freshness);

  const Passes passes_;
  // window's thread
  QTimer turn_;
  std::optional<LookJob> asked_;
  std::uint64_t newestSerial_ = 0, firstWanted_ = 0;
  int requestsPosted_ = 0;
  Freshness freshness_ = Freshness::Lagging;
  // shared
  std::mutex mutex_;
  std::condition_variable_any wake_;
  std::optional<LookJob> mailbox_;
  std::optional<LookJob> running_;
  std::stop_source fullPass_, laterPasses_;
  std::jthread worker_;  // last: stops before the rest goes
};

}  // namespace combdraft::live

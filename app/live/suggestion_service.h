#pragma once
// Runs the search for a better placement on a thread of its own. One search at
// a time; it works on a copy of the plan, and what it finds comes as signals.
#include <QObject>
#include <functional>
#include <memory>
#include <thread>
#include <vector>

#include "engine/advise/suggestion.h"

namespace combdraft::live {

/// How far a search is, and what it has found.
struct SuggestionState {
  double done_frac = 0;
  std::vector<advise::Proposal> found;  ///< before the end perhaps of search size
};

class SuggestionService : public QObject {
  Q_OBJECT

 public:
  /// As advise::Suggester::search; called by the worker only.
  using Search = std::function<Result<std::vector<advise::Proposal>>(
      const plan::Plan&, const look::LookSettings&, const advise::Wish&, std::stop_token,
      const std::function<void(const advise::Progress&)>&)>;
  /// As advise::Suggester::prepare; called by the worker only.
  using Prepare = std::function<void(const plan::Plan&, const look::LookSettings&, std::stop_token)>;
  struct Engine {
    Search search;
    Prepare prepare = {};  ///< may be missing
  };
  /// The real one, 12,000 locks for the figures; made on first use.
  static Engine fullEngine();

  explicit SuggestionService(Engine engine = fullEngine(), QObject* parent = nullptr);
  ~SuggestionService() override;

  /// A search of this head is likely soon. Nothing when the worker has something to do.
  void prepare(const plan::Plan& plan, const look::LookSettings& settings);
  /// False when a search is still under way, or ending. What is being prepared
  /// is finished first.
  bool start(const plan::Plan& plan, const look::LookSettings& settings, const advise::Wish& wish);
  /// Asks what is under way to end; for a search `ended` follows.
  void cancel();
  bool isRunning() const { return running_; }

  enum class End { Finished, Cancelled, Failed };

 Q_SIGNALS:
  void progressed(std::shared_ptr<const combdraft::live::SuggestionState> state);
  /// `state` holds all that was found, nothing unless Finished; `why` is for Failed.
  void ended(combdraft::live::SuggestionService::End end,
             std::shared_ptr<const combdraft::live::SuggestionState> state, const QString& why);

 private:
  void work(const plan::Plan& plan, const look::LookSettings& settings, const advise::Wish& wish,
            const std::stop_token& stop);

  using Job = std::function<void(const std::stop_token&)>;
  void launch(Job job);

  const Engine engine_;
  // window's thread
  bool running_ = false;  ///< a search was asked for and has not ended
  bool busy_ = false;     ///< the worker has a job
  Job waiting_;           ///< a search, behind what is being prepared
  // shared
  std::jthread worker_;   // last: stops before the rest goes
};

}  // namespace combdraft::live

#include "app/live/suggestion_service.h"

#include <new>
#include <optional>
#include <utility>

#include "app/words/engine_words.h"
#include "engine/base/give_way.h"

namespace combdraft::live {
namespace {

constexpr int kLocks = 12000;

}  // namespace

SuggestionService::Engine SuggestionService::fullEngine() {
  auto made = std::make_shared<std::optional<advise::Suggester>>();
  const auto suggester = [made]() -> advise::Suggester& {
    if (!*made) made->emplace(kLocks);
    return **made;
  };
  return {[suggester](const plan::Plan& plan, const look::LookSettings& settings, const advise::Wish& wish, std::stop_token stop,
                      const std::function<void(const advise::Progress&)>& progress) {
            return suggester().search(plan, settings, wish, std::move(stop), progress);
          },
          [suggester](const plan::Plan& plan, const look::LookSettings& settings, std::stop_token stop) {
            suggester().prepare(plan, settings, std::move(stop));
          }};
}

SuggestionService::SuggestionService(Engine engine, QObject* parent) : QObject(parent), engine_(std::move(engine)) {}

SuggestionService::~SuggestionService() {
  worker_.request_stop();
  if (worker_.joinable()) worker_.join();
}

void SuggestionService::launch(Job job) {
  busy_ = true;
  // The thread before has said its last word: nothing to wait for.
  worker_ = std::jthread([this, job = std::move(job)](const std::stop_token& stop) {
    giveWay();
    job(stop);
    QMetaObject::invokeMethod(
        this,
        [this] {
          busy_ = false;
          if (waiting_) launch(std::exchange(waiting_, {}));
        },
        Qt::QueuedConnection);
  });
}

void SuggestionService::prepare(const plan::Plan& plan, const look::LookSettings& settings) {
  if (busy_ || !engine_.prepare) return;
  launch([this, plan, settings](const std::stop_token& stop) {
    try {
      engine_.prepare(plan, settings, stop);
    } catch (const std::bad_alloc&) {
      // The search will say so, if it comes to that.
    }
  });
}

bool SuggestionService::start(const plan::Plan& plan, const look::LookSettings& settings, const advise::Wish& wish) {
  if (running_) return false;
  running_ = true;
  Job job = [this, plan, settings, wish](const std::stop_token& stop) { work(plan, settings, wish, stop); };
  if (busy_)
    waiting_ = std::move(job);
  else
    launch(std::move(job));
  return true;
}

void SuggestionService::cancel() {
  worker_.request_stop();
  if (!waiting_) return;
  waiting_ = {};
  running_ = false;
  Q_EMIT ended(End::Cancelled, std::make_shared<const SuggestionState>(), {});
}

void SuggestionService::work(const plan::Plan& plan, const look::LookSettings& settings, const advise::Wish& wish,
                             const std::stop_token& stop) {
  const auto tell = [this](const advise::Progress& progress) {
    auto state = std::make_shared<const SuggestionState>(SuggestionState{progress.done_frac, *progress.found});
    QMetaObject::invokeMethod(this, [this, state] { Q_EMIT progressed(state); }, Qt::QueuedConnection);
  };
  Result<std::vector<advise::Proposal>> found = Error{ErrorCode::OutOfMemory, "", {}, ""};
  try {
    found = engine_.search(plan, settings, wish, stop, tell);
  } catch (const std::bad_alloc&) {
    // The plan itself is safe in the window's own thread.
  }
  End end = End::Finished;
  QString why;
  SuggestionState state{1, {}};
  if (stop.stop_requested()) {
    end = End::Cancelled;
  } else if (!found) {
    end = found.error().code == ErrorCode::Cancelled ? End::Cancelled : End::Failed;
    why = words::inWords(found.error());
  } else {
    state.found = std::move(found).value();
  }
  auto last = std::make_shared<const SuggestionState>(std::move(state));
  QMetaObject::invokeMethod(
      this,
      [this, end, last, why] {
        running_ = false;
        Q_EMIT ended(end, last, why);
      },
      Qt::QueuedConnection);
}

}  // namespace combdraft::live

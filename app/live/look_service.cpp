#include "app/live/look_service.h"

#include <algorithm>
#include <chrono>
#include <new>

#include "engine/base/give_way.h"
#include "engine/look/head_hair.h"
#include "engine/look/look_range.h"

namespace combdraft::live {
namespace {

constexpr int kAdviceLocks = 12000;
constexpr std::chrono::milliseconds kRest{1200}, kShortRest{80};
constexpr double kQuickMeasuring_mm = 2.0, kFullMeasuring_mm = 1.0;
// Quick pictures are half as fine; the screen scales them up for the moment.
constexpr double kQuickCoarser = 2.0, kCoarsestPicture_mm = 2.0;

LookService::PassFunction enginePass(int locks, double measuring_mm) {
  // Made on first use, on the worker: starting the window stays quick.
  auto engine = std::make_shared<std::optional<look::LookEngine>>();
  return [=](const plan::Plan& plan, const look::LookSettings& settings,
             const std::vector<look::PictureRequest>& pictures, std::stop_token stop) {
    if (!*engine) engine->emplace(locks, measuring_mm);
    return (*engine)->update(plan, settings, pictures, std::move(stop));
  };
}

std::vector<look::PictureRequest> coarser(std::vector<look::PictureRequest> pictures) {
  for (look::PictureRequest& picture : pictures)
    picture.pixel_mm = std::min(picture.pixel_mm * kQuickCoarser, kCoarsestPicture_mm);
  return pictures;
}

bool samePictures(const std::vector<look::PictureRequest>& a,
                  const std::vector<look::PictureRequest>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const auto& x, const auto& y) {
    return x.view == y.view && x.pixel_mm == y.pixel_mm;
  });
}

}  // namespace

bool needsNewHair(const LookJob& last, const LookJob& next) {
  const auto key = [](const LookJob& job) {
    return look::HeadHair::keyOf(job.plan, job.settings.worn, kFullLocks, kFullMeasuring_mm, 0);
  };
  return key(last) != key(next) || !samePictures(last.pictures, next.pictures);
}

LookService::Passes LookService::enginePasses() {
  auto ranges = std::make_shared<look::LookRange>();
  auto advisor = std::make_shared<std::optional<advise::Advisor>>();
  return {enginePass(kQuickLocks, kQuickMeasuring_mm), enginePass(kFullLocks, kFullMeasuring_mm),
          [advisor](const plan::Plan& plan, const look::LookSettings& settings, const look::Readings& readings,
                    std::stop_token stop, const std::function<void(const advise::Advice&)>& early) {
            if (!*advisor) advisor->emplace(kAdviceLocks);
            return (*advisor)->update(plan, settings, readings, advise::Remedies::Try, std::move(stop), early);
          },
          [ranges](const plan::Plan& plan, const look::LookSettings& settings,
                   look::Readings readings, std::stop_token stop) {
            return ranges->apply(plan, settings, std::move(readings), std::move(stop));
          },
          [advisor](const plan::Plan& plan, const look::LookSettings& settings, advise::Advice advice,
                    std::stop_token stop) {
            if (!*advisor) advisor->emplace(kAdviceLocks);
            return (*advisor)->withRanges(plan, settings, std::move(advice), std::move(stop));
          }};
}

LookService::LookService(Passes passes, QObject* parent)
    : QObject(parent), passes_(std::move(passes)) {
  turn_.setSingleShot(true);
  turn_.setInterval(0);
  connect(&turn_, &QTimer::timeout, this, &LookService::post);
  worker_ = std::jthread([this](const std::stop_token& stop) { work(stop); });
}

LookService::~LookService() {
  worker_.request_stop();
  {
    const std::lock_guard lock(mutex_);
    fullPass_.request_stop();
    laterPasses_.request_stop();
  }
  wake_.notify_all();
  if (worker_.joinable()) worker_.join();
}

void LookService::request(const plan::Plan& plan, std::uint64_t revision,
                          const look::LookSettings& settings,
                          const std::vector<look::PictureRequest>& pictures) {
  asked_ = LookJob{plan, revision, settings, pictures, ++newestSerial_};
  setFreshness(Freshness::Lagging);
  turn_.start();
}

void LookService::forget() { firstWanted_ = newestSerial_ + 1; }

void LookService::post() {
  if (!asked_) return;
  ++requestsPosted_;
  {
    const std::lock_guard lock(mutex_);
    if (running_ && needsNewHair(*running_, *asked_)) fullPass_.request_stop();
    laterPasses_.request_stop();
    mailbox_ = std::move(asked_);
  }
  asked_.reset();
  wake_.notify_one();
}

void LookService::work(const std::stop_token& stop) {
  giveWay();
  std::optional<LookJob> traced;  // what the full engine's hair was made from
  while (true) {
    LookJob job;
    std::stop_token fullStop, laterStop;
    {
      std::unique_lock lock(mutex_);
      running_.reset();
      if (!wake_.wait(lock, stop, [this] { return mailbox_.has_value(); })) return;
      job = std::move(*mailbox_);
      mailbox_.reset();
      running_ = job;
      fullPass_ = std::stop_source();
      fullStop = fullPass_.get_token();
      laterPasses_ = std::stop_source();
      laterStop = laterPasses_.get_token();
    }
    if (stop.stop_requested()) return;

    std::optional<look::LookFrame> shown;
    const auto show = [&](look::LookFrame frame, Pass which) {
      auto result = std::make_shared<const LookResult>(
          LookResult{job.revision, job.settings, std::move(frame), which});
      QMetaObject::invokeMethod(
          this, [this, serial = job.serial, result] { publish(serial, result); },
          Qt::QueuedConnection);
    };
    const auto run = [&](const PassFunction& pass, Pass which, std::stop_token passStop) {
      Result<look::LookFrame> frame = Error{ErrorCode::OutOfMemory, "", {}, ""};
      try {
        frame = pass(job.plan, job.settings,
                     which == Pass::Quick ? coarser(job.pictures) : job.pictures, std::move(passStop));
      } catch (const std::bad_alloc&) {
        // The plan itself is safe in the window's own thread: say so and go on.
      }
      if (frame) {
        shown = *frame;
        show(std::move(frame).value(), which);
        return true;
      }
      if (frame.error().code != ErrorCode::Cancelled)
        QMetaObject::invokeMethod(
            this,
            [this, serial = job.serial, error = frame.error()] {
              if (serial < firstWanted_) return;
              if (serial >= newestSerial_) setFreshness(Freshness::Failed);
              Q_EMIT failed(error);
            },
            Qt::QueuedConnection);
      return false;
    };
    if (!traced || needsNewHair(*traced, job)) {
      traced.reset();
      if (!run(passes_.quick, Pass::Quick, stop)) continue;
    }
    if (!run(passes_.full, Pass::Full, fullStop)) {
      traced.reset();
      continue;
    }
    traced = job;

    if (!shown->readings) continue;
    std::optional<advise::Advice> advice;
    if (passes_.advise && !(advice = advise(job, *shown->readings, laterStop)) && laterStop.stop_requested()) continue;
    if (stop.stop_requested()) return;

    // The ranges take seconds: only when the hand has rested for a while.
    if (!passes_.range) continue;
    {
      std::unique_lock lock(mutex_);
      if (wake_.wait_for(lock, stop, kRest, [this] { return mailbox_.has_value(); })) continue;
    }
    if (stop.stop_requested()) return;
    try {
      auto readings = passes_.range(job.plan, job.settings, *shown->readings, laterStop);
      if (!readings) continue;
      shown->readings = std::make_shared<const look::Readings>(std::move(readings).value());
      show(std::move(*shown), Pass::Full);
      if (!passes_.adviceRange || !advice) continue;
      if (auto ranged = passes_.adviceRange(job.plan, job.settings, std::move(*advice), laterStop)) showAdvice(job, *ranged);
    } catch (const std::bad_alloc&) {
      continue;  // the look stands; its range stays unknown
    }
  }
}

std::optional<advise::Advice> LookService::advise(const LookJob& job, const look::Readings& readings,
                                                  const std::stop_token& stop) {
  {
    std::unique_lock lock(mutex_);
    if (wake_.wait_for(lock, stop, kShortRest, [this] { return mailbox_.has_value(); })) return std::nullopt;
  }
  try {
    Result<advise::Advice> advice = passes_.advise(job.plan, job.settings, readings, stop,
                                                   [&](const advise::Advice& early) { showAdvice(job, early); });
    if (!advice) return std::nullopt;
    showAdvice(job, *advice);
    if (!stop.stop_requested()) return std::move(advice).value();
  } catch (const std::bad_alloc&) {
    // The look stands; what needs a look stays as it was.
  }
  return std::nullopt;
}

void LookService::showAdvice(const LookJob& job, const advise::Advice& advice) {
  auto result = std::make_shared<const AdviceResult>(AdviceResult{job.revision, job.settings, advice});
  QMetaObject::invokeMethod(
      this, [this, serial = job.serial, result] { if (serial >= firstWanted_) Q_EMIT adviceReady(result); },
      Qt::QueuedConnection);
}

void LookService::publish(std::uint64_t serial, std::shared_ptr<const LookResult> result) {
  if (serial < firstWanted_) return;
  setFreshness(serial < newestSerial_           ? Freshness::Lagging
               : result->pass == Pass::Quick ? Freshness::Refining
                                              : Freshness::Fresh);
  Q_EMIT lookReady(std::move(result));
}

void LookService::setFreshness(Freshness freshness) {
  if (freshness == freshness_) return;
  freshness_ = freshness;
  Q_EMIT freshnessChanged();
}

}  // namespace combdraft::live

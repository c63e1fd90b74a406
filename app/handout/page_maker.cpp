#include "app/handout/page_maker.h"

#include <QPrinter>
#include <new>
#include <utility>

#include "app/handout/page_print.h"
#include "engine/base/give_way.h"

namespace combdraft::handout {
namespace {

constexpr double kPreviewPixel_mm = 0.5;

}  // namespace

// Traced hair of two ways and pictures at print size are some hundred MB: they go as soon as
// the looks are there. A text that is typed needs none anew (sameLooks).
PageMaker::Look PageMaker::engineLooks() {
  return [](const Request& request, double pixel_mm, std::stop_token stop, const Progress& progress) {
    return LookMaker().make(request, pixel_mm, std::move(stop), progress);
  };
}

bool sameLooks(const Request& a, const Request& b) {
  const auto items = [](const Request& request) {
    std::map<plan::ItemId, plan::ItemPtr> kept = request.plan.items();
    kept.erase(plan::kHandoutId);
    return kept;
  };
  const LooksNeeded x = looksNeeded(a), y = looksNeeded(b);
  return a.choice == b.choice && x.down == y.down && x.opened == y.opened && x.regrowth == y.regrowth &&
         items(a) == items(b);
}

PageMaker::PageMaker(Look look, QObject* parent) : QObject(parent), look_(std::move(look)) {
  worker_ = std::jthread([this](const std::stop_token& stop) { run(stop); });
}

PageMaker::~PageMaker() {
  worker_.request_stop();
  {
    const std::lock_guard lock(mutex_);
    now_.request_stop();
  }
  worker_.join();
}

void PageMaker::request(const Request& request) {
  {
    const std::lock_guard lock(mutex_);
    wanted_ = request;
    wantedSerial_ = ++asked_;
    // Looks of another head are of no use; those of the same one go on.
    if (showing_ && !job_ && !writing_ && !sameLooks(*showing_, request)) now_.request_stop();
  }
  idle_ = false;
  wake_.notify_one();
}

bool PageMaker::start(Job job) {
  if (writing_) return false;
  writing_ = true;
  putsOut_ = job.wish || job.printer;
  {
    const std::lock_guard lock(mutex_);
    job.generation = generation_;
    job_ = std::move(job);
    now_.request_stop();  // of a preview; it is made again afterwards
    if (!wanted_ && showing_) wanted_ = showing_;
  }
  wake_.notify_one();
  return true;
}

bool PageMaker::write(const Request& request, const FileWish& wish, IfThere ifThere) { return start({request, wish, ifThere, nullptr}); }
bool PageMaker::print(const Request& request, std::shared_ptr<QPrinter> printer) {
  return start({request, std::nullopt, IfThere::Replace, std::move(printer)});
}
bool PageMaker::makeForPaper(const Request& request) { return start({request, std::nullopt, IfThere::Replace, nullptr}); }

void PageMaker::forget() {
  {
    const std::lock_guard lock(mutex_);
    wanted_.reset();
    showing_.reset();
    if (!writing_) now_.request_stop();
    ++generation_;
    forgets_ = true;
  }
  idle_ = false;
  wake_.notify_one();
}

void PageMaker::cancel() {
  const std::lock_guard lock(mutex_);
  now_.request_stop();
  if (!job_) return;
  job_.reset();  // it had not begun
  tell([this] {
    writing_ = false;
    Q_EMIT failed({ErrorCode::Cancelled, "", {}, {}}, true);
    Q_EMIT ended();
  });
}

void PageMaker::run(const std::stop_token& stop) {
  giveWay();
  while (!stop.stop_requested()) {
    std::optional<Job> job;
    std::optional<Request> request;
    std::stop_token now;
    int serial = 0, generation = 0;
    {
      std::unique_lock lock(mutex_);
      wake_.wait(lock, stop, [this] { return wanted_ || job_ || forgets_; });
      if (stop.stop_requested()) return;
      now_ = std::stop_source();
      now = now_.get_token();
      if (std::exchange(forgets_, false)) known_.reset();
      if (job_) {
        job.swap(job_);
      } else if (wanted_) {
        request.swap(wanted_);
        showing_ = request;
        shownSerial_ = wantedSerial_;
      }
      serial = wantedSerial_;
      generation = generation_;
    }
    try {
      if (job)
        put(*job, now);
      else if (request)
        show(*request, generation, now);
    } catch (const std::bad_alloc&) {
      const bool wasWriting = job.has_value();
      tell([this, wasWriting] {
        if (wasWriting) writing_ = false;
        Q_EMIT failed({ErrorCode::OutOfMemory, "", {}, {}}, wasWriting);
        if (wasWriting) Q_EMIT ended();
      });
    }
    {
      const std::lock_guard lock(mutex_);
      showing_.reset();
    }
    tell([this, serial] {
      idle_ = serial == asked_;
      Q_EMIT progressed(1, false);
    });
  }
}

Result<Looks> PageMaker::looksFor(const Request& request, double pixel_mm, const std::stop_token& stop, const Progress& progress) {
  if (!looksNeeded(request).any()) return Looks{};
  if (known_ && known_->pixel_mm <= pixel_mm && sameLooks(known_->request, request)) return known_->looks;
  Result<Looks> made = look_(request, pixel_mm, stop, progress);
  if (made) known_ = KnownLooks{request, pixel_mm, *made};
  return made;
}

bool PageMaker::present(const Request& request, const Looks& looks, bool looksFollow, int generation, const std::stop_token& stop) {
  Result<std::vector<paint::Page>> made = makePages(request, looks, stop, {});
  if (!made) return false;
  auto pages = std::make_shared<const std::vector<paint::Page>>(std::move(made).value());
  tell([this, pages, looksFollow, generation] {
    if (generation == generation_) Q_EMIT ready(pages, looksFollow);
  });
  return true;
}

// A thread of its own, because the engine says seldom how far it is: somebody who types sees
// the words at once. The wish still waits and is shown with its hair afterwards.
std::jthread PageMaker::showingTyped() {
  return std::jthread([this, known = known_](const std::stop_token& end) {
    giveWay();
    while (!end.stop_requested()) {
      Request typed;
      int generation = 0;
      bool isForgotten = false;
      {
        std::unique_lock lock(mutex_);
        if (!wake_.wait(lock, end, [this] { return wanted_ && wantedSerial_ != shownSerial_; })) return;
        typed = *wanted_;
        generation = generation_;
        isForgotten = forgets_;
        shownSerial_ = wantedSerial_;
      }
      try {
        const bool isKnown = known && !isForgotten && sameLooks(known->request, typed);
        present(typed, isKnown ? known->looks : Looks{}, true, generation, end);
      } catch (const std::bad_alloc&) {
        return;  // said when it is made again
      }
    }
  });
}

void PageMaker::show(const Request& request, int generation, const std::stop_token& stop) {
  const bool isKnown = !looksNeeded(request).any() || (known_ && sameLooks(known_->request, request));
  if (!present(request, isKnown && known_ ? known_->looks : Looks{}, !isKnown, generation, stop) || isKnown) return;
  const auto progress = [this](double done) { tell([this, done] { Q_EMIT progressed(done, false); }); };
  progress(0);
  std::jthread typed = showingTyped();
  const Result<Looks> looks = looksFor(request, kPreviewPixel_mm, stop, progress);
  typed.request_stop();
  typed.join();
  if (!looks) {
    if (looks.error().code != ErrorCode::Cancelled) tell([this, error = looks.error()] { Q_EMIT failed(error, false); });
    return;
  }
  {
    const std::lock_guard lock(mutex_);
    if (wanted_) return;  // its words are in sight already; the older ones do not come back
  }
  present(request, *looks, false, generation, stop);
}

Result<PageMaker::Done> PageMaker::carryOut(const Job& job, const std::stop_token& stop) {
  const auto progress = [this](double from, double to) {
    return [this, from, to](double done) { tell([this, at = from + (to - from) * done] { Q_EMIT progressed(at, true); }); };
  };
  progress(0, 0)(0);
  const Result<Looks> looks = looksFor(job.request, kPrintPixel_mm, stop, progress(0, 0.5));
  if (!looks) return looks.error();
  Result<std::vector<paint::Page>> made = makePages(job.request, *looks, stop, progress(0.5, 0.7));
  if (!made) return made.error();
  Done done;
  done.pages = std::make_shared<const std::vector<paint::Page>>(std::move(made).value());
  if (job.wish) {
    const int count = static_cast<int>(done.pages->size());
    if (job.ifThere == IfThere::Ask) done.there = filesThere(job.wish->fileName, count);
    if (!done.there.isEmpty()) return done;
    const Result<void> written = writePages(*done.pages, *job.wish, stop, progress(0.7, 1));
    if (!written) return written.error();
    done.files = fileNames(job.wish->fileName, count);
  } else if (job.printer) {
    const Result<QStringList> printed = printPages(*job.printer, *done.pages, stop, progress(0.7, 1));
    if (!printed) return printed.error();
    done.files = *printed;
  }
  return done;
}

void PageMaker::put(const Job& job, const std::stop_token& stop) {
  const bool isForPaper = !job.wish && !job.printer;
  std::jthread typed = showingTyped();
  const Result<Done> done = carryOut(job, stop);
  typed.request_stop();
  typed.join();
  tell([this, done, isForPaper, generation = job.generation] {
    writing_ = false;
    if (!done) {
      Q_EMIT failed(done.error(), true);
    } else if (!done->there.isEmpty()) {
      Q_EMIT filesStand(done->there, static_cast<int>(done->pages->size()));
    } else if (!isForPaper) {
      Q_EMIT written(done->files);
    } else if (generation == generation_) {
      Q_EMIT forPaper(done->pages);
    }
    Q_EMIT ended();
  });
}

}  // namespace combdraft::handout

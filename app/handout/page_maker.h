#pragma once
// Makes pages on a thread of its own: newest wishes first, looks when there is time,
// files and printing with progress and cancel. Works on snapshots.
#include <QObject>
#include <condition_variable>
#include <memory>
#include <mutex>
#include <thread>

#include "app/handout/document.h"
#include "app/handout/page_files.h"

class QPrinter;

namespace combdraft::handout {

using Pages = std::shared_ptr<const std::vector<paint::Page>>;

class PageMaker : public QObject {
  Q_OBJECT

 public:
  /// Works out looks; called by the worker only. Tests give their own.
  using Look = std::function<Result<Looks>(const Request&, double pixel_mm, std::stop_token, const Progress&)>;
  static Look engineLooks();

  explicit PageMaker(Look look = engineLooks(), QObject* parent = nullptr);
  ~PageMaker() override;

  /// Pages to look at: at once with the looks that are known, again when newer ones
  /// are worked out. A newer request takes the place of one that waits; it is shown without
  /// hair, or with the hair that is known, while looks, files or a print are under way.
  void request(const Request& request);
  enum class IfThere { Ask, Replace };
  /// Writes files, prints, or makes the pages that would be printed, of `request` as it is now;
  /// one at a time (false = one is under way). With Ask nothing is written where files stand:
  /// `filesStand` says so.
  bool write(const Request& request, const FileWish& wish, IfThere ifThere = IfThere::Replace);
  bool print(const Request& request, std::shared_ptr<QPrinter> printer);
  bool makeForPaper(const Request& request);
  /// Ends writing or printing; nothing half-written is left. Looks are given up too.
  void cancel();
  /// Nothing of what was asked to be looked at comes any more, and its looks are forgotten.
  /// What is being written or printed goes on.
  void forget();
  bool isWriting() const { return writing_; }
  /// Files or a print are under way, so that something is lost when it ends now.
  bool isPuttingOut() const { return writing_ && putsOut_; }
  /// Nothing waits and nothing is under way.
  bool isIdle() const { return !writing_ && idle_; }

 Q_SIGNALS:
  void ready(const combdraft::handout::Pages& pages, bool looksFollow);
  /// `done_frac` of what is under way; 1 = nothing is.
  void progressed(double done_frac, bool isWriting);
  void written(const QStringList& files);  ///< empty for a printer
  void filesStand(const combdraft::handout::FilesThere& there, int pages);  ///< nothing was written
  void forPaper(const combdraft::handout::Pages& pages);
  void failed(const combdraft::Error& error, bool wasWriting);  ///< Cancelled too
  void ended();  ///< after one of the four above: nothing is being written any more

 private:
  struct Job {
    Request request;
    std::optional<FileWish> wish;
    IfThere ifThere = IfThere::Replace;
    std::shared_ptr<QPrinter> printer;  ///< neither: the pages are wanted
    int generation = 0;
  };
  struct Done {
    Pages pages;
    QStringList files;
    FilesThere there;  ///< not empty: nothing was written
  };
  struct KnownLooks {
    Request request;
    double pixel_mm = 0;
    Looks looks;
  };

  void run(const std::stop_token& stop);
  bool start(Job job);
  void show(const Request& request, int generation, const std::stop_token& stop);
  bool present(const Request& request, const Looks& looks, bool looksFollow, int generation, const std::stop_token& stop);
  std::jthread showingTyped();
  void put(const Job& job, const std::stop_token& stop);
  Result<Done> carryOut(const Job& job, const std::stop_token& stop);
  Result<Looks> looksFor(const Request& request, double pixel_mm, const std::stop_token& stop, const Progress& progress);
  template <class Call>
  void tell(Call call) {
    QMetaObject::invokeMethod(this, std::move(call), Qt::QueuedConnection);
  }

  Look look_;
  // window's thread
  bool writing_ = false, putsOut_ = false, idle_ = true;
  int asked_ = 0;
  // shared
  std::mutex mutex_;
  std::condition_variable_any wake_;
  std::optional<Request> wanted_;
  int wantedSerial_ = 0, shownSerial_ = 0;
  std::optional<Job> job_;
  std::stop_source now_;  ///< of what is under way
  std::optional<Request> showing_;
  int generation_ = 0;    ///< rises with `forget`; written by the window's thread only
  bool forgets_ = false;  ///< the worker has not yet forgotten what it knows
  // worker
  std::optional<KnownLooks> known_;
  std::jthread worker_;  // last: stops before the rest goes
};

/// Whether two requests have the same looks: head, hair, pieces and choice.
bool sameLooks(const Request& a, const Request& b);

}  // namespace combdraft::handout

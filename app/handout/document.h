#pragma once
// What is printed, as values: which document, how it is laid out, what was typed for
// it, and the looks that its pictures come from. Everything is a snapshot, so that
// pages can be made on any thread.
#include <QString>
#include <functional>
#include <memory>
#include <optional>
#include <stop_token>

#include "app/handout/steps.h"
#include "engine/look/look.h"
#include "engine/look/regrowth.h"
#include "engine/work/outcome.h"
#include "engine/work/work_list.h"

namespace combdraft::handout {

enum class DocumentKind { Handout, RecordCard, ClientPage, WorkList };

/// Typed for one print and stored nowhere: it may name people.
struct ClientWords {
  QString aftercare;  ///< one line each
  QString nextVisit, call;
  bool operator==(const ClientWords&) const = default;
};

/// How the work list was set when it was asked for on paper.
struct WorkOnPaper {
  work::WorkSettings settings;
  work::OwnFactors factors;  ///< those it goes by; none = the assumptions
};

struct Request {
  DocumentKind kind = DocumentKind::Handout;
  plan::Plan plan = plan::Plan::fresh(1);
  plan::ItemId choice;        ///< "" = the active one
  plan::Handout handout;      ///< what is wished; the plan's own when it has one
  ClientWords client;
  WorkOnPaper work;
};
/// A request with the plan's own handout item.
Request requestFor(DocumentKind kind, const plan::Plan& plan);

/// Parts in their order on paper, all of them, those that are hidden too.
std::vector<plan::HandoutUse> partsOf(const plan::Handout& handout);
/// "Steps", "Predict, then open": as the educator and the reader see it.
QString partTitle(plan::HandoutPart part);
/// What stands above it on its first page.
QString partHeading(plan::HandoutPart part);
/// The usual order.
inline constexpr plan::HandoutPart kHandoutParts[] = {
    plan::HandoutPart::Title,    plan::HandoutPart::Kit,    plan::HandoutPart::Views,     plan::HandoutPart::Steps,
    plan::HandoutPart::CloseUps, plan::HandoutPart::Checks, plan::HandoutPart::Timing,    plan::HandoutPart::PredictThenOpen,
    plan::HandoutPart::Faults,   plan::HandoutPart::SelfCheck, plan::HandoutPart::BlankSheets};

/// What the pictures of a document need from the engine.
struct Looks {
  std::shared_ptr<const look::LookFrame> down, opened;
  std::vector<look::Regrowth> regrowth;  ///< empty: not worked out
  /// `down` if every piece lightens as little and as far as was typed; the client's page only.
  std::shared_ptr<const look::Readings> less = {}, more = {};
};
/// Which of them a request shows; nothing of them takes any time when it is false.
struct LooksNeeded {
  bool opened = false, down = false, regrowth = false;
  bool any() const { return opened || down || regrowth; }
};
LooksNeeded looksNeeded(const Request& request);

/// How far the work is, 0 to 1; called from the thread that works.
using Progress = std::function<void(double done_frac)>;

/// On the head, for pictures that are printed at about 300 dots an inch.
inline constexpr double kPrintPixel_mm = 0.25;

/// As many locks as the window reads: level and contrast on paper are the window's.
inline constexpr int kReadingLocks = 30000;

/// Works the looks out; `pixel_mm` on the head, 0.1 to 2. `locks` draw the pictures; the
/// readings of hair worn down come of kReadingLocks all the same. Errors: Cancelled, OutOfRange.
class LookMaker {
 public:
  explicit LookMaker(int locks = kReadingLocks);
  Result<Looks> make(const Request& request, double pixel_mm, std::stop_token stop, const Progress& progress);

 private:
  look::LookEngine engine_;
  std::optional<look::LookEngine> reader_;  ///< where pictures are drawn with another number
  look::RegrowthSearch regrowth_;
};

/// The pages. Looks that are missing leave bare heads. Error: Cancelled.
Result<std::vector<paint::Page>> makePages(const Request& request, const Looks& looks, std::stop_token stop,
                                           const Progress& progress);

}  // namespace combdraft::handout

#include "app/appointment/log_view.h"

#include <time.h>

#include <QDateTime>
#include <QFile>
#include <QShowEvent>
#include <QUuid>
#include <algorithm>
#include <chrono>
#include <utility>

#include "app/controls/wrapped_label.h"
#include "app/paint/describe_piece.h"
#include "app/paint/work_words.h"
#include "app/words/date_words.h"
#include "app/words/engine_words.h"
#include "app/words/typed_text.h"
#include "engine/plan/field_info.h"
#include "engine/work/log_text.h"
#include "engine/work/toning.h"
#include "engine/work/work_order.h"

namespace combdraft::appointment {
using namespace paint;  // its words
namespace {

using work::Tap;

constexpr int kLastTaps = 8, kLookFirst = 12;
constexpr std::int64_t kTwice_ms = 400;       // sooner than a hand means a second tap of the same button
constexpr double kOtherVisit_s = 6 * 3600.0;  // without a tap: a new log is offered, never begun by itself

QString timeOf(const work::LogEvent& event) {
  return QDateTime::fromMSecsSinceEpoch(event.utc_ms).toLocalTime().toString(QStringLiteral("HH:mm"));
}

// Counts on while the computer sleeps, where the system has such a clock: a tablet that
// dozed off must not make the time on the hair shorter.
std::int64_t steadyNow_ms() {
#ifdef CLOCK_BOOTTIME
  if (timespec now{}; clock_gettime(CLOCK_BOOTTIME, &now) == 0) return static_cast<std::int64_t>(now.tv_sec) * 1000 + now.tv_nsec / 1'000'000;
#endif
  return std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

// Time of day from which it counts: a fact where nobody typed a limit to count to. By the
// clock as it stands now, where it was set since.
QString placedAt(const work::PieceNow& now, double now_s, std::int64_t utc_ms) {
  constexpr std::int64_t kSet_ms = 90'000;
  const std::int64_t counted_ms = utc_ms - static_cast<std::int64_t>(1000 * (now_s - now.placed_s.value_or(now_s)));
  const std::int64_t at_ms = std::abs(counted_ms - now.placed_utc_ms) > kSet_ms ? counted_ms : now.placed_utc_ms;
  return QDateTime::fromMSecsSinceEpoch(at_ms).toLocalTime().toString(QStringLiteral("HH:mm"));
}

// What counts on through the whole time this computer is on: one name for all windows and
// starts of the program in it. Where the system does not tell it, each window has its own.
QString runName() {
  QFile told(QStringLiteral("/proc/sys/kernel/random/boot_id"));
  const QUuid boot = told.open(QIODevice::ReadOnly) ? QUuid::fromString(QString::fromLatin1(told.readAll()).trimmed()) : QUuid();
#ifdef CLOCK_BOOTTIME
  if (!boot.isNull()) return QUuid::createUuidV5(boot, QStringLiteral("appointment log")).toString(QUuid::WithoutBraces);
#endif
  return QUuid::createUuid().toString(QUuid::WithoutBraces);
}

/// With its place and the letters of its formulas: "piece 7, back left, A/B".
QString rowName(const plan::Plan& plan, const plan::ItemId& id, const PlaceBook& places) {
  const QString name = placedName(plan, id, places);
  const auto* piece = plan.find<plan::Piece>(id);
  const QString letters = piece ? formulaLetters(plan, *piece) : QString();
  return letters.isEmpty() ? name : LogView::tr("%1, %2").arg(name, letters);
}

}  // namespace

LogView::Clock LogView::systemClock() {
  const std::string run = runName().toStdString();
  return [run] {
    return work::TapClock{QDateTime::currentMSecsSinceEpoch(), steadyNow_ms(), run};
  };
}

void LogView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  timer_.start();
  awake_->keep(tr("An appointment log is open"));
  fill();
  if (pieces_->currentRow() < 0) chooseNext();
}

void LogView::chooseNext() {
  if (const auto log = logNow()) goOn(*log);
}

void LogView::hideEvent(QHideEvent* event) {
  timer_.stop();
  awake_->letGo();
  state_->hide();
  QWidget::hideEvent(event);
}

// A log that cannot be read is kept as it is: nothing is written over it.
std::optional<work::AppointmentLog> LogView::logNow() {
  Result<work::AppointmentLog> read = work::readLog(controller_.document().info().logJson);
  trouble_->setVisible(!read);
  if (!read) {
    trouble_->setText(tr("Taps cannot be noted in this plan: its log cannot be read, and is kept as it is. Write times on paper. %1").arg(words::inWords(read.error())));
    return std::nullopt;
  }
  return std::move(read).value();
}

void LogView::fill() {
  const auto log = logNow();
  for (QPushButton* button : buttons_) button->setEnabled(log.has_value());
  takeBack_->setEnabled(log && work::lastStanding(*log).has_value());
  fillTakeBackOf();
  if (!log) return doubt_->hide();
  if (controller_.document().info().logJson != own_) taken_.clear();  // went on elsewhere
  const plan::Plan& plan = controller_.document();
  const QString before = bowl_->currentData().toString();
  const QSignalBlocker quiet(bowl_);
  bowl_->clear();
  for (const auto& [id, item] : plan.items())
    if (std::holds_alternative<plan::Formula>(*item)) bowl_->addItem(tr("bowl of %1").arg(formulaName(plan, id)), QString::fromStdString(id));
  bowl_->setCurrentIndex(std::max(0, bowl_->findData(before)));
  bowl_->setEnabled(bowl_->count() > 0);
  buttons_[static_cast<std::size_t>(Tap::BowlMixed)]->setEnabled(bowl_->count() > 0);
  const double now = work::secondsAt(*log, clock_());
  fillPieces(*log, now);
  fillSide(*log, now);
  offerNewLog(*log);
}

void LogView::tick() {
  const auto log = logNow();
  if (!log || log->events.empty()) return;
  const double now = work::secondsAt(*log, clock_());
  fillPieces(*log, now);
  fillSide(*log, now);
  offerNewLog(*log);  // a tablet may lie there overnight
}

void LogView::fillPieces(const work::AppointmentLog& log, double now_s) {
  const plan::Plan& plan = controller_.document();
  std::vector<plan::ItemId> order = work::workOrder(plan, {}, work::OrderUse::AsPlanned);
  const auto state = work::stateAt(log, now_s);
  // Hair under product stays in view, whatever an edit did to the piece in the plan.
  for (const auto& [id, now] : state)
    if (work::isUnderProduct(now) && std::find(order.begin(), order.end(), id) == order.end()) order.push_back(id);
  const auto timers = work::timersAt(plan, log, now_s);
  if (head::fitHead(plan.head().measures)) places_.take(plan, order);
  const plan::ItemId before = chosenId();
  while (pieces_->count() > static_cast<int>(order.size())) delete pieces_->takeItem(pieces_->count() - 1);
  while (pieces_->count() < static_cast<int>(order.size())) pieces_->addItem(QString());
  for (int row = 0; row < pieces_->count(); ++row) {
    const plan::ItemId& id = order[static_cast<std::size_t>(row)];
    QString text = rowName(plan, id, places_);
    const auto now = state.find(id);
    const auto timer = std::find_if(timers.begin(), timers.end(), [&](const work::PieceTimer& t) { return t.piece == id; });
    if (timer != timers.end())
      text = tr("%1: %2 on the hair; %3").arg(text, clockText(timer->onHair_s), timerText(*timer));
    else if (now != state.end())
      switch (now->second.stage) {
        case work::Stage::Planned: break;
        case work::Stage::Placed: text = tr("%1: placed at %2; look").arg(text, placedAt(now->second, now_s, clock_().utc_ms)); break;
        case work::Stage::TakenOut: text = tr("%1: placed at %2; taken out, not rinsed").arg(text, placedAt(now->second, now_s, clock_().utc_ms)); break;
        case work::Stage::Rinsed: text = tr("%1: rinsed").arg(text); break;
      }
    if (now != state.end() && now->second.level) text = tr("%1; level %2 seen").arg(text, QString::number(*now->second.level));
    QListWidgetItem* item = pieces_->item(row);
    if (item->text() != text) item->setText(text);
    item->setData(Qt::UserRole, QString::fromStdString(id));
  }
  if (chosenId() == before) return;
  // A tap belongs to the piece that was chosen, never to one that slid into its row.
  const auto found = std::find(order.begin(), order.end(), before);
  pieces_->setCurrentRow(before.empty() || found == order.end() ? -1 : static_cast<int>(found - order.begin()));
}

plan::ItemId LogView::chosenId() const {
  const QListWidgetItem* item = pieces_->currentItem();
  return item ? item->data(Qt::UserRole).toString().toStdString() : plan::ItemId();
}

void LogView::fillTakeBackOf() {
  const auto log = logNow();
  takeBackOf_->setEnabled(log && !chosenId().empty() && work::lastStanding(*log, chosenId()).has_value());
}

void LogView::forgetPlan() {
  setUnwritten(false);  // that was another plan's tap
  state_->hide();
  taken_.clear();
  pieces_->clear();
  scope_->setCurrent(0);
  forgetSeen();
}

void LogView::forgetSeen() {
  level_->setValue(std::nullopt);
  pigment_->setCurrentIndex(-1);
  pigment_->clearEditText();
}

void LogView::fillSide(const work::AppointmentLog& log, double now_s) {
  const plan::Plan& plan = controller_.document();
  QStringList first, bowls, last, odd;
  const auto state = work::stateAt(log, now_s);
  const auto timers = work::timersAt(plan, log, now_s);
  int more = 0;
  for (const work::LookFirst& look : work::lookFirst(plan, log, now_s)) {
    if (first.size() >= kLookFirst && look.reason != work::LookReason::LimitReached) {
      ++more;
      continue;
    }
    // Without a typed limit there is nothing to count to: the time of day it went on.
    const auto timer = std::find_if(timers.begin(), timers.end(), [&](const work::PieceTimer& t) { return t.piece == look.piece; });
    const bool isTimed = timer != timers.end();
    const QString why = look.reason == work::LookReason::LimitReached && isTimed ? timerText(*timer)
                        : look.reason == work::LookReason::LongestOn && !isTimed ? tr("placed at %1").arg(placedAt(state.at(look.piece), now_s, clock_().utc_ms))
                                                                               : reasonText(look.reason);
    first << tr("%1: %2").arg(rowName(plan, look.piece, places_), why);
  }
  if (more > 0) first << tr("and %1 more on the hair: see the list").arg(more);
  for (const work::BowlTimer& bowl : work::bowlsAt(plan, log, now_s)) {
    const QString name = tr("%1: bowl %2").arg(formulaName(plan, bowl.formula), QString::number(bowl.number));
    bowls << (!bowl.life_s                         ? tr("%1, mixed; how long it may be used is not typed from its leaflet").arg(name)
              : bowl.say == work::Say::LifeOver ? tr("%1, %2 old: longer than it may be used as typed from its leaflet. See the leaflet.").arg(name, clockText(bowl.age_s))
                                                : tr("%1, %2 old, of %3 typed from its leaflet").arg(name, clockText(bowl.age_s), clockText(*bowl.life_s)));
  }
  const auto taps = work::tapsOfVisit(log);
  for (auto event = taps.rbegin(); event != taps.rend() && last.size() < kLastTaps; ++event)
    last << tr("%1  %2").arg(timeOf(*event), tapText(plan, *event));
  sayDoubt(log);
  for (const work::LogProblem& problem : work::problemsOf(plan, log)) odd << problemText(plan, problem);
  const auto put = [](QLabel* label, const QStringList& lines, const QString& none) { label->setText(lines.isEmpty() ? none : lines.join(u'\n')); };
  put(first_, first, tr("nothing is on the hair"));
  put(bowls_, bowls, tr("none mixed yet"));
  put(last_, last, tr("none yet"));
  put(odd_, odd, tr("nothing"));
}

// Where only wall clocks counted a time on the hair: they may have been set or stood still.
void LogView::sayDoubt(const work::AppointmentLog& log) {
  const work::TapClock now = clock_();
  const auto time = [&now](std::int64_t utc_ms) {
    const QDateTime at = QDateTime::fromMSecsSinceEpoch(utc_ms).toLocalTime();
    return at.date() == QDateTime::fromMSecsSinceEpoch(now.utc_ms).toLocalTime().date() ? at.toString(QStringLiteral("HH:mm")) : words::momentText(at);
  };
  QString text;
  if (const double unknown_s = work::unknownSince_s(log, now); unknown_s > 0)
    text = tr("The clock of this computer stands %1 min before the last tap: times on the hair may be too short by that and more. Look at a clock and at the hair.")
               .arg(minutes(unknown_s / 60));
  else if (const auto since_ms = work::wallClocksSince_utc_ms(log, now))
    text = tr("Since the tap of %1 this computer was started anew, or another one noted the taps. Its clock says %2: compare with another clock; if they differ, go by the hair "
              "and by that clock.").arg(time(*since_ms), time(now.utc_ms));
  if (doubt_->text() != text) doubt_->setText(text);
  doubt_->setVisible(!text.isEmpty());
}

std::vector<plan::ItemId> LogView::chosen(const work::AppointmentLog& log, Tap tap) const {
  const plan::ItemId lead = chosenId();
  if (lead.empty()) return {};
  const plan::Plan& plan = controller_.document();
  const auto* piece = plan.find<plan::Piece>(lead);
  std::vector<plan::ItemId> all{lead};
  if (!piece || scope_->current() == 0) return all;
  for (const plan::ItemId& id : work::workOrder(plan, {}, work::OrderUse::AsPlanned)) {
    const auto* other = plan.find<plan::Piece>(id);
    const bool together = scope_->current() == 1 ? !piece->foil.empty() && other->foil == piece->foil
                                                 : !piece->section.empty() && other->section == piece->section;
    if (together && id != lead) all.push_back(id);
  }
  // A tap for many counts for those that it fits.
  const auto state = work::stateAt(log, 1e18);
  const auto fits = [&](const plan::ItemId& id) {
    const auto now = state.find(id);
    const work::Stage stage = now == state.end() ? work::Stage::Planned : now->second.stage;
    switch (tap) {
      case Tap::Placed: return stage == work::Stage::Planned;
      case Tap::Looked: return stage != work::Stage::Planned;  // after the rinse too: that level counts
      case Tap::TakenOut: return stage == work::Stage::Placed;
      case Tap::Rinsed: return stage == work::Stage::Placed || stage == work::Stage::TakenOut;
      case Tap::BowlMixed:
      case Tap::Begun: break;
    }
    return false;
  };
  std::vector<plan::ItemId> fitting;
  std::copy_if(all.begin(), all.end(), std::back_inserter(fitting), fits);
  return fitting.empty() ? std::vector<plan::ItemId>{lead} : fitting;
}

void LogView::tap(Tap which) {
  const auto log = logNow();
  if (!log || isTouchedTwice(std::optional(which))) return;
  if (log->events.size() >= work::kMostTaps)
    return say(tr("This log holds %1 taps, and more are not kept in one plan. Note further times on paper.").arg(work::kMostTaps));
  work::LogEvent event;
  event.tap = which;
  event.who = words::oneLine(who_->text()).simplified().toStdString();
  if (which == Tap::BowlMixed)
    event.formula = bowl_->currentData().toString().toStdString();
  else
    event.pieces = chosen(*log, which);
  if (which != Tap::BowlMixed && event.pieces.empty()) return say(tr("Not noted: no piece is chosen. Choose one in the list."));
  if (which == Tap::Placed) {
    event.planned = work::plannedLifts(controller_.document(), event.pieces);
    event.limits_s = work::typedLimits(controller_.document(), event.pieces);
  }
  if (which == Tap::Looked) {
    event.level = level_->value();
    event.pigment = words::oneLine(pigment_->currentText()).simplified().toStdString();
  }
  const work::AppointmentLog next = work::appended(*log, std::move(event), clock_());
  auto taken = std::exchange(taken_, {});
  if (!keep(next)) return void(taken_ = std::move(taken));  // what was typed stays, and so does the chosen piece
  if (which == Tap::Looked) forgetSeen();  // the next piece is judged anew
  if (which == Tap::Placed) goOn(next);
}

// The same button, or taking back, again. A key that is held never gets through either.
bool LogView::isTouchedTwice(std::optional<Tap> which) {
  const work::TapClock now = clock_();
  const bool isTwice = touched_ && touched_->first == which && touched_->second.steady_ms && now.steady_ms &&
                       *now.steady_ms - *touched_->second.steady_ms < kTwice_ms;
  touched_.emplace(which, now);
  if (isTwice) say(tr("A second touch in less than half a second was not counted."));
  return isTwice;
}

void LogView::takeBackLast() { takeBack({}); }

void LogView::takeBackOfPiece() {
  if (!chosenId().empty()) takeBack(chosenId());
}

void LogView::takeBack(const plan::ItemId& piece) {
  const auto log = logNow();
  if (!log || isTouchedTwice(std::nullopt)) return;
  const auto at = work::lastStanding(*log, piece);
  if (!at) return;
  taken_.push_back(*at);
  if (!keep(work::withTakenBack(*log, *at))) taken_.pop_back();
}

void LogView::restoreLast() {
  const auto log = logNow();
  if (!log || taken_.empty() || isTouchedTwice(std::nullopt)) return;
  const std::size_t at = taken_.back();
  taken_.pop_back();
  if (!keep(work::withTakenBack(*log, at, false))) taken_.push_back(at);
}

void LogView::beginNewLog() {
  const auto log = logNow();
  if (!log) return;
  work::LogEvent begun;
  begun.tap = Tap::Begun;
  begun.who = words::oneLine(who_->text()).simplified().toStdString();
  const auto next = work::withVisitBegun(*log, std::move(begun), clock_(), kOtherVisit_s);
  if (!next) return;
  taken_.clear();
  if (keep(*next)) say(tr("A new log is begun; the taps before it stay in the plan."));
}

// A day's taps are one log. It is offered only: hair may still be under product.
void LogView::offerNewLog(const work::AppointmentLog& log) {
  const auto taps = work::tapsOfVisit(log);
  const bool isOther = log.events.size() < work::kMostTaps && work::withVisitBegun(log, {}, clock_(), kOtherVisit_s).has_value();
  beginAnew_->setVisible(isOther);
  offer_->setVisible(isOther);
  if (!isOther) return;
  const auto state = work::stateAt(log, work::secondsAt(log, clock_()));
  const bool isOn = std::any_of(state.begin(), state.end(), [](const auto& one) { return work::isUnderProduct(one.second); });
  const QString day = QLocale().toString(QDateTime::fromMSecsSinceEpoch(taps.front().utc_ms).toLocalTime().date(), QLocale::ShortFormat);
  offer_->setText(isOn ? tr("This log began on %1, and not all of its pieces were tapped as rinsed. For another visit begin a new log.").arg(day)
                       : tr("This log began on %1. For another visit begin a new log.").arg(day));
}

void LogView::say(const QString& text) {
  state_->setText(text);
  state_->show();
}

void LogView::setUnwritten(bool isUnwritten) { unwritten_->setVisible(isUnwritten); }

bool LogView::keep(const work::AppointmentLog& log) {
  const std::string before = std::exchange(own_, work::writeLog(log));
  const auto outcome = controller_.record(document::DocumentController::Record::Log, own_);
  if (outcome == document::DocumentController::Outcome::Refused) own_ = before;
  state_->hide();
  if (outcome == document::DocumentController::Outcome::Refused)
    say(controller_.access() == document::DocumentController::Access::ReadOnly
            ? tr("Not noted: this plan may only be read. Write the time on paper, then go on where the plan is open, or change it here anyway. What was typed here stays.")
            : tr("Not noted: this plan has no room left. Write times on paper from now on. What was typed here stays."));
  fill();
  if (outcome == document::DocumentController::Outcome::Made) Q_EMIT tapped();
  return outcome != document::DocumentController::Outcome::Refused;
}

void LogView::setAwake(ScreenAwake* awake) {
  delete awake_;
  awake_ = awake;
  awake_->setParent(this);
  const auto tell = [this] { awakeText_->setVisible(awake_->state() == ScreenAwake::State::Refused); };
  connect(awake_, &ScreenAwake::stateChanged, this, tell);
  if (isVisible()) awake_->keep(tr("An appointment log is open"));
  tell();
}

// Chooses the next piece that is not placed, from the chosen one on and round.
void LogView::goOn(const work::AppointmentLog& log) {
  std::vector<plan::ItemId> order;
  for (int row = 0; row < pieces_->count(); ++row) order.push_back(pieces_->item(row)->data(Qt::UserRole).toString().toStdString());
  const std::vector<plan::ItemId> left = work::notPlacedYet(log, order);
  const int count = pieces_->count(), from = std::max(0, pieces_->currentRow());
  for (int i = 0; i < count; ++i) {
    const int row = (from + i) % count;
    if (std::find(left.begin(), left.end(), order[static_cast<std::size_t>(row)]) == left.end()) continue;
    pieces_->setCurrentRow(row);
    return;
  }
}

}  // namespace combdraft::appointment

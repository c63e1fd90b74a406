#include "app/desk/suggestion_card.h"

#include <QComboBox>
#include <QKeyEvent>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/cards/card_parts.h"
#include "app/cards/target_words.h"
#include "app/controls/flow_layout.h"
#include "app/controls/segments.h"
#include "app/desk/proposal_view.h"
#include "app/words/engine_words.h"
#include "engine/advise/search_space.h"
#include "engine/plan/plan_words.h"

namespace combdraft::desk {
namespace {

constexpr std::size_t kMostProposals = 3;
enum Which { All, Selected };

QString pieceCount(std::size_t count) {
  return count == 1 ? SuggestionCard::tr("1 piece or pair may change.") : SuggestionCard::tr("%1 pieces or pairs may change.").arg(count);
}

}  // namespace

SuggestionCard::SuggestionCard(document::DocumentController& controller, document::ViewState& view,
                               live::SuggestionService& service, QWidget* parent)
    : QWidget(parent), controller_(controller), view_(view), service_(service) {
  setAccessibleName(tr("Suggest a placement"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 12);
  column->setSpacing(6);
  const auto button = [this](const QString& text, const QString& tip, auto run) {
    auto* made = new QPushButton(text, this);
    made->setToolTip(tip);
    connect(made, &QPushButton::clicked, this, run);
    return made;
  };
  const auto row = [this](std::initializer_list<QPushButton*> buttons) {
    auto* widget = new QWidget(this);
    auto* flow = new controls::FlowLayout(widget, 6, 6);
    flow->setContentsMargins(0, 0, 0, 0);
    for (QPushButton* one : buttons) flow->addWidget(one);
    return widget;
  };
  cards::addTitle(column, tr("Suggest a placement"));
  cards::showLines(cards::addCaution(column),
                   {tr("Placement only; it says nothing of strength, time or mixture. Look, check, test a strand.")});

  cards::addHeading(column, tr("What is wanted"));
  aimsText_ = cards::addSoftText(column, {});
  aims_ = button(tr("Set aims…"), tr("Say which level and contrast is wanted, for the whole head or a region"), &SuggestionCard::aimsWanted);
  column->addWidget(row({aims_}));

  cards::addHeading(column, tr("What may change"));
  which_ = cards::newCombo(this, tr("Which pieces may change"), {tr("All pieces that are not held"), tr("Selected pieces only")});
  which_->setToolTip(tr("A piece that is held, and a pair with a held side, is left alone"));
  column->addWidget(which_);
  mayChange_ = cards::addSoftText(column, {});
  start_ = button(tr("Start"), tr("Search; this takes some seconds, and you can go on working"), &SuggestionCard::start);
  start_->setProperty("primary", true);
  start_->setAccessibleName(tr("Start the search"));
  cancel_ = button(tr("Cancel"), tr("End the search; the plan stays as it is (Escape)"), [this] { service_.cancel(); });
  cancel_->setAccessibleName(tr("Cancel the search"));
  searchPart_ = row({start_, cancel_});
  column->addWidget(searchPart_);
  progress_ = new QProgressBar(this);
  progress_->setRange(0, 100);
  progress_->setAccessibleName(tr("How far the search is"));
  column->addWidget(progress_);
  state_ = cards::addSoftText(column, {});

  foundPart_ = new QWidget(this);
  column->addWidget(foundPart_);
  auto* outer = column;
  column = new QVBoxLayout(foundPart_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  cards::addHeading(column, tr("What was found"));
  std::vector<controls::Segment> segments;
  for (std::size_t i = 1; i <= kMostProposals; ++i)
    segments.push_back({tr("Proposal %1").arg(i), i == 1 ? tr("Nearest to the aims") : tr("Another way"), {}});
  proposals_ = new controls::Segments(tr("Proposal"), segments, this);
  column->addWidget(proposals_);
  stale_ = cards::addCaution(column);
  trying_ = cards::addSoftText(column, tr("The sheet and the readings show it. Nothing is changed until you keep it."));
  try_ = button(tr("Try"), tr("Shows the plan with this proposal; nothing is changed until you keep it"), &SuggestionCard::tryChosen);
  keep_ = button(tr("Keep it"), tr("Make it part of the plan; undo takes it back"), &SuggestionCard::keep);
  drop_ = button(tr("Drop it"), tr("The plan stays as it was (Escape)"), &SuggestionCard::drop);
  column->addWidget(row({try_, keep_, drop_}));
  column->addWidget(trying_);
  proposal_ = new ProposalView(this);
  column->addWidget(proposal_);
  outer->addStretch(1);

  connect(which_, &QComboBox::currentIndexChanged, this, &SuggestionCard::fill);
  connect(proposals_, &controls::Segments::chosen, this, &SuggestionCard::choose);
  connect(&controller_, &document::DocumentController::changed, this, &SuggestionCard::documentChanged);
  connect(&controller_, &document::DocumentController::selectionChanged, this, &SuggestionCard::fill);
  connect(&service_, &live::SuggestionService::progressed, this, [this](const auto& state) {
    if (!listening_) return;
    progress_->setValue(static_cast<int>(100 * state->done_frac));
    if (state->found.size() != found_.size()) take(state->found);
  });
  connect(&service_, &live::SuggestionService::ended, this,
          [this](live::SuggestionService::End end, const auto& state, const QString& why) { ended(end, *state, why); });
  refresh();
}

void SuggestionCard::begin() {
  if (found_.empty() && start_->isEnabled()) service_.prepare(controller_.document(), settings());
  if (!found_.empty() && try_->isEnabled())
    try_->setFocus();
  else
    (start_->isEnabled() ? static_cast<QWidget*>(start_) : which_)->setFocus();
  bringUp();
}

void SuggestionCard::bringUp() {
  // Once the card has its new height.
  QTimer::singleShot(0, this, [this] {
    QScrollArea* scroll = nullptr;
    for (QWidget* above = parentWidget(); above && !scroll; above = above->parentWidget()) scroll = qobject_cast<QScrollArea*>(above);
    if (!scroll) return;
    if (found_.empty()) return scroll->ensureWidgetVisible(state_->isVisible() ? static_cast<QWidget*>(state_) : searchPart_);
    QWidget* top = service_.isRunning() ? searchPart_ : foundPart_;
    scroll->verticalScrollBar()->setValue(top->y());
  });
}

std::vector<plan::ItemId> SuggestionCard::wanted() const {
  if (which_->currentIndex() == All) return {};
  std::vector<plan::ItemId> pieces;
  for (const plan::ItemId& id : controller_.selection().ids())
    if (controller_.document().find<plan::Piece>(id)) pieces.push_back(id);
  return pieces;
}

QString SuggestionCard::whyNoStart(std::size_t mayChange) const {
  if (controller_.document().pieces().empty()) return tr("There is no piece in this choice yet: draw or lay out some first.");
  if (which_->currentIndex() == Selected && wanted().empty()) return tr("Select pieces on the sheet first.");
  if (mayChange == 0) return tr("Nothing may change: these pieces are held, or do not lighten.");
  return {};
}

void SuggestionCard::fill() {
  if (!isVisible()) return;  // done when it is shown
  const plan::Plan& plan = controller_.document();
  QStringList lines;
  for (const std::string_view word : plan::targetRegions())
    if (const QString text = cards::wantedText(cards::targetOf(plan, {}, word)); !text.isEmpty())
      lines << tr("%1: %2").arg(cards::regionTitle(word), text);
  const bool none = lines.isEmpty();
  aimsText_->setText(none ? tr("No aim is set. The levels are kept as they look now, with smaller blocks where the hair opens and "
                               "fewer minutes.")
                          : lines.join(u'\n'));
  aims_->setText(none ? tr("Set aims…") : tr("Change aims…"));
  const std::vector<plan::ItemId> these = wanted();
  const std::size_t may = which_->currentIndex() == Selected && these.empty() ? 0 : advise::mayChange(plan, {}, these).size();
  const QString why = whyNoStart(may);
  mayChange_->setText(why.isEmpty() ? pieceCount(may) : why);
  start_->setEnabled(why.isEmpty() && !service_.isRunning() && !isTrying());
}

look::LookSettings SuggestionCard::settings() const {
  look::LookSettings settings = view_.lookSettings();
  settings.subject = look::Subject::Planned;
  return settings;
}

void SuggestionCard::start() {
  const plan::Plan& plan = controller_.document();
  const std::vector<plan::ItemId> these = wanted();
  if (which_->currentIndex() == Selected && these.empty()) return;
  if (!service_.start(plan, settings(), {{}, these})) return;
  forget();
  searched_ = plan;
  if (const auto* choice = plan.find<plan::Choice>(plan.info().activeChoice)) aimsOfSearch_ = choice->targets;
  listening_ = true;
  progress_->setValue(0);
  refresh();
  cancel_->setFocus();
  bringUp();
}

void SuggestionCard::take(const std::vector<advise::Proposal>& found) {
  // The one that is looked at stays in view when the order changes.
  std::optional<advise::Manner> shown;
  if (chosen_ < found_.size()) shown = found_[chosen_].manner;
  found_ = found;
  const auto same = std::find_if(found_.begin(), found_.end(), [&](const advise::Proposal& p) { return p.manner == shown; });
  const bool first = !shown && !found_.empty();
  chosen_ = same == found_.end() ? 0 : static_cast<std::size_t>(same - found_.begin());
  showChosen();
  if (first) bringUp();
}

void SuggestionCard::ended(live::SuggestionService::End end, const live::SuggestionState& state, const QString& why) {
  using End = live::SuggestionService::End;
  const bool leadOn = cancel_->hasFocus();
  if (std::exchange(listening_, false)) {
    switch (end) {
      case End::Finished:
        news_ = state.found.empty() ? tr("Nothing better was found: as drawn it stands as near as thickness, share, start and "
                                         "backcomb can bring it. Other aims, more pieces that may change, or a piece elsewhere may help.")
                                    : QString();
        take(state.found);
        break;
      case End::Cancelled:
        news_ = found_.empty() ? tr("Cancelled before anything was found.") : tr("Cancelled. Below stands what was found until then.");
        break;
      case End::Failed:
        news_ = tr("The search could not go on: %1").arg(why);
        break;
    }
  }
  refresh();
  if (leadOn) begin();
  else bringUp();
}

void SuggestionCard::choose(int proposal) {
  if (isTrying()) drop();
  chosen_ = static_cast<std::size_t>(std::max(0, proposal));
  showChosen();
}

void SuggestionCard::tryChosen() {
  if (chosen_ >= found_.size() || isOfPlanBefore()) return;
  controller_.dropTentative();  // whatever else was tried
  tried_ = plan::applied(controller_.document(), found_[chosen_].edit);
  controller_.setTentative(*tried_);
  refresh();
  keep_->setFocus();
}

void SuggestionCard::keep() {
  if (chosen_ >= found_.size() || isOfPlanBefore()) return;
  tried_.reset();
  kept_ = plan::applied(controller_.document(), found_[chosen_].edit);
  controller_.edit(*kept_, tr("Use suggestion: %1").arg(words::inWords(advise::sentenceOf(found_[chosen_].manner))));
  (start_->isEnabled() ? static_cast<QWidget*>(start_) : which_)->setFocus();
}

void SuggestionCard::drop() {
  if (!tried_) return;
  tried_.reset();
  controller_.dropTentative();
  refresh();
  try_->setFocus();
}

void SuggestionCard::forget() {
  found_.clear();
  chosen_ = 0;
  searched_.reset(), tried_.reset(), kept_.reset();
  aimsOfSearch_.clear();
  news_.clear();
}

void SuggestionCard::documentChanged(const document::DocumentChange& change) {
  if (change.kind == document::DocumentChange::Kind::Replaced) {
    listening_ = false;
    service_.cancel();
    forget();
  }
  if (change.kind == document::DocumentChange::Kind::Tentative && !tried_) return;  // a drag under way is no news yet
  // Escape on the sheet, another drag or another edit: what was tried is gone.
  if (tried_ && !(controller_.isTentative() && controller_.plan() == *tried_)) tried_.reset();
  refresh();
}

void SuggestionCard::refresh() {
  fill();
  fillFound();
}

void SuggestionCard::fillFound() {
  const bool running = service_.isRunning(), stale = isOfPlanBefore();
  const bool kept = kept_ && controller_.document() == *kept_;
  start_->setVisible(!running);
  cancel_->setVisible(running && listening_);
  progress_->setVisible(running && listening_);
  QString words = news_;
  if (running) words = !listening_ ? tr("The search before is ending…") : found_.empty() ? tr("Searching…") : tr("Searching on; this was found so far.");
  if (kept) words = tr("Kept. Undo takes it back.");
  state_->setText(words);
  state_->setVisible(!words.isEmpty());
  foundPart_->setVisible(!found_.empty());
  if (found_.empty()) return;
  for (std::size_t i = 0; i < kMostProposals; ++i) proposals_->button(static_cast<int>(i))->setVisible(i < found_.size());
  proposals_->setCurrent(static_cast<int>(chosen_));
  proposals_->setVisible(found_.size() > 1);
  cards::showLines(stale_, stale && !kept ? QStringList{tr("These are of the plan before the last change. Undo it, or start again.")}
                                         : QStringList());
  trying_->setVisible(isTrying());
  try_->setEnabled(!stale && !isTrying());
  keep_->setEnabled(!stale);
  drop_->setEnabled(isTrying());
}

void SuggestionCard::showChosen() {
  if (chosen_ < found_.size()) proposal_->show(found_[chosen_], aimsOfSearch_);
  refresh();
}

void SuggestionCard::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape && isTrying()) return drop();
  if (event->key() == Qt::Key_Escape && service_.isRunning() && listening_) return cancel_->click();
  QWidget::keyPressEvent(event);
}

void SuggestionCard::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  fill();
}

QString SuggestionCard::aimsText() const { return aimsText_->text(); }
QString SuggestionCard::stateText() const { return state_->text(); }
QString SuggestionCard::cautionText() const { return stale_->isHidden() ? QString() : stale_->text(); }

}  // namespace combdraft::desk

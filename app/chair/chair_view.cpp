#include "app/chair/chair_view.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QPushButton>
#include <QScrollArea>
#include <algorithm>
#include <cmath>

#include "app/chair/hold_button.h"
#include "app/chair/touch_controls.h"
#include "app/controls/drop_widgets.h"
#include "app/controls/flow_layout.h"
#include "app/controls/plain_words.h"
#include "app/paint/check_words.h"
#include "app/paint/look_layer.h"
#include "app/words/date_words.h"
#include "engine/plan/choice_edits.h"

namespace combdraft::chair {
namespace {

// The ways of wearing as the row shows them; the second is down with the part moved.
constexpr int kPartMoved = 1;
constexpr std::array kWays{hair::WornWay::Down, hair::WornWay::Down, hair::WornWay::HalfUp, hair::WornWay::TiedBack,
                           hair::WornWay::CrownOpened};
constexpr std::array kViews{head::ViewName::Front, head::ViewName::Left, head::ViewName::Right, head::ViewName::Back, head::ViewName::Top};
constexpr std::array kLights{colour::Light::Daylight, colour::Light::Overcast, colour::Light::WarmLamp, colour::Light::Office};
constexpr double kLittle_mm = 15, kMuch_mm = 35;
constexpr qsizetype kLongestName = 22, kLongestBeside = 10;

template <class List, class T>
int indexOf(const List& list, const T& value) {
  const auto at = std::find(list.begin(), list.end(), value);
  return at == list.end() ? -1 : static_cast<int>(at - list.begin());
}

QString partWords(double shift_mm) {
  const double by = std::abs(shift_mm);
  if (by < 0.5) return ChairView::tr("Part: where it usually is");
  const bool right = shift_mm > 0;
  if (by < kLittle_mm) return right ? ChairView::tr("Part: a little to your right") : ChairView::tr("Part: a little to your left");
  if (by < kMuch_mm) return right ? ChairView::tr("Part: to your right") : ChairView::tr("Part: to your left");
  return right ? ChairView::tr("Part: far to your right") : ChairView::tr("Part: far to your left");
}

QString weeksWords(int weeks) {
  if (weeks == 0) return ChairView::tr("When: on the day");
  return weeks == 1 ? ChairView::tr("When: 1 week later") : ChairView::tr("When: %1 weeks later").arg(weeks);
}

}  // namespace

ChairView::ChairView(document::DocumentController& controller, document::ViewState& view, QWidget* parent)
    : QWidget(parent), controller_(controller), viewState_(view), lookPlan_(controller.document()) {
  setObjectName(QStringLiteral("page"));
  setAccessibleName(tr("For the client"));
  build();
  connect(&controller_, &document::DocumentController::changed, this, [this](const document::DocumentChange& change) {
    if (!begun_) return;
    // What was agreed stands in the plan and changes no look.
    const plan::PlanInfo &was = lookPlan_.info(), &is = controller_.document().info();
    const bool onlyWords = change.kind == document::DocumentChange::Kind::Edited && change.ids == std::set<plan::ItemId>{plan::kPlanId} &&
                           was.assumptions == is.assumptions && was.number == is.number;
    if (onlyWords) return fillAgreed();
    lookPlan_ = controller_.document();
    ++ticket_;
    regrowth_.clear();
    askedAdvice_.clear();
    fillChips();
    wantLooks();
  });
}

ChairView::~ChairView() { disconnect(&controller_, nullptr, this, nullptr); }

void ChairView::begin() {
  begun_ = true;
  lookPlan_ = controller_.document();
  ++ticket_;
  regrowth_.clear();
  askedAdvice_.clear();
  settings_ = {};
  settings_.light = viewState_.lookSettings().light;
  if (indexOf(kLights, settings_.light) < 0) settings_.light = colour::Light::Daylight;
  settings_.distance_m = viewState_.lookSettings().distance_m;
  view_ = head::ViewName::Front;
  facing_ = Facing::AsInMirror;
  lastShift_mm_ = 25;
  sides_[0].choice.clear();
  sides_[1].choice = lookPlan_.info().activeChoice;
  picture_->setHeads(Heads::Two);
  picture_->setDivider(0.5);
  picture_->resetZoom();
  keptNote_.clear();
  noteWhatIsKept();
  fillChips();
  fitFont();
  fillControls();
  wantLooks();
  picture_->setFocus();
}

void ChairView::end() {
  begun_ = false;
  shelf_.clear();
  scene_.reset();
  regrowth_.clear();
  for (const int side : {0, 1}) {
    sides_[static_cast<std::size_t>(side)].shown.reset();
    picture_->setPane(side, {});
  }
}

QString ChairView::typedName(const plan::ItemId& choice) const {
  const auto* found = lookPlan_.find<plan::Choice>(choice);
  return QString::fromStdString(!found || found->name.empty() ? choice : found->name);
}

QString ChairView::nameOf(const plan::ItemId& choice) const {
  return choice.empty() ? tr("Today") : tr("Choice %1").arg(typedName(choice));
}

void ChairView::fillChips() {
  for (std::size_t s = 0; s < sides_.size(); ++s) {
    Side& side = sides_[s];
    if (!side.choice.empty() && !lookPlan_.find<plan::Choice>(side.choice)) side.choice = s == 0 ? plan::ItemId() : lookPlan_.info().activeChoice;
    for (QToolButton* chip : side.chips) controls::dropWidget(chip);
    side.chips.clear();
    std::vector<plan::ItemId> ids;
    if (s == 0) ids.emplace_back();
    for (const auto& [id, choice] : plan::choicesOf(lookPlan_)) ids.push_back(id);
    for (const plan::ItemId& id : ids) {
      QString text = nameOf(id);
      if (text.size() > kLongestName) text = text.left(kLongestName - 1) + u'\u2026';
      const QString where = s == 0 ? tr("Left picture: %1") : tr("Right picture: %1");
      QToolButton* chip = makeChip(controls::buttonText(text), where.arg(nameOf(id)), side.chipBox);
      chip->setProperty("choice", QString::fromStdString(id));
      connect(chip, &QToolButton::clicked, this, [this, s, id] { choose(static_cast<int>(s), id); });
      chip->setFont(font());
      side.chipBox->layout()->addWidget(chip);
      chip->show();
      side.chips.push_back(chip);
    }
  }
  choose(1, sides_[1].choice);
  fillAgreed();
}

void ChairView::choose(int which, const plan::ItemId& choice) {
  sides_[static_cast<std::size_t>(which)].choice = choice;
  for (const Side& side : sides_)
    for (QToolButton* chip : side.chips) chip->setChecked(chip->property("choice").toString().toStdString() == side.choice);
  for (const int s : {0, 1}) {
    Side& side = sides_[static_cast<std::size_t>(s)];
    side.thisOne->setVisible(!side.choice.empty() && (s == 1 || side.choice != sides_[1].choice));
    const bool alone = sides_[0].choice.empty() || sides_[0].choice == sides_[1].choice;
    const qsizetype most = alone ? kLongestName : kLongestBeside;
    QString name = alone ? nameOf(side.choice) : typedName(side.choice);  // two buttons have room for no more
    if (name.size() > most) name = name.left(most - 1) + u'\u2026';
    side.thisOne->setText(tr("This one: %1").arg(controls::buttonText(name)));
    side.thisOne->setAccessibleName(tr("This one: %1, keep it with the plan").arg(nameOf(side.choice)));
  }
  const QString cost = costLineOf_ ? costLineOf_(readChoice()) : QString();
  cost_->setText(cost);
  cost_->setVisible(!cost.isEmpty());
  wantLooks();
}

void ChairView::setCostLine(std::function<QString(const plan::ItemId&)> lineOf) {
  costLineOf_ = std::move(lineOf);
  if (begun_) choose(1, sides_[1].choice);
}

void ChairView::fillControls() {
  const hair::Worn& worn = settings_.worn;
  const bool moved = worn.way == hair::WornWay::Down && std::abs(worn.partShift_mm) >= 0.5;
  worn_->setCurrent(moved ? kPartMoved : indexOf(kWays, worn.way));
  views_->setCurrent(indexOf(kViews, view_));
  lights_->setCurrent(indexOf(kLights, settings_.light));
  lifts_->setCurrent(static_cast<int>(settings_.lift));
  heads_->setCurrent(static_cast<int>(picture_->heads()));
  facings_->setCurrent(facing_ == Facing::AsInMirror ? 0 : 1);
  facings_->setEnabled(view_ == head::ViewName::Front);
  const auto put = [](TouchSlider* slider, QLabel* label, int value, const QString& words) {
    const QSignalBlocker quiet(slider);
    slider->setValue(value);
    slider->setAccessibleDescription(words);
    label->setText(words);
  };
  const bool showsPart = hair::showsPart(worn.way);
  put(part_, partText_, static_cast<int>(std::lround(worn.partShift_mm)), showsPart ? partWords(worn.partShift_mm) : tr("Part: the top is tied"));
  part_->setEnabled(showsPart);
  put(weeks_, weeksText_, static_cast<int>(std::lround(settings_.weeks)), weeksWords(static_cast<int>(std::lround(settings_.weeks))));
  picture_->setView(view_, facing_);
}

void ChairView::change(const std::function<void(look::LookSettings&)>& what) {
  what(settings_);
  if (settings_.worn.partShift_mm != 0) lastShift_mm_ = settings_.worn.partShift_mm;
  fillControls();
  noteWhatIsKept();
  wantLooks();
}

LookWish ChairView::wishFor(const plan::ItemId& choice, look::Lift lift) const {
  LookWish wish{lookPlan_, ticket_, settings_, picture_->wanted()};
  wish.settings.choice = choice;
  wish.settings.subject = choice.empty() ? look::Subject::Today : look::Subject::Planned;
  wish.settings.lift = choice.empty() ? look::Lift::AsPlanned : lift;
  return wish;
}

LookWish ChairView::keptWish(const plan::ItemId& choice, look::Lift lift) const {
  LookWish wish = wishFor(choice, lift);
  wish.settings.weeks = 0;
  wish.settings.light = colour::Light::Daylight;
  return wish;
}

LookSpan ChairView::spanOf(const plan::ItemId& choice, LookWish (ChairView::*wish)(const plan::ItemId&, look::Lift) const) const {
  const auto readings = [&](look::Lift lift) -> std::shared_ptr<const look::Readings> {
    const auto found = shelf_.find((this->*wish)(choice, lift));
    return found ? found->frame.readings : nullptr;
  };
  return {readings(look::Lift::Less), readings(look::Lift::AsPlanned), readings(look::Lift::More)};
}

bool ChairView::knowsWhatIsKept(int side) const {
  const plan::ItemId& choice = sides_[static_cast<std::size_t>(side)].choice;
  return shelf_.state(keptWish(choice, look::Lift::AsPlanned)) == LookShelf::State::Known && isWhole(spanOf(choice, &ChairView::keptWish));
}

// What is looked at is for talking about; what is agreed on is one and the same for all.
void ChairView::noteWhatIsKept() {
  const bool isShown = settings_.weeks == 0 && settings_.light == colour::Light::Daylight && settings_.lift == look::Lift::AsPlanned;
  const QString note = isShown ? tr("“This one” keeps the picture, its range and today’s date with the plan.")
                               : tr("“This one” keeps the picture as planned, on the day, in daylight.");
  if (note == keptNote_) return;
  keptNote_ = note;
  say(note);
}

void ChairView::wantLooks() {
  if (!begun_) return;
  askedAdvice_.clear();  // a new look stops what the engine finds out when it rests
  std::vector<LookWish> wishes{wishFor(sides_[0].choice, settings_.lift), wishFor(sides_[1].choice, settings_.lift)};
  // The other ends of the span: the readings need them, and one touch shows them.
  for (const look::Lift lift : {look::Lift::AsPlanned, look::Lift::Less, look::Lift::More})
    for (const std::size_t s : {1u, 0u})
      if (!sides_[s].choice.empty()) wishes.push_back(wishFor(sides_[s].choice, lift));
  for (const look::Lift lift : {look::Lift::AsPlanned, look::Lift::Less, look::Lift::More})
    for (const std::size_t s : {1u, 0u})
      if (!sides_[s].choice.empty()) wishes.push_back(keptWish(sides_[s].choice, lift));
  wishes.push_back(wishFor({}, look::Lift::AsPlanned));  // today, to compare with
  shelf_.want(std::move(wishes), 2);
  showLooks();
  Q_EMIT lookWanted();
}

std::optional<LookWish> ChairView::next() {
  if (!begun_) return std::nullopt;
  if (auto wish = shelf_.next()) return wish;
  // All is known: the weeks come from what the engine finds out when it rests.
  for (const std::size_t s : {1u, 0u}) {
    const plan::ItemId& choice = sides_[s].choice;
    if (choice.empty() || regrowth_.contains(choice)) continue;
    if (askedAdvice_ == choice) return std::nullopt;  // it is being looked for
    askedAdvice_ = choice;
    return wishFor(choice, look::Lift::AsPlanned);
  }
  return std::nullopt;
}

void ChairView::set(const std::shared_ptr<const live::LookResult>& result) {
  if (!begun_) return;
  shelf_.set(result);
  // What came follows the hand, also when it has moved on meanwhile.
  // What is only there to be kept is not shown meanwhile.
  const auto isOnlyToKeep = [&](const plan::ItemId& choice) {
    return result->settings == keptWish(choice, settings_.lift).settings && !(result->settings == wishFor(choice, settings_.lift).settings);
  };
  for (Side& side : sides_)
    if (result->revision == ticket_ && !isOnlyToKeep(side.choice) && result->settings.choice == side.choice && result->settings.lift == (side.choice.empty() ? look::Lift::AsPlanned : settings_.lift) &&
        paint::pictureOf(result->frame, view_))
      side.shown = result;
  showLooks();
}

void ChairView::setAdvice(const live::AdviceResult& advice) {
  if (!begun_ || advice.revision != ticket_ || advice.settings.subject != look::Subject::Planned) return;
  for (const look::Regrowth& regrowth : advice.advice.regrowth)
    if (regrowth.way == hair::WornWay::Down) regrowth_[advice.settings.choice] = regrowth;
  fillReadings();
  if (regrowth_.contains(advice.settings.choice)) Q_EMIT lookWanted();  // the other choice's weeks
}

void ChairView::showLooks() {
  if (!begun_) return;
  if (!scene_ || !(scene_->plan() == lookPlan_)) scene_ = std::make_shared<const paint::Scene>(lookPlan_, plan::ItemId(), scene_.get());
  for (const int s : {0, 1}) {
    Side& side = sides_[static_cast<std::size_t>(s)];
    const LookWish wish = wishFor(side.choice, settings_.lift);
    const LookShelf::State state = shelf_.state(wish);
    if (const auto found = shelf_.find(wish)) side.shown = found;
    else if (side.shown && (side.shown->settings.choice != wish.settings.choice || !paint::pictureOf(side.shown->frame, view_)))
      side.shown.reset();  // never one choice under the name of another
    // Never a head without hair, as the desk draws it: an empty place says what it waits for.
    picture_->setPane(s, {Pane::Kind::Look, side.shown ? scene_ : nullptr, side.shown, nameOf(side.choice),
                          state == LookShelf::State::Known      ? QString()
                          : state == LookShelf::State::Estimate ? tr("\u25D4 first estimate")
                                                                : tr("\u25D4 being worked out"),
                          {}});
  }
  fillReadings();
}

void ChairView::fillReadings() {
  const LookSpan span = spanOf(readChoice(), &ChairView::wishFor);
  const auto today = spanOf({}, &ChairView::wishFor).planned;
  const auto weeks = regrowth_.find(readChoice());
  PlainReading plain[] = {howLight(span, today.get()), howMuchDifference(span),
                          weeksUntilRegrowth(weeks == regrowth_.end() ? std::nullopt : std::optional(weeks->second))};
  if (!readChoice().empty())
    if (const QString asNew = paint::liftsAsNewText(controller_.document(), readChoice()); !asNew.isEmpty()) plain[0].sentence += u' ' + asNew;
  for (std::size_t i = 0; i < readings_.size(); ++i) {
    readings_[i].title->setText(plain[i].title);
    readings_[i].value->setText(plain[i].value.isEmpty() ? QStringLiteral("\u2026") : plain[i].value);
    readings_[i].sentence->setText(plain[i].sentence);
    readings_[i].frame->setAccessibleName(plain[i].title + QStringLiteral(": ") + plain[i].value + QStringLiteral(". ") + plain[i].sentence);
  }
  const QString dark = whatStaysDark(span.planned.get());
  dark_->setText(dark.isEmpty() ? tr("What stays dark: being worked out.") : dark);
}

QString ChairView::readingText(int index) const {
  const ReadingBox& box = readings_[static_cast<std::size_t>(index)];
  return box.title->text() + QStringLiteral(": ") + box.value->text() + QStringLiteral(". ") + box.sentence->text();
}

void ChairView::fillAgreed() {
  const auto agreed = agreedIn(controller_.document());
  for (const Side& side : sides_)
    for (QToolButton* chip : side.chips) {
      const QString id = chip->property("choice").toString();
      const bool isAgreed = agreed && !id.isEmpty() && id.toStdString() == agreed->choice;
      QString text = nameOf(id.toStdString());
      if (text.size() > kLongestName) text = text.left(kLongestName - 1) + u'\u2026';
      text = controls::buttonText(text);
      chip->setText(isAgreed ? tr("%1\nagreed").arg(text) : text);
      chip->setAccessibleDescription(isAgreed ? tr("Agreed") : QString());
    }
}

void ChairView::agree(int which) {
  const Side& side = sides_[static_cast<std::size_t>(which)];
  const LookWish wish = keptWish(side.choice, look::Lift::AsPlanned);
  if (side.choice.empty() || shelf_.state(wish) != LookShelf::State::Known)
    return say(tr("The picture is still being worked out. Touch “This one” again when it stands."));
  Shown shown;
  shown.choice = side.choice;
  if (const auto* choice = lookPlan_.find<plan::Choice>(side.choice)) shown.choiceName = QString::fromStdString(choice->name);
  shown.settings = wish.settings;
  shown.view = view_;
  shown.facing = picture_->facing();
  // A range is kept whole or not at all.
  const LookSpan span = spanOf(side.choice, &ChairView::keptWish);
  if (isWhole(span)) shown.span = levelSpan(span);
  shown.pane = {Pane::Kind::Look, scene_, shelf_.find(wish), nameOf(side.choice), {}, {}};
  const Result<std::string> json = plan::writeAgreement(agreementOf(controller_.document(), shown, QDate::currentDate()));
  if (!json) return sayRefused(tr("what was agreed does not fit into the plan"));
  using document::DocumentController;
  if (controller_.record(DocumentController::Record::Agreed, *json) == DocumentController::Outcome::Refused)
    return sayRefused(controller_.access() == DocumentController::Access::ReadOnly ? tr("this plan may only be looked at here")
                                                                                   : tr("the plan has no room for it"));
  fillAgreed();
  const QString kept = shown.span ? tr("\u2713 Noted in the plan; it goes into the file with the next save. %1 as planned, on the day, in daylight, its range, and the date %2.")
                                  : tr("\u2713 Noted in the plan; it goes into the file with the next save. %1 as planned, on the day, in daylight, and the date %2. Its range was still being worked out: touch again later to keep it too.");
  say(kept.arg(nameOf(side.choice), words::dateText(QDate::currentDate())));
}

void ChairView::say(const QString& news) {
  notice_->setText(news);
  QAccessibleEvent event(notice_, QAccessible::NameChanged);
  QAccessible::updateAccessibility(&event);
}

void ChairView::sayRefused(const QString& why) { say(tr("\u26A0 This was not kept: %1.").arg(why)); }

void ChairView::setTrouble(const QString& why) { say(tr("\u26A0 The picture cannot be worked out: %1").arg(why)); }

void ChairView::showHowToLeave() {
  say(tr("To leave, hold “%1”, or the Escape key, for two seconds.").arg(leave_->text()));
}

void ChairView::keyPressEvent(QKeyEvent* event) {
  if (event->key() != Qt::Key_Escape) return QWidget::keyPressEvent(event);
  if (!event->isAutoRepeat()) leave_->beginHold();
}

void ChairView::keyReleaseEvent(QKeyEvent* event) {
  if (event->key() != Qt::Key_Escape) return QWidget::keyReleaseEvent(event);
  if (!event->isAutoRepeat()) leave_->endHold();
}

}  // namespace combdraft::chair

#include "app/cards/reading_card.h"

#include <QGridLayout>
#include <QVBoxLayout>
#include <array>

#include "app/cards/card_parts.h"
#include "app/cards/histogram_drawing.h"
#include "app/cards/target_words.h"
#include "app/controls/number_input.h"
#include "app/controls/theme.h"
#include "app/controls/wrapped_label.h"
#include "app/paint/assumption_words.h"
#include "app/paint/reading_words.h"
#include "app/words/engine_words.h"
#include "engine/plan/plan_words.h"

namespace combdraft::cards {

using controls::shownNumber;

ReadingCard::ReadingCard(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 12);
  column->setSpacing(5);
  addTitle(column, tr("Reading"));
  QStringList names{tr("whole head")};
  for (int i = 0; i < look::kRegions; ++i) {
    const std::string_view word = look::regionWord(static_cast<look::Region>(i));
    names << words::inWords(word);
  }
  which_ = addChoice(column, tr("How it came about, for"), names);
  which_->setCurrentIndex(0);
  connect(which_, &QComboBox::currentIndexChanged, this, &ReadingCard::fill);
  age_ = addSoftText(column, tr("\u25A8 Of the plan before the last change."));
  empty_ = addSoftText(column, {});
  aim_ = new QPushButton(this);
  aim_->setToolTip(tr("What this choice wants here; press to set it"));
  column->addWidget(aim_, 0, Qt::AlignLeft);
  connect(aim_, &QPushButton::clicked, this, [this] { Q_EMIT aimWanted(which_->currentIndex()); });

  body_ = new QWidget(this);
  column->addWidget(body_);
  auto* body = new QVBoxLayout(body_);
  body->setContentsMargins(0, 0, 0, 0);
  body->setSpacing(5);
  auto* head = new QHBoxLayout;
  swatch_ = new QLabel(body_);
  const int side = 2 * fontMetrics().height();
  swatch_->setFixedSize(2 * side, side);
  head->addWidget(swatch_);
  auto* names_ = new QVBoxLayout;
  level_ = new QLabel(body_);
  QFont strong = level_->font();
  strong.setWeight(QFont::DemiBold);
  level_->setFont(strong);
  warmth_ = new QLabel(body_);
  warmth_->setProperty("soft", true);
  names_->addWidget(level_);
  names_->addWidget(warmth_);
  head->addLayout(names_, 1);
  body->addLayout(head);

  const auto grid = [&](const QString& title) {
    addHeading(body, title);
    auto* made = new QGridLayout;
    made->setColumnStretch(0, 1);
    made->setVerticalSpacing(3);
    body->addLayout(made);
    return made;
  };
  QGridLayout* colour = grid(tr("Colour, in this light"));
  lightness_ = addFact(colour, tr("Lightness, L*"), paint::lightnessMeaning());
  range_ = addFact(colour, tr("Range, L*"), tr("One assumption after the other at the ends of its range, added up as root of squares"));
  error_ = addFact(colour, tr("Sampling error"), tr("One standard deviation in L*, from working with a limited number of locks"));
  a_ = addFact(colour, tr("Red or green, a*"), tr("Above 0 toward red, below toward green"));
  b_ = addFact(colour, tr("Yellow or blue, b*"), tr("Above 0 toward yellow, below toward blue"));
  QGridLayout* shares = grid(tr("Light and dark"));
  lightShare_ = addFact(shares, tr("Share lightened"), tr("Of the hair that is seen here"));
  darkShare_ = addFact(shares, tr("Share left dark"), tr("The shadow that keeps the light apart"));
  addHeading(body, tr("Contrast"));
  contrast_ = addLine(body);
  histogram_ = new HistogramDrawing(body_);
  body->addWidget(histogram_);
  QGridLayout* strand = grid(tr("Along the strand"));
  const QString parts[] = {tr("Root"), tr("Middle"), tr("End")};
  for (int i = 0; i < 3; ++i) parts_[i] = addFact(strand, parts[i]);
  QGridLayout* seen = grid(tr("What was seen"));
  seen_ = addFact(seen, tr("Hair"), tr("Area on the drawing, over all views"));
  skin_ = addFact(seen, tr("Scalp showing through"), tr("Share of hair and scalp together"));
  addHeading(body, tr("What moves it most"));
  moversText_ = addLine(body);
  for (QPushButton*& mover : movers_) {
    mover = new QPushButton(body_);
    mover->setProperty("quiet", true);
    mover->setMinimumHeight(28);
    mover->setToolTip(tr("Show this assumption"));
    body->addWidget(mover);
    connect(mover, &QPushButton::clicked, this,
            [this, mover] { Q_EMIT assumptionWanted(mover->property("key").toString().toStdString()); });
  }
  addSoftText(body, tr("A prediction from the plan and these assumptions, not a measurement; a test strand shows how far this hair lightens."));
  column->addStretch(1);
  setAge(Age::OfThisPlan);
  fill();
}

QLabel* ReadingCard::addLine(QVBoxLayout* column) {
  auto* label = new controls::WrappedLabel(column->parentWidget());
  column->addWidget(label);
  return label;
}

QLabel* ReadingCard::addFact(QGridLayout* grid, const QString& name, const QString& tip) {
  auto* title = new controls::WrappedLabel(name, body_);
  title->setProperty("soft", true);
  title->setToolTip(tip);
  auto* value = new QLabel(body_);
  value->setToolTip(tip);
  value->setObjectName(name);
  const int row = grid->rowCount();
  grid->addWidget(title, row, 0);
  grid->addWidget(value, row, 1, Qt::AlignRight);
  return value;
}

void ReadingCard::turnTo(int reading) {
  which_->setCurrentIndex(reading);
  which_->setFocus();
}

void ReadingCard::set(const live::LookResult& result) {
  if (!result.frame.readings) return;
  readings_ = result.frame.readings;
  light_ = result.settings.light;
  fill();
}

void ReadingCard::setAims(const plan::Plan& plan) {
  const auto* choice = plan.find<plan::Choice>(plan.info().activeChoice);
  targets_ = choice ? choice->targets : std::map<std::string, plan::Target>();
  tolerance_levels_ = look::targetTolerance_levels(plan.info().assumptions);
  showAim();
  describe();
}

void ReadingCard::showAim() {
  const auto index = static_cast<std::size_t>(which_->currentIndex());
  const auto target = targets_.find(std::string(plan::targetRegions()[index]));
  const QString aim = target == targets_.end() ? QString() : aimText(target->second);
  if (aim.isEmpty()) return aim_->setText(tr("Set an aim\u2026"));
  const auto check = readings_ ? look::checkTarget(target->second, *readings_, index, tolerance_levels_) : std::nullopt;
  QString text = check ? tr("%1: %2").arg(aim, metText(*check)) : aim;
  text[0] = text[0].toUpper();
  aim_->setText(text.replace(QStringLiteral(", "), QStringLiteral(",\n")));  // a button does not wrap
}

void ReadingCard::clear() {
  readings_.reset();
  fill();
}

void ReadingCard::setAge(Age age) {
  age_->setVisible(age == Age::OfThePlanBefore);
  describe();
}

void ReadingCard::fill() {
  const int index = which_->currentIndex();
  const look::RegionReading* region = nullptr;
  const look::Reading* reading = nullptr;
  if (readings_ && index == 0) reading = &readings_->whole;
  if (readings_ && index > 0 && index <= static_cast<int>(readings_->regions.size())) {
    region = &readings_->regions[static_cast<std::size_t>(index - 1)];
    if (region->whole) reading = &*region->whole;
  }
  if (reading && !(reading->seen_mm2 > 0) && !(reading->lightness > 0)) reading = nullptr;  // no hair at all
  body_->setVisible(reading != nullptr);
  empty_->setVisible(!reading);
  empty_->setText(readings_ ? tr("Not seen: too little of this hair shows when it is worn this way.")
                            : tr("Being worked out."));
  if (reading) show(*reading, region);
  showAim();
  describe();
}

void ReadingCard::show(const look::Reading& reading, const look::RegionReading* region) {
  QPixmap colour(swatch_->size());
  colour.fill(paint::swatchColour(reading, light_));
  swatch_->setPixmap(colour);
  level_->setText(paint::levelText(reading));
  QStringList tone;
  if (region && !region->warmth.empty()) tone << words::inWords(region->warmth);
  if (region ? region->grey_mix : readings_->grey_mix) tone << tr("pale pieces over brown, reads grey");
  warmth_->setText(tone.join(QStringLiteral(", ")));
  warmth_->setVisible(!warmth_->text().isEmpty());
  lightness_->setText(shownNumber(reading.lightness, 1));
  range_->setText(reading.rangeKnown ? tr("%1 to %2").arg(shownNumber(reading.low, 0), shownNumber(reading.high, 0))
                                     : tr("not known yet"));
  error_->setText(shownNumber(reading.sampling_error, 2));
  a_->setText(shownNumber(reading.a, 1));
  b_->setText(shownNumber(reading.b, 1));
  const auto percent = [](double share) { return tr("%1 %").arg(shownNumber(100 * share, 0)); };
  lightShare_->setText(percent(reading.light_share));
  darkShare_->setText(percent(1 - reading.light_share));
  seen_->setText(tr("%1 cm²").arg(shownNumber(reading.seen_mm2 / 100, 0)));
  skin_->setText(percent(reading.skin_share));
  const look::Contrast& contrast = region ? region->contrast : readings_->contrast;
  contrast_->setText(paint::contrastSentence(contrast));
  histogram_->set(contrast.local.from, contrast.local.step, contrast.local.counts);
  for (std::size_t i = 0; i < 3; ++i) {
    const std::optional<look::Reading> part = region ? region->rootMiddleEnd[i] : std::nullopt;
    parts_[i]->setText(part     ? tr("%1, L* %2").arg(paint::levelText(*part), shownNumber(part->lightness, 0))
                       : region ? tr("not seen")
                                : tr("by region"));
  }
  moversText_->setText(!reading.rangeKnown      ? tr("Being worked out with the range.")
                       : reading.movesMost.empty() ? tr("No assumption moves it.")
                                                   : QString());
  moversText_->setVisible(!moversText_->text().isEmpty());
  for (std::size_t i = 0; i < std::size(movers_); ++i) {
    const bool known = reading.rangeKnown && i < reading.movesMost.size();
    movers_[i]->setVisible(known);
    if (!known) continue;
    movers_[i]->setText(paint::assumptionName(reading.movesMost[i]));
    movers_[i]->setProperty("key", QString::fromStdString(reading.movesMost[i]));
  }
}

void ReadingCard::describe() {
  QStringList parts;
  if (!age_->isHidden()) parts << age_->text();
  if (!aim_->text().isEmpty()) parts << aim_->text().replace(u'\n', u' ');
  if (body_->isHidden()) {
    parts << empty_->text();
  } else {
    parts << level_->text();
    if (!warmth_->text().isEmpty()) parts << warmth_->text();
    for (const QLabel* fact : {lightness_, range_, error_, a_, b_, lightShare_, darkShare_})
      parts << fact->objectName() + u' ' + fact->text();
    parts << contrast_->text();
    if (!histogram_->text().isEmpty()) parts << histogram_->text();
    for (const QLabel* fact : {parts_[0], parts_[1], parts_[2], seen_, skin_})
      parts << fact->objectName() + u' ' + fact->text();
    for (const QPushButton* mover : movers_)
      if (!mover->isHidden()) parts << tr("What moves it most: %1").arg(mover->text());
    if (!moversText_->isHidden()) parts << moversText_->text();
    parts << tr("A prediction, not a measurement");
  }
  which_->setAccessibleDescription(parts.join(QStringLiteral(". ")));
}

}  // namespace combdraft::cards

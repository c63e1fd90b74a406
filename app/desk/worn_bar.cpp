#include "app/desk/worn_bar.h"

#include <QCoreApplication>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "app/controls/flow_layout.h"
#include "app/controls/number_input.h"

namespace combdraft::desk {
namespace {

constexpr int kFarthestPart_mm = 60, kLatestWeek = 26;

}  // namespace

QString wornName(hair::WornWay way) {
  switch (way) {
    case hair::WornWay::Down: return WornBar::tr("Down");
    case hair::WornWay::HalfUp: return WornBar::tr("Half up");
    case hair::WornWay::TiedBack: return WornBar::tr("Tied back");
    case hair::WornWay::CrownOpened: return WornBar::tr("Crown opened");
    case hair::WornWay::Blown: return WornBar::tr("In the wind");
    case hair::WornWay::LayerRaised: return WornBar::tr("Layer raised");
  }
  return {};
}

QString wornTip(hair::WornWay way) {
  switch (way) {
    case hair::WornWay::Down: return WornBar::tr("All hair hangs down");
    case hair::WornWay::HalfUp: return WornBar::tr("The upper hair is tied, the rest hangs");
    case hair::WornWay::TiedBack: return WornBar::tr("All hair is tied back");
    case hair::WornWay::CrownOpened: return WornBar::tr("The hand spreads the hair at the swirl");
    case hair::WornWay::Blown: return WornBar::tr("Wind opens the hair at the swirl");
    case hair::WornWay::LayerRaised: return WornBar::tr("The hand holds the upper hair up, to see underneath");
  }
  return {};
}

QString lightName(colour::Light light) {
  switch (light) {
    case colour::Light::Daylight: return WornBar::tr("daylight");
    case colour::Light::Overcast: return WornBar::tr("overcast");
    case colour::Light::WarmLamp: return WornBar::tr("warm lamp");
    case colour::Light::Office: return WornBar::tr("cool office light");
    case colour::Light::Incandescent: return WornBar::tr("old light bulb");
  }
  return {};
}

QString distanceName(const Distance& distance) {
  return QCoreApplication::translate("WornBar", distance.name);
}

QString partText(double shift_mm) {
  const QString mm = controls::shownNumber(std::abs(shift_mm), 0);
  if (std::abs(shift_mm) < 0.5) return WornBar::tr("Part: usual place");
  return shift_mm > 0 ? WornBar::tr("Part: %1 mm to client's right").arg(mm)
                      : WornBar::tr("Part: %1 mm to client's left").arg(mm);
}

QString partText(const hair::Worn& worn) {
  if (hair::showsPart(worn.way)) return partText(worn.partShift_mm);
  return worn.way == hair::WornWay::TiedBack ? WornBar::tr("Part: none, all is tied back")
                                             : WornBar::tr("Part: none, the top is tied");
}

QString raisedText(double raised_mm) {
  return WornBar::tr("Raised from %1 mm below the top").arg(controls::shownNumber(raised_mm, 0));
}

QString weeksText(double weeks) {
  const int whole = static_cast<int>(std::lround(weeks));
  if (whole == 0) return WornBar::tr("When: on the day");
  return whole == 1 ? WornBar::tr("When: 1 week later") : WornBar::tr("When: %1 weeks later").arg(whole);
}

WornBar::WornBar(document::ViewState& view, QWidget* parent) : QFrame(parent), view_(view) {
  setObjectName(QStringLiteral("bar"));
  setAccessibleName(tr("How it's worn, when, in which light"));
  auto* flow = new controls::FlowLayout(this, 12, 6);
  flow->setContentsMargins(14, 4, 14, 7);
  buildWorn();
  buildHair();
  buildSeeing();
  connect(&view_, &document::ViewState::changed, this, [this](document::ViewState::Aspects aspects) {
    if (aspects.testFlag(document::ViewState::Aspect::Look)) fill();
  });
  fill();
}

// How it's worn.
void WornBar::buildWorn() {
  std::vector<controls::Segment> ways;
  for (const hair::WornWay way : hair::kWornWays) ways.push_back({wornName(way), wornTip(way), {}});
  worn_ = new controls::Segments(tr("How it's worn"), ways, this);
  group(tr("How it's worn"), worn_);
  connect(worn_, &controls::Segments::chosen, this, [this](int index) {
    change([index](look::LookSettings& s) { s.worn.way = hair::kWornWays[static_cast<std::size_t>(index)]; });
  });

  const int low = static_cast<int>(hair::kLeastRaised_mm), high = static_cast<int>(hair::kMostRaised_mm);
  raised_ = slider(tr("Raised from, mm below the top of the head"),
                   tr("Where the level parting lies; the hair above it is held up"), low, high, 10, raisedText(high));
  raisedGroup_ = group({}, raised_, &raisedText_);
  connect(raised_, &QSlider::valueChanged, this, [this](int mm) {
    change([mm](look::LookSettings& s) { s.worn.raised_mm = mm; });
  });

  part_ = slider(tr("Part moved"), tr("Wear the part farther to one side"), -kFarthestPart_mm, kFarthestPart_mm, 10,
                 desk::partText(-kFarthestPart_mm));
  group({}, part_, &partText_);
  connect(part_, &QSlider::valueChanged, this, [this](int mm) {
    change([mm](look::LookSettings& s) { s.worn.partShift_mm = mm; });
  });
}

// Which hair: before or after, how far it lifts, when.
void WornBar::buildHair() {
  subject_ = new controls::Segments(tr("Hair"),
                                    {{tr("Today"), tr("The hair as it came in"), {}},
                                     {tr("Planned"), tr("The hair as planned"), {}}},
                                    this);
  group(tr("Hair"), subject_);
  connect(subject_, &controls::Segments::chosen, this, [this](int index) {
    change([index](look::LookSettings& s) { s.subject = static_cast<look::Subject>(index); });
  });

  lifts_ = new controls::Segments(
      tr("If it lifts"),
      {{tr("Less"), tr("The look if the hair lightens only to the low end of the span in the plan"), {}},
       {tr("As planned"), tr("The look at the level in the plan; test a strand to know it"), {}},
       {tr("More"), tr("The look if the hair lightens to the high end of the span in the plan"), {}}},
      this);
  group(tr("If it lifts"), lifts_);
  connect(lifts_, &controls::Segments::chosen, this, [this](int index) {
    change([index](look::LookSettings& s) { s.lift = static_cast<look::Lift>(index); });
  });

  toner_ = new controls::Segments(tr("Toner"),
                                  {{tr("Before"), tr("Bare, before toner"), {}},
                                   {tr("After"), tr("After toner, as typed"), {}}},
                                  this);
  group(tr("Toner"), toner_);
  connect(toner_, &controls::Segments::chosen, this, [this](int index) {
    change([index](look::LookSettings& s) { s.toner = static_cast<look::Toner>(index); });
  });

  weeks_ = slider(tr("Weeks later"), tr("How it looks when it has grown"), 0, kLatestWeek, 4, weeksText(kLatestWeek));
  group({}, weeks_, &weeksText_);
  connect(weeks_, &QSlider::valueChanged, this, [this](int weeks) {
    change([weeks](look::LookSettings& s) { s.weeks = weeks; });
  });
}

// How it is looked at.
void WornBar::buildSeeing() {
  moisture_ = new controls::Segments(tr("Wet or dry"),
                                     {{tr("Dry"), tr("The hair dry"), {}},
                                      {tr("Wet"), tr("The hair wet: darker than it dries"), {}}},
                                     this);
  group(tr("Wet or dry"), moisture_);
  connect(moisture_, &controls::Segments::chosen, this, [this](int index) {
    change([index](look::LookSettings& s) { s.moisture = static_cast<look::Moisture>(index); });
  });

  QStringList lights, distances;
  for (const colour::Light light : colour::kAllLights) lights << lightName(light);
  for (const Distance& distance : kDistances) distances << distanceName(distance);
  light_ = combo(tr("Light"), tr("The light the hair is looked at in"), lights);
  connect(light_, &QComboBox::activated, this, [this](int index) {
    change([index](look::LookSettings& s) { s.light = colour::kAllLights[static_cast<std::size_t>(index)]; });
  });
  distance_ = combo(tr("Seen from"),
                    tr("How far away the hair is looked at; from farther off, fine light and dark run together"), distances);
  connect(distance_, &QComboBox::activated, this, [this](int index) {
    change([index](look::LookSettings& s) { s.distance_m = kDistances[index].metres; });
  });
}

template <class Change>
void WornBar::change(Change change) {
  look::LookSettings settings = view_.lookSettings();
  change(settings);
  view_.setLookSettings(settings);
}

void WornBar::fill() {
  const look::LookSettings& s = view_.lookSettings();
  worn_->setCurrent(static_cast<int>(s.worn.way));
  lifts_->setCurrent(static_cast<int>(s.lift));
  toner_->setCurrent(static_cast<int>(s.toner));
  subject_->setCurrent(static_cast<int>(s.subject));
  moisture_->setCurrent(static_cast<int>(s.moisture));
  const auto put = [](QSlider* slider, QLabel* label, double value, const QString& text) {
    const QSignalBlocker quiet(slider);
    slider->setValue(static_cast<int>(std::lround(value)));
    slider->setAccessibleDescription(text);
    label->setText(text);
  };
  put(part_, partText_, s.worn.partShift_mm, desk::partText(s.worn));
  put(raised_, raisedText_, s.worn.raised_mm, raisedText(s.worn.raised_mm));
  put(weeks_, weeksText_, s.weeks, weeksText(s.weeks));
  part_->setEnabled(hair::showsPart(s.worn.way));
  raisedGroup_->setVisible(s.worn.way == hair::WornWay::LayerRaised);
  const auto light = std::find(colour::kAllLights.begin(), colour::kAllLights.end(), s.light);
  light_->setCurrentIndex(static_cast<int>(light - colour::kAllLights.begin()));
  const auto distance = std::find_if(std::begin(kDistances), std::end(kDistances),
                                     [&](const Distance& d) { return d.metres == s.distance_m; });
  distance_->setCurrentIndex(distance == std::end(kDistances) ? -1 : static_cast<int>(distance - std::begin(kDistances)));
}

QWidget* WornBar::group(const QString& title, QWidget* control, QLabel** titleLabel) {
  auto* box = new QWidget(this);
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(1);
  auto* label = new QLabel(title, box);
  label->setProperty("soft", true);
  label->setBuddy(control);
  column->addWidget(label);
  column->addWidget(control);
  if (titleLabel) *titleLabel = label;
  layout()->addWidget(box);
  return box;
}

QSlider* WornBar::slider(const QString& name, const QString& tip, int low, int high, int page, const QString& widest) {
  auto* slider = new QSlider(Qt::Horizontal, this);
  slider->setRange(low, high);
  slider->setSingleStep(1);
  slider->setPageStep(page);
  slider->setAccessibleName(name);
  slider->setToolTip(tip);
  slider->setMinimumWidth(fontMetrics().horizontalAdvance(widest));
  return slider;
}

QComboBox* WornBar::combo(const QString& name, const QString& tip, const QStringList& words) {
  auto* combo = new QComboBox(this);
  combo->addItems(words);
  combo->setMinimumHeight(30);
  combo->setAccessibleName(name);
  combo->setToolTip(tip);
  group(name, combo);
  return combo;
}

}  // namespace combdraft::desk

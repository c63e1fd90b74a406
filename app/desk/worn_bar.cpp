#include "app/desk/worn_bar.h"

#include <QSignalBlocker>
#include <QVBoxLayout>
#include <cmath>

#include "app/controls/flow_layout.h"
#include "app/controls/number_input.h"

namespace combdraft::desk {
namespace {

constexpr int kFarthestPart_mm = 60, kLatestWeek = 26;

const char* lightName(colour::Light light) {
  switch (light) {
    case colour::Light::Daylight: return QT_TR_NOOP("daylight");
    case colour::Light::Overcast: return QT_TR_NOOP("overcast");
    case colour::Light::WarmLamp: return QT_TR_NOOP("warm lamp");
    case colour::Light::Office: return QT_TR_NOOP("cool office light");
    case colour::Light::Incandescent: return QT_TR_NOOP("old light bulb");
  }
  return "";
}

}  // namespace

QString partText(double shift_mm) {
  const QString mm = controls::shownNumber(std::abs(shift_mm), 0);
  if (std::abs(shift_mm) < 0.5) return WornBar::tr("Part: usual place");
  return shift_mm > 0 ? WornBar::tr("Part: %1 mm to client's right").arg(mm)
                      : WornBar::tr("Part: %1 mm to client's left").arg(mm);
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

  worn_ = new controls::Segments(
      tr("How it's worn"),
      {{tr("Down"), tr("All hair hangs down"), {}},
       {tr("Half up"), tr("The upper hair is tied, the rest hangs"), {}},
       {tr("Tied back"), tr("All hair is tied back"), {}}},
      this);
  flow->addWidget(group(tr("How it's worn"), worn_));
  connect(worn_, &controls::Segments::chosen, this, [this](int index) {
    change([index](look::LookSettings& s) { s.worn.way = hair::kWornWays[static_cast<std::size_t>(index)]; });
  });

  part_ = new QSlider(Qt::Horizontal, this);
  part_->setRange(-kFarthestPart_mm, kFarthestPart_mm);
  part_->setSingleStep(1);
  part_->setPageStep(10);
  part_->setAccessibleName(tr("Part moved"));
  part_->setToolTip(tr("Wear the part farther to one side"));
  part_->setMinimumWidth(fontMetrics().horizontalAdvance(partText(-60)));
  flow->addWidget(group({}, part_, &partText_));
  connect(part_, &QSlider::valueChanged, this, [this](int mm) {
    change([mm](look::LookSettings& s) { s.worn.partShift_mm = mm; });
  });

  lifts_ = new controls::Segments(
      tr("If it lifts"),
      {{tr("Less"), tr("The look if the hair lightens only to the low end of the span in the plan"), {}},
       {tr("As planned"), tr("The look at the level in the plan; test a strand to know it"), {}},
       {tr("More"), tr("The look if the hair lightens to the high end of the span in the plan"), {}}},
      this);
  flow->addWidget(group(tr("If it lifts"), lifts_));
  connect(lifts_, &controls::Segments::chosen, this, [this](int index) {
    change([index](look::LookSettings& s) { s.lift = static_cast<look::Lift>(index); });
  });

  toner_ = new controls::Segments(tr("Toner"),
                                  {{tr("Before"), tr("Bare, before toner"), {}},
                                   {tr("After"), tr("After toner, as typed"), {}}},
                                  this);
  flow->addWidget(group(tr("Toner"), toner_));
  connect(toner_, &controls::Segments::chosen, this, [this](int index) {
    change([index](look::LookSettings& s) { s.toner = static_cast<look::Toner>(index); });
  });

  subject_ = new controls::Segments(tr("Hair"),
                                    {{tr("Today"), tr("The hair as it came in"), {}},
                                     {tr("Planned"), tr("The hair as planned"), {}}},
                                    this);
  flow->addWidget(group(tr("Hair"), subject_));
  connect(subject_, &controls::Segments::chosen, this, [this](int index) {
    change([index](look::LookSettings& s) { s.subject = static_cast<look::Subject>(index); });
  });

  weeks_ = new QSlider(Qt::Horizontal, this);
  weeks_->setRange(0, kLatestWeek);
  weeks_->setPageStep(4);
  weeks_->setAccessibleName(tr("Weeks later"));
  weeks_->setToolTip(tr("How it looks when it has grown"));
  weeks_->setMinimumWidth(fontMetrics().horizontalAdvance(weeksText(26)));
  flow->addWidget(group({}, weeks_, &weeksText_));
  connect(weeks_, &QSlider::valueChanged, this, [this](int weeks) {
    change([weeks](look::LookSettings& s) { s.weeks = weeks; });
  });

  light_ = new QComboBox(this);
  for (const colour::Light light : colour::kAllLights) light_->addItem(tr(lightName(light)));
  light_->setMinimumHeight(30);
  light_->setAccessibleName(tr("Light"));
  light_->setToolTip(tr("The light the hair is looked at in"));
  flow->addWidget(group(tr("Light"), light_));
  connect(light_, &QComboBox::activated, this, [this](int index) {
    change([index](look::LookSettings& s) {
      s.light = colour::kAllLights[static_cast<std::size_t>(index)];
    });
  });

  connect(&view_, &document::ViewState::changed, this, [this](document::ViewState::Aspects aspects) {
    if (aspects.testFlag(document::ViewState::Aspect::Look)) fill();
  });
  fill();
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
  const QSignalBlocker quietPart(part_), quietWeeks(weeks_), quietLight(light_);
  part_->setValue(static_cast<int>(std::lround(s.worn.partShift_mm)));
  part_->setEnabled(hair::showsPart(s.worn.way));
  partText_->setText(part_->isEnabled() ? partText(s.worn.partShift_mm) : tr("Part: not seen this way"));
  part_->setAccessibleDescription(partText_->text());
  weeks_->setValue(static_cast<int>(std::lround(s.weeks)));
  weeksText_->setText(weeksText(s.weeks));
  weeks_->setAccessibleDescription(weeksText_->text());
  for (std::size_t i = 0; i < colour::kAllLights.size(); ++i)
    if (colour::kAllLights[i] == s.light) light_->setCurrentIndex(static_cast<int>(i));
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
  return box;
}

}  // namespace combdraft::desk

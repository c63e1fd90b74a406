#include "app/cards/target_editor.h"

#include <QVBoxLayout>

#include "app/cards/card_parts.h"
#include "app/cards/target_words.h"
#include "engine/plan/choice_edits.h"
#include "engine/plan/plan_words.h"

namespace combdraft::cards {

TargetEditor::TargetEditor(document::DocumentController& controller, QWidget* parent)
    : QWidget(parent), controller_(controller) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(5);
  addHeading(column, tr("What is wanted"));
  addSoftText(column, tr("Aims of this choice, region by region. They stand beside the readings; leave empty what "
                         "does not matter."));
  QStringList regions;
  for (const std::string_view word : plan::targetRegions()) regions << regionTitle(word);
  which_ = addChoice(column, tr("Where"), regions);
  connect(which_, &QComboBox::currentIndexChanged, this, [this] {
    abandonTyping(this);
    fill();
  });
  const auto number = [&](const char* field, const QString& label, std::optional<double> plan::Target::*value) {
    controls::NumberFieldSpec spec = specOf(field, label, {});
    spec.mayBeEmpty = true;
    spec.emptyText = tr("any");
    auto* box = new controls::NumberField(spec, this);
    box->setObjectName(QLatin1String(field));
    column->addWidget(box);
    connect(box, &controls::NumberField::edited, this,
            [this, label, value](const std::optional<double>& typed, bool stepping) {
              if (!stepping) stepping_ = document::Gesture::begin();
              change(label.toLower(), [&](plan::Target& target) { target.*value = typed; },
                     stepping ? stepping_ : document::Gesture::none());
            });
    return box;
  };
  level_ = number("target.level", tr("Level"), &plan::Target::level);
  QStringList contrasts{tr("any")};
  for (const auto& entry : plan::words<plan::ContrastAim>()) contrasts << contrastName(entry.value);
  contrast_ = addChoice(column, tr("Contrast"), contrasts);
  connect(contrast_, &QComboBox::activated, this, [this](int row) {
    change(tr("contrast"), [row](plan::Target& target) {
      if (row > 0)
        target.contrast = static_cast<plan::ContrastAim>(row - 1);
      else
        target.contrast.reset();
    });
  });
  brightest_ = number("target.brightest", tr("Lightest allowed"), &plan::Target::brightest);
  darkest_ = number("target.darkest", tr("Darkest allowed"), &plan::Target::darkest);
  caution_ = addCaution(column);
  clear_ = new QPushButton(tr("No aim here"), this);
  clear_->setToolTip(tr("Take the aim for this region away"));
  column->addWidget(clear_, 0, Qt::AlignLeft);
  connect(clear_, &QPushButton::clicked, this,
          [this] { change(tr("aim"), [](plan::Target& target) { target = {}; }); });
  all_ = addSoftText(column, {});
  all_->setObjectName(QStringLiteral("aims"));
  connect(&controller_, &document::DocumentController::changed, this, &TargetEditor::fill);
  fill();
}

std::string TargetEditor::region() const {
  return std::string(plan::targetRegions()[static_cast<std::size_t>(which_->currentIndex())]);
}

void TargetEditor::turnTo(int region) {
  which_->setCurrentIndex(region);
  level_->edit()->setFocus();
  level_->edit()->selectAll();
}

void TargetEditor::change(const QString& what, const std::function<void(plan::Target&)>& change,
                          document::Gesture gesture) {
  const plan::Plan& before = controller_.document();
  const plan::ItemId choice = before.info().activeChoice;
  plan::Target target = targetOf(before, choice, region());
  change(target);
  controller_.edit(plan::applied(before, plan::setTarget(before, choice, region(), target)),
                   tr("Aim: %1, %2").arg(regionTitle(region()).toLower(), what), gesture);
}

void TargetEditor::fill() {
  const plan::Plan& plan = controller_.plan();
  const plan::Target target = targetOf(plan, {}, region());
  level_->setValue(target.level);
  brightest_->setValue(target.brightest);
  darkest_->setValue(target.darkest);
  contrast_->setCurrentIndex(target.contrast ? 1 + static_cast<int>(*target.contrast) : 0);
  clear_->setEnabled(!(target == plan::Target{}));
  const double darkest = target.darkest.value_or(0), brightest = target.brightest.value_or(99);
  const double level = target.level.value_or(darkest);
  showLines(caution_, darkest <= level && level <= brightest
                          ? QStringList()
                          : QStringList{tr("This contradicts itself: the level must lie between the darkest and the "
                                           "lightest allowed.")});
  QStringList lines;
  for (const std::string_view word : plan::targetRegions())
    if (const QString wanted = wantedText(targetOf(plan, {}, word)); !wanted.isEmpty())
      lines << tr("%1: %2").arg(regionTitle(word), wanted);
  all_->setText(lines.isEmpty() ? tr("No aim yet.") : lines.join(u'\n'));
}

}  // namespace combdraft::cards

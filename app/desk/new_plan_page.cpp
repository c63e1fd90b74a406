#include "app/desk/new_plan_page.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/controls/wrapped_label.h"
#include "engine/plan/field_info.h"

namespace combdraft::desk {
namespace {

controls::NumberFieldSpec levelSpec(const QString& label) {
  const plan::FieldInfo& info = plan::fieldInfo("hair.level");
  controls::NumberFieldSpec spec;
  spec.label = label;
  spec.low = info.low;
  spec.high = info.high;
  spec.step = 0.5;
  spec.mayBeEmpty = true;
  return spec;
}

template <class E>
std::optional<E> chosen(const controls::Segments* segments) {
  return segments->current() < 0 ? std::nullopt : std::optional(static_cast<E>(segments->current()));
}

}  // namespace

NewPlanPage::NewPlanPage(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("page"));
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(0, 0, 0, 0);
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setAccessibleName(tr("Questions for a new plan"));
  outer->addWidget(scroll, 1);
  auto* content = new QWidget(scroll);
  scroll->setWidget(content);
  auto* centre = new QHBoxLayout(content);
  centre->setContentsMargins(24, 16, 24, 16);
  centre->addStretch(1);
  auto* columnWidget = new QWidget(content);
  columnWidget->setMaximumWidth(fontMetrics().averageCharWidth() * 150);
  centre->addWidget(columnWidget, 100);
  centre->addStretch(1);
  auto* column = new QVBoxLayout(columnWidget);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(12);

  auto* title = new QLabel(tr("New plan"), columnWidget);
  QFont f = title->font();
  f.setPointSizeF(f.pointSizeF() * 1.7);
  f.setWeight(QFont::DemiBold);
  title->setFont(f);
  column->addWidget(title);
  auto* intro = new controls::WrappedLabel(tr("Eight touches to the first look. Skip what you don't know: the usual "
                              "value stands in, and everything can be typed exactly later."),
                           columnWidget);
  intro->setProperty("soft", true);
  column->addWidget(intro);

  size_ = choices(tr("Head size"), {tr("Small"), tr("Medium"), tr("Large")});
  controls::NumberFieldSpec tape;
  const plan::FieldInfo& round = plan::fieldInfo("head.circumference_mm");
  tape.label = tr("or the tape measure round it");
  tape.unit = QStringLiteral("mm");
  tape.low = round.low;
  tape.high = round.high;
  tape.mayBeEmpty = true;
  tape.decimals = 0;
  tape.tip = tr("Round the head above the ears and over the widest place behind");
  tape_ = new controls::NumberField(tape, this);
  curl_ = choices(tr("How it falls"), {tr("Straight"), tr("Wavy"), tr("Curly"), tr("Tight curls"), tr("Coils")});
  strand_ = choices(tr("One hair is"), {tr("Fine"), tr("Medium"), tr("Coarse")});
  amount_ = choices(tr("How much hair"), {tr("Little"), tr("Medium"), tr("A lot")});
  length_ = choices(tr("Length"), {tr("Short"), tr("Chin"), tr("Shoulder"), tr("Long"), tr("Very long")});
  part_ = choices(tr("Usual part"), {tr("None"), tr("Client's left"), tr("Middle"), tr("Client's right")});
  swirl_ = choices(tr("Where it swirls"), {tr("Client's left"), tr("Middle"), tr("Client's right"), tr("Two swirls")});
  auto* levels = new QWidget(this);
  auto* levelRow = new QHBoxLayout(levels);
  levelRow->setContentsMargins(0, 0, 0, 0);
  levelRow->setSpacing(14);
  root_ = new controls::NumberField(levelSpec(tr("Root")), levels);
  middle_ = new controls::NumberField(levelSpec(tr("Middle")), levels);
  end_ = new controls::NumberField(levelSpec(tr("Ends")), levels);
  for (auto* field : {root_, middle_, end_}) levelRow->addWidget(field, 1);

  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(22);
  grid->setVerticalSpacing(12);
  grid->setColumnStretch(0, 1);
  grid->setColumnStretch(1, 1);
  column->addLayout(grid);
  grid->addWidget(row(1, tr("How large is the head?"), size_, tape_), 0, 0);
  grid->addWidget(row(2, tr("How does the hair fall?"), curl_), 1, 0);
  grid->addWidget(row(3, tr("How thick is one hair?"), strand_), 2, 0);
  grid->addWidget(row(4, tr("How much hair is there?"), amount_), 3, 0);
  grid->addWidget(row(5, tr("How long is it?"), length_), 0, 1);
  grid->addWidget(row(6, tr("Which level is it? 1 darkest, 10 lightest (up to 12)"), levels), 1, 1);
  grid->addWidget(row(7, tr("Where is the usual part?"), part_), 2, 1);
  grid->addWidget(row(8, tr("Where does it swirl at the crown?"), swirl_), 3, 1);

  auto* caution = new controls::WrappedLabel(
      QStringLiteral("\u26A0 ") +
          tr("Before any colour work, ask and look: how old is the client (product labels and local "
             "rules set an age), was there ever a reaction to colour or a black temporary tattoo, "
             "is the scalp sore, broken or irritated, what has the hair been through (henna, box colour, "
             "earlier lightening, metallic salts), which tests are due by the maker's directions? A "
             "passed test is no guarantee. In doubt do not go on; refer to a doctor. The maker's "
             "directions, local rules and licence, and the insurer come before anything shown here. None of these answers is kept in the plan."),
      columnWidget);
  caution->setObjectName(QStringLiteral("newPlanCaution"));
  caution->setProperty("caution", true);
  column->addWidget(caution);

  problem_ = new controls::WrappedLabel(columnWidget);
  problem_->setProperty("caution", true);
  problem_->hide();
  column->addWidget(problem_);

  auto* buttons = new QHBoxLayout;
  auto* cancel = new QPushButton(tr("Back"), columnWidget);
  auto* show = new QPushButton(tr("Show the look"), columnWidget);
  show->setProperty("primary", true);
  for (auto* button : {cancel, show}) {
    button->setMinimumHeight(38);
    button->setMinimumWidth(fontMetrics().averageCharWidth() * 18);
    button->setAccessibleName(button->text());
  }
  buttons->addWidget(cancel);
  buttons->addStretch(1);
  buttons->addWidget(show);
  column->addLayout(buttons);
  column->addStretch(1);
  connect(show, &QPushButton::clicked, this, [this] {
    // What was typed and refused is put right or emptied first.
    for (auto* field : findChildren<controls::NumberField*>()) {
      if (field->problem().isEmpty()) continue;
      field->edit()->setFocus();
      return showProblem(tr("%1: %2").arg(field->spec().label, field->problem()));
    }
    Q_EMIT finished();
  });
  connect(cancel, &QPushButton::clicked, this, &NewPlanPage::cancelled);
  // A tape measure and a size say the same thing: the last one counts.
  connect(tape_, &controls::NumberField::edited, this, [this](const std::optional<double>& value) {
    if (value) size_->setCurrent(-1);
  });
  connect(size_, &controls::Segments::chosen, this, [this] { tape_->setValue(std::nullopt); });
}

controls::Segments* NewPlanPage::choices(const QString& name, const QStringList& words) {
  std::vector<controls::Segment> segments;
  for (const QString& word : words) segments.push_back({word, {}, {}});
  auto* made = new controls::Segments(name, segments, this);
  questions_.push_back(made);
  return made;
}

QWidget* NewPlanPage::row(int number, const QString& question, QWidget* answer, QWidget* more) {
  auto* card = new QFrame(this);
  card->setObjectName(QStringLiteral("card"));
  auto* column = new QVBoxLayout(card);
  column->setContentsMargins(14, 10, 14, 12);
  column->setSpacing(7);
  auto* label = new controls::WrappedLabel(QStringLiteral("%1   %2").arg(number).arg(question), card);
  QFont f = label->font();
  f.setWeight(QFont::DemiBold);
  label->setFont(f);
  column->addWidget(label);
  column->addWidget(answer);
  if (more) column->addWidget(more);
  column->addStretch(1);
  return card;
}

void NewPlanPage::clear() {
  for (controls::Segments* question : questions_) question->setCurrent(-1);
  for (controls::NumberField* field : {tape_, root_, middle_, end_}) field->setValue(std::nullopt);
  problem_->hide();
}

NewPlanAnswers NewPlanPage::answers() const {
  static constexpr plan::CurlClass kCurls[] = {plan::CurlClass::Straight, plan::CurlClass::Wave,
                                               plan::CurlClass::Curl, plan::CurlClass::TightCurl,
                                               plan::CurlClass::Coil};
  NewPlanAnswers answers;
  answers.size = chosen<head::HeadSize>(size_);
  answers.circumference_mm = tape_->value();
  if (curl_->current() >= 0) answers.curl = kCurls[curl_->current()];
  answers.strand = chosen<Strand>(strand_);
  answers.amount = chosen<Amount>(amount_);
  answers.length = chosen<Length>(length_);
  answers.rootLevel = root_->value();
  answers.middleLevel = middle_->value();
  answers.endLevel = end_->value();
  answers.part = chosen<cards::PartPlace>(part_);
  answers.swirl = chosen<cards::WhorlPlace>(swirl_);
  return answers;
}

void NewPlanPage::showProblem(const QString& problem) {
  problem_->setText(QStringLiteral("\u26A0 ") + problem);
  problem_->show();
}

}  // namespace combdraft::desk

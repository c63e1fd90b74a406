#include "app/cards/consultation_questions.h"

#include <QDate>
#include <QPushButton>

#include "app/cards/card_parts.h"
#include "app/cards/test_list.h"
#include "app/words/date_words.h"
#include "app/words/typed_text.h"

namespace combdraft::cards {
namespace {

using store::Answer;

QVBoxLayout* columnOf(QWidget* widget) {
  auto* column = new QVBoxLayout(widget);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(5);
  return column;
}

// In the order of the answers.
std::vector<controls::Segment> answerWords() {
  return {{ConsultationQuestions::tr("Not asked"), {}, {}},
          {ConsultationQuestions::tr("No"), {}, {}},
          {ConsultationQuestions::tr("Yes"), {}, {}},
          {ConsultationQuestions::tr("Doesn't know"), ConsultationQuestions::tr("Asked, and the client does not know: looked at as if it were a yes"), {}}};
}

}  // namespace

ConsultationQuestions::ConsultationQuestions(QWidget* parent) : ConsultationPage(parent) {
  QVBoxLayout* column = columnOf(this);
  addHeading(column, tr("Consent"));
  buildConsent(column);
  health_ = new QWidget(this);
  QVBoxLayout* health = columnOf(health_);
  buildHealth(health);
  tests_ = new TestList(health_);
  health->addWidget(tests_);
  column->addWidget(health_);
  buildHistory(column);
  column->addStretch(1);
}

void ConsultationQuestions::buildConsent(QVBoxLayout* column) {
  asking_ = new QWidget(this);
  QVBoxLayout* fields = columnOf(asking_);
  addSoftText(fields, tr("Health answers, tests and photos are kept only when the client agrees. Say what for, and where they are kept; "
                         "the client can see them, have a copy and take consent back at any time."));
  purpose_ = new controls::TextField({tr("Kept for"), tr("type the purpose"), tr("What you told the client it is kept for"), kClientLineLetters}, asking_);
  date_ = new controls::TextField({tr("Agreed on"), tr("YYYY-MM-DD"), tr("The day the client agreed; empty takes today"), 10}, asking_);
  date_->setCheck(controls::dateProblem);
  fields->addWidget(purpose_);
  fields->addWidget(date_);
  wanting_ = addCaution(fields);
  agree_ = new QPushButton(tr("The client agrees"), asking_);
  agree_->setMinimumHeight(32);
  fields->addWidget(agree_, 0, Qt::AlignLeft);
  connect(agree_, &QPushButton::clicked, this, &ConsultationQuestions::agree);
  column->addWidget(asking_);

  agreed_ = new QWidget(this);
  QVBoxLayout* given = columnOf(agreed_);
  what_ = addSoftText(given, {});
  what_->setObjectName(QStringLiteral("consent"));
  takeBack_ = new ConfirmRow(tr("Consent was taken back"),
                             tr("Health answers, tests and photos are deleted here; backups are not reached. Name, contact, wishes, history, prices, notes and "
                                "visits stay: look whether health words stand in the notes."),
                             tr("Take them away"), agreed_);
  given->addWidget(takeBack_);
  connect(takeBack_, &ConfirmRow::confirmed, this, &ConsultationQuestions::takeConsentBack);
  stuck_ = addCaution(given);
  column->addWidget(agreed_);
}

void ConsultationQuestions::takeConsentBack() {
  if (!keeper()) return;
  const std::size_t stuck = keeper()->takeConsentBack();
  QStringList lines;
  if (stuck == 1)
    lines << tr("1 photo could not be deleted; close what shows it and try again. Until then the consent stays written down.");
  else if (stuck > 1)
    lines << tr("%1 photos could not be deleted; close what shows them and try again. Until then the consent stays written down.").arg(stuck);
  showLines(stuck_, lines);
}

void ConsultationQuestions::agree() {
  const QString purpose = words::oneLine(purpose_->edit()->text()).simplified();
  QString date = date_->edit()->text().trimmed();
  if (purpose.isEmpty()) {
    showLines(wanting_, {tr("Type what it is kept for, as you told the client.")});
    purpose_->setFocus();
    return;
  }
  if (!controls::dateProblem(date).isEmpty()) {
    date_->setFocus();
    return;
  }
  const QString day = date.isEmpty() ? QDate::currentDate().toString(Qt::ISODate) : date;
  change([&](ClientFile& file) { file.consent = store::Consent{purpose.toStdString(), day.toStdString(), {}}; });
}

void ConsultationQuestions::buildHealth(QVBoxLayout* column) {
  const std::vector<controls::Segment> answers = answerWords();
  addChosen<Answer>(column, tr("Of the age that label, local rules and insurer ask for"), answers,
                    [](ClientFile& f) -> Answer& { return f.health.ageReached; });
  addChosen<Answer>(column, tr("Has reacted before, also to a temporary black tattoo"), answers, [](ClientFile& f) -> Answer& { return f.health.reacted; });
  addText(column, tr("To what, and how"), tr("in the client's words; also whether there ever was a temporary black tattoo, and short breath"), 2, [](ClientFile& f) -> std::string& { return f.health.reactions; });
  addChosen<store::ScalpFound>(column, tr("Scalp"), {{tr("Not looked"), {}, {}}, {tr("Nothing"), {}, {}}, {tr("Something"), {}, {}}, {tr("Unsure"), tr("Looked at, and you cannot tell"), {}}},
                               [](ClientFile& f) -> store::ScalpFound& { return f.health.scalp; });
  addText(column, tr("What was seen, and where"), tr("what you see, without naming it"), 2,
          [](ClientFile& f) -> std::string& { return f.health.scalpWords; });
  addDate(column, tr("Asked on"), tr("The day of these answers; they change"), [](ClientFile& f) -> std::string& { return f.health.asked; });
}

void ConsultationQuestions::buildHistory(QVBoxLayout* column) {
  addHeading(column, tr("What the hair has been through"));
  const std::vector<controls::Segment> answers = answerWords();
  addChosen<Answer>(column, tr("Dye"), answers, [](ClientFile& f) -> Answer& { return f.history.dye; });
  addChosen<Answer>(column, tr("Henna"), answers, [](ClientFile& f) -> Answer& { return f.history.henna; });
  addChosen<Answer>(column, tr("Metallic colour"), answers, [](ClientFile& f) -> Answer& { return f.history.metallic; });
  addChosen<Answer>(column, tr("Box colour"), answers, [](ClientFile& f) -> Answer& { return f.history.boxColour; });
  addLine(column, {tr("Last lightening"), tr("not asked"), tr("When, and where on the head"), 50},
          [](ClientFile& f) -> std::string& { return f.history.lastLightening; });
  addText(column, tr("What else"), tr("relaxer, perm, sea and pool, care at home"), 2,
          [](ClientFile& f) -> std::string& { return f.history.words; });
}

void ConsultationQuestions::setQuestionsKeeper(store::ClientKeeper* keeper) {
  if (keeper != this->keeper()) {
    for (controls::TextField* field : {purpose_, date_}) {
      field->abandonTyping();
      field->setText({});
    }
    takeBack_->calm();
    showLines(stuck_, {});
  }
  tests_->setKeeper(keeper);
  setKeeper(keeper);
}

void ConsultationQuestions::fill() {
  ConsultationPage::fill();
  tests_->fill();
  const bool has = store::hasConsent(file());
  asking_->setVisible(!has);
  agreed_->setVisible(has);
  health_->setVisible(has);
  if (file().photos.empty()) showLines(stuck_, {});
  if (!has) return;
  showLines(wanting_, {});
  for (controls::TextField* field : {purpose_, date_}) {
    field->abandonTyping();
    field->setText({});
  }
  what_->setText(tr("Agreed on %1, kept for: %2").arg(words::dateText(file().consent->date), QString::fromStdString(file().consent->purpose)));
}

}  // namespace combdraft::cards

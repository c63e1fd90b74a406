#include "app/cards/consultation_card.h"

#include <QVBoxLayout>

#include "app/cards/agreed_line.h"
#include "app/cards/card_parts.h"
#include "app/cards/consultation_client.h"
#include "app/cards/consultation_questions.h"
#include "app/cards/consultation_visits.h"
#include "app/cards/consultation_wishes.h"
#include "app/cards/consultation_words.h"
#include "app/cards/photo_strip.h"
#include "app/cards/test_list.h"

namespace combdraft::cards {

ConsultationCard::ConsultationCard(document::DocumentController& controller, QWidget* parent) : QWidget(parent), controller_(controller) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 12);
  column->setSpacing(5);
  addTitle(column, tr("Consultation"));
  trouble_ = addCaution(column);
  asks_ = addCaution(column);
  asks_->setObjectName(QStringLiteral("asks"));
  agreed_ = addSoftText(column, {});
  agreed_->setObjectName(QStringLiteral("agreed"));
  agreed_->hide();
  tabs_ = new controls::Segments(tr("Page of the consultation"),
                                 {{tr("Wishes"), tr("What the client wants, photos, how it is worn, what it costs"), {}},
                                  {tr("Questions"), tr("Consent, age, past reactions, scalp, history, tests"), {}},
                                  {tr("Visits"), tr("When the client was here with which plan; notes"), {}},
                                  {tr("Client"), tr("Name or mark, where it is kept, hand over, delete"), {}}},
                                 this);
  column->addWidget(tabs_);
  wishes_ = new ConsultationWishes(controller, this);
  questions_ = new ConsultationQuestions(this);
  visits_ = new ConsultationVisits(controller, this);
  client_ = new ConsultationClient(this);
  for (QWidget* page : std::initializer_list<QWidget*>{wishes_, questions_, visits_, client_}) column->addWidget(page, 1);
  connect(tabs_, &controls::Segments::chosen, this, [this](int i) { turnTo(static_cast<Page>(i)); });
  connect(wishes_->photos(), &PhotoStrip::photosWanted, this, &ConsultationCard::photosWanted);
  connect(wishes_->photos(), &PhotoStrip::consentWanted, this, [this] {
    turnTo(Page::Questions);
    questions_->purpose()->setFocus();
  });
  connect(client_, &ConsultationClient::clientChosen, this, &ConsultationCard::clientChosen);
  connect(client_, &ConsultationClient::exportWanted, this, &ConsultationCard::exportWanted);
  connect(client_, &ConsultationClient::removeWanted, this, &ConsultationCard::removeWanted);
  connect(client_, &ConsultationClient::removeWithPlanWanted, this, &ConsultationCard::removeWithPlanWanted);
  connect(&controller_, &document::DocumentController::changed, this, [this](const document::DocumentChange& change) {
    if (change.kind != document::DocumentChange::Kind::Tentative) fillAgreed();
  });
  turnTo(Page::Wishes);
  setKeeper(nullptr);
}

void ConsultationCard::turnTo(Page page) {
  tabs_->setCurrent(static_cast<int>(page));
  wishes_->setVisible(page == Page::Wishes);
  questions_->setVisible(page == Page::Questions);
  visits_->setVisible(page == Page::Visits);
  client_->setVisible(page == Page::Client);
}

ConsultationCard::Page ConsultationCard::current() const { return static_cast<Page>(tabs_->current()); }

void ConsultationCard::setKeeper(std::shared_ptr<store::ClientKeeper> keeper) {
  if (keeper_) disconnect(keeper_.get(), nullptr, this, nullptr);
  // The pages let go of the one before it goes.
  const std::shared_ptr<store::ClientKeeper> before = std::exchange(keeper_, std::move(keeper));
  wishes_->setWishesKeeper(keeper_.get());
  questions_->setQuestionsKeeper(keeper_.get());
  visits_->setKeeper(keeper_.get());
  client_->setKeeper(keeper_.get());
  if (keeper_) connect(keeper_.get(), &store::ClientKeeper::changed, this, &ConsultationCard::fill);
  fill();
}

void ConsultationCard::setPolicy(const store::ClientPolicy& policy) {
  policy_ = policy;
  questions_->tests()->setPolicy(policy);
  fill();
}

void ConsultationCard::setRates(const store::Rates& rates) { wishes_->setRates(rates); }

void ConsultationCard::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  fillAgreed();
}

// The frozen placement is looked through once for each agreement, and only for eyes that see it.
void ConsultationCard::fillAgreed() {
  if (!isVisible()) return;
  const std::string& json = controller_.document().info().agreedJson;
  if (json != agreedJson_) {
    agreedJson_ = json;
    agreement_.reset();
    openFindings_.reset();
    if (Result<plan::Agreement> read = plan::readAgreement(json); read) {  // "" is an error too
      agreement_ = std::move(read).value();
      openFindings_ = openFindings(*agreement_);
    }
  }
  const bool mayKnow = keeper_ && store::hasConsent(keeper_->file());
  agreed_->setText(json.empty()  ? QString()
                   : agreement_ ? agreedLine(*agreement_, openFindings_, mayKnow ? &keeper_->file() : nullptr, policy_)
                                : tr("What was agreed stands in the plan and cannot be read."));
  agreed_->setVisible(!json.empty());
}

void ConsultationCard::fill() {
  showLines(trouble_, keeper_ && !keeper_->trouble().isEmpty() ? QStringList{keeper_->trouble()} : QStringList());
  QStringList lines;
  if (keeper_ && store::hasConsent(keeper_->file())) {
    for (const AskLine& line : asksOf(keeper_->file(), policy_, QDate::currentDate())) lines << askText(line);
  } else {
    lines << firstQuestions();
    if (keeper_)
      if (const auto metal = metalLine(keeper_->file())) lines << askText(*metal);
  }
  showLines(asks_, lines);
  wishes_->fill();
  questions_->fill();
  visits_->fill();
  client_->fill();
  fillAgreed();
}

}  // namespace combdraft::cards

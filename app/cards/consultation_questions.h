#pragma once
// Consent first, then the questions that are kept only with it: age, past reactions,
// scalp; what the hair has been through; tests.
#include "app/cards/confirm_row.h"
#include "app/cards/consultation_page.h"

class QPushButton;

namespace combdraft::cards {

class TestList;

class ConsultationQuestions : public ConsultationPage {
  Q_OBJECT

 public:
  explicit ConsultationQuestions(QWidget* parent);

  void setQuestionsKeeper(store::ClientKeeper* keeper);
  void fill() override;
  TestList* tests() { return tests_; }
  controls::TextField* purpose() { return purpose_; }

 private:
  void buildConsent(QVBoxLayout* column);
  void buildHealth(QVBoxLayout* column);
  void buildHistory(QVBoxLayout* column);
  void agree();
  void takeConsentBack();

  QWidget *asking_, *agreed_, *health_;
  controls::TextField *purpose_, *date_;
  QPushButton* agree_;
  QLabel *what_, *wanting_, *stuck_;
  ConfirmRow* takeBack_;
  TestList* tests_;
};

}  // namespace combdraft::cards

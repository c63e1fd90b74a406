#pragma once
// The visits of one client, whatever plan each had, and notes.
#include "app/cards/confirm_row.h"
#include "app/cards/consultation_page.h"
#include "app/document/document_controller.h"

class QListWidget;
class QPushButton;

namespace combdraft::cards {

class ConsultationVisits : public ConsultationPage {
  Q_OBJECT

 public:
  ConsultationVisits(document::DocumentController& controller, QWidget* parent);

  void fill() override;
  QListWidget* list() { return list_; }

 private:
  void add();
  void changeShown(const std::function<void(store::Visit&)>& change);

  document::DocumentController& controller_;
  std::size_t shown_ = 0;
  QListWidget* list_;
  QPushButton* add_;
  QLabel *empty_, *which_;
  QWidget* detail_;
  controls::TextField* date_;
  controls::TextBox* words_;
  ConfirmRow* remove_;
};

/// A visit today with the plan that is open.
store::Visit visitToday(const document::DocumentController& controller);

}  // namespace combdraft::cards

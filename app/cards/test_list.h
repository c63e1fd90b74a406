#pragma once
// The tests of a client: what was tested when, what came of it in the user's words, and
// when one is due by what was typed or by the user's policy. How a test is made is not
// told here.
#include "app/cards/confirm_row.h"
#include "app/cards/consultation_page.h"

class QComboBox;
class QListWidget;
class QPushButton;

namespace combdraft::cards {

class TestList : public ConsultationPage {
  Q_OBJECT

 public:
  explicit TestList(QWidget* parent);

  void fill() override;
  void setPolicy(const store::ClientPolicy& policy);
  QListWidget* list() { return list_; }

 private:
  void add();
  store::ClientTest* shownIn(ClientFile& file);
  void changeShown(const std::function<void(store::ClientTest&)>& change);

  store::ClientPolicy policy_;
  std::size_t shown_ = 0;
  QComboBox* kind_;
  QPushButton* add_;
  QListWidget* list_;
  QLabel *empty_, *due_;
  QWidget* detail_;
  controls::TextField *date_, *dueDate_;
  controls::TextBox* result_;
  ConfirmRow* remove_;
};

}  // namespace combdraft::cards

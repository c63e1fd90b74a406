#pragma once
// Who it is, as far as that was typed; where it is kept; handing it over and deleting it.
#include "app/cards/confirm_row.h"
#include "app/cards/consultation_page.h"

class QListWidget;
class QPushButton;

namespace combdraft::cards {

class ConsultationClient : public ConsultationPage {
  Q_OBJECT

 public:
  explicit ConsultationClient(QWidget* parent);

  void fill() override;
  QPushButton* look() { return look_; }
  QListWidget* others() { return others_; }
  ConfirmRow* remove() { return remove_; }
  ConfirmRow* removeWithPlan() { return removeWithPlan_; }

 Q_SIGNALS:
  /// The plan belongs to that client, who was here before.
  void clientChosen(quint64 number);
  void exportWanted();
  void removeWanted();
  void removeWithPlanWanted();

 private:
  void buildOther(QVBoxLayout* column);
  void listOthers();

  QWidget* other_;
  QPushButton *look_, *choose_, *export_;
  QListWidget* others_;
  QLabel *none_, *since_;
  ConfirmRow *remove_, *removeWithPlan_;
};

/// What a list calls a client: the name or mark, or since when without one.
QString clientTitle(const store::ClientFile& file);

}  // namespace combdraft::cards

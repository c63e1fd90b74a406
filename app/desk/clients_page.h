#pragma once
// All clients that are kept, those over the user's own time first, to decide about one
// by one. Shows names, so it is opened on purpose only. Nothing goes by itself.
#include <QWidget>
#include <vector>

#include "app/store/client_folder.h"

class QLabel;
class QListWidget;
class QPushButton;

namespace combdraft::cards {
class ConfirmRow;
}

namespace combdraft::desk {

class ClientsPage : public QWidget {
  Q_OBJECT

 public:
  explicit ClientsPage(QWidget* parent = nullptr);

  void fill(std::vector<store::ClientEntry> clients, const store::ClientPolicy& policy);
  /// Takes the names off the page.
  void clear();
  QListWidget* list() { return list_; }
  QPushButton* keepButton() { return keep_; }
  QPushButton* handOverButton() { return handOver_; }
  cards::ConfirmRow* removeRow() { return remove_; }

 Q_SIGNALS:
  void done();
  void keepWanted(quint64 number);
  void handOverWanted(quint64 number);
  void removeWanted(quint64 number);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  quint64 chosen() const;
  void chosenChanged();

  std::vector<store::ClientEntry> clients_;
  QLabel *what_, *trouble_;
  QListWidget* list_;
  QPushButton *keep_, *handOver_;
  cards::ConfirmRow* remove_;
};

}  // namespace combdraft::desk

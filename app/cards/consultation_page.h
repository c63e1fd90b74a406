#pragma once
// A page of the consultation card: fields that are bound to one value each of the
// client that is open. A page shows nothing of its own and keeps nothing.
#include <QVBoxLayout>
#include <QWidget>
#include <functional>
#include <vector>

#include "app/controls/segments.h"
#include "app/controls/text_box.h"
#include "app/controls/text_field.h"
#include "app/store/client_keeper.h"

namespace combdraft::cards {

class ConsultationPage : public QWidget {
  Q_OBJECT

 public:
  explicit ConsultationPage(QWidget* parent);

  /// Null = no client. What was typed and not taken is dropped when it is another.
  void setKeeper(store::ClientKeeper* keeper);
  /// Shows what is kept now.
  virtual void fill();

 protected:
  using ClientFile = store::ClientFile;
  using Text = std::function<std::string&(ClientFile&)>;

  controls::TextField* addLine(QVBoxLayout* column, controls::TextFieldSpec spec, Text at);
  controls::TextField* addDate(QVBoxLayout* column, const QString& label, const QString& tip, Text at);
  controls::TextBox* addText(QVBoxLayout* column, const QString& label, const QString& emptyText, int lines, Text at);
  /// A heading and a row of buttons, one per value of the enum in its order.
  template <class E>
  controls::Segments* addChosen(QVBoxLayout* column, const QString& label, const std::vector<controls::Segment>& words,
                                std::function<E&(ClientFile&)> at) {
    auto* row = addRow(column, label, words);
    connect(row, &controls::Segments::chosen, this,
            [this, at](int i) { change([&](ClientFile& file) { at(file) = static_cast<E>(i); }); });
    fills_.push_back([row, at](ClientFile& file) { row->setCurrent(static_cast<int>(at(file))); });
    return row;
  }

  store::ClientKeeper* keeper() { return keeper_; }
  void change(const std::function<void(ClientFile&)>& change);
  /// What is kept; of no client, an empty one.
  const ClientFile& file() const;

 private:
  controls::Segments* addRow(QVBoxLayout* column, const QString& label, const std::vector<controls::Segment>& words);

  store::ClientKeeper* keeper_ = nullptr;
  std::vector<std::function<void(ClientFile&)>> fills_;
};

/// The longest line that is kept, whatever letters it has.
inline constexpr int kClientLineLetters = 50;

}  // namespace combdraft::cards

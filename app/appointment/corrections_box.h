#pragma once
// Too striped, too light, too cool: depth put back by what the user types. Pieces
// deepened, a root shadow, pieces left out next time; each one undo entry.
#include <QComboBox>
#include <QListWidget>
#include <QPushButton>
#include <QWidget>

#include "app/appointment/finish_field.h"
#include "app/document/document_controller.h"

class QVBoxLayout;

namespace combdraft::appointment {

class CorrectionsBox : public QWidget {
  Q_OBJECT

 public:
  explicit CorrectionsBox(document::DocumentController& controller, QWidget* parent = nullptr);

  void fill();
  QListWidget* pieces() { return pieces_; }
  FinishField* deepenTo() { return deepenTo_; }
  QPushButton* deepen() { return deepen_; }
  QPushButton* leaveOut() { return leaveOut_; }
  QComboBox* shadowZone() { return zone_; }
  FinishField* shadowColour() { return shadow_; }
  controls::NumberField* shadowLength() { return length_; }
  controls::NumberField* shadowBlend() { return blend_; }
  controls::NumberField* shadowCover() { return cover_; }
  QPushButton* addShadow() { return addShadow_; }

 Q_SIGNALS:
  /// What was made of the plan, in a sentence.
  void made(const QString& text);

 private:
  void buildPieces(QVBoxLayout* column);
  void buildShadow(QVBoxLayout* column);
  void enable();
  std::vector<plan::ItemId> chosen() const;
  void deepenChosen();
  void leaveOutChosen();
  void addRootShadow();

  document::DocumentController& controller_;
  QListWidget* pieces_;
  FinishField *deepenTo_, *shadow_;
  QPushButton *deepen_, *leaveOut_, *addShadow_;
  QComboBox* zone_;
  controls::NumberField *length_, *blend_, *cover_;
};

}  // namespace combdraft::appointment

#include "app/cards/consultation_page.h"

#include "app/cards/card_parts.h"
#include "engine/plan/field_info.h"

namespace combdraft::cards {

ConsultationPage::ConsultationPage(QWidget* parent) : QWidget(parent) {}

void ConsultationPage::setKeeper(store::ClientKeeper* keeper) {
  if (keeper != keeper_) abandonTyping(this);
  keeper_ = keeper;
  setEnabled(keeper_ && keeper_->mayEdit());
  fill();
}

const store::ClientFile& ConsultationPage::file() const {
  static const ClientFile kNone;
  return keeper_ ? keeper_->file() : kNone;
}

void ConsultationPage::fill() {
  ClientFile copy = file();
  for (const auto& fill : fills_) fill(copy);
}

void ConsultationPage::change(const std::function<void(ClientFile&)>& change) {
  if (keeper_) keeper_->edit(change);
}

controls::TextField* ConsultationPage::addLine(QVBoxLayout* column, controls::TextFieldSpec spec, Text at) {
  spec.maxLength = std::min(spec.maxLength, kClientLineLetters);
  auto* field = new controls::TextField(std::move(spec), column->parentWidget());
  column->addWidget(field);
  connect(field, &controls::TextField::edited, this,
          [this, at](const QString& text) { change([&](ClientFile& file) { at(file) = text.toStdString(); }); });
  fills_.push_back([field, at](ClientFile& file) { field->setText(QString::fromStdString(at(file))); });
  return field;
}

controls::TextField* ConsultationPage::addDate(QVBoxLayout* column, const QString& label, const QString& tip, Text at) {
  controls::TextField* field = addLine(column, {label, tr("YYYY-MM-DD"), tip, 10}, std::move(at));
  field->setCheck(controls::dateProblem);
  return field;
}

controls::TextBox* ConsultationPage::addText(QVBoxLayout* column, const QString& label, const QString& emptyText, int lines, Text at) {
  auto* box = new controls::TextBox(label, emptyText, lines, static_cast<qsizetype>(plan::limits::kTextBytes), column->parentWidget());
  column->addWidget(box);
  connect(box, &controls::TextBox::edited, this,
          [this, at](const QString& text, bool) { change([&](ClientFile& file) { at(file) = text.toStdString(); }); });
  fills_.push_back([box, at](ClientFile& file) { box->setText(QString::fromStdString(at(file))); });
  return box;
}

controls::Segments* ConsultationPage::addRow(QVBoxLayout* column, const QString& label, const std::vector<controls::Segment>& words) {
  addHeading(column, label);
  auto* row = new controls::Segments(label, words, column->parentWidget());
  column->addWidget(row);
  return row;
}

}  // namespace combdraft::cards

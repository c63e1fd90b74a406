#pragma once
// One proposal of a search: how it goes about it, what it changes, and a table of
// readings, blocks, pieces and minutes before and after.
#include <QLabel>
#include <QTableWidget>
#include <QWidget>

#include "engine/advise/suggestion.h"

namespace combdraft::desk {

/// "Saves 6 minutes of placing." "Takes 4 minutes of placing more."
QString minutesText(const advise::Effort& before, const advise::Effort& after);

class ProposalView : public QWidget {
  Q_OBJECT

 public:
  explicit ProposalView(QWidget* parent = nullptr);

  /// `aims`: those of the choice; none: all regions that are seen are listed.
  void show(const advise::Proposal& proposal, const advise::Aims& aims);

  enum Column { What, Before, After, Wanted };
  QTableWidget* table() { return table_; }
  QString text() const { return manner_->text() + u'\n' + changes_->text() + u'\n' + effort_->text(); }

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void addRow(const QString& what, const QString& before, const QString& after, const QString& wanted = {});
  void fitHeight();

  QLabel *manner_, *changes_, *effort_, *size_;
  QTableWidget* table_;
};

}  // namespace combdraft::desk

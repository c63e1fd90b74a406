#pragma once
// The choices of a plan: alternative placements on the same head. Choosing a line
// makes that choice the one that is worked on.
#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QWidget>

#include "app/cards/target_editor.h"
#include "app/controls/text_field.h"
#include "app/document/document_controller.h"
#include "engine/base/result.h"

namespace combdraft::cards {

/// "Choice B"; the id for a choice without a name.
QString choiceName(const plan::ItemId& id, const plan::Choice& choice);
/// Those of `ids` that another choice could take: pieces, sections, notes.
std::vector<plan::ItemId> takable(const plan::Plan& plan, const std::vector<plan::ItemId>& ids);

class ChoicesCard : public QWidget {
  Q_OBJECT

 public:
  explicit ChoicesCard(document::DocumentController& controller, QWidget* parent = nullptr);

  /// What the buttons and the commands do; each is one undo entry.
  void addCopy();
  void addEmpty();
  void remove();
  void activate(const plan::ItemId& choice);
  /// The next choice, after the last the first.
  void activateNext();
  /// Puts the keyboard into the name.
  void rename();
  /// Takes what is selected into the choice that is chosen in the list of others.
  void take();

  bool canAdd() const;
  bool canRemove() const;
  bool canTake() const;
  QListWidget* list() { return list_; }
  controls::TextField* name() { return name_; }
  QComboBox* others() { return others_; }
  QPushButton* copyButton() { return copy_; }
  QPushButton* emptyButton() { return empty_; }
  QPushButton* removeButton() { return remove_; }
  QPushButton* takeButton() { return take_; }
  QPushButton* compareButton() { return compare_; }
  QPushButton* suggestButton() { return suggest_; }
  TargetEditor* targets() { return targets_; }

 Q_SIGNALS:
  void compareWanted();
  void suggestWanted();
  /// One sentence on what was done where the card itself does not show it.
  void told(const QString& news);
  void refused(const QString& why);

 private:
  void add(const plan::ItemId& model, const QString& name);
  void fill();
  void fillSelection();

  document::DocumentController& controller_;
  QListWidget* list_;
  controls::TextField* name_;
  QPushButton *copy_, *empty_, *remove_, *take_, *compare_, *suggest_;
  QComboBox* others_;
  QLabel* takeHint_;
  TargetEditor* targets_;
  const document::Gesture activating_ = document::Gesture::begin();
};

}  // namespace combdraft::cards

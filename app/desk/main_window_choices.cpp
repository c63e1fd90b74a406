// The window's part for choices: their commands, aims, and two of them side by side.
#include <QMenu>
#include <QMenuBar>
#include <QStackedWidget>

#include "app/cards/choices_card.h"
#include "app/cards/reading_card.h"
#include "app/controls/plain_words.h"
#include "app/desk/card_column.h"
#include "app/desk/compare_view.h"
#include "app/desk/main_window.h"
#include "app/desk/message_bar.h"
#include "app/desk/readings_strip.h"
#include "app/desk/suggestion_card.h"
#include "app/sheet/head_sheet.h"

namespace combdraft::desk {
namespace {

const QString kTopic = QStringLiteral("choices");
constexpr const char* kCardAction = "view.choicesCard";

}  // namespace

void MainWindow::declareChoiceActions() {
  const Condition working = whileWorking();
  cards::ChoicesCard* card = cards_->choicesCard();
  const auto showCard = [this] { cards_->turnTo(CardColumn::Card::Choices); };
  const Condition several{[working, card] { return working() && card->canRemove(); }, tr("Make a second choice first")};
  const Condition room{[working, card] { return working() && card->canAdd(); }, tr("A plan holds at most 26 choices")};
  actions_.add({QLatin1String(kCardAction), tr("Choices and ai&ms"), tr("The alternative placements of this plan, and what is wanted of the look"),
                QKeySequence(Qt::ALT | Qt::Key_0), QStringLiteral("choices"), showCard, working,
                [this] { return cards_->current() == CardColumn::Card::Choices; }, tr("Choice")});
  actions_.add({QStringLiteral("choice.copy"), tr("Copy as a &new choice"), tr("A new choice that begins with all of this one; work on goes there"),
                {}, {}, [card, showCard] { showCard(); card->addCopy(); }, room});
  actions_.add({QStringLiteral("choice.empty"), tr("New choice, &empty"), tr("A new choice without pieces, for the same head and hair"),
                {}, {}, [card, showCard] { showCard(); card->addEmpty(); }, room});
  actions_.add({QStringLiteral("choice.rename"), tr("&Rename this choice"), tr("Give the choice that is worked on another name"),
                {}, {}, [card, showCard] { showCard(); card->rename(); }, working});
  actions_.add({QStringLiteral("choice.remove"), tr("Remo&ve this choice"), tr("Take this choice and all its pieces off the plan; undo brings them back"),
                {}, {}, [card] { card->remove(); }, several});
  actions_.add({QStringLiteral("choice.next"), tr("Ne&xt choice"), tr("Work on the next choice; after the last comes the first"),
                QKeySequence(Qt::SHIFT | Qt::Key_C), {}, [card] { card->activateNext(); }, several});
  actions_.add({QStringLiteral("choice.take"), tr("&Take what is selected into another choice"),
                tr("Copies selected pieces, sections and notes to the same places in another choice; with several, choose which"),
                {}, {},
                [card, showCard] {
                  showCard();
                  card->others()->count() == 1 ? card->take() : card->others()->setFocus();
                },
                {[working, card] { return working() && card->canTake(); },
                 tr("Make a second choice, then select pieces, sections or notes")}});
  actions_.add({QStringLiteral("choice.compare"), tr("C&ompare side by side"),
                tr("Two choices, or today and a choice: the same view and the readings of both"), QKeySequence(Qt::Key_C), {},
                [this] { isComparing() ? showSheet() : showCompare(); }, working, [this] { return isComparing(); }});
  actions_.add({QStringLiteral("choice.aim"), tr("Set an &aim…"), tr("Say which level and contrast is wanted in a region; it stands beside the reading"),
                {}, {}, [this] { setAim(0); }, working});
  actions_.add({QStringLiteral("choice.suggest"), tr("Su&ggest a placement…"),
                tr("Searches how the pieces might come nearer to the aims; you try, keep or drop what it finds"),
                QKeySequence(Qt::Key_G), {},
                [this] {
                  cards_->turnTo(CardColumn::Card::Suggestion);
                  cards_->suggestionCard()->begin();
                },
                {[this, working] { return working() && !controller_.document().pieces().empty(); },
                 tr("Draw or lay out pieces first")},
                [this] { return cards_->current() == CardColumn::Card::Suggestion; }, tr("Suggest")});
}

void MainWindow::fillChoiceMenu(QMenu* menu) {
  menu->setToolTipsVisible(true);
  for (const char* id : {kCardAction, "", "choice.copy", "choice.empty", "choice.rename", "choice.remove", "", "choice.next",
                         "choice.take", "choice.compare", "", "choice.aim", "choice.suggest"})
    *id ? menu->addAction(actions_.action(QLatin1String(id))) : (void)menu->addSeparator();
}

void MainWindow::connectChoices() {
  cards::ChoicesCard* card = cards_->choicesCard();
  connect(card, &cards::ChoicesCard::compareWanted, this, &MainWindow::showCompare);
  connect(card, &cards::ChoicesCard::suggestWanted, actions_.action(QStringLiteral("choice.suggest")), &QAction::trigger);
  connect(card, &cards::ChoicesCard::told, this,
          [this](const QString& news) { messages_->say({Message::Kind::News, news, {}, kTopic}); });
  connect(card, &cards::ChoicesCard::refused, this,
          [this](const QString& why) { messages_->say({Message::Kind::Caution, why, {}, kTopic}); });
  connect(compare_, &CompareView::closed, this, &MainWindow::showSheet);
  connect(compare_, &CompareView::lookWanted, this, [this] {
    if (isComparing()) requestLook();
  });
  connect(&controller_, &document::DocumentController::changed, this, [this](const document::DocumentChange& change) {
    if (change.kind == document::DocumentChange::Kind::Replaced) showSheet();
    nameChoice();
    readings_->setAims(controller_.plan());
    cards_->readingCard()->setAims(controller_.plan());
  });
  connect(&view_, &document::ViewState::changed, this, [this](document::ViewState::Aspects aspects) {
    if (aspects.testFlag(document::ViewState::Aspect::Tool)) showSheet();  // tools work on the sheet
  });
  nameChoice();
  turnMiddle(sheet_);
}

void MainWindow::nameChoice() {
  const plan::ItemId& active = controller_.plan().info().activeChoice;
  const auto* choice = controller_.plan().find<plan::Choice>(active);
  QString name = choice ? cards::choiceName(active, *choice) : tr("Choice");
  if (name.size() > 14) name = name.left(13) + u'\u2026';
  actions_.action(QLatin1String(kCardAction))->setIconText(controls::buttonText(name));
}

void MainWindow::setAim(int region) {
  cards_->turnTo(CardColumn::Card::Choices);
  cards_->choicesCard()->targets()->turnTo(region);
}

void MainWindow::turnMiddle(QWidget* to) {
  // The hidden one of the two asks for no room.
  for (QWidget* one : {static_cast<QWidget*>(sheet_), static_cast<QWidget*>(compare_)}) {
    const auto policy = one == to ? QSizePolicy::Preferred : QSizePolicy::Ignored;
    one->setSizePolicy(policy, policy);
  }
  middle_->setCurrentWidget(to);
}

bool MainWindow::isComparing() const { return middle_->currentWidget() == compare_; }

void MainWindow::showCompare() {
  if (isComparing()) return;
  looks_.forget();  // looks on their way are for the sheet
  turnMiddle(compare_);
  readings_->hide();  // its table stands in their place
  compare_->begin();
  compare_->side(0)->setFocus();
  requestLook();
  actions_.refresh();
}

void MainWindow::showSheet() {
  if (!isComparing()) return;
  looks_.forget();
  compare_->clear();
  turnMiddle(sheet_);
  readings_->show();
  sheet_->setFocus();
  requestLook();
  actions_.refresh();
}

}  // namespace combdraft::desk

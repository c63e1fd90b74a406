// The window's part that stands beside a plan: the client it belongs to, handing over,
// deleting, and a copy of the plan without any of it. No title, dialog or message names
// a person.
#include <QFileDialog>
#include <QFileInfo>
#include <QRandomGenerator>
#include <QStackedWidget>
#include <QStandardPaths>
#include <algorithm>

#include "app/appointment/appointment_page.h"
#include "app/cards/consultation_card.h"
#include "app/cards/consultation_client.h"
#include "app/cards/consultation_visits.h"
#include "app/desk/card_column.h"
#include "app/desk/clients_page.h"
#include "app/desk/error_text.h"
#include "app/desk/main_window.h"
#include "app/desk/message_bar.h"
#include "app/desk/message_topics.h"
#include "app/desk/preferences_page.h"
#include "app/handout/composer_page.h"
#include "app/store/client_export.h"
#include "app/store/client_removal.h"
#include "app/store/plan_store.h"
#include "engine/plan/share.h"

namespace combdraft::desk {
namespace {

const QString kClient = QStringLiteral("client");
const QString kUnkept = QStringLiteral("clientUnkept");  // a report of an earlier write clears this one alone

}  // namespace

void MainWindow::declareClientActions() {
  const Condition working = whileWorking();
  using CardPage = cards::ConsultationCard::Page;
  const auto card = [this](CardPage page) {
    cards_->turnTo(CardColumn::Card::Consultation);
    cards_->consultationCard()->turnTo(page);
    actions_.refresh();
  };
  actions_.add({QStringLiteral("view.consultationCard"), tr("Co&nsultation"),
                tr("What the client wants, what to ask, tests, visits; kept apart from the plan"), QKeySequence(Qt::CTRL | Qt::Key_U),
                QStringLiteral("consultation"),
                [this] {
                  cards_->turnTo(CardColumn::Card::Consultation);
                  actions_.refresh();
                },
                working, [this] { return cards_->current() == CardColumn::Card::Consultation; }, tr("Client")});
  actions_.add({QStringLiteral("client.photo"), tr("Add &photos…"), tr("Photos of what the client likes and does not like, beside the plan"), {}, {},
                [this, card] {
                  card(CardPage::Wishes);
                  addPhotos();
                },
                {[this, working] {
                  const auto& keeper = cards_->consultationCard()->keeper();
                  return working() && keeper && keeper->mayEdit() && store::hasConsent(keeper->file());
                }, tr("Open a plan and write the client's consent down first")}});
  const Condition kept{[this, working] {
                         const auto& keeper = cards_->consultationCard()->keeper();
                         return working() && keeper && !store::isEmpty(keeper->file());
                       },
                       tr("Nothing is kept of a client yet")};
  actions_.add({QStringLiteral("client.handOver"), tr("&Hand over what is kept…"), tr("A folder that the client can read: text, JSON and photos"), {}, {},
                [this] { handOver(cards_->consultationCard()->keeper()); }, kept});
  actions_.add({QStringLiteral("client.delete"), tr("&Delete this client…"), tr("Turns to where all that is kept of this client can be deleted"), {}, {},
                [this, card] {
                  card(CardPage::Client);
                  cards_->consultationCard()->client()->remove()->ask()->setFocus();
                },
                kept});
  actions_.add({QStringLiteral("client.list"), tr("&Clients…"), tr("All clients that are kept; shows their names, so turn the screen away from others"),
                {}, {}, [this] { turnTo(Page::Clients); }});
  actions_.add({QStringLiteral("file.shareCopy"), tr("Share a cop&y…"), tr("A copy without client data, notes, photos, agreed picture, visits and log. Title, formulas, texts and names that you gave go along"), {}, {},
                [this] { shareCopy(); }, whilePlanShown()});
}

void MainWindow::connectClient() {
  cards::ConsultationCard* card = cards_->consultationCard();
  connect(&controller_, &document::DocumentController::changed, this, [this](const document::DocumentChange& change) {
    if (change.kind != document::DocumentChange::Kind::Replaced) return;
    const auto before = cards_->consultationCard()->keeper();
    followClient();
    // Who looks on reads no answers of somebody else: they are one touch away.
    if (before && before != cards_->consultationCard()->keeper() && cards_->current() == CardColumn::Card::Consultation)
      cards_->turnTo(CardColumn::Card::Piece);
  });
  connect(card, &cards::ConsultationCard::photosWanted, this, &MainWindow::addPhotos);
  connect(card, &cards::ConsultationCard::exportWanted, this, [this] { handOver(cards_->consultationCard()->keeper()); });
  connect(card, &cards::ConsultationCard::removeWanted, this,
          [this] { removeClient(cards_->consultationCard()->keeper(), store::PlanFiles::Stay); });
  connect(card, &cards::ConsultationCard::removeWithPlanWanted, this,
          [this] { removeClient(cards_->consultationCard()->keeper(), store::PlanFiles::GoToo); });
  connect(card, &cards::ConsultationCard::clientChosen, this, &MainWindow::joinClient);
  connect(clients_, &ClientsPage::done, this, [this] { turnBack(); });
  connect(clients_, &ClientsPage::keepWanted, this, [this](quint64 number) {
    const auto keeper = store::ClientKeeper::of(places_.clientsFolder, number);
    keeper->edit([](store::ClientFile& file) { file.kept = QDate::currentDate().toString(Qt::ISODate).toStdString(); });
    if (const auto written = keeper->writeNow(); !written) tellError(errorText(written.error()));
    fillClients();
  });
  connect(clients_, &ClientsPage::handOverWanted, this, [this](quint64 number) { handOver(store::ClientKeeper::of(places_.clientsFolder, number)); });
  connect(clients_, &ClientsPage::removeWanted, this, [this](quint64 number) {
    removeClient(store::ClientKeeper::of(places_.clientsFolder, number), store::PlanFiles::Stay);
    fillClients();
  });
  connect(preferences_, &PreferencesPage::policyChanged, this, [this](const store::ClientPolicy& policy) {
    settings_.setClientPolicy(policy);
    sayUnwritten();
    for (MainWindow* window : allWindows()) window->takePreferences();
  });
}

std::uint64_t MainWindow::clientOf(const plan::Plan& plan) const { return store::clientOfPlan(places_.clientsFolder, plan.info().number); }

void MainWindow::followClient() {
  const bool isNone = controller_.file().path.isEmpty() && !controller_.isModified();
  showClient(isNone ? nullptr : store::ClientKeeper::of(places_.clientsFolder, clientOf(controller_.document())));
}

void MainWindow::showClient(std::shared_ptr<store::ClientKeeper> keeper) {
  cards::ConsultationCard* card = cards_->consultationCard();
  if (card->keeper() == keeper) return;
  if (card->keeper()) disconnect(card->keeper().get(), nullptr, this, nullptr);
  composer_->forgetClient();  // words on paper are for one client
  messages_->clear(kClient);
  messages_->clear(kUnkept);
  if (keeper) {
    using store::ClientKeeper;
    connect(keeper.get(), &ClientKeeper::changed, this, [this] { actions_.refresh(); });
    connect(keeper.get(), &ClientKeeper::failed, this, [this](const QString& why) {
      messages_->say({Message::Kind::Caution, tr("What you typed about the client could not be kept yet: %1. It is tried again.").arg(why), {}, kUnkept});
    });
    connect(keeper.get(), &ClientKeeper::written, this, [this] { messages_->clear(kUnkept); });
    connect(keeper.get(), &ClientKeeper::photoRefused, this, [this](const QString&, const Error& error) {
      messages_->say({Message::Kind::Caution, tr("The photo was not added: %1").arg(errorText(error)), {}, QStringLiteral("photo")});
    });
  }
  appointment_->nextVisit().setKeeper(keeper);
  card->setKeeper(std::move(keeper));
  actions_.refresh();
}

std::optional<Error> MainWindow::clientNotKept(Leaving leaving) {
  const auto others = allWindows();
  const bool isLast = std::none_of(others.begin(), others.end(), [this](const MainWindow* window) { return window != this && window->isVisible(); });
  if (leaving == Leaving::Window && isLast && store::ClientKeeper::photosOnTheWayOfAll() > 0)  // they end with the program
    return Error{ErrorCode::FileUnwritable, {}, {"photos are still being read"}, {}};
  const std::shared_ptr<store::ClientKeeper> keeper = cards_->consultationCard()->keeper();
  if (!keeper) return {};
  // A window that stays goes on trying and says so; the last one asks.
  for (const MainWindow* window : allWindows())
    if (window != this && window->isVisible() && window->cards_->consultationCard()->keeper() == keeper) return {};
  const Result<void> written = keeper->writeNow();
  if (written) return {};
  Error trouble = written.error();
  trouble.file.clear();  // its folder is named by a number nobody knows
  return trouble;
}

void MainWindow::leaveClient(const std::function<void()>& go, Leaving leaving) {
  if (const auto trouble = clientNotKept(leaving)) return sayClientNotKept(*trouble, go, leaving);
  go();
}

void MainWindow::sayClientNotKept(const Error& trouble, const std::function<void()>& go, Leaving leaving) {
  const auto lose = [this, go] {
    messages_->say({Message::Kind::Caution, tr("What was typed about the client since it was last on the disk goes for good."),
                    {{tr("Throw it away"), go}, {tr("Stay"), [this] { stayOpen(); }}}, kQuestion});
  };
  messages_->say({Message::Kind::Caution, tr("What you typed about the client is not on the disk: %1.").arg(errorText(trouble)),
                  {{tr("Try again"), [this, go, leaving] { leaveClient(go, leaving); }}, {tr("Leave and lose it…"), lose}, {tr("Stay"), [this] { stayOpen(); }}},
                  kQuestion});
}

void MainWindow::joinClient(quint64 number) {
  leaveClient([this, number] { joinClientNow(number); });
}

void MainWindow::joinClientNow(quint64 number) {
  const auto keeper = store::ClientKeeper::of(places_.clientsFolder, number);
  if (!keeper->mayEdit()) return tellError(keeper->trouble());
  keeper->edit([this](store::ClientFile& file) { file.visits.push_back(cards::visitToday(controller_)); });
  if (const auto written = keeper->writeNow(); !written) return tellError(errorText(written.error()));
  showClient(keeper);
  cards_->consultationCard()->turnTo(cards::ConsultationCard::Page::Visits);
}

void MainWindow::addPhotos() {
  // Not where plans are: the folder's name is nobody's business, and is not remembered.
  auto* dialog = new QFileDialog(this, tr("Add photos beside “%1”").arg(store::shownTitle(controller_.document(), controller_.file().path)),
                                 QStandardPaths::writableLocation(QStandardPaths::PicturesLocation),
                                 tr("Photos (*.jpg *.jpeg *.png *.webp);;All files (*)"));
  dialog->setObjectName(QStringLiteral("addPhotos"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setFileMode(QFileDialog::ExistingFiles);
  connect(dialog, &QFileDialog::filesSelected, this, [this](const QStringList& paths) {
    if (const auto& keeper = cards_->consultationCard()->keeper()) keeper->addPhotos(paths, store::PhotoOf::Wanted);
  });
  dialog->open();
}

void MainWindow::handOver(const std::shared_ptr<store::ClientKeeper>& keeper) {
  if (!keeper) return;
  auto* dialog = new QFileDialog(this, tr("A new folder for what is kept"), QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
  dialog->setObjectName(QStringLiteral("handOver"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->selectFile(tr("what-is-kept"));
  connect(dialog, &QFileDialog::fileSelected, this, [this, keeper](const QString& path) {
    if (const auto written = keeper->writeNow(); !written) return tellError(errorText(written.error()));
    plan::Disk disk;
    const Result<QStringList> missing = store::exportClient(keeper->file(), keeper->folder(), path, disk);
    if (!missing) return tellError(errorText(missing.error()));
    const QString name = QFileInfo(path).fileName();
    messages_->say({missing->isEmpty() ? Message::Kind::News : Message::Kind::Caution,
                    missing->isEmpty() ? tr("What is kept of the client stands in %1: text, JSON and photos. It is a copy that this program does not look after.").arg(name)
                                       : tr("What is kept of the client stands in %1; %2 photos are missing, since their files could not be read.").arg(name, QString::number(missing->size())),
                    {}, QStringLiteral("file")});
  });
  dialog->open();
}

void MainWindow::removeClient(const std::shared_ptr<store::ClientKeeper>& keeper, store::PlanFiles files) {
  if (!keeper) return;
  const bool isShown = keeper == cards_->consultationCard()->keeper();
  std::set<std::uint64_t> numbers = store::planNumbersOf(keeper->file());
  if (isShown) numbers.insert(controller_.document().info().number);
  for (const MainWindow* window : allWindows())
    if (window != this && window->isVisible() && window->cards_->consultationCard()->keeper() == keeper)
      return tellError(tr("A plan of this client is open in another window: close it first, so that nothing of it stays."));
  if (const Result<void> removed = keeper->remove(); !removed) return tellError(errorText(removed.error()));
  if (isShown) composer_->forgetClient();

  store::Gone gone;
  auto held = store::Recovery::Ended::Yes;
  QStringList paths;
  for (const store::RecentPlan& plan : settings_.recent()) paths << plan.path;
  const QString open = controller_.file().path;
  if (!open.isEmpty() && !paths.contains(open)) paths << open;
  if (isShown && files == store::PlanFiles::GoToo) {
    const std::uint64_t number = controller_.document().info().number;
    controller_.replace(plan::Plan::fresh(1), {});
    planLock_.giveBack();
    held = recovery_.closeAndWait();
    store::removeBeside({open}, {number}, store::PlanFiles::GoToo, gone);
    settings_.removeRecent(open);
    turnTo(Page::Start);
    if (places_.session) writeSession();  // its path goes too, and not half a second later
  } else if (isShown && controller_.isModified()) {
    (void)recovery_.writeNow();  // no earlier state is under way, and the folder is known
  } else if (isShown) {
    held = recovery_.closeAndWait();
  }
  store::removeBeside(paths, numbers, store::PlanFiles::Stay, gone);
  store::removeSnapshots(recoveryRoot_, numbers, gone);
  // What this window keeps is the plan as it is now, which stays.
  if (const QString own = recovery_.folder(); !own.isEmpty()) gone.notRemoved.removeAll(own);
  if (pages_->currentIndex() == static_cast<int>(Page::Start)) showStart();
  actions_.refresh();
  if (held == store::Recovery::Ended::No)
    messages_->say({Message::Kind::Caution,
                    tr("All that was typed about the client is deleted. What was kept while you worked on the plan is not off the disk yet, since the disk does not answer. It goes as soon as the disk does; leave the program open until then."),
                    {}, kClient});
  else if (gone.notRemoved.isEmpty())
    messages_->say({Message::Kind::News,
                    gone.plans ? tr("Deleted: what was kept of the client, and this plan. Still there, if you made them: plans of other visits, pages and PDFs, handed-over folders, backups. Delete those yourself.")
                               : tr("Deleted: what was kept of the client. Still there: all plans, and, if you made them, pages and PDFs, handed-over folders, backups. Delete yourself what is to go too."),
                    {}, kClient});
  else
    messages_->say({Message::Kind::Caution,
                    tr("All that was typed about the client is deleted. Earlier versions of the plan could not be, %1 of them: they may be open in another program. Close it and delete again.")
                        .arg(gone.notRemoved.size()),
                    {}, kClient});
}

void MainWindow::fillClients() { clients_->fill(store::findClients(places_.clientsFolder), settings_.clientPolicy()); }

void MainWindow::offerRetention() {
  const store::ClientPolicy policy = settings_.clientPolicy();
  if (policy.keep_months == 0) return;
  int over = 0;
  for (const store::ClientEntry& client : store::findClients(places_.clientsFolder)) over += store::isOverKept(client.file, policy, QDate::currentDate());
  if (over == 0) return;
  messages_->say({Message::Kind::News,
                  tr("Kept of clients for longer than the %1 months that you set: %2. Nothing is deleted by itself.").arg(policy.keep_months).arg(over),
                  {{tr("Decide"), [this] { turnTo(Page::Clients); }}, {tr("Later"), {}}},
                  QStringLiteral("retention")});
}

void MainWindow::shareCopy() {
  auto* dialog = new QFileDialog(this, tr("Share a copy of the plan"), settings_.lastFolder(), tr("Plans (*.json);;All files (*)"));
  dialog->setObjectName(QStringLiteral("shareCopy"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setOption(QFileDialog::DontConfirmOverwrite);  // it is refused below
  dialog->setDefaultSuffix(QStringLiteral("json"));
  dialog->selectFile(QStringLiteral("shared-copy.json"));
  connect(dialog, &QFileDialog::fileSelected, this, [this](const QString& path) {
    if (QFileInfo::exists(path))
      return tellError(tr("%1 is there already, and its earlier version would stay beside the copy. Choose a new name.").arg(QFileInfo(path).fileName()));
    const plan::Plan copy = plan::sharedCopy(controller_.document(), QRandomGenerator::system()->generate64());
    if (const auto saved = store::savePlan(copy, path); !saved) return tellError(tr("Not saved: %1").arg(errorText(saved.error())));
    messages_->say({Message::Kind::News,
                    tr("%1 is a copy without client data, notes, photos, agreed picture, visits and log. What goes along: the title “%2”, head and hair with their history, formulas, handout texts, and the names you gave to choices, sections and pieces. Look through them before you send it.")
                        .arg(QFileInfo(path).fileName(), store::shownTitle(copy, path)),
                    {}, QStringLiteral("file")});
  });
  dialog->open();
}

}  // namespace combdraft::desk

// The window's part that declares what can be done, and puts it into menus and
// the row of tools.
#include <QMenu>
#include <QMenuBar>
#include <QToolBar>
#include <QToolButton>
#include <QUndoStack>

#include "app/appointment/appointment_page.h"
#include "app/cards/piece_edits.h"
#include "app/controls/plain_words.h"
#include "app/controls/theme.h"
#include "app/desk/card_column.h"
#include "app/desk/command_search.h"
#include "app/desk/main_window.h"
#include "app/desk/message_bar.h"
#include "app/desk/preferences_page.h"
#include "app/desk/thing_names.h"
#include "app/desk/tool_row.h"
#include "app/sheet/head_sheet.h"
#include "engine/plan/edits.h"
#include "engine/plan/twins.h"

namespace combdraft::desk {
namespace {

// First piece of an empty plan: across the back, where most work begins.
constexpr double kFirstPieceDrop_deg = 75, kFirstPieceHalf_deg = 35;

bool isDark() { return controls::currentTheme().name == controls::ThemeName::Dark; }

plan::Piece firstPiece() {
  plan::Piece piece;
  for (int i = -2; i <= 2; ++i)
    piece.line.push_back({180 + kFirstPieceHalf_deg * i / 2, kFirstPieceDrop_deg});
  return piece;
}

}  // namespace

void MainWindow::declareEditActions() {
  const Condition working = whileWorking();
  const Condition selected = whileSelected(), shown = whilePlanShown();
  QUndoStack* undo = &controller_.undoStack();
  actions_.add({QStringLiteral("edit.undo"), tr("&Undo"), tr("Take the last change back"), QKeySequence::Undo,
                QStringLiteral("undo"),
                [this, undo] {
                  if (isLogShown()) return appointment_->log().takeBackLast();
                  if (sheet_->dropGesture()) return;  // in a drag it ends the drag
                  controller_.isTentative() ? controller_.dropTentative() : undo->undo();
                },
                {[this, undo, shown] { return shown() && (isLogShown() ? appointment_->log().canTakeBack() : undo->canUndo() || controller_.isTentative()); }, tr("Nothing has been changed yet")}});
  actions_.add({QStringLiteral("edit.redo"), tr("&Redo"), tr("Make the change again"),
                QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QStringLiteral("redo"), [this, undo] { isLogShown() ? appointment_->log().restoreLast() : undo->redo(); },
                {[this, undo, shown] { return shown() && (isLogShown() ? appointment_->log().canRestore() : undo->canRedo()); }, tr("Nothing has been taken back")}});
  actions_.add({QStringLiteral("edit.findCommand"), tr("&Find a command…"),
                tr("Type a word of what you want to do; it shows the key and runs the command"),
                QKeySequence(Qt::Key_F1), QStringLiteral("find"), [this] { search_->open(); }, {}, {}, tr("Find")});
  actions_.add({QStringLiteral("edit.selectAll"), tr("Select &all pieces"), tr("Select every piece of this choice"),
                QKeySequence::SelectAll, QStringLiteral("select"), [this] { selectAllPieces(); }, working, {}});
  actions_.add({QStringLiteral("piece.add"), tr("&Add a piece"),
                tr("A new piece below the selected one, or across the back; drag it where it belongs"),
                QKeySequence(Qt::Key_Insert), QStringLiteral("piece-add"), [this] { addPiece(); }, working, {}, tr("Add piece")});
  actions_.add({QStringLiteral("piece.twin"), tr("Same on the &other side"),
                tr("A twin across the centre line that follows every change"),
                QKeySequence(Qt::CTRL | Qt::Key_M), QStringLiteral("mirror"),
                [this] {
                  const plan::Plan& plan = controller_.document();
                  const plan::ChangeSet twins = plan::addTwins(plan, controller_.selection().ids());
                  if (twins.empty())
                    return messages_->say({Message::Kind::News,
                                           tr("Nothing was added: what is selected lies on the centre line and is its "
                                              "own mirror, or has its other side already."),
                                           {}, QStringLiteral("twin")});
                  controller_.edit(plan::applied(plan, twins), tr("Same on the other side"));
                },
                selected, {}, tr("Other side")});
  actions_.add({QStringLiteral("piece.ownWay"), tr("On its o&wn"), tr("A twin keeps its place and stops following"),
                QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_M), {},
                [this] {
                  const plan::Plan& plan = controller_.document();
                  controller_.edit(plan::applied(plan, plan::standAlone(plan, controller_.selection().ids())),
                                   tr("On its own"));
                },
                {[this, selected] {
                  if (!selected()) return false;
                  for (const plan::ItemId& id : controller_.selection().ids())
                    if (!plan::twinOwner(controller_.document(), id).empty()) return true;
                  return false;
                }, tr("Select a twin first: a piece made with Same on the other side")}});
  actions_.add({QStringLiteral("piece.takeBack"), tr("&Follow the section"),
                tr("What was edited by hand on laid-out pieces follows the section's rule again; emptied places are filled"),
                {}, {},
                [this] {
                  const plan::Plan& plan = controller_.document();
                  controller_.edit(plan::applied(plan, plan::takeBack(plan, controller_.selection().ids())),
                                   tr("Follow the section"));
                },
                selected, {}});
  actions_.add({QStringLiteral("piece.letGo"), tr("&Let go of the section"),
                tr("Laid-out pieces keep all they have, whatever the section's rule says"), {}, {},
                [this] {
                  const plan::Plan& plan = controller_.document();
                  controller_.edit(plan::applied(plan, plan::letGo(plan, controller_.selection().ids())),
                                   tr("Let go of the section"));
                },
                selected, {}});
  actions_.add({QStringLiteral("piece.numberByRule"), tr("&Number by rule"),
                tr("Working order: section by section, in each from the bottom to the top"), {}, {},
                [this] {
                  const plan::Plan& plan = controller_.document();
                  const plan::ItemId choice = plan.info().activeChoice;
                  controller_.edit(plan::applied(plan, plan::renumber(plan, choice, plan::orderByRule(plan, choice))),
                                   tr("Number by rule"));
                },
                working, {}});
  actions_.add({QStringLiteral("piece.remove"), tr("&Remove"), tr("Take what is selected off the plan; undo brings it back"),
                QKeySequence(Qt::Key_Delete), QStringLiteral("remove"), [this] { removeSelected(); }, whileSelected(), {}});
}

void MainWindow::declareToolActions() {
  using document::Tool;
  const Condition working = whileWorking();
  const auto tool = [&](const char* id, const QString& text, const QString& tip, int key, const char* iconName, Tool which,
                        const QString& shortText = {}) {
    actions_.add({QLatin1String(id), text, tip, QKeySequence(key), QLatin1String(iconName),
                  [this, which] {
                    view_.setTool(which);
                    sheet_->setFocus();
                  },
                  working, [this, which] { return view_.tool() == which; }, shortText});
  };
  tool("tool.select", tr("&Select"), tr("Pick pieces and drag them, their thickness and their start"), Qt::Key_F2, "select", Tool::Select);
  tool("tool.section", tr("S&ection"), tr("Draw an area of scalp corner by corner; it catches on hairline, ridge and other lines"), Qt::Key_E, "section", Tool::Section);
  tool("tool.parting", tr("Par&ting"), tr("Draw a line across a section: it becomes two"), Qt::Key_T, "parting", Tool::Parting);
  tool("tool.layOut", tr("&Lay out"), tr("Click into a section to fill it with pieces and left-outs by a rule"), Qt::Key_L, "lay-out", Tool::LayOut);
  tool("tool.piece", tr("Draw a &piece"), tr("Draw a new piece along the head, point by point"), Qt::Key_F3, "piece", Tool::Piece, tr("Piece"));
  tool("tool.leftOut", tr("Left-&out"), tr("Draw hair that stays as it is; it keeps its hair against every piece"), Qt::Key_O, "left-out", Tool::LeftOut);
  tool("tool.dropOut", tr("&Drop-out"), tr("Draw along a piece which stretch of it stays dark"), Qt::Key_X, "drop-out", Tool::DropOut);
  tool("tool.number", tr("&Number"), tr("Tap the pieces in working order"), Qt::Key_N, "number", Tool::Number);
  tool("tool.part", tr("P&art"), tr("Draw how the hair is usually parted"), Qt::Key_P, "part", Tool::PartLine);
  tool("tool.swirl", tr("S&wirl"), tr("Set where the hair swirls at the crown"), Qt::Key_W, "swirl", Tool::Whorl);
  tool("tool.note", tr("Note (&K)"), tr("Write a note at a place on the head"), Qt::Key_K, "note", Tool::Note, tr("Note"));
  tool("tool.measure", tr("&Measure"), tr("Measure a way along the head"), Qt::Key_F4, "measure", Tool::Measure);
}

void MainWindow::declareViewActions() {
  using document::Layer;
  using document::Surround;
  const Condition working = whileWorking();
  const auto layer = [&](const char* id, const QString& text, const QString& tip, int key, const char* iconName, Layer which) {
    actions_.add({QLatin1String(id), text, tip, QKeySequence(key), QLatin1String(iconName),
                  [this, which] { view_.setLayer(which); }, working, [this, which] { return view_.layer() == which; }});
  };
  layer("view.diagram", tr("&Diagram"), tr("Show the placement only"), Qt::Key_F5, "diagram", Layer::Diagram);
  layer("view.both", tr("&Both"), tr("Diagram beside look; pull the divider across the views"), Qt::Key_F6, "both", Layer::Both);
  layer("view.look", tr("&Look"), tr("Show the predicted hair only"), Qt::Key_F7, "look", Layer::Look);
  actions_.add({QStringLiteral("view.surround"), tr("Gre&y surround"),
                tr("A neutral mid grey round the look, as for judging colour"), QKeySequence(Qt::Key_F8),
                QStringLiteral("surround"),
                [this] {
                  view_.setSurround(view_.surround() == Surround::MidGrey ? Surround::Paper : Surround::MidGrey);
                },
                {[working] { return working() && !isDark(); }, tr("Open a plan in a light window; a dark one always has it")},
                [this] { return isDark() || view_.surround() == Surround::MidGrey; }, tr("Grey")});
  actions_.add({QStringLiteral("view.dark"), tr("Dar&k window"), tr("Dark colours for the salon floor; hair stands on mid grey"),
                QKeySequence(Qt::Key_F9), QStringLiteral("theme"),
                [this] {
                  store::Preferences next = settings_.preferences();
                  next.theme = isDark() ? store::ThemeChoice::Light : store::ThemeChoice::Dark;
                  Q_EMIT preferences_->changed(next);
                },
                {}, [] { return isDark(); }, tr("Dark")});
  const std::pair<const char*, QString> views[] = {{"front", tr("Front")},
                                                   {"back", tr("Back")},
                                                   {"left", tr("Client's left")},
                                                   {"right", tr("Client's right")},
                                                   {"top", tr("Top")},
                                                   {"crown", tr("Crown close-up")}};
  for (std::size_t i = 0; i < std::size(views); ++i) {
    const head::ViewName name = head::kAllViews[i];
    actions_.add({QStringLiteral("view.large.") + QLatin1String(views[i].first), views[i].second,
                  tr("Make this view the large one"), QKeySequence(Qt::CTRL | static_cast<Qt::Key>(Qt::Key_1 + i)), {},
                  [this, name] { view_.setLargeView(name); }, working,
                  [this, name] { return view_.largeView() == name; }});
  }
  actions_.add({QStringLiteral("view.large.all"), tr("All at one size"), tr("All six views side by side"),
                QKeySequence(Qt::CTRL | Qt::Key_0), {}, [this] { view_.setLargeView(std::nullopt); }, working,
                [this] { return !view_.largeView(); }});
  using Card = CardColumn::Card;
  const auto card = [&](const char* id, const QString& text, const QString& tip, int key, Card which) {
    actions_.add({QLatin1String(id), text, tip, QKeySequence(Qt::ALT | key), {},
                  [this, which] { cards_->turnTo(which); }, working,
                  [this, which] { return cards_->current() == which; }});
  };
  card("view.pieceCard", tr("&Piece card"), tr("Everything about the selected pieces"), Qt::Key_1, Card::Piece);
  card("view.sectionCard", tr("&Section card"), tr("The selected section and the rule that lays it out"), Qt::Key_2, Card::Section);
  card("view.headCard", tr("&Head card"), tr("Measures, part and swirls"), Qt::Key_3, Card::Head);
  card("view.hairCard", tr("Ha&ir card"), tr("How much, how long, which level"), Qt::Key_4, Card::Hair);
  card("view.formulaCard", tr("&Formula card"), tr("Mixtures as typed from their leaflets"), Qt::Key_5, Card::Formula);
  declareReadingActions();
  card("view.done", tr("What was chan&ged"), tr("Every change by name; choose one to go back to it"), Qt::Key_6, Card::Done);
}

void MainWindow::buildMenusAndTools() {
  const auto fill = [this](QMenu* menu, const std::vector<const char*>& ids) {
    menu->setToolTipsVisible(true);
    for (const char* id : ids)
      *id ? menu->addAction(actions_.action(QLatin1String(id))) : (void)menu->addSeparator();
  };
  fill(menuBar()->addMenu(tr("&Plan")), {"file.start", "file.new", "file.open", "file.back", "", "file.save", "file.saveAs", "file.forAnother", "file.shareCopy", "file.picture", "", "handout.show", "handout.recordCard", "handout.clientPage", "handout.save", "handout.print", "handout.preview", "", "file.openAnyway", "file.openAsCopy", "file.faults", "", "window.new", "window.close", "file.quit"});
  fill(menuBar()->addMenu(tr("&Edit")), {"edit.undo", "edit.redo", "", "edit.cut", "edit.copy", "edit.paste", "piece.duplicate", "", "edit.selectAll", "edit.sameKind", "edit.sameSection", "edit.sameSide", "", "edit.findCommand", "edit.keys", "edit.preferences"});
  fill(menuBar()->addMenu(tr("&Tools")), {"tool.select", "", "tool.section", "tool.parting", "tool.layOut", "", "tool.piece", "tool.leftOut", "tool.dropOut", "tool.number", "", "tool.part", "tool.swirl", "tool.note", "tool.measure"});
  fill(menuBar()->addMenu(tr("P&iece")), {"piece.add", "piece.duplicate", "piece.remove", "", "piece.twin", "piece.ownWay", "", "piece.takeBack", "piece.letGo", "", "piece.numberByRule", "", "pattern.show", "pattern.save"});
  fillChoiceMenu(menuBar()->addMenu(tr("&Choice")));
  fill(menuBar()->addMenu(tr("Clie&nt")), {"view.consultationCard", "client.photo", "", "client.handOver", "client.delete", "", "client.list"});
  fill(menuBar()->addMenu(tr("&Appointment")), {"appointment.workList", "appointment.paper", "", "appointment.log", "", "appointment.after", "appointment.outcome", "", "appointment.nextVisit"});
  QMenu* view = menuBar()->addMenu(tr("&View"));
  fill(view, {"view.diagram", "view.both", "view.look", ""});
  QMenu* large = view->addMenu(tr("Large &view"));
  fill(large, {"view.large.front", "view.large.back", "view.large.left", "view.large.right", "view.large.top", "view.large.crown", "", "view.large.all"});
  fill(view, {"", "view.pieceCard", "view.sectionCard", "view.headCard", "view.hairCard", "view.formulaCard", "view.done", "view.choicesCard", "view.assumptions", "view.reading", "view.findings", "", "show.client", "show.class", "", "view.cardsWider", "view.cardsNarrower", "view.foldReadings", "", "view.workOutLook", "view.surround", "view.dark"});
  declareLookActions();
  menuBar()->setAccessibleName(tr("Menus"));

  tools_ = addToolBar(tr("Tools"));
  tools_->setAccessibleName(tr("Tools"));
  tools_->setMovable(false);
  tools_->setContextMenuPolicy(Qt::PreventContextMenu);
  const int iconSize = fontMetrics().height() * 3 / 2;
  auto* row = new ToolRow(iconSize, tools_);
  const std::vector<std::vector<const char*>> groups{
      {"file.start", "file.new", "file.open", "file.save"}, {"edit.undo", "edit.redo"}, {"piece.add", "piece.twin", "piece.remove"},
      {"view.choicesCard", "view.consultationCard", "view.diagram", "view.both", "view.look"}, {"view.surround", "view.dark"}, {"edit.findCommand"}};
  for (const std::vector<const char*>& group : groups) {
    std::vector<QAction*> commands;
    for (const char* id : group) commands.push_back(actions_.action(QLatin1String(id)));
    row->addGroup(commands);
  }
  tools_->addWidget(row);
  // The tools stand beside the sheet.
  QToolBar* hand = drawing_ = new QToolBar(tr("Drawing"), this);
  addToolBar(Qt::LeftToolBarArea, hand);
  hand->setObjectName(QStringLiteral("drawingTools"));
  hand->setAccessibleName(tr("Drawing tools"));
  hand->setMovable(false);
  hand->setContextMenuPolicy(Qt::PreventContextMenu);
  hand->setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
  hand->setIconSize({iconSize * 5 / 6, iconSize * 5 / 6});
  for (const char* id : {"tool.select", "tool.section", "tool.parting", "tool.layOut", "tool.piece", "tool.leftOut", "tool.dropOut",
                         "tool.number", "tool.part", "tool.swirl", "tool.note", "tool.measure"}) {
    QAction* action = actions_.action(QLatin1String(id));
    hand->addAction(action);
    if (QWidget* button = hand->widgetForAction(action)) {
      button->setAccessibleName(action->iconText());
      button->setFocusPolicy(Qt::TabFocus);
      button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    }
  }
  connect(&controller_.undoStack(), &QUndoStack::undoTextChanged, this, &MainWindow::nameUndo);
  connect(&controller_.undoStack(), &QUndoStack::redoTextChanged, this, &MainWindow::nameUndo);
  actions_.refresh();
}

void MainWindow::nameUndo() {
  const auto name = [this](const char* id, const QString& verb, const QString& what) {
    actions_.action(QLatin1String(id))->setText(what.isEmpty() ? verb : verb + QStringLiteral(": ") + controls::buttonText(what));
  };
  // On the log's page the last tap is what a hand wants back, never an edit of the plan.
  name("edit.undo", tr("&Undo"), isLogShown() ? tr("the last tap") : controller_.undoStack().undoText());
  name("edit.redo", tr("&Redo"), isLogShown() ? tr("the last tap") : controller_.undoStack().redoText());
}

void MainWindow::selectAllPieces() {
  std::vector<plan::ItemId> ids;
  for (const auto& [id, piece] : controller_.document().pieces()) ids.push_back(id);
  controller_.select(document::Selection(std::move(ids)));
}

void MainWindow::addPiece() {
  const plan::Plan& plan = controller_.document();
  const auto* model = plan.find<plan::Piece>(controller_.selection().lead());
  if (model) return duplicateSelected();
  plan::Piece piece = firstPiece();
  piece.thickness_mm = settings_.preferences().newThickness_mm;
  piece.start_mm = settings_.preferences().newStart_mm;
  const plan::ChangeSet change = plan::addPiece(plan, piece);
  controller_.edit(plan::applied(plan, change), tr("Add a piece"),
                   document::Selection::one(change.args.front()));
}

void MainWindow::removeSelected() {
  const plan::Plan& plan = controller_.document();
  const std::vector<plan::ItemId> ids = placedThings(plan, controller_.selection().ids());
  if (ids.empty()) return;
  controller_.edit(plan::applied(plan, plan::removeItems(plan, ids)), tr("Remove %1").arg(thingsName(plan, ids)),
                   document::Selection());
}

}  // namespace combdraft::desk

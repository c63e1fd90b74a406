// A language that nobody speaks (tests/translations/pseudo): each text longer by two fifths
// and between brackets. What stands on the screen or on paper without brackets was never
// given to a translator; what does not fit would not fit in a longer language either.
// And right to left: the window turns round, the head does not.
#include <QAbstractButton>
#include <QApplication>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QProcess>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollArea>
#include <QTabBar>
#include <QTemporaryDir>
#include <QTest>
#include <QTextDocumentFragment>
#include <QToolButton>
#include <QTranslator>
#include <catch2/catch.hpp>
#include <utility>

#include "app/appointment/appointment_page.h"
#include "app/cards/consultation_card.h"
#include "app/chair/class_view.h"
#include "app/chair/hold_button.h"
#include "app/chair/touch_controls.h"
#include "app/desk/card_column.h"
#include "app/desk/language.h"
#include "app/handout/document.h"
#include "app/sheet/head_sheet.h"
#include "app/words/engine_words.h"
#include "tests/app/chair_fixture.h"
#include "tests/app/demo_plans.h"
#include "tests/support/places.h"

namespace combdraft::desk {
namespace {

constexpr QChar kOpen(0x27E6), kClose(0x27E7);

// The window's language for one test; the next begins without any.
class PseudoLocale {
 public:
  PseudoLocale() {
    QProcess script;
    script.start(QStringLiteral("python3"), {QString::fromStdString(test::testsDir()) + QStringLiteral("/translations/pseudo"), dir_.path()});
    REQUIRE(script.waitForFinished(60000));
    INFO(script.readAllStandardError().toStdString());
    REQUIRE(script.exitCode() == 0);
    qputenv(kTrialVariable, dir_.filePath(QStringLiteral("combdraft_xx.qm")).toLocal8Bit());
    speak(*qApp, store::Language::English);
    qunsetenv(kTrialVariable);
  }
  ~PseudoLocale() {
    for (QTranslator* one : qApp->findChildren<QTranslator*>()) {
      QApplication::removeTranslator(one);
      delete one;
    }
    QLocale::setDefault(QLocale::c());
    QApplication::setLayoutDirection(Qt::LeftToRight);
  }

 private:
  QTemporaryDir dir_;
};

// Words that may stand on the screen as they are, each with its reason. Single letters
// (formulas, choices) and figures need none. What the user wrote: the plans below have
// no words of their own.
const QRegularExpression kAsTheyAre(QStringLiteral(
    "(Ctrl|Shift|Alt)\\+(\\w+|\\W)"          // keys, named by Qt: the trial has no texts of Qt
    "|\\b(Esc|Del|Ins|PgUp|PgDown|Backspace)\\b|\\+(Left|Right)\\b"  // the same
    "|\\bCombdraft\\b"                        // the program's name
    "|\\b(English|Deutsch)\\b"               // a language names itself
    "|\\S+\\.json\\b"                         // files
    "|(?<![\\p{L}])(mm|cm|rad|\u00B5m)(?![\\p{L}])" // signs of units, the same everywhere
));

QString plainOf(const QString& text) { return Qt::mightBeRichText(text) ? QTextDocumentFragment::fromHtml(text).toPlainText() : text; }

/// Every bracket that opens closes: a text that lost one was cut up on its way to the screen.
bool isBalanced(const QString& text) {
  int depth = 0;
  for (const QChar c : plainOf(text)) {
    if (c == kOpen) ++depth;
    if (c == kClose && --depth < 0) return false;
  }
  return depth == 0;
}

/// What of `text` no translator has seen; "" = nothing.
QString hardCoded(const QString& text) {
  const QString plain = plainOf(text);
  QString outside;
  int depth = 0;
  for (const QChar c : plain) {
    if (c == kOpen) ++depth;
    if (depth == 0) outside += c;
    if (c == kClose && depth > 0) --depth;
  }
  outside.remove(kAsTheyAre).remove(u'&');
  static const QRegularExpression word(QStringLiteral("\\p{L}{2,}"));
  return word.match(outside).hasMatch() ? outside.simplified() : QString();
}

// What was found on all that was looked at, each once.
struct Troubles {
  QStringList hardCodedTexts, unbalanced, clipped;
  int texts = 0;  ///< that were looked at

  void text(const QString& where, const QString& shown) {
    if (shown.isEmpty()) return;
    ++texts;
    const QString bare = hardCoded(shown);
    if (!bare.isEmpty()) hardCodedTexts << where + QStringLiteral(": ") + bare;
    if (!isBalanced(shown)) unbalanced << where + QStringLiteral(": ") + shown;
  }
  void check() {
    hardCodedTexts.removeDuplicates();
    clipped.removeDuplicates();
    INFO(hardCodedTexts.join(u'\n').toStdString());
    CHECK(hardCodedTexts.isEmpty());
    unbalanced.removeDuplicates();
    INFO(unbalanced.join(u'\n').toStdString());
    CHECK(unbalanced.isEmpty());
    INFO(clipped.join(u'\n').toStdString());
    CHECK(clipped.isEmpty());
  }
};

QString placeOf(const QString& page, const QWidget& widget) {
  QString place = page + u'/' + QString::fromLatin1(widget.metaObject()->className());
  for (const QWidget* one = widget.parentWidget(); one && !one->isWindow(); one = one->parentWidget())
    if (QLatin1String(one->metaObject()->className()).startsWith(QLatin1String("combdraft"))) {
      place += QStringLiteral(" in ") + QString::fromLatin1(one->metaObject()->className());
      break;
    }
  return place;
}

bool isCut(const QLabel& label) { return label.sizeHint().width() > label.width() + 1; }
// A button may give up room beside its words, not of them.
bool isCut(const QAbstractButton& button) {
  const QString words = QString(button.text()).remove(u'&');
  return button.fontMetrics().size(Qt::TextShowMnemonic, words).width() > button.width() - 4;
}

void lookAt(const QString& page, QWidget& root, Troubles& found) {
  for (QWidget* widget : root.findChildren<QWidget*>()) {
    if (!widget->isVisibleTo(&root) || !widget->isVisible() || qobject_cast<QMenu*>(widget)) continue;
    const QString place = placeOf(page, *widget);
    found.text(place + QStringLiteral(", name"), widget->accessibleName());
    found.text(place + QStringLiteral(", tip"), widget->toolTip());
    if (const auto* label = qobject_cast<QLabel*>(widget)) {
      found.text(place, label->text());
      if (!label->wordWrap() && !label->text().isEmpty() && isCut(*label)) found.clipped << place + QStringLiteral(": ") + label->text();
    } else if (const auto* button = qobject_cast<QAbstractButton*>(widget)) {
      found.text(place, button->text());
      const auto* tool = qobject_cast<const QToolButton*>(button);
      const bool iconOnly = tool && tool->toolButtonStyle() == Qt::ToolButtonIconOnly && !tool->icon().isNull();
      if (!iconOnly && !button->text().isEmpty() && isCut(*button)) found.clipped << place + QStringLiteral(": ") + button->text();
    } else if (const auto* box = qobject_cast<QGroupBox*>(widget)) {
      found.text(place, box->title());
    } else if (const auto* tabs = qobject_cast<QTabBar*>(widget)) {
      for (int i = 0; i < tabs->count(); ++i) found.text(place, tabs->tabText(i));
    } else if (const auto* header = qobject_cast<QHeaderView*>(widget); header && header->model()) {
      for (int i = 0; i < header->count(); ++i)
        found.text(place, header->model()->headerData(i, header->orientation(), Qt::DisplayRole).toString());
    }
  }
}

// Where a button is seen: in `view`, or in what scrolls within it.
const QWidget* frameOf(const QAbstractButton& button, const QWidget& view) {
  for (const QWidget* one = button.parentWidget(); one && one != &view; one = one->parentWidget())
    if (const auto* area = qobject_cast<const QScrollArea*>(one)) return area->viewport();
  return &view;
}

// What fingers touch is large enough, apart from the rest, and whole in the view; what
// scrolls is whole across.
void lookForTargets(const QString& page, const QWidget& view, Troubles& found) {
  std::vector<std::pair<const QWidget*, QRect>> before;
  for (const QAbstractButton* button : view.findChildren<QAbstractButton*>()) {
    if (!button->isVisible()) continue;
    const QWidget* frame = frameOf(*button, view);
    const QRect place(button->mapTo(frame, QPoint(0, 0)), button->size());
    bool isRight = place.left() >= 0 && place.right() < frame->width() && place.width() >= button->minimumSizeHint().width() &&
                   std::min(place.width(), place.height()) >= chair::kTarget_px;
    if (frame == &view) isRight = isRight && view.rect().contains(place);
    for (const auto& [where, other] : before) isRight = isRight && !(where == frame && other.intersects(place));
    before.emplace_back(frame, place);
    if (!isRight)
      found.clipped << QStringLiteral("%1: %2 at %3 %4, %5 by %6").arg(page, button->text()).arg(place.x()).arg(place.y()).arg(place.width()).arg(place.height());
  }
}

void lookAt(const QMenu& menu, Troubles& found) {
  found.text(QStringLiteral("menu bar"), menu.title());
  for (const QAction* action : menu.actions()) {
    if (action->isSeparator()) continue;
    found.text(QStringLiteral("menu ") + menu.title(), action->text());
    found.text(QStringLiteral("tip in ") + menu.title(), action->toolTip());
    if (action->menu()) lookAt(*action->menu(), found);
  }
}

// A plan with something on every card, and no word of its own.
plan::Plan wordlessPlan() {
  plan::Plan plan = tests::demoPlan();
  plan::PlanInfo info = plan.info();
  info.title = "7";
  info.notes.clear();
  plan.put(plan::kPlanId, info);
  for (const char* id : {"formula-1", "formula-2"}) {
    plan::Formula formula = *plan.find<plan::Formula>(id);
    formula.kind.clear();
    plan.put(id, formula);
  }
  plan::Section section = *plan.find<plan::Section>("section-1");
  section.label.clear();
  plan.put("section-1", section);
  for (const auto& [id, piece] : plan::Plan(plan).pieces(info.activeChoice)) {
    plan::Piece wordless = *piece;
    wordless.label.clear();
    wordless.note.clear();
    plan.put(id, wordless);
  }
  return plan;
}

// A laptop's window with the plan in it.
struct PseudoDesk : tests::Desk {
  PseudoDesk() : Desk(tests::chairPasses) {
    const QString path = dir.filePath(QStringLiteral("7.json"));
    REQUIRE(store::savePlan(wordlessPlan(), path).ok());
    window->resize(1366, 768);
    window->openPath(path);
    REQUIRE(isFresh());
    window->controller().select(document::Selection::one("piece-1"));
    settle();
  }
  void go(const char* id) {
    QAction* action = window->actions().action(QLatin1String(id));
    INFO(id);
    REQUIRE(action);
    REQUIRE(action->isEnabled());
    action->trigger();
    settle();
  }
  // Shown to others, in a window of this size: the screen of the tests is small.
  void shownAt(const QWidget& view, QSize size) {
    window->showNormal();
    window->resize(size);
    REQUIRE(QTest::qWaitFor([&] { return view.size() == size; }, 3000));
  }
  static bool isWorkedOut(chair::PairPicture& picture) {
    return QTest::qWaitFor([&] { return picture.pane(0).state.isEmpty() && picture.pane(1).state.isEmpty(); }, 5000);
  }
  static void settle() {
    QCoreApplication::sendPostedEvents();
    QApplication::processEvents();
  }
};

// What was shortened to its room on paper has lost the end of its brackets.
QString withItsEnd(const QString& words) {
  const qsizetype open = words.count(kOpen) - words.count(kClose);
  return words.endsWith(QChar(0x2026)) && open > 0 ? words + QString(open, kClose) : words;
}

// What pictures and sentences of a document rest on.
handout::Looks standInLooks(const plan::Plan& plan) {
  using head::ViewName;
  using hair::WornWay;
  const live::LookService::Passes passes = tests::chairPasses();
  std::vector<look::PictureRequest> pictures;
  for (const ViewName view : {ViewName::Front, ViewName::Left, ViewName::Right, ViewName::Back, ViewName::Top, ViewName::Crown})
    pictures.push_back({view, 1});
  const auto seen = [&](WornWay way) {
    look::LookSettings settings;
    settings.worn.way = way;
    settings.choice = plan.info().activeChoice;
    Result<look::LookFrame> frame = passes.full(plan, settings, pictures, {});
    REQUIRE(frame.ok());
    return std::make_shared<const look::LookFrame>(std::move(frame).value());
  };
  return {seen(WornWay::Down), seen(WornWay::CrownOpened), {{WornWay::Down, 12, 11, 14}, {WornWay::TiedBack, 1, 1, 1}}};
}

}  // namespace

TEST_CASE("the trial language brackets texts of the window and of the engine", "[language][pseudo]") {
  CHECK(hardCoded(QStringLiteral("Undo")) == QStringLiteral("Undo"));
  CHECK(MainWindow::tr("&Undo") == QStringLiteral("&Undo"));
  const PseudoLocale pseudo;
  const QString undo = MainWindow::tr("&Undo");
  CHECK(undo.startsWith(kOpen));
  CHECK(undo.size() >= 7);  // of five
  CHECK(hardCoded(undo).isEmpty());
  CHECK(hardCoded(undo + QStringLiteral(", left over")) == QStringLiteral(", left over"));
  CHECK(hardCoded(QStringLiteral("12 A (Ctrl+Z)")).isEmpty());
  CHECK(hardCoded(words::inWords("the whole look")).isEmpty());
  CHECK(isBalanced(undo + undo));
  CHECK_FALSE(isBalanced(undo.chopped(1)));
  CHECK_FALSE(isBalanced(undo.mid(1)));
  CHECK_FALSE(isBalanced(undo + kClose));
}

TEST_CASE("a text that is bare or lost a bracket or is cut is found", "[language][pseudo]") {
  QWidget page;
  QLabel bare(QStringLiteral("Bare words"), &page), half(QStringLiteral("\u27E6half"), &page), whole(QStringLiteral("\u27E6whole\u27E7"), &page);
  QPushButton narrow(QStringLiteral("\u27E6many words\u27E7"), &page), wide(QStringLiteral("\u27E6ok\u27E7"), &page);
  int y = 0;
  for (QWidget* one : {static_cast<QWidget*>(&bare), static_cast<QWidget*>(&half), static_cast<QWidget*>(&whole), static_cast<QWidget*>(&narrow), static_cast<QWidget*>(&wide)})
    one->setGeometry(0, std::exchange(y, y + 60), one == &narrow ? 20 : 300, 60);
  page.resize(400, y);
  page.show();
  REQUIRE(QTest::qWaitForWindowExposed(&page));
  Troubles found;
  lookAt(QStringLiteral("page"), page, found);
  REQUIRE(found.hardCodedTexts.size() == 1);
  CHECK(found.hardCodedTexts[0].contains(QStringLiteral("Bare")));
  REQUIRE(found.unbalanced.size() == 1);
  CHECK(found.unbalanced[0].contains(QStringLiteral("half")));
  REQUIRE(found.clipped.size() == 1);
  CHECK(found.clipped[0].contains(QStringLiteral("many words")));
  lookForTargets(QStringLiteral("page"), page, found);
  CHECK(found.clipped.size() == 2);  // the narrow one again, and it alone
  wide.move(0, narrow.y());
  lookForTargets(QStringLiteral("page"), page, found);
  CHECK(found.clipped.size() == 4);  // now they lie over each other
}

TEST_CASE("every menu of the window goes through its translation", "[language][pseudo]") {
  const PseudoLocale pseudo;
  PseudoDesk desk;
  Troubles found;
  for (const QAction* action : desk.window->menuBar()->actions())
    if (action->menu()) lookAt(*action->menu(), found);
  CHECK(found.texts > 100);
  found.check();
}

TEST_CASE("every page of the window goes through its translation and fits", "[language][pseudo]") {
  const PseudoLocale pseudo;
  PseudoDesk desk;
  Troubles found;
  lookAt(QStringLiteral("sheet"), *desk.window, found);
  for (const char* id : {"file.start", "file.back", "edit.preferences", "edit.keys", "pattern.show", "client.list", "appointment.workList",
                         "appointment.log", "appointment.after", "appointment.outcome", "appointment.nextVisit", "handout.show",
                         "handout.recordCard", "handout.clientPage", "file.back", "choice.compare", "choice.compare"}) {
    QAction* action = desk.window->actions().action(QLatin1String(id));
    INFO(id);
    REQUIRE(action);
    if (!action->isEnabled()) continue;  // the way back where the plan is shown already
    desk.go(id);
    lookAt(QLatin1String(id), *desk.window, found);
  }
  desk.go("file.new");
  lookAt(QStringLiteral("file.new"), *desk.window, found);
  CHECK(found.texts > 500);
  found.check();
}

TEST_CASE("every card goes through its translation and fits", "[language][pseudo]") {
  const PseudoLocale pseudo;
  PseudoDesk desk;
  Troubles found;
  for (int card = 0; card < CardColumn::kCards; ++card) {
    desk.window->controller().select(document::Selection::one(card == static_cast<int>(CardColumn::Card::Section) ? "section-1" : "piece-1"));
    desk.window->cards().turnTo(static_cast<CardColumn::Card>(card));
    PseudoDesk::settle();
    lookAt(QStringLiteral("card %1").arg(card), *desk.window, found);
  }
  cards::ConsultationCard& consultation = *desk.window->cards().consultationCard();
  REQUIRE(consultation.keeper());
  desk.window->cards().turnTo(CardColumn::Card::Consultation);
  using Page = cards::ConsultationCard::Page;
  for (const Page page : {Page::Wishes, Page::Questions, Page::Visits, Page::Client}) {
    consultation.turnTo(page);
    PseudoDesk::settle();
    lookAt(QStringLiteral("consultation %1").arg(static_cast<int>(page)), *desk.window, found);
  }
  CHECK(found.texts > 500);
  found.check();
}

TEST_CASE("what a client is shown goes through its translation and fits", "[language][pseudo]") {
  const PseudoLocale pseudo;
  const QSize size = GENERATE(QSize(1180, 820), QSize(820, 1180), QSize(1366, 768));
  PseudoDesk desk;
  Troubles found;
  desk.go("show.client");
  chair::ChairView& view = desk.window->chairView();
  lookAt(QStringLiteral("before anything is worked out"), *desk.window, found);
  desk.shownAt(view, size);
  REQUIRE(PseudoDesk::isWorkedOut(*view.picture()));
  for (const int index : {0, 1, 2}) REQUIRE(QTest::qWaitFor([&] { return !view.readingText(index).contains(QChar(0x2026)); }, 8000));
  CHECK(view.readingText(2).contains(QStringLiteral("11")));  // weeks, which come last
  CHECK(view.darkText().contains(QStringLiteral("60")));
  QTest::qWait(50);  // words are laid out
  const QString place = QStringLiteral("%1 by %2").arg(size.width()).arg(size.height());
  lookAt(place, *desk.window, found);
  lookForTargets(place, view, found);
  CHECK(view.picture()->height() >= view.picture()->minimumSizeHint().height());
  view.thisOne(1)->click();  // what was kept is told
  CHECK_FALSE(desk.window->controller().document().info().agreedJson.empty());
  lookAt(place + QStringLiteral(", kept"), *desk.window, found);
  view.leaveButton()->beginHold();
  view.leaveButton()->endHold();
  PseudoDesk::settle();
  lookAt(place + QStringLiteral(", how to leave"), *desk.window, found);
  CHECK(found.texts > 50);
  found.check();
}

TEST_CASE("what a class is shown goes through its translation and fits", "[language][pseudo]") {
  const PseudoLocale pseudo;
  const QSize size = GENERATE(QSize(1180, 820), QSize(820, 1180));
  PseudoDesk desk;
  Troubles found;
  desk.go("show.class");
  chair::ClassView& view = desk.window->classView();
  desk.shownAt(view, size);
  const auto see = [&](const QString& what) {
    QTest::qWait(30);
    const QString place = QStringLiteral("%1 at %2 by %3").arg(what).arg(size.width()).arg(size.height());
    lookAt(place, *desk.window, found);
    lookForTargets(place, view, found);
  };
  for (std::size_t step = 0; step < view.steps().size(); ++step) {
    view.goTo(step);
    REQUIRE(PseudoDesk::isWorkedOut(*view.picture()));
    see(QStringLiteral("step %1").arg(step));
  }
  view.openSheet();
  see(QStringLiteral("sheet"));
  view.closeSheet();
  plan::Plan student = wordlessPlan();
  student.put("piece-8", plan::ItemPtr());
  view.setStudent(student);
  REQUIRE(PseudoDesk::isWorkedOut(*view.picture()));
  see(QStringLiteral("student"));
  CHECK(found.texts > 100);
  found.check();
}

TEST_CASE("every printed page goes through its translation", "[language][pseudo][handout]") {
  const PseudoLocale pseudo;
  using handout::DocumentKind;
  for (const DocumentKind kind : {DocumentKind::Handout, DocumentKind::RecordCard, DocumentKind::ClientPage, DocumentKind::WorkList}) {
    Troubles found;
    const plan::Plan plan = wordlessPlan();
    const auto pages = handout::makePages(handout::requestFor(kind, plan), standInLooks(plan), {}, {});
    REQUIRE(pages.ok());
    QStringList words;  // a text that was broken into lines, or over pages, has its brackets in two of them
    for (const paint::Page& page : *pages)
      for (const paint::PlacedFigure& placed : page.figures)
        for (const paint::DrawingItem& item : placed.figure.items)
          if (item.text) words << withItsEnd(item.text->words);
    CHECK(words.size() > 10);
    found.text(QStringLiteral("document %1").arg(static_cast<int>(kind)), words.join(u' '));
    found.check();
  }
}

TEST_CASE("right to left turns the window round and not the head in it", "[language][sheet]") {
  struct Seen {
    QImage sheet;
    int sheetLeft, cardsLeft;
  };
  const auto seen = [](Qt::LayoutDirection direction) {
    QApplication::setLayoutDirection(direction);
    PseudoDesk desk;  // in English: nothing is translated here
    desk.window->viewState().setLayer(document::Layer::Diagram);
    PseudoDesk::settle();
    sheet::HeadSheet& sheet = desk.window->headSheet();
    REQUIRE(sheet.layoutDirection() == direction);
    QImage drawn(sheet.size(), QImage::Format_ARGB32_Premultiplied);
    drawn.fill(Qt::white);
    sheet.render(&drawn, {}, {}, QWidget::DrawWindowBackground);  // the drawing, without what lies on it
    const auto leftOf = [&](const QWidget& widget) { return widget.mapTo(desk.window.get(), QPoint(0, 0)).x(); };
    return Seen{drawn, leftOf(sheet), leftOf(desk.window->cards())};
  };
  const Seen english = seen(Qt::LeftToRight), turned = seen(Qt::RightToLeft);
  QApplication::setLayoutDirection(Qt::LeftToRight);
  CHECK(english.sheetLeft < english.cardsLeft);
  CHECK(turned.cardsLeft < turned.sheetLeft);
  REQUIRE(english.sheet.size() == turned.sheet.size());
  CHECK(english.sheet == turned.sheet);
  CHECK(english.sheet != english.sheet.mirrored(true, false));  // it could be told
}

}  // namespace combdraft::desk

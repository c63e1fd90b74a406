#include "app/controls/theme.h"

#include <QApplication>
#include <QFontDatabase>
#include <QPalette>
#include <QStyle>
#include <QStyleFactory>
#include <memory>

#include "app/controls/plain_words.h"

// Resources of a static library have to be asked for, outside any namespace.
static void useResources() { Q_INIT_RESOURCE(combdraft); }

namespace combdraft::controls {
namespace {

const Theme kLight{ThemeName::Light,
                   QColor(0xF4, 0xF0, 0xE8),   // ground
                   QColor(0xFC, 0xFA, 0xF6),   // card
                   QColor(0xF9, 0xF6, 0xF0),   // raised
                   QColor(0xDD, 0xD6, 0xCA),   // line
                   QColor(0x8A, 0x83, 0x78),   // edge
                   QColor(0x2A, 0x28, 0x26),   // ink
                   QColor(0x5B, 0x56, 0x4E),   // softInk
                   QColor(0x38, 0x5A, 0x62),   // accent
                   QColor(0xFF, 0xFF, 0xFF),   // onAccent
                   QColor(0x6E, 0x45, 0x00),   // caution
                   QColor(0xF7, 0xEC, 0xD2)};  // cautionGround
const Theme kDark{ThemeName::Dark,
                  QColor(0x21, 0x20, 0x1E),   // ground
                  QColor(0x2B, 0x29, 0x27),   // card
                  QColor(0x33, 0x31, 0x2E),   // raised
                  QColor(0x45, 0x42, 0x3D),   // line
                  QColor(0x8C, 0x86, 0x7D),   // edge
                  QColor(0xEE, 0xEA, 0xE2),   // ink
                  QColor(0xBD, 0xB6, 0xAA),   // softInk
                  QColor(0x93, 0xBC, 0xC2),   // accent
                  QColor(0x1B, 0x1E, 0x1F),   // onAccent
                  QColor(0xF0, 0xC9, 0x7A),   // caution
                  QColor(0x3D, 0x34, 0x22)};  // cautionGround

// Properties of the application object.
constexpr const char *kDarkProperty = "combdraftDark", *kStyledProperty = "combdraftStyled";

// %tokens% are replaced by colours; lengths are in `em` of the bundled font so
// that everything grows with it.
constexpr const char* kSheet = R"(
QWidget { color: %ink%; selection-background-color: %accent%; selection-color: %onAccent%; }
QMainWindow, #page, QScrollArea, QScrollArea > QWidget > QWidget { background: %ground%; }
QToolTip { color: %ink%; background: %card%; border: 1px solid %edge%; padding: 5px; }
QMenuBar { background: %ground%; padding: 2px 6px; }
QMenuBar::item { padding: 6px 10px; border-radius: 4px; background: transparent; }
QMenuBar::item:selected { background: %accent%; color: %onAccent%; }
QMenu { background: %card%; border: 1px solid %edge%; padding: 4px; }
QMenu::item { padding: 7px 22px 6px 12px; border-radius: 3px; }
QMenu::item:selected { background: %accent%; color: %onAccent%; }
QMenu::item:disabled { color: %softInk%; }
QMenu::separator { height: 1px; background: %line%; margin: 4px 8px; }
QToolBar { background: %ground%; border: none; border-bottom: 1px solid %line%; padding: 2px 8px; spacing: 2px; }
QToolBar::separator { width: 1px; background: %line%; margin: 8px 3px; }
QToolBar QToolButton { background: transparent; border: 1px solid transparent; border-radius: 5px; padding: 3px 4px; min-width: 38px; }
QToolBar#drawingTools { padding: 2px; spacing: 0px; }
QToolBar#drawingTools QToolButton { padding: 1px 3px; }
QToolBar#drawingTools QToolButton:focus { padding: 0px 2px; }
QToolBar QToolButton:hover { background: %card%; border-color: %line%; }
QToolBar QToolButton:pressed, QToolBar QToolButton:checked { background: %card%; border-color: %edge%; }
QToolBar QToolButton:disabled { color: %faintInk%; }
QToolBar QToolButton:focus { border: 2px solid %accent%; padding: 2px 3px; }
QPushButton { outline: 0; background: %raised%; border: 1px solid %edge%; border-radius: 5px; padding: 5px 14px; }
QPushButton:hover { background: %card%; border-color: %ink%; }
QPushButton:pressed { background: %line%; }
QPushButton:disabled { color: %faintInk%; border-color: %line%; }
QPushButton:focus { border: 2px solid %accent%; padding: 4px 13px; }
QPushButton[primary="true"] { background: %accent%; color: %onAccent%; border-color: %accent%; font-weight: 600; }
QPushButton[primary="true"]:hover { border-color: %ink%; }
QPushButton[primary="true"]:focus { border: 2px solid %ink%; padding: 4px 13px; }
QPushButton[quiet="true"] { background: transparent; border-color: transparent; text-align: left; }
QPushButton[quiet="true"]:hover { background: %card%; border-color: %line%; }
QPushButton[quiet="true"]:focus { border: 2px solid %accent%; padding: 4px 13px; }
QPushButton[segment] { border-radius: 0; padding: 5px 7px; margin-left: -1px; }
QPushButton[segment="first"] { border-top-left-radius: 5px; border-bottom-left-radius: 5px; margin-left: 0; }
QPushButton[segment="last"] { border-top-right-radius: 5px; border-bottom-right-radius: 5px; }
QPushButton[segment]:checked { background: %accent%; color: %onAccent%; border-color: %accent%; font-weight: 600; }
QPushButton[segment]:focus { border: 2px solid %ink%; padding: 4px 6px; }
QToolButton[touch="true"] { background: %raised%; border: 1px solid %edge%; border-radius: 8px; padding: 4px 8px; }
QToolButton[touch="true"]:pressed { background: %line%; }
QToolButton[touch="true"]:checked { background: %card%; border: 3px solid %accent%; padding: 2px 6px; font-weight: 600; }
QToolButton[touch="true"]:focus { border: 2px solid %ink%; padding: 3px 7px; }
QToolButton[touch="true"]:checked:focus { border: 3px solid %ink%; padding: 2px 6px; }
QToolButton[touch="true"]:disabled { color: %faintInk%; border-color: %line%; }
QLineEdit, QPlainTextEdit, QComboBox { background: %card%; border: 1px solid %edge%; border-radius: 5px; padding: 4px 7px; min-height: 18px; }
QLineEdit:focus, QPlainTextEdit:focus, QComboBox:focus { border: 2px solid %accent%; padding: 3px 6px; }
QLineEdit:disabled, QComboBox:disabled { color: %faintInk%; border-color: %line%; }
QLineEdit[wrong="true"] { border: 2px solid %caution%; padding: 3px 6px; }
QComboBox::drop-down { border: none; width: 20px; }
QComboBox::down-arrow { image: url(:/icons/%chevron%); width: 10px; height: 10px; }
QComboBox QAbstractItemView { background: %card%; border: 1px solid %edge%; padding: 3px; outline: 0; }
QTreeView { background: %card%; border: 1px solid %line%; border-radius: 5px; padding: 3px; outline: 0; }
QTreeView::item { padding: 7px 6px; }
QTreeView::item:selected { background: %accent%; color: %onAccent%; }
QTreeView:focus { border: 2px solid %accent%; }
QHeaderView::section { background: %ground%; border: none; border-bottom: 1px solid %line%; padding: 6px; font-weight: 600; }
QListView { background: %card%; border: 1px solid %line%; border-radius: 5px; padding: 3px; }
QListView::item { padding: 7px 6px; border-radius: 3px; }
QListView::item:selected { background: %accent%; color: %onAccent%; }
QListView:focus { border: 2px solid %accent%; }
QSlider { min-height: 28px; }
QSlider::groove:horizontal { height: 4px; background: %line%; border-radius: 2px; }
QSlider::handle:horizontal { background: %card%; border: 2px solid %accent%; width: 14px; margin: -8px 0; border-radius: 6px; }
QSlider::handle:horizontal:focus { background: %accent%; }
QSlider[touch="true"] { min-height: 48px; }
QSlider[touch="true"]::groove:horizontal { height: 6px; border-radius: 3px; }
QSlider[touch="true"]::handle:horizontal { width: 26px; margin: -12px 0; border-radius: 15px; }
QSlider:disabled::handle:horizontal { border-color: %line%; }
QCheckBox { spacing: 8px; min-height: 28px; }
QCheckBox:focus { outline: 2px solid %accent%; }
QScrollBar:vertical { background: transparent; width: 12px; margin: 0; }
QScrollBar:horizontal { background: transparent; height: 12px; margin: 0; }
QScrollBar::handle { background: %edge%; border-radius: 4px; margin: 2px; min-height: 28px; min-width: 28px; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QScrollArea { border: none; }
QScrollArea:focus { border: 2px solid %accent%; }
QSplitter::handle { background: transparent; border-left: 1px solid %line%; }
QSplitter::handle:hover { border-left: 2px solid %accent%; }
QLabel[soft="true"] { color: %softInk%; }
QLabel[caution="true"] { color: %caution%; background: %cautionGround%; border-radius: 5px; padding: 7px 9px; }
#card { background: %card%; border: 1px solid %line%; border-radius: 8px; }
#bar { background: %ground%; border-bottom: 1px solid %line%; }
#strip { background: %ground%; border-top: 1px solid %line%; }
#hint { background: %card%; border-top: 1px solid %line%; }
#panel { background: %card%; border: 1px solid %edge%; border-radius: 8px; }
#message { background: %card%; border-bottom: 1px solid %edge%; }
#message[caution="true"] { background: %cautionGround%; }
#tile { background: %card%; border: 1px solid %line%; border-radius: 6px; }
)";

QString sheetOf(const Theme& t) {
  QString sheet = QString::fromLatin1(kSheet);
  // Disabled controls are exempt from the contrast rule, yet stay readable.
  const QColor faint = QColor::fromRgbF((t.softInk.redF() * 0.72f) + t.card.redF() * 0.28f,
                                        (t.softInk.greenF() * 0.72f) + t.card.greenF() * 0.28f,
                                        (t.softInk.blueF() * 0.72f) + t.card.blueF() * 0.28f);
  const std::pair<const char*, QColor> tokens[] = {
      {"%ground%", t.ground},   {"%card%", t.card},       {"%raised%", t.raised},
      {"%line%", t.line},       {"%edge%", t.edge},       {"%ink%", t.ink},
      {"%softInk%", t.softInk}, {"%accent%", t.accent},   {"%onAccent%", t.onAccent},
      {"%caution%", t.caution}, {"%cautionGround%", t.cautionGround}, {"%faintInk%", faint}};
  for (const auto& [token, colour] : tokens)
    sheet.replace(QLatin1String(token), colour.name());
  sheet.replace(QLatin1String("%chevron%"), t.name == ThemeName::Light
                                                ? QLatin1String("chevron-ink.svg")
                                                : QLatin1String("chevron-paper.svg"));
  return sheet;
}

QPalette paletteOf(const Theme& t) {
  QPalette p(t.ink, t.raised, t.card, t.line, t.edge, t.ink, t.onAccent, t.card, t.ground);
  p.setColor(QPalette::Highlight, t.accent);
  p.setColor(QPalette::HighlightedText, t.onAccent);
  p.setColor(QPalette::PlaceholderText, t.softInk);
  p.setColor(QPalette::ToolTipBase, t.card);
  p.setColor(QPalette::ToolTipText, t.ink);
  p.setColor(QPalette::Link, t.accent);
  p.setColor(QPalette::AlternateBase, t.ground);
  p.setColor(QPalette::Disabled, QPalette::WindowText, t.softInk);
  p.setColor(QPalette::Disabled, QPalette::Text, t.softInk);
  p.setColor(QPalette::Disabled, QPalette::ButtonText, t.softInk);
  return p;
}

}  // namespace

const Theme& theme(ThemeName name) { return name == ThemeName::Light ? kLight : kDark; }
const Theme& currentTheme() {
  return theme(qApp && qApp->property(kDarkProperty).toBool() ? ThemeName::Dark : ThemeName::Light);
}

QString loadBundledFont() {
  useResources();
  QString family;
  for (const char* face : {":/fonts/Inter-Regular.otf", ":/fonts/Inter-Medium.otf",
                           ":/fonts/Inter-SemiBold.otf"}) {
    const int id = QFontDatabase::addApplicationFont(QLatin1String(face));
    const QStringList families = QFontDatabase::applicationFontFamilies(id);
    if (family.isEmpty() && !families.isEmpty()) family = families.first();
  }
  return family;
}

ThemeName themeOf(const QPalette& palette) {
  return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness()
             ? ThemeName::Dark
             : ThemeName::Light;
}

ThemeName systemTheme() {
  // The style's own palette follows the desktop whatever this program has set.
  const std::unique_ptr<QStyle> style(QStyleFactory::create(QStringLiteral("Fusion")));
  return themeOf(style->standardPalette());
}

void applyTheme(QApplication& app, ThemeName name, int textSize_percent) {
  app.setProperty(kDarkProperty, name == ThemeName::Dark);
  static const QString family = loadBundledFont();  // registered once
  QFont font(family.isEmpty() ? app.font().family() : family);
  font.setPointSizeF(textSize_percent / 10.0);
  font.setStyleStrategy(QFont::PreferAntialias);
  showWordsAsTheyAre(app);
  // Each of these polishes every widget again: only what changed.
  if (app.font() != font) app.setFont(font);
  if (!app.property(kStyledProperty).toBool()) app.setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
  app.setProperty(kStyledProperty, true);
  app.setPalette(paletteOf(theme(name)));
  app.setStyleSheet(sheetOf(theme(name)));
}

}  // namespace combdraft::controls

#include "app/paint/sheet_page.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/paint/assumption_words.h"
#include "app/paint/key.h"
#include "app/paint/look_layer.h"

namespace combdraft::paint {
namespace {

constexpr double kMargin_mm = 8, kTitle_mm = 4.2, kCaption_mm = 2.9, kGutter_mm = 3;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Page)
};

Figure words(const QString& id, const QString& text, double size_mm, double width_mm,
             const QColor& colour, TextRun::Anchor anchor, TextRun::Weight weight) {
  Figure figure;
  figure.id = id;
  figure.title = text;
  figure.frame = QRectF(0, 0, width_mm, size_mm * 1.5);
  DrawingItem item;
  item.id = id;
  item.role = Role::Caption;
  item.layer = Layer::Labels;
  const double x = anchor == TextRun::Anchor::Start ? 0 : width_mm / 2;
  item.text = TextRun{text, QPointF(x, size_mm * 0.75), size_mm, colour, anchor, weight};
  figure.items.push_back(std::move(item));
  return figure;
}

// Words broken into lines that a width holds, by the mean width of a letter.
QStringList linesOf(const QString& text, double size_mm, double width_mm) {
  const auto most = static_cast<qsizetype>(width_mm / (0.52 * size_mm));
  QStringList lines;
  for (const QString& word : text.split(u' ', Qt::SkipEmptyParts)) {
    if (!lines.isEmpty() && lines.back().size() + 1 + word.size() <= most)
      lines.back() += u' ' + word;
    else
      lines << word;
  }
  return lines;
}

QString wordOf(head::ViewName view) {
  const std::string_view word = head::viewWord(view);
  return QString::fromLatin1(word.data(), static_cast<qsizetype>(word.size()));
}

}  // namespace

double pageScale(const PageRequest& request) {
  const bool pair = request.layer == PageLayer::Both;
  if (request.views.size() > 1) return 0.25;
  return pair ? 0.5 : 0.6;
}

Figure diagramFigure(const Scene& scene, head::ViewName view, const DiagramStyle& style) {
  Figure figure;
  figure.id = wordOf(view) + QStringLiteral("-diagram");
  figure.title = viewTitle(view);
  figure.frame = frameOf(view);
  figure.items = headArt(scene.head(), view, plan::SkinTone::Paper, style.palette,
                         Ink(style.scale), Guides::Shown);
  Items diagram = diagramItems(scene, view, style);
  std::move(diagram.begin(), diagram.end(), std::back_inserter(figure.items));
  if (view == head::ViewName::Crown)
    figure.items.push_back(viewRing(view, style.palette, Ink(style.scale)));
  return figure;
}

Figure lookFigure(const Scene& scene, head::ViewName view, const look::LookFrame* look,
                  const Palette& palette, double scale, Ground ground) {
  Figure figure;
  figure.id = wordOf(view) + QStringLiteral("-look");
  figure.title = viewTitle(view);
  figure.frame = frameOf(view);
  if (ground == Ground::MidGrey) {
    DrawingItem grey;
    grey.id = QStringLiteral("surround");
    grey.role = Role::Ground;
    grey.path = viewClip(view);
    grey.style.fill = palette.midGrey;
    figure.items.push_back(std::move(grey));
  }
  Items items = lookItems(scene.head(), view, scene.plan().head().skin, palette, Ink(scale),
                          look ? pictureOf(*look, view) : nullptr);
  std::move(items.begin(), items.end(), std::back_inserter(figure.items));
  clipToView(figure.items, view);
  if (view == head::ViewName::Crown)
    figure.items.push_back(viewRing(view, palette, Ink(scale)));
  return figure;
}

Page sheetPage(const Scene& scene, const look::LookFrame* look, const PageRequest& request) {
  const Palette palette;
  const double scale = pageScale(request);
  Page page;
  page.ground = QColor(Qt::white);
  const QString title = QString::fromStdString(scene.plan().info().title);
  page.title = title.isEmpty() ? Words::tr("Untitled plan") : title;

  const auto count = request.views.size();
  const std::size_t columns = count <= 1 ? 1 : 3;
  const int layers = request.layer == PageLayer::Both ? 2 : 1;
  QSizeF cell(0, 0);  // in head mm
  for (const head::ViewName view : request.views)
    cell = cell.expandedTo(frameOf(view).size());
  const double cellWidth = cell.width() * scale + kGutter_mm;
  const double cellHeight = cell.height() * scale + kCaption_mm * 1.5 + kGutter_mm;
  double width = cellWidth * static_cast<double>(std::min(columns, count)) * layers;
  width = std::max(width, 120.0);
  double y = kMargin_mm;
  page.figures.push_back({words(QStringLiteral("title"), page.title, kTitle_mm, width, palette.ink,
                                TextRun::Anchor::Start, TextRun::Weight::Bold),
                          {kMargin_mm, y}, 1});
  y += kTitle_mm * 1.5;
  if (!request.caption.isEmpty()) {
    page.figures.push_back({words(QStringLiteral("caption"), request.caption, kCaption_mm, width,
                                  palette.softInk, TextRun::Anchor::Start, TextRun::Weight::Plain),
                            {kMargin_mm, y}, 1});
    y += kCaption_mm * 1.5;
  }
  y += kGutter_mm;
  for (std::size_t i = 0; i < count; ++i) {
    const head::ViewName view = request.views[i];
    double x = kMargin_mm + cellWidth * static_cast<double>(i % columns) * layers;
    const double top = y + cellHeight * static_cast<double>(i / columns);
    page.figures.push_back({words(wordOf(view) + QStringLiteral("-title"), viewTitle(view),
                                  kCaption_mm, cellWidth * layers, palette.ink,
                                  TextRun::Anchor::Middle, TextRun::Weight::Plain),
                            {x, top}, 1});
    const auto place = [&](Figure figure) {
      // Smaller views stand in the middle of their place; the close-up grows into it.
      const double grow = view == head::ViewName::Crown && count > 1 ? 1.5 : 1.0;
      const QSizeF size = figure.frame.size() * scale * grow;
      const QPointF corner(x + (cell.width() * scale - size.width()) / 2,
                           top + kCaption_mm * 1.5 + (cell.height() * scale - size.height()) / 2);
      page.figures.push_back({std::move(figure), corner, scale * grow});
      x += cellWidth;
    };
    const double grow = view == head::ViewName::Crown && count > 1 ? 1.5 : 1.0;
    if (request.layer != PageLayer::Look)
      place(diagramFigure(scene, view, {palette, scale * grow}));
    if (request.layer != PageLayer::Diagram)
      place(lookFigure(scene, view, look, palette, scale * grow, request.ground));
  }
  y += cellHeight * static_cast<double>((count + columns - 1) / columns);
  if (request.layer != PageLayer::Look) {
    Figure key = keyFigure(scene, palette, width);
    const double height = key.frame.height();
    page.figures.push_back({std::move(key), {kMargin_mm, y}, 1});
    y += height + kGutter_mm;
  }
  for (const QString& line : linesOf(changedText(scene.plan().info().assumptions), kCaption_mm, width)) {
    page.figures.push_back({words(QStringLiteral("assumptions"), line, kCaption_mm, width, palette.ink,
                                  TextRun::Anchor::Start, TextRun::Weight::Plain),
                            {kMargin_mm, y}, 1});
    y += kCaption_mm * 1.5;
  }
  if (request.layer != PageLayer::Diagram) {
    page.figures.push_back(
        {words(QStringLiteral("promise"),
               Words::tr("A picture of the plan, not a promise; a test strand shows how far this hair "
                   "lightens."),
               kCaption_mm, width, palette.softInk, TextRun::Anchor::Start,
               TextRun::Weight::Plain),
         {kMargin_mm, y}, 1});
    y += kCaption_mm * 1.5;
  }
  page.size_mm = QSizeF(width + 2 * kMargin_mm, y + kMargin_mm);
  return page;
}

}  // namespace combdraft::paint

#include "app/handout/flow.h"

#include <QCoreApplication>
#include <algorithm>

namespace combdraft::handout {
namespace {

constexpr double kAboveRule_mm = 3.5, kBelowRule_mm = 1.2, kFootLine_mm = type::kFoot * 1.3;  // of the foot
constexpr double kRule_mm = 0.18, kWritingGap_mm = 8.2, kHang_mm = 4.6, kCell_mm = 1.3;
constexpr int kRowLines = 18;  // of a table's row before it goes on as another

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

const Inks kInks;

paint::PlacedFigure placed(paint::Figure figure, double x, double y, double scale = 1) {
  return {std::move(figure), {x, y}, scale};
}

paint::Figure boxFigure(const QRectF& rect, const QColor& fill, const QColor& line) {
  paint::Figure figure;
  figure.id = QStringLiteral("box");
  figure.frame = QRectF(QPointF(0, 0), rect.size());
  paint::DrawingItem item;
  item.id = figure.id;
  item.role = paint::Role::Ground;
  item.path.addRect(figure.frame);
  item.style.fill = fill;
  item.style.stroke = line;
  item.style.width_mm = line.isValid() ? kRule_mm : 0;
  figure.items.push_back(std::move(item));
  return figure;
}

}  // namespace

paint::Figure textFigure(const QString& words, double size_mm, Weight weight, const QColor& colour, double width_mm,
                         paint::TextRun::Anchor anchor) {
  paint::Figure figure;
  figure.id = QStringLiteral("words");
  figure.frame = QRectF(0, 0, width_mm, size_mm * type::kLine);
  paint::DrawingItem item;
  item.id = figure.id;
  item.role = paint::Role::Caption;
  item.layer = paint::Layer::Labels;
  const double x = anchor == paint::TextRun::Anchor::Start    ? 0
                   : anchor == paint::TextRun::Anchor::Middle ? width_mm / 2
                                                              : width_mm;
  item.text = paint::TextRun{words, QPointF(x, figure.frame.height() / 2), size_mm, colour, anchor, weight};
  figure.items.push_back(std::move(item));
  return figure;
}

paint::Figure lineFigure(double width_mm, const QColor& colour, double thickness_mm) {
  paint::Figure figure;
  figure.id = QStringLiteral("rule");
  figure.frame = QRectF(0, 0, width_mm, 0);
  paint::DrawingItem item;
  item.id = figure.id;
  item.role = paint::Role::Guide;
  item.path.moveTo(0, 0);
  item.path.lineTo(width_mm, 0);
  item.style.stroke = colour;
  item.style.width_mm = thickness_mm;
  item.style.cap = Qt::FlatCap;
  figure.items.push_back(std::move(item));
  return figure;
}

double Column::height_mm() const {
  double height = 0;
  for (std::size_t i = 0; i < chunks_.size(); ++i) height += chunks_[i].height_mm + (i > 0 ? chunks_[i].above_mm : 0);
  return height;
}

void Column::add(Chunk chunk) {
  chunk.above_mm = std::max(chunk.above_mm, gap_mm_);
  chunk.startsPage = chunk.startsPage || startsPage_;
  gap_mm_ = 0, startsPage_ = false;
  chunks_.push_back(std::move(chunk));
}

void Column::stay() {
  if (!chunks_.empty()) chunks_.back().after = Chunk::Break::Never;
}

void Column::keepTogether(std::size_t from) {
  for (std::size_t i = from; i + 1 < chunks_.size(); ++i) chunks_[i].after = Chunk::Break::Never;
}

void Column::text(const QString& words, double size_mm, Weight weight, Tone tone, double indent_mm) {
  const QStringList lines = linesOf(words, size_mm, width_mm_ - indent_mm, weight);
  for (qsizetype i = 0; i < lines.size(); ++i) {
    Chunk chunk;
    chunk.height_mm = size_mm * type::kLine;
    if (!lines[i].isEmpty())
      chunk.figures.push_back(placed(textFigure(lines[i], size_mm, weight, tone == Tone::Ink ? kInks.ink : kInks.soft,
                                                width_mm_ - indent_mm),
                                     indent_mm, 0));
    const bool widow = i == 0 || i + 2 == lines.size();
    if (widow && i + 1 < lines.size()) chunk.after = Chunk::Break::Never;
    add(std::move(chunk));
  }
}

void Column::heading(const QString& words) {
  gap(9);
  text(words, type::kHeading, Weight::Bold);
  stay();
  Chunk line;
  line.height_mm = 2.2;
  line.above_mm = 0.8;
  line.after = Chunk::Break::Never;
  line.figures.push_back(placed(lineFigure(width_mm_, kInks.ink, 0.35), 0, 0));
  add(std::move(line));
}

void Column::subheading(const QString& words) {
  gap(3.4);
  text(words, type::kSub, Weight::Bold);
  stay();
}

void Column::bullet(const QString& words, const QString& sign) {
  const std::size_t from = chunks_.size();
  gap(0.7);
  text(words, type::kBody, Weight::Plain, Tone::Ink, kHang_mm);
  if (from < chunks_.size())
    chunks_[from].figures.push_back(placed(textFigure(sign, type::kBody, Weight::Plain, kInks.ink, kHang_mm), 0, 0));
}

void Column::tickBox(const QString& words) {
  const std::size_t from = chunks_.size();
  gap(1.4);
  text(words, type::kBody, Weight::Plain, Tone::Ink, kHang_mm + 1);
  if (from < chunks_.size())
    chunks_[from].figures.push_back(placed(boxFigure(QRectF(0, 0, 3.1, 3.1), QColor(), kInks.ink), 0.2, 0.75));
}

void Column::writingLine(const QString& label, int lines, const QString& typed) {
  const double labelWidth = label.isEmpty() ? 0 : widthOf(label, type::kSmall) + 2;
  if (!typed.isEmpty()) {
    const std::size_t from = chunks_.size();
    gap(1);
    text(typed, type::kBody, Weight::Plain, Tone::Ink, labelWidth);
    if (from < chunks_.size() && !label.isEmpty())
      chunks_[from].figures.push_back(placed(textFigure(label, type::kSmall, Weight::Plain, kInks.soft, labelWidth), 0, 0.4));
    return;
  }
  for (int i = 0; i < lines; ++i) {
    Chunk chunk;
    chunk.height_mm = kWritingGap_mm;
    const double left = i == 0 ? labelWidth : 0;
    if (i == 0 && !label.isEmpty())
      chunk.figures.push_back(
          placed(textFigure(label, type::kSmall, Weight::Plain, kInks.soft, labelWidth), 0, kWritingGap_mm - 4.2));
    if (width_mm_ - left > 8)
      chunk.figures.push_back(placed(lineFigure(width_mm_ - left, kInks.rule, kRule_mm), left, kWritingGap_mm - 0.9));
    if (i + 1 < lines) chunk.after = Chunk::Break::Never;
    add(std::move(chunk));
  }
}

void Column::rule() {
  Chunk chunk;
  chunk.height_mm = 0.4;
  chunk.figures.push_back(placed(lineFigure(width_mm_, kInks.rule, kRule_mm), 0, 0.2));
  add(std::move(chunk));
}

void Column::figure(paint::Figure figure, double scale, double left_mm) {
  Chunk chunk;
  chunk.height_mm = figure.frame.height() * scale;
  chunk.figures.push_back(placed(std::move(figure), left_mm, 0, scale));
  add(std::move(chunk));
}

Chunk Column::joined() const {
  Chunk all;
  for (const Chunk& chunk : chunks_) {
    if (all.height_mm > 0 || !all.figures.empty()) all.height_mm += chunk.above_mm;
    for (paint::PlacedFigure figure : chunk.figures) {
      figure.corner_mm.ry() += all.height_mm;
      all.figures.push_back(std::move(figure));
    }
    all.height_mm += chunk.height_mm;
  }
  return all;
}

void Column::row(const std::vector<std::pair<double, const Column*>>& cells) {
  Chunk all;
  for (const auto& [left_mm, column] : cells) {
    Chunk cell = column->joined();
    for (paint::PlacedFigure& figure : cell.figures) {
      figure.corner_mm.rx() += left_mm;
      all.figures.push_back(std::move(figure));
    }
    all.height_mm = std::max(all.height_mm, cell.height_mm);
  }
  add(std::move(all));
}

void Column::box(const Column& inside, double pad_mm) {
  Chunk content = inside.joined();
  Chunk chunk;
  chunk.height_mm = content.height_mm + 2 * pad_mm;
  chunk.figures.push_back(placed(boxFigure(QRectF(0, 0, width_mm_, chunk.height_mm), QColor(), kInks.rule), 0, 0));
  for (paint::PlacedFigure& figure : content.figures) {
    figure.corner_mm += QPointF(pad_mm, pad_mm);
    chunk.figures.push_back(std::move(figure));
  }
  add(std::move(chunk));
}

void Column::table(const std::vector<QString>& head, const std::vector<double>& shares,
                   const std::vector<std::vector<Cell>>& rows, double size_mm, double least_mm) {
  double sum = 0;
  for (const double share : shares) sum += share;
  std::vector<double> left{0};
  for (const double share : shares) left.push_back(left.back() + width_mm_ * share / sum);
  const double line_mm = size_mm * type::kLine;
  const auto rowOf = [&](const std::vector<QStringList>& cells, const std::vector<Weight>& weights, qsizetype from,
                         double least) {
    Chunk chunk;
    qsizetype most = 0;
    for (std::size_t c = 0; c < cells.size(); ++c) {
      const QStringList part = cells[c].mid(from, kRowLines);
      most = std::max(most, part.size());
      for (qsizetype i = 0; i < part.size(); ++i)
        chunk.figures.push_back(placed(textFigure(part[i], size_mm, weights[c], kInks.ink, left[c + 1] - left[c]), left[c],
                                       kCell_mm * 0.6 + line_mm * static_cast<double>(i)));
    }
    chunk.height_mm = std::max(least, line_mm * static_cast<double>(most) + kCell_mm * 1.2);
    chunk.figures.push_back(placed(lineFigure(width_mm_, kInks.rule, kRule_mm), 0, chunk.height_mm));
    return chunk;
  };
  std::shared_ptr<Chunk> top;
  if (!head.empty()) {
    std::vector<QStringList> cells;
    for (std::size_t c = 0; c < head.size(); ++c)
      cells.push_back(linesOf(head[c], size_mm, left[c + 1] - left[c] - kCell_mm, Weight::Bold));
    top = std::make_shared<Chunk>(rowOf(cells, std::vector<Weight>(head.size(), Weight::Bold), 0, 0));
    top->after = Chunk::Break::Never;
    add(*top);
  }
  for (std::size_t r = 0; r < rows.size(); ++r) {
    const std::vector<Cell>& row = rows[r];
    std::vector<QStringList> cells;
    std::vector<Weight> weights;
    qsizetype most = 1;
    for (std::size_t c = 0; c < row.size(); ++c) {
      cells.push_back(linesOf(row[c].text, size_mm, left[c + 1] - left[c] - kCell_mm, row[c].weight));
      weights.push_back(row[c].weight);
      most = std::max(most, cells.back().size());
    }
    for (qsizetype from = 0; from < most; from += kRowLines) {
      Chunk chunk = rowOf(cells, weights, from, least_mm);
      chunk.head = top;
      if (r == 0 && rows.size() > 1) chunk.after = Chunk::Break::Never;  // no head with a single row
      add(std::move(chunk));
    }
  }
}

double footHeight_mm(const Foot& foot, double width_mm) {
  qsizetype lines = 0;
  for (const QString& caution : foot.cautions) lines += linesOf(caution, type::kFoot, width_mm).size();
  const double lastLine_mm = type::kFoot * type::kLine - kFootLine_mm;  // its letters reach lower
  return kAboveRule_mm + kBelowRule_mm + type::kFoot * type::kLine + static_cast<double>(lines) * kFootLine_mm + lastLine_mm;
}

namespace {

void addFoot(paint::Page& page, const Room& room, const Foot& foot, int number, int count) {
  const double left = room.body.left(), width = room.body.width();
  double y = room.body.bottom() + kAboveRule_mm;
  page.figures.push_back(placed(lineFigure(width, kInks.rule, kRule_mm), left, y));
  y += kBelowRule_mm;
  const QString where = Words::tr("Page %1 of %2").arg(number).arg(count);
  page.figures.push_back(placed(textFigure(where, type::kFoot, Weight::Plain, kInks.soft, width, paint::TextRun::Anchor::End), left, y));
  const double whereWidth = widthOf(where, type::kFoot) + 4;
  page.figures.push_back(placed(textFigure(cutTo(foot.title, type::kFoot, width - whereWidth, Weight::Bold), type::kFoot,
                                           Weight::Bold, kInks.soft, width - whereWidth),
                                left, y));
  y += type::kFoot * type::kLine;
  for (const QString& caution : foot.cautions)
    for (const QString& line : linesOf(caution, type::kFoot, width)) {
      page.figures.push_back(placed(textFigure(line, type::kFoot, Weight::Plain, kInks.soft, width), left, y));
      y += kFootLine_mm;
    }
}

}  // namespace

std::vector<paint::Page> paginate(const std::vector<Chunk>& chunks, const Room& room, const Foot& foot) {
  std::vector<paint::Page> pages;
  double y = 0;
  const double height = room.body.height();
  const auto begin = [&] {
    paint::Page page;
    page.size_mm = room.sheet;
    page.ground = QColor(Qt::white);
    pages.push_back(std::move(page));
    y = 0;
  };
  const auto put = [&](const Chunk& chunk) {
    for (paint::PlacedFigure figure : chunk.figures) {
      figure.corner_mm += QPointF(room.body.left(), room.body.top() + y);
      pages.back().figures.push_back(std::move(figure));
    }
    y += chunk.height_mm;
  };
  begin();
  for (std::size_t i = 0; i < chunks.size(); ++i) {
    // What stays together is measured together, unless no page could hold it.
    double need = chunks[i].height_mm;
    for (std::size_t j = i; j + 1 < chunks.size() && chunks[j].after == Chunk::Break::Never && !chunks[j + 1].startsPage; ++j) {
      const double more = chunks[j + 1].above_mm + chunks[j + 1].height_mm;
      if (need + more > height) break;
      need += more;
    }
    const double above = y > 0 ? chunks[i].above_mm : 0;
    if (y > 0 && (chunks[i].startsPage || y + above + need > height + 0.01)) {
      begin();
      if (chunks[i].head) put(*chunks[i].head);
    } else {
      y += above;
    }
    put(chunks[i]);
  }
  const int count = static_cast<int>(pages.size());
  for (int i = 0; i < count; ++i) {
    paint::Page& page = pages[static_cast<std::size_t>(i)];
    page.title = foot.title;
    addFoot(page, room, foot, i + 1, count);
    // Ids stay unique within a page, as SVG asks.
    for (std::size_t f = 0; f < page.figures.size(); ++f)
      page.figures[f].figure.id += QStringLiteral("-%1").arg(f + 1);
  }
  return pages;
}

}  // namespace combdraft::handout

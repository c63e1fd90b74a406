#pragma once
// Content as chunks one below the other, and chunks as pages. A chunk is never cut;
// long text and tables are made of many.
#include <functional>
#include <memory>

#include "app/handout/letters.h"
#include "app/handout/paper.h"

namespace combdraft::handout {

/// Figures in paper mm, placed from the chunk's own top left corner.
struct Chunk {
  std::vector<paint::PlacedFigure> figures;
  double height_mm = 0;
  double above_mm = 0;  ///< room before it, none at the head of a page
  enum class Break { Allowed, Never } after = Break::Allowed;  ///< Never: the next stays with it
  bool startsPage = false;
  /// What is repeated when a page begins with this chunk (the head of a table).
  std::shared_ptr<const Chunk> head;
};

/// Adds content from top to bottom in a width.
class Column {
 public:
  explicit Column(double width_mm) : width_mm_(width_mm) {}

  double width_mm() const { return width_mm_; }
  double height_mm() const;
  bool isEmpty() const { return chunks_.empty(); }

  enum class Tone { Ink, Soft };
  /// Lines of text; a paragraph's first two and last two lines stay together.
  void text(const QString& words, double size_mm = type::kBody, Weight weight = Weight::Plain, Tone tone = Tone::Ink,
            double indent_mm = 0);
  void heading(const QString& words);
  void subheading(const QString& words);
  /// A sign before the first line, the others hang: "•", "3", or "" for an empty box to tick.
  void bullet(const QString& words, const QString& sign = QStringLiteral("•"));
  void tickBox(const QString& words);
  /// A label and a line to write on; further lines below it.
  void writingLine(const QString& label, int lines = 1, const QString& typed = {});
  void gap(double mm) { gap_mm_ = std::max(gap_mm_, mm); }
  void rule();
  void figure(paint::Figure figure, double scale, double left_mm = 0);
  void nextPage() { startsPage_ = true; }
  /// The next chunk stays with the one before.
  void stay();
  void add(Chunk chunk);
  /// Everything from the chunk at `from` on stays on one page where a page can hold it.
  void keepTogether(std::size_t from);
  /// Columns of their own width side by side, each from its top; they must be no higher than a page.
  void row(const std::vector<std::pair<double, const Column*>>& cells);

  /// Rows of text; the head is repeated on each page. Widths are shares.
  struct Cell {
    QString text;
    Weight weight = Weight::Plain;
  };
  void table(const std::vector<QString>& head, const std::vector<double>& shares,
             const std::vector<std::vector<Cell>>& rows, double size_mm = type::kSmall, double least_mm = 0);

  const std::vector<Chunk>& chunks() const { return chunks_; }
  /// Everything as one chunk.
  Chunk joined() const;
  /// The same with a frame round it.
  void box(const Column& inside, double pad_mm = 3);

 private:
  double width_mm_, gap_mm_ = 0;
  bool startsPage_ = false;
  std::vector<Chunk> chunks_;
};

/// What stands on every page below the body.
struct Foot {
  QString title;                 ///< at the left
  QStringList cautions;          ///< one line each
};

/// How far it reaches below the body, mm.
double footHeight_mm(const Foot& foot, double width_mm);

/// Puts chunks on pages. Page titles: "Title, page 3 of 12".
std::vector<paint::Page> paginate(const std::vector<Chunk>& chunks, const Room& room, const Foot& foot);

// small figures
paint::Figure textFigure(const QString& words, double size_mm, Weight weight, const QColor& colour, double width_mm,
                         paint::TextRun::Anchor anchor = paint::TextRun::Anchor::Start);
paint::Figure lineFigure(double width_mm, const QColor& colour, double thickness_mm);

}  // namespace combdraft::handout

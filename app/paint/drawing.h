#pragma once
// One list of drawing items for screen, paper and files. Coordinates are mm of
// the view (u to the right, v down); backends only scale.
#include <QColor>
#include <QImage>
#include <QPainterPath>
#include <QString>
#include <QTransform>
#include <optional>
#include <vector>

namespace combdraft::paint {

/// Groups of a drawing, bottom to top. Each becomes one named group in SVG.
enum class Layer { Art, Look, Regions, Diagram, Labels, Overlay, Key };
inline constexpr Layer kLayers[] = {Layer::Art,    Layer::Look,    Layer::Regions, Layer::Diagram,
                                    Layer::Labels, Layer::Overlay, Layer::Key};
/// "art", "look", "regions", "diagram", "labels", "overlay", "key".
QString layerWord(Layer layer);

/// What an item stands for; named in the SVG as class.
enum class Role {
  Ground, Skin, Scalp, Outline, Hairline, Feature, Guide, Part, Whorl, Look, Region, Section,
  Piece, Teeth, Hatch, LeftOut, Deepen, Paint, DropOut, Backcomb, Hidden, Number, Letter, Depth,
  Leader, Note, Arrow, Mark, Handle, Selection, Caption, Key
};
QString roleWord(Role role);

struct Style {
  bool operator==(const Style&) const = default;
  QColor stroke;                   ///< invalid = no line
  double width_mm = 0;             ///< in the drawing's mm
  std::vector<double> dash_mm;     ///< empty = solid
  QColor fill;                     ///< invalid = no fill
  Qt::PenCapStyle cap = Qt::RoundCap;
};

struct TextRun {
  bool operator==(const TextRun&) const = default;
  QString words;
  QPointF at;             ///< anchor, middle of the letters' height
  double size_mm = 3;
  QColor colour;
  enum class Anchor { Start, Middle, End } anchor = Anchor::Middle;
  enum class Weight { Plain, Bold } weight = Weight::Plain;
};

struct DrawingItem {
  QString id;    ///< "piece-7"; several items of one thing share its id
  Role role = Role::Feature;
  Layer layer = Layer::Art;
  QString name;  ///< for people: "Piece 7, back left, 8 mm"
  QPainterPath path;
  Style style;
  QPainterPath clip;  ///< empty = none
  std::optional<TextRun> text;
  QImage image;       ///< drawn into imageRect when not null
  QRectF imageRect;

  bool operator==(const DrawingItem&) const = default;
  /// A rectangle that holds all that is drawn of it, letters with room to spare.
  QRectF extent() const;
};

using Items = std::vector<DrawingItem>;

/// A drawing with its extent.
struct Figure {
  QString id;     ///< "back-diagram"
  QString title;  ///< "Back"
  QRectF frame;
  Items items;
};

/// Figures placed on one sheet of paper; all sizes in paper mm.
struct PlacedFigure {
  Figure figure;
  QPointF corner_mm;  ///< where the frame's top left corner lies
  double scale = 1;   ///< paper mm per drawing mm
};
struct Page {
  QString title;
  QSizeF size_mm;
  QColor ground;
  std::vector<PlacedFigure> figures;
};

/// Family names in order of wish; the first one present is used.
QStringList fontFamilies();

}  // namespace combdraft::paint

#pragma once
// What the views share and the document does not keep: where the pointer is on
// the scalp, how the hair is worn and lit, which layer shows, which view is
// large. One signal says which of these changed.
#include <QObject>
#include <optional>

#include "engine/head/sheet_view.h"
#include "engine/look/look.h"

namespace combdraft::document {

/// What the hand does on the sheet.
enum class Tool {
  Select, Section, Parting, Piece, LeftOut, DropOut, LayOut, Number, PartLine, Whorl, Note, Measure
};

/// What is shown: the diagram, the look, or both with a divider.
enum class Layer { Diagram, Both, Look };

/// The ground round every look.
enum class Surround { Paper, MidGrey };

/// Places on the hair that the sheet points at: what a finding is about.
struct Marks {
  std::vector<Point3f> places;  ///< mm, on the hair's surface
  double cell_mm = 2;           ///< what each stands for
};

class ViewState : public QObject {
  Q_OBJECT

 public:
  enum class Aspect {
    Hover = 1,     ///< hoverPoint, hoverItem
    Look = 2,      ///< lookSettings: how worn, when, in which light
    Layer = 4,     ///< layer, divider, surround
    Arrangement = 8,  ///< largeView, zoom
    Tool = 16,
    Marks = 32        ///< marks
  };
  Q_DECLARE_FLAGS(Aspects, Aspect)

  explicit ViewState(QObject* parent = nullptr) : QObject(parent) {}

  const std::optional<head::ScalpPoint>& hoverPoint() const { return hoverPoint_; }
  const plan::ItemId& hoverItem() const { return hoverItem_; }
  void setHover(const std::optional<head::ScalpPoint>& point, const plan::ItemId& item = {});

  const look::LookSettings& lookSettings() const { return lookSettings_; }
  void setLookSettings(const look::LookSettings& settings);

  Layer layer() const { return layer_; }
  void setLayer(Layer layer);
  /// Where the divider stands across each view, 0 left .. 1 right; left of it
  /// is the diagram. Used when the layer is Both.
  double divider_frac() const { return divider_frac_; }
  void setDivider(double divider_frac);
  Surround surround() const { return surround_; }
  void setSurround(Surround surround);

  /// The large view; nothing = all views at one size.
  const std::optional<head::ViewName>& largeView() const { return largeView_; }
  void setLargeView(const std::optional<head::ViewName>& view);
  /// 1 = the view fits its place; 0.5 to 8.
  double zoom() const { return zoom_; }
  void setZoom(double zoom);

  const Marks& marks() const { return marks_; }
  void setMarks(Marks marks);

  Tool tool() const { return tool_; }
  void setTool(Tool tool);

 Q_SIGNALS:
  void changed(combdraft::document::ViewState::Aspects aspects);

 private:
  template <class T>
  void set(T& field, const T& value, Aspect aspect) {
    if (field == value) return;
    field = value;
    Q_EMIT changed(aspect);
  }

  std::optional<head::ScalpPoint> hoverPoint_;
  plan::ItemId hoverItem_;
  look::LookSettings lookSettings_;
  Layer layer_ = Layer::Both;
  double divider_frac_ = 0.5;
  Surround surround_ = Surround::Paper;
  std::optional<head::ViewName> largeView_ = head::ViewName::Back;
  double zoom_ = 1;
  Marks marks_;
  Tool tool_ = Tool::Select;
};

}  // namespace combdraft::document

Q_DECLARE_OPERATORS_FOR_FLAGS(combdraft::document::ViewState::Aspects)

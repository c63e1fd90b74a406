#pragma once
// A tool of the sheet: what the hand does with it, what it says, what it draws
// over the views. Select has none; the sheet does that itself.
#include <QString>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "app/document/document_controller.h"
#include "app/document/view_state.h"
#include "app/paint/scene.h"
#include "app/sheet/snap.h"

namespace combdraft::sheet {

/// Where the hand is, for a tool.
struct ToolHand {
  Snap snap;              ///< caught or free
  head::ScalpPoint free;  ///< under the pointer itself
  plan::ItemId item;      ///< what lies there; "" = nothing
  Qt::KeyboardModifiers keys;
  double reach_mm = 4;    ///< what counts as "on" something
};

/// What a tool wants to see drawn.
struct ToolSketch {
  std::vector<head::ScalpPoint> line;  ///< with the pointer's place at its end
  std::vector<head::ScalpPoint> corners;
  double thickness_mm = 0;             ///< 0 = a line, else a strip
  bool closed = false;
  std::optional<head::ScalpPoint> trouble;  ///< where it goes wrong
  QString tag;                         ///< beside the pointer
};

/// What a tool works on. `scene` follows the document.
struct ToolContext {
  document::DocumentController& document;
  const document::ViewState& view;
  std::function<std::shared_ptr<const paint::Scene>()> scene;
  std::function<const SnapLines&()> snaps;
  /// Asks for a line of text at a place; calls back with it on Enter.
  std::function<void(const head::ScalpPoint&, const QString&, std::function<void(const QString&)>)>
      askText;
};

class SheetTool {
 public:
  explicit SheetTool(ToolContext context) : context_(std::move(context)) {}
  virtual ~SheetTool() = default;

  virtual void press(const ToolHand& hand) = 0;
  /// With the button down and moved far enough to mean it.
  virtual void drag(const ToolHand&) {}
  virtual void release(const ToolHand&) {}
  /// Enter or a double click; true when something came of it.
  virtual bool finish() { return false; }
  /// A typed character; true when it was taken.
  virtual bool type(const QString&) { return false; }
  virtual bool isTyping() const { return false; }
  /// Whether a number is begun, so that a space belongs to it.
  virtual bool hasTyped() const { return false; }
  /// Backspace; true when there was something to take back.
  virtual bool erase() { return false; }
  /// Delete while the pointer is at `hand`; true when something went.
  virtual bool remove(const ToolHand&) { return false; }
  /// Escape; true when something was under way.
  virtual bool drop() { return false; }
  /// Whether what is drawn but cannot be finished yet must outlive another tool.
  virtual bool isWorthKeeping() const { return false; }
  /// One line: what to do now, or what is wrong.
  virtual QString words() const = 0;
  virtual ToolSketch sketch(const std::optional<Snap>&) const { return {}; }
  /// Corners under way, for closing an outline.
  virtual std::vector<head::ScalpPoint> corners() const { return {}; }

 protected:
  std::shared_ptr<const paint::Scene> scene() const { return context_.scene(); }
  ToolContext context_;
};

/// What a new piece begins with.
struct NewPiece {
  double thickness_mm = 5, start_mm = 20;
};

/// Null for Select.
std::unique_ptr<SheetTool> makeTool(document::Tool tool, const ToolContext& context,
                                    const NewPiece& newPiece);

/// The smallest section that holds a place; "" = none.
plan::ItemId sectionAt(const paint::Scene& scene, const Vec3& place);

/// Characters a length is typed with, kept short. True when `text` was added.
bool addTyped(QString& typed, const QString& text);

}  // namespace combdraft::sheet

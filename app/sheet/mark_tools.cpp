// Tools that act where the hand points: lay out, drop-out, swirl, note, number,
// measure; and which tool is which.
#include <QCoreApplication>
#include <algorithm>
#include <utility>
#include <cmath>

#include "app/controls/units.h"
#include "app/paint/describe_piece.h"
#include "app/sheet/line_tool.h"
#include "engine/head/strip_frame.h"
#include "engine/head/surface_distance.h"
#include "engine/plan/edits.h"
#include "engine/plan/field_info.h"
#include "engine/plan/lay_out.h"

namespace combdraft::sheet {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};
QString length(double mm) { return controls::lengthText(mm, controls::Units::current().length()); }

// ---- lay out --------------------------------------------------------------

class LayOutTool : public SheetTool {
 public:
  using SheetTool::SheetTool;

  void press(const ToolHand& hand) override {
    trouble_.clear();
    const auto now = scene();
    const head::HeadShape& shape = now->head().shape;
    const plan::ItemId id = sectionAt(*now, shape.pointAt(hand.free));
    if (id.empty()) {
      trouble_ = now->sections().empty() ? Words::tr("Draw a section first, then click into it here.")
                                         : Words::tr("There is no section here: click into one.");
      return;
    }
    const plan::Plan& before = context_.document.document();
    const plan::Section& section = *before.find<plan::Section>(id);
    if (section.layout) {
      context_.document.select(document::Selection::one(id));
      return;
    }
    plan::Section tried = section;
    tried.layout = plan::Layout{};
    switch (plan::runOf(shape, tried).trouble) {
      case plan::RunTrouble::OutlineCrosses:
        trouble_ = Words::tr("This section's outline crosses itself: move a corner first.");
        return;
      case plan::RunTrouble::NoRoom:
        trouble_ = Words::tr("There is no room for half a piece in this section: make it larger.");
        return;
      case plan::RunTrouble::TooMany:
      case plan::RunTrouble::None: break;
    }
    const plan::ChangeSet edit = plan::changeSections(
        before, {id}, [](plan::Section& s) { s.layout = plan::Layout{}; });
    context_.document.edit(plan::applied(before, edit), Words::tr("Lay out a section"),
                           document::Selection::one(id));
  }
  QString words() const override {
    return trouble_.isEmpty()
               ? Words::tr("Click into a section: it is filled with equal pieces and left-outs; its card changes the rule.")
               : trouble_;
  }
  bool drop() override { return trouble_.clear(), false; }

 private:
  QString trouble_;
};

// ---- drop-out -------------------------------------------------------------

class DropOutTool : public SheetTool {
 public:
  using SheetTool::SheetTool;

  void press(const ToolHand& hand) override {
    drop();
    const auto* piece = context_.document.document().find<plan::Piece>(hand.item);
    if (!piece || piece->action == plan::Action::LeaveOut) {
      trouble_ = Words::tr("Press on a piece, then draw along it.");
      return;
    }
    piece_ = hand.item;
    const head::HeadShape& shape = scene()->head().shape;
    std::vector<Vec3> line;
    for (const head::ScalpPoint& p : piece->line) line.push_back(shape.pointAt(p));
    frame_ = std::make_unique<head::StripFrame>(shape, line);
    start_mm_ = alongAt(hand.free);
  }
  void drag(const ToolHand& hand) override {
    if (!frame_) return;
    end_mm_ = alongAt(hand.free);
    preview();
  }
  void release(const ToolHand&) override {
    if (!frame_) return;
    const auto* piece = context_.document.document().find<plan::Piece>(piece_);
    if (!piece) {  // taken away meanwhile
      drop();
      return;
    }
    if (!end_mm_) click();
    if (context_.document.isTentative())
      context_.document.commitTentative(Words::tr("Drop-out of piece %1").arg(paint::pieceNumber(*piece)));
    frame_.reset();
    end_mm_.reset();
    typed_.clear();
  }
  bool type(const QString& text) override {
    if (!frame_ || !addTyped(typed_, text)) return false;
    preview();
    return true;
  }
  bool isTyping() const override { return frame_ != nullptr; }
  bool erase() override {
    if (!frame_ || typed_.isEmpty()) return false;
    typed_.chop(1);
    preview();
    return true;
  }
  bool drop() override {
    const bool was = frame_ != nullptr;
    if (was) context_.document.dropTentative();
    frame_.reset();
    end_mm_.reset();
    typed_.clear();
    trouble_.clear();
    return was;
  }
  QString words() const override {
    if (!trouble_.isEmpty()) return trouble_;
    if (!frame_) return Words::tr("Draw along a piece what stays dark; a click leaves out 20 mm, a click on a drop-out takes it away.");
    const auto [from, to] = stretch();
    return Words::tr("%1 left dark; type a number for its exact length.").arg(length(to - from));
  }

 private:
  double alongAt(const head::ScalpPoint& at) const {
    const auto place = frame_->placeOf(scene()->head().shape.pointAt(at), 400);
    return std::clamp(place ? place->along_mm : 0, 0.0, frame_->length_mm());
  }
  std::pair<double, double> stretch() const {
    double end = end_mm_.value_or(start_mm_);
    if (const auto typed = controls::lengthFrom(typed_, controls::Units::current().length()))
      end = start_mm_ + (end < start_mm_ ? -*typed : *typed);
    const auto tenths = [&](double mm) {
      return std::round(std::clamp(mm, 0.0, frame_->length_mm()) * 10) / 10;
    };
    return std::minmax(tenths(start_mm_), tenths(end));
  }
  void put(const std::function<void(plan::Piece&)>& change) {
    const plan::Plan& before = context_.document.document();
    context_.document.setTentative(plan::applied(before, plan::changePieces(before, {piece_}, change)));
  }
  void preview() {
    const auto made = stretch();  // a pair: lambdas cannot take bindings in C++20 on clang 14
    if (made.second - made.first < 0.5) return context_.document.dropTentative();
    put([&](plan::Piece& piece) { join(piece.dropOuts, made.first, made.second); });
  }
  void click() {
    const auto& dropOuts = context_.document.document().find<plan::Piece>(piece_)->dropOuts;
    for (std::size_t i = 0; i < dropOuts.size(); ++i)
      if (start_mm_ >= dropOuts[i].from_mm && start_mm_ <= dropOuts[i].to_mm)
        return put([&](plan::Piece& piece) {
          piece.dropOuts.erase(piece.dropOuts.begin() + static_cast<std::ptrdiff_t>(i));
        });
    const double from = std::round(std::max(0.0, start_mm_ - 10) * 10) / 10;
    const double to = std::round(std::min(frame_->length_mm(), start_mm_ + 10) * 10) / 10;
    put([&](plan::Piece& piece) { join(piece.dropOuts, from, to); });
  }
  // Stretches that touch become one.
  static void join(std::vector<plan::Stretch>& stretches, double from, double to) {
    std::vector<plan::Stretch> kept;
    for (const plan::Stretch& s : stretches) {
      if (s.to_mm < from || s.from_mm > to) kept.push_back(s);
      else from = std::min(from, s.from_mm), to = std::max(to, s.to_mm);
    }
    if (kept.size() < plan::limits::kSmallList) kept.push_back({from, to});
    std::sort(kept.begin(), kept.end(),
              [](const plan::Stretch& a, const plan::Stretch& b) { return a.from_mm < b.from_mm; });
    stretches = std::move(kept);
  }

  plan::ItemId piece_;
  std::unique_ptr<head::StripFrame> frame_;
  double start_mm_ = 0;
  std::optional<double> end_mm_;
  QString typed_, trouble_;
};

// ---- swirl ----------------------------------------------------------------

class WhorlTool : public SheetTool {
 public:
  using SheetTool::SheetTool;

  void press(const ToolHand& hand) override {
    const auto& whorls = context_.document.document().head().whorls;
    index_ = nearest(hand.free);
    const bool on = index_ && far_mm(*index_, hand.free) < std::max(10.0, hand.reach_mm);
    if (on && hand.keys & Qt::AltModifier) return turn();
    if (!on && hand.keys & Qt::ShiftModifier && whorls.size() < 2) {
      preview([&](plan::Head& head) { head.whorls.push_back({hand.free, plan::Turn::Clockwise, {}}); });
      index_ = whorls.size();
      name_ = Words::tr("Add a swirl");
      return;
    }
    name_ = Words::tr("Move the swirl");
    move(hand);
  }
  void drag(const ToolHand& hand) override { move(hand); }
  void release(const ToolHand&) override {
    if (std::exchange(isMine_, false) && context_.document.isTentative()) context_.document.commitTentative(name_);
  }
  bool remove(const ToolHand& hand) override {
    const auto index = nearest(hand.free);
    if (!index || context_.document.document().head().whorls.size() < 2) return false;
    const plan::Plan& before = context_.document.document();
    const plan::ChangeSet edit = plan::changeHead(before, [&](plan::Head& head) {
      head.whorls.erase(head.whorls.begin() + static_cast<std::ptrdiff_t>(*index));
    });
    context_.document.edit(plan::applied(before, edit), Words::tr("Remove a swirl"));
    return true;
  }
  bool drop() override {
    const bool was = context_.document.isTentative();
    context_.document.dropTentative();
    return was;
  }
  QString words() const override {
    return context_.document.plan().head().whorls.size() < 2
               ? Words::tr("Click where the hair swirls. Shift+click adds a second, Alt+click on it changes its turn.")
               : Words::tr("Click or drag moves the nearer swirl. Alt+click changes its turn, Delete removes it.");
  }

 private:
  double far_mm(std::size_t index, const head::ScalpPoint& at) const {
    const head::HeadShape& shape = scene()->head().shape;
    return (shape.pointAt(context_.document.document().head().whorls[index].at) - shape.pointAt(at)).norm();
  }
  std::optional<std::size_t> nearest(const head::ScalpPoint& at) const {
    std::optional<std::size_t> best;
    for (std::size_t i = 0; i < context_.document.document().head().whorls.size(); ++i)
      if (!best || far_mm(i, at) < far_mm(*best, at)) best = i;
    return best;
  }
  void preview(const std::function<void(plan::Head&)>& change) {
    const plan::Plan& before = context_.document.document();
    context_.document.setTentative(plan::applied(before, plan::changeHead(before, change)));
    isMine_ = true;
  }
  void move(const ToolHand& hand) {
    if (!index_ || !scene()->head().hairline.contains(hand.free)) return;
    const std::size_t index = *index_;
    const head::ScalpPoint at{std::round(hand.free.bearing_deg * 10) / 10, std::round(hand.free.drop_deg * 10) / 10};
    preview([&](plan::Head& head) {
      if (index < head.whorls.size()) head.whorls[index].at = at;
      else if (head.whorls.size() < 2) head.whorls.push_back({at, plan::Turn::Clockwise, {}});
    });
  }
  void turn() {
    const plan::Plan& before = context_.document.document();
    const std::size_t index = *index_;
    const plan::ChangeSet edit = plan::changeHead(before, [&](plan::Head& head) {
      plan::Turn& turn = head.whorls[index].turn;
      turn = turn == plan::Turn::Clockwise ? plan::Turn::Counterclockwise : plan::Turn::Clockwise;
    });
    context_.document.edit(plan::applied(before, edit), Words::tr("Turn of the swirl"));
  }

  bool isMine_ = false;  ///< what is shown tentatively is this tool's
  std::optional<std::size_t> index_;
  QString name_;
};

// ---- note -----------------------------------------------------------------

class NoteTool : public SheetTool {
 public:
  using SheetTool::SheetTool;

  void press(const ToolHand& hand) override {
    const plan::Plan& before = context_.document.document();
    if (const auto* old = before.find<plan::Note>(hand.item)) {
      const plan::ItemId id = hand.item;
      context_.askText(old->at, QString::fromStdString(old->text), [this, id](const QString& text) {
        const plan::Plan& now = context_.document.document();
        const auto* note = now.find<plan::Note>(id);
        if (!note) return;
        if (text.trimmed().isEmpty()) {
          context_.document.edit(plan::applied(now, plan::removeItems(now, {id})), Words::tr("Remove a note"));
          return;
        }
        plan::Note changed = *note;
        changed.text = text.toStdString();
        context_.document.edit(plan::applied(now, plan::setItem(now, id, changed)), Words::tr("Change a note"));
      });
      return;
    }
    const head::ScalpPoint at = hand.snap.at;
    context_.askText(at, {}, [this, at](const QString& text) {
      if (text.trimmed().isEmpty()) return;
      const plan::Plan& now = context_.document.document();
      plan::Note note;
      note.choice = now.info().activeChoice;
      note.at = at;
      note.text = text.toStdString();
      const plan::ItemId id = now.freeId("note");
      context_.document.edit(plan::applied(now, plan::setItem(now, id, note)), Words::tr("Write a note"),
                             document::Selection::one(id));
    });
  }
  QString words() const override {
    return Words::tr("Click where the note stands and type it; Enter keeps it, Escape drops it. Click a note to change it. Notes are printed too: nothing about a person.");
  }
};

// ---- number ---------------------------------------------------------------

class NumberTool : public SheetTool {
 public:
  using SheetTool::SheetTool;

  void press(const ToolHand& hand) override {
    pressed_ = context_.document.document().find<plan::Piece>(hand.item) ? hand.item : plan::ItemId();
  }
  void release(const ToolHand& hand) override {
    const plan::Plan& now = context_.document.document();
    const auto* onto = now.find<plan::Piece>(hand.item);
    if (pressed_.empty() || !onto) return;
    std::vector<plan::ItemId> order;
    for (const auto& [id, piece] : now.pieces()) order.push_back(id);
    const auto takeOut = [&](const plan::ItemId& id) { std::erase(order, id); };
    if (hand.item != pressed_) {
      // Dragged onto another: takes its place.
      const auto place = std::find(order.begin(), order.end(), hand.item) - order.begin();
      takeOut(pressed_);
      order.insert(order.begin() + std::min<std::ptrdiff_t>(place, static_cast<std::ptrdiff_t>(order.size())), pressed_);
      drop();
      return put(order, Words::tr("Renumber"), document::Gesture::none());
    }
    // Taps that were undone meanwhile are forgotten.
    for (std::size_t i = 0; i < tapped_.size(); ++i) {
      const std::size_t at = static_cast<std::size_t>(first_ - 1) + i;
      if (at >= order.size() || order[at] != tapped_[i]) {
        tapped_.clear();
        break;
      }
    }
    if (tapped_.empty()) {
      gesture_ = document::Gesture::begin();
      first_ = std::max(1, typed_.toInt());
    }
    takeOut(pressed_);
    for (const plan::ItemId& id : tapped_) takeOut(id);
    if (std::find(tapped_.begin(), tapped_.end(), pressed_) == tapped_.end()) tapped_.push_back(pressed_);
    const std::size_t at = std::min(static_cast<std::size_t>(first_ - 1), order.size());
    first_ = static_cast<int>(at) + 1;  // no number lies beyond the last piece
    order.insert(order.begin() + static_cast<std::ptrdiff_t>(at), tapped_.begin(), tapped_.end());
    put(order, Words::tr("Number by tapping"), *gesture_);
  }
  bool type(const QString& text) override {
    if (!tapped_.empty() || text.size() != 1 || !text.at(0).isDigit() || typed_.size() > 3) return false;
    typed_ += text;
    return true;
  }
  bool isTyping() const override { return tapped_.empty(); }
  bool erase() override {
    if (typed_.isEmpty() || !tapped_.empty()) return false;
    typed_.chop(1);
    return true;
  }
  bool finish() override { return drop(); }
  bool drop() override {
    const bool was = !tapped_.empty() || !typed_.isEmpty();
    tapped_.clear();
    typed_.clear();
    gesture_.reset();
    return was;
  }
  QString words() const override {
    return tapped_.empty() && typed_.isEmpty()
               ? Words::tr("Tap the pieces in working order; type a number to begin with it. Drag one piece onto another to take its number.")
               : Words::tr("The next piece gets number %1. Enter ends.").arg(next());
  }
  ToolSketch sketch(const std::optional<Snap>&) const override {
    ToolSketch sketch;
    sketch.tag = QString::number(next());
    return sketch;
  }

 private:
  /// What the next tap gives: never more than there are pieces.
  int next() const {
    const int wanted = (tapped_.empty() ? std::max(1, typed_.toInt()) : first_) + static_cast<int>(tapped_.size());
    return std::clamp(wanted, 1, std::max(1, static_cast<int>(context_.document.document().pieces().size())));
  }
  void put(const std::vector<plan::ItemId>& order, const QString& name, document::Gesture gesture) {
    const plan::Plan& now = context_.document.document();
    context_.document.edit(plan::applied(now, plan::renumber(now, now.info().activeChoice, order)), name, gesture);
  }
  plan::ItemId pressed_;
  std::vector<plan::ItemId> tapped_;
  QString typed_;
  int first_ = 1;
  std::optional<document::Gesture> gesture_;
};

// ---- measure --------------------------------------------------------------

class MeasureTool : public SheetTool {
 public:
  using SheetTool::SheetTool;

  void press(const ToolHand& hand) override {
    from_ = from_ ? std::nullopt : std::optional(hand.snap.at);
  }
  bool drop() override { return std::exchange(from_, std::nullopt).has_value(); }
  QString words() const override {
    return from_ ? Words::tr("Point to where you measure to.") : Words::tr("Click where you measure from.");
  }
  ToolSketch sketch(const std::optional<Snap>& hover) const override {
    ToolSketch sketch;
    if (!from_) return sketch;
    sketch.corners = {*from_};
    if (!hover) return sketch;
    const head::HeadShape& shape = scene()->head().shape;
    const head::SurfacePath way = head::shortestPath(shape, shape.pointAt(*from_), shape.pointAt(hover->at));
    for (const Vec3& p : way.points) sketch.line.push_back(shape.scalpPointAt(p));
    sketch.tag = length(way.length_mm);
    return sketch;
  }

 private:
  std::optional<head::ScalpPoint> from_;
};

}  // namespace

std::unique_ptr<SheetTool> makeTool(document::Tool tool, const ToolContext& context,
                                    const NewPiece& newPiece) {
  using document::Tool;
  const auto line = [&](DrawnLine kind) { return std::make_unique<LineTool>(context, kind, newPiece); };
  switch (tool) {
    case Tool::Select: return nullptr;
    case Tool::Section: return line(DrawnLine::Section);
    case Tool::Parting: return line(DrawnLine::Parting);
    case Tool::Piece: return line(DrawnLine::Piece);
    case Tool::LeftOut: return line(DrawnLine::LeftOut);
    case Tool::PartLine: return line(DrawnLine::Part);
    case Tool::LayOut: return std::make_unique<LayOutTool>(context);
    case Tool::DropOut: return std::make_unique<DropOutTool>(context);
    case Tool::Whorl: return std::make_unique<WhorlTool>(context);
    case Tool::Note: return std::make_unique<NoteTool>(context);
    case Tool::Number: return std::make_unique<NumberTool>(context);
    case Tool::Measure: return std::make_unique<MeasureTool>(context);
  }
  return nullptr;
}

}  // namespace combdraft::sheet

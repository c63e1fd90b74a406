#include "app/sheet/head_sheet.h"

#include <QLineEdit>
#include <QPainterPath>
#include <QResizeEvent>
#include <algorithm>
#include <utility>
#include <cmath>

#include "app/paint/describe_piece.h"
#include "app/paint/diagram.h"
#include "app/sheet/screen_palette.h"
#include "app/sheet/sheet_accessible.h"
#include "app/words/typed_text.h"
#include "engine/head/surface_distance.h"

namespace combdraft::sheet {
namespace {

// Resolutions a look is asked for in: few, so that zooming asks seldom.
constexpr std::array kPixels_mm{0.25, 0.35, 0.5, 0.7, 1.0, 1.4, 2.0};
constexpr double kEdgeReach_px = 16;  // beside the hair that still counts as its edge
constexpr double kSnapReach_px = 10, kMostSnap_mm = 7;
constexpr double kDividerReach_px = 7, kHandleReach_px = 11, kItemReach_px = 4;

std::size_t indexOf(head::ViewName view) { return static_cast<std::size_t>(view); }

}  // namespace

HeadSheet::HeadSheet(document::DocumentController& document, document::ViewState& view,
                     QWidget* parent)
    : QWidget(parent), document_(document), view_(view) {
  shownLarge_ = view_.largeView();
  installSheetAccessibility();
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAttribute(Qt::WA_OpaquePaintEvent);
  grabGesture(Qt::PinchGesture);
  setObjectName(QStringLiteral("headSheet"));
  setAccessibleName(tr("Head sheet"));
  setAccessibleDescription(
      tr("Six views of the head. Tab walks pieces, sections and notes, arrow keys move them."));
  connect(&document_, &document::DocumentController::changed, this,
          [this](const document::DocumentChange& change) {
            if (change.kind == document::DocumentChange::Kind::Replaced) {
              // What was under way belonged to the plan before.
              closeText(TextEnd::Drop);
              dropWhatIsUnderWay();
            }
            // What catches stays while something is pulled: it would catch on itself.
            if (change.kind != document::DocumentChange::Kind::Tentative) snapLines_.reset();
            documentChanged();
          });
  connect(&document_, &document::DocumentController::selectionChanged, this, [this] {
    announceSelection();
    update();
  });
  connect(&view_, &document::ViewState::changed, this, &HeadSheet::viewChanged);
  documentChanged();
}

HeadSheet::~HeadSheet() = default;

void HeadSheet::documentChanged() {
  scene_ = std::make_shared<const paint::Scene>(document_.plan(), view_.lookSettings().choice,
                                                scene_.get());
  update();
}

const SnapLines& HeadSheet::snapLines() const {
  if (!snapLines_) snapLines_ = std::make_unique<SnapLines>(scene_);
  return *snapLines_;
}

void HeadSheet::viewChanged(document::ViewState::Aspects aspects) {
  using Aspect = document::ViewState::Aspect;
  if (aspects.testFlag(Aspect::Look)) documentChanged();
  if (aspects.testFlag(Aspect::Arrangement)) {
    if (std::exchange(shownLarge_, view_.largeView()) != view_.largeView()) {  // by whatever way: another view is seen whole
      pan_mm_ = QPointF();
      view_.setZoom(1);
    }
    relayout();
  }
  if (aspects.testFlag(Aspect::Layer)) relayout();
  if (aspects.testFlag(Aspect::Tool)) {
    // What is drawn or typed so far is kept when the hand takes another tool.
    closeText(TextEnd::Keep);
    if (view_.tool() == toolKind_) return update();
    if (tool_) tool_->finish();
    if (tool_ && tool_->isWorthKeeping()) {
      // It cannot be finished as it is: it stays in hand and says why.
      view_.setTool(toolKind_);
      return update();
    }
    dropWhatIsUnderWay();
    pressProblem_.clear();
    toolKind_ = view_.tool();
    ToolContext context{document_, view_, [this] { return scene_; },
                        [this]() -> const SnapLines& { return snapLines(); },
                        [this](const head::ScalpPoint& at, const QString& text,
                               std::function<void(const QString&)> done) {
                          askText(at, text, std::move(done));
                        }};
    tool_ = makeTool(view_.tool(), context, newPiece_);
    snap_.reset();
  }
  update();
}

void HeadSheet::relayout() {
  LayoutRequest request;
  const double line = QFontMetricsF(font()).height();
  request.area = QRectF(rect()).adjusted(8, 8, -8, -10 - kFootLines * line);
  request.large = view_.largeView();
  request.zoom = view_.zoom();
  request.pan_mm = pan_mm_;
  request.title_px = kTitleLines * line;
  places_ = layoutViews(request);
  std::vector<look::PictureRequest> wanted = wantedPictures();
  const auto same = [](const look::PictureRequest& a, const look::PictureRequest& b) {
    return a.view == b.view && a.pixel_mm == b.pixel_mm;
  };
  if (!std::equal(wanted.begin(), wanted.end(), lastWanted_.begin(), lastWanted_.end(), same)) {
    lastWanted_ = std::move(wanted);
    Q_EMIT wantedPicturesChanged();
  }
  update();
}

void HeadSheet::setLook(std::shared_ptr<const live::LookResult> look) {
  if (!look) {
    pictures_.fill(nullptr);
  } else {
    for (const auto& picture : look->frame.pictures)
      if (picture) pictures_[indexOf(picture->view)] = picture;
  }
  update();
}

std::vector<look::PictureRequest> HeadSheet::wantedPictures() const {
  std::vector<look::PictureRequest> wanted;
  if (view_.layer() == document::Layer::Diagram) return wanted;
  for (const ViewPlace& place : places_) {
    const double exact = 1 / (place.scale * devicePixelRatioF());
    double pixel_mm = kPixels_mm.front();
    for (const double step : kPixels_mm)
      if (step <= exact * 1.15) pixel_mm = step;
    wanted.push_back({place.view, pixel_mm});
  }
  return wanted;
}

void HeadSheet::refreshLayers() {
  for (const ViewPlace& place : places_)
    layers_[indexOf(place.view)].update(
        {scene_, pictures_[indexOf(place.view)], place, devicePixelRatioF(),
         screenPalette()});
}

const ViewLayers& HeadSheet::layers(head::ViewName view) const { return layers_[indexOf(view)]; }

const ViewPlace* HeadSheet::placeOf(head::ViewName view) const {
  for (const ViewPlace& place : places_)
    if (place.view == view) return &place;
  return nullptr;
}

const ViewPlace* HeadSheet::placeUnder(const QPointF& widget) const {
  for (const ViewPlace& place : places_)
    if (place.rect.contains(widget)) return &place;
  return nullptr;
}

document::Layer HeadSheet::layerOf(const ViewPlace& place) const {
  const document::Layer layer = view_.layer();
  const bool draws = tool_ && view_.tool() != document::Tool::Measure;
  return layer == document::Layer::Both && draws && (place.large || !view_.largeView())
             ? document::Layer::Diagram
             : layer;
}

double HeadSheet::dividerX(const ViewPlace& place) const {
  const QRectF frame = paint::frameOf(place.view);
  const double left = std::max(place.toWidget(frame.topLeft()).x(), place.rect.left());
  const double right = std::min(place.toWidget(frame.bottomRight()).x(), place.rect.right());
  return left + view_.divider_frac() * (right - left);
}

bool HeadSheet::isOnDivider(const QPointF& widget) const {
  const ViewPlace* place = placeUnder(widget);
  return place && layerOf(*place) == document::Layer::Both && std::abs(widget.x() - dividerX(*place)) < kDividerReach_px;
}

bool HeadSheet::isOnTitle(const ViewPlace& place, const QPointF& widget) const {
  return place.rect.contains(widget) &&
         widget.y() < place.rect.top() + kTitleLines * QFontMetricsF(font()).height();
}

std::optional<head::ScalpPoint> HeadSheet::scalpUnder(const ViewPlace& place,
                                                      const QPointF& widget) const {
  const QPointF p = place.toView(widget);
  if (!paint::viewClip(place.view).contains(p)) return std::nullopt;
  const head::HeadShape& shape = scene_->head().shape;
  const auto hit = scene_->head().view(place.view).castBack(shape, p.x(), p.y());
  if (!hit || scene_->head().hairline.above_mm(*hit) < 0) return std::nullopt;
  return shape.scalpPointAt(*hit);
}

plan::ItemId HeadSheet::itemUnder(const ViewPlace& place, const QPointF& widget) const {
  const QPointF p = place.toView(widget);
  const double reach = kItemReach_px / place.scale;
  for (const paint::DrawingItem& item : layers_[indexOf(place.view)].items())
    if ((item.role == paint::Role::Number || item.role == paint::Role::Letter || item.role == paint::Role::Note) &&
        item.path.contains(p))
      return item.id.toStdString();
  const QRectF near(p - QPointF(reach, reach), QSizeF(2 * reach, 2 * reach));
  const head::SheetView view = scene_->head().view(place.view);
  for (const auto& piece : scene_->pieces())  // earlier pieces lie on top
    if (piece->in(view).seen.intersects(near)) return piece->id;
  for (const paint::SectionShape& section : scene_->sections())
    for (const Vec3& q : section.outline) {
      if (!view.faces(scene_->head().shape, q)) continue;
      const head::ViewPoint at = view.project(q);
      if (near.adjusted(-1, -1, 1, 1).contains(QPointF(at.u_mm, at.v_mm))) return section.id;
    }
  return {};
}

std::vector<Handle> HeadSheet::shownHandles(const ViewPlace& place) const {
  const document::Selection& selection = document_.selection();
  if (selection.size() != 1 || view_.tool() != document::Tool::Select) return {};
  if (view_.largeView() && !place.large) return {};
  if (document_.plan().find<plan::Section>(selection.lead()))
    return sectionHandles(*scene_, selection.lead(), place.view);
  const paint::PieceShape* piece = scene_->find(selection.lead());
  return piece ? handlesOf(*scene_, *piece, place.view) : std::vector<Handle>{};
}

std::optional<Handle> HeadSheet::handleUnder(const ViewPlace& place, const QPointF& widget) const {
  return handleAt(shownHandles(place), place.toView(widget), kHandleReach_px / place.scale);
}

std::optional<QPointF> HeadSheet::middleOf(const plan::ItemId& id) const {
  const paint::PieceShape* piece = scene_->find(id);
  if (!piece || piece->strip.empty()) return std::nullopt;
  std::vector<const ViewPlace*> order;
  for (const ViewPlace& place : places_) order.push_back(&place);
  std::stable_partition(order.begin(), order.end(), [](const ViewPlace* p) { return p->large; });
  for (const ViewPlace* place : order) {
    const head::SheetView view = scene_->head().view(place->view);
    for (const paint::StripRun& run : paint::splitBySight(view, piece->strip)) {
      if (run.sight != paint::Sight::Seen) continue;
      const head::ViewPoint q = view.project(run.strip[run.strip.size() / 2].centre);
      const QPointF p(q.u_mm, q.v_mm);
      if (paint::viewClip(place->view).contains(p)) return place->toWidget(p);
    }
  }
  return std::nullopt;
}

QString HeadSheet::placeWords() const {
  const auto& point = view_.hoverPoint();
  if (!point) return {};
  QString text = paint::describePlace(scene_->head(), scene_->head().shape.pointAt(*point));
  // What the point catches on comes first.
  if (tool_ && snap_ && snap_->isCaught()) text = snap_->words + QStringLiteral(" · ") + text;
  return text;
}

void HeadSheet::closeText(TextEnd end) {
  const auto finished = std::exchange(textDone_, nullptr);
  if (!textEdit_) return;
  const QString typed = words::oneLine(textEdit_->text());
  textEdit_->hide();
  if (finished && end == TextEnd::Keep) finished(typed);
}

std::vector<plan::ItemId> HeadSheet::items() const {
  std::vector<plan::ItemId> ids;
  for (const auto& piece : scene_->pieces()) ids.push_back(piece->id);
  for (const paint::SectionShape& section : scene_->sections()) ids.push_back(section.id);
  for (const auto& [id, note] : scene_->notes()) ids.push_back(id);
  return ids;
}

QString HeadSheet::describe(const plan::ItemId& id) const {
  if (const paint::PieceShape* piece = scene_->find(id))
    return paint::describePiece(*piece->piece, piece->place);
  if (const auto* section = scene_->plan().find<plan::Section>(id))
    return paint::describeSection(scene_->head(), scene_->plan(), id, *section);
  if (const auto* note = scene_->plan().find<plan::Note>(id))
    return tr("Note: %1").arg(QString::fromStdString(note->text).simplified());
  return {};
}

QRectF HeadSheet::placeOnSheet(const plan::ItemId& id) const {
  std::vector<const ViewPlace*> order;
  for (const ViewPlace& place : places_) order.push_back(&place);
  std::stable_partition(order.begin(), order.end(), [](const ViewPlace* p) { return p->large; });
  for (const ViewPlace* place : order) {
    QRectF mm;
    if (const paint::PieceShape* piece = scene_->find(id)) {
      mm = piece->in(scene_->head().view(place->view)).seen.boundingRect();
    } else {
      const head::SheetView view = scene_->head().view(place->view);
      QPolygonF seen;
      const auto add = [&](const Vec3& p) {
        if (!view.faces(scene_->head().shape, p)) return;
        const head::ViewPoint q = view.project(p);
        seen << QPointF(q.u_mm, q.v_mm);
      };
      for (const paint::SectionShape& section : scene_->sections())
        if (section.id == id)
          for (const Vec3& p : section.outline) add(p);
      if (const auto* note = scene_->plan().find<plan::Note>(id)) {
        add(scene_->head().shape.pointAt(note->at));
        if (!seen.isEmpty()) mm = QRectF(seen.first() - QPointF(2, 2), QSizeF(4, 4));
      }
      if (seen.size() > 1) mm = seen.boundingRect();
    }
    if (!mm.isEmpty()) return {place->toWidget(mm.topLeft()), place->toWidget(mm.bottomRight())};
  }
  return {};
}

Snap HeadSheet::snapAt(const ViewPlace& place, const head::ScalpPoint& free,
                       Qt::KeyboardModifiers keys, const plan::ItemId& except) const {
  // The first corner closes the outline wherever it is drawn, at the rim too.
  const std::vector<head::ScalpPoint> own = tool_ ? tool_->corners() : std::vector<head::ScalpPoint>{};
  if (own.size() > 2) {
    const head::SheetView view = scene_->head().view(place.view);
    const Vec3 first = scene_->head().shape.pointAt(own.front()), here = scene_->head().shape.pointAt(free);
    const head::ViewPoint a = view.project(first), b = view.project(here);
    if (view.faces(scene_->head().shape, first) &&
        std::hypot(a.u_mm - b.u_mm, a.v_mm - b.v_mm) * place.scale < kSnapReach_px)
      return {own.front(), tr("the first corner: closes the outline"), {}};
  }
  if (keys.testFlag(Qt::ControlModifier)) return {free, {}, {}};
  const double reach = std::min(kSnapReach_px / place.scale, kMostSnap_mm);
  return snapLines().caught(scene_->head().shape.pointAt(free), reach,
                            own, except);
}

std::optional<head::ScalpPoint> HeadSheet::edgeNear(const ViewPlace& place,
                                                    const QPointF& widget) const {
  const QPointF p = place.toView(widget);
  if (!paint::viewClip(place.view).contains(p)) return std::nullopt;
  const head::HeadShape& shape = scene_->head().shape;
  const head::SheetView view = scene_->head().view(place.view);
  Vec3 at = view.castBackClamped(shape, p.x(), p.y());
  if (scene_->head().hairline.above_mm(at) < 0)
    at = scene_->head().hairline.pointAt(degrees(std::atan2(at.x(), at.y())));
  const head::ViewPoint q = view.project(at);
  const double far_px = std::hypot(q.u_mm - p.x(), q.v_mm - p.y()) * place.scale;
  if (far_px > kEdgeReach_px) return std::nullopt;
  return shape.scalpPointAt(at);
}

std::optional<ToolHand> HeadSheet::toolHand(const ViewPlace& place, const QPointF& widget,
                                            Qt::KeyboardModifiers keys) const {
  auto free = scalpUnder(place, widget);
  if (!free) free = edgeNear(place, widget);
  if (!free) return std::nullopt;
  return ToolHand{snapAt(place, *free, keys, {}), *free, itemUnder(place, widget), keys,
                  kSnapReach_px / place.scale};
}

std::optional<ToolHand> HeadSheet::toolHandHere(Qt::KeyboardModifiers keys) const {
  // By keyboard: where the linked pointer stands, in the view that faces it.
  if (!view_.hoverPoint()) return std::nullopt;
  const Vec3 p = scene_->head().shape.pointAt(*view_.hoverPoint());
  const ViewPlace* place = view_.largeView() ? placeOf(*view_.largeView()) : nullptr;
  for (const ViewPlace& other : places_)
    if (!place || !scene_->head().view(place->view).faces(scene_->head().shape, p))
      if (scene_->head().view(other.view).faces(scene_->head().shape, p)) place = &other;
  if (!place) return std::nullopt;
  const head::ViewPoint at = scene_->head().view(place->view).project(p);
  return ToolHand{snap_.value_or(Snap{*view_.hoverPoint(), {}, {}}), *view_.hoverPoint(),
                  itemUnder(*place, place->toWidget(QPointF(at.u_mm, at.v_mm))), keys,
                  kSnapReach_px / place->scale};
}

HandAt HeadSheet::handAt(const ViewPlace& place, const QPointF& widget,
                         Qt::KeyboardModifiers keys) const {
  HandAt hand{place.view, place.toView(widget), keys, std::nullopt};
  const plan::ItemId& lead = document_.selection().lead();
  if (pressedHandle_ && pressedHandle_->kind == HandleKind::Corner)
    if (const auto free = scalpUnder(place, widget))
      if (const Snap snap = snapAt(place, *free, keys, lead); snap.isCaught()) hand.caught = snap.at;
  return hand;
}

void HeadSheet::askText(const head::ScalpPoint& at, const QString& text,
                        std::function<void(const QString&)> done) {
  if (!textEdit_) {
    textEdit_ = new QLineEdit(this);
    textEdit_->setObjectName(QStringLiteral("noteText"));
    textEdit_->setAccessibleName(tr("Text of the note"));
    textEdit_->setPlaceholderText(tr("Note …"));
    textEdit_->setMaxLength(200);
    textEdit_->installEventFilter(this);
    connect(textEdit_, &QLineEdit::returnPressed, this, [this] {
      closeText(TextEnd::Keep);
      setFocus();
    });
  }
  closeText(TextEnd::Keep);
  textDone_ = std::move(done);
  textEdit_->setText(text);
  const Vec3 p = scene_->head().shape.pointAt(at);
  QPointF where(width() / 2.0, height() / 2.0);
  for (const ViewPlace& place : places_) {
    const head::SheetView view = scene_->head().view(place.view);
    if (!view.faces(scene_->head().shape, p) || (view_.largeView() && !place.large)) continue;
    const head::ViewPoint q = view.project(p);
    where = place.toWidget(QPointF(q.u_mm, q.v_mm));
  }
  const QSize size(std::min(260, width() - 24), textEdit_->sizeHint().height());
  textEdit_->setGeometry(QRect(QPoint(std::clamp(int(where.x()) + 8, 8, width() - size.width() - 8),
                                      std::clamp(int(where.y()) - size.height() / 2, 8, height() - size.height() - 8)),
                               size));
  textEdit_->show();
  textEdit_->setFocus();
}

QString HeadSheet::hint() const {
  if (gesture_) return gesture_->words();
  if (!pressProblem_.isEmpty()) return pressProblem_;
  if (tool_) return tool_->words();
  const document::Selection& selection = document_.selection();
  if (selection.size() == 1) return describe(selection.lead());
  if (selection.size() > 1) return tr("%1 selected").arg(selection.size());
  return scene_->pieces().empty() ? tr("No pieces yet. Draw a section and lay it out, or draw a piece.")
                                  : tr("Click a piece, or draw a frame around several.");
}

void HeadSheet::resizeEvent(QResizeEvent*) { relayout(); }

void HeadSheet::announceSelection() { announceSelectedItem(*this); }

}  // namespace combdraft::sheet

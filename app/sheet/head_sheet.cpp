#include "app/sheet/head_sheet.h"

#include <QPainterPath>
#include <QResizeEvent>
#include <algorithm>
#include <cmath>

#include "app/paint/describe_piece.h"
#include "app/paint/diagram.h"
#include "app/sheet/screen_palette.h"
#include "app/sheet/sheet_accessible.h"
#include "engine/head/surface_distance.h"

namespace combdraft::sheet {
namespace {

// Resolutions a look is asked for in: few, so that zooming asks seldom.
constexpr std::array kPixels_mm{0.25, 0.35, 0.5, 0.7, 1.0, 1.4, 2.0};
constexpr double kDividerReach_px = 7, kHandleReach_px = 11, kItemReach_px = 4;

std::size_t indexOf(head::ViewName view) { return static_cast<std::size_t>(view); }

}  // namespace

HeadSheet::HeadSheet(document::DocumentController& document, document::ViewState& view,
                     QWidget* parent)
    : QWidget(parent), document_(document), view_(view) {
  installSheetAccessibility();
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAttribute(Qt::WA_OpaquePaintEvent);
  grabGesture(Qt::PinchGesture);
  setObjectName(QStringLiteral("headSheet"));
  setAccessibleName(tr("Head sheet"));
  setAccessibleDescription(
      tr("Six views of the head. Tab walks the pieces, arrow keys move them."));
  connect(&document_, &document::DocumentController::changed, this,
          [this](const document::DocumentChange&) { documentChanged(); });
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

void HeadSheet::viewChanged(document::ViewState::Aspects aspects) {
  using Aspect = document::ViewState::Aspect;
  if (aspects.testFlag(Aspect::Look)) documentChanged();
  if (aspects.testFlag(Aspect::Arrangement)) relayout();
  if (aspects.testFlag(Aspect::Layer)) relayout();
  if (aspects.testFlag(Aspect::Tool)) {
    dropWhatIsUnderWay();
    measureFrom_.reset();
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

double HeadSheet::dividerX(const ViewPlace& place) const {
  const QRectF frame = paint::frameOf(place.view);
  const double left = std::max(place.toWidget(frame.topLeft()).x(), place.rect.left());
  const double right = std::min(place.toWidget(frame.bottomRight()).x(), place.rect.right());
  return left + view_.divider_frac() * (right - left);
}

bool HeadSheet::isOnDivider(const QPointF& widget) const {
  if (view_.layer() != document::Layer::Both) return false;
  const ViewPlace* place = placeUnder(widget);
  return place && std::abs(widget.x() - dividerX(*place)) < kDividerReach_px;
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
    if (item.role == paint::Role::Number && item.path.contains(p)) return item.id.toStdString();
  const QRectF near(p - QPointF(reach, reach), QSizeF(2 * reach, 2 * reach));
  for (const auto& piece : scene_->pieces()) {  // earlier pieces lie on top
    const QPainterPath outline = paint::seenOutline(*scene_, *piece, place.view);
    if (outline.boundingRect().intersects(near) && outline.intersects(near)) return piece->id;
  }
  const head::SheetView view = scene_->head().view(place.view);
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
  const Vec3 p = scene_->head().shape.pointAt(*point);
  QString text = paint::describePlace(scene_->head(), p);
  if (view_.tool() == document::Tool::Measure && measureFrom_) {
    const double far = head::surfaceDistance_mm(
        scene_->head().shape, scene_->head().shape.pointAt(*measureFrom_), p);
    text = tr("%1 from the first point. ").arg(paint::millimetres(far)) + text;
  }
  return text;
}

QString HeadSheet::hint() const {
  if (gesture_) return gesture_->words();
  switch (view_.tool()) {
    case document::Tool::Piece: return pieceTool_.words();
    case document::Tool::Measure:
      return measureFrom_ ? tr("Point to where you measure to.")
                          : tr("Click where you measure from.");
    case document::Tool::Select: break;
  }
  const document::Selection& selection = document_.selection();
  if (selection.size() == 1)
    if (const paint::PieceShape* piece = scene_->find(selection.lead()))
      return paint::describePiece(scene_->head(), *piece->piece);
  if (selection.size() > 1) return tr("%1 selected").arg(selection.size());
  return scene_->pieces().empty() ? tr("No pieces yet. Take the piece tool and draw the first.")
                                  : tr("Click a piece, or draw a frame around several.");
}

void HeadSheet::resizeEvent(QResizeEvent*) { relayout(); }

void HeadSheet::announceSelection() { announceSelectedItem(*this); }

}  // namespace combdraft::sheet

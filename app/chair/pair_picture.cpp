#include "app/chair/pair_picture.h"

#include <QPainter>
#include <algorithm>
#include <array>
#include <cmath>

#include "app/controls/theme.h"

namespace combdraft::chair {
namespace {

// Few resolutions, so that enlarging asks seldom.
constexpr std::array kPixels_mm{0.35, 0.5, 0.7, 1.0, 1.4, 2.0};
constexpr double kSharper = 1.15, kMostDrawn_px = 8;  // device pixels for a mm
constexpr int kSettle_ms = 140, kPad_px = 8;

bool isGrey() { return controls::currentTheme().name == controls::ThemeName::Dark; }

// Hair is judged on paper or mid grey, also in a dark window.
QColor ground() { return isGrey() ? paint::Palette().midGrey : controls::theme(controls::ThemeName::Light).card; }
QColor wordsInk() { return isGrey() ? QColor(0x14, 0x14, 0x14) : paint::Palette().ink; }

}  // namespace

PairPicture::PairPicture(SpokenTo whom, QWidget* parent) : QWidget(parent), whom_(whom) {
  setAttribute(Qt::WA_AcceptTouchEvents);
  setAttribute(Qt::WA_OpaquePaintEvent);
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
  setCursor(Qt::SplitHCursor);
  settle_.setSingleShot(true);
  settle_.setInterval(kSettle_ms);
  connect(&settle_, &QTimer::timeout, this, [this] { update(); });
  describe();
}

void PairPicture::setPane(int side, Pane pane) {
  Pane& mine = panes_[static_cast<std::size_t>(side)];
  if (mine == pane) return;
  const bool redraw = mine.scene != pane.scene || mine.look != pane.look || mine.kind != pane.kind || mine.marked != pane.marked;
  mine = std::move(pane);
  if (redraw) drawn_[static_cast<std::size_t>(side)] = {};
  describe();
  update();
}

void PairPicture::setView(head::ViewName view, Facing facing) {
  if (view == view_ && facing == facing_) return;
  if (view != view_) moved_ = {}, zoom_ = 1;
  view_ = view;
  facing_ = facing;
  drawn_ = {};
  changed();
}

void PairPicture::setHeads(Heads heads) {
  if (heads == heads_) return;
  heads_ = heads;
  setDivider(0.5);
  changed();
}

void PairPicture::setLine(const QString& line) {
  line_ = line;
  changed();
}

void PairPicture::setDivider(double divider_frac) {
  // Two heads: each keeps a strip that can be pulled again.
  const double edge = heads_ == Heads::Two ? 0.2 : 0.02;
  const double next = std::clamp(divider_frac, edge, 1 - edge);
  if (next == divider_frac_) return;
  divider_frac_ = next;
  describe();
  update();
}

void PairPicture::resetZoom() {
  zoom_ = 1;
  moved_ = {};
  changed();
}

void PairPicture::changed() {
  keepInPlace();
  describe();
  update();
  const look::PictureRequest now = wanted();
  if (told_ && told_->view == now.view && told_->pixel_mm == now.pixel_mm) return;
  told_ = now;
  Q_EMIT wantedChanged();
}

QString PairPicture::viewWords() const {
  using head::ViewName;
  if (whom_ == SpokenTo::Class) return paint::viewTitle(view_);
  switch (view_) {
    case ViewName::Front: return facing() == Facing::AsInMirror ? tr("Front, as in the mirror") : tr("Front, as others see you");
    case ViewName::Back: return tr("Back, as others see you");
    case ViewName::Left: return tr("Your left side");
    case ViewName::Right: return tr("Your right side");
    case ViewName::Top: return tr("From above");
    case ViewName::Crown: return tr("Crown, close up");
  }
  return {};
}

void PairPicture::describe() {
  setAccessibleName(tr("Picture: %1 on the left, %2 on the right; %3").arg(panes_[0].title, panes_[1].title, viewWords()));
  setAccessibleDescription(tr("Left and Right pull the divider, now at %1 %. Plus and minus enlarge, Shift with arrows moves, 0 shows all again. %2")
                               .arg(std::lround(divider_frac_ * 100)).arg(line_));
}

int PairPicture::titleHeight() const { return fontMetrics().height() * 2 + 2 * kPad_px; }

int PairPicture::lineHeight() const {
  if (line_.isEmpty()) return kPad_px;
  // As high as half of the room needs, so that the heads stand still while the divider is pulled.
  return lineNeeds(heads_ == Heads::Two ? width() / 2 : width());
}

int PairPicture::lineNeeds(int width_px) const {
  const QRect room(0, 0, std::max(60, width_px - 2 * kPad_px), 10'000);
  return fontMetrics().boundingRect(room, Qt::TextWordWrap | Qt::AlignHCenter, line_).height() + 2 * kPad_px;
}

// Pulled far, one picture is too narrow for the line: it would be cut.
bool PairPicture::isLineShared() const {
  const double narrower = std::min(dividerX(), width() - dividerX());
  return heads_ == Heads::One || lineNeeds(static_cast<int>(narrower)) > lineHeight();
}

double PairPicture::dividerX() const { return std::round(divider_frac_ * width()); }

QRectF PairPicture::paneRect(int side) const {
  if (heads_ == Heads::One) return rect();
  const double x = dividerX();
  return side == 0 ? QRectF(0, 0, x, height()) : QRectF(x, 0, width() - x, height());
}

QRectF PairPicture::headRect(int side) const { return paneRect(side).adjusted(0, titleHeight(), 0, -lineHeight()); }

QRectF PairPicture::lineRect(int side) const {
  const QRectF pane = isLineShared() ? QRectF(rect()) : paneRect(side);
  return QRectF(pane.left() + kPad_px, height() - lineHeight() + kPad_px, pane.width() - 2 * kPad_px, lineHeight() - 2 * kPad_px);
}

double PairPicture::fitScale() const {
  const QRectF frame = paint::frameOf(view_);
  const double room = heads_ == Heads::Two ? width() / 2.0 : width();
  return std::max(0.05, std::min(room / frame.width(), (height() - titleHeight() - lineHeight()) / frame.height()));
}

look::PictureRequest PairPicture::wanted() const {
  const double exact = 1 / (fitScale() * zoom_ * devicePixelRatioF());
  double pixel_mm = kPixels_mm.front();
  for (const double step : kPixels_mm)
    if (step <= exact * kSharper) pixel_mm = step;
  return {view_, pixel_mm};
}

void PairPicture::keepInPlace() {
  const QRectF frame = paint::frameOf(view_);
  const double scale = fitScale() * zoom_;
  const QSizeF room = headRect(0).size();
  const double x = std::max(0.0, (frame.width() * scale - (heads_ == Heads::Two ? width() / 2.0 : room.width())) / 2);
  const double y = std::max(0.0, (frame.height() * scale - room.height()) / 2);
  moved_ = {std::clamp(moved_.x(), -x, x), std::clamp(moved_.y(), -y, y)};
}

void PairPicture::zoomAt(const QPointF& at, double factor) {
  const double before = zoom_;
  zoom_ = std::clamp(zoom_ * factor, 1.0, 5.0);
  // What lies under the fingers stays there.
  const int side = heads_ == Heads::Two && at.x() > dividerX() ? 1 : 0;
  const QPointF from = at - headRect(side).center();
  moved_ = from - (from - moved_) * (zoom_ / before);
  settle_.start();
  changed();
}

void PairPicture::moveBy(const QPointF& by) {
  moved_ += by;
  changed();
}

void PairPicture::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  changed();
}

void PairPicture::draw(QPainter& painter, int side) {
  const Pane& pane = panes_[static_cast<std::size_t>(side)];
  Drawn& drawn = drawn_[static_cast<std::size_t>(side)];
  const double scale = fitScale() * zoom_, ratio = devicePixelRatioF();
  const double exact = std::min(scale * ratio, kMostDrawn_px);
  // While fingers move, what was drawn is stretched; then it is drawn sharp.
  if (drawn.pixmap.isNull() || (drawn.pixelsPerMm != exact && !settle_.isActive())) {
    drawn.pixmap = QPixmap::fromImage(paneImage(pane, view_, pane.kind == Pane::Kind::Look ? facing() : Facing::AsOthersSee, exact));
    drawn.pixelsPerMm = exact;
  }
  const QRectF frame = paint::frameOf(view_);
  const QPointF middle = headRect(side).center() + moved_;
  const QSizeF size(frame.width() * scale, frame.height() * scale);
  const QRectF place(middle.x() - size.width() / 2, middle.y() - size.height() / 2, size.width(), size.height());
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.drawPixmap(place, drawn.pixmap, QRectF(drawn.pixmap.rect()));
}

void PairPicture::drawWords(QPainter& painter, int side) {
  const Pane& pane = panes_[static_cast<std::size_t>(side)];
  const QRectF area = paneRect(side);
  const QFontMetrics metrics(font());
  QFont strong = font();
  strong.setWeight(QFont::DemiBold);
  Qt::Alignment align = Qt::AlignHCenter;
  QRectF title(area.left() + kPad_px, kPad_px, area.width() - 2 * kPad_px, metrics.height());
  if (heads_ == Heads::One) {
    align = side == 0 ? Qt::AlignLeft : Qt::AlignRight;
    title = QRectF(side == 0 ? kPad_px : width() / 2.0 + kPad_px, kPad_px, width() / 2.0 - 2 * kPad_px, metrics.height());
  }
  painter.setPen(wordsInk());
  painter.setFont(strong);
  painter.drawText(title, align | Qt::AlignVCenter, QFontMetrics(strong).elidedText(pane.title, Qt::ElideRight, static_cast<int>(title.width())));
  painter.setFont(font());
  const QString under = pane.state.isEmpty() ? (pane.kind == Pane::Kind::Look ? viewWords() : QString()) : pane.state;
  painter.drawText(title.translated(0, metrics.height() + 2), align | Qt::AlignVCenter,
                   metrics.elidedText(under, Qt::ElideRight, static_cast<int>(title.width())));
  const int first = panes_[0].kind == Pane::Kind::Look ? 0 : 1;
  if (line_.isEmpty() || pane.kind == Pane::Kind::Diagram || (isLineShared() && side != first)) return;
  painter.drawText(lineRect(side), Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap, line_);
}

void PairPicture::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), ground());
  for (const int side : {0, 1}) {
    painter.save();
    QRectF clip = headRect(side);
    if (heads_ == Heads::One) {
      if (side == 0) clip.setRight(dividerX());
      else clip.setLeft(dividerX());
    }
    painter.setClipRect(clip);
    draw(painter, side);
    painter.restore();
    drawWords(painter, side);
  }
  drawDivider(painter);
  if (hasFocus() && showsFocus_) drawFocus(painter);
}

}  // namespace combdraft::chair

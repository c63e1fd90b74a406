#include "app/paint/head_art.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "app/paint/outline_reader.h"
#include "app/paint/strip.h"
#include "engine/head/head_art.h"
#include "engine/head/landmarks.h"

namespace combdraft::paint {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(View)
};

using head::ViewName;

// What the line art was drawn for (engine/head/head_art.h).
constexpr double kArtA_mm = 73.9, kArtB_mm = 94.9, kArtP = 2.4;

head::HeadAxes axesOf(const plan::Head& head) {
  const auto fitted = head::fitHead(head.measures);
  return fitted ? fitted->axes : head::HeadAxes{};
}

Vec3 crownOf(const plan::Head& head, const head::HeadShape& shape) {
  if (!head.whorls.empty()) return shape.pointAt(head.whorls.front().at);
  return head::defaultWhorl(shape);
}

QPointF at(const head::SheetView& view, const Vec3& p) {
  const head::ViewPoint q = view.project(p);
  return {q.u_mm, q.v_mm};
}

// The skull's outline from above depends on the exponent: each art point moves
// out or in along its ray from the centre, ears and nose with it.
QPainterPath reshapedFromAbove(const QPainterPath& art, double p) {
  const auto radius = [](double x, double y, double exponent) {
    return std::pow(std::pow(std::abs(x) / kArtA_mm, exponent) +
                        std::pow(std::abs(y) / kArtB_mm, exponent),
                    -1 / exponent);
  };
  QPainterPath out;
  for (const QPolygonF& line : art.toSubpathPolygons(QTransform::fromScale(8, 8))) {
    QPolygonF moved;
    for (const QPointF& point : line) {
      const double x = point.x() / 8, y = point.y() / 8, r = std::hypot(x, y);
      const double by = r < 1e-6 ? 1.0 : radius(x / r, y / r, p) / radius(x / r, y / r, kArtP);
      moved << QPointF(x * by, y * by);
    }
    out.addPolygon(moved);
  }
  return out;
}

DrawingItem lineItem(const char* id, Role role, const QPainterPath& path, const QColor& colour,
                     double width_mm) {
  DrawingItem item;
  item.id = QLatin1String(id);
  item.role = role;
  item.path = path;
  item.style.stroke = colour;
  item.style.width_mm = width_mm;
  return item;
}

QPainterPath pathThrough(const head::SheetView& view, const std::vector<Vec3>& points) {
  QPainterPath path;
  for (std::size_t i = 0; i < points.size(); ++i)
    i == 0 ? path.moveTo(at(view, points[i])) : path.lineTo(at(view, points[i]));
  return path;
}

void addGuide(std::vector<HeadLines::Guide>& guides, const HeadScene& scene, const head::SheetView& view, const char* id,
              const std::vector<Vec3>& line) {
  QPainterPath path;
  std::vector<Vec3> run;
  const auto flush = [&] {
    if (run.size() > 1) path.addPath(pathThrough(view, run));
    run.clear();
  };
  for (const LineRun& seen : splitBySight(scene.shape, view, line)) {
    if (seen.sight == Sight::Seen)
      for (const Vec3& p : seen.points)
        scene.hairline.above_mm(p) > -0.5 ? run.push_back(p) : flush();
    flush();
  }
  if (!path.isEmpty()) guides.push_back({id, path});
}

/// What the lines of every view are made of, on the surface.
struct SurfaceLines {
  std::vector<Vec3> hairline, ridge, occipital, earToEar, centre;  ///< the hairline closed, 720 points from azimuth -180

  explicit SurfaceLines(const HeadScene& scene)
      : hairline(scene.hairline.outline(720)), ridge(head::parietalRidge(scene.shape, scene.hairline)),
        occipital(head::occipitalLine(scene.shape, scene.hairline)), earToEar(head::earToEarLine(scene.shape)),
        centre(head::centreLine(scene.shape, scene.hairline)) {}
  const Vec3& hairlineAt(int halfDegrees) const { return hairline[static_cast<std::size_t>((halfDegrees + 360 + 720) % 720)]; }
};

std::vector<HeadLines::Guide> guidesOf(const HeadScene& scene, const SurfaceLines& on, const head::SheetView& view) {
  std::vector<HeadLines::Guide> guides;
  const ViewName name = view.name();
  // The centre line lies on the outline in profile, the ear-to-ear line on it
  // from the front and the back: not drawn twice.
  addGuide(guides, scene, view, "ridge", on.ridge);
  addGuide(guides, scene, view, "occipital", on.occipital);
  if (name != ViewName::Front && name != ViewName::Back) addGuide(guides, scene, view, "ear-to-ear", on.earToEar);
  if (name != ViewName::Left && name != ViewName::Right) addGuide(guides, scene, view, "centre", on.centre);
  return guides;
}

QPainterPath scalpPath(const HeadScene& scene, const SurfaceLines& on, ViewName name) {
  const head::SheetView view = scene.view(name);
  const head::HeadShape& shape = scene.shape;
  QPolygonF edge;
  if (name == ViewName::Crown) {
    // Near the crown everything that faces the viewer is scalp.
    const QPointF middle = at(view, Vec3::Zero());
    for (int i = 0; i < 180; ++i) {
      const double turn = radians(2.0 * i);
      const Vec3 p = view.castBackClamped(shape, middle.x() + 300 * std::cos(turn),
                                          middle.y() + 300 * std::sin(turn));
      edge << at(view, p);
    }
  } else if (name == ViewName::Top) {
    for (int azimuth = 0; azimuth < 360; azimuth += 1) {
      Vec3 p = on.hairlineAt(2 * azimuth);
      if (p.z() < 0)  // the hairline runs below the widest level: the outline hides it
        p = shape.pointAlong(Vec3(std::sin(radians(azimuth)), std::cos(radians(azimuth)), 0));
      edge << at(view, p);
    }
  } else {
    // Along the hairline on the near side, then back over the head's outline.
    int from = 0;  // half degrees
    if (name == ViewName::Front) from = -180;
    if (name == ViewName::Back) from = 180;
    if (name == ViewName::Left) from = -360;
    std::vector<Vec3> near;
    for (int i = 0; i <= 360; ++i) near.push_back(on.hairlineAt(from + i));
    for (const Vec3& p : near) edge << at(view, p);
    const auto angleOf = [&](const Vec3& p) {
      return std::atan2(p.dot(view.right()), p.z());
    };
    const double start = angleOf(near.back()), end = angleOf(near.front());
    for (int i = 1; i < 180; ++i) {
      const double angle = start + (end - start) * i / 180;
      edge << at(view, shape.pointAlong(view.right() * std::sin(angle) +
                                        Vec3::UnitZ() * std::cos(angle)));
    }
  }
  QPainterPath path;
  path.addPolygon(edge);
  path.closeSubpath();
  return path;
}

HeadLines linesOf(const HeadScene& scene, const SurfaceLines& on, ViewName name) {
  const head::SheetView view = scene.view(name);
  HeadLines lines{scalpPath(scene, on, name), {}, guidesOf(scene, on, view)};
  for (const LineRun& run : splitBySight(scene.shape, view, on.hairline))
    if (run.sight == Sight::Seen) lines.hairline.push_back(pathThrough(view, run.points));
  return lines;
}

}  // namespace

bool isSameShape(const plan::Head& a, const plan::Head& b) { return a.measures == b.measures && a.hairline == b.hairline; }

struct HeadScene::Kept {
  std::optional<SurfaceLines> surface;
  std::array<std::optional<HeadLines>, head::kAllViews.size()> of;
};

HeadScene::HeadScene(const plan::Head& head)
    : shape(axesOf(head)), hairline(shape, head.hairline), crown(crownOf(head, shape)),
      places_(std::make_shared<const head::PlaceNamer>(shape, hairline)), kept_(std::make_shared<Kept>()),
      crownKept_(std::make_shared<Kept>()) {}

HeadScene HeadScene::withWhorlsOf(const plan::Head& head) const {
  HeadScene scene = *this;
  scene.crown = crownOf(head, shape);
  scene.crownKept_ = std::make_shared<Kept>();
  return scene;
}

const HeadLines& HeadScene::lines(ViewName name) const {
  std::optional<HeadLines>& lines = (name == ViewName::Crown ? crownKept_ : kept_)->of.at(static_cast<std::size_t>(name));
  if (!kept_->surface) kept_->surface.emplace(*this);
  if (!lines) lines = linesOf(*this, *kept_->surface, name);
  return *lines;
}

head::SheetView HeadScene::view(ViewName name) const {
  return name == ViewName::Crown ? head::SheetView::crown(shape, crown) : head::SheetView(name);
}

QColor skinColour(plan::SkinTone tone, const Palette& palette) {
  switch (tone) {
    case plan::SkinTone::Paper: return palette.skin;
    case plan::SkinTone::Light: return QColor(0xF0, 0xD9, 0xC6);
    case plan::SkinTone::Medium: return QColor(0xD9, 0xB4, 0x94);
    case plan::SkinTone::Tan: return QColor(0xB4, 0x86, 0x63);
    case plan::SkinTone::Deep: return QColor(0x6F, 0x4E, 0x3B);
  }
  return palette.skin;
}

QColor scalpColour(plan::SkinTone tone, const Palette& palette) {
  return tone == plan::SkinTone::Paper ? palette.scalp : skinColour(tone, palette).darker(104);
}

QRectF frameOf(ViewName view) {
  static const head::ViewFrame closeUp =
      head::SheetView::crown(head::HeadShape(), head::HeadShape().pointAlong(Vec3::UnitZ())).frame();
  const head::ViewFrame f = view == ViewName::Crown ? closeUp : head::SheetView(view).frame();
  return {f.left_mm, f.top_mm, f.width_mm, f.height_mm};
}

QString viewTitle(ViewName view) {
  switch (view) {
    case ViewName::Front: return Words::tr("Front");
    case ViewName::Back: return Words::tr("Back");
    case ViewName::Left: return Words::tr("Client's left");
    case ViewName::Right: return Words::tr("Client's right");
    case ViewName::Top: return Words::tr("Top");
    case ViewName::Crown: return Words::tr("Crown");
  }
  return {};
}

QPainterPath viewClip(ViewName view) {
  QPainterPath clip;
  view == ViewName::Crown ? clip.addEllipse(frameOf(view)) : clip.addRect(frameOf(view));
  return clip;
}

void clipToView(Items& items, ViewName view) { clipItems(items, viewClip(view)); }

void clipItems(Items& items, const QPainterPath& clip) {
  QPainterPath own, both;  // items in a row mostly share their clip, and intersecting is dear
  for (DrawingItem& item : items) {
    if (item.image.isNull() && clip.contains(item.path.boundingRect())) continue;
    const bool cut = !item.clip.isEmpty();
    if (cut && item.clip != own) {
      own = item.clip;
      both = own.intersected(clip);
    }
    item.clip = cut ? both : clip;
    // An empty clip means none: what lies wholly outside goes instead.
    if (cut && item.clip.isEmpty()) item.path.clear();
  }
  std::erase_if(items, [](const DrawingItem& item) {
    return item.path.isEmpty() && item.image.isNull() && !item.text;
  });
}

DrawingItem viewRing(ViewName view, const Palette& palette, const Ink& ink) {
  DrawingItem ring = lineItem("ring", Role::Feature, viewClip(view), palette.paleInk, ink(0.25));
  ring.layer = Layer::Overlay;
  return ring;
}

Items headArt(const HeadScene& scene, ViewName name, plan::SkinTone tone, const Palette& palette,
              const Ink& ink, Guides guides) {
  Items items, lines;
  if (name != ViewName::Crown) {
    const head::HeadAxes& axes = scene.shape.axes();
    const head::ArtScale by = head::artScale(axes, name);
    const QTransform scale = QTransform::fromScale(by.su, by.sv);
    for (const OutlinePath& art : bundledOutline(name)) {
      if (art.group != QLatin1String("skin") && art.group != QLatin1String("features")) continue;
      QPainterPath path = art.path;
      if (name == ViewName::Top && std::abs(axes.p - kArtP) > 0.005)
        path = reshapedFromAbove(path, axes.p);
      path = scale.map(path);
      const QByteArray id = art.id.isEmpty() ? art.kind.toLatin1() : art.id.toLatin1();
      if (art.kind == QLatin1String("skin")) {
        DrawingItem skin;
        skin.id = QLatin1String(id);
        skin.role = Role::Skin;
        skin.path = path;
        skin.style.fill = skinColour(tone, palette);
        items.push_back(std::move(skin));
      } else if (art.kind == QLatin1String("outline")) {
        lines.push_back(lineItem(id, Role::Outline, path, palette.ink, ink(0.33)));
      } else if (art.kind == QLatin1String("brow")) {
        DrawingItem brow;
        brow.id = QLatin1String(id);
        brow.role = Role::Feature;
        brow.path = path;
        brow.style.fill = QColor(0x8B, 0x82, 0x7B);
        lines.push_back(std::move(brow));
      } else {
        const bool soft = art.kind == QLatin1String("soft") ||
                          art.kind.contains(QLatin1String("soft"));
        lines.push_back(lineItem(id, Role::Feature, path, soft ? palette.paleInk : palette.ink,
                                 ink(soft ? 0.18 : 0.23)));
      }
    }
  }
  const HeadLines& own = scene.lines(name);
  DrawingItem ground;
  ground.id = QStringLiteral("scalp");
  ground.role = Role::Scalp;
  ground.path = own.scalp;
  ground.style.fill = scalpColour(tone, palette);
  items.push_back(std::move(ground));
  if (guides == Guides::Shown)
    for (const HeadLines::Guide& guide : own.guides) {
      DrawingItem item = lineItem(guide.id, Role::Guide, guide.path, palette.guide, ink(0.16));
      item.style.dash_mm = {ink(0.75), ink(0.65)};
      item.style.cap = Qt::FlatCap;
      items.push_back(std::move(item));
    }
  for (const QPainterPath& stretch : own.hairline)
    items.push_back(lineItem("hairline", Role::Hairline, stretch, palette.softInk, ink(0.23)));
  if (name == ViewName::Crown)
    lines.push_back(lineItem("outline", Role::Outline, own.scalp, palette.ink, ink(0.33)));
  for (DrawingItem& line : lines) items.push_back(std::move(line));
  clipToView(items, name);
  return items;
}

}  // namespace combdraft::paint

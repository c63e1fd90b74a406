#include "engine/look/head_hair.h"

#include <algorithm>

#include "engine/base/content_hash.h"
#include "engine/head/part_line.h"

namespace combdraft::look {
namespace {

bool isPartMoved(const hair::Worn& worn) {
  return hair::showsPart(worn.way) && worn.partShift_mm != 0;
}

}  // namespace

std::vector<Vec3> partOf(const plan::Plan& plan, const hair::Worn& worn, const HeadGround& ground) {
  const Assumptions assumptions(plan.info().assumptions);
  std::vector<head::ScalpPoint> part = plan.head().part;
  const double shift = (isPartMoved(worn) ? worn.partShift_mm : 0) + assumptions["fall.partSide_mm"];
  if (shift != 0 && part.size() >= 2)
    part = head::partMoved(ground.shape(), ground.hairline(), part, shift).line;
  std::vector<Vec3> line;
  for (const auto& p : part) line.push_back(ground.shape().pointAt(p));
  return line;
}

hair::Locks fallOf(const plan::Plan& plan, const hair::Worn& worn, const HeadGround& ground,
                   const FallPart& part, std::stop_token stop) {
  const Assumptions assumptions(plan.info().assumptions);
  const hair::FlowField field(ground.shape(), ground.hairline(), partOf(plan, worn, ground),
                              plan.head().whorls, worn, assumptions);
  return hair::traceLocks({ground.shape(), ground.body(), field, ground.roots(), plan.hair(), ground.seed(),
                           assumptions, part.step_mm, part.reach_mm, part.lowestRoot_mm, part.until},
                          stop);
}

std::uint64_t HeadHair::keyOf(const plan::Plan& plan, const hair::Worn& worn, int locks,
                              double measuringPixel_mm, double step_mm) {
  const plan::Head& head = plan.head();
  const plan::Hair& hair = plan.hair();
  ContentHash h;
  h.add(HeadGround::keyOf(plan, locks, measuringPixel_mm)).add(step_mm);
  h.add(head.part.size());
  for (const auto& p : head.part) h.add(p.bearing_deg).add(p.drop_deg);
  h.add(head.whorls.size());
  for (const auto& w : head.whorls) h.add(w.at.bearing_deg).add(w.at.drop_deg).add(static_cast<int>(w.turn));
  h.add(hair.fibre_um).add(static_cast<int>(hair.curl));
  for (const double l : hair.length_mm) h.add(l);
  h.add(hair.layering_frac);
  h.add(hair.cutLine_mm ? 1 : 0).add(hair.cutLine_mm.value_or(0.0));
  h.add(static_cast<int>(worn.way)).add(isPartMoved(worn) ? worn.partShift_mm : 0.0);
  h.add(worn.way == hair::WornWay::LayerRaised ? worn.raised_mm : 0.0);
  const Assumptions assumptions(plan.info().assumptions);
  for (const Assumption& a : assumptionTable())
    if (a.moves == Moves::Fall && hair::matters(a.name, worn.way)) h.add(assumptions[a.name]);
  return h.key();
}

Result<std::shared_ptr<const HeadHair>> HeadHair::build(const plan::Plan& plan,
                                                        const hair::Worn& worn, int locks,
                                                        double measuringPixel_mm, double step_mm,
                                                        std::stop_token stop,
                                                        std::shared_ptr<const HeadGround> ground) {
  auto made = make(plan, worn, locks, measuringPixel_mm, step_mm, stop, std::move(ground));
  if (!made) return made.error();
  return std::shared_ptr<const HeadHair>(std::move(made).value());
}

Result<std::shared_ptr<const HeadHair>> HeadHair::buildForReadings(
    const plan::Plan& plan, const hair::Worn& worn, int locks, double measuringPixel_mm,
    double step_mm, std::stop_token stop, std::shared_ptr<const HeadGround> ground) {
  auto made = make(plan, worn, locks, measuringPixel_mm, step_mm, stop, std::move(ground));
  if (!made) return made.error();
  std::shared_ptr<HeadHair> slim = std::move(made).value();
  slim->locks_.points = {};
  slim->locks_.wave = {};
  slim->seen_->dropRasters();
  return std::shared_ptr<const HeadHair>(std::move(slim));
}

Result<std::shared_ptr<HeadHair>> HeadHair::make(const plan::Plan& plan, const hair::Worn& worn,
                                                 int locks, double measuringPixel_mm,
                                                 double step_mm, std::stop_token stop,
                                                 std::shared_ptr<const HeadGround> ground) {
  const Error cancelled{ErrorCode::Cancelled, "", {}, ""};
  if (!ground || ground->key() != HeadGround::keyOf(plan, locks, measuringPixel_mm)) {
    auto built = HeadGround::build(plan, locks, measuringPixel_mm);
    if (!built) return built.error();
    ground = std::move(built).value();
  }
  if (stop.stop_requested()) return cancelled;
  std::shared_ptr<HeadHair> made(new HeadHair());
  made->ground_ = ground;

  made->locks_ = fallOf(plan, worn, *ground, {step_mm}, stop);
  if (stop.stop_requested()) return cancelled;

  std::array<visibility::ViewSamples, visibility::SeenHair::kViews> views;
  std::array<const visibility::BodyDepth*, visibility::SeenHair::kViews> bodies{};
  for (std::size_t v = 0; v < views.size(); ++v) {
    bodies[v] = &ground->measuredDepth(static_cast<int>(v));
    views[v] = visibility::rasterise(made->locks_, ground->specOf(head::kAllViews[v], measuringPixel_mm),
                                     *bodies[v], visibility::Shading::None, ground->seed(), stop);
    if (stop.stop_requested()) return cancelled;
  }
  made->seen_ = std::make_unique<visibility::SeenHair>(std::move(views), bodies, made->locks_, ground->shape());
  return made;
}

visibility::ViewSamples HeadHair::pictureRaster(const PictureRequest& request,
                                                std::stop_token stop) const {
  const int v = static_cast<int>(request.view);
  const bool measured = v < visibility::SeenHair::kViews;
  const visibility::RasterSpec spec = specOf(request.view, request.pixel_mm);
  const bool isFiner = measured && request.pixel_mm < ground_->measuredDepth(v).pixel_mm;
  const visibility::BodyDepth own = isFiner     ? ground_->refinedDepth(v, spec)
                                    : measured ? visibility::BodyDepth{}
                                               : ground_->bodyDepthOf(request.view, request.pixel_mm);
  return visibility::rasterise(locks_, spec, measured && !isFiner ? ground_->measuredDepth(v) : own,
                               visibility::Shading::ForTheEye, seed(), stop);
}

visibility::ViewSamples HeadHair::closeUp(const visibility::RasterSpec& spec,
                                          std::stop_token stop) const {
  visibility::RasterSpec body = spec;  // millimetre by millimetre at the finest
  body.pixel_mm = std::max(spec.pixel_mm, 1.0);
  return visibility::rasterise(locks_, spec, ground_->bodyDepthIn(body),
                               visibility::Shading::None, seed(), stop);
}

}  // namespace combdraft::look

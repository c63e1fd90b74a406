#include "engine/look/head_hair.h"

#include "engine/base/content_hash.h"
#include "engine/head/landmarks.h"
#include "engine/head/part_line.h"

namespace combdraft::look {
namespace {

bool isPartMoved(const hair::Worn& worn) {
  return worn.way == hair::WornWay::Down && worn.partShift_mm != 0;
}

}  // namespace

std::uint64_t HeadHair::keyOf(const plan::Plan& plan, const hair::Worn& worn, int locks,
                              double measuringPixel_mm, double step_mm) {
  const plan::Head& head = plan.head();
  const plan::Hair& hair = plan.hair();
  ContentHash h;
  h.add(locks).add(measuringPixel_mm).add(step_mm).add(plan.info().number);
  const auto optional = [&](const std::optional<double>& v) { h.add(v ? 1 : 0).add(v.value_or(0.0)); };
  h.add(static_cast<int>(head.measures.set)).add(static_cast<int>(head.measures.size));
  optional(head.measures.circumference_mm), optional(head.measures.length_mm);
  optional(head.measures.breadth_mm), optional(head.measures.earToEar_mm);
  h.add(head.hairline.front_mm).add(head.hairline.temples_mm).add(head.hairline.sides_mm).add(head.hairline.nape_mm);
  h.add(head.part.size());
  for (const auto& p : head.part) h.add(p.bearing_deg).add(p.drop_deg);
  h.add(head.whorls.size());
  for (const auto& w : head.whorls) h.add(w.at.bearing_deg).add(w.at.drop_deg).add(static_cast<int>(w.turn));
  h.add(hair.density_per_cm2).add(hair.fibre_um).add(static_cast<int>(hair.curl));
  for (const double l : hair.length_mm) h.add(l);
  h.add(hair.layering_frac);
  optional(hair.cutLine_mm);
  h.add(static_cast<int>(worn.way)).add(isPartMoved(worn) ? worn.partShift_mm : 0.0);
  const Assumptions assumptions(plan.info().assumptions);
  for (const Assumption& a : assumptionTable())
    if (a.shapesHair) h.add(assumptions[a.name]);
  return h.key();
}

Result<std::shared_ptr<const HeadHair>> HeadHair::build(const plan::Plan& plan,
                                                        const hair::Worn& worn, int locks,
                                                        double measuringPixel_mm, double step_mm,
                                                        std::stop_token stop) {
  auto made = make(plan, worn, locks, measuringPixel_mm, step_mm, stop);
  if (!made) return made.error();
  return std::shared_ptr<const HeadHair>(std::move(made).value());
}

Result<std::shared_ptr<const HeadHair>> HeadHair::buildForReadings(
    const plan::Plan& plan, const hair::Worn& worn, int locks, double measuringPixel_mm,
    double step_mm, std::stop_token stop) {
  auto made = make(plan, worn, locks, measuringPixel_mm, step_mm, stop);
  if (!made) return made.error();
  std::shared_ptr<HeadHair> slim = std::move(made).value();
  slim->locks_.points = {};
  slim->locks_.wave = {};
  slim->seen_->dropRasters();
  slim->solid_.reset();
  slim->body_.reset();
  for (visibility::BodyDepth& depth : slim->depths_) depth = visibility::BodyDepth{};
  return std::shared_ptr<const HeadHair>(std::move(slim));
}

Result<std::shared_ptr<HeadHair>> HeadHair::make(const plan::Plan& plan, const hair::Worn& worn,
                                                 int locks, double measuringPixel_mm,
                                                 double step_mm, std::stop_token stop) {
  const auto fitted = head::fitHead(plan.head().measures);
  if (!fitted) return fitted.error();
  const head::HeadShape shape(fitted->axes);
  const head::Hairline hairline(shape, plan.head().hairline);
  std::shared_ptr<HeadHair> made(new HeadHair(shape, hairline));
  made->seed_ = plan.info().number;
  const Assumptions assumptions(plan.info().assumptions);
  const Error cancelled{ErrorCode::Cancelled, "", {}, ""};

  made->crown_ = plan.head().whorls.empty() ? head::defaultWhorl(shape)
                                            : shape.pointAt(plan.head().whorls.front().at);
  made->solid_ = std::make_unique<hair::Body>(shape);
  made->body_ = std::make_unique<hair::BodyGrid>(*made->solid_);
  made->roots_ = hair::spreadRoots(shape, hairline, plan.hair().density_per_cm2, locks, made->seed_);
  made->grid_ = std::make_unique<hair::RootGrid>(made->roots_);
  if (stop.stop_requested()) return cancelled;

  std::vector<head::ScalpPoint> part = plan.head().part;
  const double shift =
      (isPartMoved(worn) ? worn.partShift_mm : 0) + assumptions["fall.partSide_mm"];
  if (shift != 0 && part.size() >= 2) part = head::partMoved(shape, hairline, part, shift).line;
  std::vector<Vec3> partLine;
  for (const auto& p : part) partLine.push_back(shape.pointAt(p));
  const hair::FlowField field(shape, hairline, partLine, plan.head().whorls, worn.way, assumptions);
  made->locks_ = hair::traceLocks({shape, *made->body_, field, made->roots_, plan.hair(), made->seed_,
                                   assumptions, step_mm},
                                  stop);
  if (stop.stop_requested()) return cancelled;

  std::array<visibility::ViewSamples, visibility::SeenHair::kViews> views;
  std::array<const visibility::BodyDepth*, visibility::SeenHair::kViews> bodies{};
  for (std::size_t v = 0; v < views.size(); ++v) {
    const head::ViewName name = head::kAllViews[v];
    made->depths_[v] = made->bodyDepthOf(name, measuringPixel_mm);
    bodies[v] = &made->depths_[v];
    views[v] = visibility::rasterise(made->locks_, made->specOf(name, measuringPixel_mm),
                                     made->depths_[v], visibility::Shading::None, made->seed_, stop);
    if (stop.stop_requested()) return cancelled;
  }
  made->seen_ = std::make_unique<visibility::SeenHair>(std::move(views), bodies, made->locks_, shape);
  return made;
}

visibility::RasterSpec HeadHair::specOf(head::ViewName view, double pixel_mm) const {
  const head::SheetView projection = view == head::ViewName::Crown
                                         ? head::SheetView::crown(shape_, crown_)
                                         : head::SheetView(view);
  return {projection, projection.frame(), pixel_mm};
}

visibility::BodyDepth HeadHair::bodyDepthOf(head::ViewName view, double pixel_mm) const {
  return visibility::bodyDepth(specOf(view, std::max(pixel_mm, 1.0)), *solid_, *body_, shape_, hairline_);
}

visibility::ViewSamples HeadHair::pictureRaster(const PictureRequest& request,
                                                std::stop_token stop) const {
  const auto v = static_cast<std::size_t>(request.view);
  const bool measured = v < depths_.size();
  const visibility::BodyDepth own =
      measured ? visibility::BodyDepth{} : bodyDepthOf(request.view, request.pixel_mm);
  return visibility::rasterise(locks_, specOf(request.view, request.pixel_mm),
                               measured ? depths_[v] : own, visibility::Shading::ForTheEye, seed_, stop);
}

}  // namespace combdraft::look

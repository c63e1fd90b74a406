#include "engine/advise/worn_readings.h"

#include <numeric>

namespace combdraft::advise {

WornReadings::WornReadings(hair::Worn worn, int locks, double pixel_mm, double step_mm)
    : worn_(worn), locks_(locks), pixel_mm_(pixel_mm), step_mm_(step_mm) {}

Result<look::Readings> WornReadings::update(const plan::Plan& plan, look::LookSettings settings,
                                            std::shared_ptr<const look::HeadGround>& ground,
                                            std::stop_token stop) {
  settings.worn = worn_;
  const std::uint64_t key = look::HeadHair::keyOf(plan, worn_, locks_, pixel_mm_, step_mm_);
  bool afresh = false;
  if (!hair_ || key != key_) {
    auto built = look::HeadHair::buildForReadings(plan, worn_, locks_, pixel_mm_, step_mm_, stop, ground);
    if (!built) return built.error();
    hair_ = std::move(built).value();
    ground = hair_->ground();
    key_ = key;
    colours_.reset();
    afresh = true;
  }
  const look::ColouredHead head{hair_->shape(), hair_->roots(), hair_->grid(), hair_->locks(), hair_->seed()};
  const std::vector<std::uint32_t> changed =
      colours_.update(plan, settings, head, [&](const std::vector<std::uint32_t>& about) {
        afresh = afresh || about.size() * 2 > hair_->locks().size();
        if (!afresh) sums_.add(hair_->seen(), hair_->locks(), colours_, about, -1);
      });
  if (afresh) {
    std::vector<std::uint32_t> all(hair_->locks().size());
    std::iota(all.begin(), all.end(), 0u);
    sums_.clear();
    sums_.add(hair_->seen(), hair_->locks(), colours_, all, 1);
  } else {
    sums_.add(hair_->seen(), hair_->locks(), colours_, changed, 1);
  }
  return look::readingsFrom(sums_, hair_->seen(), hair_->locks(), settings.light,
                            look::levelScaleOf(Assumptions(plan.info().assumptions)));
}

}  // namespace combdraft::advise

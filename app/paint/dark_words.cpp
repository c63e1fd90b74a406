#include "app/paint/dark_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>

#include "app/paint/figure.h"
#include "engine/base/number_text.h"

namespace combdraft::paint {
namespace {

// A part of the hair is named as dark when less than this much of it is light,
// and clearly less than on the whole head [own].
constexpr double kDark_share = 0.2, kOfWhole = 0.6;
constexpr std::size_t kMostPlaces = 2;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Chair)
};

QString placeOf(look::Region region) {
  using look::Region;
  switch (region) {
    case Region::FrontTop: return Words::tr("at the front");
    case Region::Top: return Words::tr("on top");
    case Region::Crown: return Words::tr("at the crown");
    case Region::FaceFrameLeft:
    case Region::FaceFrameRight: return Words::tr("round the face");
    case Region::SideLeft:
    case Region::SideRight: return Words::tr("at the sides");
    case Region::Nape: return Words::tr("at the nape");
    case Region::BackUpper: return Words::tr("at the upper back");
    case Region::BackMiddle: return Words::tr("at the middle of the back");
    case Region::BackEnds: return Words::tr("at the ends");
  }
  return {};
}

}  // namespace

QString whatStaysDark(const look::Readings* planned) {
  if (!planned) return {};
  const double dark = std::clamp(1 - planned->whole.light_share, 0.0, 1.0);
  std::vector<const look::RegionReading*> found;
  for (const look::RegionReading& region : planned->regions)
    if (region.whole && region.whole->light_share < std::min(kDark_share, kOfWhole * planned->whole.light_share)) found.push_back(&region);
  std::stable_sort(found.begin(), found.end(), [](const auto* a, const auto* b) { return a->whole->light_share < b->whole->light_share; });
  QStringList places;
  for (const look::RegionReading* region : found)
    if (const QString place = placeOf(region->region); static_cast<std::size_t>(places.size()) < kMostPlaces && !places.contains(place)) places << place;
  const QString share = figure(numberText(std::round(100 * dark / 5) * 5));
  if (places.isEmpty()) return Words::tr("About %1 % of the hair that is seen is not lightened, spread through the light.").arg(share);
  return places.size() == 1 ? Words::tr("About %1 % of the hair that is seen is not lightened; the least light lies %2.").arg(share, places[0])
                            : Words::tr("About %1 % of the hair that is seen is not lightened; the least light lies %2 and %3.").arg(share, places[0], places[1]);
}

}  // namespace combdraft::paint

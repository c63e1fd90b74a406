#include "app/handout/document.h"

#include <QCoreApplication>
#include <algorithm>
#include <set>

#include "app/handout/client_page.h"
#include "app/handout/parts.h"
#include "app/handout/record_card.h"
#include "app/handout/work_sheet.h"
#include "app/paint/work_words.h"

namespace combdraft::handout {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

struct PartEntry {
  plan::HandoutPart part;
  const char* title;
};
constexpr PartEntry kEntries[] = {
    {plan::HandoutPart::Title, QT_TRANSLATE_NOOP("Handout", "Title, aim and model")},
    {plan::HandoutPart::Kit, QT_TRANSLATE_NOOP("Handout", "Kit and formulas")},
    {plan::HandoutPart::Views, QT_TRANSLATE_NOOP("Handout", "The views with their key")},
    {plan::HandoutPart::Steps, QT_TRANSLATE_NOOP("Handout", "Step by step")},
    {plan::HandoutPart::CloseUps, QT_TRANSLATE_NOOP("Handout", "Sections and places, close")},
    {plan::HandoutPart::Checks, QT_TRANSLATE_NOOP("Handout", "Check points")},
    {plan::HandoutPart::Timing, QT_TRANSLATE_NOOP("Handout", "Time for placing")},
    {plan::HandoutPart::Faults, QT_TRANSLATE_NOOP("Handout", "Faults and what to do")},
    {plan::HandoutPart::SelfCheck, QT_TRANSLATE_NOOP("Handout", "How did it go?")},
    {plan::HandoutPart::BlankSheets, QT_TRANSLATE_NOOP("Handout", "Blank head sheet")},
    {plan::HandoutPart::PredictThenOpen, QT_TRANSLATE_NOOP("Handout", "Predict, then open")}};

const PartEntry& entryOf(plan::HandoutPart part) {
  return *std::find_if(std::begin(kEntries), std::end(kEntries), [&](const PartEntry& entry) { return entry.part == part; });
}

}  // namespace

QString partTitle(plan::HandoutPart part) { return Words::tr(entryOf(part).title); }
QString partHeading(plan::HandoutPart part) {
  return part == plan::HandoutPart::PredictThenOpen ? Words::tr("Predict") : partTitle(part);
}

std::vector<plan::HandoutUse> partsOf(const plan::Handout& handout) {
  std::vector<plan::HandoutUse> parts;
  std::set<plan::HandoutPart> named;
  for (const plan::HandoutUse& use : handout.parts)
    if (named.insert(use.part).second) parts.push_back(use);
  for (const plan::HandoutPart part : kHandoutParts)
    if (!named.contains(part)) parts.push_back({part});
  return parts;
}

Request requestFor(DocumentKind kind, const plan::Plan& plan) {
  Request request;
  request.kind = kind;
  request.plan = plan;
  if (const auto* handout = plan.find<plan::Handout>(plan::kHandoutId)) request.handout = *handout;
  return request;
}

LooksNeeded looksNeeded(const Request& request) {
  if (request.plan.pieces(request.choice).empty() && request.kind != DocumentKind::ClientPage) return {};
  switch (request.kind) {
    case DocumentKind::Handout:
      for (const plan::HandoutUse& use : partsOf(request.handout))
        if (use.part == plan::HandoutPart::PredictThenOpen && !use.hidden) return {.opened = true, .down = true};
      return {};
    case DocumentKind::RecordCard: return {.down = true};
    case DocumentKind::ClientPage: return {.down = true, .regrowth = true};
    case DocumentKind::WorkList: return {};
  }
  return {};
}

LookMaker::LookMaker(int locks) : engine_(locks) {
  if (locks != kReadingLocks) reader_.emplace(kReadingLocks);
}

Result<Looks> LookMaker::make(const Request& request, double pixel_mm, std::stop_token stop, const Progress& progress) {
  const LooksNeeded needed = looksNeeded(request);
  Looks looks;
  const auto want = [&](std::shared_ptr<const look::LookFrame>& into, hair::WornWay way,
                        const std::vector<head::ViewName>& views) -> std::optional<Error> {
    look::LookSettings settings;
    settings.choice = request.choice;
    settings.worn.way = way;
    std::vector<look::PictureRequest> pictures;
    for (const head::ViewName view : views) pictures.push_back({view, pixel_mm});
    Result<look::LookFrame> frame = engine_.update(request.plan, settings, pictures, stop);
    if (!frame) return frame.error();
    into = std::make_shared<const look::LookFrame>(std::move(frame).value());
    return std::nullopt;
  };
  using head::ViewName;
  std::vector<ViewName> views{ViewName::Front, ViewName::Back};  // those that are printed
  if (request.kind != DocumentKind::Handout) views.push_back(ViewName::Left);
  const int count = needed.down + needed.opened + needed.regrowth;
  int done = 0;
  const auto step = [&] {
    if (progress) progress(static_cast<double>(++done) / std::max(1, count));
  };
  if (needed.down) {
    if (auto error = want(looks.down, hair::WornWay::Down, views)) return *error;
    if (reader_) {  // near a border another number of locks may give another word
      look::LookSettings settings;
      settings.choice = request.choice;
      const Result<look::LookFrame> read = reader_->update(request.plan, settings, {}, stop);
      if (!read) return read.error();
      look::LookFrame frame = *looks.down;
      frame.readings = read->readings;
      looks.down = std::make_shared<const look::LookFrame>(std::move(frame));
    }
    if (request.kind == DocumentKind::ClientPage)
      for (const auto& [into, lift] : {std::pair(&looks.less, look::Lift::Less), std::pair(&looks.more, look::Lift::More)}) {
        look::LookSettings settings;
        settings.choice = request.choice;
        settings.lift = lift;
        const Result<look::LookFrame> read = (reader_ ? *reader_ : engine_).update(request.plan, settings, {}, stop);
        if (!read) return read.error();
        *into = read->readings;
      }
    step();
  }
  if (needed.opened) {
    if (auto error = want(looks.opened, hair::WornWay::CrownOpened, {ViewName::Top, ViewName::Crown}))
      return *error;
    step();
  }
  if (needed.regrowth) {
    look::LookSettings settings;
    settings.choice = request.choice;
    Result<std::vector<look::Regrowth>> found = regrowth_.update(request.plan, settings, stop);
    if (!found) return found.error();
    looks.regrowth = std::move(found).value();
    step();
  }
  return looks;
}

Result<std::vector<paint::Page>> makePages(const Request& request, const Looks& looks, std::stop_token stop,
                                           const Progress& progress) {
  Room room = roomOn(request.handout.paper, request.handout.turn);
  const paint::Scene scene(request.plan, request.choice, nullptr);
  const QString title = QString::fromStdString(request.plan.info().title);
  Foot foot;
  foot.title = title.isEmpty() ? Words::tr("Untitled plan") : title;
  if (request.kind == DocumentKind::WorkList)
    foot.cautions << paint::safetyLine() << paint::looksLighter();
  else
    foot.cautions << Words::tr("A picture of the plan, not a promise; a test strand shows how far this hair lightens.");
  if (request.kind != DocumentKind::ClientPage)
    foot.cautions << Words::tr("The maker's directions, local rules and licensed practice come first.");
  room.leaveFoot(footHeight_mm(foot, room.body.width()));
  Column column(room.body.width());
  Error cancelled{ErrorCode::Cancelled, "", {}, {}};
  if (request.kind == DocumentKind::RecordCard) {
    addRecordCard(column, request, scene, looks, room);
  } else if (request.kind == DocumentKind::ClientPage) {
    addClientPage(column, request, scene, looks, room);
  } else if (request.kind == DocumentKind::WorkList) {
    addWorkSheet(column, request);
  } else {
    std::vector<plan::HandoutUse> shown = partsOf(request.handout);
    std::erase_if(shown, [](const plan::HandoutUse& use) { return use.hidden; });
    for (std::size_t i = 0; i < shown.size(); ++i) {
      if (stop.stop_requested()) return cancelled;
      addPart(column, shown[i].part, request, scene, looks, room, stop);
      if (progress) progress(static_cast<double>(i + 1) / static_cast<double>(shown.size()));
    }
  }
  if (stop.stop_requested()) return cancelled;
  return paginate(column.chunks(), room, foot);
}

}  // namespace combdraft::handout

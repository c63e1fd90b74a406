#include <QGuiApplication>
#include <algorithm>
#include <filesystem>

#include "app/command/commands.h"
#include "app/command/headless.h"
#include "app/command/progress.h"
#include "app/paint/export_page.h"
#include "app/paint/sheet_page.h"
#include "engine/base/number_text.h"
#include "engine/plan/plan_file.h"

namespace combdraft::command {
namespace {

std::string filledIn(std::string pattern, const std::string& place, const std::string& word) {
  for (std::size_t at = pattern.find(place); at != std::string::npos;
       at = pattern.find(place, at + word.size()))
    pattern.replace(at, place.size(), word);
  return pattern;
}

QString captionOf(const plan::Plan& plan, const look::LookSettings& s, paint::PageLayer layer) {
  std::string text = "Choice " + choiceName(plan, s);
  if (layer == paint::PageLayer::Diagram) return QString::fromStdString(text);
  text += ", " + std::string(hair::wornWord(s.worn.way));
  if (s.worn.partShift_mm != 0) text += ", part moved " + numberText(s.worn.partShift_mm) + " mm";
  text += ", " + std::string(colour::lightWord(s.light));
  if (s.weeks > 0) text += ", " + numberText(s.weeks) + " weeks later";
  if (s.subject == look::Subject::Today) text += ", today";
  if (s.moisture == look::Moisture::Wet) text += ", wet";
  std::replace(text.begin(), text.end(), '-', ' ');
  return QString::fromStdString(text);
}

Outcome drawOne(const std::string& file, const DrawCommand& command) {
  const Result<plan::Plan> plan = plan::loadPlan(file);
  if (!plan) return complain(plan.error());
  const Result<look::LookSettings> settings = settingsFor(*plan, command.look, file);
  if (!settings) return complain(settings.error());
  const paint::Scene scene(*plan, settings->choice, nullptr);
  const paint::ExportSize size{
      command.width_px > 0 ? std::optional(static_cast<int>(command.width_px)) : std::nullopt,
      command.dpi};

  std::vector<std::vector<head::ViewName>> pages{command.views};
  if (command.out.find("{view}") != std::string::npos) {
    pages.clear();
    for (const head::ViewName view : command.views) pages.push_back({view});
  }
  std::optional<look::LookFrame> look;
  if (command.layer != paint::PageLayer::Diagram) {
    paint::PageRequest request{pages.front(), command.layer, command.ground, QString()};
    const double width_mm = paint::sheetPage(scene, nullptr, request).size_mm.width();
    const double dpi = size.width_px ? *size.width_px * 25.4 / width_mm : size.dpi;
    const double pixel_mm = std::clamp(25.4 / (dpi * paint::pageScale(request)), 0.1, 2.0);
    std::vector<look::PictureRequest> pictures;
    for (const head::ViewName view : command.views) pictures.push_back({view, pixel_mm});
    const int locks = static_cast<int>(command.look.locks);
    const Progress progress(file + ": drawing the hair, " + std::to_string(locks) + " locks");
    look::LookEngine engine(locks);
    Result<look::LookFrame> frame = engine.update(*plan, *settings, pictures, {});
    if (!frame) {
      Error error = frame.error();
      error.file = file;
      return complain(error);
    }
    look = *std::move(frame);
  }
  Outcome outcome = Outcome::Fine;
  for (const std::vector<head::ViewName>& views : pages) {
    const paint::PageRequest request{views, command.layer, command.ground,
                                     captionOf(*plan, *settings, command.layer)};
    std::filesystem::path name = std::filesystem::path(file).stem();
    if (name.extension() == ".combdraft") name = name.stem();  // the ending of our own is .combdraft.json
    std::string out = filledIn(command.out, "{plan}", name.string());
    out = filledIn(out, "{view}", std::string(head::viewWord(views.front())));
    const paint::Page page = paint::sheetPage(scene, look ? &*look : nullptr, request);
    const Result<void> written = paint::writePage(page, QString::fromStdString(out), size);
    if (!written) outcome = worse(outcome, complain(written.error()));
  }
  return outcome;
}

}  // namespace

Outcome runDraw(const DrawCommand& command, int& argc, char** argv) {
  if (!paint::formatOf(QString::fromStdString(command.out))) {
    complain("--out " + command.out + ": a file ending in .svg, .png or .pdf is needed");
    return Outcome::WrongUsage;
  }
  if (command.plans.size() > 1 && command.out.find("{plan}") == std::string::npos) {
    complain("--out " + command.out +
             ": for several plans the name must hold {plan}, as in {plan}.svg");
    return Outcome::WrongUsage;
  }
  const std::unique_ptr<QGuiApplication> app = lettersWithoutDisplay(argc, argv);
  Outcome outcome = Outcome::Fine;
  for (const std::string& file : command.plans) outcome = worse(outcome, drawOne(file, command));
  return outcome;
}

}  // namespace combdraft::command

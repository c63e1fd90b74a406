#include "app/command/command.h"

#include <CLI/CLI.hpp>
#include <QLocale>
#include <algorithm>
#include <iostream>
#include <new>

#include "app/command/commands.h"

namespace combdraft::command {
namespace {

constexpr std::array<std::string_view, 8> kFirstWords{
    "look", "check", "draw", "upgrade", "--help", "-h", "--version", "--help-all"};

const char* const kCodes =
    "Exit codes: 0 fine, 1 the document is wrong, 2 wrong usage, 3 reading or writing failed, "
    "4 our own fault.";

void addPlans(CLI::App& app, std::vector<std::string>& plans) {
  app.add_option("PLAN", plans, "plan files")->required()->type_name("");
}

void addViewOption(CLI::App& app, std::vector<head::ViewName>& views) {
  app.add_option_function<std::string>(
         "--view",
         [&views](const std::string& word) {
           if (word == "all") return;
           const auto view = head::viewFromWord(word);
           if (!view)
             throw CLI::ValidationError(
                 "--view", "unknown name \"" + word +
                               "\"; known: front, back, left, right, top, crown, all");
           views = {*view};
         },
         "front, back, left, right, top, crown, or all (the default)")
      ->type_name("NAME");
}

template <class E>
void addEnum(CLI::App& app, const std::string& name, E& value,
             const std::vector<std::pair<std::string, E>>& words, const std::string& what) {
  std::string known;
  for (const auto& [word, one] : words) known += (known.empty() ? "" : ", ") + word;
  app.add_option_function<std::string>(
         name,
         [&value, words, known, name](const std::string& text) {
           for (const auto& [word, one] : words)
             if (word == text) {
               value = one;
               return;
             }
           throw CLI::ValidationError(name, "unknown name \"" + text + "\"; known: " + known);
         },
         what + ": " + known)
      ->type_name("NAME");
}

int parseAndRun(int argc, char** argv) {
  CLI::App app("Combdraft computes how hair lightened by placement will look. Without a command "
               "it opens the window.\n" + std::string(kCodes),
               "combdraft");
  app.set_version_flag("--version", std::string("combdraft ") + COMBDRAFT_VERSION);
  app.require_subcommand(1);

  LookCommand look;
  CLI::App* lookApp = app.add_subcommand("look", "readings per region and contrast");
  addPlans(*lookApp, look.plans);
  addLookOptions(*lookApp, look.look);
  lookApp->add_flag_callback("--json", [&] { look.form = OutputForm::Json; },
                             "one JSON object; a list for several plans");
  lookApp->add_flag_callback("--no-range", [&] { look.range = RangeWanted::No; },
                             "leave out the ranges from the assumptions, which take most of the time");
  lookApp->add_flag_callback("--no-advice", [&] { look.advice = AdviceWanted::No; },
                             "leave out where the hair opens and what needs a look");

  CheckCommand check;
  CLI::App* checkApp = app.add_subcommand("check", "what is wrong and what needs a look");
  addPlans(*checkApp, check.plans);
  checkApp->add_flag_callback("--json", [&] { check.form = OutputForm::Json; },
                              "one JSON object; a list for several plans");

  UpgradeCommand upgrade;
  CLI::App* upgradeApp = app.add_subcommand("upgrade", "write a plan of an older format in the newest");
  upgradeApp->add_option("PLAN", upgrade.plan, "plan file")->required()->type_name("");
  upgradeApp->add_option("--out", upgrade.out, "file to write; one that is there is kept as NAME.previous")
      ->required()
      ->type_name("FILE");

  DrawCommand draw;
  CLI::App* drawApp = app.add_subcommand("draw", "one picture, or all views");
  addPlans(*drawApp, draw.plans);
  addViewOption(*drawApp, draw.views);
  addEnum<paint::PageLayer>(*drawApp, "--layer", draw.layer,
                            {{"diagram", paint::PageLayer::Diagram},
                             {"look", paint::PageLayer::Look},
                             {"both", paint::PageLayer::Both}},
                            "what is drawn");
  drawApp->add_option("--out", draw.out,
                      "file to write, ending in .svg, .png or .pdf; {plan} and {view} are filled in")
      ->required()
      ->type_name("FILE");
  CLI::Option* width =
      addNumber(*drawApp, "--width", draw.width_px, 50, 20000, "px", "width of a PNG");
  addNumber(*drawApp, "--dpi", draw.dpi, 20, 1200, "dpi", "dots per inch of a PNG")
      ->excludes(width);
  addEnum<paint::Ground>(*drawApp, "--ground", draw.ground,
                         {{"paper", paint::Ground::Paper}, {"grey", paint::Ground::MidGrey}},
                         "what surrounds a look");
  addLookOptions(*drawApp, draw.look);

  try {
    app.parse(argc, argv);
  } catch (const CLI::Success& success) {  // help, version
    return app.exit(success, std::cout, std::cerr);
  } catch (const CLI::ParseError& error) {
    complain(error.what());
    std::cerr << "combdraft COMMAND --help says what a command takes.\n";
    return static_cast<int>(Outcome::WrongUsage);
  }
  if (lookApp->parsed()) return static_cast<int>(runLook(look));
  if (checkApp->parsed()) return static_cast<int>(runCheck(check));
  if (upgradeApp->parsed()) return static_cast<int>(runUpgrade(upgrade));
  return static_cast<int>(runDraw(draw, argc, argv));
}

}  // namespace

bool isCommand(int argc, char** argv) {
  return argc > 1 && std::find(kFirstWords.begin(), kFirstWords.end(),
                               std::string_view(argv[1])) != kFirstWords.end();
}

int runCommand(int argc, char** argv) {
  QLocale::setDefault(QLocale::c());  // words, numbers and pictures do not depend on the system's language
  try {
    return parseAndRun(argc, argv);
  } catch (const std::bad_alloc&) {
    complain("there is not enough memory for this");
  } catch (const std::exception& error) {
    complain(std::string("our own fault: ") + error.what());
  }
  return static_cast<int>(Outcome::OwnFault);
}

}  // namespace combdraft::command

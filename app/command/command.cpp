#include "app/command/command.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <functional>
#include <iostream>
#include <memory>
#include <new>

#include "app/command/commands.h"
#include "engine/base/number_text.h"
#include "engine/plan/plan_words.h"

namespace combdraft::command {
namespace {

constexpr std::array<std::string_view, 11> kFirstWords{
    "look", "check", "draw", "handout", "work", "share", "upgrade", "--help", "-h", "--version", "--help-all"};

const char* const kCodes =
    "Exit codes: 0 fine, 1 the document is wrong, 2 wrong usage, 3 reading or writing failed, "
    "4 our own fault.";

/// A file, or several, that the command cannot do without.
template <class Names>
void addFile(CLI::App& app, const char* name, Names& value, const char* what) {
  app.add_option(name, value, what)
      ->required()
      ->type_name(std::string_view(name) == "PLAN" ? "" : "FILE")
      ->check([](const std::string& text) { return text.empty() ? std::string("found an empty name, needed is that of a file") : std::string(); });
}

void addPlans(CLI::App& app, std::vector<std::string>& plans) { addFile(app, "PLAN", plans, "plan files"); }

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

// Names of one value each, with the words of a plan file; blanks in them are hyphens here.
template <class E, class Take>
void addWords(CLI::App& app, const std::string& name, const std::string& what, const Take& take) {
  std::vector<std::pair<std::string, E>> words;
  std::string known;
  for (const auto& entry : plan::words<E>()) {
    std::string word(entry.word);
    for (char& c : word) c = c == ' ' ? '-' : static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    known += (known.empty() ? "" : ", ") + word;
    words.emplace_back(word, entry.value);
  }
  app.add_option_function<std::vector<std::string>>(
         name,
         [take, words, known, name](const std::vector<std::string>& texts) {
           for (const std::string& text : texts) {
             const auto it = std::find_if(words.begin(), words.end(), [&](const auto& word) { return word.first == text; });
             if (it == words.end()) throw CLI::ValidationError(name, "unknown name \"" + text + "\"; known: " + known);
             take(it->second);
           }
         },
         what + ": " + known)
      ->delimiter(',')
      ->type_name("NAME");
}

void addHandoutOptions(CLI::App& app, HandoutCommand& handout) {
  addFile(app, "PLAN", handout.plan, "plan file");
  addFile(app, "--out", handout.out, "file to write: .pdf, or .svg or .png with a number for each page");
  addEnum<DocumentWanted>(app, "--document", handout.document,
                          {{"handout", DocumentWanted::Handout}, {"record-card", DocumentWanted::RecordCard}, {"client-page", DocumentWanted::ClientPage}},
                          "what is printed");
  addWords<plan::HandoutPart>(app, "--parts", "parts of the handout in the order wished, with commas; without it as the plan has them",
                              [&handout](plan::HandoutPart part) {
                                if (std::find(handout.parts.begin(), handout.parts.end(), part) == handout.parts.end()) handout.parts.push_back(part);
                              });
  addWords<plan::PaperSize>(app, "--paper", "size of the paper", [&handout](plan::PaperSize paper) { handout.paper = paper; });
  addWords<plan::PageTurn>(app, "--turn", "how the paper lies", [&handout](plan::PageTurn turn) { handout.turn = turn; });
  app.add_option("--choice", handout.choice, "the name of a choice; the active one without it")->type_name("NAME");
  app.add_option("--aftercare", handout.aftercare, "for the client's page; \\n begins a new line")->type_name("TEXT");
  app.add_option("--next-visit", handout.nextVisit, "for the client's page")->type_name("TEXT");
  app.add_option("--call", handout.call, "for the client's page: whom to call")->type_name("TEXT");
  addNumber(app, "--dpi", handout.dpi, 20, 1200, "dpi", "dots per inch of a PNG");
  addNumber(app, "--locks", handout.locks, 2000, 200000, "", "locks of hair in the pictures");
}

void addWorkOptions(CLI::App& app, WorkCommand& command) {
  addFile(app, "PLAN", command.plan, "plan file");
  app.add_flag_callback("--json", [&command] { command.form = OutputForm::Json; }, "one JSON object");
  app.add_option("--choice", command.choice, "the name of a choice; the active one without it")->type_name("NAME");
  addEnum<work::OrderUse>(app, "--order", command.settings.order,
                          {{"planned", work::OrderUse::AsPlanned}, {"rule", work::OrderUse::ByRule}},
                          "the plan's order, or slow hair first and the front hairline last");
  addEnum<work::TopBowl>(app, "--top", command.settings.top,
                         {{"fresh", work::TopBowl::Fresh}, {"as-it-comes", work::TopBowl::AsItComes}},
                         "which bowl the pieces at the top come from");
  addNumber(app, "--hands", command.pairs, 1, 2, "pairs", "pairs of hands");
  app.add_option_function<std::vector<std::string>>(
         "--foils",
         [&command](const std::vector<std::string>& texts) {
           for (const std::string& text : texts) {
             const auto width = parseNumber(text);
             if (!width || *width < 10 || *width > 1000) throw CLI::ValidationError("--foils", "found \"" + text + "\", allowed is 10 to 1000 mm");
             command.settings.foils_mm.push_back(*width);
           }
         },
         "your own widths of foil in mm, with commas")
      ->delimiter(',')
      ->type_name("MM");
  app.add_option_function<std::string>(
         "--look-every",
         [&command](const std::string& text) {
           const auto minutes = parseNumber(text);
           if (!minutes || !(*minutes > 0) || *minutes > 240) throw CLI::ValidationError("--look-every", "found \"" + text + "\", allowed is above 0 to 240 min");
           command.settings.lookEvery_min = *minutes;
         },
         "a round of looking after so many minutes while placing goes on")
      ->type_name("MIN");
  app.add_option_function<std::string>(
         "--smallest-bowl",
         [&command](const std::string& text) {
           const auto grams = parseNumber(text);
           if (!grams || *grams < 1 || *grams > 1000) throw CLI::ValidationError("--smallest-bowl", "found \"" + text + "\", allowed is 1 to 1000 g");
           command.settings.smallestBowl_g = *grams;
         },
         "the least that you mix at once; bowls that come to less are told (1 to 1000 g)")
      ->type_name("G");
  addNumber(app, "--locks", command.locks, 2000, 200000, "", "locks that hair is counted on");
}

/// What is to happen once the line is read.
using Run = std::function<Outcome()>;

Run addLook(CLI::App& app) {
  auto look = std::make_shared<LookCommand>();
  addPlans(app, look->plans);
  addLookOptions(app, look->look);
  app.add_flag_callback("--json", [look] { look->form = OutputForm::Json; },
                        "one JSON object; a list for several plans");
  app.add_flag_callback("--no-range", [look] { look->range = RangeWanted::No; },
                        "leave out the ranges from the assumptions, which take most of the time");
  app.add_flag_callback("--no-advice", [look] { look->advice = AdviceWanted::No; },
                        "leave out where the hair opens and what needs a look");
  return [look] { return runLook(*look); };
}

Run addCheck(CLI::App& app) {
  auto check = std::make_shared<CheckCommand>();
  addPlans(app, check->plans);
  app.add_flag_callback("--json", [check] { check->form = OutputForm::Json; },
                        "one JSON object; a list for several plans");
  return [check] { return runCheck(*check); };
}

Run addUpgrade(CLI::App& app) {
  auto upgrade = std::make_shared<UpgradeCommand>();
  addFile(app, "PLAN", upgrade->plan, "plan file");
  addFile(app, "--out", upgrade->out, "file to write; one that is there is kept as NAME.previous");
  return [upgrade] { return runUpgrade(*upgrade); };
}

Run addShare(CLI::App& app) {
  auto share = std::make_shared<ShareCommand>();
  addFile(app, "PLAN", share->plan, "plan file");
  addFile(app, "--out", share->out, "file to write; nothing may be there yet");
  return [share] { return runShare(*share); };
}

Run addDraw(CLI::App& app, int& argc, char** argv) {
  auto draw = std::make_shared<DrawCommand>();
  addPlans(app, draw->plans);
  addViewOption(app, draw->views);
  addEnum<paint::PageLayer>(app, "--layer", draw->layer,
                            {{"diagram", paint::PageLayer::Diagram},
                             {"look", paint::PageLayer::Look},
                             {"both", paint::PageLayer::Both}},
                            "what is drawn");
  addFile(app, "--out", draw->out, "file to write, ending in .svg, .png or .pdf; {plan} and {view} are filled in");
  CLI::Option* width = addNumber(app, "--width", draw->width_px, 50, 20000, "px", "width of a PNG");
  addNumber(app, "--dpi", draw->dpi, 20, 1200, "dpi", "dots per inch of a PNG")->excludes(width);
  addEnum<paint::Ground>(app, "--ground", draw->ground,
                         {{"paper", paint::Ground::Paper}, {"grey", paint::Ground::MidGrey}},
                         "what surrounds a look");
  addLookOptions(app, draw->look);
  return [draw, &argc, argv] { return runDraw(*draw, argc, argv); };
}

Run addHandout(CLI::App& app, int& argc, char** argv) {
  auto handout = std::make_shared<HandoutCommand>();
  addHandoutOptions(app, *handout);
  return [handout, &argc, argv] { return runHandout(*handout, argc, argv); };
}

Run addWork(CLI::App& app) {
  auto command = std::make_shared<WorkCommand>();
  addWorkOptions(app, *command);
  return [command] { return runWork(*command); };
}

/// A command: its name, its line in the help, and what gives it its options.
struct Verb {
  const char* name;
  const char* says;
  std::function<Run(CLI::App&)> add;
};

int parseAndRun(int argc, char** argv) {
  CLI::App app("Combdraft computes how hair lightened by placement will look. Without a command "
               "it opens the window.\n" + std::string(kCodes),
               "combdraft");
  app.set_version_flag("--version", std::string("combdraft ") + COMBDRAFT_VERSION);
  app.require_subcommand(1);

  const Verb verbs[] = {
      {"look", "readings per region and contrast", addLook},
      {"check", "what is wrong and what needs a look", addCheck},
      {"upgrade", "write a plan of an older format in the newest", addUpgrade},
      {"share", "a copy to hand on: the drawing without client, notes, photos and log", addShare},
      {"draw", "one picture, or all views", [&](CLI::App& one) { return addDraw(one, argc, argv); }},
      {"handout", "the printed lesson, the record card or the client's page",
       [&](CLI::App& one) { return addHandout(one, argc, argv); }},
      {"work", "order, foils, bowls, grams and minutes", addWork},
  };
  Run run;  // of the command on the line; only that one is given its options
  for (const Verb& verb : verbs) {
    CLI::App* one = app.add_subcommand(verb.name, verb.says);
    if (std::find(argv + 1, argv + argc, std::string_view(verb.name)) == argv + argc) continue;
    one->final_callback([&run, fill = verb.add(*one)] { run = fill; });
  }

  try {
    app.parse(argc, argv);
  } catch (const CLI::Success& success) {  // help, version
    return app.exit(success, std::cout, std::cerr);
  } catch (const CLI::ParseError& error) {
    complain(error.what());
    std::cerr << "combdraft COMMAND --help says what a command takes.\n";
    return static_cast<int>(Outcome::WrongUsage);
  }
  return static_cast<int>(run());
}

}  // namespace

bool isCommand(int argc, char** argv) {
  return argc > 1 && std::find(kFirstWords.begin(), kFirstWords.end(),
                               std::string_view(argv[1])) != kFirstWords.end();
}

int runCommand(int argc, char** argv) {
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

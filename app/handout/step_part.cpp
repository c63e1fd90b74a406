#include "app/handout/step_part.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "app/handout/figures.h"
#include "app/handout/parts.h"
#include "app/handout/piece_words.h"
#include "app/paint/figure.h"
#include "engine/advise/effort.h"
#include "engine/base/number_text.h"

namespace combdraft::handout {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString minutesText(double minutes) { return paint::figure(numberText(std::round(minutes))); }

constexpr double kPicture_mm = 58, kGap_mm = 6, kNumber_mm = 9;
constexpr int kMostLines = 30;  // of one step beside its picture; what is longer goes on below

// Pieces placed just before a step; more would only fill the picture and the file.
std::vector<plan::ItemId> lately(const std::vector<plan::ItemId>& before) {
  constexpr std::size_t kMost = 80;
  return before.size() <= kMost ? before : std::vector<plan::ItemId>(before.end() - kMost, before.end());
}

paint::Figure numberFigure(int number) {
  paint::Figure figure;
  figure.id = QStringLiteral("step-%1").arg(number);
  figure.frame = QRectF(0, 0, kNumber_mm, 7);
  paint::DrawingItem disc;
  disc.id = figure.id;
  disc.role = paint::Role::Number;
  disc.layer = paint::Layer::Labels;
  disc.path.addEllipse(QPointF(3.2, 3.2), 3.2, 3.2);
  disc.style.fill = Inks{}.ink;
  disc.text = paint::TextRun{QString::number(number), QPointF(3.2, 3.2), number > 99 ? 2.5 : 3.4, QColor(Qt::white),
                             paint::TextRun::Anchor::Middle, Weight::Bold};
  figure.items.push_back(std::move(disc));
  return figure;
}

void addReason(Column& column, const QString& label, const QString& words) {
  if (words.isEmpty()) return;
  column.gap(1.6);
  column.text(label, type::kSmall, Weight::Bold, Column::Tone::Soft);
  column.stay();
  column.text(words);
}

Column wordsOf(const Step& step, int number, double width_mm, const QString& numbers) {
  Column words(width_mm);
  Column head(width_mm - kNumber_mm), disc(kNumber_mm);
  disc.figure(numberFigure(number), 1);
  head.text(step.name, type::kSub + 0.3, Weight::Bold);
  if (!numbers.isEmpty()) head.text(numbers, type::kSmall, Weight::Plain, Column::Tone::Soft);
  words.row({{0, &disc}, {kNumber_mm, &head}});
  if (step.standing == Step::Standing::Gone)
    words.text(Words::tr("This piece or section is no longer in the plan. Its words are kept; take the step out or draw it again."), type::kSmall,
               Weight::Bold);
  addReason(words, Words::tr("What"), step.what());
  addReason(words, Words::tr("How"), step.how());
  addReason(words, Words::tr("Why"), step.why());
  return words;
}

// A step is its picture and its words side by side; words that would not fit on a
// page go on below at the same place.
void addStep(Column& column, const Column& picture, const Column& words, double left_mm) {
  Column fits(words.width_mm());
  std::size_t taken = 0;
  for (; taken < words.chunks().size() && taken < kMostLines; ++taken) fits.add(words.chunks()[taken]);
  column.gap(7);
  column.row({{0, &picture}, {left_mm, &fits}});
  for (; taken < words.chunks().size(); ++taken) {
    Column one(words.width_mm());
    one.add(words.chunks()[taken]);
    column.gap(words.chunks()[taken].above_mm);
    column.row({{left_mm, &one}});
  }
}

}  // namespace

void addSteps(Column& column, const Request& request, const paint::Scene& scene, std::stop_token stop) {
  column.nextPage();
  column.heading(partTitle(plan::HandoutPart::Steps));
  const std::vector<Step> steps = stepsOf(scene, request.handout.steps);
  if (steps.empty()) {
    column.text(Words::tr("There are no pieces in this choice yet, so there are no steps. Draw pieces or lay out a section first."));
    return;
  }
  const bool pairs = column.width_mm() > 200;
  const double width = pairs ? (column.width_mm() - 10) / 2 : column.width_mm();
  const double picture_mm = pairs ? 42 : kPicture_mm;
  std::vector<plan::ItemId> before;
  std::vector<Column> waiting;
  const auto flush = [&] {
    if (waiting.empty()) return;
    std::vector<std::pair<double, const Column*>> row;
    for (std::size_t i = 0; i < waiting.size(); ++i) row.emplace_back(static_cast<double>(i) * (width + 10), &waiting[i]);
    column.gap(7);
    column.row(row);
    waiting.clear();
  };
  for (std::size_t i = 0; i < steps.size() && !stop.stop_requested(); ++i) {
    const Step& step = steps[i];
    const std::set<plan::ItemId> now(step.pieces.begin(), step.pieces.end());
    Column picture(picture_mm);
    Pieces shapes;
    for (const plan::ItemId& id : step.pieces)
      if (const paint::PieceShape* shape = scene.find(id)) shapes.push_back(shape);
    if (!now.empty()) {
      const head::ViewName view = bestView(scene, step.pieces);
      const double scale = std::min(picture_mm / cropOf(view).width(), 66 / cropOf(view).height());
      paint::Figure figure = stepFigure(scene, view, scale, now, lately(before));
      figure.title = viewName(view, Person::Model);
      const double wide = figure.frame.width() * scale;
      picture.figure(std::move(figure), scale, (picture_mm - wide) / 2);
      picture.figure(textFigure(viewName(view, Person::Model), type::kSmall, Weight::Plain, Inks{}.soft, picture_mm, paint::TextRun::Anchor::Middle), 1);
    }
    QString numbers = numbersOf(shapes);
    if (shapes.size() > 1) numbers = Words::tr("Pieces %1").arg(numbers);
    const Column words = wordsOf(step, static_cast<int>(i) + 1, width - picture_mm - kGap_mm, shapes.size() > 1 && step.about.starts_with("section") ? numbers : QString());
    if (pairs && words.chunks().size() <= kMostLines) {
      Column cell(width);
      cell.row({{0, &picture}, {picture_mm + kGap_mm, &words}});
      waiting.push_back(std::move(cell));
      if (waiting.size() == 2) flush();
    } else {
      flush();
      addStep(column, picture, words, picture_mm + kGap_mm);
    }
    before.insert(before.end(), step.pieces.begin(), step.pieces.end());
  }
  flush();
}

void addTiming(Column& column, const Request& request, const paint::Scene& scene) {
  const std::size_t from = column.chunks().size();
  column.heading(partTitle(plan::HandoutPart::Timing));
  const std::vector<Step> steps = stepsOf(scene, request.handout.steps);
  std::vector<TimedStep> timed;
  double whole = 0;
  for (const Step& step : steps) {
    if (step.standing == Step::Standing::Gone) continue;
    timed.push_back({step.name, advise::placingMinutes(request.plan, step.pieces)});
    whole += timed.back().minutes;
  }
  if (!(whole > 0)) {
    column.text(Words::tr("There is nothing to place yet."));
    return;
  }
  column.text(Words::tr("About %1 minutes for placing by the plan's assumptions, where your own speed can be typed. Time on the hair is not planned here: "
                  "it is what the leaflet says and what you see.")
                  .arg(minutesText(whole)));
  column.gap(3);
  column.figure(timingFigure(timed, column.width_mm()), 1);
  column.text(Words::tr("The figures in the bars are the steps; below them minutes from the first parting."), type::kSmall, Weight::Plain,
              Column::Tone::Soft);
  column.keepTogether(from);  // the table may go on over pages
  column.gap(3);
  std::vector<std::vector<Column::Cell>> rows;
  for (std::size_t i = 0; i < timed.size(); ++i)
    rows.push_back({{QString::number(i + 1), Weight::Bold}, {timed[i].name, Weight::Plain}, {Words::tr("%1 min").arg(paint::figure(numberText(timed[i].minutes, 1))), Weight::Plain}, {}, {}, {}});
  column.table({Words::tr("Step"), Words::tr("What"), Words::tr("Placing"), Words::tr("First in at"), Words::tr("Looked at"), Words::tr("Rinsed at")},
               {0.08, 0.4, 0.12, 0.14, 0.13, 0.13}, rows, type::kSmall, 6.6);
}

}  // namespace combdraft::handout

#include "app/desk/finding_detail.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "app/controls/drop_widgets.h"
#include "app/controls/flow_layout.h"
#include "app/controls/number_input.h"
#include "app/controls/theme.h"
#include "app/controls/wrapped_label.h"
#include "app/desk/finding_place.h"
#include "app/desk/pattern_drawing.h"
#include "app/paint/assumption_words.h"
#include "app/paint/check_words.h"
#include "app/paint/diagram.h"
#include "app/paint/marks.h"
#include "app/sheet/screen_palette.h"
#include "app/words/engine_words.h"
#include "engine/base/assumptions.h"

namespace combdraft::desk {
namespace {

constexpr std::size_t kMostChanges = 4;
constexpr double kWorthSaying_L = 0.7, kWorthSaying_share = 0.02;

QLabel* wrapped(const QString& text, QWidget* parent, bool soft = false) {
  auto* label = new controls::WrappedLabel(text, parent);
  label->setTextFormat(Qt::PlainText);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  label->setProperty("soft", soft);
  return label;
}

QString capital(QString text) {
  if (!text.isEmpty()) text[0] = text[0].toUpper();
  return text;
}

/// "Line at 4 cm², own assumption: a light patch at the opening larger than this is a block."
QString lineText(const plan::Plan& plan, const advise::Finding& finding) {
  if (finding.kind == advise::FindingKind::TargetMissed) return FindingDetail::tr("Against the aim set for this choice.");
  if (finding.assumption.empty()) return FindingDetail::tr("By a rule of our own; common practice, no source.");
  const auto table = assumptionTable();
  const auto found = std::find_if(table.begin(), table.end(), [&](const Assumption& a) { return a.name == finding.assumption; });
  if (found == table.end()) return {};
  const double value = Assumptions(plan.info().assumptions)[found->name];
  const bool own = plan.info().assumptions.contains(std::string(found->name));
  return FindingDetail::tr("The limit is %1 %2 (%3). %4")
      .arg(controls::shownNumber(value, value < 1 ? 2 : 1), words::inWords(found->unit).replace(QStringLiteral("cm2"), QStringLiteral("cm²")),
           own ? FindingDetail::tr("changed by you") : words::inWords(provenanceWord(found->from)),
           words::inWords(found->what));
}

/// "Between 38 and 90 cm² right there ...; it depends most on ...". Empty where
/// it is not the largest block of its kind, whose range alone is worked out.
QString rangeText(const advise::Advice& advice, const advise::Finding& finding) {
  const bool light = finding.kind == advise::FindingKind::LightBlock;
  if (!light && finding.kind != advise::FindingKind::DarkBlock) return {};
  const look::Opening* worst = light ? advice.openings.worstLight() : advice.openings.worstDark();
  if (!worst || !(advise::wornOf(*worst) == finding.worn)) return {};
  const auto& range = light ? advice.openings.lightRange : advice.openings.darkRange;
  if (!range) return FindingDetail::tr("A low and a high value follow when the hand rests.");
  QStringList names;
  for (const std::string& name : range->movesMost) names << u'“' + paint::assumptionName(name) + u'”';
  const QString span = FindingDetail::tr("Between %1 and %2 cm² right there if the assumptions are a little off; real hair can differ more.")
                           .arg(controls::shownNumber(range->low_cm2, 0), controls::shownNumber(range->high_cm2, 0));
  return names.isEmpty() ? span : span + u' ' + FindingDetail::tr("It depends most on %1.").arg(names.join(FindingDetail::tr(" and ")));
}

/// "Pieces 5, 7, 9: ", by their place in the order; empty for none.
QString piecesText(const plan::Plan& plan, const std::vector<plan::ItemId>& ids) {
  QStringList numbers;
  for (const plan::ItemId& id : ids)
    if (const auto* piece = plan.find<plan::Piece>(id)) numbers << QString::number(piece->order);
  if (numbers.isEmpty()) return {};
  return numbers.size() == 1 ? FindingDetail::tr("Piece %1: ").arg(numbers.front())
                             : FindingDetail::tr("Pieces %1: ").arg(numbers.join(QStringLiteral(", ")));
}

/// Where it is: the head from the side that shows it, pieces outlined, patch marked.
QPixmap pictureOf(const plan::Plan& plan, const look::LookSettings& settings, const FindingPlace& place,
                  const std::vector<plan::ItemId>& pieces, const QSize& size, double ratio) {
  const paint::Scene scene(plan, settings.choice, nullptr);
  const head::ViewName view = place.view(scene.head());
  QPixmap pixmap = QPixmap::fromImage(patternDrawing(scene, view, size, ratio, sheet::screenPalette()));
  QPainter painter(&pixmap);
  painter.setRenderHint(QPainter::Antialiasing);
  const QTransform transform = patternTransform(scene, view, size);
  const controls::Theme& t = controls::currentTheme();
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(t.accent, 1.6));
  for (const plan::ItemId& id : pieces)
    if (const paint::PieceShape* piece = scene.find(id)) painter.drawPath(transform.map(piece->in(scene.head().view(view)).seen));
  QColor tint = t.accent;
  tint.setAlpha(60);
  painter.setPen(QPen(t.ink, 1.6));
  painter.setBrush(QBrush(tint));
  painter.drawPath(transform.map(paint::marksOutline(scene.head(), view, place.places, place.cell_mm)));
  return pixmap;
}

}  // namespace

FindingDetail::FindingDetail(document::DocumentController& controller, document::ViewState& view, QWidget* parent)
    : QFrame(parent), controller_(controller), view_(view) {
  setObjectName(QStringLiteral("findingDetail"));
  setAccessibleName(tr("What needs a look, opened"));
  column_ = new QVBoxLayout(this);
  column_->setContentsMargins(0, 4, 0, 0);
  connect(&controller_, &document::DocumentController::changed, this, &FindingDetail::documentChanged);
  build();
}

void FindingDetail::show(std::shared_ptr<const live::AdviceResult> advice, std::optional<std::size_t> finding) {
  if (trying_) return;  // nothing changes under the hand
  advice_ = std::move(advice);
  finding_ = finding;
  build();
}

void FindingDetail::build() {
  if (content_) controls::dropWidget(content_);  // it may be what was clicked
  content_ = nullptr;
  tries_.clear();
  keep_ = drop_ = nullptr;
  effect_ = nullptr;
  setVisible(advice_ && finding_);
  if (!isVisibleTo(parentWidget())) return view_.setMarks({});
  const advise::Finding& finding = advice_->advice.findings[*finding_];
  const FindingPlace place = placeOf(advice_->advice.openings, finding);
  view_.setMarks({place.places, place.cell_mm});

  content_ = new QWidget(this);
  auto* column = new QVBoxLayout(content_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  auto* top = new QHBoxLayout;
  auto* picture = new QLabel(content_);
  const int side = fontMetrics().height() * 7;
  picture->setPixmap(pictureOf(controller_.document(), view_.lookSettings(), place, finding.pieces, {side, side}, devicePixelRatioF()));
  picture->setFixedSize(side, side);
  picture->setAccessibleName(tr("Picture of where it is"));
  top->addWidget(picture, 0, Qt::AlignTop);
  auto* words = new QVBoxLayout;
  words->addWidget(wrapped(capital(words::inWords(advise::sentenceOf(finding))), content_));
  if (const QString range = rangeText(advice_->advice, finding); !range.isEmpty()) words->addWidget(wrapped(range, content_));
  words->addWidget(wrapped(lineText(controller_.document(), finding), content_, true));
  auto* buttons = new controls::FlowLayout(nullptr, 6);  // beside the picture there may be room for one
  auto* wear = new QPushButton(tr("Show it"), content_);
  wear->setToolTip(tr("Wear the hair the way that shows it: %1").arg(words::inWords(advise::wornPhrase(finding.worn))));
  connect(wear, &QPushButton::clicked, this, [this, worn = finding.worn, look = place.view(paint::HeadScene(controller_.document().head()))] {
    look::LookSettings settings = view_.lookSettings();
    settings.worn = worn;
    view_.setLookSettings(settings);
    view_.setLargeView(look);
  });
  buttons->addWidget(wear);
  if (!finding.assumption.empty()) {
    auto* line = new QPushButton(tr("Change this limit…"), content_);
    line->setToolTip(tr("Opens the assumption that says where this begins to need a look"));
    connect(line, &QPushButton::clicked, this, [this, name = QString::fromStdString(finding.assumption)] { Q_EMIT assumptionWanted(name); });
    buttons->addWidget(line);
  }
  words->addLayout(buttons);
  words->addStretch(1);
  top->addLayout(words, 1);
  column->addLayout(top);

  if (trying_) {
    const advise::Remedy& remedy = finding.remedies[*trying_];
    column->addWidget(wrapped(tr("Trying: %1").arg(words::inWords(advise::sentenceOf(remedy))), content_));
    auto* ends = new controls::FlowLayout(nullptr, 6);
    keep_ = new QPushButton(tr("Keep it"), content_);
    keep_->setToolTip(tr("Make it part of the plan; undo takes it back"));
    drop_ = new QPushButton(tr("Drop it"), content_);
    drop_->setToolTip(tr("The plan stays as it was"));
    connect(keep_, &QPushButton::clicked, this, &FindingDetail::keep);
    connect(drop_, &QPushButton::clicked, this, &FindingDetail::drop);
    ends->addWidget(keep_);
    ends->addWidget(drop_);
    column->addLayout(ends);
    effect_ = wrapped({}, content_, true);
    column->addWidget(effect_);
    showEffect();
  } else if (!finding.remediesTried) {
    column->addWidget(wrapped(tr("Changes of placement are being tried …"), content_, true));
  } else if (finding.remedies.empty()) {
    column->addWidget(wrapped(tr("None of the changes of placement that were tried helps; your own eye may find one."), content_, true));
  } else {
    column->addWidget(wrapped(tr("What a change of placement might do; try it, then keep or drop it. Placement only: the maker's directions, your "
                                 "licence, the hair and the scalp come first; test a strand."), content_, true));
    for (std::size_t i = 0; i < finding.remedies.size(); ++i) {
      auto* row = new QHBoxLayout;
      auto* attempt = new QPushButton(tr("Try"), content_);
      QString what = words::inWords(advise::sentenceOf(finding.remedies[i]));
      if (finding.pieces.size() > 1) what = piecesText(controller_.document(), finding.remedies[i].pieces) + what;
      attempt->setAccessibleName(tr("Try: %1").arg(what));
      attempt->setToolTip(tr("Shows the plan with this change; nothing is changed until you keep it"));
      connect(attempt, &QPushButton::clicked, this, [this, i] { tryRemedy(i); });
      row->addWidget(attempt, 0, Qt::AlignTop);
      row->addWidget(wrapped(what, content_), 1);
      column->addLayout(row);
      tries_ << attempt;
    }
  }
  column_->addWidget(content_);
}

void FindingDetail::tryRemedy(std::size_t remedy) {
  const plan::ChangeSet edit =
      advise::editOf(controller_.document(), advice_->advice.findings[*finding_].remedies[remedy]);
  if (edit.empty()) return;  // its pieces went in the meantime; new advice is on its way
  before_ = lastReadings_;
  after_.reset();
  triedFinding_.reset();
  trying_ = remedy;
  controller_.setTentative(plan::applied(controller_.document(), edit));
  build();
  if (drop_) drop_->setFocus();  // keeping is never one careless key away
  Q_EMIT tryingChanged();
}

void FindingDetail::keep() {
  const QString name = words::inWords(advise::sentenceOf([this] {
    advise::Remedy bare = advice_->advice.findings[*finding_].remedies[*trying_];
    bare.effect.reset();
    return bare;
  }()));
  trying_.reset();
  controller_.commitTentative(name);
  finding_.reset();
  build();
  Q_EMIT tryingChanged();
}

void FindingDetail::drop() {
  trying_.reset();
  controller_.dropTentative();
  build();
  Q_EMIT tryingChanged();
}

void FindingDetail::keyPressEvent(QKeyEvent* event) {
  if (trying_ && event->key() == Qt::Key_Escape) return drop();
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
    if (auto* button = qobject_cast<QPushButton*>(focusWidget()); button && isAncestorOf(button)) return button->click();
  QFrame::keyPressEvent(event);
}

void FindingDetail::documentChanged(const document::DocumentChange& change) {
  if (change.kind == document::DocumentChange::Kind::Replaced) {
    trying_.reset(), finding_.reset(), advice_.reset(), lastReadings_.reset();
    return build();
  }
  // Escape, another drag or another edit: what was tried is gone.
  if (trying_ && !controller_.isTentative()) {
    trying_.reset();
    build();
    Q_EMIT tryingChanged();
  }
}

void FindingDetail::setLook(const live::LookResult& look) {
  if (!look.frame.readings || look.pass != live::Pass::Full) return;
  if (look.revision != controller_.revision()) return;  // a late one, of what was tried before
  if (trying_ && look.settings == lastSettings_) after_ = look.frame.readings;
  if (!trying_) lastReadings_ = look.frame.readings, lastSettings_ = look.settings;
  showEffect();
}

void FindingDetail::setTriedAdvice(const live::AdviceResult& advice) {
  if (!trying_ || advice.revision != controller_.revision() || !advice_ || !finding_) return;
  using Kind = advise::FindingKind;
  const Kind kind = advice_->advice.findings[*finding_].kind;
  const bool atOpening = kind == Kind::LightBlock || kind == Kind::DarkBlock || kind == Kind::RunAtOpening;
  if (!advice.advice.complete && !atOpening) return;  // not looked at yet
  const advise::Finding& was = advice_->advice.findings[*finding_];
  const auto still = std::find_if(advice.advice.findings.begin(), advice.advice.findings.end(), [&](const advise::Finding& f) {
    return advise::isSame(f, was);
  });
  triedFinding_ = still == advice.advice.findings.end()
                      ? tr("Not listed any more; look at the other readings below.")
                      : tr("Still there: %1").arg(words::inWords(advise::sentenceOf(*still)));
  const auto others = static_cast<qsizetype>(advice.advice.findings.size()) - static_cast<qsizetype>(advice_->advice.findings.size());
  const qsizetype expected = still == advice.advice.findings.end() ? -1 : 0;
  if (advice.advice.complete && others > expected) *triedFinding_ += u' ' + tr("New things that need a look: %1.").arg(others - expected);
  showEffect();
}

QString FindingDetail::effectText() const { return effect_ ? effect_->text() : QString(); }

void FindingDetail::showEffect() {
  if (!effect_) return;
  QStringList lines;
  // Cautions that the plan as tried has and the plan itself has not: first of all.
  if (trying_) {
    const std::vector<plan::Issue> now = plan::validate(controller_.document());
    for (const plan::Issue& issue : plan::validate(controller_.plan()))
      if (issue.severity != plan::Severity::Note && std::find(now.begin(), now.end(), issue) == now.end())
        lines << QStringLiteral("\u26A0 ") + paint::issueText(controller_.plan(), issue);
  }
  lines << triedFinding_.value_or(tr("The openings are being worked out …"));
  if (before_ && after_) {
    struct Change {
      double weight;
      QString words;
    };
    std::vector<Change> changes;
    const auto compare = [&](const QString& name, const std::optional<look::Reading>& a, const std::optional<look::Reading>& b) {
      if (!a || !b) return;
      const double dL = b->lightness - a->lightness, dShare = b->light_share - a->light_share;
      if (std::abs(dL) < kWorthSaying_L && std::abs(dShare) < kWorthSaying_share) return;
      changes.push_back({std::abs(dL) + 30 * std::abs(dShare),
                         tr("%1: level %2 to %3, %4 % to %5 % light")
                             .arg(name, controls::shownNumber(a->level, 1), controls::shownNumber(b->level, 1),
                                  controls::shownNumber(100 * a->light_share, 0), controls::shownNumber(100 * b->light_share, 0))});
    };
    compare(tr("whole head"), before_->whole, after_->whole);
    for (std::size_t i = 0; i < std::min(before_->regions.size(), after_->regions.size()); ++i)
      compare(words::inWords(look::regionWord(before_->regions[i].region)), before_->regions[i].whole, after_->regions[i].whole);
    std::stable_sort(changes.begin(), changes.end(), [](const Change& a, const Change& b) { return a.weight > b.weight; });
    if (changes.empty()) lines << tr("No region's reading changes by more than can be seen.");
    for (std::size_t i = 0; i < std::min(changes.size(), kMostChanges); ++i) lines << capital(changes[i].words);
    if (changes.size() > kMostChanges) lines << tr("and %1 more regions, by less").arg(changes.size() - kMostChanges);
  }
  effect_->setText(lines.join(u'\n'));
}

}  // namespace combdraft::desk

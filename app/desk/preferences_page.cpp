#include "app/desk/preferences_page.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QScrollArea>
#include <algorithm>
#include <cmath>

#include "app/cards/card_parts.h"
#include "app/cards/consultation_words.h"
#include "app/controls/number_field.h"
#include "app/controls/segments.h"
#include "app/controls/text_field.h"
#include "app/desk/page_parts.h"

namespace combdraft::desk {
namespace {

constexpr int kLetters = 72;  // a row is no wider than these: label and value are read together

// Where rows of fields stand, below a heading.
QVBoxLayout* addRows(QVBoxLayout* column, const QString& heading) {
  cards::addHeading(column, heading);
  auto* box = new QWidget(column->parentWidget());
  box->setMaximumWidth(box->fontMetrics().averageCharWidth() * kLetters);
  auto* rows = new QVBoxLayout(box);
  rows->setContentsMargins(0, 0, 0, 0);
  column->addWidget(box);
  return rows;
}

controls::NumberField* addNumber(QVBoxLayout* rows, const controls::NumberFieldSpec& spec) {
  auto* made = new controls::NumberField(spec, rows->parentWidget());
  rows->addWidget(made);
  return made;
}

// A number of the user's own: empty until it is typed. `like` has what its neighbours share.
controls::NumberField* addOwn(QVBoxLayout* rows, controls::NumberFieldSpec like, const QString& label, const QString& tip) {
  like.label = label;
  like.tip = tip;
  like.mayBeEmpty = true;
  return addNumber(rows, like);
}

}  // namespace

PreferencesPage::PreferencesPage(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("page"));
  QVBoxLayout* outer = pageColumn(this, tr("Preferences"), [this] { Q_EMIT done(); });
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setAccessibleName(tr("Preferences"));
  outer->addWidget(scroll, 1);
  auto* content = new QWidget(scroll);
  scroll->setWidget(content);
  auto* column = new QVBoxLayout(content);
  column->setContentsMargins(0, 0, 8, 0);
  column->setSpacing(8);

  const auto choice = [&](const QString& name, const std::vector<controls::Segment>& segments) {
    cards::addHeading(column, name);
    auto* made = new controls::Segments(name, segments, content);
    made->setMaximumWidth(fontMetrics().averageCharWidth() * kLetters);
    column->addWidget(made);
    return made;
  };
  const auto changeTo = [this](auto change) {
    return [this, change](int index) {
      change(now_, index);
      Q_EMIT changed(now_);
    };
  };

  theme_ = choice(tr("Theme"), {{tr("Light"), tr("Paper and graphite"), {}},
                                {tr("Dark"), tr("For the salon floor"), {}},
                                {tr("As the system"), tr("Light or dark as the desktop asks"), {}}});
  cards::addSoftText(column, tr("Hair is judged on paper or on mid grey, in a dark window always on mid grey; everything printed is light."));
  connect(theme_, &controls::Segments::chosen, this, changeTo([](store::Preferences& p, int index) {
            p.theme = static_cast<store::ThemeChoice>(index);
          }));

  // Languages are called what their speakers call them.
  language_ = choice(tr("Language"), {{tr("As the system"), tr("English where the system's language is not known here"), {}},
                                      {QStringLiteral("English"), {}, {}},
                                      {QStringLiteral("Deutsch"), {}, {}}});
  cards::addSoftText(column, tr("Another language is spoken when the program is started again. Plans and the command line stay as they are."));
  connect(language_, &controls::Segments::chosen, this, changeTo([](store::Preferences& p, int index) {
            p.language = static_cast<store::Language>(index);
          }));

  std::vector<controls::Segment> sizes;
  for (const int percent : store::kTextSizes) sizes.push_back({tr("%1 %").arg(percent), {}, {}});
  textSize_ = choice(tr("Text size"), sizes);
  cards::addSoftText(column, tr("Titles follow in the next window you open."));
  connect(textSize_, &controls::Segments::chosen, this, changeTo([](store::Preferences& p, int index) {
            p.textSize_percent = store::kTextSizes[index];
          }));

  unit_ = choice(tr("Units"), {{tr("Millimetres"), tr("8 mm"), {}},
                               {tr("Centimetres"), tr("0.8 cm"), {}},
                               {tr("Inches"), tr("In fractions: 5/16 in"), {}}});
  connect(unit_, &controls::Segments::chosen, this, changeTo([](store::Preferences& p, int index) {
            p.unit = static_cast<store::LengthUnit>(index);
          }));

  begin_ = choice(tr("The program begins with"), {{tr("What was open"), tr("The plans and windows of the last time"), {}},
                                                  {tr("The start page"), tr("Recent plans, examples and unsaved work"), {}}});
  cards::addSoftText(column, tr("Unsaved work is offered either way."));
  connect(begin_, &controls::Segments::chosen, this, changeTo([](store::Preferences& p, int index) {
            p.begin = static_cast<store::Beginning>(index);
          }));

  QVBoxLayout* rows = addRows(column, tr("A new piece begins with"));
  const auto number = [&](const char* field, const QString& label, double store::Preferences::* member) {
    auto* made = addNumber(rows, cards::specOf(field, label, QStringLiteral("mm")));
    connect(made, &controls::NumberField::edited, this, [this, member](std::optional<double> value, bool) {
      if (!value) return;
      now_.*member = *value;
      Q_EMIT changed(now_);
    });
    return made;
  };
  thickness_ = number("piece.thickness_mm", tr("Thickness"), &store::Preferences::newThickness_mm);
  start_ = number("piece.start_mm", tr("Starts off the scalp"), &store::Preferences::newStart_mm);
  cards::addSoftText(column, tr("Pieces that are there already stay as they are. What a piece lifts to is a stand-in (level 9, 8 to 10) until you type it."));

  buildPolicy(column);
  buildRates(column);

  cards::addHeading(column, tr("Hints"));
  hints_ = new QCheckBox(tr("Show hints at first use"), content);
  hints_->setMinimumHeight(30);
  column->addWidget(hints_, 0, Qt::AlignLeft);
  again_ = new QPushButton(tr("Show put-away hints again"), content);
  again_->setMinimumHeight(32);
  column->addWidget(again_, 0, Qt::AlignLeft);
  connect(hints_, &QCheckBox::toggled, this, &PreferencesPage::hintsWanted);
  connect(again_, &QPushButton::clicked, this, &PreferencesPage::hintsAgainWanted);

  cards::addHeading(column, tr("Keys"));
  auto* keys = new QPushButton(tr("Change the keys of commands…"), content);
  keys->setMinimumHeight(32);
  column->addWidget(keys, 0, Qt::AlignLeft);
  connect(keys, &QPushButton::clicked, this, &PreferencesPage::keysWanted);
  column->addStretch(1);
}

void PreferencesPage::buildPolicy(QVBoxLayout* column) {
  QVBoxLayout* rows = addRows(column, tr("Clients: your own policy"));
  controls::NumberFieldSpec spec;
  spec.unit = tr("months");
  spec.low = 1;
  spec.high = store::kMostMonths;
  spec.decimals = 0;
  spec.emptyText = tr("not decided");
  const auto months = [&](const QString& label, const QString& tip, auto take) {
    auto* made = addOwn(rows, spec, label, tip);
    connect(made, &controls::NumberField::edited, this, [this, take](std::optional<double> value, bool) {
      take(policy_) = value ? static_cast<int>(std::lround(*value)) : 0;
      Q_EMIT policyChanged(policy_);
    });
    return made;
  };
  keep_ = months(tr("Client data is kept for"), tr("What is older is listed for you to decide; nothing is deleted by itself"),
                 [](store::ClientPolicy& p) -> int& { return p.keep_months; });
  for (const auto& kind : plan::words<store::TestKind>()) {
    const auto at = static_cast<std::size_t>(kind.value);
    tests_[at] = months(tr("%1 counts for").arg(cards::testName(kind.value)), tr("As label, insurer or your own rule asks; then it is due again"),
                        [at](store::ClientPolicy& p) -> int& { return p.test_months[at]; });
  }
  cards::addSoftText(column, tr("Nothing is preset: the maker's directions, local rules and your insurer come first."));
}

void PreferencesPage::buildRates(QVBoxLayout* column) {
  QVBoxLayout* rows = addRows(column, tr("Price: your own rates"));
  controls::NumberFieldSpec spec;
  spec.low = 0;
  spec.high = store::kHighestRate;
  spec.decimals = 2;
  spec.emptyText = tr("not typed");
  const auto rate = [&](const QString& label, const QString& tip, std::optional<double> store::Rates::* member) {
    auto* made = addOwn(rows, spec, label, tip);
    connect(made, &controls::NumberField::edited, this, [this, member](std::optional<double> value, bool) {
      rates_.*member = value;
      Q_EMIT ratesChanged(rates_);
    });
    return made;
  };
  perHour_ = rate(tr("For an hour of work"), tr("Minutes of the work list are reckoned with it"), &store::Rates::perHour);
  perGram_ = rate(tr("For a gram of mixture"), tr("Grams of all bowls are reckoned with it"), &store::Rates::perGram);
  currency_ = new controls::TextField({tr("Word for the currency"), tr("none"), tr("Stands behind the sum, as you write it"), 12}, rows->parentWidget());
  rows->addWidget(currency_);
  connect(currency_, &controls::TextField::edited, this, [this](const QString& text) {
    rates_.currency = text;
    Q_EMIT ratesChanged(rates_);
  });
  cards::addSoftText(column, tr("The work list shows what its minutes and grams come to. What a choice is offered for on the consultation card stays as you type it there."));
}

void PreferencesPage::setRates(const store::Rates& rates) {
  rates_ = rates;
  perHour_->setValue(rates.perHour);
  perGram_->setValue(rates.perGram);
  currency_->setText(rates.currency);
}

void PreferencesPage::setPolicy(const store::ClientPolicy& policy) {
  policy_ = policy;
  const auto shown = [](int months) { return months > 0 ? std::optional<double>(months) : std::nullopt; };
  keep_->setValue(shown(policy.keep_months));
  for (std::size_t i = 0; i < store::kTestKinds; ++i) tests_[i]->setValue(shown(policy.test_months[i]));
}

void PreferencesPage::set(const store::Preferences& preferences, bool hints, int hintsPutAway) {
  now_ = preferences;
  unit_->setCurrent(static_cast<int>(now_.unit));
  theme_->setCurrent(static_cast<int>(now_.theme));
  begin_->setCurrent(static_cast<int>(now_.begin));
  language_->setCurrent(static_cast<int>(now_.language));
  const auto size = std::find(std::begin(store::kTextSizes), std::end(store::kTextSizes), now_.textSize_percent);
  textSize_->setCurrent(static_cast<int>(size - std::begin(store::kTextSizes)));
  thickness_->setValue(now_.newThickness_mm);
  start_->setValue(now_.newStart_mm);
  const QSignalBlocker quiet(hints_);
  hints_->setChecked(hints);
  again_->setEnabled(hintsPutAway > 0);
}

void PreferencesPage::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    Q_EMIT done();
    return;
  }
  QWidget::keyPressEvent(event);
}

}  // namespace combdraft::desk

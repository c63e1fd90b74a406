#include "app/cards/agreed_line.h"

#include <QCoreApplication>

#include "app/cards/consultation_words.h"
#include "app/words/date_words.h"
#include "engine/plan/placement_check.h"
#include "engine/plan/validate.h"

namespace combdraft::cards {
namespace {

using store::ClientTest;
using store::TestKind;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(consultation)
};

// Of each kind the last that was made until the day; ISO dates sort as text.
const ClientTest* lastUntil(const store::ClientFile& file, TestKind kind, const std::string& day) {
  const ClientTest* last = nullptr;
  for (const ClientTest& test : file.tests)
    if (test.kind == kind && !test.date.empty() && test.date <= day && (!last || test.date > last->date)) last = &test;
  return last;
}

}  // namespace

std::optional<std::size_t> openFindings(const plan::Agreement& agreement) {
  if (!agreement.frozen) return std::nullopt;
  return plan::validate(*agreement.frozen).size() + plan::checkPlacement(*agreement.frozen).size();
}

QStringList openTests(const store::ClientFile& file, const store::ClientPolicy& policy, const QDate& day) {
  QStringList open;
  const std::string iso = day.toString(Qt::ISODate).toStdString();
  for (const auto& kind : plan::words<TestKind>()) {
    const ClientTest* last = lastUntil(file, kind.value, iso);
    const QDate due = last ? store::dueOn(*last, policy) : QDate();
    if (due.isValid() && due <= day) open << Words::tr("%1: %2").arg(testName(kind.value), dueText(*last, policy, day));
    bool undated = false;
    for (const ClientTest& test : file.tests)
      if (test.kind == kind.value && test.date.empty()) undated = true;
    if (undated) open << Words::tr("%1: not dated").arg(testName(kind.value));
    const bool isUsual = kind.value == TestKind::Skin || kind.value == TestKind::Strand;
    if (isUsual && !last && !undated) open << Words::tr("%1: none written down").arg(testName(kind.value));
  }
  return open;
}

QString agreedLine(const plan::Agreement& agreement, std::optional<std::size_t> findings, const store::ClientFile* file,
                   const store::ClientPolicy& policy) {
  const QString choice = QString::fromStdString(agreement.choiceName.empty() ? agreement.choice : agreement.choiceName);
  const QString agreed = agreement.date.empty() ? Words::tr("Agreed: choice %1.").arg(choice)
                                                : Words::tr("Agreed on %1: choice %2.").arg(words::dateText(agreement.date), choice);
  QStringList open;
  if (!findings) open << Words::tr("the placement was not kept, so that the plan's check says nothing of it");
  if (findings && *findings == 1) open << Words::tr("1 finding of the plan's check");
  if (findings && *findings > 1) open << Words::tr("%1 findings of the plan's check").arg(*findings);
  const QDate day = QDate::fromString(QString::fromStdString(agreement.date), Qt::ISODate);
  if (!file)
    open << Words::tr("tests: none may be written down without consent");
  else if (day.isValid())
    open << openTests(*file, policy, day);
  else
    open << Words::tr("the day was not written down, so that the tests were not looked at");
  const QString rest = open.isEmpty() ? Words::tr("Open then: nothing that the plan's check or the tests written down show; that says nothing about hair or scalp.")
                                      : Words::tr("Open then: %1.").arg(open.join(QStringLiteral("; ")));
  return agreed + u' ' + rest;
}

}  // namespace combdraft::cards

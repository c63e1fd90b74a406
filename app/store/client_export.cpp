#include "app/store/client_export.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QTemporaryDir>

#include "app/store/client_folder.h"
#include "app/store/client_json.h"
#include "app/store/client_photo.h"
#include "app/words/date_words.h"

namespace combdraft::store {
namespace {

struct Said {
  Q_DECLARE_TR_FUNCTIONS(store)
};

QString text(const std::string& words) { return QString::fromStdString(words); }

class Lines {
 public:
  void heading(const QString& words) { lines_ << QString() << words; }
  void line(const QString& label, const std::string& words) {
    if (!words.empty()) lines_ << Said::tr("%1: %2").arg(label, text(words));
  }
  void day(const QString& label, const std::string& iso) {
    if (!iso.empty()) lines_ << Said::tr("%1: %2").arg(label, words::dateText(iso));
  }
  void answer(const QString& label, Answer answer) {
    if (answer == Answer::NotAsked) return;
    lines_ << Said::tr("%1: %2").arg(label, answer == Answer::Yes  ? Said::tr("yes")
                                           : answer == Answer::No ? Said::tr("no")
                                                                  : Said::tr("the client does not know"));
  }
  void plain(const QString& words) { lines_ << words; }
  QString all() const { return lines_.join(u'\n') + u'\n'; }

 private:
  QStringList lines_;
};

QString testName(TestKind kind) {
  switch (kind) {
    case TestKind::Skin: return Said::tr("Skin test");
    case TestKind::Strand: return Said::tr("Test strand");
    case TestKind::Elasticity: return Said::tr("Elasticity");
    case TestKind::Porosity: return Said::tr("Porosity");
    case TestKind::Metal: return Said::tr("Metal test");
    case TestKind::Other: return Said::tr("Another test");
  }
  return {};
}

QString photoName(PhotoOf of) {
  switch (of) {
    case PhotoOf::Wanted: return Said::tr("wanted");
    case PhotoOf::NotWanted: return Said::tr("not wanted");
    case PhotoOf::Today: return Said::tr("today");
    case PhotoOf::Result: return Said::tr("result");
  }
  return {};
}

void addHealth(Lines& lines, const ClientFile& file) {
  lines.heading(Said::tr("Questions"));
  lines.day(Said::tr("Asked on"), file.health.asked);
  lines.answer(Said::tr("Of the age that label, rules and insurer ask for"), file.health.ageReached);
  lines.answer(Said::tr("Reacted before"), file.health.reacted);
  lines.line(Said::tr("Past reactions"), file.health.reactions);
  if (file.health.scalp != ScalpFound::NotLooked)
    lines.plain(file.health.scalp == ScalpFound::Something ? Said::tr("Scalp: something found")
                : file.health.scalp == ScalpFound::Nothing ? Said::tr("Scalp: nothing found")
                                                           : Said::tr("Scalp: looked at, and not sure"));
  lines.line(Said::tr("Scalp"), file.health.scalpWords);
  lines.heading(Said::tr("Hair history"));
  lines.answer(Said::tr("Dye"), file.history.dye);
  lines.answer(Said::tr("Henna"), file.history.henna);
  lines.answer(Said::tr("Metallic colour"), file.history.metallic);
  lines.answer(Said::tr("Box colour"), file.history.boxColour);
  lines.line(Said::tr("Last lightening"), file.history.lastLightening);
  lines.line(Said::tr("What else the hair has been through"), file.history.words);
  if (file.tests.empty()) return;
  lines.heading(Said::tr("Tests"));
  for (const ClientTest& test : file.tests) {
    lines.day(testName(test.kind), test.date.empty() ? Said::tr("not made yet").toStdString() : test.date);
    lines.line(Said::tr("  Result"), test.result);
    lines.day(Said::tr("  Due on"), test.due);
  }
}

}  // namespace

QString clientText(const ClientFile& file) {
  Lines lines;
  lines.plain(Said::tr("What is kept about you"));
  lines.day(Said::tr("Begun on"), file.begun);
  lines.line(Said::tr("Name or mark"), file.name);
  lines.line(Said::tr("Contact"), file.contact);
  if (file.consent) {
    lines.day(Said::tr("You agreed on"), file.consent->date);
    lines.line(Said::tr("to it being kept for"), file.consent->purpose);
  } else {
    lines.plain(Said::tr("No consent is written down."));
  }
  lines.heading(Said::tr("Wishes"));
  lines.line(Said::tr("Wanted"), file.wishes.wanted);
  lines.line(Said::tr("Not wanted"), file.wishes.notWanted);
  lines.line(Said::tr("How it is worn"), file.wishes.howWorn);
  lines.line(Said::tr("Upkeep"), file.wishes.upkeep);
  lines.line(Said::tr("Budget"), file.wishes.budget);
  lines.line(Said::tr("Number of visits"), file.wishes.visits);
  addHealth(lines, file);
  if (!file.offers.empty()) lines.heading(Said::tr("Minutes, price and visits by choice"));
  for (const Offer& offer : file.offers)
    lines.plain(Said::tr("%1: %2; %3; %4").arg(text(offer.choice), text(offer.minutes), text(offer.price), text(offer.visits)));
  if (!file.visits.empty()) lines.heading(Said::tr("Visits"));
  for (const Visit& visit : file.visits) {
    lines.line(words::dateText(visit.date), visit.title);
    lines.line(Said::tr("  Words"), visit.words);
  }
  if (!file.photos.empty()) lines.heading(Said::tr("Photos"));
  for (const ClientPhoto& photo : file.photos)
    lines.plain(Said::tr("%1: %2, %3 %4").arg(text(photo.file), photoName(photo.of), words::dateText(photo.date), text(photo.words)));
  lines.heading(Said::tr("Notes"));
  if (!file.notes.empty()) lines.plain(text(file.notes));
  return lines.all();
}

Result<QStringList> exportClient(const ClientFile& file, const QString& folder, const QString& to, plan::Disk& disk) {
  const auto cannot = [&to](const char* why) { return Error{ErrorCode::FileUnwritable, {}, {why}, to.toStdString()}; };
  if (QFileInfo::exists(to)) return cannot("something of that name is there already; choose a new name");
  // A name that nothing has, for its owner only; it goes with all that is in it unless
  // it becomes `to`.
  QTemporaryDir fresh(QFileInfo(to).absolutePath() + QStringLiteral("/.handover-XXXXXX"));
  if (!fresh.isValid()) return cannot("the folder cannot be made there");
  const auto put = [&](const QString& name, std::string_view bytes) {
    const std::string path = fresh.filePath(name).toStdString();
    return disk.writeNew(path, bytes, (folder + u'/' + kClientDocument).toStdString());
  };
  QStringList missing;
  Result<void> done = put(QStringLiteral("client.txt"), clientText(file).toStdString());
  if (done) done = put(QStringLiteral("client.json"), writeClient(file));
  for (const ClientPhoto& photo : file.photos) {
    if (!done) break;
    const auto bytes = disk.read((folder + u'/' + text(photo.file)).toStdString(), static_cast<std::size_t>(limits::kPhotoBytes));
    if (bytes)
      done = put(text(photo.file), *bytes);
    else
      missing << text(photo.file);
  }
  if (done) done = disk.rename(fresh.path().toStdString(), to.toStdString());
  fresh.setAutoRemove(!done.ok());
  if (done) return missing;
  Error error = done.error();
  error.file = to.toStdString();
  return error;
}

}  // namespace combdraft::store

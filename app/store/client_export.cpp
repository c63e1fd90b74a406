#include "app/store/client_export.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "app/store/client_folder.h"
#include "app/store/client_json.h"
#include "app/store/client_photo.h"

namespace combdraft::store {
namespace {

QString say(const char* text) { return QCoreApplication::translate("store", text); }
QString text(const std::string& words) { return QString::fromStdString(words); }

class Lines {
 public:
  void heading(const QString& words) { lines_ << QString() << words; }
  void line(const QString& label, const std::string& words) {
    if (!words.empty()) lines_ << say("%1: %2").arg(label, text(words));
  }
  void answer(const QString& label, Answer answer) {
    if (answer != Answer::NotAsked) lines_ << say("%1: %2").arg(label, answer == Answer::Yes ? say("yes") : say("no"));
  }
  void plain(const QString& words) { lines_ << words; }
  QString all() const { return lines_.join(u'\n') + u'\n'; }

 private:
  QStringList lines_;
};

QString testName(TestKind kind) {
  switch (kind) {
    case TestKind::Skin: return say("Skin test");
    case TestKind::Strand: return say("Test strand");
    case TestKind::Elasticity: return say("Elasticity");
    case TestKind::Porosity: return say("Porosity");
    case TestKind::Metal: return say("Metal test");
    case TestKind::Other: return say("Another test");
  }
  return {};
}

QString photoName(PhotoOf of) {
  switch (of) {
    case PhotoOf::Wanted: return say("wanted");
    case PhotoOf::NotWanted: return say("not wanted");
    case PhotoOf::Today: return say("today");
    case PhotoOf::Result: return say("result");
  }
  return {};
}

void addHealth(Lines& lines, const ClientFile& file) {
  lines.heading(say("Questions"));
  lines.line(say("Asked on"), file.health.asked);
  lines.answer(say("Of the age that label, rules and insurer ask for"), file.health.ageReached);
  lines.answer(say("Reacted before"), file.health.reacted);
  lines.line(say("Past reactions"), file.health.reactions);
  if (file.health.scalp != ScalpFound::NotLooked)
    lines.plain(file.health.scalp == ScalpFound::Something ? say("Scalp: something found") : say("Scalp: nothing found"));
  lines.line(say("Scalp"), file.health.scalpWords);
  lines.heading(say("Hair history"));
  lines.answer(say("Dye"), file.history.dye);
  lines.answer(say("Henna"), file.history.henna);
  lines.answer(say("Metallic colour"), file.history.metallic);
  lines.answer(say("Box colour"), file.history.boxColour);
  lines.line(say("Last lightening"), file.history.lastLightening);
  lines.line(say("What else the hair has been through"), file.history.words);
  if (file.tests.empty()) return;
  lines.heading(say("Tests"));
  for (const ClientTest& test : file.tests) {
    lines.line(testName(test.kind), test.date.empty() ? say("not made yet").toStdString() : test.date);
    lines.line(say("  Result"), test.result);
    lines.line(say("  Due on"), test.due);
  }
}

}  // namespace

QString clientText(const ClientFile& file) {
  Lines lines;
  lines.plain(say("What is kept about you"));
  lines.line(say("Begun on"), file.begun);
  lines.line(say("Name or mark"), file.name);
  lines.line(say("Contact"), file.contact);
  if (file.consent) {
    lines.line(say("You agreed on"), file.consent->date);
    lines.line(say("to it being kept for"), file.consent->purpose);
  } else {
    lines.plain(say("No consent is written down."));
  }
  lines.heading(say("Wishes"));
  lines.line(say("Wanted"), file.wishes.wanted);
  lines.line(say("Not wanted"), file.wishes.notWanted);
  lines.line(say("How it is worn"), file.wishes.howWorn);
  lines.line(say("Upkeep"), file.wishes.upkeep);
  lines.line(say("Budget"), file.wishes.budget);
  lines.line(say("Number of visits"), file.wishes.visits);
  addHealth(lines, file);
  if (!file.offers.empty()) lines.heading(say("Minutes, price and visits by choice"));
  for (const Offer& offer : file.offers)
    lines.plain(say("%1: %2; %3; %4").arg(text(offer.choice), text(offer.minutes), text(offer.price), text(offer.visits)));
  if (!file.visits.empty()) lines.heading(say("Visits"));
  for (const Visit& visit : file.visits) {
    lines.line(text(visit.date), visit.title);
    lines.line(say("  Words"), visit.words);
  }
  if (!file.photos.empty()) lines.heading(say("Photos"));
  for (const ClientPhoto& photo : file.photos)
    lines.plain(say("%1: %2, %3 %4").arg(text(photo.file), photoName(photo.of), text(photo.date), text(photo.words)));
  lines.heading(say("Notes"));
  if (!file.notes.empty()) lines.plain(text(file.notes));
  return lines.all();
}

Result<QStringList> exportClient(const ClientFile& file, const QString& folder, const QString& to, plan::Disk& disk) {
  const auto cannot = [&to](const char* why) { return Error{ErrorCode::FileUnwritable, {}, {why}, to.toStdString()}; };
  if (QFileInfo::exists(to)) return cannot("something of that name is there already; choose a new name");
  const QString fresh = to + QStringLiteral(".new");
  QDir(fresh).removeRecursively();
  if (!QDir().mkdir(fresh) ||
      !QFile::setPermissions(fresh, QFileDevice::ReadOwner | QFileDevice::WriteOwner | QFileDevice::ExeOwner))
    return cannot("the folder cannot be made there");
  const auto put = [&](const QString& name, std::string_view bytes) {
    const std::string path = (fresh + u'/' + name).toStdString();
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
  if (done) done = disk.rename(fresh.toStdString(), to.toStdString());
  if (done) return missing;
  QDir(fresh).removeRecursively();
  Error error = done.error();
  error.file = to.toStdString();
  return error;
}

}  // namespace combdraft::store

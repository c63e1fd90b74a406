#include "app/handout/agreed_part.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QDate>
#include <QImageReader>
#include <QLocale>
#include <cmath>

#include "app/handout/figures.h"
#include "engine/base/number_text.h"
#include "engine/colour/light.h"
#include "engine/hair/worn.h"
#include "engine/head/sheet_view.h"

namespace combdraft::handout {
namespace {

constexpr int kMostSide_px = 2000;  // a file may claim any size; ours are a few hundred
constexpr double kPictureHeight_mm = 58;

QString say(const char* text) { return QCoreApplication::translate("Handout", text); }
QString number(double value) { return QString::fromStdString(numberText(std::round(value * 10) / 10)); }

QString wornName(const std::string& word) {
  if (word == hair::wornWord(hair::WornWay::Down)) return say("worn down");
  if (word == hair::wornWord(hair::WornWay::HalfUp)) return say("worn half up");
  if (word == hair::wornWord(hair::WornWay::TiedBack)) return say("tied back");
  if (word == hair::wornWord(hair::WornWay::CrownOpened)) return say("crown opened");
  return QString::fromStdString(word);
}

QString lightName(const std::string& word) {
  if (word == colour::lightWord(colour::Light::Daylight)) return say("in daylight");
  if (word == colour::lightWord(colour::Light::Overcast)) return say("under an overcast sky");
  if (word == colour::lightWord(colour::Light::WarmLamp)) return say("under a warm lamp");
  if (word == colour::lightWord(colour::Light::Office)) return say("in office light");
  return QString::fromStdString(word);
}

QString seenFrom(const plan::AgreedView& view) {
  for (const head::ViewName name : head::kAllViews)
    if (head::viewWord(name) == view.view) return viewName(name, Person::Client);
  return QString::fromStdString(view.view);
}

// "Front, as in the mirror; worn down, part moved by 20 mm, in daylight, after 12 weeks."
QString shownWords(const plan::AgreedView& view) {
  QStringList how{wornName(view.worn)};
  if (view.partShift_mm != 0) how << say("part moved by %1 mm").arg(number(std::abs(view.partShift_mm)));
  how << lightName(view.light);
  if (view.weeks > 0) how << say("after %1 weeks").arg(number(view.weeks));
  if (view.lift == "less") how << say("if it lifts less than planned");
  if (view.lift == "more") how << say("if it lifts more than planned");
  const QString facing = view.view == "front" && view.facing == plan::Facing::AsInMirror ? say("%1, as in the mirror").arg(seenFrom(view)) : seenFrom(view);
  return say("Shown: %1; %2.").arg(facing, how.join(QStringLiteral(", ")));
}

}  // namespace

QImage agreedPicture(const plan::Agreement& agreement) {
  if (agreement.pictureBase64.empty() || agreement.pictureBase64.size() > plan::kAgreedPictureBytes) return {};
  QByteArray bytes = QByteArray::fromBase64(QByteArray::fromStdString(agreement.pictureBase64));
  QBuffer buffer(&bytes);
  if (!buffer.open(QIODevice::ReadOnly)) return {};
  QImageReader reader(&buffer, "png");
  const QSize size = reader.size();
  if (!size.isValid() || size.width() > kMostSide_px || size.height() > kMostSide_px) return {};
  return reader.read();
}

void addAgreed(Column& column, const plan::Plan& plan) {
  if (plan.info().agreedJson.empty()) return;
  const std::size_t from = column.chunks().size();
  const Result<plan::Agreement> read = plan::readAgreement(plan.info().agreedJson);
  if (!read) {
    column.heading(say("Agreed"));
    column.text(say("What was agreed stands in the plan and cannot be read: %1").arg(QString::fromStdString(describe(read.error()))));
    return;
  }
  const QDate date = QDate::fromString(QString::fromStdString(read->date), Qt::ISODate);
  column.heading(date.isValid() ? say("Agreed on %1").arg(QLocale().toString(date, QLocale::ShortFormat)) : say("Agreed"));
  const QImage picture = agreedPicture(*read);
  const double width_mm = picture.isNull() ? 0 : kPictureHeight_mm * picture.width() / picture.height();
  Column words(column.width_mm() - (width_mm > 0 ? width_mm + 6 : 0));
  const QString choice = QString::fromStdString(read->choiceName);
  if (!choice.isEmpty()) words.text(choice, type::kBody, Weight::Bold);
  words.text(shownWords(read->view));
  if (read->span)
    words.text(say("All hair that is seen: level %1; it may come out from %2 to %3.")
                   .arg(number(read->span->level), number(read->span->low), number(read->span->high)));
  if (!read->promiseLine.empty()) words.text(QString::fromStdString(read->promiseLine), type::kSmall, Weight::Plain, Column::Tone::Soft);
  if (picture.isNull()) {
    words.text(say("No picture was kept."), type::kSmall, Weight::Plain, Column::Tone::Soft);
    column.row({{0, &words}});
  } else {
    paint::DrawingItem item;
    item.id = QStringLiteral("agreed-picture");
    item.name = say("The agreed picture");
    item.layer = paint::Layer::Look;
    item.image = picture;
    item.imageRect = QRectF(0, 0, width_mm, kPictureHeight_mm);
    Column shown(width_mm);
    shown.figure({item.id, item.name, item.imageRect, {item}}, 1);
    column.row({{0, &shown}, {width_mm + 6, &words}});
  }
  column.keepTogether(from);
}

}  // namespace combdraft::handout

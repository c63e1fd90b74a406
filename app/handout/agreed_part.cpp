#include "app/handout/agreed_part.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QImageReader>
#include <cmath>

#include "app/handout/figures.h"
#include "app/paint/figure.h"
#include "app/words/date_words.h"
#include "app/words/engine_words.h"
#include "engine/base/number_text.h"
#include "engine/colour/light.h"
#include "engine/hair/worn.h"
#include "engine/head/sheet_view.h"

namespace combdraft::handout {
namespace {

constexpr int kMostSide_px = 2000;  // a file may claim any size; ours are a few hundred
constexpr double kPictureHeight_mm = 58;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Handout)
};

QString number(double value) { return paint::figure(numberText(std::round(value * 10) / 10)); }

QString wornName(const std::string& word) {
  if (word == hair::wornWord(hair::WornWay::Down)) return Words::tr("worn down");
  if (word == hair::wornWord(hair::WornWay::HalfUp)) return Words::tr("worn half up");
  if (word == hair::wornWord(hair::WornWay::TiedBack)) return Words::tr("tied back");
  if (word == hair::wornWord(hair::WornWay::CrownOpened)) return Words::tr("crown opened");
  return QString::fromStdString(word);
}

QString lightName(const std::string& word) {
  if (word == colour::lightWord(colour::Light::Daylight)) return Words::tr("in daylight");
  if (word == colour::lightWord(colour::Light::Overcast)) return Words::tr("under an overcast sky");
  if (word == colour::lightWord(colour::Light::WarmLamp)) return Words::tr("under a warm lamp");
  if (word == colour::lightWord(colour::Light::Office)) return Words::tr("in office light");
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
  if (view.partShift_mm != 0) how << Words::tr("part moved by %1 mm").arg(number(std::abs(view.partShift_mm)));
  how << lightName(view.light);
  if (view.weeks > 0) how << Words::tr("after %1 weeks").arg(number(view.weeks));
  if (view.lift == "less") how << Words::tr("if it lifts less than planned");
  if (view.lift == "more") how << Words::tr("if it lifts more than planned");
  const QString facing = view.view == "front" && view.facing == plan::Facing::AsInMirror ? Words::tr("%1, as in the mirror").arg(seenFrom(view)) : seenFrom(view);
  return Words::tr("Shown: %1; %2.").arg(facing, how.join(QStringLiteral(", ")));
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
    column.heading(Words::tr("Agreed"));
    column.text(Words::tr("What was agreed stands in the plan and cannot be read: %1").arg(words::inWords(read.error())));
    return;
  }
  column.heading(read->date.empty() ? Words::tr("Agreed") : Words::tr("Agreed on %1").arg(words::dateText(read->date)));
  const QImage picture = agreedPicture(*read);
  // Into a box: a picture of any shape leaves the words their half.
  const QSizeF size_mm = picture.isNull() ? QSizeF(0, 0) : QSizeF(picture.size()).scaled(column.width_mm() / 2, kPictureHeight_mm, Qt::KeepAspectRatio);
  const double width_mm = size_mm.width();
  Column words(column.width_mm() - (width_mm > 0 ? width_mm + 6 : 0));
  const QString choice = QString::fromStdString(read->choiceName);
  if (!choice.isEmpty()) words.text(choice, type::kBody, Weight::Bold);
  words.text(shownWords(read->view));
  if (read->span)
    words.text(Words::tr("All hair that is seen: about level %1, drawn from %2 to %3; not a limit.")
                   .arg(number(std::round(2 * read->span->level) / 2), number(read->span->low), number(read->span->high)));
  if (!read->promiseLine.empty()) words.text(QString::fromStdString(read->promiseLine), type::kSmall, Weight::Plain, Column::Tone::Soft);
  if (picture.isNull()) {
    words.text(Words::tr("No picture was kept."), type::kSmall, Weight::Plain, Column::Tone::Soft);
    column.row({{0, &words}});
  } else {
    paint::DrawingItem item;
    item.id = QStringLiteral("agreed-picture");
    item.name = Words::tr("The agreed picture");
    item.layer = paint::Layer::Look;
    item.image = picture;
    item.imageRect = QRectF(QPointF(0, 0), size_mm);
    Column shown(width_mm);
    shown.figure({item.id, item.name, item.imageRect, {item}}, 1);
    column.row({{0, &shown}, {width_mm + 6, &words}});
  }
  column.keepTogether(from);
}

}  // namespace combdraft::handout

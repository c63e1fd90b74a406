#include "app/controls/plain_words.h"

#include <QApplication>
#include <QEvent>
#include <QLabel>
#include <QRegularExpression>

namespace combdraft::controls {
namespace {

/// One place for all labels, those that Qt makes itself too: tooltips, the titles in forms.
/// A label is polished before it is measured or painted, and only then would it read markup;
/// a tooltip is polished before it has words.
class PlainLabels : public QObject {
 public:
  using QObject::QObject;

  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() != QEvent::Polish) return false;
    auto* label = qobject_cast<QLabel*>(watched);
    if (label && label->textFormat() == Qt::AutoText) label->setTextFormat(Qt::PlainText);
    return false;
  }
};

constexpr const char* kProperty = "combdraftPlainLabels";

}  // namespace

void showWordsAsTheyAre(QApplication& app) {
  if (app.property(kProperty).toBool()) return;
  app.setProperty(kProperty, true);
  app.installEventFilter(new PlainLabels(&app));
}

QString buttonText(const QString& typed) { return QString(typed).replace(u'&', QStringLiteral("&&")); }

QString wordsOfButton(const QString& text) {
  static const QRegularExpression kMark(QStringLiteral("&(.)"));
  return QString(text).replace(kMark, QStringLiteral("\\1"));
}

}  // namespace combdraft::controls

#include "app/desk/language.h"

#include <QApplication>
#include <QLibraryInfo>
#include <QTranslator>

static void useTranslations() { Q_INIT_RESOURCE(translations); }

namespace combdraft::desk {

QLocale localeFor(store::Language choice, const QStringList& systemLanguages) {
  QString wanted;
  if (choice != store::Language::System) wanted = choice == store::Language::German ? kSpoken[1] : kSpoken[0];
  for (const QString& language : systemLanguages) {  // "de-AT" is German as Austria writes it
    const QString spoken = language.section(u'-', 0, 0).section(u'_', 0, 0);
    if (wanted.isEmpty() ? kSpoken.contains(spoken) : spoken == wanted) return QLocale(QString(language).replace(u'-', u'_'));
  }
  return QLocale(wanted.isEmpty() ? kSpoken[0] : wanted);
}

void speak(QApplication& app, store::Language choice) {
  useTranslations();
  const QLocale locale = localeFor(choice, QLocale::system().uiLanguages());
  QLocale::setDefault(locale);
  QApplication::setLayoutDirection(locale.textDirection());
  const auto install = [&app](const QString& file, const QString& folder) {
    auto* translator = new QTranslator(&app);
    if (translator->load(file, folder)) QApplication::installTranslator(translator);
  };
  const QString language = locale.name().section(u'_', 0, 0);
  if (language != kSpoken[0]) {
    install(QStringLiteral("qtbase_") + language, QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    install(QStringLiteral("combdraft_") + language, QStringLiteral(":/translations"));  // asked first
  }
  const QString onTrial = qEnvironmentVariable(kTrialVariable);
  if (!onTrial.isEmpty()) install(onTrial, {});  // asked before all others
}

}  // namespace combdraft::desk

#include "app/paint/hair_words.h"

#include <QCoreApplication>
#include <array>

#include "engine/plan/plan_words.h"
#include "engine/work/toning.h"

namespace combdraft::paint {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(HairWords)
};

// Only for those who translate: the words themselves are the engine's.
[[maybe_unused]] constexpr std::array kPigments{
    QT_TRANSLATE_NOOP("HairWords", "plum black"), QT_TRANSLATE_NOOP("HairWords", "red violet"),
    QT_TRANSLATE_NOOP("HairWords", "red"),        QT_TRANSLATE_NOOP("HairWords", "red orange"),
    QT_TRANSLATE_NOOP("HairWords", "orange"),     QT_TRANSLATE_NOOP("HairWords", "gold orange"),
    QT_TRANSLATE_NOOP("HairWords", "gold"),       QT_TRANSLATE_NOOP("HairWords", "deep yellow"),
    QT_TRANSLATE_NOOP("HairWords", "yellow"),     QT_TRANSLATE_NOOP("HairWords", "pale yellow")};

}  // namespace

QString toneName(plan::Tone tone) {
  static constexpr const char* kNames[] = {
      QT_TRANSLATE_NOOP("HairWords", "natural"), QT_TRANSLATE_NOOP("HairWords", "ash"),  QT_TRANSLATE_NOOP("HairWords", "pearl"),
      QT_TRANSLATE_NOOP("HairWords", "beige"),   QT_TRANSLATE_NOOP("HairWords", "gold"), QT_TRANSLATE_NOOP("HairWords", "copper"),
      QT_TRANSLATE_NOOP("HairWords", "red")};
  return Words::tr(kNames[static_cast<std::size_t>(tone)]);
}

QStringList toneNames() {
  QStringList names;
  for (const auto& tone : plan::words<plan::Tone>()) names << toneName(tone.value);
  return names;
}

QString zoneName(plan::HairZone zone) {
  static constexpr const char* kNames[] = {QT_TRANSLATE_NOOP("HairWords", "Front"), QT_TRANSLATE_NOOP("HairWords", "Top"),
                                           QT_TRANSLATE_NOOP("HairWords", "Crown"), QT_TRANSLATE_NOOP("HairWords", "Sides"),
                                           QT_TRANSLATE_NOOP("HairWords", "Back"),  QT_TRANSLATE_NOOP("HairWords", "Nape")};
  return Words::tr(kNames[static_cast<std::size_t>(zone)]);
}

QString pigmentName(double level) { return Words::tr(std::string(work::pigmentWord(level)).c_str()); }

}  // namespace combdraft::paint

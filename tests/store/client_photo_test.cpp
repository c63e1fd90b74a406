// Photos of a client: what is refused before it is decoded, what is left out, how they
// come into the folder and out of it.
#include <catch2/catch.hpp>

#include <QBuffer>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QImage>
#include <QImageReader>
#include <QTemporaryDir>
#include <QTest>

#include "app/store/client_keeper.h"
#include "app/store/client_photo.h"

using namespace combdraft;

namespace {

// Left half red, right half blue.
QImage twoColours(int width, int height) {
  QImage image(width, height, QImage::Format_RGB32);
  image.fill(Qt::blue);
  for (int y = 0; y < height; ++y)
    for (int x = 0; x < width / 2; ++x) image.setPixelColor(x, y, Qt::red);
  return image;
}

QByteArray encoded(const QImage& image, const char* format) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  REQUIRE(image.save(&buffer, format, 95));
  return bytes;
}

// A JPEG with an EXIF segment: one tag, the orientation "turn right by a quarter" (6),
// and words behind it as a camera's maker would leave them [CIPA EXIF 2.32, 4.6].
QByteArray withExif(QByteArray jpeg) {
  QByteArray tiff("MM\0\x2a\0\0\0\x08", 8);
  tiff += QByteArray("\0\x01\x01\x12\0\x03\0\0\0\x01\0\x06\0\0\0\0\0\0", 18);
  tiff += "Markercamera place and owner";
  const QByteArray exif = QByteArray("Exif\0\0", 6) + tiff;
  const int size = static_cast<int>(exif.size()) + 2;
  QByteArray segment("\xff\xe1", 2);
  segment += static_cast<char>(size >> 8);
  segment += static_cast<char>(size & 0xff);
  return jpeg.insert(2, segment + exif);
}

struct Folder {
  QTemporaryDir dir;
  QString put(const char* name, const QByteArray& bytes) {
    const QString path = dir.filePath(QLatin1String(name));
    QFile file(path);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
    return path;
  }
};

std::string refusal(const QString& path) {
  const auto bytes = store::photoBytesOf(path);
  REQUIRE_FALSE(bytes.ok());
  return describe(bytes.error());
}

}  // namespace

TEST_CASE("a photo is turned upright and keeps nothing but its pixels", "[client][photo]") {
  Folder folder;
  const QString path = folder.put("a.jpg", withExif(encoded(twoColours(400, 200), "jpeg")));
  {
    QFile file(path);  // it really says so
    REQUIRE(file.open(QIODevice::ReadOnly));
    CHECK(QImageReader(&file).transformation() == QImageIOHandler::TransformationRotate90);
  }
  const auto bytes = store::photoBytesOf(path);
  REQUIRE(bytes.ok());
  CHECK(bytes->find("Exif") == std::string::npos);
  CHECK(bytes->find("Markercamera") == std::string::npos);
  const QImage kept = QImage::fromData(QByteArray::fromStdString(*bytes));
  CHECK(kept.size() == QSize(200, 400));
  // Turned right by a quarter: what was left is on top.
  CHECK(kept.pixelColor(100, 50).red() > 200);
  CHECK(kept.pixelColor(100, 350).blue() > 200);
}

TEST_CASE("texts inside a PNG are not kept either", "[client][photo]") {
  Folder folder;
  QImage image = twoColours(60, 40);
  image.setText(QStringLiteral("Author"), QStringLiteral("Markerauthor"));
  const QByteArray png = encoded(image, "png");
  REQUIRE(QImage::fromData(png).text(QStringLiteral("Author")) == QStringLiteral("Markerauthor"));
  const auto bytes = store::photoBytesOf(folder.put("a.png", png));
  REQUIRE(bytes.ok());
  CHECK(bytes->find("Markerauthor") == std::string::npos);
  CHECK(QImage::fromData(QByteArray::fromStdString(*bytes)).size() == QSize(60, 40));
}

TEST_CASE("a large photo is made smaller, a small one is not made larger", "[client][photo]") {
  Folder folder;
  const auto large = store::photoBytesOf(folder.put("large.jpg", encoded(twoColours(4800, 1200), "jpeg")));
  REQUIRE(large.ok());
  CHECK(QImage::fromData(QByteArray::fromStdString(*large)).size() == QSize(2400, 600));
  const QString kept = folder.put("kept.jpg", QByteArray::fromStdString(*large));
  CHECK(store::loadPhoto(kept, 96).size() == QSize(96, 24));
  CHECK(store::loadPhoto(kept, 9000).size() == QSize(2400, 600));
  CHECK(store::loadPhoto(folder.put("no.jpg", "no"), 96).isNull());
}

TEST_CASE("what is no photo is refused with what would be right", "[client][photo]") {
  Folder folder;
  CHECK_THAT(refusal(folder.put("a.jpg", "this is text")), Catch::Contains("JPEG, PNG or WebP"));
  CHECK_THAT(refusal(folder.put("a.svg", "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'/>")),
             Catch::Contains("JPEG, PNG or WebP"));
  CHECK_THAT(refusal(folder.dir.path()), Catch::Contains("no file"));
  CHECK_THAT(refusal(folder.dir.filePath(QStringLiteral("gone.jpg"))), Catch::Contains("gone.jpg"));
  const QByteArray whole = encoded(twoColours(400, 400), "png");
  CHECK_THAT(refusal(folder.put("cut.png", whole.left(whole.size() / 2))), Catch::Contains("damaged"));
  CHECK_THAT(refusal(folder.put("empty.jpg", {})), Catch::Contains("JPEG, PNG or WebP"));
}

TEST_CASE("a picture of too many pixels is refused before it is decoded", "[client][photo]") {
  // A small JPEG whose frame header (FF C0, length, precision, height, width [T.81 B.2.2])
  // says 60,000 by 60,000.
  QByteArray jpeg = encoded(twoColours(16, 16), "jpeg");
  const qsizetype frame = jpeg.indexOf(QByteArray("\xff\xc0", 2));
  REQUIRE(frame > 0);
  jpeg.replace(frame + 5, 4, QByteArray("\xea\x60\xea\x60", 4));
  Folder folder;
  CHECK_THAT(refusal(folder.put("bomb.jpg", jpeg)), Catch::Contains("60000 by 60000 pixels"));

  // The same of a PNG: its check sum gives it away.
  QByteArray png = encoded(twoColours(8, 8), "png");
  png.replace(16, 8, QByteArray("\0\0\xea\x60\0\0\xea\x60", 8));
  CHECK_THAT(refusal(folder.put("bomb.png", png)), Catch::Contains("JPEG, PNG or WebP"));

  // A whole one that is allowed in bytes and not in pixels.
  QImage wide(20'001, 1, QImage::Format_Mono);
  wide.fill(0);
  CHECK_THAT(refusal(folder.put("wide.png", encoded(wide, "png"))), Catch::Contains("20001 by 1 pixels"));
}

TEST_CASE("more pixels than are taken are refused where both sides are allowed", "[client][photo]") {
  QByteArray jpeg = encoded(twoColours(16, 16), "jpeg");
  const qsizetype frame = jpeg.indexOf(QByteArray("\xff\xc0", 2));
  REQUIRE(frame > 0);
  jpeg.replace(frame + 5, 4, QByteArray("\x27\x10\x27\x10", 4));  // 10,000 by 10,000
  Folder folder;
  CHECK_THAT(refusal(folder.put("many.jpg", jpeg)), Catch::Contains("10000 by 10000 pixels"));
}

TEST_CASE("photos stop at what a client file holds, and none outlives the consent", "[client][photo]") {
  Folder folder;
  auto keeper = store::ClientKeeper::of(folder.dir.filePath(QStringLiteral("clients")), 10);
  std::string why;
  QObject::connect(keeper.get(), &store::ClientKeeper::photoRefused, keeper.get(), [&](const QString&, const Error& error) { why = describe(error); });
  keeper->edit([](store::ClientFile& f) {
    f.consent = store::Consent{"planning", "2026-01-01", {}};
    for (int i = 0; i < 199; ++i) f.photos.push_back({"photo-" + std::to_string(i) + ".jpg", store::PhotoOf::Wanted, "", "2026-01-01", {}});
  });
  const QString good = folder.put("good.jpg", encoded(twoColours(50, 50), "jpeg"));
  keeper->addPhotos({good, good}, store::PhotoOf::Wanted);
  CHECK(keeper->photosOnTheWay() == 2);
  REQUIRE(QTest::qWaitFor([&] { return keeper->photosOnTheWay() == 0; }, 5000));
  CHECK(keeper->file().photos.size() == 200);
  CHECK(why.find("found 201, at most 200") != std::string::npos);
  REQUIRE(keeper->writeNow().ok());
  // One that lies there without an entry goes with the others.
  const QString stray = keeper->folder() + QStringLiteral("/photo-stray.jpg");
  REQUIRE(QFile::copy(good, stray));
  CHECK(keeper->takeConsentBack() == 0);
  CHECK(QDir(keeper->folder()).entryList({QStringLiteral("*.jpg")}).isEmpty());
}

TEST_CASE("photos on their way come in though nobody looks at the client any more", "[client][photo]") {
  Folder folder;
  const QString root = folder.dir.filePath(QStringLiteral("clients"));
  {
    auto keeper = store::ClientKeeper::of(root, 11);
    keeper->edit([](store::ClientFile& f) { f.consent = store::Consent{"planning", "2026-01-01", {}}; });
    keeper->addPhotos({folder.put("good.jpg", encoded(twoColours(50, 50), "jpeg"))}, store::PhotoOf::Wanted);
  }
  CHECK(QTest::qWaitFor([&] { return store::ClientKeeper::of(root, 11)->file().photos.size() == 1; }, 5000));
}

TEST_CASE("photos come into the client's folder for its owner only, and go for good", "[client][photo]") {
  Folder folder;
  auto keeper = store::ClientKeeper::of(folder.dir.filePath(QStringLiteral("clients")), 9);
  QStringList refused;
  QObject::connect(keeper.get(), &store::ClientKeeper::photoRefused, keeper.get(),
                   [&](const QString& name, const Error&) { refused << name; });
  const QString good = folder.put("good.jpg", encoded(twoColours(50, 50), "jpeg"));
  keeper->addPhotos({good}, store::PhotoOf::Wanted);
  CHECK(QTest::qWaitFor([&] { return refused.size() == 1; }, 5000));  // no consent yet
  CHECK(keeper->file().photos.empty());
  keeper->edit([](store::ClientFile& f) { f.consent = store::Consent{"planning", "2026-01-01", {}}; });
  keeper->addPhotos({good, folder.put("bad.jpg", "no")}, store::PhotoOf::NotWanted);
  CHECK(QTest::qWaitFor([&] { return refused.size() == 2 && keeper->file().photos.size() == 1; }, 5000));
  REQUIRE(keeper->file().photos.size() == 1);
  const store::ClientPhoto photo = keeper->file().photos[0];
  CHECK(photo.of == store::PhotoOf::NotWanted);
  const QString path = keeper->folder() + u'/' + QString::fromStdString(photo.file);
  CHECK((static_cast<int>(QFileInfo(path).permissions()) & 0x0077) == 0);
  CHECK(QFileInfo::exists(good));  // the user's own stays where it is
  CHECK(keeper->removePhoto(photo.file));
  REQUIRE(keeper->writeNow().ok());
  CHECK_FALSE(QFileInfo::exists(path));
  CHECK(keeper->file().photos.empty());
}

#include "app/cards/photo_strip.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPointer>
#include <QPushButton>
#include <QThreadPool>
#include <QToolButton>
#include <algorithm>

#include "app/cards/card_parts.h"
#include "app/controls/drop_widgets.h"
#include "app/controls/flow_layout.h"
#include "app/store/client_photo.h"

namespace combdraft::cards {
namespace {

constexpr int kSmall_px = 72, kSmallRead_px = 2 * kSmall_px, kLarge_px = 1000;

}  // namespace

QString photoKindName(store::PhotoOf of) {
  switch (of) {
    case store::PhotoOf::Wanted: return PhotoStrip::tr("Wanted");
    case store::PhotoOf::NotWanted: return PhotoStrip::tr("Not wanted");
    case store::PhotoOf::Today: return PhotoStrip::tr("Today");
    case store::PhotoOf::Result: return PhotoStrip::tr("Result");
  }
  return {};
}

PhotoView::PhotoView(QWidget* parent) : QWidget(parent) {
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void PhotoView::setImage(const QImage& image) {
  image_ = image;
  setVisible(!image_.isNull());
  updateGeometry();
  update();
}

int PhotoView::heightForWidth(int width) const {
  if (image_.isNull()) return 0;
  const int shown = std::min(width, image_.width());
  return static_cast<int>(qint64{shown} * image_.height() / std::max(1, image_.width()));
}

QSize PhotoView::sizeHint() const {
  const int width = std::min(320, std::max(1, image_.width()));
  return {width, heightForWidth(width)};
}

void PhotoView::paintEvent(QPaintEvent*) {
  if (image_.isNull()) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  const QSize size = image_.size().scaled(this->size().boundedTo(image_.size()), Qt::KeepAspectRatio);
  painter.drawImage(QRect(QPoint(0, 0), size), image_);
}

PhotoStrip::PhotoStrip(QWidget* parent) : ConsultationPage(parent) {
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(0, 0, 0, 0);
  addHeading(outer, tr("Photos"));

  without_ = new QWidget(this);
  auto* asking = new QVBoxLayout(without_);
  asking->setContentsMargins(0, 0, 0, 0);
  addSoftText(asking, tr("Photos are kept once the client has agreed to it."));
  auto* consent = new QPushButton(tr("Ask for consent"), without_);
  consent->setMinimumHeight(30);
  consent->setToolTip(tr("Turns to the page of questions, where consent is written down"));
  asking->addWidget(consent, 0, Qt::AlignLeft);
  connect(consent, &QPushButton::clicked, this, &PhotoStrip::consentWanted);
  outer->addWidget(without_);

  withConsent_ = new QWidget(this);
  auto* column = new QVBoxLayout(withConsent_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(5);
  outer->addWidget(withConsent_);
  empty_ = addSoftText(column, tr("None yet. Add what the client likes and does not like; a copy goes into the client's folder."));
  row_ = new QWidget(withConsent_);
  new controls::FlowLayout(row_, 6, 6);
  column->addWidget(row_);
  add_ = new QPushButton(tr("Add photos…"), withConsent_);
  add_->setMinimumHeight(30);
  add_->setToolTip(tr("JPEG, PNG or WebP; turned upright, and without what the camera wrote into them"));
  column->addWidget(add_, 0, Qt::AlignLeft);
  connect(add_, &QPushButton::clicked, this, &PhotoStrip::photosWanted);

  detail_ = new QWidget(withConsent_);
  auto* fields = new QVBoxLayout(detail_);
  fields->setContentsMargins(0, 0, 0, 0);
  fields->setSpacing(5);
  large_ = new PhotoView(detail_);
  fields->addWidget(large_);
  missing_ = addCaution(fields);
  std::vector<controls::Segment> kinds;
  for (const auto& kind : plan::words<store::PhotoOf>()) kinds.push_back({photoKindName(kind.value), {}, {}});
  of_ = new controls::Segments(tr("What the photo shows"), kinds, detail_);
  fields->addWidget(of_);
  connect(of_, &controls::Segments::chosen, this, [this](int i) {
    change([&](ClientFile& file) {
      if (auto* photo = shownIn(file)) photo->of = static_cast<store::PhotoOf>(i);
    });
  });
  words_ = new controls::TextField({tr("Words"), tr("what about it"), tr("What the client says about this photo"), kClientLineLetters}, detail_);
  fields->addWidget(words_);
  connect(words_, &controls::TextField::edited, this, [this](const QString& text) {
    change([&](ClientFile& file) {
      if (auto* photo = shownIn(file)) photo->words = text.toStdString();
    });
  });
  remove_ = new ConfirmRow(tr("Remove this photo"), tr("It is taken off the disk and cannot be brought back. The file it was copied from stays."),
                           tr("Remove it for good"), detail_);
  fields->addWidget(remove_);
  connect(remove_, &ConfirmRow::confirmed, this, [this] {
    if (keeper() && !keeper()->removePhoto(shown_))
      showLines(missing_, {tr("This photo could not be deleted; close what shows it and try again.")});
  });
  column->addWidget(detail_);
}

store::ClientPhoto* PhotoStrip::shownIn(ClientFile& file) {
  const auto it = std::find_if(file.photos.begin(), file.photos.end(), [this](const store::ClientPhoto& photo) { return photo.file == shown_; });
  return it == file.photos.end() ? nullptr : &*it;
}

QString PhotoStrip::nameOf(std::size_t index) const {
  const store::ClientPhoto& photo = file().photos[index];
  const QString name = tr("Photo %1 of %2, %3").arg(index + 1).arg(file().photos.size()).arg(photoKindName(photo.of).toLower());
  return photo.words.empty() ? name : name + QStringLiteral(": ") + QString::fromStdString(photo.words);
}

void PhotoStrip::fill() {
  ConsultationPage::fill();
  const bool agreed = store::hasConsent(file());
  withConsent_->setVisible(agreed);
  without_->setVisible(!agreed);
  const QString folder = keeper() ? keeper()->folder() : QString();
  if (folder != folder_) {
    folder_ = folder;
    thumbs_.clear();
    files_.clear();
    shown_.clear();
    large_->setImage({});
    fillSmall();
  }
  fillSmall();
  fillLarge();
}

void PhotoStrip::fillSmall() {
  std::vector<std::string> files;
  if (store::hasConsent(file()))
    for (const store::ClientPhoto& photo : file().photos) files.push_back(photo.file);
  if (files != files_) {
    const bool hadFocus = std::any_of(small_.begin(), small_.end(), [](const QAbstractButton* b) { return b->hasFocus(); });
    for (QAbstractButton* button : small_) controls::dropWidget(button);
    small_.clear();
    // One that came is the one to speak about.
    const bool grew = files.size() > files_.size() && !files_.empty();
    files_ = files;
    std::erase_if(thumbs_, [&](const auto& thumb) { return std::find(files.begin(), files.end(), thumb.first) == files.end(); });
    for (const std::string& name : files_) {
      auto* button = new QToolButton(row_);
      button->setCheckable(true);
      button->setIconSize({kSmall_px, kSmall_px});
      button->setFixedSize(kSmall_px + 10, kSmall_px + 10);
      connect(button, &QToolButton::clicked, this, [this, name] { show(name); });
      row_->layout()->addWidget(button);
      small_.push_back(button);
      if (!thumbs_.count(name)) load(name, kSmallRead_px);
    }
    if (grew || std::find(files_.begin(), files_.end(), shown_) == files_.end()) {
      shown_ = files_.empty() ? std::string() : files_.back();
      large_->setImage({});
      if (!shown_.empty()) load(shown_, kLarge_px);
    }
    if (hadFocus) (small_.empty() ? static_cast<QAbstractButton*>(add_) : small_.back())->setFocus();
  }
  for (std::size_t i = 0; i < small_.size(); ++i) {
    const QString name = nameOf(i);
    small_[i]->setAccessibleName(name);
    small_[i]->setToolTip(name);
    small_[i]->setChecked(files_[i] == shown_);
    const auto thumb = thumbs_.find(files_[i]);
    if (thumb != thumbs_.end()) small_[i]->setIcon(QIcon(QPixmap::fromImage(thumb->second)));
  }
  row_->setVisible(!small_.empty());
  empty_->setVisible(small_.empty());
}

void PhotoStrip::fillLarge() {
  ClientFile copy = file();
  const store::ClientPhoto* photo = shownIn(copy);
  detail_->setVisible(photo);
  if (!photo) return;
  const auto it = std::find(files_.begin(), files_.end(), shown_);
  if (it != files_.end()) large_->setAccessibleName(nameOf(static_cast<std::size_t>(it - files_.begin())));
  of_->setCurrent(static_cast<int>(photo->of));
  words_->setText(QString::fromStdString(photo->words));
}

void PhotoStrip::show(const std::string& name) {
  if (name != shown_) {
    words_->abandonTyping();
    remove_->calm();
    shown_ = name;
    large_->setImage({});
    load(name, kLarge_px);
  }
  fillSmall();
  fillLarge();
}

void PhotoStrip::load(const std::string& name, int side_px) {
  const QPointer<PhotoStrip> self(this);
  const QString path = folder_ + u'/' + QString::fromStdString(name);
  QThreadPool::globalInstance()->start([self, path, name, side_px] {
    QMetaObject::invokeMethod(qApp, [self, name, side_px, image = store::loadPhoto(path, side_px)] {
      if (self) self->loaded(name, side_px, image);
    });
  });
}

void PhotoStrip::loaded(const std::string& name, int side_px, const QImage& image) {
  if (side_px == kSmallRead_px) {
    thumbs_[name] = image;
    return fillSmall();
  }
  if (name != shown_) return;
  showLines(missing_, image.isNull() ? QStringList{tr("This photo cannot be read any more: its file is missing or damaged.")} : QStringList());
  large_->setImage(image);
}

}  // namespace combdraft::cards

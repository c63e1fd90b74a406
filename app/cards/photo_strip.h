#pragma once
// The photos of a client beside the plan: small ones in rows, the chosen one large
// below with its words. Read on threads of their own; the window never waits for one.
#include <QAbstractButton>
#include <QImage>
#include <map>

#include "app/cards/confirm_row.h"
#include "app/cards/consultation_page.h"

class QPushButton;

namespace combdraft::cards {

/// A picture as wide as there is room, never larger than it is.
class PhotoView : public QWidget {
 public:
  explicit PhotoView(QWidget* parent);
  void setImage(const QImage& image);
  bool isEmpty() const { return image_.isNull(); }
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;
  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QImage image_;
};

class PhotoStrip : public ConsultationPage {
  Q_OBJECT

 public:
  explicit PhotoStrip(QWidget* parent);

  void fill() override;
  /// Name of the photo that is shown large; "" = none.
  const std::string& shown() const { return shown_; }
  QPushButton* addButton() { return add_; }
  std::vector<QAbstractButton*> small() const { return small_; }
  PhotoView* large() { return large_; }

 Q_SIGNALS:
  void photosWanted();
  void consentWanted();

 private:
  void show(const std::string& file);
  void fillSmall();
  void fillLarge();
  void load(const std::string& file, int side_px);
  void loaded(const std::string& file, int side_px, const QImage& image);
  store::ClientPhoto* shownIn(ClientFile& file);
  QString nameOf(std::size_t index) const;

  std::string shown_;
  QString folder_;
  std::vector<std::string> files_;
  std::map<std::string, QImage> thumbs_;
  QWidget *withConsent_, *without_, *row_, *detail_;
  std::vector<QAbstractButton*> small_;
  PhotoView* large_;
  QPushButton* add_;
  QLabel *empty_, *missing_;
  controls::Segments* of_;
  controls::TextField* words_;
  ConfirmRow* remove_;
};

QString photoKindName(store::PhotoOf of);

}  // namespace combdraft::cards

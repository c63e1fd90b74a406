#include "app/controls/icon.h"

#include <QFile>
#include <QIconEngine>
#include <QPainter>
#include <QSvgRenderer>

#include "app/controls/theme.h"

namespace combdraft::controls {
namespace {

class InkIcon : public QIconEngine {
 public:
  explicit InkIcon(QByteArray svg) : svg_(std::move(svg)) {}

  void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
    const Theme& t = currentTheme();
    const QColor ink = mode == QIcon::Disabled ? t.edge : t.ink;
    QByteArray svg = svg_;
    svg.replace("currentColor", ink.name().toLatin1());
    QSvgRenderer renderer(svg);
    renderer.render(painter, rect);
  }
  QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
    QPixmap pixmap(size);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    paint(&painter, QRect(QPoint(0, 0), size), mode, state);
    return pixmap;
  }
  QIconEngine* clone() const override { return new InkIcon(svg_); }

 private:
  QByteArray svg_;
};

}  // namespace

QIcon icon(const QString& name) {
  QFile file(QStringLiteral(":/icons/%1.svg").arg(name));
  if (!file.open(QIODevice::ReadOnly)) return {};
  return QIcon(new InkIcon(file.readAll()));
}

}  // namespace combdraft::controls

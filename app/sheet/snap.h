#pragma once
// What the pointer catches on while drawing: landmarks, corners, crossings of
// lines, then the lines themselves. Said in words, so that the hand knows.
#include <QString>
#include <vector>

#include "app/paint/scene.h"

namespace combdraft::sheet {

/// A caught (or free) place on the scalp.
struct Snap {
  head::ScalpPoint at;
  QString words;          ///< "on the parietal ridge"; empty when free
  std::string line;       ///< stable name of the line it lies on; empty = none
  bool isCaught() const { return !words.isEmpty(); }
};

class SnapLines {
 public:
  /// Lines of the head and of the plan on it; `scene` must not change meanwhile.
  explicit SnapLines(std::shared_ptr<const paint::Scene> scene);

  /// The best catch within `reach_mm` of a place on the surface: points before
  /// crossings before lines, the nearest of each. `own` are the corners under way.
  /// Nothing of the section `except` catches.
  Snap caught(const Vec3& place, double reach_mm, const std::vector<head::ScalpPoint>& own,
              const std::string& except = {}) const;

  /// Places between two catches on the same line, so that what is drawn follows
  /// it; about 10 mm apart, the shorter way round. Empty for other catches.
  std::vector<head::ScalpPoint> along(const Snap& from, const Snap& to) const;

 private:
  struct Line {
    std::string key;
    QString words;  ///< "the hairline"
    std::vector<Vec3> points;
    bool closed = false;
    Vec3 middle;
    double radius_mm = 0;
  };
  struct Mark {
    Vec3 at;
    QString words;
    std::string section{};  ///< whose corner it is
  };
  struct Hit {
    const Line* line = nullptr;
    std::size_t stretch = 0;
    Vec3 at;
    double far_mm = 0;
  };
  void addLine(std::string key, QString words, std::vector<Vec3> points, bool closed);
  Hit nearest(const Line& line, const Vec3& place) const;

  std::shared_ptr<const paint::Scene> scene_;
  std::vector<Line> lines_;
  std::vector<Mark> marks_;
};

}  // namespace combdraft::sheet

#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "strakebook/paper/content/inlines.h"

/// A figure as data: shapes in data units, each with a meaning. Typeset only scales and labels; style gives meanings
/// their tone, line and symbol. Doubles here are positions for the eye, never judged.
namespace strakebook::content {

struct XY {
  double x = 0, y = 0; ///< data units; y up
};

/// An open or closed outline.
struct Outline {
  std::vector<XY> points;
  bool closed = false;
  std::string meaning;
  std::string target = {}; ///< its box links to this block id; may be empty. Without a meaning nothing is drawn
};

/// A symbol of fixed paper size at a place.
struct Spot {
  XY at;
  std::string meaning;
  std::string tone; ///< fill tone that replaces the meaning's own; empty: as the meaning says
  std::string id = {};     ///< links lead here; may be empty. Without a meaning a spot is a place alone: nothing is drawn
  std::string target = {}; ///< the symbol links to this block id; may be empty
  bool changed = false;    ///< a bar stands at its left
};

enum class Anchor { left, centre, right };        ///< which part of the text stands at `at`
enum class Level { above, middle, below, baseline }; ///< where the text stands relative to `at`

struct Label {
  XY at;
  Inlines text;
  std::string text_style = "figure-label";
  Anchor anchor = Anchor::centre;
  Level level = Level::middle;
  bool upwards = false;  ///< reads upwards (status words in a gap)
  /// What the text stands on: nothing, a white ground, or a white flag, pointed to the side that it leads to.
  enum class Ground { none, chip, flag, flag_left, flag_right } ground = Ground::none;
  bool stays = false;    ///< never moved in its lane
  bool yields = false;   ///< left out where it finds no room, or would hide a sign; any other label that finds none is an error
  std::optional<XY> instead; ///< where it stands, centred, if it yields and finds no room at `at`
  std::string id;        ///< links here and labels' targets, may be empty
  std::string target;    ///< the label links to this block id; may be empty
};

/// A dimension or extent: a line with ticks or arrow heads at both ends.
struct Span {
  XY from, to;
  enum class Ends { ticks, arrows, start_arrow, end_arrow } ends = Ends::ticks;
  std::string meaning;
};

/// An axis with ticks and numbers; `at` is the position on the other axis.
struct Axis {
  enum class Side { bottom, top, left } side = Side::bottom;
  double at = 0;
  std::vector<double> ticks;           ///< short marks
  std::vector<std::pair<double, std::string>> numbers;
  std::string title;
  bool line = false;
};

using Element = std::variant<Outline, Spot, Label, Span, Axis>;

/// How one axis of data becomes paper: to fill the width (or a named height) or by a named scale (points a data unit).
struct Scale {
  enum class Rule { fill, named, as_x } rule = Rule::fill;
  std::string measure; ///< fill: named measure of the height (y only); named: measure that one data unit takes
};

struct Drawing {
  double x0 = 0, x1 = 1, y0 = 0, y1 = 1; ///< data at the edges of the drawing area
  Scale x, y;
  /// room outside the drawing area for labels, as names of measures; empty: none
  std::string pad_left, pad_right, pad_top, pad_bottom;
  std::vector<Element> elements; ///< drawn in order
  std::string spoken;            ///< what the figure shows, in words
};

} // namespace strakebook::content

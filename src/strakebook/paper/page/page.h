#pragma once

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "strakebook/base/geometry.h"
#include "strakebook/base/image_ref.h"
#include "strakebook/paper/page/tag.h"

/// The finished page as plain data: what sits where. Two backends draw it and tests read it as text.
/// Coordinates: points, x right, y DOWN from the sheet's top left corner; text positions are baselines.
namespace strakebook::page {

using base::Point;
using base::Pt;
using base::Rect;
using base::Size;

struct Colour {
  double r = 0, g = 0, b = 0; ///< sRGB, 0 to 1
  bool operator==(const Colour &) const = default;
};

/// A face whose glyph ids the runs use. The bytes are the whole TrueType file, verified when loaded.
struct Font {
  std::string name; ///< PostScript name, e.g. "SourceSerif4-Regular"
  std::shared_ptr<const std::string> bytes;
  double units_per_em = 1000;
};

struct Glyph {
  std::uint32_t id = 0;
  Pt advance;          ///< to the next glyph, kerning, tracking and justification included
  Point offset;        ///< added to the pen for this glyph only (y down)
  std::uint32_t cluster = 0; ///< byte offset in Run::text of the first character it stands for
};

/// Glyphs on one baseline in one font, size and colour. Concatenating the runs of a line in order gives its text.
struct Run {
  int font = 0; ///< index into Document::fonts
  Pt size;
  Point origin; ///< pen position of the first glyph
  Colour colour;
  std::string text; ///< UTF-8, what an extractor must give back
  std::vector<Glyph> glyphs;
  bool upright = true; ///< false: turned 90 degrees counter-clockwise about origin (reads upwards)
};

struct Move { Point to; };
struct Line { Point to; };
struct Curve { Point c1, c2, to; };
struct Close {};
using Step = std::variant<Move, Line, Curve, Close>;

struct Stroke {
  Pt width;
  Colour colour;
  std::vector<Pt> dash; ///< empty: solid
};

struct Path {
  std::vector<Step> steps;
  std::optional<Colour> fill; ///< even-odd
  std::optional<Stroke> stroke;
};

struct Picture {
  base::ImageRef image;
  Rect box;
};

/// A place that links and the outline lead to.
struct Anchor { Point at; };

/// An area that leads to the anchor with the same id as `target`.
struct Link {
  Rect box;
  std::string target;
  std::string said = {}; ///< what is printed in it
};

/// An item that draws nothing (an empty path) still gives its element a place: the cell of a table that is left empty.
struct Item {
  TagPath tag;    ///< the element it belongs to; null: decoration
  std::string id; ///< block id: "mark/PW 9"; empty only for decoration and furniture
  std::variant<Run, Path, Picture, Anchor, Link> what;
};

/// A named area of the page; every text run of a page lies inside the frame it was set in.
struct Frame {
  std::string name; ///< "body", "head", "foot"
  Rect box;
};

struct Page {
  Size size;
  std::vector<Frame> frames;
  std::vector<Item> items; ///< in reading order
};

struct OutlineEntry {
  int level = 1; ///< 1 is the outermost; never skips one
  std::string title;
  std::string target; ///< an anchor id
};

struct Metadata {
  std::string title, author, subject, language; ///< language: BCP 47, "en-GB"
  std::string date;    ///< "2026-10-21" the report's own date, never the clock; empty: none is written
  std::string creator; ///< the tool and its version
};

/// A file that goes with the document.
struct Attachment {
  std::string name;        ///< "readings/hull.csv"
  std::string media_type;  ///< "text/csv"
  std::string description; ///< for readers
  std::string bytes;
};

struct Document {
  std::vector<Font> fonts;
  std::vector<Page> pages;
  std::vector<OutlineEntry> outline;
  Metadata metadata;
  std::vector<Attachment> attachments;
};

/// The document as text, one item a line with positions to 0.01 pt: what golden tests compare and a person can read.
std::string dump(const Document &document);
std::string dump(const Page &page);

} // namespace strakebook::page

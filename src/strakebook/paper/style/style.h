#pragma once

#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/geometry.h"
#include "strakebook/paper/style/setting.h"

/// How things look, by meaning. Every value comes from a layout file; nothing here knows what a report says.
namespace strakebook::style {

using base::Pt;
using base::Size;

struct Tone {
  double r = 0, g = 0, b = 0; ///< sRGB, 0 to 1
  bool operator==(const Tone &) const = default;
};

/// A bundled face: file name under the fonts folder and the digest it must have.
struct Face {
  std::string name; ///< "serif", "serif-italic", "sans-600": how text styles call it
  std::string file;
};

enum class Align { left, right, centre, justify };

struct TextStyle {
  std::string face;         ///< upright
  std::string strong_face;  ///< for emphasis strong
  std::string italic_face;  ///< for emphasis italic
  Pt size, leading;
  Align align = Align::left;
  std::string ink = "ink";      ///< name of a tone
  std::string soft_ink = "soft"; ///< for emphasis soft
  Pt tracking;              ///< added after every letter
  bool capitals = false;    ///< set in capitals (the text itself is not changed in extraction)
  Pt space_before, space_after;
  bool keep_with_next = false;
  bool on_grid = false;     ///< its lines stand on half steps of the grid, counted from the top of the body
};

enum class Shape { none, circle, half_diamond, triangle_down, dash, cross, dot, ring, tick, caution_bar, line_heavy,
                   line_light, line_dashed, line_dotted, line_double };
enum class Hatch { none, diagonal, cross };

/// How a meaning ("left", "gone", "limit", "falls-short") is drawn. Compose names meanings, this table gives them form.
struct MeaningStyle {
  std::optional<std::string> fill;   ///< tone name
  std::optional<std::string> stroke; ///< tone name
  Pt stroke_width;
  std::vector<Pt> dash;
  Hatch hatch = Hatch::none;
  Pt hatch_pitch, hatch_width;
  std::string hatch_tone;
  Shape shape = Shape::none; ///< for signs and dots
  Pt shape_size;             ///< height of the sign in text and figures
};

struct PageMaster {
  Size sheet;
  Pt left, right, top, bottom;   ///< margins of the body
  Pt head_baseline;              ///< from the top of the sheet
  Pt head_rule;                  ///< from the top of the sheet
  Pt foot_baseline;              ///< from the bottom of the sheet
};

/// Named column grids: "text-side" {106 mm, 52 mm} gutter 6 mm. Widths add up to the body width of a master.
struct Lattice {
  std::vector<Pt> widths;
  std::vector<Pt> gutters; ///< one fewer than widths
};

struct TableStyle {
  std::string head, unit, body, group, caption, note; ///< text style names
  Pt row_pitch;       ///< least height of a row
  Pt cell_gap;        ///< between columns
  Pt rule_top, rule_head, rule_group, rule_row, rule_foot; ///< widths
  std::string rule_tone, group_rule_tone, row_rule_tone;
  Pt space_before, space_after;
  int keep_rows = 2;  ///< rows that stay with a group head, and at either side of a split
  int keep_group = 0; ///< a group of no more rows is not split if a page can hold it
  int keep_table = 0; ///< nor a table of no more rows
  int abreast = 1;    ///< columns of the page that the table fills one after the other, each with its head
};

struct KeyStyle {
  std::string label, value; ///< text styles
  Pt label_width, gap, row_gap;
};

/// How photographs are printed, whatever is on them.
struct Photographs {
  int per_inch = 0;  ///< the most pixels to an inch of paper
  int quality = 0;   ///< of one that is coded anew as JPEG, 1 to 100 on libjpeg's scale
  int wide_from = 0; ///< so many times as wide as high, it is set over the whole width
};

/// The whole look.
struct Style {
  std::vector<Face> faces;
  std::map<std::string, Tone> tones;
  std::map<std::string, TextStyle> text;
  std::map<std::string, MeaningStyle> meanings;
  std::map<std::string, PageMaster> masters;
  std::map<std::string, Lattice> lattices;
  std::map<std::string, TableStyle> tables;
  std::map<std::string, KeyStyle> keys;
  std::map<std::string, Pt> measures; ///< named lengths: "block-gap", "profile-station", "profile-millimetre", "change-bar"
  Pt grid;                            ///< baseline grid step
  Photographs photographs;
  Setting setting;                    ///< of paragraphs
};

/// Looks a name up; a name that no layout gives throws std::out_of_range naming it (the layout reader has checked
/// every name that compose and typeset use, so this is a fault of the program).
const TextStyle &text_style(const Style &style, std::string_view name);
const MeaningStyle &meaning_style(const Style &style, std::string_view name);
const Tone &tone(const Style &style, std::string_view name);
const TableStyle &table_style(const Style &style, std::string_view name);
const KeyStyle &key_style(const Style &style, std::string_view name);
const Lattice &lattice(const Style &style, std::string_view name);
const PageMaster &master(const Style &style, std::string_view name);
Pt measure(const Style &style, std::string_view name);

Pt body_width(const PageMaster &master);
Pt body_height(const PageMaster &master);

} // namespace strakebook::style

#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "strakebook/base/image_ref.h"
#include "strakebook/base/source.h"
#include "strakebook/paper/content/drawing.h"
#include "strakebook/paper/content/inlines.h"
#include "strakebook/paper/content/table.h"

/// What is said, in order: blocks without a place. Compose makes it, typeset sets it.
namespace strakebook::content {

struct Block;

struct Heading {
  int level = 1;      ///< 1 section, 2 sub-section, 3 item, 4 sub-head inside an item (not in contents)
  std::string number; ///< "11.2"; may be empty
  Inlines text;
  bool in_contents = true;
  std::string text_style; ///< empty: "heading-<level>"
};

struct Paragraph {
  Inlines text;
  std::string text_style = "text"; ///< name of a text style
  std::string bar;                 ///< meaning of a bar or statement line at its left; empty: none
};

struct KeyValues {
  struct Entry { std::string label; Inlines value; std::string id; bool changed = false; };
  std::vector<Entry> entries;
  std::string style = "plain"; ///< name of a key style
  int columns = 1;
};

struct List {
  std::vector<Inlines> items;
  bool numbered = false;
  std::string text_style = "text";
};

struct Figure {
  std::string label; ///< "Figure 11.1"; empty: no caption
  Inlines caption;
  bool caption_above = true;
  /// One drawing, or panels set in a lattice at one scale, row by row.
  struct Panel { Inlines title, title_right; Drawing drawing; std::string id; bool changed = false; };
  std::vector<Panel> panels;
  std::string lattice; ///< for panels side by side; empty: full width one under the other
  std::vector<Inlines> notes;
  bool caption_changed = false;             ///< or what it stands over
  std::vector<std::size_t> changed_notes = {}; ///< their places
};

/// A photograph, or a frame that says none is there.
struct Photo {
  std::optional<base::ImageRef> image;
  Inlines placeholder;        ///< shown in the frame when there is no image
  std::string aspect = "photo-aspect"; ///< measure name: height of the frame for the lattice width
  std::string number;         ///< hangs at the left of the caption
  Inlines caption;
  std::optional<Drawing> strip; ///< where on the hull, and which way the camera looked
};

/// Blocks side by side in a named lattice; a cell splits over pages on its own.
struct Columns {
  std::string lattice;
  std::vector<std::vector<Block>> cells;
};

/// Blocks that stay together on one page if a page can hold them.
struct Together { std::vector<Block> blocks; };

struct Rule { std::string meaning = "rule"; };
struct Space { std::string measure = "block-gap"; };
struct PageBreak {};

/// The table of contents, or the list of tables or of figures that have a label; typeset fills in the pages.
struct Contents {
  int depth = 2; ///< of headings
  enum class Of { headings, tables, figures } of = Of::headings;
};

/// The last thing in the document; the text ends here.
struct EndMark { Inlines text; };

struct Block {
  std::string id; ///< "zone/W/decision"; unique when not empty
  base::SourceSpan origin;
  bool changed = false; ///< all of it; of what is in it, rows, entries, captions, notes and panels say so themselves
  std::variant<Heading, Paragraph, KeyValues, List, Table, Figure, Photo, Columns, Together, Rule, Space, PageBreak,
               Contents, EndMark>
      what;
};

struct Section {
  std::string id;             ///< "section/results"
  std::string master = "page"; ///< page master name; a change starts a new page
  bool starts_page = false;
  std::vector<Block> blocks;
};

/// Running head and foot; {page} and {pages} are filled by typeset.
struct Furniture {
  Inlines head_left, head_right, foot_left;
  std::string foot_right; ///< "page {page} of {pages}"
};

/// Words that typeset itself prints.
struct Labels {
  std::string page_short;     ///< "p. {page}"
  std::string label_page;     ///< "{label}, p. {page}"
  std::string continued_from; ///< "continued from p. {page}"
  std::string continued_on;   ///< "continued on p. {page}"
  std::string continued;      ///< appended to a repeated group head: "continued"
};

struct Document {
  Furniture furniture;
  Labels labels;
  std::vector<Section> sections;
  std::map<std::string, std::string> names; ///< block id -> what a label reference prints ("table/marks" -> "Table 11.2")
  std::string title, author, subject, language, date, creator; ///< metadata; date may be empty
};

} // namespace strakebook::content

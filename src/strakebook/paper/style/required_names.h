#pragma once

#include <array>
#include <string_view>

/// Names that typesetting itself uses, so that the reader of layouts can demand them. Names that a document adds (its
/// table styles, lattices, meanings) are demanded by whoever composes it.
namespace strakebook::style {

inline constexpr std::array<std::string_view, 25> required_text_styles{
    "text",           "heading-1",        "heading-1-number", "heading-2",      "heading-2-number", "heading-3",
    "heading-3-number", "heading-4",      "heading-4-number", "figure-label",   "caption",          "note",
    "panel-title",    "photo-number",     "furniture-head",   "furniture-foot", "contents-1",       "contents-2",
    "contents-number", "contents-page",   "contents-listed", "end-mark",
    "axis-number",    "axis-title",       "photo-placeholder"};

inline constexpr std::array<std::string_view, 41> required_measures{
    "block-gap",           ///< between blocks whose style gives no space
    "list-gap",            ///< between items of a list
    "list-indent",         ///< of the text of a list item; its number or dot hangs in it
    "heading-number-gap",  ///< between the number of a heading and its words
    "caption-measure",     ///< the longest line of a caption
    "caption-gap",         ///< between a caption and its table or figure
    "note-measure",        ///< the longest line of a note
    "note-gap",            ///< between a table or figure and its notes
    "figure-gap",          ///< above and below a figure
    "panel-gap",           ///< between rows of panels
    "photo-aspect",        ///< height of a photograph's frame, whatever its width
    "photo-gap",           ///< above and below a photograph
    "photo-number-gap",    ///< between a photograph's number and its caption
    "table-pad",           ///< between a rule and the head of a table
    "keep-table-height",   ///< of a table of few rows that is not split
    "table-gap-most",      ///< the widest gap between columns when a table is spread over its width
    "change-bar",          ///< width of the bar
    "change-bar-offset",   ///< from the left edge of the text to the left edge of the bar
    "change-bar-place",    ///< width of the bar at a sign of a figure
    "bar-indent",          ///< of a paragraph with a caution bar
    "sign-gap",            ///< between a sign and the words after it
    "rule-gap",            ///< above and below a rule across the page
    "column-gutter",       ///< between two columns of key-values, or of a table
    "contents-number",     ///< width of the numbers of sections in the contents
    "contents-sub-number", ///< width of the numbers of sub-sections
    "furniture-gap",       ///< between the left and the right part of head and foot
    "tick",                ///< length of a tick of an axis
    "axis-number-gap",     ///< between the end of a tick and its number
    "axis-title-gap",      ///< between the title of an axis and its first number
    "label-pad",           ///< between a label of a figure and the place it is above, below or beside
    "label-clear",         ///< the least white between two labels of one lane
    "label-shift",         ///< the furthest that a label is moved in its lane
    "chip-pad",            ///< white ground of a label around its letters
    "span-tick",           ///< length of the ticks at the ends of a span
    "arrow-length",        ///< length of the arrow heads of a span
    "panel-title-gap",     ///< between the title of a panel and its drawing
    "photo-caption-gap",   ///< between a photograph and its caption
    "photo-strip-gap",     ///< between the caption of a photograph and its locator strip
    "photo-strip",         ///< the longest locator strip of a photograph, so that all are at one scale
    "photo-hang",          ///< of the caption of a photograph; its number hangs in it
    "photo-text-clear"};   ///< white around the words in an empty frame

inline constexpr std::array<std::string_view, 2> required_tones{"ink", "soft"};

inline constexpr std::array<std::string_view, 9> required_meanings{
    "rule",           ///< a rule across the text
    "furniture-rule", ///< under the running head
    "photo-frame",    ///< outline of a photograph or of the frame that stands for one
    "change-bar",     ///< fill of the bar
    "struck",         ///< line through words that no longer stand
    "axis",           ///< line and ticks of an axis
    "chip",           ///< ground of a label
    "flag",           ///< ground of a label that is a flag
    "photo-diagonal"}; ///< crosses the frame that stands for a photograph

inline constexpr std::array<std::string_view, 1> required_table_styles{"plain"};
inline constexpr std::array<std::string_view, 1> required_key_styles{"plain"};
inline constexpr std::array<std::string_view, 1> required_masters{"page"};

} // namespace strakebook::style

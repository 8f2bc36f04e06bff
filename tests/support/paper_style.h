#pragma once

#include <map>
#include <string>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/paper/content/document.h"
#include "strakebook/paper/style/required_names.h"
#include "strakebook/paper/style/style.h"
#include "strakebook/paper/typeset/context.h"
#include "strakebook/paper/typeset/font_set.h"
#include "strakebook/paper/typeset/memo.h"

/// A small hand-made look for tests: round figures, so that positions are sums that can be done in the head.
/// Body: 400 x 600 pt, margins 50 (page) on a sheet of 500 x 700; text 10/12.
namespace paper_test {

using strakebook::base::Pt;
namespace style = strakebook::style;

inline std::vector<style::Face> faces() {
  return {{"serif", "SourceSerif4_400Regular.ttf"},
          {"serif-italic", "SourceSerif4_400Regular_Italic.ttf"},
          {"serif-600", "SourceSerif4_600SemiBold.ttf"},
          {"sans", "SourceSans3_400Regular.ttf"},
          {"sans-italic", "SourceSans3_400Regular_Italic.ttf"},
          {"sans-600", "SourceSans3_600SemiBold.ttf"},
          {"sans-700", "SourceSans3_700Bold.ttf"}};
}

inline style::TextStyle text_style(double size, double leading) {
  style::TextStyle t;
  t.face = "sans";
  t.strong_face = "sans-600";
  t.italic_face = "sans-italic";
  t.size = {size};
  t.leading = {leading};
  return t;
}

inline void add_text_styles(style::Style &s) {
  for (const auto name : style::required_text_styles)
    s.text[std::string(name)] = text_style(8, 10);
  auto &text = s.text["text"] = text_style(10, 12);
  text.face = "serif";
  text.strong_face = "serif-600";
  text.italic_face = "serif-italic";
  text.align = style::Align::justify;
  s.text["ragged"] = text_style(10, 12);
  for (const auto *name : {"heading-1", "heading-2", "heading-3", "heading-4"}) {
    s.text[name] = text_style(14, 18);
    s.text[name].face = "serif-600";
    s.text[name].space_before = {12};
    s.text[name].space_after = {6};
    s.text[name].keep_with_next = true;
    s.text[std::string(name) + "-number"] = text_style(14, 18);
  }
  s.text["table-body"] = text_style(8, 10);
  s.text["table-head"] = text_style(7, 9);
  s.text["table-head"].face = "sans-600";
  s.text["table-unit"] = text_style(7, 9);
  s.text["table-unit"].ink = "soft";
  s.text["table-group"] = text_style(8, 10);
  s.text["table-group"].space_before = {6};
}

inline void add_meanings(style::Style &s) {
  s.tones = {{"ink", {0.1, 0.1, 0.1}}, {"soft", {0.3, 0.3, 0.3}},   {"grey", {0.6, 0.6, 0.6}},
             {"white", {1, 1, 1}},     {"steel", {0.7, 0.75, 0.8}}, {"ramp-1", {0.06, 0.16, 0.22}}};
  const auto line = [&](const std::string &name, double width) {
    auto &m = s.meanings[name];
    m.stroke = "ink";
    m.stroke_width = {width};
  };
  for (const auto name : style::required_meanings)
    line(std::string(name), 0.5);
  s.meanings["change-bar"].fill = "ink";
  line("outline", 0.5);
  line("limit", 1.2);
  auto &steel = s.meanings["steel"];
  steel.fill = "steel";
  steel.stroke = "ink";
  steel.stroke_width = {0.5};
  const auto sign = [&](const std::string &name, style::Shape shape, double size) {
    auto &m = s.meanings[name];
    m.shape = shape;
    m.shape_size = {size};
    m.stroke = "ink";
    m.stroke_width = {0.6};
  };
  sign("meets", style::Shape::circle, 5);
  sign("close-call", style::Shape::half_diamond, 5);
  sign("falls-short", style::Shape::triangle_down, 5);
  s.meanings["falls-short"].fill = "ink";
  sign("measured", style::Shape::line_heavy, 18);
  sign("caution", style::Shape::caution_bar, 8);
  s.meanings["caution"].stroke_width = {2};
  s.meanings["caution"].fill = "ink";
}

inline void add_measures(style::Style &s) {
  for (const auto name : style::required_measures)
    s.measures[std::string(name)] = {6};
  const std::map<std::string, double> others{{"list-gap", 3},           {"list-indent", 15},
                                             {"caption-measure", 300},  {"photo-strip", 400},
                                              {"note-measure", 350},
                                             {"photo-aspect", 120},     {"change-bar", 3},
                                             {"change-bar-offset", 17}, {"contents-number", 40},
                                             {"table-pad", 2},          {"contents-sub-number", 32},
                                             {"furniture-gap", 12},     {"table-gap-most", 30},     {"keep-table-height", 300},
                                             {"heading-number-gap", 8}, {"sign-gap", 3}};
  for (const auto &[name, value] : others)
    s.measures[name] = {value};
}

/// How the shipped layout sets paragraphs, but nothing hangs over the edge: lines end where sums say.
inline style::Setting setting() {
  style::Setting s;
  s.blanks_grow = 0.5;
  s.blanks_shrink = 0.25;
  s.divide_left = 2;
  s.divide_right = 3;
  s.divided_in_a_row = 2;
  s.last_line = {28};
  s.river_lines = 4;
  s.river_overlap = 0.5;
  s.long_words = {20, "/\\_.=&?", 8};
  s.ties = {{"mm", "m", "%", "in"}, {"in"}, {"October"}, {"p.", "Table"}, {"to"}, {"\u2192"}, {"Mr"}, {"\u2013"}, 3};
  return s;
}

inline style::Style make_style() {
  style::Style s;
  s.setting = setting();
  s.faces = faces();
  s.grid = {12};
  s.photographs = {.per_inch = 220, .quality = 88, .wide_from = 3};
  add_text_styles(s);
  add_meanings(s);
  add_measures(s);
  s.masters["page"] = {{{500}, {700}}, {50}, {50}, {50}, {50}, {30}, {40}, {30}};
  s.masters["wide"] = {{{700}, {500}}, {50}, {50}, {50}, {50}, {30}, {40}, {30}};
  s.lattices["text-side"] = {{{260}, {120}}, {{20}}};
  s.lattices["halves"] = {{{190}, {190}}, {{20}}};
  style::TableStyle table;
  table.head = "table-head";
  table.unit = "table-unit";
  table.body = "table-body";
  table.group = "table-group";
  table.caption = "caption";
  table.note = "note";
  table.row_pitch = {12};
  table.cell_gap = {5};
  table.rule_top = table.rule_head = table.rule_foot = {0.6};
  table.rule_group = table.rule_row = {0.35};
  table.rule_tone = "ink";
  table.group_rule_tone = table.row_rule_tone = "grey";
  table.space_before = table.space_after = {12};
  s.tables["plain"] = table;
  s.keys["plain"] = {"caption", "text", {90}, {8}, {3}};
  return s;
}

/// What every test of typesetting needs: look, fonts, sink and a context over them.
struct Desk {
  style::Style look = make_style();
  strakebook::base::Diagnostics sink;
  strakebook::typeset::FontSet fonts =
      std::move(*strakebook::typeset::FontSet::load(STRAKEBOOK_ROOT "/fonts", faces(), sink));
  strakebook::typeset::Hyphenation hyphenation =
      std::move(*strakebook::typeset::Hyphenation::load(STRAKEBOOK_ROOT "/fonts", "en-GB", sink));
  strakebook::typeset::Places places;
  std::map<std::string, std::string> names;
  strakebook::content::Labels labels{"p. {page}", "{label}, p. {page}", "continued from p. {page}",
                                     "continued on p. {page}", "continued"};
  std::vector<strakebook::typeset::ContentsLine> contents;
  strakebook::typeset::Memo memo;

  strakebook::typeset::Context context() {
    return {look, fonts, sink, places, names, labels, contents, memo, 1, {}, "test", {}, &hyphenation};
  }
};

} // namespace paper_test

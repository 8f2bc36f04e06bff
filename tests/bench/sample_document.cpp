#include "bench/sample_document.h"

#include <algorithm>
#include <cstdint>

#include "strakebook/base/text.h"

namespace bench {

using namespace strakebook::content;

namespace {

/// A generator of its own, so that every library gives the same document (Knuth's multiplicative hash).
class Dice {
public:
  int below(int limit) {
    state_ = state_ * 2654435761u + 12345u;
    return static_cast<int>((state_ >> 8) % static_cast<std::uint32_t>(limit));
  }

private:
  std::uint32_t state_ = 1;
};

const std::vector<std::string> vocabulary = {
    "the",     "plating", "between", "stations", "keeps",    "most",    "of",       "its",      "thickness", "and",
    "where",   "coating", "was",     "scraped",  "readings", "agree",   "within",   "the",      "doubt",     "of",
    "a",       "gauge",   "whose",   "block",    "check",    "passed",  "before",   "afterwards", "along",   "chine",
    "bearers", "frames",  "inside",  "ballast",  "lining",   "removed", "measured", "without",  "continuous", "wasting"};

std::string row_id(int row) { return "row/" + std::to_string(row); }

std::string decimal(int tenths) { return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10); }

Cell cell(std::string text) { return {.text = plain(std::move(text))}; }

Row row_of(int n, Dice &dice) {
  const int least = 42 + dice.below(16), loss = 60 - least;
  Row row{.id = row_id(n)};
  row.cells = {cell("M" + std::to_string(n)), cell(std::to_string(n % 97) + "." + std::to_string(n % 10) + "0"),
               cell(decimal(least + dice.below(3)) + "\xC2\xA0 " + decimal(least + 1) + "\xC2\xA0 " + decimal(least)),
               {.text = strong(decimal(least))}, cell("6.0"), cell(decimal(loss)), cell(decimal(loss * 1000 / 60) + " %"),
               {.text = plain(decimal(least - 40)), .sign = "meets"}};
  return row;
}

Table table_of(int first, int count, Dice &dice) {
  Table table{.style = "readings", .label = "Table " + std::to_string(first / 100 + 1)};
  table.caption = plain("Readings in the order of their places, with what is left and what is gone.");
  const auto figure = Column::Align::right;
  table.columns = {{.head = "Mark", .stretch = true}, {figure, "Station", "m"}, {figure, "Readings", "mm"},
                   {figure, "Used", "mm"}, {figure, "Original", "mm"}, {figure, "Lost", "mm"}, {figure, "Loss", "%"},
                   {figure, "Margin", "mm"}};
  RowGroup group{.head = plain("Group " + std::to_string(first / 100 + 1)), .id = "group/" + std::to_string(first)};
  for (int i = 0; i < count; ++i) group.rows.push_back(row_of(first + i, dice));
  table.groups.push_back(std::move(group));
  return table;
}

Inlines prose(int words, int rows, Dice &dice) {
  std::string text;
  for (int i = 0; i < words; ++i)
    text += vocabulary[static_cast<std::size_t>(dice.below(static_cast<int>(vocabulary.size())))] + (i % 17 == 16 ? ", " : " ");
  Inlines out = plain(std::move(text));
  out.push_back(Reference{row_id(dice.below(rows)), Reference::Form::page, "", Emphasis::soft});
  return out;
}

Block block(std::string id, decltype(Block::what) what) { return {.id = std::move(id), .what = std::move(what)}; }

void add_prose(Section &section, int n, int rows, Dice &dice) {
  const std::string number = std::to_string(n + 1);
  section.blocks.push_back(block("part/" + number, Heading{1, number, plain("Prose and figures " + number)}));
  for (int i = 0; i < 5; ++i) section.blocks.push_back(block("", Paragraph{prose(120, rows, dice)}));
}

struct WordsOfBlock {
  std::vector<std::string> &words;

  void add(const Inlines &text) {
    for (const auto &part : text)
      if (const auto *said = std::get_if<Text>(&part))
        for (const auto word : strakebook::base::words(said->text)) words.emplace_back(word);
  }
  void operator()(const Paragraph &paragraph) { add(paragraph.text); }
  void operator()(const Table &table) {
    for (const auto &group : table.groups)
      for (const auto &row : group.rows)
        for (const auto &one : row.cells) add(one.text);
  }
  template <class T> void operator()(const T &) {}
};

} // namespace

Document sample_document(int rows) {
  Dice dice;
  Document document;
  document.title = "A made report";
  document.language = "en-GB";
  document.furniture = {plain("A made report"), plain("not issued"), plain("for measuring only"), "page {page} of {pages}"};
  document.labels = {"p. {page}", "{label}, p. {page}", "continued from p. {page}", "continued on p. {page}", "continued"};
  Section section{.id = "section/all"};
  for (int first = 0; first < rows; first += 150) {
    add_prose(section, first / 150, rows, dice);
    for (int at = first; at < std::min(rows, first + 150); at += 50)
      section.blocks.push_back(block("table/" + std::to_string(at), table_of(at, std::min(50, rows - at), dice)));
  }
  document.sections.push_back(std::move(section));
  return document;
}

std::vector<std::string> words_of(const Document &document) {
  std::vector<std::string> words;
  for (const auto &section : document.sections)
    for (const auto &one : section.blocks) std::visit(WordsOfBlock{words}, one.what);
  return words;
}

} // namespace bench

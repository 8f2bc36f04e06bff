#include <fmt/format.h>

#include "strakebook/steel/survey/values.h"

/// Values that say where they come from, and maps of names to texts.
namespace strakebook::survey {

using base::Code;

namespace {

constexpr std::string_view source_words = "measured; told, WHO; document, WHICH";

Shape sourced(Shape shape) {
  shape.sourced = true;
  return shape;
}

/// A value alone takes the map's source; {value: , source: } carries its own.
template <class Value>
bool read_sourced(Reading &reading, const Node &node, Rule rule, Value &into, base::Provenance &from) {
  if (node.kind != Node::Kind::map) {
    if (!read(reading, node, rule, into))
      return false;
    if (reading.source)
      from = *reading.source;
    else
      reading.error(Code::missing_key, node.span, "nothing says where this value comes from",
                    "a source: for the whole map, or for this value",
                    fmt::format("{{value: {}, source: measured}}", node.text));
    return reading.source.has_value();
  }
  for (const auto &entry : node.entries)
    if (entry.key != "value" && entry.key != "source")
      reading.error(Code::unknown_key, entry.key_span, fmt::format("\"{}\" is not known here", entry.key),
                    "value, source");
  const auto *value = node.find("value");
  const auto *source = node.find("source");
  for (const auto &[found, name] : {std::pair{value, "value"}, std::pair{source, "source"}})
    if (!found || found->kind == Node::Kind::empty)
      reading.error(found ? Code::empty_value : Code::missing_key, found ? found->span : node.span,
                    fmt::format("{} is missing", name), "both: {value: 18.0 m, source: measured}");
  if (!value || !source || value->kind == Node::Kind::empty || source->kind == Node::Kind::empty)
    return false;
  const auto origin = read_source(reading, *source);
  if (!read(reading, *value, rule, into) || !origin)
    return false;
  from = *origin;
  return true;
}

/// Names and their texts, in the file's order.
template <class Entry>
bool read_texts(Reading &reading, const Node &node, std::vector<Entry> &into, auto make) {
  if (node.kind != Node::Kind::map) {
    reading.error(Code::wrong_kind, node.span,
                  fmt::format("{} stands where names with their texts belong", kind_words(node)),
                  "one name a line, each with its text", "name: text");
    return false;
  }
  bool good = true;
  for (const auto &entry : node.entries) {
    Words words;
    if (entry.value.kind == Node::Kind::empty) {
      reading.error(Code::empty_value, entry.key_span, fmt::format("{} has no text", entry.key), "a text");
      good = false;
    } else if (read(reading, entry.value, Rule::none, words)) {
      into.push_back(make(entry, std::move(words)));
    } else {
      good = false;
    }
  }
  return good;
}

Shape texts_shape(std::string_view example) {
  return {.form = Shape::Form::map,
          .words = "names with their texts",
          .example = std::string(example),
          .pattern = {},
          .choices = {}};
}

} // namespace

std::optional<base::Provenance> provenance_of(std::string_view source) {
  if (source == "measured")
    return base::Provenance{base::Origin::measured, {}};
  const auto after = [&](std::string_view word) {
    return source.starts_with(word) ? base::trimmed(source.substr(word.size())) : std::string_view{};
  };
  if (const auto who = after("told,"); !who.empty())
    return base::Provenance{base::Origin::told, std::string(who)};
  if (const auto which = after("document,"); !which.empty())
    return base::Provenance{base::Origin::document, std::string(which)};
  return std::nullopt;
}

std::optional<base::Provenance> read_source(Reading &reading, const Node &node) {
  const auto *text = scalar(reading, node, source_words);
  if (!text)
    return std::nullopt;
  auto origin = provenance_of(*text);
  if (!origin)
    reading.error(Code::unknown_word, node.span,
                  fmt::format("\"{}\" does not say where the value comes from", *text),
                  std::string(source_words), "told, owner");
  return origin;
}

Shape shape_of(const Fact &, Rule rule) { return sourced(shape_of(Words{}, rule)); }
Shape shape_of(const LengthFact &, Rule rule) { return sourced(shape_of(base::Measured{}, rule)); }

bool read(Reading &reading, const Node &node, Rule rule, Fact &into) {
  return read_sourced(reading, node, rule, into.text, into.from);
}
bool read(Reading &reading, const Node &node, Rule rule, LengthFact &into) {
  into.span = node.span;
  return read_sourced(reading, node, rule, into.length, into.from);
}

Shape shape_of(const std::vector<Named> &, Rule) { return texts_shape("{another course: why not}"); }
Shape shape_of(const std::vector<Acknowledgement> &, Rule) {
  return texts_shape("{neighbour-jump PW 9: the plate changes there}");
}
bool read(Reading &reading, const Node &node, Rule, std::vector<Named> &into) {
  return read_texts(reading, node, into, [](const Node::Entry &entry, Words words) {
    return Named{entry.key, std::move(words)};
  });
}
bool read(Reading &reading, const Node &node, Rule, std::vector<Acknowledgement> &into) {
  return read_texts(reading, node, into, [](const Node::Entry &entry, Words words) {
    return Acknowledgement{entry.key, std::move(words), entry.key_span};
  });
}

Shape shape_of(const std::vector<Statement> &, Rule) {
  return {.form = Shape::Form::statements,
          .words = "a list of statements by kind",
          .example = "[{seen: a bright pit}]",
          .pattern = {},
          .choices = words_of(StatementKind{})};
}
bool read(Reading &reading, const Node &node, Rule, std::vector<Statement> &into) {
  if (node.kind != Node::Kind::list) {
    reading.error(Code::wrong_kind, node.span,
                  fmt::format("{} stands where a list of statements belongs", kind_words(node)),
                  "- measured: ..., - seen: ..., - told: ..., - inferred: ..., - opinion: ...");
    return false;
  }
  for (const auto &item : node.items) {
    std::vector<Named> one;
    if (!read(reading, item, Rule::none, one))
      continue;
    for (auto &named : one) {
      const auto known = choices_of(StatementKind{});
      bool found = false;
      for (const auto &choice : known)
        if (choice.word == named.name) {
          into.push_back({choice.value, named.words});
          found = true;
        }
      if (!found)
        reading.unknown_word(item.entries.front().key_span, named.name, "a kind of statement",
                             words_of(StatementKind{}));
    }
  }
  return true;
}

} // namespace strakebook::survey

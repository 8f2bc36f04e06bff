#include "strakebook/steel/survey/field_reader.h"

#include <fmt/format.h>

#include <algorithm>

namespace strakebook::survey {

using base::Code;

namespace {

bool nothing_in(const Node &node) {
  switch (node.kind) {
  case Node::Kind::empty:
    return true;
  case Node::Kind::scalar:
    return base::trimmed(node.text).find_first_not_of('\n') == std::string_view::npos;
  case Node::Kind::list:
    return node.items.empty();
  case Node::Kind::map:
    return node.entries.empty();
  }
  return true;
}

std::string of(const std::string &path) { return path.empty() ? std::string{} : fmt::format(" of {}", path); }
std::string below(const std::string &path, std::string_view name) {
  return path.empty() ? std::string(name) : fmt::format("{} {}", path, name);
}

/// {length: 18,0 m} reads as a length of 18 and a key "0 m" with nothing in it.
bool splits_a_number(const Node::Entry &before, const Node::Entry &entry) {
  const auto digit = [](char c) { return c >= '0' && c <= '9'; };
  const auto &text = before.value.text;
  return entry.value.kind == Node::Kind::empty && digit(entry.key.front()) && !text.empty() &&
         digit(text.back()) && before.value.span.line == entry.key_span.line &&
         before.value.span.column + before.value.span.length + 1 == entry.key_span.column;
}

} // namespace

FieldReader::FieldReader(Reading &reading, const Node &map, base::SourceSpan where, std::string path)
    : reading_(reading), map_(map), where_(std::move(where)), path_(std::move(path)),
      outer_source_(reading.source) {}

FieldReader::~FieldReader() { reading_.source = std::move(outer_source_); }

const Node::Entry *FieldReader::take(const Key &key, std::string_view example) {
  known_.emplace_back(key.name);
  const auto found = std::find_if(map_.entries.begin(), map_.entries.end(),
                                  [&](const Node::Entry &entry) { return entry.key == key.name; });
  const std::string help(key.help),
      write = fmt::format("{}: {}", key.name, example.empty() ? "..." : example);
  if (found == map_.entries.end()) {
    if (key.need == Need::required)
      reading_.error(Code::missing_key, where_, fmt::format("{}{} is missing", key.name, of(path_)), help,
                     write);
    return nullptr;
  }
  if (nothing_in(found->value)) {
    reading_.error(Code::empty_value, found->key_span,
                   fmt::format("{}{} has nothing in it", key.name, of(path_)), help,
                   key.need == Need::required ? write : "a value, or leave the key out");
    return nullptr;
  }
  return &*found;
}

void FieldReader::refuse_unknown_keys() {
  for (std::size_t i = 0; i < map_.entries.size(); ++i) {
    const auto &entry = map_.entries[i];
    if (std::find(known_.begin(), known_.end(), entry.key) != known_.end())
      continue;
    if (i > 0 && splits_a_number(map_.entries[i - 1], entry)) {
      const auto &whole = map_.entries[i - 1].value.text;
      reading_.error(
          Code::bad_number, entry.key_span,
          fmt::format("\"{},{}\" is written with a decimal comma, which ends a value here", whole, entry.key),
          "a decimal point", fmt::format("{}.{}", whole, entry.key));
      continue;
    }
    const auto near = base::nearest(entry.key, known_);
    reading_.error(
        Code::unknown_key, entry.key_span,
        fmt::format("\"{}\" is not a key{}", entry.key, path_.empty() ? " of a survey" : of(path_)),
        fmt::format("one of: {}", base::joined(known_, ", ")),
        near ? fmt::format("{}:", *near) : std::string{});
  }
}

void FieldReader::leaf(const Key &key, const Shape &shape, const Store &store) {
  const auto *entry = take(key, shape.example);
  if (!entry)
    return;
  if (!key.choices.empty() && entry->value.kind == Node::Kind::scalar) {
    const auto choices = split_choices(key.choices);
    if (std::find(choices.begin(), choices.end(), entry->value.text) == choices.end())
      return reading_.unknown_word(entry->value.span, entry->value.text, "a word that is known here",
                                   choices);
  }
  store(reading_, entry->value);
}

void FieldReader::inherited_source(const Key &key) {
  if (const auto *entry = take(key, "told, owner"))
    reading_.source = read_source(reading_, entry->value);
}

void FieldReader::place_of(std::string_view name, base::SourceSpan &into) {
  const auto *value = map_.find(name);
  into = value ? value->span : where_;
}

void FieldReader::check(const Check &check) { check(reading_, map_, where_); }

bool FieldReader::is_map(const Node &node, std::string_view expected) {
  if (node.kind == Node::Kind::map)
    return true;
  reading_.error(Code::wrong_kind, node.span, fmt::format("{} stands where a map belongs", kind_words(node)),
                 std::string(expected));
  return false;
}

void FieldReader::map(const Key &key, const Body &body) {
  const auto *entry = take(key, {});
  if (!entry || !is_map(entry->value, key.help))
    return;
  FieldReader inner(reading_, entry->value, entry->key_span, below(path_, key.name));
  body(inner, entry->key_span);
  inner.refuse_unknown_keys();
}

void FieldReader::element(const Node &map, const base::SourceSpan &where, const std::string &path,
                          const std::string &id, const Elements &elements) {
  FieldReader inner(reading_, map, where, path);
  elements.add(inner, {id, where});
  inner.refuse_unknown_keys();
}

void FieldReader::list(const Key &key, bool one_will_do, const Elements &elements) {
  const auto *entry = take(key, {});
  if (!entry)
    return;
  const auto path = below(path_, key.name);
  if (one_will_do && entry->value.kind == Node::Kind::map)
    return element(entry->value, entry->key_span, path, {}, elements);
  if (entry->value.kind != Node::Kind::list) {
    reading_.error(Code::wrong_kind, entry->value.span,
                   fmt::format("{} stands where a list belongs", kind_words(entry->value)),
                   std::string(key.help), "- ...");
    return;
  }
  for (const auto &item : entry->value.items)
    if (is_map(item, key.help))
      element(item, item.span, path, {}, elements);
}

void FieldReader::named(const Key &key, Ids ids, const Elements &elements) {
  const auto *entry = take(key, {});
  if (!entry || !is_map(entry->value, key.help))
    return;
  for (const auto &one : entry->value.entries) {
    if (ids.names)
      reading_.references.push_back({*ids.names, one.key, one.key_span});
    else if (!fits(ids.form, one.key))
      reading_.error(Code::unknown_word, one.key_span,
                     fmt::format("\"{}\" cannot name one of the {}", one.key, key.name),
                     std::string(in_words(ids.form)), std::string(example_of(ids.form)));
    if (elements.first_look && elements.first_look(reading_, one.key, one.value, one.key_span))
      continue;
    if (one.value.kind == Node::Kind::empty)
      reading_.error(Code::empty_value, one.key_span,
                     fmt::format("{}{} has nothing in it", one.key, of(std::string(key.name))),
                     std::string(key.help));
    else if (is_map(one.value, key.help))
      element(one.value, one.key_span, below(below(path_, key.name), one.key), one.key, elements);
  }
}

} // namespace strakebook::survey

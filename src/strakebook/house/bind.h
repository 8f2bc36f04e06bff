#pragma once

#include <functional>
#include <string_view>
#include <vector>

#include "strakebook/house/values.h"

/// One table a map: which keys it may hold, which it must, and where each value goes.
namespace strakebook::house {

struct Field {
  std::string_view key;
  bool needed = false;
  std::function<void(const YamlNode &)> take;
};

class Binding {
public:
  explicit Binding(Diagnostics &sink) : sink_(sink) {}

  template <class T> Binding &need(std::string_view key, T &into) { return add(key, true, into); }
  template <class T> Binding &may(std::string_view key, T &into) { return add(key, false, into); }
  template <class E> Binding &need_word(std::string_view key, E &into, std::span<const Choice<E>> choices) {
    return by(key, true,
              [&into, choices, this](const YamlNode &n) { read_choice<E>(n, into, choices, sink_); });
  }
  template <class E> Binding &may_word(std::string_view key, E &into, std::span<const Choice<E>> choices) {
    return by(key, false,
              [&into, choices, this](const YamlNode &n) { read_choice<E>(n, into, choices, sink_); });
  }
  Binding &by(std::string_view key, bool needed, std::function<void(const YamlNode &)> take) {
    fields_.push_back({key, needed, std::move(take)});
    return *this;
  }
  /// A key that is known here and read elsewhere.
  Binding &known(std::string_view key) {
    return by(key, false, [](const YamlNode &) {});
  }

  /// Reads every entry of the map by its field; reports unknown keys (with the nearest) and keys that are
  /// missing.
  bool apply(const YamlNode &node) const;

private:
  template <class T> Binding &add(std::string_view key, bool needed, T &into) {
    return by(key, needed, [&into, this](const YamlNode &n) { read(n, into, sink_); });
  }

  Diagnostics &sink_;
  std::vector<Field> fields_;
};

/// Calls `take` for every entry of a map; reports when it is none.
void each_entry(const YamlNode &node, Diagnostics &sink,
                const std::function<void(const YamlNode::Entry &)> &take);

/// The entries of a map in their order, those with `after: NAME` moved to behind the entry that they name.
std::vector<const YamlNode::Entry *> in_order(const YamlNode &node, Diagnostics &sink);

/// `text` if `known` gives it; otherwise reports an unknown word at `at`.
template <class Map>
bool known_in(const Map &known, std::string_view text, std::string_view what, const base::SourceSpan &at,
              Diagnostics &sink) {
  if (known.find(std::string(text)) != known.end())
    return true;
  refuse_unknown(sink, base::Code::unknown_word, at, text, what, names_of(known));
  return false;
}

} // namespace strakebook::house

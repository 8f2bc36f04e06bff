#include "strakebook/paper/style/style.h"

#include <stdexcept>

namespace strakebook::style {
namespace {

template <class T>
const T &found(const std::map<std::string, T> &table, std::string_view name, std::string_view kind) {
  // std::map<std::string, ...> without a transparent comparison: the look-up needs a string.
  const auto it = table.find(std::string(name));
  if (it == table.end())
    throw std::out_of_range("the layout has no " + std::string(kind) + " named \"" + std::string(name) +
                            "\"");
  return it->second;
}

} // namespace

const TextStyle &text_style(const Style &style, std::string_view name) {
  return found(style.text, name, "text style");
}

const MeaningStyle &meaning_style(const Style &style, std::string_view name) {
  return found(style.meanings, name, "meaning");
}

const Tone &tone(const Style &style, std::string_view name) { return found(style.tones, name, "tone"); }

const TableStyle &table_style(const Style &style, std::string_view name) {
  return found(style.tables, name, "table style");
}

const KeyStyle &key_style(const Style &style, std::string_view name) {
  return found(style.keys, name, "key style");
}

const Lattice &lattice(const Style &style, std::string_view name) {
  return found(style.lattices, name, "lattice");
}

const PageMaster &master(const Style &style, std::string_view name) {
  return found(style.masters, name, "page master");
}

Pt measure(const Style &style, std::string_view name) { return found(style.measures, name, "measure"); }

Pt body_width(const PageMaster &master) { return master.sheet.width - master.left - master.right; }

Pt body_height(const PageMaster &master) { return master.sheet.height - master.top - master.bottom; }

} // namespace strakebook::style

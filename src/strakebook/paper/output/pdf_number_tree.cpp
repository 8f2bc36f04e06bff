#include "strakebook/paper/output/pdf_number_tree.h"

#include <algorithm>
#include <fmt/format.h>

namespace strakebook::output {

namespace {

using Entries = std::vector<std::pair<std::string, std::string>>; // keys in PDF syntax

/// Well within the sizes that readers accept.
constexpr std::size_t leaf_size = 256;

PdfDict tree(PdfFile &file, const char *list, const Entries &entries) {
  auto leaves = file.array();
  for (std::size_t first = 0; first < entries.size(); first += leaf_size) {
    const auto last = std::min(first + leaf_size, entries.size());
    std::string text;
    for (auto i = first; i < last; ++i)
      text += entries[i].first + " " + entries[i].second + "\n";
    auto leaf = file.indirect_dict();
    leaf.entries(fmt::format("/Limits [{} {}]\n/{} [{}]\n", entries[first].first, entries[last - 1].first, list, text));
    leaves.put(leaf);
  }
  return file.indirect_dict().put("Kids", leaves);
}

} // namespace

PdfDict number_tree(PdfFile &file, const std::vector<std::string> &values) {
  Entries entries;
  for (std::size_t i = 0; i < values.size(); ++i)
    entries.emplace_back(std::to_string(i), values[i]);
  return tree(file, "Nums", entries);
}

PdfDict name_tree(PdfFile &file, const std::vector<std::pair<std::string, std::string>> &named) {
  Entries entries;
  for (const auto &[name, value] : named)
    entries.emplace_back("(" + name + ")", value);
  return tree(file, "Names", entries);
}

} // namespace strakebook::output

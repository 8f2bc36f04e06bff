#include "strakebook/report/figures.h"

#include <utility>

namespace strakebook {

namespace {

struct InlineWords {
  std::string operator()(const content::Text &text) const { return text.text; }
  std::string operator()(const content::Reference &reference) const { return reference.shown; }
  std::string operator()(const content::Sign &sign) const { return sign.spoken; }
  std::string operator()(const content::LineBreak &) const { return " "; }
};

std::string words_of(const content::Inlines &text) {
  std::string words;
  for (const auto &part : text) words += std::visit(InlineWords{}, part);
  return words;
}

/// Two texts with a blank between, where both say something.
std::string both(std::string a, const std::string &b) {
  if (!a.empty() && !b.empty()) a += ' ';
  return std::move(a) + b;
}

class Finder {
public:
  explicit Finder(const std::map<std::string, std::string> &names) : names_(names) {}

  void walk(const std::vector<content::Block> &blocks) {
    for (const auto &block : blocks)
      std::visit([&](const auto &what) { visit(block.id, what); }, block.what);
  }
  std::vector<Figure> finished() { return std::move(found_); }

private:
  void add(Figure figure) {
    if (!figure.id.empty()) found_.push_back(std::move(figure));
  }

  void visit(const std::string &id, const content::Figure &figure) {
    Figure whole{.id = id, .label = figure.label, .ids = {id}, .spoken = words_of(figure.caption)};
    std::vector<Figure> panels;
    for (const auto &panel : figure.panels) {
      whole.ids.push_back(panel.id);
      whole.spoken = both(std::move(whole.spoken), panel.drawing.spoken);
      panels.push_back({.id = panel.id, .ids = {panel.id}, .spoken = panel.drawing.spoken, .drawn = true});
    }
    std::erase(whole.ids, "");
    add(std::move(whole));
    for (auto &panel : panels) add(std::move(panel));
  }

  void visit(const std::string &id, const content::Photo &photo) {
    const auto name = names_.find(id);
    add({.id = id, .label = name == names_.end() ? "" : name->second, .ids = {id}, .spoken = words_of(photo.caption)});
  }

  void visit(const std::string &, const content::Columns &columns) {
    for (const auto &cell : columns.cells) walk(cell);
  }
  void visit(const std::string &, const content::Together &together) { walk(together.blocks); }
  template <class T> void visit(const std::string &, const T &) {}

  const std::map<std::string, std::string> &names_;
  std::vector<Figure> found_;
};

} // namespace

std::vector<Figure> figures_of(const content::Document &document) {
  Finder finder(document.names);
  for (const auto &section : document.sections) finder.walk(section.blocks);
  return finder.finished();
}

} // namespace strakebook

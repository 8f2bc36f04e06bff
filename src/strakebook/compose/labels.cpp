#include "strakebook/compose/labels.h"

namespace strakebook::compose {

namespace {

using Names = std::map<std::string, std::string>;

struct Collector {
  const Scope &scope;
  Names names;

  void put(const std::string &id, const std::string &name) {
    if (!id.empty() && !name.empty())
      names.emplace(id, name);
  }

  void walk(const std::vector<content::Block> &blocks) {
    for (const auto &one : blocks)
      std::visit([&](const auto &what) { visit(one.id, what); }, one.what);
  }

  void visit(const std::string &id, const content::Heading &heading) {
    if (!heading.number.empty())
      put(id, scope.say("voice.section", {{"n", heading.number}}));
  }

  void visit(const std::string &id, const content::Table &table) {
    put(id, table.label);
    for (const auto &group : table.groups) {
      put(group.id, table.label);
      for (const auto &row : group.rows)
        put(row.id, table.label);
    }
  }

  void visit(const std::string &id, const content::Figure &figure) {
    put(id, figure.label);
    for (const auto &panel : figure.panels)
      put(panel.id, figure.label);
  }

  void visit(const std::string &id, const content::Photo &photo) {
    put(id, scope.say("voice.photo", {{"n", photo.number}}));
  }

  void visit(const std::string &, const content::Columns &columns) {
    for (const auto &cell : columns.cells)
      walk(cell);
  }

  void visit(const std::string &, const content::Together &together) { walk(together.blocks); }

  template <class T> void visit(const std::string &, const T &) {}
};

void put_items(Collector &to, const survey::Survey &survey) {
  for (const auto &item : survey.recommendations)
    to.put(item_id(item.id), to.scope.say("voice.item", {{"n", item.id}}));
  for (const auto &one : survey.limitations)
    to.put(limitation_id(one.id), to.scope.say("voice.limitation", {{"n", one.id}}));
}

} // namespace

Names names_of(const Scope &scope, const std::vector<content::Section> &sections) {
  Collector to{scope, {}};
  put_items(to, scope.survey());
  for (const auto &section : sections)
    to.walk(section.blocks);
  return std::move(to.names);
}

} // namespace strakebook::compose

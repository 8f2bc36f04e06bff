#include "strakebook/compose/afloat.h"
#include "strakebook/compose/chapters.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/tables.h"

/// Schedule of steelwork: what a yard prices. A repair outline, not a design.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

/// Lines of a cell: each written answer under its own word, unwritten ones left out.
struct Lines {
  const Scope &scope;
  Inlines text;

  void put(Inlines more) {
    if (!text.empty())
      text.emplace_back(content::LineBreak{});
    text = std::move(text) + std::move(more);
  }
  void put(const survey::Words &words) {
    if (words.given())
      put(prose(scope, words.text));
  }
  void put(std::string label, const survey::Words &words) {
    if (words.given())
      put(content::soft(std::move(label) + " ") + prose(scope, words.text));
  }
};

Inlines place_and_size(const Scope &scope, const survey::SteelworkItem &item) {
  Lines lines{scope, plain(reach_words(scope, item.at))};
  lines.put(scope.say("steelwork.frame"), item.nearest_frame);
  lines.put(scope.say("steelwork.tolerance"), item.tolerance);
  lines.put(scope.say("steelwork.size"), item.size);
  lines.put(scope.say("steelwork.corners"), item.corners);
  lines.put(scope.say("steelwork.lap"), item.lap);
  return lines.text;
}

Inlines weld_and_preparation(const Scope &scope, const survey::SteelworkItem &item) {
  Lines lines{scope, {}};
  lines.put(item.weld);
  lines.put(scope.say("steelwork.plugs"), item.plugs);
  lines.put(scope.say("steelwork.preparation"), item.preparation);
  lines.put(scope.say("steelwork.lining"), item.lining);
  lines.put(scope.say("steelwork.coating"), item.coating);
  return lines.text.empty() ? not_given(scope) : lines.text;
}

Inlines test_and_hold(const Scope &scope, const survey::SteelworkItem &item) {
  Lines lines{scope, {}};
  if (item.hold_point.given())
    lines.put(scope.tell("steelwork.hold", {{"hold", prose(scope, item.hold_point.text)}}));
  lines.put(scope.say("steelwork.test"), item.test);
  return lines.text.empty() ? not_given(scope) : lines.text;
}

content::Row item_row(const Scope &scope, const survey::SteelworkItem &item) {
  Inlines number = content::strong(item.id);
  if (!item.recommendation.empty()) {
    number.emplace_back(content::LineBreak{});
    number = number + link(item_id(item.recommendation),
                           scope.say("steelwork.for-item", {{"item", item.recommendation}}));
  }
  return row({cell(std::move(number)), cell(action_name(scope, item.action)),
              cell(place_and_size(scope, item)), cell(answer_to(scope, item.plate)),
              cell(weld_and_preparation(scope, item)), cell(test_and_hold(scope, item))},
             steelwork_id(item.id), item.span);
}

content::Block schedule(const Scope &scope, Numbering &numbering) {
  auto table =
      labelled_table(scope, numbering, look::steelwork_table,
                     scope.tell("steelwork.caption", {{"from", answer_to(scope, scope.survey().datum.from)}}),
                     {column(scope.say("steelwork.item")), column(scope.say("steelwork.kind")),
                      stretching(scope.say("steelwork.place")), column(scope.say("steelwork.plate")),
                      stretching(scope.say("steelwork.weld")), stretching(scope.say("steelwork.hold-head"))});
  std::vector<content::Row> rows;
  for (const auto &item : scope.survey().steelwork) {
    rows.push_back(item_row(scope, item));
    rows.back().rule_after = true;
  }
  add_rows(table, std::move(rows));
  return block(std::move(table), "table/steelwork");
}

} // namespace

content::Section steelwork(const Scope &scope) {
  auto out = section_of(scope);
  Numbering numbering;
  if (scope.survey().steelwork.empty())
    out.blocks.push_back(paragraph(plain(scope.say("steelwork.none")), look::text));
  else
    out.blocks.push_back(schedule(scope, numbering));
  out.blocks.push_back(afloat_table(scope, numbering));
  return out;
}

} // namespace strakebook::compose

#include <algorithm>

#include "strakebook/compose/looks.h"
#include "strakebook/compose/steelwork_parts.h"
#include "strakebook/compose/tables.h"

/// The table of the schedule: what was written, and under it what follows from the figures.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

/// An item as written and as reckoned.
struct Entry {
  const survey::SteelworkItem &written;
  const works::Item &item;
};

/// Lines of a cell: each answer under its own word, what there is none of left out.
struct Lines {
  const Scope &scope;
  Inlines text;

  void put(Inlines more) {
    if (more.empty()) return;
    if (!text.empty()) text.emplace_back(content::LineBreak{});
    text = std::move(text) + std::move(more);
  }
  void put(const survey::Words &words) {
    if (words.given()) put(prose(scope, words.text));
  }
  void put(const std::string &label, Inlines answer) {
    if (!answer.empty()) put(content::soft(label + " ") + std::move(answer));
  }
  void put(const std::string &label, const survey::Words &words) {
    if (words.given()) put(label, prose(scope, words.text));
  }
};

/// What is written, a figure first, then the words; empty where neither is.
Inlines figure_and_words(const Scope &scope, std::string figure, const survey::Words &words) {
  Inlines out = figure.empty() ? Inlines{} : plain(std::move(figure));
  if (!words.given()) return out;
  if (!out.empty()) out = std::move(out) + plain("; ");
  return std::move(out) + prose(scope, words.text);
}

std::string written(const std::optional<base::Measured> &length) { return length ? untorn(as_written(*length)) : std::string(); }

std::string size_text(const Scope &scope, const survey::SteelworkItem &item) {
  if (!item.length || !item.breadth) return written(item.length ? item.length : item.breadth);
  return scope.say("works.size", {{"length", written(item.length)}, {"breadth", written(item.breadth)}});
}

std::string radius_text(const Scope &scope, const survey::SteelworkItem &item) {
  if (!item.radius) return {};
  return item.radius->value == Length{} ? scope.say("works.square") : scope.say("works.radius", {{"radius", written(item.radius)}});
}

Inlines place_and_size(const Scope &scope, const Entry &entry) {
  const auto &item = entry.written;
  Lines lines{scope, plain(reach_words(scope, item.at))};
  const bool at_a_point = item.at.from && item.at.to && item.at.from->value == item.at.to->value;
  if (entry.item.frame && at_a_point) lines.put(plain(frame_text(scope, *entry.item.frame)));
  else if (entry.item.frame) lines.put(scope.say("works.middle"), plain(frame_text(scope, *entry.item.frame)));
  lines.put(scope.say("steelwork.frame"), item.nearest_frame);
  lines.put(scope.say("steelwork.tolerance"), item.tolerance);
  lines.put(scope.say("steelwork.size"), figure_and_words(scope, size_text(scope, item), item.size));
  lines.put(scope.say("steelwork.corners"), figure_and_words(scope, radius_text(scope, item), item.corners));
  lines.put(scope.say("steelwork.lap"), figure_and_words(scope, written(item.lap_width), item.lap));
  return lines.text;
}

std::string weight_text(const Scope &scope, const works::Item &item) {
  if (!item.weight_kg) return {};
  const base::Fill in{"in", tied(rounded(*item.weight_kg, 1), "kg")};
  if (!item.removed_kg || !item.net_kg) return scope.say("works.weight", {in});
  return scope.say("works.weight-insert", {in, {"out", tied(rounded(*item.removed_kg, 1), "kg")},
                                           {"net", tied(with_sign(rounded(*item.net_kg, 1)), "kg")}});
}

Inlines plate_and_weight(const Scope &scope, const Entry &entry) {
  Lines lines{scope, {}};
  lines.put(figure_and_words(scope, written(entry.written.thickness), entry.written.plate));
  if (entry.item.plate_m2) lines.put(plain(scope.say("works.m2", {{"m2", rounded(*entry.item.plate_m2, 2)}})));
  if (const auto weight = weight_text(scope, entry.item); !weight.empty()) lines.put(plain(weight));
  return lines.text.empty() ? not_given(scope) : lines.text;
}

std::string plugs_text(const Scope &scope, const Entry &entry) {
  const std::string pitch = written(entry.written.plug_pitch);
  if (!entry.item.plugs) return pitch.empty() ? std::string() : scope.say("works.pitch", {{"pitch", pitch}});
  const auto &plugs = *entry.item.plugs;
  return scope.say("works.plugs", {{"along", std::to_string(plugs.along)}, {"across", std::to_string(plugs.across)},
                                   {"n", std::to_string(plugs.count())}, {"pitch", pitch}});
}

Inlines weld_and_preparation(const Scope &scope, const Entry &entry) {
  const auto &item = entry.written;
  Lines lines{scope, {}};
  lines.put(item.weld);
  if (entry.item.weld_m && entry.item.adds_steel)
    lines.put(plain(scope.say("works.edge", {{"m", tied(rounded(*entry.item.weld_m, 2), "m")}})));
  lines.put(scope.say("steelwork.plugs"), figure_and_words(scope, plugs_text(scope, entry), item.plugs));
  lines.put(scope.say("steelwork.preparation"), item.preparation);
  lines.put(scope.say("steelwork.lining"), item.lining);
  lines.put(scope.say("steelwork.coating"), item.coating);
  return lines.text.empty() ? not_given(scope) : lines.text;
}

Inlines in_strong(Inlines text) {
  for (auto &one : text) {
    if (auto *run = std::get_if<content::Text>(&one)) run->emphasis = content::Emphasis::strong;
    if (auto *reference = std::get_if<content::Reference>(&one)) reference->emphasis = content::Emphasis::strong;
  }
  return text;
}

Inlines test_and_hold(const Scope &scope, const survey::SteelworkItem &item) {
  Lines lines{scope, {}};
  if (item.hold_point.given())
    lines.put(in_strong(scope.tell("steelwork.hold", {{"hold", prose(scope, item.hold_point.text)}})));
  lines.put(scope.say("steelwork.test"), item.test);
  return lines.text.empty() ? not_given(scope) : lines.text;
}

content::Row item_row(const Scope &scope, const Entry &entry) {
  const auto &item = entry.written;
  Inlines number = content::strong(item.id);
  if (!item.recommendation.empty()) {
    number.emplace_back(content::LineBreak{});
    number = number + link(item_id(item.recommendation), scope.say("steelwork.for-item", {{"item", item.recommendation}}));
  }
  return row({cell(std::move(number)), cell(action_name(scope, item.action)), cell(place_and_size(scope, entry)),
              cell(plate_and_weight(scope, entry)), cell(weld_and_preparation(scope, entry)), cell(test_and_hold(scope, item))},
             steelwork_id(item.id), item.span);
}

} // namespace

std::string station_text(const Scope &scope, Length station) {
  std::string text = in_station_unit(scope, station, 2);
  while (text.ends_with("0")) text.pop_back();
  if (text.ends_with(".")) text.pop_back();
  return text;
}

std::string frame_text(const Scope &scope, const works::NearestFrame &frame) {
  const base::Fill number{"n", with_minus(std::to_string(frame.number))};
  if (frame.off == Length{}) return scope.say("works.frame-at", {number});
  const bool forward = (frame.off > Length{}) == survey::counts_forward(scope.survey().datum);
  const base::Fill off{"off", unit_mm(scope, base::mm_text(frame.off < Length{} ? -frame.off : frame.off, 0))};
  return forward ? scope.say("works.frame-forward", {number, off}) : scope.say("works.frame-aft", {number, off});
}

content::Block schedule(const Scope &scope, Numbering &numbering) {
  auto table = labelled_table(scope, numbering, look::steelwork_table,
                              scope.tell("steelwork.caption", {{"from", answer_to(scope, scope.survey().datum.from)}}),
                              {column(scope.say("steelwork.item")), column(scope.say("steelwork.kind")),
                               stretching(scope.say("steelwork.place")), stretching(scope.say("steelwork.plate")),
                               stretching(scope.say("steelwork.weld")), stretching(scope.say("steelwork.hold-head"))});
  std::vector<content::Row> rows;
  const auto &written = scope.survey().steelwork;
  for (std::size_t i = 0; i < written.size(); ++i) {
    rows.push_back(item_row(scope, {written[i], scope.outlook().works.items.at(i)}));
    rows.back().rule_after = true;
  }
  add_rows(table, std::move(rows));
  return block(std::move(table), "table/steelwork");
}

} // namespace strakebook::compose

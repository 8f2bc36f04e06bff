#include "strakebook/compose/results_readings.h"

#include <algorithm>
#include <map>

#include "strakebook/compose/tables.h"
#include "strakebook/compose/told.h"

/// The readings table: every planned mark once, in the order of the map.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

constexpr int stations_between_rules = 5;

Inlines group_head(const Scope &scope, const RowView &view) {
  const std::string nominal = unit_mm(scope, base::mm_exact(view.zone.original.nominal.value, 0));
  const base::Fill plate{"plate", nominal + told_sign(scope, view.told)};
  std::string about = view.weak ? scope.say("results.group-weak", {plate}) : scope.say("results.group", {plate});
  if (view.limit)
    about += scope.say("results.group-limit", {{"limit", limit_name(scope, view.limit->criterion, view.limit->remaining) + told_sign(scope, view.limit->told)}});
  return content::strong(view.row.id) + plain("  " + row_words(scope, view.row.id)) + content::soft("   " + about);
}

std::string how_reduced(const Scope &scope) {
  bool least = false, mean = false;
  for (const auto &mark : scope.survey().marks)
    (mark.reduce == survey::Reduction::mean_of_repeats ? mean : least) = true;
  if (!mean) return scope.say("results.by-least");
  return least ? scope.say("results.by-either") : scope.say("results.by-mean");
}

/// How many of the readings are indicative, and what the low side is.
std::vector<Inlines> low_notes(const Scope &scope, bool low) {
  std::vector<Inlines> notes;
  const auto indicative = std::ranges::count_if(scope.assessment().marks, &assess::MarkResult::indicative);
  if (indicative > 0)
    notes.push_back(scope.tell("results.indicative-note", {{"n", plain(std::to_string(indicative))},
                                                           {"page", page_link(section_id("instruments"))}}));
  if (low) notes.push_back(plain(scope.say("results.low-note")));
  return notes;
}

Inlines share_note(const Scope &scope) {
  std::vector<std::string> named;
  bool weak = false;
  for (const auto &zone : scope.survey().zones) {
    weak = weak || assess::zone_result(scope.assessment(), zone.id).weak_basis;
    for (const auto &id : zone.original.tolerances)
      if (std::ranges::find(named, id) == named.end()) named.push_back(id);
  }
  std::string text = named.empty() ? scope.say("results.share-note-bare")
                                   : scope.say("results.share-note", {{"tolerance", join_and(scope, named)}});
  if (weak) text += " " + scope.say("results.share-weak");
  return plain(text);
}

/// The group of a row: what it is and each of its marks.
content::RowGroup group_of(const Scope &scope, const ReadingsView &table, const RowView &row, const std::vector<std::size_t> &marks, bool narrow) {
  content::RowGroup group{.head = group_head(scope, row), .id = "row/" + row.row.id, .rows = {}};
  for (const std::size_t i : marks) {
    const MarkView view{table, row, scope.survey().marks[i], scope.assessment().marks[i]};
    group.rows.push_back(narrow ? narrow_row(scope, view) : wide_row(scope, view));
    group.rows.back().rule_after = group.rows.size() % stations_between_rules == 0;
  }
  return group;
}

content::Table empty_table(const Scope &scope, Numbering &numbering, const ReadingsView &view, bool narrow) {
  if (narrow) return labelled_table(scope, numbering, "readings-abreast", scope.tell("results.readings-narrow-caption"), narrow_columns(scope, view));
  return labelled_table(scope, numbering, "readings", scope.tell("results.readings-caption", {{"how", plain(how_reduced(scope))}}), wide_columns(scope, view));
}

} // namespace

content::Block readings_table(const Scope &scope, Numbering &numbering) {
  const ReadingsView view(scope);
  const bool narrow = may_be_narrow(scope, view);
  auto table = empty_table(scope, numbering, view, narrow);
  bool any_told = false;
  std::map<std::string, std::vector<std::size_t>> marks;
  for (std::size_t i = 0; i < scope.survey().marks.size(); ++i) marks[scope.survey().marks[i].row].push_back(i);
  for (const auto &one : scope.survey().rows) {
    const auto &zone = survey::zone_of_row(scope.survey(), one.id);
    const auto &result = assess::zone_result(scope.assessment(), zone.id);
    const RowView row{one, zone, main_limit(scope, zone.id), result.weak_basis, result.told};
    any_told = any_told || row.told || (row.limit && row.limit->told);
    auto group = group_of(scope, view, row, marks[one.id], narrow);
    if (!group.rows.empty()) table.groups.push_back(std::move(group));
  }
  table.notes = {share_note(scope) + plain(" " + scope.say("results.section-note"))};
  if (view.cited) table.notes.push_back(plain(scope.say("results.item-note")));
  if (view.with_units) table.notes.push_back(plain(scope.say("results.units-note")));
  for (auto &note : low_notes(scope, view.low)) table.notes.push_back(std::move(note));
  if (any_told) table.notes.push_back(told_legend(scope));
  return block(std::move(table), "table/readings");
}

} // namespace strakebook::compose

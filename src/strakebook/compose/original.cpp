#include <algorithm>

#include "strakebook/compose/chapters.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/sketch.h"
#include "strakebook/compose/tables.h"
#include "strakebook/compose/thickness.h"

/// Original thickness: what is assumed of each zone, on what basis, and over which interval.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

std::string interval(const Scope &scope, const survey::Zone &zone) {
  const auto drawn = drawn_original(scope, zone);
  if (!drawn.has_interval) return scope.say("original.no-interval");
  return scope.say("original.interval", {{"low", base::mm_exact(drawn.thinnest, 2)}, {"high", base::mm_exact(drawn.thickest, 2)}});
}

content::Block zones_table(const Scope &scope, Numbering &numbering) {
  const std::string mm = scope.say("voice.mm");
  auto table = labelled_table(scope, numbering, "plain", scope.tell("original.caption"),
                              {column(scope.say("original.zone")), column(scope.say("original.nominal"), Align::decimal, mm),
                               column(scope.say("original.basis")), stretching(scope.say("original.source")),
                               column(scope.say("original.tolerance")), column(scope.say("original.as-delivered"), Align::right, mm)});
  std::vector<content::Row> rows;
  for (const auto &zone : scope.survey().zones)
    rows.push_back(row({cell(content::strong(zone.name.text)), cell(zone.original.nominal.raw), cell(zone.original.basis),
                        cell(answer_to(scope, zone.original.source)),
                        zone.original.tolerance.empty() ? cell(scope.say("original.none-named")) : cell(zone.original.tolerance),
                        cell(interval(scope, zone))},
                       original_id(zone.id), zone.original.span));
  add_rows(table, std::move(rows));
  for (const auto &[id, tolerance] : scope.policy().tolerances)
    if (std::ranges::any_of(scope.survey().zones, [&](const survey::Zone &zone) { return zone.original.tolerance == id; }))
      table.notes.push_back(plain(tolerance.verified
                                      ? scope.say("original.tolerance-source", {{"tolerance", id}, {"source", tolerance.source}})
                                      : scope.say("original.tolerance-unseen", {{"tolerance", id}, {"source", tolerance.source}})));
  return block(std::move(table), "table/original");
}

std::string state_of(const Scope &scope, const assess::Nominal &nominal) {
  switch (nominal.state) {
  case assess::Nominal::State::alive: return scope.say("original.alive");
  case assess::Nominal::State::excluded: return scope.say("original.excluded");
  case assess::Nominal::State::set_aside: return scope.say("original.set-aside");
  }
  return {};
}

/// A bar for each plate size over its delivery interval, the zone's readings as dots on the same axis.
content::Drawing which_fits(const Scope &scope, const survey::Zone &zone, const assess::ZoneResult &result) {
  Drawing out;
  const int lanes = static_cast<int>(result.nominals.size());
  out.y0 = -1;
  out.y1 = lanes;
  out.y = {content::Scale::Rule::named, "nominal-row"};
  out.x0 = mm_of(*result.min);
  out.x1 = mm_of(*result.max);
  int lane = lanes - 1;
  for (const auto &one : result.nominals) {
    const double low = mm_of(one.lower.value_or(one.nominal)), high = mm_of(one.upper.value_or(one.nominal));
    out.x0 = std::min(out.x0, low);
    out.x1 = std::max(out.x1, high);
    add_line(out, {{low, lane + 0.35}, {high, lane + 0.35}}, "nominal-range");
    const std::string name = scope.say("original.size", {{"mm", base::mm_exact(one.nominal, 0)}, {"state", state_of(scope, one)}});
    add_label(out, {low, lane + 0.5}, one.state == assess::Nominal::State::alive ? content::strong(name) : plain(name),
              content::Anchor::left, content::Level::above);
    --lane;
  }
  for (std::size_t i = 0; i < scope.survey().marks.size(); ++i)
    if (const auto &mark = scope.assessment().marks[i];
        mark.used && survey::zone_of_row(scope.survey(), scope.survey().marks[i].row).id == zone.id)
      add_spot(out, {mm_of(mark.remaining), -0.5}, "mark");
  add_line(out, {{mm_of(*result.max), -0.8}, {mm_of(*result.max), static_cast<double>(lanes)}}, "pit-line");
  content::Axis axis{.side = content::Axis::Side::bottom, .at = -1, .ticks = {}, .numbers = {}, .title = {}, .line = true};
  for (int mm = static_cast<int>(out.x0); mm <= static_cast<int>(out.x1) + 1; ++mm) {
    axis.ticks.push_back(mm);
    axis.numbers.emplace_back(mm, std::to_string(mm));
  }
  out.x0 = axis.ticks.front();
  out.x1 = axis.ticks.back();
  out.pad_left = "nominal-pad";
  out.pad_right = "nominal-right";
  out.pad_bottom = "profile-bottom";
  out.elements.emplace_back(std::move(axis));
  return out;
}

std::vector<content::Block> weak_zone(const Scope &scope, Numbering &numbering, const survey::Zone &zone, const assess::ZoneResult &result) {
  std::vector<content::Block> out = {item_heading(scope.say("original.weak-title", {{"zone", zone.name.text}}))};
  out.push_back(paragraph(plain(scope.say("original.weak", {{"basis", zone.original.basis}})), look::text));
  append(out, paragraphs(scope, zone.original.assumption, look::text));
  if (result.nominals.empty() || !result.min) return out;
  content::Figure figure;
  figure.label = next_figure(scope, numbering);
  figure.caption = scope.tell("original.fits-caption", {{"zone", plain(zone.name.text)}, {"max", plain(unit_mm(scope, base::mm_exact(*result.max, 1)))}});
  figure.panels.push_back({{}, {}, which_fits(scope, zone, result), "figure/original/" + zone.id});
  out.push_back(block(std::move(figure)));
  if (result.alive_low && result.alive_high)
    out.push_back(paragraph(plain(scope.say("original.range", {{"low", percent(scope, *result.alive_low)}, {"high", percent(scope, *result.alive_high)}})), look::text));
  return out;
}

} // namespace

content::Section original(const Scope &scope) {
  auto out = section_of(scope);
  Numbering numbering;
  out.blocks.push_back(zones_table(scope, numbering));
  for (const auto &zone : scope.survey().zones)
    if (const auto &result = assess::zone_result(scope.assessment(), zone.id); result.weak_basis)
      append(out.blocks, weak_zone(scope, numbering, zone, result));
  return out;
}

} // namespace strakebook::compose

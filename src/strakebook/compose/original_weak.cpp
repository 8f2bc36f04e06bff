#include <algorithm>

#include "strakebook/compose/looks.h"
#include "strakebook/compose/original_parts.h"
#include "strakebook/compose/sketch.h"
#include "strakebook/compose/thickness.h"
#include "strakebook/compose/wastage.h"

/// Which original fits a zone whose basis is weak.
namespace strakebook::compose {

using content::plain;

namespace {

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
  out.x1 = mm_of(*result.thickest);
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
  add_line(out, {{mm_of(*result.thickest), -0.8}, {mm_of(*result.thickest), static_cast<double>(lanes)}}, "pit-line");
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
  out.spoken = scope.say("original.fits-spoken", {{"zone", zone.name.text}});
  return out;
}

std::string sizes_words(const Scope &scope, const std::vector<Length> &sizes) {
  std::vector<std::string> out;
  for (const Length size : sizes) out.push_back(base::mm_exact(size, 0));
  return unit_mm(scope, join_and(scope, out));
}

/// Sizes that fit under one tolerance.
std::vector<Length> fitting(const assess::ZoneResult &result, const std::string &tolerance) {
  std::vector<Length> out;
  for (const auto &size : result.nominals)
    for (const auto &fit : size.fits)
      if (fit.tolerance == tolerance && fit.state == assess::Nominal::State::alive) out.push_back(size.nominal);
  return out;
}

/// Sizes of which no tolerance of the zone has a figure.
std::vector<Length> not_reached(const assess::ZoneResult &result) {
  std::vector<Length> out;
  for (const auto &size : result.nominals)
    if (std::ranges::none_of(size.fits, [&](const auto &fit) {
          return std::ranges::find(result.tolerances, fit.tolerance) != result.tolerances.end();
        }))
      out.push_back(size.nominal);
  return out;
}

/// Under each tolerance the sizes that fit; then the sizes that none of them reaches.
std::string fits_words(const Scope &scope, const assess::ZoneResult &result) {
  std::string text;
  for (const auto &id : result.tolerances) {
    const auto sizes = fitting(result, id);
    text += sizes.empty() ? scope.say("original.fits-none", {{"tolerance", id}})
                          : scope.say("original.fits-under", {{"tolerance", id}, {"sizes", sizes_words(scope, sizes)}});
    text += " ";
  }
  if (const auto rest = not_reached(result); !rest.empty())
    text += scope.say("original.not-reached", {{"sizes", sizes_words(scope, rest)}, {"usual", join_and(scope, scope.policy().usual_tolerances)}});
  return text;
}

} // namespace

std::vector<content::Block> weak_zone(const Scope &scope, Numbering &numbering, const survey::Zone &zone, const assess::ZoneResult &result) {
  std::vector<content::Block> out = {item_heading(scope.say("original.weak-title", {{"zone", zone.name.text}}))};
  out.push_back(paragraph(plain(scope.say("original.weak", {{"basis", zone.original.basis}})), look::text));
  append(out, paragraphs(scope, zone.original.assumption, look::text));
  if (result.nominals.empty() || !result.min) return out;
  content::Figure figure;
  figure.label = next_figure(scope, numbering);
  figure.caption = scope.tell("original.fits-caption", {{"zone", plain(zone.name.text)}, {"max", plain(unit_mm(scope, base::mm_exact(*result.thickest, 1)))}});
  figure.panels.push_back({{}, {}, which_fits(scope, zone, result), "figure/original/" + zone.id});
  out.push_back(block(std::move(figure)));
  std::string text = fits_words(scope, result);
  if (result.alive_low && result.alive_high)
    text += scope.say("original.range", {{"range", range_words(scope, result, *result.alive_low, *result.alive_high)}});
  out.push_back(paragraph(plain(std::move(text)), look::text));
  return out;
}

} // namespace strakebook::compose

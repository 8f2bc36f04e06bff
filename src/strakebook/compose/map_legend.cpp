#include <algorithm>

#include "strakebook/compose/map_parts.h"

/// The ramp's tones with the ladder's bands that they stand for.
namespace strakebook::compose {

using content::Anchor;
using content::Level;
using content::plain;
using content::operator+;

namespace {

constexpr int bands = 5;

/// The figure below which a rung stands, in words; empty for the last.
std::string upper_bound(const Scope &scope, const policy::Rung &rung) {
  if (rung.below) return unit_mm(scope, base::mm_exact(*rung.below, 1));
  return rung.below_part ? scope.say("map.part", {{"part", base::to_text(base::round_to(*rung.below_part, 1))}}) : std::string();
}

/// Words of the bands, thinnest first: the rungs' own conditions; the rungs below the third from the top share one band,
/// and the top one is split at the lower delivery bound.
std::vector<Inlines> band_words(const Scope &scope) {
  const auto &rungs = scope.policy().ladder.rungs;
  std::vector<Inlines> out;
  std::string low;
  for (int band = 1; band < bands; ++band) {
    const int rung = static_cast<int>(rungs.size()) - bands + band;
    if (rung < 0) continue;
    const std::string high = upper_bound(scope, rungs[static_cast<std::size_t>(rung)]);
    if (low.empty())
      out.push_back(plain(scope.say("map.under", {{"mm", high}})));
    else if (high.empty())
      out.push_back(plain(low) + Inlines{content::LineBreak{}} + plain(scope.say("map.or-more")));
    else
      out.push_back(plain(scope.say("map.band-low", {{"low", low}})) + Inlines{content::LineBreak{}} +
                    plain(scope.say("map.under", {{"mm", high}})));
    low = high;
  }
  out.push_back(plain(scope.say("map.as-delivered")));
  return out;
}

} // namespace

Drawing ramp_legend(const Scope &scope) {
  Drawing out;
  out.x1 = bands;
  out.y = {content::Scale::Rule::fill, "legend-height"};
  out.pad_bottom = "legend-words";
  const auto words = band_words(scope);
  for (int band = 0; band < bands; ++band) {
    add_box(out, {static_cast<double>(band), 0}, {band + 1.0, 1}, "ramp-" + std::to_string(band + 1));
    if (static_cast<std::size_t>(band) < words.size())
      add_label(out, {static_cast<double>(band), 0}, words[static_cast<std::size_t>(band)], Anchor::left, Level::below);
  }
  out.spoken = scope.say("map.legend-spoken");
  return out;
}

} // namespace strakebook::compose

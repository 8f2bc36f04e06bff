#include "strakebook/house/directions.h"

namespace strakebook::house {

namespace {

std::vector<Direction> of_judging() {
  return {
      {{"policy", "doubt", "rule"}, Way::along},
      {{"policy", "doubt", "band"}, Way::up},
      {{"policy", "doubt", "coverage"}, Way::up},
      {{"policy", "extent", "most-per-m2"}, Way::down},
      {{"policy", "extent", "under"}, Way::down},
      {{"policy", "extent", "least-spacing"}, Way::up},
      {{"policy", "extent", "extensive-from"}, Way::down},
      {{"policy", "pitting", "intense-over"}, Way::down},
      {{"policy", "pitting", "least-measured"}, Way::up},
      {{"policy", "actions", "*", "adverse"}, Way::to_yes},
      {{"policy", "actions", "*", "adds-steel"}, Way::to_yes},
      {{"policy", "actions", "*", "doubler"}, Way::to_yes},
      {{"policy", "bases", "*", "weak"}, Way::to_yes},
      {{"cautions", "*", "when"}, Way::to_always},
      {{"policy", "checks", "repeat-spread"}, Way::down},
      {{"policy", "checks", "neighbour-jump"}, Way::down},
      {{"policy", "checks", "copying", "agree"}, Way::up},
      {{"policy", "checks", "copying", "mirror-apart"}, Way::down},
      {{"policy", "checks", "copying", "run-marks"}, Way::down},
      {{"policy", "checks", "copying", "run-odds"}, Way::down},
      {{"policy", "checks", "copying", "shift-marks"}, Way::down},
      {{"policy", "checks", "copying", "shift-apart"}, Way::down},
      {{"policy", "checks", "copying", "shift-part"}, Way::up},
      {{"policy", "checks", "copying", "pit-share"}, Way::down},
      {{"policy", "checks", "copying", "unit-share"}, Way::up},
      {{"policy", "checks", "block-agreement"}, Way::down},
      {{"policy", "checks", "retake-within"}, Way::up},
      {{"policy", "checks", "single-echo-factor", "least"}, Way::up},
      {{"policy", "checks", "single-echo-factor", "most"}, Way::up},
      {{"policy", "checks", "spot-check-per-m2"}, Way::up},
      {{"policy", "prose", "least-sentences"}, Way::up},
      {{"policy", "prose", "most-sentences"}, Way::down},
      {{"policy", "opinion", "least-marks"}, Way::up},
      {{"policy", "opinion", "least-read"}, Way::up},
      {{"policy", "statistics", "least-for-statistics"}, Way::up},
      {{"policy", "statistics", "confidence"}, Way::up},
      {{"policy", "statistics", "share"}, Way::up},
      {{"style", "smallest"}, Way::up},
  };
}

/// Of what is said beyond the marks.
std::vector<Direction> of_the_outlook() {
  return {
      {{"policy", "works", "insert"}, Way::fixed},
      {{"policy", "works", "overplate"}, Way::fixed},
      {{"policy", "works", "pad"}, Way::fixed},
      {{"policy", "protection", "metals", "*", "waters"}, Way::fixed},
      {{"policy", "works", "least-side-plate"}, Way::up},
      {{"policy", "works", "least-lap"}, Way::up},
      {{"policy", "works", "most-lap"}, Way::down},
      {{"policy", "works", "sound-under-lap"}, Way::up},
      {{"policy", "works", "least-doubler"}, Way::up},
      {{"policy", "works", "least-insert"}, Way::up},
      {{"policy", "works", "least-pad"}, Way::up},
      {{"policy", "works", "least-radius"}, Way::up},
      {{"policy", "works", "plug-pitch"}, Way::down},
      {{"policy", "works", "plugs-over"}, Way::down},
      {{"policy", "unseen", "least-blocks"}, Way::up},
      {{"policy", "unseen", "confidence"}, Way::up},
      {{"policy", "unseen", "significance"}, Way::up},
      {{"policy", "afloat", "waters", "*"}, Way::down},
      {{"policy", "afloat", "least-freeboard"}, Way::up},
      {{"policy", "afloat", "least-downflooding"}, Way::up},
      {{"policy", "protection", "metals", "*", "capacity"}, Way::down},
      {{"policy", "protection", "utilisation"}, Way::down},
      {{"policy", "protection", "unworn-percent"}, Way::up},
      {{"policy", "protection", "unworn-months"}, Way::down},
      {{"policy", "years", "match-radius"}, Way::down},
      {{"policy", "years", "life-part"}, Way::down},
      {{"policy", "years", "longest-months"}, Way::down},
  };
}

} // namespace

const std::vector<Direction> &directions() {
  static const std::vector<Direction> all = [] {
    auto table = of_judging();
    for (auto &more : of_the_outlook()) table.push_back(std::move(more));
    return table;
  }();
  return all;
}

} // namespace strakebook::house

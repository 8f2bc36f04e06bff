#pragma once

#include "strakebook/steel/policy/policy.h"

/// A policy with the words and limits that these tests use. Its figures are made up for the tests, no source.
inline strakebook::policy::Policy house_words() {
  using namespace strakebook;
  policy::Policy house;
  for (const char *id : {"continue", "monitor", "clean and recoat", "weld build-up", "insert"})
    house.actions[id] = {.id = id, .name = id};
  for (const char *id : {"builder's drawing", "owner's word"})
    house.bases[id] = {.id = id};
  house.bases["owner's word"].weak = true;
  // EN 10029:1991 Table 1, class A, 5 <= t < 8 (published summary sheets).
  house.tolerances["EN 10029:1991 A"] = {
      .id = "EN 10029:1991 A",
      .bands = {{base::Length::millimetres(5), base::Length::millimetres(8), base::Length::micrometres(-400),
                 base::Length::micrometres(1100)}},
      .source = "EN 10029:1991, Table 1"};
  house.tolerances["EN 10051"] = {.id = "EN 10051"};
  house.pitting = {.intense_over_percent = {15, 0}, .least_measured = 5, .source = "ESP Code"};
  for (const char *id : {"absolute-4.0", "percent-25"})
    house.criteria[id] = {.id = id, .name = id};
  house.criteria_order = {"absolute-4.0", "percent-25"};
  house.afloat.waters = {{"fresh", {1, 0}}};
  house.protection.metals["magnesium"] = {.capacity = {1100, 0}, .waters = {"fresh"}, .source = "made up"};
  house.repeat_spread = base::Length::micrometres(300);
  house.neighbour_jump = base::Length::micrometres(800);
  house.copying = {.agree = base::Length::micrometres(300),
                   .mirror_apart = base::Length::micrometres(1000),
                   .run_marks = 6,
                   .run_odds = 100,
                   .shift_marks = 8,
                   .shift_apart = base::Length::micrometres(200),
                   .shift_part = {2, 5},
                   .pit_share = {1, 2},
                   .unit_share = {1, 4},
                   .source = "made up"};
  return house;
}

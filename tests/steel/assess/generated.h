#pragma once

#include <random>

#include "support/survey_builder.h"

/// Surveys made up by a generator with a fixed seed: the same ones in every run.
namespace strakebook::sample {

class Generator {
public:
  explicit Generator(unsigned seed) : random_(seed) {}

  /// Three zones on strong bases, one or two rows each: marks near every limit and often equal, some not read, some on
  /// doublers; pits. `gauges` 1: all marks read with one gauge and all pits with another; 2: some marks with one three times as
  /// doubtful, and some pits do not say with what.
  survey::Survey survey(int gauges) {
    SurveyBuilder made;
    made.criteria({"percent-20", "percent-25", "percent-30", "absolute-4.0", "absolute-3.0", "inland-rule"});
    made.made.gauges.push_back({.id = "poor", .u = length("0.3")});
    int pits = 0;
    for (const auto &[zone, nominal, plating] : plates) {
      made.zone(zone, nominal, "mill certificate", plating);
      if (chance(50)) made.decide(zone, "monitor", chance(50) ? "absolute-4.0" : "percent-25");
      for (int row = one_to(2); row > 0; --row) add_row(made, zone, zone + std::string("R") + std::to_string(row), nominal, gauges);
      for (int more = one_to(3) - 1; more > 0; --more) add_pit(made, "P" + std::to_string(++pits), zone + std::string("R1"), nominal, gauges);
    }
    return made.made;
  }

  int below(int count) { return std::uniform_int_distribution<int>(0, count - 1)(random_); }
  template <class T> void shuffle(std::vector<T> &all) { std::shuffle(all.begin(), all.end(), random_); }
  std::mt19937 &random() { return random_; }

private:
  struct Plate {
    const char *zone, *nominal;
    policy::Plating plating;
  };
  static constexpr Plate plates[] = {{"W", "6", policy::Plating::side}, {"C", "6", policy::Plating::bilge}, {"B", "10", policy::Plating::bottom}};

  bool chance(int percent) { return below(100) < percent; }
  int one_to(int most) { return 1 + below(most); }

  /// Between four tenths of the nominal and a little over it, in tenths of a millimetre.
  std::string thickness(const std::string &nominal) {
    const int tenths = std::stoi(nominal) * 10;
    const int found = tenths * 4 / 10 + below(tenths * 65 / 100);
    return std::to_string(found / 10) + "." + std::to_string(found % 10);
  }

  void add_row(SurveyBuilder &made, const std::string &zone, const std::string &row, const std::string &nominal, int gauges) {
    made.row(row, zone);
    for (int mark = 2 + below(6); mark > 0; --mark) {
      if (chance(10)) {
        made.unread(row, survey::Status::no_echo);
        continue;
      }
      if (chance(8)) made.on_doubler(row, thickness(nominal));
      else made.marks(row, {chance(20) ? thickness(nominal) + "/" + thickness(nominal) : thickness(nominal)});
      if (below(gauges) == 1) made.made.marks.back().gauge = "poor";
    }
  }

  void add_pit(SurveyBuilder &made, const std::string &id, const std::string &row, const std::string &nominal, int gauges) {
    made.pit(id, row, "1.5", nominal, "0." + std::to_string(one_to(9)));
    if (gauges > 1 && chance(30)) made.made.pits.back().gauge.clear();
  }

  std::mt19937 random_;
};

} // namespace strakebook::sample

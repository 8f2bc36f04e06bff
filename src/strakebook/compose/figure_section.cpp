#include <algorithm>

#include "strakebook/compose/figures.h"
#include "strakebook/compose/sketch.h"
#include "strakebook/compose/subjects.h"
#include "strakebook/compose/thickness.h"

/// The plate in section at the worst place.
namespace strakebook::compose {

using content::Anchor;
using content::Level;
using content::plain;
using content::operator+;

namespace {

constexpr double half_width = 10;  // millimetres of plate either side of the place
constexpr double least_mouth = 4;  // a pit narrower than this would not show
constexpr int arc_steps = 12;

/// The outer face from left to right: level, or with the bowl of a pit in the middle.
std::vector<XY> outer_face(double level, double under, double mouth) {
  std::vector<XY> out = {{-half_width, level}};
  if (under < level)
    for (int i = 0; i <= arc_steps; ++i) {
      const double t = -1.0 + 2.0 * i / arc_steps;
      out.push_back({t * mouth / 2, level - (level - under) * (1 - t * t)});
    }
  out.push_back({half_width, level});
  return out;
}

void add_dimension(Drawing &to, double x, double low, double high, const std::string &figure) {
  to.elements.emplace_back(content::Span{{x, low}, {x, high}, content::Span::Ends::arrows, "dimension"});
  auto &label = add_label(to, {x, (low + high) / 2}, content::strong(figure), Anchor::centre, Level::middle);
  label.ground = content::Label::Ground::chip;
  label.text_style = "figure-key";
}

void add_level(Drawing &to, double y, Inlines name, std::string meaning) {
  add_line(to, {{-half_width, y}, {half_width, y}}, std::move(meaning));
  add_label(to, {half_width, y}, plain(" ") + std::move(name), Anchor::left, Level::middle);
}

std::string original_words(const Scope &scope, const assess::ZoneResult &zone, const survey::Zone &surveyed) {
  const base::Fill mm{"mm", base::mm_exact(surveyed.original.nominal.value, 1)};
  return zone.weak_basis ? scope.say("section.original-weak", {mm}) : scope.say("section.original", {mm});
}

std::string spoken_pit(const Scope &scope, const survey::Pit &pit) {
  return scope.say("section.spoken-pit", {{"adjacent", in_mm(pit.adjacent)}, {"depth", in_mm(pit.depth)}});
}

std::string spoken_limit(const Scope &scope, const assess::CriterionResult &result) {
  return scope.say("section.spoken-limit", {{"mm", limit_name(scope, result.criterion, result.limit)}});
}

} // namespace

content::Drawing worst_section(const Scope &scope) {
  const auto [zone, subject] = find_subject(scope, scope.assessment().worst);
  const auto *surveyed = survey::zone_of(scope.survey(), zone->zone);
  const auto *pit = survey::pit_of(scope.survey(), subject->id);
  const double original = mm_of(surveyed->original.nominal.value), remaining = mm_of(subject->remaining);
  const double level = pit == nullptr ? remaining : mm_of(pit->adjacent.value);
  const double mouth = pit != nullptr && pit->across ? std::clamp(mm_of(pit->across->value), least_mouth, 2 * half_width - 2) : least_mouth;
  Drawing out;
  out.x0 = -half_width;
  out.x1 = half_width;
  out.y1 = std::max(original, level);
  out.y = {content::Scale::Rule::named, "section-drawn-millimetre"};
  out.x = {content::Scale::Rule::named, "section-drawn-millimetre"};
  out.pad_left = "section-left";
  out.pad_right = "section-right";
  out.pad_top = "section-top-drawn";
  out.pad_bottom = "section-bottom";
  auto plate = outer_face(level, remaining, mouth);
  plate.push_back({half_width, 0});
  plate.push_back({-half_width, 0});
  add_area(out, std::move(plate), "left-cut");
  const auto *result = measured_against(*subject);
  add_level(out, original, plain(original_words(scope, *zone, *surveyed)), "nominal");
  if (result != nullptr)
    add_level(out, mm_of(result->limit), scope.tell("section.limit", {{"mm", content::strong(limit_name(scope, result->criterion, result->limit))}}),
              result->governs ? "limit-governs" : "limit");
  const std::string left = remaining_text(scope, zone->zone, subject->remaining);
  if (pit != nullptr) {
    add_dimension(out, -half_width * 0.8, 0, level, in_mm(pit->adjacent));
    add_dimension(out, 0, remaining, level, in_mm(pit->depth));
  }
  add_dimension(out, pit == nullptr ? -half_width / 2 : 0, 0, remaining, left);
  add_label(out, {half_width, 0}, plain(" " + scope.say("section.inside")), Anchor::left, Level::middle);
  out.spoken = scope.say("section.spoken", {{"place", subject->id}, {"mm", left}, {"original", original_words(scope, *zone, *surveyed)},
                                            {"pit", pit == nullptr ? std::string() : spoken_pit(scope, *pit)},
                                            {"limit", result == nullptr ? std::string() : spoken_limit(scope, *result)}});
  return out;
}

} // namespace strakebook::compose

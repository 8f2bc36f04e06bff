#include <fmt/format.h>

#include "strakebook/steel/survey/fields.h"

/// The instruments: what each is, how it was proved, and how far its figures may be off.
namespace strakebook::survey {

using base::Code;

namespace {

constexpr int most_share_places = 6; // squares of a share stay exact
constexpr std::string_view ways = "one of u, half-width and share";

void check_component(Reading &r, const Node &map, const DoubtComponent &c, const base::SourceSpan &key) {
  const int given = c.u.has_value() + c.half_width.has_value() + c.share.has_value();
  const bool none_written = !map.find("u") && !map.find("half-width") && !map.find("share");
  if (given > 1 || none_written)
    r.error(Code::doubt_unclear, key,
            fmt::format("{} is given in {}", c.id, none_written ? "no way" : "more than one way"),
            fmt::format("{}, and no other", ways),
            "u: 0.03, a standard uncertainty; or half-width: 0.05, equally likely within it; or share: 0.5, "
            "percent of the thickness");
  if (c.share && c.share->places > most_share_places)
    r.error(Code::out_of_range, map.find("share")->span,
            fmt::format("{} has more decimals than are kept exact", map.find("share")->text),
            fmt::format("at most {} decimals", most_share_places));
  if (c.degrees && c.degrees->ratio() < base::Ratio{1, 1})
    r.error(Code::out_of_range, map.find("degrees")->span,
            fmt::format("{} degrees of freedom are fewer than one", map.find("degrees")->text),
            "1 or more, or none at all where they are infinite");
}

void check_doubt(Reading &r, const Node &map, const Gauge &g, const base::SourceSpan &key) {
  constexpr std::string_view either = "either u with u-basis, or a budget under doubt";
  if (!map.find("u") && !map.find("doubt"))
    r.error(Code::doubt_unclear, key, fmt::format("gauge {} has no doubt", g.id), std::string(either),
            "u: 0.10\nu-basis: how it was arrived at\nor doubt: {resolution: {half-width: 0.05}, ...}");
  const bool stated = g.u || g.u_basis.given();
  if (stated && !g.doubt.empty())
    r.error(Code::doubt_unclear, map.find("doubt")->span,
            fmt::format("gauge {} has a budget and {} beside it", g.id, g.u ? "u" : "u-basis"),
            std::string(either), "leave out u and u-basis: the budget gives them");
}

/// Few enough figures that a thickness stays exact when it is scaled.
bool plain_velocity(const base::Decimal &v) {
  constexpr int most_places = 3;
  constexpr base::Ratio most{100'000, 1};
  return v.places <= most_places && base::Ratio{0, 1} < v.ratio() && v.ratio() < most;
}

void check_velocity(Reading &r, const Node &map, const Gauge &g, const base::SourceSpan &key) {
  if (!g.true_velocity)
    return;
  const auto *value = map.find("true-velocity");
  if (!plain_velocity(*g.true_velocity))
    r.error(Code::out_of_range, value->span, fmt::format("{} is no velocity of sound in m/s", value->text),
            "m/s, at most three decimals", "5850");
  const auto set = velocity_set(g);
  if (!set || !plain_velocity(*set))
    r.error(Code::velocity_unclear, g.velocity.given() ? g.velocity.span : key,
            fmt::format("gauge {} has a true velocity, and not the one that was set beside it", g.id),
            "the velocity that was set: a number and m/s", "velocity: 5920 m/s");
  if (!g.true_velocity_basis.given())
    r.error(Code::velocity_unclear, value->span,
            fmt::format("nothing says how the true velocity of gauge {} is known", g.id),
            "how the true velocity is known", "true-velocity-basis: from a sample of the plate");
}

} // namespace

void fields(Fields &f, DoubtComponent &c) {
  f.value(maybe("u", "its standard uncertainty"), c.u);
  f.value(maybe("half-width", "half the width of the interval it lies in, all of it equally likely"), c.half_width);
  f.value(maybe("share", "its standard uncertainty in percent of the thickness", Rule::percent), c.share);
  f.value(maybe("degrees", "degrees of freedom, left out where infinite", Rule::positive), c.degrees);
  f.value(maybe("why", "how it was arrived at"), c.why);
  f.check([&](Reading &r, const Node &map, const base::SourceSpan &key) { check_component(r, map, c, key); });
}

void fields(Fields &f, Gauge &g) {
  f.value(maybe("name", "kind of instrument, without make or model"), g.name);
  f.value(maybe("mode", "echo-to-echo or single-echo"), g.mode);
  f.value(maybe("probe", "kind and size of probe"), g.probe);
  f.value(maybe("crystal", "diameter of plate that one reading takes in", Rule::unit_written), g.crystal);
  f.value(maybe("velocity", "velocity that was set"), g.velocity);
  f.value(maybe("true-velocity", "m/s, where the one that was set is known to be wrong", Rule::positive),
          g.true_velocity);
  f.value(maybe("true-velocity-basis", "how the true velocity is known"), g.true_velocity_basis);
  f.value(maybe("resolution", "smallest step shown"), g.resolution);
  f.value(maybe("serial", "serial number"), g.serial);
  f.value(maybe("setting", "how it was set on the day"), g.setting);
  f.value(maybe("certificate", "what its certificate is"), g.certificate);
  f.value(maybe("certificate-until", "day the certificate runs out"), g.certificate_until);
  f.value(maybe("block", "known thickness of the check block", Rule::plate), g.block);
  f.value(maybe("before", "figure shown on the block before", Rule::plate), g.before);
  f.value(maybe("after", "figure shown on the block after", Rule::plate), g.after);
  f.value(maybe("u", "standard uncertainty of a reading; or else doubt"), g.u);
  f.value(maybe("u-basis", "how that was arrived at"), g.u_basis);
  f.by_id(maybe("doubt", "budget of its uncertainty, by component; or else u"), {IdForm::doubt}, g.doubt,
          &DoubtComponent::id);
  f.check([&](Reading &r, const Node &map, const base::SourceSpan &key) {
    check_doubt(r, map, g, key);
    check_velocity(r, map, g, key);
  });
}

} // namespace strakebook::survey

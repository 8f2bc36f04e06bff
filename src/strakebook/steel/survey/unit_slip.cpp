#include "strakebook/steel/survey/unit_slip.h"

#include <array>

#include <fmt/format.h>

#include "strakebook/base/text.h"
#include "strakebook/steel/survey/values.h"

namespace strakebook::survey {

namespace {

using base::Unit;

bool bare(const base::Measured &figure) {
  return !base::unit_written(figure) && figure.raw.find('/') == std::string::npos;
}

std::string_view in_words(Unit unit) {
  return unit == Unit::inch ? "inches" : unit == Unit::millimetre ? "millimetres" : base::name_of(unit);
}

std::vector<std::string> as_written(const std::vector<base::Measured> &figures) {
  std::vector<std::string> out;
  for (const auto &one : figures)
    out.push_back(one.raw);
  return out;
}

} // namespace

bool impossible_plate(const base::Measured &reading) {
  const bool too_thin = reading.unit != Unit::millimetre && bare(reading) && reading.value < thinnest_reading;
  return reading.value > thickest_plate || too_thin;
}

std::vector<base::Measured> in_other_units(const base::Measured &reading, base::Length least, base::Length most) {
  std::vector<base::Measured> out;
  if (!bare(reading))
    return out;
  for (const Unit unit : {Unit::millimetre, Unit::inch, Unit::thou}) {
    base::MeasuredError wrong;
    auto other = base::parse_measured(fmt::format("{} {}", reading.raw, base::name_of(unit)), unit, wrong);
    if (other && unit != reading.unit && least <= other->value && other->value <= most)
      out.push_back(std::move(*other));
  }
  return out;
}

void refuse_plate(Reading &reading, const base::Measured &figure, const base::SourceSpan &span) {
  const bool thick = figure.value > thickest_plate;
  auto message = fmt::format("{} {} {} mm, and {}", figure.raw,
                             base::unit_written(figure) ? "is" : fmt::format("in {} is", in_words(figure.unit)),
                             base::mm_exact(figure.value), thick ? "no hull plate is this thick" : "no gauge reads plate this thin");
  const auto others = as_written(in_other_units(figure, thinnest_reading, thickest_plate));
  if (others.size() == 1)
    message += fmt::format(": it can only be {}", others.front());
  else if (!others.empty())
    message += fmt::format(": it could be {}", base::joined(others, " or "));
  reading.error(base::Code::reading_implausible, span, std::move(message),
                thick ? fmt::format("at most {} mm", base::mm_exact(thickest_plate))
                      : fmt::format("at least {} mm", base::mm_exact(thinnest_reading)),
                others.empty() ? "the figure that was displayed, with its unit if it is another"
                               : base::joined(others, ", or ") + ": the unit beside the figure");
}

} // namespace strakebook::survey

#pragma once

#include <optional>
#include <string>

#include "strakebook/steel/survey/reading.h"

namespace strakebook::survey {

/// The figures of a pit as far as they were written.
struct PitFigures {
  std::optional<base::Measured> adjacent, depth, remaining;
};

/// Takes the figures into `into` when both are there and close: remaining = adjacent - depth, not under
/// nothing. Otherwise reports pit_one_figure or pit_not_closed. A figure that was written but is no length
/// has been reported already.
void close_pit(Reading &reading, const base::YamlNode &map, const base::SourceSpan &key,
               const PitFigures &written, Pit &into);

/// True, after pit_one_figure was reported, for a pit noted as one bare figure: `P1: 3.3` or `P1: {at: PW 5,
/// pit: 3.3}`.
bool refuse_bare_figure(Reading &reading, const std::string &id, const base::YamlNode &node,
                        const base::SourceSpan &key);

} // namespace strakebook::survey

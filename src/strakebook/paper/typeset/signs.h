#pragma once

#include <optional>
#include <string>
#include <vector>

#include "strakebook/paper/page/page.h"
#include "strakebook/paper/style/style.h"

namespace strakebook::typeset {

/// Room that a sign takes on paper.
base::Size sign_size(const style::MeaningStyle &meaning);

/// Draws a sign with its middle at `centre`. `fill_override` replaces the fill of the meaning (the thickness ramp).
void draw_sign(const style::MeaningStyle &meaning, const style::Style &style, base::Point centre,
               std::optional<style::Tone> fill_override, const page::TagPath &tag, const std::string &id,
               std::vector<page::Item> &out);

} // namespace strakebook::typeset

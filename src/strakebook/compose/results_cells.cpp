#include "strakebook/compose/results_parts.h"

namespace strakebook::compose {

using content::plain;
using content::operator+;

content::Cell dash_cell(const Scope &scope) { return cell(content::soft(scope.say("voice.dash"))); }

content::Cell thickness_cell(const base::Measured &value) {
  if (value.unit == base::Unit::millimetre) return cell(in_mm(value));
  Inlines text = plain(in_mm(value));
  text.emplace_back(content::LineBreak{});
  return cell(std::move(text) + content::soft(as_written(value)));
}

content::Cell share_cell(const Scope &scope, const std::optional<assess::LossShare> &share) {
  if (!share) return dash_cell(scope);
  Inlines text = plain(percent_figure(scope, share->nominal));
  if (share->low && share->high)
    text = text + content::soft(scope.say("results.range", {{"low", percent_figure(scope, *share->low)},
                                                            {"high", percent_figure(scope, *share->high)}}));
  return cell(std::move(text));
}

content::Cell margin_cell(const Scope &scope, const std::optional<assess::Standing> &standing) {
  return standing ? cell(margin_text(standing->result, standing->band_nm)) : dash_cell(scope);
}

Inlines photo_links(const Scope &scope, const std::vector<std::string> &photos) {
  Inlines out;
  for (const auto &photo : photos) {
    if (!out.empty()) out = out + plain(scope.say("voice.list-between"));
    out = out + link(photo_id(photo), photo);
  }
  return out;
}

} // namespace strakebook::compose

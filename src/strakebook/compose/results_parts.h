#pragma once

#include "strakebook/compose/thickness.h"

/// The parts of the results chapter, in the order in which it shows them.
namespace strakebook::compose {

content::Block profiles_figure(const Scope &scope, Numbering &numbering);
content::Block readings_table(const Scope &scope, Numbering &numbering);
content::Block rows_table(const Scope &scope, Numbering &numbering);
content::Block zones_table(const Scope &scope, Numbering &numbering);
content::Block pits_table(const Scope &scope, Numbering &numbering);
content::Block matrix_table(const Scope &scope, Numbering &numbering);
std::vector<content::Block> doublers(const Scope &scope, Numbering &numbering);
std::vector<content::Block> notes_and_none_found(const Scope &scope, Numbering &numbering);

/// "5 (0–10)" for a loss share: the nominal's figure, the range in soft behind it; a dash where no share is stated.
content::Cell share_cell(const Scope &scope, const std::optional<assess::LossShare> &share);
/// The margin over a limit, with its sign.
content::Cell margin_cell(const Scope &scope, const std::optional<assess::Standing> &standing);
/// A thickness in a column of mm; where it was not written in mm, as written on a line under it.
content::Cell thickness_cell(const base::Measured &value);
/// A dash.
content::Cell dash_cell(const Scope &scope);
/// Numbers of the photographs taken at a place, as links.
Inlines photo_links(const Scope &scope, const std::vector<std::string> &photos);

} // namespace strakebook::compose

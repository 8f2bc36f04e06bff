#pragma once

#include "strakebook/compose/voice.h"

/// The sign beside every figure that rests on what somebody told, and its legend.
namespace strakebook::compose {

/// " †" where `told` holds, else nothing: text that goes straight behind a figure or a name.
std::string told_sign(const Scope &scope, bool told);

/// What the sign says, with who told: one note for the table or page on which the sign stands.
Inlines told_legend(const Scope &scope);

/// Whether a share lost in this zone rests on what somebody told: on a weak basis only where the size told is not one that
/// would have been considered anyway.
bool loss_is_told(const Scope &scope, const assess::ZoneResult &zone);

/// Whether a criterion's limit in this zone does.
bool limit_is_told(const assess::ZoneResult &zone, std::string_view criterion);

/// Whether any limit of any zone does.
bool any_limit_told(const Scope &scope);

} // namespace strakebook::compose

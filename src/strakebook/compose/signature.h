#pragma once

#include "strakebook/compose/voice.h"

namespace strakebook::compose {

/// The line to sign on with name, qualification, body, place and day, under the last words of what is signed: never alone on a page.
/// `place` null: none is asked for.
content::Block signature(const Scope &scope, std::vector<content::Block> last_words, const survey::Words *place,
                         const survey::Given<base::Date> &day, std::string id = {});

/// The surveyor's own declaration, then the signature.
std::vector<content::Block> declared_and_signed(const Scope &scope, const survey::Words *place, const survey::Given<base::Date> &day,
                                                std::string id = {});

} // namespace strakebook::compose

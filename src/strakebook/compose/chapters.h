#pragma once

#include <map>
#include <string>
#include <string_view>

#include "strakebook/compose/voice.h"

/// One chapter a section of the plan, one file a chapter.
namespace strakebook::compose {

using Chapter = content::Section (*)(const Scope &);

content::Section changes(const Scope &scope); ///< without blocks where nothing is replaced
content::Section identity(const Scope &scope);
content::Section answer(const Scope &scope);
content::Section scope_of_survey(const Scope &scope);
content::Section vessel(const Scope &scope);
content::Section conditions(const Scope &scope);
content::Section instruments(const Scope &scope);
content::Section datum(const Scope &scope);
content::Section original(const Scope &scope);
content::Section criteria(const Scope &scope);
content::Section map(const Scope &scope);
content::Section results(const Scope &scope);
content::Section comparison(const Scope &scope);
content::Section assessment(const Scope &scope);
content::Section recommendations(const Scope &scope);
content::Section steelwork(const Scope &scope);
content::Section coating(const Scope &scope);
content::Section limitations(const Scope &scope);
content::Section safety(const Scope &scope);
content::Section basis(const Scope &scope);
content::Section photographs(const Scope &scope);
content::Section issue_record(const Scope &scope);
content::Section appendices(const Scope &scope);

/// Section id of a layout -> the chapter that writes it.
const std::map<std::string, Chapter, std::less<>> &chapters();

} // namespace strakebook::compose

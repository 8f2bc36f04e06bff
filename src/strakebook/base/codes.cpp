#include "strakebook/base/codes.h"

#include <array>

namespace strakebook::base {
namespace {

struct CodeFacts {
  std::string_view name, number, description;
};

constexpr auto table = std::to_array<CodeFacts>({
#define X(id, number, text) {#id, number, text},
    STRAKEBOOK_CODES(X)
#undef X
});

const CodeFacts &facts_of(Code code) { return table.at(static_cast<std::size_t>(code)); }

} // namespace

std::string_view number_of(Code code) { return facts_of(code).number; }
std::string_view name_of(Code code) { return facts_of(code).name; }
std::string_view description_of(Code code) { return facts_of(code).description; }

std::vector<Code> all_codes() {
  std::vector<Code> codes;
  for (std::size_t i = 0; i < table.size(); ++i)
    codes.push_back(static_cast<Code>(i));
  return codes;
}

} // namespace strakebook::base

#include "strakebook/steel/protection/protection.h"

#include <nlohmann/json.hpp>

namespace strakebook::protection {

Protection reckon(const survey::Survey &, const assess::Assessment &, const policy::Policy &) { return {}; }

nlohmann::ordered_json json(const Protection &) { return nlohmann::ordered_json::object(); }

std::vector<quantity::Quantity> quantities(const Protection &) { return {}; }

} // namespace strakebook::protection

#include "strakebook/steel/years/years.h"

#include <nlohmann/json.hpp>

namespace strakebook::years {

History compare(const survey::Survey &, const assess::Assessment &, const policy::Policy &) { return {}; }

nlohmann::ordered_json json(const History &) { return nlohmann::ordered_json::object(); }

std::vector<quantity::Quantity> quantities(const History &) { return {}; }

} // namespace strakebook::years

#include "strakebook/steel/unseen/unseen.h"

#include <nlohmann/json.hpp>

namespace strakebook::unseen {

Unseen unseen(const survey::Survey &, const assess::Assessment &, const policy::Policy &) { return {}; }

nlohmann::ordered_json json(const Unseen &) { return nlohmann::ordered_json::object(); }

std::vector<quantity::Quantity> quantities(const Unseen &) { return {}; }

} // namespace strakebook::unseen

#include "strakebook/steel/works/works.h"

#include <nlohmann/json.hpp>

namespace strakebook::works {

Works reckon(const survey::Survey &, const assess::Assessment &, const policy::Policy &) { return {}; }

nlohmann::ordered_json json(const Works &) { return nlohmann::ordered_json::object(); }

std::vector<quantity::Quantity> quantities(const Works &) { return {}; }

} // namespace strakebook::works

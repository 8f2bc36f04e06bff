#include "strakebook/steel/afloat/afloat.h"

#include <nlohmann/json.hpp>

namespace strakebook::afloat {

Afloat float_with(const survey::Survey &, const assess::Assessment &, const policy::Policy &, const works::Works &) { return {}; }

nlohmann::ordered_json json(const Afloat &) { return nlohmann::ordered_json::object(); }

std::vector<quantity::Quantity> quantities(const Afloat &) { return {}; }

} // namespace strakebook::afloat

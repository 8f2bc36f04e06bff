#include "strakebook/steel/robustness/robustness.h"

#include <nlohmann/json.hpp>

namespace strakebook::robustness {

Robustness robustness(const survey::Survey &, const assess::Assessment &, const policy::Policy &) { return {}; }

nlohmann::ordered_json json(const Robustness &) { return nlohmann::ordered_json::object(); }

} // namespace strakebook::robustness

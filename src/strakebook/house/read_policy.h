#pragma once

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/yaml_tree.h"
#include "strakebook/steel/policy/policy.h"

/// The `policy` of a merged layout.
namespace strakebook::house {

policy::Policy read_policy(const base::YamlNode &node, base::Diagnostics &sink);

// Parts of it, one file each.
void read_criteria(const base::YamlNode &node, policy::Policy &into, base::Diagnostics &sink);
void read_tolerances(const base::YamlNode &node, policy::Policy &into, base::Diagnostics &sink);
/// The actions must have been read before.
void read_ladder(const base::YamlNode &node, policy::Policy &into, base::Diagnostics &sink);
void read_unseen(const base::YamlNode &node, policy::UnseenRule &into, base::Diagnostics &sink);
void read_years(const base::YamlNode &node, policy::YearsRule &into, base::Diagnostics &sink);
void read_robustness(const base::YamlNode &node, policy::RobustnessRule &into, base::Diagnostics &sink);
/// The actions must have been read before.
void read_works(const base::YamlNode &node, policy::Policy &into, base::Diagnostics &sink);
void read_afloat(const base::YamlNode &node, policy::AfloatRule &into, base::Diagnostics &sink);
void read_protection(const base::YamlNode &node, policy::ProtectionRule &into, base::Diagnostics &sink);
/// A share that is neither none nor all of the whole; otherwise reports it.
void read_true_part(const base::YamlNode &node, base::Ratio &into, base::Diagnostics &sink);
/// A figure that something is divided by: more than 0; otherwise reports it.
void read_above_nought(const base::YamlNode &node, base::Decimal &into, base::Diagnostics &sink);

} // namespace strakebook::house

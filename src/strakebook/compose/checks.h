#pragma once

#include <set>

#include "strakebook/compose/voice.h"

/// Questions that more than one chapter asks of a survey.
namespace strakebook::compose {

/// Ids of the actions that decisions, recommendations and steelwork ask for, each once.
std::set<std::string> actions_asked(const Scope &scope);
bool any_adds_steel(const Scope &scope, const std::set<std::string> &actions);
bool any_adverse(const Scope &scope, const std::set<std::string> &actions);
bool any_doubler(const Scope &scope, const std::set<std::string> &actions);

/// Is a caution to be printed? A trigger that the survey cannot decide is taken as met: a caution is never
/// lost.
bool applies(const Scope &scope, const house::Caution &caution);
/// Cautions that an action of one item brings.
std::vector<const house::Caution *> cautions_of_action(const Scope &scope, const std::string &action);

} // namespace strakebook::compose

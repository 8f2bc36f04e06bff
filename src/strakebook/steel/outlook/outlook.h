#pragma once

#include "strakebook/steel/afloat/afloat.h"
#include "strakebook/steel/protection/protection.h"
#include "strakebook/steel/robustness/robustness.h"
#include "strakebook/steel/unseen/unseen.h"
#include "strakebook/steel/works/works.h"
#include "strakebook/steel/years/years.h"

/// What a survey implies beyond its marks.
namespace strakebook::outlook {

struct Outlook {
  unseen::Unseen unseen;
  years::History history;
  robustness::Robustness robustness;
  works::Works works;
  afloat::Afloat afloat;
  protection::Protection protection;
  std::vector<quantity::Quantity> quantities; ///< of all of them, in this order
};

Outlook outlook(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy);

/// Adds each part under its name.
void add_json(nlohmann::ordered_json &to, const Outlook &found);

} // namespace strakebook::outlook

#pragma once

#include <string>

#include "strakebook/house/house.h"

namespace strakebook::compose {

/// What each file that goes with a report is, for whoever lists them.
struct KeptWords {
  std::string manifest, survey, readings, layout, photograph, photographs, past, before;
};
KeptWords kept_words(const house::Wording &wording);

} // namespace strakebook::compose

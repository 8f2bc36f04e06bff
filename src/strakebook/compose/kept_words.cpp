#include "strakebook/compose/kept_words.h"

namespace strakebook::compose {

KeptWords kept_words(const house::Wording &wording) {
  const auto say = [&wording](std::string_view key) { return house::word(wording, key); };
  return {.manifest = say("kept.manifest"),
          .survey = say("kept.survey"),
          .readings = say("kept.readings"),
          .layout = say("kept.layout"),
          .photograph = say("kept.photograph"),
          .photographs = say("kept.photographs"),
          .past = say("kept.past"),
          .before = say("kept.before")};
}

} // namespace strakebook::compose

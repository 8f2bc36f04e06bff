#include "strakebook/compose/photo_words.h"

namespace strakebook::compose {

using content::plain;

Inlines missing_words(const Scope &scope, const survey::Photo &photo) {
  if (photo.not_taken.given())
    return scope.tell("photographs.not-taken", {{"reason", prose(scope, photo.not_taken.text)}});
  if (photo.withheld.given())
    return scope.tell("photographs.withheld", {{"reason", prose(scope, photo.withheld.text)}});
  if (photo.file.given())
    return scope.tell("photographs.not-found", {{"file", plain(photo.file.text)}});
  return scope.tell("photographs.no-file");
}

std::string in_fours(std::string_view digest) {
  std::string out;
  for (std::size_t i = 0; i < digest.size(); i += 4) {
    if (i > 0)
      out += ' ';
    out += digest.substr(i, 4);
  }
  return out;
}

} // namespace strakebook::compose

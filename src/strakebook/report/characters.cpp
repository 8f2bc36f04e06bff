#include "strakebook/report/characters.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

#include "strakebook/base/text.h"
#include "strakebook/steel/survey/texts.h"

namespace strakebook {

namespace {

bool some_face_lacks(const typeset::FontSet &fonts, const std::string &character) {
  const int faces = static_cast<int>(fonts.fonts().size());
  for (int face = 0; face < faces; ++face)
    if (fonts.shape(face, {1}, character, false).missing) return true;
  return false;
}

void report(const survey::Words &words, char32_t point, const std::string &character, base::Diagnostics &sink) {
  sink.error(base::Code::glyph_missing, survey::place_in(words.span, character),
             fmt::format("no bundled face has the character \"{}\" (U+{:04X})", character, static_cast<unsigned>(point)),
             "characters of the bundled faces", "another character or a word instead");
}

} // namespace

void check_characters(const survey::Survey &survey, const typeset::FontSet &fonts, base::Diagnostics &sink) {
  std::map<char32_t, bool> lacking; // looked up once: most texts share their letters
  survey::each_text(survey, [&](const survey::Words &words) {
    const auto points = base::code_points(words.text);
    for (const char32_t point : std::set<char32_t>(points.begin(), points.end())) {
      if (point <= U' ') continue; // blanks and line ends are not drawn
      const std::string character = base::utf8(point);
      const auto [known, fresh] = lacking.try_emplace(point, false);
      if (fresh) known->second = some_face_lacks(fonts, character);
      if (known->second) report(words, point, character, sink);
    }
  });
}

} // namespace strakebook

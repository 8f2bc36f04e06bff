#include "strakebook/paper/typeset/hyphenation.h"

#include <cstdio>
#include <cstdlib>
#include <functional>
#include <hyphen.h>
#include <string>
#include <unordered_map>

#include "strakebook/paper/typeset/recorded.h"

namespace strakebook::typeset {
namespace {

constexpr std::size_t word_bytes_max = 60; // no word of any language that has patterns is longer

struct DictFree {
  void operator()(HyphenDict *dict) const { hnj_hyphen_free(dict); }
};
using DictHandle = std::unique_ptr<HyphenDict, DictFree>;

struct WordHash {
  using is_transparent = void;
  std::size_t operator()(std::string_view text) const { return std::hash<std::string_view>{}(text); }
};

/// "en-GB": "hyph_en_GB.dic".
std::string file_for(std::string_view language) {
  std::string name = "hyph_";
  for (const char c : language)
    name += c == '-' ? '_' : c;
  return name + ".dic";
}

bool continues(char c) { return (static_cast<unsigned char>(c) & 0xC0) == 0x80; }

/// Gives back what libhyphen allocates for divisions that change letters; English has none.
void release(char **replaced, int *at, int *cut, std::size_t letters) {
  for (std::size_t i = 0; replaced && i < letters; ++i)
    std::free(replaced[i]);
  std::free(replaced);
  std::free(at);
  std::free(cut);
}

std::vector<std::size_t> breaks_in(HyphenDict *dict, const std::string &word, int left, int right) {
  std::vector<char> marks(word.size() + 5);
  std::vector<char> shown(word.size() * 2 + 1);
  char **replaced = nullptr;
  int *at = nullptr, *cut = nullptr;
  const int failed =
      hnj_hyphen_hyphenate3(dict, word.c_str(), static_cast<int>(word.size()), marks.data(), shown.data(),
                            &replaced, &at, &cut, left, right, left, right);
  std::vector<std::size_t> breaks;
  std::size_t letter = 0; // marks are counted by letters, not bytes
  for (std::size_t i = 1; !failed && i < word.size(); ++i) {
    if (continues(word[i]))
      continue;
    const bool changes_letters = replaced && replaced[letter];
    if (marks[letter] % 2 != 0 && !changes_letters)
      breaks.push_back(i);
    ++letter;
  }
  release(replaced, at, cut, word.size());
  return breaks;
}

} // namespace

struct Hyphenation::State {
  DictHandle dict;
  std::unordered_map<std::string, std::vector<std::size_t>, WordHash, std::equal_to<>> words;
};

Hyphenation::Hyphenation() : state_(std::make_unique<State>()) {}
Hyphenation::Hyphenation(Hyphenation &&) noexcept = default;
Hyphenation &Hyphenation::operator=(Hyphenation &&) noexcept = default;
Hyphenation::~Hyphenation() = default;

std::optional<Hyphenation> Hyphenation::load(const std::filesystem::path &folder, std::string_view language,
                                             base::Diagnostics &sink) {
  const auto digests = recorded_digests(folder, sink);
  if (!digests)
    return std::nullopt;
  Hyphenation patterns;
  const std::string name = file_for(language);
  if (digests->find(name) == digests->end())
    return patterns;
  auto bytes = recorded_file(folder / name, *digests, base::Code::patterns_damaged, sink);
  if (!bytes)
    return std::nullopt;
  // The library reads files only; what it is given are the bytes that were checked.
  if (FILE *file = fmemopen(bytes->data(), bytes->size(), "r")) {
    patterns.state_->dict.reset(hnj_hyphen_load_file(file));
    std::fclose(file);
  }
  return patterns;
}

const std::vector<std::size_t> &Hyphenation::breaks(std::string_view word, int left, int right) const {
  static const std::vector<std::size_t> none;
  if (!state_->dict || word.size() > word_bytes_max)
    return none;
  auto it = state_->words.find(word);
  if (it == state_->words.end()) {
    const std::string text(word);
    it = state_->words.emplace(text, breaks_in(state_->dict.get(), text, left, right)).first;
  }
  return it->second;
}

} // namespace strakebook::typeset

#include "strakebook/report/attachments.h"

#include "strakebook/compose/kept_words.h"
#include "strakebook/report/kept_names.h"

namespace strakebook {

namespace {

struct Shown {
  std::string media_type, words;
};

/// What a file is, by its place among the kept inputs; a picture by its first byte, which the gate has written.
Shown shown(const std::string &path, const std::string &bytes, const compose::KeptWords &words) {
  constexpr std::string_view yaml = "application/yaml";
  const auto text = [&](const std::string &said) { return Shown{std::string(yaml), said}; };
  if (path == issue::manifest_name) return {"text/plain", words.manifest};
  if (path == kept::survey) return text(words.survey);
  if (path == kept::photographs) return text(words.photographs);
  if (path == kept::past) return text(words.past);
  if (bytes.starts_with('\x89')) return {"image/png", words.photograph};
  if (bytes.starts_with('\xFF')) return {"image/jpeg", words.photograph};
  if (path.starts_with(kept::installed_layouts) || path.starts_with(kept::own_layouts)) return text(words.layout);
  return {"text/csv", words.readings};
}

page::Attachment attachment(const std::string &path, const std::string &bytes, const compose::KeptWords &words) {
  if (!path.starts_with(kept::before)) {
    auto [media_type, said] = shown(path, bytes, words);
    return {path, std::move(media_type), std::move(said), bytes};
  }
  auto [media_type, said] = shown(path.substr(kept::before.size()), bytes, words);
  return {path, std::move(media_type), words.before + ' ' + said, bytes};
}

} // namespace

void attach_inputs(page::Document &pages, const base::FileSet &files, const issue::Manifest &manifest, const house::House &house) {
  const auto words = compose::kept_words(house.wording);
  for (const auto &[path, bytes] : issue::laid_down(files, manifest))
    if (!house.issue.inputs_beside || path == issue::manifest_name) pages.attachments.push_back(attachment(path, bytes, words));
}

} // namespace strakebook

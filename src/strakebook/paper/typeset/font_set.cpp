#include "strakebook/paper/typeset/font_set.h"

#include <functional>
#include <hb-ot.h>
#include <hb.h>
#include <map>
#include <stdexcept>
#include <unordered_map>
#include <utility>

#include "strakebook/base/text.h"
#include "strakebook/paper/typeset/recorded.h"

namespace strakebook::typeset {
namespace {

struct HarfBuzzFree {
  void operator()(hb_font_t *font) const { hb_font_destroy(font); }
  void operator()(hb_buffer_t *buffer) const { hb_buffer_destroy(buffer); }
};
using FontHandle = std::unique_ptr<hb_font_t, HarfBuzzFree>;
using BufferHandle = std::unique_ptr<hb_buffer_t, HarfBuzzFree>;

struct WordHash {
  using is_transparent = void;
  std::size_t operator()(std::string_view text) const { return std::hash<std::string_view>{}(text); }
};
using WordCache = std::unordered_map<std::string, FontSet::Shaped, WordHash, std::equal_to<>>;

struct Loaded {
  page::Font font;
  FontHandle handle;
  FontSet::Vertical vertical;
  WordCache words[3]; ///< by their figures; shaped at 1 pt
};

std::string postscript_name(hb_face_t *face, const std::string &otherwise) {
  char name[128];
  unsigned size = sizeof name;
  hb_ot_name_get_utf8(face, HB_OT_NAME_ID_POSTSCRIPT_NAME, HB_LANGUAGE_INVALID, &size, name);
  return size > 0 ? std::string(name, size) : otherwise;
}

base::Pt metric(hb_font_t *font, hb_ot_metrics_tag_t tag, double em) {
  hb_position_t value = 0;
  hb_ot_metrics_get_position_with_fallback(font, tag, &value);
  return {value / em};
}

Loaded loaded(std::shared_ptr<const std::string> bytes, const style::Face &face) {
  // The blob borrows the bytes, which live as long as page::Font does.
  hb_blob_t *blob = hb_blob_create(bytes->data(), static_cast<unsigned>(bytes->size()),
                                   HB_MEMORY_MODE_READONLY, nullptr, nullptr);
  hb_face_t *hb_face = hb_face_create(blob, 0);
  Loaded result;
  result.handle.reset(hb_font_create(hb_face));
  hb_font_t *font = result.handle.get();
  const double em = hb_face_get_upem(hb_face);
  result.font = {postscript_name(hb_face, face.name), std::move(bytes), em};
  result.vertical = {metric(font, HB_OT_METRICS_TAG_HORIZONTAL_ASCENDER, em),
                     -metric(font, HB_OT_METRICS_TAG_HORIZONTAL_DESCENDER, em),
                     metric(font, HB_OT_METRICS_TAG_CAP_HEIGHT, em),
                     metric(font, HB_OT_METRICS_TAG_X_HEIGHT, em)};
  hb_face_destroy(hb_face);
  hb_blob_destroy(blob);
  return result;
}

/// The faces have no glyph of their own for the hyphen that does not break; both have three bytes in UTF-8,
/// so that clusters still point into the text as it was given.
std::string drawn_text(std::string_view text) {
  std::string drawn(text);
  for (auto at = drawn.find("\xE2\x80\x91"); at != std::string::npos; at = drawn.find("\xE2\x80\x91", at + 3))
    drawn[at + 2] = '\x90';
  return drawn;
}

char32_t character_at(std::string_view text, std::size_t byte) {
  const auto points = base::code_points(text.substr(byte, 4 < text.size() - byte ? 4 : text.size() - byte));
  return points.empty() ? U'\uFFFD' : points.front();
}

} // namespace

struct FontSet::State {
  std::vector<Loaded> faces;
  std::map<std::string, int, std::less<>> index;
  BufferHandle buffer{hb_buffer_create()};
};

FontSet::FontSet() : state_(std::make_unique<State>()) {}
FontSet::FontSet(FontSet &&) noexcept = default;
FontSet &FontSet::operator=(FontSet &&) noexcept = default;
FontSet::~FontSet() = default;

std::optional<FontSet> FontSet::load(const std::filesystem::path &folder,
                                     const std::vector<style::Face> &faces, base::Diagnostics &sink) {
  const auto digests = recorded_digests(folder, sink);
  if (!digests)
    return std::nullopt;
  FontSet set;
  const auto errors_before = sink.errors();
  for (const auto &face : faces) {
    auto bytes = recorded_file(folder / face.file, *digests, base::Code::font_damaged, sink);
    if (!bytes)
      continue;
    set.state_->index.emplace(face.name, static_cast<int>(set.state_->faces.size()));
    set.state_->faces.push_back(loaded(std::make_shared<const std::string>(std::move(*bytes)), face));
  }
  if (sink.errors() != errors_before)
    return std::nullopt;
  return set;
}

int FontSet::index_of(std::string_view face) const {
  const auto it = state_->index.find(face);
  if (it == state_->index.end())
    throw std::out_of_range("no face named \"" + std::string(face) + "\" was loaded");
  return it->second;
}

std::vector<page::Font> FontSet::fonts() const {
  std::vector<page::Font> fonts;
  for (const auto &face : state_->faces)
    fonts.push_back(face.font);
  return fonts;
}

FontSet::Vertical FontSet::vertical(int font) const {
  return state_->faces.at(static_cast<std::size_t>(font)).vertical;
}

namespace {

FontSet::Shaped shaped_at_unit(hb_font_t *font, hb_buffer_t *buffer, double em, std::string_view text,
                               FontSet::Figures figures) {
  const std::string drawn = drawn_text(text);
  hb_buffer_reset(buffer);
  hb_buffer_set_cluster_level(buffer, HB_BUFFER_CLUSTER_LEVEL_MONOTONE_CHARACTERS);
  hb_buffer_add_utf8(buffer, drawn.data(), static_cast<int>(drawn.size()), 0, static_cast<int>(drawn.size()));
  hb_buffer_set_direction(buffer, HB_DIRECTION_LTR);
  hb_buffer_set_script(buffer, HB_SCRIPT_LATIN);
  hb_buffer_set_language(buffer, hb_language_from_string("en", -1));
  const hb_tag_t asked = figures == FontSet::Figures::fraction ? HB_TAG('f', 'r', 'a', 'c') : HB_TAG('t', 'n', 'u', 'm');
  const hb_feature_t features[] = {{HB_TAG('l', 'n', 'u', 'm'), 1, 0, HB_FEATURE_GLOBAL_END},
                                   {asked, 1, 0, HB_FEATURE_GLOBAL_END}};
  hb_shape(font, buffer, features, figures == FontSet::Figures::proportional ? 1 : 2);
  unsigned count = 0;
  const hb_glyph_info_t *infos = hb_buffer_get_glyph_infos(buffer, &count);
  const hb_glyph_position_t *positions = hb_buffer_get_glyph_positions(buffer, &count);
  FontSet::Shaped shaped;
  shaped.glyphs.reserve(count);
  for (unsigned i = 0; i < count; ++i) {
    if (infos[i].codepoint == 0 && !shaped.missing)
      shaped.missing = character_at(text, infos[i].cluster);
    const base::Pt advance{positions[i].x_advance / em};
    shaped.glyphs.push_back({infos[i].codepoint,
                             advance,
                             {base::Pt{positions[i].x_offset / em}, base::Pt{-positions[i].y_offset / em}},
                             infos[i].cluster});
    shaped.width += advance;
  }
  return shaped;
}

FontSet::Shaped scaled(FontSet::Shaped shaped, double size) {
  for (auto &glyph : shaped.glyphs) {
    glyph.advance = glyph.advance * size;
    glyph.offset = {glyph.offset.x * size, glyph.offset.y * size};
  }
  shaped.width = shaped.width * size;
  return shaped;
}

} // namespace

FontSet::Shaped FontSet::shape(int font, base::Pt size, std::string_view text, Figures figures) const {
  Loaded &face = state_->faces.at(static_cast<std::size_t>(font));
  WordCache &cache = face.words[static_cast<std::size_t>(figures)];
  auto it = cache.find(text);
  if (it == cache.end())
    it = cache
             .emplace(std::string(text), shaped_at_unit(face.handle.get(), state_->buffer.get(),
                                                        face.font.units_per_em, text, figures))
             .first;
  return scaled(it->second, size.v);
}

} // namespace strakebook::typeset

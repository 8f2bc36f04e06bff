#include "strakebook/paper/output/font_subset.h"

#include <fmt/format.h>

#include "strakebook/paper/output/pdf_failure.h"

namespace strakebook::output {

namespace {

constexpr std::size_t most_codes = 65'536;

Hb<hb_face_t> opened(const page::Font &font) {
  const Hb<hb_blob_t> blob(hb_blob_create(font.bytes->data(), static_cast<unsigned>(font.bytes->size()),
                                          HB_MEMORY_MODE_READONLY, nullptr, nullptr));
  Hb<hb_face_t> face(hb_face_create(blob.get(), 0));
  if (hb_face_get_glyph_count(face.get()) == 0)
    throw PdfFailure("opening the font " + font.name);
  return face;
}

} // namespace

FontSubset::FontSubset(const page::Font &font)
    : name_(font.name), bytes_(font.bytes), face_(opened(font)), font_(hb_font_create(face_.get())),
      codes_(1), codes_of_glyph_(hb_face_get_glyph_count(face_.get())) {}

std::uint16_t FontSubset::code_of(std::uint32_t glyph, std::string_view text) {
  if (glyph == 0 || glyph >= codes_of_glyph_.size())
    throw std::logic_error(fmt::format("glyph {} of {} stands for no character", glyph, name_));
  auto &known = codes_of_glyph_[glyph];
  for (auto code : known)
    if (codes_[code].text == text)
      return code;
  if (codes_.size() == most_codes)
    throw PdfFailure("more than 65,535 codes in the font " + name_);
  const auto code = static_cast<std::uint16_t>(codes_.size());
  const auto advance = static_cast<double>(hb_font_get_glyph_h_advance(font_.get(), glyph));
  codes_.push_back({glyph, std::string(text), advance * 1000 / hb_face_get_upem(face_.get())});
  known.push_back(code);
  return code;
}

} // namespace strakebook::output

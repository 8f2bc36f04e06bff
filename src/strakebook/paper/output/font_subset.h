#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include <hb.h>

#include "strakebook/paper/page/page.h"

namespace strakebook::output {

struct HbRelease {
  void operator()(hb_blob_t *it) const { hb_blob_destroy(it); }
  void operator()(hb_face_t *it) const { hb_face_destroy(it); }
  void operator()(hb_font_t *it) const { hb_font_destroy(it); }
};
template <class T> using Hb = std::unique_ptr<T, HbRelease>;

/// What a document uses of one face. A character code is given to each pair of a glyph and the text it stands
/// for, so that one glyph can be extracted as different texts (a hyphen and a non-breaking hyphen; a capital
/// that a style made of a small letter).
class FontSubset {
public:
  struct Code {
    std::uint32_t glyph = 0;
    std::string text; ///< UTF-8; empty: stands for nothing by itself
    double width = 0; ///< thousandths of the type size
  };

  explicit FontSubset(const page::Font &font); ///< throws PdfFailure for bytes that are no font

  /// The code, 1 to 65535, of this pair; the same for the same pair. Throws std::logic_error for a glyph that
  /// the face does not have or that stands for a missing character, and PdfFailure when there are no codes
  /// left.
  std::uint16_t code_of(std::uint32_t glyph, std::string_view text);

  double width_of(std::uint16_t code) const { return codes_[code].width; }
  bool used() const { return codes_.size() > 1; }
  const std::vector<Code> &codes() const { return codes_; } ///< by code; code 0 is for missing characters
  const std::string &name() const { return name_; }
  hb_face_t *face() const { return face_.get(); }
  hb_font_t *font() const { return font_.get(); } ///< in units of the face

private:
  std::string name_;
  std::shared_ptr<const std::string> bytes_;
  Hb<hb_face_t> face_;
  Hb<hb_font_t> font_;
  std::vector<Code> codes_;
  std::vector<std::vector<std::uint16_t>> codes_of_glyph_;
};

} // namespace strakebook::output

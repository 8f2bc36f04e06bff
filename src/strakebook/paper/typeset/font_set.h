#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/geometry.h"
#include "strakebook/paper/page/page.h"
#include "strakebook/paper/style/style.h"

namespace strakebook::typeset {

/// The bundled faces, loaded and verified against fonts/SHA256SUMS. Moves, does not copy.
class FontSet {
public:
  /// Loads every face of the style from `folder`. A file that is missing or whose digest differs adds font_damaged.
  static std::optional<FontSet> load(const std::filesystem::path &folder, const std::vector<style::Face> &faces,
                                     base::Diagnostics &sink);
  FontSet(FontSet &&) noexcept;
  FontSet &operator=(FontSet &&) noexcept;
  ~FontSet();

  int index_of(std::string_view face) const; ///< throws std::out_of_range for a face no style names
  std::vector<page::Font> fonts() const;     ///< in index order

  struct Vertical { base::Pt ascent, descent, cap_height, x_height; }; ///< at 1 pt size, all positive
  Vertical vertical(int font) const;

  struct Shaped {
    std::vector<page::Glyph> glyphs; ///< at the size asked
    base::Pt width;
    std::optional<char32_t> missing; ///< a character this face does not have
  };
  /// How the figures of a word are set: of their own width, of one width, or the two of "3/16" as a fraction.
  enum class Figures { proportional, tabular, fraction };
  /// Kerning and ligatures on; lining figures. Words are cached.
  Shaped shape(int font, base::Pt size, std::string_view text, Figures figures) const;
  Shaped shape(int font, base::Pt size, std::string_view text, bool tabular) const {
    return shape(font, size, text, tabular ? Figures::tabular : Figures::proportional);
  }

private:
  FontSet();
  struct State;
  std::unique_ptr<State> state_;
};

} // namespace strakebook::typeset

#include "strakebook/paper/output/cairo_face.h"

#include <cairo-ft.h>
#include <stdexcept>

namespace strakebook::output {

namespace {

/// cairo keeps faces in a cache of its own, longer than our handles live: it owns this and lets go when it is
/// done.
struct LoadedFace {
  explicit LoadedFace(const page::Font &font) : bytes(font.bytes) {
    if (FT_Init_FreeType(&library) != 0)
      throw std::runtime_error("FreeType does not start");
    const auto *data = reinterpret_cast<const FT_Byte *>(bytes->data());
    if (FT_New_Memory_Face(library, data, static_cast<FT_Long>(bytes->size()), 0, &face) == 0)
      return;
    FT_Done_FreeType(library);
    throw std::runtime_error("FreeType cannot open the font " + font.name);
  }
  LoadedFace(const LoadedFace &) = delete;
  LoadedFace &operator=(const LoadedFace &) = delete;
  ~LoadedFace() {
    FT_Done_Face(face);
    FT_Done_FreeType(library);
  }

  std::shared_ptr<const std::string> bytes;
  FT_Library library = nullptr;
  FT_Face face = nullptr;
};

void let_go(void *loaded) { delete static_cast<LoadedFace *>(loaded); }

} // namespace

Cairo<cairo_font_face_t> cairo_face(const page::Font &font) {
  static const cairo_user_data_key_t key{};
  auto loaded = std::make_unique<LoadedFace>(font);
  Cairo<cairo_font_face_t> face(cairo_ft_font_face_create_for_ft_face(loaded->face, FT_LOAD_NO_HINTING));
  if (cairo_font_face_set_user_data(face.get(), &key, loaded.get(), let_go) != CAIRO_STATUS_SUCCESS)
    throw std::runtime_error("cairo cannot take the font " + font.name);
  loaded.release();
  return face;
}

} // namespace strakebook::output

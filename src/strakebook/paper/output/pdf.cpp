#include "strakebook/paper/output/output.h"

#include <fmt/format.h>
#include <optional>
#include <stdexcept>

#include "strakebook/paper/output/pdf_attachments.h"
#include "strakebook/paper/output/pdf_colour.h"
#include "strakebook/paper/output/pdf_content.h"
#include "strakebook/paper/output/pdf_font.h"
#include "strakebook/paper/output/pdf_image.h"
#include "strakebook/paper/output/pdf_metadata.h"
#include "strakebook/paper/output/pdf_navigation.h"
#include "strakebook/paper/output/pdf_structure.h"
#include "strakebook/paper/output/sound.h"

namespace strakebook::output {

namespace {

/// The fonts of a file. A font's object is there from the first page that uses it and is filled in when all
/// pages are drawn.
struct PdfFonts {
  PdfFonts(PdfFile &to, const std::vector<page::Font> &fonts) : file(to), objects(fonts.size()) {
    for (const auto &font : fonts)
      subsets.emplace_back(font);
  }

  PdfDict object(std::size_t index) {
    if (!objects[index])
      objects[index] = file.indirect_dict();
    return *objects[index];
  }

  void write() {
    for (std::size_t i = 0; i < objects.size(); ++i)
      if (objects[i])
        write_font(file, *objects[i], subsets[i]);
  }

  PdfFile &file;
  std::vector<FontSubset> subsets;
  std::vector<std::optional<PdfDict>> objects;
};

PdfDict resources(PdfFile &file, const PageContent &content, PdfFonts &fonts, PdfImages &images) {
  auto result = file.dict(), font_names = file.dict(), picture_names = file.dict();
  for (std::size_t i = 0; i < content.fonts.size(); ++i)
    if (content.fonts[i])
      font_names.put(fmt::format("F{}", i).c_str(), fonts.object(i));
  for (std::size_t i = 0; i < content.pictures.size(); ++i)
    picture_names.put(fmt::format("P{}", i).c_str(), images.object(content.pictures[i]));
  return result.put("Font", font_names).put("XObject", picture_names);
}

std::string written(const page::Document &document, const media::ImageStore &store, PdfKind kind) {
  PdfFile file(kind);
  TagTree tree;
  PdfFonts fonts(file, document.fonts);
  PdfImages images(file, store);
  std::vector<PdfDict> pages;
  for (std::size_t i = 0; i < document.pages.size(); ++i) {
    const auto &page = document.pages[i];
    const auto content = draw_page(page, static_cast<int>(i), fonts.subsets, tree);
    pages.push_back(file.add_page(page.size, content.operators));
    pages.back().put("Resources", resources(file, content, fonts, images));
  }
  fonts.write();
  const auto links = add_navigation(file, pages, document, tree);
  add_attachments(file, document.attachments);
  add_structure(file, pages, links, tree);
  add_output_intent(file);
  add_metadata(file, document.metadata);
  return file.save();
}

std::string refused(base::Code code, const char *why, base::Diagnostics &sink) {
  sink.add({.code = code,
            .span = {},
            .message = fmt::format("the PDF cannot be written: {}", why),
            .expected = {},
            .write = {},
            .subject = {}});
  return {};
}

} // namespace

std::string pdf(const page::Document &document, const media::ImageStore &images, base::Diagnostics &sink,
                PdfKind kind) {
  if (document.pages.empty())
    throw std::logic_error("a document without pages");
  for (std::size_t i = 0; i < document.pages.size(); ++i)
    require_sound(document, i);
  try {
    return written(document, images, kind);
  } catch (const PdfTooLarge &failure) {
    return refused(base::Code::output_too_large, failure.what(), sink);
  } catch (const PdfFailure &failure) {
    return refused(base::Code::output_failed, failure.what(), sink);
  }
}

} // namespace strakebook::output

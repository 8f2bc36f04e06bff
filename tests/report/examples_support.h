#pragma once

#include <algorithm>
#include <filesystem>
#include <stdexcept>
#include <string>
#include <vector>

#include "strakebook/paper/typeset/font_set.h"
#include "strakebook/report.h"

/// The examples as finished pages.
namespace examples {

namespace sb = strakebook;

/// How lines of the style `text` look on a page.
struct TextLook {
  std::vector<int> faces;          ///< upright, strong and italic
  std::vector<double> blanks;      ///< of each, at the size of the style
  sb::base::Pt size, half_step;
  sb::base::Pt first_baseline;     ///< from the top of a line to its baseline

  bool has(const sb::page::Run &run) const {
    return run.size == size && std::find(faces.begin(), faces.end(), run.font) != faces.end();
  }
  double blank(const sb::page::Run &run) const {
    for (std::size_t i = 0; i < faces.size(); ++i)
      if (faces[i] == run.font)
        return blanks[i];
    throw std::out_of_range("a run in another face");
  }
};

inline std::vector<std::string> names() {
  std::vector<std::string> found;
  for (const auto &entry : std::filesystem::directory_iterator(STRAKEBOOK_ROOT "/example-surveys"))
    if (entry.is_directory())
      found.push_back(entry.path().filename().string());
  return found;
}

struct Example {
  explicit Example(const std::string &name)
      : the_case(opened(name, sink)), pages(sb::set_pages(the_case, sb::installed_resources(), sink).value().pages) {}

  TextLook text_look() const {
    const auto &style = the_case.house.style;
    const auto &text = sb::style::text_style(style, "text");
    sb::base::Diagnostics found;
    const auto fonts = *sb::typeset::FontSet::load(sb::installed_resources().fonts, style.faces, found);
    TextLook look{{}, {}, text.size, style.grid / 2, text.leading / 2 + text.size * 0.353};
    for (const auto &face : {text.face, text.strong_face, text.italic_face}) {
      look.faces.push_back(fonts.index_of(face));
      look.blanks.push_back(fonts.shape(look.faces.back(), text.size, " ", false).width.v);
    }
    return look;
  }

  sb::base::Diagnostics sink;
  sb::Case the_case;
  sb::page::Document pages;

private:
  static sb::Case opened(const std::string &name, sb::base::Diagnostics &sink) {
    const std::filesystem::path file = std::filesystem::path(STRAKEBOOK_ROOT "/example-surveys") / name / "survey.yaml";
    auto found = sb::open_case(file, sb::installed_resources(), sink);
    if (!found || !sink.ok())
      throw std::runtime_error(name + " cannot be opened");
    return std::move(*found);
  }
};

} // namespace examples

#pragma once

#include <string>

#include "strakebook/paper/media/media.h"
#include "strakebook/paper/page/page.h"

/// Pages made by hand, without the typesetter: text shaped by HarfBuzz alone, in two of the bundled faces.
namespace sample {

namespace page = strakebook::page;
namespace base = strakebook::base;

enum Face { serif = 0, sans = 1 };

std::vector<page::Font> fonts();
page::Run run(Face face, double size, double x, double y, const std::string &text);
/// An element right under the document; its key is given only where two of a role must differ.
page::TagPath tag(page::Role role, std::int64_t key = 0);
page::Item item(page::TagPath tag, std::string id, decltype(page::Item::what) what);
page::Path line(double x1, double y1, double x2, double y2);

/// A picture of a few coloured fields, as the photo gate would hand it over.
strakebook::media::Image picture(int width, int height);

/// Two A4 pages with text, a turned label, a path, a picture shown twice, a link each way and three
/// bookmarks.
page::Document document();
strakebook::media::ImageStore images();

std::string file(const std::string &path_from_root); ///< the bytes of a file of the project

} // namespace sample

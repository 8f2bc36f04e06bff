#include "paper/output/sample.h"

#include <fstream>
#include <hb.h>
#include <iterator>

#include "strakebook/paper/media/encode.h"

namespace sample {

namespace {

std::vector<page::Glyph> shaped(Face face, double size, const std::string &text) {
  const auto bytes = fonts()[face].bytes;
  auto *blob = hb_blob_create(bytes->data(), static_cast<unsigned>(bytes->size()), HB_MEMORY_MODE_READONLY,
                              nullptr, nullptr);
  auto *hb_face = hb_face_create(blob, 0);
  auto *font = hb_font_create(hb_face);
  auto *buffer = hb_buffer_create();
  hb_buffer_add_utf8(buffer, text.data(), static_cast<int>(text.size()), 0, -1);
  hb_buffer_guess_segment_properties(buffer);
  hb_shape(font, buffer, nullptr, 0);
  unsigned count = 0;
  const auto *info = hb_buffer_get_glyph_infos(buffer, &count);
  const auto *position = hb_buffer_get_glyph_positions(buffer, &count);
  const double scale = size / hb_face_get_upem(hb_face);
  std::vector<page::Glyph> glyphs;
  for (unsigned i = 0; i < count; ++i)
    glyphs.push_back({.id = info[i].codepoint,
                      .advance = {position[i].x_advance * scale},
                      .offset = {{position[i].x_offset * scale}, {-position[i].y_offset * scale}},
                      .cluster = info[i].cluster});
  hb_buffer_destroy(buffer);
  hb_font_destroy(font);
  hb_face_destroy(hb_face);
  hb_blob_destroy(blob);
  return glyphs;
}

page::Page first_page() {
  page::Page page{.size = {{595.28}, {841.89}}, .frames = {}, .items = {}};
  auto &items = page.items;
  items.push_back(item({}, "part/1", page::Anchor{{{68}, {90}}}));
  items.push_back(
      item(tag(page::Role::heading), "part/1", run(serif, 15, 68, 100, "Office of the first officer")));
  items.push_back(item(tag(page::Role::paragraph), "text/1",
                       run(serif, 9.75, 68, 126, "Plate 5\xC2\xBD mm, AV To. \xE2\x89\xA4 6\xC2\xB0 ")));
  items.push_back(item(tag(page::Role::paragraph, 1), "label/1", run(sans, 7.5, 220, 126, "station 4")));
  items.push_back(item(tag(page::Role::link), "link/1", page::Link{{{{68}, {118}}, {{60}, {12}}}, "part/2"}));
  auto turned = run(sans, 8, 60, 400, "not read");
  turned.upright = false;
  turned.colour = {0.6, 0.1, 0.1};
  items.push_back(item(tag(page::Role::figure), "figure/1", turned));
  items.push_back(item(tag(page::Role::figure), "figure/1", line(68, 200, 300, 260)));
  items.push_back(
      item(tag(page::Role::figure, 1), "photo/1", page::Picture{picture(8, 6).ref, {{{68}, {300}}, {{160}, {120}}}}));
  return page;
}

page::Page second_page() {
  page::Page page{.size = {{841.89}, {595.28}}, .frames = {}, .items = {}};
  page.items.push_back(item({}, "part/2", page::Anchor{{{60}, {80}}}));
  page.items.push_back(item(tag(page::Role::heading, 2), "part/2", run(serif, 15, 60, 90, "Shell map")));
  page.items.push_back(item(tag(page::Role::link, 2), "link/2", page::Link{{{{60}, {78}}, {{80}, {14}}}, "part/1"}));
  page.items.push_back(
      item(tag(page::Role::figure, 2), "photo/1", page::Picture{picture(8, 6).ref, {{{60}, {120}}, {{80}, {60}}}}));
  return page;
}

} // namespace

std::string file(const std::string &path_from_root) {
  std::ifstream in(std::string(STRAKEBOOK_ROOT "/") + path_from_root, std::ios::binary);
  if (!in)
    throw std::runtime_error("no file " + path_from_root);
  return {std::istreambuf_iterator<char>(in), {}};
}

std::vector<page::Font> fonts() {
  static const std::vector<page::Font> both = {
      {"SourceSerif4-Regular", std::make_shared<const std::string>(file("fonts/SourceSerif4_400Regular.ttf")),
       1000},
      {"SourceSans3-Regular", std::make_shared<const std::string>(file("fonts/SourceSans3_400Regular.ttf")),
       1000}};
  return both;
}

page::Run run(Face face, double size, double x, double y, const std::string &text) {
  return {.font = face,
          .size = {size},
          .origin = {{x}, {y}},
          .colour = {},
          .text = text,
          .glyphs = shaped(face, size, text),
          .upright = true};
}

page::TagPath tag(page::Role role, std::int64_t key) {
  return page::under({}, {.role = role, .key = key, .level = role == page::Role::heading ? 1 : 0});
}

page::Item item(page::TagPath tag, std::string id, decltype(page::Item::what) what) {
  return {.tag = std::move(tag), .id = std::move(id), .what = std::move(what)};
}

page::Path line(double x1, double y1, double x2, double y2) {
  return {.steps = {page::Move{{{x1}, {y1}}}, page::Line{{{x2}, {y2}}}},
          .fill = {},
          .stroke = page::Stroke{.width = {0.75}, .colour = {0.2, 0.2, 0.2}, .dash = {{3}, {1.5}}}};
}

strakebook::media::Image picture(int width, int height) {
  strakebook::media::Pixels pixels{width, height, {}};
  for (int y = 0; y < height; ++y)
    for (int x = 0; x < width; ++x) {
      pixels.rgb += static_cast<char>(255 * x / width);
      pixels.rgb += static_cast<char>(255 * y / height);
      pixels.rgb += static_cast<char>(128);
    }
  return {.ref = {"picture-" + std::to_string(width) + "x" + std::to_string(height), width, height},
          .given = {width, height},
          .coding = strakebook::media::Image::Coding::deflated,
          .components = 3,
          .data = strakebook::media::deflate_rows(pixels)};
}

page::Document document() {
  page::Document document;
  document.fonts = fonts();
  document.pages = {first_page(), second_page()};
  document.outline = {{1, "Office", "part/1"}, {2, "Map \xE2\x80\x93 shell", "part/2"}, {1, "End", "part/2"}};
  document.metadata = {.title = "Hull <plate> & \xC2\xBD",
                       .author = "A Surveyor",
                       .subject = "Thickness",
                       .language = "en-GB",
                       .date = "2026-10-21",
                       .creator = "strakebook test"};
  return document;
}

strakebook::media::ImageStore images() {
  auto image = picture(8, 6);
  return {{image.ref.digest, image}};
}

} // namespace sample

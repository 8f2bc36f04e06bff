#include "cli/preview.h"

#include <algorithm>
#include <string_view>

#include <fmt/format.h>

#include "cli/inputs.h"
#include "strakebook/base/text.h"

namespace strakebook::cli {

namespace {

PictureForm form_of(const Arguments &arguments) {
  return {.kind = arguments.picture == "svg" ? PictureKind::svg : PictureKind::png, .dpi = static_cast<double>(arguments.dpi),
          .margin = arguments.margin};
}

void absent_page(int page, std::size_t pages, base::Diagnostics &sink) {
  sink.add({.code = base::Code::out_of_range,
            .message = fmt::format("page {} was asked for, and the report has {}", page, pages),
            .expected = fmt::format("pages from 1 to {}", pages),
            .write = fmt::format("--pages 1-{}", pages)});
}

/// Indices of the pages asked for, each once, in their order.
std::vector<std::size_t> chosen_pages(const Arguments &arguments, std::size_t count, base::Diagnostics &sink) {
  std::vector<bool> chosen(count, arguments.pages.empty() && arguments.figures.empty());
  for (const auto &range : arguments.pages) {
    if (static_cast<std::size_t>(range.last) > count) {
      absent_page(range.last, count, sink);
      continue;
    }
    std::fill(chosen.begin() + range.first - 1, chosen.begin() + range.last, true);
  }
  std::vector<std::size_t> pages;
  for (std::size_t i = 0; i < count; ++i)
    if (chosen[i]) pages.push_back(i);
  return pages;
}

/// Labels are printed with a blank that does not break, which nobody types.
std::string typed(std::string label) {
  constexpr std::string_view no_break = "\xC2\xA0";
  for (auto at = label.find(no_break); at != std::string::npos; at = label.find(no_break)) label.replace(at, no_break.size(), " ");
  return label;
}

void absent_figure(const std::string &asked, const std::vector<Figure> &figures, base::Diagnostics &sink) {
  std::vector<std::string> ids, shown;
  for (const auto &figure : figures) {
    ids.push_back(figure.id);
    shown.push_back(figure.label.empty() ? figure.id : fmt::format("{} ({})", figure.id, typed(figure.label)));
  }
  const auto near = base::nearest(asked, ids);
  sink.add({.code = base::Code::unknown_word,
            .message = fmt::format("the report has no figure or photograph \"{}\"", asked),
            .expected = fmt::format("one of: {}", fmt::join(shown, "; ")),
            .write = ids.empty() ? "--pages 1" : fmt::format("--figure {}", near.value_or(ids.front()))});
}

/// By its id, or by its label as printed.
const Figure *figure_named(const std::string &asked, const std::vector<Figure> &figures) {
  const auto found = std::ranges::find_if(figures, [&](const Figure &f) { return f.id == asked || (!f.label.empty() && typed(f.label) == typed(asked)); });
  return found == figures.end() ? nullptr : &*found;
}

/// An id as the name of a file: letters and figures as they are, everything else a hyphen.
std::string file_name(std::string id) {
  const auto plain = [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_'; };
  std::ranges::replace_if(id, [&](char c) { return !plain(c); }, '-');
  return id;
}

void add_figure(const Figure &figure, const Opened &opened, const Arguments &arguments, std::vector<NamedPicture> &to,
                base::Diagnostics &sink) {
  auto parts = pictures_of(*opened.proof, figure, *opened.the_case, form_of(arguments));
  if (parts.empty()) absent_figure(figure.id, opened.proof->figures, sink);
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const std::string part = parts.size() > 1 ? fmt::format("-{}", i + 1) : "";
    to.push_back({fmt::format("{}{}.{}", file_name(figure.id), part, arguments.picture), std::move(parts[i])});
  }
}

} // namespace

std::vector<NamedPicture> pictures(const Opened &opened, const Arguments &arguments, base::Diagnostics &sink) {
  const auto &proof = *opened.proof;
  const auto pages = chosen_pages(arguments, proof.pages.pages.size(), sink);
  std::vector<const Figure *> figures;
  for (const auto &asked : arguments.figures) {
    const Figure *figure = figure_named(asked, proof.figures);
    if (!figure) absent_figure(asked, proof.figures, sink);
    else if (std::ranges::find(figures, figure) == figures.end()) figures.push_back(figure);
  }
  if (!sink.ok()) return {};
  std::vector<NamedPicture> drawn;
  for (const std::size_t i : pages)
    drawn.push_back({fmt::format("page-{:03}.{}", i + 1, arguments.picture),
                     picture_of(proof, i, *opened.the_case, form_of(arguments))});
  for (const auto *figure : figures) add_figure(*figure, opened, arguments, drawn, sink);
  return drawn;
}

Drawing draw_into(PictureFolder &folder, const Arguments &arguments, base::Diagnostics &sink) {
  const Opened opened = open_and_set(arguments, sink);
  if (!opened.proof) return {exit_for(sink), {}};
  const auto drawn = pictures(opened, arguments, sink);
  if (!sink.ok()) return {Exit::usage, {}};
  for (const auto &picture : drawn)
    if (is_input(*opened.the_case, arguments.survey, arguments.output / picture.name, sink)) return {exit_for(sink), {}};
  const auto kept = folder.keep(drawn, sink);
  return {exit_for(sink), kept};
}

} // namespace strakebook::cli

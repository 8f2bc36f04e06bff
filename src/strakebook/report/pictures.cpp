#include "strakebook/paper/output/output.h"
#include "strakebook/paper/output/reading_text.h"
#include "strakebook/report.h"

namespace strakebook {

namespace {

output::Spoken spoken_in(const Proof &proof) {
  output::Spoken spoken;
  for (const auto &figure : proof.figures)
    if (figure.drawn && !figure.spoken.empty()) spoken.emplace(figure.id, figure.spoken);
  return spoken;
}

std::string drawn(const Proof &proof, const output::View &view, const Case &the_case, const PictureForm &form,
                  const output::PictureWords &words) {
  if (form.kind == PictureKind::svg) return output::svg(proof.pages, view, the_case.images, words);
  return output::png(proof.pages, view, the_case.images, form.dpi);
}

} // namespace

std::string picture_of(const Proof &proof, std::size_t index, const Case &the_case, const PictureForm &form) {
  const auto view = output::sheet(proof.pages, index);
  return drawn(proof, view, the_case, form,
               {proof.pages.metadata.title + ", " + proof.page_names.at(index),
                output::reading_text(proof.pages.pages[index], spoken_in(proof))});
}

std::vector<std::string> pictures_of(const Proof &proof, const Figure &figure, const Case &the_case,
                                     const PictureForm &form) {
  std::vector<std::string> pictures;
  for (std::size_t i = 0; i < proof.pages.pages.size(); ++i) {
    const auto view = output::cut_out(proof.pages, i, figure.ids, the_case.images, {form.margin});
    if (!view) continue;
    const std::string &name = figure.label.empty() ? figure.id : figure.label;
    pictures.push_back(drawn(proof, *view, the_case, form,
                             {proof.pages.metadata.title + ", " + name, figure.spoken}));
  }
  return pictures;
}

} // namespace strakebook

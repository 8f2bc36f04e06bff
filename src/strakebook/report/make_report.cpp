#include "strakebook/base/digest.h"
#include "strakebook/report/attachments.h"
#include "strakebook/report/kept.h"
#include "strakebook/report/kept_names.h"
#include "strakebook/report/kept_past.h"
#include "strakebook/report/make.h"

namespace strakebook {

namespace {

std::optional<Case> opened_with(const base::FileSet &files, const std::shared_ptr<const Case> &before, base::Diagnostics &sink) {
  auto originals = kept::read_originals(files, sink);
  const auto past = kept::read_past(files, sink);
  if (!originals || !past) return std::nullopt;
  if (before && past->empty()) {
    sink.error(base::Code::not_a_report, {}, "an issue before is kept, and no list of issues that went out");
    return std::nullopt;
  }
  const Opening opening{.originals = std::move(originals),
                        .history = [&](const survey::Survey &, base::Diagnostics &) { return History{*past, before}; }};
  const Resources layouts{base::Folder::kept(kept::in_folder(files, kept::installed_layouts)), {}};
  return opened({base::Folder::kept(files), std::string(kept::survey)}, layouts, opening, sink);
}

/// The issue before, without the one before that. What review then finds of it was answered when it went out, with that one at hand.
std::shared_ptr<const Case> case_before(const base::FileSet &files, base::Diagnostics &sink) {
  base::Diagnostics found;
  auto opened = opened_with(files, nullptr, found);
  if (opened) return std::make_shared<const Case>(std::move(*opened));
  for (const auto &one : found.all()) sink.add(one);
  return nullptr;
}

} // namespace

std::optional<Case> open_kept(const base::FileSet &files, const std::string &digest, base::Diagnostics &sink) {
  std::shared_ptr<const Case> before;
  if (const auto earlier = kept::in_folder(files, kept::before); !earlier.empty()) {
    before = case_before(earlier, sink);
    if (!before) return std::nullopt;
  }
  auto the_case = opened_with(files, before, sink);
  if (the_case) the_case->issued_digest = digest;
  return the_case;
}

std::optional<MadeReport> make_document(const base::FileSet &files, int addendum, const Pages &pages_of, base::Diagnostics &sink) {
  base::Diagnostics found;
  const auto refused = [&] {
    for (const auto &one : found.all()) sink.add(one);
    return std::nullopt;
  };
  auto the_case = open_kept(files, {}, found);
  if (!the_case || !found.ok()) return refused();
  const auto &report = the_case->survey.report;
  const auto manifest = issue::manifest_of(files, report.number.text, report.issue, addendum, makers());
  MadeReport made{.pdf = {}, .manifest = issue::text_of(manifest)};
  the_case->issued_digest = issue::short_digest(base::sha256_hex(made.manifest));
  const auto told = found.all().size();
  auto pages = pages_of(*the_case, found);
  if (!pages || !found.ok()) return refused();
  attach_inputs(*pages, files, manifest, the_case->house);
  made.pdf = pdf_of(*pages, *the_case, found);
  if (!found.ok()) return refused();
  for (std::size_t i = told; i < found.all().size(); ++i) sink.add(found.all()[i]);
  return made;
}

std::optional<MadeReport> make_report(const base::FileSet &files, const Resources &resources, base::Diagnostics &sink) {
  const auto pages_of = [&](const Case &the_case, base::Diagnostics &found) -> std::optional<page::Document> {
    auto proof = set_pages(the_case, resources, found);
    if (!proof) return std::nullopt;
    return std::move(proof->pages);
  };
  return make_document(files, 0, pages_of, sink);
}

} // namespace strakebook

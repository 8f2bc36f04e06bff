#pragma once

#include <string>

#include "strakebook/base/digest.h"
#include "strakebook/issue/issued_folder.h"

/// Entries of a register for tests, with the files that they tell of.
namespace strakebook::sample {

inline issue::KeptFile kept(const std::string &path, const std::string &bytes) { return {path, base::sha256_hex(bytes), bytes.size()}; }

struct Issued {
  issue::Entry entry;
  base::FileSet files;
};

/// An issue whose document holds `bytes`, with one notice where it replaces another.
inline Issued issued(const std::string &report, int number, const std::string &bytes = "%PDF the report") {
  Issued made;
  issue::Entry &entry = made.entry;
  entry.report = report;
  entry.issue = number;
  entry.state = "final";
  entry.date = {2026, 10, 20 + number};
  entry.folder = issue::folder_name(report, number, 0);
  entry.document = entry.unsigned_document = kept(entry.folder + ".pdf", bytes);
  entry.manifest = base::sha256_hex("manifest of " + bytes);
  entry.inputs = {kept("readings/hull.csv", "row,station\n"), kept("survey.yaml", "format: 1\n")};
  entry.makers = {"strakebook 0.1.0 (sources 5d41)", {"harfbuzz 6.0.0", "libharu 2.4.3"}};
  entry.recipients = {{"the buyer", "by letter"}, {"the buyer's underwriter", ""}};
  made.files[entry.document.path] = bytes;
  if (number > 1) {
    entry.replaces = base::sha256_hex("%PDF the issue before");
    entry.reasons = {"SW 7: Digits exchanged in typing.", "decision B: It rested on SW 7."};
    made.files["recall-of-issue-1-to-the-buyer.pdf"] = "%PDF a notice";
    entry.beside = {kept("recall-of-issue-1-to-the-buyer.pdf", "%PDF a notice")};
  }
  return made;
}

inline base::SourcePtr as_file(std::string text) {
  return std::make_shared<const base::SourceFile>(base::SourceFile{"issued/register.txt", std::move(text)});
}

} // namespace strakebook::sample

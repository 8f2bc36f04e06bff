#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/folder.h"

/// The inputs that an issued report was made from, kept with it so that it can be made again.
namespace strakebook::issue {

/// Who made it: the program and the libraries that its bytes depend on, "harfbuzz 6.0.0".
struct Makers {
  std::string tool;  ///< with the digest of its sources
  std::vector<std::string> libraries;
  bool operator==(const Makers &) const = default;
};

/// A file of the kept inputs.
struct KeptFile {
  std::string path;   ///< "survey.yaml", "before/survey.yaml"
  std::string digest; ///< SHA-256
  std::size_t bytes = 0;
  bool operator==(const KeptFile &) const = default;
};

/// The list of what is kept: plain text, one file a line; its own digest is the short one printed on every page.
struct Manifest {
  std::string report;
  int issue = 0;
  int addendum = 0; ///< 0: the report itself
  Makers makers;
  std::vector<KeptFile> files; ///< by path
};
inline constexpr std::string_view manifest_name = "manifest.txt";

Manifest manifest_of(const base::FileSet &files, std::string report, int issue, int addendum, Makers makers);
std::string text_of(const Manifest &manifest);
/// nullopt: it is not what text_of() makes of any manifest, to the byte.
std::optional<Manifest> read_manifest(std::string_view text);

/// What is to lie with a report, attached to it or beside it: the manifest, and each file once; of several that are equal, as in what is
/// kept of the issue before, the first by path.
base::FileSet laid_down(const base::FileSet &files, const Manifest &manifest);
/// The kept inputs again, from what lies there: every file that the manifest lists, by its digest. Not there: one that is not among
/// `lying`, or is altered. Nothing where it comes to more than a gigabyte.
base::FileSet taken_up(const Manifest &manifest, const base::FileSet &lying);

/// The first twelve hexadecimal digits of a digest in fours: "3fa9 12c4 77b0".
std::string short_digest(std::string_view digest);

} // namespace strakebook::issue

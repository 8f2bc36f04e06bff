#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/date.h"
#include "strakebook/base/diagnostic.h"
#include "strakebook/issue/kept.h"

/// The register of what was issued: plain text that one can read and compare, each entry chained to the one before by a digest.
namespace strakebook::issue {

struct Sent {
  std::string who, how;
  bool operator==(const Sent &) const = default;
};

/// One issue of a report, or one addendum to it.
struct Entry {
  std::string report;
  int issue = 0;
  int addendum = 0; ///< 0: the report itself
  std::string state;
  base::Date date;
  std::string folder;            ///< where its files lie, beside the register: "RD-2644-issue-1"
  KeptFile document;             ///< as delivered: signed where there was a key
  KeptFile unsigned_document;    ///< the same before the signature was added
  std::string signer;            ///< SHA-256 of the certificate; empty: not signed
  std::string manifest;          ///< digest of the manifest
  std::vector<KeptFile> inputs;
  std::vector<KeptFile> beside;  ///< notices, the stamped copy of the issue before, inputs kept beside: paths in `folder`
  std::string replaces;          ///< digest of the document that this one replaces; empty: none
  std::vector<std::string> reasons; ///< of a replacement: a line a change
  Makers makers;
  std::vector<Sent> recipients;
  bool operator==(const Entry &) const = default;
};

struct Register {
  std::vector<Entry> entries;
  std::string text; ///< as it stands in the file

  /// The entry of an issue (addendum 0) or addendum; nullptr: none.
  const Entry *of(std::string_view report, int issue, int addendum) const;
  const Entry *last_issue(std::string_view report) const;
};

/// Reads and checks a register: every line, every chain. The first fault is added as register_broken with its line; what was read up
/// to there is returned.
Register read_register(const base::SourcePtr &file, base::Diagnostics &sink);

/// The register with one more entry; the old text is its beginning, to the byte.
std::string with_entry(const Register &old, const Entry &entry);

} // namespace strakebook::issue

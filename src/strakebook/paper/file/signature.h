#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

/// The one change that may follow a written PDF: an incremental update with a signature, last.
namespace strakebook::file {

/// What the signature dictionary says beside the signature itself.
struct SignatureWords {
  std::string name;     ///< who signs
  std::string reason;
  std::string location;
  std::string date;     ///< "2026-10-21", the day that the survey says it is signed; never the clock
};

/// A PDF with room for a signature.
struct Prepared {
  std::string bytes;
  std::size_t hole = 0, hole_end = 0; ///< of the hexadecimal text with its brackets: what the signature does not cover
  /// The bytes that are signed: all but the hole.
  std::string covered() const;
};

/// `pdf` with the update appended, its /Contents empty. Throws std::logic_error where `pdf` was not written by this program.
Prepared prepared(std::string_view pdf, const SignatureWords &words);

/// The signature (DER) put in. nullopt where it does not fit.
std::optional<std::string> filled(const Prepared &prepared, std::string_view der);

/// What was found of a file's revisions.
struct Revisions {
  std::size_t first = 0; ///< bytes of the file as written, before any update
  bool more = false;     ///< something follows those
  /// The one signature update, exactly as prepared() writes it for its words, ending at the last byte.
  struct Signed {
    SignatureWords words;
    std::string der, covered;
  };
  std::optional<Signed> signature;
};
/// nullopt: no PDF that ends as one. `more` without `signature`: bytes follow that are not a signature update of this program.
std::optional<Revisions> revisions(std::string_view pdf);

} // namespace strakebook::file

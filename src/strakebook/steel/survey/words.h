#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/date.h"
#include "strakebook/base/decimal.h"
#include "strakebook/base/measured.h"
#include "strakebook/base/provenance.h"
#include "strakebook/base/source.h"

namespace strakebook::survey {

/// Text as the surveyor wrote it. The reader refuses empty values, so an empty text means that nothing was
/// written.
struct Words {
  std::string text;
  base::SourceSpan span;
  bool given() const { return !text.empty(); }
};

/// "measured", "told, owner", "document, invoice 14" as what it means; nullopt for other words.
std::optional<base::Provenance> provenance_of(std::string_view source);

/// A value that may not have been written, with its place.
template <class T> using Given = std::optional<base::Located<T>>;

/// A stated fact with where it comes from.
struct Fact {
  Words text; ///< as written
  base::Provenance from;
};
struct LengthFact {
  base::Measured length;
  base::Provenance from;
  base::SourceSpan span;
};

/// Where on the hull: a row and a station measured from the datum.
struct Place {
  std::string row;
  base::Measured station;
  base::SourceSpan span;
};

/// Part of the hull: rows (or a whole zone) between two stations.
struct Reach {
  std::vector<std::string> rows;          ///< row ids; empty: the whole zone
  std::string zone;                       ///< zone id; empty: as rows say
  std::optional<base::Measured> from, to; ///< stations; absent: the whole length
  base::SourceSpan span;
};

/// A key and what it says, where order matters ("instead-of": {insert: reason}).
struct Named {
  std::string name;
  Words words;
};

} // namespace strakebook::survey

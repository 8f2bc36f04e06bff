#pragma once

#include <string>
#include <vector>

#include "strakebook/paper/content/document.h"

namespace bench {

/// A made report: `rows` rows of figures in tables of fifty, each row a target, and a page of justified prose with
/// references for every 150 rows. 2,400 rows make about 60 pages. The same each time.
strakebook::content::Document sample_document(int rows);

/// All words of a document's tables and prose, in order, for shaping alone.
std::vector<std::string> words_of(const strakebook::content::Document &document);

} // namespace bench

#pragma once

#include "strakebook/compose/voice.h"

namespace strakebook::compose {

/// Takes every reference out of a document: its words stay, page numbers and labels that typesetting would print go.
void unlink(content::Document &document);

} // namespace strakebook::compose

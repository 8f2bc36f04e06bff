#pragma once

#include "strakebook/issue/kept.h"
#include "strakebook/report.h"

namespace strakebook {

/// Attaches the manifest to pages, and the kept inputs that it lists if the house says so.
void attach_inputs(page::Document &pages, const base::FileSet &files, const issue::Manifest &manifest, const house::House &house);

} // namespace strakebook

#pragma once

#include <map>
#include <string>

#include "strakebook/house/house.h"
#include "support/temp_folder.h"

/// Layouts written for a test: a folder of installed ones (a copy of the real ones) and one beside the
/// survey.
namespace test {

class Layouts {
public:
  Layouts();

  void install(const std::string &file, const std::string &text) const; ///< among the installed layouts
  void beside(const std::string &file, const std::string &text) const;  ///< beside the survey
  /// Replaces the one place where `was` stands in an installed file; fails the test when there is not exactly
  /// one.
  void change(const std::string &file, const std::string &was, const std::string &now) const;

  std::optional<strakebook::house::House> read(const std::string &name,
                                               strakebook::base::Diagnostics &sink) const;
  /// Reads a layout that extends the base with `body`.
  std::optional<strakebook::house::House> extended(const std::string &body,
                                                   strakebook::base::Diagnostics &sink) const;

private:
  support::TempFolder root_;
};

/// The real layouts, as they are shipped.
std::optional<strakebook::house::House> shipped(const std::string &name, strakebook::base::Diagnostics &sink);

/// Exactly one diagnostic, of this code, and (unless empty) its message or remedy holds `part`. Otherwise
/// fails with all of them.
void check_only(const strakebook::base::Diagnostics &sink, strakebook::base::Code code,
                const std::string &part = {});

} // namespace test

#pragma once

#include <functional>
#include <string>
#include <sys/types.h>

#include "strakebook/base/apart.h"

namespace strakebook::base {

/// How a child says by its exit status why it gives no answer.
namespace child_exit {
inline constexpr int answered = 0, no_memory = 70, threw = 71, no_limits = 72;
}

/// The life of the child: takes its limits on, works, writes the answer as a frame to `pipe`, and leaves at once.
[[noreturn]] void be_child(const std::function<std::string()> &work, int pipe, pid_t parent, const ApartLimits &limits);

} // namespace strakebook::base

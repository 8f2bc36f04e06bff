#include "strakebook/base/apart.h"

#include <algorithm>
#include <cerrno>
#include <csignal>
#include <cstring>
#include <fcntl.h>
#include <optional>
#include <poll.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

#include <fmt/format.h>

#include "strakebook/base/apart_child.h"
#include "strakebook/base/apart_frame.h"

namespace strakebook::base {

namespace {

using Clock = std::chrono::steady_clock;

/// A file descriptor that is closed when it goes.
class Descriptor {
public:
  explicit Descriptor(int number) : number_(number) {}
  Descriptor(const Descriptor &) = delete;
  Descriptor &operator=(const Descriptor &) = delete;
  ~Descriptor() { close(); }
  int number() const { return number_; }
  void close() {
    if (number_ >= 0) ::close(number_);
    number_ = -1;
  }

private:
  int number_;
};

std::chrono::milliseconds left_until(Clock::time_point end) {
  return std::max(std::chrono::milliseconds{0},
                  std::chrono::duration_cast<std::chrono::milliseconds>(end - Clock::now()));
}

/// The next bytes of the pipe, empty at its end; nullopt when none came in time.
std::optional<std::string> next_bytes(int pipe, Clock::time_point end) {
  pollfd waiting{pipe, POLLIN, 0};
  const auto wait = left_until(end);
  const int ready = poll(&waiting, 1, static_cast<int>(wait.count()));
  if (ready == 0 || (ready < 0 && errno != EINTR)) return std::nullopt;
  if (ready < 0) return wait.count() > 0 ? next_bytes(pipe, end) : std::nullopt;
  std::string bytes(1u << 16, '\0');
  const auto count = read(pipe, bytes.data(), bytes.size());
  if (count < 0 && errno == EINTR) return next_bytes(pipe, end);
  bytes.resize(count > 0 ? static_cast<std::size_t>(count) : 0);
  return bytes;
}

/// How the child ended, once it has; nullopt when it goes on past `end`.
std::optional<int> status_by(pid_t child, Clock::time_point end) {
  while (true) {
    int status = 0;
    const pid_t ended = waitpid(child, &status, WNOHANG);
    if (ended == child) return status;
    if (ended < 0 && errno != EINTR) return 0;
    if (left_until(end).count() == 0) return std::nullopt;
    std::this_thread::sleep_for(std::chrono::microseconds{200});
  }
}

void end_child(pid_t child) {
  kill(child, SIGKILL);
  while (waitpid(child, nullptr, 0) < 0 && errno == EINTR) {
  }
}

std::string mebibytes(std::size_t bytes) { return fmt::format("{} MiB", bytes >> 20); }

Lost lost_by(int status, const ApartLimits &limits) {
  if (WIFSIGNALED(status) && WTERMSIG(status) == SIGXCPU)
    return {.how = fmt::format("took more than {} s of processor time", limits.cpu_seconds)};
  if (WIFSIGNALED(status))
    return {.how = fmt::format("was ended by signal {}, {}", WTERMSIG(status), sigdescr_np(WTERMSIG(status)))};
  switch (WEXITSTATUS(status)) {
  case child_exit::answered: return {.how = "gave an answer that is not whole"};
  case child_exit::no_memory: return {.how = "asked for more than " + mebibytes(limits.memory) + " of memory"};
  case child_exit::no_limits: return {.started = false, .how = "its limits cannot be set"};
  default: return {.how = fmt::format("ended with status {} and without an answer", WEXITSTATUS(status))};
  }
}

/// Reads what the child says, and sees it end.
std::variant<std::string, Lost> heard(pid_t child, int pipe, const ApartLimits &limits) {
  const auto end = Clock::now() + limits.wall;
  std::string said;
  auto more = next_bytes(pipe, end);
  while (more && !more->empty() && said.size() <= limits.answer + frame_size) {
    said += *more;
    more = next_bytes(pipe, end);
  }
  const bool too_much = said.size() > limits.answer + frame_size;
  const auto status = more && !too_much ? status_by(child, end) : std::nullopt;
  if (!status) end_child(child);
  if (too_much) return Lost{.how = "answered with more than " + mebibytes(limits.answer)};
  if (!status) return Lost{.how = fmt::format("gave no answer within {} s", std::chrono::duration<double>(limits.wall).count())};
  auto answer = unframed(said);
  if (answer) return std::move(*answer);
  return lost_by(*status, limits);
}

Lost not_started() { return {.started = false, .how = std::strerror(errno)}; }

} // namespace

std::variant<std::string, Lost> run_apart(const std::function<std::string()> &work, const ApartLimits &limits) {
  int ends[2];
  if (pipe2(ends, O_CLOEXEC) != 0) return not_started();
  Descriptor from_child(ends[0]), to_parent(ends[1]);
  const pid_t parent = getpid(), child = fork();
  if (child < 0) return not_started();
  if (child == 0) be_child(work, to_parent.number(), parent, limits);
  to_parent.close();
  return heard(child, from_child.number(), limits);
}

} // namespace strakebook::base

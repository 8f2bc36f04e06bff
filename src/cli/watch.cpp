#include "cli/watch.h"

#include <csignal>
#include <cstdio>
#include <ctime>
#include <optional>

#include <fmt/format.h>

#include "cli/preview.h"
#include "cli/watched.h"

namespace strakebook::cli {

namespace fs = std::filesystem;

namespace {

volatile std::sig_atomic_t ended = 0;

/// Ctrl-C and SIGTERM end the watch between two drawings: no file is ever left half written.
void end_on_signals() {
  struct sigaction action{};
  action.sa_handler = [](int) { ended = 1; };
  sigemptyset(&action.sa_mask);
  for (int signal : {SIGINT, SIGTERM}) sigaction(signal, &action, nullptr);
}

void wait_a_little() {
  const timespec quarter{0, 250'000'000};
  nanosleep(&quarter, nullptr); // a signal cuts it short
}

void say(const std::string &text) {
  std::fwrite(text.data(), 1, text.size(), stderr);
  std::fflush(stderr);
}

std::string said_of(const PictureFolder::Kept &kept, const fs::path &folder) {
  const std::string gone = kept.removed > 0 ? fmt::format(", {} removed", kept.removed) : "";
  return fmt::format("{}: {} drawn, {} as before{}\n", folder.string(), kept.written, kept.same, gone);
}

/// One drawing, with everything that is to be said of it.
void draw(PictureFolder &folder, const Arguments &arguments) {
  base::Diagnostics sink;
  const auto drawing = draw_into(folder, arguments, sink);
  say(shown(sink, arguments.format));
  if (sink.ok()) say(said_of(drawing.kept, arguments.output));
  else say(fmt::format("{}: the last good pictures stay until this is put right\n", arguments.output.string()));
}

} // namespace

Exit watch(PictureFolder &folder, const Arguments &arguments) {
  end_on_signals();
  const fs::path survey_folder = arguments.survey.has_parent_path() ? arguments.survey.parent_path() : fs::path(".");
  const std::vector<fs::path> folders = {survey_folder, resources_of(arguments).layouts.on_disk().value()};
  const auto own = [&](const fs::path &file) { return folder.wrote(file); };
  std::optional<Look> drawn;
  for (Look now = look_at(folders, own, {}); !ended; now = look_at(folders, own, now)) {
    if (!drawn || !same_content(now, *drawn)) {
      wait_a_little();
      const Look settled = look_at(folders, own, now);
      if (ended || !same_content(settled, now)) continue;
      drawn = settled;
      draw(folder, arguments);
      if (ended) break;
    }
    wait_a_little();
  }
  return Exit::written;
}

} // namespace strakebook::cli

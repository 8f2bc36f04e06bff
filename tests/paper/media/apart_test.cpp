#include <catch2/catch.hpp>

#include <csignal>
#include <cstdio>
#include <fcntl.h>
#include <sys/resource.h>
#include <thread>
#include <unistd.h>

#include "paper/media/gate.h"
#include "strakebook/base/apart_frame.h"
#include "strakebook/paper/media/refusal.h"

// A decoder that goes wrong does so in a child process. The wrong decoders below take the place of the right one.

using namespace std::chrono_literals;
using namespace strakebook;
using base::Code;
using media::Image;

namespace {

media::ImageLimits small_limits() {
  media::ImageLimits limits;
  limits.apart = {.memory = 64u << 20, .cpu_seconds = 1, .wall = 20s, .answer = 1u << 20};
  return limits;
}

Gate decoded_by(const std::function<Image(const std::string &)> &decode, const media::ImageLimits &limits = small_limits()) {
  return Gate("any bytes", "photos/p1.jpg", limits, Gate::as_given(),
              [&](const std::string &bytes, const media::Placing &, const media::ImageLimits &) { return decode(bytes); });
}

std::string death_by(const std::function<Image(const std::string &)> &decode,
                     const media::ImageLimits &limits = small_limits()) {
  return decoded_by(decode, limits).refusal(Code::decoding_died);
}

} // namespace

TEST_CASE("a decoder that crashes is told by its signal, and this program goes on") {
  CHECK(death_by([](const std::string &) -> Image {
          volatile int *volatile nowhere = nullptr;
          *nowhere = 1;
          return {};
        }) == "the decoder of photos/p1.jpg was ended by signal 11, Segmentation fault");
  CHECK_THAT(death_by([](const std::string &) -> Image { std::abort(); }), Catch::Contains("signal 6, Aborted"));
  CHECK_THAT(death_by([](const std::string &) -> Image {
               std::raise(SIGKILL); // as the kernel does when memory runs out
               return {};
             }),
             Catch::Contains("signal 9, Killed"));
}

TEST_CASE("a decoder that calculates for ever runs out of processor time") {
  CHECK_THAT(death_by([](const std::string &) -> Image {
               volatile bool on = true;
               while (on) {
               }
               return {};
             }),
             Catch::Contains("took more than 1 s of processor time"));
}

TEST_CASE("a decoder that waits for ever is ended") {
  auto limits = small_limits();
  limits.apart.wall = 200ms;
  const auto waits = [](const std::string &) -> Image {
    while (true) pause();
  };
  CHECK_THAT(death_by(waits, limits), Catch::Contains("gave no answer within 0.2 s"));
}

TEST_CASE("a decoder that takes memory for ever is stopped by its limit") {
  const auto hoards = [](const std::string &) -> Image {
    std::vector<std::string> kept;
    while (true) kept.emplace_back(4u << 20, 'x');
  };
  CHECK_THAT(death_by(hoards), Catch::Contains("asked for more than 64 MiB of memory"));
}

TEST_CASE("a decoder can open no file, and nothing that it prints is seen") {
  const Gate gate = decoded_by([](const std::string &) -> Image {
    std::puts("a line that no one asked for");
    const int file = open("/dev/null", O_RDWR);
    throw media::Refusal(file < 0 ? "no file can be opened" : "a file was opened");
  });
  CHECK_THAT(gate.refusal(), Catch::Contains("no file can be opened"));
}

TEST_CASE("an exit, an exception and an answer that is no picture are told apart") {
  CHECK_THAT(death_by([](const std::string &) -> Image { _exit(3); }),
             Catch::Contains("ended with status 3 and without an answer"));
  CHECK_THAT(death_by([](const std::string &) -> Image { _exit(0); }), Catch::Contains("an answer that is not whole"));
  CHECK_THAT(death_by([](const std::string &) -> Image { throw 1; }), Catch::Contains("without an answer"));
  CHECK_THAT(death_by([](const std::string &) -> Image { return {}; }), Catch::Contains("an answer that is no picture"));
  CHECK_THAT(death_by([](const std::string &) -> Image {
               return {.ref = {{}, 1, 1}, .given = {1, 1}, .data = "\xFF\xD8" + std::string(2u << 20, 'x') + "\xFF\xD9"};
             }),
             Catch::Contains("answered with more than 1 MiB"));
}

TEST_CASE("a picture is never larger than the file that it was made from") {
  const auto grown = [](const std::string &) -> Image {
    return {.ref = {{}, 9, 9}, .given = {3, 3}, .data = "\xFF\xD8 x \xFF\xD9"};
  };
  CHECK_THAT(death_by(grown), Catch::Contains("an answer that is no picture"));
}

TEST_CASE("no child, no picture, and the file is not to blame") {
  rlimit before{};
  REQUIRE(getrlimit(RLIMIT_NOFILE, &before) == 0);
  const rlimit none{0, before.rlim_max};
  REQUIRE(setrlimit(RLIMIT_NOFILE, &none) == 0);
  const Gate gate("any bytes");
  REQUIRE(setrlimit(RLIMIT_NOFILE, &before) == 0);
  CHECK_THAT(gate.refusal(Code::decoding_not_started),
             Catch::Contains("no process can be started to decode photos/p1.jpg: Too many open files"));
}

TEST_CASE("a frame comes back whole or not at all") {
  const auto frame = base::framed("answer");
  CHECK(base::unframed(frame) == "answer");
  CHECK(base::unframed(base::framed("")) == "");
  for (std::size_t length = 0; length < frame.size(); ++length)
    CHECK_FALSE(base::unframed(frame.substr(0, length)));
  CHECK_FALSE(base::unframed(frame + "more"));
  for (std::size_t at = 0; at < frame.size(); ++at) {
    auto damaged = frame;
    damaged[at] = static_cast<char>(damaged[at] ^ 1);
    CHECK_FALSE(base::unframed(damaged));
  }
}

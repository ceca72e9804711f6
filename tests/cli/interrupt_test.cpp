// Ctrl-C: the search ends, and what it has by then is written.
#include "cli/interrupt.h"

#include "support/command.h"
#include "support/terminal.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <csignal>
#include <filesystem>

using namespace wallwright::test;
using wallwright::cli::Interrupt;

namespace {

const std::string kStair = WW_SOURCE "/assets/demo/stair.json";
/// A search that nobody stopped would run into the time limit of the test.
const std::string kVeryLong = "80000";

void (*handler_of(int signal))(int) {
    struct sigaction now = {};
    sigaction(signal, nullptr, &now);
    return now.sa_handler;
}

/// The signal's handling as it was, when the test is over.
class KeptHandling {
  public:
    explicit KeptHandling(int signal) : signal_(signal) { sigaction(signal, nullptr, &old_); }
    ~KeptHandling() { sigaction(signal_, &old_, nullptr); }
    KeptHandling(const KeptHandling&) = delete;
    KeptHandling& operator=(const KeptHandling&) = delete;

  private:
    int signal_;
    struct sigaction old_ = {};
};

/// One that hangs and so many unlike ones waiting that all ways to add them are never tried.
std::string many_frames() {
    std::string table = "title,width,height,status,x,y\nKelp,300,400,hung,1500,1300\n";
    for (int i = 0; i < 14; ++i)
        table += fmt::format("Print {},{},{},waiting,,\n", i, 180 + 17 * i, 400 - 13 * i);
    return table;
}

void check_sound_file(const std::string& path) {
    REQUIRE(std::filesystem::exists(path));
    const Ran ran = run(fmt::format("{} list {} --json", WW_PROGRAM, path));
    INFO(ran.err);
    CHECK(ran.status == 0);
    CHECK(ran.out.find("\"planned\"") != std::string::npos);
}

}  // namespace

TEST_CASE("The first signal is noted, the next one would end the program") {
    const KeptHandling kept(SIGINT);
    std::signal(SIGINT, SIG_DFL);
    {
        const Interrupt interrupt;
        CHECK_FALSE(interrupt.asked());
        std::raise(SIGINT);
        CHECK(interrupt.asked());
        CHECK(handler_of(SIGINT) == SIG_DFL);
        CHECK(handler_of(SIGTERM) == SIG_DFL);
    }
    CHECK_FALSE(Interrupt().asked());
    CHECK(handler_of(SIGINT) == SIG_DFL);
}

TEST_CASE("A signal that was ignored before stays so") {
    const KeptHandling kept(SIGINT);
    std::signal(SIGINT, SIG_IGN);
    {
        const Interrupt interrupt;
        std::raise(SIGINT);
        CHECK_FALSE(interrupt.asked());
    }
    CHECK(handler_of(SIGINT) == SIG_IGN);
}

TEST_CASE("A signal that is heard leaves the other one ignored when it was") {
    const KeptHandling kept_interrupt(SIGINT);
    const KeptHandling kept_terminate(SIGTERM);
    std::signal(SIGINT, SIG_IGN);
    std::signal(SIGTERM, SIG_DFL);
    const Interrupt interrupt;
    std::raise(SIGTERM);
    CHECK(interrupt.asked());
    CHECK(handler_of(SIGINT) == SIG_IGN);
    CHECK(handler_of(SIGTERM) == SIG_DFL);
}

TEST_CASE("Ctrl-C while arranging writes the best layouts so far") {
    const ScratchFolder scratch;
    InTerminal program({WW_PROGRAM, "arrange", kStair, "--seconds", kVeryLong, "-o",
                        scratch.file("out.json"), "--all", scratch.file("all")});
    REQUIRE(program.wait_for("Ctrl-C takes the best so far"));
    program.type(kCtrlC);
    const int status = program.wait();
    INFO(program.printed());
    CHECK(status <= 1);
    CHECK(program.printed().find("Stopped; this is the best so far.") != std::string::npos);
    check_sound_file(scratch.file("out.json"));
    check_sound_file(scratch.file("all/layout-1.json"));
    CHECK(read_whole(scratch.file("all/layout-1.png")).substr(1, 3) == "PNG");
}

TEST_CASE("A request to end while growing writes the best stages so far") {
    const ScratchFolder scratch;
    write_whole(scratch.file("frames.csv"), many_frames());
    REQUIRE(run(fmt::format("cd {} && {} new --wall 5000x2600 --frames frames.csv -o wall.json",
                            scratch.path(), WW_PROGRAM))
                .status == 0);
    InTerminal program({WW_PROGRAM, "grow", scratch.file("wall.json"), "--toward", "top_right",
                        "--seconds", "400", "-o", scratch.file("out.json"), "--stages",
                        scratch.file("stages")});
    REQUIRE(program.wait_for("Growing: 1 %"));
    program.send(SIGTERM);
    const int status = program.wait();
    INFO(program.printed());
    CHECK(status <= 1);
    CHECK(program.printed().find("Stopped; this is the best so far.") != std::string::npos);
    check_sound_file(scratch.file("out.json"));
    check_sound_file(scratch.file("stages/stage-1.json"));
}

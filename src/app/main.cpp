#include "app/options.h"

#include <iostream>

namespace {

using namespace wallwright;

Outcome open_and_run(const app::Options& options) {
    if (Outcome display = app::find_display(); !display)
        return display;
    auto frame = app::make_app(options.app);
    if (!frame)
        return fail(std::move(frame.error()));
    return app::run(**frame, options.loop);
}

}  // namespace

int main(int argc, char** argv) {
    constexpr int kUnusable = 2;
    const auto chosen = app::parse_options(argc, argv, std::cout, std::cerr);
    if (const int* status = std::get_if<int>(&chosen))
        return *status;
    const Outcome outcome = open_and_run(std::get<app::Options>(chosen));
    if (outcome)
        return 0;
    std::cerr << "wallwright-app: " << to_text(outcome.error()) << '\n';
    return kUnusable;
}

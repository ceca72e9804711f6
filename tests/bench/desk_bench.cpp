// What one edit costs on the cafe wall of sixty frames: judging it, drawing it. Prints; judges
// nothing.
#include "bench/median.h"
#include "desk/wall_picture.h"
#include "draw/elevation.h"
#include "store/catalogue.h"
#include "store/files.h"
#include "store/json_project.h"

#include <cstdio>
#include <utility>

using namespace wallwright;

int main() {
    const std::string file = std::string(WW_SOURCE) + "/assets/demo/cafe.json";
    const auto text = store::read_file(file);
    const wall::Project project = store::read_project(*text, file).value();
    const wall::Catalogue& catalogue = store::built_in_catalogue();
    const rules::Assessment assessment = rules::assess(project, catalogue);
    std::printf("pieces            %9zu\n", project.pieces.size());
    std::printf("assess            %9.3f ms\n",
                median_ms(51, [&] { rules::assess(project, catalogue); }));
    using desk::Step;
    constexpr std::pair<const char*, Step> kSteps[] = {{"room", Step::room},
                                                       {"pieces", Step::pieces},
                                                       {"arrange", Step::arrange},
                                                       {"hang", Step::hang}};
    const desk::Session session(project);
    for (const auto& [name, step] : kSteps) {
        desk::WallPicture picture;
        std::printf("picture, %-8s %9.3f ms\n", name, median_ms(51, [&, step = step] {
                        picture.version = 0;
                        desk::refresh(picture, session, step, 0.02);
                    }));
    }
}

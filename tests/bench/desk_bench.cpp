// What one edit costs on the cafe wall of sixty frames: judging it, drawing it. Prints; judges
// nothing.
#include "bench/median.h"
#include "desk/wall_picture.h"
#include "draw/elevation.h"
#include "store/catalogue.h"
#include "store/files.h"
#include "store/json_project.h"

#include <cstdio>

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
    const char* names[] = {"room", "pieces", "arrange", "hang"};
    const desk::Session session(project);
    for (const auto step :
         {desk::Step::room, desk::Step::pieces, desk::Step::arrange, desk::Step::hang}) {
        desk::WallPicture picture;
        std::printf("picture, %-8s %9.3f ms\n", names[static_cast<int>(step)], median_ms(51, [&] {
                        picture.version = 0;
                        desk::refresh(picture, session, step, 0.02);
                    }));
    }
}

// Draws the pictures of the demo walls, in two or three inks each:
//   demo_pictures FOLDER
#include "pictures.h"

#include <cstdio>

namespace lino {

namespace {

struct Picture {
    const char* name;
    int width;
    int height;
    void (*draw)(Sheet&);
};

constexpr Picture kPictures[] = {
    {"kelp", 300, 400, kelp},
    {"spring_tide", 400, 300, spring_tide},
    {"gull", 300, 400, gull},
    {"shell", 300, 400, shell},
    {"dunes", 400, 300, dunes},
    {"boats", 360, 360, boats},
    {"lighthouse", 210, 450, lighthouse},
    {"mussels", 360, 360, mussels},
    {"neap_tide", 400, 300, neap_tide},
    {"swell", 400, 300, swell},
    {"moonrise", 300, 400, moonrise},
    {"shoal", 400, 300, shoal},
    {"harbour", 300, 400, harbour},
};

bool draw_all(const std::string& folder) {
    for (const Picture& picture : kPictures) {
        Sheet sheet(picture.width, picture.height);
        picture.draw(sheet);
        const std::string path = folder + "/" + picture.name + ".png";
        if (!sheet.save(path)) {
            std::fprintf(stderr, "demo_pictures: %s cannot be written; does the folder exist?\n",
                         path.c_str());
            return false;
        }
    }
    return true;
}

}  // namespace

}  // namespace lino

int main(int count, char** words) {
    if (count != 2) {
        std::fprintf(stderr, "usage: demo_pictures FOLDER\n");
        return 2;
    }
    return lino::draw_all(words[1]) ? 0 : 1;
}

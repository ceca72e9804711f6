// The canvas and the pages paint one drawing: how far apart are they? Needs a display;
// tests/window/run gives one.
//   canvas_vs_paper WALL.json FOLDER
// Ends with status 1 when they differ by more than is allowed below, and leaves both pictures in
// FOLDER.
#include "app/canvas_painter.h"
#include "app/loop.h"
#include "draw/elevation.h"
#include "pages/render.h"
#include "store/catalogue.h"
#include "store/files.h"
#include "store/json_project.h"

#include <SFML/Graphics/Image.hpp>

#include <cmath>
#include <cstdio>

using namespace wallwright;

namespace {

constexpr double kPixelsPerMm = 4;  ///< Of paper.
constexpr double kScale = 1.0 / 20;

// Letters are set by two libraries, and edges are smoothed by two rules; so pixels may differ, but
// not many by much.
constexpr double kMostMean = 3;  ///< Of 255, over all channels.
constexpr int kMuch = 96;        ///< Of 255 in any channel...
constexpr double kMostFarOff =
    0.005;  ///< ...by which no more than this share of pixels may differ.

geometry::Rect<geometry::Page> page_of(const draw::WallDrawing& drawing) {
    return {{0, 0}, {drawing.extent.width() * kScale, drawing.extent.height() * kScale}};
}

/// Nothing but the drawing, over all of the window.
class Canvas final : public app::Frame {
  public:
    explicit Canvas(const draw::WallDrawing& drawing) : drawing_(drawing) {}

    [[nodiscard]] app::Look look() const override { return {}; }
    void draw(app::Ui& ui) override {
        const ImVec2 size = ImGui::GetIO().DisplaySize;
        const double scale = kScale * kPixelsPerMm;
        const app::CanvasStyle style{
            {{-scale * drawing_.extent.min.x, scale * drawing_.extent.max.y}, scale},
            kPixelsPerMm,
            false,
            ui.fonts,
            ui.host};
        ImDrawList& list = *ImGui::GetBackgroundDrawList();
        list.AddRectFilled({0, 0}, size, IM_COL32_WHITE);
        app::paint(list, drawing_.shapes, style, {0, 0, size.x, size.y});
    }
    void key(std::string_view) override {}
    void focus_lost() override {}
    void close_wanted() override {}
    bool tick() override { return false; }
    [[nodiscard]] bool wants_quit() const override { return false; }

  private:
    const draw::WallDrawing& drawing_;
};

draw::WallDrawing drawing_of(const std::string& file) {
    const wall::Project project = store::read_project(*store::read_file(file), file).value();
    draw::ElevationOptions options;
    options.scale = kScale;
    options.picture_folder = std::filesystem::path(file).parent_path().string();
    return draw::elevation(project, rules::assess(project, store::built_in_catalogue()), options);
}

Outcome paint_on_paper(const draw::WallDrawing& drawing, const std::string& file) {
    const geometry::Transform<geometry::Wall, geometry::Page> to_page{
        {-kScale * drawing.extent.min.x, kScale * drawing.extent.max.y}, kScale};
    draw::PageDrawing page = draw::placed_on_page(drawing, to_page);
    page.extent = page_of(drawing);
    const auto bytes = pages::to_png(page, kPixelsPerMm);
    return bytes ? store::write_file(file, *bytes) : fail(bytes.error());
}

struct Difference {
    double mean = 0;
    double far_off = 0;
};

Difference difference(const sf::Image& a, const sf::Image& b) {
    const unsigned width = std::min(a.getSize().x, b.getSize().x);
    const unsigned height = std::min(a.getSize().y, b.getSize().y);
    double sum = 0;
    int far_off = 0;
    for (unsigned y = 0; y < height; ++y)
        for (unsigned x = 0; x < width; ++x) {
            const sf::Color p = a.getPixel(x, y);
            const sf::Color q = b.getPixel(x, y);
            const int channels[] = {std::abs(p.r - q.r), std::abs(p.g - q.g), std::abs(p.b - q.b)};
            sum += channels[0] + channels[1] + channels[2];
            far_off += std::max({channels[0], channels[1], channels[2]}) > kMuch ? 1 : 0;
        }
    const double pixels = static_cast<double>(width) * height;
    return {sum / (3 * pixels), far_off / pixels};
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 3)
        return 2;
    const std::string folder = argv[2];
    const draw::WallDrawing drawing = drawing_of(argv[1]);
    const geometry::Rect<geometry::Page> page = page_of(drawing);
    app::LoopOptions options;
    options.size = app::WindowSize{static_cast<unsigned>(std::ceil(page.width() * kPixelsPerMm)),
                                   static_cast<unsigned>(std::ceil(page.height() * kPixelsPerMm))};
    options.shot = folder + "/canvas.png";
    Canvas canvas(drawing);
    Outcome painted = app::run(canvas, options);
    if (painted)
        painted = paint_on_paper(drawing, folder + "/paper.png");
    if (!painted) {
        std::fprintf(stderr, "%s\n", to_text(painted.error()).c_str());
        return 2;
    }
    sf::Image screen;
    sf::Image paper;
    if (!screen.loadFromFile(options.shot.string()) || !paper.loadFromFile(folder + "/paper.png"))
        return 2;
    const Difference apart = difference(screen, paper);
    std::printf("canvas and paper differ by %.2f of 255 on average, %.2f %% of pixels by over %d\n",
                apart.mean, 100 * apart.far_off, kMuch);
    return apart.mean <= kMostMean && apart.far_off <= kMostFarOff ? 0 : 1;
}

#include "pages/mount_svg.h"

#include "mounts/card/still_to_cut.h"
#include "mounts/design/back_marks.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <cctype>
#include <set>

namespace wallwright::pages {

namespace {

constexpr const char* kHairline = "0.05";  // mm

/// To 0.001 mm without zeros at the end; no machine that cuts card is finer.
std::string number(double mm) {
    std::string text = fmt::format("{:.3f}", mm);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.')
        text.pop_back();
    return text == "-0" ? "0" : text;
}

std::string escaped(const std::string& text) {
    std::string out;
    for (const char c : text) {
        if (c == '&')
            out += "&amp;";
        else if (c == '<')
            out += "&lt;";
        else if (c == '>')
            out += "&gt;";
        else if (static_cast<unsigned char>(c) >= ' ')
            out += c;
    }
    return out;
}

std::string path_of(const std::string& id, const geometry::Rect<mounts::Back>& rect) {
    const std::string left = number(rect.left());
    const std::string right = number(rect.right());
    return fmt::format("    <path id=\"{}\" d=\"M {} {} H {} V {} H {} Z\"/>\n", id, left,
                       number(rect.top()), right, number(rect.bottom()), left);
}

std::string title_of_board(const mounts::MountDesign& design, std::size_t layer,
                           const std::string& title) {
    const std::string which = design.layers.size() == 1
                                  ? "mount"
                                  : fmt::format("layer {} of {}", layer + 1, design.layers.size());
    if (design.floats)
        return fmt::format("{}: {}, without a window", title, which);
    if (design.edge == wall::WindowEdge::straight)
        return fmt::format("{}: {}, back up, for straight cuts", title, which);
    return fmt::format(
        "{}: {}, back up; window lines are the openings at the back of a bevel of 45 degrees "
        "through {} mm",
        title, which, number(design.layers[layer].card.thickness));
}

std::string svg_of(const mounts::MountDesign& design, std::size_t layer,
                   const mounts::LayerMarks& marks, const std::string& title) {
    const std::string width = number(design.blank.width);
    const std::string height = number(design.blank.height);
    std::string svg = fmt::format(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0}mm\" height=\"{1}mm\" "
        "viewBox=\"0 0 {0} {1}\">\n  <title>{2}</title>\n"
        "  <g fill=\"none\" stroke=\"#000000\" stroke-width=\"{3}\">\n",
        width, height, escaped(title_of_board(design, layer, title)), kHairline);
    for (std::size_t i = 0; i < marks.windows.size(); ++i)
        svg += path_of(fmt::format("window-{}", i + 1), marks.windows[i].line);
    svg += path_of("blank", geometry::Rect<mounts::Back>::at({0, 0}, design.blank));
    return svg + "  </g>\n</svg>\n";
}

/// Letters, digits and dashes stay; a name of a file must not lead into another folder.
std::string file_stem(const std::string& id) {
    std::string stem;
    for (const char c : id) {
        const auto byte = static_cast<unsigned char>(c);
        stem += std::isalnum(byte) != 0 || byte >= 0x80 || c == '-' || c == '_' ? c : '-';
    }
    return stem;
}

/// With a number where another piece has it; `taken` has it then.
std::string free_stem(const std::string& id, std::set<std::string>& taken) {
    const std::string wanted = file_stem(id);
    std::string stem = wanted;
    for (int number = 2; !taken.insert(stem).second; ++number)
        stem = fmt::format("{}-{}", wanted, number);
    return stem;
}

}  // namespace

std::vector<BoardSvg> mount_svgs(const mounts::MountDesign& design, const std::string& stem,
                                 const std::string& title) {
    const mounts::BackMarks marks = mounts::back_marks(design);
    std::vector<BoardSvg> all;
    for (std::size_t layer = 0; layer < marks.layers.size(); ++layer)
        all.push_back({fmt::format("{}-layer-{}.svg", file_stem(stem), layer + 1),
                       svg_of(design, layer, marks.layers[layer], title)});
    return all;
}

std::vector<BoardSvg> mount_svgs(const wall::Project& project) {
    std::vector<BoardSvg> all;
    std::set<std::string> taken;  // Two ids may differ only in what no file name has.
    for (const wall::Piece& piece : project.pieces) {
        if (!mounts::is_still_to_cut(piece) || mounts::why_not_cut(project, piece))
            continue;
        const mounts::MountDesign design = *mounts::design_of(project, piece);
        for (BoardSvg& board :
             mount_svgs(design, free_stem(piece.id.text, taken), wall::title_of(piece)))
            all.push_back(std::move(board));
    }
    return all;
}

}  // namespace wallwright::pages

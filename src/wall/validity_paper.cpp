#include "wall/fault_list.h"

#include <algorithm>

namespace wallwright::wall {

namespace {

constexpr double kMostReveal = 100;  // mm; beyond it an under-layer is a mount of its own
constexpr std::size_t kMostUnder = 4;
constexpr double kMostRatio = 3;
constexpr int kMostPixels = 1'000'000;
constexpr int kMostSheets = 999;
constexpr double kMostMoney = 1e6;
constexpr double kMostBorder = 1000;  // mm, of what is measured across a border or a bar

void check_across(Faults& faults, const std::string& where, double mm) {
    faults.unless(std::isfinite(mm) && mm >= 0 && mm <= kMostBorder, where,
                  fmt::format("{:g} mm is out of range", mm),
                  fmt::format("give a length from 0 to {:g} mm", kMostBorder));
}

void check_from_corner(Faults& faults, const std::string& where, std::string_view left_key,
                       std::string_view top_key, const FromCorner& at) {
    faults.check_length(fmt::format("{}/{}", where, left_key), at.left);
    faults.check_length(fmt::format("{}/{}", where, top_key), at.top);
}

void check_under(Faults& faults, const std::string& where, const std::vector<UnderLayer>& under) {
    faults.unless(under.size() <= kMostUnder, where,
                  fmt::format("{} layers lie under the top one", under.size()),
                  fmt::format("leave at most {} of them", kMostUnder));
    for (std::size_t i = 0; i < under.size(); ++i) {
        const std::string here = fmt::format("{}/#{}", where, i + 1);
        const double reveal = under[i].reveal;
        faults.unless(
            std::isfinite(reveal) && reveal > 0 && reveal <= kMostReveal, here + "/reveal_mm",
            fmt::format("{:g} mm is no reveal", reveal),
            fmt::format("give more than 0 and at most {:g} mm, usually 3 to 6", kMostReveal));
        check_layer(faults, here + "/card", under[i].card);
    }
}

void check_openings(Faults& faults, const Project& project, const std::string& where,
                    const Mount& mount) {
    std::set<std::string_view> seen;
    for (std::size_t i = 0; i < mount.openings.size(); ++i) {
        const Opening& opening = mount.openings[i];
        const std::string here = fmt::format("{}/#{}", where, i + 1);
        check_known(faults, project, here + "/print", opening.print);
        faults.unless(seen.insert(opening.print.text).second, here + "/print",
                      fmt::format("\"{}\" has a window already", opening.print.text),
                      "name another print, or take one of the two windows out");
        if (opening.at)
            check_from_corner(faults, here, "left_mm", "top_mm", *opening.at);
        faults.unless(opening.at.has_value() || mount.order != WindowOrder::by_hand,
                      here + "/left_mm", "a window placed by hand needs a place",
                      "give left_mm and top_mm from the blank's upper left corner, or order the "
                      "windows in a row or a column");
    }
}

void check_mount(Faults& faults, const Project& project, const Mount& mount) {
    const std::string where = "mounts/" + mount.id.text;
    check_across(faults, where + "/overlap_mm", mount.overlap);
    check_across(faults, where + "/overlap_most_mm", mount.overlap_most);
    check_across(faults, where + "/base_extra_mm", mount.base_extra);
    if (const auto ratio = mount.base_ratio)
        faults.unless(
            *ratio >= 1 && *ratio <= kMostRatio, where + "/base_ratio",
            fmt::format("{:g} is out of range", *ratio),
            fmt::format("give the border below over the border above, from 1 to {:g}", kMostRatio));
    if (mount.by_hand)
        check_from_corner(faults, where, "window_left_mm", "window_top_mm", *mount.by_hand);
    check_across(faults, where + "/border_least_mm", mount.border_least);
    check_layer(faults, where + "/card", mount.card);
    check_under(faults, where + "/under", mount.under);
    check_openings(faults, project, where + "/openings", mount);
    check_across(faults, where + "/bar_mm", mount.bar);
}

void check_pixels(Faults& faults, const std::string& where, int count) {
    faults.unless(count >= 1 && count <= kMostPixels, where,
                  fmt::format("{} is no number of pixels", count),
                  fmt::format("give the picture's pixels, from 1 to {}", kMostPixels));
}

void check_print(Faults& faults, const Print& print) {
    const std::string where = "prints/" + print.id.text;
    faults.check_size(where + "/width_mm", print.size.width);
    faults.check_size(where + "/height_mm", print.size.height);
    faults.unless(std::isfinite(print.grams_per_square_metre) &&
                      print.grams_per_square_metre >= 0 && print.grams_per_square_metre <= 10000,
                  where + "/grams_per_m2", "the weight of the paper is out of range",
                  "give it in g/m2, usually 80 to 350");
    if (print.pixels) {
        check_pixels(faults, where + "/pixels_wide", print.pixels->width);
        check_pixels(faults, where + "/pixels_high", print.pixels->height);
    }
}

bool is_price(double price) {
    return price >= 0 && price <= kMostMoney;
}

void check_sheet(Faults& faults, const CardSheet& sheet) {
    const std::string where = "card/" + sheet.id.text;
    faults.check_size(where + "/width_mm", sheet.size.width);
    faults.check_size(where + "/height_mm", sheet.size.height);
    check_layer(faults, where + "/card", sheet.card);
    faults.unless(sheet.count >= 0 && sheet.count <= kMostSheets, where + "/count",
                  fmt::format("{} is no number of sheets", sheet.count),
                  fmt::format("give a number from 0 to {}", kMostSheets));
    faults.unless(is_price(sheet.price), where + "/price",
                  fmt::format("{:g} is out of range", sheet.price),
                  fmt::format("give the price of one sheet, from 0 to {:.0f}", kMostMoney));
    faults.check_length(where + "/margin_mm", sheet.margin);
    const double narrow_side = std::min(sheet.size.width, sheet.size.height);
    faults.unless(
        sheet.margin == 0 || 2 * sheet.margin < narrow_side, where + "/margin_mm",
        fmt::format("two margins of {:g} mm leave nothing of {:g} mm", sheet.margin, narrow_side),
        "give the width of the damaged edges, or take the sheet out");
    faults.unless(!sheet.offcut || !sheet.to_buy, where + "/to_buy",
                  "an offcut is at hand, not to be bought", "leave offcut or to_buy out");
}

void check_layer_of(Faults& faults, const Project& project, const std::string& where,
                    const KeptBlank& kept) {
    const Piece* piece = find(project, kept.piece);
    const Mount* mount = piece != nullptr && piece->mount ? find(project, *piece->mount) : nullptr;
    const std::size_t layers = mount != nullptr ? 1 + mount->under.size() : 1 + kMostUnder;
    faults.unless(kept.layer >= 1 && static_cast<std::size_t>(kept.layer) <= layers,
                  where + "/layer", fmt::format("there is no layer {}", kept.layer),
                  layers == 1 ? std::string("give 1, the only layer of this mount")
                              : fmt::format("count from 1 for the top layer to {}", layers));
}

void check_kept(Faults& faults, const Project& project, const std::string& where,
                const KeptBlank& kept) {
    check_known(faults, project, where + "/piece", kept.piece);
    check_known(faults, project, where + "/sheet", kept.sheet);
    check_layer_of(faults, project, where, kept);
    faults.unless(kept.number >= 1 && kept.number <= kMostSheets, where + "/number",
                  fmt::format("there is no sheet {} of a kind", kept.number),
                  fmt::format("count the sheets of one kind from 1 to {}", kMostSheets));
    faults.check_length(where + "/left_mm", kept.left);
    faults.check_length(where + "/top_mm", kept.top);
}

void check_kept_blanks(Faults& faults, const Project& project) {
    std::set<std::pair<std::string_view, int>> seen;
    for (std::size_t i = 0; i < project.kept_blanks.size(); ++i) {
        const KeptBlank& kept = project.kept_blanks[i];
        const std::string where = fmt::format("kept_blanks/#{}", i + 1);
        check_kept(faults, project, where, kept);
        faults.unless(seen.insert({kept.piece.text, kept.layer}).second, where,
                      fmt::format("layer {} of \"{}\" is kept twice", kept.layer, kept.piece.text),
                      "take one of them out");
    }
}

}  // namespace

void check_layer(Faults& faults, const std::string& where, const Layer& layer) {
    faults.check_length(where + "/thickness_mm", layer.thickness);
    faults.unless(layer.thickness == 0 || !layer.material.text.empty(), where + "/material",
                  "the material has no name",
                  "name a material of the catalogue, or give a thickness of 0");
}

void check_paper(Faults& faults, const Project& project) {
    for (const Mount& mount : project.mounts)
        check_mount(faults, project, mount);
    for (const Print& print : project.prints)
        check_print(faults, print);
}

void check_card(Faults& faults, const Project& project) {
    check_ids(faults, "card", project.card);
    for (const CardSheet& sheet : project.card)
        check_sheet(faults, sheet);
    check_kept_blanks(faults, project);
    if (project.mount_cut_price)
        faults.unless(is_price(*project.mount_cut_price), "mount_cut_price",
                      fmt::format("{:g} is out of range", *project.mount_cut_price),
                      fmt::format("give the price of one mount, from 0 to {:.0f}", kMostMoney));
}

}  // namespace wallwright::wall

#include "mounts/design/mount_design.h"

#include "base/contract.h"
#include "mounts/design/placing.h"
#include "mounts/design/rule_step.h"

#include <algorithm>
#include <cmath>

namespace wallwright::mounts {

namespace {

using geometry::Size;
using wall::Mount;
using wall::Print;

constexpr double kPaperGramsPerMm = 800;  // g/m2 for each mm: 0.8 g/cm3

/// Both directions of one mount.
struct Plans {
    AxisPlan across;
    AxisPlan down;
};

double all_reveals(const Mount& mount) {
    double sum = 0;
    for (const wall::UnderLayer& under : mount.under)
        sum += under.reveal;
    return sum;
}

Borders lip_over(Size blank, Size sight) {
    const double side = (blank.width - sight.width) / 2;
    const double end = (blank.height - sight.height) / 2;
    return {side, side, end, end};
}

Lie lie_of(const Mount& mount, wall::WindowOrder in_line) {
    if (mount.openings.size() < 2 && mount.order != wall::WindowOrder::by_hand)
        return Lie::abreast;
    if (mount.order == wall::WindowOrder::by_hand && !mount.openings.empty())
        return Lie::apart;
    return mount.order == in_line ? Lie::in_line : Lie::abreast;
}

/// The rule of the block, or of each window in turn, across and down.
std::vector<BorderRule> rules_of(const Mount& mount, Lie lie, bool down) {
    BorderRule common;
    if (down) {
        common.ratio = mount.base_ratio;
        common.extra = mount.base_extra;
    }
    if (mount.by_hand && mount.openings.size() < 2)
        common.start = down ? mount.by_hand->top : mount.by_hand->left;
    if (lie != Lie::apart)
        return {common};
    std::vector<BorderRule> rules;
    for (const wall::Opening& opening : mount.openings) {
        rules.push_back(common);
        if (opening.at)
            rules.back().start = down ? opening.at->top : opening.at->left;
    }
    return rules;
}

AxisTask task_of(const Mount& mount, bool down) {
    AxisTask task;
    task.lie = lie_of(mount, down ? wall::WindowOrder::column : wall::WindowOrder::row);
    task.rules = rules_of(mount, task.lie, down);
    task.bar = mount.bar;
    if (mount.floats)
        return task;
    task.overlap = mount.overlap;
    task.overlap_most = mount.overlap_most;
    task.reveals = all_reveals(mount);
    return task;
}

Plans plan_both(const Mount& mount, Size blank, const Borders& lip,
                const std::vector<Print>& prints) {
    AxisTask across = task_of(mount, false);
    AxisTask down = task_of(mount, true);
    for (const Print& print : prints) {
        across.prints.push_back(print.size.width);
        down.prints.push_back(print.size.height);
    }
    const double least = mount.floats ? kFloatClear : mount.border_least;
    across.length = blank.width;
    across.border_least = lip.left + least;
    down.length = blank.height;
    down.border_least = lip.top + least;
    return {plan_axis(across), plan_axis(down)};
}

Rect<Front> top_window(const Plans& plans, std::size_t i) {
    const Span& x = plans.across.windows[i];
    const Span& y = plans.down.windows[i];
    return Rect<Front>::at({x.start, y.start}, {x.length, y.length});
}

CutLayer layer_of(const wall::Layer& card, wall::Colour colour, double reveal) {
    return {card, colour, reveal, {}};
}

std::vector<CutLayer> layers_of(const Mount& mount, const Plans& plans) {
    std::vector<CutLayer> layers{layer_of(mount.card, mount.colour, 0)};
    if (mount.floats)
        return layers;
    for (const wall::UnderLayer& under : mount.under)
        layers.push_back(layer_of(under.card, under.colour, under.reveal));
    double reveals = 0;
    for (CutLayer& layer : layers) {
        reveals += layer.reveal;
        const double bevel = mount.edge == wall::WindowEdge::bevel ? layer.card.thickness : 0;
        for (std::size_t i = 0; i < plans.across.windows.size(); ++i) {
            const Rect<Front> face = top_window(plans, i).grown(-reveals);
            layer.windows.push_back({face, face.grown(-bevel)});
        }
    }
    return layers;
}

/// How far `inner` lies inside `outer` on each side.
Borders between(const Rect<Front>& outer, const Rect<Front>& inner) {
    return {inner.min.x - outer.min.x, outer.max.x - inner.max.x, inner.min.y - outer.min.y,
            outer.max.y - inner.max.y};
}

LaidPrint laid(const Print& print, const Plans& plans, std::size_t i, const CutLayer& lowest) {
    const Rect<Front> top = top_window(plans, i);
    LaidPrint out;
    out.id = print.id;
    out.title = print.title.empty() ? print.id.text : print.title;
    out.across = plans.across.overlaps[i];
    out.down = plans.down.overlaps[i];
    const auto c = top.centre();
    out.place =
        Rect<Front>::at({c.x - print.size.width / 2, c.y - print.size.height / 2}, print.size);
    if (lowest.windows.empty())
        return out;
    out.covered = between(out.place, lowest.windows[i].face);
    out.out_of_sight = between(out.place, lowest.windows[i].back);
    return out;
}

Borders cut_of(Size blank, const Plans& plans) {
    Rect<Front> all = top_window(plans, 0);
    for (std::size_t i = 1; i < plans.across.windows.size(); ++i)
        all = hull(all, top_window(plans, i));
    return between(Rect<Front>::at({0, 0}, blank), all);
}

Depth depth_of(const wall::Frame& frame, const Mount& mount, const std::vector<CutLayer>& layers,
               const std::vector<Print>& prints) {
    Depth depth;
    depth.glazing = frame.glazing.thickness;
    depth.spacer = mount.floats && depth.glazing > 0 ? kSpacerLeast : 0;
    for (const CutLayer& layer : layers)
        depth.layers += layer.card.thickness;
    for (const Print& print : prints)
        depth.print = std::max(depth.print, paper_thickness(print.grams_per_square_metre));
    depth.backing = frame.backing.thickness;
    depth.rebate = frame.rebate_depth;
    return depth;
}

/// `outside` of the frame that there is and the room in its rebate; the blank of the larger frame
/// will be taken down to the step.
double side_for(double outside, double room, double wanted, double step) {
    return std::ceil(outside + std::max(0.0, up_to_step(wanted, step) - room) -
                     geometry::kLengthEps);
}

/// Planned for the whole room in the rebate, since the blank of another frame may fill its own.
void name_larger_frames(MountDesign& design, const wall::Frame& frame, const Mount& mount,
                        const std::vector<Print>& prints, double step) {
    const Size outside = frame.outside;
    const Size room = blank_size(frame);
    const Plans plans = plan_both(mount, room, lip_over(room, sight_size(frame)), prints);
    design.frame_that_serves =
        Size{side_for(outside.width, room.width, plans.across.least_length, step),
             side_for(outside.height, room.height, plans.down.least_length, step)};
    design.frame_as_wanted =
        Size{side_for(outside.width, room.width, plans.across.wanted_length, step),
             side_for(outside.height, room.height, plans.down.wanted_length, step)};
}

/// With the blank taken down to this step.
MountDesign designed(const wall::Frame& frame, const Mount& mount, const std::vector<Print>& prints,
                     double step) {
    WW_EXPECT(prints.size() == std::max<std::size_t>(1, mount.openings.size()),
              "each window of a mount has a print");
    MountDesign design;
    const Size room = blank_size(frame);
    design.blank = {down_to_step(room.width, step), down_to_step(room.height, step)};
    design.lip = lip_over(design.blank, sight_size(frame));
    design.edge = mount.edge;
    design.floats = mount.floats;
    const Plans plans = plan_both(mount, design.blank, design.lip, prints);
    design.layers = layers_of(mount, plans);
    for (std::size_t i = 0; i < prints.size(); ++i)
        design.prints.push_back(laid(prints[i], plans, i, design.layers.back()));
    design.cut = cut_of(design.blank, plans);
    const Borders& lip = design.lip;
    design.seen = {design.cut.left - lip.left, design.cut.right - lip.right,
                   design.cut.top - lip.top, design.cut.bottom - lip.bottom};
    design.depth = depth_of(frame, mount, design.layers, prints);
    if (!plans.across.serves || !plans.down.serves)
        name_larger_frames(design, frame, mount, prints, step);
    return design;
}

}  // namespace

double paper_thickness(double grams_per_square_metre) {
    return grams_per_square_metre / kPaperGramsPerMm;
}

MountDesign design_mount(const wall::Frame& frame, const Mount& mount,
                         const std::vector<Print>& prints) {
    return designed(frame, mount, prints, 0);
}

std::optional<MountDesign> design_of(const wall::Project& project, const wall::Piece& piece) {
    const Mount* mount = piece.mount ? find(project, *piece.mount) : nullptr;
    if (mount == nullptr)
        return std::nullopt;
    std::vector<Print> prints;
    for (const Print* print : prints_in(project, piece))
        prints.push_back(*print);
    if (prints.size() != std::max<std::size_t>(1, mount->openings.size()))
        return std::nullopt;
    return designed(as_hung(frame_of(project, piece), piece.turned), *mount, prints,
                    rule_step(project.unit));
}

double undermount_thickness(const MountDesign& design) {
    return design.floats ? 0 : design.layers.front().card.thickness;
}

wall::Frame frame_around(Size blank) {
    wall::Frame frame;
    frame.outside = blank;
    frame.moulding_width = 0;
    frame.rebate_width = 0;
    frame.rebate_depth = 0;
    frame.back_board = blank;
    return frame;
}

}  // namespace wallwright::mounts

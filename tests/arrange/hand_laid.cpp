#include "arrange/hand_laid.h"

#include "spacing/group.h"

#include <catch2/catch.hpp>

namespace wallwright::hand_laid {

namespace {

using namespace wallwright::arrange;

constexpr double kMiddleX = 2000;
constexpr double kMiddleY = 1500;

/// Items `first` to before `last`, left to right; `bottom` gives the lower edge of a height.
template <class Bottom>
void add_row(const Task& task, std::size_t first, std::size_t last, const Bottom& bottom,
             Layout& layout) {
    double width = -task.gap;
    for (std::size_t i = first; i < last; ++i)
        width += task.items[i].size.width + task.gap;
    double x = kMiddleX - width / 2;
    for (std::size_t i = first; i < last; ++i) {
        const Size size = task.items[i].size;
        layout.push_back(
            {static_cast<std::uint32_t>(i), WallRect::at({x, bottom(size.height)}, size)});
        x += size.width + task.gap;
    }
}

}  // namespace

Task task_of(const std::vector<Size>& sizes) {
    Task task;
    for (const Size& size : sizes) {
        Item item;
        item.id = {"p" + std::to_string(task.items.size())};
        item.size = size;
        task.items.push_back(item);
    }
    task.wall = WallRect::at({0, 0}, {4000, 2600});
    task.gap = 60;
    task.reach = spacing::group_reach(task.gap);
    task.weights = weights_of(wall::Project{});
    return task;
}

Task over_sofa(const std::vector<Size>& sizes) {
    Task task = task_of(sizes);
    task.beneath = Beneath{"the sofa", WallRect::at({1000, 0}, {2000, 800}), 150, 255, 0.60, 0.75};
    return task;
}

Layout at(const Task& task, const std::vector<WallPoint>& corners) {
    Layout layout;
    for (const WallPoint& corner : corners) {
        const auto i = static_cast<std::uint32_t>(layout.size());
        layout.push_back({i, WallRect::at(corner, task.items[i].size)});
    }
    return layout;
}

Layout row(const Task& task) {
    Layout layout;
    add_row(
        task, 0, task.items.size(), [](double height) { return kMiddleY - height / 2; }, layout);
    return layout;
}

Layout grid(const Task& task, std::size_t columns) {
    const std::size_t rows = (task.items.size() + columns - 1) / columns;
    const double pitch = task.items.front().size.height + task.gap;
    const double top = kMiddleY + (static_cast<double>(rows) * pitch - task.gap) / 2;
    Layout layout;
    for (std::size_t r = 0; r < rows; ++r)
        add_row(
            task, r * columns, std::min((r + 1) * columns, task.items.size()),
            [&](double height) { return top - static_cast<double>(r) * pitch - height; }, layout);
    return layout;
}

Layout spine(const Task& task, std::size_t above) {
    Layout layout;
    add_row(
        task, 0, above, [&](double) { return kMiddleY + task.gap / 2; }, layout);
    add_row(
        task, above, task.items.size(),
        [&](double height) { return kMiddleY - task.gap / 2 - height; }, layout);
    return layout;
}

Layout moved(Layout layout, double right, double up) {
    for (Spot& spot : layout)
        spot.place = spot.place.moved({right, up});
    return layout;
}

double value(std::string_view measure, const Task& task, const Layout& layout) {
    const Measure* found = find_measure(measure);
    REQUIRE(found != nullptr);
    return found->value(View(task, layout));
}

std::string says(std::string_view measure, const Task& task, const Layout& layout) {
    const Measure* found = find_measure(measure);
    REQUIRE(found != nullptr);
    return found->says(View(task, layout), units::LengthUnit::mm);
}

double total(const Task& task, const Layout& layout) {
    return total_of(View(task, layout));
}

}  // namespace wallwright::hand_laid

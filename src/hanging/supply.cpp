#include "hanging/supply.h"

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

constexpr double kThousandths = 1000;

std::int64_t thousandths(double value) {
    return std::llround(kThousandths * value);
}

}  // namespace

Sold sold_as(const wall::Project& project, const wall::FixingType& type) {
    Sold sold{type.pack, type.price};
    for (const wall::Stock& line : project.stock) {
        if (line.fixing != type.id)
            continue;
        sold.pack = line.pack.value_or(sold.pack);
        sold.price = line.price.value_or(sold.price);
    }
    return sold;
}

std::vector<Supply> supplies_of(const wall::Project& project, const wall::Catalogue& catalogue,
                                const Drawer& drawer) {
    std::vector<Supply> supplies;
    std::int64_t dearest = 0;
    for (const wall::FixingType& type : catalogue.fixings) {
        const Sold sold = sold_as(project, type);
        supplies.push_back({drawer.left(type.id), std::max(1, sold.pack), thousandths(sold.price)});
        dearest = std::max(dearest, supplies.back().price);
    }
    for (Supply& supply : supplies)
        if (supply.price == 0)
            supply.price = dearest > 0 ? dearest : thousandths(1);
    return supplies;
}

std::vector<Way> ways_of(const Job& job, const std::vector<Offer>& offers,
                         const wall::Catalogue& catalogue) {
    std::vector<Way> ways;
    for (const Offer& offer : offers) {
        const auto count = static_cast<int>(offer.fixings.size());
        ways.push_back({static_cast<std::size_t>(offer.type - catalogue.fixings.data()), count,
                        is_awkward(job, offer), count * thousandths(offer.type->rated.value)});
    }
    return ways;
}

}  // namespace wallwright::hanging

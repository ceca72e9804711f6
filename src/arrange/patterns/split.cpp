#include "arrange/patterns/split.h"

#include "base/contract.h"

#include <algorithm>
#include <limits>
#include <map>
#include <numeric>

namespace wallwright::arrange {

namespace {

// Of unlike thickness between the outer bands, against unlike lengths; from looking at the
// pictures.
constexpr double kAlikeBetween = 30;
constexpr std::size_t kRoundsMost = 12;
constexpr std::size_t kSwapsMost = 150000;  // of a start; beyond that more rounds hardly help
constexpr std::size_t kThicknessesMost = 3;

using BandOf = std::vector<std::uint32_t>;  // by piece

struct Sums {
    int count = 0;
    double length = 0;  // with a gap after each piece
    double thickness = 0;
    double thickness_squared = 0;
    double area = 0;

    void add(const BandSize& size, double gap, int sign) {
        count += sign;
        length += sign * (size.length + gap);
        thickness += sign * size.thickness;
        thickness_squared += sign * size.thickness * size.thickness;
        area += sign * size.length * size.thickness;
    }
};

/// One assignment of pieces to bands, and its steps to a better one.
class Split {
  public:
    Split(std::vector<BandSize> sizes, std::size_t bands, double gap, const SplitTaste& taste)
        : sizes_(std::move(sizes)), gap_(gap), taste_(taste), bands_(bands), costs_(bands) {
        for (const BandSize& size : sizes_)
            all_.add(size, gap_, 1);
    }

    void start(BandOf band_of) {
        band_of_ = std::move(band_of);
        std::ranges::fill(bands_, Sums{});
        for (std::size_t i = 0; i < sizes_.size(); ++i)
            bands_[band_of_[i]].add(sizes_[i], gap_, 1);
        for (std::size_t band = 0; band < bands_.size(); ++band)
            costs_[band] = cost_of(band, bands_[band]);
    }

    void improve() {
        const std::size_t swaps = sizes_.size() * sizes_.size() / 2 + 1;
        const std::size_t rounds = std::clamp(kSwapsMost / swaps, std::size_t{1}, kRoundsMost);
        for (std::size_t round = 0; round < rounds; ++round)
            if (!improve_once())
                return;
    }

    [[nodiscard]] double cost() const { return std::accumulate(costs_.begin(), costs_.end(), 0.0); }

    [[nodiscard]] const BandOf& band_of() const { return band_of_; }

  private:
    /// 0 at best, in the order of 0.01 where a designer would begin to see it.
    [[nodiscard]] double cost_of(std::size_t band, const Sums& sums) const {
        if (sums.count == 0)
            return 1e6;
        const auto count = static_cast<double>(bands_.size());
        const double off = sums.length * count / all_.length - 1;
        const double mean = sums.thickness / sums.count;
        const double spread =
            std::max(0.0, sums.thickness_squared / sums.count / (mean * mean) - 1);
        const bool between = band > 0 && band + 1 < bands_.size();
        const double position =
            bands_.size() < 2 ? 0 : 2 * static_cast<double>(band) / (count - 1) - 1;
        const double large = sums.area / sums.count / (all_.area / all_.count);
        const double unlike = between ? kAlikeBetween * spread + (spread > 1e-9 ? taste_.flush : 0)
                                      : taste_.alike * spread;
        return off * off + unlike + taste_.large_first * position * large;
    }

    bool improve_once() {
        bool better = false;
        for (std::size_t i = 0; i < sizes_.size(); ++i) {
            for (std::uint32_t band = 0; band < bands_.size(); ++band)
                better |= try_move(i, band);
            for (std::size_t j = 0; j < i; ++j)
                better |= try_swap(i, j);
        }
        return better;
    }

    bool try_move(std::size_t piece, std::uint32_t to) {
        const std::uint32_t from = band_of_[piece];
        if (from == to)
            return false;
        Sums less = bands_[from];
        Sums more = bands_[to];
        less.add(sizes_[piece], gap_, -1);
        more.add(sizes_[piece], gap_, 1);
        if (!keep_if_better(from, less, to, more))
            return false;
        band_of_[piece] = to;
        return true;
    }

    bool try_swap(std::size_t one, std::size_t other) {
        const std::uint32_t a = band_of_[one];
        const std::uint32_t b = band_of_[other];
        if (a == b)
            return false;
        Sums sums_a = bands_[a];
        Sums sums_b = bands_[b];
        sums_a.add(sizes_[one], gap_, -1);
        sums_a.add(sizes_[other], gap_, 1);
        sums_b.add(sizes_[other], gap_, -1);
        sums_b.add(sizes_[one], gap_, 1);
        if (!keep_if_better(a, sums_a, b, sums_b))
            return false;
        std::swap(band_of_[one], band_of_[other]);
        return true;
    }

    bool keep_if_better(std::size_t a, const Sums& sums_a, std::size_t b, const Sums& sums_b) {
        const double cost_a = cost_of(a, sums_a);
        const double cost_b = cost_of(b, sums_b);
        if (cost_a + cost_b > costs_[a] + costs_[b] - 1e-9)
            return false;
        bands_[a] = sums_a;
        bands_[b] = sums_b;
        costs_[a] = cost_a;
        costs_[b] = cost_b;
        return true;
    }

    std::vector<BandSize> sizes_;
    double gap_;
    SplitTaste taste_;
    std::vector<Sums> bands_;
    std::vector<double> costs_;  // by band
    Sums all_;
    BandOf band_of_;
};

constexpr std::uint32_t kNowhere = std::numeric_limits<std::uint32_t>::max();

/// The longest first, each into the band that is shortest so far; pieces that have a band already
/// stay there.
BandOf fill_up(const std::vector<BandSize>& sizes, std::size_t bands, double gap, BandOf band_of) {
    std::vector<double> length(bands, 0);
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < sizes.size(); ++i)
        if (band_of[i] == kNowhere)
            order.push_back(i);
        else
            length[band_of[i]] += sizes[i].length + gap;
    std::ranges::stable_sort(order, std::greater{}, [&](std::size_t i) { return sizes[i].length; });
    for (const std::size_t i : order) {
        const auto shortest = std::ranges::min_element(length);
        *shortest += sizes[i].length + gap;
        band_of[i] = static_cast<std::uint32_t>(shortest - length.begin());
    }
    return band_of;
}

/// The thinnest in the first band, and so on.
BandOf by_thickness(const std::vector<BandSize>& sizes, std::size_t bands, bool thin_first) {
    std::vector<std::size_t> order(sizes.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t i) {
        return thin_first ? sizes[i].thickness : -sizes[i].thickness;
    });
    BandOf band_of(sizes.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        band_of[order[i]] = static_cast<std::uint32_t>(i * bands / order.size());
    return band_of;
}

/// Pieces of the commonest thicknesses put between the outer bands, one thickness a band, beginning
/// with the `first` most common.
BandOf one_thickness_between(const std::vector<BandSize>& sizes, std::size_t bands, double gap,
                             std::size_t first) {
    std::map<double, double> length_of;
    double all = 0;
    for (const BandSize& size : sizes) {
        length_of[size.thickness] += size.length + gap;
        all += size.length + gap;
    }
    std::vector<std::pair<double, double>> common(length_of.begin(), length_of.end());
    std::ranges::stable_sort(common, std::greater{}, &std::pair<double, double>::second);
    BandOf band_of(sizes.size(), kNowhere);
    for (std::uint32_t band = 1; band + 1 < bands; ++band) {
        const double thickness = common[(first + band - 1) % common.size()].first;
        double length = 0;
        for (std::size_t i = 0; i < sizes.size(); ++i) {
            const double more = sizes[i].length + gap;
            if (band_of[i] == kNowhere && sizes[i].thickness == thickness &&
                length + more / 2 <= all / static_cast<double>(bands)) {
                band_of[i] = band;
                length += more;
            }
        }
    }
    return fill_up(sizes, bands, gap, std::move(band_of));
}

std::vector<BandOf> starts(const std::vector<BandSize>& sizes, std::size_t bands, double gap) {
    std::vector<BandOf> all{fill_up(sizes, bands, gap, BandOf(sizes.size(), kNowhere)),
                            by_thickness(sizes, bands, true), by_thickness(sizes, bands, false)};
    for (std::size_t first = 0; bands > 2 && first < kThicknessesMost; ++first)
        all.push_back(one_thickness_between(sizes, bands, gap, first));
    return all;
}

}  // namespace

std::vector<std::vector<std::uint32_t>> split_into(const Task& task,
                                                   const std::vector<std::uint32_t>& items,
                                                   std::size_t bands, Direction direction,
                                                   const SplitTaste& taste) {
    WW_EXPECT(bands >= 1 && bands <= items.size(), "every band gets a piece");
    std::vector<BandSize> sizes;
    for (const std::uint32_t item : items)
        sizes.push_back(band_size(task.items[item].size, direction));
    Split split(sizes, bands, task.gap, taste);
    double least = std::numeric_limits<double>::infinity();
    BandOf best;
    for (BandOf& start : starts(sizes, bands, task.gap)) {
        split.start(std::move(start));
        split.improve();
        if (split.cost() < least - 1e-9) {
            least = split.cost();
            best = split.band_of();
        }
    }
    std::vector<std::vector<std::uint32_t>> rows(bands);
    for (std::size_t i = 0; i < items.size(); ++i)
        rows[best[i]].push_back(items[i]);
    return rows;
}

}  // namespace wallwright::arrange

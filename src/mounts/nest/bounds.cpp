#include "mounts/nest/bounds.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace wallwright::mounts {

namespace {

// Sizes are shares of the sheet. What is within this of a threshold counts on the side that makes
// the bound less.
constexpr double kSlack = 1e-7;
constexpr double kRounding = 1e-12;  // of our own divisions
constexpr double kLeastEps = 0.01;
constexpr int kMostK = 20;
constexpr std::size_t kWork = 12000;  // blanks times thresholds

double u(int k, double x) {
    const double parts = (k + 1) * x;
    const double whole = std::floor(parts);
    return parts - whole < (k + 1) * kSlack || whole + 1 - parts < kSlack ? x : whole / k;
}

double large(double eps, double x) {
    if (x > 1 - eps + kSlack)
        return 1;
    return x < eps - kRounding ? 0 : x;
}

double phi(double eps, double x) {
    const double most = std::floor(1 / eps + kSlack);
    if (x > 0.5 + kSlack)
        return std::max(0.0, 1 - std::floor((1 - x) / eps + kSlack) / most);
    return x < eps - kRounding ? 0 : 1 / most;
}

/// A blank as shares of the sheet, both ways.
struct Shares {
    double x = 0;
    double y = 0;
    double x_turned = 0;
    double y_turned = 0;
    bool upright = false;  // fits unturned
    bool turned = false;   // fits turned
};

geometry::Size hull_of(const Stock& stock) {
    geometry::Size hull;
    for (const StockSheet& sheet : stock.sheets) {
        if (sheet.is_extra || sheet.count == 0)
            continue;
        hull.width = std::max(hull.width, sheet.usable.width);
        hull.height = std::max(hull.height, sheet.usable.height);
    }
    return hull;
}

std::vector<Shares> shares_of(const Stock& stock, geometry::Size hull) {
    const auto fits_some = [&stock](const StockBlank& blank, bool is_extra) {
        return std::any_of(stock.sheets.begin(), stock.sheets.end(), [&](const StockSheet& sheet) {
            return sheet.is_extra == is_extra && sheet.count > 0 && fits(blank, sheet);
        });
    };
    const bool may_turn = std::any_of(stock.sheets.begin(), stock.sheets.end(),
                                      [](const StockSheet& sheet) { return sheet.may_turn; });
    std::vector<Shares> all;
    for (const int index : stock.wanted) {
        const StockBlank& blank = stock.blanks[static_cast<std::size_t>(index)];
        if (fits_some(blank, true) || !fits_some(blank, false))
            continue;
        Shares shares{.x = blank.extent[0] / hull.width,
                      .y = blank.extent[1] / hull.height,
                      .x_turned = blank.extent[1] / hull.width,
                      .y_turned = blank.extent[0] / hull.height};
        shares.upright = std::max(shares.x, shares.y) < 1 + kSlack;
        shares.turned =
            blank.may_turn && may_turn && std::max(shares.x_turned, shares.y_turned) < 1 + kSlack;
        all.push_back(shares);
    }
    return all;
}

/// Every size; of large tasks every so many, to stay quick: fewer functions are a valid bound too.
std::vector<double> thresholds(const std::vector<Shares>& blanks) {
    std::vector<double> eps{0.5};
    for (const Shares& blank : blanks)
        for (const double x : {blank.x, blank.y, blank.x_turned, blank.y_turned})
            for (const double share : {x, 1 - x})
                if (share > kLeastEps && share <= 0.5)
                    eps.push_back(share);
    std::sort(eps.begin(), eps.end());
    eps.erase(
        std::unique(eps.begin(), eps.end(), [](double a, double b) { return b - a < kRounding; }),
        eps.end());
    const std::size_t stride = 1 + eps.size() * std::max<std::size_t>(100, blanks.size()) / kWork;
    std::vector<double> some;
    for (std::size_t i = 0; i < eps.size(); i += stride)
        some.push_back(eps[i]);
    return some;
}

/// One function at all blanks: as they are, and turned. A way that does not fit counts as a whole
/// sheet, so that the lesser is the other.
struct Row {
    std::vector<double> x, y, x_turned, y_turned;
};

Row row_of(const std::vector<Shares>& blanks, const std::function<double(double)>& function) {
    Row row;
    const auto value = [&function](double share, bool may) {
        return may ? function(std::min(1.0, share)) : 1.0;
    };
    for (const Shares& blank : blanks) {
        row.x.push_back(value(blank.x, blank.upright));
        row.y.push_back(value(blank.y, blank.upright));
        row.x_turned.push_back(value(blank.x_turned, blank.turned));
        row.y_turned.push_back(value(blank.y_turned, blank.turned));
    }
    return row;
}

std::vector<Row> rows_of(const std::vector<Shares>& blanks) {
    std::vector<Row> rows{row_of(blanks, [](double x) { return x; })};
    for (int k = 1; k <= kMostK; ++k)
        rows.push_back(row_of(blanks, [k](double x) { return u(k, x); }));
    for (const double eps : thresholds(blanks)) {
        rows.push_back(row_of(blanks, [eps](double x) { return large(eps, x); }));
        rows.push_back(row_of(blanks, [eps](double x) { return phi(eps, x); }));
    }
    return rows;
}

double sum_of(const Row& along_x, const Row& along_y) {
    double sum = 0;
    for (std::size_t i = 0; i < along_x.x.size(); ++i)
        sum += std::min(along_x.x[i] * along_y.y[i], along_x.x_turned[i] * along_y.y_turned[i]);
    return sum;
}

}  // namespace

std::size_t area_bound(const Stock& stock) {
    double blanks = 0;
    for (const int blank : stock.wanted)
        blanks += stock.blanks[static_cast<std::size_t>(blank)].area;
    std::vector<double> sheets;
    for (const StockSheet& sheet : stock.sheets) {
        if (sheet.is_extra)
            blanks -= sheet.usable.area();
        else
            sheets.insert(sheets.end(), sheet.count, sheet.usable.area());
    }
    std::sort(sheets.rbegin(), sheets.rend());
    std::size_t count = 0;
    for (blanks *= 1 - kSlack; blanks > 0 && count < sheets.size(); ++count)
        blanks -= sheets[count];
    // More area than there are sheets: one more than all is needed.
    return blanks > 0 && !sheets.empty() ? count + 1 : count;
}

std::size_t dual_feasible_bound(const Stock& stock) {
    const geometry::Size hull = hull_of(stock);
    if (hull.area() <= 0)
        return 0;
    const std::vector<Shares> blanks = shares_of(stock, hull);
    const std::vector<Row> rows = rows_of(blanks);
    double best = 0;
    for (const Row& along_x : rows)
        for (const Row& along_y : rows)
            best = std::max(best, sum_of(along_x, along_y));
    return static_cast<std::size_t>(std::ceil(std::max(0.0, best * (1 - kSlack) - kSlack)));
}

std::size_t sheet_bound(const Stock& stock) {
    return std::max(area_bound(stock), dual_feasible_bound(stock));
}

}  // namespace wallwright::mounts

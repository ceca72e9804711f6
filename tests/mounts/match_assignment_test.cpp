#include "base/random.h"
#include "mounts/match/assignment.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <fstream>
#include <map>
#include <sstream>

namespace wallwright::mounts {

namespace {

constexpr Cost kNo = kForbidden;

CostTable table_of(const std::vector<std::vector<Cost>>& rows) {
    CostTable table(rows.size(), rows.empty() ? 0 : rows.front().size());
    for (std::size_t row = 0; row < rows.size(); ++row)
        for (std::size_t column = 0; column < rows[row].size(); ++column)
            table.at(row, column) = rows[row][column];
    return table;
}

using Columns = std::vector<std::optional<std::size_t>>;

/// Tries every choice for every row, remembering what is best for the rows below for each set of
/// columns taken.
class EveryWay {
  public:
    explicit EveryWay(const CostTable& table) : table_(table) {}

    Columns best() {
        Columns columns;
        unsigned taken = 0;
        for (std::size_t row = 0; row < table_.rows(); ++row) {
            columns.push_back(worth(row, taken).second);
            if (columns.back())
                taken |= 1U << *columns.back();
        }
        return columns;
    }

  private:
    using Worth = std::pair<std::size_t, Cost>;  ///< Rows left over, cost of the others.
    using Choice = std::pair<Worth, std::optional<std::size_t>>;

    Choice worth(std::size_t row, unsigned taken) {
        if (row == table_.rows())
            return {};
        const auto known = known_.find({row, taken});
        if (known != known_.end())
            return known->second;
        const Worth without = worth(row + 1, taken).first;
        std::optional<Choice> best;
        for (std::size_t column = 0; column < table_.columns(); ++column) {
            if ((taken >> column & 1U) != 0 || table_.at(row, column) == kForbidden)
                continue;
            Worth with = worth(row + 1, taken | 1U << column).first;
            with.second += table_.at(row, column);
            if (!best || with < best->first)
                best = {with, column};
        }
        const Choice left{{without.first + 1, without.second}, std::nullopt};
        const Choice choice = best && best->first <= left.first ? *best : left;
        known_[{row, taken}] = choice;
        return choice;
    }

    const CostTable& table_;
    std::map<std::pair<std::size_t, unsigned>, Choice> known_;
};

/// Up to 8 by 8. Few different costs make many ties.
CostTable random_table() {
    const auto rows = static_cast<std::size_t>(*rc::gen::inRange(0, 9));
    const auto columns = static_cast<std::size_t>(*rc::gen::inRange(0, 9));
    const int spread = *rc::gen::element(1, 2, 4, 1000);
    const int forbidden = *rc::gen::inRange(0, 100);
    CostTable table(rows, columns);
    for (std::size_t row = 0; row < rows; ++row)
        for (std::size_t column = 0; column < columns; ++column)
            if (*rc::gen::inRange(0, 100) >= forbidden)
                table.at(row, column) = *rc::gen::inRange(-spread, spread);
    return table;
}

/// As tests/data/assignment/README.md says.
CostTable generated(std::size_t rows, std::size_t columns, std::uint64_t state) {
    CostTable table(rows, columns);
    for (std::size_t row = 0; row < rows; ++row)
        for (std::size_t column = 0; column < columns; ++column) {
            state = state * 6364136223846793005U + 1442695040888963407U;
            table.at(row, column) =
                static_cast<Cost>(1000 * static_cast<double>(state >> 11U) * 0x1.0p-53);
        }
    return table;
}

CostTable transposed(const CostTable& table) {
    CostTable other(table.columns(), table.rows());
    for (std::size_t row = 0; row < table.rows(); ++row)
        for (std::size_t column = 0; column < table.columns(); ++column)
            other.at(column, row) = table.at(row, column);
    return other;
}

}  // namespace

TEST_CASE("Three rows and columns go together as one finds by hand") {
    const Assignment found = least_cost(table_of({{4, 1, 3}, {2, 0, 5}, {3, 2, 2}}));
    CHECK(found.cost == 5);
    CHECK(found.column_of == Columns{1, 0, 2});
    CHECK(found.left_rows.empty());
    CHECK(found.left_columns.empty());
}

TEST_CASE("An assignment agrees with every way tried, in cost and in which of equals it takes") {
    rc::prop("for up to 8 rows and 8 columns, some pairs forbidden", [] {
        const CostTable table = random_table();
        const Assignment found = least_cost(table);
        RC_ASSERT(found.column_of == EveryWay(table).best());
        Cost cost = 0;
        for (std::size_t row = 0; row < table.rows(); ++row)
            cost += found.column_of[row] ? table.at(row, *found.column_of[row]) : 0;
        RC_ASSERT(found.cost == cost);
    });
}

// Most of these tables have several cheapest ways, which rapidcheck's few do not try enough.
TEST_CASE("Of thousands of small tables each gets the first of its cheapest ways") {
    Random random(7);
    std::size_t wrong = 0;
    for (int i = 0; i < 4000; ++i) {
        const Cost spread = 1 + static_cast<Cost>(random.below(3));
        const std::uint64_t forbidden = random.below(80);
        CostTable table(1 + random.below(5), 1 + random.below(5));
        for (std::size_t row = 0; row < table.rows(); ++row)
            for (std::size_t column = 0; column < table.columns(); ++column)
                if (random.below(100) >= forbidden)
                    table.at(row, column) = static_cast<Cost>(random.below(4)) % (spread + 1);
        if (least_cost(table).column_of != EveryWay(table).best())
            ++wrong;
    }
    CHECK(wrong == 0);
}

TEST_CASE("An empty column is taken first even where another has to be emptied for it") {
    CHECK(least_cost(table_of({{kNo, 0, -1}, {0, 0, -1}})).column_of == Columns{1, 2});
}

TEST_CASE("Rows and columns left over are named, each once") {
    rc::prop("for any table", [] {
        const CostTable table = random_table();
        const Assignment found = least_cost(table);
        std::vector<std::size_t> left;
        std::vector<int> seen(table.columns());
        for (std::size_t row = 0; row < table.rows(); ++row)
            if (found.column_of[row])
                ++seen[*found.column_of[row]];
            else
                left.push_back(row);
        for (const std::size_t column : found.left_columns)
            ++seen[column];
        RC_ASSERT(left == found.left_rows);
        RC_ASSERT(std::ranges::all_of(seen, [](int times) { return times == 1; }));
    });
}

// SciPy 1.10.1, linear_sum_assignment; see tests/data/assignment/README.md.
TEST_CASE("Generated problems of up to 200 rows have the cost that SciPy finds, either way round") {
    std::ifstream file(WW_TEST_DATA "/assignment/optima.csv");
    std::string line;
    std::getline(file, line);
    std::size_t cases = 0;
    while (std::getline(file, line)) {
        std::ranges::replace(line, ',', ' ');
        std::istringstream words(line);
        std::size_t rows = 0;
        std::size_t columns = 0;
        std::uint64_t seed = 0;
        Cost optimum = 0;
        words >> rows >> columns >> seed >> optimum;
        const CostTable table = generated(rows, columns, seed);
        INFO(rows << " by " << columns);
        CHECK(least_cost(table).cost == optimum);
        CHECK(least_cost(transposed(table)).cost == optimum);
        ++cases;
    }
    CHECK(cases == 7);
}

TEST_CASE("More rows than columns leave the dearest over, and more columns likewise") {
    const CostTable tall = table_of({{5, 9}, {1, 8}, {2, 3}});
    CHECK(least_cost(tall).column_of == Columns{std::nullopt, 0, 1});
    CHECK(least_cost(tall).left_rows == std::vector<std::size_t>{0});
    CHECK(least_cost(transposed(tall)).column_of == Columns{1, 2});
    CHECK(least_cost(transposed(tall)).left_columns == std::vector<std::size_t>{0});
}

TEST_CASE("A pair more is worth any cost, but a forbidden pair is not made") {
    // Row 0 would rather have column 0, but row 1 can have no other.
    CHECK(least_cost(table_of({{0, 1000}, {0, kNo}})).column_of == Columns{1, 0});
    const Assignment none = least_cost(table_of({{kNo, kNo}, {7, kNo}}));
    CHECK(none.column_of == Columns{std::nullopt, 0});
    CHECK(none.cost == 7);
    CHECK(none.left_columns == std::vector<std::size_t>{1});
}

TEST_CASE("A table without rows or without columns leaves all over") {
    CHECK(least_cost(CostTable(0, 2)).left_columns == std::vector<std::size_t>{0, 1});
    CHECK(least_cost(CostTable(2, 0)).left_rows == std::vector<std::size_t>{0, 1});
}

TEST_CASE("A locked pair stays together and the others do the best they can") {
    rc::prop("for any table and any pair that is allowed", [] {
        CostTable table = random_table();
        RC_PRE(table.rows() > 0 && table.columns() > 0);
        const auto row = *rc::gen::inRange<std::size_t>(0, table.rows());
        const auto column = *rc::gen::inRange<std::size_t>(0, table.columns());
        if (table.at(row, column) == kForbidden)
            table.at(row, column) = 3;
        lock(table, row, column);
        const Assignment found = least_cost(table);
        RC_ASSERT(found.column_of[row] == column);
        RC_ASSERT(found.column_of == EveryWay(table).best());
    });
}

TEST_CASE(
    "A row that comes first is left over only where all is forbidden, and makes no pair fewer") {
    rc::prop("for any table", [] {
        const CostTable table = random_table();
        RC_PRE(table.rows() > 0);
        const auto row = *rc::gen::inRange<std::size_t>(0, table.rows());
        const Assignment usual = least_cost(table);
        const Assignment found = least_cost(table, row);
        bool possible = false;
        for (std::size_t column = 0; column < table.columns(); ++column)
            possible = possible || table.at(row, column) != kForbidden;
        RC_ASSERT(found.column_of[row].has_value() == possible);
        RC_ASSERT(found.left_rows.size() == usual.left_rows.size());
        if (usual.column_of[row])
            RC_ASSERT(found == usual);
        else
            RC_ASSERT(found.cost >= usual.cost);
    });
}

}  // namespace wallwright::mounts

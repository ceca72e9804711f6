#include "arrange/packing_model.h"

#include <glpk.h>

#include <utility>
#include <vector>

namespace wallwright::tests {

namespace {

using arrange::Block;
using arrange::PackingGoal;

struct Term {
    int column = 0;
    double factor = 0;
};

/// A GLPK problem built column by column and row by row.
class Model {
  public:
    Model() : problem_(glp_create_prob()) { glp_set_obj_dir(problem_, GLP_MIN); }
    Model(const Model&) = delete;
    Model& operator=(const Model&) = delete;
    ~Model() {
        glp_delete_prob(problem_);
        glp_free_env();
    }

    /// From 0 to `most`, at `cost` each.
    int column(double most, double cost = 0) {
        const int index = glp_add_cols(problem_, 1);
        glp_set_col_bnds(problem_, index, most > 0 ? GLP_DB : GLP_FX, 0, most);
        glp_set_obj_coef(problem_, index, cost);
        return index;
    }
    int yes_or_no() {
        const int index = column(1);
        glp_set_col_kind(problem_, index, GLP_BV);
        return index;
    }
    void at_least(double bound, const std::vector<Term>& terms) {
        const int row = glp_add_rows(problem_, 1);
        glp_set_row_bnds(problem_, row, GLP_LO, bound, 0);
        std::vector<int> columns{0};  // GLPK counts from 1.
        std::vector<double> factors{0};
        for (const Term& term : terms) {
            columns.push_back(term.column);
            factors.push_back(term.factor);
        }
        glp_set_mat_row(problem_, row, static_cast<int>(terms.size()), columns.data(),
                        factors.data());
    }
    Optimum solve(double seconds) {
        glp_term_out(GLP_OFF);
        glp_iocp options;
        glp_init_iocp(&options);
        options.presolve = GLP_ON;
        options.tm_lim = static_cast<int>(seconds * 1000);
        glp_intopt(problem_, &options);
        return {glp_mip_obj_val(problem_), glp_mip_status(problem_) == GLP_OPT};
    }

  private:
    glp_prob* problem_;
};

/// Where a block is, along one axis and the other, and whether it is turned.
struct Columns {
    int at[2] = {0, 0};
    int turned = 0;  ///< 0 when it may not turn.
};

class PackingModel {
  public:
    PackingModel(std::span<const Block> blocks, const PackingGoal& goal)
        : blocks_(blocks), columns_(blocks.size()) {
        bound(goal);
        box_[0] = model_.column(most_[0], goal.width);
        box_[1] = model_.column(most_[1], goal.height);
        const int over = model_.column(most_[1], goal.over);
        model_.at_least(-goal.height_free, {{over, 1}, {box_[1], -1}});
        for (std::size_t i = 0; i < blocks.size(); ++i)
            place(i);
        for (std::size_t i = 0; i < blocks.size(); ++i)
            for (std::size_t k = i + 1; k < blocks.size(); ++k)
                part(i, k);
        break_symmetry();
        cut_by_area();
    }

    Optimum solve(double seconds) { return model_.solve(seconds); }

  private:
    // A box that costs more than all blocks in one row or one column is of no interest.
    void bound(const PackingGoal& goal) {
        geometry::Size row;
        geometry::Size column;
        for (const auto& [size, may_turn] : blocks_) {
            row = {row.width + size.width, std::max(row.height, size.height)};
            column = {std::max(column.width, size.width), column.height + size.height};
            const double longest = std::max(size.width, size.height);
            most_[0] += may_turn ? longest : size.width;
            most_[1] += may_turn ? longest : size.height;
        }
        const double cost = std::min(arrange::cost_of(goal, row), arrange::cost_of(goal, column));
        if (goal.width > 0)
            most_[0] = std::min(most_[0], cost / goal.width);
        if (goal.height > 0)
            most_[1] = std::min(most_[1], cost / goal.height);
    }

    /// The length of a block along an axis, and how much a turn adds.
    [[nodiscard]] std::pair<double, double> length(std::size_t block, int axis) const {
        const geometry::Size size = blocks_[block].size;
        const double along = axis == 0 ? size.width : size.height;
        const double across = axis == 0 ? size.height : size.width;
        return {along, across - along};
    }

    /// sum of terms - factor * length(block) >= bound
    void at_least_with_length(double bound, std::size_t block, int axis, double factor,
                              std::vector<Term> terms) {
        const auto [along, turn] = length(block, axis);
        if (columns_[block].turned != 0)
            terms.push_back({columns_[block].turned, -factor * turn});
        model_.at_least(bound + factor * along, terms);
    }

    void place(std::size_t block) {
        if (blocks_[block].may_turn)
            columns_[block].turned = model_.yes_or_no();
        for (const int axis : {0, 1}) {
            const int at = columns_[block].at[axis] = model_.column(most_[axis]);
            at_least_with_length(0, block, axis, 1, {{box_[axis], 1}, {at, -1}});
        }
    }

    void part(std::size_t a, std::size_t b) {
        int sides[4] = {};
        for (const int axis : {0, 1}) {
            for (const bool swapped : {false, true}) {
                const std::size_t low = swapped ? b : a;
                const std::size_t high = swapped ? a : b;
                const int side = sides[2 * axis + (swapped ? 1 : 0)] = model_.yes_or_no();
                const double far = most_[axis];
                at_least_with_length(
                    -far, low, axis, 1,
                    {{columns_[high].at[axis], 1}, {columns_[low].at[axis], -1}, {side, -far}});
            }
        }
        model_.at_least(1, {{sides[0], 1}, {sides[1], 1}, {sides[2], 1}, {sides[3], 1}});
    }

    // A packing may be mirrored: the first block's middle is left of the box's and below it.
    void break_symmetry() {
        for (const int axis : {0, 1})
            at_least_with_length(0, 0, axis, 0.5, {{box_[axis], 0.5}, {columns_[0].at[axis], -1}});
    }

    // width * height >= area is a convex set; its tangents are linear.
    void cut_by_area() {
        double area = 0;
        for (const Block& block : blocks_)
            area += block.size.area();
        for (double width = std::sqrt(area) / 4; width < std::sqrt(area) * 4; width *= 1.1)
            model_.at_least(2 * area / width, {{box_[0], area / width / width}, {box_[1], 1}});
    }

    std::span<const Block> blocks_;
    std::vector<Columns> columns_;
    Model model_;
    double most_[2] = {0, 0};
    int box_[2] = {0, 0};
};

}  // namespace

Optimum least_by_glpk(std::span<const Block> blocks, const PackingGoal& goal, double seconds) {
    return PackingModel(blocks, goal).solve(seconds);
}

}  // namespace wallwright::tests

#include "mounts/nest_cases.h"

#include <algorithm>
#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>

namespace wallwright::tests {

namespace {

using Row = std::vector<std::string>;

std::vector<Row> rows_of(const std::string& file) {
    std::ifstream in(std::string(WW_TEST_DATA "/cutting/") + file);
    if (!in)
        throw std::runtime_error("no data file " + file);
    std::vector<Row> rows;
    std::string line;
    std::getline(in, line);
    while (std::getline(in, line)) {
        std::istringstream cells(line);
        rows.emplace_back();
        for (std::string cell; std::getline(cells, cell, ',');)
            rows.back().push_back(cell);
    }
    return rows;
}

std::size_t number(const std::string& cell) {
    return std::stoul(cell);
}

void add_blanks(std::vector<NestCase>& cases, const std::string& file) {
    std::map<std::string, NestCase*> named;
    for (NestCase& one : cases)
        named[one.name] = &one;
    for (const Row& row : rows_of(file)) {
        std::vector<mounts::NestBlank>& blanks = named.at(row[0])->task.blanks;
        for (std::size_t copy = 0; copy < number(row[3]); ++copy)
            blanks.push_back({.id = std::to_string(blanks.size() + 1),
                              .size = {std::stod(row[1]), std::stod(row[2])}});
    }
}

NestCase case_of(const Row& row) {
    NestCase one{.name = row[0], .task = {}};
    one.task.sheets.push_back({.id = "sheet", .size = {std::stod(row[2]), std::stod(row[3])}});
    return one;
}

/// "berkey1987/Class_01.2bp_20_1" is "C01_20_1".
std::string short_name(const std::string& name) {
    const std::size_t at = name.find("Class_") + 6;
    return "C" + name.substr(at, 2) + name.substr(name.find("2bp") + 3);
}

}  // namespace

std::vector<NestCase> all_cases() {
    std::vector<NestCase> cases;
    for (const Row& row : rows_of("cutting_2bpall_instances.csv")) {
        cases.push_back(case_of(row));
        cases.back().best_fixed = std::min(number(row[5]), number(row[6]));
        cases.back().best_turned = std::min(number(row[7]), number(row[8]));
    }
    add_blanks(cases, "cutting_2bpall_items.csv");
    return cases;
}

std::vector<NestCase> small_cases() {
    std::vector<NestCase> all = all_cases();
    std::vector<NestCase> cases;
    for (const Row& row : rows_of("cutting_2bp_instances.csv")) {
        const std::string name = short_name(row[0]);
        cases.push_back(*std::find_if(all.begin(), all.end(),
                                      [&name](const NestCase& one) { return one.name == name; }));
        cases.back().best_fixed = std::min(number(row[7]), number(row[8]));
        cases.back().best_turned = std::min(number(row[9]), number(row[10]));
    }
    return cases;
}

std::vector<NestCase> mount_cases() {
    std::vector<NestCase> cases;
    for (const Row& row : rows_of("cutting_mounts_instances.csv")) {
        cases.push_back(case_of(row));
        cases.back().best_turned = number(row[5]);
    }
    add_blanks(cases, "cutting_mounts_items.csv");
    return cases;
}

mounts::NestTask without_turning(mounts::NestTask task) {
    for (mounts::NestBlank& blank : task.blanks)
        blank.may_turn = false;
    return task;
}

}  // namespace wallwright::tests

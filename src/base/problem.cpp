#include "base/problem.h"

namespace wallwright {

std::string to_text(const Problem& problem) {
    std::string text = problem.where;
    if (!text.empty())
        text += ": ";
    text += problem.what;
    if (!problem.remedy.empty())
        text += "; " + problem.remedy;
    if (!problem.excerpt.empty())
        text += "\n" + problem.excerpt;
    return text;
}

Problem within(const std::string& place, Problem problem) {
    problem.where = problem.where.empty() ? place : place + ": " + problem.where;
    return problem;
}

std::string point_at(const std::string& line, std::size_t offset) {
    std::string caret;
    for (std::size_t i = 0; i < offset && i < line.size(); ++i) {
        const auto byte = static_cast<unsigned char>(line[i]);
        const bool continues_a_character = (byte & 0xC0U) == 0x80U;
        if (!continues_a_character)
            caret += line[i] == '\t' ? '\t' : ' ';
    }
    return "  " + line + "\n  " + caret + "^";
}

}  // namespace wallwright

#include "hanging/job.h"

#include "wall/titles.h"

namespace wallwright::hanging {

std::vector<Job> jobs_of(const wall::Project& project, const wall::Catalogue& catalogue) {
    std::vector<Job> jobs;
    for (const wall::Piece& piece : project.pieces) {
        const auto place = place_of(project, piece);
        if (!place)
            continue;
        Job job{project,
                piece,
                *place,
                weigh(project, catalogue, piece),
                complete(piece.hanger, place->size()),
                {}};
        if (auto bearing = bearing_of(job.hanger, place->size(), weight_of(job.mass.high)))
            job.bearing = std::move(*bearing);
        jobs.push_back(std::move(job));
    }
    return jobs;
}

geometry::Point<geometry::Wall> on_wall(const Job& job, const BackPoint& point) {
    return {job.place.left() + point.across, job.place.top() - point.down};
}

const std::string& name_of(const Job& job) {
    return title_of(job.piece);
}

wall::Finding about(const Job& job, const char* rule, wall::Severity severity,
                    const std::string& text) {
    wall::Finding finding;
    finding.rule = rule;
    finding.severity = severity;
    finding.pieces = {job.piece.id};
    finding.place = job.place;
    finding.text = name_of(job) + ": " + text + ".";
    return finding;
}

}  // namespace wallwright::hanging

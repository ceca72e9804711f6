#include "desk/score_card.h"

namespace wallwright::desk {

void refresh(ScoreCard& card, const Session& session) {
    if (card.version == session.version())
        return;
    card = {};
    card.version = session.version();
    const wall::Project& project = session.project();
    const arrange::Layout layout = arrange::layout_of(project);
    if (layout.empty())
        return;
    const arrange::Task task =
        arrange::task_of(project, session.catalogue(), arrange::Free::all_unfixed);
    const arrange::View view(task, layout);
    const arrange::Score score = arrange::score_of(view);
    card.total = score.total;
    for (const arrange::Part& part : score.parts)
        card.lines.push_back({part.measure, part.value, part.weight, part.applies,
                              part.measure->says(view, project.unit)});
}

}  // namespace wallwright::desk

#include "rules/all.h"
#include "rules/wording.h"

#include <algorithm>
#include <optional>

namespace wallwright::rules {

namespace {

/// A note, and everybody it is about.
struct SharedNote {
    std::string words;   ///< Without the piece's title before them.
    std::size_t at = 0;  ///< Its place among the findings.
    std::vector<const OnWall*> pieces;
};

/// The words of a note without the title that they begin with; nothing for what must be said for
/// each piece by itself.
std::optional<std::string> shared_words(const OnWall& one, const wall::Finding& finding) {
    const std::string title = title_of(one) + ": ";
    if (finding.severity != wall::Severity::note || !finding.text.starts_with(title))
        return std::nullopt;
    return finding.text.substr(title.size());
}

/// What choosing the fixings brought to light, under the name it was given there. The same note
/// about several pieces is said once, with all their titles.
class HandedOn {
  public:
    explicit HandedOn(std::vector<wall::Finding>& findings) : findings_(findings) {}

    void add(const OnWall& one, const wall::Finding& finding) {
        const auto words = shared_words(one, finding);
        const auto said = std::ranges::find_if(
            notes_, [&words](const SharedNote& note) { return words == note.words; });
        if (said == notes_.end()) {
            if (words)
                notes_.push_back({*words, findings_.size(), {&one}});
            findings_.push_back(finding);
            return;
        }
        said->pieces.push_back(&one);
        wall::Finding& note = findings_[said->at];
        note.pieces = ids_of(said->pieces);
        note.place = bounds_of(said->pieces);
        note.text = titles_of(said->pieces) + ": " + said->words;
    }

  private:
    std::vector<wall::Finding>& findings_;
    std::vector<SharedNote> notes_;
};

void hand_on(std::string_view name, const Scene& scene, std::vector<wall::Finding>& findings) {
    HandedOn handed_on(findings);
    for (const OnWall& one : scene.pieces)
        for (const wall::Finding& finding : one.hanging->findings)
            if (finding.rule == name)
                handed_on.add(one, finding);
}

}  // namespace

const Rule kWeightWithinRating{
    hanging::kWeightWithinRating,
    "no fixing carries more than its rated load with a margin, and strips no more than they may in "
    "all",
    "1.5 to 2 times the weight for strips and 7 kg in all: packets, common practice, no source; "
    "working load under half "
    "the load that failed in test for hooks and screws: a wall-fixing supplier's guidance; nails "
    "in wood: USDA Forest Products Laboratory, FPL-0100",
    [](const Scene& scene, std::vector<wall::Finding>& findings) {
        hand_on(hanging::kWeightWithinRating, scene, findings);
    },
};

const Rule kFixingSuitsWall{
    hanging::kFixingSuitsWall,
    "what goes into the wall is made for it, and what needs a stud or a picture rail has one",
    "use what is made for the wall, heavy pieces in a stud: trade articles on wall fixings; common "
    "practice, no source",
    [](const Scene& scene, std::vector<wall::Finding>& findings) {
        hand_on(hanging::kFixingSuitsWall, scene, findings);
    },
};

const Rule kIrreplaceableOnStrips{
    hanging::kIrreplaceableOnStrips,
    "nothing that cannot be replaced hangs by strips",
    "not for antiques, heirlooms or what cannot be replaced: packets; common practice, no source",
    [](const Scene& scene, std::vector<wall::Finding>& findings) {
        hand_on(hanging::kIrreplaceableOnStrips, scene, findings);
    },
};

const Rule kHangerFits{
    hanging::kHangerFits,
    "rings, cord and hooks suit the frame and each other, and no cord is too flat",
    "plain geometry; a trade chart of wire angles: at 10 degrees each ring takes nearly three "
    "times the weight",
    [](const Scene& scene, std::vector<wall::Finding>& findings) {
        hand_on(hanging::kHangerFits, scene, findings);
    },
};

const Rule kStripsFitTheBack{
    hanging::kStripsFitTheBack,
    "all strips that a piece needs lie flat on the back of its moulding, which is smooth",
    "flat on a hard, smooth back, top corners first: packets, common practice, no source",
    [](const Scene& scene, std::vector<wall::Finding>& findings) {
        hand_on(hanging::kStripsFitTheBack, scene, findings);
    },
};

const Rule kFixingsInStock{
    hanging::kFixingsInStock,
    "the drawer holds the fixings that the plan takes from it",
    "what the person has said is in stock",
    [](const Scene& scene, std::vector<wall::Finding>& findings) {
        hand_on(hanging::kFixingsInStock, scene, findings);
    },
};

}  // namespace wallwright::rules

#include "pages/cautions.h"

namespace wallwright::pages {

namespace {

struct Caution {
    const char* head;
    const char* text;
};

constexpr Caution kCautions[] = {
    // BS 7671, DIN 18015-3 and the NEC each name zones; electricians' practice on how far to trust
    // them.
    {"Cables",
     "Zones say where cables should be, not where they are. Use a detector at every place that you "
     "pierce, treat every cable as live, switch its circuit off; when in doubt ask a licensed "
     "electrician."},
    // DIN 18015-3 covers electrical lines only; the rest is common practice, no source.
    {"Pipes",
     "Water, gas and heating pipes keep to no zone. Keep nails and screws off the wall above and "
     "below radiators, sinks, boilers and meters, or ask a plumber or gas fitter first."},
    // HSE, Asbestos Essentials, sheet a26; EPA, Renovation, Repair and Painting rule, 40 CFR 745
    // subpart E.
    {"Old coatings",
     "Textured coatings put on before 2000 may hold asbestos and paint from before 1978 may hold "
     "lead. Do not drill, scrape or sand them before they have been tested."},
    // Common practice, no source.
    {"Drills, hammers",
     "Wear goggles; chips and nails fly. Drill with both hands on the machine, a mask on, nobody "
     "below. Stop where the bit meets metal or runs free."},
    // Common practice, no source.
    {"Ladders",
     "Steps on a level floor, all feet down, shoes on, one hand free. No chair, not the top tread, "
     "no reaching aside. Two people for what one cannot hold in one hand."},
    // Common practice, no source.
    {"Knives",
     "Fresh blade, steel rule with a guard, several light cuts. The hand that holds the rule stays "
     "behind the blade and out of its path. Old blades go into a tin."},
    // FEMA, Mount framed pictures and mirrors securely (How2015), 2008, for beds and seats; the
    // rest common practice.
    {"Glass",
     "A pane that falls breaks into blades. Carry glazed pieces upright with two hands and shoes "
     "on. Over a bed or a cot hang only soft, light pieces without glass; over seats, the lighter "
     "the better."},
    // Common practice, no source.
    {"Strips",
     "The packet comes first. Strips want clean, sound, smooth paint that has dried for a week or "
     "more; not wallpaper, brick or textured plaster, and no steam or heat. They let go without a "
     "sound, days or years later, and the whole piece drops: look after them now and then, and "
     "hang nothing by them that must not fall."},
    // Trade articles on wall fixings; common practice, no source.
    {"Weak walls",
     "Lath and plaster, hollow boards and crumbling brick hold less than a packet says. Test, "
     "count on half the rating, and put heavy pieces on a stud or a batten."},
    // Earthquake Country Alliance, Secure your hanging objects: over 50 lb get professional help.
    {"Heavy, old or dear",
     "Leave pieces of more than 20 kg (45 lb), and works that cannot be replaced, to a "
     "professional installer, framer or conservator. Where the ground shakes use closed hooks and "
     "hold the lower corners too."},
    {"Local rules",
     "Codes and standards of the place come before these sheets, and so does what a landlord or an "
     "authority for listed buildings and fire compartments says."},
};

constexpr Type kHead{2.2, true};
constexpr Type kBody{2.2, false};
constexpr double kHeadWidth = 34;

}  // namespace

void add_cautions(Flow& flow) {
    flow.add_heading("Before you drill, nail, stick or cut", 20);
    for (const Caution& caution : kCautions) {
        const std::vector<std::string> lines =
            lines_of(caution.text, kBody, flow.content().width() - kHeadWidth);
        flow.need(static_cast<double>(lines.size()) * line_height(kBody.size) + 1.5);
        const double left = flow.content().min.x;
        const double first = flow.top() + line_height(kBody.size) - 0.9;
        flow.shapes().emplace_back(text_at({left, first}, caution.head, kHead));
        for (std::size_t i = 0; i < lines.size(); ++i)
            flow.shapes().emplace_back(text_at(
                {left + kHeadWidth, first + static_cast<double>(i) * line_height(kBody.size)},
                lines[i], kBody));
        flow.advance(static_cast<double>(lines.size()) * line_height(kBody.size) + 1.5);
    }
}

}  // namespace wallwright::pages

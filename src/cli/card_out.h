// Plans of blanks on card in words and as JSON.
#pragma once

#include "cli/json_out.h"
#include "mounts/card/card_plan.h"

#include <string>

namespace wallwright::cli {

/// A table of blanks on one kind of sheet as a lot, so that both are told in the same words.
mounts::CardLot lot_of(mounts::NestTask task, mounts::NestPlan plan);

/// How many sheets, then each with its blanks, its cuts in words and what is left of it.
std::string lot_text(const mounts::CardLot& lot, units::LengthUnit unit);
/// Every lot under its card, what is bought and what having the mounts cut would cost, what is at
/// hand afterwards, and the notes.
std::string plan_text(const mounts::CardPlan& plan);

/// Sheets, waste, bound, whether proved, blanks left out.
Json json_of_plan(const mounts::NestTask& task, const mounts::NestPlan& plan);
Json json_of(const mounts::CardPlan& plan);

}  // namespace wallwright::cli

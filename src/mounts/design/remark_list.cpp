#include "mounts/design/remark_list.h"

namespace wallwright::mounts {

void Remarks::add(Trouble trouble, wall::Severity severity, std::optional<double> measured,
                  std::optional<double> wanted, std::string text) {
    Remark& remark = all_.emplace_back();
    remark.trouble = trouble;
    remark.severity = severity;
    remark.measured = measured;
    remark.wanted = wanted;
    remark.text = std::move(text);
}

}  // namespace wallwright::mounts

#include "app/panels/load_share.h"

#include "hanging/verdict.h"

namespace wallwright::app {

Share load_share(const hanging::Hanging& hanging) {
    return {hanging.use, hanging::limit_of(hanging), hanging::share_words(hanging, "over"),
            hanging::verdict_on(hanging) == hanging::Verdict::within};
}

}  // namespace wallwright::app

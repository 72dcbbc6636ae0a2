#include "core/job/refrigerant_entry.h"

namespace wg {

template <>
const std::vector<Word<RefrigerantMove>>& words<RefrigerantMove>() {
    using M = RefrigerantMove;
    static const std::vector<Word<M>> list = {
        {M::received, "received", "received"},         {M::used, "used", "used"},
        {M::recovered, "recovered", "recovered"},      {M::returned, "returned", "given back"},
        {M::leaked, "leaked", "leaked from a system"}, {M::counted, "counted", "counted"}};
    return list;
}

}  // namespace wg

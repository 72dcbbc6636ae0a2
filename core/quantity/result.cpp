#include "core/quantity/result.h"

namespace wg {

std::string Problem::text() const {
    std::string out = where.empty() ? what : where + ": " + what;
    if (!remedy.empty()) {
        if (!out.empty() && out.back() != '.') out += '.';
        out += ' ' + remedy;
    }
    return out;
}

std::string text_of(const std::vector<Problem>& problems) {
    std::string out;
    for (const Problem& p : problems) {
        if (!out.empty()) out += '\n';
        out += p.text();
    }
    return out;
}

}  // namespace wg

#include "ui/window/firm_prices.h"

#include "core/plan/own_lists.h"
#include "ui/common/format.h"

namespace wg::ui {

FirmPrices::FirmPrices(store::Store& store, std::shared_ptr<const plan::Reference> program)
    : store_(store), program_(std::move(program)), reference_(program_) {}

QString FirmPrices::refresh() {
    const store::PriceBook book(store_);
    auto versions = book.lists();
    if (!versions.ok()) return qs(text_of(versions.problems()));
    if (versions.value() == versions_) return {};
    versions_ = std::move(versions).value();
    std::vector<plan::OwnList> lists;
    std::vector<Problem> problems;
    for (const store::PriceListVersion& version : versions_) {
        const auto content = book.content(version.list_id, version.version);
        if (content.ok()) {
            lists.push_back({version.list_id, content.value(), version.withdrawn});
        } else {
            problems.insert(problems.end(), content.problems().begin(), content.problems().end());
        }
    }
    plan::WithLists with = plan::with_own_lists(*program_, lists);
    problems.insert(problems.end(), with.problems.begin(), with.problems.end());
    reference_ = lists.empty() ? program_ : std::make_shared<const plan::Reference>(std::move(with.reference));
    return problems.empty() ? QString() : qs(text_of(problems));
}

}  // namespace wg::ui

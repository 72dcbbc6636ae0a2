// What the firm keeps beside what comes with the program.

#include "core/plan/own_lists.h"
#include "core/store/price_book.h"
#include "ui/common/format.h"
#include "ui/common/notice_bar.h"
#include "ui/desk/desk_page.h"
#include "ui/window/main_window.h"

namespace wg::ui {

void MainWindow::take_firms_own() {
    const store::PriceBook book(*store_);
    std::vector<plan::OwnList> lists;
    std::vector<Problem> problems;
    const auto take = [&problems](const std::vector<Problem>& found) {
        problems.insert(problems.end(), found.begin(), found.end());
    };
    const auto versions = book.lists();
    if (versions.ok()) {
        for (const store::PriceListVersion& version : versions.value()) {
            const auto content = book.content(version.list_id, version.version);
            if (content.ok()) {
                lists.push_back({version.list_id, content.value(), version.withdrawn});
            } else {
                take(content.problems());
            }
        }
    } else {
        take(versions.problems());
    }
    if (lists.empty()) {
        reference_ = program_;
    } else {
        plan::WithLists with = plan::with_own_lists(*program_, lists);
        take(with.problems);
        reference_ = std::make_shared<const plan::Reference>(std::move(with.reference));
    }
    if (!problems.empty()) desk_->notice().add(Mark::stop, qs(text_of(problems)));
}

}  // namespace wg::ui

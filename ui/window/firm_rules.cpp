#include "ui/window/firm_rules.h"

#include <algorithm>

#include "ui/common/format.h"

namespace wg::ui {

FirmRules::FirmRules(store::Store& store, std::shared_ptr<const plan::Reference> program)
    : store_(store), program_(std::move(program)), reference_(program_) {}

void FirmRules::lay_over(std::shared_ptr<const plan::Reference> program) {
    if (program == program_) return;
    program_ = std::move(program);
    reference_ = program_;
    versions_.clear();  // so that the next refresh lays them over what is there now
}

QString FirmRules::refresh() {
    const store::RuleBook book(store_);
    auto versions = book.sets();
    if (!versions.ok()) return qs(text_of(versions.problems()));
    if (versions.value() == versions_) return {};
    versions_ = std::move(versions).value();
    withdrawn_.clear();
    std::vector<plan::OwnRules> sets;
    std::vector<Problem> problems;
    for (const store::RuleSetVersion& version : versions_) {
        const auto content = book.content(version.id, version.version);
        if (content.ok()) {
            (version.withdrawn ? withdrawn_ : sets).push_back({version.id, content.value()});
        } else {
            problems.insert(problems.end(), content.problems().begin(), content.problems().end());
        }
    }
    plan::WithRules with = plan::with_own_rules(*program_, sets);
    problems.insert(problems.end(), with.problems.begin(), with.problems.end());
    reference_ = sets.empty() ? program_ : std::make_shared<const plan::Reference>(std::move(with.reference));
    return problems.empty() ? QString() : qs(text_of(problems));
}

std::shared_ptr<const plan::Reference> FirmRules::with_named(const plan::Reference& reference, const Job& job) const {
    const auto named = std::find_if(withdrawn_.begin(), withdrawn_.end(),
                                    [&job](const plan::OwnRules& one) { return one.id == job.rule_set; });
    if (named == withdrawn_.end()) return nullptr;
    return std::make_shared<const plan::Reference>(plan::with_own_rules(reference, {*named}).reference);
}

std::shared_ptr<const plan::Reference> FirmRules::with_withdrawn(
    std::shared_ptr<const plan::Reference> reference) const {
    if (withdrawn_.empty()) return reference;
    return std::make_shared<const plan::Reference>(plan::with_own_rules(*reference, withdrawn_).reference);
}

std::string FirmRules::for_new_jobs() const {
    const auto chosen = store::RuleBook(store_).for_new_jobs();
    return plan::rules_for_new_jobs(*reference_, *program_, chosen.ok() ? chosen.value() : std::string());
}

}  // namespace wg::ui

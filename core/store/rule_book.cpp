#include "core/store/rule_book.h"

#include "core/plan/rule_set.h"
#include "core/quantity/utf8.h"
#include "core/store/text_checks.h"

namespace wg::store {
namespace {

constexpr TextTable rule_sets_kept{"rule_set", "rule_id", "note", "rule set", "the firm's list"};
constexpr const char* new_jobs_setting = "rules.for_new_jobs";

constexpr TextKind rule_set_kind{"rule set", "the set", "firm-rules",
                                 std::size_t{1} << 20U,  // no honest set comes near this
                                 [](const std::string& content, const std::string& name) -> Result<std::string> {
                                     const Result<plan::RuleSet> read = plan::rule_set_from_json(content, name);
                                     if (!read) return read.problems();
                                     return read.value().id;
                                 }};

Result<RuleSetVersion> without_content(Result<TextVersion> saved) {
    if (saved) saved.value().content.clear();
    return saved;
}

}  // namespace

Result<RuleSetVersion> RuleBook::save(const std::string& id, const std::string& content, std::int64_t based_on,
                                      const std::string& note, Instant now) {
    const VersionedTexts texts(store_, rule_sets_kept);
    const TextVersion text = text_version(id, content, note);
    if (auto problem = refuse_text(rule_set_kind, text, texts.name_of(id))) return *problem;
    return without_content(texts.save(text, based_on, now));
}

Result<RuleSetVersion> RuleBook::withdraw(const std::string& id, std::int64_t based_on, const std::string& note,
                                          Instant now) {
    const VersionedTexts texts(store_, rule_sets_kept);
    if (auto problem = refuse_note(note, texts.name_of(id))) return *problem;
    return without_content(texts.withdraw(id, based_on, note, now));
}

Result<std::vector<RuleSetVersion>> RuleBook::sets() const {
    return VersionedTexts(store_, rule_sets_kept).newest_of_each(Ask::rows);
}

Result<std::vector<RuleSetVersion>> RuleBook::history(const std::string& id) const {
    return VersionedTexts(store_, rule_sets_kept).history(id, Ask::rows);
}

Result<std::string> RuleBook::content(const std::string& id, std::int64_t version) const {
    return VersionedTexts(store_, rule_sets_kept).content(id, version);
}

Result<std::string> RuleBook::for_new_jobs() const {
    return store_.setting(new_jobs_setting, "");
}

Result<bool> RuleBook::choose_for_new_jobs(const std::string& id) {
    if (id.size() > longest_text_id || !is_utf8(id))
        return Problem{"rule set for new jobs", "has no id of 1 to 100 characters", "Choose a set of the list"};
    return store_.set_setting(new_jobs_setting, id);
}

Result<bool> RuleBook::put_from_elsewhere(const std::string& id, const std::string& content,
                                          const std::string& saved_at, const std::string& note) {
    const VersionedTexts texts(store_, rule_sets_kept);
    TextVersion came = text_version(id, content, note);
    if (auto problem = refuse_text(rule_set_kind, came, texts.name_of(id))) return *problem;
    came.saved_at = saved_at;
    return texts.put_from_elsewhere(std::move(came));
}

Result<std::vector<std::string>> damaged_rule_sets(const Database& database) {
    return damaged_versions_of(database, rule_sets_kept);
}

}  // namespace wg::store

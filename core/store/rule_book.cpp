#include "core/store/rule_book.h"

#include "core/plan/rule_set.h"
#include "core/quantity/utf8.h"

namespace wg::store {
namespace {

constexpr TextTable rule_sets_kept{"rule_set", "rule_id", "note", "rule set", "the firm's list"};
constexpr const char* new_jobs_setting = "rules.for_new_jobs";
constexpr std::size_t longest_rule_id = 100;
constexpr std::size_t longest_rule_note = 2000;
constexpr std::size_t max_rule_bytes = std::size_t{1} << 20U;  ///< no honest set comes near this

std::optional<Problem> refuse_note(const std::string& note, const std::string& name) {
    if (note.size() <= longest_rule_note && is_utf8(note)) return std::nullopt;
    return Problem{name, "the note is longer than 2,000 characters", "Write it shorter"};
}

std::optional<Problem> refuse_rules(const std::string& id, const std::string& content, const std::string& note,
                                    const std::string& name) {
    if (id.empty() || id.size() > longest_rule_id || !is_utf8(id))
        return Problem{name, "has no id of 1 to 100 characters", "Give the set a short id, e.g. firm-rules"};
    if (content.size() > max_rule_bytes) return Problem{name, "is longer than 1 MiB", "Shorten its texts"};
    // Qt would drop a byte order mark, and the text would lose its hash: the first byte has to be the file's own.
    if (content.empty() || content.front() != '{')
        return Problem{name, "does not begin as a rule set file", "Write the set to a file again"};
    const Result<plan::RuleSet> read = plan::rule_set_from_json(content, name);
    if (!read) return read.problems().front();
    if (read.value().id != id)
        return Problem{name, "calls itself '" + for_message(read.value().id) + "'",
                       "Keep it under the id that stands in it"};
    return refuse_note(note, name);
}

TextVersion rules_text(const std::string& id, const std::string& content, const std::string& note) {
    TextVersion out;
    out.id = id;
    out.note = note;
    out.content = content;
    return out;
}

Result<RuleSetVersion> without_content(Result<TextVersion> saved) {
    if (saved) saved.value().content.clear();
    return saved;
}

}  // namespace

Result<RuleSetVersion> RuleBook::save(const std::string& id, const std::string& content, std::int64_t based_on,
                                      const std::string& note, Instant now) {
    const VersionedTexts texts(store_, rule_sets_kept);
    if (auto problem = refuse_rules(id, content, note, texts.name_of(id))) return *problem;
    return without_content(texts.save(rules_text(id, content, note), based_on, now));
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
    if (id.size() > longest_rule_id || !is_utf8(id))
        return Problem{"rule set for new jobs", "has no id of 1 to 100 characters", "Choose a set of the list"};
    return store_.set_setting(new_jobs_setting, id);
}

Result<bool> RuleBook::put_from_elsewhere(const std::string& id, const std::string& content,
                                          const std::string& saved_at, const std::string& note) {
    const VersionedTexts texts(store_, rule_sets_kept);
    if (auto problem = refuse_rules(id, content, note, texts.name_of(id))) return *problem;
    TextVersion came = rules_text(id, content, note);
    came.saved_at = saved_at;
    return texts.put_from_elsewhere(std::move(came));
}

Result<std::vector<std::string>> damaged_rule_sets(const Database& database) {
    return damaged_versions_of(database, rule_sets_kept);
}

}  // namespace wg::store

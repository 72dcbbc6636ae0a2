#pragma once
// The firm's rule sets (docs/rule-set-format.md). Every version stays as it was saved.

#include <string>
#include <vector>

#include "core/store/versioned_texts.h"

namespace wg::store {

/// `note`: why it was saved, in the words of who did. `content` stays empty: see RuleBook::content.
using RuleSetVersion = TextVersion;

class RuleBook {
   public:
    /// The store must outlive it.
    explicit RuleBook(Store& store) : store_(store) {}

    /// A set as its file has it. `based_on`: the version that was changed, 0 for a set that is new. Refused: what its
    /// reader refuses (core/plan/rule_set.h), another id than its own, a set that somebody else saved in between, the
    /// same content again.
    [[nodiscard]] Result<RuleSetVersion> save(const std::string& id, const std::string& content, std::int64_t based_on,
                                              const std::string& note, Instant now);
    /// No longer offered for jobs; its versions stay, and a later save brings it back.
    [[nodiscard]] Result<RuleSetVersion> withdraw(const std::string& id, std::int64_t based_on, const std::string& note,
                                                  Instant now);
    /// The newest version of each set, withdrawn ones included, by id.
    [[nodiscard]] Result<std::vector<RuleSetVersion>> sets() const;
    /// Newest first.
    [[nodiscard]] Result<std::vector<RuleSetVersion>> history(const std::string& id) const;
    /// Refused: a version that is not here, or whose text lost its hash.
    [[nodiscard]] Result<std::string> content(const std::string& id, std::int64_t version) const;

    /// Id of the set that new jobs are reckoned with, one of the firm's or of the program's; empty: none was chosen.
    [[nodiscard]] Result<std::string> for_new_jobs() const;
    /// Empty: none. Refused: an id that is none.
    [[nodiscard]] Result<bool> choose_for_new_jobs(const std::string& id);

    /// Within a transaction: see VersionedTexts::put_from_elsewhere. Refused: what `save` refuses of the text.
    [[nodiscard]] Result<bool> put_from_elsewhere(const std::string& id, const std::string& content,
                                                  const std::string& saved_at, const std::string& note);

   private:
    Store& store_;
};

/// Sets and versions whose text no longer has its hash, in words.
[[nodiscard]] Result<std::vector<std::string>> damaged_rule_sets(const Database& database);

}  // namespace wg::store

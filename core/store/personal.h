#pragma once
// A client asks what the firm keeps about them, or wants it gone (GDPR, articles 15, 17 and 20). What the law makes the
// firm keep stays until its time is over; what that is, and for how long, is for the firm to find out.

#include <set>
#include <string>
#include <vector>

#include "core/store/store.h"

namespace wg::store {

/// A job with what it says of its client; a removed one, too.
struct ClientJob {
    std::string job_id;
    std::string number;
    std::string title;
    std::string client;
    std::string street;
    std::string postcode;
    std::string town;
    std::string phone;
    std::string email;
    bool removed = false;
    int quotes = 0;
    std::string quotes_kept_until;  ///< ISO 8601 date of the latest; empty: no quote has to stay
};

/// What people name on the command line or choose in the window.
struct NamedForClient {
    std::vector<std::string> job_ids;
    std::vector<std::string> customer_ids;
};

struct ErasureRow {
    std::string job_id;
    std::string number;
    std::string erased_at;
    std::string erased_by;
    std::string reason;
    std::string kept_until;  ///< its quotes were kept until then; empty: nothing was kept
};

struct Erased {
    int jobs = 0;
    int customers = 0;
    int revisions = 0;
    int photographs = 0;
    int quotes = 0;
    int quotes_kept = 0;
};

struct ExportedClient {
    int jobs = 0;
    int customers = 0;
    int revisions = 0;
    int quotes = 0;
    int papers = 0;  ///< of quotes and orders, as they went out, and signatures
    int photographs = 0;
    std::vector<std::string> missing;  ///< photographs and papers that are named and not here whole, in words
};

class PersonalData {
   public:
    /// The store must outlive it.
    explicit PersonalData(Store& store) : store_(store), database_(store.database()) {}

    /// Years that issued quotes stay after their date, 0..100; 10 unless set (assumed: the time for business records
    /// differs by country).
    [[nodiscard]] Result<int> years_kept() const;
    [[nodiscard]] Result<bool> set_years_kept(int years);

    /// Jobs, removed ones too, whose client, address, telephone or e-mail holds all the words, whatever their case.
    /// Reads every job: for the few times that somebody asks. Refused: no word.
    [[nodiscard]] Result<std::vector<ClientJob>> find(const std::string& words, Instant now) const;

    /// Ids of the jobs with these numbers (an id does, too). Refused: one that is not there.
    [[nodiscard]] Result<std::vector<std::string>> ids_of(const std::vector<std::string>& numbers) const;

    /// Jobs with these numbers, and customers with theirs: then all their jobs, removed ones too. Refused: one that is
    /// not there.
    [[nodiscard]] Result<NamedForClient> named(const std::vector<std::string>& numbers) const;

    /// Into a folder that is new or empty: jobs/NUMBER.json, history/NUMBER-REVISION.json, quotes/NUMBER.json,
    /// quotes/NUMBER-answers.json (what was answered, when, by whom), papers/NUMBER.pdf (of quotes, orders and their
    /// changes, with signatures as pictures), photographs/SHA256.jpg, customers.csv: those named, and those that the
    /// jobs are linked with.
    [[nodiscard]] Result<ExportedClient> export_to(const std::vector<std::string>& job_ids, const std::string& folder,
                                                   const std::vector<std::string>& customer_ids = {}) const;

    /// The same as one archive (ZIP), which says in missing.txt what it lacks.
    [[nodiscard]] Result<std::string> export_as_file(const NamedForClient& named) const;

    /// Takes out of these jobs everything but their numbers: contents of all revisions, photographs that no other job
    /// names, what is due, edits not saved, and quotes whose time is over. The refrigerant register stays. All or none;
    /// written down with who, when and why. `reason` stays for good: no name in it. The customers named go, and those
    /// linked with these jobs alone: of them, too, only the number stays. Refused: a job or a customer that is not
    /// there, a customer with a job that is not to go, an empty reason.
    [[nodiscard]] Result<Erased> erase(const std::vector<std::string>& job_ids, const std::string& reason, Instant now,
                                       const std::vector<std::string>& customer_ids = {});
    /// The same for quotes that an earlier erasing kept and whose time is over by now.
    [[nodiscard]] Result<Erased> erase_what_is_over(Instant now);
    /// Oldest first.
    [[nodiscard]] Result<std::vector<ErasureRow>> erasures() const;

   private:
    struct KeptQuotes {
        int total = 0;
        int kept = 0;
        std::string until;
        std::vector<std::int64_t> revisions;  ///< that they were issued for
        std::vector<std::string> over;        ///< ids of the others
    };
    [[nodiscard]] Result<KeptQuotes> quotes_of(const std::string& job_id, Instant now) const;
    [[nodiscard]] std::optional<Problem> erase_one(const std::string& job_id, const std::string& reason, Instant now,
                                                   Erased& out) const;
    [[nodiscard]] std::optional<Problem> drop_photographs(const std::vector<std::string>& job_ids, Erased& out) const;
    [[nodiscard]] std::optional<Problem> erase_customers(const std::set<std::string>& ids, const std::string& reason,
                                                         Instant now, Erased& out) const;
    [[nodiscard]] Result<std::set<std::string>> customers_of(const std::vector<std::string>& job_ids) const;
    [[nodiscard]] std::optional<Problem> sweep_file() const;
    /// Name of a quote's files, without ending.
    [[nodiscard]] static std::string quote_stem(const IssuedQuote& quote);
    /// With the answers; `root`: the folder of all.
    [[nodiscard]] std::optional<Problem> export_papers(const std::string& job_id, const std::string& root,
                                                       ExportedClient& out) const;

    Store& store_;
    const Database& database_;
};

}  // namespace wg::store

#pragma once
// Jobs that leave the store as a file, and come in again from other machines (core/exchange, core/merge).

#include <string>
#include <utility>
#include <vector>

#include "core/exchange/parcel.h"
#include "core/merge/join.h"
#include "core/store/store.h"

namespace wg::store {

class SqlStore;

/// A job ready to be packed.
struct Outgoing {
    exchange::Parcel parcel;
    std::vector<std::string> missing;  ///< what it names and the store does not have whole, in words
};

/// What taking a parcel in came to.
struct Taken {
    Job job;                    ///< as stored now
    bool is_new = false;        ///< the store did not have it
    bool changed = false;       ///< a new revision was saved
    bool brought_back = false;  ///< it had been removed here
    std::string other_number;   ///< the number it came with, when that is another job's here
    std::vector<merge::Change> taken;
    std::vector<merge::Open> open;
    /// Their roofs and walls have to be made anew (core/roof), as an edit.
    std::vector<std::string> buildings_to_remake;
    int quotes = 0;                     ///< new here
    int answers = 0;                    ///< to quotes, new here
    int orders = 0;                     ///< papers of orders and their changes, new here
    int pictures = 0;                   ///< new here
    int firm_data = 0;                  ///< prices, rules and equipment that the job is planned with, new or newer here
    std::vector<std::string> left_out;  ///< in words: what the store could not take, and why
    std::vector<std::string> likely_same;  ///< numbers of jobs with the same client and site under another id
};

class Travel {
   public:
    /// The store must outlive it.
    explicit Travel(Store& store);

    /// `made_by`: program and its version. Refused: a job that is not there.
    [[nodiscard]] Result<Outgoing> parcel_of(const std::string& job_id, const std::string& made_by, Instant now);

    /// All or nothing, in one transaction. A job that is here is put together with the parcel's field by field; taking
    /// the same parcel twice changes nothing the second time. Refused: what core/merge refuses, a quote that is here
    /// with another content, a job whose data were erased at the client's request.
    [[nodiscard]] Result<Taken> take(const exchange::Parcel& parcel, Instant now);

    /// What two machines left open in the stored job.
    [[nodiscard]] Result<std::vector<merge::Open>> open_fields(const std::string& job_id);
    /// Decides: (path, side) as `open_fields` gives them. A new revision, or a refusal when the job was saved since
    /// `revision`.
    [[nodiscard]] Result<Job> choose(const std::string& job_id, std::int64_t revision,
                                     const std::vector<std::pair<std::string, std::size_t>>& sides, Instant now);

    /// For a copy whose save is refused since somebody else saved in between: both put together from the revision that
    /// `mine` was read at. The job has the stored revision and can be saved.
    [[nodiscard]] Result<merge::Merged> bring_together(const Job& mine);

   private:
    [[nodiscard]] Result<merge::Versions> sent_versions(const exchange::Parcel& parcel) const;
    [[nodiscard]] std::optional<Problem> refuse_erased(const Job& job) const;
    [[nodiscard]] Result<bool> number_is_free(const Job& job) const;
    [[nodiscard]] std::optional<Problem> put_in(const exchange::Parcel& parcel, const merge::Versions& theirs,
                                                Instant now, Taken& out);
    [[nodiscard]] std::optional<Problem> add_pictures(const exchange::Parcel& parcel, Instant now, Taken& out);
    [[nodiscard]] std::optional<Problem> send_firm_data(Outgoing& out) const;
    [[nodiscard]] std::optional<Problem> add_firm_data(const exchange::Parcel& parcel, Taken& out);
    [[nodiscard]] std::optional<Problem> add_quotes(const exchange::Parcel& parcel, Taken& out);
    [[nodiscard]] std::optional<Problem> add_what_became(const exchange::SentQuote& sent, Taken& out);
    [[nodiscard]] std::optional<Problem> add_orders(const exchange::SentQuote& sent, Taken& out);
    [[nodiscard]] std::optional<Problem> send_orders(Outgoing& out) const;
    [[nodiscard]] std::optional<Problem> find_likely_same(Taken& out);

    SqlStore* store_;  ///< null: not one that keeps versions
};

}  // namespace wg::store

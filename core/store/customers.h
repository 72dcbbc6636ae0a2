#pragma once
// The firm's customers: kept, searched, brought together, and linked with their jobs. A job's own client stays what it
// is: its papers name it.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/customers/customer.h"
#include "core/customers/import.h"
#include "core/store/fitted_parts.h"
#include "core/store/store.h"

namespace wg::store {

/// What a list shows of a customer.
struct CustomerRow {
    std::string id;
    std::string number;
    std::string name;
    std::string town;   ///< of the first address
    std::string phone;  ///< of the first contact that has one
    std::string email;  ///< the same
    int jobs = 0;       ///< linked, and not removed
};

struct CustomerQuote {
    std::string job_number;
    std::string number;
    std::string issued_at;
    std::int64_t gross_minor = 0;
    std::string currency;
    std::string answer;  ///< "accepted", "declined", "withdrawn"; empty: none yet
};

/// All that the firm has to do with a customer.
struct CustomerAtOneLook {
    std::vector<JobRow> jobs;  ///< newest first; removed ones are left out
    std::vector<CustomerQuote> quotes;
    std::vector<FittedRow> fitted;  ///< those with a number; the newest job first
};

struct CustomersImported {
    int added = 0;
    int changed = 0;
};

class CustomerBook {
   public:
    /// The store must outlive it.
    explicit CustomerBook(Store& store) : store_(store), database_(store.database()) {}

    /// Keeps a new one (id or number empty: given), or changes the one with this id. Refused: what
    /// `customers::problems_of` refuses, a number that is taken or was another's (also as a former one), another number
    /// than before, a copy that somebody else saved over since it was read.
    [[nodiscard]] Result<customers::Customer> save(const customers::Customer& customer, Instant now);
    [[nodiscard]] Result<customers::Customer> load(const std::string& id) const;
    /// Refused while a job is linked with it.
    [[nodiscard]] Result<bool> remove(const std::string& id);

    /// By name. `words`: each has to begin a word of number, name, tax id, notes, addresses or contacts; empty: all.
    [[nodiscard]] Result<std::vector<CustomerRow>> page(const std::string& words, int limit, int offset) const;
    [[nodiscard]] Result<int> count(const std::string& words) const;
    /// All, by name: to compare a file with, or to hand out.
    [[nodiscard]] Result<std::vector<customers::Customer>> all() const;
    [[nodiscard]] Result<std::string> next_number() const;  ///< "C-0001"; never one that was given before

    /// In place of the customer it was linked with. Refused: a job or a customer that is not there.
    [[nodiscard]] Result<bool> link(const std::string& job_id, const std::string& customer_id);
    [[nodiscard]] Result<bool> unlink(const std::string& job_id);
    /// Id; empty: none.
    [[nodiscard]] Result<std::string> customer_of(const std::string& job_id) const;
    /// Customers who may be this client: the same name, and postcode, telephone or e-mail is one of theirs. Offered to
    /// people, who decide.
    [[nodiscard]] Result<std::vector<CustomerRow>> likely_of(const Client& client) const;
    /// Jobs, linked with nobody, whose client may be this customer. Looks at the newest 200 that have the name's words.
    [[nodiscard]] Result<std::vector<JobRow>> likely_jobs(const std::string& customer_id) const;

    /// `other` becomes part of `keep`: jobs, addresses and contacts that it lacks, notes, its number among the former
    /// ones. Refused: the same twice, one that is not there, more than a customer may hold.
    [[nodiscard]] Result<customers::Customer> bring_together(const std::string& keep, const std::string& other,
                                                             Instant now);

    [[nodiscard]] Result<CustomerAtOneLook> at_one_look(const std::string& customer_id) const;

    /// All rows of a preview that are new or changed, or none. Refused: a customer that somebody saved since the
    /// preview.
    [[nodiscard]] Result<CustomersImported> import(const std::vector<customers::ImportedRow>& rows, Instant now);

    /// Names that differ in capitals, accents and blanks alone have the same key.
    [[nodiscard]] static std::string name_key(const std::string& name);
    /// A customer as a job's client says.
    [[nodiscard]] static customers::Customer of_client(const Client& client);
    /// A job's client as the customer is kept: the site's address where there is one.
    [[nodiscard]] static Client client_of(const customers::Customer& customer);

   private:
    // Within a transaction.
    [[nodiscard]] Result<customers::Customer> put(customers::Customer customer, Instant now);
    [[nodiscard]] std::optional<Problem> put_parts(const customers::Customer& customer) const;
    [[nodiscard]] std::optional<Problem> refuse(const customers::Customer& customer) const;
    [[nodiscard]] std::optional<Problem> refuse_number(const customers::Customer& customer) const;
    [[nodiscard]] std::optional<Problem> refuse_former(const customers::Customer& customer,
                                                       const std::vector<std::string>& before) const;
    [[nodiscard]] std::optional<Problem> add_quotes(const std::string& customer_id, CustomerAtOneLook& out) const;

    Store& store_;
    const Database& database_;
};

/// A customer with everything that hangs on it, within a transaction.
[[nodiscard]] std::optional<Problem> drop_customer(const Database& database, const std::string& id);

}  // namespace wg::store

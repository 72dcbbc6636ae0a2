#pragma once
// A customer of the firm: who pays and who is called. Jobs keep their own client's words: they are papers of a day.

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/result.h"

namespace wg::customers {

enum class AddressUse { bill, site };

struct Address {
    AddressUse use = AddressUse::bill;
    std::string street;
    std::string postcode;
    std::string town;
    [[nodiscard]] bool empty() const { return street.empty() && postcode.empty() && town.empty(); }
    friend bool operator==(const Address&, const Address&) = default;
};

struct Contact {
    std::string name;
    std::string role;  ///< "caretaker", "owner": free text
    std::string phone;
    std::string email;
    [[nodiscard]] bool empty() const { return name.empty() && role.empty() && phone.empty() && email.empty(); }
    friend bool operator==(const Contact&, const Contact&) = default;
};

struct Customer {
    std::string id;      ///< UUID; empty: the store gives one
    std::string number;  ///< empty: the store gives one; never changed after
    std::string name;    ///< of the person or the firm
    std::string tax_id;
    std::string notes;
    std::vector<std::string> former_numbers;  ///< of customers that were brought together into this one
    std::vector<Address> addresses;
    std::vector<Contact> contacts;
    std::int64_t revision = 0;  ///< of the stored one that this copy was read at; 0: not stored
    std::string changed_at;     ///< ISO 8601, UTC
    std::string changed_by;
};

/// The same but for number, revision and who changed it.
[[nodiscard]] bool same_content(const Customer& a, const Customer& b);

/// What is wrong with it, field by field; empty: it may be kept. Name 1..200 bytes, notes up to 4,000, all other texts
/// up to 200, at most 50 addresses and contacts and 200 former
/// numbers of a line each, e-mail addresses with one @ and something on both sides.
[[nodiscard]] std::vector<Problem> problems_of(const Customer& customer);

/// Digits alone; a leading "+" and "00" are the same and left out.
[[nodiscard]] std::string digits_of(std::string_view phone);

/// The same line, with the country's number or without: at least seven digits, one ending with the other.
[[nodiscard]] bool same_phone(std::string_view a, std::string_view b);

/// Whether postcode, telephone or e-mail is one of the customer's. Empty ones are none.
[[nodiscard]] bool shares_a_trait(const Customer& customer, std::string_view postcode, std::string_view phone,
                                  std::string_view email);

/// Letters of ASCII in small ones, blanks at the ends taken away: enough for postcodes and e-mail addresses.
[[nodiscard]] std::string plain_key(std::string_view text);

}  // namespace wg::customers

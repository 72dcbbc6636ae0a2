#include "core/customers/customer.h"

#include <algorithm>

#include "core/quantity/utf8.h"
#include "core/quantity/uuid.h"

namespace wg::customers {
namespace {

constexpr std::size_t most_of_a_text = 200;
constexpr std::size_t most_of_notes = 4000;
constexpr std::size_t most_entries = 50;
constexpr std::size_t most_former_numbers = 200;
constexpr std::size_t least_digits = 7;

void check_text(std::vector<Problem>& out, const std::string& where, const std::string& text, std::size_t most) {
    if (!is_utf8(text) || text.find('\0') != std::string::npos)
        out.push_back({where, "is no text", "Enter it again"});
    else if (text.size() > most)
        out.push_back({where, "has " + std::to_string(text.size()) + " bytes, more than " + std::to_string(most),
                       "Write it shorter"});
}

bool is_email(std::string_view text) {
    const std::size_t at = text.find('@');
    return at != std::string_view::npos && at > 0 && at + 1 < text.size() &&
           text.find('@', at + 1) == std::string_view::npos &&
           text.find_first_of(" \t\r\n,;<>") == std::string_view::npos;
}

}  // namespace

bool same_content(const Customer& a, const Customer& b) {
    return a.name == b.name && a.tax_id == b.tax_id && a.notes == b.notes && a.addresses == b.addresses &&
           a.contacts == b.contacts && a.former_numbers == b.former_numbers;
}

std::vector<Problem> problems_of(const Customer& customer) {
    std::vector<Problem> out;
    const std::string who = "customer " + for_message(customer.number.empty() ? customer.name : customer.number);
    if (!customer.id.empty() && !is_uuid(customer.id)) out.push_back({who, "has an id that is none", "Enter it again"});
    if (customer.name.find_first_not_of(" \t\r\n") == std::string::npos)
        out.push_back({who + ", name", "is empty", "Enter the name of the person or the firm"});
    check_text(out, who + ", name", customer.name, most_of_a_text);
    check_text(out, who + ", number", customer.number, most_of_a_text);
    if (customer.former_numbers.size() > most_former_numbers)
        out.push_back({who, "has more than 200 former numbers", "Leave out those that nobody asks for"});
    for (const std::string& former : customer.former_numbers) {
        check_text(out, who + ", former number", former, most_of_a_text);
        if (former.empty() || former.find('\n') != std::string::npos)
            out.push_back({who + ", former number", "is empty or goes over two lines", "Write each in a line"});
    }
    check_text(out, who + ", tax id", customer.tax_id, most_of_a_text);
    check_text(out, who + ", notes", customer.notes, most_of_notes);
    if (customer.addresses.size() > most_entries || customer.contacts.size() > most_entries)
        out.push_back({who, "has more than 50 addresses or contacts", "Make customers of their own for some"});
    for (std::size_t i = 0; i < customer.addresses.size(); ++i) {
        const Address& one = customer.addresses[i];
        const std::string where = who + ", address " + std::to_string(i + 1);
        check_text(out, where + ", street", one.street, most_of_a_text);
        check_text(out, where + ", postcode", one.postcode, most_of_a_text);
        check_text(out, where + ", town", one.town, most_of_a_text);
    }
    for (std::size_t i = 0; i < customer.contacts.size(); ++i) {
        const Contact& one = customer.contacts[i];
        const std::string where = who + ", contact " + std::to_string(i + 1);
        check_text(out, where + ", name", one.name, most_of_a_text);
        check_text(out, where + ", role", one.role, most_of_a_text);
        check_text(out, where + ", telephone", one.phone, most_of_a_text);
        check_text(out, where + ", e-mail", one.email, most_of_a_text);
        if (!one.email.empty() && !is_email(one.email))
            out.push_back({where + ", e-mail", "'" + for_message(one.email) + "' is no e-mail address",
                           "Write it as name@place.example"});
    }
    return out;
}

std::string digits_of(std::string_view phone) {
    std::string out;
    for (const char c : phone) {
        if (c >= '0' && c <= '9') out += c;
    }
    if (out.starts_with("00")) out.erase(0, 2);
    return out;
}

bool same_phone(std::string_view a, std::string_view b) {
    std::string one = digits_of(a);
    std::string other = digits_of(b);
    // Within the country a 0 stands where its number stands from abroad.
    for (std::string* each : {&one, &other}) {
        if (each->starts_with('0')) each->erase(0, 1);
    }
    if (one.size() < least_digits || other.size() < least_digits) return false;
    return one.ends_with(other) || other.ends_with(one);
}

std::string plain_key(std::string_view text) {
    const std::size_t from = text.find_first_not_of(" \t\r\n");
    if (from == std::string_view::npos) return {};
    text = text.substr(from, text.find_last_not_of(" \t\r\n") - from + 1);
    std::string out(text);
    std::transform(out.begin(), out.end(), out.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return out;
}

bool shares_a_trait(const Customer& customer, std::string_view postcode, std::string_view phone,
                    std::string_view email) {
    const std::string code = plain_key(postcode);
    const std::string mail = plain_key(email);
    const bool place = std::any_of(customer.addresses.begin(), customer.addresses.end(), [&code](const Address& one) {
        return !code.empty() && plain_key(one.postcode) == code;
    });
    return place ||
           std::any_of(customer.contacts.begin(), customer.contacts.end(), [&mail, &phone](const Contact& one) {
               return (!mail.empty() && plain_key(one.email) == mail) || same_phone(one.phone, phone);
           });
}

}  // namespace wg::customers

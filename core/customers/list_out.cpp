#include "core/customers/list_out.h"

#include <algorithm>

namespace wg::customers {

std::vector<std::vector<std::string>> rows_of(const std::vector<Customer>& customers) {
    std::vector<std::vector<std::string>> out = {{"Customer number", "Name", "Tax id", "Notes", "Street", "Postcode",
                                                  "Town", "Site street", "Site postcode", "Site town", "Contact",
                                                  "Role", "Phone", "E-mail", "Former numbers"}};
    for (const Customer& one : customers) {
        std::vector<Address> bills;
        std::vector<Address> sites;
        for (const Address& address : one.addresses)
            (address.use == AddressUse::bill ? bills : sites).push_back(address);
        // One a line: a number may hold any other letter.
        std::string former;
        for (const std::string& number : one.former_numbers) {
            if (!former.empty()) former += '\n';
            former += number;
        }
        const std::size_t count = std::max({std::size_t{1}, bills.size(), sites.size(), one.contacts.size()});
        for (std::size_t i = 0; i < count; ++i) {
            const Address bill = i < bills.size() ? bills[i] : Address{};
            const Address site = i < sites.size() ? sites[i] : Address{};
            const Contact contact = i < one.contacts.size() ? one.contacts[i] : Contact{};
            const bool first = i == 0;
            out.push_back({one.number, one.name, first ? one.tax_id : "", first ? one.notes : "", bill.street,
                           bill.postcode, bill.town, site.street, site.postcode, site.town, contact.name, contact.role,
                           contact.phone, contact.email, first ? former : ""});
        }
    }
    return out;
}

}  // namespace wg::customers

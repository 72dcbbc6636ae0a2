#include "ui/offer/firm_settings.h"

#include "ui/common/format.h"

namespace wg::ui {

Firm read_firm(store::Store* store) {
    Firm firm;
    if (store == nullptr) return firm;
    const auto read = [store](const char* key) {
        const auto value = store->setting(key, "");
        return value.ok() ? qs(value.value()) : QString();
    };
    firm.name = read(firm_name_key);
    firm.street = read(firm_street_key);
    firm.town = read(firm_town_key);
    firm.phone = read(firm_phone_key);
    firm.email = read(firm_email_key);
    return firm;
}

Result<bool> write_firm(store::Store& store, const Firm& firm) {
    const std::pair<const char*, QString> entries[] = {{firm_name_key, firm.name},
                                                       {firm_street_key, firm.street},
                                                       {firm_town_key, firm.town},
                                                       {firm_phone_key, firm.phone},
                                                       {firm_email_key, firm.email}};
    for (const auto& [key, value] : entries) {
        auto written = store.set_setting(key, value.trimmed().toStdString());
        if (!written.ok()) return written;
    }
    return true;
}

}  // namespace wg::ui

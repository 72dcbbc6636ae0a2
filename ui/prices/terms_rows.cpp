#include "ui/prices/terms_rows.h"

#include <QCoreApplication>
#include <QDate>
#include <algorithm>
#include <cmath>

#include "core/job/words.h"
#include "core/parts/price_entry.h"
#include "ui/common/format.h"
#include "ui/drawing/fields.h"

namespace wg::ui {
namespace {

using parts::PriceList;

class Terms {
    Q_DECLARE_TR_FUNCTIONS(PriceTerms)
};

QString units_of_money(Money amount) {
    return number(parts::units_of(amount), 2);
}

QString digits(double value) {
    return QString::number(value, 'g', 10);
}

/// In words why the entry is no amount; else it is in `out`.
QString take_amount(const QString& entry, Money& out) {
    const std::optional<double> units = parsed_number(entry);
    const std::optional<Money> amount = units ? parts::money_of_units(*units) : std::nullopt;
    if (!amount) return Terms::tr("'%1' is no amount from 0 to 10 000 000 with at most two decimals.").arg(entry);
    out = *amount;
    return {};
}

QString take_amount_if_any(const QString& entry, std::optional<Money>& out) {
    Money amount;
    if (entry.isEmpty()) {
        out.reset();
        return {};
    }
    const QString wrong = take_amount(entry, amount);
    if (wrong.isEmpty()) out = amount;
    return wrong;
}

/// What the number may be the list's reader says.
QString take_figure(QString entry, double& out) {
    if (entry.endsWith(QLatin1Char('%'))) entry.chop(1);
    const std::optional<double> value = parsed_number(entry);
    if (!value) return Terms::tr("'%1' is no number.").arg(entry);
    out = *value;
    return {};
}

QString take_share(const QString& entry, double& out) {
    double percent = 0.0;
    const QString wrong = take_figure(entry, percent);
    if (wrong.isEmpty()) out = parts::share_of_percent(percent);
    return wrong;
}

QString take_words(const QString& entry, std::string& out) {
    out = entry.toStdString();
    return {};
}

/// "rate-3": the first that no row has.
template <class T>
std::string free_id(const std::vector<T>& rows, const char* stem) {
    for (int n = 1;; ++n) {
        const std::string id = std::string(stem) + "-" + std::to_string(n);
        if (std::none_of(rows.begin(), rows.end(), [&](const T& one) { return one.id == id; })) return id;
    }
}

/// Rows of one vector of the list, which `in` finds in one that may be changed and in one that may not.
template <class T, class In>
TermsRows rows_of(In in, std::function<QString(const T&, int column)> text,
                  std::function<QString(T&, int column, const QString&)> put) {
    TermsRows out;
    out.count = [in](const PriceList& list) { return static_cast<int>(in(list).size()); };
    out.text = [in, text](const PriceList& list, int row, int column) {
        return text(in(list)[static_cast<std::size_t>(row)], column);
    };
    out.put = [in, put](PriceList& list, int row, int column, const QString& entry) {
        return put(in(list)[static_cast<std::size_t>(row)], column, entry);
    };
    out.remove = [in](PriceList& list, int row) { in(list).erase(in(list).begin() + row); };
    return out;
}

QString covering_words(Covering covering) {
    return QString::fromUtf8(text_of(covering));
}

}  // namespace

TermsRows labour_rate_rows() {
    TermsRows out = rows_of<parts::LabourRate>(
        [](auto& list) -> auto& { return list.labour_rates; },
        [](const parts::LabourRate& rate, int column) {
            switch (column) {
                case 0: return qs(rate.text);
                case 1: return qs(rate.id);
                case 2: return units_of_money(rate.hour);
                default: return rate.cost ? units_of_money(*rate.cost) : QString();
            }
        },
        [](parts::LabourRate& rate, int column, const QString& entry) {
            switch (column) {
                case 0: return take_words(entry, rate.text);
                case 1: return take_words(entry, rate.id);
                case 2: return take_amount(entry, rate.hour);
                default: return take_amount_if_any(entry, rate.cost);
            }
        });
    out.title = Terms::tr("Labour rates");
    out.none = Terms::tr("All work is reckoned with the hour above. A rate is for work that has another price.");
    out.columns = {
        {Terms::tr("Kind of work")},
        {Terms::tr("Id"), false, Terms::tr("Under which tasks name the rate"), 180},
        {Terms::tr("An hour, net"), true, {}, 140},
        {Terms::tr("Cost of an hour"), true, Terms::tr("What the hour costs the firm; never on paper"), 140}};
    out.add = [](PriceList& list) {
        parts::LabourRate rate;
        rate.id = free_id(list.labour_rates, "rate");
        rate.text = Terms::tr("New rate").toStdString();
        rate.hour = list.labour_hour;
        list.labour_rates.push_back(std::move(rate));
        return QString();
    };
    return out;
}

TermsRows height_rows() {
    TermsRows out = rows_of<parts::Difficulty::Height>(
        [](auto& list) -> auto& { return list.difficulty.heights; },
        [](const parts::Difficulty::Height& one, int column) { return digits(column == 0 ? one.over_m : one.factor); },
        [](parts::Difficulty::Height& one, int column, const QString& entry) {
            return take_figure(entry, column == 0 ? one.over_m : one.factor);
        });
    out.title = Terms::tr("Height over ground");
    out.none = Terms::tr("Height stretches no hours.");
    out.columns = {{Terms::tr("Highest corner over, m"), true, {}, 200},
                   {Terms::tr("Hours times"), true, Terms::tr("From 0.1 to 10"), 120}};
    out.add = [](PriceList& list) {
        auto& heights = list.difficulty.heights;
        const double over_m = heights.empty() ? 6.0 : heights.back().over_m + 1.0;
        heights.push_back({over_m, heights.empty() ? 1.0 : heights.back().factor});
        return QString();
    };
    return out;
}

TermsRows covering_rows() {
    TermsRows out = rows_of<parts::Difficulty::OfCovering>(
        [](auto& list) -> auto& { return list.difficulty.coverings; },
        [](const parts::Difficulty::OfCovering& one, int column) {
            return column == 0 ? covering_words(one.covering) : digits(one.factor);
        },
        [](parts::Difficulty::OfCovering& one, int column, const QString& entry) {
            if (column != 0) return take_figure(entry, one.factor);
            for (const auto& word : words<Covering>()) {
                if (covering_words(word.value) != entry) continue;
                one.covering = word.value;
                return QString();
            }
            return Terms::tr("'%1' is no covering.").arg(entry);
        });
    out.title = Terms::tr("Covering of the surface");
    out.none = Terms::tr("The covering stretches no hours.");
    const auto choices = [](const PriceList&) {
        QStringList all;
        for (const auto& word : words<Covering>())
            all += covering_words(word.value);
        return all;
    };
    out.columns = {{Terms::tr("Covering"), false, {}, 200, choices},
                   {Terms::tr("Hours times"), true, Terms::tr("From 0.1 to 10"), 120}};
    out.add = [](PriceList& list) {
        auto& told = list.difficulty.coverings;
        for (const auto& word : words<Covering>()) {
            if (std::any_of(told.begin(), told.end(), [&](const auto& one) { return one.covering == word.value; }))
                continue;
            told.push_back({word.value, 1.0});
            return QString();
        }
        return Terms::tr("Every covering has its row already.");
    };
    return out;
}

TermsRows access_rows() {
    TermsRows out = rows_of<parts::Difficulty::Access>(
        [](auto& list) -> auto& { return list.difficulty.access; },
        [](const parts::Difficulty::Access& one, int column) {
            return column == 0 ? qs(one.text) : column == 1 ? qs(one.id) : digits(one.factor);
        },
        [](parts::Difficulty::Access& one, int column, const QString& entry) {
            if (column == 0) return take_words(entry, one.text);
            return column == 1 ? take_words(entry, one.id) : take_figure(entry, one.factor);
        });
    out.title = Terms::tr("How the plates are reached");
    out.none = Terms::tr("The way up stretches no hours.");
    out.columns = {{Terms::tr("By")},
                   {Terms::tr("Id"), false, Terms::tr("Under which jobs name it"), 180},
                   {Terms::tr("Hours times"), true, Terms::tr("From 0.1 to 10"), 120}};
    out.add = [](PriceList& list) {
        auto& access = list.difficulty.access;
        access.push_back({free_id(access, "access"), Terms::tr("new way").toStdString(), 1.0});
        return QString();
    };
    return out;
}

TermsRows discount_group_rows() {
    TermsRows out = rows_of<parts::DiscountGroup>(
        [](auto& list) -> auto& { return list.discount_groups; },
        [](const parts::DiscountGroup& one, int column) {
            return column == 0 ? qs(one.id) : column == 1 ? qs(one.text) : digits(one.percent);
        },
        [](parts::DiscountGroup& one, int column, const QString& entry) {
            if (column == 0) return take_words(entry, one.id);
            return column == 1 ? take_words(entry, one.text) : take_figure(entry, one.percent);
        });
    out.title = Terms::tr("Discount groups");
    out.none = Terms::tr("No supplier's price has a discount.");
    out.columns = {{Terms::tr("Group"), false, Terms::tr("As the items name it"), 140},
                   {Terms::tr("What is in it")},
                   {Terms::tr("Off the supplier's price, %"), true, {}, 200}};
    out.add = [](PriceList& list) {
        list.discount_groups.push_back({free_id(list.discount_groups, "group"), {}, 0.0});
        return QString();
    };
    return out;
}

TermsRows tax_rate_rows() {
    TermsRows out = rows_of<parts::DatedTaxRate>(
        [](auto& list) -> auto& { return list.tax_rates; },
        [](const parts::DatedTaxRate& one, int column) {
            switch (column) {
                case 0: return qs(one.tax_class);
                case 1: return qs(one.label);
                case 2: return std::isnan(one.rate) ? QString() : digits(parts::percent_of_share(one.rate));
                default: return qs(one.valid_from);
            }
        },
        [](parts::DatedTaxRate& one, int column, const QString& entry) {
            switch (column) {
                case 0: return take_words(entry, one.tax_class);
                case 1: return take_words(entry, one.label);
                case 2: return take_share(entry, one.rate);
                default: return take_words(entry, one.valid_from);
            }
        });
    out.title = Terms::tr("Tax rates from a day on");
    out.none = Terms::tr("Quotes are taxed as the rule set has it. A rate here stands in its place from its day on.");
    out.columns = {{Terms::tr("Tax class"), false, {}, 160},
                   {Terms::tr("On paper")},
                   {Terms::tr("Rate, %"), true, {}, 100},
                   {Terms::tr("From (year-month-day)"), false, {}, 180}};
    out.add = [](PriceList& list) {
        parts::DatedTaxRate rate;
        rate.tax_class = list.labour_tax_class;
        rate.label = Terms::tr("Tax").toStdString();
        // No rate that nobody typed: 0 would be one, too.
        rate.rate = std::nan("");
        // From the list's first day on, or from the day after the newest of its class, and named as that one.
        std::string newest;
        for (const parts::DatedTaxRate& one : list.tax_rates) {
            if (one.tax_class != rate.tax_class) continue;
            if (one.valid_from < newest) continue;
            newest = one.valid_from;
            rate.label = one.label;
        }
        rate.valid_from = list.valid_from;
        if (newest >= list.valid_from)
            rate.valid_from = QDate::fromString(qs(newest), Qt::ISODate).addDays(1).toString(Qt::ISODate).toStdString();
        list.tax_rates.push_back(std::move(rate));
        return QString();
    };
    out.lacks = [](const PriceList& list, int row) {
        return std::isnan(list.tax_rates[static_cast<std::size_t>(row)].rate)
                   ? Terms::tr(
                         "The new row needs a rate: 0 only for what is not taxed. Until then it is no part of "
                         "the list.")
                   : QString();
    };
    return out;
}

TermsRows tariff_rows() {
    using T = economy::Tariffs;
    struct Energy {
        const char* words;
        double T::*minor_kwh;
        double T::*kg_co2_kwh;
    };
    static const Energy energies[] = {
        {QT_TRANSLATE_NOOP("PriceTerms", "Electricity"), &T::electricity_minor_kwh, &T::electricity_kg_co2_kwh},
        {QT_TRANSLATE_NOOP("PriceTerms", "Gas"), &T::gas_minor_kwh, &T::gas_kg_co2_kwh},
        {QT_TRANSLATE_NOOP("PriceTerms", "Liquid gas"), &T::lpg_minor_kwh, &T::lpg_kg_co2_kwh},
        {QT_TRANSLATE_NOOP("PriceTerms", "Oil"), &T::oil_minor_kwh, &T::oil_kg_co2_kwh},
        {QT_TRANSLATE_NOOP("PriceTerms", "Wood"), &T::wood_minor_kwh, &T::wood_kg_co2_kwh}};
    TermsRows out;
    out.title = Terms::tr("Energy prices");
    out.columns = {{Terms::tr("Energy")},
                   {Terms::tr("A kWh in the list's currency, with tax"), true, {}, 270},
                   {Terms::tr("kg CO\u2082 a kWh"), true, {}, 140}};
    out.count = [](const PriceList&) { return static_cast<int>(std::size(energies)); };
    out.text = [](const PriceList& list, int row, int column) {
        const Energy& one = energies[row];
        if (column == 0) return Terms::tr(one.words);
        return column == 1 ? QString::number(list.tariffs.*one.minor_kwh / 100.0, 'g', 8)
                           : digits(list.tariffs.*one.kg_co2_kwh);
    };
    out.put = [](PriceList& list, int row, int column, const QString& entry) {
        const Energy& one = energies[row];
        if (column == 0) return Terms::tr("The energies are fixed; their prices can be changed.");
        double value = 0.0;
        const QString wrong = take_figure(entry, value);
        if (!wrong.isEmpty()) return wrong;
        if (column == 1)
            list.tariffs.*one.minor_kwh = parts::minor_of_units(value);
        else
            list.tariffs.*one.kg_co2_kwh = value;
        return QString();
    };
    return out;
}

}  // namespace wg::ui

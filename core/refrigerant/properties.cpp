#include "core/refrigerant/properties.h"

#include <cassert>
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/quantity/constants.h"
#include "core/refrigerant/tables.h"

namespace wg::refrigerant {

namespace {

enum Curve : std::size_t { pressure, liquid_density, vapour_density, liquid_enthalpy, vapour_enthalpy, curve_count };

constexpr double rounding_slack_k = 1e-9;  // sums such as -40 + 120 * 1.0 must not fall outside by a last digit

}  // namespace

struct Properties::Tables {
    std::string name, source, safety_class;
    double gwp100 = 0.0, lower_flammability = 0.0;
    double critical_c = 0.0, critical_pa = 0.0;
    double first_c = 0.0, last_c = 0.0, vapour_last_c = 0.0;
    CurveTable<curve_count> saturation;
    double rows_per_k = 0.0;
    double last_column = 0.0;
    SurfaceTable pressure_over_density, enthalpy, entropy;

    [[nodiscard]] double row(double saturation_c) const noexcept { return (saturation_c - first_c) * rows_per_k; }
    /// Columns are spaced by the square of their number, so that they crowd near the saturation line.
    [[nodiscard]] double column(double saturation_c, double superheat_k) const noexcept {
        return last_column * std::sqrt(std::max(0.0, superheat_k) / (vapour_last_c - saturation_c));
    }
    [[nodiscard]] double superheat(double saturation_c, double at_column) const noexcept {
        const double share = at_column / last_column;
        return (vapour_last_c - saturation_c) * share * share;
    }
    /// Outlet on the isobar of `condensing_c` past the hottest column: along a straight line at the end's heat
    /// capacity.
    [[nodiscard]] double end_heat_capacity(double condensing_c) const noexcept {
        const double reach = vapour_last_c - condensing_c;
        const double near_c = column(condensing_c, reach - 2.0);
        return (enthalpy.value(row(condensing_c), last_column) - enthalpy.value(row(condensing_c), near_c)) / 2.0;
    }
};

namespace {

using nlohmann::json;

/// Collects what is wrong with a file instead of stopping at the first fault.
class Reader {
   public:
    Reader(const json& root, std::string file) : root_(root), file_(std::move(file)) {}

    void wrong(const std::string& path, const std::string& what) {
        problems_.push_back(
            {file_ + ": " + path, what, "Make the file again with tests/reference/make_refrigerants.py"});
    }
    double number(const std::string& path, double low, double high) {
        const json* j = find(path);
        if (j == nullptr || !j->is_number()) {
            wrong(path, "a number is missing");
            return low;
        }
        const double value = j->get<double>();
        if (!(value >= low && value <= high)) {
            wrong(path,
                  "the value " + j->dump() + " lies outside " + std::to_string(low) + " to " + std::to_string(high));
            return low;
        }
        return value;
    }
    std::string text(const std::string& path) {
        const json* j = find(path);
        if (j == nullptr || !j->is_string() || j->get<std::string>().empty()) {
            wrong(path, "a text is missing");
            return {};
        }
        return j->get<std::string>();
    }
    std::vector<double> numbers(const std::string& path, std::size_t count) {
        const json* j = find(path);
        std::vector<double> out;
        if (j != nullptr) append(*j, out);
        if (bad_entry_ || out.size() != count) {
            wrong(path, "expected " + std::to_string(count) + " numbers, found " + std::to_string(out.size()) +
                            (bad_entry_ ? " and something that is no number" : ""));
            out.assign(count, 0.0);
            bad_entry_ = false;
        }
        return out;
    }
    std::vector<Problem> take() { return std::move(problems_); }
    [[nodiscard]] bool clean() const noexcept { return problems_.empty(); }

   private:
    [[nodiscard]] const json* find(const std::string& path) const {
        const json::json_pointer pointer("/" + path);
        return root_.contains(pointer) ? &root_.at(pointer) : nullptr;
    }
    /// Flat or one level of nesting (rows).
    void append(const json& j, std::vector<double>& out) {
        if (!j.is_array()) {
            bad_entry_ = true;
            return;
        }
        for (const json& entry : j) {
            if (entry.is_array())
                for (const json& inner : entry)
                    append_number(inner, out);
            else
                append_number(entry, out);
        }
    }
    void append_number(const json& j, std::vector<double>& out) {
        if (j.is_number() && std::isfinite(j.get<double>()))
            out.push_back(j.get<double>());
        else
            bad_entry_ = true;
    }
    const json& root_;
    std::string file_;
    std::vector<Problem> problems_;
    bool bad_entry_ = false;
};

bool rises(const std::vector<double>& values) {
    for (std::size_t i = 1; i < values.size(); ++i)
        if (!(values[i] > values[i - 1])) return false;
    return true;
}

bool positive(const std::vector<double>& values) {
    for (const double v : values)
        if (!(v > 0.0)) return false;
    return true;
}

bool rows_rise(const std::vector<double>& values, std::size_t columns) {
    for (std::size_t i = 0; i < values.size(); ++i)
        if (i % columns != 0 && !(values[i] > values[i - 1])) return false;
    return true;
}

/// Line and column of a byte offset, for messages.
std::string place_in(std::string_view text, std::size_t byte) {
    std::size_t line = 1;
    std::size_t column = 1;
    for (std::size_t i = 0; i + 1 < byte && i < text.size(); ++i) {
        ++column;
        if (text[i] == '\n') {
            ++line;
            column = 1;
        }
    }
    return "line " + std::to_string(line) + ", column " + std::to_string(column);
}

}  // namespace

Result<std::shared_ptr<const Properties>> Properties::from_json(std::string_view text, const std::string& file_name) {
    json root;
    try {
        root = json::parse(text);
    } catch (const json::parse_error& error) {
        return Problem{file_name + ", " + place_in(text, error.byte), "this is not valid JSON",
                       "Make the file again with tests/reference/make_refrigerants.py"};
    }
    Reader reader(root, file_name);
    auto tables = std::make_unique<Tables>();
    reader.number("schema", 1.0, 1.0);
    tables->name = reader.text("name");
    tables->source = reader.text("source");
    tables->safety_class = reader.text("safety_class");
    tables->gwp100 = reader.number("gwp100", 0.0, 1e5);
    tables->lower_flammability = reader.number("lower_flammability_kg_m3", 0.0, 10.0);
    tables->critical_c = reader.number("critical_c", 0.0, 400.0);
    tables->critical_pa = reader.number("critical_pressure_pa", 1e5, 1e8);
    tables->first_c = reader.number("saturation/first_c", -100.0, 50.0);
    const double step_k = reader.number("saturation/step_k", 0.1, 10.0);
    const double vapour_step_k = reader.number("vapour/step_k", 0.1, 10.0);
    tables->vapour_last_c = reader.number("vapour/last_temperature_c", 50.0, 250.0);
    const double columns_read = reader.number("vapour/columns", 5.0, 200.0);
    if (!reader.clean()) return reader.take();
    if (std::abs(reader.number("vapour/first_c", -100.0, 50.0) - tables->first_c) > rounding_slack_k)
        reader.wrong("vapour/first_c", "differs from saturation/first_c");

    const auto columns = static_cast<std::size_t>(columns_read);
    const json& pressures = root["saturation"]["pressure_pa"];
    const std::size_t count = pressures.is_array() ? pressures.size() : 0;
    if (count < 6 || count > 5000) {
        reader.wrong("saturation/pressure_pa", "expected 6 to 5000 numbers, found " + std::to_string(count));
        return reader.take();
    }
    const std::array<std::vector<double>, curve_count> curves{reader.numbers("saturation/pressure_pa", count),
                                                              reader.numbers("saturation/liquid_density_kg_m3", count),
                                                              reader.numbers("saturation/vapour_density_kg_m3", count),
                                                              reader.numbers("saturation/liquid_enthalpy_j_kg", count),
                                                              reader.numbers("saturation/vapour_enthalpy_j_kg", count)};
    tables->last_c = tables->first_c + step_k * static_cast<double>(count - 1);
    const double rows_exact = (tables->last_c - tables->first_c) / vapour_step_k + 1.0;
    const auto rows = static_cast<std::size_t>(std::lround(rows_exact));
    if (std::abs(rows_exact - static_cast<double>(rows)) > 1e-6 || rows < 5)
        reader.wrong("vapour/step_k", "does not divide the saturation range into at least four parts");
    if (tables->last_c >= tables->critical_c || tables->last_c >= tables->vapour_last_c)
        reader.wrong("saturation", "reaches past the critical point or the hottest vapour");
    if (!reader.clean()) return reader.take();
    const auto pv = reader.numbers("vapour/pressure_over_density_j_kg", rows * columns);
    const auto enthalpy = reader.numbers("vapour/enthalpy_j_kg", rows * columns);
    const auto entropy = reader.numbers("vapour/entropy_j_kgk", rows * columns);
    if (!reader.clean()) return reader.take();
    if (!rises(curves[pressure]) || !rises(curves[vapour_density]) || !rises(curves[liquid_enthalpy]) ||
        !positive(curves[pressure]) || !positive(curves[vapour_density]) || !positive(curves[liquid_density]))
        reader.wrong("saturation",
                     "pressure, vapour density and liquid enthalpy must be positive and rise with temperature");
    if (!positive(pv) || !rows_rise(pv, columns) || !rows_rise(enthalpy, columns) || !rows_rise(entropy, columns))
        reader.wrong("vapour", "every row must rise with superheat");
    if (!reader.clean()) return reader.take();

    tables->saturation.build(tables->first_c, step_k, curves);
    tables->rows_per_k = 1.0 / vapour_step_k;
    tables->last_column = static_cast<double>(columns - 1);
    tables->pressure_over_density.build(rows, columns, pv);
    tables->enthalpy.build(rows, columns, enthalpy);
    tables->entropy.build(rows, columns, entropy);
    return std::shared_ptr<const Properties>(new Properties(std::move(tables)));
}

Properties::Properties(std::unique_ptr<const Tables> tables) : tables_(std::move(tables)) {}
Properties::~Properties() = default;

const std::string& Properties::name() const noexcept {
    return tables_->name;
}
const std::string& Properties::source() const noexcept {
    return tables_->source;
}
double Properties::min_c() const noexcept {
    return tables_->first_c;
}
double Properties::max_c() const noexcept {
    return tables_->last_c;
}
double Properties::critical_c() const noexcept {
    return tables_->critical_c;
}
double Properties::critical_pressure_pa() const noexcept {
    return tables_->critical_pa;
}
double Properties::vapour_max_c() const noexcept {
    return tables_->vapour_last_c;
}
double Properties::gwp100() const noexcept {
    return tables_->gwp100;
}
const std::string& Properties::safety_class() const noexcept {
    return tables_->safety_class;
}
double Properties::lower_flammability_kg_m3() const noexcept {
    return tables_->lower_flammability;
}

bool Properties::in_saturation_range(double temperature_c) const noexcept {
    return temperature_c >= tables_->first_c - rounding_slack_k && temperature_c <= tables_->last_c + rounding_slack_k;
}

Saturation Properties::saturation(double temperature_c) const noexcept {
    assert(in_saturation_range(temperature_c));
    const auto v = tables_->saturation.values(temperature_c);
    return {v[pressure], v[liquid_density], v[vapour_density], v[liquid_enthalpy], v[vapour_enthalpy]};
}

double Properties::saturation_pressure_pa(double temperature_c) const noexcept {
    assert(in_saturation_range(temperature_c));
    return tables_->saturation.value(pressure, temperature_c);
}

double Properties::pressure_up_to_critical_pa(double temperature_c) const noexcept {
    const Tables& t = *tables_;
    if (temperature_c <= t.last_c) return saturation_pressure_pa(temperature_c);
    if (temperature_c >= t.critical_c) return t.critical_pa;
    const double end_pa = saturation_pressure_pa(t.last_c);
    const double x = 1.0 / kelvin(temperature_c);
    const double x_end = 1.0 / kelvin(t.last_c);
    const double x_critical = 1.0 / kelvin(t.critical_c);
    return end_pa * std::exp(std::log(t.critical_pa / end_pa) * (x - x_end) / (x_critical - x_end));
}

double Properties::liquid_enthalpy_j_kg(double temperature_c) const noexcept {
    assert(in_saturation_range(temperature_c));
    return tables_->saturation.value(liquid_enthalpy, temperature_c);
}

bool Properties::in_vapour_range(double saturation_c, double superheat_k) const noexcept {
    return in_saturation_range(saturation_c) && superheat_k >= 0.0 &&
           saturation_c + superheat_k <= tables_->vapour_last_c + rounding_slack_k;
}

Vapour Properties::vapour(double saturation_c, double superheat_k) const noexcept {
    assert(in_vapour_range(saturation_c, superheat_k));
    const Tables& t = *tables_;
    const auto spot = t.enthalpy.spot(t.row(saturation_c), t.column(saturation_c, superheat_k));
    return {saturation_pressure_pa(saturation_c) / t.pressure_over_density.value(spot), t.enthalpy.value(spot),
            t.entropy.value(spot)};
}

Properties::Outlet Properties::isentropic_outlet(double entropy_j_kgk, double condensing_c) const noexcept {
    assert(in_saturation_range(condensing_c));
    const Tables& t = *tables_;
    const double row = t.row(condensing_c);
    const double saturated = t.entropy.value(row, 0.0);
    if (entropy_j_kgk <= saturated) {
        // At constant pressure in the two-phase region dh = T ds.
        const double enthalpy = t.enthalpy.value(row, 0.0) + kelvin(condensing_c) * (entropy_j_kgk - saturated);
        return {enthalpy >= liquid_enthalpy_j_kg(condensing_c), enthalpy, condensing_c};
    }
    const auto found = t.entropy.find(row, entropy_j_kgk);
    if (found.inside)
        return {true, t.enthalpy.value(row, found.column), condensing_c + t.superheat(condensing_c, found.column)};
    const double excess = entropy_j_kgk - t.entropy.value(row, t.last_column);
    const double rise_j_kg = kelvin(t.vapour_last_c) * excess;
    return {false, t.enthalpy.value(row, t.last_column) + rise_j_kg,
            t.vapour_last_c + rise_j_kg / t.end_heat_capacity(condensing_c)};
}

Properties::Outlet Properties::vapour_at_enthalpy(double enthalpy_j_kg, double condensing_c) const noexcept {
    assert(in_saturation_range(condensing_c));
    const Tables& t = *tables_;
    const double row = t.row(condensing_c);
    if (enthalpy_j_kg <= t.enthalpy.value(row, 0.0))
        return {enthalpy_j_kg >= liquid_enthalpy_j_kg(condensing_c), enthalpy_j_kg, condensing_c};
    const auto found = t.enthalpy.find(row, enthalpy_j_kg);
    if (found.inside) return {true, enthalpy_j_kg, condensing_c + t.superheat(condensing_c, found.column)};
    const double excess = enthalpy_j_kg - t.enthalpy.value(row, t.last_column);
    return {false, enthalpy_j_kg, t.vapour_last_c + excess / t.end_heat_capacity(condensing_c)};
}

}  // namespace wg::refrigerant

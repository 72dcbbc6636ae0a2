#include "core/rating/fit.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/quantity/text.h"
#include "core/rating/bounds.h"
#include "core/rating/course.h"
#include "core/rating/least_squares.h"

namespace wg::rating {

namespace {

constexpr double pull = 1e-3;
constexpr double not_completed = 20.0;  // tolerances away: such a set is worse than any that finishes
constexpr double at_bound_share = 0.01;

bool is_steady(Quantity q) noexcept {
    return q == Quantity::heat_w || q == Quantity::steady_cop;
}

/// The tests that the declared values need, each once.
class Sheet {
   public:
    Sheet(const std::vector<Declared>& declared, const FitOptions& options) : declared_(declared), options_(options) {
        for (const Declared& d : declared)
            if (d.quantity == Quantity::cop_dhw && find(d.air, &d.cycle) == runs_.size())
                runs_.push_back({d.air, d.cycle, false});
        for (const Declared& d : declared)
            if (!is_steady(d.quantity) && d.quantity != Quantity::cop_dhw) {
                const std::size_t run = find(d.air, nullptr);
                const bool short_run = d.quantity == Quantity::heat_up_h;
                if (run == runs_.size())
                    runs_.push_back({d.air, d.cycle, short_run});
                else if (!short_run)
                    runs_[run].heat_up_only = false;
            }
    }

    /// Computed values in the order of the declared ones; NaN where the set could not finish the test.
    std::vector<double> values(const Item& item) const {
        std::vector<double> out(declared_.size(), std::nan(""));
        const auto made = heatpump::HeatPump::make(item.block, *item.refrigerant);
        if (!made) return out;
        const auto& pump = made.value();
        std::vector<Rating> ratings;
        for (const Run& run : runs_) {
            Test test;
            test.cycle = run.cycle;
            test.heat_up_only = run.heat_up_only;
            test.step_s = options_.step_s;
            ratings.push_back(rate_with(pump, item, chamber(run.air), test));
        }
        for (std::size_t i = 0; i < declared_.size(); ++i) {
            const Declared& d = declared_[i];
            if (is_steady(d.quantity)) {
                const auto point = steady_with(pump, item, chamber(d.air), d.water_c);
                if (point.running) out[i] = d.quantity == Quantity::heat_w ? point.heat_w : point.cop;
                continue;
            }
            const auto& rating = ratings[find(d.air, d.quantity == Quantity::cop_dhw ? &d.cycle : nullptr)];
            if (rating.completed) out[i] = of(rating, d.quantity);
        }
        return out;
    }

   private:
    struct Run {
        Air air;
        TappingCycle cycle;
        bool heat_up_only;
    };

    std::size_t find(const Air& air, const TappingCycle* cycle) const {
        std::size_t i = 0;
        while (i < runs_.size() && !(runs_[i].air == air && (cycle == nullptr || runs_[i].cycle == *cycle)))
            ++i;
        return i;
    }
    Chamber chamber(const Air& air) const {
        Chamber out = options_.chamber;
        out.air = air;
        return out;
    }
    static double of(const Rating& rating, Quantity q) {
        switch (q) {
            case Quantity::cop_dhw: return rating.cop_dhw;
            case Quantity::heat_up_h: return rating.heat_up_h;
            case Quantity::standby_w: return rating.standby_w;
            case Quantity::v40_l: return rating.v40_l;
            case Quantity::heat_w:
            case Quantity::steady_cop: break;
        }
        return std::nan("");
    }

    const std::vector<Declared>& declared_;
    const FitOptions& options_;
    std::vector<Run> runs_;
};

double to_cube(double value, const Range& range) {
    return std::clamp(std::log(value / range.low) / std::log(range.high / range.low), 0.0, 1.0);
}
double from_cube(double x, const Range& range) {
    return std::clamp(range.low * std::pow(range.high / range.low, x), range.low, range.high);
}

Item item_at(const Item& item, const std::vector<Parameter>& parameters, const std::vector<double>& x) {
    Item out = item;
    for (std::size_t i = 0; i < parameters.size(); ++i)
        set_value(out, parameters[i], from_cube(x[i], range_of(parameters[i])));
    return out;
}

std::vector<Problem> problems_of(const Item& item, const std::vector<Declared>& declared, const FitOptions& options) {
    auto problems = problems_of(item, options.chamber, Test{});
    if (declared.empty())
        problems.push_back({"declared values", "there are none", "Enter at least one value of the data sheet"});
    for (const Declared& d : declared) {
        const auto check = [&](const char* what, double value, double low, double high) {
            if (value >= low && value <= high) return;
            problems.push_back(
                {name_of(d),
                 std::string(what) + " " + fixed(value, 3) + " lies outside " + fixed(low, 3) + " to " + fixed(high, 3),
                 "Correct the declared value"});
        };
        check("the value", d.value, 1e-3, 1e6);
        check("the tolerance", d.tolerance, 0.001, 0.5);
        check("dry bulb", d.air.dry_c, -20.0, 45.0);
        check("wet bulb", d.air.wet_c, d.air.dry_c - 15.0, d.air.dry_c);
        if (is_steady(d.quantity)) check("the water temperature", d.water_c, 5.0, 70.0);
    }
    for (const Parameter p : options.parameters)
        if (item.block.compressor && (p == Parameter::overall_peak || p == Parameter::volumetric_at_unity))
            problems.push_back({std::string("fit.parameters: ") + name_of(p),
                                "the block states its compressor by the maker's ten coefficients",
                                "Calibrate plate, condenser or standing loss, or give displacement and efficiencies"});
    if (options.most_evaluations < 20 || options.most_evaluations > 5000)
        problems.push_back({"fit.most_evaluations", "lies outside 20 to 5000", "Choose 500"});
    const double parts = 3600.0 / options.step_s;
    if (!(options.step_s >= 60.0 && options.step_s <= 900.0) || std::abs(parts - std::round(parts)) > 1e-9)
        problems.push_back({"fit.step_s", "does not divide the hour or lies outside 60 to 900", "Choose 300"});
    return problems;
}

bool all_met(const std::vector<double>& values, const std::vector<Declared>& declared) {
    for (std::size_t i = 0; i < declared.size(); ++i)
        if (!(std::abs(values[i] / declared[i].value - 1.0) <= declared[i].tolerance)) return false;
    return true;
}

void warn(Fit& fit) {
    for (const Residual& r : fit.residuals) {
        if (r.met) continue;
        if (!std::isfinite(r.after)) {
            fit.warnings.push_back(r.name + ": the set cannot finish this test, so the value was not compared.");
            continue;
        }
        const int decimals = r.declared.value < 20.0 ? 2 : 0;
        fit.warnings.push_back(r.name + ": declared " + fixed(r.declared.value, decimals) +
                               ", the best compromise gives " + fixed(r.after, decimals) + ", " +
                               fixed(100.0 * std::abs(r.share), 1) + (r.share < 0.0 ? " % less." : " % more."));
    }
    for (const Calibrated& c : fit.parameters)
        if (c.at_bound)
            fit.warnings.push_back("The " + c.name + " stands at " + fixed(c.after, 2) + unit_of(c.parameter) +
                                   ", the edge of what is believed (" + fixed(c.range.low, 2) + " to " +
                                   fixed(c.range.high, 2) + "): the declared values pull it further than that.");
        else if (c.before < c.range.low || c.before > c.range.high)
            fit.warnings.push_back("The " + c.name + " of the item, " + fixed(c.before, 2) + unit_of(c.parameter) +
                                   ", lies outside what is believed (" + fixed(c.range.low, 2) + " to " +
                                   fixed(c.range.high, 2) + "); the calibration started at the edge.");
}

}  // namespace

Result<Fit> fit(const Item& item, const std::vector<Declared>& declared, const FitOptions& options,
                const WatchFit& watch) {
    if (auto problems = problems_of(item, declared, options); !problems.empty()) return problems;
    const std::vector<Parameter> parameters =
        options.parameters.empty() ? open_parameters(declared, item.block.compressor.has_value()) : options.parameters;
    const Sheet sheet(declared, options);
    std::vector<double> start;
    start.reserve(parameters.size());
    for (const Parameter p : parameters)
        start.push_back(to_cube(value_of(item, p), range_of(p)));

    const Residuals residuals = [&](const std::vector<double>& x) {
        const auto values = sheet.values(item_at(item, parameters, x));
        std::vector<double> out;
        out.reserve(declared.size() + x.size());
        for (std::size_t i = 0; i < declared.size(); ++i) {
            const double miss = (values[i] / declared[i].value - 1.0) / declared[i].tolerance;
            out.push_back(std::isfinite(miss) ? miss : not_completed);
        }
        for (std::size_t i = 0; i < x.size(); ++i)
            out.push_back(pull * (x[i] - start[i]));
        return out;
    };

    Fit out;
    const std::vector<double> before = sheet.values(item);
    out.item = item;
    out.evaluations = 1;
    if (!parameters.empty()) {
        double worst_of_first = HUGE_VAL;
        const GoOn go_on = [&](const Minimum& now) {
            double worst = 0.0;
            for (std::size_t i = 0; i < declared.size(); ++i)
                worst = std::max(worst, std::abs(now.residuals[i]));
            return !watch || watch({out.evaluations + now.evaluations, 2 * options.most_evaluations,
                                    std::min(worst, worst_of_first)});
        };
        Minimum best = least_squares(residuals, start, options.most_evaluations, go_on);
        out.evaluations += best.evaluations;
        out.stopped = best.stopped;
        if (!best.stopped && !all_met(sheet.values(item_at(item, parameters, best.x)), declared)) {
            worst_of_first = 0.0;
            for (std::size_t i = 0; i < declared.size(); ++i)
                worst_of_first = std::max(worst_of_first, std::abs(best.residuals[i]));
            Minimum other =
                least_squares(residuals, std::vector<double>(parameters.size(), 0.5), options.most_evaluations, go_on);
            out.evaluations += other.evaluations;
            out.stopped = other.stopped;
            if (other.cost < best.cost) best = std::move(other);
        }
        out.item = item_at(item, parameters, best.x);
        for (std::size_t i = 0; i < parameters.size(); ++i)
            out.parameters.push_back({parameters[i], name_of(parameters[i]), value_of(item, parameters[i]),
                                      value_of(out.item, parameters[i]), range_of(parameters[i]),
                                      best.x[i] < at_bound_share || best.x[i] > 1.0 - at_bound_share});
    }
    const std::vector<double> after = sheet.values(out.item);
    for (std::size_t i = 0; i < declared.size(); ++i) {
        const double share = after[i] / declared[i].value - 1.0;
        out.residuals.push_back(
            {declared[i], name_of(declared[i]), before[i], after[i], share, std::abs(share) <= declared[i].tolerance});
    }
    out.met = all_met(after, declared);
    const bool loss_is_open =
        std::find(parameters.begin(), parameters.end(), Parameter::standing_loss) != parameters.end();
    out.warnings = contradictions(item, options.chamber, declared, loss_is_open);
    warn(out);
    if (out.stopped) out.warnings.push_back("The fit was stopped before its end: these are the best figures so far.");
    return out;
}

}  // namespace wg::rating

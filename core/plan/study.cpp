#include "core/plan/study.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

#include "core/plan/in_parallel.h"
#include "core/plan/prepared_choice.h"
#include "core/plan/study_factors.h"
#include "core/plan/study_sample.h"
#include "core/plan/weather_ensemble.h"
#include "core/quantity/text.h"

namespace wg::plan {
namespace {

using detail::FactorRule;
using detail::Member;
using MeasureValues = std::array<double, measure_count>;  // payback 0: never

struct Run {
    MeasureValues figures{};
    std::vector<Problem> problems;
};

/// The choice as planned, and its year with every factor nominal.
struct Ground {
    detail::PreparedChoice choice;
    Member nominal;
    season::Options options;
};

std::vector<Problem> problems_of(const StudyOptions& options) {
    std::vector<Problem> problems;
    const auto range = [&](const char* what, int value, int low, int high) {
        if (value >= low && value <= high) return;
        problems.push_back({std::string("options.") + what, std::to_string(value) + " was asked for",
                            "Choose " + std::to_string(low) + " to " + std::to_string(high)});
    };
    range("members", options.members, 20, 5000);
    range("weather_years", options.weather_years, 2, weather::most_ensemble_years);
    range("threads", options.threads, 1, 16);
    return problems;
}

Result<Ground> ground_of(const Job& job, const Reference& reference, const StudyOptions& options) {
    Result<detail::PreparedChoice> choice = detail::prepared_choice(job, reference, options.choice_id);
    if (!choice) return choice.problems();
    Ground out;
    out.choice = std::move(choice).value();
    out.nominal = {out.choice.input, out.choice.with.prices->tariffs};
    out.options = steps::options_for_comparing();
    out.options.step_s = options.step_s;
    return out;
}

Run run_member(const Ground& ground, const Member& member) {
    Run out;
    const Result<season::Year> result = season::run(member.input, ground.options);
    if (!result) {
        out.problems = result.problems();
        return out;
    }
    const season::Year& year = result.value();
    economy::Input in;
    in.electricity_kwh = year.total.electricity_kwh();
    in.useful_heat_kwh = year.total.drawn_kwh;
    in.low_tariff_kwh = year.total.low_tariff_kwh;
    in.surplus_kwh = year.total.surplus_kwh;
    in.demand = member.input.demand;
    in.tariffs = member.tariffs;
    in.investment = ground.choice.plan.figures.price_gross;
    const economy::Outcome money = economy::evaluate(in);
    const auto put = [&](Measure m, double v) { out.figures[static_cast<std::size_t>(m)] = v; };
    put(Measure::heat_kwh, year.total.drawn_kwh);
    put(Measure::electricity_kwh, year.total.electricity_kwh());
    put(Measure::seasonal_factor, year.seasonal_factor);
    put(Measure::running_cost, static_cast<double>(money.running_cost.minor));
    put(Measure::saving, static_cast<double>(money.yearly_saving.minor));
    put(Measure::payback_y, ground.choice.plan.quote ? money.simple_payback_y : 0.0);
    put(Measure::shortfall_kwh, year.total.shortfall_kwh);
    return out;
}

/// The nominal set and household in each made year.
std::vector<season::Input> inputs_in(const Job& job, const Ground& ground, const WeatherYears& years, int threads,
                                     detail::Reporter& reporter) {
    std::vector<season::Input> inputs(years.size());
    // Made years stand for the middle of each hour, a file may not: then the shade of each hour is worked out again.
    std::vector<PlacementPlan> placements = ground.choice.plan.placements;
    const sky::PreparedYear& own = ground.choice.with.weather->sky;
    if (!years.empty() && (own.sun_up != years.front()->sky.sun_up || own.sun_east != years.front()->sky.sun_east)) {
        for (PlacementPlan& placed : placements)
            placed.shade = site::shade_of(job.site, placed.placed, placed.surface_id, years.front()->sky);
    }
    detail::each(years.size(), threads, reporter, [&](std::size_t i) {
        steps::Selection that_year = ground.choice.with;
        that_year.weather = years[i];
        std::vector<sky::PlaneYear> planes;
        planes.reserve(placements.size());
        for (const PlacementPlan& placed : placements)
            planes.push_back(sky::plane_year(years[i]->sky, steps::plane_of(job, placed), placed.shade.beam_share));
        inputs[i] = steps::season_input(job, that_year, planes, placements, ground.choice.plan.run);
    });
    return inputs;
}

std::vector<Problem> first_problems(const std::vector<Run>& runs) {
    for (const Run& run : runs)
        if (!run.problems.empty()) return run.problems;
    return {};
}

Factor weather_factor(std::size_t years) {
    Factor f;
    f.key = "weather";
    f.title = "weather of single years";
    f.unit = "";
    f.kind = FactorKind::weather;
    f.low = 0.1;
    f.nominal = 0.5;
    f.high = 0.9;
    f.distribution = std::to_string(years) + " made years of the climate, each as likely; ordered by the electricity " +
                     "that the year alone makes";
    f.ground = "months scatter as the climate's data say or as is assumed";
    return f;
}

/// The percentile of paybacks of which 0 means never: those lie above all others.
std::optional<double> payback_quantile(std::vector<double> values, double share) {
    const auto never = static_cast<std::size_t>(std::count(values.begin(), values.end(), 0.0));
    values.erase(std::remove(values.begin(), values.end(), 0.0), values.end());
    std::sort(values.begin(), values.end());
    const double at = share * static_cast<double>(values.size() + never - 1);
    const auto low = static_cast<std::size_t>(at);
    const double part = at - static_cast<double>(low);
    if (low >= values.size()) return std::nullopt;
    if (part == 0.0) return values[low];
    if (low + 1 >= values.size()) return std::nullopt;
    return values[low] + part * (values[low + 1] - values[low]);
}

class Worker {
   public:
    Worker(const Job& job, const Ground& ground, const StudyOptions& options, const Progress& progress,
           WeatherYears years)
        : job_(job),
          ground_(ground),
          options_(options),
          years_(std::move(years)),
          rules_(detail::factor_rules(ground.nominal, ground.choice.with.weather->sky.sky_temperature_measured)),
          members_(static_cast<std::size_t>(options.members)),
          reporter_(progress, 2 * years_.size() + 1 + 2 * rules_.size() + members_) {}

    Result<Study> run() {
        inputs_ = inputs_in(job_, ground_, years_, options_.threads, reporter_);
        years_.clear();
        if (reporter_.stopped()) return cancelled();
        run_years();
        if (reporter_.stopped()) return cancelled();
        if (auto problems = first_problems(of_years_); !problems.empty()) return problems;
        draw();
        run_bars_and_members();
        if (!reporter_.report()) return cancelled();
        if (auto problems = first_problems(runs_); !problems.empty()) return problems;
        return gathered();
    }

   private:
    static Study cancelled() {
        Study out;
        out.cancelled = true;
        return out;
    }
    [[nodiscard]] bool has_years() const { return !inputs_.empty(); }

    void run_years() {
        of_years_.resize(inputs_.size());
        detail::each(inputs_.size(), options_.threads, reporter_, [&](std::size_t i) {
            of_years_[i] = run_member(ground_, {inputs_[i], ground_.nominal.tariffs});
        });
        order_.resize(inputs_.size());
        std::iota(order_.begin(), order_.end(), std::size_t{0});
        const auto e = static_cast<std::size_t>(Measure::electricity_kwh);
        std::stable_sort(order_.begin(), order_.end(), [&](std::size_t a, std::size_t b) {
            return of_years_[a].figures[e] < of_years_[b].figures[e];
        });
    }

    /// Probabilities of each factor for each member; the weather's last.
    void draw() {
        for (const FactorRule& rule : rules_)
            columns_.push_back(detail::latin_column(options_.seed, rule.factor.key, members_));
        if (has_years()) columns_.push_back(detail::latin_column(options_.seed, "weather", members_));
    }

    [[nodiscard]] std::size_t year_of(std::size_t member) const {
        const auto n = order_.size();
        return std::min(n - 1, static_cast<std::size_t>(columns_.back()[member] * static_cast<double>(n)));
    }

    /// Run 0 is nominal, then low and high of each factor, then the members.
    void run_bars_and_members() {
        const std::size_t first = 1 + 2 * rules_.size();
        runs_.resize(first + members_);
        detail::each(runs_.size(), options_.threads, reporter_, [&](std::size_t i) {
            Member member = ground_.nominal;
            if (i >= first) {
                const std::size_t m = i - first;
                if (has_years()) member.input = inputs_[order_[year_of(m)]];
                for (std::size_t f = 0; f < rules_.size(); ++f)
                    rules_[f].apply(member, rules_[f].value(columns_[f][m]));
            } else if (i > 0) {
                const FactorRule& rule = rules_[(i - 1) / 2];
                rule.apply(member, i % 2 == 1 ? rule.factor.low : rule.factor.high);
            }
            runs_[i] = run_member(ground_, member);
        });
    }

    [[nodiscard]] std::vector<double> of_members(std::size_t measure) const {
        std::vector<double> out;
        for (std::size_t i = runs_.size() - members_; i < runs_.size(); ++i)
            out.push_back(runs_[i].figures[measure]);
        return out;
    }

    [[nodiscard]] Bar bar_of(std::size_t factor, std::size_t measure, const std::vector<double>& ranks) const {
        Bar bar;
        bar.factor = factor;
        if (factor < rules_.size()) {
            bar.at_low = runs_[1 + 2 * factor].figures[measure];
            bar.at_high = runs_[2 + 2 * factor].figures[measure];
        } else {
            std::vector<double> values;
            for (const Run& run : of_years_)
                values.push_back(run.figures[measure]);
            const Result<weather::Quantiles> q = weather::quantiles(std::move(values));
            if (q) {
                bar.at_low = q.value().p10;
                bar.at_high = q.value().p90;
            }
        }
        std::vector<double> drawn = columns_[factor];
        if (factor == rules_.size()) {
            for (std::size_t m = 0; m < members_; ++m)
                drawn[m] = static_cast<double>(year_of(m));
        }
        bar.rank_correlation = detail::rank_correlation(detail::ranks(drawn), ranks);
        bar.share = bar.rank_correlation * bar.rank_correlation;
        bar.share_error = detail::squared_correlation_error(bar.rank_correlation, members_);
        return bar;
    }

    [[nodiscard]] Spread spread_of(std::size_t measure) const {
        Spread out;
        out.nominal = runs_[0].figures[measure];
        std::vector<double> values = of_members(measure);
        if (measure == static_cast<std::size_t>(Measure::payback_y)) {
            out.never_share =
                static_cast<double>(std::count(values.begin(), values.end(), 0.0)) / static_cast<double>(values.size());
            out.p10 = payback_quantile(values, 0.1);
            out.p50 = payback_quantile(values, 0.5);
            out.p90 = payback_quantile(values, 0.9);
            return out;
        }
        const std::vector<double> ranks = detail::ranks(values);
        for (std::size_t f = 0; f < columns_.size(); ++f)
            out.bars.push_back(bar_of(f, measure, ranks));
        std::stable_sort(out.bars.begin(), out.bars.end(),
                         [](const Bar& a, const Bar& b) { return a.span() > b.span(); });
        const Result<weather::Quantiles> q = weather::quantiles(std::move(values));
        if (q) {
            out.p10 = q.value().p10;
            out.p50 = q.value().p50;
            out.p90 = q.value().p90;
        }
        return out;
    }

    void remark_limits(Study& study) const {
        for (std::size_t f = 0; f < rules_.size(); ++f) {
            const auto limited =
                std::count_if(columns_[f].begin(), columns_[f].end(), [&](double p) { return rules_[f].limited(p); });
            if (limited == 0) continue;
            study.remarks.push_back(
                rules_[f].factor.title + ": " + std::to_string(limited) + " of " + std::to_string(members_) +
                " drawn values lay outside what a year of operation takes (" + fixed(rules_[f].least, 2) + " to " +
                fixed(rules_[f].most, 2) + ") and were kept at its edge");
        }
    }

    [[nodiscard]] Study gathered() const {
        Study study;
        study.members = options_.members;
        study.weather_years = static_cast<int>(inputs_.size());
        study.seed = options_.seed;
        study.choice_id = ground_.choice.with.choice->id;
        study.choice_label = ground_.choice.with.choice->label;
        study.currency = ground_.choice.with.prices->currency;
        study.has_price = ground_.choice.plan.quote.has_value();
        for (const FactorRule& rule : rules_)
            study.factors.push_back(rule.factor);
        if (has_years()) study.factors.push_back(weather_factor(inputs_.size()));
        for (std::size_t m = 0; m < measure_count; ++m)
            study.spreads[m] = spread_of(m);
        remark_limits(study);
        study.method = std::to_string(options_.members) + " years of operation at steps of " +
                       fixed(options_.step_s / 60.0, 0) +
                       " minutes, inputs drawn together by a Latin hypercube (seed " + std::to_string(options_.seed) +
                       "); weather " + ground_.choice.with.weather->year.source;
        return study;
    }

    const Job& job_;
    const Ground& ground_;
    StudyOptions options_;
    WeatherYears years_;
    std::vector<FactorRule> rules_;
    std::size_t members_;
    detail::Reporter reporter_;
    std::vector<season::Input> inputs_;  ///< in each made year
    std::vector<Run> of_years_;
    std::vector<std::size_t> order_;  ///< made years by their electricity
    std::vector<std::vector<double>> columns_;
    std::vector<Run> runs_;
};

}  // namespace

Result<Study> study(const Job& job, const Reference& reference, const StudyOptions& options, const Progress& progress) {
    if (auto problems = problems_of(options); !problems.empty()) return problems;
    Result<Ground> ground = ground_of(job, reference, options);
    if (!ground) return ground.problems();
    // Without made years the study goes on with the one year there is, and says so.
    WeatherYears years;
    std::string without;
    Reference with_weather = reference;
    with_weather.weather = ground.value().choice.with.weather;
    Result<WeatherYears> made = further_years_of(with_weather, job.weather, options.weather_years);
    if (made) {
        years = std::move(made).value();
    } else {
        without = "The weather is the same year in every member: " + text_of(made.problems());
    }
    Result<Study> out = Worker(job, ground.value(), options, progress, std::move(years)).run();
    if (out && !without.empty() && !out.value().cancelled) out.value().remarks.push_back(without);
    return out;
}

}  // namespace wg::plan

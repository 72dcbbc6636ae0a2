#include <gtest/gtest.h>

#include "tests/ui/documents/record_sample.h"
#include "ui/common/format.h"
#include "ui/documents/papers.h"
#include "ui/documents/service_texts.h"

namespace wg::ui {
namespace aftercare_papers_test {

std::vector<paper::Page> laid_out(Paper kind, const PaperInput& input) {
    return paper::lay_out(kind, std::make_shared<const PaperInput>(input));
}

QString words_of(Paper kind, const PaperInput& input) {
    QString text;
    for (const paper::Page& page : laid_out(kind, input))
        text += page.text.join(QLatin1Char('\n')) + QLatin1Char('\n');
    return text;
}

QString steps_of(const PaperInput& input) {
    QString text;
    for (const paper::Step& step : paper::service_steps(input.job, input.plan))
        text += step.text + QLatin1Char('\n') + step.why + QLatin1Char('\n');
    return text;
}

TEST(ServiceSheet, steps_run_without_gaps_and_leave_no_brace_open) {
    for (const Refrigerant refrigerant : {Refrigerant::r134a, Refrigerant::r290, Refrigerant::r1234yf}) {
        for (const SurfaceKind kind : {SurfaceKind::roof, SurfaceKind::wall, SurfaceKind::ground}) {
            PaperInput input = sample::input();
            input.plan.block.refrigerant = refrigerant;
            input.job.site.surfaces.front().kind = kind;
            input.plan.duty.leak_check_months = 12;
            int expected = 0;
            for (const paper::Step& step : paper::service_steps(input.job, input.plan))
                if (step.kind == paper::Step::Kind::work) {
                    EXPECT_EQ(step.number, ++expected);
                }
            EXPECT_GT(expected, 20);
            EXPECT_FALSE(words_of(Paper::service_sheet, input).contains(QLatin1Char('{')));
        }
    }
}

TEST(ServiceSheet, the_steps_follow_what_is_fitted) {
    PaperInput input = sample::input();
    const auto has = [&](const char* words) { return steps_of(input).contains(QString::fromUtf8(words)); };
    EXPECT_TRUE(has("Draw the anode (magnesium)"));
    EXPECT_FALSE(has("powered anode"));
    EXPECT_TRUE(has("No regular leak check"));
    EXPECT_FALSE(has("warning label readable"));
    EXPECT_TRUE(has("Turn the mixing valve"));
    EXPECT_FALSE(has("recirculation"));
    EXPECT_FALSE(has("hygiene runs"));
    EXPECT_FALSE(has("Count the ballast"));
    input.plan.cylinder.anode = "impressed current";
    input.plan.duty.leak_check_months = 12;
    input.plan.duty.t_co2e = 5.6;
    input.plan.duty.first_from = 5.0;
    input.plan.duty.source = "Rule of the test";
    input.plan.block.refrigerant = Refrigerant::r290;
    input.plan.services.water.mixing_valve = false;
    input.plan.services.water.reducing_valve = true;
    input.plan.fixing_method.kind = FixingKind::ballast;
    input.job.demand.hygiene.rule = HygieneRule::weekly;
    input.job.demand.recirculation.present = true;
    EXPECT_TRUE(has("powered anode (impressed current)"));
    EXPECT_FALSE(has("Draw the anode"));
    EXPECT_TRUE(has("at least every 12 months"));
    EXPECT_TRUE(has("Rule of the test"));
    EXPECT_TRUE(has("warning label readable"));
    EXPECT_FALSE(has("Turn the mixing valve"));
    EXPECT_TRUE(has("reducing valve"));
    EXPECT_TRUE(has("Count the ballast"));
    EXPECT_TRUE(has("hygiene runs reached"));
    EXPECT_TRUE(has("recirculation"));
    input.plan.cylinder.anode.clear();
    EXPECT_FALSE(has("anode"));
}

TEST(ServiceSheet, what_is_due_stands_with_reason_source_and_the_day_it_was_last_noted) {
    const PaperInput input = sample::recorded_input();
    const QString text = words_of(Paper::service_sheet, input);
    for (const plan::ServiceDue& due : input.plan.service) {
        EXPECT_TRUE(text.contains(QString::fromStdString(due.text))) << due.id;
        EXPECT_TRUE(text.contains(QString::fromStdString(due.why))) << due.id;
        EXPECT_TRUE(text.contains(QString::fromStdString(due.source))) << due.id;
    }
    EXPECT_TRUE(text.contains(QStringLiteral("20 April 2028"))) << "noted at the service of the sample";
}

TEST(ServiceSheet, values_of_the_start_stand_beside_blanks_and_not_those_of_a_service) {
    const QString text = words_of(Paper::service_sheet, sample::recorded_input());
    EXPECT_TRUE(text.contains(temperature(4.2, 1))) << "suction at the start";
    EXPECT_FALSE(text.contains(temperature(5.0, 1))) << "suction at the service a year later";
    EXPECT_TRUE(text.contains(quantity(200.0, QStringLiteral("MΩ"), 2))) << "as corrected";
    EXPECT_FALSE(text.contains(quantity(0.2, QStringLiteral("MΩ"), 2)));
}

TEST(ServiceSheet, bands_are_those_of_the_month_it_is_printed_in) {
    PaperInput input = sample::recorded_input();
    EXPECT_TRUE(
        words_of(Paper::service_sheet, input).contains(QStringLiteral("No bands are worked out for this month")));
    for (int month = 1; month <= 12; ++month) {
        commissioning::MonthForecast one;
        one.month = month;
        one.bands = {{"suction temperature", "deg C", 1, month - 0.5, month * 1.0, month + 0.5, std::nullopt}};
        input.plan.forecasts.push_back(one);
    }
    const QString text = words_of(Paper::service_sheet, input);  // printed on 12 April
    EXPECT_TRUE(text.contains(QStringLiteral("should show in April")));
    EXPECT_TRUE(text.contains(QStringLiteral("3.5 to ") + temperature(4.5, 1)));
    EXPECT_FALSE(text.contains(temperature(5.5, 1)));
}

TEST(Booklet, is_short_and_large_and_without_the_words_of_the_trade) {
    const auto pages = laid_out(Paper::booklet, sample::recorded_input());
    EXPECT_GE(pages.size(), 4U);
    EXPECT_LE(pages.size(), 6U);
    double large = 0.0;
    double all = 0.0;
    QString text;
    for (const paper::Page& page : pages) {
        text += page.text.join(QLatin1Char('\n'));
        for (const paper::Lettering& piece : page.lettering) {
            all += static_cast<double>(piece.text.size());
            if (piece.style.size_pt >= 11.0) large += static_cast<double>(piece.text.size());
        }
    }
    EXPECT_GT(large, 0.7 * all) << "all but head, foot and the places to sign is in large letters";
    for (const char* jargon : {"evaporat", "condens", "refrigeran", "COP", "seasonal factor", "immersion", "set-point",
                               "Thermostat", "CO2e"})
        EXPECT_FALSE(text.contains(QString::fromUtf8(jargon), Qt::CaseSensitive)) << jargon;
}

TEST(Booklet, months_of_electricity_and_bills_add_up_to_the_year_that_is_promised_nowhere) {
    const PaperInput input = sample::recorded_input();
    QString text = words_of(Paper::booklet, input);
    text.remove(QChar(0x202F));
    for (const char* wanted :
         {"January", "December", "The year", "None of these figures is a promise", "about 556kWh (500 to 640)"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(wanted))) << wanted;
    bool drawn = false;
    for (const paper::Page& page : laid_out(Paper::booklet, input))
        for (const paper::Picture& picture : page.pictures)
            drawn = drawn || picture.name == QStringLiteral("electricity by month");
    EXPECT_TRUE(drawn);
    PaperInput unknown = input;
    unknown.plan.has_yield = false;
    EXPECT_TRUE(words_of(Paper::booklet, unknown).contains(QStringLiteral("not worked out yet")));
}

TEST(Booklet, follows_the_job_tariff_hygiene_terms_and_refrigerant) {
    PaperInput input = sample::recorded_input();
    const auto has = [&](const QString& words) { return words_of(Paper::booklet, input).contains(words); };
    EXPECT_FALSE(has(QStringLiteral("No flame and no spark")));
    EXPECT_FALSE(has(QStringLiteral("while electricity is cheap")));
    EXPECT_TRUE(has(QStringLiteral("as agreed in writing")));
    EXPECT_TRUE(has(QStringLiteral("At the tap it was %1").arg(temperature(46.5))));
    input.plan.block.refrigerant = Refrigerant::r290;
    input.job.demand.control.low_tariff_only = true;
    input.job.demand.tariff.low_windows = {{22.0, 6.0, true, true, ""}};
    input.job.demand.hygiene.rule = HygieneRule::weekly;
    input.job.aftercare.warranty_months = 60.0;
    input.job.aftercare.warranty_words = "On plate and cylinder, by the maker";
    input.job.aftercare.service_contract = true;
    input.job.aftercare.contract_words = "One visit a year";
    EXPECT_TRUE(has(QStringLiteral("No flame and no spark")));
    EXPECT_TRUE(has(QStringLiteral("22:00 to 6:00")));
    EXPECT_TRUE(has(QStringLiteral("Once a week the water is heated to %1").arg(temperature(60.0))));
    EXPECT_TRUE(has(quantity(60.0, QStringLiteral("months"))));
    EXPECT_TRUE(has(QStringLiteral("One visit a year")));
}

TEST(Booklet, tells_how_much_warm_water_a_cylinder_gives) {
    PaperInput input = sample::recorded_input();
    input.plan.cylinder.volume_l = 200.0;
    input.job.demand.set_point_c = 55.0;
    input.job.demand.wanted_c = 40.0;
    input.job.demand.cold_mean_c = 10.0;
    QString text = words_of(Paper::booklet, input);
    text.remove(QChar(0x202F));
    // 200 l x 0.85 x 45/30 = 255 l, to the nearest ten; 5 showers of 50 l.
    EXPECT_TRUE(text.contains(QStringLiteral("about 260litres"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("about 5 showers")));
}

}  // namespace aftercare_papers_test
}  // namespace wg::ui

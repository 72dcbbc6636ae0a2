// What the paper of an issued quote was made from comes back exactly, and nothing of the client's beyond the paper.

#include "core/plan/issued_paper.h"

#include <gtest/gtest.h>

#include <fstream>
#include <functional>
#include <iterator>
#include <nlohmann/json.hpp>
#include <random>

#include "tests/fuzz/fuzz_issued_paper.cpp"
#include "tests/tools/load_reference.h"

namespace wg::plan {
namespace issued_paper_test {
namespace {

using Json = nlohmann::ordered_json;

const std::string& snapshot() {
    static const std::string text = [] {
        const Reference reference = test::reference();
        Job job = test::demo_job();
        job.client.phone = "+00 777 777";
        job.client.email = "hidden@example.invalid";
        job.notes = "key under the stone";
        OfferLine subsidy;
        subsidy.id = "00000000-0000-4000-8000-0000000000e1";
        subsidy.kind = OfferLineKind::subsidy;
        subsidy.text = "Grant";
        subsidy.note = "for the firm alone";
        subsidy.unit_price_minor = 10'000;
        job.offer.lines = {subsidy};
        Options options;
        options.keep_hours = false;
        IssuedPaper paper;
        paper.plan = plan(job, reference, options).value();
        options.choice_id = job.choices.back().id;
        paper.beside = {plan(job, reference, options).value()};
        paper.job = job;
        paper.tariffs = economy::Tariffs{};
        paper.firm = {"Firm",
                      "Street",
                      "Town",
                      "1",
                      "a@b.invalid",
                      "Letter",
                      std::string("\x89PNG\0x", 6),
                      true,
                      "GB999999973",
                      "No. 7 of Harrowmere",
                      "Bank",
                      "GB29NWBK60161331926819",
                      "NWBKGB2L"};
        paper.look = "letter large-print de";
        paper.printed_on = "2027-04-12";
        paper.takes_place_of = "Q2027-0001";
        return snapshot_with_paper(plan_to_json(paper.plan), paper);
    }();
    return text;
}

std::string refused(const std::string& text) {
    const auto read = issued_paper(text, "quote Q1");
    return read.ok() ? std::string() : text_of(read.problems());
}

/// The snapshot with something in its paper changed.
std::string with(const std::function<void(Json& paper)>& change) {
    Json whole = Json::parse(snapshot());
    change(whole["paper"]);
    return refused(whole.dump());
}

TEST(IssuedPaper, comes_back_as_it_was_frozen) {
    const auto read = issued_paper(snapshot(), "quote Q1");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    ASSERT_TRUE(read.value().has_value());
    const IssuedPaper& paper = *read.value();
    EXPECT_EQ(snapshot_with_paper(snapshot(), paper), snapshot()) << "nothing is lost on the way";
    EXPECT_EQ(paper.firm.logo, std::string("\x89PNG\0x", 6));
    EXPECT_EQ(paper.beside.size(), 1U);
    ASSERT_TRUE(paper.plan.offered && paper.plan.quote);
    EXPECT_EQ(paper.plan.offered->to_bring, paper.plan.quote->gross - Money{10'000});
    // The figures of the whole plan, to the bit.
    Options options;
    options.keep_hours = false;
    const Plan planned = plan(test::demo_job(), test::reference(), options).value();
    EXPECT_EQ(paper.plan.figures.heat_kwh.mid, planned.figures.heat_kwh.mid);
    EXPECT_EQ(paper.plan.figures.running_cost_minor.low, planned.figures.running_cost_minor.low);
    EXPECT_EQ(paper.plan.run.length_m, planned.run.length_m);
    ASSERT_EQ(paper.plan.placements.size(), planned.placements.size());
    EXPECT_EQ(paper.plan.placements[0].placed.outline[2].x_m, planned.placements[0].placed.outline[2].x_m);
    EXPECT_EQ(paper.plan.collector.id, planned.collector.id);
    std::size_t told = 0;
    for (const Finding& finding : planned.findings)
        told += finding.severity != Severity::note || finding.code == "water.scald" ? 1U : 0U;
    EXPECT_EQ(paper.plan.findings.size(), told);
    for (const Finding& finding : paper.plan.findings)
        EXPECT_FALSE(finding.code.empty()) << "which of them a client reads goes by it";
    // The plan itself stays readable for those who know nothing of the paper.
    Json whole = Json::parse(snapshot());
    whole.erase("paper");
    EXPECT_EQ(whole["format"], "warmgable-plan");
    const auto older = issued_paper(whole.dump(), "quote Q1");
    ASSERT_TRUE(older.ok());
    EXPECT_FALSE(older.value().has_value()) << "an older program froze the plan alone";
}

TEST(IssuedPaper, what_was_frozen_before_bank_and_vat_number_reads_as_it_did) {
    Json whole = Json::parse(snapshot());
    Json& paper = whole["paper"];
    paper["schema"] = 1;
    for (const char* newer : {"vat_id", "register_entry", "bank", "iban", "bic"})
        paper["firm"].erase(newer);
    const auto read = issued_paper(whole.dump(), "quote Q1");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    IssuedFirm wanted = issued_paper(snapshot(), "quote Q1").value()->firm;
    EXPECT_EQ(wanted.iban, "GB29NWBK60161331926819");
    wanted.vat_id = wanted.register_entry = wanted.bank = wanted.iban = wanted.bic = "";
    EXPECT_EQ(read.value()->firm, wanted);
}

TEST(IssuedPaper, holds_no_more_of_the_client_than_the_paper_says) {
    for (const char* hidden : {"777 777", "hidden@", "under the stone", "for the firm alone"})
        EXPECT_EQ(snapshot().find(hidden), std::string::npos) << hidden;
    const Job kept = issued_paper(snapshot(), "quote Q1").value()->job;
    EXPECT_TRUE(kept.record.empty() && kept.photographs.empty() && kept.site.buildings.empty());
    EXPECT_EQ(kept.choices.size(), 2U) << "those on the paper";
    EXPECT_EQ(kept.client.name, test::demo_job().client.name);
}

TEST(IssuedPaper, what_is_not_what_it_should_be_is_refused_by_name) {
    EXPECT_EQ(with([](Json&) {}), "");
    EXPECT_NE(with([](Json& p) { p["schema"] = 3; }).find("newer program"), std::string::npos);
    EXPECT_NE(with([](Json& p) { p["firm"]["iban"] = "GB29NWBK60161331926818"; }).find("iban"), std::string::npos);
    EXPECT_NE(with([](Json& p) { p["firm"]["bic"] = "NWBK"; }).find("bic"), std::string::npos);
    EXPECT_NE(with([](Json& p) { p["firm"].erase("vat_id"); }).find("vat_id"), std::string::npos);
    EXPECT_NE(with([](Json& p) { p["schema"] = "1"; }).find("schema"), std::string::npos);
    EXPECT_NE(with([](Json& p) { p.erase("look"); }).find("look"), std::string::npos);
    EXPECT_NE(with([](Json& p) { p["printed_on"] = "2027-02-30"; }).find("printed_on"), std::string::npos);
    EXPECT_NE(with([](Json& p) { p["firm"]["logo"] = "no base64"; }).find("logo"), std::string::npos);
    EXPECT_NE(with([](Json& p) { p["firm"] = Json::array(); }).find("firm"), std::string::npos);
    EXPECT_NE(with([](Json& p) { p["tariffs"]["years"] = 100'000; }).find("years"), std::string::npos);
    EXPECT_NE(with([](Json& p) { p["tariffs"]["yearly_rise"] = 1e300; }).find("yearly_rise"), std::string::npos);
    EXPECT_NE(with([](Json& p) { p["plan"]["figures"]["heat_kwh"]["mid"] = nullptr; }).find("mid"), std::string::npos);
    EXPECT_NE(with([](Json& p) { p["plan"]["price"]["gross_minor"] = 18446744073709551615ULL; }).find("gross_minor"),
              std::string::npos);
    EXPECT_NE(with([](Json& p) { p["plan"]["price"]["valid_days"] = -1; }).find("valid_days"), std::string::npos);
    EXPECT_NE(with([](Json& p) { p["plan"]["placements"] = Json::array({7}); }).find("placements"), std::string::npos);
    EXPECT_NE(with([](Json& p) { p["plan"]["to_be_made"] = Json::array({7}); }).find("to_be_made"), std::string::npos);
    EXPECT_NE(with([](Json& p) {
                  p["plan"]["findings"] = Json::array({{{"severity", "worse"}}});
              }).find("severity"),
              std::string::npos);
    EXPECT_NE(with([](Json& p) { p["plan"]["job_id"] = "another"; }).find("two jobs"), std::string::npos);
    EXPECT_NE(with([](Json& p) { p["plan"]["choice_id"] = "another"; }).find("lacks the choice"), std::string::npos);
    EXPECT_NE(with([](Json& p) { p["beside"] = Json::array({7}); }).find("beside"), std::string::npos);
    EXPECT_NE(with([](Json& p) { p["plan"]["equipment"]["block"]["refrigerant"] = "R0"; }).find("refrigerant"),
              std::string::npos);
    EXPECT_NE(with([](Json& p) { p["plan"]["equipment"]["collector"].erase("length_m"); }).find("length_m"),
              std::string::npos);
    EXPECT_NE(with([](Json& p) { p["job"]["id"] = 7; }), "");
    EXPECT_NE(with([](Json& p) { p = 7; }), "");
    EXPECT_NE(refused("{}"), "");
    EXPECT_NE(refused(""), "");
    EXPECT_NE(refused("{\"format\": \"warmgable-plan\", \"paper\": 1, \"paper\": 2}"), "");
}

TEST(IssuedPaper, the_fuzzers_first_text_is_one) {
    std::ifstream file(WG_TESTS_DIR "/fuzz/corpus/issued_paper/demo", std::ios::binary);
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    const auto read = issued_paper(text, "demo");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_TRUE(read.value().has_value());
}

TEST(IssuedPaper, noise_never_breaks_the_reader) {
    // The paper alone: the plan before it is not looked at.
    Json small = Json::parse(snapshot());
    const Json paper = small["paper"];
    small = {{"format", "warmgable-plan"}, {"paper", paper}};
    const std::string whole = small.dump();
    std::mt19937 random(2027);
    for (int round = 0; round < 100; ++round) {
        std::string noisy = whole;
        const std::size_t changes = 1 + random() % 3;
        for (std::size_t k = 0; k < changes; ++k) {
            const std::size_t at = random() % noisy.size();
            switch (random() % 3) {
                case 0: noisy[at] = static_cast<char>('0' + random() % 10); break;
                case 1: noisy.erase(at, random() % 8); break;
                default: noisy.insert(at, std::string(random() % 4, static_cast<char>(random() % 128))); break;
            }
        }
        EXPECT_EQ(LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(noisy.data()), noisy.size()), 0);
    }
}

}  // namespace
}  // namespace issued_paper_test
}  // namespace wg::plan

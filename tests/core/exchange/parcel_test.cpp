// One job as one file: what goes in comes out, and what a stranger may have made of it is refused.
#include "core/exchange/parcel.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "core/exchange/contents.h"
#include "core/job/codec.h"
#include "core/quantity/sha256.h"
#include "tests/fuzz/fuzz_exchange.cpp"

namespace wg::exchange {
namespace parcel_test {

constexpr const char* seat = "00000000-0000-4000-8000-00000000005e";

Parcel sample() {
    Parcel out;
    out.made_at = "2027-06-21T12:00:00Z";
    out.made_by = "Warmgable 0.1";
    out.seat_id = seat;
    out.seat_name = "Tablet of the van";
    out.job.id = "00000000-0000-4000-8000-000000000001";
    out.job.title = "Hot water for the Lindholm house";
    out.job.site.location.latitude_deg = 56.25;
    const std::string picture = "\xFF\xD8\xFF invented picture " + std::string(5000, 'x') + '\0' + "end";
    Photograph photograph;
    photograph.id = "00000000-0000-4000-8000-000000000002";
    photograph.sha256 = sha256_hex(picture);
    photograph.file_name = "roof.jpg";
    out.job.photographs = {photograph};
    out.base = out.job;
    out.base->title = "Hot water";
    out.versions_json = R"({"seats":[]})";
    SentQuote quote;
    quote.id = "00000000-0000-4000-8000-000000000003";
    quote.job_revision = 7;
    quote.number = "2027-0001-1";
    quote.issued_at = "2027-06-20T08:00:00Z";
    quote.plan_json = "{\"heat\": 3403}";
    quote.plan_sha256 = sha256_hex(quote.plan_json);
    quote.gross_minor = 842'017;
    quote.currency = "EUR";
    quote.paper = "%PDF-1.7 invented";
    quote.answers = {{"00000000-0000-4000-8000-000000000004", "accepted", "2027-06-25", "M. Lindholm", "by telephone",
                      "Ada on desk-2", "2027-06-25T09:00:00Z"}};
    quote.orders = {{"00000000-0000-4000-8000-000000000005", "order", "O2027-0001", "2027-06-26T09:00:00Z", "Ada",
                     "%PDF-1.7 invented order"},
                    {"00000000-0000-4000-8000-000000000006",
                     "change-order",
                     "C2027-0001",
                     "2027-06-27T09:00:00Z",
                     "Ada",
                     "%PDF-1.7 invented change",
                     {"00000000-0000-4000-8000-000000000005"}}};
    out.quotes = {quote};
    out.pictures = {{photograph.sha256, picture}};
    out.firm_data = {{"price_list", "firm-2027", "2027-06-01T08:00:00Z", "{\"id\": \"firm-2027\"}"}};
    return out;
}

std::string packed(const Parcel& parcel) {
    const auto bytes = pack(parcel);
    EXPECT_TRUE(bytes.ok()) << (bytes ? "" : text_of(bytes.problems()));
    return bytes ? bytes.value() : std::string();
}

/// What unpacking says against the bytes; empty: nothing.
std::string against(const std::string& bytes) {
    const auto read = unpack(bytes, "sent.warmgable");
    return read ? std::string() : text_of(read.problems());
}

/// An archive with these entries and an honest list of contents.
std::string made_of(std::vector<Entry> entries, const Parcel& parcel = sample()) {
    Entry contents{contents_name, contents_json(parcel, entries)};
    entries.insert(entries.begin(), std::move(contents));
    return archive_of(entries).value();
}

Entry job_entry() {
    return {job_name, job_to_json(sample().job)};
}

TEST(Parcel, comes_out_as_it_went_in_and_twice_the_same) {
    const Parcel parcel = sample();
    const std::string bytes = packed(parcel);
    const auto read = unpack(bytes, "sent.warmgable");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_EQ(read.value(), parcel);
    EXPECT_EQ(packed(read.value()), bytes);
    Parcel bare = parcel;
    bare.base.reset();
    bare.versions_json.clear();
    bare.quotes.clear();
    bare.pictures.clear();
    EXPECT_EQ(unpack(packed(bare), "x").value(), bare);
}

TEST(Parcel, a_paper_that_no_quote_names_or_that_is_missing_is_refused) {
    const Parcel parcel = sample();
    const std::string pdf = "%PDF-1.7 another";
    EXPECT_NE(against(made_of({job_entry(), {paper_name(sha256_hex(pdf)), pdf}})).find("belongs to no quote"),
              std::string::npos);
    EXPECT_NE(against(made_of({job_entry(), {quote_name(parcel.quotes[0].id), quote_json(parcel.quotes[0])}}))
                  .find("names a paper that is not there"),
              std::string::npos);
    Parcel odd = parcel;
    odd.quotes[0].answers[0].answer = "perhaps";
    EXPECT_FALSE(pack(odd).ok());
    odd = parcel;
    odd.quotes[0].answers[0].on = "2027-02-30";
    EXPECT_FALSE(pack(odd).ok());
}

TEST(Parcel, opens_with_any_zip_program) {
    const std::string bytes = packed(sample());
    EXPECT_EQ(bytes.substr(0, 4), "PK\x03\x04");
    EXPECT_NE(bytes.find("job.json"), std::string::npos);
}

TEST(Parcel, what_is_not_to_be_sent_is_not_packed) {
    Parcel parcel = sample();
    parcel.job.site.location.latitude_deg = 123.0;
    EXPECT_FALSE(pack(parcel).ok());
    parcel = sample();
    parcel.pictures[0].bytes += "altered";
    EXPECT_FALSE(pack(parcel).ok());
    parcel = sample();
    parcel.pictures.push_back({sha256_hex("other"), "other"});
    EXPECT_FALSE(pack(parcel).ok()) << "named nowhere";
    parcel = sample();
    parcel.seat_id = "me";
    EXPECT_FALSE(pack(parcel).ok());
    parcel = sample();
    parcel.quotes[0].plan_sha256[0] ^= 1;
    EXPECT_FALSE(pack(parcel).ok());
}

// Every byte altered in turn: told, or nothing of the parcel is touched by it (times and other bytes of the archive's
// own that no reader looks at).
TEST(Parcel, no_altered_byte_gives_another_parcel) {
    Parcel parcel = sample();
    parcel.pictures[0].bytes.resize(60);
    parcel.job.photographs[0].sha256 = parcel.pictures[0].sha256 = sha256_hex(parcel.pictures[0].bytes);
    parcel.base.reset();
    const std::string whole = packed(parcel);
    int told = 0;
    for (std::size_t i = 0; i < whole.size(); ++i) {
        std::string altered = whole;
        altered[i] = static_cast<char>(altered[i] ^ (i % 2 == 0 ? 0x01 : 0x80));
        const auto read = unpack(altered, "sent.warmgable");
        if (read) {
            EXPECT_EQ(read.value(), parcel) << "byte " << i;
        } else {
            ++told;
            EXPECT_FALSE(read.problems()[0].what.empty());
        }
    }
    EXPECT_GT(told, static_cast<int>(whole.size() * 3 / 4));
}

TEST(Parcel, a_file_cut_short_anywhere_is_refused) {
    const std::string whole = packed(sample());
    for (std::size_t size = 0; size < whole.size(); size += 7)
        EXPECT_NE(against(whole.substr(0, size)), "") << size;
}

TEST(Parcel, names_that_lead_elsewhere_are_refused) {
    for (const char* name :
         {"../job.json", "/etc/passwd", "..\\job.json", "quotes/../job.json", "pictures/", "quotes/x.json", "C:\\x",
          "job.json/", "JOB.JSON", "pictures/../../x", "extra.txt", "quotes/"}) {
        std::vector<Entry> entries{job_entry()};
        entries.push_back({name, "{}"});
        const std::string said = against(made_of(entries));
        EXPECT_NE(said, "") << name;
    }
}

TEST(Parcel, entries_beside_the_list_or_missing_or_doubled_are_refused) {
    std::vector<Entry> entries{job_entry()};
    Entry contents{contents_name, contents_json(sample(), entries)};
    Entry base{base_name, job_to_json(sample().job)};
    EXPECT_NE(against(archive_of({contents, entries[0], base}).value()).find("does not name"), std::string::npos);
    const Entry both{contents_name, contents_json(sample(), {entries[0], base})};
    EXPECT_NE(against(archive_of({both, entries[0]}).value()).find("lacks the entry"), std::string::npos);
    EXPECT_NE(against(archive_of({contents}).value()), "");
    EXPECT_NE(against(archive_of({entries[0]}).value()), "");
    // The library adds no name twice; made by hand: "base.json" renamed to "job.json" in both headers.
    std::string doubled = made_of({entries[0], {"base.json", job_to_json(sample().job)}});
    for (std::size_t at = doubled.find("base.json"); at != std::string::npos; at = doubled.find("base.json", at + 1))
        doubled.replace(at, 9, "job.json/");
    EXPECT_NE(against(doubled), "");
}

TEST(Parcel, a_newer_version_is_told_as_such) {
    std::vector<Entry> entries{job_entry()};
    std::string contents = contents_json(sample(), entries);
    const std::size_t at = contents.find("\"schema\": 1");
    ASSERT_NE(at, std::string::npos);
    contents.replace(at, 11, "\"schema\": 2");
    EXPECT_NE(against(archive_of({{contents_name, contents}, entries[0]}).value()).find("newer program"),
              std::string::npos);
}

TEST(Parcel, bombs_are_refused_before_they_go_off) {
    // Deflate shrinks 65 MB of nothing to 64 kB; a thousand of those would fit a mail.
    const std::string nothing(max_json_bytes + 1, '\0');
    const std::string bomb = archive_of({{contents_name, "{}"}, {job_name, nothing}}).value();
    EXPECT_LT(bomb.size(), std::size_t{1} << 18U);
    EXPECT_NE(against(bomb).find("would unpack to more"), std::string::npos);
    std::string deep = "{\"a\":";
    deep.resize(std::size_t{8} << 20U, '[');
    EXPECT_NE(against(made_of({{job_name, deep}})), "");
}

TEST(Parcel, what_another_program_wrote_is_refused_with_what_to_do) {
    EXPECT_NE(against("").find("exported"), std::string::npos);
    EXPECT_NE(against("{\"format\": \"warmgable-job\"}").find("exported"), std::string::npos);
    EXPECT_NE(against(archive_of({{contents_name, "{\"format\": \"other\"}"}, job_entry()}).value()).find("exported"),
              std::string::npos);
    EXPECT_NE(against(archive_of({{contents_name, "[1,2]"}, job_entry()}).value()), "");
    EXPECT_NE(against(archive_of({{contents_name, "not json"}, job_entry()}).value()), "");
}

TEST(Parcel, data_of_the_firm_that_are_not_what_they_say_are_refused) {
    const SentFirmData good = sample().firm_data[0];
    const auto said = [](const SentFirmData& data) {
        const std::string text = firm_data_json(data);
        return against(made_of({job_entry(), {firm_data_name(sha256_hex(text)), text}}));
    };
    EXPECT_EQ(said(good), "");
    EXPECT_NE(said({"recipe", good.id, good.saved_at, good.content}), "");
    EXPECT_NE(said({good.kind, "", good.saved_at, good.content}), "");
    EXPECT_NE(said({good.kind, good.id, "yesterday", good.content}), "");
    const std::string text = firm_data_json(good);
    EXPECT_NE(against(made_of({job_entry(), {firm_data_name(sha256_hex(text + " ")), text}})), "") << "another hash";
    EXPECT_NE(against(made_of({job_entry(), {"firm/prices.json", text}})), "");
}

TEST(Parcel, a_quote_under_anothers_name_is_refused) {
    Parcel parcel = sample();
    std::vector<Entry> entries{job_entry(),
                               {quote_name("00000000-0000-4000-8000-000000000009"), quote_json(parcel.quotes[0])}};
    EXPECT_NE(against(made_of(entries)).find("another quote"), std::string::npos);
    SentQuote altered = parcel.quotes[0];
    altered.plan_json = "{}";
    entries = {job_entry(), {quote_name(altered.id), quote_json(altered)}};
    EXPECT_NE(against(made_of(entries)).find("altered"), std::string::npos);
}

TEST(Parcel, papers_of_orders_that_are_not_what_they_should_be_are_refused) {
    const auto said = [](const auto& alter) {
        Parcel parcel = sample();
        alter(parcel.quotes[0].orders[0]);
        const auto bytes = pack(parcel);
        return bytes ? std::string() : text_of(bytes.problems());
    };
    EXPECT_EQ(said([](SentOrder&) {}), "");
    EXPECT_NE(said([](SentOrder& one) { one.id = "../5"; }).find("is no id"), std::string::npos);
    EXPECT_NE(said([](SentOrder& one) { one.id = sample().quotes[0].orders[1].id; }).find("twice"), std::string::npos);
    EXPECT_NE(said([](SentOrder& one) { one.kind = "purchase"; }).find("none that"), std::string::npos);
    EXPECT_NE(said([](SentOrder& one) { one.number.clear(); }).find("is empty"), std::string::npos);
    EXPECT_NE(said([](SentOrder& one) { one.number.assign(5000, '1'); }).find("too long"), std::string::npos);
    EXPECT_NE(said([](SentOrder& one) { one.kept_at = "yesterday"; }).find("is no time"), std::string::npos);
    const std::string other = sample().quotes[0].orders[1].id;
    EXPECT_EQ(said([&](SentOrder& one) { one.takes_place_of = {other}; }), "");
    EXPECT_NE(said([&](SentOrder& one) {
                  one.takes_place_of = {other, "../5"};
              }).find("something else than ids"),
              std::string::npos);
    EXPECT_NE(said([&](SentOrder& one) { one.takes_place_of.assign(51, other); }).find("longer than 50"),
              std::string::npos);
    // The paper that an order names has to be there, and to be that one.
    const Parcel parcel = sample();
    const SentQuote& quote = parcel.quotes[0];
    const Entry named{quote_name(quote.id), quote_json(quote)};
    const auto paper = [](const std::string& pdf) { return Entry{paper_name(sha256_hex(pdf)), pdf}; };
    EXPECT_EQ(against(made_of({job_entry(), named, paper(quote.paper), paper(quote.orders[0].paper),
                               paper(quote.orders[1].paper)})),
              "");
    EXPECT_NE(against(made_of({job_entry(), named, paper(quote.paper), paper(quote.orders[0].paper)}))
                  .find("names a paper that is not there"),
              std::string::npos);
    const Entry wrong{paper_name(sha256_hex(quote.orders[1].paper)), "%PDF-1.7 another"};
    EXPECT_NE(against(made_of({job_entry(), named, paper(quote.paper), paper(quote.orders[0].paper), wrong}))
                  .find("has not the hash"),
              std::string::npos);
    // A file of a program that knew no orders reads as one without.
    SentQuote older = quote;
    older.orders.clear();
    EXPECT_EQ(quote_json(older).find("orders"), std::string::npos);
    EXPECT_EQ(against(made_of({job_entry(), {quote_name(older.id), quote_json(older)}, paper(older.paper)})), "");
}

// One entry of paper, given to each that names it, could become any number of bytes.
TEST(Parcel, a_paper_that_two_name_is_refused) {
    const auto said = [](const auto& alter) {
        Parcel parcel = sample();
        parcel.quotes.push_back(parcel.quotes[0]);
        SentQuote& other = parcel.quotes[1];
        other.id = "00000000-0000-4000-8000-000000000007";
        other.paper += " of the other";
        for (SentOrder& one : other.orders)
            one.paper += " of the other";
        alter(parcel);
        const auto bytes = pack(parcel);
        return bytes ? std::string() : text_of(bytes.problems());
    };
    const std::string twice = "was named before";
    EXPECT_EQ(said([](Parcel&) {}), "");
    EXPECT_NE(said([](Parcel& p) { p.quotes[1].paper = p.quotes[0].paper; }).find(twice), std::string::npos);
    EXPECT_NE(said([](Parcel& p) { p.quotes[0].orders[1].paper = p.quotes[0].orders[0].paper; }).find(twice),
              std::string::npos);
    EXPECT_NE(said([](Parcel& p) { p.quotes[1].orders[0].paper = p.quotes[0].orders[0].paper; }).find(twice),
              std::string::npos);
    EXPECT_NE(said([](Parcel& p) { p.quotes[1].orders[0].paper = p.quotes[1].paper; }).find(twice), std::string::npos);
    EXPECT_EQ(said([](Parcel& p) { p.quotes[0].paper.clear(), p.quotes[1].paper.clear(); }), "") << "none is no paper";
}

TEST(Parcel, more_papers_of_orders_than_a_job_comes_to_are_refused) {
    const auto said = [](std::size_t quotes, std::size_t orders) {
        Parcel parcel = sample();
        const SentQuote first = parcel.quotes[0];
        parcel.quotes.clear();
        unsigned id = 0x1000;
        const auto next_id = [&id] { return "00000000-0000-4000-8000-00000000" + std::to_string(++id); };
        for (std::size_t i = 0; i < quotes; ++i) {
            SentQuote quote = first;
            quote.id = next_id();
            quote.paper.append(quote.id);
            quote.orders.assign(orders, first.orders[1]);
            for (SentOrder& one : quote.orders) {
                one.id = next_id();
                one.paper.append(one.id);
            }
            parcel.quotes.push_back(std::move(quote));
        }
        const auto bytes = pack(parcel);
        return bytes ? std::string() : text_of(bytes.problems());
    };
    EXPECT_EQ(said(10, 50), "");
    EXPECT_NE(said(1, 51).find("more than 50"), std::string::npos);
    EXPECT_NE(said(11, 46).find("more than 500 papers of orders"), std::string::npos);
}

TEST(Parcel, noise_never_breaks_the_reader) {
    std::mt19937 random(77);
    const std::string whole = packed(sample());
    for (int round = 0; round < 300; ++round) {
        std::string noisy = whole;
        const std::size_t changes = 1 + random() % 20;
        for (std::size_t k = 0; k < changes; ++k) {
            const std::size_t at = random() % noisy.size();
            switch (random() % 3) {
                case 0: noisy[at] = static_cast<char>(random()); break;
                case 1: noisy.erase(at, random() % 40); break;
                default: noisy.insert(at, std::string(random() % 40, static_cast<char>(random()))); break;
            }
        }
        EXPECT_EQ(LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(noisy.data()), noisy.size()), 0);
    }
}

}  // namespace parcel_test
}  // namespace wg::exchange

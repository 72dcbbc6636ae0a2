#include "core/exchange/contents.h"

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>

#include "core/job/field_rules.h"
#include "core/job/json_text.h"
#include "core/quantity/base64.h"
#include "core/quantity/sha256.h"
#include "core/quantity/time.h"
#include "core/quantity/utf8.h"
#include "core/quantity/uuid.h"

namespace wg::exchange {
namespace {

using nlohmann::json;

constexpr const char* format_word = "warmgable-exchange";
constexpr std::string_view quotes_folder = "quotes/", papers_folder = "papers/", pictures_folder = "pictures/",
                           firm_folder = "firm/", json_ending = ".json", pdf_ending = ".pdf";
constexpr std::size_t most_answers = 1000;
constexpr std::size_t max_contents_bytes = std::size_t{4} << 20U;
constexpr std::size_t max_name_bytes = 200;

/// Reads members of one object and remembers which there were.
class Members {
   public:
    Members(const json& object, std::string where, std::vector<Problem>& problems)
        : object_(object), where_(std::move(where)), problems_(problems) {}

    std::string text(const char* key, std::size_t most = max_name_bytes) {
        ++taken_;
        const auto found = object_.find(key);
        if (found == object_.end() || !found->is_string()) return wrong(key, "is not there or no text"), std::string();
        auto value = found->get<std::string>();
        if (value.size() > most) return wrong(key, "is too long"), std::string();
        return value;
    }
    std::int64_t whole(const char* key, std::int64_t low, std::int64_t high) {
        ++taken_;
        const auto found = object_.find(key);
        if (found == object_.end() || !found->is_number_integer())
            return wrong(key, "is not there or no whole number"), low;
        const bool huge = found->is_number_unsigned() && found->get<std::uint64_t>() > (~std::uint64_t{0} >> 1U);
        const std::int64_t value = huge ? high : found->get<std::int64_t>();
        if (huge || value < low || value > high) return wrong(key, "is out of range"), low;
        return value;
    }
    void wrong(const char* key, const std::string& what) {
        problems_.push_back({where_ + ": " + key, what, "Ask for the file to be exported and sent again"});
    }
    void passed_over(std::size_t count) { taken_ += count; }
    void done() {
        if (object_.size() != taken_) wrong("members", "are more than this version has");
    }

   private:
    const json& object_;
    std::string where_;
    std::vector<Problem>& problems_;
    std::size_t taken_ = 0;
};

std::vector<Problem> damaged(const std::string& where, std::string what) {
    return {{where, std::move(what), "Ask for the file to be exported and sent again"}};
}

std::string at_entry(const std::string& file_name, const std::string& name) {
    std::string where = file_name;
    where.append(": ").append(name);
    return where;
}

/// Every entry listed once, with its size and hash, and none beside.
std::vector<Problem> hold_against(const json& list, const std::vector<Entry>& entries, const std::string& file_name) {
    std::map<std::string, const Entry*> there;
    for (const Entry& entry : entries)
        if (entry.name != contents_name) there[entry.name] = &entry;
    std::vector<Problem> problems;
    for (const json& item : list) {
        if (!item.is_object()) return damaged(file_name, "has a list of contents that cannot be read");
        Members members(item, file_name + ": " + contents_name, problems);
        const std::string name = members.text("name");
        const auto size =
            static_cast<std::uint64_t>(members.whole("size", 0, static_cast<std::int64_t>(max_unpacked_bytes)));
        const std::string sha256 = members.text("sha256");
        members.done();
        if (!problems.empty()) return problems;
        const auto found = there.find(name);
        if (found == there.end()) return damaged(file_name, "lacks the entry " + for_message(name));
        if (found->second->bytes.size() != size || sha256_hex(found->second->bytes) != sha256)
            return damaged(at_entry(file_name, name),
                           "is not what the list of contents says: it was damaged or altered");
        there.erase(found);
    }
    if (!there.empty())
        return damaged(file_name, "has an entry that its list of contents does not name: " + there.begin()->first);
    return {};
}

}  // namespace

EntryKind kind_of(const std::string& name) noexcept {
    if (name == contents_name) return EntryKind::contents;
    if (name == job_name) return EntryKind::job;
    if (name == base_name) return EntryKind::base;
    if (name == versions_name) return EntryKind::versions;
    if (name.compare(0, quotes_folder.size(), quotes_folder) == 0 &&
        name.size() > quotes_folder.size() + json_ending.size()) {
        const std::size_t end = name.size() - json_ending.size();
        if (name.compare(end, json_ending.size(), json_ending) == 0 &&
            is_uuid(name.substr(quotes_folder.size(), end - quotes_folder.size())))
            return EntryKind::quote;
    }
    if (name.compare(0, papers_folder.size(), papers_folder) == 0 &&
        name.size() > papers_folder.size() + pdf_ending.size()) {
        const std::size_t end = name.size() - pdf_ending.size();
        if (name.compare(end, pdf_ending.size(), pdf_ending) == 0 &&
            is_sha256_hex(name.substr(papers_folder.size(), end - papers_folder.size())))
            return EntryKind::paper;
    }
    if (name.compare(0, firm_folder.size(), firm_folder) == 0 &&
        name.size() > firm_folder.size() + json_ending.size()) {
        const std::size_t end = name.size() - json_ending.size();
        if (name.compare(end, json_ending.size(), json_ending) == 0 &&
            is_sha256_hex(name.substr(firm_folder.size(), end - firm_folder.size())))
            return EntryKind::firm_data;
    }
    if (name.compare(0, pictures_folder.size(), pictures_folder) == 0 &&
        is_sha256_hex(name.substr(pictures_folder.size())))
        return EntryKind::picture;
    return EntryKind::unknown;
}

std::size_t most_bytes(EntryKind kind) noexcept {
    if (kind == EntryKind::contents) return max_contents_bytes;
    return kind == EntryKind::picture || kind == EntryKind::paper ? max_picture_bytes : max_json_bytes;
}

std::string quote_name(const std::string& id) {
    return std::string(quotes_folder) + id + std::string(json_ending);
}

std::string paper_name(const std::string& sha256) {
    return std::string(papers_folder) + sha256 + std::string(pdf_ending);
}

std::string picture_name(const std::string& sha256) {
    return std::string(pictures_folder) + sha256;
}

std::string firm_data_name(const std::string& sha256) {
    return std::string(firm_folder) + sha256 + std::string(json_ending);
}

std::string contents_json(const Parcel& parcel, const std::vector<Entry>& entries) {
    json list = json::array();
    for (const Entry& entry : entries)
        list.push_back({{"name", entry.name}, {"size", entry.bytes.size()}, {"sha256", sha256_hex(entry.bytes)}});
    return json{{"format", format_word},     {"schema", file_schema},     {"made_at", parcel.made_at},
                {"made_by", parcel.made_by}, {"seat_id", parcel.seat_id}, {"seat_name", parcel.seat_name},
                {"entries", std::move(list)}}
               .dump(1) +
           '\n';
}

std::vector<Problem> check_contents(const std::string& text, const std::vector<Entry>& entries,
                                    const std::string& file_name, Parcel& into) {
    const std::string where = file_name + ": " + contents_name;
    const Result<json> read = parse_json(text, where, {max_contents_bytes, 8, 10 * max_entries});
    if (!read) return read.problems();
    const json& object = read.value();
    if (!object.is_object() || object.value("format", json()) != format_word)
        return {{file_name, "is no exchange file of this program", "Choose a file that was exported as a job"}};
    const json schema = object.value("schema", json());
    if (!schema.is_number_integer() || schema.get<double>() < 1.0) return damaged(where, "does not tell its version");
    if (schema.get<double>() > file_schema)
        return {{file_name, "was written by a newer program",
                 "Install the newer version of this program and open it again"}};
    std::vector<Problem> problems;
    Members members(object, where, problems);
    into.made_at = members.text("made_at");
    into.made_by = members.text("made_by");
    into.seat_id = members.text("seat_id");
    into.seat_name = members.text("seat_name");
    members.passed_over(3);  // format, schema, entries
    members.done();
    if (problems.empty() && !is_uuid(into.seat_id)) members.wrong("seat_id", "is no id");
    if (problems.empty() && !instant_from_iso8601(into.made_at)) members.wrong("made_at", "is no time");
    if (!problems.empty()) return problems;
    const json list = object.value("entries", json());
    if (!list.is_array() || list.size() > max_entries) return damaged(where, "has no list of entries");
    return hold_against(list, entries, file_name);
}

std::string quote_json(const SentQuote& quote) {
    json answers = json::array();
    for (const SentAnswer& one : quote.answers) {
        json answer = {{"id", one.id},
                       {"answer", one.answer},
                       {"on", one.on},
                       {"who", one.who},
                       {"note", one.note},
                       {"entered_by", one.entered_by},
                       {"entered_at", one.entered_at}};
        if (!one.signature.empty()) answer["signature"] = to_base64(one.signature);
        answers.push_back(std::move(answer));
    }
    json out = {{"answers", std::move(answers)},
                {"paper_sha256", quote.paper.empty() ? std::string() : sha256_hex(quote.paper)},
                {"id", quote.id},
                {"job_revision", quote.job_revision},
                {"number", quote.number},
                {"issued_at", quote.issued_at},
                {"plan", quote.plan_json},
                {"plan_sha256", quote.plan_sha256},
                {"gross_minor", quote.gross_minor},
                {"currency", quote.currency}};
    if (!quote.orders.empty()) {
        json orders = json::array();
        for (const SentOrder& one : quote.orders) {
            json order = {{"id", one.id},           {"kind", one.kind},       {"number", one.number},
                          {"kept_at", one.kept_at}, {"kept_by", one.kept_by}, {"paper_sha256", sha256_hex(one.paper)}};
            if (!one.takes_place_of.empty()) order["takes_place_of"] = one.takes_place_of;
            orders.push_back(std::move(order));
        }
        out["orders"] = std::move(orders);
    }
    return out.dump(1) + '\n';
}

namespace {

/// Begins as PNG or JPEG; what else is in it is for whoever draws it.
bool is_signature(const std::string& bytes) {
    return bytes.rfind("\x89PNG\r\n\x1A\n", 0) == 0 || bytes.rfind("\xFF\xD8\xFF", 0) == 0;
}

void read_answers(const json& object, Members& members, std::vector<Problem>& problems, const std::string& where,
                  SentQuote& into) {
    members.passed_over(1);
    const auto list = object.find("answers");
    if (list == object.end() || !list->is_array() || list->size() > most_answers)
        return members.wrong("answers", "are not there or no list");
    for (const json& item : *list) {
        if (!item.is_object()) return members.wrong("answers", "hold something else than answers");
        Members one(item, where + ": answers", problems);
        SentAnswer answer;
        answer.id = one.text("id");
        answer.answer = one.text("answer");
        answer.on = one.text("on");
        answer.who = one.text("who");
        answer.note = one.text("note", 2000);
        answer.entered_by = one.text("entered_by");
        answer.entered_at = one.text("entered_at");
        std::optional<std::string> signature = std::string();
        if (item.contains("signature"))
            signature = from_base64(one.text("signature", (max_signature_bytes + 2) / 3 * 4));
        one.done();
        if (problems.empty() && (!signature || (item.contains("signature") && !is_signature(*signature))))
            one.wrong("signature", "is no image of a signature");
        answer.signature = signature.value_or(std::string());
        const bool known = answer.answer == "accepted" || answer.answer == "declined" || answer.answer == "withdrawn";
        if (problems.empty() && !known) one.wrong("answer", "is no answer");
        if (problems.empty() && !is_uuid(answer.id)) one.wrong("id", "is no id");
        if (problems.empty() && !date_from_iso8601(answer.on)) one.wrong("on", "is no day");
        if (problems.empty() && !instant_from_iso8601(answer.entered_at)) one.wrong("entered_at", "is no time");
        if (!problems.empty()) return;
        into.answers.push_back(std::move(answer));
    }
}

/// Absent: it takes the place of none, or an older program wrote it.
void read_replaced(const json& item, Members& one, const std::vector<Problem>& problems, SentOrder& order) {
    const auto list = item.find("takes_place_of");
    if (list == item.end()) return;
    one.passed_over(1);
    if (!list->is_array() || list->size() > most_orders)
        return one.wrong("takes_place_of", "is no list, or longer than " + std::to_string(most_orders));
    for (const json& id : *list) {
        if (!id.is_string() || !is_uuid(id.get<std::string>()))
            return one.wrong("takes_place_of", "holds something else than ids");
        order.takes_place_of.push_back(id.get<std::string>());
    }
    if (problems.empty() && list->empty()) one.wrong("takes_place_of", "is empty");
}

void read_orders(const json& object, Members& members, std::vector<Problem>& problems, const std::string& where,
                 SentQuote& into, NamedPapers& named) {
    const auto list = object.find("orders");
    if (list == object.end()) return;  // none, or an older program
    members.passed_over(1);
    if (!list->is_array() || list->size() > most_orders)
        return members.wrong("orders", "are no list, or more than " + std::to_string(most_orders));
    for (const json& item : *list) {
        if (!item.is_object()) return members.wrong("orders", "hold something else than papers of orders");
        Members one(item, where + ": orders", problems);
        SentOrder order;
        order.id = one.text("id");
        order.kind = one.text("kind");
        order.number = one.text("number");
        order.kept_at = one.text("kept_at");
        order.kept_by = one.text("kept_by");
        std::string paper = one.text("paper_sha256");
        read_replaced(item, one, problems, order);
        one.done();
        if (problems.empty() && order.kind != "order" && order.kind != "change-order")
            one.wrong("kind", "is none that this version knows");
        if (problems.empty() && !is_uuid(order.id)) one.wrong("id", "is no id");
        if (problems.empty() && order.number.empty()) one.wrong("number", "is empty");
        if (problems.empty() && !instant_from_iso8601(order.kept_at)) one.wrong("kept_at", "is no time");
        if (problems.empty() && !is_sha256_hex(paper)) one.wrong("paper_sha256", "is no hash");
        const bool twice = std::any_of(into.orders.begin(), into.orders.end(),
                                       [&order](const SentOrder& other) { return other.id == order.id; });
        if (problems.empty() && twice) one.wrong("id", "stands twice");
        if (!problems.empty()) return;
        into.orders.push_back(std::move(order));
        named.orders.push_back(std::move(paper));
    }
}

}  // namespace

Result<SentQuote> quote_from_json(const std::string& text, const std::string& where, NamedPapers& named) {
    // Each paper of an order may take the place of all the others.
    const Result<json> read =
        parse_json(text, where, {max_json_bytes, 4, 20 + 11 * most_answers + (9 + most_orders) * most_orders});
    if (!read) return read.problems();
    if (!read.value().is_object()) return damaged(where, "is no quote");
    std::vector<Problem> problems;
    Members members(read.value(), where, problems);
    SentQuote quote;
    quote.id = members.text("id");
    quote.job_revision = members.whole("job_revision", 0, 1'000'000'000);
    quote.number = members.text("number");
    quote.issued_at = members.text("issued_at");
    quote.plan_json = members.text("plan", max_json_bytes);
    quote.plan_sha256 = members.text("plan_sha256");
    quote.gross_minor = members.whole("gross_minor", -1'000'000'000'000, 1'000'000'000'000);
    quote.currency = members.text("currency");
    named.quote = members.text("paper_sha256");
    read_answers(read.value(), members, problems, where, quote);
    read_orders(read.value(), members, problems, where, quote, named);
    members.done();
    if (problems.empty() && !named.quote.empty() && !is_sha256_hex(named.quote))
        members.wrong("paper_sha256", "is no hash");
    if (problems.empty() && !is_uuid(quote.id)) members.wrong("id", "is no id");
    if (problems.empty() && !instant_from_iso8601(quote.issued_at)) members.wrong("issued_at", "is no time");
    if (problems.empty() && sha256_hex(quote.plan_json) != quote.plan_sha256)
        members.wrong("plan", "is not what its hash says: it was altered");
    if (!problems.empty()) return problems;
    return quote;
}

std::string firm_data_json(const SentFirmData& data) {
    return json{{"kind", data.kind}, {"id", data.id}, {"saved_at", data.saved_at}, {"content", data.content}}.dump(1) +
           '\n';
}

Result<SentFirmData> firm_data_from_json(const std::string& text, const std::string& where) {
    const Result<json> read = parse_json(text, where, {max_json_bytes, 4, 20});
    if (!read) return read.problems();
    if (!read.value().is_object()) return damaged(where, "is nothing of a firm");
    std::vector<Problem> problems;
    Members members(read.value(), where, problems);
    SentFirmData data;
    data.kind = members.text("kind");
    data.id = members.text("id");
    data.saved_at = members.text("saved_at");
    data.content = members.text("content", max_json_bytes);
    members.done();
    if (problems.empty() && data.kind != "price_list" && data.kind != "equipment" && data.kind != "rule_set")
        members.wrong("kind", "is none that this version knows");
    if (problems.empty() && data.id.empty()) members.wrong("id", "is empty");
    if (problems.empty() && !instant_from_iso8601(data.saved_at)) members.wrong("saved_at", "is no time");
    if (!problems.empty()) return problems;
    return data;
}

std::vector<std::string> named_pictures(const Job& job) {
    std::vector<std::string> out;
    out.reserve(job.photographs.size());
    for (const Photograph& photograph : job.photographs)
        out.push_back(photograph.sha256);
    for (const Reading& reading : job.record)
        if (!reading.attachment_sha256.empty()) out.push_back(reading.attachment_sha256);
    std::sort(out.begin(), out.end());
    out.erase(std::unique(out.begin(), out.end()), out.end());
    return out;
}

}  // namespace wg::exchange

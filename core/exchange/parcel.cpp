#include "core/exchange/parcel.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/exchange/contents.h"
#include "core/job/codec.h"
#include "core/quantity/sha256.h"

namespace wg::exchange {
namespace {

std::vector<Problem> unnamed_pictures(const std::vector<SentPicture>& pictures, const Job& job,
                                      const std::string& where) {
    const std::vector<std::string> named = named_pictures(job);
    std::vector<Problem> problems;
    for (const SentPicture& picture : pictures) {
        if (!std::binary_search(named.begin(), named.end(), picture.sha256)) {
            problems.push_back({where + ": " + picture_name(picture.sha256), "is named nowhere in the job",
                                "Ask for the file to be exported and sent again"});
        } else if (sha256_hex(picture.bytes) != picture.sha256) {
            problems.push_back({where + ": " + picture_name(picture.sha256), "has not the hash that it is named by",
                                "Ask for the file to be exported and sent again"});
        }
    }
    return problems;
}

/// Each paper to the quote or order that names it; what is named and not there, or there and not named, is refused.
/// Named twice, too: each has its number on it, so no two are the same, and copies of one entry could fill the memory.
std::vector<Problem> give_papers(const std::vector<NamedPapers>& named, std::map<std::string, std::string> papers,
                                 const std::string& where, Parcel& out) {
    std::set<std::string> given;
    const auto give = [&](const std::string& sha256, std::string& to) -> const char* {
        const std::string name = paper_name(sha256);
        auto found = papers.extract(name);
        if (found.empty())
            return given.count(name) == 0 ? "names a paper that is not there as it was"
                                          : "names a paper that was named before";
        to = std::move(found.mapped());
        given.insert(name);
        return nullptr;
    };
    std::size_t orders = 0;
    for (std::size_t i = 0; i < named.size(); ++i) {
        SentQuote& quote = out.quotes[i];
        orders += quote.orders.size();
        if (orders > most_orders_of_file)
            return {{where, "has more than " + std::to_string(most_orders_of_file) + " papers of orders",
                     "Ask who sent the file what it holds"}};
        const char* wrong = named[i].quote.empty() ? nullptr : give(named[i].quote, quote.paper);
        for (std::size_t k = 0; k < quote.orders.size() && wrong == nullptr; ++k)
            wrong = give(named[i].orders[k], quote.orders[k].paper);
        if (wrong != nullptr)
            return {{where + ": " + quote_name(quote.id), wrong, "Ask for the file to be exported and sent again"}};
    }
    if (papers.empty()) return {};
    return {{where + ": " + papers.begin()->first, "belongs to no quote",
             "Ask for the file to be exported and sent again"}};
}

template <class List>
void append(std::vector<Problem>& to, const List& problems) {
    to.insert(to.end(), problems.begin(), problems.end());
}

}  // namespace

Result<std::string> pack(const Parcel& parcel) {
    std::vector<Problem> problems = validate(parcel.job);
    if (parcel.base) append(problems, validate(*parcel.base));
    append(problems, unnamed_pictures(parcel.pictures, parcel.job, "the exchange file"));
    if (!problems.empty()) return problems;

    std::vector<Entry> entries;
    entries.reserve(3 + 2 * parcel.quotes.size() + parcel.pictures.size() + parcel.firm_data.size());
    entries.push_back({job_name, job_to_json(parcel.job)});
    if (parcel.base) entries.push_back({base_name, job_to_json(*parcel.base)});
    if (!parcel.versions_json.empty()) entries.push_back({versions_name, parcel.versions_json});
    for (const SentQuote& quote : parcel.quotes) {
        entries.push_back({quote_name(quote.id), quote_json(quote)});
        const auto add = [&entries](const std::string& pdf) {
            Entry paper{paper_name(sha256_hex(pdf)), pdf};
            // Twice the same paper: told by reading it again, below.
            const bool there =
                std::any_of(entries.begin(), entries.end(), [&](const Entry& e) { return e.name == paper.name; });
            if (!there) entries.push_back(std::move(paper));
        };
        if (!quote.paper.empty()) add(quote.paper);
        for (const SentOrder& order : quote.orders)
            add(order.paper);
    }
    for (const SentPicture& picture : parcel.pictures)
        entries.push_back({picture_name(picture.sha256), picture.bytes});
    for (const SentFirmData& data : parcel.firm_data) {
        std::string text = firm_data_json(data);
        std::string name = firm_data_name(sha256_hex(text));
        entries.push_back({std::move(name), std::move(text)});
    }
    std::sort(entries.begin(), entries.end(), [](const Entry& a, const Entry& b) { return a.name < b.name; });
    Entry contents{contents_name, contents_json(parcel, entries)};
    entries.insert(entries.begin(), std::move(contents));
    Result<std::string> bytes = archive_of(entries);
    if (!bytes) return bytes;
    // What could not be read again is not sent: limits and names are judged in one place.
    if (const Result<Parcel> again = unpack(bytes.value(), "the exchange file"); !again) return again.problems();
    return bytes;
}

Result<Parcel> unpack(std::string_view bytes, const std::string& file_name) {
    Result<std::vector<Entry>> opened = entries_of(bytes, file_name);
    if (!opened) return opened.problems();
    std::vector<Entry>& entries = opened.value();
    const auto find = [&](const char* name) {
        return std::find_if(entries.begin(), entries.end(), [&](const Entry& e) { return e.name == name; });
    };
    const auto contents = find(contents_name), job = find(job_name);
    if (contents == entries.end() || job == entries.end())
        return {{{file_name, "is no exchange file of this program", "Choose a file that was exported as a job"}}};
    Parcel out;
    if (auto problems = check_contents(contents->bytes, entries, file_name, out); !problems.empty()) return problems;

    Result<Job> read = job_from_json(job->bytes, file_name + ": " + job_name);
    if (!read) return read.problems();
    out.job = std::move(read.value());
    std::vector<NamedPapers> papers_named;  // by the quotes, in their order
    std::map<std::string, std::string> papers;
    for (Entry& entry : entries) {
        const std::string where = file_name + ": " + entry.name;
        switch (kind_of(entry.name)) {
            case EntryKind::base: {
                Result<Job> base = job_from_json(entry.bytes, where);
                if (!base) return base.problems();
                out.base = std::move(base.value());
                break;
            }
            case EntryKind::versions: out.versions_json = std::move(entry.bytes); break;
            case EntryKind::quote: {
                NamedPapers paper;
                Result<SentQuote> quote = quote_from_json(entry.bytes, where, paper);
                if (!quote) return quote.problems();
                if (quote_name(quote.value().id) != entry.name)
                    return {{{where, "holds another quote than its name says", "Ask for the file to be sent again"}}};
                out.quotes.push_back(std::move(quote.value()));
                papers_named.push_back(std::move(paper));
                break;
            }
            case EntryKind::picture:
                out.pictures.push_back({sha256_hex(entry.bytes), std::move(entry.bytes)});
                if (picture_name(out.pictures.back().sha256) != entry.name)
                    return {{{where, "has not the hash that it is named by", "Ask for the file to be sent again"}}};
                break;
            case EntryKind::paper:
                if (paper_name(sha256_hex(entry.bytes)) != entry.name)
                    return {{{where, "has not the hash that it is named by", "Ask for the file to be sent again"}}};
                papers[entry.name] = std::move(entry.bytes);
                break;
            case EntryKind::firm_data: {
                if (firm_data_name(sha256_hex(entry.bytes)) != entry.name)
                    return {{{where, "has not the hash that it is named by", "Ask for the file to be sent again"}}};
                Result<SentFirmData> data = firm_data_from_json(entry.bytes, where);
                if (!data) return data.problems();
                out.firm_data.push_back(std::move(data.value()));
                break;
            }
            case EntryKind::contents:
            case EntryKind::job:
            case EntryKind::unknown: break;
        }
    }
    if (auto problems = give_papers(papers_named, std::move(papers), file_name, out); !problems.empty())
        return problems;
    if (out.base && out.base->id != out.job.id)
        return {{{file_name, "has a base of another job", "Ask for the file to be exported and sent again"}}};
    if (auto problems = unnamed_pictures(out.pictures, out.job, file_name); !problems.empty()) return problems;
    return out;
}

}  // namespace wg::exchange

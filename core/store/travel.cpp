#include "core/store/travel.h"

#include <QVariant>
#include <algorithm>

#include "core/job/codec.h"
#include "core/merge/same_house.h"
#include "core/merge/versions_codec.h"
#include "core/quantity/sha256.h"
#include "core/quantity/utf8.h"
#include "core/store/quote_book.h"
#include "core/store/sql_store.h"
#include "core/store/text.h"
#include "core/store/versions_kept.h"

namespace wg::store {
namespace {

const Problem no_versions{"store", "keeps no versions of jobs", "Open the firm's store"};

std::string job_words(const Job& job) {
    const std::string& name = job.number.empty() ? job.title : job.number;
    return name.empty() ? "the job" : "job " + for_message(name);
}

}  // namespace

Travel::Travel(Store& store) : store_(dynamic_cast<SqlStore*>(&store)) {}

Result<Outgoing> Travel::parcel_of(const std::string& job_id, const std::string& made_by, Instant now) {
    if (store_ == nullptr) return no_versions;
    Outgoing out;
    exchange::Parcel& parcel = out.parcel;
    {
        Transaction transaction(*store_->database_);
        if (auto problem = transaction.begin()) return *problem;
        const Result<Job> job = store_->load(job_id);
        if (!job) return job.problems();
        parcel.job = job.value();
        const Result<merge::Versions> versions = store_->versions_of_stored(job_id, parcel.job.revision);
        if (!versions) return versions.problems();
        parcel.versions_json = merge::versions_to_json(versions.value());
        const Result<merge::Seat> seat = seat_of(*store_->database_, store_->by_);
        if (!seat) return seat.problems();
        parcel.seat_id = seat.value().id;
        parcel.seat_name = seat.value().name;
        const Result<std::vector<IssuedQuote>> quotes = store_->quotes(job_id);
        if (!quotes) return quotes.problems();
        QuoteBook book(*store_);
        const auto answers = book.answers(job_id);
        if (!answers) return answers.problems();
        for (const IssuedQuote& quote : quotes.value()) {
            exchange::SentQuote sent{quote.id,
                                     quote.job_revision,
                                     quote.number,
                                     quote.issued_at,
                                     quote.plan_json,
                                     quote.sha256,
                                     quote.gross_minor,
                                     quote.currency,
                                     {},
                                     {}};
            if (const Result<bool> kept = book.has_paper(quote.id); kept && kept.value()) {
                const Result<std::string> paper = book.paper(quote.id);
                if (paper) {
                    sent.paper = paper.value();
                } else {
                    out.missing.push_back("paper of quote " + for_message(quote.number) + ": " +
                                          paper.problems().front().what);
                }
            }
            if (const auto of_it = answers.value().find(quote.id); of_it != answers.value().end()) {
                for (const QuoteAnswer& one : of_it->second) {
                    sent.answers.push_back({one.id, std::string(key_of(one.answer)), one.on, one.who, one.note,
                                            one.entered_by, one.entered_at});
                    if (one.signature_sha256.empty()) continue;
                    const Result<std::string> signature = book.signature(one.id);
                    if (signature) {
                        sent.answers.back().signature = signature.value();
                    } else {
                        out.missing.push_back("signature under quote " + for_message(quote.number) + ": " +
                                              signature.problems().front().what);
                    }
                }
            }
            parcel.quotes.push_back(std::move(sent));
        }
        if (auto problem = send_orders(out)) return *problem;
        if (auto problem = send_firm_data(out)) return *problem;
        if (auto problem = transaction.commit()) return *problem;
    }
    parcel.made_at = iso8601(now);
    parcel.made_by = made_by;
    for (const std::string& sha256 : exchange::named_pictures(parcel.job)) {
        const Result<std::string> bytes = store_->photograph(sha256);
        if (bytes) {
            parcel.pictures.push_back({sha256, bytes.value()});
        } else {
            out.missing.push_back("photograph " + sha256.substr(0, 12) + "...: " + bytes.problems().front().what);
        }
    }
    return out;
}

Result<merge::Versions> Travel::sent_versions(const exchange::Parcel& parcel) const {
    if (parcel.versions_json.empty()) return merge::begin(parcel.job);
    Result<merge::Versions> read = merge::versions_from_json(parcel.versions_json, "versions.json");
    if (!read) return read.problems();
    if (read.value().job_id != parcel.job.id)
        return Problem{"versions.json", "belongs to another job", "Ask for the file to be exported and sent again"};
    return read;
}

std::optional<Problem> Travel::refuse_erased(const Job& job) const {
    const Result<QVariant> erased =
        store_->database_->value("SELECT max(erased_at) FROM erasure WHERE job_id = ?", {to_qt(job.id)});
    if (!erased) return erased.problems().front();
    const std::string at = erased.value().toString().toStdString();
    if (at.empty()) return std::nullopt;
    return Problem{job_words(job), "was erased here at the client's request on " + at.substr(0, 10),
                   "Erase the copy that came, too"};
}

Result<bool> Travel::number_is_free(const Job& job) const {
    if (job.number.empty()) return true;
    const Result<QVariant> other = store_->database_->value(
        "SELECT 1 FROM job WHERE number = ? AND number <> '' AND id <> ?", {to_qt(job.number), to_qt(job.id)});
    if (!other) return other.problems();
    return !other.value().isValid();
}

std::optional<Problem> Travel::put_in(const exchange::Parcel& parcel, const merge::Versions& theirs, Instant now,
                                      Taken& out) {
    const auto found = store_->head(parcel.job.id);
    if (!found) return found.problems().front();
    const auto& stored = found.value();
    out.is_new = !stored;
    Job mine = parcel.job;
    merge::Versions my_versions = theirs;
    if (stored) {
        Result<Job> job = store_->load(parcel.job.id);
        if (!job) return job.problems().front();
        mine = std::move(job).value();
        Result<merge::Versions> versions = store_->versions_of_stored(mine.id, stored->revision);
        if (!versions) return versions.problems().front();
        my_versions = std::move(versions).value();
    }
    Result<merge::Merged> joined = merge::join(mine, my_versions, parcel.job, theirs);
    if (!joined) return joined.problems().front();
    merge::Merged& merged = joined.value();
    out.taken = std::move(merged.taken);
    out.open = std::move(merged.open);
    out.buildings_to_remake = std::move(merged.buildings_to_remake);
    if (stored && !stored->removed_at.empty()) {
        if (auto problem = store_->database_->run("UPDATE job SET removed_at = NULL WHERE id = ?", {to_qt(mine.id)}))
            return problem;
        out.brought_back = true;
    }
    if (stored && merged.versions == my_versions && !out.brought_back) {
        out.job = mine;
        return std::nullopt;
    }
    Job next = std::move(merged.job);
    next.revision = stored ? stored->revision + 1 : 1;
    next.changed_at = iso8601(now);
    if (next.created_at.empty()) next.created_at = next.changed_at;
    if (!stored) {
        next.base_sha256 = content_sha256(parcel.job);
        next.base_revision = parcel.job.revision;
    }
    merge::Versions versions = std::move(merged.versions);
    const Result<bool> free = number_is_free(next);
    if (!free) return free.problems().front();
    if (!free.value()) {
        // Two machines gave it while they could not see each other: both jobs stay, this one under another number.
        out.other_number = next.number;
        const Result<bool> mine_is_free = number_is_free(mine);
        if (!mine_is_free) return mine_is_free.problems().front();
        if (stored && mine_is_free.value()) {
            next.number = mine.number;
        } else {
            const Result<std::string> number = store_->next_job_number(civil_from_days(now.unix_s / (24 * 3600)).year);
            if (!number) return number.problems().front();
            next.number = number.value();
        }
        const Result<merge::Seat> seat = seat_of(*store_->database_, store_->by_);
        if (!seat) return seat.problems().front();
        Result<merge::Versions> renumbered = merge::edited(versions, next, seat.value(), now);
        if (!renumbered) return renumbered.problems().front();
        versions = std::move(renumbered).value();
    }
    if (auto problem = store_->put(next, stored, versions)) return problem;
    out.changed = true;
    out.job = std::move(next);
    return std::nullopt;
}

std::optional<Problem> Travel::add_pictures(const exchange::Parcel& parcel, Instant now, Taken& out) {
    for (const exchange::SentPicture& picture : parcel.pictures) {
        const Result<bool> known = store_->has_photograph(picture.sha256);
        if (!known) return known.problems().front();
        if (known.value()) continue;
        const Result<std::string> added = store_->insert_photograph(picture.bytes, now);
        if (!added) {
            out.left_out.push_back("photograph " + picture.sha256.substr(0, 12) +
                                   "...: " + added.problems().front().what);
            continue;
        }
        ++out.pictures;
    }
    return std::nullopt;
}

std::optional<Problem> Travel::add_quotes(const exchange::Parcel& parcel, Taken& out) {
    for (const exchange::SentQuote& sent : parcel.quotes) {
        Result<QSqlQuery> known =
            store_->database_->query("SELECT id, sha256, job_id FROM quote_issued WHERE id = ? OR number = ?",
                                     {to_qt(sent.id), to_qt(sent.number)});
        if (!known) return known.problems().front();
        bool here = false;
        while (known.value().next()) {
            here = true;
            const bool same_id = known.value().value(0).toString() == to_qt(sent.id);
            const bool same = same_id && known.value().value(1).toString() == to_qt(sent.plan_sha256) &&
                              known.value().value(2).toString() == to_qt(parcel.job.id);
            if (same_id && !same)
                return Problem{"quote " + for_message(sent.number),
                               "is here with another content, and a quote never changes",
                               "Ask who sent the file which of both the client has"};
            if (!same_id)
                out.left_out.push_back(
                    "quote " + for_message(sent.number) +
                    ": another quote was issued under this number here; give the seat that travels a suffix "
                    "of its own for its numbers");
        }
        if (here) {
            const bool other = std::any_of(out.left_out.begin(), out.left_out.end(), [&sent](const std::string& line) {
                return line.rfind("quote " + for_message(sent.number) + ":", 0) == 0;
            });
            if (other) continue;
            if (auto problem = add_what_became(sent, out)) return problem;
            continue;
        }
        // The revision that it was issued for has another number here, or none.
        const Result<QVariant> revision = store_->database_->value(
            "SELECT 1 FROM job_revision WHERE job_id = ? AND revision = ?",
            {to_qt(parcel.job.id), QVariant::fromValue(static_cast<qlonglong>(sent.job_revision))});
        if (!revision) return revision.problems().front();
        IssuedQuote quote{
            sent.id,          parcel.job.id,    revision.value().isValid() ? sent.job_revision : out.job.revision,
            sent.number,      sent.issued_at,   sent.plan_json,
            sent.plan_sha256, sent.gross_minor, sent.currency};
        const Result<IssuedQuote> issued = store_->insert_quote(quote);
        if (!issued) return issued.problems().front();
        ++out.quotes;
        if (auto problem = add_what_became(sent, out)) return problem;
    }
    return std::nullopt;
}

std::optional<Problem> Travel::add_what_became(const exchange::SentQuote& sent, Taken& out) {
    QuoteBook book(*store_);
    const Result<bool> kept = book.has_paper(sent.id);
    if (!kept) return kept.problems().front();
    if (!kept.value() && !sent.paper.empty()) {
        if (auto problem = book.put_paper(sent.id, sent.paper, sent.issued_at)) return problem;
    }
    for (const exchange::SentAnswer& one : sent.answers) {
        const Result<QVariant> known =
            store_->database_->value("SELECT 1 FROM quote_answer WHERE id = ?", {to_qt(one.id)});
        if (!known) return known.problems().front();
        if (known.value().isValid()) continue;
        const auto answer = answer_from_key(one.answer);
        if (!answer) continue;  // core/exchange has refused others
        // As it was entered there: what two machines entered both stand, in the order they came.
        if (auto problem =
                book.put_answer({one.id, sent.id, *answer, one.on, one.who, one.note, one.entered_by, one.entered_at}))
            return problem;
        if (!one.signature.empty()) {
            if (auto problem = book.put_signature(one.id, one.signature)) return problem;
        }
        ++out.answers;
    }
    return add_orders(sent, out);
}

std::optional<Problem> Travel::find_likely_same(Taken& out) {
    if (!out.is_new || out.job.client.name.empty()) return std::nullopt;
    const Result<std::vector<JobRow>> rows = store_->list(out.job.client.name, 50, 0);
    if (!rows) return std::nullopt;  // a name of a hundred words: no search, no hint
    for (const JobRow& row : rows.value()) {
        if (row.id == out.job.id) continue;
        const Result<Job> job = store_->load(row.id);
        if (job && merge::is_copy_by_hand(job.value(), out.job))
            out.likely_same.push_back(row.number.empty() ? row.title : row.number);
    }
    return std::nullopt;
}

Result<Taken> Travel::take(const exchange::Parcel& parcel, Instant now) {
    if (store_ == nullptr) return no_versions;
    if (std::vector<Problem> problems = validate(parcel.job); !problems.empty()) return problems;
    const Result<merge::Versions> theirs = sent_versions(parcel);
    if (!theirs) return theirs.problems();
    Taken out;
    Transaction transaction(*store_->database_);
    if (auto problem = transaction.begin()) return *problem;
    if (auto problem = refuse_erased(parcel.job)) return *problem;
    if (auto problem = add_pictures(parcel, now, out)) return *problem;
    if (auto problem = put_in(parcel, theirs.value(), now, out)) return *problem;
    if (auto problem = add_quotes(parcel, out)) return *problem;
    if (auto problem = add_firm_data(parcel, out)) return *problem;
    if (auto problem = find_likely_same(out)) return *problem;
    if (auto problem = transaction.commit()) return *problem;
    return out;
}

Result<std::vector<merge::Open>> Travel::open_fields(const std::string& job_id) {
    if (store_ == nullptr) return std::vector<merge::Open>();
    const Result<std::optional<KeptVersions>> kept = read_versions(*store_->database_, job_id);
    if (!kept) return kept.problems();
    if (!kept.value()) return std::vector<merge::Open>();
    return merge::open_fields(kept.value()->versions);
}

Result<Job> Travel::choose(const std::string& job_id, std::int64_t revision,
                           const std::vector<std::pair<std::string, std::size_t>>& sides, Instant now) {
    if (store_ == nullptr) return no_versions;
    Transaction transaction(*store_->database_);
    if (auto problem = transaction.begin()) return *problem;
    const auto stored = store_->head(job_id);
    if (!stored) return stored.problems();
    if (!stored.value()) return store_->unknown_job(job_id);
    const Result<Job> job = store_->load(job_id);
    if (!job) return job.problems();
    Job copy = job.value();
    copy.revision = revision;
    if (auto problem = store_->refuse_save(copy, stored.value())) return *problem;
    Result<merge::Versions> versions = store_->versions_of_stored(job_id, revision);
    if (!versions) return versions.problems();
    const Result<merge::Seat> seat = seat_of(*store_->database_, store_->by_);
    if (!seat) return seat.problems();
    merge::Versions decided = std::move(versions).value();
    for (const auto& [path, side] : sides) {
        Result<merge::Versions> next = merge::choose(decided, path, side, seat.value(), now);
        if (!next) return next.problems();
        decided = std::move(next).value();
    }
    Result<Job> made = merge::job_of(decided);
    if (!made) return made.problems();
    Job next = std::move(made).value();
    next.revision = revision + 1;
    next.changed_at = iso8601(now);
    next.base_sha256 = job.value().base_sha256;
    next.base_revision = job.value().base_revision;
    if (const Result<bool> free = number_is_free(next); !free || !free.value())
        return Problem{job_words(next), "the number is taken by another job",
                       "Take the other number, or change it first"};
    if (auto problem = store_->put(next, stored.value(), decided)) return *problem;
    if (auto problem = transaction.commit()) return *problem;
    return next;
}

Result<merge::Merged> Travel::bring_together(const Job& mine) {
    if (store_ == nullptr) return no_versions;
    const Result<Job> base = store_->load_revision(mine.id, mine.revision);
    if (!base) return base.problems();
    const Result<Job> theirs = store_->load(mine.id);
    if (!theirs) return theirs.problems();
    const Result<QVariant> by = store_->database_->value(
        "SELECT changed_by FROM job_revision WHERE job_id = ? AND revision = ?",
        {to_qt(mine.id), QVariant::fromValue(static_cast<qlonglong>(theirs.value().revision))});
    if (!by) return by.problems();
    const std::string who = by.value().toString().toStdString();
    Result<merge::Merged> merged =
        merge::join_from_base(base.value(), mine, "This window", theirs.value(), who.empty() ? "Another window" : who);
    if (!merged) return merged.problems();
    merged.value().job.revision = theirs.value().revision;
    merged.value().job.changed_at = theirs.value().changed_at;
    merged.value().job.base_sha256 = theirs.value().base_sha256;
    merged.value().job.base_revision = theirs.value().base_revision;
    return merged;
}

}  // namespace wg::store

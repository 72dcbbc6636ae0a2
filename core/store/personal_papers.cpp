// The papers that a client got and what they answered, to be handed out with the rest.

#include <QDir>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "core/quantity/utf8.h"
#include "core/store/export.h"
#include "core/store/personal.h"
#include "core/store/quote_book.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

/// The id in the name: numbers may be the same but for what a file's name cannot hold.
std::string paper_file(const std::string& number, const std::string& id, const char* ending) {
    return plain_file_name(number, "paper") + "-" + id.substr(0, 8) + ending;
}

/// As they were entered, in that order; a withdrawal is the firm's.
std::string answers_json(const std::string& number, const std::vector<QuoteAnswer>& answers) {
    QJsonArray list;
    for (const QuoteAnswer& one : answers) {
        list.append(QJsonObject{{"answer", QLatin1String(key_of(one.answer))},
                                {"on", to_qt(one.on)},
                                {"who", to_qt(one.who)},
                                {"note", to_qt(one.note)},
                                {"entered_by", to_qt(one.entered_by)},
                                {"entered_at", to_qt(one.entered_at)}});
    }
    return QJsonDocument(QJsonObject{{"quote", to_qt(number)}, {"answers", list}}).toJson().toStdString();
}

}  // namespace

std::string PersonalData::quote_stem(const IssuedQuote& quote) {
    return plain_file_name(quote.number, "quote") + "-" + quote.id.substr(0, 8);
}

std::optional<Problem> PersonalData::export_papers(const std::string& job_id, const std::string& root,
                                                   ExportedClient& out) const {
    const QDir papers_folder(QDir(to_qt(root)).filePath("papers")), quotes_folder(QDir(to_qt(root)).filePath("quotes"));
    const auto put = [&](const Result<std::string>& bytes, const std::string& name,
                         const std::string& number) -> std::optional<Problem> {
        if (!bytes) {
            out.missing.push_back("paper of " + for_message(number) + ": " + bytes.problems().front().what);
            return std::nullopt;
        }
        if (auto problem = write_file(papers_folder.filePath(to_qt(name)).toStdString(), bytes.value())) return problem;
        ++out.papers;
        return std::nullopt;
    };
    const QuoteBook quotes(store_);
    const Result<std::vector<IssuedQuote>> issued = store_.quotes(job_id);
    if (!issued) return issued.problems().front();
    const auto answers = quotes.answers(job_id);
    if (!answers) return answers.problems().front();
    for (const IssuedQuote& quote : issued.value()) {
        const Result<bool> kept = quotes.has_paper(quote.id);
        if (!kept) return kept.problems().front();
        if (kept.value()) {
            if (auto problem = put(quotes.paper(quote.id), paper_file(quote.number, quote.id, ".pdf"), quote.number))
                return problem;
        }
        const auto given = answers.value().find(quote.id);
        if (given == answers.value().end()) continue;
        const std::string file = quotes_folder.filePath(to_qt(quote_stem(quote) + "-answers.json")).toStdString();
        if (auto problem = write_file(file, answers_json(quote.number, given->second))) return problem;
        for (const QuoteAnswer& answer : given->second) {
            if (answer.signature_sha256.empty()) continue;
            const Result<std::string> image = quotes.signature(answer.id);
            const char* ending = image ? picture_ending(image.value()) : "";
            if (auto problem = put(image, paper_file(quote.number + "-signature", answer.id, ending), quote.number))
                return problem;
        }
    }
    const OrderBook orders(store_);
    const Result<std::vector<OrderPaper>> papers = orders.papers_of(job_id);
    if (!papers) return papers.problems().front();
    for (const OrderPaper& one : papers.value()) {
        if (auto problem = put(orders.paper(one.id), paper_file(one.number, one.id, ".pdf"), one.number))
            return problem;
    }
    return std::nullopt;
}

}  // namespace wg::store

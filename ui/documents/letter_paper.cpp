// The cover letter: the firm's words, or those of this very offer, with what they name filled in.

#include "core/quote/letter_words.h"
#include "ui/common/format.h"
#include "ui/documents/papers.h"

namespace wg::ui::paper {
namespace {

const char* const usual_letter = marked(
    "Dear {client},\n"
    "thank you for the time you gave us at your house. Our quote {number} of {date} is enclosed: hot water with heat "
    "from outdoors, for {price} with tax.\n"
    "The quote says what we would build, where it goes, what it needs in a year and what it costs. It holds until "
    "{valid_until}. To order, sign at its end and send it back to us; we then set the days with you.\n"
    "Ask us whatever is not clear: it costs you nothing.\n"
    "Kind regards\n"
    "{firm}");

QDate valid_until(const PaperInput& input) {
    if (!input.printed_on.isValid() || !input.plan.quote) return {};
    return input.printed_on.addDays(input.plan.quote->valid_days);
}

}  // namespace

QString letter_text(const PaperInput& input, const QString& words, QStringList* unknown) {
    const QString open = say("(not issued yet)");
    const QString unknown_price = say("(no price yet)");
    const QString currency = qs(input.plan.currency);
    const auto sum = [&](Money amount) { return input.plan.quote ? money(amount, currency) : unknown_price; };
    const Money gross = input.plan.quote ? input.plan.quote->gross : Money{};
    const Money to_bring = input.plan.offered ? input.plan.offered->to_bring : gross;
    const QDate until = valid_until(input);
    const Job& job = input.job;
    const std::map<std::string, std::string> fields = {
        {"client", job.client.name},
        {"number", (input.quote_number.isEmpty() ? open : input.quote_number).toStdString()},
        {"date", (input.printed_on.isValid() ? date_words(input.printed_on) : open).toStdString()},
        {"valid_until", (until.isValid() ? date_words(until) : open).toStdString()},
        {"price", sum(gross).toStdString()},
        {"to_bring", sum(to_bring).toStdString()},
        {"title", job.title.empty() ? client_address(job.client).toStdString() : job.title},
        {"job", job.number},
        {"firm", input.firm.name.toStdString()}};
    const quote::FilledWords filled = quote::filled_words(words.toStdString(), fields);
    if (unknown != nullptr) {
        for (const std::string& name : filled.unknown)
            *unknown += QLatin1Char('{') + qs(name) + QLatin1Char('}');
    }
    return qs(filled.text);
}

void address_block(Flow& flow, const PaperInput& input) {
    const Client& client = input.job.client;
    flow.gap(4.0);
    for (const QString& line :
         {qs(client.name), qs(client.street), (qs(client.postcode) + QLatin1Char(' ') + qs(client.town)).trimmed()}) {
        if (!line.isEmpty()) {
            flow.paragraph(line);
            flow.gap(-2.0);
        }
    }
    flow.gap(8.0);
    if (input.printed_on.isValid()) flow.paragraph(date_words(input.printed_on));
}

void letter_words(Flow& flow, const QString& words, const QString& after_first_words) {
    QString waiting = after_first_words;
    int told = 0;
    const auto paragraph = [&flow](const QString& text) {
        flow.paragraph(text);
        flow.gap(1.0);
    };
    for (const QString& part : words.trimmed().isEmpty() ? QStringList() : words.split(QLatin1Char('\n'))) {
        if (part.trimmed().isEmpty()) {
            flow.gap(2.0);
            continue;
        }
        paragraph(part);
        // Not between the salutation and the sentence that goes on from it.
        if (++told < 2 || waiting.isEmpty()) continue;
        paragraph(waiting);
        waiting.clear();
    }
    if (!waiting.isEmpty()) paragraph(waiting);
}

std::vector<Page> lay_out_cover_letter(const SharedInput& input) {
    const Job& job = input->job;
    Flow flow(furniture_of(Paper::cover_letter, *input));
    address_block(flow, *input);
    const QString about = job.title.empty() ? client_address(job.client) : qs(job.title);
    flow.paragraph(input->quote_number.isEmpty() ? say("Our quote: %1").arg(about)
                                                 : say("Our quote %1: %2").arg(input->quote_number, about),
                   Style{12.0, true, false});
    flow.gap(2.0);
    QString words = qs(job.offer.covering);
    if (words.trimmed().isEmpty()) words = input->firm.letter;
    if (words.trimmed().isEmpty()) words = say(usual_letter);
    QStringList unknown;
    const QString text = letter_text(*input, words, &unknown);
    letter_words(flow, text,
                 input->takes_place_of.isEmpty()
                     ? QString()
                     : say("It takes the place of our quote %1.").arg(input->takes_place_of));
    if (!unknown.isEmpty()) {
        flow.caution(Sign::caution, say("Words in braces that stand for nothing"),
                     say("%1. There are: %2.")
                         .arg(unknown.join(QStringLiteral(", ")),
                              QStringLiteral("{client}, {number}, {date}, {valid_until}, {price}, {to_bring}, {title}, "
                                             "{job}, {firm}")));
    }
    return flow.finish();
}

}  // namespace wg::ui::paper

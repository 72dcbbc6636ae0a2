#pragma once
// The papers as flows, and what they share.

#include <memory>
#include <utility>
#include <vector>

#include "ui/documents/documents.h"
#include "ui/documents/flow.h"

namespace wg::ui::paper {

using SharedInput = std::shared_ptr<const PaperInput>;

/// Lays a paper out: every page as it will stand on A4. The pages keep `input` alive.
[[nodiscard]] std::vector<Page> lay_out(Paper paper, const SharedInput& input);

/// Whether the paper is made in every language; the others stay English.
[[nodiscard]] bool has_languages(Paper paper);

[[nodiscard]] std::vector<Page> lay_out_quote(const SharedInput& input);
[[nodiscard]] std::vector<Page> lay_out_install_sheet(const SharedInput& input);
[[nodiscard]] std::vector<Page> lay_out_survey_sheet(const SharedInput& input);
[[nodiscard]] std::vector<Page> lay_out_workings(const SharedInput& input);
[[nodiscard]] std::vector<Page> lay_out_record(const SharedInput& input);
[[nodiscard]] std::vector<Page> lay_out_service_sheet(const SharedInput& input);
[[nodiscard]] std::vector<Page> lay_out_booklet(const SharedInput& input);
[[nodiscard]] std::vector<Page> lay_out_cover_letter(const SharedInput& input);
[[nodiscard]] std::vector<Page> lay_out_order_confirmation(const SharedInput& input);
[[nodiscard]] std::vector<Page> lay_out_change_order(const SharedInput& input);
[[nodiscard]] std::vector<Page> lay_out_parts_list(const SharedInput& input);
[[nodiscard]] std::vector<Page> lay_out_purchase_list(const SharedInput& input);
[[nodiscard]] std::vector<Page> lay_out_purchase_order(const SharedInput& input);
/// What stands at the head of every page of the workings.
[[nodiscard]] QString workings_headline();

// Shared pieces.
[[nodiscard]] Sheet sheet_of(const PaperLook& look);
[[nodiscard]] Furniture furniture_of(Paper paper, const PaperInput& input);
[[nodiscard]] QString date_words(const QDate& date);         ///< "21 June 2027"
[[nodiscard]] QString client_address(const Client& client);  ///< on one line
[[nodiscard]] QString hand_words(Hand hand);
[[nodiscard]] QString service_words(const Service& service);  ///< "there", "bring over 9.0 m", "missing"
/// What a charge weighs as carbon dioxide: tonnes, and below a tenth of one kilograms.
[[nodiscard]] QString carbon_words(double tonnes);
/// Of work that is reckoned by its time.
inline constexpr const char* hour_unit = "h";
/// An amount of a part: whole numbers without decimals.
[[nodiscard]] QString amount_words(double value, const std::string& unit);
/// A text that begins a line, within a sentence: German nouns keep their capitals.
[[nodiscard]] QString inside_a_sentence(const QString& text);
/// Work as papers sum it: what is reckoned by the hour, and beside it each line by another unit (the way there by the
/// kilometre).
struct WorkSum {
    struct Other {
        std::string text;
        std::string unit;
        double amount = 0.0;
        Money net;
    };
    double hours = 0.0;
    Money timed;
    std::vector<Other> others;
    void add(const std::string& text, const std::string& unit, double amount, Money net);
    /// A row for the hours, one for each of the others; `with_sums`: with what each comes to, net.
    void put_rows(Table& table, const QString& currency, bool with_sums) const;
};
/// What is offered of the plan; without a price there is still a list.
[[nodiscard]] quote::Offered offered_of(const plan::Plan& plan);
/// "IBAN DE89 3704 ..., BIC ...".
[[nodiscard]] QString account_words(const Firm& firm);
/// The firm's account to pay to; nothing where the firm told none.
void pay_to(Flow& flow, const Firm& firm);
/// Neither instalments nor terms tell when to pay: the same words on quote and order.
[[nodiscard]] QString payment_not_set();
/// Words of a letter, a paragraph a line; `after_first_words` stands below the salutation and what follows it.
void letter_words(Flow& flow, const QString& words, const QString& after_first_words);
/// Findings that the client has to know to decide: what stops the plan, and cautions about water, house and figures.
/// What the fitter has to look at is on the fitter's papers.
[[nodiscard]] std::vector<Finding> findings_for_client(const std::vector<Finding>& findings);
/// The client's name and address as in a letter, then the day.
void address_block(Flow& flow, const PaperInput& input);
/// The words of the offer or the firm with what stands in their braces filled in; `unknown`: fields that stand for
/// nothing.
[[nodiscard]] QString letter_text(const PaperInput& input, const QString& words, QStringList* unknown = nullptr);
/// The choices on offer beside this one, when there are any: what the client has to decide between.
void choices_beside(Flow& flow, const SharedInput& input);
/// Findings of at least `least` severity in ruled boxes, worst first.
void findings_boxes(Flow& flow, const std::vector<Finding>& findings, Severity least);

}  // namespace wg::ui::paper

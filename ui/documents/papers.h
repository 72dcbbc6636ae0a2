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
/// What is offered of the plan; without a price there is still a list.
[[nodiscard]] quote::Offered offered_of(const plan::Plan& plan);
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

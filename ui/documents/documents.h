#pragma once
// Papers composed from a finished Plan, vector throughout, on A4 or Letter.

#include <QByteArray>
#include <QDate>
#include <QImage>
#include <QPagedPaintDevice>
#include <QString>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/plan/plan.h"
#include "core/quantity/result.h"
#include "core/quote/change_order.h"
#include "core/quote/purchase.h"
#include "ui/common/paper_words.h"

namespace wg::ui {

enum class Paper {
    quote,
    install_sheet,
    survey_sheet,
    workings,
    record,
    service_sheet,
    booklet,
    cover_letter,
    order_confirmation,
    change_order,
    parts_list,
    purchase_list,
    purchase_order,
};
[[nodiscard]] QString file_name_of(Paper paper);  ///< "quote.pdf", ...
[[nodiscard]] QString title_of(Paper paper);

struct Firm {
    QString name, street, town, phone, email;
    bool invented = false;
    QImage logo{};             ///< opaque, on white (ui/documents/logo.h); null: none
    QString letter{};          ///< words of the cover letter, with fields; empty: ours
    QString supplier_words{};  ///< at the end of what goes to suppliers
    QString vat_id{};
    QString register_entry{};  ///< court and number, as law asks for on letters
    QString bank{};            ///< name of the bank
    QString iban{};            ///< capitals without blanks (core/quantity/iban.h); empty: none
    QString bic{};
};

/// A paper of the order that a later one takes the place of.
struct ReplacedPaper {
    Paper paper = Paper::order_confirmation;
    QString number{};
    QDate on{};
};

/// What an order's confirmation and a change order are made from.
struct OrderInput {
    QString number{};        ///< of the paper itself; empty: not issued yet
    QString quote_number{};  ///< that the client accepted
    QDate quote_on{};
    QDate accepted_on{};
    QString accepted_by{};
    QString note{};      ///< of the acceptance
    QImage signature{};  ///< opaque; null: none
    quote::FrozenOffer agreed{};
    std::optional<QString> terms{};               ///< of the quote; none: an older program did not keep them
    std::vector<ReplacedPaper> takes_place_of{};  ///< earlier papers of the order; empty: this is the first
    // Of a change order: the quote that changes what was agreed.
    QString newer_number{};
    QDate newer_on{};
    quote::ChangeOrder change{};
};

enum class PageForm { a4, letter };

/// How a paper is to look; what it says stays the same.
struct PaperLook {
    PageForm form = PageForm::a4;
    bool large_print = false;      ///< nothing below 14 pt instead of 9 pt
    bool black_and_white = false;  ///< no tints and no colours
    Language language = Language::english;
    friend bool operator==(const PaperLook&, const PaperLook&) = default;
};

/// A look as it is kept among the settings: "letter large-print black-and-white es". What is not understood is left as
/// usual.
[[nodiscard]] QString look_key(const PaperLook& look);
[[nodiscard]] PaperLook look_from_key(const QString& key);

struct PaperInput {
    Job job;
    plan::Plan plan;
    Firm firm;
    QDate printed_on;
    bool unsaved = false;  ///< the job was changed since the revision named: papers say so
    PaperLook look;
    /// Photograph or drawn signature by the hash of its bytes, null when there is none; not set: captions stand alone.
    std::function<QImage(const std::string& sha256)> picture{};
    QString quote_number{};                                   ///< of a quote as it is issued; empty: not issued
    QString takes_place_of{};                                 ///< number of the quote that this one takes the place of
    std::vector<std::shared_ptr<const plan::Plan>> beside{};  ///< of other choices on offer
    std::optional<economy::Tariffs> tariffs{};                ///< of the price list; nothing: no cost over the years
    quote::SupplyOf supply_of{};                              ///< for the purchase list
    quote::OrderedBefore ordered_before{};                    ///< by earlier purchase lists of the job
    std::string purchase_supplier{};                          ///< whom a purchase order goes to
    bool purchase_prices = true;                              ///< it tells the prices that are known
    std::optional<OrderInput> order{};
};

/// Number of pages and the text on each, in reading order: what tests look at.
struct Composition {
    std::vector<QStringList> pages;
};

/// Draws every page on the device, starting a new page where needed.
Composition compose(Paper paper, const PaperInput& input, QPagedPaintDevice& device);
/// The PDF itself, fonts embedded.
[[nodiscard]] Result<QByteArray> pdf_bytes(Paper paper, const PaperInput& input, Composition* composition = nullptr);
/// Writes a PDF with fonts embedded; the file appears whole or not at all.
[[nodiscard]] Result<Composition> write_pdf(Paper paper, const PaperInput& input, const QString& path);
/// Pages as images, for preview.
[[nodiscard]] std::vector<QImage> preview(Paper paper, const PaperInput& input, int dpi);

}  // namespace wg::ui

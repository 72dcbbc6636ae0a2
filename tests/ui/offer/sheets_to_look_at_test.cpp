// The papers of an offer to be looked at before a release, in every language and some looks. By hand:
//
//   WG_SHEETS=OUTDIR test_ui_offer --gtest_also_run_disabled_tests --gtest_filter='SheetsToLookAt.*'

#include <gtest/gtest.h>

#include <QBuffer>
#include <QDir>
#include <QPainter>
#include <QPainterPath>

#include "core/parts/prices.h"
#include "tests/ui/offer/planned_variants.h"
#include "ui/common/format.h"
#include "ui/documents/documents.h"

namespace wg::ui {
namespace sheets_to_look_at_test {
namespace {

QImage drawn_logo_and_signature(bool signature) {
    QImage image(480, signature ? 160 : 200, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(signature ? Qt::darkBlue : Qt::darkGreen, 6));
    if (signature) {
        QPainterPath line(QPointF(20, 120));
        line.cubicTo(80, -40, 120, 200, 200, 60);
        line.cubicTo(260, -20, 280, 180, 460, 80);
        painter.drawPath(line);
    } else {
        painter.setBrush(Qt::green);
        painter.drawEllipse(20, 20, 160, 160);
        painter.drawRect(220, 60, 240, 80);
    }
    return image;
}

PaperInput input_of_variant(const paper_year_test::Variant& variant) {
    PaperInput input;
    input.job = variant.job;
    input.plan = variant.plan;
    input.plan.job_revision = 3;
    input.beside = variant.beside;
    input.tariffs = variant.tariffs;
    input.firm.name = QStringLiteral("Invented firm of Harrowmere");
    input.firm.street = QStringLiteral("Old Tannery Lane 17");
    input.firm.town = QStringLiteral("0000 Harrowmere");
    input.firm.phone = QStringLiteral("+00 1234 567");
    input.firm.email = QStringLiteral("office@example.invalid");
    input.firm.logo = drawn_logo_and_signature(false);
    input.firm.supplier_words = QStringLiteral("Delivery to the yard, please.");
    input.firm.invented = true;
    input.firm.vat_id = QStringLiteral("XX000000000");
    input.firm.register_entry = QStringLiteral("Register of Harrowmere, no. 7 (invented)");
    input.firm.bank = QStringLiteral("Invented Bank of Harrowmere");
    input.firm.iban = QStringLiteral("DE89370400440532013000");  // the registrar's published example
    input.firm.bic = QStringLiteral("INVEXX22");
    input.printed_on = QDate(2027, 4, 12);
    input.quote_number = QStringLiteral("Q2027-0007");
    return input;
}

OrderInput order_of_variants(const paper_year_test::Variant& before, const paper_year_test::Variant& after) {
    OrderInput order;
    order.number = QStringLiteral("O2027-0003");
    order.quote_number = QStringLiteral("Q2027-0007");
    order.quote_on = QDate(2027, 4, 12);
    order.accepted_on = QDate(2027, 4, 20);
    order.accepted_by = QStringLiteral("Iris Fennimore");
    order.note = QStringLiteral("Please ring before you come.");
    order.takes_place_of = {{Paper::order_confirmation, QStringLiteral("O2027-0002"), QDate(2027, 4, 21)}};
    order.signature = drawn_logo_and_signature(true);
    order.agreed = quote::frozen_offer(plan::plan_to_json(before.plan), "before").value();
    order.newer_number = QStringLiteral("Q2027-0009");
    order.newer_on = QDate(2027, 5, 3);
    order.change =
        quote::change_order(order.agreed, quote::frozen_offer(plan::plan_to_json(after.plan), "after").value()).value();
    return order;
}

TEST(SheetsToLookAt, DISABLED_papers_of_an_offer) {
    const QDir out(QString::fromLocal8Bit(qgetenv("WG_SHEETS")));
    ASSERT_FALSE(qgetenv("WG_SHEETS").isEmpty());
    ASSERT_TRUE(out.mkpath(QStringLiteral(".")));
    const plan::Reference reference = test::reference();
    const auto variants = paper_year_test::planned_variants(reference);
    ASSERT_EQ(variants.size(), 3U);
    const auto write = [&](const char* name, Paper paper, PaperInput input) {
        for (const auto& [language, code] : {std::pair{Language::english, "en"}, std::pair{Language::spanish, "es"},
                                             std::pair{Language::german, "de"}}) {
            input.look.language = language;
            const QString file = QStringLiteral("%1-%2.pdf").arg(QLatin1String(name), QLatin1String(code));
            const auto written = write_pdf(paper, input, out.filePath(file));
            ASSERT_TRUE(written.ok()) << text_of(written.problems());
            std::printf("%s: %zu pages\n", file.toUtf8().constData(), written.value().pages.size());
        }
    };
    const PaperInput bare = input_of_variant(variants[0]);
    PaperInput full = input_of_variant(variants[1]);
    full.takes_place_of = QStringLiteral("Q2027-0006");
    full.job.offer.covering = "Good day {client},\nthank you for the coffee. Here is {number} for {price}.";
    write("quote-bare", Paper::quote, bare);
    write("quote-full", Paper::quote, full);
    PaperInput large = full;
    large.look.large_print = true;
    large.look.black_and_white = true;
    write("quote-large", Paper::quote, large);
    PaperInput letter = full;
    letter.job.offer.covering.clear();
    write("cover-letter", Paper::cover_letter, letter);
    full.order = order_of_variants(variants[1], variants[2]);
    write("order", Paper::order_confirmation, full);
    PaperInput large_order = full;
    large_order.look.large_print = true;
    write("order-large", Paper::order_confirmation, large_order);
    full.order->number = QStringLiteral("C2027-0001");
    write("change", Paper::change_order, full);
    full.order->number = QStringLiteral("P2027-0001");
    const auto list = reference.price_lists.find(full.job.price_list);
    ASSERT_NE(list, reference.price_lists.end());
    full.supply_of = [&list](const std::string& item) {
        quote::Supply supply = quote::supply_in(list->second, item);
        if (supply.pack > 0.0) {
            supply.in_stock = 3.5;
            supply.on_order = 5.0;
            supply.reserved = 2.0;
            supply.orders = {{"P2027-0000", "2027-0041", 5'000}};
            supply.reservations = {{"P2027-0000", "2027-0041", 2'000}};
        }
        return supply;
    };
    full.purchase_supplier = "Pellow Copper";
    write("purchase-order", Paper::purchase_order, full);
    PaperInput large_to_supplier = full;
    large_to_supplier.look.large_print = true;
    write("purchase-order-large", Paper::purchase_order, large_to_supplier);
    PaperInput no_prices = full;
    no_prices.purchase_prices = false;
    write("purchase-order-no-prices", Paper::purchase_order, no_prices);
    write("purchase", Paper::purchase_list, full);
    write("parts", Paper::parts_list, full);
}

}  // namespace
}  // namespace sheets_to_look_at_test
}  // namespace wg::ui

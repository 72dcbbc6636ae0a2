// Papers of an offer: letter, confirmation, change order, parts and purchase list, choices beside each other, logo.

#include <gtest/gtest.h>

#include <QBuffer>
#include <QPainter>
#include <QRegularExpression>

#include "tests/ui/documents/paper_texts.h"
#include "ui/common/format.h"
#include "ui/documents/logo.h"
#include "ui/documents/papers.h"

namespace wg::ui {
namespace offer_papers_test {

quote::FrozenLine line(const char* key, const char* text, double amount, std::int64_t price) {
    return {key, text, "pc", amount, {price}, line_net({price}, amount), false};
}

quote::FrozenOffer agreed(std::vector<quote::FrozenLine> lines) {
    quote::FrozenOffer out;
    out.currency = "EUR";
    out.choice_label = "A: one plate on the roof";
    out.lines = std::move(lines);
    for (const auto& each : out.lines)
        out.net += each.net;
    out.taxes = {{"Value added tax", 0.2, out.net, scaled(out.net, 0.2)}};
    out.gross = out.net + out.taxes[0].tax;
    out.to_bring = out.gross;
    out.instalments = {{"on order", 40.0, scaled(out.gross, 0.4)},
                       {"after the start", 60.0, out.gross - scaled(out.gross, 0.4)}};
    return out;
}

PaperInput ordered() {
    PaperInput input = sample::input();
    OrderInput order;
    order.number = QStringLiteral("O2027-0003");
    order.quote_number = QStringLiteral("Q2027-0007");
    order.quote_on = QDate(2027, 4, 12);
    order.accepted_on = QDate(2027, 4, 20);
    order.accepted_by = QStringLiteral("Marta Lindqvist");
    order.agreed =
        agreed({line("plate", "Collector Marl 21", 1, 98000), line("hook", "Roof hook, stainless", 6, 1450)});
    order.agreed.lines.push_back({"fit", "Fitting", "h", 14.5, {0}, {0}, true});
    order.newer_number = QStringLiteral("Q2027-0009");
    order.newer_on = QDate(2027, 5, 3);
    const auto after = agreed({line("plate", "Collector Marl 21", 2, 98000), line("valve", "Valve", 1, 5000)});
    order.change = quote::change_order(order.agreed, after).value();
    input.order = order;
    return input;
}

PaperInput with_choices() {
    PaperInput input = sample::input();
    for (int n = 1; n <= 3; ++n) {
        plan::Plan other = input.plan;
        other.choice_id = sample::uuid(60 + n);
        other.choice_label = "B" + std::to_string(n);
        other.figures.electricity_kwh = {400.0 + n, 450.0 + n, 520.0 + n};
        other.quote->gross += Money{100'00 * n};
        Choice choice = input.job.choices.front();
        choice.id = other.choice_id;
        choice.label = other.choice_label;
        input.job.choices.push_back(choice);
        input.beside.push_back(std::make_shared<const plan::Plan>(other));
    }
    input.tariffs = economy::Tariffs{};
    return input;
}

TEST(OfferPapers, the_letter_says_the_offers_words_or_the_firms_or_ours_with_fields_filled) {
    PaperInput input = sample::input();
    input.quote_number = QStringLiteral("Q2027-0007");
    QString text = sample::text_of_paper(Paper::cover_letter, input);
    EXPECT_TRUE(text.contains(QStringLiteral("Dear Marta Lindqvist,")));
    EXPECT_TRUE(text.contains(QStringLiteral("Our quote Q2027-0007 of 12 April 2027")));
    EXPECT_TRUE(text.contains(money(input.plan.quote->gross, QStringLiteral("EUR"))));
    EXPECT_TRUE(text.contains(QStringLiteral("12 May 2027"))) << "30 days later";
    EXPECT_FALSE(text.contains(QLatin1Char('{')));
    input.firm.letter = QStringLiteral("Good day {client}\n\nNumber {number}, {wrong}.");
    text = sample::text_of_paper(Paper::cover_letter, input);
    EXPECT_TRUE(text.contains(QStringLiteral("Good day Marta Lindqvist")));
    EXPECT_TRUE(text.contains(QStringLiteral("Words in braces that stand for nothing")));
    EXPECT_TRUE(text.contains(QStringLiteral("{wrong}")));
    input.job.offer.covering = "Only this, {firm}.";
    text = sample::text_of_paper(Paper::cover_letter, input);
    EXPECT_TRUE(text.contains(QStringLiteral("Only this, Heatherside Hot Water.")));
    EXPECT_FALSE(text.contains(QStringLiteral("Good day")));
    EXPECT_TRUE(
        sample::text_of_paper(Paper::quote, input).contains(QStringLiteral("Only this, Heatherside Hot Water.")));
    // A client's name is never looked into for fields.
    input.job.client.name = "{number}";
    input.job.offer.covering = "For {client}";
    EXPECT_TRUE(sample::text_of_paper(Paper::cover_letter, input).contains(QStringLiteral("For {number}")));
}

TEST(OfferPapers, the_confirmation_says_what_was_accepted_by_whom_and_when_to_pay) {
    const PaperInput input = ordered();
    const QString text = sample::text_of_paper(Paper::order_confirmation, input);
    const quote::FrozenOffer& offer = input.order->agreed;
    for (const QString& wanted :
         {QStringLiteral("Order confirmation O2027-0003"), QStringLiteral("Q2027-0007, dated 12 April 2027"),
          QStringLiteral("20 April 2027"), QStringLiteral("Marta Lindqvist"), QStringLiteral("Roof hook, stainless"),
          money(offer.gross, QStringLiteral("EUR")), money(offer.instalments[0].sum, QStringLiteral("EUR")),
          money(offer.instalments[1].sum, QStringLiteral("EUR")), QStringLiteral("What comes next")})
        EXPECT_TRUE(text.contains(wanted)) << wanted.toStdString();
    EXPECT_FALSE(text.contains(QStringLiteral("revision"))) << "of what was agreed, not of the plan as it is now";
    EXPECT_FALSE(text.contains(QStringLiteral("Signature under")));
    PaperInput large = input;
    large.look.large_print = true;
    bool whole = false;
    for (const paper::Lettering& piece :
         paper::lay_out(Paper::order_confirmation, std::make_shared<const PaperInput>(large)).front().lettering)
        whole = whole || piece.text.contains(QStringLiteral("O2027-0003"));
    EXPECT_TRUE(whole) << "the number is read whole in large print too";
    PaperInput with_picture = input;
    with_picture.order->signature = QImage(120, 40, QImage::Format_RGB32);
    EXPECT_TRUE(
        sample::text_of_paper(Paper::order_confirmation, with_picture).contains(QStringLiteral("Signature under")));
    EXPECT_TRUE(sample::text_of_paper(Paper::order_confirmation, sample::input())
                    .contains(QStringLiteral("no order to confirm")));
}

// Wherever the end of a page falls: each length of the order moves it by a line.
TEST(OfferPapers, net_tax_and_total_stand_together_on_a_page) {
    int with_break = 0;
    for (const bool large : {false, true}) {
        for (int more = 0; more < 40; ++more) {
            PaperInput input = ordered();
            input.look.large_print = large;
            auto& lines = input.order->agreed.lines;
            lines.insert(lines.begin(), static_cast<std::size_t>(more), line("nail", "Nail", 3, 0));
            const QString net = money(input.order->agreed.net, QStringLiteral("EUR"));
            const QString gross = money(input.order->agreed.gross, QStringLiteral("EUR"));
            const auto pages = paper::lay_out(Paper::order_confirmation, std::make_shared<const PaperInput>(input));
            int of_net = -1;
            int of_total = -1;
            for (std::size_t page = 0; page < pages.size(); ++page) {
                const QStringList& text = pages[page].text;
                for (qsizetype i = 0; i < text.size(); ++i) {
                    if (text[i] == QLatin1String("Net") && text.mid(i, 3).contains(net))
                        of_net = static_cast<int>(page);
                    if (text[i] == QLatin1String("Total with tax") && text.mid(i, 3).contains(gross))
                        of_total = static_cast<int>(page);
                }
            }
            ASSERT_GE(of_net, 0) << more;
            EXPECT_EQ(of_net, of_total) << more << (large ? " in large print" : "");
            if (of_net > 0) ++with_break;
        }
    }
    EXPECT_GT(with_break, 10) << "else no page ended among them";
}

TEST(OfferPapers, the_change_order_tells_each_line_and_both_prices) {
    const PaperInput input = ordered();
    const QString text = sample::text_of_paper(Paper::change_order, input);
    const quote::ChangeOrder& change = input.order->change;
    for (const QString& wanted :
         {QStringLiteral("Q2027-0007"), QStringLiteral("Q2027-0009 of 3 May 2027"), QStringLiteral("Changed"),
          QStringLiteral("New"), QStringLiteral("No longer"), QStringLiteral("Roof hook, stainless"),
          QStringLiteral("Valve"), money_difference(change.gross, QStringLiteral("EUR")),
          money(change.agreed_gross, QStringLiteral("EUR")), money(change.new_gross, QStringLiteral("EUR"))})
        EXPECT_TRUE(text.contains(wanted)) << wanted.toStdString();
    EXPECT_TRUE(
        sample::text_of_paper(Paper::change_order, sample::input()).contains(QStringLiteral("there is no change")));
    PaperInput same = input;
    same.order->change = quote::change_order(input.order->agreed, input.order->agreed).value();
    EXPECT_TRUE(sample::text_of_paper(Paper::change_order, same).contains(QStringLiteral("Nothing: both quotes")));
}

TEST(OfferPapers, parts_and_purchase_list_hold_every_part_that_counts) {
    PaperInput input = sample::input();
    quote::Offered offered;
    for (const parts::Line& each : input.plan.parts.lines) {
        quote::OfferedLine one;
        one.line = each;
        offered.lines.push_back(one);
    }
    offered.lines[3].left_out = true;  // hooks
    offered.lines[4].source = quote::LineSource::changed;
    offered.lines[4].reason = "longer rafters";
    offered.lines[4].planned_quantity = 10.0;
    input.plan.offered = offered;
    input.firm.supplier_words = QStringLiteral("Our customer number stands on file.");
    input.supply_of = [](const std::string& item) -> quote::Supply {
        if (item == "tube-6") return {"Bracken Supply", "T-635", 3.05};
        return {};
    };
    const QString parts = sample::text_of_paper(Paper::parts_list, input);
    const QString purchase = sample::text_of_paper(Paper::purchase_list, input);
    for (const QString& text : {parts, purchase}) {
        EXPECT_TRUE(text.contains(QStringLiteral("Expansion vessel 18 l")));
        EXPECT_FALSE(text.contains(QStringLiteral("Roof hook"))) << "left out";
    }
    EXPECT_TRUE(parts.contains(QStringLiteral("longer rafters")));
    EXPECT_TRUE(parts.contains(QStringLiteral("Fitting")));
    EXPECT_FALSE(purchase.contains(QStringLiteral("Fitting"))) << "work is not bought";
    EXPECT_TRUE(purchase.contains(QStringLiteral("Bracken Supply")));
    EXPECT_TRUE(purchase.contains(QStringLiteral("T-635")));
    EXPECT_TRUE(purchase.contains(QStringLiteral("2 packs of "))) << "6.1 m in packs of 3.05 m";
    EXPECT_TRUE(purchase.contains(QStringLiteral("No supplier told")));
    EXPECT_TRUE(purchase.contains(QStringLiteral("Our customer number")));
    EXPECT_FALSE(purchase.contains(QStringLiteral("EUR"))) << "a supplier is not told what the client pays";
    EXPECT_LT(purchase.indexOf(QStringLiteral("Bracken")), purchase.indexOf(QStringLiteral("No supplier")));
}

TEST(OfferPapers, choices_on_offer_stand_beside_each_other_three_at_most) {
    EXPECT_FALSE(sample::text_of_paper(Paper::quote, sample::input()).contains(QStringLiteral("beside each other")));
    const PaperInput input = with_choices();
    const QString text = sample::text_of_paper(Paper::quote, input);
    EXPECT_TRUE(text.contains(QStringLiteral("Your choices beside each other")));
    EXPECT_TRUE(text.contains(QStringLiteral("B1")));
    EXPECT_TRUE(text.contains(QStringLiteral("B2")));
    EXPECT_FALSE(text.contains(QStringLiteral("B3"))) << "three at most";
    EXPECT_TRUE(text.contains(money(input.beside[1]->quote->gross, QStringLiteral("EUR"))));
    EXPECT_TRUE(text.contains(QStringLiteral("Over 20 years")));
    // 167.00 a year at 2 % rise: 167 * (1.02^20 - 1) / 0.02 = 4057.66.
    EXPECT_TRUE(text.contains(quantity(4058.0, QStringLiteral("EUR")))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("They differ in: electricity in a year, price with tax.")));
    PaperInput stopped = input;
    auto bad = std::make_shared<plan::Plan>(*input.beside[0]);
    bad->findings.push_back(sample::stop());
    stopped.beside[0] = bad;
    EXPECT_TRUE(
        sample::text_of_paper(Paper::quote, stopped).contains(QStringLiteral("Not to be issued: B1 has a stop")));
}

TEST(OfferPapers, options_are_boxes_to_tick_with_their_price) {
    PaperInput input = sample::input();
    quote::Offered offered;
    quote::Option option;
    option.line.line = sample::line("lamp", "Lamp over the cylinder", "pc", 1, 4000, "");
    option.gross = {4800};
    offered.options = {option};
    input.plan.offered = offered;
    const auto pages = paper::lay_out(Paper::quote, std::make_shared<const PaperInput>(input));
    std::size_t boxes = 0;
    std::size_t without = 0;
    for (const paper::Page& page : pages)
        boxes += page.boxes.size();
    EXPECT_TRUE(sample::text_of_paper(Paper::quote, input).contains(money({4800}, QStringLiteral("EUR"))));
    offered.options.clear();
    input.plan.offered = offered;
    for (const paper::Page& page : paper::lay_out(Paper::quote, std::make_shared<const PaperInput>(input)))
        without += page.boxes.size();
    EXPECT_EQ(boxes, without + 1);
}

TEST(OfferPapers, say_no_english_in_another_language) {
    PaperInput input = ordered();
    input.job.offer.covering.clear();
    for (const Language language : {Language::german, Language::spanish}) {
        input.look.language = language;
        for (const Paper paper : {Paper::cover_letter, Paper::order_confirmation, Paper::change_order,
                                  Paper::parts_list, Paper::purchase_list, Paper::purchase_order}) {
            const QString text = sample::text_of_paper(paper, input);
            static const QRegularExpression english(
                QStringLiteral("\\b(the|and|with|your|of|to be|agreed|quote|order|parts?)\\b"));
            for (const QString& one : text.split(QLatin1Char('\n'))) {
                // Names and reasons of the sample, which the job's own words are.
                if (one.contains(QStringLiteral("Lindqvist")) || one.contains(QStringLiteral("plate on the roof")) ||
                    one.contains(QStringLiteral("after the start")) || one.contains(QStringLiteral("on order")) ||
                    one.contains(QStringLiteral("auf Englisch")) || one.contains(QStringLiteral("en ingl")) ||
                    one.contains(QStringLiteral("Tests and start")))
                    continue;
                EXPECT_FALSE(one.contains(english)) << title_of(paper).toStdString() << ": " << one.toStdString();
            }
        }
    }
}

// ------------------------------------------------------------------------------------ logo

QByteArray picture_bytes(const char* format, QSize size, bool clear = false) {
    QImage image(size, QImage::Format_ARGB32);
    image.fill(clear ? QColor(0, 0, 0, 0) : QColor(180, 90, 30));
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, format);
    return bytes;
}

QByteArray svg(const char* inside, const char* before = "") {
    return QByteArray(before) +
           "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" "
           "viewBox=\"0 0 40 20\" width=\"40\" height=\"20\">" +
           inside + "</svg>";
}

TEST(Logo, png_jpeg_and_svg_come_out_opaque_on_white) {
    for (const QByteArray& bytes :
         {picture_bytes("PNG", {300, 100}), picture_bytes("PNG", {300, 100}, true), picture_bytes("JPG", {300, 100}),
          svg("<rect width=\"10\" height=\"10\" fill=\"#a40\" opacity=\"0.5\"/>")}) {
        const auto logo = logo_from_bytes(bytes);
        ASSERT_TRUE(logo.ok()) << text_of(logo.problems());
        EXPECT_FALSE(logo.value().hasAlphaChannel());
    }
    EXPECT_EQ(logo_from_bytes(picture_bytes("PNG", {300, 100}, true)).value().pixel(5, 5), qRgb(255, 255, 255));
    EXPECT_LE(logo_from_bytes(picture_bytes("PNG", {5000, 100})).value().width(), 1200);
}

TEST(Logo, what_is_none_or_reaches_further_is_refused_with_a_reason) {
    QByteArray cut = picture_bytes("PNG", {300, 100});
    cut.truncate(40);
    QByteArray huge = picture_bytes("PNG", {300, 100});
    huge[16] = 0x7F;  // the width in its header, four bytes from there (PNG, 11.2.2)
    const QByteArray bad[] = {
        {},
        "GIF89a and so on",
        "%PDF-1.7",
        cut,
        huge,
        picture_bytes("PNG", {8, 8}),
        picture_bytes("PNG", {6001, 20}),
        QByteArray("\x89PNG\r\n\x1A\n", 8) + QByteArray(max_logo_bytes, 'x'),
        svg("<image xlink:href=\"file:///etc/hostname\"/>"),
        svg("<use xlink:href=\"#a\"/>"),
        svg("<script>1</script>"),
        svg("<rect onload=\"x()\" width=\"1\" height=\"1\"/>"),
        svg("<a xlink:href=\"http://example.org\"><rect width=\"9\" height=\"9\"/></a>"),
        svg("<rect width=\"9\" height=\"9\" fill=\"url(http://example.org/#a)\"/>"),
        svg("<style>@import 'x.css';</style>"),
        svg("<rect width=\"9\" height=\"9\"/>", "<!DOCTYPE svg [<!ENTITY a 'b'>]>"),
        svg((QByteArray("<g>").repeated(100) + QByteArray("</g>").repeated(100)).constData()),
        svg(QByteArray("<g/>").repeated(6000).constData()),
        svg("<rect width=\"9\""),
        "<html/>",
    };
    for (const QByteArray& bytes : bad) {
        const auto logo = logo_from_bytes(bytes);
        ASSERT_FALSE(logo.ok()) << bytes.left(120).toStdString();
        EXPECT_FALSE(logo.problems().front().what.empty());
        EXPECT_FALSE(logo.problems().front().remedy.empty());
    }
    EXPECT_FALSE(signature_from_bytes(svg("<rect width=\"9\" height=\"9\"/>")).ok()) << "a signature is no drawing";
}

TEST(OfferPapers, kilometres_of_the_way_there_are_no_hours_of_work) {
    PaperInput input = sample::input();
    double hours = 0.0;
    for (const parts::Line& line : input.plan.quote->lines)
        hours += line.labour ? line.to_buy : 0.0;
    parts::Line way;
    way.text = "Travel, distance";
    way.unit = "km";
    way.labour = true;
    way.priced = true;
    way.quantity = way.to_buy = 100.0;
    way.net = {7'000};
    input.plan.quote->lines.push_back(way);
    const QString text = sample::text_of_paper(Paper::quote, input);
    EXPECT_TRUE(text.contains(quantity(hours, QStringLiteral("h"), 1))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Travel, distance")));
    EXPECT_TRUE(text.contains(quantity(100.0, QStringLiteral("km"))));
    input.look.language = Language::german;
    EXPECT_TRUE(sample::text_of_paper(Paper::quote, input).contains(QStringLiteral("Anfahrt, Strecke")));
}

TEST(OfferPapers, heat_at_the_tap_is_heat_over_electricity_and_the_cylinders_more_is_told_why) {
    PaperInput input = sample::input();
    input.plan.figures.heat_kwh = {3000.0, 3403.0, 3800.0};
    input.plan.figures.electricity_kwh = {980.0, 1096.0, 1250.0};
    input.plan.figures.seasonal_factor = {2.9, 3.4, 3.8};
    input.plan.economy.present_cost = {120'115};
    const QString text = sample::text_of_paper(Paper::quote, input);
    EXPECT_TRUE(text.contains(QStringLiteral("about 3.1\u202fkWh"))) << "3403/1096";
    EXPECT_TRUE(text.contains(QStringLiteral("about 3.4\u202fkWh (2.9 to 3.8)")));
    EXPECT_TRUE(text.contains(QStringLiteral("the cylinder loses some heat while the water waits")));
    EXPECT_TRUE(text.contains(QStringLiteral("about 1\u202f201\u202fEUR (1\u202f059 to 1\u202f341)")))
        << "by 3000/3403 and 3800/3403; no cents of what is about: " << text.toStdString();
    EXPECT_FALSE(text.contains(QStringLiteral("1\u202f201.15")));
}

TEST(OfferPapers, the_client_reads_the_clients_cautions_alone) {
    PaperInput input = sample::input();
    const auto finding = [](const char* code, Severity severity, const char* message) {
        Finding out;
        out.code = code;
        out.severity = severity;
        out.message = message;
        out.remedy = "Remedy of " + out.code;
        return out;
    };
    input.plan.findings = {finding("water.legionella", Severity::caution, "Legionella grow"),
                           finding("room.ignition-source", Severity::caution, "Flammable refrigerant"),
                           finding("supply.inrush", Severity::caution, "A breaker may trip"),
                           finding("spot.headroom-for-work", Severity::caution, "Little headroom"),
                           finding("water.scald", Severity::note, "Water burns"),
                           finding("weather.invented", Severity::note, "Invented weather"),
                           finding("", Severity::caution, "Frozen without its code")};
    const QString text = sample::text_of_paper(Paper::quote, input);
    for (const char* told : {"Legionella grow", "Remedy of water.legionella", "Flammable refrigerant", "Water burns",
                             "Frozen without its code"})
        EXPECT_TRUE(text.contains(QString::fromLatin1(told))) << told;
    for (const char* not_told : {"breaker may trip", "Little headroom", "Invented weather", "Remedy of water.scald"})
        EXPECT_FALSE(text.contains(QString::fromLatin1(not_told))) << not_told;
}

TEST(OfferPapers, the_firms_numbers_stand_at_the_foot_and_the_account_below_instalments) {
    PaperInput input = ordered();
    input.firm.vat_id = QStringLiteral("DE999999999");
    input.firm.register_entry = QStringLiteral("HRB 7, Registergericht Harrowmere");
    input.firm.bank = QStringLiteral("Invented Bank of Harrowmere");
    input.firm.iban = QStringLiteral("DE89370400440532013000");
    input.firm.bic = QStringLiteral("COBADEFFXXX");
    const QString account = QStringLiteral("IBAN DE89 3704 0044 0532 0130 00, BIC COBADEFFXXX");
    for (const Paper kind : {Paper::quote, Paper::cover_letter, Paper::order_confirmation, Paper::change_order}) {
        for (const bool large : {false, true}) {
            input.look.large_print = large;
            for (const paper::Page& page : paper::lay_out(kind, std::make_shared<const PaperInput>(input))) {
                const QString text = page.text.join(QLatin1Char('\n'));
                for (const QString& wanted : {account, input.firm.vat_id, input.firm.register_entry, input.firm.bank})
                    EXPECT_TRUE(text.contains(wanted)) << title_of(kind).toStdString() << wanted.toStdString();
                for (const paper::Lettering& piece : page.lettering)
                    EXPECT_FALSE(piece.text.contains(QStringLiteral("IBAN")) && piece.text.contains(QChar(0x2026)))
                        << "an account number is never cut";
            }
        }
        input.look.large_print = false;
    }
    EXPECT_TRUE(sample::text_of_paper(Paper::order_confirmation, input)
                    .contains(QStringLiteral("Please pay to Heatherside Hot Water: ") + account));
    EXPECT_FALSE(sample::text_of_paper(Paper::install_sheet, input).contains(account));
    for (const Paper kind : {Paper::purchase_list, Paper::purchase_order}) {
        const QString purchase = sample::text_of_paper(kind, input);
        EXPECT_TRUE(purchase.contains(input.firm.vat_id)) << title_of(kind).toStdString();
        EXPECT_TRUE(purchase.contains(input.firm.register_entry)) << title_of(kind).toStdString();
        EXPECT_FALSE(purchase.contains(account)) << "suppliers pay nothing";
    }
    const Firm bare = sample::input().firm;
    input.firm = bare;
    EXPECT_FALSE(sample::text_of_paper(Paper::order_confirmation, input).contains(QStringLiteral("IBAN")));
}

TEST(OfferPapers, the_letter_says_what_it_replaces_below_its_salutation) {
    PaperInput input = sample::input();
    input.quote_number = QStringLiteral("Q2027-0007");
    input.takes_place_of = QStringLiteral("Q2027-0006");
    const QString letter = sample::text_of_paper(Paper::cover_letter, input);
    const auto salutation = letter.indexOf(QStringLiteral("Dear "));
    const auto replaced = letter.indexOf(QStringLiteral("takes the place of our quote Q2027-0006"));
    ASSERT_GE(salutation, 0);
    EXPECT_GT(replaced, salutation);
    EXPECT_GT(replaced, letter.indexOf(QStringLiteral("thank you for the time"))) << "that sentence goes on from it";
    EXPECT_LT(replaced, letter.indexOf(QStringLiteral("The quote says")));
    EXPECT_TRUE(sample::text_of_paper(Paper::quote, input).contains(QStringLiteral("of our quote Q2027-0006")))
        << "also without words to the client";
}

TEST(OfferPapers, packs_are_named_as_packs) {
    PaperInput input = ordered();
    input.supply_of = [](const std::string&) {
        quote::Supply supply;
        supply.pack = 5.0;
        return supply;
    };
    const QString english = sample::text_of_paper(Paper::purchase_list, input);
    EXPECT_TRUE(english.contains(QRegularExpression(QStringLiteral("1 pack of 5|\\d packs of 5"))))
        << english.toStdString();
    input.look.language = Language::german;
    EXPECT_TRUE(sample::text_of_paper(Paper::purchase_list, input).contains(QStringLiteral("Gebinde zu 5")));
}

TEST(OfferPapers, german_says_vorhaben_for_the_job_and_auftrag_for_the_order) {
    PaperInput input = ordered();
    input.look.language = Language::german;
    const QString confirmation = sample::text_of_paper(Paper::order_confirmation, input);
    EXPECT_TRUE(confirmation.contains(QStringLiteral("Vorhaben ") + qs(input.job.number)));
    EXPECT_TRUE(confirmation.contains(QStringLiteral("Ihr Auftrag")));
    for (const auto& [source, translation] : sample::phrases_in("paper_de.ts")) {
        if (source.contains(QStringLiteral("job %1"), Qt::CaseInsensitive))
            EXPECT_TRUE(translation.contains(QStringLiteral("Vorhaben %1"))) << translation.toStdString();
    }
}

TEST(Logo, stands_in_its_box_at_the_head_and_the_file_stays_for_the_archive) {
    PaperInput input = ordered();
    input.firm.logo = logo_from_bytes(picture_bytes("PNG", {900, 100}, true)).value();
    input.order->signature = signature_from_bytes(picture_bytes("PNG", {300, 100}, true)).value();
    for (const Paper kind : {Paper::quote, Paper::install_sheet, Paper::cover_letter, Paper::order_confirmation,
                             Paper::change_order, Paper::parts_list, Paper::purchase_list}) {
        const auto pages = paper::lay_out(kind, std::make_shared<const PaperInput>(input));
        const auto& pictures = pages.front().pictures;
        const auto logo = std::find_if(pictures.begin(), pictures.end(),
                                       [](const paper::Picture& p) { return p.name == QStringLiteral("logo"); });
        ASSERT_NE(logo, pictures.end());
        EXPECT_NEAR(logo->frame.width(), 34.0 * paper::mm, 1.0);
        EXPECT_NEAR(logo->frame.width() / logo->frame.height(), 9.0, 0.1) << "not stretched";
        for (const paper::Lettering& piece : pages.front().lettering) {
            const bool beside = piece.baseline.y() < logo->frame.bottom();
            EXPECT_FALSE(beside && piece.baseline.x() < logo->frame.right()) << piece.text.toStdString();
        }
        PaperInput large = input;
        large.look.large_print = true;
        for (const paper::Lettering& piece :
             paper::lay_out(kind, std::make_shared<const PaperInput>(large)).front().lettering)
            EXPECT_FALSE(piece.text.startsWith(QStringLiteral("Heather")) && piece.text.contains(QChar(0x2026)))
                << "the firm's name is read whole";
        const auto pdf = pdf_bytes(kind, input);
        ASSERT_TRUE(pdf.ok());
        static const QRegularExpression clear(QStringLiteral("/(?:ca|CA) 0|/SMask (?!/None)|/S /Transparency"));
        EXPECT_FALSE(QString::fromLatin1(pdf.value()).contains(clear)) << title_of(kind).toStdString();
    }
}

}  // namespace offer_papers_test
}  // namespace wg::ui

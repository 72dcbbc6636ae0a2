// What follows an acceptance: the order's confirmation, and a change of the order.

#include <algorithm>
#include <cmath>

#include "ui/common/format.h"
#include "ui/documents/filled_words.h"
#include "ui/documents/papers.h"

namespace wg::ui::paper {
namespace {

constexpr double sum_mm = 36.0;
constexpr double amount_mm = 28.0;

QString with_sign(Money amount, const QString& currency) {
    return amount.minor == 0 ? money(amount, currency) : money_difference(amount, currency);
}

void total_row(Table& table, const QString& what, const QString& sum) {
    QStringList cells{what};
    while (cells.size() + 1 < static_cast<qsizetype>(table.columns.size()))
        cells += QString();
    cells += sum;
    table.rows.push_back({cells, Row::Kind::total});
}

void about(Flow& flow, const PaperInput& input, const QString& title) {
    address_block(flow, input);
    const Job& job = input.job;
    flow.paragraph(QStringLiteral("%1: %2").arg(title, job.title.empty() ? client_address(job.client) : qs(job.title)),
                   Style{12.0, true, false});
}

/// What was agreed, on which day and by whom.
void agreed_pairs(Flow& flow, const OrderInput& order) {
    std::vector<std::pair<QString, QString>> pairs;
    const auto add = [&pairs](const QString& what, const QString& value) {
        if (!value.isEmpty()) pairs.emplace_back(what, value);
    };
    QString quote = order.quote_number;
    if (order.quote_on.isValid()) quote = say("%1, dated %2").arg(quote, date_words(order.quote_on));
    add(say("Quote accepted"), quote);
    add(say("Accepted on"), date_words(order.accepted_on));
    add(say("By"), order.accepted_by);
    add(say("Choice"), qs(order.agreed.choice_label));
    add(say("Noted with it"), order.note);
    flow.pairs(pairs, false);
    if (order.signature.isNull()) return;
    const QImage signature = order.signature;
    flow.picture(
        say("Signature"), 18.0 * mm, 0.0,
        [signature](QPainter& painter, const QRectF& frame) {
            const QSizeF size = QSizeF(signature.size()).scaled(60.0 * mm, frame.height(), Qt::KeepAspectRatio);
            painter.setRenderHint(QPainter::SmoothPixmapTransform);
            painter.drawImage(QRectF(frame.topLeft(), size), signature);
        },
        say("Signature under the acceptance, as it reached us."));
}

/// Who holds two confirmations has to know which one counts.
void what_it_replaces(Flow& flow, const OrderInput& order) {
    if (order.takes_place_of.empty()) return;
    QStringList papers;
    for (const ReplacedPaper& one : order.takes_place_of)
        papers += say("%1 %2 of %3").arg(title_of(one.paper), one.number, date_words(one.on));
    flow.paragraph(say("This confirmation takes the place of: %1. What it replaces no longer counts.")
                       .arg(papers.join(QStringLiteral("; "))),
                   Style{body_pt, true, false});
}

void sums_of(Table& table, const quote::FrozenOffer& agreed, const QString& currency) {
    if (agreed.discount.minor != 0)
        table.rows.push_back({QStringList{say("Discount"), QString(), money(Money{} - agreed.discount, currency)}});
    total_row(table, say("Net"), money(agreed.net, currency));
    for (const quote::FrozenTax& tax : agreed.taxes) {
        table.rows.push_back(
            {QStringList{say("%1, %2 on %3").arg(say_name(tax.label), percent(tax.rate, 1), money(tax.net, currency)),
                         QString(), money(tax.tax, currency)}});
    }
    total_row(table, say("Total with tax"), money(agreed.gross, currency));
    if (agreed.granted.minor == 0) return;
    table.rows.push_back({QStringList{say("Subsidies"), QString(), money(Money{} - agreed.granted, currency)}});
    total_row(table, say("Left for you to pay when all is granted"), money(agreed.to_bring, currency));
}

/// The parts by name and quantity; prices stand as the quote has them, in sums.
void what_was_ordered(Flow& flow, const OrderInput& order) {
    const quote::FrozenOffer& agreed = order.agreed;
    const QString currency = qs(agreed.currency);
    flow.heading(say("What you ordered"));
    Table table;
    table.columns = {{say("What"), 0.0}, {say("Quantity"), amount_mm, true}, {say("Net"), sum_mm, true}};
    Money material;
    WorkSum work;
    for (const quote::FrozenLine& line : agreed.lines) {
        if (line.labour) {
            work.add(line.text, line.unit, line.quantity, line.net);
            continue;
        }
        material += line.net;
        table.rows.push_back({QStringList{say_name(line.text), amount_words(line.quantity, line.unit), QString()}});
    }
    if (agreed.lines_are_the_sum) total_row(table, say("Equipment and material"), money(material, currency));
    work.put_rows(table, currency, agreed.lines_are_the_sum);
    const std::size_t before_sums = table.rows.size();
    sums_of(table, agreed, currency);
    table.last_together = table.rows.size() - before_sums;
    flow.table(table);
}

void when_to_pay(Flow& flow, const OrderInput& order, const Firm& firm) {
    flow.heading(say("When to pay"));
    if (order.agreed.instalments.empty()) {
        if (!order.terms) {
            flow.paragraph(say("As the terms of the quote have it."));
        } else if (order.terms->isEmpty()) {
            flow.paragraph(payment_not_set());
        } else {
            flow.paragraph(say("As the terms of the quote have it:"));
            for (const QString& part : order.terms->split(QLatin1Char('\n'), Qt::SkipEmptyParts))
                flow.paragraph(part);
        }
        pay_to(flow, firm);
        return;
    }
    Table table;
    table.whole = true;
    table.columns = {{say("To be paid"), 0.0}, {say("Share"), amount_mm, true}, {say("With tax"), sum_mm, true}};
    for (const quote::FrozenInstalment& part : order.agreed.instalments)
        table.rows.push_back(
            {QStringList{qs(part.text), percent(part.percent / 100.0, 2), money(part.sum, qs(order.agreed.currency))}});
    flow.table(table);
    pay_to(flow, firm);
}

void what_comes_next(Flow& flow) {
    flow.heading(say("What comes next"));
    flow.bullet(say("We order the parts and tell you when they are here."));
    flow.bullet(say("We set the days of fitting with you, and look at the weather: nobody works on a wet roof."));
    flow.bullet(say("Before that day, please make room where the cylinder goes and on the way to it."));
    flow.bullet(say("What your quote names as still to be made at the cylinder's place has to be there by then."));
    flow.bullet(say("After the start we show you how it works, and hand over the booklet and the record."));
    flow.paragraph(say(
        "Anything you want to change, tell us before the parts are ordered: you get a change order with its price, and "
        "nothing changes before you have signed it."));
}

const char* kind_words(quote::ChangedLine::Kind kind) {
    switch (kind) {
        case quote::ChangedLine::Kind::added: return marked("New");
        case quote::ChangedLine::Kind::changed: return marked("Changed");
        case quote::ChangedLine::Kind::dropped: return marked("No longer");
    }
    return "";
}

QString line_amount(const quote::FrozenLine& line, const QString& currency) {
    if (line.key.empty() && line.text.empty()) return QStringLiteral("\u2013");
    return QStringLiteral("%1\n%2").arg(amount_words(line.quantity, line.unit), money(line.net, currency));
}

void changed_lines(Flow& flow, const quote::ChangeOrder& change) {
    const QString currency = qs(change.currency);
    Table table;
    table.columns = {{say("What"), 0.0},
                     {say("Agreed"), 30.0, true},
                     {say("From now on"), 30.0, true},
                     {say("Difference, net"), sum_mm, true}};
    for (const auto kind :
         {quote::ChangedLine::Kind::changed, quote::ChangedLine::Kind::added, quote::ChangedLine::Kind::dropped}) {
        bool first = true;
        for (const quote::ChangedLine& line : change.lines) {
            if (line.kind != kind) continue;
            if (first) table.rows.push_back({QStringList{say(kind_words(kind))}, Row::Kind::group});
            first = false;
            const quote::FrozenLine& named = kind == quote::ChangedLine::Kind::dropped ? line.before : line.after;
            QString words = say_name(named.text);
            if (kind == quote::ChangedLine::Kind::changed && line.before.text != line.after.text)
                words += QLatin1Char('\n') + say("instead of: %1").arg(say_name(line.before.text));
            table.rows.push_back(
                {QStringList{words, line_amount(line.before, currency), line_amount(line.after, currency),
                             with_sign(line.difference, currency)}});
        }
    }
    const auto row = [&](const QString& what, Money amount) {
        table.rows.push_back({QStringList{what, QString(), QString(), with_sign(amount, currency)}});
    };
    const std::size_t before_sums = table.rows.size();
    if (change.discount.minor != 0) row(say("Discount"), Money{} - change.discount);
    total_row(table, say("Net"), with_sign(change.net, currency));
    row(say("Tax"), change.tax);
    total_row(table, say("Difference with tax"), with_sign(change.gross, currency));
    table.rows.push_back(
        {QStringList{say("Price agreed, with tax"), QString(), QString(), money(change.agreed_gross, currency)}});
    total_row(table, say("Price from now on, with tax"), money(change.new_gross, currency));
    if (change.to_bring != change.gross) row(say("More or less for you to pay when all is granted"), change.to_bring);
    table.last_together = table.rows.size() - before_sums;
    flow.table(table);
    // Without their number: the client's quote brings fixings and work together, the frozen lines stand each.
    if (change.unchanged > 0) flow.paragraph(say("Everything else in the quote stays as agreed."));
}

}  // namespace

std::vector<Page> lay_out_order_confirmation(const SharedInput& input) {
    Flow flow(furniture_of(Paper::order_confirmation, *input));
    about(flow, *input, say("Your order"));
    if (!input->order) {
        flow.paragraph(say("No quote of this job is accepted yet: there is no order to confirm."));
        return flow.finish();
    }
    const OrderInput& order = *input->order;
    flow.paragraph(say("Thank you for your order. We confirm what was agreed between us."));
    what_it_replaces(flow, order);
    agreed_pairs(flow, order);
    what_was_ordered(flow, order);
    when_to_pay(flow, order, input->firm);
    what_comes_next(flow);
    flow.sign_off(say("Confirmed"), say("We take the order as it stands here."), {say("For the firm")});
    return flow.finish();
}

std::vector<Page> lay_out_change_order(const SharedInput& input) {
    Flow flow(furniture_of(Paper::change_order, *input));
    about(flow, *input, say("Change of your order"));
    if (!input->order || input->order->newer_number.isEmpty()) {
        flow.paragraph(say("There are no two quotes of this job to be compared: there is no change."));
        return flow.finish();
    }
    const OrderInput& order = *input->order;
    flow.paragraph(say("This changes what was agreed: quote %1, accepted on %2 by %3. Quote %4 of %5 takes its place.")
                       .arg(order.quote_number, date_words(order.accepted_on), order.accepted_by, order.newer_number,
                            date_words(order.newer_on)));
    flow.heading(say("What changes"));
    if (order.change.nothing()) {
        flow.paragraph(say("Nothing: both quotes have the same lines and the same price."));
    } else {
        changed_lines(flow, order.change);
    }
    flow.sign_off(say("Agreed"), say("The order is changed as it stands here, and in nothing else."),
                  {say("Client"), say("For the firm")});
    return flow.finish();
}

}  // namespace wg::ui::paper

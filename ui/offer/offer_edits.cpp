#include "ui/offer/offer_edits.h"

#include "ui/common/edit_tools.h"
#include "ui/common/edits.h"

namespace wg::ui {

LineChange change_of(const JobSession& session, const quote::OfferedLine& line) {
    if (const LineChange* known = with_id(session.job().offer.changes, line.element_id)) return *known;
    LineChange fresh;
    fresh.id = new_id();
    fresh.item = line.line.item_id;
    fresh.planned_quantity = line.line.to_buy;
    if (const Choice* choice = session.current_choice()) fresh.choice_id = choice->id;
    return fresh;
}

void set_change(JobSession& session, const LineChange& change) {
    const bool nothing = !change.left_out && !change.quantity && !change.unit_price_minor && change.text.empty();
    if (nothing) {
        take_change_back(session, change.id);
        return;
    }
    session.edit(QObject::tr("Change a line of the offer"), [&change](Job& job) {
        if (LineChange* known = with_id(job.offer.changes, change.id)) {
            *known = change;
        } else {
            job.offer.changes.push_back(change);
        }
    });
}

void take_change_back(JobSession& session, const std::string& change_id) {
    session.edit(QObject::tr("Take a line back to the plan"),
                 [&change_id](Job& job) { erase_id(job.offer.changes, change_id); });
}

std::string add_own_line(JobSession& session, OfferLineKind kind) {
    OfferLine line;
    line.id = new_id();
    line.kind = kind;
    if (const Choice* choice = session.current_choice()) line.choice_id = choice->id;
    switch (kind) {
        case OfferLineKind::part: line.text = QObject::tr("Part").toStdString(); break;
        case OfferLineKind::labour:
            line.text = QObject::tr("Work").toStdString();
            line.unit = "h";
            break;
        case OfferLineKind::subsidy: line.text = QObject::tr("Subsidy").toStdString(); break;
    }
    session.edit(QObject::tr("Add a line to the offer"), [&line](Job& job) { job.offer.lines.push_back(line); });
    return line.id;
}

void set_own_line(JobSession& session, const OfferLine& line) {
    session.edit(QObject::tr("Change a line of the offer"), [&line](Job& job) {
        if (OfferLine* known = with_id(job.offer.lines, line.id)) *known = line;
    });
}

void remove_own_line(JobSession& session, const std::string& line_id) {
    session.edit(QObject::tr("Remove a line of the offer"),
                 [&line_id](Job& job) { erase_id(job.offer.lines, line_id); });
}

void set_terms(JobSession& session, const Offer& offer) {
    session.edit(QObject::tr("Change the terms of the offer"), [&offer](Job& job) {
        job.offer.discount_percent = offer.discount_percent;
        job.offer.discount_reason = offer.discount_reason;
        job.offer.instalments = offer.instalments;
        job.offer.valid_days = offer.valid_days;
        job.offer.covering = offer.covering;
        job.offer.terms = offer.terms;
        job.offer.access = offer.access;
        job.offer.storeys = offer.storeys;
        job.offer.distance_km = offer.distance_km;
        job.offer.trips = offer.trips;
    });
}

void set_on_offer(JobSession& session, const std::string& choice_id, bool on) {
    session.edit(QObject::tr("Put a choice on the quote"), [&choice_id, on](Job& job) {
        if (Choice* choice = with_id(job.choices, choice_id)) choice->on_offer = on;
    });
}

void add_instalment(JobSession& session) {
    session.edit(QObject::tr("Add an instalment"), [](Job& job) {
        double rest = 100.0;
        for (const Instalment& one : job.offer.instalments)
            rest -= one.percent;
        Instalment fresh;
        fresh.id = new_id();
        fresh.text = QObject::tr("on order").toStdString();
        // Hundredths: a rest of 33.34 is that and not 33.339999.
        fresh.percent = std::clamp(std::round(rest * 100.0) / 100.0, 0.0, 100.0);
        job.offer.instalments.push_back(fresh);
    });
}

void remove_instalment(JobSession& session, const std::string& instalment_id) {
    session.edit(QObject::tr("Remove an instalment"),
                 [&instalment_id](Job& job) { erase_id(job.offer.instalments, instalment_id); });
}

}  // namespace wg::ui

// Verbs about the client, the wish, the record and the photographs.

#include <QUuid>

#include "core/job/words.h"
#include "ui/common/edit_tools.h"
#include "ui/common/edits.h"

namespace wg::ui {

std::string new_id() {
    return QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
}

void set_number(JobSession& session, const std::string& number) {
    session.edit(QObject::tr("Change the job number"), [&](Job& job) { job.number = number; });
}

void set_title(JobSession& session, const std::string& title) {
    session.edit(QObject::tr("Change the title"), [&](Job& job) { job.title = title; });
}

void set_client(JobSession& session, const Client& client, const QString& merge_key) {
    session.edit(
        QObject::tr("Change the client"), [&](Job& job) { job.client = client; }, merge_key);
}

void set_survey(JobSession& session, const Survey& survey, const QString& merge_key) {
    session.edit(
        QObject::tr("Change the survey"), [&](Job& job) { job.survey = survey; }, merge_key);
}

void set_demand(JobSession& session, const Demand& demand, const QString& merge_key) {
    session.edit(
        QObject::tr("Change the demand"), [&](Job& job) { job.demand = demand; }, merge_key);
}

void set_state(JobSession& session, JobState state) {
    session.edit(QObject::tr("Set the state to '%1'").arg(QString::fromUtf8(text_of(state))),
                 [&](Job& job) { job.state = state; });
}

void set_notes(JobSession& session, const std::string& notes, const QString& merge_key) {
    session.edit(
        QObject::tr("Change the notes"), [&](Job& job) { job.notes = notes; }, merge_key);
}

void set_weather(JobSession& session, const std::string& climate_id) {
    session.edit(QObject::tr("Change the climate"), [&](Job& job) { job.weather = climate_id; });
}

void set_rule_set(JobSession& session, const std::string& rule_set_id) {
    session.edit(QObject::tr("Change the rule set"), [&](Job& job) { job.rule_set = rule_set_id; });
}

void set_price_list(JobSession& session, const std::string& price_list_id) {
    session.edit(QObject::tr("Change the price list"), [&](Job& job) { job.price_list = price_list_id; });
}

std::string append_reading(JobSession& session, Reading reading) {
    return session.append(std::move(reading));
}

std::string add_photograph(JobSession& session, Photograph photograph) {
    if (photograph.id.empty()) photograph.id = new_id();
    const std::string id = photograph.id;
    session.edit(QObject::tr("Add a photograph"), [&](Job& job) { job.photographs.push_back(photograph); });
    return id;
}

void set_photograph_caption(JobSession& session, const std::string& photograph_id, const std::string& caption) {
    session.edit(QObject::tr("Change a caption"), [&](Job& job) {
        if (Photograph* photograph = with_id(job.photographs, photograph_id)) photograph->caption = caption;
    });
}

void set_limits(JobSession& session, const AcceptanceLimits& limits) {
    session.edit(QObject::tr("Change the limits"), [&](Job& job) { job.limits = limits; });
}

void set_aftercare_terms(JobSession& session, const AftercareTerms& terms, const QString& merge_key) {
    session.edit(
        QObject::tr("Change warranty or contract"), [&](Job& job) { job.aftercare = terms; }, merge_key);
}

void remove_photograph(JobSession& session, const std::string& photograph_id) {
    session.edit(QObject::tr("Remove a photograph"), [&](Job& job) { erase_id(job.photographs, photograph_id); });
}

}  // namespace wg::ui

#include "ui/visit/visit_form.h"

#include <QDate>
#include <QLabel>
#include <QPushButton>

#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/visit/ground_form.h"
#include "ui/visit/guarded_edit.h"
#include "ui/visit/household_form.h"
#include "ui/visit/missing.h"
#include "ui/visit/rooms_form.h"
#include "ui/visit/supply_form.h"
#include "ui/visit/water_form.h"

namespace wg::ui {

VisitForm::VisitForm(QWidget* parent) : FormColumn(parent) {
    build_client();
    build_visit();
    build_place();
    build_horizon();
    build_demand();
    build_household();
    build_house();
    finish();
}

template <class T>
TextField* VisitForm::bound_text(const QString& key, const QString& label, T Job::*part, std::string T::*member,
                                 void (*verb)(JobSession&, const T&, const QString&)) {
    TextField* field = text(label, [this, part, member, verb](const QString& value) {
        if (session_ == nullptr) return;
        T changed = session_->job().*part;
        changed.*member = value.trimmed().toStdString();
        verb(*session_, changed, {});
    });
    fields_.insert(key, field);
    shows_.push_back([field, part, member](const Job& job) { field->set_value(qs(job.*part.*member)); });
    return field;
}

void VisitForm::survey_note(const QString& key, const QString& label, std::string Survey::*member) {
    NoteField* field = note(label, [this, member](const QString& value) {
        if (session_ == nullptr) return;
        Survey changed = session_->job().survey;
        changed.*member = value.trimmed().toStdString();
        set_survey(*session_, changed);
    });
    fields_.insert(key, field);
    shows_.push_back([field, member](const Job& job) { field->set_value(qs(job.survey.*member)); });
}

template <class T>
NumberField* VisitForm::bound_number(const QString& key, const QString& label, const QString& unit,
                                     const NumberField::Range& range, T Job::*part, double T::*member,
                                     void (*verb)(JobSession&, const T&, const QString&)) {
    NumberField* field = number(label, unit, range, [this, key, part, member, verb](std::optional<double> value) {
        if (session_ == nullptr || !value) return;
        T changed = session_->job().*part;
        changed.*member = *value;
        const QString why = refusal(session_->job(), [&](Job& job) { job.*part = changed; });
        if (why.isEmpty()) {
            verb(*session_, changed, {});
        } else if (auto* refused = qobject_cast<NumberField*>(fields_.value(key))) {
            refused->show_problem(why);
        }
    });
    fields_.insert(key, field);
    shows_.push_back([field, part, member](const Job& job) { field->set_value(job.*part.*member); });
    return field;
}

NumberField* VisitForm::location_number(const QString& key, const QString& label, const QString& unit,
                                        const NumberField::Range& range, double Location::*member) {
    NumberField* field = number(label, unit, range, [this, member](std::optional<double> value) {
        if (session_ == nullptr || !value) return;
        Location changed = session_->job().site.location;
        changed.*member = *value;
        set_location(*session_, changed);
    });
    fields_.insert(key, field);
    shows_.push_back([field, member](const Job& job) { field->set_value(job.site.location.*member); });
    return field;
}

void VisitForm::build_client() {
    heading(tr("Client"));
    bound_text(QStringLiteral("name"), tr("Name"), &Job::client, &Client::name, &set_client);
    bound_text(QStringLiteral("street"), tr("Street"), &Job::client, &Client::street, &set_client);
    pair_next();
    bound_text(QStringLiteral("postcode"), tr("Postcode"), &Job::client, &Client::postcode, &set_client);
    bound_text(QStringLiteral("town"), tr("Town"), &Job::client, &Client::town, &set_client);
    bound_text(QStringLiteral("phone"), tr("Telephone"), &Job::client, &Client::phone, &set_client);
    bound_text(QStringLiteral("email"), tr("E-mail"), &Job::client, &Client::email, &set_client);
    auto* customer = new QPushButton(tr("Show the customer"), this);
    customer->setProperty("role", QStringLiteral("link"));
    customer->setToolTip(tr("Saves the job and shows the client among the customers, with their other jobs"));
    add(customer);
    fields_.insert(QStringLiteral("customer"), customer);
    shows_.push_back([customer](const Job& job) { customer->setEnabled(!job.client.name.empty()); });
    connect(customer, &QPushButton::clicked, this, &VisitForm::customer_asked);
}

void VisitForm::build_visit() {
    heading(tr("Visit"));
    bound_text(QStringLiteral("surveyor"), tr("Surveyor"), &Job::survey, &Survey::surveyor, &set_survey);
    auto* problem = new QLabel(this);
    problem->setProperty("role", QStringLiteral("stop"));
    problem->setWordWrap(true);
    problem->hide();
    TextField* date = text(tr("Day of the visit (year-month-day)"), [this, problem](const QString& value) {
        if (session_ == nullptr) return;
        const QString day = value.trimmed();
        const bool good = day.isEmpty() || QDate::fromString(day, Qt::ISODate).isValid();
        problem->setText(tr("\u25b2 Not a day. Write it as 2026-05-31."));
        problem->setVisible(!good);
        if (!good) return;
        Survey changed = session_->job().survey;
        changed.visited_on = day.toStdString();
        set_survey(*session_, changed);
    });
    date->setPlaceholderText(QStringLiteral("2026-05-31"));
    add(problem);
    fields_.insert(QStringLiteral("visited_on"), date);
    fields_.insert(QStringLiteral("visited_on_problem"), problem);
    shows_.push_back([date](const Job& job) { date->set_value(qs(job.survey.visited_on)); });
    survey_note(QStringLiteral("access"), tr("Access: gate, keys, parking, ladder"), &Survey::access);
    QCheckBox* scaffold = check(tr("Scaffold needed"), [this](bool on) {
        if (session_ == nullptr) return;
        Survey changed = session_->job().survey;
        changed.scaffold_needed = on;
        set_survey(*session_, changed);
    });
    shows_.push_back([scaffold](const Job& job) { show_checked(scaffold, job.survey.scaffold_needed); });
    bound_text(QStringLiteral("present_heater"), tr("Present heater: make and plate"), &Job::survey,
               &Survey::present_heater, &set_survey);
    survey_note(QStringLiteral("roof_condition"), tr("Condition of roof and walls"), &Survey::roof_condition);
    survey_note(QStringLiteral("wishes"), tr("Client's wishes"), &Survey::wishes);
}

void VisitForm::build_place() {
    heading(tr("Place"));
    TextField* place = text(tr("Place name"), [this](const QString& value) {
        if (session_ == nullptr) return;
        Location changed = session_->job().site.location;
        changed.place_name = value.trimmed().toStdString();
        set_location(*session_, changed);
    });
    fields_.insert(QStringLiteral("place"), place);
    auto* assumed = new QLabel(tr("\u25b2 The position is assumed while the place has no name: a new job begins at "
                                  "that of its weather year. Enter name, latitude, longitude and altitude."),
                               this);
    assumed->setProperty("role", QStringLiteral("caution"));
    assumed->setWordWrap(true);
    add(assumed);
    fields_.insert(QStringLiteral("place_assumed"), assumed);
    shows_.push_back([place, assumed](const Job& job) {
        place->set_value(qs(job.site.location.place_name));
        assumed->setVisible(place_is_assumed(job));
    });
    pair_next();
    location_number(QStringLiteral("latitude"), tr("Latitude, north +"), tr("\u00b0"), {-90.0, 90.0, 4, 0.0, false},
                    &Location::latitude_deg);
    location_number(QStringLiteral("longitude"), tr("Longitude, east +"), tr("\u00b0"), {-180.0, 180.0, 4, 0.0, false},
                    &Location::longitude_deg);
    pair_next();
    location_number(QStringLiteral("altitude"), tr("Altitude"), tr("m"), {-430.0, 5500.0, 0, 0.0, false},
                    &Location::altitude_m);
    location_number(QStringLiteral("utc"), tr("Hours ahead of UTC"), tr("h"), {-12.0, 14.0, 2, 0.0, false},
                    &Location::utc_offset_h);
    CalmCombo* terrain = words_of<Terrain>(tr("Terrain, for the wind"), [this](Terrain value) {
        if (session_ != nullptr) set_terrain(*session_, value);
    });
    shows_.push_back([terrain](const Job& job) { terrain->show_data(QString::fromLatin1(key_of(job.site.terrain))); });
    pair_next();
    NumberField* wind =
        number(tr("Basic wind speed"), tr("m/s"), {1.0, 100.0, 1, 0.0, true}, [this](std::optional<double> value) {
            if (session_ != nullptr) set_basic_wind(*session_, value);
        });
    NumberField* snow = number(tr("Snow on the ground"), tr("kN/m\u00b2"), {0.0, 50.0, 2, 0.0, true},
                               [this](std::optional<double> value) {
                                   if (session_ != nullptr) set_ground_snow(*session_, value);
                               });
    fields_.insert(QStringLiteral("wind"), wind);
    fields_.insert(QStringLiteral("snow"), snow);
    shows_.push_back([wind](const Job& job) { wind->set_value(job.site.basic_wind_m_s); });
    shows_.push_back([snow](const Job& job) { snow->set_value(job.site.ground_snow_kn_m2); });
    auto* ground = new GroundForm(this);
    add(ground);
    take_in(ground);
    NumberField* up = number(tr("Sketch's top bears"), tr("\u00b0"), {0.0, 359.9, 1, 1.0, false},
                             [this](std::optional<double> value) {
                                 if (session_ != nullptr && value) set_sketch_up_azimuth(*session_, *value);
                             });
    fields_.insert(QStringLiteral("sketch_up"), up);
    shows_.push_back([up](const Job& job) { up->set_value(job.site.sketch_up_azimuth_deg); });
    NumberField* street = number(tr("Street lies at (bearing from the house)"), tr("\u00b0"),
                                 {0.0, 360.0, 0, 5.0, true}, [this](std::optional<double> value) {
                                     if (session_ != nullptr) set_street_azimuth(*session_, value);
                                 });
    fields_.insert(QStringLiteral("street_azimuth"), street);
    shows_.push_back([street](const Job& job) { street->set_value(job.site.street_azimuth_deg); });
}

void VisitForm::build_demand() {
    heading(tr("Hot water"));
    CalmCombo* cycle = words_of<TappingCycle>(tr("Daily draw-off cycle"), [this](TappingCycle value) {
        if (session_ == nullptr) return;
        Demand changed = session_->job().demand;
        changed.cycle = value;
        set_demand(*session_, changed);
    });
    fields_.insert(QStringLiteral("cycle"), cycle);
    shows_.push_back([cycle](const Job& job) { cycle->show_data(QString::fromLatin1(key_of(job.demand.cycle))); });
    pair_next();
    bound_number(QStringLiteral("set_point"), tr("Set point"), tr("\u00b0C"), {40.0, 65.0, 1, 1.0, false}, &Job::demand,
                 &Demand::set_point_c, &set_demand);
    bound_number(QStringLiteral("scale"), tr("Times the cycle"), QString(), {0.2, 3.0, 2, 0.05, false}, &Job::demand,
                 &Demand::scale, &set_demand);
    CalmCombo* fuel = words_of<Fuel>(tr("Present heater"), [this](Fuel value) {
        if (session_ == nullptr) return;
        Demand changed = session_->job().demand;
        changed.present_fuel = value;
        set_demand(*session_, changed);
    });
    shows_.push_back([fuel](const Job& job) { fuel->show_data(QString::fromLatin1(key_of(job.demand.present_fuel))); });
    bound_number(QStringLiteral("efficiency"), tr("Its efficiency over the year"), QString(),
                 {0.01, 10.0, 2, 0.01, false}, &Job::demand, &Demand::present_efficiency, &set_demand);
    words(tr("1: all the energy bought reaches the water. Below 1: losses of boiler and pipes."));
}

/// Folded until asked for: most visits need no more than the cycle.
void VisitForm::build_household() {
    household_ = new HouseholdForm(this);
    fold(QStringLiteral("household"), tr("Household and control"), household_);
    shows_.push_back([this](const Job& job) { household_->show_job(job); });
}

void VisitForm::build_house() {
    auto* supply = new SupplyForm(this);
    fold(QStringLiteral("electrics"), tr("Electrical supply"), supply);
    take_in(supply);
    water_ = new WaterForm(this);
    fold(QStringLiteral("water"), tr("Water supply and taps"), water_);
    take_in(water_);
    auto* rooms = new RoomsForm(this);
    fold(QStringLiteral("rooms"), tr("Rooms without pipes"), rooms);
    take_in(rooms);
    connect(rooms, &RoomsForm::draw_wanted, this, &VisitForm::draw_room_wanted);
    connect(rooms, &RoomsForm::room_wanted, this, &VisitForm::room_wanted);
}

void VisitForm::fold(const QString& key, const QString& title, QWidget* part) {
    const auto words_for = [title](bool open) {
        return (open ? QStringLiteral("\u25be ") : QStringLiteral("\u25b8 ")) + title;
    };
    auto* button = new QPushButton(words_for(false), this);
    button->setAccessibleName(title);
    button->setCheckable(true);
    add(button);
    part->hide();
    add(part);
    connect(button, &QPushButton::toggled, part, &QWidget::setVisible);
    connect(button, &QPushButton::toggled, button,
            [button, words_for](bool open) { button->setText(words_for(open)); });
    fields_.insert(key, button);
    folds_.emplace_back(button, part);
}

void VisitForm::take_in(SiteForm* part) {
    parts_.push_back(part);
    fields_.insert(part->fields());
    shows_.push_back([part](const Job& job) { part->show_job(job); });
}

void VisitForm::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    household_->set_session(session);
    for (SiteForm* part : parts_)
        part->set_session(session);
    setEnabled(session_ != nullptr);
    if (session_ == nullptr) return;
    connect(session_, &JobSession::job_changed, this, &VisitForm::refresh);
    refresh();
}

void VisitForm::refresh() {
    if (session_ == nullptr) return;
    for (const auto& show : shows_)
        show(session_->job());
}

bool VisitForm::go_to(const QString& key) {
    QWidget* wanted = fields_.value(key);
    if (wanted == nullptr) return false;
    for (const auto& [button, part] : folds_)
        if (part->isAncestorOf(wanted)) button->setChecked(true);
    wanted->setFocus(Qt::OtherFocusReason);
    return true;
}

}  // namespace wg::ui

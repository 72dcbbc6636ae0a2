#include "ui/visit/ground_form.h"

#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/house_edits.h"
#include "ui/common/job_session.h"

namespace wg::ui {

GroundForm::GroundForm(QWidget* parent)
    : SiteForm([](JobSession& session, const Site& site) { set_hill(session, site.hill); }, parent) {
    build_rules();
    build_hill();
}

void GroundForm::build_rules() {
    rules_ = choice(tr("Rules for wind, snow, fixings and tax"), [this](const QString& id) {
        if (session_ != nullptr) set_rule_set(*session_, id.toStdString());
    });
    rules_->setToolTip(tr("The national or the firm's values that this job is reckoned with"));
    fields_.insert(QStringLiteral("rule_set"), rules_);
    auto* note = new QLabel(this);
    note->setProperty("role", QStringLiteral("muted"));
    note->setWordWrap(true);
    note->setTextInteractionFlags(Qt::TextSelectableByMouse);
    add(note);
    fields_.insert(QStringLiteral("rule_set_note"), note);
    shows_.push_back([this, note](const Job& job) {
        rules_->show_data(qs(job.rule_set));
        if (session_ == nullptr) return;
        const auto& sets = session_->reference().rule_sets;
        const auto set = sets.find(job.rule_set);
        if (set == sets.end()) {
            note->setText(tr("\u25b2 The rule set '%1' is not here. Choose another.").arg(qs(job.rule_set)));
            return;
        }
        const QString source = tr("Source: %1.").arg(qs(set->second.source));
        note->setText(
            set->second.assumed
                ? tr("\u25c6 Assumed: not a national set. Check each value against local codes. %1").arg(source)
                : source);
    });
}

void GroundForm::set_session(JobSession* session) {
    SiteForm::set_session(session);
    rules_->clear();
    if (session_ == nullptr) return;
    for (const auto& [id, set] : session_->reference().rule_sets)
        rules_->addItem(qs(set.label), qs(id));
}

void GroundForm::build_hill() {
    bound_word<HillKind>(
        QStringLiteral("hill"), tr("The house stands on"),
        tr("A rise steeper than about 1 in 20 speeds the wind up over its crest"),
        [](auto& site) -> auto& { return site.hill.kind; });
    pair_next();
    NumberField* height = bound_number(
        QStringLiteral("hill_height"), tr("Crest over its foot"), tr("m"), {0.1, 3000.0, 1, 1.0, false},
        tr("Height of the crest over the foot of the rise, from the map's contour lines"),
        [](auto& site) -> auto& { return site.hill.height_m; });
    NumberField* up = bound_number(
        QStringLiteral("hill_upwind"), tr("Foot to crest, windward"), tr("m"), {0.1, 50000.0, 0, 10.0, false},
        tr("Level distance from the foot to the crest on the side the strongest wind comes from"),
        [](auto& site) -> auto& { return site.hill.upwind_length_m; });
    pair_next();
    NumberField* crest = bound_number(
        QStringLiteral("hill_crest"), tr("House beyond the crest"), tr("m"), {-50000.0, 50000.0, 0, 10.0, false},
        tr("Level distance from the crest to the house: down the lee side positive, before the crest negative"),
        [](auto& site) -> auto& { return site.hill.crest_distance_m; });
    NumberField* down = bound_number(
        QStringLiteral("hill_downwind"), tr("Crest to foot, lee side"), tr("m"), {0.1, 50000.0, 0, 10.0, false},
        tr("Level distance from the crest to the foot on the lee side"),
        [](auto& site) -> auto& { return site.hill.downwind_length_m; });
    shows_.push_back([this, height, up, crest, down](const Job& job) {
        const HillKind kind = job.site.hill.kind;
        for (NumberField* field : {height, up, crest})
            show_row(field, kind != HillKind::none);
        show_row(down, kind == HillKind::hill);
    });
}

}  // namespace wg::ui

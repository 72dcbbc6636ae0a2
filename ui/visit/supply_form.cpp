#include "ui/visit/supply_form.h"

#include "ui/common/house_edits.h"

namespace wg::ui {

SupplyForm::SupplyForm(QWidget* parent)
    : SiteForm([](JobSession& session, const Site& site) { set_electrics(session, site.electrics); }, parent) {
    words(tr("Read off plates and board. Opening the board is an electrician's work."));
    bound_word<EarthingSystem>(
        QStringLiteral("earthing"), tr("Earthing system"),
        tr("How the supply is earthed, IEC 60364-1: asked of the network company or found at the main earth terminal"),
        [](auto& site) -> auto& { return site.electrics.earthing; });
    CalmCombo* phases = choice(
        tr("Phases"), [this](const QString& key) { change([&](Site& site) { site.electrics.phases = key.toInt(); }); });
    phases->addItem(tr("not known"), QStringLiteral("0"));
    phases->addItem(tr("one"), QStringLiteral("1"));
    phases->addItem(tr("three"), QStringLiteral("3"));
    phases->setToolTip(tr("Live conductors that come into the house"));
    fields_.insert(QStringLiteral("phases"), phases);
    shows_.push_back([phases](const Job& job) { phases->show_data(QString::number(job.site.electrics.phases)); });
    pair_next();
    bound_number(
        QStringLiteral("voltage"), tr("Voltage of a one-phase circuit"), tr("V"), {90.0, 500.0, 0, 5.0, true},
        tr("Between the two conductors that a one-phase circuit uses"),
        [](auto& site) -> auto& { return site.electrics.voltage_v; });
    bound_number(
        QStringLiteral("frequency"), tr("Frequency"), tr("Hz"), {45.0, 65.0, 0, 10.0, true},
        tr("50 or 60 Hz: a compressor's speed and its data go with it"),
        [](auto& site) -> auto& { return site.electrics.frequency_hz; });
    pair_next();
    bound_number(
        QStringLiteral("main_fuse"), tr("Main fuse, each phase"), tr("A"), {1.0, 400.0, 0, 5.0, true},
        tr("Rating of the fuse or breaker before the meter"),
        [](auto& site) -> auto& { return site.electrics.main_fuse_a; });
    bound_number(
        QStringLiteral("used_current"), tr("In use at once, each phase"), tr("A"), {0.0, 400.0, 1, 1.0, true},
        tr("Largest current of what already runs at the same time, on the busiest phase"),
        [](auto& site) -> auto& { return site.electrics.used_a; });
    bound_check(
        QStringLiteral("surge"), tr("Surge protection in the distribution board"),
        tr("Surge protective devices of type 2, or 1 and 2, at the board"),
        [](auto& site) -> auto& { return site.electrics.surge_protection; });
    bound_check(
        QStringLiteral("lightning"), tr("Lightning protection on the house"),
        tr("Air terminals and down conductors: collector and pipes keep a distance from them"),
        [](auto& site) -> auto& { return site.electrics.lightning_protection; });
    NumberField* distance = bound_number(
        QStringLiteral("lightning_distance"), tr("Collector or its pipes to the nearest conductor"), tr("m"),
        {0.0, 100.0, 2, 0.1, true}, tr("The nearest point of air terminal or down conductor, measured straight"),
        [](auto& site) -> auto& { return site.electrics.lightning_distance_m; });
    shows_.push_back([this, distance](const Job& job) { show_row(distance, job.site.electrics.lightning_protection); });
}

}  // namespace wg::ui

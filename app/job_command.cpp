#include "app/job_command.h"

#include <QDateTime>
#include <QFile>
#include <QFileInfo>
#include <ostream>

#include "app/arguments.h"
#include "app/command_line.h"
#include "app/store_command.h"
#include "core/exchange/parcel.h"
#include "core/store/connection.h"
#include "core/store/personal.h"
#include "core/store/travel.h"

namespace wg::app {
namespace {

Instant right_now() {
    return {QDateTime::currentSecsSinceEpoch()};
}

int pack_job(store::Store& store, const QString& number, const QString& path, std::ostream& out, std::ostream& err) {
    const auto ids = store::PersonalData(store).ids_of({number.toStdString()});
    if (!ids) return bad_input(err, ids.problems());
    const auto outgoing = store::Travel(store).parcel_of(ids.value().front(), "Warmgable " WG_VERSION, right_now());
    if (!outgoing) return bad_input(err, outgoing.problems());
    const auto bytes = exchange::pack(outgoing.value().parcel);
    if (!bytes) return bad_input(err, bytes.problems());
    if (!write_file(path, bytes.value(), err)) return exit_failed;
    const exchange::Parcel& parcel = outgoing.value().parcel;
    out << "Written to " << path.toStdString() << ": job " << parcel.job.number << ", " << parcel.quotes.size()
        << " quotes, " << parcel.pictures.size() << " photographs\n";
    for (const std::string& line : outgoing.value().missing)
        err << "missing: " << line << '\n';
    return outgoing.value().missing.empty() ? exit_done : exit_stop;
}

int take_job(store::Store& store, const QString& path, std::ostream& out, std::ostream& err) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return bad_input(err, {Problem{path.toStdString(), "cannot be read: " + file.errorString().toStdString(),
                                       "Check the name and the rights on the file"}});
    if (file.size() > static_cast<qint64>(exchange::max_file_bytes))
        return bad_input(err, {Problem{path.toStdString(), "is larger than 1 GiB", "Check that it is the right file"}});
    const auto parcel = exchange::unpack(file.readAll().toStdString(), QFileInfo(path).fileName().toStdString());
    if (!parcel) return bad_input(err, parcel.problems());
    const auto done = store::Travel(store).take(parcel.value(), right_now());
    if (!done) return bad_input(err, done.problems());
    const store::Taken& taken = done.value();
    out << "Job " << taken.job.number
        << (taken.is_new    ? " is new here"
            : taken.changed ? " is put together"
                            : " is as it was")
        << ": " << taken.taken.size() << " changes, " << taken.quotes << " quotes, " << taken.pictures
        << " photographs\n";
    if (taken.firm_data > 0)
        out << "Prices, rules or equipment that it is planned with came with it: " << taken.firm_data << '\n';
    if (!taken.is_new) {
        for (const merge::Change& change : taken.taken)
            out << "  " << change.where << ": " << change.before << " -> " << change.after << " (" << change.seat_name
                << ")\n";
    }
    if (!taken.other_number.empty())
        out << "It came as number " << taken.other_number << ", which another job has here\n";
    for (const std::string& number : taken.likely_same)
        out << "The same client and house under another identity: job " << number << '\n';
    for (const merge::Open& open : taken.open)
        out << "open: " << merge::text_of(open) << '\n';
    for (const std::string& line : taken.left_out)
        err << "not taken: " << line << '\n';
    if (!taken.buildings_to_remake.empty())
        out << "Both sides changed a building: open the job and look at its roof and walls\n";
    return taken.open.empty() && taken.left_out.empty() ? exit_done : exit_stop;
}

}  // namespace

int run_job(const QStringList& arguments, std::ostream& out, std::ostream& err) {
    Arguments args;
    args.value_option(QStringLiteral("store"));
    QStringList words;
    QString error;
    if (!args.parse(arguments, words, error)) return bad_usage(err, error);
    const QString what = words.value(0);
    const bool pack = what == QLatin1String("pack");
    if (!pack && what != QLatin1String("take"))
        return bad_usage(err, QStringLiteral("job takes pack or take, found '%1'").arg(what));
    if (words.size() != (pack ? 3 : 2))
        return bad_usage(
            err, pack ? QStringLiteral("job pack needs a number and a file") : QStringLiteral("job take needs a file"));
    const QString place =
        args.parser.isSet(QStringLiteral("store")) ? args.parser.value(QStringLiteral("store")) : usual_store_path();
    if (pack && !store::is_address(place.toStdString()) && !QFileInfo::exists(place))
        return bad_input(err, {Problem{place.toStdString(), "there is no such store", "Name it with --store"}});
    const auto opened = store::Store::open_place(place.toStdString(), right_now(), seat_name());
    if (!opened) return bad_input(err, opened.problems());
    return pack ? pack_job(*opened.value(), words[1], words[2], out, err)
                : take_job(*opened.value(), words[1], out, err);
}

}  // namespace wg::app

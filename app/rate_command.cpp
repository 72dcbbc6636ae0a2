#include "app/rate_command.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <ostream>

#include "app/arguments.h"
#include "app/command_line.h"
#include "app/resources.h"
#include "core/equipment/codec.h"
#include "core/quantity/utf8.h"
#include "core/rating/calibrated.h"
#include "core/rating/declared_file.h"
#include "core/rating/report.h"

namespace wg::app {
namespace {

constexpr TappingCycle all_cycles[] = {TappingCycle::s, TappingCycle::m, TappingCycle::l, TappingCycle::xl,
                                       TappingCycle::xxl};
constexpr int most_collectors = 8;

template <class Model>
std::string ids_of(const std::vector<Model>& models) {
    std::string out;
    for (const Model& model : models)
        out += (out.empty() ? "" : ", ") + model.id;
    return out;
}

/// What the command was asked for; problems of all options at once.
class Request {
   public:
    Request(const QCommandLineParser& parser, plan::Reference& reference)
        : parser_(parser), catalogue_(reference.catalogue) {
        if (parser.isSet(QStringLiteral("equipment"))) add_equipment();
        find(QStringLiteral("collector"), catalogue_.collectors, item.collector);
        find(QStringLiteral("block"), catalogue_.blocks, item.block);
        find(QStringLiteral("cylinder"), catalogue_.cylinders, item.cylinder);
        number(QStringLiteral("count"), 1.0, most_collectors, "Give a whole number of plates", [this](double count) {
            item.collectors = static_cast<int>(count);
            if (std::floor(count) != count)
                problems.push_back({"--count", "is not a whole number", "Give a whole number of plates"});
        });
        read_sheet();
        number(QStringLiteral("set-point"), 40.0, 65.0, "Give degrees Celsius with a point, e.g. 55",
               [this](double set_point_c) { item.set_point_c = set_point_c; });
        choose_cycles();
        choose_airs();
        const auto fluid = reference.refrigerants.find(item.block.refrigerant);
        if (fluid != reference.refrigerants.end()) item.refrigerant = fluid->second.get();
    }

    rating::Item item;
    rating::Chamber chamber;
    rating::Test test;
    std::vector<TappingCycle> cycles{TappingCycle::m, TappingCycle::l, TappingCycle::xl};
    std::vector<rating::Air> airs{rating::air_7, rating::air_14};
    std::optional<rating::DeclaredSheet> sheet;
    std::vector<Problem> problems;

   private:
    std::string text_of_option(const QString& name) const { return parser_.value(name).toStdString(); }
    void note(const std::vector<Problem>& more) { problems.insert(problems.end(), more.begin(), more.end()); }

    void add_equipment() {
        const std::string name = text_of_option(QStringLiteral("equipment"));
        const Result<std::string> text = file_text(name);
        if (!text) return note(text.problems());
        const Result<Catalogue> more = catalogue_from_json(text.value(), name);
        if (!more) return note(more.problems());
        const auto add = [&](auto& known, const auto& added) {
            for (const auto& model : added) {
                const bool twice =
                    std::any_of(known.begin(), known.end(), [&](const auto& other) { return other.id == model.id; });
                if (twice)
                    problems.push_back({name, "the id '" + for_message(model.id) + "' is in the catalogue already",
                                        "Give the item its own id"});
                known.push_back(model);
            }
        };
        add(catalogue_.collectors, more.value().collectors);
        add(catalogue_.blocks, more.value().blocks);
        add(catalogue_.cylinders, more.value().cylinders);
    }

    template <class Model>
    void find(const QString& option, const std::vector<Model>& models, Model& found) {
        const std::string id = text_of_option(option);
        const auto at = std::find_if(models.begin(), models.end(), [&id](const Model& m) { return m.id == id; });
        if (at != models.end()) {
            found = *at;
            return;
        }
        problems.push_back({"--" + option.toStdString(), "the catalogue has no '" + for_message(id) + "'",
                            "Name one of: " + ids_of(models)});
    }

    template <class Take>
    void number(const QString& option, double low, double high, const std::string& remedy, const Take& take) {
        if (!parser_.isSet(option)) return;
        const Result<double> value = number_option(parser_, option, low, high, remedy);
        value ? take(value.value()) : note(value.problems());
    }

    void read_sheet() {
        if (!parser_.isSet(QStringLiteral("fit"))) return;
        const std::string name = text_of_option(QStringLiteral("fit"));
        const Result<std::string> text = file_text(name);
        if (!text) return note(text.problems());
        Result<rating::DeclaredSheet> read = rating::sheet_from_json(text.value(), name);
        if (!read) return note(read.problems());
        sheet = std::move(read).value();
        if (sheet->set_point_c) item.set_point_c = *sheet->set_point_c;
        if (sheet->air_speed_m_s) chamber.air_speed_m_s = *sheet->air_speed_m_s;
    }

    void choose_cycles() {
        if (!parser_.isSet(QStringLiteral("cycle"))) return;
        const std::string wanted = parser_.value(QStringLiteral("cycle")).toUpper().toStdString();
        cycles.clear();
        for (const TappingCycle cycle : all_cycles)
            if (wanted == rating::letters_of(cycle)) cycles = {cycle};
        if (cycles.empty())
            problems.push_back(
                {"--cycle", "'" + for_message(wanted) + "' is no draw-off cycle", "Give S, M, L, XL or XXL"});
    }

    void choose_airs() {
        if (!parser_.isSet(QStringLiteral("air"))) return;
        const std::string wanted = text_of_option(QStringLiteral("air"));
        airs.clear();
        for (const auto& [words, air] :
             {std::pair{"2", rating::air_2}, std::pair{"7", rating::air_7}, std::pair{"14", rating::air_14}})
            if (wanted == words) airs = {air};
        if (airs.empty())
            problems.push_back({"--air", "'" + for_message(wanted) + "' is no air of the rating test",
                                "Give 2, 7 or 14 (deg C dry bulb)"});
    }

    const QCommandLineParser& parser_;
    Catalogue& catalogue_;
};

int rate_request(const Request& request, const QString& equipment_path, bool as_json, std::ostream& out,
                 std::ostream& err) {
    const auto table = rating::rate_table(request.item, request.chamber, request.test, request.cycles, request.airs);
    if (!table) return bad_input(err, table.problems());
    std::optional<rating::Fit> fit;
    if (request.sheet) {
        rating::FitOptions options;
        options.chamber = request.chamber;
        Result<rating::Fit> made = rating::fit(request.item, request.sheet->values, options);
        if (!made) return bad_input(err, made.problems());
        fit = std::move(made).value();
    }
    if (as_json) {
        out << rating::to_json(request.item, request.chamber, request.test, table.value(), fit ? &*fit : nullptr);
    } else {
        out << rating::text_of(request.item, request.chamber, request.test, table.value());
        if (fit) out << rating::text_of(*fit);
    }
    if (fit && !equipment_path.isEmpty()) {
        const Result<std::string> file = rating::calibrated_equipment(*fit, request.sheet->source);
        if (!file) return bad_input(err, file.problems());
        if (!write_file(equipment_path, file.value(), err)) return exit_failed;
        if (!as_json) out << "\nCalibrated set written to " << equipment_path.toStdString() << '\n';
    }
    const auto& cells = table.value().cells;
    const bool finished =
        std::all_of(cells.begin(), cells.end(), [](const rating::Cell& cell) { return cell.rating.completed; });
    return finished && (!fit || fit->met) ? exit_done : exit_stop;
}

}  // namespace

int run_rate(const QStringList& arguments, std::ostream& out, std::ostream& err) {
    Arguments args;
    for (const char* name :
         {"collector", "count", "block", "cylinder", "cycle", "air", "set-point", "equipment", "fit", "out"})
        args.value_option(QString::fromLatin1(name));
    args.flag(QStringLiteral("json"));
    QStringList files;
    QString error;
    if (!args.parse(arguments, files, error)) return bad_usage(err, error);
    if (!files.isEmpty())
        return bad_usage(err, QStringLiteral("rate takes its files by option, found '%1'").arg(files.first()));
    for (const char* name : {"collector", "count", "block", "cylinder"}) {
        if (!args.parser.isSet(QString::fromLatin1(name)))
            return bad_usage(err, QStringLiteral("rate needs --%1").arg(QLatin1String(name)));
    }
    if (args.parser.isSet(QStringLiteral("out")) && !args.parser.isSet(QStringLiteral("fit")))
        return bad_usage(err, QStringLiteral("--out writes a calibrated set: it needs --fit"));
    Result<plan::Reference> reference = built_in_reference();
    if (!reference) return bad_input(err, reference.problems());
    const Request request(args.parser, reference.value());
    if (!request.problems.empty()) return bad_input(err, request.problems);
    return rate_request(request, args.parser.value(QStringLiteral("out")), args.parser.isSet(QStringLiteral("json")),
                        out, err);
}

}  // namespace wg::app

#include "core/plan/reference.h"

#include <nlohmann/json.hpp>
#include <utility>

#include "core/equipment/codec.h"
#include "core/equipment/fields.h"
#include "core/heatpump/cycle.h"
#include "core/weather/climate_table.h"

namespace wg::plan {
namespace {

constexpr int index_schema = 1;
constexpr const char* index_file = "index.json";

class Loader {
   public:
    explicit Loader(const ReadResource& read) : read_(read) {}

    Result<Reference> load() {
        const std::optional<std::string> text = read_(index_file);
        if (!text) {
            return Problem{index_file, "the list of reference files is missing",
                           "Install the program again, or point it to its resources folder"};
        }
        nlohmann::json document;
        if (!fields::parse(*text, index_file, index_schema, document, problems_)) return problems_;
        fields::Reader index(document, index_file, problems_);
        (void)index.whole("schema", index_schema, index_schema);
        for (const std::string& path : index.texts("equipment"))
            equipment(path);
        for (const std::string& path : index.texts("prices")) {
            add(path, parts::price_list_from_json, reference_.price_lists, "price list");
        }
        for (const std::string& path : index.texts("rules"))
            add(path, rule_set_from_json, reference_.rule_sets, "rule set");
        for (const std::string& path : index.texts("climates"))
            climates(path);
        for (const std::string& path : index.texts("refrigerants"))
            refrigerant(path);
        index.done();
        check_across_files();
        if (!problems_.empty()) return problems_;
        return std::move(reference_);
    }

   private:
    std::optional<std::string> text_of(const std::string& path) {
        std::optional<std::string> text = read_(path);
        if (!text) problems_.push_back({path, "the file is missing", "Put it back, or take it out of index.json"});
        return text;
    }

    template <class T>
    bool take(const Result<T>& result) {
        if (result) return true;
        problems_.insert(problems_.end(), result.problems().begin(), result.problems().end());
        return false;
    }

    /// Reads one file into a map by the value's own id.
    template <class T, class Parse>
    void add(const std::string& path, Parse parse, std::map<std::string, T>& to, const char* what) {
        const std::optional<std::string> text = text_of(path);
        if (!text) return;
        Result<T> result = parse(*text, path);
        if (!take(result)) return;
        const std::string id = result.value().id;
        if (!to.emplace(id, std::move(result).value()).second) {
            problems_.push_back(
                {path, std::string("the ") + what + " '" + id + "' stands in another file, too", "Give it its own id"});
        }
    }

    /// One climate as JSON, or a table of many as CSV, told apart by the file's ending.
    void climates(const std::string& path) {
        if (path.size() < 4 || path.compare(path.size() - 4, 4, ".csv") != 0) {
            add(path, weather::climate_from_json, reference_.climates, "climate");
            return;
        }
        const std::optional<std::string> text = text_of(path);
        if (!text) return;
        Result<std::vector<weather::Climate>> table = weather::climates_from_csv(*text, path);
        if (!take(table)) return;
        for (weather::Climate& climate : table.value()) {
            const std::string id = climate.id;
            if (reference_.climates.emplace(id, std::move(climate)).second) continue;
            problems_.push_back({path, "the climate '" + id + "' stands in another file, too", "Give it its own id"});
        }
    }

    template <class T>
    void append(const std::string& path, std::vector<T>& to, std::vector<T>& from) {
        for (T& item : from) {
            if (!item_files_.emplace(item.id, path).second) {
                problems_.push_back({path + ": \"" + item.id + "\"",
                                     "the id stands in " + item_files_[item.id] + ", too", "Give it its own id"});
                continue;
            }
            to.push_back(std::move(item));
        }
    }

    void equipment(const std::string& path) {
        const std::optional<std::string> text = text_of(path);
        if (!text) return;
        Result<Catalogue> result = catalogue_from_json(*text, path);
        if (!take(result)) return;
        Catalogue& found = result.value();
        append(path, reference_.catalogue.collectors, found.collectors);
        append(path, reference_.catalogue.blocks, found.blocks);
        append(path, reference_.catalogue.cylinders, found.cylinders);
        append(path, reference_.catalogue.fixing_methods, found.fixing_methods);
    }

    void refrigerant(const std::string& path) {
        const std::optional<std::string> text = text_of(path);
        if (!text) return;
        Result<std::shared_ptr<const refrigerant::Properties>> result = refrigerant::Properties::from_json(*text, path);
        if (!take(result)) return;
        for (const Refrigerant kind :
             {Refrigerant::r134a, Refrigerant::r290, Refrigerant::r1234yf, Refrigerant::r513a}) {
            if (result.value()->name() != name_of(kind)) continue;
            if (!reference_.refrigerants.emplace(kind, result.value()).second) {
                problems_.push_back(
                    {path, result.value()->name() + " stands in another file, too", "Keep one of the two"});
            }
            return;
        }
        problems_.push_back({path, "'" + result.value()->name() + "' is no refrigerant that blocks can name",
                             "Use R134a, R290, R1234yf or R513A"});
    }

    // What one file names and another must hold.
    void check_across_files() {
        for (const BlockModel& block : reference_.catalogue.blocks) {
            const auto table = reference_.refrigerants.find(block.refrigerant);
            if (!block.compressor || table == reference_.refrigerants.end()) continue;
            for (Problem problem : heatpump::problems_of(block, *table->second)) {
                problem.where = item_files_[block.id] + ": " + problem.where;
                problems_.push_back(std::move(problem));
            }
        }
        for (const CylinderModel& cylinder : reference_.catalogue.cylinders) {
            for (const std::string& block : cylinder.fits_blocks) {
                if (find_block(reference_.catalogue, block) != nullptr) continue;
                problems_.push_back({item_files_[cylinder.id] + ": \"" + cylinder.id + "\".fits_blocks",
                                     "names the block '" + block + "', which no file holds",
                                     "Correct the id, or leave the list empty for any block"});
            }
        }
    }

    const ReadResource& read_;
    Reference reference_;
    std::map<std::string, std::string> item_files_;  ///< catalogue id to the file it came from
    std::vector<Problem> problems_;
};

}  // namespace

Result<Reference> load_reference(const ReadResource& read) {
    return Loader(read).load();
}

Result<std::shared_ptr<const PreparedWeather>> weather_for(const Reference& reference, const std::string& climate_id) {
    const auto found = reference.climates.find(climate_id);
    if (found == reference.climates.end()) {
        // A few ids show the form; there are too many for one message.
        constexpr std::size_t shown = 5;
        std::string known;
        std::size_t count = 0;
        for (const auto& [id, climate] : reference.climates) {
            if (++count <= shown) known += (known.empty() ? "" : ", ") + id;
        }
        if (count > shown) known += " and " + std::to_string(count - shown) + " more";
        return Problem{"weather",
                       climate_id.empty() ? "no weather is named" : "there is no climate '" + climate_id + "'",
                       "Choose one of: " + known + "; or read a weather file"};
    }
    Result<weather::Year> year = weather::synthesise(found->second);
    if (!year) return year.problems();
    return prepared(std::move(year).value());
}

std::shared_ptr<const PreparedWeather> prepared(weather::Year year) {
    sky::PreparedYear ready = sky::prepare(year);
    return std::make_shared<const PreparedWeather>(PreparedWeather{std::move(year), std::move(ready)});
}

}  // namespace wg::plan

#include "core/job/upgrade.h"

#include <cassert>
#include <nlohmann/json.hpp>

#include "core/quantity/utf8.h"

namespace wg {
namespace {

using nlohmann::json;

std::string in_file(const std::string& file_name, const std::string& field) {
    return file_name.empty() ? field : file_name + ": " + field;
}

}  // namespace

const std::vector<JobUpgrader>& job_upgraders() {
    static const std::vector<JobUpgrader> steps;
    return steps;
}

std::optional<Problem> upgrade_job_tree(json& tree, const std::string& file_name,
                                        const std::vector<JobUpgrader>& upgraders, int newest) {
    assert(upgraders.size() + 1 == static_cast<std::size_t>(newest));
    const auto format = tree.is_object() ? tree.find("format") : tree.end();
    if (!tree.is_object() || format == tree.end() || *format != "warmgable-job") {
        return Problem{in_file(file_name, "format"), "this is not a job file: it lacks \"format\": \"warmgable-job\"",
                       "Choose a job file"};
    }
    const auto schema = tree.find("schema");
    // Upgraders and tests build trees with signed numbers; a parsed one is unsigned, and may be larger than any signed.
    const bool whole = schema != tree.end() && schema->is_number_integer();
    if (!whole || (!schema->is_number_unsigned() && schema->get<std::int64_t>() < 1) ||
        schema->get<std::uint64_t>() == 0) {
        return Problem{in_file(file_name, "schema"), "is missing or not a whole number from 1",
                       "The file is damaged; take an earlier copy"};
    }
    if (schema->get<std::uint64_t>() > static_cast<std::uint64_t>(newest)) {
        return Problem{in_file(file_name, "schema"),
                       "is " + for_message(schema->dump()) + "; this program knows schemas up to " +
                           std::to_string(newest) + ", so a newer program wrote the file",
                       "Open it with the newer program"};
    }
    for (int at = schema->get<int>(); at < newest; ++at) {
        if (const std::optional<std::string> why = upgraders[static_cast<std::size_t>(at) - 1](tree)) {
            return Problem{in_file(file_name, "schema"),
                           "the file of schema " + std::to_string(at) + " cannot be brought over: " + *why,
                           "Mend it with the program that wrote it"};
        }
        tree["schema"] = at + 1;
    }
    return std::nullopt;
}

}  // namespace wg

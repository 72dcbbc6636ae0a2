// The ZIP archive (ISO/IEC 21320-1: stored or deflated, not encrypted, one volume), in memory, by libzip.

#include <zip.h>

#include <memory>
#include <set>

#include "core/exchange/contents.h"
#include "core/quantity/utf8.h"

namespace wg::exchange {
namespace {

struct Discard {
    void operator()(zip_t* archive) const noexcept { zip_discard(archive); }
};
struct Release {
    void operator()(zip_source_t* source) const noexcept { zip_source_free(source); }
};
struct CloseEntry {
    void operator()(zip_file_t* file) const noexcept { zip_fclose(file); }
};
using Archive = std::unique_ptr<zip_t, Discard>;
using Source = std::unique_ptr<zip_source_t, Release>;
using OpenEntry = std::unique_ptr<zip_file_t, CloseEntry>;

std::vector<Problem> cannot_pack(const std::string& what) {
    return {{"the exchange file", what, "Try again with more memory free"}};
}

std::vector<Problem> refused(const std::string& where, std::string what) {
    return {{where, std::move(what), "Ask for the file to be exported and sent again"}};
}

/// Size, method, encryption and name, before a byte of it is unpacked.
std::vector<Problem> check_entry(const zip_stat_t& stat, const std::string& where, std::size_t& total) {
    constexpr zip_uint64_t needed = ZIP_STAT_NAME | ZIP_STAT_SIZE | ZIP_STAT_COMP_METHOD | ZIP_STAT_ENCRYPTION_METHOD;
    if ((stat.valid & needed) != needed) return refused(where, "has an entry that does not tell its name and size");
    const std::string name = stat.name;
    const EntryKind kind = kind_of(name);
    if (kind == EntryKind::unknown)
        return refused(where, "has an entry called " + for_message(name) + ", which is no part of a job");
    if (stat.encryption_method != ZIP_EM_NONE) return refused(where, "is encrypted (" + name + ")");
    if (stat.comp_method != ZIP_CM_STORE && stat.comp_method != ZIP_CM_DEFLATE)
        return refused(where, "is packed in a way this program does not read (" + name + ")");
    if (stat.size > most_bytes(kind) || stat.size > max_unpacked_bytes - total)
        return refused(where, "would unpack to more than a job may have (" + name + ")");
    total += stat.size;
    return {};
}

Result<std::string> read_entry(zip_t* archive, zip_uint64_t index, std::size_t size, const std::string& where) {
    const OpenEntry file(zip_fopen_index(archive, index, 0));
    if (file == nullptr) return refused(where, "cannot be unpacked");
    std::string bytes(size, '\0');
    std::size_t done = 0;
    while (done < size) {
        const zip_int64_t read = zip_fread(file.get(), bytes.data() + done, size - done);
        if (read <= 0) return refused(where, "is damaged");
        done += static_cast<std::size_t>(read);
    }
    // What is longer than it says is no honest file; at its end the archive's own sum is checked, too.
    char more = 0;
    if (zip_fread(file.get(), &more, 1) != 0) return refused(where, "is damaged or longer than it says");
    return bytes;
}

}  // namespace

Result<std::string> archive_of(const std::vector<Entry>& entries) {
    zip_error_t error;
    zip_error_init(&error);
    Source store(zip_source_buffer_create(nullptr, 0, 0, &error));
    if (store == nullptr) return cannot_pack("cannot be begun");
    zip_source_keep(store.get());
    Archive archive(zip_open_from_source(store.get(), ZIP_TRUNCATE, &error));
    if (archive == nullptr) {
        zip_source_free(store.get());
        return cannot_pack("cannot be begun");
    }
    for (const Entry& entry : entries) {
        Source bytes(zip_source_buffer(archive.get(), entry.bytes.data(), entry.bytes.size(), 0));
        if (bytes == nullptr) return cannot_pack("cannot take " + entry.name);
        const zip_int64_t index = zip_file_add(archive.get(), entry.name.c_str(), bytes.get(), ZIP_FL_ENC_UTF_8);
        if (index < 0) return cannot_pack("cannot take " + entry.name);
        (void)bytes.release();  // now the archive's
        const auto at = static_cast<zip_uint64_t>(index);
        // Photographs are compressed as they come.
        const bool picture = kind_of(entry.name) == EntryKind::picture;
        zip_set_file_compression(archive.get(), at, picture ? ZIP_CM_STORE : ZIP_CM_DEFLATE, 6);
        constexpr zip_uint16_t noon = 12U << 11U, first_of_2000 = (20U << 9U) | (1U << 5U) | 1U;
        zip_file_set_dostime(archive.get(), at, noon, first_of_2000, 0);  // equal parcels, equal bytes
    }
    if (zip_close(archive.get()) != 0) return cannot_pack("cannot be finished");
    (void)archive.release();
    zip_stat_t stat;
    if (zip_source_stat(store.get(), &stat) != 0 || (stat.valid & ZIP_STAT_SIZE) == 0 ||
        zip_source_open(store.get()) != 0)
        return cannot_pack("cannot be read back");
    std::string out(stat.size, '\0');
    const zip_int64_t read = zip_source_read(store.get(), out.data(), out.size());
    zip_source_close(store.get());
    if (read != static_cast<zip_int64_t>(out.size())) return cannot_pack("cannot be read back");
    return out;
}

Result<std::vector<Entry>> entries_of(std::string_view bytes, const std::string& file_name) {
    constexpr std::string_view local_header = "PK\x03\x04";
    if (bytes.substr(0, local_header.size()) != local_header)
        return {{{file_name, "is no exchange file of this program", "Choose a file that was exported as a job"}}};
    if (bytes.size() > max_file_bytes) return refused(file_name, "is larger than a job can be");
    zip_error_t error;
    zip_error_init(&error);
    Source source(zip_source_buffer_create(bytes.data(), bytes.size(), 0, &error));
    if (source == nullptr) return refused(file_name, "cannot be opened");
    const Archive archive(zip_open_from_source(source.get(), ZIP_RDONLY | ZIP_CHECKCONS, &error));
    if (archive == nullptr) return refused(file_name, "is damaged or cut short");
    (void)source.release();  // now the archive's
    const zip_int64_t count = zip_get_num_entries(archive.get(), 0);
    if (count < 1 || static_cast<std::size_t>(count) > max_entries)
        return refused(file_name, "has " + std::to_string(count) + " entries");

    std::vector<zip_stat_t> stats(static_cast<std::size_t>(count));
    std::set<std::string> names;
    std::size_t total = 0;
    for (std::size_t i = 0; i < stats.size(); ++i) {
        if (zip_stat_index(archive.get(), i, 0, &stats[i]) != 0) return refused(file_name, "is damaged");
        if (auto problems = check_entry(stats[i], file_name, total); !problems.empty()) return problems;
        if (!names.insert(stats[i].name).second)
            return refused(file_name, "has two entries called " + std::string(stats[i].name));
    }
    std::vector<Entry> out;
    out.reserve(stats.size());
    for (std::size_t i = 0; i < stats.size(); ++i) {
        const std::string name = stats[i].name;
        std::string where = file_name;
        where.append(": ").append(name);
        Result<std::string> read = read_entry(archive.get(), i, stats[i].size, where);
        if (!read) return read.problems();
        out.push_back({name, std::move(read.value())});
    }
    return out;
}

}  // namespace wg::exchange

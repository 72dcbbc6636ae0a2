#include "core/store/text_checks.h"

#include "core/quantity/utf8.h"

namespace wg::store {
namespace {

constexpr std::size_t longest_text_note = 2000;

}  // namespace

TextVersion text_version(const std::string& id, const std::string& content, const std::string& note) {
    TextVersion out;
    out.id = id;
    out.note = note;
    out.content = content;
    return out;
}

std::optional<Problem> refuse_note(const std::string& note, const std::string& name) {
    if (note.size() <= longest_text_note && is_utf8(note)) return std::nullopt;
    return Problem{name, "the note is longer than 2,000 characters", "Write it shorter"};
}

std::optional<Problem> refuse_text(const TextKind& kind, const TextVersion& text, const std::string& name) {
    const std::string one = kind.one;
    if (text.id.empty() || text.id.size() > longest_text_id || !is_utf8(text.id))
        return Problem{name, "has no id of 1 to 100 characters", "Give " + one + " a short id, e.g. " + kind.example};
    if (text.content.size() > kind.most_bytes)
        return Problem{name, "is longer than " + std::to_string(kind.most_bytes >> 20U) + " MiB", "Shorten its texts"};
    // Qt would drop a byte order mark, and the text would lose its hash: the first byte has to be the file's own.
    if (text.content.empty() || text.content.front() != '{')
        return Problem{name, std::string("does not begin as a ") + kind.kind + " file",
                       "Write " + one + " to a file again"};
    const Result<std::string> read = kind.id_in(text.content, name);
    if (!read) return read.problems().front();
    if (read.value() != text.id)
        return Problem{name, "calls itself '" + for_message(read.value()) + "'",
                       "Keep it under the id that stands in it"};
    return refuse_note(text.note, name);
}

}  // namespace wg::store

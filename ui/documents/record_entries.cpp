// Entries, photographs, signatures and chain of the record on paper.

#include <QDateTime>
#include <algorithm>

#include "core/commissioning/commissioning.h"
#include "core/job/record_chain.h"
#include "core/job/words.h"
#include "ui/common/format.h"
#include "ui/documents/entry_words.h"
#include "ui/documents/record_parts.h"

namespace wg::ui::paper {
namespace {

constexpr int thumbnails_across = 3;
constexpr double thumbnail_height = 44.0 * mm;
constexpr double thumbnail_gap = 3.0 * mm;
constexpr int thumbnail_px = 640;  ///< of the longer side: 300 dpi on paper
constexpr double signature_height = 20.0 * mm;

/// Entry that took the place of this one; nullptr: it stands.
const Reading* taken_place_of(const std::vector<Reading>& record, const Reading& entry) {
    const Reading* by = nullptr;
    for (const Reading& other : record)
        if (!entry.id.empty() && other.corrects_id == entry.id) by = &other;
    return by;
}

QString occasion_words(Occasion occasion) {
    return QString::fromUtf8(text_of(occasion));
}

/// Value, then what else was told.
QString said_words(const std::vector<Reading>& record, const Reading& entry) {
    QString text = entry_value(entry);
    const bool note_is_value = entry.kind == ReadingKind::remark || entry.kind == ReadingKind::serial_number ||
                               entry.kind == ReadingKind::photograph;
    if (!entry.note.empty() && !note_is_value) text += QLatin1Char('\n') + qs(entry.note);
    if (!entry.corrects_id.empty()) {
        const std::size_t at = entry_number(record, entry.corrects_id);
        text += at > 0 ? QStringLiteral("\nTakes the place of no. %1").arg(at)
                       : QStringLiteral("\nTakes the place of an entry that is not in the record");
    }
    return text;
}

struct Shown {
    QImage image;
    QString caption;
};

void thumbnails(Flow& flow, const std::vector<Shown>& photographs) {
    const double width = (flow.body_width() - (thumbnails_across - 1) * thumbnail_gap) / thumbnails_across;
    const Style small = flow.sheet().lettered({least_pt, false, false});
    for (std::size_t from = 0; from < photographs.size(); from += thumbnails_across) {
        const std::size_t to = std::min(photographs.size(), from + thumbnails_across);
        const std::vector<Shown> row(photographs.begin() + static_cast<std::ptrdiff_t>(from),
                                     photographs.begin() + static_cast<std::ptrdiff_t>(to));
        Table captions;
        captions.whole = true;
        captions.size_pt = least_pt;
        captions.columns = std::vector<Column>(thumbnails_across);
        QStringList cells;
        qsizetype lines = 1;
        for (const Shown& one : row) {
            cells += one.caption;
            lines = std::max(lines, wrap(one.caption, small, width - 4.0 * mm).size());
        }
        captions.rows.push_back({cells});
        flow.keep(thumbnail_height + static_cast<double>(lines + 3) * line_height(small));
        flow.picture(
            QStringLiteral("photographs"), thumbnail_height, 0.0, [row, width](QPainter& painter, const QRectF& frame) {
                painter.setRenderHint(QPainter::SmoothPixmapTransform);
                double x = frame.left();
                for (const Shown& one : row) {
                    const QSizeF size = QSizeF(one.image.size()).scaled(width, frame.height(), Qt::KeepAspectRatio);
                    painter.drawImage(QRectF(QPointF(x, frame.bottom() - size.height()), size), one.image);
                    x += width + thumbnail_gap;
                }
            });
        flow.table(captions);
    }
}

}  // namespace

QString hash_in_groups(const std::string& sha256) {
    QStringList groups;
    for (std::size_t at = 0; at < sha256.size(); at += 8)
        groups += qs(sha256.substr(at, 8));
    return groups.join(QLatin1Char(' '));
}

std::size_t entry_number(const std::vector<Reading>& record, const std::string& id) {
    for (std::size_t i = 0; i < record.size(); ++i)
        if (record[i].id == id) return i + 1;
    return 0;
}

void record_entries(Flow& flow, const PaperInput& input) {
    const std::vector<Reading>& record = input.job.record;
    flow.heading(QStringLiteral("Every entry, in the order made"));
    if (record.empty()) {
        flow.paragraph(QStringLiteral("Nothing is entered yet."));
        return;
    }
    flow.paragraph(
        QStringLiteral("Times are as at the place. An entry is never changed or taken out: a corrected one is "
                       "struck through and names what took its place."));
    Table table;
    table.columns = {{QStringLiteral("No."), 10.0, true},
                     {QStringLiteral("Time"), 18.0},
                     {QStringLiteral("What"), 46.0},
                     {QStringLiteral("Value"), 0.0},
                     {QStringLiteral("By, instrument"), 48.0}};
    QString group;
    for (std::size_t i = 0; i < record.size(); ++i) {
        const Reading& entry = record[i];
        const QDate day = entry_day(entry);
        const QString title = (day.isValid() ? date_words(day) : QStringLiteral("Day not told")) +
                              QStringLiteral(", ") + occasion_words(entry.occasion);
        if (title != group) table.rows.push_back({QStringList{title}, Row::Kind::group});
        group = title;
        Row row;
        const QString time = entry_time(entry);
        QString by = entry_by(entry);
        if (const Reading* later = taken_place_of(record, entry)) {
            row.struck = {1, 2, 3};
            by +=
                QStringLiteral("\nReplaced by no. %1, %2").arg(entry_number(record, later->id)).arg(entry_when(*later));
        }
        row.cells = {QString::number(i + 1), time.isEmpty() ? qs(entry.taken_at) : time, entry_kind(entry),
                     said_words(record, entry), by};
        table.rows.push_back(row);
    }
    flow.table(table);
}

void record_photographs(Flow& flow, const PaperInput& input) {
    std::vector<Shown> with_picture;
    QStringList without;
    const auto take = [&](const std::string& sha256, const QString& caption) {
        QImage image = input.picture && !sha256.empty() ? input.picture(sha256) : QImage();
        if (image.isNull()) {
            without +=
                sha256.empty() ? caption : QStringLiteral("%1 (SHA-256 %2)").arg(caption, qs(sha256.substr(0, 12)));
            return;
        }
        if (std::max(image.width(), image.height()) > thumbnail_px)
            image = image.scaled(thumbnail_px, thumbnail_px, Qt::KeepAspectRatio, Qt::SmoothTransformation);
        with_picture.push_back({image, caption});
    };
    for (const Reading& entry : commissioning::standing(input.job.record)) {
        if (entry.kind != ReadingKind::photograph) continue;
        take(entry.attachment_sha256, QStringLiteral("No. %1, %2: %3")
                                          .arg(entry_number(input.job.record, entry.id))
                                          .arg(entry_when(entry), entry_value(entry)));
    }
    for (const Photograph& photograph : input.job.photographs) {
        const QString words = photograph.caption.empty() ? qs(photograph.file_name) : qs(photograph.caption);
        take(photograph.sha256, QStringLiteral("Of the survey: %1").arg(words));
    }
    if (with_picture.empty() && without.isEmpty()) return;
    flow.heading(QStringLiteral("Photographs"));
    thumbnails(flow, with_picture);
    for (const QString& caption : without)
        flow.bullet(caption);
    flow.paragraph(QStringLiteral("Originals are kept with the job under the hash of their bytes."),
                   Style{least_pt, false, false});
}

void record_signatures(Flow& flow, const PaperInput& input) {
    flow.heading(QStringLiteral("Signatures"));
    QStringList roles = {QStringLiteral("Fitter"), QStringLiteral("Electrician"), QStringLiteral("Client")};
    for (const Reading& entry : commissioning::standing(input.job.record)) {
        if (entry.kind != ReadingKind::signature) continue;
        const QString role = qs(entry.subject);
        for (qsizetype i = roles.size() - 1; i >= 0; --i)
            if (roles[i].compare(role, Qt::CaseInsensitive) == 0) roles.removeAt(i);
        const QString words =
            QStringLiteral("%1: %2, %3 (entry no. %4)")
                .arg(role.isEmpty() ? QStringLiteral("Role not told") : role,
                     entry.taken_by.empty() ? QStringLiteral("nobody named") : qs(entry.taken_by), entry_when(entry))
                .arg(entry_number(input.job.record, entry.id));
        const QImage image =
            input.picture && !entry.attachment_sha256.empty() ? input.picture(entry.attachment_sha256) : QImage();
        if (image.isNull()) {
            flow.paragraph(entry.attachment_sha256.empty()
                               ? words
                               : QStringLiteral("%1. Drawn signature kept with the job, SHA-256 %2")
                                     .arg(words, qs(entry.attachment_sha256.substr(0, 12))));
            continue;
        }
        flow.picture(
            QStringLiteral("signature"), signature_height, 0.0,
            [image](QPainter& painter, const QRectF& frame) {
                const QSizeF size = QSizeF(image.size()).scaled(80.0 * mm, frame.height(), Qt::KeepAspectRatio);
                painter.setRenderHint(QPainter::SmoothPixmapTransform);
                painter.drawImage(QRectF(QPointF(frame.left(), frame.bottom() - size.height()), size), image);
            },
            words);
    }
    if (roles.isEmpty()) return;
    flow.sign_off(QStringLiteral("To sign on paper"),
                  QStringLiteral("The system was fitted, tested and handed over as this record says."), roles);
}

void record_chain(Flow& flow, const PaperInput& input) {
    const std::vector<Reading>& record = input.job.record;
    const ChainReport chain = check_chain(record);
    flow.heading(QStringLiteral("How to tell that nothing was changed"));
    const QString state = record.empty()       ? QStringLiteral("no entry yet")
                          : !chain.whole()     ? QStringLiteral("broken: see below")
                          : chain.chained == 0 ? QStringLiteral("no entry is chained: all come from an older program")
                          : chain.ends.size() > 1
                              ? QStringLiteral(
                                    "whole, and written on %1 copies apart: every end below has to stand on a "
                                    "signed print")
                                    .arg(chain.ends.size())
                              : QStringLiteral("whole: no chained entry was altered, put in or taken out");
    QStringList ends;
    for (const std::string& end : chain.ends)
        ends += hash_in_groups(end);
    flow.pairs(
        {{QStringLiteral("Entries"), QStringLiteral("%1, of these %2 chained and %3 from before there was a chain")
                                         .arg(record.size())
                                         .arg(chain.chained)
                                         .arg(chain.older)},
         {QStringLiteral("State of the chain"), state},
         {ends.size() > 1 ? QStringLiteral("Ends of the chain") : QStringLiteral("Head of the chain"),
          ends.isEmpty() ? QStringLiteral("none") : ends.join(QStringLiteral("; "))}},
        false);
    for (const ChainBreak& broken : chain.breaks) {
        flow.caution(Sign::stop, QStringLiteral("The chain is broken at entry no. %1").arg(broken.index + 1),
                     QStringLiteral("This entry %1.").arg(qs(broken.what)));
    }
    flow.paragraph(QStringLiteral(
        "Each entry carries the SHA-256 of its own content and names that of the entry before it. To check: "
        "print this record again from the same job. The head must be the same 64 digits as above, or stand "
        "in the chain before the new head when entries were added. The job file holds every hash; how they "
        "are formed is written in the description of the job format. Whoever alters an entry has to reckon "
        "all later hashes anew: the head on a signed print then no longer agrees."));
}

}  // namespace wg::ui::paper

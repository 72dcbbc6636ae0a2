#include "ui/fitting/verdict_list.h"

#include <QFontInfo>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QVBoxLayout>
#include <cmath>

#include "ui/common/format.h"
#include "ui/documents/entry_words.h"
#include "ui/drawing/readings_painter.h"
#include "ui/fitting/work_stages.h"

namespace wg::ui {
namespace {

double text_units_of(const QWidget& widget) {
    return QFontInfo(widget.font()).pixelSize();
}

/// The entries under the verdict that the chain speaks against.
std::vector<EntryBreak> breaks_under(const commissioning::Assessment& assessment, const EntryBreaks& breaks) {
    std::vector<EntryBreak> out;
    out.reserve(assessment.reading_ids.size());
    for (const std::string& id : assessment.reading_ids) {
        const auto at = breaks.find(id);
        if (at != breaks.end()) out.push_back(at->second);
    }
    return out;
}

}  // namespace

QString on_screen(const std::string& core_words) {
    static const QRegularExpression stamp(
        QStringLiteral("(\\d{4}-\\d{2}-\\d{2})T(\\d{2}:\\d{2})(:\\d{2})?(\\.\\d+)?(Z|[+-]\\d{2}:\\d{2})?"));
    return with_signs(core_words).replace(stamp, QStringLiteral("\\1 \\2"));
}

commissioning::Band on_screen(commissioning::Band band) {
    constexpr int most_decimals = 3;
    if (band.unit == "deg C") band.unit = "\u00b0C";
    if (!band.outside()) return band;
    const double limit = *band.read < band.low ? band.low : band.high;
    while (band.decimals < most_decimals && number(*band.read, band.decimals) == number(limit, band.decimals))
        ++band.decimals;
    return band;
}

Mark mark_of(commissioning::Verdict verdict) {
    switch (verdict) {
        case commissioning::Verdict::passed: return Mark::ready;
        case commissioning::Verdict::failed: return Mark::stop;
        case commissioning::Verdict::cannot_tell: return Mark::caution;
    }
    return Mark::note;
}

CurveView::CurveView(commissioning::Curve curve, QWidget* parent) : QWidget(parent), curve_(std::move(curve)) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("%1 over %2").arg(qs(curve_.y_label), qs(curve_.x_label)));
}

QSize CurveView::sizeHint() const {
    return {420, static_cast<int>(std::lround(text_units_of(*this) * 18.0))};
}

QSize CurveView::minimumSizeHint() const {
    return {240, sizeHint().height()};
}

void CurveView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    paint_readings(painter, curve_, QRectF(rect()).adjusted(2, 2, -2, -2), current_theme(), text_units_of(*this));
}

BandsView::BandsView(std::vector<commissioning::Band> bands, QWidget* parent)
    : QWidget(parent), bands_(std::move(bands)) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("Readings beside what was expected"));
}

QSize BandsView::sizeHint() const {
    return {420, static_cast<int>(std::ceil(bands_height(bands_.size(), text_units_of(*this)))) + 4};
}

QSize BandsView::minimumSizeHint() const {
    return {240, sizeHint().height()};
}

void BandsView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    paint_bands(painter, bands_, QRectF(rect()).adjusted(2, 2, -2, -2), current_theme(), text_units_of(*this));
}

VerdictColumn::VerdictColumn(QWidget* parent) : QWidget(parent) {
    outer_ = new QVBoxLayout(this);
    outer_->setContentsMargins(0, 0, 0, 0);
}

QWidget* VerdictColumn::label(const QString& text, const QString& role) {
    auto* made = new QLabel(text, inside_);
    made->setWordWrap(true);
    made->setTextFormat(Qt::PlainText);
    made->setTextInteractionFlags(Qt::TextSelectableByMouse);
    if (!role.isEmpty()) made->setProperty("role", role);
    lines_ += text;
    return made;
}

void VerdictColumn::add(const commissioning::Assessment& a, const EntryBreaks& breaks) {
    const std::vector<EntryBreak> altered = breaks_under(a, breaks);
    const Mark mark = altered.empty() ? mark_of(a.verdict) : Mark::stop;
    QString verdict = QString::fromUtf8(commissioning::word(a.verdict));
    QStringList entries;
    for (const EntryBreak& one : altered)
        entries << tr("entry %1, %2").arg(one.number).arg(one.word);
    if (of_the_chain(a) && !altered.empty()) verdict = altered.front().word;
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    auto* sign = new QLabel(inside_);
    sign->setPixmap(mark_icon(mark, current_theme(), 20).pixmap(20, 20));
    row->addWidget(sign, 0, Qt::AlignTop);
    auto* words = new QVBoxLayout;
    words->setSpacing(6);
    words->addWidget(label(QStringLiteral("%1: %2").arg(qs(a.subject), verdict),
                           mark == Mark::ready ? QStringLiteral("ready") : word_of(mark)));
    if (!altered.empty() && !of_the_chain(a))
        words->addWidget(label(
            tr("Proves nothing as it stands: it rests on %1. Read it again.").arg(entries.join(QStringLiteral("; "))),
            QStringLiteral("stop")));
    if (!a.words.empty()) words->addWidget(label(on_screen(a.words), QString()));
    if (!a.next.empty()) {
        // What to do now stands out of all that was found.
        auto* box = new QFrame(inside_);
        box->setProperty("role", QStringLiteral("panel"));
        auto* inner = new QVBoxLayout(box);
        inner->setContentsMargins(10, 8, 10, 8);
        inner->addWidget(label(tr("Now: %1").arg(on_screen(a.next)), QStringLiteral("heading")));
        words->addWidget(box);
    }
    if (!a.causes.empty()) {
        words->addWidget(label(a.causes.size() == 1 ? tr("Likely cause") : tr("Likely causes, likeliest first"),
                               QStringLiteral("muted")));
        int number = 0;
        for (const std::string& cause : a.causes)
            words->addWidget(label(QStringLiteral("%1. %2").arg(++number).arg(on_screen(cause)), QString()));
    }
    if (a.curve && !a.curve->read.empty()) words->addWidget(new CurveView(*a.curve, inside_));
    if (!a.bands.empty()) {
        std::vector<commissioning::Band> bands;
        for (const commissioning::Band& band : a.bands)
            bands.push_back(on_screen(band));
        words->addWidget(new BandsView(std::move(bands), inside_));
    }
    if (!a.working.key.empty()) {
        auto* working = new QPushButton(tr("Show working"), inside_);
        working->setProperty("role", QStringLiteral("link"));
        const QString key = qs(a.working.key);
        connect(working, &QPushButton::clicked, this, [this, key] { Q_EMIT working_asked(key); });
        words->addWidget(working, 0, Qt::AlignLeft);
    }
    row->addLayout(words, 1);
    column_->addLayout(row);
}

void VerdictColumn::set_assessments(const std::vector<commissioning::Assessment>& assessments, const QString& none,
                                    const EntryBreaks& breaks) {
    // A fresh inside each time: a dozen labels, rebuilt once a plan.
    delete inside_;
    inside_ = new QWidget(this);
    column_ = new QVBoxLayout(inside_);
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(16);
    lines_.clear();
    for (const commissioning::Assessment& one : assessments)
        add(one, breaks);
    if (assessments.empty() && !none.isEmpty()) column_->addWidget(label(none, QStringLiteral("muted")));
    column_->addStretch(1);
    outer_->addWidget(inside_);
    inside_->show();
}

VerdictList::VerdictList(QWidget* parent) : QScrollArea(parent) {
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    column_ = new VerdictColumn(this);
    connect(column_, &VerdictColumn::working_asked, this, &VerdictList::working_asked);
    setWidget(column_);
    set_assessments({});
}

void VerdictList::set_assessments(const std::vector<commissioning::Assessment>& assessments,
                                  const EntryBreaks& breaks) {
    column_->set_assessments(assessments,
                             tr("No verdict yet. Enter the readings as the work goes: pressure hold first."), breaks);
}

}  // namespace wg::ui

// The desk's preview: what it tells, and in the room that a small notebook leaves it at large type.

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QTest>
#include <algorithm>

#include "core/store/state_days.h"
#include "tests/ui/common/sample.h"
#include "tests/ui/desk/desks.h"
#include "ui/common/format.h"
#include "ui/common/theme.h"
#include "ui/desk/job_preview.h"

namespace wg::ui {
namespace preview_test {

TEST(JobPreviewTest, lines_and_sketch_stand_one_below_the_other_however_low_it_is) {
    apply_theme(*qApp, ThemeKind::light);
    Job job = sample::job();
    job.title = "Hot water from the south-west roof for the house, the wash house and the flat above the workshop";
    NextDue due;
    due.text = "Look over plate, fixings, roof passage, insulation and the block";
    JobPreview preview;
    preview.show_job(job, due);
    preview.show();
    for (const int height : {700, 440, 260}) {
        preview.resize(300, height);
        QCoreApplication::processEvents();
        QCoreApplication::processEvents();
        std::vector<QRect> parts;
        for (const QWidget* part : preview.findChildren<QWidget*>()) {
            const bool line = qobject_cast<const QLabel*>(part) != nullptr;
            if (!part->isVisible() || !(line || qobject_cast<const SketchThumbnail*>(part) != nullptr)) continue;
            parts.emplace_back(part->mapTo(&preview, QPoint(0, 0)), part->size());
            if (line && part->hasHeightForWidth())
                EXPECT_GE(part->height(), part->heightForWidth(part->width())) << "cut at " << height;
        }
        ASSERT_GE(parts.size(), 5U);
        std::sort(parts.begin(), parts.end(), [](const QRect& a, const QRect& b) { return a.top() < b.top(); });
        for (std::size_t i = 1; i < parts.size(); ++i)
            EXPECT_LE(parts[i - 1].bottom(), parts[i].top()) << "overlap at " << height;
        for (const QPushButton* button : preview.findChildren<QPushButton*>())
            if (button->isVisible())
                EXPECT_TRUE(preview.rect().contains(QRect(button->mapTo(&preview, QPoint(0, 0)), button->size())))
                    << "button out of sight at " << height;
    }
    qApp->setStyleSheet(QString());
}

TEST(JobPreviewTest, tells_since_when_a_job_is_in_its_state) {
    const auto store = desks::real_desk(1);
    Job job = store->load("00000000-0000-4000-8000-000000000500").value();
    job.state = JobState::offered;
    job = store->save(job, instant_from_iso8601("2027-03-09T10:00:00Z").value()).value();
    job.notes = "typed later";
    ASSERT_TRUE(store->save(job, instant_from_iso8601("2027-04-01T10:00:00Z").value()).ok());
    JobPreview preview;
    preview.show_job(job, {}, store::StateDays(*store).of(job.id).value());
    const auto labels = preview.findChildren<QLabel*>();
    const auto state = std::find_if(labels.begin(), labels.end(), [](const QLabel* label) {
        return label->text() == QStringLiteral("State: offered since %1").arg(day("2027-03-09"));
    });
    ASSERT_NE(state, labels.end());
    EXPECT_EQ((*state)->toolTip().count(QLatin1Char('\n')), 1) << "a line for each state";
}

}  // namespace preview_test
}  // namespace wg::ui

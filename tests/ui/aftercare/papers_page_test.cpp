#include "ui/aftercare/papers_page.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>

#include "tests/ui/documents/record_sample.h"
#include "ui/aftercare/aftercare_stage.h"
#include "ui/common/job_session.h"
#include "ui/documents/page_view.h"
#include "ui/documents/paper_pane.h"

namespace wg::ui {
namespace papers_page_test {

QToolButton* paper_button(PaperPane& pane, Paper paper) {
    for (auto* button : pane.findChildren<QToolButton*>())
        if (button->text() == title_of(paper)) return button;
    return nullptr;
}

TEST(PapersPage, service_sheet_booklet_and_record_take_turns_and_are_saved_as_shown) {
    JobSession session(sample::recorded_input().job, std::make_shared<const plan::Reference>(),
                       [](const Job& planned, const plan::Reference&, const plan::Options&) -> Result<plan::Plan> {
                           return sample::plan(planned);
                       });
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.settled(); }, 5000));
    AftercareStage stage;
    int asked = 0;
    stage.papers()->set_picture_source([&](const std::string& sha256) {
        ++asked;
        return sample::picture_of(sha256);
    });
    stage.set_session(&session);
    stage.show();
    stage.tabs()->setCurrentWidget(stage.papers());
    PaperPane& pane = stage.papers()->pane();
    EXPECT_EQ(pane.shown(), Paper::service_sheet);
    EXPECT_GE(pane.view().page_count(), 3);
    QToolButton* booklet = paper_button(pane, Paper::booklet);
    QToolButton* record = paper_button(pane, Paper::record);
    ASSERT_NE(booklet, nullptr);
    ASSERT_NE(record, nullptr);
    booklet->click();
    EXPECT_EQ(pane.shown(), Paper::booklet);
    record->click();
    EXPECT_EQ(pane.shown(), Paper::record);
    EXPECT_FALSE(booklet->isChecked()) << "one paper at a time";
    EXPECT_GT(asked, 0) << "pictures of the record are asked for";
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("record.pdf"));
    ASSERT_TRUE(pane.save_to(path));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF"));
    record->click();
    EXPECT_EQ(pane.shown(), Paper::service_sheet) << "the pane's own again";
    stage.set_session(nullptr);
}

}  // namespace papers_page_test
}  // namespace wg::ui

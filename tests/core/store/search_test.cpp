// The search finds the same on both databases.

#include <gtest/gtest.h>

#include <QStringList>

#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace search_test {

TEST_P(EachStore, EveryNameIsFoundByItsOwnBeginningsInAnyAlphabet) {
    const auto store = open();
    const std::vector<QString> names = {
        QStringLiteral(u"Straße 5a"),          QStringLiteral(u"Sinéad O'Neill"), QStringLiteral(u"Łódź Żółkiewska"),
        QStringLiteral(u"Müller-Lüdtke"),      QStringLiteral(u"Ångström & Søn"), QStringLiteral(u"č.p. 12/3"),
        QStringLiteral(u"Ωμέγα Παπαδόπουλος"), QStringLiteral(u"Жуков Пётр"),     QStringLiteral(u"北京 山田"),
        QStringLiteral(u"naïve café"),         QStringLiteral(u"CRÈME BRÛLÉE"),   QStringLiteral(u"x1y2 3z")};
    for (std::size_t i = 0; i < names.size(); ++i) {
        Job job = numbered_job(static_cast<unsigned>(i) + 1);
        job.client.name = names[i].toStdString();
        ASSERT_TRUE(store->save(job, at(1)).ok());
    }
    for (std::size_t i = 0; i < names.size(); ++i) {
        for (const QString& word : names[i].split(' ')) {
            for (qsizetype length = 1; length <= word.size(); ++length) {
                const std::string query = word.left(length).toStdString();
                const Result<std::vector<JobRow>> rows = store->list(query, 50, 0);
                ASSERT_TRUE(rows.ok()) << query;
                bool found = false;
                for (const JobRow& row : rows.value())
                    found = found || row.id == numbered_job(static_cast<unsigned>(i) + 1).id;
                EXPECT_TRUE(found) << query;
            }
        }
    }
    const auto count = [&store](const QString& query) { return store->count(query.toStdString()).value(); };
    EXPECT_EQ(count(QStringLiteral("ludtke")), 1) << "accents aside";
    EXPECT_EQ(count(QStringLiteral("angstrom")), 1);
    EXPECT_EQ(count(QStringLiteral("creme brulee")), 1) << "capitals aside";
    EXPECT_EQ(count(QStringLiteral(u"ЖУКОВ")), 1);
    EXPECT_EQ(count(QStringLiteral("muller-lud")), 1) << "parts in a row";
    EXPECT_EQ(count(QStringLiteral("ludtke-muller")), 0) << "and not the other way round";
    EXPECT_EQ(count(QStringLiteral("neill-street")), 0);
}

}  // namespace search_test
}  // namespace wg::store::test

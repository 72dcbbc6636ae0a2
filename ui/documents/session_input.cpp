#include "ui/documents/session_input.h"

#include <QBuffer>
#include <QImageReader>
#include <algorithm>

#include "ui/common/job_session.h"

namespace wg::ui {

std::shared_ptr<const PaperInput> input_of(const JobSession& session, const Firm& firm, const QDate& today,
                                           const std::function<QImage(const std::string& sha256)>& picture) {
    const auto plan = session.plan();
    if (plan == nullptr) return nullptr;
    auto input = std::make_shared<PaperInput>();
    input->job = session.job();
    input->plan = *plan;
    input->plan.job_revision = input->job.revision;
    input->firm = firm;
    input->printed_on = today;
    input->unsaved = session.dirty();
    input->picture = picture;
    return input;
}

QImage picture_for_paper(const std::string& bytes) {
    constexpr int most_px = 1280;  // of the longer side: what 300 dpi make of the largest picture on paper
    QByteArray held = QByteArray::fromStdString(bytes);
    QBuffer buffer(&held);
    if (!buffer.open(QIODevice::ReadOnly)) return {};
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (std::max(size.width(), size.height()) > most_px)
        reader.setScaledSize(size.scaled(most_px, most_px, Qt::KeepAspectRatio));
    return reader.read();
}

}  // namespace wg::ui

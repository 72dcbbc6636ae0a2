#include "ui/common/photo_edits.h"

#include <QObject>
#include <algorithm>

#include "ui/common/edit_tools.h"
#include "ui/common/edits.h"
#include "ui/common/job_session.h"

namespace wg::ui {

void set_photograph(JobSession& session, const Photograph& photograph, const QString& merge_key) {
    session.edit(
        QObject::tr("Change a photograph"),
        [&](Job& job) {
            if (Photograph* target = with_id(job.photographs, photograph.id)) *target = photograph;
        },
        merge_key);
}

std::string add_mark(JobSession& session, const std::string& photograph_id, PhotoMark mark) {
    if (mark.id.empty()) mark.id = new_id();
    const std::string id = mark.id;
    session.edit(mark.kind == MarkKind::arrow ? QObject::tr("Draw an arrow") : QObject::tr("Write on a photograph"),
                 [&](Job& job) {
                     if (Photograph* target = with_id(job.photographs, photograph_id)) target->marks.push_back(mark);
                 });
    return id;
}

void set_mark(JobSession& session, const std::string& photograph_id, const PhotoMark& mark, const QString& merge_key) {
    session.edit(
        QObject::tr("Move a mark"),
        [&](Job& job) {
            Photograph* photograph = with_id(job.photographs, photograph_id);
            if (photograph == nullptr) return;
            if (PhotoMark* target = with_id(photograph->marks, mark.id)) *target = mark;
        },
        merge_key);
}

void remove_mark(JobSession& session, const std::string& photograph_id, const std::string& mark_id) {
    session.edit(QObject::tr("Remove a mark"), [&](Job& job) {
        if (Photograph* photograph = with_id(job.photographs, photograph_id)) erase_id(photograph->marks, mark_id);
    });
}

std::string add_underlay(JobSession& session, const std::string& photograph_id, Point2 middle, double width_m,
                         double width_px, double height_px) {
    UnderlayPicture picture;
    picture.id = new_id();
    picture.photograph_id = photograph_id;
    picture.metres_per_pixel = width_m / std::max(width_px, 1.0);
    picture.origin = {middle.x_m - 0.5 * width_m, middle.y_m + 0.5 * height_px * picture.metres_per_pixel};
    session.edit(QObject::tr("Lay a picture under the sketch"),
                 [&](Job& job) { job.site.underlays.push_back(picture); });
    return picture.id;
}

void set_underlay(JobSession& session, const UnderlayPicture& picture, const QString& merge_key) {
    session.edit(
        QObject::tr("Change the picture under the sketch"),
        [&](Job& job) {
            if (UnderlayPicture* target = with_id(job.site.underlays, picture.id)) *target = picture;
        },
        merge_key);
}

void remove_underlay(JobSession& session, const std::string& underlay_id) {
    session.edit(QObject::tr("Remove the picture under the sketch"),
                 [&](Job& job) { erase_id(job.site.underlays, underlay_id); });
}

void remove_photograph_and_underlays(JobSession& session, const std::string& photograph_id) {
    session.edit(QObject::tr("Remove a photograph"), [&](Job& job) {
        erase_id(job.photographs, photograph_id);
        auto& list = job.site.underlays;
        list.erase(std::remove_if(list.begin(), list.end(),
                                  [&](const UnderlayPicture& u) { return u.photograph_id == photograph_id; }),
                   list.end());
    });
}

}  // namespace wg::ui

#pragma once
// The sky over the selected collector, below the drawing; it follows while the collector is dragged.

#include <QTimer>
#include <QWidget>
#include <optional>
#include <string>

#include "core/scene/moment.h"
#include "ui/drawing/sun_path_source.h"

class QLabel;

namespace wg::ui {

class JobSession;

class SunPathPane : public QWidget {
    Q_OBJECT
   public:
    explicit SunPathPane(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    /// Empty: the choice's first collector.
    void set_placement(const std::string& placement_id);
    /// Marks where the sun stands then; nullopt: no mark.
    void set_moment(const std::optional<scene::Moment>& moment);

    [[nodiscard]] const SunPathPicture& picture() const { return source_.picture(); }
    [[nodiscard]] QString words() const;
    [[nodiscard]] QSize minimumSizeHint() const override { return {240, 180}; }

   Q_SIGNALS:
    void pointed_at(const QString& text);

   protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

   private:
    void later();
    void refresh();
    [[nodiscard]] const Placement* placement() const;

    JobSession* session_ = nullptr;
    std::string placement_id_;
    std::optional<scene::Moment> moment_;
    SunPathSource source_;
    PictureView* view_ = nullptr;
    QLabel* words_ = nullptr;
    QTimer soon_;  ///< many changes in one go are one picture
};

}  // namespace wg::ui

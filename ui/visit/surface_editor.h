#pragma once
// Properties of one surface: how it lies, its outline, covering, rafters and keep-outs.

#include <string>

#include "core/job/job.h"
#include "ui/visit/form_builder.h"

namespace wg::ui {

class CornerTable;
class JobSession;
class KeepOutEditor;

class SurfaceEditor : public FormColumn {
    Q_OBJECT
   public:
    explicit SurfaceEditor(QWidget* parent = nullptr);
    void show_surface(JobSession* session, const std::string& surface_id, const std::string& keep_out_id = {});

    [[nodiscard]] QWidget* field(const QString& key) const { return fields_.value(key); }

   Q_SIGNALS:
    void building_wanted(const QString& building_id);

   private:
    void build_lie();
    void build_outline();
    void build_rafters();
    void build_carries();
    void refresh();
    /// Tries the change on the surface; a refusal is shown at `field` when there is one, and returned.
    QString apply(const std::function<void(Surface&)>& change, NumberField* field = nullptr);
    [[nodiscard]] const Surface* surface() const;
    NumberField* surface_number(const QString& label, const QString& unit, const NumberField::Range& range,
                                std::function<double&(Surface&)> member);
    void commit_size();

    JobSession* session_ = nullptr;
    std::string surface_id_;
    QHash<QString, QWidget*> fields_;
    std::vector<std::function<void(const Surface&)>> shows_;
    QWidget* part_of_ = nullptr;
    QLabel* part_words_ = nullptr;
    std::vector<QWidget*> shaped_fields_;  ///< the building's business while the surface is linked to one
    NumberField* width_ = nullptr;
    NumberField* height_ = nullptr;
    QLabel* no_rectangle_ = nullptr;
    CornerTable* corners_ = nullptr;
    std::vector<QWidget*> rafter_fields_;
    KeepOutEditor* keep_outs_ = nullptr;
};

}  // namespace wg::ui

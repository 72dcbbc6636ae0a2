#pragma once
// Roof windows, vents and other zones of a surface where nothing may be fixed.

#include <string>

#include "core/job/job.h"
#include "ui/visit/form_builder.h"

class QListWidget;
class QPushButton;

namespace wg::ui {

class JobSession;

class KeepOutEditor : public FormColumn {
    Q_OBJECT
   public:
    explicit KeepOutEditor(QWidget* parent = nullptr);
    void show_zones(JobSession* session, const std::string& surface_id, const std::string& keep_out_id);

   private:
    void refresh();
    void refresh_selected();
    [[nodiscard]] const Surface* surface() const;
    [[nodiscard]] const KeepOut* zone() const;
    void apply(const std::function<void(KeepOut&)>& change, NumberField* field);
    void commit_rectangle(NumberField* field);
    void add_zone();

    JobSession* session_ = nullptr;
    std::string surface_id_;
    std::string zone_id_;
    QListWidget* list_ = nullptr;
    QPushButton* remove_ = nullptr;
    TextField* label_ = nullptr;
    CalmCombo* kind_ = nullptr;
    NumberField* left_ = nullptr;
    NumberField* low_ = nullptr;
    NumberField* width_ = nullptr;
    NumberField* height_ = nullptr;
    NumberField* clearance_ = nullptr;
};

}  // namespace wg::ui

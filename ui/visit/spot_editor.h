#pragma once
// Properties of one spot for the cylinder: room, floor and the services there.

#include <string>

#include "core/job/job.h"
#include "ui/visit/form_builder.h"

namespace wg::ui {

class JobSession;

class SpotEditor : public FormColumn {
    Q_OBJECT
   public:
    explicit SpotEditor(QWidget* parent = nullptr);
    void show_spot(JobSession* session, const std::string& spot_id);
    [[nodiscard]] QWidget* field(const QString& key) const { return fields_.value(key); }

   private:
    void refresh();
    [[nodiscard]] const CylinderSpot* spot() const;
    void apply(const std::function<void(CylinderSpot&)>& change, NumberField* field = nullptr);
    void sized(const QString& label, const QString& unit, const NumberField::Range& range,
               double CylinderSpot::*member);
    void yes_no(const QString& label, bool CylinderSpot::*member);
    void build_cable();
    void service(const QString& label, Service CylinderSpot::*member);

    JobSession* session_ = nullptr;
    std::string spot_id_;
    QHash<QString, QWidget*> fields_;
    std::vector<std::function<void(const CylinderSpot&)>> shows_;
};

}  // namespace wg::ui

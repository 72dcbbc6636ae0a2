#pragma once
// Properties of one room: its name, floor and ceiling, outline, and whether the pipe run keeps out of it.

#include <string>

#include "core/job/job.h"
#include "ui/visit/form_builder.h"

namespace wg::ui {

class CornerTable;
class JobSession;

class RoomEditor : public FormColumn {
    Q_OBJECT
   public:
    explicit RoomEditor(QWidget* parent = nullptr);
    void show_room(JobSession* session, const std::string& room_id);
    [[nodiscard]] QWidget* field(const QString& key) const { return fields_.value(key); }

   private:
    void refresh();
    [[nodiscard]] const Room* room() const;
    QString apply(const std::function<void(Room&)>& change, NumberField* field = nullptr);
    void height(const QString& key, const QString& label, const QString& tip, double Room::*member);

    JobSession* session_ = nullptr;
    std::string room_id_;
    QHash<QString, QWidget*> fields_;
    std::vector<std::function<void(const Room&)>> shows_;
    CornerTable* corners_ = nullptr;
};

}  // namespace wg::ui

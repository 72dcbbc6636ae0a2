#pragma once
// What throws the most shade and when, in words: on the collector selected, else on the surface shown.

#include <QWidget>
#include <string>

class QLabel;

namespace wg::ui {

class JobSession;
class ShadeService;

class ShadeNote : public QWidget {
    Q_OBJECT
   public:
    explicit ShadeNote(ShadeService* shade, QWidget* parent = nullptr);
    void set_session(JobSession* session);
    void show_state(const std::string& surface_id, const std::string& placement_id);
    [[nodiscard]] QString words() const;

   protected:
    void showEvent(QShowEvent* event) override;

   private:
    void refresh();
    [[nodiscard]] QString words_of_collector() const;
    [[nodiscard]] QString words_of_surface() const;

    ShadeService* shade_;
    JobSession* session_ = nullptr;
    std::string surface_id_, placement_id_;
    QLabel* about_ = nullptr;
    QLabel* words_ = nullptr;
};

}  // namespace wg::ui

#pragma once
// Editor of one item: every field of the format in groups, with what is wrong beside each as it is typed.

#include <QHash>
#include <QScrollArea>
#include <vector>

#include "ui/equipment/item_text.h"

class QPlainTextEdit;

namespace wg::ui {

class CalmCombo;
class FieldBox;

class ItemForm : public QScrollArea {
    Q_OBJECT
   public:
    explicit ItemForm(QWidget* parent = nullptr);

    /// `id_open`: the id can still be chosen. Nothing is told to anybody.
    void show_item(const ItemDraft& draft, bool read_only, bool id_open);
    /// As it stands now, right or wrong.
    [[nodiscard]] ItemDraft draft() const;
    /// Beside the fields; what belongs to no field is returned.
    QStringList show_problems(const std::vector<FieldProblem>& problems);
    void go_to_first_problem();
    [[nodiscard]] FieldBox* box(const QString& key) const { return boxes_.value(key); }
    /// Which way the performance is stated: 0 by parameters or curves, 1 by coefficients.
    [[nodiscard]] CalmCombo* data_form() const { return data_form_; }

   Q_SIGNALS:
    void changed();

   private:
    struct Part {
        QWidget* widget = nullptr;
        DataForm form = DataForm::always;
    };
    void build(store::ItemKind kind);
    void add_group(const FieldGroup& group);
    void add_data_form(store::ItemKind kind);
    void show_parts();
    [[nodiscard]] bool used(const ItemField& field) const;

    ItemDraft shown_;
    bool built_ = false;
    QWidget* page_ = nullptr;
    CalmCombo* data_form_ = nullptr;
    std::vector<Part> parts_;
    std::vector<FieldBox*> order_;
    QHash<QString, FieldBox*> boxes_;
    QHash<QString, DataForm> forms_;
    QPlainTextEdit* note_ = nullptr;
};

}  // namespace wg::ui

#include "ui/rules/rule_entry.h"

#include <QLineEdit>

#include "ui/drawing/fields.h"
#include "ui/rules/rule_model.h"

namespace wg::ui {
namespace {

const RuleRow* row_behind(const QModelIndex& index) {
    const auto* model = qobject_cast<const RuleModel*>(index.model());
    return model == nullptr ? nullptr : model->row_at(index.row());
}

}  // namespace

QWidget* RuleEntry::createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const RuleRow* row = row_behind(index);
    if (row == nullptr) return nullptr;
    const bool figure = index.column() == RuleModel::column_figure;
    if (figure && (row->field->kind == RuleKind::word || row->field->kind == RuleKind::flag)) {
        auto* list = new CalmCombo(parent);
        if (row->field->kind == RuleKind::flag) {
            list->addItem(tr("yes"), QStringLiteral("yes"));
            list->addItem(tr("no"), QStringLiteral("no"));
        }
        for (const RuleChoice& choice : row->field->choices)
            list->addItem(choice.words, choice.key);
        connect(list, &QComboBox::activated, this, [this, list] {
            Q_EMIT const_cast<RuleEntry*>(this)->commitData(list);
            Q_EMIT const_cast<RuleEntry*>(this)->closeEditor(list);
        });
        return list;
    }
    QWidget* editor = QStyledItemDelegate::createEditor(parent, option, index);
    if (auto* line = qobject_cast<QLineEdit*>(editor)) {
        const QPersistentModelIndex place(index);
        connect(line, &QLineEdit::textEdited, this, [this, place](const QString& text) {
            const auto* model = qobject_cast<const RuleModel*>(place.model());
            if (model != nullptr) Q_EMIT judged(model->judged(place, text));
        });
    }
    return editor;
}

void RuleEntry::setEditorData(QWidget* editor, const QModelIndex& index) const {
    auto* list = qobject_cast<CalmCombo*>(editor);
    if (list == nullptr) {
        QStyledItemDelegate::setEditorData(editor, index);
        return;
    }
    list->show_data(index.data(Qt::EditRole));
}

void RuleEntry::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
    auto* list = qobject_cast<CalmCombo*>(editor);
    if (list == nullptr) {
        QStyledItemDelegate::setModelData(editor, model, index);
    } else if (list->currentIndex() >= 0) {
        model->setData(index, list->currentData(), Qt::EditRole);
    }
}

}  // namespace wg::ui

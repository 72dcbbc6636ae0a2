#include "ui/equipment/equipment_page.h"

#include <QDateTime>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QSplitter>
#include <QTabWidget>
#include <QVBoxLayout>

#include "core/equipment/codec.h"
#include "core/plan/reference_overlay.h"
#include "ui/common/elided_label.h"
#include "ui/common/format.h"
#include "ui/common/versions_view.h"
#include "ui/equipment/item_fields.h"
#include "ui/equipment/item_form.h"
#include "ui/equipment/item_list.h"
#include "ui/equipment/item_plot.h"

namespace wg::ui {
namespace {

constexpr int judge_delay_ms = 150;
constexpr int keep_delay_ms = 250;

Instant page_now() {
    return {QDateTime::currentSecsSinceEpoch()};
}

QString id_of_draft(const ItemDraft& draft) {
    return draft.item.value(QLatin1String("id")).toString();
}

}  // namespace

EquipmentPage::EquipmentPage(store::Store& store, std::shared_ptr<const plan::Reference> program, QWidget* parent)
    : QWidget(parent), store_(store), program_(std::move(program)) {
    auto* split = new QSplitter(Qt::Horizontal, this);
    split->setChildrenCollapsible(false);
    split->addWidget(make_list());
    split->addWidget(make_item());
    split->setStretchFactor(0, 0);
    split->setStretchFactor(1, 1);
    split->setSizes({420, 900});
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 12, 0, 0);
    column->addWidget(split);
    judge_delay_.setSingleShot(true);
    judge_delay_.setInterval(judge_delay_ms);
    connect(&judge_delay_, &QTimer::timeout, this, &EquipmentPage::judge);
    connect(list_, &ItemList::chosen, this, &EquipmentPage::show_current);
    connect(form_, &ItemForm::changed, this, &EquipmentPage::entered);
    keep_delay_.setSingleShot(true);
    keep_delay_.setInterval(keep_delay_ms);
    connect(&keep_delay_, &QTimer::timeout, this, &EquipmentPage::keep_entries);
    reload();
    bring_back();
}

QWidget* EquipmentPage::make_list() {
    auto* part = new QWidget(this);
    part->setMinimumWidth(368);
    auto* fresh = new QPushButton(tr("New"), part);
    auto* kinds = new QMenu(fresh);
    for (const store::ItemKind kind : {store::ItemKind::collector, store::ItemKind::block, store::ItemKind::cylinder,
                                       store::ItemKind::fixing_method})
        kinds->addAction(words_of(kind), this, [this, kind] { begin_new(kind); });
    fresh->setMenu(kinds);
    auto* import = new QPushButton(tr("Read a file"), part);
    auto* write = new QPushButton(tr("Write a file"), part);
    auto* writes = new QMenu(write);
    writes->addAction(tr("This item"), this, [this] { choose_export(false); });
    writes->addAction(tr("All items of the firm"), this, [this] { choose_export(true); });
    write->setMenu(writes);
    connect(import, &QPushButton::clicked, this, &EquipmentPage::choose_import);
    list_ = new ItemList(part);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(fresh);
    row->addWidget(import);
    row->addWidget(write);
    row->addStretch(1);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 8, 0);
    column->setSpacing(8);
    column->addLayout(row);
    column->addWidget(list_, 1);
    return part;
}

QWidget* EquipmentPage::make_item() {
    auto* part = new QWidget(this);
    title_ = new ElidedLabel(part);
    title_->setProperty("role", QStringLiteral("title"));
    state_ = new QLabel(part);
    state_->setProperty("role", QStringLiteral("muted"));
    state_->setWordWrap(true);
    problems_ = new QPushButton(part);
    problems_->setProperty("role", QStringLiteral("link"));
    const auto button = [part](const QString& text) { return new QPushButton(text, part); };
    save_ = button(tr("Save as a version"));
    save_->setProperty("role", QStringLiteral("primary"));
    drop_ = button(tr("Drop entries"));
    from_this_ = button(tr("New from this one"));
    withdraw_ = button(tr("Withdraw"));
    approve_ = button(tr("Approve"));
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    for (QPushButton* one : {save_, drop_, from_this_, approve_, withdraw_})
        row->addWidget(one);
    row->addStretch(1);
    row->addWidget(problems_);
    form_ = new ItemForm(part);
    form_->setMinimumWidth(400);
    side_ = new QTabWidget(part);
    side_->setDocumentMode(true);
    plot_ = new ItemPlot(side_);
    history_ = new VersionsView(tr("Approved by"), Qt::Vertical, side_);
    history_->setContentsMargins(8, 8, 0, 0);
    side_->addTab(plot_, tr("Curves"));
    side_->addTab(history_, tr("Versions"));
    side_->setMinimumWidth(232);
    auto* split = new QSplitter(Qt::Horizontal, part);
    split->setChildrenCollapsible(false);
    split->addWidget(form_);
    split->addWidget(side_);
    split->setStretchFactor(0, 4);
    split->setStretchFactor(1, 3);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(8, 0, 0, 0);
    column->setSpacing(4);
    column->addWidget(title_);
    column->addWidget(state_);
    column->addLayout(row);
    column->addWidget(split, 1);
    connect(save_, &QPushButton::clicked, this, [this] { save(page_now()); });
    connect(drop_, &QPushButton::clicked, this, &EquipmentPage::drop_entries);
    connect(from_this_, &QPushButton::clicked, this, &EquipmentPage::begin_from_this);
    connect(approve_, &QPushButton::clicked, this, &EquipmentPage::ask_approval);
    connect(problems_, &QPushButton::clicked, form_, &ItemForm::go_to_first_problem);
    connect(withdraw_, &QPushButton::clicked, this, [this] {
        const Known* known = current();
        if (known != nullptr && known->version) set_withdrawn(!known->version->withdrawn, page_now());
    });
    connect(side_, &QTabWidget::currentChanged, this, &EquipmentPage::show_history);
    return part;
}

void EquipmentPage::read_items() {
    known_.clear();
    order_.clear();
    const auto add = [this](const QString& key, Known known) {
        known_.insert(key, std::move(known));
        order_ << key;
    };
    const Result<store::EquipmentKept> kept = store::EquipmentBook(store_).current();
    if (!kept) Q_EMIT problem(qs(wg::text_of(kept.problems())));
    std::vector<plan::OwnItem> own;
    for (const store::EquipmentVersion& version : kept ? kept.value().items : std::vector<store::EquipmentVersion>()) {
        const auto read = drafts_of(QByteArray::fromStdString(version.content), version.item_id);
        if (!read || read.value().size() != 1) {
            // Saved by rules that have changed since: told, and kept in the store as it is.
            if (!read) Q_EMIT problem(qs(wg::text_of(read.problems())));
            continue;
        }
        add(qs(version.item_id), {read.value().front(), false, version});
        if (!version.withdrawn) own.push_back({version.item_id, version.content});
    }
    if (kept && !kept.value().damaged.empty()) Q_EMIT problem(qs(wg::text_of(kept.value().damaged)));
    plan::Overlay both = plan::with_own_items(*program_, own);
    if (!both.left_out.empty()) Q_EMIT problem(tr("Left out of plans: %1").arg(qs(wg::text_of(both.left_out))));
    all_ = std::move(both.reference);
    const auto programs = drafts_of(QByteArray::fromStdString(catalogue_to_json(program_->catalogue)), "program");
    if (!programs) return;
    for (const ItemDraft& draft : programs.value()) {
        if (!known_.contains(id_of_draft(draft))) add(id_of_draft(draft), {draft, true, std::nullopt});
    }
}

void EquipmentPage::reload() {
    if (judge_delay_.isActive()) judge();
    read_items();
    show_list(current_);
    show_current(list_->selected());
}

void EquipmentPage::show_list(const QString& key) {
    std::vector<ItemEntry> entries;
    const auto add = [this, &entries](const QString& of, const ItemDraft& draft, const Known* known) {
        ItemEntry entry;
        entry.key = of;
        entry.kind = draft.kind;
        entry.maker = draft.item.value(QLatin1String("maker")).toString();
        entry.name = name_of_draft(draft);
        entry.id = id_of_draft(draft);
        entry.invented = draft.item.value(QLatin1String("invented")).toBool();
        entry.unsaved = drafts_.contains(of);
        entry.program = known != nullptr && known->program;
        if (known != nullptr && known->version) {
            entry.withdrawn = known->version->withdrawn;
            entry.came = known->version->came;
            entry.approved_by = qs(known->version->approved_by);
        }
        entries.push_back(std::move(entry));
    };
    QStringList fresh;
    for (auto it = drafts_.constBegin(); it != drafts_.constEnd(); ++it) {
        if (!known_.contains(it.key())) fresh << it.key();
    }
    fresh.sort();
    for (const QString& one : fresh)
        add(one, drafts_.value(one), nullptr);
    for (const QString& one : order_) {
        const auto known = known_.constFind(one);
        add(one, drafts_.value(one, known->saved), &*known);
    }
    list_->show_entries(std::move(entries), key);
}

const EquipmentPage::Known* EquipmentPage::current() const {
    const auto found = known_.constFind(current_);
    return found == known_.constEnd() ? nullptr : &*found;
}

void EquipmentPage::show_current(const QString& key) {
    if (judge_delay_.isActive()) judge();
    current_ = key;
    const Known* known = current();
    const bool there = known != nullptr || drafts_.contains(key);
    form_->setVisible(there);
    side_->setVisible(there);
    if (there) {
        const bool fresh = known == nullptr;
        form_->show_item(fresh ? drafts_.value(key) : drafts_.value(key, known->saved),
                         known != nullptr && known->program, fresh);
    }
    judge();
    show_history();
}

void EquipmentPage::entered() {
    save_->setEnabled(false);
    judge_delay_.start();
    // Not put off by more typing.
    if (!keep_delay_.isActive()) keep_delay_.start();
}

}  // namespace wg::ui

#include "ui/offer/offer_stage.h"

#include <QDateTime>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTabWidget>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

#include "core/store/store.h"
#include "ui/common/edits.h"
#include "ui/common/empty_pane.h"
#include "ui/common/flow_layout.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/notice_bar.h"
#include "ui/comparison/choice_plans.h"
#include "ui/documents/paper_pane.h"
#include "ui/offer/agreed_bar.h"
#include "ui/offer/firm_dialog.h"
#include "ui/offer/firm_settings.h"
#include "ui/offer/issued_page.h"
#include "ui/offer/line_form.h"
#include "ui/offer/offer_edits.h"
#include "ui/offer/offer_input.h"
#include "ui/offer/offer_model.h"
#include "ui/offer/take_dialog.h"
#include "ui/offer/terms_page.h"

namespace wg::ui {
namespace {

/// While a drag goes on plans come faster than pages need to be laid out.
constexpr int refresh_delay_ms = 150;
constexpr int form_px = 260;
constexpr int widest_text_px = 220;

}  // namespace

OfferStage::OfferStage(store::Store* store, QWidget* parent) : StageWidget(parent), store_(store) {
    timer_ = new QTimer(this);
    timer_->setSingleShot(true);
    timer_->setInterval(refresh_delay_ms);
    connect(timer_, &QTimer::timeout, this, &OfferStage::refresh);
    notice_ = new NoticeBar(this);
    empty_ = new EmptyPane(QString(), QString(), QString(), this);
    tabs_ = new QTabWidget(this);
    tabs_->setDocumentMode(true);
    tabs_->addTab(make_quote_tab(), tr("Quote"));
    tabs_->addTab(make_lines_tab(), tr("Lines"));
    terms_ = new TermsPage(this);
    tabs_->addTab(terms_, tr("Terms"));
    issued_ = new IssuedPage(store, this);
    tabs_->addTab(issued_, tr("Issued quotes"));
    connect(issued_, &IssuedPage::quote_asked, this, [this] { tabs_->setCurrentIndex(0); });
    connect(issued_, &IssuedPage::problem, this, [this](const QString& text) { notice_->add(Mark::stop, text); });
    connect(issued_, &IssuedPage::said, this, &OfferStage::status_text);
    agreed_ = new AgreedBar(store, this);
    connect(issued_, &IssuedPage::refreshed, agreed_, &AgreedBar::reload);
    connect(agreed_, &AgreedBar::problem, this, [this](const QString& text) { notice_->add(Mark::stop, text); });
    issued_->set_look_source([this] { return paper_->look(); });
    stack_ = new QStackedWidget(this);
    stack_->addWidget(empty_);
    stack_->addWidget(tabs_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    notice_->lie_over({12, 12, 12, 12});
    column->addWidget(agreed_);
    column->addWidget(stack_, 1);
    connect(empty_, &EmptyPane::step_asked, this, [this] {
        if (session_ != nullptr && session_->job().choices.empty()) add_choice(*session_);
    });
}

QWidget* OfferStage::make_quote_tab() {
    paper_ = new PaperPane(Paper::quote, this);
    paper_->offer_in_list({Paper::cover_letter, Paper::parts_list, Paper::purchase_list, Paper::workings});
    auto* firm = new QPushButton(tr("Firm\u2026"), paper_);
    firm->setToolTip(tr("Name, address and logo at the top of every paper, its words and its numbers"));
    firm->setEnabled(store_ != nullptr);
    connect(firm, &QPushButton::clicked, this, &OfferStage::edit_firm);
    issue_ = new QPushButton(tr("Issue quote"), paper_);
    issue_->setProperty("role", QStringLiteral("primary"));
    connect(issue_, &QPushButton::clicked, this, &OfferStage::ask_and_issue);
    paper_->add_button(firm);
    paper_->add_button(issue_);
    connect(paper_, &PaperPane::failed, this, [this](const QString& text) { notice_->add(Mark::stop, text); });
    connect(paper_, &PaperPane::saved, this, [this](const QString& path) {
        Q_EMIT status_text(tr("%1 saved as %2").arg(title_of(paper_->shown()), path));
    });
    return paper_;
}

QWidget* OfferStage::make_lines_tab() {
    auto* tab = new QWidget(this);
    lines_ = new OfferModel(this);
    lines_view_ = new QTableView(tab);
    lines_view_->setModel(lines_);
    lines_view_->setSelectionBehavior(QAbstractItemView::SelectRows);
    lines_view_->setSelectionMode(QAbstractItemView::SingleSelection);
    lines_view_->setAlternatingRowColors(true);
    lines_view_->setShowGrid(false);
    lines_view_->setWordWrap(true);
    lines_view_->setTabKeyNavigation(false);
    lines_view_->verticalHeader()->hide();
    lines_view_->verticalHeader()->setMinimumSectionSize(36);
    lines_view_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    // The reason stands in the form beside the table, where there is room for it.
    lines_view_->hideColumn(OfferModel::column_why);
    lines_view_->horizontalHeader()->setSectionResizeMode(OfferModel::column_how, QHeaderView::Stretch);
    lines_view_->setAccessibleName(tr("Lines of the offer"));
    connect(lines_view_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &OfferStage::show_selected);
    form_ = new LineForm(tab);
    form_->setFixedWidth(form_px);
    connect(lines_view_, &QTableView::activated, form_, &LineForm::focus_first);
    totals_ = new QLabel(tab);
    totals_->setTextFormat(Qt::PlainText);
    totals_->setWordWrap(true);
    totals_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    save_parts_ = new QPushButton(tr("Save parts CSV"), tab);
    connect(save_parts_, &QPushButton::clicked, this, &OfferStage::ask_and_save_parts);
    save_purchase_ = new QPushButton(tr("Save purchase list\u2026"), tab);
    save_purchase_->setToolTip(
        tr("The purchase list and a paper to each supplier as PDF, under the next number of purchases; kept among the "
           "purchase lists of Prices, where what came is booked"));
    connect(save_purchase_, &QPushButton::clicked, this, &OfferStage::ask_and_save_purchase);
    take_ = new QPushButton(tr("Take from stock\u2026"), tab);
    take_->setToolTip(tr("What of the plan goes on the van: out of stock, once; or back into it"));
    connect(take_, &QPushButton::clicked, this, &OfferStage::ask_and_take);
    // In a second line where the window is too narrow for all of them.
    auto* buttons = new FlowLayout;
    buttons->setContentsMargins(0, 0, 0, 0);
    buttons->setSpacing(8);
    for (const auto& [kind, words] :
         {std::pair{OfferLineKind::part, tr("Add a part")}, std::pair{OfferLineKind::labour, tr("Add work")},
          std::pair{OfferLineKind::subsidy, tr("Add a subsidy")}}) {
        auto* button = new QPushButton(words, tab);
        connect(button, &QPushButton::clicked, this, [this, kind = kind] {
            if (session_ == nullptr) return;
            select_line(add_own_line(*session_, kind), {});
        });
        buttons->addWidget(button);
    }
    buttons->addWidget(take_);
    buttons->addWidget(save_purchase_);
    buttons->addWidget(save_parts_);
    auto* left = new QVBoxLayout;
    left->setSpacing(8);
    left->addWidget(lines_view_, 1);
    left->addLayout(buttons);
    left->addWidget(totals_);
    auto* scroll = new QScrollArea(tab);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFixedWidth(form_px + 24);
    scroll->setWidget(form_);
    auto* row = new QHBoxLayout(tab);
    row->setContentsMargins(16, 16, 16, 16);
    row->setSpacing(16);
    row->addLayout(left, 1);
    row->addWidget(scroll);
    return tab;
}

void OfferStage::select_line(const std::string& element_id, const std::string& item_id) {
    selected_element_ = element_id;
    selected_item_ = item_id;
    const int row = lines_->row_of(element_id, item_id);
    if (row >= 0) lines_view_->selectRow(row);
}

void OfferStage::show_selected() {
    if (filling_) return;
    const OfferRow* row = lines_->row(lines_view_->currentIndex().row());
    if (row != nullptr) {
        selected_element_ = row->line.element_id;
        selected_item_ = row->line.line.item_id;
    }
    form_->show_row(session_, row);
}

void OfferStage::set_session(JobSession* session) {
    if (session_ != nullptr) {
        disconnect(session_, nullptr, this, nullptr);
        ChoicePlans& plans = ChoicePlans::of(*session_);
        disconnect(&plans, nullptr, this, nullptr);
        plans.want(this, {});
    }
    session_ = session;
    selected_element_.clear();
    selected_item_.clear();
    terms_->set_session(session);
    notice_->clear();
    agreed_->set_session(session);
    issued_->set_session(session);
    if (session != nullptr) {
        was_fitted_ = is_fitted(session->job().state) || session->job().state == JobState::closed;
        ask_stock_ = false;
        connect(session, &JobSession::job_changed, this, &OfferStage::watch_state);
        connect(session, &JobSession::planning_changed, this, &OfferStage::watch_state);
        connect(session, &JobSession::plan_changed, this, &OfferStage::refresh_soon);
        connect(session, &JobSession::job_changed, this, &OfferStage::refresh_soon);
        connect(session, &JobSession::planning_changed, this, &OfferStage::refresh_soon);
        connect(session, &JobSession::saved_changed, this, &OfferStage::refresh_soon);
        connect(&ChoicePlans::of(*session), &ChoicePlans::changed, this, &OfferStage::refresh_soon);
    }
    refresh();
}

void OfferStage::showEvent(QShowEvent* event) {
    StageWidget::showEvent(event);
    refresh();
}

void OfferStage::hideEvent(QHideEvent* event) {
    StageWidget::hideEvent(event);
    if (session_ != nullptr) ChoicePlans::of(*session_).want(this, {});
}

void OfferStage::want_beside() {
    if (session_ == nullptr || !isVisible()) return;
    std::vector<std::string> ids = beside_on_offer(*session_);
    for (const std::string& id : agreed_->wants())
        if (std::find(ids.begin(), ids.end(), id) == ids.end()) ids.push_back(id);
    ChoicePlans::of(*session_).want(this, ids);
}

std::shared_ptr<PaperInput> OfferStage::input_now(const QDate& day) const {
    auto input = offer_input(*session_, read_firm(store_), day);
    if (input == nullptr || store_ == nullptr) return input;
    const auto quotes = store_->quotes(session_->job().id);
    const auto answers = store::QuoteBook(*store_).answers(session_->job().id);
    // Without it the purchase list tells no stock; saving one says why.
    static_cast<void>(take_stock(*store_, *input));
    if (quotes.ok() && answers.ok()) input->takes_place_of = qs(number_overtaken(quotes.value(), answers.value()));
    return input;
}

void OfferStage::refresh_soon() {
    if (isVisible() && !timer_->isActive()) timer_->start();
}

void OfferStage::refresh() {
    const auto plan = session_ == nullptr ? nullptr : session_->plan();
    if (plan == nullptr) {
        if (session_ == nullptr) {
            empty_->set_words(tr("No job open"), tr("Open a job from the desk."), QString());
        } else if (session_->job().choices.empty()) {
            empty_->set_words(
                tr("Nothing to offer yet"),
                tr("The quote and the parts list come from a choice: collector, heat pump and cylinder on this "
                   "site."),
                tr("Propose a choice"));
        } else if (session_->planning()) {
            empty_->set_words(tr("Working out the plan"), tr("The quote appears as soon as the figures are there."),
                              QString());
        } else {
            empty_->set_words(tr("There is no plan to quote"), session_->plan_problem(), QString());
        }
        paper_->set_input(nullptr);
        lines_->set_rows({}, QString());
        form_->show_row(nullptr, nullptr);
        stack_->setCurrentWidget(empty_);
        agreed_->compare();
        return;
    }
    want_beside();
    paper_->set_input(input_now(QDate::currentDate()));
    paper_->set_ready(session_->settled(), tr("The figures are still being worked out"));
    const QString why_not = why_not_issued();
    issue_->setEnabled(why_not.isEmpty());
    issue_->setToolTip(why_not.isEmpty() ? tr("Keep this quote as it is and mark it issued") : why_not);

    refresh_lines();
    terms_->refresh();
    issued_->refresh();
    stack_->setCurrentWidget(tabs_);
}

void OfferStage::refresh_lines() {
    const auto plan = session_->plan();
    const QString currency = qs(plan->currency);
    filling_ = true;
    lines_->set_rows(offer_rows(*plan), currency);
    for (int column = 0; column < OfferModel::column_how; ++column)
        lines_view_->resizeColumnToContents(column);
    lines_view_->setColumnWidth(OfferModel::column_text,
                                std::min(widest_text_px, lines_view_->columnWidth(OfferModel::column_text)));
    const int row = lines_->row_of(selected_element_, selected_item_);
    if (row >= 0) lines_view_->selectRow(row);
    filling_ = false;
    form_->show_row(session_, lines_->row(row));
    QStringList totals{tr("Labour %1").arg(quantity(plan->parts.labour_h, QStringLiteral("h"), 1))};
    if (plan->quote) {
        if (plan->quote->discount.minor != 0)
            totals += tr("Discount %1").arg(money(Money{} - plan->quote->discount, currency));
        totals += tr("Net %1").arg(money(plan->quote->net, currency));
        for (const quote::TaxSum& tax : plan->quote->taxes) {
            totals += tr("%1 %2: %3").arg(qs(tax.rate.label), percent(tax.rate.rate, 1), money(tax.tax, currency));
        }
        totals += tr("Total %1").arg(money(plan->quote->gross, currency));
        if (plan->offered && plan->offered->granted.minor != 0)
            totals += tr("To bring by the client %1").arg(money(plan->offered->to_bring, currency));
    } else {
        totals += tr("No price: see the findings");
    }
    totals_->setText(totals.join(QStringLiteral("    ")));
    save_parts_->setEnabled(!plan->parts.lines.empty());
    save_purchase_->setEnabled(store_ != nullptr && session_->settled() && !plan->parts.lines.empty());
    take_->setEnabled(save_purchase_->isEnabled());
}

void OfferStage::edit_firm() {
    if (store_ == nullptr) return;
    const auto logo = read_logo(*store_);
    const auto numbers = read_numbers(*store_);
    for (const auto* problems : {logo.ok() ? nullptr : &logo.problems(), numbers.ok() ? nullptr : &numbers.problems()})
        if (problems != nullptr) notice_->add(Mark::stop, qs(text_of(*problems)));
    FirmDialog dialog(read_firm(store_), logo.ok() ? logo.value() : QByteArray(),
                      numbers.ok() ? numbers.value() : NumberSettings(), this);
    if (dialog.exec() != QDialog::Accepted) return;
    const Result<bool> written[] = {write_firm(*store_, dialog.firm()), write_logo(*store_, dialog.logo()),
                                    write_numbers(*store_, dialog.numbers())};
    for (const auto& one : written)
        if (!one.ok()) notice_->add(Mark::stop, qs(text_of(one.problems())));
    refresh();
}

}  // namespace wg::ui

#include "ui/common/style_sheet.h"

#include <QFile>
#include <utility>
#include <vector>

namespace wg::ui {
namespace {

/// Lighter or darker towards the text colour: borders on hover, pressed faces.
QColor mixed(const QColor& a, const QColor& b, double share_of_b) {
    const auto blend = [share_of_b](int from, int to) {
        return static_cast<int>(static_cast<double>(from) + share_of_b * static_cast<double>(to - from));
    };
    return {blend(a.red(), b.red()), blend(a.green(), b.green()), blend(a.blue(), b.blue())};
}

// Placeholders stand in angle brackets: <accent>. Widgets opt into roles with the dynamic property "role".
const char* const sheet = R"(
* { outline: none; }
QToolTip { background: <panel>; color: <text>; border: 1px solid <muted>; padding: 6px 8px; }
QWidget#page, QStackedWidget#stages { background: <ground>; }

QPushButton, QToolButton {
    background: <panel>; color: <text>; border: 1px solid <line>; border-radius: 4px;
    min-height: 34px; padding: 0 12px;
}
QToolButton { padding: 0 10px; }
QPushButton:hover, QToolButton:hover { border-color: <muted>; background: <hover>; }
QPushButton:pressed, QToolButton:pressed { background: <pressed>; }
QPushButton:focus, QToolButton:focus { border: 2px solid <accent>; padding: 0 11px; min-height: 32px; }
QToolButton:focus { padding: 0 9px; }
QPushButton:checked, QToolButton:checked { background: <chosen>; border-color: <accent>; color: <text>; }
QPushButton:disabled, QToolButton:disabled { color: <faint>; background: <ground>; border-color: <line>; }
QPushButton[role="primary"] { background: <accent>; color: <on_accent>; border-color: <accent>; font-weight: 600; }
QPushButton[role="primary"]:hover { background: <accent_hover>; }
QPushButton[role="primary"]:focus { border: 2px solid <text>; }
QPushButton[role="primary"]:disabled { background: <ground>; border-color: <line>; color: <faint>; }
QPushButton[role="link"], QToolButton[role="link"] {
    background: transparent; border: 1px solid transparent; color: <accent>; text-align: left; padding: 0 4px;
    min-height: 34px;
}
QPushButton[role="link"]:hover, QToolButton[role="link"]:hover { text-decoration: underline; }
QPushButton[role="link"]:focus, QToolButton[role="link"]:focus { border: 2px solid <accent>; }
QToolButton[popupMode="1"], QToolButton[popupMode="2"] { padding-right: 26px; }
QToolButton::menu-indicator, QPushButton::menu-indicator { image: none; width: 0; height: 0;
    border-left: 4px solid <panel>; border-right: 4px solid <panel>; border-top: 5px solid <muted>;
    subcontrol-origin: padding; subcontrol-position: right center; right: 10px; }

QPushButton[touch="large"] { min-height: 48px; font-size: 12pt; }
QPushButton[touch="large"]:focus { min-height: 46px; }
QPushButton[touch="unit"] { min-height: 48px; min-width: 34px; padding: 0 6px; }
QLineEdit, QComboBox, QSpinBox, QDoubleSpinBox, QDateEdit, QDateTimeEdit, QTimeEdit {
    background: <panel>; color: <text>; border: 1px solid <line>; border-radius: 4px;
    min-height: 34px; padding: 0 8px; selection-background-color: <accent>; selection-color: <on_accent>;
}
QPlainTextEdit, QTextEdit, QTextBrowser {
    background: <panel>; color: <text>; border: 1px solid <line>; border-radius: 4px; padding: 4px;
    selection-background-color: <accent>; selection-color: <on_accent>;
}
QLineEdit:hover, QComboBox:hover, QAbstractSpinBox:hover, QPlainTextEdit:hover, QTextEdit:hover {
    border-color: <muted>;
}
QLineEdit:focus, QComboBox:focus, QAbstractSpinBox:focus, QDateEdit:focus, QDateTimeEdit:focus {
    border: 2px solid <accent>; padding: 0 7px; min-height: 32px;
}
QPlainTextEdit:focus, QTextEdit:focus, QTextBrowser:focus { border: 2px solid <accent>; padding: 3px; }
QLineEdit:disabled, QComboBox:disabled, QAbstractSpinBox:disabled { background: <ground>; color: <muted>; }
QLineEdit[role="search"] { min-height: 40px; font-size: 12pt; padding: 0 12px; }
QLineEdit[touch="large"], QComboBox[touch="large"], QDateTimeEdit[touch="large"] { min-height: 46px; font-size: 12pt; }
QLineEdit[touch="large"]:focus, QComboBox[touch="large"]:focus, QDateTimeEdit[touch="large"]:focus { min-height: 44px; }
QComboBox { padding-right: 26px; }
QComboBox::drop-down, QDateEdit::drop-down { border: none; width: 24px; }
QComboBox::down-arrow, QDateEdit::down-arrow { image: none; width: 0; height: 0; border-left: 5px solid <panel>;
    border-right: 5px solid <panel>; border-top: 6px solid <muted>; margin-right: 8px; }
QComboBox QAbstractItemView { background: <panel>; color: <text>; border: 1px solid <muted>;
    selection-background-color: <chosen>; selection-color: <text>; }
QComboBox QAbstractItemView::item { min-height: 34px; padding: 0 8px; }
QAbstractSpinBox::up-button, QAbstractSpinBox::down-button { width: 20px; border: none; background: transparent; }
QAbstractSpinBox::up-arrow { image: none; width: 0; height: 0; border-left: 4px solid <panel>;
    border-right: 4px solid <panel>; border-bottom: 5px solid <muted>; }
QAbstractSpinBox::down-arrow { image: none; width: 0; height: 0; border-left: 4px solid <panel>;
    border-right: 4px solid <panel>; border-top: 5px solid <muted>; }

QCheckBox, QRadioButton { min-height: 34px; spacing: 8px; color: <text>; border: 2px solid transparent;
    border-radius: 4px; }
QCheckBox:focus, QRadioButton:focus { border-color: <accent>; }
QCheckBox::indicator, QTreeView::indicator, QListView::indicator, QTableView::indicator {
    width: 16px; height: 16px; border: 2px solid <muted>; border-radius: 3px; background: <panel>;
}
QCheckBox::indicator:checked, QTreeView::indicator:checked, QListView::indicator:checked,
QTableView::indicator:checked { background: <accent>; border-color: <accent>; image: <tick>; }
QRadioButton::indicator { width: 16px; height: 16px; border: 2px solid <muted>; border-radius: 10px;
    background: <panel>; }
QRadioButton::indicator:checked { width: 8px; height: 8px; border: 6px solid <accent>; background: <panel>; }
QGroupBox { border: none; border-top: 1px solid <line>; margin-top: 28px; padding-top: 8px; font-weight: 600; }
QGroupBox::title { subcontrol-origin: margin; subcontrol-position: top left; padding: 4px 0; color: <text>; }

QTableView, QTreeView, QListView {
    background: <panel>; alternate-background-color: <ground>; color: <text>; border: 1px solid <line>;
    border-radius: 4px; gridline-color: <line>; selection-background-color: <chosen>; selection-color: <text>;
}
QTableView:focus, QTreeView:focus, QListView:focus { border: 2px solid <accent>; }
QTableView::item, QTreeView::item, QListView::item { padding: 0 8px; border: none; }
QListWidget::item { min-height: 34px; }
QTableView::item:selected, QTreeView::item:selected, QListView::item:selected {
    background: <chosen>; color: <text>;
}
QHeaderView { background: <panel>; }
QHeaderView::section { background: <panel>; color: <muted>; border: none; border-bottom: 1px solid <line>;
    padding: 8px; font-weight: 600; }
QTableCornerButton::section { background: <panel>; border: none; }

QMenuBar { background: <ground>; color: <text>; padding: 2px 8px; }
QMenuBar::item { padding: 8px 10px; border-radius: 4px; background: transparent; }
QMenuBar::item:selected { background: <chosen>; }
QMenu { background: <panel>; color: <text>; border: 1px solid <muted>; padding: 4px; }
QMenu::item { padding: 9px 28px 9px 24px; border-radius: 4px; }
QMenu::item:selected { background: <chosen>; color: <text>; }
QMenu::item:disabled { color: <faint>; }
QMenu::separator { height: 1px; background: <line>; margin: 4px 8px; }
QStatusBar { background: <ground>; color: <muted>; border-top: 1px solid <line>; }
QStatusBar::item { border: none; }

QTabWidget::pane { border: 1px solid <line>; background: <panel>; }
QTabBar { qproperty-drawBase: 0; }
QTabBar::tab { background: transparent; color: <muted>; padding: 9px 14px; border-bottom: 3px solid transparent; }
QTabBar::tab:selected { color: <text>; border-bottom-color: <accent>; }
QTabBar::tab:focus { color: <accent>; }
QSplitter::handle { background: <line>; }
QSplitter::handle:horizontal { width: 5px; margin: 0 2px; background: <line>; }
QSplitter::handle:vertical { height: 5px; margin: 2px 0; background: <line>; }
QSplitter::handle:hover { background: <accent>; }
QScrollArea { background: transparent; border: none; }
QScrollArea > QWidget > QWidget { background: transparent; }
QScrollBar:vertical { background: transparent; width: 12px; margin: 0; }
QScrollBar:horizontal { background: transparent; height: 12px; margin: 0; }
QScrollBar::handle { background: <scroll>; border-radius: 4px; margin: 2px; }
QScrollBar::handle:vertical { min-height: 36px; }
QScrollBar::handle:horizontal { min-width: 36px; }
QScrollBar::handle:hover { background: <muted>; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QAbstractScrollArea::corner { background: transparent; border: none; }
QSlider { min-height: 34px; }
QSlider::groove:horizontal { height: 4px; background: <line>; border-radius: 2px; }
QSlider::sub-page:horizontal { background: <accent>; border-radius: 2px; }
QSlider::handle:horizontal { background: <panel>; border: 2px solid <accent>; width: 18px; margin: -9px 0;
    border-radius: 11px; }
QSlider::handle:horizontal:focus { background: <accent>; }
QProgressBar { background: <ground>; border: 1px solid <line>; border-radius: 4px; min-height: 10px;
    text-align: center; color: <text>; }
QProgressBar::chunk { background: <accent>; border-radius: 3px; }
QDialog { background: <ground>; border: 1px solid <line>; }

QFrame[role="panel"], QWidget[role="panel"] { background: <panel>; border: 1px solid <line>; border-radius: 4px; }
QFrame[role="notice"] { background: <panel>; border: 2px solid <accent>; border-radius: 4px; }
QFrame[role="rule"] { background: <line>; border: none; max-height: 1px; min-height: 1px; }
QLabel { background: transparent; border: none; }
QLabel[role="title"] { font-size: 13pt; font-weight: 600; color: <text>; }
QLabel[role="heading"] { font-weight: 600; color: <text>; }
QLabel[role="muted"] { color: <muted>; }
QLabel[role="stop"] { color: <stop>; font-weight: 600; }
QLabel[role="caution"] { color: <caution>; font-weight: 600; }
QLabel[role="note"] { color: <note>; }
QLabel[role="ready"] { color: <ready>; font-weight: 600; }
)";

}  // namespace

QString style_sheet(const Theme& theme) {
    const QColor chosen = mixed(theme.panel, theme.accent, theme.kind == ThemeKind::dark ? 0.26 : 0.14);
    const std::vector<std::pair<QString, QColor>> colours = {
        {QStringLiteral("<ground>"), theme.ground},
        {QStringLiteral("<panel>"), theme.panel},
        {QStringLiteral("<text>"), theme.text},
        {QStringLiteral("<muted>"), theme.muted},
        {QStringLiteral("<faint>"), mixed(theme.muted, theme.ground, 0.35)},
        {QStringLiteral("<accent>"), theme.accent},
        {QStringLiteral("<accent_hover>"), mixed(theme.accent, theme.text, 0.2)},
        {QStringLiteral("<on_accent>"), theme.kind == ThemeKind::dark ? theme.ground : QColor(Qt::white)},
        {QStringLiteral("<line>"), theme.rule_line},
        {QStringLiteral("<scroll>"), mixed(theme.rule_line, theme.muted, 0.3)},
        {QStringLiteral("<hover>"), mixed(theme.panel, theme.text, 0.05)},
        {QStringLiteral("<pressed>"), mixed(theme.panel, theme.text, 0.12)},
        {QStringLiteral("<chosen>"), chosen},
        {QStringLiteral("<stop>"), theme.stop},
        {QStringLiteral("<caution>"), theme.caution},
        {QStringLiteral("<note>"), theme.note},
        {QStringLiteral("<ready>"), theme.ready},
    };
    QString text = QString::fromUtf8(sheet);
    for (const auto& [name, colour] : colours)
        text.replace(name, colour.name());
    const QString tick = theme.kind == ThemeKind::dark ? QStringLiteral(":/icons/tick-slate.svg")
                                                       : QStringLiteral(":/icons/tick-white.svg");
    // The icons are compiled into the program, not into each room: elsewhere a filled box has to do.
    text.replace(QStringLiteral("<tick>"),
                 QFile::exists(tick) ? QStringLiteral("url(%1)").arg(tick) : QStringLiteral("none"));
    return text;
}

}  // namespace wg::ui

#include "ui/window/about.h"

#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace wg::ui {

void show_about(QWidget* parent) {
    QDialog dialog(parent);
    dialog.setWindowTitle(QObject::tr("About Warmgable"));
    auto* column = new QVBoxLayout(&dialog);
    column->setContentsMargins(24, 24, 24, 16);
    column->setSpacing(12);
    auto* title = new QLabel(QObject::tr("Warmgable %1").arg(QApplication::applicationVersion()).trimmed(), &dialog);
    title->setProperty("role", QStringLiteral("title"));
    auto* text = new QLabel(
        QObject::tr(
            "Plans domestic hot water from a bare evaporator plate and a small heat pump on a cylinder: survey, "
            "layout, yield, offer, fitting and aftercare.\n\n"
            "Yields are estimates with a range, not promises. They follow from weather of past years, the "
            "equipment data given and the draw-off assumed.\n\n"
            "Fixings are checked by simplified rules of EN 1990, EN 1991 and EN 1995. They do not replace a "
            "structural engineer where the roof, its age or the exposure is out of the ordinary.\n\n"
            "Work on the refrigerant circuit and on the electrical supply is for people licensed to do it. "
            "National rules come from a rule set; one that is marked as assumed is not law anywhere.\n\n"
            "Equipment, people, places and prices marked as invented exist for demonstration only."),
        &dialog);
    text->setWordWrap(true);
    text->setMinimumWidth(460);
    text->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    auto* close_button = new QPushButton(QObject::tr("Close"), &dialog);
    close_button->setProperty("role", QStringLiteral("primary"));
    close_button->setDefault(true);
    column->addWidget(title);
    column->addWidget(text, 1);
    column->addWidget(close_button, 0, Qt::AlignRight);
    QObject::connect(close_button, &QPushButton::clicked, &dialog, &QDialog::accept);
    dialog.exec();
}

}  // namespace wg::ui

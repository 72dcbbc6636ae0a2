#include "ui/common/problem_dialog.h"

#include <QApplication>
#include <QClipboard>
#include <QDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace wg::ui {

void show_problems(QWidget* parent, const QString& title, const QString& introduction, const QString& problems) {
    QDialog dialog(parent);
    dialog.setWindowTitle(title);
    dialog.resize(640, 360);
    auto* column = new QVBoxLayout(&dialog);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(8);
    auto* words = new QLabel(introduction, &dialog);
    words->setWordWrap(true);
    auto* text = new QPlainTextEdit(problems, &dialog);
    text->setReadOnly(true);
    text->setAccessibleName(QObject::tr("Problems"));
    auto* copy = new QPushButton(QObject::tr("Copy"), &dialog);
    auto* close_button = new QPushButton(QObject::tr("Close"), &dialog);
    close_button->setProperty("role", QStringLiteral("primary"));
    close_button->setDefault(true);
    auto* foot = new QHBoxLayout;
    foot->addStretch();
    foot->addWidget(copy);
    foot->addWidget(close_button);
    column->addWidget(words);
    column->addWidget(text, 1);
    column->addLayout(foot);
    QObject::connect(copy, &QPushButton::clicked, &dialog, [&] { QApplication::clipboard()->setText(problems); });
    QObject::connect(close_button, &QPushButton::clicked, &dialog, &QDialog::accept);
    close_button->setFocus();
    dialog.exec();
}

}  // namespace wg::ui

#pragma once
// A paper handed to the desktop's own mail program, as a letter begun there: nothing is ever sent from here.

#include <QObject>
#include <QString>
#include <QStringList>
#include <QUrl>
#include <functional>

#include "core/quantity/result.h"

namespace wg::ui {

struct Mail {
    QString to;
    QString subject;
    QString words;
    QString attachment;  ///< path of a file
};

enum class HandedOver {
    with_attachment,     ///< the letter is begun, the file is on it
    without_attachment,  ///< the letter is begun; the file has to be put on it by hand
};

/// What cannot be handed over: an address that is none, or one that a program might take for something else.
[[nodiscard]] std::vector<Problem> problems_of(const Mail& mail);
/// For xdg-email (freedesktop.org, xdg-utils).
[[nodiscard]] QStringList xdg_email_arguments(const Mail& mail);
/// RFC 6068; it has no way to name a file.
[[nodiscard]] QUrl mailto_of(const Mail& mail);

/// Returns at once, however slow the mail program is; `done` is called later, unless `context` is gone by then. What
/// was asked for goes on when this program ends. Refused: what `problems_of` names, and where no mail program answers.
void hand_over(const Mail& mail, QObject* context, const std::function<void(const Result<HandedOver>&)>& done);

}  // namespace wg::ui

#pragma once
// Copies of papers for other programs to show or send: they name clients and prices, and need not stay.

#include <QDateTime>
#include <QString>
#include <string>

namespace wg::ui {

/// A paper's number as a file's name.
[[nodiscard]] QString paper_file_stem(const std::string& number);

/// Where a copy under this plain file name belongs, in a folder of the user's own that nobody else can read; the folder
/// is made.
[[nodiscard]] QString place_for_opened_paper(const QString& file_name);

/// Removes copies last written before that moment, also those that older programs laid beside that folder; without one:
/// all. Returns how many went. One that cannot be removed stays for the next time.
int remove_opened_papers(const QDateTime& written_before = {});

}  // namespace wg::ui

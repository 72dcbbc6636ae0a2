#pragma once
// Photographs by their hash: kept as they came, shown as smaller copies that are made off the window's thread.

#include <QByteArray>
#include <QHash>
#include <QImage>
#include <QObject>
#include <QSize>
#include <functional>
#include <string>
#include <string_view>

#include "core/quantity/result.h"

namespace wg::ui {

class PhotoShelf : public QObject {
    Q_OBJECT
   public:
    using Read = std::function<Result<std::string>(const std::string& sha256)>;
    using Keep = std::function<Result<std::string>(std::string_view bytes)>;
    /// Both are called on the window's thread only: a store serves one.
    PhotoShelf(Read read, Keep keep, QObject* parent = nullptr);

    /// Keeps a file's bytes; their hash. Problem: the file cannot be read, or is refused.
    [[nodiscard]] Result<std::string> keep_file(const QString& path);
    [[nodiscard]] Result<std::string> keep_bytes(const QByteArray& bytes);
    /// A copy of at most `longest_px` on its longer side, the right way up; null until it is there, then `loaded` is
    /// emitted.
    [[nodiscard]] QImage picture(const std::string& sha256);
    /// Of the original, the right way up; empty until the picture is there.
    [[nodiscard]] QSize size_of(const std::string& sha256) const;
    /// Why there is no picture; empty: there is one, or it is on its way.
    [[nodiscard]] QString problem(const std::string& sha256) const;

    static constexpr int longest_px = 2400;

   Q_SIGNALS:
    void loaded(const QString& sha256);

   private:
    struct Entry {
        QImage image;
        QSize size;
        QString problem;
        bool done = false;
    };
    void load(const std::string& sha256);

    Read read_;
    Keep keep_;
    QHash<QString, Entry> entries_;
};

}  // namespace wg::ui

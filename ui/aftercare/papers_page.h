#pragma once
// Papers of the time after: service sheet, hand-over booklet, record.

#include <QImage>
#include <QPointer>
#include <QWidget>
#include <functional>
#include <string>

#include "ui/documents/documents.h"

namespace wg::ui {

class JobSession;
class NoticeBar;
class PaperPane;

class PapersPage : public QWidget {
    Q_OBJECT
   public:
    explicit PapersPage(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    void set_firm_source(std::function<Firm()> source);
    /// Photographs and signatures by hash; without it captions stand alone.
    void set_picture_source(std::function<QImage(const std::string& sha256)> source);
    /// Lays the paper out anew, while it is looked at.
    void refresh();
    [[nodiscard]] PaperPane& pane() { return *pane_; }

   Q_SIGNALS:
    void status_text(const QString& text);

   protected:
    void showEvent(QShowEvent* event) override;

   private:
    QPointer<JobSession> session_;
    std::function<Firm()> firm_;
    std::function<QImage(const std::string&)> picture_;
    NoticeBar* notice_ = nullptr;
    PaperPane* pane_ = nullptr;
};

}  // namespace wg::ui

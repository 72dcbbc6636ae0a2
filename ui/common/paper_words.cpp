#include "ui/common/paper_words.h"

#include <QTranslator>

// Outside any namespace, as Qt asks: the resource sits in this static library.
static void init_paper_words() {
    Q_INIT_RESOURCE(paper_words);
}

namespace wg::ui {
namespace {

thread_local Language paper_language = Language::english;

/// Never installed in the application: windows stay as they are.
struct Words {
    QTranslator translator;
    explicit Words(const char* file) {
        init_paper_words();
        if (!translator.load(QLatin1String(":/translations/") + QLatin1String(file)))
            qWarning("%s is missing from the program", file);
    }
    [[nodiscard]] QString find(const char* english) const { return translator.translate("paper", english); }
};

const Words* words_of(Language language) {
    switch (language) {
        case Language::english: return nullptr;
        case Language::spanish: {
            static const Words spanish("paper_es.qm");
            return &spanish;
        }
        case Language::german: {
            static const Words german("paper_de.qm");
            return &german;
        }
    }
    return nullptr;
}

}  // namespace

PaperLanguage::PaperLanguage(Language language) noexcept : before_(paper_language) {
    paper_language = language;
}

PaperLanguage::~PaperLanguage() {
    paper_language = before_;
}

Language PaperLanguage::now() noexcept {
    return paper_language;
}

QString say(const char* english) {
    const Words* words = words_of(paper_language);
    const QString found = words == nullptr ? QString() : words->find(english);
    return found.isEmpty() ? QString::fromUtf8(english) : found;
}

QString say(const QString& english) {
    return paper_language == Language::english ? english : say(english.toUtf8().constData());
}

bool can_say(const QString& english) {
    const Words* words = words_of(paper_language);
    return words == nullptr || !words->find(english.toUtf8().constData()).isEmpty();
}

}  // namespace wg::ui

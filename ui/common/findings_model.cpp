#include "ui/common/findings_model.h"

#include <algorithm>

#include "ui/common/format.h"

namespace wg::ui {

QString finding_text(const Finding& finding) {
    const QString place = finding.place.empty() ? QString() : qs(finding.place) + QStringLiteral(": ");
    QString severity = QString::fromUtf8(word(finding.severity));
    if (!severity.isEmpty()) severity[0] = severity[0].toUpper();
    QStringList lines = {severity + QStringLiteral(". ") + place + qs(finding.message)};
    if (!finding.remedy.empty()) lines.append(QObject::tr("Remedy: %1").arg(qs(finding.remedy)));
    if (!finding.rule.empty()) lines.append(QObject::tr("Rule: %1").arg(qs(finding.rule)));
    if (!finding.source.empty()) lines.append(QObject::tr("Source: %1").arg(qs(finding.source)));
    return with_signs(lines.join(QLatin1Char('\n')));
}

QString count_text(const std::vector<Finding>& findings) {
    const auto count = [&](Severity severity) {
        return std::count_if(findings.begin(), findings.end(),
                             [severity](const Finding& f) { return f.severity == severity; });
    };
    QStringList parts;
    const auto stops = count(Severity::stop);
    const auto cautions = count(Severity::caution);
    const auto notes = count(Severity::note);
    if (stops > 0) parts.append(stops == 1 ? QObject::tr("1 stop") : QObject::tr("%1 stops").arg(stops));
    if (cautions > 0) {
        parts.append(cautions == 1 ? QObject::tr("1 caution") : QObject::tr("%1 cautions").arg(cautions));
    }
    if (notes > 0) parts.append(notes == 1 ? QObject::tr("1 note") : QObject::tr("%1 notes").arg(notes));
    return parts.isEmpty() ? QObject::tr("none") : parts.join(QStringLiteral(", "));
}

void FindingsModel::set_findings(const std::vector<Finding>& findings) {
    if (findings == findings_) return;
    if (findings.size() == findings_.size() && !findings.empty()) {
        // During a drag mostly the figures change: keep the rows, so that the selection stays where it is.
        findings_ = findings;
        Q_EMIT dataChanged(index(0), index(rowCount() - 1));
        return;
    }
    beginResetModel();
    findings_ = findings;
    endResetModel();
}

const Finding* FindingsModel::finding(const QModelIndex& index) const {
    if (!index.isValid() || index.row() < 0 || index.row() >= rowCount()) return nullptr;
    return &findings_[static_cast<std::size_t>(index.row())];
}

int FindingsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(findings_.size());
}

QVariant FindingsModel::data(const QModelIndex& index, int role) const {
    const Finding* at = finding(index);
    if (at == nullptr) return {};
    if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole) return finding_text(*at);
    if (role == Qt::ToolTipRole) {
        return QObject::tr("%1\nDouble click or press Enter to go there (%2).")
            .arg(finding_text(*at), QString::fromUtf8(word(at->stage)));
    }
    return {};
}

}  // namespace wg::ui

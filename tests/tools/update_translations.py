#!/usr/bin/env python3
"""Keeps resources/translations in step with the phrases in the sources.

    update_translations.py PROJECT_DIR          writes the .ts files: new phrases come in unfinished, old ones go
    update_translations.py PROJECT_DIR --check  writes nothing; fails when a phrase is missing, unfinished or no longer
                                                said, or when placeholders differ between source and translation

Phrases are found by Qt's lupdate: say("...") and marked("..."). lupdate names a context after the class or namespace it
stands in; papers have one context for all, so that a phrase said in two places is translated once.
"""
import os
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ET
from xml.sax.saxutils import escape

LANGUAGES = {"es": "es_ES", "de": "de_DE"}
FOLDERS = ["ui/common", "ui/drawing", "ui/documents"]


def lupdate():
    for name in ["lupdate", "/usr/lib/qt6/bin/lupdate", "/usr/lib/qt6/libexec/lupdate"]:
        found = shutil.which(name)
        if found and "qt6" in subprocess.run([found, "-version"], capture_output=True, text=True).stdout.lower() + \
                os.path.realpath(found):
            return found
    sys.exit("lupdate of Qt 6 is not installed (Debian package qt6-l10n-tools)")


def phrases(project):
    """Every phrase once, in the order of the sources."""
    with tempfile.TemporaryDirectory() as folder:
        out = os.path.join(folder, "all.ts")
        sources = sorted(os.path.join(at, name) for base in FOLDERS
                         for at, _, names in os.walk(os.path.join(project, base))
                         for name in names if name.endswith((".cpp", ".h")))
        run = subprocess.run([lupdate(), "-tr-function-alias", "tr=say,QT_TR_NOOP=marked", "-locations", "none",
                              "-source-language", "en", *sources, "-ts", out], capture_output=True, text=True)
        if run.returncode != 0:
            sys.exit(run.stderr)
        found = {}
        for message in ET.parse(out).getroot().iter("message"):
            found.setdefault(message.find("source").text or "", None)
        return list(found)


def read(path):
    if not os.path.exists(path):
        return {}
    told = {}
    for message in ET.parse(path).getroot().iter("message"):
        translation = message.find("translation")
        finished = translation.get("type") is None and translation.text
        told[message.find("source").text or ""] = translation.text if finished else None
    return told


def write(path, code, said, told):
    lines = ['<?xml version="1.0" encoding="utf-8"?>', "<!DOCTYPE TS>",
             f'<TS version="2.1" language="{code}" sourcelanguage="en">', "<context>", "    <name>paper</name>"]
    for phrase in said:
        text = told.get(phrase)
        lines += ["    <message>", f"        <source>{escape(phrase)}</source>",
                  f"        <translation>{escape(text)}</translation>" if text
                  else '        <translation type="unfinished"></translation>', "    </message>"]
    lines += ["</context>", "</TS>", ""]
    with open(path, "w", encoding="utf-8") as file:
        file.write("\n".join(lines))


def placeholders(text):
    return sorted(re.findall(r"%\d|\{[a-z0-9_]+\}", text))


def faults(said, told):
    for phrase in said:
        text = told.get(phrase)
        if not text:
            yield f"no translation: {phrase}"
        elif placeholders(text) != placeholders(phrase):
            yield f"placeholders differ: {phrase} | {text}"
        elif (phrase[0] == " ") != (text[0] == " ") or (phrase[-1] == " ") != (text[-1] == " "):
            yield f"a space at one end is lost or new: {phrase!r} | {text!r}"
    for phrase in told:
        if phrase not in said:
            yield f"no longer said: {phrase}"


def main():
    project = sys.argv[1]
    said = phrases(project)
    if len(said) < 200:
        sys.exit(f"only {len(said)} phrases found: are the sources where they were?")
    failed = False
    for short, code in LANGUAGES.items():
        path = os.path.join(project, "resources", "translations", f"paper_{short}.ts")
        told = read(path)
        if "--check" not in sys.argv:
            write(path, code, said, told)
            told = read(path)
        for fault in faults(said, told):
            print(f"{os.path.basename(path)}: {fault}")
            failed = True
    if failed and "--check" in sys.argv:
        sys.exit(1)


if __name__ == "__main__":
    main()

"""Reads the sheet that write_sample.cpp wrote, with openpyxl: values, types and nothing that runs."""
import datetime
import sys

import openpyxl

path = sys.argv[1]
book = openpyxl.load_workbook(path)
assert book.sheetnames == ["Jobs"], book.sheetnames
sheet = book["Jobs"]
expected = [
    ["Job", "Client", "Net"],
    ["2027-0001", '=HYPERLINK("http://invented.example")', 1234.56],
    ["-12", "Jos\u00e9 M\u00fcller \u20ac \U0001f3e0", -0.125],
    ["00017", 'two\nlines <&> "quoted"', 0],
    [None, " kept blanks ", 1e15],
    [
        datetime.datetime(2027, 6, 21),
        datetime.datetime.fromtimestamp(1813000000, datetime.timezone.utc).replace(tzinfo=None),
        datetime.datetime(1969, 12, 31, 23, 59, 59),
    ],
]
rows = [[cell.value for cell in row] for row in sheet.iter_rows(max_row=6)]
assert rows == expected, rows
assert sheet.max_row == 6 + 2000 and sheet.cell(2006, 3).value == 1999, sheet.max_row
# Text that looks like a formula is a string of the table of strings, not a formula: its type in the file says so.
import re
import zipfile
xml = zipfile.ZipFile(path).read("xl/worksheets/sheet1.xml").decode()
assert "<f>" not in xml and "<f " not in xml
assert re.search(r'<c r="B2"[^>]* t="s"', xml), "B2 is no string"
assert isinstance(sheet["A4"].value, str) and isinstance(sheet["C2"].value, float)
assert sheet["A6"].number_format == "yyyy-mm-dd" and sheet["B6"].number_format == "yyyy-mm-dd hh:mm"
assert sheet["A1"].font.bold and not sheet["A2"].font.bold
assert sheet.freeze_panes == "A2", sheet.freeze_panes
assert sheet.page_setup.orientation == "landscape" and sheet.sheet_properties.pageSetUpPr.fitToPage
assert sheet.page_setup.fitToHeight == 0 and sheet.print_title_rows in ("1:1", "$1:$1"), sheet.print_title_rows
assert book.properties.created == datetime.datetime.fromtimestamp(1813000000, datetime.timezone.utc).replace(tzinfo=None), book.properties.created
print("xlsx: read by openpyxl", openpyxl.__version__)

#!/usr/bin/env python3
"""What the package icalendar (PyPI) reads in calendar.ics, which core/aftercare/icalendar.h wrote.

tests/core/aftercare compares the program's text with calendar.ics byte by byte, and what this found in it with what was
put in. `--check` compares with the committed icalendar_values.json instead of writing it.
"""
import importlib.metadata
import json
import pathlib
import sys

import icalendar

here = pathlib.Path(__file__).parent
raw = (here / "calendar.ics").read_bytes()
calendar = icalendar.Calendar.from_ical(raw)
events = []
for event in calendar.walk("VEVENT"):
    alarms = event.walk("VALARM")
    events.append({
        "uid": str(event["UID"]),
        "stamp": event["DTSTAMP"].dt.strftime("%Y-%m-%dT%H:%M:%SZ"),
        "from": event["DTSTART"].dt.isoformat(),
        "until": event["DTEND"].dt.isoformat(),
        "summary": str(event["SUMMARY"]),
        "description": str(event.get("DESCRIPTION", "")),
        "location": str(event.get("LOCATION", "")),
        "alarm_s": [int(alarm["TRIGGER"].dt.total_seconds()) for alarm in alarms],
        "errors": [str(e) for e in event.errors],
    })
found = {
    "made_with": {"icalendar": importlib.metadata.version("icalendar")},
    "version": str(calendar["VERSION"]),
    "has_method": "METHOD" in calendar,
    "longest_line": max(len(line) for line in raw.split(b"\r\n")),
    "bare_line_breaks": raw.replace(b"\r\n", b"").count(b"\n") + raw.replace(b"\r\n", b"").count(b"\r"),
    "events": events,
}
text = json.dumps(found, indent=1, ensure_ascii=False) + "\n"
target = here / "icalendar_values.json"
if "--check" in sys.argv:
    same = json.loads(target.read_text()) == found
    print("icalendar_values.json:", "reproduced" if same else "differs")
    sys.exit(not same)
target.write_text(text)

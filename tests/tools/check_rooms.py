#!/usr/bin/env python3
"""Holds every room's includes to the dependencies that its CMakeLists states, and core to no Qt outside core/store.

A wrong include of a header without code would link all the same; this check is what forbids it.
Usage: check_rooms.py PROJECT_DIR. Exit 1 with one line a violation.
"""
import pathlib
import re
import sys

project = pathlib.Path(sys.argv[1]).resolve()
rooms: dict[str, set[str]] = {}
core_rooms: list[str] = []

for listing in (project / "core/CMakeLists.txt", project / "ui/CMakeLists.txt"):
    text = re.sub(r"#.*", "", listing.read_text())
    for name, body in re.findall(r"set\((\w+)\s+([^)]*)\)", text):
        if name == "WG_CORE_ROOMS":
            core_rooms = body.split()
    for body in re.findall(r"wg_room\(([^)]*)\)", text):
        words = body.replace("${WG_CORE_ROOMS}", " ".join(core_rooms)).split()
        deps: set[str] = set()
        taking = False
        for word in words[1:]:
            if word in ("DEPS", "LINK", "SEPARATE"):
                taking = word == "DEPS"
            elif taking:
                deps.add(word)
        rooms[words[0]] = deps

violations = []
for room, deps in rooms.items():
    for dep in deps - rooms.keys():
        violations.append(f"{room}: unknown dependency {dep}")
    for path in sorted((project / room).glob("*.[ch]*")):
        for number, line in enumerate(path.read_text().splitlines(), 1):
            where = f"{path.relative_to(project)}:{number}"
            ours = re.match(r'\s*#include\s+"((?:core|ui)/\w+)/', line)
            if ours and ours[1] != room and ours[1] not in deps:
                violations.append(f"{where}: {room} may not include {ours[1]}")
            if re.match(r'\s*#include\s+"(?!core/|ui/|app/)', line):
                violations.append(f"{where}: include by the path from the project's top")
            if room.startswith("core/") and room != "core/store" and re.match(r"\s*#include\s+<Q", line):
                violations.append(f"{where}: Qt in core outside core/store")


def reaches(start: str, goal: str) -> bool:
    seen, todo = set(), list(rooms[start])
    while todo:
        here = todo.pop()
        if here == goal:
            return True
        if here not in seen:
            seen.add(here)
            todo.extend(rooms.get(here, ()))
    return False


violations += [f"{room}: depends on itself in a circle" for room in rooms if reaches(room, room)]
if len(rooms) < 25:
    violations.append(f"only {len(rooms)} rooms found: has the form of the CMakeLists changed?")
for violation in violations:
    print(violation)
print(f"{len(rooms)} rooms checked, {len(violations)} violations")
sys.exit(1 if violations else 0)

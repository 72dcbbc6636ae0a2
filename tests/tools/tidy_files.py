#!/usr/bin/env python3
"""Sources of core, without the store (whose Qt headers are not ours to judge), as a build compiles them."""

import json
import sys

for entry in json.load(open(sys.argv[1])):
    command = entry["command"]
    if "/wg_core_" in command and "/wg_core_store.dir/" not in command:
        print(entry["file"])

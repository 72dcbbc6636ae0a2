#!/usr/bin/env python3
"""start_to_first_paint: our window's start, process to first paint, as a ratio to a bare Qt window's.

usage: start_to_first_paint.py BUILD_FOLDER [RUNS]
The two take turns, so that whatever else the machine does meets both. Prints the medians and their ratio; wanted: under
2. Uses the display when there is one, else Qt's offscreen platform.
"""
import os
import pathlib
import statistics
import subprocess
import sys
import tempfile
import time


def seconds(command, environment):
    begin = time.perf_counter()
    subprocess.run(command, env=environment, check=True, stderr=subprocess.DEVNULL)
    return time.perf_counter() - begin


def main():
    folder = pathlib.Path(sys.argv[1]) / "tests" / "bench"
    runs = int(sys.argv[2]) if len(sys.argv) > 2 else 21
    with tempfile.TemporaryDirectory() as home:
        environment = {**os.environ, "HOME": home, "XDG_RUNTIME_DIR": home}
        if not environment.get("DISPLAY"):
            environment["QT_QPA_PLATFORM"] = "offscreen"
        ours = [folder / "wg_our_window", pathlib.Path(home) / "desk.sqlite"]
        bare = [folder / "wg_bare_window"]
        seconds(ours, environment)  # makes the store; both programs are in the cache of the disk now
        seconds(bare, environment)
        times = {"bare": [], "ours": []}
        for _ in range(runs):
            times["bare"].append(seconds(bare, environment))
            times["ours"].append(seconds(ours, environment))
    medians = {name: statistics.median(values) for name, values in times.items()}
    print(f"bare Qt window    {1000 * medians['bare']:7.1f} ms (least {1000 * min(times['bare']):.1f})")
    print(f"our window        {1000 * medians['ours']:7.1f} ms (least {1000 * min(times['ours']):.1f})")
    print(f"start_to_first_paint {medians['ours'] / medians['bare']:.2f} times a bare window")


if __name__ == "__main__":
    main()

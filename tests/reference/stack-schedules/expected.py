"""Expected values of the rows of cases.json that networkx computes: the time a stack takes as a longest path.

Run: python3 expected.py   (Python 3, networkx 3.6.1), then format the file. The published rows in published.json come first.
"""
import json
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import networkx

from rows import printed, row, write

source = f"networkx {networkx.__version__}, dag_longest_path_length, run here"


def plan(frames, exposure, settling, recycling, step):
    """Every frame is exposed; then rail and flash begin at once, and the next frame waits for both."""
    time, way = networkx.DiGraph(), networkx.DiGraph()
    for frame in range(frames):
        time.add_edge(("open", frame), ("shut", frame), weight=exposure)
        if frame + 1 < frames:
            for what, wait in (("rail", settling), ("flash", recycling)):
                time.add_edge(("shut", frame), (what, frame), weight=wait)
                time.add_edge((what, frame), ("open", frame + 1), weight=0)
            way.add_edge(frame, frame + 1, weight=step)
    return networkx.dag_longest_path_length(time), networkx.dag_longest_path_length(way)


def in_turn(index, frames, exposure, settling, recycling):
    """The flash is charged first; only then the rail moves, and settles."""
    time = networkx.DiGraph()
    for frame in range(frames):
        time.add_edge(("open", frame), ("shut", frame), weight=exposure)
        if frame + 1 < frames:
            time.add_edge(("shut", frame), ("charged", frame), weight=recycling)
            time.add_edge(("charged", frame), ("open", frame + 1), weight=settling)
    inputs = {
        "frames": frames,
        "exposure": f"{exposure} s",
        "settling": f"{settling} s",
        "recycling": f"{recycling} s",
    }
    expected = {"timeInTurn": printed(networkx.dag_longest_path_length(time), "s")}
    title = f"{frames} frames of {exposure} s, {recycling} s to recycle and then {settling} s to settle"
    return row(f"in-turn-{index}", title, source, inputs, expected, {"relative": 1e-12}, "sums of the same numbers in another order")


def case(index, frames, exposure, settling, recycling, step, limit):
    time, way = plan(frames, exposure, settling, recycling, step)
    finished = max(count for count in range(1, 500) if plan(count, exposure, settling, recycling, step)[0] <= limit)
    inputs = {
        "frameCount": frames,
        "exposureTime": f"{exposure} s",
        "settlingTime": f"{settling} s",
        "recyclingTime": f"{recycling} s",
        "frameStep": f"{step} mm",
        "timeLimit": f"{limit} s",
    }
    expected = {"stackTime": printed(time, "s"), "stackTravel": printed(way, "mm"), "framesBeforeDeadline": finished}
    title = f"{frames} frames of {exposure} s, {settling} s to settle, {recycling} s to recycle, {limit} s in all"
    tolerance = {"stackTime": {"relative": 1e-12}, "stackTravel": {"relative": 1e-12}, "framesBeforeDeadline": 0}
    return row(f"schedule-{index}", title, source, inputs, expected, tolerance, "sums of the same numbers in another order; frames are counted")


published = json.loads((Path(__file__).parent / "published.json").read_text(encoding="utf-8"))
setups = [(13, 0.5, 2, 1, 0.375, 10), (40, 0.02, 0.6, 3.5, 0.05, 100), (7, 4, 0.25, 0, 1.25, 20), (1, 0.5, 2, 1, 0.1, 0.75)]
turns = [(13, 0.5, 2, 1), (40, 0.02, 0.6, 3.5), (2, 4, 0.25, 1)]
rows = [case(index, *setup) for index, setup in enumerate(setups, 1)]
rows += [in_turn(index, *setup) for index, setup in enumerate(turns, 1)]
write(__file__, published + rows)

"""Writes the `cases.json` of an outside check whose values a Python library computes.

Each check's `expected.py` says what was run; this module only shapes the rows, so that all read alike.
"""
import json
import platform
from pathlib import Path

digits = 15


def printed(value, unit=""):
    """A number as rows hold it: fifteen digits, with its unit; lists number by number."""
    if isinstance(value, (list, tuple)):
        return [printed(each, unit) for each in value]
    number = float(f"{float(value):.{digits}g}")
    if number == int(number) and abs(number) < 1e15:
        number = int(number)
    return f"{number} {unit}" if unit else number


def row(identity, title, source, inputs, expected, tolerance, because, note=None):
    """One row, with the fields in the order of all other checks."""
    made = {
        "id": identity,
        "title": title,
        "kind": "library",
        "sourceText": "read",
        "source": source,
        "inputs": inputs,
        "expected": expected,
        "tolerance": tolerance,
        "because": because,
    }
    return made | ({"note": note} if note else {})


def write(script, rows):
    """Puts the rows beside *script*."""
    path = Path(script).parent / "cases.json"
    path.write_text(json.dumps(rows, indent=2, ensure_ascii=False) + "\n", encoding="utf-8")
    print(f"{len(rows)} rows written with Python {platform.python_version()}")

"""Slopes of 1,000 random series with ties and gaps, computed again.

Outside: `scipy.stats.theilslopes` (PyPI scipy), whose interval follows Sen (1968), equation 2.6.
"""

import json
import math
import subprocess

from scipy.stats import theilslopes

from kit.programs import BIN_DIR
from kit.tally import Tally

TOLERANCE = 1e-9


def main() -> None:
    """Compares every series."""
    tally = Tally()
    said = subprocess.run([BIN_DIR / "trends"], capture_output=True, check=True, text=True).stdout
    series = json.loads(said)
    tally.same("series", len(series), 1000)
    worst, slopes = 0.0, 0
    for n, one in enumerate(series):
        x, y = [point[0] for point in one["points"]], [point[1] for point in one["points"]]
        ours = one["trend"]
        if len(set(x)) < 2:
            tally.check(f"series {n} has no slope", ours is None, ours)
            continue
        slope, _, low, high = theilslopes(y, x, 0.95)
        slopes += 1
        if math.isnan(low):
            tally.check(f"series {n} has no interval", ours is None or ours["low"] == ours["high"], ours)
            continue
        pairs = ((ours["slope"], slope), (ours["low"], low), (ours["high"], high))
        off = max(abs(a - b) for a, b in pairs)
        worst = max(worst, off)
        tally.check(f"series {n}", off < TOLERANCE, (ours, slope, low, high))
    print(f"  {slopes} slopes with their intervals; the greatest difference is {worst:.1e}")
    tally.finish()


if __name__ == "__main__":
    main()

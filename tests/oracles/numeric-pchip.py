"""Monotone cubic interpolation by scipy (PchipInterpolator); writes numeric-pchip.json."""
import json
import os
import scipy
from scipy.interpolate import PchipInterpolator

tables = [
    ([0, 1, 2.5, 3, 7, 7.5], [1, 1.5, 4, 4, 3, 9]),
    ([20, 40, 60, 80, 100], [2300, 2150, 1800, 900, 50]),
    ([0, 1], [3, 5]),
    ([0, 1, 3], [0, 10, 11]),
    ([-2, -1, 0, 4], [5, -5, 6, 6]),
]
out = []
for x, y in tables:
    p = PchipInterpolator(x, y)
    at = [x[0] + (x[-1] - x[0]) * i / 23 for i in range(24)]
    out.append({"x": x, "y": y, "at": at, "value": p(at).tolist(), "slope": p.derivative()(at).tolist()})
json.dump({"scipy": scipy.__version__, "tables": out}, open(os.path.join(os.path.dirname(os.path.abspath(__file__)), "numeric-pchip.json"), "w"))

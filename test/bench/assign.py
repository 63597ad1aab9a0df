"""The same models by HiGHS called natively, through scipy. Reads one JSON model a line, writes seconds, cost, status."""

import json
import sys
import time

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp
from scipy.sparse import csc_matrix

for line in sys.stdin:
    m = json.loads(line)
    number = lambda key: np.array([float(x.replace("Infinity", "inf")) for x in m[key]])
    matrix = csc_matrix((number("values"), [int(x) for x in m["indices"]], [int(x) for x in m["starts"]]), shape=(m["rows"], m["columns"]))
    constraints = LinearConstraint(matrix, number("rowLower"), number("rowUpper"))
    start = time.perf_counter()
    result = milp(number("cost"), constraints=constraints, integrality=number("whole"), bounds=Bounds(number("lower"), number("upper")), options={"mip_rel_gap": 0, "time_limit": 60})
    print(json.dumps([time.perf_counter() - start, result.fun, int(result.status)]), flush=True)

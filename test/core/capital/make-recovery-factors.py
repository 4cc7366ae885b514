"""Writes recovery-factors.fixture.json: the usual table of capital recovery factors, to six decimals.

Exact fractions, and the plain sum of (1 + i)^-k instead of the closed formula:
    python3 make-recovery-factors.py > recovery-factors.fixture.json
"""

import json
from fractions import Fraction

RATES = ["0.03", "0.04", "0.05", "0.06", "0.07", "0.08", "0.09", "0.10", "0.12"]
YEARS = [3, 5, 7, 10, 12, 15, 20, 25, 30, 50]


def factors(rate, years):
    worth = sum((1 + Fraction(rate)) ** -k for k in range(1, years + 1))
    return {"rate": float(rate), "years": years, "recovery": round(float(1 / worth), 6), "worth": round(float(worth), 6)}


rows = [json.dumps(factors(rate, years)) for rate in RATES for years in YEARS]
print("[\n  " + ",\n  ".join(rows) + "\n]")

"""Makes the cells beside it: equivalent depths and pipe flows worked by this program, not by the product.

python3 cells.py
"""

import json
import math


def equivalent_depth(barrier, spacing, radius):
    x = 2 * math.pi * barrier / spacing
    if x <= 1:
        crowding = math.pi**2 / (4 * x) + math.log(x / (2 * math.pi))
    else:
        crowding = sum(4 * math.exp(-2 * n * x) / (n * (1 - math.exp(-2 * n * x))) for n in range(1, 60, 2))
    return min(barrier, (math.pi * spacing / 8) / (math.log(spacing / (math.pi * radius)) + crowding))


def pipe(diameter, n, grade):
    velocity = 1.486 / n * (diameter / 48) ** (2 / 3) * math.sqrt(grade / 100)
    flow = velocity * math.pi * (diameter / 12) ** 2 / 4
    acres = flow * 86400 * 12 / 43560  # at one inch a day
    return [diameter, n, grade, round(velocity, 3), round(flow, 4), round(acres / 0.25, 1), round(acres / 0.375, 1)]


depths = json.load(open("equivalent-depth-cells.json"))
pipes = json.load(open("pipe-cells.json"))
json.dump([[d, l, r, round(equivalent_depth(d, l, r), 3)] for d, l, r, _ in depths], open("equivalent-depth-cells.json", "w"))
json.dump([pipe(*cell[:3]) for cell in pipes], open("pipe-cells.json", "w"))

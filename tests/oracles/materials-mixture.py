"""Volumes of filled and wet polymers by another road; writes materials-mixture.json. The standard library alone (decimal, 40 digits).

Share of the volume: the one whose fibres weigh the wanted share, by bisection. Swelling: the edge of a cube that takes up water, in the limit of little.
Run: python3 tests/oracles/materials-mixture.py
"""
import json
from decimal import Decimal, getcontext
from pathlib import Path

getcontext().prec = 40


def volume_share(mass_share, fibre, matrix):
    low, high = Decimal(0), Decimal(1)
    for _ in range(120):
        middle = (low + high) / 2
        fibres, polymer = fibre * middle, matrix * (1 - middle)
        low, high = (middle, high) if fibres < mass_share * (fibres + polymer) else (low, middle)
    return low


def growth(density, uptake):
    """Strain of the edge of a kilogram of polymer, over its uptake."""
    wet = 1 / density + uptake / 1000
    return ((wet * density) ** (Decimal(1) / 3) - 1) / uptake


def swelling(density):
    little = Decimal("1e-6")
    return 2 * growth(density, little / 2) - growth(density, little)


out = {
    "carbonInPet": f"{volume_share(Decimal('0.15'), Decimal(1760), Decimal(1340)):.8f}",
    "glassInNylon": f"{volume_share(Decimal('0.3'), Decimal(2540), Decimal(1140)):.8f}",
    "swellingOfNylon": f"{swelling(Decimal(1140)):.8f}",
    "swellingOfStyrenic": f"{swelling(Decimal(1070)):.8f}",
}
(Path(__file__).parent / "materials-mixture.json").write_text(json.dumps(out, indent=1) + "\n")

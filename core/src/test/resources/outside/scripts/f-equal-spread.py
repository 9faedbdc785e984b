"""Breusch and Pagan's test, studentised by Koenker: n R2 of the squared residuals on x.

Written for this check alone, numpy and scipy; here through the correlation of x with the squared
residuals, since R2 of a line with one predictor is its square (the project fits a second line).
Run in the folder above: python3 scripts/f-equal-spread.py > expected/f_equal_spread.csv
"""
import csv
import numpy as np
from scipy.stats import chi2

SETS = [
    ("mammals", "mammals", "body_kg", "brain_g", None),
    ("tortues_len_wid", "tortues", "width_mm", "length_mm", None),
    ("tortues_len_ht_f", "tortues", "height_mm", "length_mm", ("sex", "F")),
    ("carni70", "carni70_traits", "size_kg", "range_km", None),
    ("penguins", "penguins", "flipper_length", "body_mass", None),
    ("corvus", "corvus", "bill_mm", "wing_mm", None),
]
print("# Python 3.11, numpy 2.4.6, scipy 1.17.1; scripts/f-equal-spread.py, its formula in its first lines")
print("set,scale,n,statistic,p")
for name, file, x, y, only in SETS:
    rows = list(csv.DictReader(open(f"data/{file}.csv")))
    rows = [r for r in rows if r[x] not in ("", "NA") and r[y] not in ("", "NA")]
    rows = [r for r in rows if only is None or r[only[0]] == only[1]]
    for scale, f in (("ln", np.log), ("raw", lambda v: v)):
        a = f(np.array([float(r[x]) for r in rows]))
        b = f(np.array([float(r[y]) for r in rows]))
        slope = ((a - a.mean()) @ (b - b.mean())) / ((a - a.mean()) @ (a - a.mean()))
        e2 = (b - b.mean() - slope * (a - a.mean())) ** 2
        s = len(a) * np.corrcoef(a, e2)[0, 1] ** 2
        print(f"{name},{scale},{len(a)},{float(s)!r},{float(chi2.sf(s, 1))!r}")

"""Writes data/iapws-95.json: the density of liquid water at 101.325 kPa by the IAPWS-95 formulation.

How: `apt-get install python3-iapws` (Debian's package, 1.5.3, with its numpy and scipy), then
`/usr/bin/python3 tests/reference/regenerate-water-table.py`.
"""

import json
import pathlib

from iapws import IAPWS95

head = {
    "source": "IAPWS-95, Release on the Properties of Ordinary Water Substance (2018), liquid at 101.325 kPa",
    "read": "computed by the general-purpose package iapws 1.5.3 (Debian), by regenerate-water-table.py",
    "tolerance": 0.0015,
    "because": "the formulation is good to 0.001 kg/m3 near room temperature, and so is Tanaka's equation",
}
lines = [
    f'    {{ "celsius": {celsius}, "density": {IAPWS95(T=273.15 + celsius, P=0.101325).rho:.4f} }}'
    for celsius in [*range(1, 41), 15.56]
]
written = json.dumps(head, indent=2)[:-2] + ',\n  "rows": [\n' + ",\n".join(lines) + "\n  ]\n}\n"
(pathlib.Path(__file__).parent / "data" / "iapws-95.json").write_text(written)

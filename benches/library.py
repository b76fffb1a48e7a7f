"""Saturation temperature from pressure, side by side in one run: the core, natively and in
WebAssembly, and the reference library's low-level interface.

    library.py NATIVE_LOOP.so LOOP.wasm PAGE.wasm

Every loop walks the same pressures, from dew at -40 to 50 °C. The library is called from Python, one
`AbstractState.update(PQ_INPUTS, p, 1)` a pressure; the cost of calling is measured with two calls into
compiled code that do next to nothing, `specify_phase` of the same object (the same dispatch, one
argument) and `math.hypot` of three floats (three arguments to convert), and the dearer of the two is
taken off, which favours the library. Of several rounds the fastest counts, for all three alike.
"""

import ctypes
import json
import math
import re
import subprocess
import sys
import time
from pathlib import Path

import CoolProp.CoolProp as CP

HERE = Path(__file__).parent
ROUNDS = 9
OWN_CALLS = 1_000_000
# Designation, the library's name, kind, calls a round, goal natively, goal in WebAssembly.
FLUIDS = [
    ("R-22", "R22", "pure", 20_000, 10, 5),
    ("R-32", "R32", "pure", 20_000, 10, 5),
    ("R-134a", "R134a", "pure", 20_000, 10, 5),
    ("R-290", "Propane", "pure", 20_000, 10, 5),
    ("R-410A", "R410A", "pseudo-pure", 2_000, 300, None),
    ("R-407C", "R407C", "pseudo-pure", 2_000, 300, None),
    ("R-454B", "R454B.mix", "mixture", 200, 300, None),
    ("R-448A", "R448A.mix", "mixture", 200, 300, None),
]


def fastest(calls, run):
    """Nanoseconds a call of the fastest round; the first round warms up."""
    times = []
    for _ in range(ROUNDS + 1):
        start = time.perf_counter_ns()
        run()
        times.append((time.perf_counter_ns() - start) / calls)
    return min(times[1:])


def walk(low, high, calls):
    return [low + (high - low) * call / calls for call in range(calls)]


def library(name, low, high, calls):
    """Nanoseconds a call of the library, and those of them that are the caller's."""
    state = CP.AbstractState("HEOS", name)
    pressures = walk(low, high, calls)
    update, phase, hypot = state.update, state.specify_phase, math.hypot
    pair, imposed = CP.PQ_INPUTS, CP.iphase_not_imposed

    def flashes():
        for pressure in pressures:
            update(pair, pressure, 1.0)

    def one_argument():
        for _ in pressures:
            phase(imposed)

    def three_arguments():
        for pressure in pressures:
            hypot(pressure, pressure, 1.0)

    overhead = max(fastest(calls, one_argument), fastest(calls, three_arguments))
    return fastest(calls, flashes), overhead


def pressure_range(name):
    """Dew pressures at -40 and 50 °C."""
    state = CP.AbstractState("HEOS", name)
    pressures = []
    for celsius in (-40.0, 50.0):
        state.update(CP.QT_INPUTS, 1.0, celsius + 273.15)
        pressures.append(state.p())
    return pressures


def places():
    """Places of the designations in `Refrigerant::ALL`, which is the order of the source."""
    source = (HERE.parent / "src/tables/refrigerants.rs").read_text()
    block = source[source.index("    Refrigerant {") : source.index("    SafetyClass {")]
    return {name: place for place, name in enumerate(re.findall(r'= "([^"]+)"', block))}


def fluid_data_bytes():
    """Raw size of all fluid data in the module: 4 bytes a coefficient, 8 bytes a slice (address and
    length in WebAssembly) and 8 a number beside them."""
    size = 0
    for path in (HERE.parent / "src/tables/fluids").glob("*.rs"):
        if path.name == "mod.rs":
            continue
        source = re.sub(r"//.*", "", path.read_text())
        number = r"-?\d[\d_]*\.[\d_]*(?:e-?\d+)?"
        slices = re.findall(r"&\[([^\[\]]*)\]", source)
        coefficients = sum(len(re.findall(number, inner)) for inner in slices)
        numbers = len(re.findall(number, source))
        size += 4 * coefficients + 8 * source.count("&[") + 8 * (numbers - coefficients)
    return size


def verdict(ratio, goal):
    if goal is None:
        return ""
    return f"goal {goal}: {'met' if ratio >= goal else 'MISSED'}"


def main():
    native_path, wasm_path, page_path = sys.argv[1:4]
    native = ctypes.CDLL(native_path).sum_of_dew_temperatures
    native.argtypes = [ctypes.c_uint32, ctypes.c_double, ctypes.c_double, ctypes.c_uint32]
    native.restype = ctypes.c_double
    place_of = places()
    ranges = [(place_of[fluid[0]], *pressure_range(fluid[1])) for fluid in FLUIDS]
    asked = json.dumps([dict(zip(("place", "low", "high"), row)) for row in ranges])
    in_node = ["node", str(HERE / "wasm-loop.mjs"), wasm_path, page_path, asked]
    in_wasm = json.loads(subprocess.run(in_node, check=True, capture_output=True).stdout)
    print(f"dew temperature from pressure, ns a call; CoolProp {CP.get_global_param_string('version')}")
    print(f"  {'':8} {'':12} {'library':>9} {'caller':>7} {'core':>7} {'wasm':>7}  ratios")
    for fluid, (place, low, high), wasm in zip(FLUIDS, ranges, in_wasm["nanoseconds"]):
        name, library_name, kind, calls, native_goal, wasm_goal = fluid
        whole, overhead = library(library_name, low, high, calls)
        own = fastest(OWN_CALLS, lambda: native(place, low, high, OWN_CALLS))
        if not math.isfinite(native(place, low, high, 1000)):
            raise SystemExit(f"no temperature for {name}")
        net = whole - overhead
        print(
            f"  {name:8} {kind:12} {net:9.1f} {overhead:7.1f} {own:7.1f} {wasm:7.1f}"
            f"  native {net / own:.1f} {verdict(net / own, native_goal)};"
            f" wasm {net / wasm:.1f} {verdict(net / wasm, wasm_goal)}"
        )
    size = fluid_data_bytes() / 1000
    print(f"fluid data, raw: {size:.1f} kB, goal 60: {'met' if size <= 60 else 'MISSED'}")
    if "size" in in_wasm:
        raw, compressed = in_wasm["size"]["raw"] / 1000, in_wasm["size"]["brotli"] / 1000
        met = "met" if compressed <= 110 else "MISSED"
        print(f"page's module: {raw:.1f} kB, brotli {compressed:.1f} kB, goal 110: {met}")


if __name__ == "__main__":
    main()

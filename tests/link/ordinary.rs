//! Jobs as they are when all is done: twenty joints, sixty readings, figures as a person types them.

use coldwright::quantity::Moment;
use serde_json::{Map, Value, json};

use crate::random::Random;

/// How one person writes figures.
pub struct Hand {
    comma: bool,
    pressure: &'static str,
    fine_pressure: &'static str,
    vacuum: &'static str,
    temperature: &'static str,
    length: &'static str,
    mass: &'static str,
    torque: &'static str,
}

const HANDS: &[Hand] = &[
    Hand {
        comma: false,
        pressure: "bar",
        fine_pressure: "0.1 bar",
        vacuum: "micron",
        temperature: "°C",
        length: "m",
        mass: "kg",
        torque: "N·m",
    },
    Hand {
        comma: true,
        pressure: "bar",
        fine_pressure: "0,1 bar",
        vacuum: "Pa",
        temperature: "°C",
        length: "m",
        mass: "kg",
        torque: "N·m",
    },
    Hand {
        comma: false,
        pressure: "psi",
        fine_pressure: "1 psi",
        vacuum: "micron",
        temperature: "°F",
        length: "ft",
        mass: "lb",
        torque: "ft·lbf",
    },
    Hand {
        comma: false,
        pressure: "kPa",
        fine_pressure: "5 kPa",
        vacuum: "Pa",
        temperature: "°C",
        length: "m",
        mass: "kg",
        torque: "N·m",
    },
];

impl Hand {
    /// A number with so many places, and its unit.
    fn figure(&self, number: f64, places: usize, unit: &str) -> String {
        let number = format!("{number:.places$}");
        let number = if self.comma {
            number.replace('.', ",")
        } else {
            number
        };
        format!("{number} {unit}")
    }

    fn is_imperial(&self) -> bool {
        self.pressure == "psi"
    }
}

const PLACES: &[&str] = &[
    "Birch Lane 14",
    "Old mill, flat 3",
    "Harbour office",
    "Dr Lindqvist",
    "Casa Peral",
    "Calle del Olmo 7, 2º B",
    "Bakery Tesch",
    "Server room, Quay 9",
    "Villa Aurora",
    "Peña 12",
    "School, room 204",
    "Shop Varga",
    "Ground floor left",
    "Workshop Niemi",
    "Rua Nova 33",
    "Hotel annex, room 5",
    "Farm Öberg",
    "1180 Cedar Ave, unit B",
    "Lot 27, Fern Court",
    "Dental practice",
];
const PEOPLE: &[&str] = &[
    "M. Okafor",
    "Jana Novak",
    "T. Virtanen",
    "Luis Peral",
    "S. Haddad",
    "Ines Duarte",
    "K. Brandt",
    "Owen Pryce",
    "R. Castellanos",
    "Yuki Arai",
    "P. Moreau",
    "D. Kowalczyk",
];
const NOTES: &[&str] = &[
    "Kept the lines capped until noon, it rained.",
    "Owner wants the outdoor unit turned 20 cm to the left.",
    "Second flare better: deburred and cut again.",
    "Regulator was slow, filled in three steps.",
    "Vecino pide no trabajar antes de las 9.",
    "Hose swapped, the first one leaked at its core tool.",
    "Insulation missing at the wall, to be done tomorrow",
    "No power at the isolator until Thursday",
    "Drain slope checked with water.",
    "Falta el sello en la pared",
    "Pump oil changed before starting.",
    "Wrench borrowed from van 4.",
    "Nut from the unit reused, thread clean",
    "Gauge read in the shade.",
];
const EQUIPMENT: &[&str] = &[
    "3.5 kW wall unit",
    "Split 2,6 kW",
    "Multi, 2 rooms",
    "Ducted 7.1 kW",
    "Console 24k",
    "Ceiling cassette 5 kW",
    "Heat pump 12000 BTU/h",
    "Bomba de calor 5 kW",
];
const JOINT_KINDS: &[&str] = &[
    "gauge",
    "thermometer",
    "vacuumGauge",
    "scale",
    "wrench",
    "caliper",
];

/// Time that goes on.
struct Clock(i64);

impl Clock {
    fn later(&mut self, random: &mut Random, low: i64, high: i64) -> String {
        self.0 += random.between(low, high);
        moment(self.0)
    }
}

fn moment(seconds: i64) -> String {
    Moment::at(seconds as f64).unwrap().to_string()
}

/// The ids of the plan's joints: two lines, unions and couplings enough for twenty.
fn joint_ids(unions: [usize; 2], couplings: [usize; 2]) -> Vec<(String, bool)> {
    let lines = ["liquid-line", "gas-line"];
    let mut ids: Vec<(String, bool)> = lines
        .iter()
        .map(|line| (format!("{line}-indoor-port"), true))
        .collect();
    for (line, (unions, couplings)) in lines.iter().zip(unions.iter().zip(couplings)) {
        for number in 1..=*unions {
            ids.push((format!("{line}-union-indoor-side-{number}"), true));
            ids.push((format!("{line}-union-outdoor-side-{number}"), true));
        }
        ids.extend((1..=couplings).map(|number| (format!("{line}-coupling-{number}"), false)));
    }
    ids.extend(
        lines
            .iter()
            .map(|line| (format!("{line}-outdoor-port"), true)),
    );
    ids.extend(
        [
            "liquid-line-valve-cap",
            "gas-line-valve-cap",
            "gas-line-service-port-cap",
        ]
        .map(|id| (id.to_owned(), false)),
    );
    ids
}

/// A job of twenty joints and sixty readings.
pub fn ordinary(random: &mut Random) -> Value {
    let hand = &HANDS[random.below(HANDS.len())];
    let metric = !hand.is_imperial();
    let begun = 1_780_000_000 + random.between(0, 80_000_000);
    let mut clock = Clock(begun);
    let created = moment(begun);
    let technician = random.one_of(PEOPLE);
    let unions = random.one_of(&[[1, 3], [2, 3], [2, 2], [3, 3]]);
    let couplings = 13 - 2 * (unions[0] + unions[1]) as i64;
    let first = couplings / 2;
    let couplings = [first.max(0) as usize, (couplings - first).max(0) as usize];
    let ids = joint_ids(unions, couplings);
    let (joints, order) = (joints(random, hand, &mut clock, &ids), ids.len());
    let joints = Value::from(&joints.as_array().unwrap()[..order.min(20)]);
    let pressure_test = pressure_test(random, hand, &mut clock);
    let evacuation = evacuation(random, hand, &mut clock);
    let release = json!({
        "liquidValveOpened": clock.later(random, 300, 900),
        "gasValveOpened": clock.later(random, 30, 200),
        "gaugePressure": hand.figure(if metric { 9.0 + random.below(40) as f64 / 10.0 } else { 140.0 + random.below(40) as f64 }, usize::from(metric), hand.pressure),
        "ambientTemperature": temperature(random, hand, 18.0),
        "charge": { "cylinderStart": hand.figure(5.0 + random.below(5000) as f64 / 1000.0, 3, hand.mass), "cylinderNow": hand.figure(4.0 + random.below(900) as f64 / 1000.0, 3, hand.mass) },
    });
    let mut job = json!({
        "version": 1,
        "id": random.id(12),
        "name": random.one_of(PLACES),
        "site": random.one_of(PLACES),
        "technician": technician,
        "customer": random.one_of(PEOPLE),
        "created": created,
        "altitude": hand.figure(random.between(5, 900) as f64, 0, hand.length),
        "plate": plate(random, hand),
        "lines": lines(random, hand, unions, couplings),
        "rooms": [{ "id": random.id(5), "name": random.one_of(&["Living room", "Office", "Salón", "Bedroom 2", "Shop"]), "area": hand.figure(random.between(12, 60) as f64, 0, if metric { "m²" } else { "ft²" }), "height": hand.figure(if metric { 2.5 } else { 8.0 }, usize::from(metric), hand.length), "mounting": random.one_of(&["wall", "ceiling", "floor"]) }],
        "instruments": instruments(random, hand, begun),
        "joints": joints,
        "pressureTest": pressure_test,
        "evacuation": evacuation,
        "release": release,
        "runCheck": run_check(random, hand, &mut clock),
        "packed": packed(random),
        "notes": notes(random, begun),
        "signOffs": [{ "id": random.id(5), "name": technician, "role": "Work done by", "at": clock.later(random, 100, 2000) }],
    });
    job["edited"] =
        json!(moment(clock.0 + 60).replace('Z', &format!(".{:03}Z", random.below(1000))));
    job
}

fn temperature(random: &mut Random, hand: &Hand, about: f64) -> String {
    let celsius = about + random.below(60) as f64 / 10.0;
    if hand.is_imperial() {
        hand.figure((celsius * 1.8 + 32.0).round(), 0, hand.temperature)
    } else {
        hand.figure(celsius, 1, hand.temperature)
    }
}

fn plate(random: &mut Random, hand: &Hand) -> Value {
    let metric = !hand.is_imperial();
    json!({
        "equipment": random.one_of(EQUIPMENT),
        "refrigerant": random.one_of(&["R-32", "R-32", "R-410A", "R-454B", "R-290"]),
        "plateCharge": if metric { hand.figure(0.7 + random.below(180) as f64 / 100.0, 2, "kg") } else { hand.figure(random.between(30, 120) as f64, 0, "oz") },
        "arrives": "charged",
        "prechargedLength": hand.figure(random.one_of(&[5.0, 7.5, 15.0, 25.0]), 1, hand.length),
        "plateAdder": if metric { hand.figure(random.one_of(&[15.0, 20.0, 25.0, 30.0]), 0, "g/m") } else { hand.figure(random.one_of(&[0.2, 0.22, 0.6]), 2, "oz/ft") },
        "longestLength": hand.figure(random.one_of(&[20.0, 25.0, 30.0, 50.0, 100.0]), 0, hand.length),
        "longestLift": hand.figure(random.one_of(&[10.0, 15.0, 20.0, 50.0]), 0, hand.length),
        "designPressure": if metric { hand.figure(random.one_of(&[4.15, 4.3, 4.5]), 2, "MPa") } else { hand.figure(random.one_of(&[550.0, 604.0, 650.0]), 0, "psi") },
    })
}

fn lines(random: &mut Random, hand: &Hand, unions: [usize; 2], couplings: [usize; 2]) -> Value {
    let (liquid, gas) = random.one_of(&[
        ("1/4", "3/8"),
        ("1/4", "1/2"),
        ("3/8", "5/8"),
        ("1/4", "5/8"),
        ("3/8", "3/4"),
    ]);
    let line = |tube: &str, place: usize| {
        let mut line = json!({ "tube": tube });
        if unions[place] > 0 {
            line["unions"] = json!(unions[place].to_string());
        }
        if couplings[place] > 0 {
            line["brazedCouplings"] = json!(couplings[place].to_string());
        }
        line
    };
    json!({
        "length": hand.figure(4.0 + random.below(300) as f64 / 10.0, 1, hand.length),
        "lift": hand.figure(random.below(80) as f64 / 10.0, 1, hand.length),
        "higherUnit": random.one_of(&["indoor", "outdoor"]),
        "liquidLine": line(liquid, 0),
        "gasLine": line(gas, 1),
    })
}

fn instruments(random: &mut Random, hand: &Hand, begun: i64) -> Value {
    let mut instruments = Map::new();
    for kind in JOINT_KINDS {
        let mut instrument =
            json!({ "calibrated": &moment(begun - 86_400 * random.between(10, 400))[..10] });
        if random.happens(60) {
            instrument["name"] = json!(format!(
                "{} {}",
                random.one_of(&["No.", "SN", "Van 2,", "Own", "#"]),
                random.between(1, 9000)
            ));
        }
        let (resolution, uncertainty) = match *kind {
            "gauge" => (
                hand.fine_pressure.to_owned(),
                random
                    .one_of(&["1 %", "0.3 bar", "0.5 bar", "5 psi"])
                    .to_owned(),
            ),
            "thermometer" => ("0.1 K".into(), "0.5 K".into()),
            "vacuumGauge" => (format!("1 {}", hand.vacuum), String::new()),
            "scale" => ("5 g".into(), "10 g".into()),
            "wrench" => (String::new(), String::new()),
            _ => (String::new(), "0.05 mm".into()),
        };
        if !resolution.is_empty() {
            instrument["resolution"] = json!(resolution);
        }
        if !uncertainty.is_empty() {
            instrument["uncertainty"] = json!(uncertainty);
        }
        if *kind == "wrench" {
            let (low, high) = if hand.is_imperial() {
                (8, 60)
            } else {
                (10, 75)
            };
            instrument["wrenchRange"] = json!(format!("{low}-{high} {}", hand.torque));
            instrument["wrenchAccuracy"] = json!("4 %");
            instrument["wrenchLength"] = json!("280 mm");
            instrument["adapterLength"] = json!(format!("{} mm", random.between(30, 60)));
        }
        instruments.insert((*kind).into(), instrument);
    }
    instruments.into()
}

fn joints(random: &mut Random, hand: &Hand, clock: &mut Clock, ids: &[(String, bool)]) -> Value {
    let mut joints: Vec<Value> = ids.iter().map(|(id, _)| json!({ "id": id })).collect();
    for (joint, (id, is_flare)) in joints.iter_mut().zip(ids) {
        if id.ends_with("-cap") {
            continue;
        }
        joint["made"] = json!(clock.later(random, 120, 900));
        if *is_flare {
            let cone = if id.starts_with("liquid") { 9.0 } else { 16.1 };
            joint["measuredCone"] =
                json!(hand.figure(cone + random.between(-3, 3) as f64 / 10.0, 1, "mm"));
            joint["oiled"] = json!(true);
        }
    }
    for (joint, (id, is_flare)) in joints.iter_mut().zip(ids) {
        if id.ends_with("-cap") || *is_flare {
            joint["tightened"] = json!(clock.later(random, 60, 400));
        }
        if *is_flare {
            let torque = if id.starts_with("liquid") { 16 } else { 42 };
            let torque = if hand.is_imperial() {
                torque * 3 / 4
            } else {
                torque
            };
            joint["scaleTorque"] =
                json!(hand.figure((torque + random.between(-2, 2)) as f64, 0, hand.torque));
            joint["withAdapter"] = json!(random.happens(15));
        }
    }
    clock.0 += 3600;
    for joint in &mut joints {
        joint["leakLook"] = json!("pass");
        joint["looked"] = json!(clock.later(random, 30, 150));
    }
    if random.happens(50) {
        let place = random.below(6);
        let cone = joints[place]["measuredCone"].clone();
        joints[place]["remade"] = json!([{ "id": random.id(5), "at": clock.later(random, 0, 200), "reason": random.one_of(&["Cracked at the rim", "Cono pequeño", "Scratched", "Leaked at 10 bar"]), "measuredCone": cone, "leakLook": random.one_of(&["leak", "pass"]) }]);
    }
    joints.into()
}

/// Thirty readings: up in steps, then a hold over night that follows the weather.
fn pressure_test(random: &mut Random, hand: &Hand, clock: &mut Clock) -> Value {
    let (full, places, scale) = match hand.pressure {
        "psi" => (600.0, 0, 14.5),
        "kPa" => (4150.0, 0, 100.0),
        _ => (41.5, if random.happens(40) { 2 } else { 1 }, 1.0),
    };
    let mut celsius = 16.0 + random.below(120) as f64 / 10.0;
    let mut readings = Vec::new();
    for number in 0..30 {
        let at = if number < 4 {
            clock.later(random, 200, 900)
        } else {
            clock.later(random, 900, 3600)
        };
        celsius += random.between(-6, 6) as f64 / 10.0;
        let part = [0.1, 0.4, 0.7].get(number).copied().unwrap_or(1.0);
        let bar = full * part
            + scale * (celsius - 20.0) * 0.14
            + scale * random.between(-2, 2) as f64 / 40.0;
        let temperature = if hand.is_imperial() {
            hand.figure(celsius * 1.8 + 32.0, 0, "°F")
        } else {
            hand.figure(celsius, 1, "°C")
        };
        let mut reading = json!({ "id": random.id(5), "at": at, "gaugePressure": hand.figure(bar, places, hand.pressure), "temperature": temperature });
        if number == 3 {
            reading["holdBegins"] = json!(true);
        }
        readings.push(reading);
    }
    let rule = random.one_of(&["ufgs-15182", "real-decreto-552-2019"]);
    json!({ "test": { "testRule": rule, "volume": hand.figure(random.between(8, 60) as f64 / 10.0, 1, "L"), "cylinderVolume": "10 L", "cylinderPressure": hand.figure(if hand.is_imperial() { 2200.0 } else { 150.0 }, 0, if hand.is_imperial() { "psi" } else { "bar" }) }, "readings": readings })
}

/// Thirty readings: the pump draws, then the valve is shut.
fn evacuation(random: &mut Random, hand: &Hand, clock: &mut Clock) -> Value {
    clock.0 += 3000;
    let started = clock.later(random, 60, 900);
    let scale = if hand.vacuum == "Pa" { 0.133 } else { 1.0 };
    let mut micron = 9000.0 + random.below(9000) as f64;
    let mut readings = Vec::new();
    for number in 0..30 {
        let is_off = number >= 18;
        if is_off {
            micron += random.between(0, 12) as f64;
        } else {
            micron = 150.0 + (micron - 150.0) * (0.55 + random.below(25) as f64 / 100.0);
        }
        let at = clock.later(random, 60, 400);
        let shown = (micron * scale).round();
        readings.push(json!({ "id": random.id(5), "at": at, "pressure": hand.figure(shown, 0, hand.vacuum), "valvedOff": is_off }));
    }
    let pass = hand.figure((500.0 * scale).round(), 0, hand.vacuum);
    json!({ "pumpStarted": started, "coresOut": true, "hold": { "ambientTemperature": temperature(random, hand, 12.0), "passRule": "plate", "passPressure": pass, "passTime": "30 min" }, "readings": readings })
}

fn run_check(random: &mut Random, hand: &Hand, clock: &mut Clock) -> Value {
    let metric = !hand.is_imperial();
    let pressure = |random: &mut Random, bar: f64| {
        let bar = bar + random.below(30) as f64 / 10.0;
        match hand.pressure {
            "psi" => hand.figure(bar * 14.5, 0, "psi"),
            "kPa" => hand.figure(bar * 100.0, 0, "kPa"),
            _ => hand.figure(bar, 1, "bar"),
        }
    };
    json!({
        "at": clock.later(random, 1200, 4000),
        "readings": {
            "mode": random.one_of(&["cooling", "cooling", "heating"]),
            "meteringDevice": random.one_of(&["thermostatic-valve", "electronic-valve", "fixed-orifice"]),
            "suctionGaugePressure": pressure(random, 7.0),
            "suctionLineTemperature": temperature(random, hand, 8.0),
            "liquidGaugePressure": pressure(random, 23.0),
            "liquidLineTemperature": temperature(random, hand, 31.0),
            "plateSubcooling": if metric { "5-9 K" } else { "8-12 °F" },
            "returnDryBulb": temperature(random, hand, 24.0),
            "returnWetBulb": temperature(random, hand, 16.0),
            "supplyDryBulb": temperature(random, hand, 11.0),
            "outdoorDryBulb": temperature(random, hand, 26.0),
            "airflowChecked": true,
            "runningTime": format!("{} min", random.between(15, 60)),
        },
    })
}

fn packed(random: &mut Random) -> Value {
    let things = [
        "torque-wrench",
        "nut-wrench-17.0",
        "nut-wrench-22.0",
        "hex-keys",
        "service-port-adapter",
        "flaring-tool",
        "caliper",
        "oil",
        "nitrogen",
        "regulator",
        "leak-solution",
        "gauges",
        "vacuum-pump",
        "hoses",
        "scale",
        "tube-6.4",
        "insulation-9.5",
        "protection",
        "flammable-gear",
    ];
    let chosen = things.iter().filter(|_| random.happens(85));
    chosen
        .map(|id| json!({ "id": id, "packed": true }))
        .collect()
}

fn notes(random: &mut Random, begun: i64) -> Value {
    let count = random.between(2, 4);
    let stages = ["plan", "flare", "pressure-test", "evacuate", "run-check"];
    (0..count)
        .map(|number| json!({ "id": random.id(5), "stage": stages[number as usize], "at": moment(begun + number * 30_000 + random.between(0, 9000)), "text": random.one_of(NOTES) }))
        .collect()
}

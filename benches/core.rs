//! Speed of the core: saturation temperature from pressure, and whole calculations through the door.

use std::hint::black_box;

use coldwright::physics::saturation::{self, Line};
use coldwright::quantity::AbsolutePressure;
use coldwright::tables::refrigerants::Refrigerant;
use coldwright::terminal::{Messages, answer_line};
use criterion::{Criterion, criterion_group, criterion_main};

/// A pure fluid, a pseudo-pure blend and true mixtures.
const FLUIDS: &[Refrigerant] = &[
    Refrigerant::R32,
    Refrigerant::R134a,
    Refrigerant::R410A,
    Refrigerant::R454B,
    Refrigerant::R448A,
];

fn saturation_temperature(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("dew temperature from pressure");
    for refrigerant in FLUIDS {
        group.bench_function(refrigerant.word(), |bencher| {
            bencher.iter(|| {
                let pressure = AbsolutePressure::pascals(black_box(8e5));
                saturation::temperature(black_box(*refrigerant), Line::Dew, pressure)
            });
        });
    }
    group.finish();
}

/// A calculation with its input, named.
const REQUESTS: &[(&str, &str, &str)] = &[
    ("torque", "torque", r#"{"tube":"5/8"}"#),
    (
        "saturation",
        "saturation",
        r#"{"refrigerant":"R-454B","gaugePressure":"118 psi"}"#,
    ),
    (
        "saturation with curve and table",
        "saturation",
        r#"{"refrigerant":"R-454B","gaugePressure":"118 psi","curvePoints":64,"tableRows":41}"#,
    ),
    (
        "vapour",
        "vapour",
        r#"{"refrigerant":"R-454B","gaugePressure":"118 psi","superheat":"8 K"}"#,
    ),
    (
        "nitrogen-hold",
        "nitrogen-hold",
        r#"{"firstGaugePressure":"140 psi","firstTemperature":"70 °F","secondTemperature":"40 °F"}"#,
    ),
    (
        "water-saturation",
        "water-saturation",
        r#"{"absolutePressure":"500 micron"}"#,
    ),
    (
        "moist-air",
        "moist-air",
        r#"{"dryBulb":"75 °F","wetBulb":"63 °F"}"#,
    ),
    (
        "pipe-friction",
        "pipe-friction",
        r#"{"bore":"13.4 mm","density":"30 kg/m³","viscosity":"12 µPa·s","massFlow":"90 kg/h","length":"10 m"}"#,
    ),
];

fn through_the_door(criterion: &mut Criterion) {
    let messages = Messages::english();
    let mut group = criterion.benchmark_group("a line of JSON through the door");
    for (name, calculation, input) in REQUESTS {
        let request = format!(r#"{{"calculation":"{calculation}","input":{input}}}"#);
        let reply = answer_line(request.as_bytes(), &messages);
        assert!(reply.get("answer").is_some(), "{name} answers");
        group.bench_function(*name, |bencher| {
            bencher.iter(|| answer_line(black_box(request.as_bytes()), &messages));
        });
    }
    group.finish();
}

/// A hold of fifteen minutes with so many readings, moisture in the system.
fn vacuum_hold(readings: u32) -> String {
    let reading = |place: u32| {
        let minutes = 15.0 * f64::from(place) / f64::from(readings - 1);
        let pressure = 2500.0 - 2200.0 * (-minutes / 8.0).exp();
        let scattered = pressure * (1.0 + 0.02 * f64::from(place * 7919 % 200 + 1).sin());
        format!(r#"{{"time":"{minutes} min","pressure":"{scattered:.0} micron"}}"#)
    };
    hold_of("vacuum-hold", (0..readings).map(reading))
}

/// A hold of a day with so many readings, the tube growing colder, digits that flicker.
fn standing_test(readings: u32) -> String {
    let reading = |place: u32| {
        let hours = 24.0 * f64::from(place) / f64::from(readings - 1);
        let celsius = 20.0 - hours / 3.0 + 0.1 * f64::from(place % 7);
        let psi = 600.0 - 0.67 * hours + f64::from(place % 3);
        format!(
            r#"{{"time":"{hours} h","gaugePressure":"{psi:.1} psi","temperature":"{celsius:.1} °C"}}"#
        )
    };
    hold_of("standing-test", (0..readings).map(reading))
}

fn hold_of(calculation: &str, readings: impl Iterator<Item = String>) -> String {
    let readings: Vec<String> = readings.collect();
    let readings = readings.join(",");
    format!(r#"{{"calculation":"{calculation}","input":{{"readings":[{readings}]}}}}"#)
}

/// A line of JSON with so many readings.
type Hold = fn(u32) -> String;

fn many_readings(criterion: &mut Criterion) {
    let messages = Messages::english();
    let holds: [(&str, Hold); 2] = [
        ("vacuum-hold", vacuum_hold),
        ("standing-test", standing_test),
    ];
    for (calculation, hold) in holds {
        let mut group = criterion.benchmark_group(calculation);
        for (name, readings) in [
            ("60 readings", 60),
            ("1 000 readings", 1000),
            ("10 000 readings", 10_000),
        ] {
            let request = hold(readings);
            let reply = answer_line(request.as_bytes(), &messages);
            assert!(
                reply.get("answer").is_some(),
                "{calculation}, {name} answers"
            );
            group.bench_function(name, |bencher| {
                bencher.iter(|| answer_line(black_box(request.as_bytes()), &messages));
            });
        }
        group.finish();
    }
}

/// A job of 20 joints with so many readings, half of them of the pressure hold, half of the vacuum hold.
fn job(readings: u32) -> String {
    let joints = (1..=18).map(|joint| {
        format!(
            r#"{{"id":"own-{joint}","tube":"3/8","measuredCone":"13 mm","oiled":true,"scaleTorque":"38 N·m","leakLook":"pass"}}"#
        )
    });
    let at = |minutes: u32| {
        let (day, hour, minute) = (1 + minutes / 1440, minutes / 60 % 24, minutes % 60);
        format!("2026-03-{day:02}T{hour:02}:{minute:02}:00Z")
    };
    let pressure = (0..readings / 2).map(|place| {
        let psi = 600.0 + f64::from(place % 3);
        format!(
            r#"{{"id":"p{place}","at":"{}","gaugePressure":"{psi} psi","temperature":"20 °C"}}"#,
            at(place)
        )
    });
    let vacuum = (0..readings / 2).map(|place| {
        let micron = 300 + place % 4;
        format!(
            r#"{{"id":"v{place}","at":"{}","pressure":"{micron} micron","valvedOff":true}}"#,
            at(place)
        )
    });
    let list = |items: Vec<String>| items.join(",");
    format!(
        r#"{{"calculation":"job","input":{{"now":"2026-03-20T00:00:00Z","job":{{"version":1,
        "plate":{{"refrigerant":"R-32","plateCharge":"1 kg"}},
        "lines":{{"length":"10 m","liquidLine":{{"tube":"1/4"}},"gasLine":{{"tube":"3/8"}}}},
        "joints":[{}],"pressureTest":{{"readings":[{}]}},"evacuation":{{"readings":[{}]}}}}}}}}"#,
        list(joints.collect()),
        list(pressure.collect()),
        list(vacuum.collect())
    )
    .replace('\n', " ")
}

fn many_readings_of_a_job(criterion: &mut Criterion) {
    let messages = Messages::english();
    let mut group = criterion.benchmark_group("job");
    for (name, readings) in [
        ("20 joints, 50 readings", 50),
        ("20 joints, 500 readings", 500),
        ("20 joints, 5 000 readings", 5000),
    ] {
        let request = job(readings);
        let reply = answer_line(request.as_bytes(), &messages);
        assert_eq!(
            reply["answer"]["problems"],
            serde_json::json!([]),
            "{name} answers"
        );
        group.bench_function(name, |bencher| {
            bencher.iter(|| answer_line(black_box(request.as_bytes()), &messages));
        });
    }
    group.finish();
}

criterion_group!(
    benches,
    saturation_temperature,
    through_the_door,
    many_readings,
    many_readings_of_a_job
);
criterion_main!(benches);

//! Rules about the source itself: who may import whom, what must not be called, which messages exist.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use coldwright::terminal::Messages;

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).into()
}

fn rust_files(folder: &Path) -> Vec<PathBuf> {
    let mut files = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            files.extend(rust_files(&path));
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            files.push(path);
        }
    }
    files
}

/// Source without its comments, and the room it is in.
fn sources() -> Vec<(String, String, PathBuf)> {
    let source = root().join("src");
    let files = rust_files(&source);
    assert!(files.len() > 30, "the source was found");
    let code = |path: &Path| {
        let text = fs::read_to_string(path).unwrap();
        let lines = text
            .lines()
            .filter(|line| !line.trim_start().starts_with("//"));
        lines.collect::<Vec<_>>().join("\n")
    };
    let room = |path: &Path| {
        let inside = path.strip_prefix(&source).unwrap();
        inside
            .components()
            .next()
            .unwrap()
            .as_os_str()
            .to_string_lossy()
            .trim_end_matches(".rs")
            .to_owned()
    };
    files
        .into_iter()
        .map(|path| (room(&path), code(&path), path))
        .collect()
}

/// Rooms a room may import, besides itself.
const MAY_IMPORT: &[(&str, &[&str])] = &[
    ("quantity", &[]),
    ("tables", &["quantity"]),
    ("physics", &["quantity", "tables"]),
    ("calc", &["quantity", "tables", "physics"]),
    ("job", &["quantity", "tables", "physics", "calc"]),
    ("registry", &["quantity", "calc", "job"]),
    (
        "terminal",
        &["quantity", "tables", "calc", "job", "registry"],
    ),
    ("web", &["quantity", "tables", "calc", "job", "registry"]),
];

#[test]
fn rooms_import_only_what_lies_below() {
    for (room, code, path) in sources() {
        let Some((_, allowed)) = MAY_IMPORT.iter().find(|(name, _)| *name == room) else {
            continue;
        };
        for (other, _) in MAY_IMPORT.iter().filter(|(other, _)| *other != room) {
            let imported = code.contains(&format!("crate::{other}"));
            assert!(
                !imported || allowed.contains(other),
                "{} imports {other}",
                path.display()
            );
        }
    }
}

#[test]
fn only_the_web_room_knows_javascript() {
    for (room, code, path) in sources().into_iter().filter(|(room, ..)| room != "web") {
        for name in ["wasm_bindgen", "js_sys", "web_sys", "JsValue"] {
            assert!(
                !code.contains(name),
                "{room}: {} names {name}",
                path.display()
            );
        }
    }
}

#[test]
fn transcendental_functions_come_from_libm() {
    let own = [
        "exp", "exp2", "exp_m1", "ln", "ln_1p", "log", "log2", "log10", "powf", "powi", "sin",
        "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh", "cbrt", "hypot",
    ];
    for (_, code, path) in sources() {
        for name in own {
            assert!(
                !code.contains(&format!(".{name}(")),
                "{}: .{name}( differs between machines",
                path.display()
            );
        }
    }
}

#[test]
fn the_core_is_pure() {
    for (room, code, path) in sources()
        .into_iter()
        .filter(|(room, ..)| room != "terminal" && room != "bin" && room != "web")
    {
        for name in [
            "std::time",
            "std::fs",
            "std::env",
            "std::io",
            "static mut",
            "thread_local",
            "println!",
            "dbg!",
            "todo!",
            "unimplemented!",
        ] {
            assert!(
                !code.contains(name),
                "{room}: {} uses {name}",
                path.display()
            );
        }
    }
}

#[test]
fn files_have_one_subject() {
    for (_, _, path) in sources() {
        let lines = fs::read_to_string(&path).unwrap().lines().count();
        assert!(
            lines <= LONGEST_FILE,
            "{} has {lines} lines",
            path.display()
        );
    }
}

/// Lines; a file that needs more has more than one subject.
const LONGEST_FILE: usize = 450;

/// Message ids that stand as literals in the source: what answers and problems name.
fn named_ids(prefix: &str) -> BTreeSet<String> {
    let mut ids = BTreeSet::new();
    for (_, code, _) in sources() {
        for (at, _) in code.match_indices(&format!("\"{prefix}")) {
            let rest = &code[at + 1..];
            let id = &rest[..rest.find('"').unwrap()];
            // A bare prefix is a format string's beginning.
            if id.len() > prefix.len() && !id.contains('{') {
                ids.insert(id.to_string());
            }
        }
    }
    ids
}

#[test]
fn every_id_that_the_core_names_has_a_message() {
    let messages = Messages::english();
    let mut wanted = BTreeSet::new();
    for prefix in ["step-", "figure-", "fact-", "notice-"] {
        let named = named_ids(prefix);
        assert!(
            prefix == "notice-" || named.len() > 5,
            "{prefix} ids were found"
        );
        wanted.extend(named);
    }
    wanted.extend(
        coldwright::quantity::QuantityKind::ALL
            .iter()
            .map(|(name, _)| format!("quantity-{name}")),
    );
    for choices in choices() {
        wanted.extend(choices.iter().map(|word| format!("choice-{word}")));
    }
    for (prefix, words) in words_of_jobs() {
        wanted.extend(words.iter().map(|word| format!("{prefix}-{word}")));
    }
    let catalogue = coldwright::terminal::catalogue();
    for code in codes(&catalogue) {
        wanted.insert(format!("problem-{code}"));
    }
    for kind in [
        "standard",
        "handbook",
        "public-agency",
        "reference-library",
        "common-practice",
    ] {
        wanted.insert(format!("source-kind-{kind}"));
    }
    for standing in ["read", "second-hand", "from-memory", "derived", "no-source"] {
        wanted.insert(format!("standing-{standing}"));
    }
    for name in coldwright::registry::NAMES {
        wanted.extend(
            fields(&catalogue, name)
                .into_iter()
                .map(|field| format!("field-{field}")),
        );
    }
    let missing: Vec<_> = wanted.iter().filter(|id| !messages.has(id)).collect();
    assert!(missing.is_empty(), "no message for {missing:?}");
}

#[test]
fn every_step_has_a_question_and_its_answer() {
    let text = fs::read_to_string(root().join("www/locales/en-why.ftl")).unwrap();
    let asked = |prefix: &str| -> BTreeSet<String> {
        let ids = text.lines().filter_map(|line| line.split_once(" = "));
        ids.filter_map(|(id, _)| id.strip_prefix(prefix))
            .map(|subject| format!("step-{subject}"))
            .collect()
    };
    let steps = named_ids("step-");
    assert!(steps.len() > 90, "the steps were found");
    assert_eq!(asked("why-"), steps, "questions");
    assert_eq!(asked("because-"), steps, "answers");
}

#[test]
fn every_message_stands_once_in_a_language() {
    let folder = root().join("www/locales");
    let mut ids = BTreeSet::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let file = path.file_name().unwrap().to_string_lossy().into_owned();
        let language: String = file.chars().take_while(|c| c.is_alphabetic()).collect();
        let text = fs::read_to_string(path).unwrap();
        let begins = |line: &&str| line.starts_with(|first: char| first.is_ascii_alphabetic());
        for (id, _) in text
            .lines()
            .filter(begins)
            .filter_map(|line| line.split_once(" ="))
        {
            let is_new = ids.insert((language.clone(), id.to_string()));
            assert!(is_new, "{id} stands twice in {file}");
        }
    }
    assert!(ids.len() > 2000, "the messages were found");
}

/// Words of the job, each kind with the beginning of its message ids.
fn words_of_jobs() -> Vec<(&'static str, &'static [&'static str])> {
    use coldwright::job;
    vec![
        ("stage", job::Stage::WORDS),
        ("stage-state", job::StageState::WORDS),
        ("open", job::OpenMatter::WORDS),
        ("rule", job::OrderRule::WORDS),
        ("joint-kind", job::JointKind::WORDS),
        ("joint-line", job::JointLine::WORDS),
        ("joint-place", job::JointPlace::WORDS),
        ("joint-state", job::JointState::WORDS),
        ("joint-step", job::JointStep::WORDS),
        ("leak-look", job::LeakLook::WORDS),
        ("clock-doubt", job::ClockDoubt::WORDS),
        ("bring", job::BringMatter::WORDS),
        ("link-problem", job::link::LinkProblem::KINDS),
    ]
}

fn choices() -> Vec<&'static [&'static str]> {
    use coldwright::calc::{AmbientBasis, flare, torque, vapour};
    use coldwright::physics::{pipe_flow, water};
    use coldwright::tables::{flare as flare_table, refrigerants, torque as torque_table, tube};
    vec![
        AmbientBasis::WORDS,
        flare::ConeAdvice::WORDS,
        flare::FlareNotice::WORDS,
        coldwright::calc::standing_test::HoldVerdict::WORDS,
        coldwright::calc::standing_test::HoldReason::WORDS,
        coldwright::calc::standing_test::HoldWarning::WORDS,
        coldwright::calc::standing_test::LeftOutReason::WORDS,
        coldwright::calc::standing_test::RatingCheck::WORDS,
        coldwright::calc::standing_test::StageAction::WORDS,
        coldwright::tables::pressure_test::PressureTestRule::WORDS,
        torque::TorqueAssumption::WORDS,
        torque::TorqueBasis::WORDS,
        flare_table::FlareClass::WORDS,
        flare_table::FlaringTool::WORDS,
        torque_table::TorqueFamily::WORDS,
        tube::TubeSeries::WORDS,
        vapour::VapourState::WORDS,
        coldwright::calc::line_set::HigherUnit::WORDS,
        coldwright::calc::vacuum_hold::VacuumReason::WORDS,
        coldwright::calc::vacuum_hold::VacuumVerdict::WORDS,
        coldwright::calc::vacuum_hold::PassRule::WORDS,
        coldwright::calc::vacuum_hold::Shape::WORDS,
        pipe_flow::Regime::WORDS,
        water::Surface::WORDS,
        refrigerants::OilFamily::WORDS,
        refrigerants::ViscosityBasis::WORDS,
        coldwright::calc::charge::Arrival::WORDS,
        coldwright::calc::charge::ChargeCaution::WORDS,
        coldwright::calc::charge::ChargeNotice::WORDS,
        coldwright::calc::charge::ChargingState::WORDS,
        coldwright::calc::charge::FillRule::WORDS,
        coldwright::calc::charge::LineBasis::WORDS,
        coldwright::calc::charge::ScaleDirection::WORDS,
        coldwright::physics::saturation::Phase::WORDS,
        refrigerants::SafetyClass::WORDS,
        coldwright::calc::room_limit::RoomRule::WORDS,
        coldwright::calc::room_limit::RoomNotice::WORDS,
        coldwright::calc::room_limit::Mounting::WORDS,
        coldwright::calc::room_limit::Governor::WORDS,
        coldwright::calc::room_limit::ChargeStanding::WORDS,
        coldwright::calc::insulation::CoefficientBasis::WORDS,
        coldwright::calc::running::Deviation::WORDS,
        coldwright::calc::running::ErrorSource::WORDS,
        coldwright::calc::running::IndoorAirflow::WORDS,
        coldwright::calc::running::MeteringDevice::WORDS,
        coldwright::calc::running::NextCheck::WORDS,
        coldwright::calc::running::RunningCaution::WORDS,
        coldwright::calc::running::RunningFigure::WORDS,
        coldwright::calc::running::RunningMode::WORDS,
        coldwright::calc::running::RunningNotice::WORDS,
        coldwright::calc::running::TargetBasis::WORDS,
        coldwright::calc::running::UsualCause::WORDS,
        coldwright::calc::running::WhyOpen::WORDS,
        coldwright::calc::pump_down::IceRisk::WORDS,
        coldwright::calc::pump_down::LineChange::WORDS,
        coldwright::calc::pump_down::LinePart::WORDS,
        coldwright::calc::pump_down::Moisture::WORDS,
        coldwright::calc::pump_down::PumpDownNotice::WORDS,
        coldwright::calc::pump_down::ValveCore::WORDS,
    ]
}

/// Every problem code in the catalogue.
fn codes(catalogue: &serde_json::Value) -> Vec<String> {
    let mut codes = Vec::new();
    for name in ["Flaw", "Misfit"] {
        let variants = catalogue.pointer(&format!("/$defs/{name}/oneOf")).unwrap();
        for variant in variants.as_array().unwrap() {
            codes.push(
                variant["properties"]["code"]["const"]
                    .as_str()
                    .unwrap()
                    .to_string(),
            );
        }
    }
    assert!(codes.len() > 15, "codes were found");
    codes
}

/// Every field of a calculation's input, those of its parts and of the items of its lists included.
fn fields(catalogue: &serde_json::Value, name: &str) -> Vec<String> {
    let at = format!("/properties/calculations/properties/{name}/properties/input");
    let mut fields = Vec::new();
    gather_fields(catalogue, catalogue.pointer(&at).unwrap(), &mut fields);
    fields
}

fn gather_fields(
    catalogue: &serde_json::Value,
    schema: &serde_json::Value,
    fields: &mut Vec<String>,
) {
    let reference = schema["$ref"].as_str().map(|at| at.trim_start_matches('#'));
    let schema = reference.map_or(schema, |at| catalogue.pointer(at).unwrap());
    // What a single entry can be is no field.
    for (name, property) in schema["properties"].as_object().into_iter().flatten() {
        fields.push(name.clone());
        let inner = property.get("items").unwrap_or(property);
        let target = inner["$ref"].as_str().unwrap_or_default();
        if target.ends_with("Input") {
            gather_fields(catalogue, inner, fields);
        }
    }
}

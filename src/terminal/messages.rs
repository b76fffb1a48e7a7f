//! The sentences of the locale file, for a terminal.

use std::borrow::Cow;

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use serde_json::{Map, Value};

use crate::quantity::{Notation, Precision, QuantityKind, show};

/// The English locale files, the same that the page shows.
const ENGLISH: [&str; 3] = [
    include_str!("../../www/locales/en.ftl"),
    include_str!("../../www/locales/en-cards.ftl"),
    include_str!("../../www/locales/en-job.ftl"),
];

/// Messages of one language.
pub struct Messages {
    bundle: FluentBundle<FluentResource>,
}

impl Messages {
    /// English.
    pub fn english() -> Self {
        let language = unic_langid::LanguageIdentifier::default();
        let mut bundle = FluentBundle::new(vec![language]);
        bundle.set_use_isolating(false);
        for file in ENGLISH {
            // A flawed file still yields its sound messages; a test keeps the files sound.
            let resource = FluentResource::try_new(file.into()).unwrap_or_else(|(part, _)| part);
            let _ = bundle.add_resource(resource);
        }
        Self { bundle }
    }

    /// Whether there is a message of this id.
    pub fn has(&self, id: &str) -> bool {
        self.bundle.has_message(id)
    }

    /// The sentence for a problem as it stands in JSON: its code with its arguments.
    pub fn problem(&self, problem: &Map<String, Value>) -> String {
        self.of_kind("problem", "code", problem)
    }

    /// The sentence of a word in JSON, whose id is `beginning-word`, with what stands beside it as its arguments.
    pub(super) fn of_kind(
        &self,
        beginning: &str,
        kind: &str,
        problem: &Map<String, Value>,
    ) -> String {
        let code = problem
            .get(kind)
            .and_then(Value::as_str)
            .unwrap_or_default();
        let kind = problem
            .get("quantity")
            .and_then(Value::as_str)
            .and_then(QuantityKind::named);
        let mut arguments = FluentArgs::new();
        for (name, value) in problem {
            arguments.set(
                name.clone(),
                FluentValue::String(self.argument(name, value, kind)),
            );
        }
        self.sentence(&format!("{beginning}-{code}"), &arguments)
    }

    fn sentence(&self, id: &str, arguments: &FluentArgs<'_>) -> String {
        let pattern = self
            .bundle
            .get_message(id)
            .and_then(|message| message.value());
        let Some(pattern) = pattern else {
            return id.into();
        };
        let mut errors = Vec::new();
        self.bundle
            .format_pattern(pattern, Some(arguments), &mut errors)
            .into_owned()
    }

    /// What a field is called, or its name if nobody has called it anything.
    fn field(&self, field: &str) -> String {
        let id = format!("field-{}", last_name(field));
        if self.has(&id) {
            self.sentence(&id, &FluentArgs::new())
        } else {
            field.into()
        }
    }

    fn argument(&self, name: &str, value: &Value, kind: Option<QuantityKind>) -> Cow<'static, str> {
        match (name, value) {
            ("quantity" | "found", Value::String(text)) if QuantityKind::named(text).is_some() => {
                self.sentence(&format!("quantity-{text}"), &FluentArgs::new())
                    .into()
            }
            ("with", Value::String(field)) => self.field(field).into(),
            (_, Value::String(text)) => text.clone().into(),
            (_, Value::Array(items)) => {
                let items: Vec<&str> = items.iter().filter_map(Value::as_str).collect();
                items.join(", ").into()
            }
            (_, Value::Number(number)) => figure(number.as_f64().unwrap_or_default(), kind).into(),
            (_, other) => other.to_string().into(),
        }
    }
}

/// The last name of a field within others: `pressure` of `readings[2].pressure`.
fn last_name(field: &str) -> &str {
    field.rsplit_once('.').map_or(field, |(_, name)| name)
}

/// Numbers that are read at a glance.
const READABLE: core::ops::Range<f64> = 0.01..1e5;

/// A number of a quantity with its first unit that makes it readable, else with its first one, or alone.
fn figure(si: f64, kind: Option<QuantityKind>) -> String {
    let units = kind.map_or(&[][..], QuantityKind::units);
    let readable = units
        .iter()
        .find(|unit| READABLE.contains(&unit.from_si(si).abs()));
    let unit = readable.or(units.first());
    let shown = kind.zip(unit).and_then(|(kind, unit)| {
        show(
            kind,
            si,
            unit.symbol,
            Precision::Significant,
            Notation::POINT,
        )
    });
    match shown {
        Some(shown) => format!("{} {}", shown.number, shown.unit),
        None => format!("{si}"),
    }
}

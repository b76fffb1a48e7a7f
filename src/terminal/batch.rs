//! JSON lines in, JSON lines out. Total: whatever a line holds, it gets one line back and never stops
//! the lines after it.

use std::io::{self, BufRead, Read, Write};

use serde_json::{Map, Value, json};

use super::Messages;
use crate::calc::{Field, Misfit, Problem};
use crate::quantity::Arrived;
use crate::registry;

/// Most bytes of a line that are read.
pub const LONGEST_LINE: usize = 4 << 20;

/// Answers every line of `input` with a line of `output`, until the input ends.
///
/// # Errors
/// Only those of reading and writing.
pub fn batch(input: impl BufRead, mut output: impl Write) -> io::Result<()> {
    let messages = Messages::english();
    let mut input = input;
    while let Some(line) = next_line(&mut input)? {
        let reply = match line {
            Line::Whole(bytes) => answer_line(&bytes, &messages),
            Line::TooLong => refusal("line", Misfit::TooLong { most: LONGEST_LINE }, &messages),
        };
        writeln!(output, "{reply}")?;
        output.flush()?;
    }
    Ok(())
}

enum Line {
    Whole(Vec<u8>),
    TooLong,
}

/// The next line without its end; memory stays bounded however long it is.
fn next_line(input: &mut impl BufRead) -> io::Result<Option<Line>> {
    let mut bytes = Vec::new();
    let limit = LONGEST_LINE as u64 + 1;
    if input.by_ref().take(limit).read_until(b'\n', &mut bytes)? == 0 {
        return Ok(None);
    }
    if bytes.last() == Some(&b'\n') {
        bytes.pop();
        return Ok(Some(Line::Whole(bytes)));
    }
    if bytes.len() <= LONGEST_LINE {
        return Ok(Some(Line::Whole(bytes)));
    }
    loop {
        bytes.clear();
        let read = input.by_ref().take(limit).read_until(b'\n', &mut bytes)?;
        if read == 0 || bytes.last() == Some(&b'\n') {
            return Ok(Some(Line::TooLong));
        }
    }
}

/// Answers one line.
pub fn answer_line(line: &[u8], messages: &Messages) -> Value {
    let request: Value = match serde_json::from_slice(line) {
        Ok(request) => request,
        Err(error) => {
            return refusal("line", Misfit::NotJson { at: error.column() }, messages);
        }
    };
    let Value::Object(mut request) = request else {
        return refusal("line", Misfit::NotAnObject, messages);
    };
    let name = request.remove("calculation");
    let input = request.remove("input").unwrap_or_else(|| json!({}));
    let name = match name {
        Some(Value::String(name)) => name,
        _ => String::new(),
    };
    if let Some(foreign) = request.keys().next() {
        let accepted = ["calculation", "input"].map(Field::named).to_vec();
        let problem = Problem::misfit(Field::unknown(foreign), Misfit::UnknownField { accepted });
        return with_messages(json!({ "problems": [problem] }), messages);
    }
    let reply = registry::answer(&name, arrived(input), serde_json::value::Serializer);
    with_messages(
        reply.unwrap_or_else(|_| json!({ "problems": [] })),
        messages,
    )
}

fn refusal(field: &'static str, misfit: Misfit, messages: &Messages) -> Value {
    let problem = Problem::misfit(Field::named(field), misfit);
    with_messages(json!({ "problems": [problem] }), messages)
}

/// Adds to each problem its sentence.
fn with_messages(mut reply: Value, messages: &Messages) -> Value {
    if let Some(Value::Array(problems)) = reply.get_mut("problems") {
        for problem in problems.iter_mut().filter_map(Value::as_object_mut) {
            add_message(problem, messages);
        }
    }
    reply
}

fn add_message(problem: &mut Map<String, Value>, messages: &Messages) {
    let message = messages.problem(problem);
    problem.insert("message".into(), message.into());
}

/// A JSON value as the calculations take it.
pub fn arrived(value: Value) -> Arrived {
    match value {
        Value::Null => Arrived::Nothing,
        Value::Bool(truth) => Arrived::Truth(truth),
        Value::Number(number) => number.as_f64().map_or(Arrived::Other, Arrived::Number),
        Value::String(text) => Arrived::Text(text),
        Value::Array(items) => Arrived::List(items.into_iter().map(arrived).collect()),
        Value::Object(members) => {
            let members = members
                .into_iter()
                .map(|(name, member)| (name, arrived(member)));
            Arrived::Object(members.collect())
        }
    }
}

//! The calculations from a terminal.
//!
//! `coldwright batch` answers JSON lines from standard input; `coldwright catalogue` prints the JSON
//! Schema of all inputs and answers, `coldwright job-schema` that of a job's document; `coldwright job-link` and
//! `coldwright job-of-link` turn a job's document on standard input into its link and back.

use std::io::{self, BufWriter};
use std::process::ExitCode;

use coldwright::terminal::{batch, catalogue, job_link, job_of_link, job_schema};
use serde_json::Value;

const USAGE: &str = "\
coldwright batch      answer JSON lines from standard input, one line each:
                      {\"calculation\": \"torque\", \"input\": {\"tube\": \"5/8\"}}
coldwright catalogue  print the JSON Schema of all inputs and answers
coldwright job-schema print the JSON Schema of a job's document
coldwright job-link   write the link of the job's document on standard input
coldwright job-of-link
                      write the document of the job's link on standard input";

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let result = match words.as_slice() {
        ["batch"] => batch(io::stdin().lock(), BufWriter::new(io::stdout().lock())),
        ["catalogue"] => print(&catalogue()),
        ["job-schema"] => print(&job_schema()),
        ["job-link"] => job_link(io::stdin().lock(), io::stdout().lock()),
        ["job-of-link"] => job_of_link(io::stdin().lock(), BufWriter::new(io::stdout().lock())),
        _ => {
            eprintln!("{USAGE}");
            return ExitCode::from(2);
        }
    };
    match result {
        Ok(()) => ExitCode::SUCCESS,
        // The reader went away, as `head` does: nothing is wrong.
        Err(error) if error.kind() == io::ErrorKind::BrokenPipe => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("coldwright: {error}");
            ExitCode::FAILURE
        }
    }
}

fn print(schema: &Value) -> io::Result<()> {
    let mut output = BufWriter::new(io::stdout().lock());
    serde_json::to_writer_pretty(&mut output, schema)?;
    io::Write::write_all(&mut output, b"\n")
}

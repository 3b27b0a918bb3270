//! How long the calculations take: each named check on the first good case of its fixture, and a long hold.
//!
//! `cargo bench -p mendline-core --bench checks`

use std::path::Path;

use divan::{Bencher, black_box};
use mendline_core::checks::hold::{self, CountsFrom, GapRule, HoldTerms, Reading};
use mendline_core::checks::named;
use mendline_core::units::{Length, Pressure, Span};
use serde_json::Value;

fn main() {
    divan::main();
}

fn names() -> Vec<&'static str> {
    named::all().into_iter().map(|check| check.name).collect()
}

fn fields(name: &str) -> Value {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("../fixtures/checks/{name}.json"));
    let cases: Vec<Value> =
        serde_json::from_str(&std::fs::read_to_string(path).unwrap_or_default()).unwrap_or_default();
    cases.into_iter().find(|case| case["refused"].is_null()).map(|mut case| case["fields"].take()).unwrap_or_default()
}

#[divan::bench(args = names())]
fn named_check(bencher: Bencher, name: &str) {
    let fields = fields(name);
    assert!(named::run(name, &fields).is_ok(), "{name}");
    bencher.bench(|| named::run(black_box(name), black_box(&fields)));
}

/// A reading a second for four hours, more than any gauge writes.
#[divan::bench(args = [24, 1_440, 14_400])]
fn count_a_hold(bencher: Bencher, readings: i64) {
    let terms = HoldTerms {
        low_pa: Pressure::from_pa(110_000),
        high_pa: Pressure::from_pa(140_000),
        least_net_pa: Pressure::from_pa(90_000),
        head_um: Length::from_um(800_000),
        interval_ms: Span::from_ms(600_000),
        grace_ms: Span::from_ms(30_000),
        gap_rule: GapRule::WholeGapLost,
        counts_from: CountsFrom::TargetPressure,
        required_ms: Span::from_ms(3_600_000),
        joined_ms: -1_500_000,
    };
    let step = 4 * 3_600_000 / readings;
    let one = |i: i64| Reading {
        at_ms: i * step,
        gauge_pa: Pressure::from_pa(if i % 97 == 50 { 104_000 } else { 130_000 }),
        after_restart: false,
    };
    let readings: Vec<_> = (0..readings).map(one).collect();
    bencher.bench(|| hold::outlook(black_box(&terms), black_box(&readings), 4 * 3_600_000, false));
}

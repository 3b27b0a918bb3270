//! The tables of the evidence, in their order.

use super::flow;
use super::page_one::Cut;
use super::sheet::Sheet;
use super::tables::{Column, Row, Table, left, right};
use crate::certificate::content::{Attempt, Correction, Departure, Material, Note, SheetValue};
use crate::certificate::content::{Check, Finding, headings};
use crate::words::tell;

const MATERIALS: [Column; 6] = [
    left("cert-evidence-item", 30.0),
    left("cert-evidence-kind_number", 40.0),
    left("cert-evidence-lot", 20.0),
    left("cert-evidence-expiry_check", 34.0),
    left("cert-evidence-amount_range", 24.0),
    left("cert-evidence-note", 28.0),
];
const SHEETS: [Column; 3] =
    [left("cert-evidence-value", 30.0), left("cert-evidence-as_entered", 60.0), left("cert-evidence-source", 86.0)];
const CHECKS: [Column; 6] = [
    left("cert-evidence-check", 30.0),
    left("cert-evidence-formula_and_source", 58.0),
    left("cert-evidence-inputs", 26.0),
    right("cert-answers-result", 19.0),
    right("cert-evidence-limit", 21.0),
    right("cert-sheets-margin", 22.0),
];
const FINDINGS: [Column; 3] =
    [left("cert-evidence-what", 30.0), left("cert-evidence-found", 120.0), left("cert-evidence-evidence", 26.0)];
const DEPARTURES: [Column; 3] = [
    left("cert-evidence-no", 10.0),
    left("cert-evidence-rule_and_value", 80.0),
    left("cert-evidence-reason_who_when", 86.0),
];
const NOTES: [Column; 2] = [left("cert-evidence-note", 30.0), left("cert-evidence-what_happened", 146.0)];
const ATTEMPTS: [Column; 6] = [
    left("cert-evidence-no", 8.0),
    left("cert-evidence-from_to", 20.0),
    left("cert-evidence-what_happened_what_became_of", 66.0),
    left("cert-evidence-where_was_the_patch", 29.0),
    left("cert-evidence-anything_in_the_pipe", 31.0),
    left("cert-evidence-outcome_by_when", 22.0),
];
const CORRECTIONS: [Column; 5] = [
    left("cert-evidence-value", 30.0),
    left("cert-evidence-old", 30.0),
    left("cert-evidence-new", 30.0),
    left("cert-evidence-reason", 60.0),
    left("cert-evidence-by_when", 26.0),
];

/// Sets the tables below the cursor, and in full what page 1 could not hold.
pub fn set(sheet: &mut Sheet, cut: &Cut) {
    let content = sheet.content;
    table(sheet, headings::MATERIALS, "", &MATERIALS, content.materials.iter().map(material).collect());
    let remark = &content.sheets.remark;
    table(sheet, headings::SHEETS, remark, &SHEETS, content.sheets.rows.iter().map(sheet_value).collect());
    let checks = content.checks.iter().enumerate().map(|(index, one)| check(index + 1, one)).collect();
    table(sheet, headings::CHECKS, &tell!("cert-evidence-result_against_limit_margin_is"), &CHECKS, checks);
    if let Some(danger) = &content.danger {
        sheet.y += 1.4;
        let label = tell!("cert-evidence-danger_zone");
        flow::sentences(sheet, [(label.as_str(), danger.as_str())].into_iter());
    }
    table(sheet, headings::FINDINGS, "", &FINDINGS, content.findings.iter().map(finding).collect());
    if cut.departures {
        table(sheet, headings::DEPARTURES, "", &DEPARTURES, content.departures.iter().map(departure).collect());
    }
    table(sheet, headings::NOTES, "", &NOTES, notes(sheet, cut));
    let asked = tell!("cert-evidence-the_two_questions_were_asked");
    table(sheet, headings::ATTEMPTS, &asked, &ATTEMPTS, content.attempts.iter().map(attempt).collect());
    let kept = tell!("cert-evidence-nothing_is_overwritten_the_old");
    table(sheet, headings::CORRECTIONS, &kept, &CORRECTIONS, content.corrections.iter().map(correction).collect());
}

fn table(sheet: &mut Sheet, key: &'static str, remark: &str, columns: &[Column], rows: Vec<Row>) {
    Table { key, remark, columns }.set(sheet, &rows);
}

fn material(one: &Material) -> Row {
    let texts = [&one.item, &one.kind, &one.lot, &one.expiry, &one.amount, &one.note];
    Row::of(texts.map(String::clone).to_vec())
}

fn sheet_value(one: &SheetValue) -> Row {
    Row::of([&one.name, &one.as_entered, &one.source].map(String::clone).to_vec())
}

fn check(number: usize, one: &Check) -> Row {
    let name = format!("{number}  {}", one.name);
    let texts = [&name, &one.formula, &one.inputs, &one.result, &one.limit, &one.margin];
    Row { cells: texts.map(String::clone).to_vec(), bold: one.fails.then_some(5) }
}

fn finding(one: &Finding) -> Row {
    Row { cells: [&one.what, &one.found, &one.evidence].map(String::clone).to_vec(), bold: one.outside.then_some(1) }
}

fn departure(one: &Departure) -> Row {
    Row::of([&one.label, &one.rule, &one.reason].map(String::clone).to_vec())
}

/// What page 1 left out: reasons and notes where any was dropped, and every text that was cut.
fn notes(sheet: &Sheet, cut: &Cut) -> Vec<Row> {
    let content = sheet.content;
    let dropped: Vec<&Note> =
        if cut.notes { content.reasons.iter().chain(&content.notes).collect() } else { Vec::new() };
    let row = |note: &Note| Row::of(vec![note.label.clone(), note.text.clone()]);
    dropped.into_iter().chain(&cut.texts).map(row).collect()
}

fn attempt(one: &Attempt) -> Row {
    let number = one.number.to_string();
    let texts = [&number, &one.span, &one.what, &one.patch_where, &one.in_pipe, &one.outcome];
    Row::of(texts.map(String::clone).to_vec())
}

fn correction(one: &Correction) -> Row {
    Row::of([&one.value, &one.old, &one.new, &one.reason, &one.by].map(String::clone).to_vec())
}

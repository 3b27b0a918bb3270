//! From cells to records, the same for the text form and the XML form.

use super::row::millionths;
use super::{Clock, Direction, Inspection, MOST_COLUMNS, Notice, NoticeCode, Observation, Quantification};
use super::{ReadCode, ReadError};
use crate::units::Length;
use chrono::{NaiveDate, NaiveTime};
use std::collections::BTreeMap;

/// The header fields of one inspection while it is read: code, text, line.
#[derive(Default)]
pub(super) struct Header {
    cells: BTreeMap<String, (String, u64)>,
}

impl Header {
    /// Adds a field.
    ///
    /// Errors: `Column` if the field has another value already; `TooLarge`.
    pub(super) fn put(&mut self, code: &str, text: &str, line: u64) -> Result<(), ReadError> {
        let text = text.trim();
        if text.is_empty() {
            return Ok(());
        }
        if self.cells.len() >= MOST_COLUMNS {
            let expected = format!("at most {MOST_COLUMNS} header fields");
            return Err(ReadError::new(ReadCode::TooLarge, line, expected, "more"));
        }
        match self.cells.get(code) {
            Some((before, _)) if before != text => {
                let expected = format!("one value for {code}, already {before:?}");
                Err(ReadError::new(ReadCode::Column, line, expected, text))
            }
            _ => {
                self.cells.insert(code.to_owned(), (text.to_owned(), line));
                Ok(())
            }
        }
    }

    /// Returns the inspection with these fields and observations.
    ///
    /// Errors: a number, date, time or direction that is none.
    pub(super) fn into_inspection(
        mut self,
        observations: Vec<Observation>,
        decimal: char,
        source_line: u64,
        notices: &mut Vec<Notice>,
    ) -> Result<Inspection, ReadError> {
        let node_1 = self.text("AAD");
        let node_2 = self.text("AAF");
        let start_node = self.text("AAB").or_else(|| start_from_observation(&observations, notices));
        let finish = observations.iter().rfind(|o| o.code == "BCE");
        let end_node = end_node([&start_node, &node_1, &node_2], finish);
        Ok(Inspection {
            line: self.text("AAA"),
            end_node,
            arrival_um: finish.and_then(|o| o.station_um),
            start_node,
            node_1,
            node_2,
            direction: self.direction(notices)?,
            length_um: self.length("ABQ", decimal, METRES)?,
            height_um: self.length("ACB", decimal, MILLIMETRES)?,
            width_um: self.length("ACC", decimal, MILLIMETRES)?,
            shape: self.text("ACA"),
            material: self.text("ACD"),
            date: self.date()?,
            time: self.time()?,
            street: self.text("AAJ"),
            town: self.text("AAN"),
            standard: self.text("ABA"),
            reference_point: self.text("ABC"),
            inspector: self.text("ABH"),
            other: self.cells.into_iter().map(|(code, (text, _))| (code, text)).collect(),
            source_line,
            observations,
        })
    }

    fn text(&mut self, code: &str) -> Option<String> {
        self.cells.remove(code).map(|(text, _)| text)
    }

    fn length(&mut self, code: &str, decimal: char, unit: Unit) -> Result<Option<Length>, ReadError> {
        let Some((text, line)) = self.cells.remove(code) else {
            return Ok(None);
        };
        length(&text, line, decimal, unit).map(Some)
    }

    fn direction(&mut self, notices: &mut Vec<Notice>) -> Result<Option<Direction>, ReadError> {
        match self.cells.remove("AAK") {
            None => Ok(None),
            Some((text, line)) => direction(&text, line, notices),
        }
    }

    fn date(&mut self) -> Result<Option<NaiveDate>, ReadError> {
        let Some((text, line)) = self.cells.remove("ABF") else {
            return Ok(None);
        };
        let read = ["%Y-%m-%d", "%Y%m%d", "%d.%m.%Y"]
            .iter()
            .find_map(|form| NaiveDate::parse_from_str(&text, form).ok())
            .filter(|date| (1900..2200).contains(&chrono::Datelike::year(date)));
        let expected = "a date such as 2026-09-22 (ABF)";
        read.map(Some).ok_or_else(|| ReadError::new(ReadCode::Date, line, expected, text))
    }

    fn time(&mut self) -> Result<Option<NaiveTime>, ReadError> {
        let Some((text, line)) = self.cells.remove("ABG") else {
            return Ok(None);
        };
        let read = ["%H:%M", "%H:%M:%S"].iter().find_map(|form| NaiveTime::parse_from_str(&text, form).ok());
        let expected = "a time such as 09:05 (ABG)";
        read.map(Some).ok_or_else(|| ReadError::new(ReadCode::Time, line, expected, text))
    }
}

fn direction(text: &str, line: u64, notices: &mut Vec<Notice>) -> Result<Option<Direction>, ReadError> {
    match text {
        "A" => Ok(Some(Direction::WithFlow)),
        "B" => Ok(Some(Direction::AgainstFlow)),
        "C" => {
            let text = "direction C (not known): upstream and downstream node are not known".to_owned();
            notices.push(Notice { code: NoticeCode::UnknownValue, line, text });
            Ok(None)
        }
        _ => {
            let expected = "A (with the flow) or B (against it) for AAK";
            Err(ReadError::new(ReadCode::Direction, line, expected, text))
        }
    }
}

/// Returns the node that the first observation BCD names.
fn start_from_observation(observations: &[Observation], notices: &mut Vec<Notice>) -> Option<String> {
    let first = observations.iter().find(|o| o.code == "BCD")?;
    let node = first.quant1.as_ref()?.as_written.clone();
    let text = format!("no start node (AAB): taken from the observation BCD, {node}");
    notices.push(Notice { code: NoticeCode::StartNodeFromObservation, line: first.source_line, text });
    Some(node)
}

/// Returns the node at the other end: of nodes 1 and 2 the one that is not the start node, else what BCE names.
fn end_node(nodes: [&Option<String>; 3], finish: Option<&Observation>) -> Option<String> {
    let end = match nodes.map(Option::as_deref) {
        [Some(start), Some(one), Some(two)] if one == start => Some(two),
        [Some(start), Some(one), Some(two)] if two == start => Some(one),
        [Some(start), Some(only), None] | [Some(start), None, Some(only)] if only != start => Some(only),
        _ => finish.and_then(|o| o.quant1.as_ref()).map(|q| q.as_written.as_str()),
    };
    end.map(str::to_owned)
}

/// A unit of the format, with the largest value that is believed.
#[derive(Clone, Copy)]
pub(super) struct Unit {
    name: &'static str,
    um: i64,
    most: i64,
}
/// Stations and lengths: up to 100 km.
pub(super) const METRES: Unit = Unit { name: "a distance in m, 0 or more", um: 1_000_000, most: 100_000 };
/// Heights and widths: up to 100 m.
pub(super) const MILLIMETRES: Unit = Unit { name: "a size in mm, 0 or more", um: 1_000, most: 100_000 };

fn length(text: &str, line: u64, decimal: char, unit: Unit) -> Result<Length, ReadError> {
    let steps = millionths(text, decimal).filter(|m| (0..=unit.most * 1_000_000).contains(m));
    let um = steps.map(|m| (m * unit.um + 500_000) / 1_000_000);
    um.map(Length::from_um).ok_or_else(|| {
        let expected = format!("{}, with {decimal:?} as the decimal mark", unit.name);
        ReadError::new(ReadCode::Number, line, expected, text)
    })
}

/// Returns the observation of these cells: column letter and text.
///
/// Errors: no main code; a station or clock hour that is none.
pub(super) fn observation<'a>(
    cells: impl Iterator<Item = (char, &'a str)>,
    line: u64,
    decimal: char,
    notices: &mut Vec<Notice>,
) -> Result<Observation, ReadError> {
    let mut o = Observation { source_line: line, ..Observation::default() };
    for (column, text) in cells.filter(|(_, text)| !text.trim().is_empty()) {
        let trimmed = text.trim();
        let owned = || Some(trimmed.to_owned());
        match column {
            'A' => trimmed.clone_into(&mut o.code),
            'B' => o.char1 = owned(),
            'C' => o.char2 = owned(),
            'D' => o.quant1 = Some(quantification(trimmed, decimal)),
            'E' => o.quant2 = Some(quantification(trimmed, decimal)),
            'F' => o.remark = Some(text.to_owned()),
            'G' => o.clock_from = Some(clock(trimmed, line, decimal)?),
            'H' => o.clock_to = Some(clock(trimmed, line, decimal)?),
            'I' => o.station_um = Some(length(trimmed, line, decimal, METRES)?),
            'J' => o.continuous = owned(),
            'K' => o.at_joint = at_joint(trimmed, line, notices),
            'L' => o.place = owned(),
            'M' => o.photo = owned(),
            'N' => o.video = owned(),
            _ => {}
        }
    }
    if o.code.is_empty() {
        let expected = "a main code such as BAB (column A)";
        return Err(ReadError::new(ReadCode::NoCode, line, expected, ""));
    }
    Ok(o)
}

fn quantification(text: &str, decimal: char) -> Quantification {
    Quantification { as_written: text.to_owned(), millionths: millionths(text, decimal) }
}

fn clock(text: &str, line: u64, decimal: char) -> Result<Clock, ReadError> {
    let whole = millionths(text, decimal).filter(|m| m % 1_000_000 == 0);
    let hour = whole.and_then(|m| u8::try_from(m / 1_000_000).ok());
    hour.and_then(Clock::new)
        .ok_or_else(|| ReadError::new(ReadCode::ClockHour, line, "a clock hour from 1 to 12", text))
}

fn at_joint(text: &str, line: u64, notices: &mut Vec<Notice>) -> Option<bool> {
    if text == "A" {
        return Some(true);
    }
    let text = format!("{text:?} in column K (joint) is not A: left out");
    notices.push(Notice { code: NoticeCode::UnknownValue, line, text });
    None
}

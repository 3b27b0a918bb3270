//! Resin's time and the packer's pressure by name.

use serde_json::{Value, json};

use super::CheckError;
use super::input::Input;
use crate::checks::packer_air::{self, PackerReading};
use crate::checks::sheet_rows::{self, Knot, SafeSide};
use crate::checks::wall::INSIDE_DIAMETER_MM;
use crate::checks::{Refused, end_thrust as thrust, equivalent_age as age};

pub fn working_time(input: &Input) -> Result<Value, CheckError> {
    let rows = input.rows(&sheet_rows::SHEET)?;
    let knots: Vec<Knot> = rows.into_iter().map(|[celsius, minutes]| Knot { celsius, minutes }).collect();
    sheet_rows::checked(&knots, |index| index + 1).map_err(in_the_sheet)?;
    if let Some(row) = knots.windows(2).position(|pair| matches!(pair, [a, b] if a.celsius == b.celsius)) {
        return Err(Refused::RowsOutOfOrder { row: row + 2 }.into());
    }
    let celsius = input.number(&sheet_rows::SHEET_TEMPERATURE_C)?;
    Ok(json!({ "minutes": sheet_rows::interpolate(&knots, celsius, SafeSide::Shorter)? }))
}

fn in_the_sheet(refused: Refused) -> CheckError {
    CheckError { field: Some(sheet_rows::SHEET.name.into()), ..CheckError::from(refused) }
}

pub fn equivalent_age(input: &Input) -> Result<Value, CheckError> {
    let activation = input.number(&age::ACTIVATION_KELVIN)?;
    let reference = input.number(&age::REFERENCE_C)?;
    let segments: Vec<(f64, f64)> = input.rows(&age::SEGMENTS)?.into_iter().map(|[a, b]| (a, b)).collect();
    if segments.is_empty() {
        return Err(Refused::out_of_range(age::SEGMENTS.name, "must have at least one row").into());
    }
    age::ACTIVATION_KELVIN.check(activation)?;
    age::REFERENCE_C.check(reference)?;
    let minutes = age::equivalent_minutes(activation, reference, &segments)
        .map_err(|refused| CheckError { field: Some(age::SEGMENTS.name.into()), ..refused.into() })?;
    Ok(json!({ "minutes": minutes }))
}

pub fn packer_pressure(input: &Input) -> Result<Value, CheckError> {
    let gauge = input.number(&packer_air::GAUGE_BAR)?;
    let before = input.number(&packer_air::TEMPERATURE_BEFORE_C)?;
    let after = input.number(&packer_air::TEMPERATURE_AFTER_C)?;
    let atmosphere = input.number(&packer_air::ATMOSPHERIC_BAR)?;
    Ok(json!({ "gauge_bar": packer_air::after_cooling(gauge, before, after, atmosphere)? }))
}

pub fn net_pressure(input: &Input) -> Result<Value, CheckError> {
    let (gauge, head) = (input.number(&packer_air::GAUGE_BAR)?, input.number(&packer_air::GROUNDWATER_HEAD_M)?);
    Ok(json!({ "net_kpa": packer_air::net_kpa(gauge, head)? }))
}

pub fn end_thrust(input: &Input) -> Result<Value, CheckError> {
    let (gauge, diameter) = (input.number(&packer_air::GAUGE_BAR)?, input.number(&INSIDE_DIAMETER_MM)?);
    Ok(json!({ "force_n": thrust::force_n(gauge, diameter)? }))
}

pub fn pressure_decay(input: &Input) -> Result<Value, CheckError> {
    let rows = input.rows(&packer_air::READINGS)?;
    let reading = |[minutes, gauge_bar, celsius]: [f64; 3]| PackerReading { minutes, gauge_bar, celsius };
    let readings: Vec<_> = rows.into_iter().map(reading).collect();
    let atmosphere = packer_air::ATMOSPHERIC_BAR.check(input.number(&packer_air::ATMOSPHERIC_BAR)?)?;
    let limit = packer_air::LOWER_LIMIT_BAR.check(input.number(&packer_air::LOWER_LIMIT_BAR)?)?;
    let found = packer_air::decay(&readings, atmosphere, limit)
        .map_err(|refused| CheckError { field: Some(packer_air::READINGS.name.into()), ..refused.into() })?;
    Ok(json!({
        "leak_bar_per_h": found.leak.map(|leak| leak.bar_per_h),
        "low": found.leak.map(|leak| leak.low),
        "high": found.leak.map(|leak| leak.high),
        "minutes_to_limit": found.leak.and_then(|leak| leak.minutes_to_limit),
        "verdict": found.verdict.word(),
    }))
}

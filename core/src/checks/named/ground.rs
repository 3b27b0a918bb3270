//! Positions, air and water on the site by name.

use serde_json::{Value, json};

use super::CheckError;
use super::input::Input;
use crate::checks::air_test::LENGTH_M;
use crate::checks::atmosphere::{self as air, Air, Limits};
use crate::checks::field::{Allowed, Field};
use crate::checks::flow::{self, PluggedLine};
use crate::checks::wall::INSIDE_DIAMETER_MM;
use crate::geodesy::{self, Place};

const LAT: Field = Field::from("lat", "°", -90.0, 90.0);
const LON: Field = Field::from("lon", "°", -360.0, 360.0);
pub const FROM: Field = Field::other("from", "", Allowed::Object(&[LAT, LON]));
pub const TO: Field = Field::other("to", "", Allowed::Object(&[LAT, LON]));
pub const STATION_M: Field = Field::from("station_m", "m", 0.0, 2.1e7);

fn place(input: &Input, field: &Field) -> Result<Place, CheckError> {
    let named = |error: CheckError| CheckError { field: Some(field.name.into()), ..error };
    let inside = input.needed_object(field).map_err(named)?;
    let lat = inside.number(&LAT).map_err(named)?;
    Ok(Place { lat, lon: inside.number(&LON).map_err(named)? })
}

pub fn geodesic(input: &Input) -> Result<Value, CheckError> {
    let found = geodesy::way(place(input, &FROM)?, place(input, &TO)?)?;
    Ok(json!({
        "distance_m": found.distance_m,
        "azimuth_from_deg": found.azimuths_deg.map(|(from, _)| from),
        "azimuth_to_deg": found.azimuths_deg.map(|(_, to)| to),
    }))
}

pub fn station_position(input: &Input) -> Result<Value, CheckError> {
    let (from, to) = (place(input, &FROM)?, place(input, &TO)?);
    let there = geodesy::at_station(from, to, input.number(&STATION_M)?)?;
    Ok(json!({ "lat": there.lat, "lon": there.lon }))
}

pub fn atmosphere(input: &Input) -> Result<Value, CheckError> {
    let read = Air {
        oxygen_pct: input.number(&air::OXYGEN_PCT)?,
        flammable_pct_lfl: input.number(&air::FLAMMABLE_PCT_LFL)?,
        hydrogen_sulfide_ppm: input.number(&air::HYDROGEN_SULFIDE_PPM)?,
        carbon_monoxide_ppm: input.number(&air::CARBON_MONOXIDE_PPM)?,
    };
    let limits = match input.object(&air::LIMITS)? {
        Some(contract) => limits(&contract)?,
        None => Limits::regulation(),
    };
    let alarms = air::alarms(&read, &limits)?;
    Ok(json!({ "acceptable": alarms.is_empty(), "alarms": alarms, "source": limits.source }))
}

/// A limit that the contract leaves out is the regulation's, and the source says so.
fn limits(contract: &Input) -> Result<Limits, CheckError> {
    let named = |error: CheckError| CheckError { field: Some(air::LIMITS.name.into()), ..error };
    let regulation = Limits::regulation();
    let mut left_out = false;
    let mut limit = |field: &Field, regulation: f64| match contract.optional_number(field)? {
        Some(limit) => Ok(limit),
        None => {
            left_out = true;
            Ok(regulation)
        }
    };
    let mut limits = Limits {
        oxygen_min_pct: limit(&air::OXYGEN_MIN_PCT, regulation.oxygen_min_pct).map_err(named)?,
        oxygen_max_pct: limit(&air::OXYGEN_MAX_PCT, regulation.oxygen_max_pct).map_err(named)?,
        flammable_pct_lfl: limit(&air::FLAMMABLE_PCT_LFL, regulation.flammable_pct_lfl).map_err(named)?,
        hydrogen_sulfide_ppm: limit(&air::HYDROGEN_SULFIDE_PPM, regulation.hydrogen_sulfide_ppm).map_err(named)?,
        carbon_monoxide_ppm: limit(&air::CARBON_MONOXIDE_PPM, regulation.carbon_monoxide_ppm).map_err(named)?,
        source: contract.optional_text(&air::LIMITS_SOURCE).map_err(named)?.unwrap_or_else(|| "limits as given".into()),
    };
    if left_out {
        limits.source = format!("{}; what it leaves out: {}", limits.source, air::SOURCE);
    }
    Ok(limits)
}

pub fn partial_flow(input: &Input) -> Result<Value, CheckError> {
    let (diameter, slope) = (input.number(&INSIDE_DIAMETER_MM)?, input.number(&flow::SLOPE)?);
    let (manning, depth) = (input.number(&flow::MANNING_N)?, input.number(&flow::DEPTH_MM)?);
    let found = flow::partial_flow(diameter, slope, manning, depth)?;
    Ok(json!({
        "velocity_m_s": found.velocity_m_s,
        "flow_l_s": found.flow_l_s,
        "flow_to_full": found.flow_to_full,
    }))
}

pub fn time_to_surcharge(input: &Input) -> Result<Value, CheckError> {
    let found = flow::time_to_surcharge(&PluggedLine {
        inside_diameter_mm: input.number(&INSIDE_DIAMETER_MM)?,
        length_m: input.number(&LENGTH_M)?,
        slope: input.number(&flow::SLOPE_OR_LEVEL)?,
        inflow_l_s: input.number(&flow::INFLOW_L_S)?,
        allowed_depth_m: input.number(&flow::ALLOWED_DEPTH_M)?,
    })?;
    Ok(json!({ "storage_l": found.storage_l, "minutes": found.minutes }))
}

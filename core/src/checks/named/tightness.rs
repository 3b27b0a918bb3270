//! Air and water tests by name.

use serde_json::{Value, json};

use super::CheckError;
use super::input::Input;
use crate::checks::air_test::{self, Method};
use crate::checks::wall::INSIDE_DIAMETER_MM;
use crate::checks::water_test::{self, Scope};

pub fn air_test_f1417(input: &Input) -> Result<Value, CheckError> {
    let diameter = input.number(&INSIDE_DIAMETER_MM)?;
    let (length, drop) = (input.number(&air_test::LENGTH_M)?, input.number(&air_test::DROP_PSI)?);
    let found = air_test::f1417(diameter, length, drop)?;
    let raised = match input.optional_number(&air_test::GROUNDWATER_FT)? {
        Some(head) => {
            let (start, most) = (input.number(&air_test::START_PSI)?, input.number(&air_test::MOST_PSI)?);
            Some(air_test::raised_for_groundwater(start, head, most)?)
        }
        None => None,
    };
    Ok(json!({
        "time_s": found.time_s,
        "length_for_minimum_time_m": found.length_for_minimum_time_m,
        "start_pressure_psi": raised,
    }))
}

pub fn air_test_en1610(input: &Input) -> Result<Value, CheckError> {
    let dn = input.number(&air_test::DN_MM)?;
    let method = input.word(&air_test::METHOD, Method::named)?;
    let found = air_test::en1610(dn, method, input.yes(&air_test::DRY_CONCRETE)?)?;
    Ok(json!({
        "start_pressure_mbar": found.start_pressure_mbar,
        "allowed_drop_mbar": found.allowed_drop_mbar,
        "time_min": found.time_min,
        "time_rounded_min": found.time_rounded_min,
    }))
}

pub fn water_test_en1610(input: &Input) -> Result<Value, CheckError> {
    let (dn, length) = (input.number(&air_test::DN_MM)?, input.number(&air_test::LENGTH_M)?);
    let allowed = water_test::allowed_l(dn, length, input.word(&water_test::SCOPE, Scope::named)?)?;
    Ok(json!({ "allowed_l": allowed }))
}

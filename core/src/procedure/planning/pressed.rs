//! Between which pressures the packer is held, and how hard an end pushes.

use serde::Serialize;

use super::super::plan::Window;
use super::super::rules::{Broken, Rule, n, t};
use super::super::times;
use super::Case;
use super::picked::diameter_given;
use crate::checks::end_thrust::end_thrust;
use crate::checks::pressure_window::{self, Least, Limit, LowGoverns, pressure_window};
use crate::shelf::{Contract, PackerSheet, PatchSheet, Sourced};
use crate::units::{Length, Pressure};

/// The pressure window and the thrust.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Pressed {
    pub window: Window,
    /// At the top of the window, with the water behind, whether or not water can pass the packer.
    pub thrust_n: i64,
}

impl Case<'_> {
    /// Returns window and thrust, or `None` as long as something is not chosen.
    pub fn pressed(&self) -> Option<Result<Pressed, Broken>> {
        let (contract, patch, packer) = (self.picked.contract?, self.picked.patch?, self.picked.packer?);
        diameter_given(self.choice).then(|| {
            let window = self.window(contract, patch, packer)?;
            let thrust = end_thrust(window.upper_pa, self.choice.diameter_most_um, self.choice.behind_um);
            Ok(Pressed { thrust_n: thrust.map_err(times::broken)?.total_n, window })
        })
    }

    /// Returns the pressure window of a patch on a packer in this pipe.
    pub fn window(&self, contract: &Contract, patch: &PatchSheet, packer: &PackerSheet) -> Result<Window, Broken> {
        let least = Least {
            gauge_pa: patch.gauge_least_pa.value,
            net_pa: patch.net_least_pa.value,
            source: patch.net_least_pa.source.clone(),
        };
        let limits = self.limits(contract, patch, packer)?;
        let found = pressure_window(&least, self.choice.head_um, &limits).map_err(times::broken)?;
        Ok(Window {
            lower_pa: found.low_pa,
            upper_pa: found.high_pa,
            lower_governs: low_governs(&found),
            upper_governs: found.high_governs,
            water_pa: found.water_pa,
            net_least_pa: patch.net_least_pa.value,
            target_pa: middle(found.low_pa, found.high_pa),
        })
    }

    /// Returns the limits from above: packer at this diameter, patch, and host pipe and contract where somebody named one.
    fn limits(&self, contract: &Contract, patch: &PatchSheet, packer: &PackerSheet) -> Result<Vec<Limit>, Broken> {
        let most = self.choice.diameter_most_um;
        let named = |name: &str, limit: &Sourced<Pressure>| Limit {
            name: name.into(),
            most_pa: limit.value,
            source: limit.source.clone(),
        };
        let mut limits = vec![packer_limit(packer, most)?, named("patch", &patch.pressure_most_pa)];
        limits.extend(contract.host_pipe_most_pa.as_ref().map(|limit| named("host pipe", limit)));
        limits.extend(contract.pressure_most_pa.as_ref().map(|limit| named("contract", limit)));
        Ok(limits)
    }
}

/// Returns the packer's limit at an inside diameter: the label's first row at or above it.
fn packer_limit(packer: &PackerSheet, most: Length) -> Result<Limit, Broken> {
    let row = packer.pressure_most.iter().filter(|row| row.diameter_um >= most).min_by_key(|row| row.diameter_um);
    let Some(row) = row else {
        let values = [("packer", t(packer.id.clone())), ("most_um", n(most.as_um()))];
        return Err(Broken::with(Rule::PressureNotNamed, &values));
    };
    let name = format!("packer {} at {} mm", packer.id, super::candidates::mm(most));
    Ok(Limit { name, most_pa: row.most_pa, source: row.source.clone() })
}

fn low_governs(window: &pressure_window::Window) -> String {
    match window.low_governs {
        LowGoverns::LeastGauge => "least gauge".into(),
        LowGoverns::LeastNetAndWater => "least net and water".into(),
    }
}

/// Returns the middle of the window, rounded down to 0.01 bar; unrounded where that would fall below the window.
fn middle(low: Pressure, high: Pressure) -> Pressure {
    let middle = (low.as_pa() + high.as_pa()).div_euclid(2);
    let rounded = middle.div_euclid(1000) * 1000;
    Pressure::from_pa(if rounded < low.as_pa() { middle } else { rounded })
}

//! Flow control: does the plugged line hold the inflow for as long as the repair needs it, asked before mixing.

use serde::{Deserialize, Serialize};

use super::Refused;
use super::flow::{PluggedLine, time_to_surcharge};
use super::refused::span_not_negative;
use crate::units::{Length, Span};

/// The line above the plug, and what flows into it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Upstream {
    pub inside_diameter_um: Length,
    pub length_um: Length,
    /// Fall per length, in parts per million: 1 % is 10 000.
    pub slope_ppm: u32,
    /// As measured on the day, in millilitres per second.
    pub inflow_ml_s: u32,
    /// Above the invert at the plug: up to where nobody's cellar or gully is reached.
    pub allowed_depth_um: Length,
}

/// What must fit in before the plug comes out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PlannedStop {
    /// From setting the plug to target pressure.
    pub until_target_ms: Span,
    pub hold_ms: Span,
    pub margin_ms: Span,
}

/// How long the line stores the inflow, against what is planned.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Storing {
    pub storage_ml: i64,
    /// None without inflow: then it never fills.
    pub lasts_ms: Option<Span>,
    pub needed_ms: Span,
    pub is_enough: bool,
}

/// Returns how long the upstream line stores the measured inflow, and whether that is enough. Rounded down to 1 ml and 1 s.
///
/// Volume as in [`time_to_surcharge`]: level surface, dry at the start, manholes and laterals don't count. Exactly enough is
/// enough. Errors: `OutOfRange` with the field.
/// Source: design rule of this project; geometry of the pipe.
pub fn storing(upstream: &Upstream, planned: &PlannedStop) -> Result<Storing, Refused> {
    let needed_ms = needed(planned)?;
    let flows = upstream.inflow_ml_s > 0;
    let found = time_to_surcharge(&PluggedLine {
        inside_diameter_mm: upstream.inside_diameter_um.as_mm(),
        length_m: upstream.length_um.as_m(),
        slope: f64::from(upstream.slope_ppm) / 1e6,
        inflow_l_s: if flows { f64::from(upstream.inflow_ml_s) / 1e3 } else { 1.0 },
        allowed_depth_m: upstream.allowed_depth_um.as_m(),
    })?;
    let lasts_ms = flows.then(|| Span::from_ms(((found.minutes * 60.0).floor() as i64).saturating_mul(1000)));
    Ok(Storing {
        storage_ml: (found.storage_l * 1e3).floor() as i64,
        lasts_ms,
        needed_ms,
        is_enough: lasts_ms.is_none_or(|lasts| lasts >= needed_ms),
    })
}

fn needed(planned: &PlannedStop) -> Result<Span, Refused> {
    let mut sum = 0_i64;
    for (field, span) in
        [("time to target", planned.until_target_ms), ("hold", planned.hold_ms), ("margin", planned.margin_ms)]
    {
        sum = sum.saturating_add(span_not_negative(field, span)?.as_ms());
    }
    Ok(Span::from_ms(sum))
}

#[cfg(test)]
mod tests {
    use super::super::cover::tests::mm;
    use super::super::sheet_rows::tests::minutes;
    use super::*;

    fn upstream(inflow_ml_s: u32) -> Upstream {
        Upstream {
            inside_diameter_um: mm(200.0),
            length_um: mm(40_000.0),
            slope_ppm: 10_000,
            inflow_ml_s,
            allowed_depth_um: mm(100.0),
        }
    }

    fn planned(hold: f64) -> PlannedStop {
        PlannedStop { until_target_ms: minutes(0.0), hold_ms: minutes(hold), margin_ms: minutes(1.0) }
    }

    #[test]
    fn half_full_at_the_plug_66_litres_last_66_seconds_at_a_litre_a_second() {
        // The hoof of Archimedes: 2/3 · 0.1² · 10 m = 66.67 l.
        let found = storing(&upstream(1000), &planned(0.1)).unwrap();
        assert_eq!((found.storage_ml, found.lasts_ms), (66_666, Some(Span::from_ms(66_000))));
        assert!(found.is_enough);
        assert!(!storing(&upstream(1000), &planned(0.11)).unwrap().is_enough);
    }

    #[test]
    fn without_inflow_it_never_fills() {
        let dry = storing(&upstream(0), &planned(600.0)).unwrap();
        assert_eq!((dry.lasts_ms, dry.is_enough), (None, true));
    }

    #[test]
    fn a_line_that_is_none_is_refused() {
        assert!(storing(&Upstream { length_um: mm(0.0), ..upstream(100) }, &planned(60.0)).is_err());
        assert!(storing(&upstream(100), &PlannedStop { hold_ms: Span::from_ms(-1), ..planned(60.0) }).is_err());
    }
}

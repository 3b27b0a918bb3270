//! A hold that was handed over, as the device that asks sees it.

use serde::Serialize;

use crate::procedure::repair::Repair;

#[derive(Clone, Debug, Serialize)]
pub struct HandedView {
    /// By the wall clock of the phone that handed it over, and the offset of that clock.
    pub at_ms: i64,
    pub offset_min: i32,
    /// To whom or which phone, in words; may be empty.
    pub to: String,
    /// The phone that handed it over, and the one that took it over.
    pub from: String,
    pub taken_by: Option<String>,
    /// This device handed it over and nobody is known to have taken it over, so it may take it back.
    pub given: bool,
    /// Another device handed it over and nobody is known to have taken it over: this one may.
    pub offered: bool,
    /// Another phone watches it.
    pub away: bool,
    /// The code that ties the clocks of both phones together, while this device hands over; filled in by the door.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub code: Option<Code>,
    /// When its code was photographed here, if the hold can be taken over by that; filled in by the door.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tied_ms: Option<i64>,
}

/// A QR code as one path of an SVG, one unit a module, and how many modules wide it is with its quiet zone.
#[derive(Clone, Debug, Serialize)]
pub struct Code {
    pub path: String,
    pub modules: i32,
}

/// Returns the hand-over of the hold that runs, if there was one.
pub fn handed(repair: &Repair, device: &str) -> Option<HandedView> {
    repair.handed().map(|handed| {
        let own = handed.at.device == device;
        let open = handed.taken.is_none();
        HandedView {
            at_ms: handed.at.moment.at_ms,
            offset_min: handed.at.moment.offset_min,
            to: handed.to.clone(),
            from: handed.at.device.clone(),
            taken_by: handed.taken.as_ref().map(|taken| taken.at.device.clone()),
            given: own && open,
            offered: !own && open,
            away: repair.is_away(device),
            code: None,
            tied_ms: None,
        }
    })
}

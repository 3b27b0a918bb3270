//! The outside world as plain data, gathered at the edge once per request.
//!
//! Nothing in the core asks a clock, a receiver or a random source: what it may know stands here.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

/// A moment as a device saw it: the wall clock with its offset, and the clock that has run since the device started.
///
/// The boot clock runs on while the device sleeps and nobody can set it; `boot_id` says which start it counts from.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Moment {
    /// Milliseconds since 1970-01-01T00:00:00Z by the wall clock.
    pub at_ms: i64,
    /// Minutes that local time is ahead of UTC.
    pub offset_min: i32,
    /// Milliseconds since the device started, sleep included.
    pub boot_ms: i64,
    /// Names one start of one device.
    pub boot_id: String,
}

impl Moment {
    /// Returns the moment `by_ms` before, by both clocks. Before the device was started no boot clock tells: then it is of
    /// no start that is known.
    pub fn earlier(&self, by_ms: i64) -> Self {
        let (at_ms, boot_ms) = (self.at_ms.saturating_sub(by_ms), self.boot_ms.saturating_sub(by_ms));
        let boot_id = if boot_ms < 0 { String::new() } else { self.boot_id.clone() };
        Self { at_ms, boot_ms, boot_id, ..*self }
    }
}

/// Where the device was, or why nobody knows.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case", deny_unknown_fields)]
pub enum Position {
    /// A position in WGS 84.
    Fix {
        /// Latitude in units of 1e-7 degree, north positive.
        lat_e7: i64,
        /// Longitude in units of 1e-7 degree, east positive.
        lon_e7: i64,
        /// Radius of 68 % confidence in millimetres, if the source states one.
        #[serde(default)]
        accuracy_mm: Option<i64>,
        /// How old the position was when it was used, in milliseconds.
        age_ms: i64,
        source: PositionSource,
    },
    /// No position, and why.
    Absent { why: NoPosition },
}

impl Default for Position {
    fn default() -> Self {
        Self::Absent { why: NoPosition::NotAsked }
    }
}

/// What gave the position.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum PositionSource {
    /// The satellite receiver of the phone.
    Receiver,
    /// The browser, which does not say how it knows.
    Browser,
    /// Coordinates that somebody typed.
    Typed,
}

/// Why there is no position.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum NoPosition {
    NotAsked,
    Refused,
    Unavailable,
    NotYet,
}

/// All that one request may know of the world.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Facts {
    /// When it happened.
    pub moment: Moment,
    /// What the clocks showed when it was keyed in from paper; `moment` is then the time that stands on the paper.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub keyed: Option<Moment>,
    #[serde(default)]
    pub position: Position,
    /// Who taps, by the id in the list of people. Not authenticated unless `key` is there.
    #[serde(default)]
    pub person: Option<String>,
    /// The fingerprint of the key that was opened with its PIN for this request.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub key: Option<String>,
    /// Which device, by the id made at its first start.
    pub device: String,
    /// Charge of the battery in per cent, if the platform tells.
    #[serde(default)]
    pub battery_pct: Option<u8>,
    /// What was typed with a unit of its own, by the name of its field: `17.4 psi`. The events hold the same in SI.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub typed: BTreeMap<String, String>,
}

impl Facts {
    /// Returns when somebody tapped: of what was keyed in from paper that is later than it happened.
    pub fn tapped(&self) -> &Moment {
        self.keyed.as_ref().unwrap_or(&self.moment)
    }

    /// Returns how long after it happened it was keyed in from paper, in milliseconds; zero for anything else.
    pub fn keyed_after_ms(&self) -> i64 {
        self.tapped().at_ms - self.moment.at_ms
    }

    /// Returns the facts of something that stands on paper with the time `at_ms` by the wall clock. Both clocks are set
    /// back alike, and where the device is now says nothing about where it happened.
    pub fn from_paper(&self, at_ms: i64) -> Self {
        let ago_ms = self.moment.at_ms - at_ms;
        let moment = Moment { at_ms, boot_ms: self.moment.boot_ms - ago_ms, ..self.moment.clone() };
        let position = Position::Absent { why: NoPosition::NotAsked };
        Self { moment, position, keyed: Some(self.moment.clone()), battery_pct: None, ..self.clone() }
    }
}

/// What only the edge can sense: the clocks, the device, something random.
///
/// The rest of the facts (who, where, battery) come with the request, because the screen knows them.
#[derive(Clone, Default)]
pub struct Sensed {
    pub moment: Moment,
    pub device: String,
    /// Fresh random bytes for new ids.
    pub fresh: [u8; 16],
    /// Fresh random bytes for keys: never shown, never kept.
    pub seed: [u8; 32],
}

impl std::fmt::Debug for Sensed {
    fn fmt(&self, formatter: &mut std::fmt::Formatter) -> std::fmt::Result {
        formatter
            .debug_struct("Sensed")
            .field("moment", &self.moment)
            .field("device", &self.device)
            .finish_non_exhaustive()
    }
}

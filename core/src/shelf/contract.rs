//! The contract: the limits that the owner sets, each with its clause.

use serde::{Deserialize, Serialize};

use super::Sourced;
use crate::procedure::stage::Stage;
use crate::units::{Length, Pressure, Span};
use crate::words::Reader;

/// One contract between an owner and a contractor, with every limit that a repair is measured by.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Contract {
    pub id: String,
    /// Number and title as the owner writes them.
    pub title: String,
    pub owner: String,
    pub contractor: String,
    pub crew: String,
    pub paper: Paper,
    /// Whether the record may lie inside the certificate, for owners whose archive takes no attachments.
    #[serde(default)]
    pub attachments: Attachments,
    /// In which language, units and dates the owner wants the certificate, whoever makes it.
    #[serde(default)]
    pub reader: Reader,
    /// Least cover of the defect on each side, after all errors.
    pub cover_least_um: Sourced<Length>,
    /// How far the patch may come to rest from where it was meant to, at most.
    pub placement_error_um: Sourced<Length>,
    /// How far apart two patches in series must overlap.
    pub series_overlap_um: Sourced<Length>,
    pub reading_interval_ms: Sourced<Span>,
    pub reading_grace_ms: Sourced<Span>,
    pub gap_rule: Sourced<GapRule>,
    /// How much longer the loaded packer takes than the test push, in per cent (130 = 1.3 times).
    pub loading_factor_pct: Sourced<i64>,
    /// Time that must be left over when the pressure stands.
    pub margin_ms: Sourced<Span>,
    /// Estimate of the wet-out until there are recorded ones.
    pub wet_out_ms: Sourced<Span>,
    /// Estimate of the way in, for the plan; the test push replaces it.
    pub push_ms: Sourced<Span>,
    /// Estimate of connecting the air and raising the pressure.
    pub connect_ms: Sourced<Span>,
    /// How old the temperatures may be at the second go.
    pub temperatures_age_ms: Sourced<Span>,
    /// How long after cleaning and viewing again the patch may be placed.
    pub cleaning_age_ms: Sourced<Span>,
    pub air_interval_ms: Sourced<Span>,
    pub air_limits: AirLimits,
    /// Most gauge pressure that the owner allows on the pipe.
    #[serde(default)]
    pub pressure_most_pa: Option<Sourced<Pressure>>,
    /// Most gauge pressure that the host pipe bears, if somebody has said so.
    #[serde(default)]
    pub host_pipe_most_pa: Option<Sourced<Pressure>>,
    pub lateral_open_least_pct: Sourced<i64>,
    pub lateral_open_most_pct: Sourced<i64>,
    pub fold_limit: Sourced<FoldLimit>,
    /// Whether a doubtful attempt can be accepted after the camera, or must be made anew.
    pub doubtful: Sourced<DoubtRule>,
    /// Whether an air or water test is asked after full cure.
    pub tightness_test: Sourced<bool>,
    pub warranty_months: Sourced<i64>,
    /// Photos that must be there when their stage closes.
    pub photos: Vec<PhotoRule>,
}

/// The page that the owner archives.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Paper {
    A4,
    Letter,
}

/// Whether the owner's archive takes a file inside a file.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Attachments {
    /// The certificate is PDF/A-3a, with the record inside.
    #[default]
    Allowed,
    /// The certificate is PDF/A-2a, without it.
    Refused,
}

/// What a gap between two readings that is too long costs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum GapRule {
    /// None of the gap counts.
    Whole,
    /// The allowed part of the gap counts, the excess does not.
    Excess,
}

/// The highest fold that is accepted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case", deny_unknown_fields)]
pub enum FoldLimit {
    /// The greater of a share of the nominal size and a least height.
    ShareOrHeight { share_permille: i64, height_um: Length },
    /// A share of the nominal size alone.
    Share { share_permille: i64 },
}

impl FoldLimit {
    /// Returns the highest accepted fold in a pipe of this nominal size, to the micrometre, rounded down.
    pub fn height(self, nominal: Length) -> Length {
        match self {
            Self::ShareOrHeight { share_permille, height_um } => share(nominal, share_permille).max(height_um),
            Self::Share { share_permille } => share(nominal, share_permille),
        }
    }
}

fn share(of: Length, permille: i64) -> Length {
    Length::from_um(of.as_um().saturating_mul(permille) / 1000)
}

/// What becomes of an attempt in doubt.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum DoubtRule {
    /// The foreman decides after photos of the full turn.
    ForemanDecides,
    /// The patch is not accepted; a new attempt is made.
    NewAttempt,
}

/// Limits of the air below ground; outside them nobody enters and the alarm stands.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct AirLimits {
    /// Oxygen in tenths of a per cent by volume: alarm below.
    pub oxygen_least_permille: i64,
    /// Oxygen in tenths of a per cent by volume: alarm above.
    pub oxygen_most_permille: i64,
    /// Flammable gas in per cent of the lower flammable limit: alarm from here on.
    pub flammable_alarm_pct: i64,
    /// Hydrogen sulfide in ppm: alarm from here on.
    pub hydrogen_sulfide_alarm_ppm: i64,
    /// Carbon monoxide in ppm: alarm from here on.
    pub carbon_monoxide_alarm_ppm: i64,
    pub source: String,
}

/// A photo that the owner asks for.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PhotoRule {
    pub key: String,
    pub stage: Stage,
    pub label: String,
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: the two limits as practice states them, EN ISO 11296-4 (2 % of DN or 6 mm, whichever is greater)
    /// and a textbook table (5 % of the nominal diameter).
    #[test]
    fn the_fold_limit_follows_the_contract() {
        let standard = FoldLimit::ShareOrHeight { share_permille: 20, height_um: Length::from_um(6_000) };
        let textbook = FoldLimit::Share { share_permille: 50 };
        for (dn, by_standard, by_textbook) in
            [(100, 6_000, 5_000), (300, 6_000, 15_000), (400, 8_000, 20_000), (600, 12_000, 30_000)]
        {
            let nominal = Length::from_um(dn * 1_000);
            assert_eq!(standard.height(nominal).as_um(), by_standard);
            assert_eq!(textbook.height(nominal).as_um(), by_textbook);
        }
    }
}

//! Whether a short resin patch suits an observation: advice for whoever picks the defect, never a gate.
//!
//! Common practice, no source: every line of this file. What counts in the end is the foreman's eye, the data sheet of
//! the patch and the contract; no limit in millimetres or per cent stands here, because none has a source.

use super::Observation;
use crate::words::retold;
use serde::{Deserialize, Serialize};

/// The advice.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "advice", rename_all = "snake_case")]
pub enum Patchable {
    /// A patch is the usual repair.
    Yes,
    /// A patch can be right after something else was done or looked at.
    WithCare {
        /// What.
        why: Why,
    },
    /// A patch does not mend this.
    No {
        /// Why not.
        why: Why,
    },
}

/// Why a patch needs care or does not suit, by a name that stays.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Why {
    /// Deformed pipe.
    Deformed,
    /// Open crack.
    OpenCrack,
    /// Broken pieces, still there.
    BrokenPieces,
    /// Pieces or wall missing.
    WallMissing,
    /// Collapse.
    Collapsed,
    /// Bricks or mortar.
    Masonry,
    /// Reinforcement visible.
    Reinforcement,
    /// Something stands into the pipe.
    StandsIn,
    /// At a connection.
    AtConnection,
    /// Something blocks the way.
    Blocked,
    /// A joint with a gap or step.
    JointStep,
    /// A joint at an angle.
    JointAngle,
    /// Old lining or repair that is loose.
    LooseLining,
    /// Smooth plastic wall.
    PlasticWall,
    /// Soil or a hollow behind the wall.
    BehindTheWall,
    /// Roots.
    Roots,
    /// Deposits.
    Deposits,
    /// Soil comes in.
    SoilComingIn,
    /// Damp or dripping.
    WetWall,
    /// Water runs in.
    RunningWater,
    /// Water runs out.
    LookForTheOpening,
    /// No damage to the wall.
    NoDamage,
    /// A code without words.
    UnknownCode,
}

impl Why {
    /// Returns the reason with what to do, in plain words, in the language of who reads.
    pub fn words(self) -> String {
        retold(match self {
            Self::Deformed => {
                "A patch does not make the pipe round again. Measure the inside diameter both ways first."
            }
            Self::OpenCrack => "Check that the pieces hold; fill the gap first if the patch could sink into it.",
            Self::BrokenPieces => "The pieces must sit firm when the packer presses on them.",
            Self::WallMissing => "Fill what is missing first; a patch alone does not bridge a hole. Ask an engineer.",
            Self::Collapsed => "A collapsed pipe is dug up or replaced.",
            Self::Masonry => "Set and point the masonry first.",
            Self::Reinforcement => "Clean and cover the steel first; ask an engineer.",
            Self::StandsIn => "Cut back what stands in first: it tears the packer and the patch.",
            Self::AtConnection => {
                "A straight patch closes the connection: it has to be opened again, and its edge sealed."
            }
            Self::Blocked => "Clear it first, then look again.",
            Self::JointStep => "Measure gap and step: the packer must pass, and the patch must lie on both sides.",
            Self::JointAngle => "In an angle the patch may fold: check that it can lie flat on both sides.",
            Self::LooseLining => "Take out what is loose first: a patch holds only as well as what it sticks to.",
            Self::PlasticWall => "Resin sticks poorly to smooth plastic: roughen the wall as the data sheet says.",
            Self::BehindTheWall => "Fill the hollow behind the wall first; ask an engineer.",
            Self::Roots => "Roots are cut and cleaned out. Then look at the crack or joint they came through.",
            Self::Deposits => "Deposits are cleaned off, not patched.",
            Self::SoilComingIn => "Clean, then look at the opening the soil came through, and at the hollow behind it.",
            Self::WetWall => "Dry or seal the wall first: water under the patch keeps it from sticking.",
            Self::RunningWater => "Stop the water first, for example by injection, then look again.",
            Self::LookForTheOpening => "Find the opening the water goes out through and pick that.",
            Self::NoDamage => "This is not damage to the wall.",
            Self::UnknownCode => "The code is not known: find out what it stands for.",
        })
    }
}

/// Returns the advice for an observation.
pub fn patchable(observation: &Observation) -> Patchable {
    let char1 = observation.char1.as_deref().unwrap_or_default();
    match observation.code.get(..2) {
        Some("BA") => fabric(&observation.code, char1),
        Some("BB") => operation(&observation.code, char1),
        Some("BC" | "BD" | "AE") => no(Why::NoDamage),
        _ => care(Why::UnknownCode),
    }
}

const fn care(why: Why) -> Patchable {
    Patchable::WithCare { why }
}

const fn no(why: Why) -> Patchable {
    Patchable::No { why }
}

/// Codes of the fabric of the pipe.
fn fabric(code: &str, char1: &str) -> Patchable {
    match (code, char1) {
        ("BAA", _) => care(Why::Deformed),
        ("BAB", "C") => care(Why::OpenCrack),
        ("BAB" | "BAN", _) => Patchable::Yes,
        ("BAC" | "BAD", "C") | ("BAD", "D") => no(Why::Collapsed),
        ("BAC", "B") => care(Why::WallMissing),
        ("BAC", _) => care(Why::BrokenPieces),
        ("BAD" | "BAE", _) => care(Why::Masonry),
        ("BAF", "F" | "G" | "H") => care(Why::Reinforcement),
        ("BAF", "I") => care(Why::WallMissing),
        ("BAF", _) => Patchable::Yes,
        ("BAG" | "BAI", _) => care(Why::StandsIn),
        ("BAH", "E") => no(Why::Blocked),
        ("BAH", _) => care(Why::AtConnection),
        ("BAJ", "C") => care(Why::JointAngle),
        ("BAJ", _) => care(Why::JointStep),
        ("BAK" | "BAL", _) => lining(code, char1),
        ("BAM", _) => care(Why::PlasticWall),
        ("BAO" | "BAP", _) => care(Why::BehindTheWall),
        _ => care(Why::UnknownCode),
    }
}

/// Defects of a lining or of an earlier repair.
fn lining(code: &str, char1: &str) -> Patchable {
    match (code, char1) {
        ("BAK", "B") => no(Why::NoDamage),
        ("BAK", "C" | "I" | "J" | "K" | "N") | ("BAL", "F" | "G") => Patchable::Yes,
        ("BAL", "A") => care(Why::WallMissing),
        ("BAL", "E") => care(Why::StandsIn),
        _ => care(Why::LooseLining),
    }
}

/// Codes of the operation of the pipe.
fn operation(code: &str, char1: &str) -> Patchable {
    match (code, char1) {
        ("BBA", _) => no(Why::Roots),
        ("BBB" | "BBC", _) => no(Why::Deposits),
        ("BBD", _) => no(Why::SoilComingIn),
        ("BBE", _) => no(Why::Blocked),
        ("BBF", "C" | "D") => no(Why::RunningWater),
        ("BBF", _) => care(Why::WetWall),
        ("BBG", _) => care(Why::LookForTheOpening),
        ("BBH", _) => no(Why::NoDamage),
        _ => care(Why::UnknownCode),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::inspection::words::main_codes;

    fn advice(code: &str, char1: &str) -> Patchable {
        let char1 = Some(char1.to_owned()).filter(|c| !c.is_empty());
        patchable(&Observation { code: code.to_owned(), char1, ..Observation::default() })
    }

    /// Common practice, no source.
    #[test]
    fn cracks_are_patched_and_collapse_is_not() {
        assert_eq!(advice("BAB", "B"), Patchable::Yes);
        assert_eq!(advice("BAB", "C"), care(Why::OpenCrack));
        assert_eq!(advice("BAC", "A"), care(Why::BrokenPieces));
        assert_eq!(advice("BAC", "B"), care(Why::WallMissing));
        assert_eq!(advice("BAC", "C"), no(Why::Collapsed));
        assert_eq!(advice("BAA", "A"), care(Why::Deformed));
    }

    /// Common practice, no source.
    #[test]
    fn roots_and_deposits_are_cleaned_and_running_water_is_stopped_first() {
        assert_eq!(advice("BBA", "B"), no(Why::Roots));
        assert_eq!(advice("BBC", "A"), no(Why::Deposits));
        assert_eq!(advice("BBF", "A"), care(Why::WetWall));
        assert_eq!(advice("BBF", "B"), care(Why::WetWall));
        assert_eq!(advice("BBF", "D"), no(Why::RunningWater));
    }

    #[test]
    fn a_connection_or_a_remark_is_no_damage() {
        for code in ["BCA", "BCB", "BCD", "BDB", "AEC"] {
            assert_eq!(advice(code, ""), no(Why::NoDamage), "{code}");
        }
    }

    #[test]
    fn every_code_with_words_has_advice_of_its_own() {
        for code in main_codes() {
            assert_ne!(advice(code, "A"), care(Why::UnknownCode), "{code}");
        }
        assert_eq!(advice("XYZ", ""), care(Why::UnknownCode));
        assert_eq!(advice("ä", ""), care(Why::UnknownCode));
    }
}

//! Small limits of acceptance: fold height, mixing ratio, opening of a lateral.

use serde::{Deserialize, Serialize};

use super::Refused;
use super::refused::{not_negative, positive};
use crate::units::{Length, Mass};

/// How the contract limits folds. The rules differ, so one is named, none is a default.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "rule", rename_all = "snake_case")]
pub enum FoldRule {
    /// The greater of 2 % of DN and 6 mm: EN ISO 11296-4, read as quoted in a training module.
    TwoPercentOrSixMillimetres,
    /// A share of DN in thousandths, e.g. 50 for 5 % (a public specification's rule, read in M. Najafi, 2010, table 7.10).
    PermilleOfDn { permille: u32 },
    /// A plain height.
    Height { most_um: Length },
}

/// Returns the greatest fold height that the rule allows at this DN, rounded down to 1 µm. A fold of just that height passes.
///
/// Errors: `OutOfRange` for a DN that is not above 0 or above 100 m, or a height below zero.
/// Source: the rule's own, see [`FoldRule`]; the contract says which.
pub fn fold_limit(dn: Length, rule: FoldRule) -> Result<Length, Refused> {
    let dn_um = positive("DN", dn)?.as_um();
    if dn_um > 100_000_000 {
        return Err(Refused::out_of_range("DN", "must be at most 100 m"));
    }
    Ok(match rule {
        FoldRule::TwoPercentOrSixMillimetres => Length::from_um((dn_um * 2 / 100).max(6000)),
        FoldRule::PermilleOfDn { permille } => Length::from_um(dn_um.saturating_mul(i64::from(permille)) / 1000),
        FoldRule::Height { most_um } => not_negative("fold limit", most_um)?,
    })
}

/// A ratio of parts by mass against the sheet's.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Ratio {
    /// A per B, in thousandths, to the nearest: 2000 is 2 : 1.
    pub permille: i64,
    /// How far it is off the sheet's ratio, in hundredths of a percent, rounded up.
    pub off_bp: i64,
    pub is_within: bool,
}

/// Returns the ratio of part A to part B, and whether it lies within the sheet's tolerance.
///
/// `sheet_permille` 2000 for 2 : 1, `tolerance_bp` 200 for ± 2 %; exactly the tolerance is within.
/// Errors: `OutOfRange` for a mass that is not above 0, or a ratio that is not.
/// Source: the sheet's ratio and tolerance; the deviation is that of the quotient.
pub fn mix_ratio(a: Mass, b: Mass, sheet_permille: u32, tolerance_bp: u32) -> Result<Ratio, Refused> {
    let none = Mass::from_mg(0);
    if a <= none || b <= none {
        return Err(Refused::out_of_range("mass of a part", "must be above 0 g"));
    }
    if sheet_permille == 0 {
        return Err(Refused::out_of_range("ratio of the sheet", "must be above 0"));
    }
    let (a, b, sheet) = (i128::from(a.as_mg()), i128::from(b.as_mg()), i128::from(sheet_permille));
    // off = |a·1000 − sheet·b| / (sheet·b), in hundredths of a percent.
    let (difference, whole) = ((a * 1000 - sheet * b).abs(), sheet * b);
    let narrowed = |value: i128| i64::try_from(value).map_err(|_| Refused::out_of_range("ratio", "is too large"));
    Ok(Ratio {
        permille: narrowed((a * 2000 + b) / (2 * b))?,
        off_bp: narrowed((difference * 10_000 + whole - 1) / whole)?,
        is_within: difference * 10_000 <= whole * i128::from(tolerance_bp),
    })
}

/// How far a lateral was opened.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Opening {
    TooLittle,
    Within,
    /// Cut into the pipe.
    TooMuch,
}

/// Returns how an opening stands to the contract's limits in percent of the bore; the limits belong to it.
///
/// Errors: `OutOfRange` for a lower limit above the upper.
/// Source: the contract's limits; sources read ask for 90 or 95 to 100 %.
pub fn opening(open_pct: u16, least_pct: u16, most_pct: u16) -> Result<Opening, Refused> {
    if least_pct > most_pct {
        return Err(Refused::out_of_range("limits of the opening", "must have the lower below the upper"));
    }
    Ok(match open_pct {
        open if open < least_pct => Opening::TooLittle,
        open if open > most_pct => Opening::TooMuch,
        _ => Opening::Within,
    })
}

#[cfg(test)]
mod tests {
    use super::super::cover::tests::mm;
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn the_european_rule_and_five_percent_cross_between_dn_100_and_125() {
        // Computed by hand from both rules.
        let table = [
            (100.0, 6.0, 5.0),
            (125.0, 6.0, 6.25),
            (150.0, 6.0, 7.5),
            (300.0, 6.0, 15.0),
            (400.0, 8.0, 20.0),
            (600.0, 12.0, 30.0),
        ];
        for (dn, european, five_percent) in table {
            assert_eq!(fold_limit(mm(dn), FoldRule::TwoPercentOrSixMillimetres), Ok(mm(european)));
            assert_eq!(fold_limit(mm(dn), FoldRule::PermilleOfDn { permille: 50 }), Ok(mm(five_percent)));
        }
        assert!(fold_limit(mm(0.0), FoldRule::TwoPercentOrSixMillimetres).is_err());
    }

    fn grams(value: f64) -> Mass {
        Mass::from_g(value).unwrap()
    }

    #[test]
    fn the_worked_ratio_is_two_to_one() {
        let found = mix_ratio(grams(812.0), grams(406.0), 2000, 200).unwrap();
        assert_eq!(found, Ratio { permille: 2000, off_bp: 0, is_within: true });
    }

    #[test]
    fn exactly_the_tolerance_is_within_and_a_milligram_more_is_not() {
        let off = |mg: i64| mix_ratio(Mass::from_mg(2_040_000 + mg), grams(1000.0), 2000, 200).unwrap();
        assert!(off(0).is_within && !off(1).is_within);
        assert_eq!((off(0).off_bp, off(1).off_bp), (200, 201));
        assert!(mix_ratio(grams(0.0), grams(1.0), 2000, 200).is_err());
        assert!(mix_ratio(grams(1.0), grams(1.0), 0, 200).is_err());
    }

    #[test]
    fn an_opening_is_too_little_within_or_too_much() {
        let found: Vec<_> = [94, 95, 100, 101].iter().map(|open| opening(*open, 95, 100).unwrap()).collect();
        assert_eq!(found, [Opening::TooLittle, Opening::Within, Opening::Within, Opening::TooMuch]);
        assert!(opening(95, 100, 95).is_err());
    }

    proptest! {
        #[test]
        fn no_masses_panic(a in any::<i64>(), b in any::<i64>(), sheet in any::<u32>(), tolerance in any::<u32>()) {
            let _ = mix_ratio(Mass::from_mg(a), Mass::from_mg(b), sheet, tolerance);
        }
    }
}

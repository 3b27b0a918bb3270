//! Units of what is never recorded in steps of its own but typed into a calculation or comes out of it: flow, density, force.

use super::ROWS;

const GALLON_L: f64 = 3.785_411_784;
const POUND_KG: f64 = 0.453_592_37;
const FOOT_M: f64 = 0.304_8;
const POUND_FORCE_N: f64 = POUND_KG * 9.806_65;

/// Units of one kind together, each with what makes it the first of them.
///
/// Source: NIST SP 811 (2008), B.8: US gallon 231 in³, pound, foot, yard; exact.
const GROUPS: &[&[(&str, f64)]] = &[
    &[("l", 1.0), ("gal", GALLON_L)],
    &[("l/s", 1.0), ("gal/min", GALLON_L / 60.0)],
    &[("m/s", 1.0), ("ft/s", FOOT_M)],
    &[("N", 1.0), ("lbf", POUND_FORCE_N)],
    &[("bar/h", 1.0), ("psi/h", super::PSI_PA / 1e5)],
    &[("kg/l", 1.0), ("lb/gal", POUND_KG / GALLON_L)],
    &[("kN/m³", 1.0), ("lbf/ft³", POUND_FORCE_N / 1e3 / (FOOT_M * FOOT_M * FOOT_M))],
    &[("g/m²", 1.0), ("oz/yd²", POUND_KG * 1e3 / 16.0 / (9.0 * FOOT_M * FOOT_M))],
];

/// Returns a value of one unit in another of its kind, without rounding; `None` where they are no kin.
///
/// Source: NIST SP 811 (2008), B.8 and B.9.
pub fn turned(value: f64, from: &str, to: &str) -> Option<f64> {
    if from == to {
        return Some(value);
    }
    for group in GROUPS {
        let factor = |unit: &str| group.iter().find(|(word, _)| *word == unit).map(|(_, factor)| factor);
        if let (Some(from), Some(to)) = (factor(from), factor(to)) {
            return Some(value * from / to);
        }
    }
    let row = |unit: &str| ROWS.iter().find(|row| row.2.first() == Some(&unit));
    let (from, to) = (row(from)?, row(to)?);
    (from.1 == to.1).then(|| (value * from.3 + from.4 - to.4) / to.3)
}

/// Returns the units of the kind of `beside`, itself among them; none for a unit that stands alone.
pub(super) fn kin(beside: &str) -> Vec<&'static str> {
    let group = GROUPS.iter().find(|group| group.iter().any(|(word, _)| *word == beside));
    group.map_or_else(Vec::new, |group| group.iter().map(|(word, _)| *word).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// NIST SP 811 (2008), B.8, factors as printed; from memory.
    #[test]
    fn factors_are_those_of_the_handbook() {
        for (from, to, printed) in [
            ("gal", "l", 3.785_412),
            ("gal/min", "l/s", 6.309_020e-2),
            ("ft/s", "m/s", 3.048e-1),
            ("lbf", "N", 4.448_222),
            ("lb/gal", "kg/l", 1.198_264e-1),
            ("lbf/ft³", "kN/m³", 1.570_875e-1),
            ("oz/yd²", "g/m²", 3.390_575e1),
            ("psi", "kPa", 6.894_757),
            ("in", "mm", 25.4),
        ] {
            let found = turned(1.0, from, to).unwrap();
            assert!((found / printed - 1.0).abs() < 5e-7, "1 {from} is {found} {to}, printed {printed}");
            let back = turned(found, to, from).unwrap();
            assert!((back - 1.0).abs() < 1e-12, "{from} there and back is {back}");
        }
        assert_eq!(turned(50.0, "°F", "°C"), Some(10.0));
    }

    #[test]
    fn what_is_no_kin_is_not_turned() {
        assert_eq!(turned(1.0, "l", "kg"), None);
        assert_eq!(turned(1.0, "bar", "bar/h"), None);
        assert_eq!(turned(1.0, "ppm", "pct"), None);
    }
}

//! Student's t distribution, as far as a 95 % bound needs it.

use std::f64::consts::{FRAC_PI_2, PI};

use crate::maths;

/// Returns the two-sided 95 % bound of Student's t (its 97.5 % quantile) for whole degrees of freedom, at least 1.
///
/// Above 1000 degrees the normal distribution's 1.959964, which differs by less than 0.2 %. Good to 1e-9 below.
/// Source: finite series of the distribution for whole degrees of freedom, Abramowitz and Stegun, Handbook of
/// Mathematical Functions (1964), 26.7.3 and 26.7.4 (from memory), checked against values computed elsewhere.
pub fn quantile_975(degrees: usize) -> f64 {
    if degrees > 1000 {
        return 1.959_963_984_540_054;
    }
    let (mut low, mut high) = (0.0, FRAC_PI_2);
    for _ in 0..60 {
        let middle = (low + high) / 2.0;
        if inside(middle, degrees.max(1)) < 0.95 { low = middle } else { high = middle }
    }
    maths::tan(low) * maths::sqrt(degrees.max(1) as f64)
}

/// Returns the probability that `|t| < tan(angle)·√degrees`.
fn inside(angle: f64, degrees: usize) -> f64 {
    let (sine, cosine) = (maths::sin(angle), maths::cos(angle));
    let odd = degrees % 2 == 1;
    let mut term = if odd { cosine } else { 1.0 };
    let mut sum = 0.0;
    // Odd: cos + 2/3·cos³ + …; even: 1 + 1/2·cos² + …, each up to the power degrees − 2.
    let mut power = usize::from(odd);
    while power + 2 <= degrees {
        sum += term;
        power += 2;
        term *= cosine * cosine * (power - 1) as f64 / power as f64;
    }
    if odd { 2.0 / PI * (angle + sine * sum) } else { sine * sum }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quantiles_match_values_computed_elsewhere() {
        // Computed independently from the incomplete beta function with mpmath 1.3.0, 25 digits.
        let computed = [
            (1, 12.706_204_736_17),
            (2, 4.302_652_729_749),
            (3, 3.182_446_305_284),
            (4, 2.776_445_105_198),
            (5, 2.570_581_835_636),
            (6, 2.446_911_851_145),
            (7, 2.364_624_251_593),
            (8, 2.306_004_135_204),
            (9, 2.262_157_162_798),
            (10, 2.228_138_851_986),
            (15, 2.131_449_545_56),
            (20, 2.085_963_447_266),
            (30, 2.042_272_456_301),
            (60, 2.000_297_822_014),
            (100, 1.983_971_518_524),
            (999, 1.962_341_461_133),
            (1000, 1.962_339_080_826),
        ];
        for (degrees, expected) in computed {
            let found = quantile_975(degrees);
            assert!((found - expected).abs() < 1e-9, "{degrees}: {found}");
        }
    }

    #[test]
    fn it_falls_towards_the_normal_distribution() {
        assert!(quantile_975(1000) > quantile_975(1001) && quantile_975(1000) < 1.963);
        assert!(quantile_975(0).is_finite());
    }
}

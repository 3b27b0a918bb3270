//! A rule in the way, with its sentence and its way out.

use serde::Serialize;

use crate::procedure::repair::{self, Repair, Waiver};
use crate::procedure::rules::{Broken, Kind, Rule, RuleValues};

/// A rule as a screen shows it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct BrokenView {
    pub rule: Rule,
    pub subject: String,
    pub kind: Kind,
    pub values: RuleValues,
    pub says: String,
    pub way_out: String,
    /// The foreman may waive it.
    pub waivable: bool,
    /// The foreman has waived it.
    pub waived: Option<Waiver>,
}

impl BrokenView {
    /// Returns the view of a rule that stands, or stood, in the way of this repair.
    pub fn of(repair: &Repair, broken: &Broken) -> Self {
        let n = repair.last_attempt().map_or(1, |attempt| attempt.n);
        let waived = repair
            .waivers
            .iter()
            .rev()
            .find(|waiver| waiver.rule == broken.rule && waiver.subject == broken.subject && waiver.attempt == n);
        Self { waived: waived.cloned(), ..Self::bare(broken) }
    }

    /// Returns the view of a rule without a repair.
    pub fn bare(broken: &Broken) -> Self {
        Self {
            rule: broken.rule,
            subject: broken.subject.clone(),
            kind: broken.rule.row().kind,
            says: broken.rule.says(&broken.values),
            way_out: broken.rule.way_out(&broken.values),
            waivable: broken.rule.waived_by().is_some(),
            waived: None,
            values: broken.values.clone(),
        }
    }
}

/// Returns a recorded breach as the gates name theirs.
pub fn from_recorded(recorded: &repair::Broken) -> Broken {
    Broken { rule: recorded.rule, subject: recorded.subject.clone(), values: recorded.values.clone() }
}

/// Returns the waivers of the last attempt that stand for none of `found`: given at an earlier gate.
pub fn waived_otherwise<'a>(repair: &'a Repair, found: &'a [Broken]) -> impl Iterator<Item = BrokenView> + 'a {
    let n = repair.last_attempt().map_or(1, |attempt| attempt.n);
    repair
        .waivers
        .iter()
        .filter(move |waiver| {
            waiver.attempt == n
                && !found.iter().any(|broken| broken.rule == waiver.rule && broken.subject == waiver.subject)
        })
        .map(|waiver| {
            let broken = Broken { rule: waiver.rule, subject: waiver.subject.clone(), values: waiver.values.clone() };
            BrokenView { waived: Some(waiver.clone()), ..BrokenView::bare(&broken) }
        })
}

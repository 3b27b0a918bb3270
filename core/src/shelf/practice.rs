//! The line to rehearse on: invented, like the sheets that its plan rests on.

use serde::Deserialize;

use crate::facts::Moment;
use crate::procedure::line::{Defect, Lateral, Line};
use crate::procedure::plan::PlanChoice;

/// What a rehearsal that is played begins with.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PracticeLine {
    pub line: Line,
    /// A lateral that the patch would cover.
    pub under_patch: Lateral,
    pub defect: Defect,
    /// A plan of the example sheets.
    pub choice: PlanChoice,
    /// What its clocks show at the beginning: the morning of a day on which the example lots and instruments are good.
    pub begins: Moment,
}

/// Returns the practice line.
///
/// Errors: none in practice; a test reads the file that is built in.
pub fn practice_line() -> Result<PracticeLine, serde_json::Error> {
    serde_json::from_str(include_str!("examples/practice.json"))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::procedure::planning;
    use crate::shelf::examples;

    #[test]
    fn its_plan_breaks_no_rule_and_covers_the_lateral_only_where_there_is_one() {
        let practice = practice_line().unwrap();
        let shelf = examples::shelf().unwrap();
        let plain = planning::plan(&practice.line, &practice.defect, &practice.choice, &shelf.view()).unwrap();
        assert!(plain.computed.covered.is_empty());
        let mut line = practice.line.clone();
        line.laterals.insert(1, practice.under_patch.clone());
        let covering = planning::plan(&line, &practice.defect, &practice.choice, &shelf.view()).unwrap();
        assert_eq!(covering.computed.covered, [1]);
        let proposal = planning::propose(&line, &practice.defect, &practice.choice, &shelf.view(), 0);
        assert!(proposal.breaks.is_empty(), "{:?}", proposal.breaks);
    }
}

//! What the resin allows and asks at the temperatures that were read: budget, hold, full cure.

use serde::Serialize;

use super::super::plan::Budget;
use super::super::rules::Broken;
use super::super::times::{self, BudgetOf};
use super::Case;
use super::picked::measured;
use crate::shelf::{Contract, PatchSheet, ResinSheet};
use crate::units::{Span, Temperature};

/// The resin's times.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Timed {
    /// An estimate until the test push.
    pub budget: Budget,
    pub hold_ms: Span,
    /// The coldest of pipe and water, which decides hold and full cure.
    pub hold_at_mc: Temperature,
    pub full_cure_ms: Span,
}

impl Case<'_> {
    /// Returns the times, or `None` as long as something is not chosen or the temperatures are not measured.
    pub fn timed(&self) -> Option<Result<Timed, Broken>> {
        let (contract, patch, resin) = (self.picked.contract?, self.picked.patch?, self.picked.resin?);
        measured(&self.choice.temperatures).then(|| self.times_of(contract, patch, resin))
    }

    /// Returns the times of a resin for a patch, by the contract's estimates.
    pub fn times_of(&self, contract: &Contract, patch: &PatchSheet, resin: &ResinSheet) -> Result<Timed, Broken> {
        let temperatures = &self.choice.temperatures;
        let of = BudgetOf { contract, resin, batch: self.batch(patch, resin), temperatures, push: None };
        let coldest = times::coldest(temperatures);
        Ok(Timed {
            budget: times::budget(&of)?,
            hold_ms: times::at_coldest(&resin.hold, coldest)?,
            hold_at_mc: coldest,
            full_cure_ms: times::at_coldest(&resin.full_cure, coldest)?,
        })
    }
}

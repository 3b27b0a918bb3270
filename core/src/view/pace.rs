//! The crew's own times as a distribution, and the chance that the placement ends inside the working time.

use serde::Serialize;

use super::Summary;
use crate::checks::crew_times::{CrewTime, chance_in_time, crew_time};
use crate::procedure::plan::Budget;
use crate::procedure::times::Pace;
use crate::shelf::Contract;
use crate::units::Span;

/// How long wet-out and push take this crew.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct PaceView {
    pub crew: String,
    pub wet_out: CrewTime,
    /// The test push, before the loading factor.
    pub push: CrewTime,
    /// Whole percent, rounded down; `None` below five records of either, or as long as no working time is known.
    pub chance_pct: Option<u8>,
}

/// Returns the pace of a contract's crew from the lists, newest first; `None` where a time can't be right.
///
/// With fewer than five records the contract's estimates stand. `budget` gives the working time that is left for both.
/// Source: see [`crate::checks::crew_times`].
pub fn pace(contract: &Contract, lists: &[Summary], budget: Option<&Budget>) -> Option<PaceView> {
    let own = lists.iter().rev().filter(|one| one.crew == contract.crew && !one.rehearsal);
    let paces: Vec<&Pace> = own.flat_map(|one| &one.paces).collect();
    let wet_outs: Vec<Span> = paces.iter().filter_map(|pace| pace.wet_out_ms).collect();
    let pushes: Vec<Span> = paces.iter().filter_map(|pace| pace.push_ms).collect();
    let factor = u32::try_from(contract.loading_factor_pct.value).unwrap_or(u32::MAX);
    let chance = |budget: &Budget| {
        let left = budget.working_ms.as_ms() - budget.connect_ms.as_ms();
        chance_in_time(&wet_outs, &pushes, factor, Span::from_ms(left)).ok().flatten()
    };
    Some(PaceView {
        crew: contract.crew.clone(),
        wet_out: crew_time(&wet_outs, contract.wet_out_ms.value).ok()?,
        push: crew_time(&pushes, contract.push_ms.value).ok()?,
        chance_pct: budget.and_then(chance),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::checks::crew_times::TimeSource;
    use crate::procedure::stage::Stage;
    use crate::procedure::tests::kit::World;
    use crate::view::summary;

    fn minutes(value: f64) -> Span {
        Span::from_min(value).unwrap()
    }

    fn lists(count: usize, wet_out: f64, push: f64) -> Vec<Summary> {
        let mut one = summary(World::planned().repair());
        one.paces = vec![Pace { wet_out_ms: Some(minutes(wet_out)), push_ms: Some(minutes(push)) }];
        vec![one; count]
    }

    #[test]
    fn the_estimate_stands_until_there_are_five_and_then_the_crews_own_times() {
        let world = World::planned();
        let (contract, budget) = (&world.repair().contract, &world.plan().computed.budget);
        let few = pace(contract, &lists(4, 10.0, 4.0), Some(budget)).unwrap();
        assert_eq!(few.wet_out.source, TimeSource::Estimate { recorded: 4 });
        assert_eq!((few.wet_out.median_ms, few.chance_pct), (contract.wet_out_ms.value, None));
        let five = pace(contract, &lists(5, 10.0, 4.0), Some(budget)).unwrap();
        assert_eq!((five.wet_out.median_ms, five.push.ninetieth_ms), (minutes(10.0), minutes(4.0)));
        // All five pairs fit; five records never promise more than 5/6.
        assert_eq!(five.chance_pct, Some(83));
        assert_eq!(pace(contract, &lists(5, 40.0, 4.0), Some(budget)).unwrap().chance_pct, Some(0));
    }

    #[test]
    fn another_crews_times_and_rehearsals_do_not_count() {
        let world = World::planned();
        let contract = &world.repair().contract;
        let mut others = lists(6, 10.0, 4.0);
        others.iter_mut().for_each(|one| one.crew = "Night crew".into());
        assert_eq!(pace(contract, &others, None).unwrap().wet_out.source, TimeSource::Estimate { recorded: 0 });
        let mut practice = lists(6, 10.0, 4.0);
        practice.iter_mut().for_each(|one| one.rehearsal = true);
        assert_eq!(pace(contract, &practice, None).unwrap().push.source, TimeSource::Estimate { recorded: 0 });
    }

    #[test]
    fn what_the_list_holds_of_a_repair_is_what_was_recorded() {
        let mut world = World::in_stage(Stage::WetOut);
        world.join().after(12.0).report(crate::procedure::Happening::InsertionBegun);
        let recorded = summary(world.repair()).paces;
        assert_eq!(recorded.len(), 1);
        assert_eq!(recorded[0].wet_out_ms, Some(minutes(12.0)));
    }
}

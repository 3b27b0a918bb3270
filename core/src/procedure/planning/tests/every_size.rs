//! DN 100 to DN 600: the example shelf has something that fits each.

use super::super::suggest;
use super::*;

#[test]
fn each_nominal_size_gets_a_plan_that_breaks_no_rule() {
    let shelf = shelf();
    for dn in [100.0, 125.0, 150.0, 200.0, 225.0, 250.0, 300.0, 350.0, 400.0, 450.0, 500.0, 600.0] {
        let line = Line { height_um: mm(dn), ..line() };
        let defect = defect(7120.0, 7400.0);
        let choice =
            PlanChoice { temperatures: temperatures(15.0, 12.0, 12.0), ..suggest(&line, &defect, &shelf.view()) };
        let proposal = propose(&line, &defect, &choice, &shelf.view(), NOW_MS);
        assert_eq!(proposal.breaks, [], "DN {dn}: {choice:?}");
        let plan = proposal.plan.unwrap();
        assert!(plan.computed.window.lower_pa < plan.computed.window.upper_pa, "DN {dn}");
        assert!(plan.computed.cover.least() >= plan.computed.cover.required_um, "DN {dn}");
        for (list, id) in
            [(&proposal.patches, &choice.patch), (&proposal.packers, &choice.packer), (&proposal.resins, &choice.resin)]
        {
            assert!(list.iter().any(|candidate| candidate.fits && &candidate.id == id), "DN {dn}: {id}");
        }
    }
}

//! An example shelf: one contract, data sheets, a method statement and people of the invented town of Quillmere.
//!
//! Every figure is invented, and every source says so: they show what a sheet holds, and are no advice. A crew enters
//! or imports the sheets of the kit in use.

use serde::de::DeserializeOwned;

use super::{Contract, Method, Shelf};

/// Returns the example shelf.
///
/// Errors: none in practice; a test reads the files that are built in.
pub fn shelf() -> Result<Shelf, serde_json::Error> {
    Ok(Shelf {
        people: read(include_str!("examples/people.json"))?,
        contracts: vec![read::<Contract>(include_str!("examples/contract.json"))?],
        resins: read(include_str!("examples/resins.json"))?,
        patches: read(include_str!("examples/patches.json"))?,
        packers: read(include_str!("examples/packers.json"))?,
        instruments: read(include_str!("examples/instruments.json"))?,
        methods: vec![read::<Method>(include_str!("examples/method.json"))?],
    })
}

fn read<T: DeserializeOwned>(text: &str) -> Result<T, serde_json::Error> {
    serde_json::from_str(text)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::procedure::stage::Stage;
    use crate::shelf::{PatchSheet, Role};
    use serde_json::Value;
    use std::collections::BTreeSet;

    fn example() -> Shelf {
        shelf().unwrap()
    }

    /// Calls `seen` with every value that stands under the key `source`, wherever it is.
    fn sources(value: &Value, seen: &mut impl FnMut(&Value)) {
        match value {
            Value::Object(fields) => fields.iter().for_each(|(key, inner)| {
                if key == "source" {
                    seen(inner);
                }
                sources(inner, seen);
            }),
            Value::Array(items) => items.iter().for_each(|item| sources(item, seen)),
            _ => {}
        }
    }

    #[test]
    fn every_source_says_that_it_is_invented() {
        let shelf = serde_json::to_value(example()).unwrap();
        for list in ["contracts", "resins", "patches", "packers", "instruments"] {
            for document in shelf[list].as_array().unwrap() {
                let mut count = 0;
                sources(document, &mut |source| {
                    count += 1;
                    assert!(source.as_str().unwrap().contains("invented"), "{source} in {}", document["id"]);
                });
                assert!(count > 0, "{} has no source", document["id"]);
            }
        }
    }

    #[test]
    fn the_method_statement_has_what_the_gates_need_and_every_stage() {
        let shelf = example();
        assert_eq!(shelf.methods[0].lacks(), []);
        for stage in Stage::ALL.into_iter().filter(|stage| *stage != Stage::Planned) {
            assert!(shelf.methods[0].of(stage).count() >= 2, "{stage:?} has too few tasks");
        }
    }

    #[test]
    fn keys_and_ids_are_there_once() {
        let shelf = example();
        let once = |names: Vec<&str>| names.iter().collect::<BTreeSet<_>>().len() == names.len();
        assert!(once(shelf.methods[0].tasks.iter().map(|task| task.key.as_str()).collect()));
        assert!(once(shelf.patches.iter().map(|patch| patch.id.as_str()).collect()));
        assert!(once(shelf.contracts[0].photos.iter().map(|photo| photo.key.as_str()).collect()));
    }

    #[test]
    fn a_caution_ends_by_saying_who_decides() {
        let shelf = example();
        let cautions: Vec<&str> =
            shelf.methods[0].tasks.iter().map(|task| task.caution.as_str()).filter(|text| !text.is_empty()).collect();
        assert!(cautions.iter().all(|text| text.ends_with("decide.") || text.ends_with("decides.")));
        for hazard in ["Confined space", "Traffic", "Compressed air", "Hot resin", "Sewage", "skin", "eyes"] {
            assert!(cautions.iter().any(|text| text.contains(hazard)), "no caution names {hazard}");
        }
    }

    #[test]
    fn patches_reach_from_dn_100_to_dn_600() {
        let patches = example().patches;
        let for_dn = |dn: i64| {
            move |patch: &&PatchSheet| (patch.diameter_least_um.as_um()..=patch.diameter_most_um.as_um()).contains(&dn)
        };
        for dn in [100, 125, 150, 200, 225, 250, 300, 350, 400, 450, 500, 600] {
            let lengths: BTreeSet<i64> =
                patches.iter().filter(for_dn(dn * 1000)).map(|patch| patch.length_um.as_um()).collect();
            assert!(lengths.len() >= 2, "DN {dn} has one length only");
            assert!(lengths.iter().all(|length| (400_000..=1_000_000).contains(length)));
        }
    }

    #[test]
    fn a_technician_a_foreman_and_a_reader_are_there() {
        let roles: BTreeSet<Role> = example().people.iter().map(|person| person.role).collect();
        assert_eq!(roles.len(), 3);
    }
}

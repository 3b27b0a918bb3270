//! Inspection files, and what the screens make of what they say.

use mendline_core::inspection::{
    MOST_NOTICES, SameHour, combine_answered, patchable, read,
    words::{plain, words},
};

pub fn run(bytes: &[u8]) {
    let Ok(file) = read(bytes) else { return };
    assert!(file.notices.len() <= MOST_NOTICES + 1);
    for inspection in &file.inspections {
        let _ = inspection.stretches();
        for observation in &inspection.observations {
            let _ = patchable(observation);
            let _ = plain(observation);
            let _ = words(&observation.code, observation.char1.as_deref(), observation.char2.as_deref());
        }
        let picked: Vec<_> = inspection.observations.iter().take(8).collect();
        if let Ok(extent) = combine_answered(&picked, SameHour::AllRound) {
            assert!(extent.from_um <= extent.to_um);
            let _ = inspection.extent_from_upstream(&extent);
        }
    }
}

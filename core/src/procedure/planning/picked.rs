//! The documents that a choice names, found on the shelf.

use super::super::line::{Defect, Line};
use super::super::plan::{PlanChoice, Temperatures};
use super::super::rules::{Broken, Rule, t};
use crate::shelf::{Contract, Instrument, Method, PackerSheet, PatchSheet, ResinSheet, ShelfView};
use crate::units::{Length, Temperature};

/// Each document, or `None` where nothing is chosen or the shelf does not hold it.
#[derive(Clone, Copy)]
pub struct Picked<'a> {
    pub contract: Option<&'a Contract>,
    pub resin: Option<&'a ResinSheet>,
    pub patch: Option<&'a PatchSheet>,
    pub packer: Option<&'a PackerSheet>,
    pub method: Option<&'a Method>,
    pub counter: Option<&'a Instrument>,
    pub tape: Option<&'a Instrument>,
}

impl<'a> Picked<'a> {
    /// Returns what the choice names, by id.
    pub fn from(choice: &PlanChoice, shelf: &ShelfView<'a>) -> Self {
        let instrument = |id: &str| shelf.instruments.iter().find(|instrument| instrument.id == id);
        Self {
            contract: shelf.contracts.iter().find(|contract| contract.id == choice.contract),
            resin: shelf.resins.iter().find(|resin| resin.id == choice.resin),
            patch: shelf.patches.iter().find(|patch| patch.id == choice.patch),
            packer: shelf.packers.iter().find(|packer| packer.id == choice.packer),
            method: shelf.methods.iter().find(|method| method.id == choice.method),
            counter: instrument(&choice.counter),
            tape: instrument(&choice.tape),
        }
    }

    /// Returns what is still to be chosen, measured or entered, one rule each, in the order of the screen.
    pub fn missing(&self, choice: &PlanChoice) -> Vec<Broken> {
        let lacking = [
            (self.contract.is_none(), "Contract"),
            (self.method.is_none(), "Method statement"),
            (!diameter_given(choice), "Inside diameter"),
            (self.patch.is_none(), "Patch"),
            (self.packer.is_none(), "Packer"),
            (self.resin.is_none(), "Resin"),
            (self.counter.is_none() && !choice.marked_on_defect, "Camera counter"),
            (self.tape.is_none(), "Tape"),
        ];
        let chosen = lacking
            .into_iter()
            .filter(|(missing, _)| *missing)
            .map(|(_, what)| Broken::with(Rule::ChoiceMissing, &[("what", t(what))]).about(what));
        let temperatures = (!measured(&choice.temperatures)).then(|| Broken::bare(Rule::TemperaturesMissing));
        chosen.chain(temperatures).collect()
    }
}

/// Returns the first value that can't be of this earth: a length beyond 100 km, a temperature beyond a furnace.
///
/// It keeps sums of what was typed or imported from overflowing.
pub fn wild(line: &Line, defect: &Defect, choice: &PlanChoice) -> Option<Broken> {
    let (point, temperatures) = (&choice.reading_point, &choice.temperatures);
    let laterals = line.laterals.iter().flat_map(|lateral| [lateral.station_um, lateral.diameter_um]);
    let lengths = [
        ("Length of the line", line.length_um),
        ("Size of the line", line.height_um),
        ("Defect", defect.from_um),
        ("Defect", defect.to_um),
        ("Inside diameter", choice.diameter_least_um),
        ("Inside diameter", choice.diameter_most_um),
        ("Groundwater", choice.head_um),
        ("Water behind the packer", choice.behind_um),
        ("Offset of the reading point", point.offset_um),
        ("Riser", point.riser_um),
        ("Bends", point.bends_um),
        ("Rod", choice.rod_um),
        ("Centre of the patch", choice.centre_um.unwrap_or_default()),
    ];
    let read =
        [Some(temperatures.resin_mc), Some(temperatures.air_mc), Some(temperatures.pipe_mc), temperatures.water_mc];
    let long = |length: Length| !(-100_000_000_000..=100_000_000_000).contains(&length.as_um());
    let hot = |read: Temperature| !(-273_150..=1_000_000).contains(&read.as_millicelsius());
    let length =
        lengths.into_iter().chain(laterals.map(|length| ("Lateral", length))).find(|(_, length)| long(*length));
    let what = length.map(|(what, _)| what).or(read.into_iter().flatten().any(hot).then_some("Temperature"))?;
    Some(Broken::with(Rule::BadValue, &[("what", t(format!("{what}: no site has such a value.")))]))
}

/// Returns whether an inside diameter was entered.
pub fn diameter_given(choice: &PlanChoice) -> bool {
    choice.diameter_least_um > Length::from_um(0) && choice.diameter_most_um > Length::from_um(0)
}

/// Returns whether temperatures were entered: a set of nothing but zeros is none.
pub fn measured(temperatures: &Temperatures) -> bool {
    *temperatures != Temperatures::default()
}

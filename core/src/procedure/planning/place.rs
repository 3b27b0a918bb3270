//! Where the patch goes: errors, cover, series, mark on hose or rods, laterals.

use serde::Serialize;

use super::super::line::Lateral;
use super::super::plan::{Cover, ErrorTerm, FromNode, Mark, PlacedPatch, ReadingPointKind, WayIn};
use super::super::rules::{Broken, Rule, n, t};
use super::super::times;
use super::Case;
use super::picked::diameter_given;
use crate::checks::clock_face::{Extent, Hour, View};
use crate::checks::cover::{ErrorKind, Placing, PositionError, counter_error, cover};
use crate::checks::laterals::{self, PatchArea};
use crate::checks::rods::{self, Bend, Mover, PushedFrom, ReadingPoint};
use crate::checks::series::{Series, SeriesPlan, series};
use crate::checks::{self};
use crate::shelf::{Contract, Instrument, PatchSheet};
use crate::units::Length;
use crate::words;

/// Where the patch goes and what it covers.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Place {
    /// This repair's patch first; more where one is too short.
    pub patches: Vec<PlacedPatch>,
    /// How many the whole series has; 1 where one patch does.
    pub in_series: usize,
    /// Centre of this repair's patch, from the upstream node.
    pub from_upstream_um: Length,
    /// The same, from the downstream node.
    pub from_downstream_um: Length,
    pub cover: Cover,
    /// Patch centre less defect centre; above zero is downstream.
    pub offset_um: Length,
    pub mark: Mark,
    /// Laterals that the patch covers, by their place in the line's list.
    pub covered: Vec<usize>,
    /// Laterals that it may cover if the errors add up.
    pub near: Vec<usize>,
}

impl Case<'_> {
    /// Returns the place of this repair's patch, or `None` as long as something is not chosen.
    pub fn place(&self) -> Option<Result<Place, Broken>> {
        let (contract, patch) = (self.picked.contract?, self.picked.patch?);
        let errors = self.errors(contract)?;
        diameter_given(self.choice).then(|| self.placed(contract, patch, errors))
    }

    /// Returns the errors of the position, `None` as long as counter or tape is missing.
    ///
    /// Inspection: the counter's share of the distance from the node where it stood at zero to the middle of the defect,
    /// rounded up to the millimetre, and what it is off at any distance. Placement: the contract's. Mark reading: the tape's
    /// share of the path, and what it is off at any length.
    pub fn errors(&self, contract: &Contract) -> Option<Result<Vec<PositionError>, Broken>> {
        let tape = self.picked.tape?;
        let counter = match (self.choice.marked_on_defect, self.picked.counter) {
            (false, None) => return None,
            (true, _) => None,
            (false, counter) => counter,
        };
        let distance = self.counted_from(self.choice.inspected_from, self.defect.centre());
        let node = self.node(self.choice.inspected_from);
        let path = self.counted_from(self.choice.from_node, self.defect.centre());
        let inspection =
            counter.map(|counter| reading_error(ErrorKind::Inspection, counter, distance, &format!(" from {node}")));
        let placement = PositionError {
            kind: ErrorKind::Placement,
            size_um: contract.placement_error_um.value,
            source: contract.placement_error_um.source.clone(),
        };
        let mark = reading_error(ErrorKind::MarkReading, tape, path, "");
        let all: Result<Vec<_>, _> = inspection.into_iter().chain([Ok(placement), mark]).collect();
        Some(all.map_err(times::broken))
    }

    fn placed(
        &self,
        contract: &Contract,
        patch: &PatchSheet,
        errors: Result<Vec<PositionError>, Broken>,
    ) -> Result<Place, Broken> {
        let errors = errors?;
        let series = self.series(contract, patch, &errors)?;
        let all = match &series {
            Some(series) => series.centres_um.iter().map(|centre| around(*centre, patch.length_um)).collect(),
            None => vec![around(self.centre(), patch.length_um)],
        };
        let cover = self.cover_of(&all, &errors)?;
        let in_series = all.len();
        let patches: Vec<PlacedPatch> = all.into_iter().skip(usize::from(self.choice.series_done)).collect();
        let Some(this) = patches.first().copied() else {
            return Err(bad("Every patch of the series is placed already."));
        };
        let centre = this.centre();
        self.inside_the_pipe(&this)?;
        let mark = self.mark(centre)?;
        let covered = self.laterals_under(&this, Length::from_um(0))?;
        let mut near = self.laterals_under(&this, cover.errors_um)?;
        near.retain(|index| !covered.contains(index));
        let from_downstream_um = rods::from_the_other_node(centre, self.line.length_um).map_err(times::broken)?;
        Ok(Place {
            patches,
            in_series,
            from_upstream_um: centre,
            from_downstream_um,
            offset_um: cover.offset_um,
            cover: in_plan(cover, contract),
            mark,
            covered,
            near,
        })
    }

    /// Returns the middle of a patch that stands alone.
    pub fn centre(&self) -> Length {
        self.choice.centre_um.unwrap_or(self.defect.centre())
    }

    /// Returns the cover of a single patch of this length, on the chosen centre.
    pub fn cover_with(&self, length: Length, errors: &[PositionError]) -> Result<checks::cover::Cover, Broken> {
        self.cover_of(&[around(self.centre(), length)], errors)
    }

    fn cover_of(&self, patches: &[PlacedPatch], errors: &[PositionError]) -> Result<checks::cover::Cover, Broken> {
        let from = patches.first().map_or(0, |patch| patch.from_um.as_um());
        let to = patches.last().map_or(0, |patch| patch.to_um.as_um());
        let placing = Placing {
            defect_from_um: self.defect.from_um,
            defect_to_um: self.defect.to_um,
            patch_length_um: Length::from_um(to.saturating_sub(from)),
            patch_centre_um: Length::from_um(from.saturating_add(to.saturating_sub(from).div_euclid(2))),
        };
        cover(&placing, errors, self.choice.marked_on_defect).map_err(times::broken)
    }

    /// Returns the series, or `None` where one patch is to do, or a centre was set by hand.
    fn series(
        &self,
        contract: &Contract,
        patch: &PatchSheet,
        errors: &[PositionError],
    ) -> Result<Option<Series>, Broken> {
        let asked = self.choice.in_series && self.choice.centre_um.is_none();
        if asked { self.series_of(contract, patch, errors).map(Some) } else { Ok(None) }
    }

    /// Returns the series of this patch over the defect.
    pub fn series_of(
        &self,
        contract: &Contract,
        patch: &PatchSheet,
        errors: &[PositionError],
    ) -> Result<Series, Broken> {
        let plan = SeriesPlan {
            defect_from_um: self.defect.from_um,
            defect_to_um: self.defect.to_um,
            patch_length_um: patch.length_um,
            cover_and_errors_um: Length::from_um(contract.cover_least_um.value.as_um().saturating_add(sum(errors))),
            least_overlap_um: contract.series_overlap_um.value,
            placement_error_um: contract.placement_error_um.value,
        };
        series(&plan).map_err(times::broken)
    }

    /// Returns the shortest patch that covers the defect alone, centred on it: `defect + 2·(cover asked + errors)`.
    pub fn least_length(&self, contract: &Contract, errors: &[PositionError]) -> Length {
        let side = contract.cover_least_um.value.as_um().saturating_add(sum(errors));
        Length::from_um(side.saturating_mul(2).saturating_add(self.defect.length().as_um()))
    }

    /// Returns whether a patch can line the pipe at both of its inside diameters.
    pub fn patch_fits_pipe(&self, patch: &PatchSheet) -> bool {
        self.choice.diameter_least_um >= patch.diameter_least_um
            && self.choice.diameter_most_um <= patch.diameter_most_um
    }

    fn mark(&self, centre: Length) -> Result<Mark, Broken> {
        let station = self.counted_from(self.choice.from_node, centre);
        let point = self.reading_point();
        if self.choice.way_in != WayIn::Rods {
            let path_um = rods::path(station, self.line.length_um, &point).map_err(times::broken)?;
            return Ok(Mark { path_um, whole_rods: 0, remainder_um: path_um });
        }
        let mover = Mover::RigidRods { pushed_from: self.pushed_from() };
        let push =
            rods::push(station, self.line.length_um, &point, &mover, self.choice.rod_um).map_err(times::broken)?;
        Ok(Mark { path_um: push.path_um, whole_rods: push.whole_rods, remainder_um: push.mark_um })
    }

    fn pushed_from(&self) -> PushedFrom {
        let who = self.choice.below.trim();
        match self.choice.reading_point.kind {
            ReadingPointKind::CleanoutCap => PushedFrom::StraightCleanout,
            ReadingPointKind::PipeMouth if who.is_empty() => PushedFrom::Street,
            ReadingPointKind::PipeMouth => PushedFrom::Below { who: who.to_owned() },
        }
    }

    fn reading_point(&self) -> ReadingPoint {
        let point = &self.choice.reading_point;
        let node = self.node(self.choice.from_node);
        let name = match point.kind {
            ReadingPointKind::PipeMouth => format!("mouth of the pipe in {node}"),
            ReadingPointKind::CleanoutCap => format!("cap of cleanout {node}"),
        };
        // The plan knows how many bends there are and what they add together; the angle only says that they are bends.
        let bend = |adds_um| Bend { angle_deg: 45, adds_um };
        let bends =
            (0..point.bends.clamp(0, 20)).map(|k| bend(if k == 0 { point.bends_um } else { Length::from_um(0) }));
        ReadingPoint { name, offset_um: point.offset_um, riser_um: point.riser_um, bends: bends.collect() }
    }

    /// Refuses a patch that would reach out of the pipe: its mouth where the mark is read there, the node's centre else.
    fn inside_the_pipe(&self, patch: &PlacedPatch) -> Result<(), Broken> {
        let (begins, ends) = self.pipe();
        let out = begins.saturating_sub(patch.from_um.as_um()).max(patch.to_um.as_um().saturating_sub(ends));
        if out > 0 { Err(Broken::with(Rule::PatchOutsideLine, &[("out_um", n(out))])) } else { Ok(()) }
    }

    /// Returns where the pipe begins and ends, in micrometres from the upstream node, as far as the plan knows.
    pub fn pipe(&self) -> (i64, i64) {
        let point = &self.choice.reading_point;
        let mouth = if point.kind == ReadingPointKind::PipeMouth { point.offset_um.as_um() } else { 0 };
        let length = self.line.length_um.as_um();
        match self.choice.from_node {
            FromNode::Upstream => (mouth, length),
            FromNode::Downstream => (0, length - mouth),
        }
    }

    /// Returns the laterals that a patch covers, lengthened by `more` at each end.
    ///
    /// A lateral of unknown bore counts with the bore of the line, on the safe side.
    fn laterals_under(&self, patch: &PlacedPatch, more: Length) -> Result<Vec<usize>, Broken> {
        let area = PatchArea {
            from_um: Length::from_um(patch.from_um.as_um().saturating_sub(more.as_um())),
            to_um: Length::from_um(patch.to_um.as_um().saturating_add(more.as_um())),
            extent: Extent::AllRound { view: View::Downstream },
            inside_diameter_um: self.choice.diameter_most_um,
        };
        let known = |lateral: &Lateral| lateral.diameter_um > Length::from_um(0);
        let laterals: Result<Vec<_>, _> = self
            .line
            .laterals
            .iter()
            .map(|lateral| {
                let dn_um = if known(lateral) { lateral.diameter_um } else { self.choice.diameter_most_um };
                // A patch goes all round, so an hour that nobody knows changes nothing.
                let at = Hour::new(lateral.clock).or_else(|_| Hour::new(12))?;
                Ok(laterals::Lateral { station_um: lateral.station_um, at, view: View::Downstream, dn_um })
            })
            .collect();
        laterals.and_then(|laterals| laterals::covered(&area, &laterals)).map_err(times::broken)
    }

    /// Returns a station counted from one of the nodes.
    pub fn counted_from(&self, node: FromNode, station: Length) -> Length {
        match node {
            FromNode::Upstream => station,
            FromNode::Downstream => Length::from_um(self.line.length_um.as_um() - station.as_um()),
        }
    }

    /// Returns the name of a node.
    pub fn node(&self, node: FromNode) -> &str {
        match node {
            FromNode::Upstream => &self.line.upstream.name,
            FromNode::Downstream => &self.line.downstream.name,
        }
    }
}

/// Returns the sum of errors in micrometres.
pub fn sum(errors: &[PositionError]) -> i64 {
    errors.iter().fold(0, |sum, error| error.size_um.as_um().saturating_add(sum))
}

fn reading_error(
    kind: ErrorKind,
    instrument: &Instrument,
    distance: Length,
    from: &str,
) -> Result<PositionError, checks::Refused> {
    let ppm = u32::try_from(instrument.error_ppm)
        .map_err(|_| checks::Refused::out_of_range(&format!("error of {}", instrument.name), "must not be below 0"))?;
    let share = counter_error(distance, ppm)?;
    let says = if ppm == 0 {
        instrument.source.clone()
    } else {
        let (pct, way) = (f64::from(ppm) / 1e4, words::metres_mm(distance));
        format!("{pct} % of {way}{from}, rounded up; {}", instrument.source)
    };
    Ok(PositionError {
        kind,
        size_um: Length::from_um(share.as_um().saturating_add(instrument.error_um.as_um())),
        source: says,
    })
}

fn around(centre: Length, length: Length) -> PlacedPatch {
    let from = centre.as_um().saturating_sub(length.as_um().div_euclid(2));
    PlacedPatch { from_um: Length::from_um(from), to_um: Length::from_um(from.saturating_add(length.as_um())) }
}

fn in_plan(cover: checks::cover::Cover, contract: &Contract) -> Cover {
    let what = |kind| match kind {
        ErrorKind::Inspection => "inspection",
        ErrorKind::Placement => "placement",
        ErrorKind::MarkReading => "mark reading",
    };
    let term =
        |error: PositionError| ErrorTerm { what: what(error.kind).into(), um: error.size_um, source: error.source };
    Cover {
        upstream_um: cover.upstream_um,
        downstream_um: cover.downstream_um,
        errors: cover.counted.into_iter().map(term).collect(),
        required_um: contract.cover_least_um.value,
    }
}

fn bad(what: &str) -> Broken {
    Broken::with(Rule::BadValue, &[("what", t(what))])
}

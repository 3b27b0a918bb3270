//! What a reader of the plan should know: nothing that closes a gate.

use serde::Serialize;

use super::super::gate::closures_before;
use super::super::line::Around;
use super::super::plan::{FromNode, ReadingPointKind};
use super::candidates::length;
use super::{Case, Parts};
use crate::shelf::sheets::Parts as ResinParts;
use crate::units::Length;
use crate::words::{self, say};

/// One note.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Note {
    pub code: NoteCode,
    pub says: String,
}

/// What a note is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum NoteCode {
    /// Several patches, one after the other.
    Series,
    LateralUnder,
    LateralNear,
    LateralBoreUnknown,
    /// A clock position from and to the same hour: all round, or one spot?
    ClockSameHour,
    ClosureEnds,
    /// The reading point lies in the node's centre, as long as nobody entered where it is.
    OffsetMissing,
    /// The inside diameter is not measured yet.
    DiameterNominal,
    SeamMissing,
    HostPipeUnknown,
    PackerOut,
    Containers,
    Batches,
}

impl Case<'_> {
    /// Returns the notes, in the order of the plan's parts.
    pub fn notes(&self, parts: &Parts) -> Vec<Note> {
        let mut found = self.about_choice();
        found.extend(self.about_place(parts));
        found.extend(self.about_resin(parts));
        found.extend(self.about_clock());
        found.extend(self.about_closures(parts));
        found
    }

    fn about_choice(&self) -> Vec<Note> {
        let choice = self.choice;
        let mouth = choice.reading_point.kind == ReadingPointKind::PipeMouth;
        let offset = mouth && choice.reading_point.offset_um == Length::from_um(0);
        let node = self.node(choice.from_node);
        let host = self.picked.contract.is_some_and(|contract| contract.host_pipe_most_pa.is_none());
        [
            offset.then(|| note(NoteCode::OffsetMissing, say("note-offset_missing", &[("node", node.into())]))),
            (!choice.diameter_measured).then(|| note(NoteCode::DiameterNominal, say("note-diameter_nominal", &[]))),
            (choice.seam_hour == 0).then(|| note(NoteCode::SeamMissing, say("note-seam_missing", &[]))),
            host.then(|| note(NoteCode::HostPipeUnknown, say("note-host_pipe_unknown", &[]))),
        ]
        .into_iter()
        .flatten()
        .collect()
    }

    fn about_place(&self, parts: &Parts) -> Vec<Note> {
        let Some(place) = &parts.place else { return vec![] };
        let mut found = vec![];
        if place.in_series > 1 {
            let centres: Vec<String> = place.patches.iter().map(|patch| words::metres_mm(patch.centre())).collect();
            found.push(note(
                NoteCode::Series,
                say(
                    "note-series",
                    &[
                        ("count", place.in_series.into()),
                        ("centres", (&centres.join(", ")).into()),
                        ("node", (&self.line.upstream.name).into()),
                    ],
                ),
            ));
        }
        let lateral = |index: &usize| self.line.laterals.get(*index);
        for under in place.covered.iter().filter_map(lateral) {
            found.push(note(
                NoteCode::LateralUnder,
                say(
                    "note-lateral_under",
                    &[("at", (&station(under.station_um)).into()), ("hour", i64::from(under.clock).into())],
                ),
            ));
        }
        for near in place.near.iter().filter_map(lateral) {
            found.push(note(
                NoteCode::LateralNear,
                say("note-lateral_near", &[("at", (&station(near.station_um)).into())]),
            ));
        }
        for unknown in self.line.laterals.iter().filter(|lateral| lateral.diameter_um <= Length::from_um(0)) {
            found.push(note(
                NoteCode::LateralBoreUnknown,
                say("note-lateral_bore_unknown", &[("at", (&station(unknown.station_um)).into())]),
            ));
        }
        found.extend(self.packer_out(place.from_upstream_um));
        found
    }

    fn packer_out(&self, centre: Length) -> Option<Note> {
        let half = self.picked.packer?.body_um.as_um().div_euclid(2);
        let (begins, ends) = self.pipe();
        let (up, down) = (begins - centre.as_um(), centre.as_um() - ends);
        let (up, down) = (up.saturating_add(half), down.saturating_add(half));
        let (out, node) = if up >= down { (up, FromNode::Upstream) } else { (down, FromNode::Downstream) };
        (out > 0).then(|| {
            note(
                NoteCode::PackerOut,
                say(
                    "note-packer_out",
                    &[("out", (&length(Length::from_um(out))).into()), ("node", self.node(node).into())],
                ),
            )
        })
    }

    fn about_resin(&self, parts: &Parts) -> Vec<Note> {
        let (Some(bound), Some(resin)) = (&parts.bound, self.picked.resin) else { return vec![] };
        let mut found = vec![];
        let mass = words::show("mg", bound.batch_mg.as_mg());
        if let ResinParts::Containers { kit, mass_mg, .. } = &resin.parts {
            let count = bound.batch_mg.as_mg() / mass_mg.as_mg().max(1);
            found.push(note(
                NoteCode::Containers,
                say("note-containers", &[("count", count.into()), ("kit", kit.into()), ("mass", (&mass).into())]),
            ));
        }
        if self.choice.batches > 1 {
            found.push(note(
                NoteCode::Batches,
                say("note-batches", &[("count", i64::from(self.choice.batches).into()), ("mass", (&mass).into())]),
            ));
        }
        found
    }

    fn about_clock(&self) -> Vec<Note> {
        let same = |around: Around| match around {
            Around::Between { from, to } if from == to => Some(from),
            _ => None,
        };
        let asked = self.defect.observations.iter().filter_map(|seen| Some((seen, same(seen.around)?)));
        asked
            .map(|(seen, hour)| {
                let name = if seen.code.is_empty() { &seen.words } else { &seen.code };
                note(
                    NoteCode::ClockSameHour,
                    say("note-clock_same_hour", &[("name", name.into()), ("hour", i64::from(hour).into())]),
                )
            })
            .collect()
    }

    fn about_closures(&self, parts: &Parts) -> Vec<Note> {
        let Some(timed) = &parts.timed else { return vec![] };
        let budget = &timed.budget;
        let work = budget.wet_out_ms.as_ms() + budget.loaded_push_ms.as_ms() + budget.connect_ms.as_ms();
        let end_ms = self.now_ms.saturating_add(work).saturating_add(timed.hold_ms.as_ms());
        closures_before(&self.choice.closures, end_ms)
            .into_iter()
            .map(|broken| {
                let says = broken.rule.says(&broken.values);
                note(NoteCode::ClosureEnds, say("note-closure_ends", &[("says", (&says).into())]))
            })
            .collect()
    }
}

fn station(at: Length) -> String {
    words::show("um", at.as_um())
}

fn note(code: NoteCode, says: String) -> Note {
    Note { code, says }
}

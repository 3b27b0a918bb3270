//! Given a repair in some stage, when a command comes, then these events or this refusal.

use std::collections::BTreeMap;

use crate::facts::{Facts, Moment};
use crate::procedure::answer::{Answer, Value, Values};
use crate::procedure::apply::apply_record;
use crate::procedure::command::Command;
use crate::procedure::decide::decide;
use crate::procedure::event::{Event, Record};
use crate::procedure::happening::{Happening, ReadBy};
use crate::procedure::line::{Defect, Line, Node, Origin};
use crate::procedure::plan::*;
use crate::procedure::repair::Repair;
use crate::procedure::rules::{Refusal, Rule};
use crate::procedure::stage::Stage;
use crate::procedure::times;
use crate::shelf::method::{Shape, Task};
use crate::shelf::{Shelf, examples};
use crate::units::{Length, Mass, Pressure, Span, Temperature};

/// 2026-10-14 08:00 UTC.
pub const MORNING_MS: i64 = 1_791_964_800_000;

pub const MINUTE: i64 = 60_000;

/// One repair, a clock and the people.
#[derive(Clone)]
pub struct World {
    pub repair: Option<Repair>,
    pub records: Vec<Record>,
    pub shelf: Shelf,
    pub minutes: f64,
    /// How far the wall clock was set ahead of what it should show.
    pub wall_ahead_ms: i64,
    /// Minutes that local time is ahead of UTC.
    pub offset_min: i32,
    pub boot: &'static str,
    /// When the phone was started, in minutes of the story.
    pub booted: f64,
    pub person: &'static str,
}

pub fn mm(mm: i64) -> Length {
    Length::from_um(mm * 1000)
}

pub fn celsius(degrees: f64) -> Temperature {
    Temperature::from_celsius(degrees).unwrap()
}

pub fn bar(bar: f64) -> Pressure {
    Pressure::from_bar(bar).unwrap()
}

pub fn temperatures(resin: f64, air: f64, pipe: f64) -> Temperatures {
    Temperatures { resin_mc: celsius(resin), air_mc: celsius(air), pipe_mc: celsius(pipe), water_mc: None }
}

impl World {
    /// A repair that is opened and has no plan.
    pub fn opened() -> Self {
        Self::opened_on(MORNING_MS)
    }

    /// The same on another day: the moment at which it was opened.
    fn opened_on(at_ms: i64) -> Self {
        let mut world = Self {
            repair: None,
            records: vec![],
            shelf: examples::shelf().unwrap(),
            minutes: 0.0,
            wall_ahead_ms: at_ms - MORNING_MS,
            offset_min: 120,
            boot: "one",
            booted: -60.0,
            person: "ekdal",
        };
        let node = |name: &str| Node { name: name.into(), place: None };
        let line = Line {
            asset: "SS-03107".into(),
            upstream: node("MH 031"),
            downstream: node("MH 032"),
            length_um: mm(38_400),
            height_um: mm(200),
            material: "vitrified clay".into(),
            ..Line::default()
        };
        let defect = Defect { from_um: mm(7_120), to_um: mm(7_400), observations: vec![], origin: Origin::ByHand };
        let contract = Box::new(world.shelf.contracts[0].clone());
        world.must(Command::Open {
            id: "r".into(),
            number: "R-03".into(),
            rehearsal: false,
            line: Box::new(line),
            defect: Box::new(defect),
            contract,
            video_before: "V-1".into(),
        });
        world
    }

    /// A repair with an accepted plan.
    pub fn planned() -> Self {
        Self::opened().with_plan()
    }

    fn with_plan(self) -> Self {
        let mut world = self;
        let plan = Box::new(world.plan());
        world.must(Command::AcceptPlan { plan });
        world
    }

    /// The plan of the worked example: window 1.10 to 1.40 bar, budget with time to spare.
    pub fn plan(&self) -> Plan {
        let contract = self.shelf.contracts[0].clone();
        let resin = self.shelf.resins[0].clone();
        let temperatures = temperatures(19.2, 13.1, 12.8);
        let batch = Mass::from_mg(1_218_000);
        let budget = times::budget(&times::BudgetOf {
            contract: &contract,
            resin: &resin,
            batch,
            temperatures: &temperatures,
            push: None,
        })
        .unwrap();
        let hold_ms = times::at_coldest(&resin.hold, times::coldest(&temperatures)).unwrap();
        let full_cure_ms = times::at_coldest(&resin.full_cure, times::coldest(&temperatures)).unwrap();
        Plan {
            choice: PlanChoice {
                diameter_least_um: mm(196),
                diameter_most_um: mm(199),
                temperatures,
                head_um: mm(800),
                rod_um: mm(1000),
                ..PlanChoice::default()
            },
            patch: self.shelf.patches.iter().find(|patch| patch.id == "G1050-200-600").unwrap().clone(),
            packer: self.shelf.packers.iter().find(|packer| packer.id == "P-07").unwrap().clone(),
            method: self.shelf.methods[0].clone(),
            instruments: self.shelf.instruments.clone(),
            computed: Computed {
                patches: vec![PlacedPatch { from_um: mm(6_957), to_um: mm(7_557) }],
                cover: Cover {
                    upstream_um: mm(134),
                    downstream_um: mm(128),
                    errors: vec![],
                    required_um: contract.cover_least_um.value,
                },
                mark: Mark { path_um: mm(6_857), whole_rods: 6, remainder_um: mm(857) },
                sleeve_um: mm(1_178),
                sleeve_bands_um: vec![],
                patch_bands_um: vec![],
                membrane_um: None,
                membrane_bands_um: vec![],
                covered: vec![],
                wrap_um: mm(660),
                batch_mg: batch,
                budget,
                hold_ms,
                hold_at_mc: times::coldest(&temperatures),
                full_cure_ms,
                window: Window {
                    lower_pa: bar(1.10),
                    upper_pa: bar(1.40),
                    lower_governs: "least gauge".into(),
                    upper_governs: "host pipe".into(),
                    water_pa: bar(0.0785),
                    net_least_pa: bar(0.90),
                    target_pa: bar(1.25),
                },
                thrust_n: 4_400,
            },
            contract,
            resin,
        }
    }

    pub fn repair(&self) -> &Repair {
        self.repair.as_ref().unwrap()
    }

    pub fn facts(&self) -> Facts {
        let running = (self.minutes * MINUTE as f64) as i64;
        Facts {
            moment: Moment {
                at_ms: MORNING_MS + running + self.wall_ahead_ms,
                offset_min: self.offset_min,
                boot_ms: ((self.minutes - self.booted) * MINUTE as f64) as i64,
                boot_id: self.boot.into(),
            },
            person: Some(self.person.into()),
            device: "phone".into(),
            ..Facts::default()
        }
    }

    /// Moves both clocks.
    pub fn after(&mut self, minutes: f64) -> &mut Self {
        self.minutes += minutes;
        self
    }

    /// Starts the phone anew.
    pub fn restart(&mut self) -> &mut Self {
        (self.boot, self.booted) = ("two", self.minutes);
        self
    }

    pub fn by(&mut self, person: &'static str) -> &mut Self {
        self.person = person;
        self
    }

    pub fn when(&mut self, command: Command) -> Result<Vec<Event>, Refusal> {
        let facts = self.facts();
        let events = decide(self.repair.as_ref(), &command, &facts, &self.shelf.people)?;
        let record = Record { facts, events: events.clone() };
        self.repair = apply_record(self.repair.take(), &record);
        self.records.push(record);
        Ok(events)
    }

    pub fn must(&mut self, command: Command) -> &mut Self {
        let shown = format!("{command:?}");
        if let Err(refusal) = self.when(command) {
            panic!("refused: {refusal:?} on {shown:.300}");
        }
        self
    }

    /// Asserts that a command is refused by this rule, perhaps among others, and changes nothing.
    pub fn refuses(&mut self, command: Command, rule: Rule) {
        let before = self.repair.clone();
        let refusal = self.when(command).expect_err("refused");
        assert!(refusal.broken.iter().any(|broken| broken.rule == rule), "{rule:?} is not in {refusal:?}");
        assert_eq!(self.repair, before);
    }

    pub fn report(&mut self, happening: Happening) -> &mut Self {
        self.must(Command::Report { happening, ago_ms: 0 })
    }

    pub fn answer(&mut self, task: &str, values: &[(&str, Value)]) -> &mut Self {
        let values: BTreeMap<_, _> = values.iter().map(|(key, value)| ((*key).to_owned(), value.clone())).collect();
        self.must(Command::Answer { task: task.into(), answer: Answer::Done { values } })
    }

    /// Answers every mandatory task of the stage that runs so that nothing is off the plan, photos included.
    pub fn answer_all(&mut self) -> &mut Self {
        let stage = self.repair().stage();
        self.answer_stage(stage)
    }

    pub fn answer_stage(&mut self, stage: Stage) -> &mut Self {
        let plan = self.repair().plan.clone().unwrap();
        for task in plan.method.of(stage).filter(|task| task.mandatory) {
            if !self.repair().last_attempt().unwrap().answers.contains_key(&task.key) {
                let values = self.good(task);
                self.must(Command::Answer { task: task.key.clone(), answer: Answer::Done { values } });
            }
        }
        for photo in plan.contract.photos.iter().filter(|photo| photo.stage == stage) {
            self.must(Command::Photo {
                key: photo.key.clone(),
                label: String::new(),
                sha256: "00".repeat(32),
                bytes: 1,
                media_type: "image/jpeg".into(),
                copy_of: None,
            });
        }
        self
    }

    /// Values that pass every gate: first choices, numbers as the sheets want them.
    fn good(&self, task: &Task) -> Values {
        let number = |key: &str, least: i64| match key {
            "at_ms" => self.facts().moment.at_ms,
            "until_ms" => self.facts().moment.at_ms + 600 * MINUTE,
            "least_um" => 196_000,
            "most_um" => 199_000,
            "gauge_pa" => 50_000,
            "held_ms" => 300_000,
            "stored_least_mc" => 10_000,
            "stored_most_mc" => 20_000,
            "resin_mc" => 19_200,
            "air_mc" => 13_100,
            "pipe_mc" => 12_800,
            "front_um" | "rear_um" => 200_000,
            "mass_a_mg" => 812_000,
            "mass_b_mg" => 406_000,
            "mixed_ms" => 190_000,
            "oxygen_permille" => 209,
            _ => least,
        };
        let text = |key: &str| match key {
            "expires_a" | "expires_b" => "2027-02-11",
            "gauge" => "G-04",
            "thermometer" => "T-09",
            "counter" => "C-02",
            "how" => "weighed",
            _ => "as planned",
        };
        let fields = task.kind.fields();
        fields
            .iter()
            .filter(|field| !field.optional || ["mass_a_mg", "mass_b_mg"].contains(&field.key))
            .map(|field| {
                let value = match &field.shape {
                    Shape::Number { least, .. } => Value::Number(number(field.key, *least)),
                    Shape::Time => Value::Number(number(field.key, 0)),
                    Shape::Choice { options } if field.key != "how" => Value::Text(options[0].0.into()),
                    _ => Value::Text(text(field.key).into()),
                };
                (field.key.to_owned(), value)
            })
            .collect()
    }

    /// A repair in a stage that has just begun, everything before it as planned.
    pub fn in_stage(stage: Stage) -> Self {
        Self::in_stage_on(MORNING_MS, stage)
    }

    /// The same on another day.
    pub fn in_stage_on(at_ms: i64, stage: Stage) -> Self {
        let mut world = Self::opened_on(at_ms).with_plan();
        for next in Stage::ALL.into_iter().filter(|next| *next > Stage::Planned && *next <= stage) {
            world.step_to(next);
            assert_eq!(world.repair().stage(), next);
        }
        world
    }

    fn step_to(&mut self, stage: Stage) {
        match stage {
            Stage::Planned => self,
            Stage::Staging => self.must(Command::GoOn),
            Stage::SleeveChange => {
                self.report(Happening::PushBegun).after(5.0).report(Happening::MarkReached { counter_um: None });
                self.after(3.0).report(Happening::PackerBack { sound: true }).answer_all().must(Command::GoOn)
            }
            Stage::TestPush | Stage::WetOut | Stage::Verification => self.after(5.0).answer_all().must(Command::GoOn),
            Stage::Placement => self.join().after(12.0).report(Happening::InsertionBegun),
            Stage::Inflation => self.after(6.0).report(Happening::AtTheMark { counter_um: None, beyond_um: None }),
            Stage::Hold => self.after(4.0).report(Happening::TargetReached { gauge_pa: bar(1.30) }),
            Stage::Deflation => self.hold_for(8).report(Happening::SampleFelt { hard: true }).must(Command::Release),
        };
    }

    /// The second go and the joining.
    pub fn join(&mut self) -> &mut Self {
        self.must(Command::SecondGo { temperatures: temperatures(19.2, 13.1, 12.8) }).report(Happening::Joined)
    }

    /// Readings of 1.30 bar every ten minutes.
    pub fn hold_for(&mut self, readings: u32) -> &mut Self {
        for _ in 0..readings {
            self.after(10.0).report(reading(1.30, 12.8));
        }
        self
    }

    /// Everything answered and accepted.
    pub fn accepted() -> Self {
        let mut world = Self::in_stage(Stage::Verification);
        for stage in Stage::ALL {
            world.answer_stage(stage);
        }
        world.by("varga").must(Command::Judge { accept: true, reasons: vec![] });
        world
    }
}

pub fn reading(gauge: f64, pipe: f64) -> Happening {
    Happening::Reading {
        gauge_pa: bar(gauge),
        pipe_mc: Some(celsius(pipe)),
        water_mc: None,
        patch_mc: None,
        upstream_um: None,
        by: ReadBy::Hand,
        gauge: "G-04".into(),
        why: String::new(),
        outside_pa: None,
    }
}

/// A span in minutes and seconds.
pub fn span(minutes: i64, seconds: i64) -> Span {
    Span::from_ms(minutes * MINUTE + seconds * 1000)
}

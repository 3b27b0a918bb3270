//! Random bytes never panic, and a random file that is written is read as it was meant.

use super::*;
use crate::units::Length;
use proptest::prelude::*;
use proptest::sample::{select, subsequence};

/// What a cell may hold: separators, quotes and marks of the format among the letters.
fn remark() -> impl Strategy<Value = Option<String>> {
    proptest::option::of("[a-zäß€ ;,|'\"~#Z=.\t0-9]{0,12}[a-zé]")
}

fn observation() -> impl Strategy<Value = Observation> {
    let hour = || proptest::option::of((1u8..=12).prop_map(|hour| Clock::new(hour).unwrap()));
    let char1 = proptest::option::of(select(vec!["A".to_owned(), "Z".to_owned()]));
    let quant1 = proptest::option::of(0i64..1_000_000);
    let joint = proptest::option::of(Just(true));
    (0i64..99_999_999, char1, quant1, hour(), hour(), joint, remark()).prop_map(
        |(um, char1, quant1, clock_from, clock_to, at_joint, remark)| Observation {
            station_um: Some(Length::from_um(um)),
            code: "BAB".to_owned(),
            char1,
            quant1: quant1.map(|millionths| Quantification { as_written: String::new(), millionths: Some(millionths) }),
            clock_from,
            clock_to,
            at_joint,
            remark,
            ..Observation::default()
        },
    )
}

/// Another way of writing the same.
#[derive(Clone, Debug)]
struct Manner {
    separator: char,
    decimal: char,
    quote: char,
    line_end: &'static str,
    mark: bool,
    columns: Vec<char>,
    /// Cells are quoted only where they must be.
    sparing: bool,
    /// Empty cells at the end of a row are left out.
    short: bool,
}

fn manner() -> impl Strategy<Value = Manner> {
    let columns = Just("IABDGHKF".chars().collect::<Vec<_>>()).prop_shuffle();
    let ends = select(vec!["\n", "\r\n", "\r"]);
    let separators = select(vec![(';', ','), (';', '.'), (',', '.'), ('|', ','), ('\t', ','), ('~', '.')]);
    let flags = (any::<bool>(), any::<bool>(), any::<bool>());
    (separators, select(vec!['"', '\'']), ends, columns, flags).prop_map(
        |((separator, decimal), quote, line_end, columns, (mark, sparing, short))| Manner {
            separator,
            decimal,
            quote,
            line_end,
            mark,
            columns,
            sparing,
            short,
        },
    )
}

impl Manner {
    fn number(&self, millionths: i64) -> String {
        let digits = format!("{}.{:06}", millionths / 1_000_000, millionths % 1_000_000);
        digits.trim_end_matches('0').trim_end_matches('.').replace('.', &self.decimal.to_string())
    }

    fn cell(&self, column: char, o: &Observation) -> String {
        let hour = |clock: Option<Clock>| clock.map_or_else(String::new, |clock| clock.to_string());
        let text = match column {
            'I' => o.station_um.map_or_else(String::new, |station| self.number(station.as_um())),
            'A' => o.code.clone(),
            'B' => o.char1.clone().unwrap_or_default(),
            'D' => o.quant1.as_ref().and_then(|q| q.millionths).map_or_else(String::new, |m| self.number(m)),
            'G' => hour(o.clock_from),
            'H' => hour(o.clock_to),
            'K' => o.at_joint.map_or_else(String::new, |_| "A".to_owned()),
            _ => o.remark.clone().unwrap_or_default(),
        };
        self.quoted(text)
    }

    fn quoted(&self, text: String) -> String {
        let must = text.contains([self.separator, self.quote, '#']);
        if text.is_empty() || self.sparing && !must {
            return text;
        }
        let doubled = text.replace(self.quote, &format!("{0}{0}", self.quote));
        format!("{0}{doubled}{0}", self.quote)
    }

    fn row(&self, o: &Observation) -> String {
        let mut cells: Vec<String> = self.columns.iter().map(|column| self.cell(*column, o)).collect();
        while self.short && cells.last().is_some_and(String::is_empty) {
            cells.pop();
        }
        cells.join(&self.separator.to_string())
    }

    fn file(&self, observations: &[Observation]) -> Vec<u8> {
        let columns: Vec<String> = self.columns.iter().map(char::to_string).collect();
        let mut lines = vec!["#A1=UTF-8".to_owned(), "#A2=en".to_owned()];
        lines.push(format!("#A3={}", self.separator));
        lines.push(format!("#A4={}", self.decimal));
        lines.push(format!("#A5={}", self.quote));
        lines.extend(["#B01=AAA".to_owned(), "SS-1".to_owned()]);
        lines.push(format!("#C={}", columns.join(&self.separator.to_string())));
        lines.extend(observations.iter().map(|o| self.row(o)));
        lines.push("#Z".to_owned());
        let text = lines.join(self.line_end) + self.line_end;
        let mark = if self.mark { "\u{FEFF}" } else { "" };
        format!("{mark}{text}").into_bytes()
    }
}

/// What the writer does not choose.
fn bare(mut o: Observation) -> Observation {
    o.source_line = 0;
    if let Some(quantification) = &mut o.quant1 {
        quantification.as_written.clear();
    }
    o
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn what_is_written_is_read(manner in manner(), rows in proptest::collection::vec(observation(), 0..12)) {
        let file = read(&manner.file(&rows)).unwrap();
        prop_assert_eq!(&file.notices, &vec![]);
        let read: Vec<Observation> = file.inspections[0].observations.iter().cloned().map(bare).collect();
        prop_assert_eq!(read, rows);
    }

    #[test]
    fn random_bytes_never_panic(bytes in proptest::collection::vec(any::<u8>(), 0..600)) {
        let _ = read(&bytes);
    }

    #[test]
    fn random_bytes_behind_a_sound_beginning_never_panic(
        start in select(vec![&b"#A1=UTF-16\n#A3=;\n#A4=,\n#A5=\"\n#B01=AAA;AAK\n"[..], b"<DATA><ZB>", b"\xFE\xFF\0#", b"\xEF\xBB\xBF"]),
        bytes in proptest::collection::vec(any::<u8>(), 0..300),
    ) {
        let _ = read(&[start, &bytes].concat());
    }

    #[test]
    fn a_damaged_sample_never_panics(
        name in select(vec!["quillmere.txt", "gannet-steps.xml", "tallow-street-latin-1.txt"]),
        damage in proptest::collection::vec((any::<proptest::sample::Index>(), any::<u8>()), 1..6),
        cut in any::<proptest::sample::Index>(),
    ) {
        let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../fixtures/inspections").join(name);
        let mut bytes = std::fs::read(path).unwrap();
        for (place, byte) in damage {
            let place = place.index(bytes.len());
            bytes[place] = byte;
        }
        let _ = read(&bytes);
        bytes.truncate(cut.index(bytes.len()));
        let _ = read(&bytes);
    }

    #[test]
    fn whatever_is_picked_lies_within_its_extent(
        rows in proptest::collection::vec(observation(), 1..6),
        places in subsequence((0..6usize).collect::<Vec<_>>(), 1..6),
    ) {
        let picked: Vec<&Observation> = places.iter().filter_map(|place| rows.get(*place)).collect();
        let Ok(extent) = combine_answered(&picked, SameHour::OneSpot) else { return Ok(()) };
        for o in picked {
            prop_assert!((extent.from_um..=extent.to_um).contains(&o.station_um.unwrap()));
            for hour in [o.clock_from, o.clock_to].into_iter().flatten() {
                prop_assert!(holds(extent.clock, hour), "{:?} {hour}", extent.clock);
            }
        }
    }
}

fn holds(clock: ClockExtent, hour: Clock) -> bool {
    match clock {
        ClockExtent::Range { from, to } => from.clockwise_to(hour) <= from.clockwise_to(to),
        ClockExtent::Spot { at } => at == hour,
        ClockExtent::AllRound => true,
        ClockExtent::Ask { .. } | ClockExtent::NotSaid => false,
    }
}

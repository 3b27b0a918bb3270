//! The code on the screen of a phone that hands a hold over: what it says, how it is signed, drawn and read.
//!
//! It carries the moment that the phone's clocks show while it is on the screen, by which both clocks are told apart, and
//! as much of the hold as another phone needs to go on with its clock alone. The record itself travels as a bundle.

use base64::Engine as _;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use p256::ecdsa::DerSignature;
use p256::ecdsa::signature::Verifier;
use qrcodegen::{QrCode, QrCodeEcc, QrSegment};
use serde::{Deserialize, Serialize};

use super::response::Problem;
use crate::bundle::read::public_key;
use crate::facts::Moment;
use crate::label;
use crate::procedure::repair::Repair;
use crate::procedure::{hold, times};
use crate::view::{Code, summary};

/// What every code begins with. Behind it stand the signature, a point, and what is signed.
const TAG: &str = "MENDLINE-HOLD-2:";

/// Stands before what is signed, so that no signature can be taken for one of another kind.
const SIGNED: &[u8] = b"mendline/hold/2";

/// The least quiet zone of a code, in modules. Source: ISO/IEC 18004, 9.1.
const QUIET: i32 = 4;

/// That a code speaks UTF-8. Source: AIM ECI Specification, assignment 000026.
const UTF_8: u32 = 26;

/// A name may be this long, in bytes: more of it makes the code too fine to photograph.
const MOST_NAME: usize = 24;

/// No clock and no span goes beyond this, in milliseconds: three thousand years.
const MOST_MS: i64 = 100_000_000_000_000;

/// No pressure goes beyond this, in Pa.
const MOST_PA: i64 = 1_000_000_000;

/// What the code says: a JSON array in this order, because every letter makes the code finer and harder to photograph.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Pass(pub Device, pub Clocks, pub Told);

/// The first phone.
type Device = String;

/// What its clocks show while the code is on its screen: wall clock, offset, boot clock, and which start that counts from,
/// as [`Moment`] names them.
type Clocks = (i64, i32, i64, String);

/// The hold by the first phone's boot clock (ms) and gauge (Pa).
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Told {
    #[serde(rename = "r")]
    pub repair: String,
    #[serde(rename = "n")]
    pub attempt: u32,
    #[serde(rename = "j")]
    pub joined_ms: i64,
    #[serde(rename = "t")]
    pub target_ms: i64,
    #[serde(rename = "w")]
    pub window_pa: (i64, i64),
    /// The last reading, or target pressure before the first: when, and the gauge.
    #[serde(rename = "l")]
    pub last: (i64, i64),
    #[serde(rename = "c")]
    pub counted_ms: i64,
    /// The hold that is asked for.
    #[serde(rename = "q")]
    pub required_ms: i64,
    /// When release is possible at the earliest, if every reading after the code is good and in time.
    #[serde(rename = "e")]
    pub earliest_ms: i64,
    /// Between two readings.
    #[serde(rename = "i")]
    pub interval_ms: i64,
    #[serde(rename = "a")]
    pub called: Called,
    #[serde(rename = "x", default, skip_serializing_if = "std::ops::Not::not")]
    pub rehearsal: bool,
}

/// By what people know the hold: the repair's number, the node where the crew works, the line's nodes, the street.
type Called = (String, String, String, String, String);

/// A code that was read, with what is needed to check it once the key of its phone is known.
pub struct Seen {
    pub pass: Pass,
    /// All that the code says.
    pub text: String,
    signed: Vec<u8>,
    signature: Vec<u8>,
}

impl Pass {
    /// Returns what the clocks of the first phone showed.
    pub fn moment(&self) -> Moment {
        let (at_ms, offset_min, boot_ms, boot_id) = self.1.clone();
        Moment { at_ms, offset_min, boot_ms, boot_id }
    }

    /// Whatever a stranger's code says, sums of it stay numbers.
    fn is_sound(&self) -> bool {
        let Self(_, (at_ms, offset_min, boot_ms, _), hold) = self;
        let moments = [*at_ms, *boot_ms, hold.joined_ms, hold.target_ms, hold.last.0, hold.earliest_ms];
        let spans = [hold.counted_ms, hold.required_ms, hold.interval_ms.saturating_sub(1)];
        let pressures = [hold.window_pa.0, hold.window_pa.1, hold.last.1];
        moments.iter().all(|ms| (-MOST_MS..=MOST_MS).contains(ms))
            && spans.iter().all(|ms| (0..=MOST_MS).contains(ms))
            && pressures.iter().all(|pa| (-MOST_PA..=MOST_PA).contains(pa))
            && (-1_440..=1_440).contains(offset_min)
    }
}

impl Seen {
    /// Returns whether the phone with this key, as a bundle names it, made the code.
    pub fn is_by(&self, key: &str) -> bool {
        let signature = DerSignature::try_from(self.signature.as_slice()).ok();
        public_key(key).zip(signature).is_some_and(|(key, signature)| key.verify(&self.signed, &signature).is_ok())
    }
}

/// Returns what the entries say of the hold at a moment of the first phone; `None` where there is no hold.
pub fn told(repair: &Repair, now: &Moment) -> Option<Told> {
    let (plan, attempt) = times::plan_and_attempt(repair)?;
    let (joined, target) = attempt.joined.as_ref().zip(attempt.target.as_ref())?;
    let state = hold::state(plan, attempt)?;
    let outlook = hold::outlook(&state, attempt, now)?;
    let last = state.readings.last()?;
    // The line of time begins at joining, which may have been before the phone was started anew.
    let since_joined = times::between(&joined.moment, now);
    let boot = |line_ms: i64| now.boot_ms - since_joined + line_ms;
    let line = summary(repair);
    let names = [&line.number, &line.node, &line.upstream, &line.downstream, &line.street].map(|name| shortened(name));
    Some(Told {
        repair: repair.id.clone(),
        attempt: attempt.n,
        joined_ms: boot(0),
        target_ms: boot(times::between(&joined.moment, &target.at.moment)),
        window_pa: (plan.computed.window.lower_pa.as_pa(), plan.computed.window.upper_pa.as_pa()),
        last: (boot(last.at_ms), last.gauge_pa.as_pa()),
        counted_ms: state.shown.counted_ms.as_ms(),
        required_ms: state.terms.required_ms.as_ms(),
        earliest_ms: boot(outlook.earliest_release_ms),
        interval_ms: state.terms.interval_ms.as_ms(),
        called: names.into(),
        rehearsal: repair.rehearsal,
    })
}

/// Returns the text of a code, signed by `sign`.
pub fn written(pass: &Pass, sign: impl FnOnce(&[u8]) -> Vec<u8>) -> Option<String> {
    let said = serde_json::to_string(pass).ok()?;
    let signature = sign(&[SIGNED, said.as_bytes()].concat());
    Some(format!("{TAG}{}.{said}", URL_SAFE_NO_PAD.encode(signature)))
}

/// Returns the code of a text as a screen draws it.
pub fn drawn(text: &str) -> Option<Code> {
    let said = [QrSegment::make_eci(UTF_8), QrSegment::make_bytes(text.as_bytes())];
    let code = QrCode::encode_segments(&said, QrCodeEcc::Medium).ok()?;
    let size = code.size();
    let dark = (0..size).flat_map(|y| (0..size).map(move |x| (x, y))).filter(|(x, y)| code.get_module(*x, *y));
    let path = dark.map(|(x, y)| format!("M{},{}h1v1h-1z", x + QUIET, y + QUIET)).collect();
    Some(Code { path, modules: size + 2 * QUIET })
}

/// Returns the code in a picture.
///
/// Errors: `pass` if there is none or it can't be read; those of the picture.
pub fn photographed(photo: &[u8]) -> Result<Seen, Problem> {
    let said = match label::texts(photo) {
        Err(label::Fault::NoCode) => vec![],
        said => said?,
    };
    let text = said.into_iter().find(|text| text.starts_with(TAG));
    let text = text.ok_or_else(|| {
        wrong("There is no code of a hold in this picture. Fill the picture with the code, hold still, keep light off it.")
    })?;
    read(&text).ok_or_else(|| wrong("The code can't be read. Take the picture again."))
}

/// Returns what the text of a code says; `None` if it is none.
pub fn read(text: &str) -> Option<Seen> {
    let (signature, said) = text.strip_prefix(TAG)?.split_once('.')?;
    let pass: Pass = serde_json::from_str(said).ok()?;
    pass.is_sound().then_some(())?;
    let signature = URL_SAFE_NO_PAD.decode(signature).ok()?;
    Some(Seen { pass, text: text.to_owned(), signed: [SIGNED, said.as_bytes()].concat(), signature })
}

pub fn wrong(says: &str) -> Problem {
    Problem::error("pass", says)
}

/// Returns a name that fits the code.
fn shortened(name: &str) -> String {
    const CUT: char = '…';
    if name.len() <= MOST_NAME {
        return name.to_owned();
    }
    let room = MOST_NAME - CUT.len_utf8();
    let ends = |(at, letter): &(usize, char)| at + letter.len_utf8() <= room;
    name.char_indices().take_while(ends).map(|(_, letter)| letter).chain([CUT]).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn pass() -> Pass {
        let called = ["R-07", "MH 214", "MH 214", "MH 215", "Färberstraße"].map(str::to_owned).into();
        let told = Told {
            repair: "1f".repeat(16),
            attempt: 1,
            joined_ms: 1,
            target_ms: 2,
            window_pa: (110_000, 140_000),
            last: (3, 130_000),
            counted_ms: 4,
            required_ms: 5,
            earliest_ms: 6,
            interval_ms: 7,
            called,
            rehearsal: false,
        };
        Pass("device".into(), (1_791_964_800_000, 120, 9, "start".into()), told)
    }

    #[test]
    fn what_is_written_is_read_again_and_no_sum_of_a_strangers_code_overflows() {
        let text = written(&pass(), |_| vec![1, 2, 3]).unwrap();
        assert_eq!(read(&text).unwrap().pass, pass());
        for (from, to) in [
            ("\"j\":1", "\"j\":-9223372036854775808"),
            ("\"i\":7", "\"i\":0"),
            ("\"q\":5", "\"q\":-1"),
            ("\"e\":6", "\"e\":9223372036854775807"),
            ("\"l\":[3,130000]", "\"l\":[3,9223372036854775807]"),
            ("120,9,", "14400,9,"),
        ] {
            assert!(text.contains(from), "{text}");
            assert!(read(&text.replace(from, to)).is_none(), "{to}");
        }
        for wrong in ["", TAG, "MENDLINE-HOLD-1:AA.[]", "MENDLINE-HOLD-2:AA.[]", "MENDLINE-HOLD-2:?.[]"] {
            assert!(read(wrong).is_none(), "{wrong}");
        }
    }

    #[test]
    fn a_long_name_is_cut_between_two_letters() {
        assert_eq!(shortened("Kettle Row"), "Kettle Row");
        assert_eq!(shortened(&"ü".repeat(12)), "ü".repeat(12));
        assert_eq!(shortened(&"ü".repeat(13)), format!("{}…", "ü".repeat(10)));
    }

    /// Source: ISO/IEC 18004: version 20 is 97 modules wide.
    #[test]
    fn the_longest_names_still_make_a_code_that_a_phone_can_photograph() {
        let Pass(_, _, told) = pass();
        let name = "Ж".repeat(MOST_NAME / 2);
        let named = Told { called: [(); 5].map(|()| name.clone()).into(), rehearsal: true, ..long(told) };
        let clocks = (1_791_964_800_000, -120, 8_640_000_000, "9".repeat(36));
        let text = written(&Pass("d".repeat(32), clocks, named), |_| vec![7; 72]).unwrap();
        let code = drawn(&text).unwrap();
        assert!(code.modules - 2 * QUIET <= 97, "{} letters, {} modules", text.len(), code.modules - 2 * QUIET);
    }

    fn long(told: Told) -> Told {
        let ms = 8_640_000_000;
        let hold = Told { attempt: 12, joined_ms: ms, target_ms: ms, last: (ms, 130_000), ..told };
        Told { counted_ms: 36_000_000, required_ms: 36_000_000, earliest_ms: ms, interval_ms: 3_600_000, ..hold }
    }
}

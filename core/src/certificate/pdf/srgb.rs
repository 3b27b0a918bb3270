//! A small colour profile for sRGB, made from its published constants.
//!
//! Source: the curve and the primaries of IEC 61966-2-1, adapted to D50 as the ICC's own sRGB profile gives them; the
//! layout of the file by ICC.1:2004-10 (profile version 4.2), clauses 7 and 10.

/// The primaries, adapted to D50: red, green, blue.
const COLORANTS: [(&[u8; 4], [f64; 3]); 3] = [
    (b"rXYZ", [0.436065, 0.222488, 0.013916]),
    (b"gXYZ", [0.385147, 0.716873, 0.097076]),
    (b"bXYZ", [0.143066, 0.060608, 0.714096]),
];
/// The illuminant of the connection space.
const D50: [f64; 3] = [0.9642, 1.0, 0.8249];
/// From D65 to D50, by Bradford's method.
const ADAPTATION: [f64; 9] =
    [1.047882, 0.022919, -0.050217, 0.029587, 0.990479, -0.017059, -0.009232, 0.015076, 0.751678];
/// `y = (a·x + b)^g` from `d` on, `y = c·x` below.
const CURVE: [f64; 5] = [2.4, 1.0 / 1.055, 0.055 / 1.055, 1.0 / 12.92, 0.04045];

/// Returns the profile's bytes, always the same.
pub fn profile() -> Vec<u8> {
    let mut tags: Vec<(&[u8; 4], Vec<u8>)> = vec![
        (b"desc", text("sRGB")),
        (b"cprt", text("No copyright, use freely")),
        (b"wtpt", element(b"XYZ ", &D50)),
        (b"chad", element(b"sf32", &ADAPTATION)),
    ];
    tags.extend(COLORANTS.map(|(name, xyz)| (name, element(b"XYZ ", &xyz))));
    let curve = [b"para\0\0\0\0\0\x03\0\0".to_vec(), numbers(&CURVE)].concat();
    tags.extend([b"rTRC", b"gTRC", b"bTRC"].map(|name| (name, curve.clone())));
    assembled(&tags)
}

fn assembled(tags: &[(&[u8; 4], Vec<u8>)]) -> Vec<u8> {
    let mut table = (tags.len() as u32).to_be_bytes().to_vec();
    let mut data: Vec<u8> = Vec::new();
    let start = 128 + 4 + 12 * tags.len();
    for (name, bytes) in tags {
        table.extend_from_slice(*name);
        table.extend(((start + data.len()) as u32).to_be_bytes());
        table.extend((bytes.len() as u32).to_be_bytes());
        data.extend(bytes);
        data.resize(data.len().next_multiple_of(4), 0);
    }
    [header((start + data.len()) as u32), table, data].concat()
}

fn header(size: u32) -> Vec<u8> {
    let mut header = size.to_be_bytes().to_vec();
    header.extend(b"\0\0\0\0\x04\x20\0\0mntrRGB XYZ ");
    header.extend([2004, 10, 1, 0, 0, 0].into_iter().flat_map(u16::to_be_bytes));
    header.extend(b"acsp");
    header.resize(68, 0);
    header.extend(numbers(&D50));
    header.resize(128, 0);
    header
}

/// A text in one language.
fn text(text: &str) -> Vec<u8> {
    let units: Vec<u8> = text.encode_utf16().flat_map(u16::to_be_bytes).collect();
    let mut tag = b"mluc\0\0\0\0\0\0\0\x01\0\0\0\x0cenUS".to_vec();
    tag.extend((units.len() as u32).to_be_bytes());
    tag.extend(28_u32.to_be_bytes());
    tag.extend(units);
    tag
}

fn element(kind: &[u8; 4], values: &[f64]) -> Vec<u8> {
    [kind.as_slice(), &[0; 4], &numbers(values)].concat()
}

/// Signed numbers with 16 bits behind the point.
fn numbers(values: &[f64]) -> Vec<u8> {
    values.iter().flat_map(|value| ((value * 65536.0).round() as i32).to_be_bytes()).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_header_states_the_length_of_the_profile() {
        let profile = profile();
        assert_eq!(profile.len() as u32, u32::from_be_bytes([profile[0], profile[1], profile[2], profile[3]]));
        assert_eq!(&profile[36..40], b"acsp");
    }

    #[test]
    fn the_primaries_add_up_to_white() {
        for (axis, white) in D50.iter().enumerate() {
            let sum: f64 = COLORANTS.iter().map(|(_, xyz)| xyz[axis]).sum();
            assert!((sum - white).abs() < 2e-4, "{axis}: {sum}");
        }
    }

    #[test]
    fn the_two_pieces_of_the_curve_meet() {
        let [g, a, b, c, d] = CURVE;
        assert!((crate::maths::pow(a * d + b, g) - c * d).abs() < 1e-4);
    }
}

//! Codes in a picture, by the crate `rxing`.

use std::collections::HashSet;
use std::panic::{AssertUnwindSafe, catch_unwind};

use image::DynamicImage;
use rxing::common::{GlobalHistogramBinarizer, HybridBinarizer};
use rxing::multi::{GenericMultipleBarcodeReader, MultipleBarcodeReader};
use rxing::{
    BarcodeFormat, Binarizer, BinaryBitmap, DecodeHints, Luma8LuminanceSource, MultiFormatReader, RXingResult,
    RXingResultMetadataType, RXingResultMetadataValue,
};

use crate::picture;

/// The longer sides at which the picture is looked at, in pixels: coarse first, because a blur vanishes there.
const SIDES: [u32; 3] = [800, 1600, 3200];

/// One code: what it says, and whether it calls itself a GS1 code.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Code {
    pub text: String,
    pub gs1: bool,
}

/// Returns the codes in the picture, each text once; empty if none is found.
pub fn found(picture: &DynamicImage) -> Vec<Code> {
    let longest = picture.width().max(picture.height());
    let mut seen: Vec<Code> = vec![];
    for side in SIDES.into_iter().filter(|side| *side == SIDES[0] || longest > side / 2) {
        let grey = picture::within(picture, side).to_luma8();
        let (width, height) = grey.dimensions();
        for code in looked(grey.as_raw(), width, height) {
            if !seen.contains(&code) {
                seen.push(code);
            }
        }
        if seen.iter().any(|code| code.gs1) {
            break;
        }
    }
    seen
}

/// Tries both ways of telling black from white: by the neighbourhood, then by the whole row.
fn looked(grey: &[u8], width: u32, height: u32) -> Vec<Code> {
    let source = || Luma8LuminanceSource::new(grey.to_vec(), width, height).ok();
    // A picture on which the decoder stumbles is a picture without a code.
    let read = || {
        let near = source().map(|source| decoded(HybridBinarizer::new(source))).unwrap_or_default();
        if !near.is_empty() {
            return near;
        }
        source().map(|source| decoded(GlobalHistogramBinarizer::new(source))).unwrap_or_default()
    };
    catch_unwind(AssertUnwindSafe(read)).unwrap_or_default()
}

fn decoded<B: Binarizer>(binarizer: B) -> Vec<Code> {
    let formats = [BarcodeFormat::DATA_MATRIX, BarcodeFormat::QR_CODE, BarcodeFormat::CODE_128];
    let hints = DecodeHints {
        PossibleFormats: Some(HashSet::from(formats)),
        TryHarder: Some(true),
        AlsoInverted: Some(true),
        AssumeGs1: Some(true),
        ..DecodeHints::default()
    };
    let mut bitmap = BinaryBitmap::new(binarizer);
    let mut reader = GenericMultipleBarcodeReader::new(MultiFormatReader::default());
    reader.decode_multiple_with_hints(&mut bitmap, &hints).unwrap_or_default().iter().map(code).collect()
}

/// Source: ISO/IEC 15424: `]d2`, `]Q3` and `]C1` are DataMatrix, QR and Code 128 with FNC1 in the first place.
fn code(result: &RXingResult) -> Code {
    let named = match result.getRXingResultMetadata().get(&RXingResultMetadataType::SYMBOLOGY_IDENTIFIER) {
        Some(RXingResultMetadataValue::SymbologyIdentifier(name)) => name.as_str(),
        _ => "",
    };
    let text = result.getText();
    let bare = text.strip_prefix("]C1").unwrap_or(text);
    Code { text: bare.to_owned(), gs1: bare != text || ["]d2", "]Q3", "]C1"].contains(&named) }
}

//! The photos: their facts, and a reduced copy of those whose original is at hand.

use crate::words::tell;
use sha2::{Digest, Sha256};

use super::{Case, identity, stages};
use crate::certificate::content::{Known, Photo, PhotoCopy};
use crate::certificate::photo_copy;

use crate::procedure::repair;

/// Returns the photos of every attempt, oldest first.
pub fn photos(case: &Case, original: &dyn Fn(&str) -> Option<Vec<u8>>) -> Vec<Photo> {
    in_order(case).into_iter().map(|photo| one(case, photo, original)).collect()
}

/// Returns the photos in the order in which the pages count them.
pub fn in_order<'a>(case: &Case<'a>) -> Vec<&'a repair::Photo> {
    let mut photos: Vec<_> = case.repair.photos.iter().collect();
    photos.sort_by_key(|photo| photo.at.moment.at_ms);
    photos
}

fn one(case: &Case, photo: &repair::Photo, original: &dyn Fn(&str) -> Option<Vec<u8>>) -> Photo {
    Photo {
        title: title(case, photo),
        stage: stages::word(photo.stage),
        at_ms: photo.at.moment.at_ms,
        position: identity::shown(&photo.at.position),
        original_sha256: photo.sha256.clone(),
        bundle: None,
        copy: copy(photo, original).map_or_else(Known::Absent, Known::Known),
    }
}

fn title(case: &Case, photo: &repair::Photo) -> String {
    let asked = case.repair.contract.photos.iter().find(|rule| rule.key == photo.key && !photo.key.is_empty());
    let written = Some(photo.label.trim()).filter(|label| !label.is_empty());
    let title = written
        .or(asked.map(|rule| rule.label.as_str()))
        .map_or_else(|| tell!("cert-photos-photo_without_a_title"), super::words::retold);
    let title = marked(case, photo).map_or_else(|| title.clone(), |original| format!("{title} ({original})"));
    if photo.attempt == case.n() || case.attempt.is_none() {
        title
    } else {
        tell!("cert-photos-attempt", title, n = photo.attempt)
    }
}

/// Returns of which photo, as the pages count them, this one is a marked-up copy.
fn marked(case: &Case, photo: &repair::Photo) -> Option<String> {
    let original = photo.copy_of.as_ref()?;
    let place = in_order(case).iter().position(|other| other.sha256 == *original)?;
    Some(tell!("cert-photos-marked_up_copy_of_photo", number = place + 1))
}

/// Returns the reduced copy. Errors: why there is none, as a clause.
fn copy(photo: &repair::Photo, original: &dyn Fn(&str) -> Option<Vec<u8>>) -> Result<PhotoCopy, String> {
    let bytes = original(&photo.sha256).ok_or(tell!("cert-photos-the_original_is_not_on"))?;
    if sha256(&bytes) != photo.sha256 {
        return Err(tell!("cert-photos-the_file_on_this_device"));
    }
    photo_copy::reduced(&bytes).map_err(|fault| fault.to_string())
}

/// Returns the hash of bytes: 64 hexadecimal digits.
pub fn sha256(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}

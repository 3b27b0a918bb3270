//! Original photos that somebody brings to the screen after the certificate, one file at a time: what the command line does
//! with a folder, by the same search.

use std::io::Read;

use super::Visit;
use super::originals::Search;
use super::pieces::{Arriving, failed};
use super::response::{Answer, Problem};
use super::verdict::Verdict;

/// Photos are a few megabytes each; a film is none.
pub const MOST_BYTES: u64 = 512 << 20;

/// The file that was checked last, and the search for its photos.
pub struct Begun {
    verdict: Verdict,
    search: Search,
}

impl Begun {
    /// Begins anew with a file that was just checked.
    pub fn with(verdict: &Verdict) -> Self {
        Self { verdict: verdict.clone(), search: Search::of(verdict) }
    }
}

impl Visit<'_> {
    /// Looks at a photo that was brought piece by piece, and returns the verdict with all that were looked at so far.
    ///
    /// Errors: `check_first` if the file with this head is not the one that was checked last; `not_whole`; the disk's.
    pub(super) fn check_original(&mut self, head: &str, name: &str, of: u64) -> Result<Answer, Problem> {
        let arrived = Arriving::of(&self.store.folder, name, of)?;
        let Some(begun) = self.store.begun.as_mut().filter(|begun| begun.verdict.head == head) else {
            arrived.drop();
            let says =
                "The certificate was checked before the program was started, or another one since. Check it again.";
            return Err(Problem::error("check_first", says));
        };
        if of > MOST_BYTES {
            begun.search.unreadable(name, "it is larger than any photo");
        } else {
            let mut bytes = vec![];
            arrived.whole()?.read_to_end(&mut bytes).map_err(|why| failed(&why))?;
            begun.search.file(name, &bytes);
        }
        arrived.drop();
        Ok(Answer::Checked(Box::new(begun.search.beside(begun.verdict.clone()).told())))
    }
}

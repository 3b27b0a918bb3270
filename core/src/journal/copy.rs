//! The whole journal from one file to another, by SQLite's own backup, while others may read and write.

use std::path::Path;
use std::time::Duration;

use rusqlite::Connection;
use rusqlite::backup::Backup;

use super::{Fault, Sqlite};

/// Pages copied before others get their turn.
const PAGES: i32 = 1024;

impl Sqlite {
    /// Copies the journal to a new file, as it stands at one moment.
    ///
    /// Errors: `Io`, `DiskFull`, `Corrupt` as the disk has it.
    pub fn copy_to(&self, path: &Path) -> Result<(), Fault> {
        match std::fs::remove_file(path) {
            Err(why) if why.kind() != std::io::ErrorKind::NotFound => return Err(Fault::Io { what: why.to_string() }),
            _ => {}
        }
        let mut copy = Connection::open(path)?;
        Backup::new(self.connection(), &mut copy)?.run_to_completion(PAGES, Duration::ZERO, None)?;
        copy.close().map_err(|(_, why)| Fault::from(why))
    }

    /// Takes over all that another file holds, in the place of what is here. All of it, or nothing.
    ///
    /// Errors: as `copy_to`, and `ReadOnly`.
    pub fn become_copy_of(&mut self, path: &Path) -> Result<(), Fault> {
        self.writable()?;
        let from = Connection::open(path)?;
        self.connection().flush_prepared_statement_cache();
        Backup::new(&from, self.connection_mut())?.run_to_completion(PAGES, Duration::ZERO, None)?;
        Ok(())
    }
}

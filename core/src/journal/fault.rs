//! What can go wrong below the rules, said for the person who has to act on it.

use super::Hash;

/// A failure of the disk, of the file or of the chain: what failed, what is safe, what to do.
///
/// A fault never leaves half a request behind: everything of it is written or nothing.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Fault {
    #[error(
        "The disk is full. Nothing of this was written; what was recorded before is safe. Free some space, then try again."
    )]
    DiskFull,
    #[error("Another program is writing to this folder. Nothing of this was written. Try again in a moment.")]
    Locked,
    #[error("The journal can only be read here. Nothing of this was written. Use the original folder to record.")]
    ReadOnly,
    #[error(
        "This user may not read {path}. It was left as it is, and what is in it is safe. Ask the owner of the folder for permission to read and write it."
    )]
    NoPermission { path: String },
    /// The write-ahead log can only be read where its index can be written.
    #[error(
        "The last entries stand in {path}-wal, which can't be read where nothing can be written. Both files were left as they are, and what is in them is safe. Copy the whole folder to a disk that can be written, and open the copy."
    )]
    LogApart { path: String },
    #[error("{path} is not a Mendline journal. It was left as it is. Choose another data folder.")]
    NotADatabase { path: String },
    #[error(
        "The journal file itself is damaged ({what}). It was left as it is, and nothing more is written to it. Copy the whole data folder before anything else, export the records that can still be read, then restore a backup."
    )]
    Corrupt { what: String },
    /// A stored chain is broken. That repair can be read as stored and exported, but takes no more entries.
    #[error("{0} This repair can be read and exported, but takes no more entries. Nothing was changed or repaired.")]
    Damaged(Damage),
    /// An entry that came from outside does not fit; the stored chain is sound.
    #[error("{0} It was not taken in; what is stored here is safe. Ask for the bundle again.")]
    Unsound(Damage),
    #[error(
        "This folder was written by a newer Mendline (form {found}; this one knows {known}). It was left as it is. Update this program."
    )]
    Newer { found: i64, known: i64 },
    #[error(
        "Repair {repair} has moved on since this was decided. Nothing of this was written. Look again, then decide."
    )]
    Moved { repair: String },
    #[error(
        "Request id {request} was already used for something else. Nothing of this was written. Send it with a new id."
    )]
    RequestReused { request: String },
    #[error(
        "The journal could not be read or written ({what}). Nothing of this was written; what was recorded before is safe. Check the disk, then try again."
    )]
    Io { what: String },
}

impl Fault {
    /// Returns the stable name of the kind of fault, for looking up a sentence.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::DiskFull => "disk_full",
            Self::Locked => "locked",
            Self::ReadOnly => "read_only",
            Self::NoPermission { .. } => "no_permission",
            Self::LogApart { .. } => "log_apart",
            Self::NotADatabase { .. } => "not_a_database",
            Self::Corrupt { .. } => "corrupt",
            Self::Damaged(_) => "damaged",
            Self::Unsound(_) => "unsound",
            Self::Newer { .. } => "newer",
            Self::Moved { .. } => "moved",
            Self::RequestReused { .. } => "request_reused",
            Self::Io { .. } => "io",
        }
    }
}

/// The first bad entry of a repair, and what is wrong with it.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("Repair {repair}, entry {seq} of device {device}: {flaw}.")]
pub struct Damage {
    pub repair: String,
    pub device: String,
    pub seq: u64,
    pub flaw: Flaw,
}

/// Why an entry does not fit into its chain.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Flaw {
    #[error("its bytes no longer give its hash, so something in it was changed")]
    Altered,
    #[error("it follows {prev}, which is missing")]
    Follows { prev: Hash },
    #[error("the next entry of that device should be number {expected}, so entries are missing")]
    Gap { expected: u64 },
    #[error("that device has already written another entry with this number")]
    Twin,
    #[error("it does not follow the entry that the device wrote before it")]
    OwnSkipped,
    #[error("the entries before it are named twice or out of order")]
    Unsorted,
    #[error("its bytes are whole but can't be read ({what})")]
    Unreadable { what: String },
}

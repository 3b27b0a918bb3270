//! Keys that a company or a trust service gave out: PKCS#12 files.
//!
//! Reads what today's tools write: PBES2 and HMAC-SHA-256. Older files say so, and how to make a new one of them.
//!
//! Source: RFC 7292 (PKCS#12), RFC 8018 (PBES2).

use der::asn1::{ObjectIdentifier, OctetString, SetOfVec};
use der::{Any, Decode, Encode, Sequence};
use hmac::{Hmac, KeyInit, Mac};
use pkcs8::pkcs5::EncryptionScheme;
use pkcs8::pkcs5::pbes2::Kdf;
use sha2::{Digest, Sha256};
use spki::{AlgorithmIdentifierOwned as Algorithm, AlgorithmIdentifierRef};
use zeroize::{Zeroize, Zeroizing};

use super::{Certificate, PrivateKey, SealError, Secret};

const DATA: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.113549.1.7.1");
const ENCRYPTED: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.113549.1.7.6");
const KEY_BAG: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.113549.1.12.10.1.1");
const LOCKED_KEY_BAG: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.113549.1.12.10.1.2");
const CERTIFICATE_BAG: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.113549.1.12.10.1.3");
const SHA256: ObjectIdentifier = ObjectIdentifier::new_unwrap("2.16.840.1.101.3.4.2.1");

/// More rounds than any tool writes; a file that asks for more would hold the program up.
const MOST_ROUNDS: u32 = 5_000_000;
/// A key file is a few kilobytes.
const MOST_BYTES: usize = 1 << 20;
/// 256 MiB and no more for scrypt: N · r of 2^21 blocks of 128 bytes.
const MOST_SCRYPT: u64 = 1 << 21;

#[derive(Sequence)]
struct ContentInfo {
    kind: ObjectIdentifier,
    #[asn1(context_specific = "0", tag_mode = "EXPLICIT")]
    content: Any,
}

#[derive(Sequence)]
struct DigestInfo {
    algorithm: Algorithm,
    digest: OctetString,
}

#[derive(Sequence)]
struct MacData {
    mac: DigestInfo,
    salt: OctetString,
    #[asn1(default = "one")]
    rounds: u32,
}

fn one() -> u32 {
    1
}

#[derive(Sequence)]
struct Pfx {
    version: u8,
    content: ContentInfo,
    #[asn1(optional = "true")]
    mac: Option<MacData>,
}

#[derive(Sequence)]
struct Bag {
    kind: ObjectIdentifier,
    #[asn1(context_specific = "0", tag_mode = "EXPLICIT")]
    value: Any,
    #[asn1(optional = "true")]
    attributes: Option<SetOfVec<Any>>,
}

#[derive(Sequence)]
struct CertificateBag {
    kind: ObjectIdentifier,
    #[asn1(context_specific = "0", tag_mode = "EXPLICIT")]
    value: OctetString,
}

#[derive(Sequence)]
struct EncryptedContent {
    kind: ObjectIdentifier,
    algorithm: Algorithm,
    #[asn1(context_specific = "0", tag_mode = "IMPLICIT", optional = "true")]
    data: Option<OctetString>,
}

#[derive(Sequence)]
struct EncryptedData {
    version: u8,
    content: EncryptedContent,
}

#[derive(Sequence)]
struct LockedKey {
    algorithm: Algorithm,
    data: OctetString,
}

/// Returns the key of a PKCS#12 file, with its certificate first and the others of the file after it.
///
/// Errors: `WrongSecret` if the password is not right; `Unusable` with what is missing, damaged, or written in an older
/// way than this program reads.
pub fn open(file: &[u8], password: &Secret) -> Result<(PrivateKey, Vec<Certificate>), SealError> {
    if file.len() > MOST_BYTES {
        return Err(SealError::unusable("This file is too large for a key file (PKCS#12)."));
    }
    let not_one = |why: der::Error| SealError::unusable(format!("This is not a key file (PKCS#12): {why}."));
    let pfx = Pfx::from_der(file).map_err(not_one)?;
    if (pfx.version, pfx.content.kind) != (3, DATA) {
        return Err(SealError::unusable("This key file is not one that a password protects (PKCS#12, version 3)."));
    }
    let content: OctetString = pfx.content.content.decode_as().map_err(not_one)?;
    let mac = pfx.mac.as_ref().ok_or_else(|| SealError::unusable("This key file is not protected against change."))?;
    check(mac, content.as_bytes(), password)?;
    let mut found = Found::default();
    for part in Vec::<ContentInfo>::from_der(content.as_bytes()).map_err(not_one)? {
        let plain = opened(&part, password)?;
        for bag in Vec::<Bag>::from_der(&plain).map_err(not_one)? {
            found.take(&bag, password)?;
        }
    }
    found.finish()
}

#[derive(Default)]
struct Found {
    key: Option<PrivateKey>,
    certificates: Vec<Certificate>,
}

impl Found {
    fn take(&mut self, bag: &Bag, password: &Secret) -> Result<(), SealError> {
        let damaged = |why: der::Error| SealError::unusable(format!("A part of this key file is damaged: {why}."));
        match bag.kind {
            KEY_BAG => self.key = Some(PrivateKey::from_pkcs8(&Zeroizing::new(bag.value.to_der().map_err(damaged)?))?),
            LOCKED_KEY_BAG => {
                let locked: LockedKey = bag.value.decode_as().map_err(damaged)?;
                self.key =
                    Some(PrivateKey::from_pkcs8(&decrypt(&locked.algorithm, locked.data.as_bytes(), password)?)?);
            }
            CERTIFICATE_BAG => {
                let held: CertificateBag = bag.value.decode_as().map_err(damaged)?;
                self.certificates.push(Certificate::read(held.value.as_bytes())?);
            }
            _ => {}
        }
        Ok(())
    }

    fn finish(self) -> Result<(PrivateKey, Vec<Certificate>), SealError> {
        let key = self.key.ok_or_else(|| SealError::unusable("This file holds no private key."))?;
        let own = |one: &Certificate| one.public_key().is_ok_and(|public| public == key.public());
        let (mut chain, others): (Vec<_>, Vec<_>) = self.certificates.into_iter().partition(own);
        chain.truncate(1);
        match chain.first() {
            None => Err(SealError::unusable("This file holds no certificate of its key.")),
            Some(own) if !own.may_sign() => {
                Err(SealError::unusable("The certificate in this file does not allow its key to sign documents."))
            }
            Some(_) => {
                chain.extend(others);
                Ok((key, chain))
            }
        }
    }
}

fn check(mac: &MacData, content: &[u8], password: &Secret) -> Result<(), SealError> {
    if mac.mac.algorithm.oid != SHA256 {
        return Err(older("its check sum is not HMAC-SHA-256"));
    }
    too_slow(mac.rounds)?;
    let mut key = mac_key(password, mac.salt.as_bytes(), mac.rounds);
    let made = Hmac::<Sha256>::new_from_slice(&key);
    key.zeroize();
    let mut made = made.map_err(|_| SealError::unusable("The check sum of this key file can't be computed."))?;
    made.update(content);
    made.verify_slice(mac.mac.digest.as_bytes()).map_err(|_| SealError::WrongSecret)
}

/// Returns the key of the check sum: RFC 7292, B.2, with SHA-256 (u = 32, v = 64), purpose 3, one block.
fn mac_key(password: &Secret, salt: &[u8], rounds: u32) -> [u8; 32] {
    let mut text = Zeroizing::new(Vec::with_capacity(2 * password.as_str().len() + 2));
    text.extend(password.as_str().encode_utf16().flat_map(u16::to_be_bytes));
    text.extend([0, 0]);
    let filled = |part: &[u8]| -> Zeroizing<Vec<u8>> {
        Zeroizing::new(part.iter().cycle().take(64 * part.len().div_ceil(64)).copied().collect())
    };
    let first = Sha256::new().chain_update([3; 64]).chain_update(&*filled(salt)).chain_update(&*filled(&text));
    let mut hash: [u8; 32] = first.finalize().into();
    for _ in 1..rounds {
        hash = Sha256::digest(hash).into();
    }
    hash
}

fn opened(part: &ContentInfo, password: &Secret) -> Result<Zeroizing<Vec<u8>>, SealError> {
    let damaged = |why: der::Error| SealError::unusable(format!("A part of this key file is damaged: {why}."));
    match part.kind {
        DATA => {
            let plain: OctetString = part.content.decode_as().map_err(damaged)?;
            Ok(Zeroizing::new(plain.as_bytes().to_vec()))
        }
        ENCRYPTED => {
            let locked: EncryptedData = part.content.decode_as().map_err(damaged)?;
            let data = locked.content.data.as_ref().map_or(&[][..], |data| data.as_bytes());
            decrypt(&locked.content.algorithm, data, password)
        }
        _ => Err(older("a part of it is locked in another way than by a password")),
    }
}

fn decrypt(algorithm: &Algorithm, data: &[u8], password: &Secret) -> Result<Zeroizing<Vec<u8>>, SealError> {
    let der = algorithm.to_der().map_err(|_| older("its lock can't be read"))?;
    let lock = AlgorithmIdentifierRef::from_der(&der).ok().and_then(|named| EncryptionScheme::try_from(named).ok());
    let lock = lock.ok_or_else(|| older("it is locked with an old cipher"))?;
    match lock.pbes2().map(|scheme| &scheme.kdf) {
        Some(Kdf::Pbkdf2(slow)) => too_slow(slow.iteration_count)?,
        Some(Kdf::Scrypt(slow)) if u64::from(slow.block_size) * slow.cost_parameter > MOST_SCRYPT => {
            return Err(SealError::unusable("This key file asks for more memory than this program gives it."));
        }
        Some(_) => {}
        None => return Err(older("it is locked with an old cipher")),
    }
    lock.decrypt(password.as_str(), data).map(Zeroizing::new).map_err(|_| SealError::WrongSecret)
}

fn too_slow(rounds: u32) -> Result<(), SealError> {
    let asks = format!("This key file asks for {rounds} rounds; this program does no more than {MOST_ROUNDS}.");
    if rounds > MOST_ROUNDS { Err(SealError::unusable(asks)) } else { Ok(()) }
}

fn older(why: &str) -> SealError {
    SealError::unusable(format!(
        "This key file can't be opened: {why}. Write it anew with AES-256 and HMAC-SHA-256, as `openssl pkcs12 -export` does since version 3."
    ))
}
